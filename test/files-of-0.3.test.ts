/** Files that version 0.3 wrote are read by today's readers and come to the same verdict; nothing they say is lost. */

import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { stopsOf } from '../src/app/run/stops-of-run.ts';
import { scheduleView } from '../src/app/work/schedule-view.ts';
import { printedSchedule, tellIn } from '../src/app/work/sheet-for-reader.ts';
import { jobRun } from '../src/cli/inputs.ts';
import { houseLetters } from '../src/font-files/letters-on-disk.ts';
import { readDialectFile } from '../src/job/files/dialects.ts';
import { nestSchema } from '../src/job/files/nest-file.ts';
import { parseFile, parseValue } from '../src/job/files/parse.ts';
import { setupSchema } from '../src/job/files/setup-file.ts';
import { jobSchema } from '../src/job/job.ts';
import type { Answer } from '../src/job/pipeline/answer.ts';
import { runUpTo } from '../src/job/pipeline/pipeline.ts';
import { proveAgain } from '../src/job/pipeline/prove-again.ts';
import { readMeasured } from '../src/job/request/read-measured.ts';
import { askedRun } from '../src/job/request/run-from-data.ts';
import { drawShape, shapeSchema } from '../src/job/request/shape-drawing.ts';
import { shopSchema } from '../src/job/shop.ts';
import { stopSaid } from '../src/nc/read/stop-purpose.ts';
import { cutOf, hoursOf } from '../src/result/facts.ts';
import { shopRecordSchema } from '../src/server/message/answers.ts';
import { type JobRecord, recordSchema } from '../src/server/message/job-record.ts';
import { closeAll, testServer } from '../src/server/serve.fixture.ts';
import { sentenceOf } from '../src/text/finding.fixture.ts';
import { HOUSE } from '../src/text/reader.ts';
import { layNest } from '../tools/goldens/examples.ts';

const OLD = 'test/inputs/0.3';
const files = (ending: string): readonly string[] =>
  (readdirSync(OLD, { recursive: true, encoding: 'utf8' }) as string[])
    .filter((f) => f.endsWith(ending) && !f.startsWith('kept'))
    .map((f) => f.replaceAll('\\', '/'))
    .sort();
const text = (file: string): string => readFileSync(join(OLD, file), 'utf8');
const data = (file: string) => JSON.parse(text(file));

/** Everything that is said somewhere in a file, whatever the keys it stands under are called. */
const valuesIn = (value: unknown): readonly string[] =>
  typeof value === 'object' && value !== null ? Object.values(value).flatMap(valuesIn) : [JSON.stringify(value)];

/** The one value that is called otherwise now. */
const calledNow = (value: string): string => (value === '"burn"' ? '"no-core"' : value);

/** What a reader dropped of a file. */
const lost = (schema: z.ZodType, value: unknown): readonly string[] => {
  const read = parseValue(schema, value, 'the file');
  if (read.kind === 'bad') return read.findings.map(sentenceOf);
  const kept = new Set(valuesIn(read.value));
  return valuesIn(value).filter((v) => !kept.has(calledNow(v)));
};

describe('what files of 0.3 say', () => {
  it.each([
    ['jobs', jobSchema, files('.job.json'), 15],
    ['nests', nestSchema, files('.nest.json'), 3],
    ['shops', shopSchema, files('shop.json'), 2],
    ['set-ups', setupSchema, files('.setup.json'), 7],
  ] as const)('is all there after it was read: %s', (_, schema, names, count) => {
    expect(names).toHaveLength(count);
    for (const name of names) expect([name, ...lost(schema, data(name))]).toEqual([name]);
  });

  it('is all there after it was read: dialects', () => {
    const names = files('.dialect.json');
    expect(names).toHaveLength(3);
    for (const name of names) {
      const read = readDialectFile(text(name));
      expect(read, name).toMatchObject({ kind: 'dialect', findings: [] });
      const kept = new Set(valuesIn(read.kind === 'dialect' ? read.dialect : undefined));
      expect([name, ...valuesIn(data(name)).filter((v) => !kept.has(v))]).toEqual([name]);
    }
  });
});

