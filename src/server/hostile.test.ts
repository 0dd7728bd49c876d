/** What the server answers to bad, careless and hostile requests. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { InjectOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { jobFolder } from './keep/places.ts';
import { errorSchema } from './message/answers.ts';
import { closeAll, EXAMPLE, form, SQUARE, square, type TestServer, testServer, type Upload } from './serve.fixture.ts';

let room: TestServer;
let id = '';
beforeAll(async () => {
  room = await testServer();
  ({ id } = await square(room.server));
});
afterAll(closeAll);

const refused = async (asked: InjectOptions): Promise<[number, string]> => {
  const answer = await room.server.inject(asked);
  const { error, sentence } = errorSchema.parse(answer.json());
  expect(sentence).toMatch(/^\S.*[.)]$/s);
  return [answer.statusCode, error];
};
const saving = (more: object) => ({
  revision: 0,
  name: 'x',
  steps: [{ name: 'came in', input: { drawing: 'square.svg' } }],
  cursor: 0,
  ...more,
});
const put = (payload: string | object): InjectOptions => ({
  method: 'PUT',
  url: `/api/jobs/${id}`,
  payload,
  headers: { 'content-type': 'application/json' },
});
const upload = (...files: readonly Upload[]): InjectOptions => ({ method: 'POST', url: '/api/jobs', ...form(...files) });

describe('callers', () => {
  it.each(['evil.example', 'evil.example:4173', '127.0.0.1.evil.example', '10.0.0.7:4173', 'localhost.', '127.0.0.1@evil.example', '[::1'])(
    'under the name %j are refused before anything is read',
    async (host) => {
      for (const url of ['/', '/api/jobs', `/api/jobs/${id}/drawing`])
        expect(await refused({ url, headers: { host } })).toEqual([403, 'unknown-host']);
    },
  );

  it.each(['127.0.0.1:4173', 'localhost:5000', '[::1]:4173', 'LOCALHOST'])('under the name %j are known', async (host) => {
    expect((await room.server.inject({ url: '/api/jobs', headers: { host } })).statusCode).toBe(200);
  });

  it('from other pages are refused, those of other ports on this computer too', async () => {
    for (const origin of ['http://evil.example', 'null', 'http://localhost:9999', 'https://localhost:4173', 'http://127.0.0.1:4173'])
      expect(
        await refused({ method: 'POST', url: `/api/jobs/${id}/log`, payload: {}, headers: { host: 'localhost:4173', origin } }),
      ).toEqual([403, 'unknown-origin']);
    for (const site of ['cross-site', 'same-site'])
      expect(await refused({ url: '/api/jobs', headers: { 'sec-fetch-site': site } })).toEqual([403, 'unknown-origin']);
    const own = { host: 'localhost:4173', origin: 'http://localhost:4173', 'sec-fetch-site': 'same-origin' };
    expect((await room.server.inject({ url: '/api/jobs', headers: own })).statusCode).toBe(200);
    expect((await room.server.inject({ url: '/job/abcdefgh', headers: { 'sec-fetch-site': 'cross-site' } })).statusCode).toBe(200);
  });

  it('by number are known where the server was opened to all, by a foreign name never', async () => {
    const { server } = await testServer({ host: '0.0.0.0' });
    expect((await server.inject({ url: '/api/jobs', headers: { host: '192.168.1.20:4173' } })).statusCode).toBe(200);
    expect((await server.inject({ url: '/api/jobs', headers: { host: 'evil.example' } })).statusCode).toBe(403);
  });

  it('that ask without end are slowed down', async () => {
    const { server } = await testServer({ most: 3 });
    const codes = [];
    for (const _ of [1, 2, 3, 4]) codes.push((await server.inject('/api/health')).statusCode);
    expect(codes).toEqual([200, 200, 200, 429]);
    expect(errorSchema.parse((await server.inject('/api/health')).json()).error).toBe('too-many');
  });

  it('may ask 6,000 times within a minute', async () => {
    const { server } = await testServer();
    const codes = new Map<number, number>();
    for (let asked = 0; asked < 6001; asked += 1) {
      const { statusCode } = await server.inject('/api/health');
      codes.set(statusCode, (codes.get(statusCode) ?? 0) + 1);
    }
    expect([...codes]).toEqual([
      [200, 6000],
      [429, 1],
    ]);
  });
});

describe('answers', () => {
  it('of every kind carry a policy that lets nothing in from elsewhere and runs nothing written in the page', async () => {
    for (const url of ['/', '/api/jobs', '/api', '/api/nothing', '/nothing.js', `/api/jobs/${id}/drawing`]) {
      const { headers } = await room.server.inject(url);
      const policy = String(headers['content-security-policy']);
      for (const rule of [
        "default-src 'self'",
        "script-src 'self'",
        "style-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
      ])
        expect(policy).toContain(rule);
      expect(policy).not.toMatch(/unsafe|upgrade-insecure|\*/);
      expect([headers['x-content-type-options'], headers['cross-origin-resource-policy']]).toEqual(['nosniff', 'same-origin']);
    }
  });

  it('never give a drawing as something a browser would run', async () => {
    const evil = SQUARE.replace('<path', '<script>alert(1)</script><path onload="alert(2)"');
    const [record] = (await room.server.inject(upload({ name: 'evil.svg', content: evil }))).json();
    const answer = await room.server.inject(`/api/jobs/${record.id}/drawing`);
    expect(answer.body).toBe(evil);
    expect([answer.headers['content-type'], answer.headers['content-disposition'], answer.headers['cache-control']]).toEqual([
      'application/octet-stream',
      'attachment; filename="drawing"',
      'no-store',
    ]);
  });
});

