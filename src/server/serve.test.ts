/** What every route answers to good questions. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, describe, expect, it } from 'vitest';
import { readDialectFile } from '../job/files/dialects.ts';
import { jobSchema } from '../job/job.ts';
import { shopSchema } from '../job/shop.ts';
import { mm } from '../text/part.ts';
import { localMoment } from '../text/print/local.ts';
import { inputsMark } from './message/answered-from.ts';
import { errorSchema, shopRecordSchema, summarySchema } from './message/answers.ts';
import { recordSchema } from './message/job-record.ts';
import { closeAll, EXAMPLE, form, LARGE, SQUARE, square, testServer } from './serve.fixture.ts';

afterAll(closeAll);

describe('the first start', () => {
  it('puts the example job and the shop of its workshop into an empty folder, and touches nothing later', async () => {
    const { server, folder } = await testServer({ example: EXAMPLE });
    const [row, ...others] = (await server.inject('/api/jobs')).json();
    expect(others).toEqual([]);
    expect(row).toMatchObject({ name: 'Blanking die plate', drawingName: 'die-plate.dxf', revision: 0 });
    const record = recordSchema.parse((await server.inject(`/api/jobs/${row.id}`)).json());
    expect(record.steps[0]?.input).not.toHaveProperty('shop');
    expect(jobSchema.parse(record.steps[0]?.input)).toMatchObject({ height: 32, finish: 0.8, drawing: 'die-plate.dxf' });
    const drawing = (await server.inject(`/api/jobs/${row.id}/drawing`)).rawPayload;
    expect(drawing.equals(readFileSync('examples/die-plate/die-plate.dxf'))).toBe(true);
    const { shop, dialect } = shopRecordSchema.parse((await server.inject('/api/shop')).json());
    expect(shopSchema.parse(shop).name).toBe('Hollow Lane Toolroom');
    expect(readDialectFile(dialect ?? '')).toMatchObject({ kind: 'dialect', dialect: { name: 'toolroom' } });
    await server.inject({ method: 'DELETE', url: `/api/jobs/${row.id}` });
    const again = await testServer({ folder, example: EXAMPLE });
    expect((await again.server.inject('/api/jobs')).json()).toEqual([]);
  });

  it('takes the shop of the house where nobody gives one, and a shop file where one is given', async () => {
    const { server } = await testServer();
    expect(shopSchema.safeParse((await server.inject('/api/shop')).json().shop).success).toBe(true);
    const other = await testServer({ shopFile: 'examples/workshop/shop.json' });
    expect((await other.server.inject('/api/shop')).json().shop.name).toBe('Hollow Lane Toolroom');
  });
});

describe('a first start that fails', () => {
  it('says why and leaves the folder fresh, so that the next one brings the example', async () => {
    const { folder } = await testServer();
    const fresh = join(folder, 'deeper', 'still');
    await expect(testServer({ folder: fresh, example: EXAMPLE, shopFile: 'package.json' })).rejects.toThrow('machines is missing');
    await expect(testServer({ folder: join(folder, 'shop-is-a-file', 'x'), shopFile: 'gone.json' })).rejects.toThrow('ENOENT');
    const { server } = await testServer({ folder: fresh, example: EXAMPLE });
    expect((await server.inject('/api/jobs')).json()).toHaveLength(1);
    writeFileSync(join(folder, 'file'), '');
    await expect(testServer({ folder: join(folder, 'file') })).rejects.toThrow(/EEXIST|ENOTDIR/);
  });
});

describe('jobs', () => {
  it('come in as drawings, several at once, each a job of its own', async () => {
    const { server, folder } = await testServer();
    const files = [
      { name: 'square.svg', content: SQUARE },
      { name: 'Platte 7.DXF', content: readFileSync('examples/night-plate/night-plate.dxf') },
    ];
    const answer = await server.inject({ method: 'POST', url: '/api/jobs', ...form(...files) });
    expect(answer.statusCode).toBe(201);
    const records = answer.json().map((r: unknown) => recordSchema.parse(r));
    expect(records.map((r: { name: string }) => r.name)).toEqual(['square', 'Platte 7']);
    expect(readdirSync(join(folder, 'jobs', records[1].id)).sort()).toEqual(['drawing.dxf', 'record.json']);
    const rows = (await server.inject('/api/jobs')).json();
    expect(rows.map((r: unknown) => summarySchema.parse(r).name).sort()).toEqual(['Platte 7', 'square']);
  });

  it('come in as a job file with its drawing', async () => {
    const { server } = await testServer();
    const files = [
      { name: 'die-plate.job.json', content: readFileSync(EXAMPLE) },
      { name: 'die-plate.dxf', content: readFileSync('examples/die-plate/die-plate.dxf') },
    ];
    const records = (await server.inject({ method: 'POST', url: '/api/jobs', ...form(...files) })).json();
    expect(records).toHaveLength(1);
    expect(records[0].steps[0].input).toMatchObject({ material: 'd2', quantityBreaks: [2, 5] });
  });

  it('are saved step by step, each saving one revision on, and keep their answer in one line', async () => {
    let minute = 0;
    const { server } = await testServer({ clock: () => new Date(Date.UTC(2026, 10, 25, 8, minute++)) });
    const first = await square(server);
    await square(server);
    const steps = [...first.steps, { name: 'height 40', input: { drawing: 'square.svg', height: 40 } }];
    const answeredFrom = { inputs: inputsMark({ drawing: 'square.svg', height: 40 }), shop: 0, version: '1', until: '2027-01-01' };
    const payload = { revision: 0, name: 'a square', steps, cursor: 1, line: 'Yes.', answeredFrom };
    const saved = await server.inject({ method: 'PUT', url: `/api/jobs/${first.id}`, payload });
    expect([saved.statusCode, saved.json().revision]).toEqual([200, 1]);
    const record = (await server.inject(`/api/jobs/${first.id}`)).json();
    expect(record).toMatchObject({ ...payload, revision: 1 });
    expect((await server.inject('/api/jobs')).json()[0]).toMatchObject({
      id: first.id,
      line: 'Yes.',
      name: 'a square',
      answeredFrom,
      inputs: answeredFrom.inputs,
    });
  });

  it('keep their answer as data, for whoever reads it, and take no other data for one', async () => {
    const { server } = await testServer();
    const { id, steps } = await square(server);
    const url = `/api/jobs/${id}`;
    const line = { key: 'answer.high', template: '{height} high.', holes: { height: mm(25) } };
    const saving = { revision: 0, name: 'a square', steps, cursor: 0, line };
    expect((await server.inject({ method: 'PUT', url, payload: saving })).statusCode).toBe(200);
    const [row] = (await server.inject('/api/jobs')).json();
    expect([(await server.inject(url)).json().line, row.line]).toEqual([line, line]);
    const hollow = { ...saving, revision: 1, line: { ...line, holes: {} } };
    expect((await server.inject({ method: 'PUT', url, payload: hollow })).statusCode).toBe(400);
  });

  it('take log entries beside whoever edits, and say when', async () => {
    const { server } = await testServer();
    const { id, steps } = await square(server);
    const url = `/api/jobs/${id}/log`;
    const entry = { kind: 'measured', about: 'L1', text: '20.004 at 21 °C' };
    const record = (await server.inject({ method: 'POST', url, payload: entry })).json();
    expect(record.log).toEqual([{ ...entry, at: '2026-11-25T08:00:00.000Z' }]);
    const late = { ...entry, kind: 'break', at: '2026-11-24T22:10:00Z' };
    expect((await server.inject({ method: 'POST', url, payload: late })).json().log[1]).toEqual(late);
    const saving = await server.inject({ method: 'PUT', url: `/api/jobs/${id}`, payload: { revision: 0, name: 'x', steps, cursor: 0 } });
    expect(saving.statusCode).toBe(200);
    expect((await server.inject(`/api/jobs/${id}`)).json().log).toHaveLength(2);
  });

  it('refuse a log entry whose time cannot be, and open where an older record holds one', async () => {
    const { server, folder } = await testServer();
    const { id } = await square(server);
    const url = `/api/jobs/${id}/log`;
    const entry = { kind: 'note', about: '', text: 'spool changed' };
    const impossible = [
      ...[
        '2026-02-31T10:00:00Z',
        '2026-11-25T25:00:00Z',
        'yesterday',
        '',
        '2026-11-26T08:01:00Z',
        '2026-11-27T08:00:00Z',
        '9999-12-31T00:00:00Z',
      ].map((at) => ({
        ...entry,
        at,
      })),
      ...['-5', 'an hour', '', '100001', '1e9', 'NaN'].map((text) => ({ ...entry, kind: 'time', text })),
    ];
    for (const payload of impossible)
      expect([payload, (await server.inject({ method: 'POST', url, payload })).statusCode]).toEqual([payload, 400]);
    for (const payload of [
      { ...entry, at: '2026-11-25T09:30:00+01:00' },
      { ...entry, at: '2026-11-26T07:59:00Z' },
      { ...entry, kind: 'time', text: '312,5' },
      { ...entry, kind: 'time', text: '100000' },
    ])
      expect((await server.inject({ method: 'POST', url, payload })).statusCode).toBe(200);
    const path = join(folder, 'jobs', id, 'record.json');
    const kept = JSON.parse(readFileSync(path, 'utf8'));
    writeFileSync(path, JSON.stringify({ ...kept, log: [...kept.log, { ...entry, at: '2026-02-31T25:61' }] }));
    const opened = await server.inject(`/api/jobs/${id}`);
    expect([opened.statusCode, opened.json().log.at(-1).at]).toEqual([200, '2026-02-31T25:61']);
    expect(localMoment('2026-02-31T25:61', 'en')).toBe('2026-02-31T25:61');
    expect((await server.inject({ method: 'POST', url, payload: entry })).statusCode).toBe(200);
  });

  it('that are damaged on the disk are told of in the list, left as they are, and disturb no other', async () => {
    const { server, folder } = await testServer();
    const [good, cut, strange] = [await square(server), await square(server), await square(server)];
    const path = (id: string): string => join(folder, 'jobs', id, 'record.json');
    writeFileSync(path(cut.id), '{"id": "');
    writeFileSync(path(strange.id), JSON.stringify({ ...strange, cursor: 4 }));
    const rows: { id: string; fault?: string }[] = (await server.inject('/api/jobs')).json();
    expect(rows).toHaveLength(3);
    expect(rows.find((r) => r.id === good.id)).not.toHaveProperty('fault');
    expect(rows.find((r) => r.id === cut.id)?.fault).toContain('is not JSON');
    expect(rows.find((r) => r.id === strange.id)?.fault).toContain('step 4');
    const answer = await server.inject(`/api/jobs/${cut.id}`);
    expect(answer.statusCode).toBe(500);
    expect(errorSchema.parse(answer.json()).error).toBe('damaged');
    const saving = { revision: 0, name: 'x', steps: cut.steps, cursor: 0 };
    expect((await server.inject({ method: 'PUT', url: `/api/jobs/${cut.id}`, payload: saving })).statusCode).toBe(500);
    expect(readFileSync(path(cut.id), 'utf8')).toBe('{"id": "');
  });
});

describe('the shop', () => {
  it('is kept with the words of its control, one revision on', async () => {
    const { server } = await testServer({ example: EXAMPLE });
    const record = (await server.inject('/api/shop')).json();
    const changed = { ...record, shop: { ...record.shop, quotationDays: 14 } };
    const saved = await server.inject({ method: 'PUT', url: '/api/shop', payload: changed });
    expect(saved.json()).toEqual({ ...changed, revision: 1 });
    expect((await server.inject('/api/shop')).json()).toEqual(saved.json());
    const late = await server.inject({ method: 'PUT', url: '/api/shop', payload: changed });
    expect([late.statusCode, late.json().error, late.json().shop]).toEqual([409, 'changed-elsewhere', saved.json()]);
  });

  it('is not kept where a value cannot be used, and every fault is told with its field', async () => {
    const { server } = await testServer({ example: EXAMPLE });
    const record = (await server.inject('/api/shop')).json();
    const [machine] = record.shop.machines;
    const shop = { ...record.shop, machines: [{ ...machine, height: -3 }], quotationDays: 0 };
    const bad = await server.inject({ method: 'PUT', url: '/api/shop', payload: { ...record, shop } });
    expect(bad.statusCode).toBe(400);
    expect(bad.json().findings.map((f: { place: { path: string } }) => f.place.path)).toEqual(['machines.0.height', 'quotationDays']);
    const words = await server.inject({ method: 'PUT', url: '/api/shop', payload: { ...record, dialect: '{"decimals": 40}' } });
    expect(words.statusCode).toBe(400);
    expect((await server.inject('/api/shop')).json()).toEqual(record);
  });
});

describe('files of the handout', () => {
  it('are made of the saved revision with the saved shop, once for all of them', async () => {
    const { server, asked } = await testServer({ example: EXAMPLE, today: () => '2026-12-01' });
    const { id, steps } = await square(server);
    const program = await server.inject(`/api/jobs/${id}/files/program`);
    expect(program.body).toBe('M02\n');
    expect(program.headers['content-disposition']).toBe('attachment; filename="square.nc"');
    const quotation = await server.inject(`/api/jobs/${id}/files/quotation`);
    expect(quotation.headers['content-type']).toBe('application/pdf');
    expect(quotation.body).toBe('%PDF');
    expect(asked).toHaveLength(1);
    expect(asked[0]).toMatchObject({
      input: { drawing: 'square.svg' },
      day: '2026-12-01',
      stem: 'square',
      shop: { name: 'Hollow Lane Toolroom' },
    });
    expect(Buffer.from(asked[0]?.drawing ?? []).toString()).toBe(SQUARE);
    const edited = [...steps, { name: 'higher', input: { drawing: 'square.svg', height: 40 } }];
    await server.inject({ method: 'PUT', url: `/api/jobs/${id}`, payload: { revision: 0, name: 'x', steps: edited, cursor: 1 } });
    await server.inject(`/api/jobs/${id}/files/program`);
    expect(asked[1]?.input).toEqual({ drawing: 'square.svg', height: 40 });
  });

  it('that a job does not have are told with those it has, and with its answer', async () => {
    const { server } = await testServer();
    const { id } = await square(server);
    const answer = await server.inject(`/api/jobs/${id}/files/constructor`);
    expect(answer.statusCode).toBe(404);
    expect(answer.json().sentence).toBe("This job has no file 'constructor', only program, quotation. Its answer: Yes.");
  });

  it('are asked again after they failed', async () => {
    let times = 0;
    const make = async () => {
      times += 1;
      throw new Error('broken');
    };
    const { server, told } = await testServer({ papers: { make, close: async () => undefined } });
    const { id } = await square(server);
    for (const _ of [1, 2]) expect((await server.inject(`/api/jobs/${id}/files/program`)).json().error).toBe('our-mistake');
    expect([times, told.length]).toEqual([2, 2]);
  });
});

describe('the page', () => {
  it('is given under every address of its own; its hashed files may be kept for ever', async () => {
    const { server } = await testServer();
    for (const url of ['/', '/jobs', '/job/abcdefgh', '/run/abcdefgh', '/shop?part=wires']) {
      const answer = await server.inject(url);
      expect([answer.statusCode, answer.headers['cache-control'], answer.body]).toEqual([
        200,
        'no-cache',
        expect.stringContaining('the sheet'),
      ]);
    }
    const asset = await server.inject('/assets/index-abc123.js');
    expect(asset.headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect(asset.headers['content-type']).toContain('javascript');
    for (const url of ['/assets/gone.js', '/favicon.ico', '/api/nothing']) {
      const answer = await server.inject(url);
      expect([answer.statusCode, errorSchema.parse(answer.json()).error]).toEqual([404, 'not-found']);
    }
    expect((await server.inject({ method: 'POST', url: '/job/abcdefgh' })).statusCode).toBe(405);
  });

  it('is sent packed to whoever takes that, and is the same then', async () => {
    const { server } = await testServer();
    const get = (name: string, encoding: string) => server.inject({ url: `/assets/${name}`, headers: { 'accept-encoding': encoding } });
    const plain = await get('large-abc123.js', 'identity');
    expect([plain.headers['content-encoding'], plain.body]).toEqual([undefined, LARGE]);
    for (const encoding of ['gzip, deflate', 'br, gzip']) {
      const { headers, rawPayload } = await get('large-abc123.js', encoding);
      expect(headers).toMatchObject({
        'content-encoding': 'gzip',
        vary: 'accept-encoding',
        'cache-control': 'public, max-age=31536000, immutable',
      });
      expect(headers['content-type']).toContain('javascript');
      expect(gunzipSync(rawPayload).toString()).toBe(LARGE);
    }
    // What was not packed goes as it is.
    const small = await get('index-abc123.js', 'br, gzip');
    expect([small.statusCode, small.headers['content-encoding'], small.body]).toEqual([200, undefined, 'export {};']);
  });

  it('says how it is made where it is not built', async () => {
    const { server } = await testServer({ appFolder: '/nowhere/at/all' });
    const answer = await server.inject('/');
    expect([answer.statusCode, answer.json().error]).toEqual([503, 'not-built']);
  });
});

describe('the description', () => {
  it('lists every route there is, with what is sent and answered, and a page for people does too', async () => {
    const { server } = await testServer();
    const document = (await server.inject('/api/openapi.json')).json();
    const listed = Object.entries(document.paths as Record<string, object>).flatMap(([p, o]) => Object.keys(o).map((m) => `${m} ${p}`));
    expect(listed.sort()).toEqual([...ROUTES].sort().map((r) => r.replace(/:(\w+)/g, '{$1}')));
    expect(server.printRoutes({ commonPrefix: false }).match(/\((GET|PUT|POST|DELETE)/g)?.length).toBeGreaterThan(5);
    for (const route of ROUTES) {
      const [method, url] = route.split(' ') as [string, string];
      expect(server.hasRoute({ method: method.toUpperCase() as 'GET', url })).toBe(true);
    }
    const put = document.paths['/api/jobs/{id}'].put;
    expect(put.requestBody.content['application/json'].schema.required).toEqual(['revision', 'name', 'steps', 'cursor']);
    expect(Object.keys(put.responses)).toContain('409');
    const page = await server.inject('/api');
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    for (const path of Object.keys(document.paths)) expect(page.body).toContain(path);
    expect(page.body).not.toMatch(/<script|style=/);
  });

  it('of the health names version and folder', async () => {
    const { server, folder } = await testServer({ version: '1.2.3' });
    expect((await server.inject('/api/health')).json()).toEqual({ answer: 'well', version: '1.2.3', folder });
  });
});

const ROUTES = [
  'get /api/jobs',
  'post /api/jobs',
  'get /api/jobs/:id',
  'put /api/jobs/:id',
  'delete /api/jobs/:id',
  'get /api/jobs/:id/drawing',
  'post /api/jobs/:id/log',
  'post /api/jobs/:id/programs',
  'get /api/jobs/:id/programs/:number',
  'delete /api/jobs/:id/programs/:number',
  'post /api/jobs/:id/programs/:number/put-back',
  'get /api/bin',
  'post /api/bin/:bin/put-back',
  'get /api/jobs/:id/files/:name',
  'get /api/shop',
  'put /api/shop',
  'get /api/health',
];