/** 'yes', 'no', 'cannot' or 'bad input', and with how many passes. */
const verdictOf = (answer: Answer): string =>
  answer.kind !== 'answered' ? answer.kind : `${answer.facts.outcome.answer}, ${cutOf(answer.facts)?.plan.passes.length ?? 'no'} passes`;

/** Three take a pass more than they did: a finish is planned below its limit now, and a promise holds two standard deviations. */
const VERDICTS: Readonly<Record<string, string>> = {
  'die-plate/die-plate': 'yes, 3 passes',
  'form-insert/form-insert': 'no, no passes',
  'form-insert/form-insert-eased': 'yes, 4 passes',
  'more/by-hand': 'yes, 3 passes',
  'more/from-edge': 'yes, 2 passes',
  'more/left': 'yes, 2 passes',
  'more/lifted': 'yes, 2 passes',
  'more/no-conductor': 'cannot',
  'more/polygon': 'yes, 2 passes',
  'more/stack': 'yes, 2 passes',
  'night-plate/night-plate': 'yes, 2 passes',
  'punch-set/punch-set': 'yes, 3 passes',
  'spline-hub/spline-hub': 'yes, 3 passes',
  'split-jaw/split-jaw': 'yes, 2 passes',
  'thick-gear/thick-gear': 'yes, 3 passes',
};

describe('jobs of 0.3', () => {
  it.each(Object.keys(VERDICTS))('%s is answered as it was', (name) => {
    // With a wire named, so that not every wire of the shop is tried: that is no matter of reading. Programs of 0.3 had the whole tolerance.
    const run = jobRun(`${OLD}/${name}.job.json`, { wire: 'brass-0.25', programShare: '1' }, '2026-11-25');
    expect(verdictOf(runUpTo(run, 'answer'))).toBe(VERDICTS[name]);
  });

  it('and their parts by numbers are drawn, but for the one that never could be', () => {
    const refused = (data('more/shapes.json') as unknown[]).flatMap((asked) => {
      expect([JSON.stringify(asked), ...lost(shapeSchema, asked)]).toEqual([JSON.stringify(asked)]);
      const drawn = drawShape(shapeSchema.parse(asked), { letters: houseLetters });
      return drawn.kind === 'refused' ? drawn.findings.map((f) => f.code) : [];
    });
    expect(refused).toEqual(['gear-helical']);
  });

  it.each([
    ['more/full', 4],
    ['more/rows', 3],
  ] as const)('nests: %s lays all pieces that it laid', (name, pieces) => {
    const { nest } = layNest(`${OLD}/${name}.nest.json`).answer.facts;
    expect([nest.placed.length, nest.left]).toEqual([pieces, []]);
  });
});

describe('keys of 0.3', () => {
  const notesOf = (schema: z.ZodType, name: string): readonly string[] => {
    const read = parseFile(schema, text(name), basename(name));
    return read.kind === 'parsed' ? read.notes.map(sentenceOf) : read.findings.map(sentenceOf);
  };

  it('are read with one note for a file, which lists them', () => {
    expect(notesOf(jobSchema, 'more/by-hand.job.json')).toEqual([
      'by-hand.job.json has words of version 0.3: byHand (now overrides). They were read; files written now have the new ones.',
    ]);
    expect(notesOf(shopSchema, 'workshop/shop.json')).toEqual([
      'shop.json has words of version 0.3: rungs (now energySettings), formFloor (now bestFormError), threadsItself (now autoThreading) and margin (now markup). They were read; files written now have the new ones.',
    ]);
    expect(notesOf(jobSchema, 'split-jaw/split-jaw.job.json')).toEqual([
      'split-jaw.job.json has words of version 0.3: burn (now no-core). They were read; files written now have the new ones.',
    ]);
    expect(notesOf(nestSchema, 'mixed-plate/mixed-plate.nest.json')).toHaveLength(1);
    expect(notesOf(jobSchema, 'die-plate/die-plate.job.json')).toEqual([]);
  });

  it('stand in the answer once for each file that has them, and change nothing but that', () => {
    const of = (path: string) => runUpTo(jobRun(path, { wire: 'brass-0.25' }, '2026-11-25'), 'answer');
    const [old, now] = [of(`${OLD}/die-plate/die-plate.job.json`), of('examples/die-plate/die-plate.job.json')];
    if (old.kind !== 'answered' || now.kind !== 'answered') throw new Error('the die plate has no answer');
    const codes = ({ facts }: typeof old) => facts.findings.map((f) => f.code);
    expect(codes(old).filter((code) => code === 'old-keys')).toHaveLength(1);
    expect(codes(old).filter((code) => code !== 'old-keys')).toEqual(codes(now));
    expect(hoursOf(old.facts)?.estimate.each.value).toBe(hoursOf(now.facts)?.estimate.each.value);
  });

  it('are refused beside the new ones', () => {
    const both = { ...data('more/by-hand.job.json'), overrides: {} };
    const read = parseValue(jobSchema, both, 'both.job.json');
    expect(read.kind === 'bad' && read.findings.map(sentenceOf)).toEqual(["both.job.json: the file has no field 'byHand'."]);
  });
});