describe('paths', () => {
  it.each([
    '..',
    '../..',
    '..%2f..%2fshop.json',
    '%2e%2e',
    'abcdefgh%00',
    'ABCDEFGH',
    'a/../../b',
    '.coming-abcdefgh',
    'x'.repeat(300),
    'constructor',
    '__proto__',
  ])('from the id %j lead nowhere', async (evil) => {
    for (const tail of ['', '/drawing', '/files/program']) {
      const answer = await room.server.inject(`/api/jobs/${evil}${tail}`);
      // The client itself takes '..' out of an address, which then is another one.
      if (answer.statusCode !== 404) expect([400, 414].includes(answer.statusCode) || /^\.\.(\/\.\.)?$|%2e/.test(evil)).toBe(true);
      expect(answer.body).not.toContain('"machines"');
    }
    if (evil !== 'constructor') expect(() => jobFolder(room.folder, evil)).toThrow('No such job');
  });

  it('of static files do not leave the folder of the page', async () => {
    writeFileSync(join(dirname(room.folder), 'secret.txt'), 'a secret');
    for (const url of [
      '/../secret.txt',
      '/..%2fsecret.txt',
      '/assets/..%2f..%2fsecret.txt',
      '/assets/%2e%2e/%2e%2e/secret.txt',
      '/..%5csecret.txt',
      '//etc/passwd',
      '/%00',
    ]) {
      const answer = await room.server.inject(url);
      if (answer.statusCode === 200) expect([url, answer.body]).toEqual(['//etc/passwd', expect.stringContaining('the sheet')]);
      expect(answer.body).not.toContain('a secret');
    }
  });

  it('of uploads are made by the server: the name in the form is only text', async () => {
    const names = ['../../../evil.svg', '..\\..\\evil.svg', '/etc/evil.svg', 'a\u202Efdx.svg', `${'n'.repeat(400)}.svg`, '<img src=x>.svg'];
    for (const name of names) {
      const [record] = (await room.server.inject(upload({ name, content: SQUARE }))).json();
      expect(record.drawingName).not.toMatch(/[/\\\u202e]/);
      expect(record.drawingName.length).toBeLessThanOrEqual(200);
      expect(readdirSync(join(room.folder, 'jobs', record.id)).sort()).toEqual(['drawing.svg', 'record.json']);
    }
    expect(existsSync(join(dirname(room.folder), 'evil.svg'))).toBe(false);
  });
});

describe('uploads', () => {
  it('that are no drawing, empty, or nothing at all are refused whole', async () => {
    const before = (await room.server.inject('/api/jobs')).json().length;
    const good = { name: 'square.svg', content: SQUARE };
    expect(await refused(upload(good, { name: 'photo.png', content: 'x' }))).toEqual([400, 'not-valid']);
    expect(await refused(upload(good, { name: 'empty.dxf', content: '' }))).toEqual([400, 'not-valid']);
    expect(await refused(upload())).toEqual([400, 'not-valid']);
    expect(await refused(upload(...Array.from({ length: 21 }, () => good)))).toEqual([413, 'too-many']);
    expect((await room.server.inject('/api/jobs')).json()).toHaveLength(before);
  });

  it('of job files are judged by the schema of job files, with the fields at fault', async () => {
    const job = (text: string) => upload({ name: 'a.job.json', content: text }, { name: 'square.svg', content: SQUARE });
    const bad = await room.server.inject(job('{"drawing": "square.svg", "height": -1, "colour": 3}'));
    expect(bad.statusCode).toBe(400);
    expect(bad.json().findings.map((f: { place: { path: string } }) => f.place.path)).toEqual(['height', '']);
    expect(await refused(job('{"drawing": "other.svg"}'))).toEqual([400, 'not-valid']);
    expect(await refused(job('{"drawing": "square.svg", '))).toEqual([400, 'not-valid']);
    expect(await refused(job('{"drawing": "square.svg", "kept": {"__proto__": "die"}}'))).toEqual([400, 'not-valid']);
    expect(await refused(job(`{"drawing": ${'['.repeat(50_000)}`))).toEqual([400, 'not-valid']);
  });

  it('that are not a form, or broken off, are refused', async () => {
    const url = '/api/jobs';
    expect(await refused({ method: 'POST', url, payload: { files: [] } })).toEqual([415, 'wrong-kind']);
    expect(await refused({ method: 'POST', url, payload: 'x', headers: { 'content-type': 'text/plain' } })).toEqual([415, 'wrong-kind']);
    expect((await refused({ method: 'POST', url, payload: 'x', headers: { 'content-type': 'multipart/form-data' } }))[0]).toBeLessThan(500);
    const { payload, headers } = form({ name: 'square.svg', content: SQUARE });
    expect((await refused({ method: 'POST', url, payload: payload.subarray(0, 200), headers }))[0]).toBeLessThan(500);
  });

  it('of 20 files are taken, of 64 MB each at the most', async () => {
    const good = { name: 'square.svg', content: SQUARE };
    expect((await room.server.inject(upload(...Array.from({ length: 20 }, () => good)))).statusCode).toBeLessThan(300);
    expect(await refused(upload({ name: 'large.png', content: Buffer.alloc(64 * 1024 * 1024 - 1, 32) }))).toEqual([400, 'not-valid']);
  });

  it('that are larger than 64 MB are refused', async () => {
    expect(await refused(upload({ name: 'huge.dxf', content: Buffer.alloc(64 * 1024 * 1024 + 1, 32) }))).toEqual([413, 'too-large']);
  });
});

