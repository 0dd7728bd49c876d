/** Programs from elsewhere, and jobs in the bin: how they are kept, let go of, and put back. */
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { binnedSchema, binSchema, errorSchema, summarySchema } from './message/answers.ts';
import { recordSchema } from './message/job-record.ts';
import { closeAll, form, SQUARE, square, testServer } from './serve.fixture.ts';

afterAll(closeAll);

describe('programs from elsewhere', () => {
  it('are kept with the job as they came, by number', async () => {
    const { server } = await testServer();
    const { id } = await square(server);
    const url = `/api/jobs/${id}/programs`;
    const files = [
      { name: 'from the customer.nc', content: 'G1 X1\r\n' },
      { name: 'second.txt', content: '<script>' },
    ];
    const kept = await server.inject({ method: 'POST', url, ...form(...files) });
    expect(kept.statusCode).toBe(201);
    expect(recordSchema.parse(kept.json()).programs?.map((p) => p.name)).toEqual(['from the customer.nc', 'second.txt']);
    const answers = await Promise.all([1, 2, 3].map((n) => server.inject(`${url}/${n}`)));
    expect(answers.map((a) => a.statusCode)).toEqual([200, 200, 404]);
    expect(answers[0]?.body).toBe('G1 X1\r\n');
    expect(answers[1]?.headers['content-type']).toBe('application/octet-stream');
    expect((await server.inject({ method: 'POST', url, ...form() })).statusCode).toBe(400);
    expect((await server.inject({ method: 'POST', url: '/api/jobs/..%2fxx/programs', ...form(...files) })).statusCode).toBe(404);
    const saving = await server.inject({
      method: 'PUT',
      url: `/api/jobs/${id}`,
      payload: { revision: 0, name: 'x', steps: kept.json().steps, cursor: 0 },
    });
    expect(saving.statusCode).toBe(200);
    expect((await server.inject(`/api/jobs/${id}`)).json().programs).toHaveLength(2);
  });

  it('are taken away and put back, each under its own number', async () => {
    const { server } = await testServer();
    const { id } = await square(server);
    const url = `/api/jobs/${id}/programs`;
    const bring = (name: string) => server.inject({ method: 'POST', url, ...form({ name, content: `(${name})` }) });
    for (const name of ['first.nc', 'Lochplatte Ø8 (2).nc']) await bring(name);
    const away = recordSchema.parse((await server.inject({ method: 'DELETE', url: `${url}/1` })).json());
    expect(away.programs?.map((p) => p.removed)).toEqual(['2026-11-25T08:00:00.000Z', undefined]);
    const gone = await server.inject(`${url}/1`);
    expect([gone.statusCode, gone.json().sentence]).toEqual([404, 'The program first.nc was removed from this job.']);
    expect((await server.inject({ method: 'DELETE', url: `${url}/1` })).statusCode).toBe(404);
    await bring('third.nc');
    const second = await server.inject(`${url}/2`);
    expect(second.body).toBe('(Lochplatte Ø8 (2).nc)');
    expect(second.headers['content-disposition']).toBe(
      `attachment; filename="Lochplatte _8 _2_.nc"; filename*=UTF-8''Lochplatte%20%C3%988%20%282%29.nc`,
    );
    expect((await server.inject(`${url}/3`)).body).toBe('(third.nc)');
    const back = await server.inject({ method: 'POST', url: `${url}/1/put-back` });
    expect(recordSchema.parse(back.json()).programs?.every((p) => p.removed === undefined)).toBe(true);
    expect((await server.inject(`${url}/1`)).body).toBe('(first.nc)');
    expect((await server.inject({ method: 'POST', url: `${url}/9/put-back` })).statusCode).toBe(404);
  });
});

describe('jobs that are binned', () => {
  it('are moved into the bin whole, never deleted', async () => {
    const { server, folder } = await testServer();
    const { id } = await square(server);
    const away = await server.inject({ method: 'DELETE', url: `/api/jobs/${id}` });
    const { bin } = binnedSchema.parse(away.json());
    expect([away.statusCode, bin]).toEqual([200, `${id}.20261125080000000`]);
    expect((await server.inject(`/api/jobs/${id}`)).statusCode).toBe(404);
    expect((await server.inject({ method: 'DELETE', url: `/api/jobs/${id}` })).statusCode).toBe(404);
    expect(readFileSync(join(folder, 'bin', bin, 'drawing.svg'), 'utf8')).toBe(SQUARE);
  });

  it('in the bin are listed, the last one first, and put back as they were', async () => {
    let minute = 0;
    const { server, folder } = await testServer({ clock: () => new Date(Date.UTC(2026, 10, 25, 8, minute++)) });
    const list = async () => binSchema.parse((await server.inject('/api/bin')).json());
    expect(await list()).toEqual({ folder: join(folder, 'bin'), jobs: [] });
    const [one, damaged] = [await square(server), await square(server)];
    await server.inject({ method: 'POST', url: `/api/jobs/${one.id}/log`, payload: { kind: 'note', about: '', text: 'kept' } });
    const before = (await server.inject(`/api/jobs/${one.id}`)).json();
    writeFileSync(join(folder, 'jobs', damaged.id, 'record.json'), 'cut');
    for (const { id } of [one, damaged]) await server.inject({ method: 'DELETE', url: `/api/jobs/${id}` });
    for (const name of ['not-ours', `${one.id}.99999999999999999`]) mkdirSync(join(folder, 'bin', name));
    const { jobs } = await list();
    expect(jobs.map((j) => [j.id, j.fault === undefined])).toEqual([
      [damaged.id, false],
      [one.id, true],
    ]);
    for (const { id, binnedAt, bin } of jobs) expect(bin).toBe(`${id}.${binnedAt.replaceAll(/\D/g, '')}`);
    expect(jobs[0]?.fault).toContain(`bin/${jobs[0]?.bin}/record.json`);
    expect(jobs[1]).toMatchObject({ name: 'square', drawingName: 'square.svg', changed: before.changed });
    const back = (bin = '') => server.inject({ method: 'POST', url: `/api/bin/${bin}/put-back` });
    const row = await back(jobs[1]?.bin);
    expect([row.statusCode, summarySchema.parse(row.json()).id]).toEqual([200, one.id]);
    expect((await server.inject(`/api/jobs/${one.id}`)).json()).toEqual(before);
    expect((await back(jobs[0]?.bin)).json().fault).toContain(`jobs/${damaged.id}/record.json`);
    expect((await list()).jobs).toEqual([]);
    expect(readdirSync(join(folder, 'bin')).sort()).toEqual([`${one.id}.99999999999999999`, 'not-ours'].sort());
  });

  it('in the bin never come back over one that is there, nor from anywhere else', async () => {
    const { server, folder } = await testServer();
    const { id } = await square(server);
    const { bin } = (await server.inject({ method: 'DELETE', url: `/api/jobs/${id}` })).json();
    cpSync(join(folder, 'bin', bin), join(folder, 'jobs', id), { recursive: true });
    const back = async (name: string) => {
      const answer = await server.inject({ method: 'POST', url: `/api/bin/${name}/put-back` });
      return [answer.statusCode, errorSchema.parse(answer.json()).error];
    };
    expect(await back(bin)).toEqual([409, 'there-already']);
    expect(readdirSync(join(folder, 'bin'))).toEqual([bin]);
    for (const name of [`${id}.20200101000000000`, `${id}.99999999999999999`, `..%2fjobs%2f${id}`, '..', id])
      expect(await back(name)).toEqual([404, 'not-found']);
  });
});