describe('programs of 0.3', () => {
  it.each([
    ['by-hand', 'die-plate/die-plate.dxf', { 'secure slug': 3, 'take out slug': 3 }],
    ['form-insert-eased', 'form-insert/form-insert.dxf', { 'secure part': 1, 'take out part': 1 }],
    ['from-edge', 'die-plate/die-plate.dxf', { 'secure slug': 1, 'take out slug': 1 }],
    ['left', 'split-jaw/split-jaw.dxf', { thread: 4, 'set condition': 6, 'cut the wire': 4, 'secure part': 1, 'take out part': 1 }],
    ['lifted', 'form-insert/form-insert.dxf', { 'secure part': 1, 'take out part': 1 }],
    ['split-jaw', 'split-jaw/split-jaw.dxf', { 'secure slug': 4, 'take out slug': 4 }],
    ['stack', 'form-insert/form-insert.dxf', { thread: 2, 'set condition': 1, 'cut the wire': 2, 'secure part': 1, 'take out part': 1 }],
  ] as const)('%s is proven by its set-up, and every stop is for what it was for', (name, drawing, purposes) => {
    const setup = parseFile(setupSchema, text(`programs/${name}.setup.json`), 'the set-up');
    if (setup.kind === 'bad') throw new Error(sentenceOf(setup.findings[0]));
    const program = text(`programs/${name}.nc`);
    const whole = { ...setup.value, programShare: 1 };
    const proven = proveAgain({ program, drawing: readFileSync(join(OLD, drawing)), drawingName: basename(drawing), setup: whole });
    if (proven.kind === 'bad input') throw new Error(sentenceOf(proven.findings[0]));
    expect(proven.proof.verdict).toBe('proven');
    const counted: Record<string, number> = {};
    for (const { comment } of proven.proof.stops) {
      const { purpose } = stopSaid(comment);
      counted[purpose] = (counted[purpose] ?? 0) + 1;
    }
    expect(counted).toEqual(purposes);
  });
});