describe('JSON', () => {
  it('that is none, too long, too deep, or not a record is refused, and the record stays', async () => {
    const before = readFileSync(join(room.folder, 'jobs', id, 'record.json'), 'utf8');
    expect(await refused(put('{"revision": '))).toEqual([400, 'not-json']);
    expect(await refused(put(''))).toEqual([400, 'not-json']);
    expect(await refused(put(`${' '.repeat(17 * 1024 * 1024)}{}`))).toEqual([413, 'too-large']);
    expect(await refused(put(`{"steps": ${'['.repeat(100_000)}${']'.repeat(100_000)}}`))).toEqual([400, 'not-valid']);
    expect(await refused(put(saving({ cursor: 1 })))).toEqual([400, 'not-valid']);
    expect(await refused(put(saving({ steps: [] })))).toEqual([400, 'not-valid']);
    expect(await refused(put(saving({ log: [] })))).toEqual([400, 'not-valid']);
    expect(await refused(put(JSON.stringify(saving({})).replace('"square.svg"', '1e999')))).toEqual([400, 'not-valid']);
    expect(readFileSync(join(room.folder, 'jobs', id, 'record.json'), 'utf8')).toBe(before);
  });

  it('with keys that reach into every object is refused, and no object is changed', async () => {
    for (const key of ['__proto__', 'constructor', 'prototype']) {
      const inner = key === '__proto__' ? { polluted: 1 } : { prototype: { polluted: 1 } };
      const text = JSON.stringify(saving({})).replace('"drawing"', `"${key}": ${JSON.stringify(inner)}, "drawing"`);
      expect((await refused(put(text)))[0]).toBe(400);
    }
    expect({}).not.toHaveProperty('polluted');
  });

  it('of log entries has its limits', async () => {
    const post = (payload: object): InjectOptions => ({ method: 'POST', url: `/api/jobs/${id}/log`, payload });
    expect(await refused(post({ kind: 'gossip', about: '', text: '' }))).toEqual([400, 'not-valid']);
    expect(await refused(post({ kind: 'note', about: '', text: 'x'.repeat(4001) }))).toEqual([400, 'not-valid']);
    expect(await refused(post({ kind: 'note', about: '', text: 'x'.repeat(40_000) }))).toEqual([413, 'too-large']);
    expect(await refused({ method: 'POST', url: '/api/jobs/abcdefgh/log', payload: { kind: 'note', about: '', text: '' } })).toEqual([
      404,
      'not-found',
    ]);
  });
});

describe('savings at the same time', () => {
  it('from one revision: one is kept, the others are told what is in force', async () => {
    const { server } = await testServer({ example: EXAMPLE });
    const mine = await square(server);
    const asked = Array.from({ length: 8 }, (_, i) =>
      server.inject({ method: 'PUT', url: `/api/jobs/${mine.id}`, payload: saving({ name: `tab ${i}` }) }),
    );
    const answers = await Promise.all(asked);
    expect(answers.map((a) => a.statusCode).sort()).toEqual([200, ...Array(7).fill(409)]);
    const kept = (await server.inject(`/api/jobs/${mine.id}`)).json();
    expect(kept.revision).toBe(1);
    expect(kept.name).toBe(`tab ${answers.findIndex((a) => a.statusCode === 200)}`);
    for (const a of answers.filter((x) => x.statusCode === 409))
      expect(a.json()).toMatchObject({ error: 'changed-elsewhere', record: kept });
  });

  it('of log entries: every one is kept', async () => {
    const { server } = await testServer();
    const mine = await square(server);
    const write = (i: number) =>
      server.inject({ method: 'POST', url: `/api/jobs/${mine.id}/log`, payload: { kind: 'tick', about: `stop ${i}`, text: '' } });
    await Promise.all(Array.from({ length: 12 }, (_, i) => write(i)));
    const { log } = (await server.inject(`/api/jobs/${mine.id}`)).json();
    expect(new Set(log.map((e: { about: string }) => e.about)).size).toBe(12);
  });
});