describe('the folder of a server of 0.3', () => {
  const copies: string[] = [];
  afterAll(async () => {
    await closeAll();
    for (const copy of copies) rmSync(copy, { recursive: true, force: true });
  });
  const served = async (more: Readonly<Record<string, unknown>> = {}) => {
    const folder = join(mkdtempSync(join(tmpdir(), 'kerfwright-old-')), 'kept');
    copies.push(folder);
    cpSync(join(OLD, 'kept'), folder, { recursive: true });
    const shop = data('kept/shop.json');
    writeFileSync(join(folder, 'shop.json'), JSON.stringify({ ...shop, said: { ...shop.said, ...more } }));
    return (await testServer({ folder })).server;
  };
  const [id = ''] = readdirSync(join(OLD, 'kept', 'jobs'));
  const opened = async (server: Awaited<ReturnType<typeof served>>): Promise<JobRecord> =>
    recordSchema.parse((await server.inject(`/api/jobs/${id}`)).json());

  it('is listed and opened: jobs, bin, shop and programs', async () => {
    const server = await served();
    const rows = (await server.inject('/api/jobs')).json();
    expect(rows).toMatchObject([{ id, name: 'Split clamping jaw', revision: 1 }]);
    expect(rows[0]).not.toHaveProperty('fault');
    const kept = new Set(valuesIn(await opened(server)));
    expect(valuesIn(data(`kept/jobs/${id}/record.json`)).filter((v) => !kept.has(calledNow(v)))).toEqual([]);
    const bin = (await server.inject('/api/bin')).json().jobs;
    expect(bin).toMatchObject([{ name: 'Hexagon punch' }]);
    expect(bin[0]).not.toHaveProperty('fault');
    const shop = (await server.inject('/api/shop')).json();
    expect(lost(shopRecordSchema, shop)).toEqual([]);
    const values = new Set(valuesIn(shop));
    expect(valuesIn(data('kept/shop.json')).filter((v) => !values.has(v))).toEqual([]);
    expect((await server.inject({ method: 'PUT', url: '/api/shop', payload: shop })).statusCode).toBe(200);
    expect((await server.inject(`/api/jobs/${id}/programs/1`)).body).toBe(text('programs/stack.nc'));
  });

  it('is written under the new keys, and says of every value still where it comes from', async () => {
    const server = await served({ 'rates/2026-07-01/margin': { on: '2026-11-01', basis: 'owner' } });
    const shop = shopRecordSchema.parse((await server.inject('/api/shop')).json());
    expect(shop.sources).toEqual({
      'wires/brass-0.25/price': { on: '2026-10-01', basis: 'invoice' },
      'rates/2026-07-01/markup': { on: '2026-11-01', basis: 'owner' },
    });
    expect(shopSchema.parse(shop.shop).rates.map((r) => r.markup)).toEqual([0.18, 0.18]);
    expect((await opened(server)).programs?.map((p) => p.removed)).toEqual([undefined, '2026-11-25T08:54:00.000Z']);
  });

  it('gives every step of a job that can be run, and the log is read by it', async () => {
    const server = await served();
    const record = await opened(server);
    const kept = shopRecordSchema.parse((await server.inject('/api/shop')).json());
    const drawing = readFileSync(join(OLD, 'kept', 'jobs', id, 'drawing.dxf'));
    const runs = record.steps.map(({ input }) => {
      const asked = askedRun({
        input,
        drawing,
        drawingName: record.drawingName,
        shop: kept.shop,
        dialect: kept.dialect ?? '',
        day: '2026-11-25',
      });
      if (asked.kind === 'bad') throw new Error(sentenceOf(asked.findings[0]));
      return asked.run;
    });
    expect(runs.map(({ job }) => [job.finish, job.height])).toEqual([
      [1.6, 25],
      [1.8, 25],
      [1.8, 30],
    ]);
    const now = runs[record.cursor];
    if (now === undefined) throw new Error('no step is in force');
    const answer = runUpTo(now, 'answer');
    if (answer.kind !== 'answered') throw new Error('the job has no answer');
    const hours = hoursOf(answer.facts);
    const view = hours && scheduleView(hours, now.shop);
    const schedule = view && printedSchedule(view, tellIn(HOUSE));
    const ticked = schedule === undefined ? [] : stopsOf(schedule, record.log).map((s) => s.ticked !== undefined);
    // The last one was ticked and opened again.
    expect(ticked).toEqual([...Array(16).fill(true), false]);
    const measured = record.log.filter((entry) => entry.kind === 'measured').map((entry) => readMeasured(entry.text));
    expect(measured).toMatchObject([
      { kind: 'measured', measured: { loop: 'L5', size: 12.006, expected: 12, temperature: 22, sides: 2 } },
      { kind: 'measured', measured: { loop: 'L2', size: 8.004, expected: 8, temperature: 20, sides: 1 } },
    ]);
  });
});
