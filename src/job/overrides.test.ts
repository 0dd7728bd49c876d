/** A job with things set by hand: the program counts from its datum, the proof judges registers, and a job without them is as it was. */

import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { readText } from '../cli/files.ts';
import { printedPaper } from '../documents/paper-for-reader.ts';
import { paperText } from '../documents/paper-text.fixture.ts';
import { holeSheet } from '../documents/sheet/hole-sheet.ts';
import { setupSheet } from '../documents/sheet/setup-sheet.ts';
import { resultOf } from '../result/facts.ts';
import { sentenceOf } from '../text/finding.fixture.ts';
import { HOUSE } from '../text/reader.ts';
import { answered, cut, program, proven } from './answered.fixture.ts';
import { builtInShop } from './built-in-shop.ts';
import { readDialectFile, standardDialect } from './files/dialects.ts';
import { type Job, jobSchema } from './job.ts';
import type { JobRun } from './job-run.ts';
import type { Answered } from './pipeline/answer.ts';
import { proveAgain } from './pipeline/prove-again.ts';
import { plateOf } from './plate.fixture.ts';

const job = jobSchema.parse({ drawing: 'plate.dxf', outline: 'block', tolerance: 0.008 });
const small: JobRun = {
  job,
  said: new Set(['outline', 'tolerance']),
  drawing: plateOf(3),
  drawingName: 'plate.dxf',
  shop: builtInShop,
  dialect: standardDialect,
  day: '2026-11-25',
};
const plain = answered(small);

const withJob = (job: Partial<Job>, run: JobRun = small): Answered => answered({ ...run, job: { ...run.job, ...job } });

const planOf = ({ facts }: Answered) => cut(facts).plan;
const programOf = (answer: Answered): string => program(answer.facts).text;

/** X and Y of the first travel. */
const firstPlace = (program: string): readonly number[] => [...there(/G00 X(-?[\d.]+) Y(-?[\d.]+)/.exec(program)).slice(1)].map(Number);

const again = (answer: Answered, { setup } = proven(answer)) =>
  proveAgain({ program: programOf(answer), drawing: small.drawing, drawingName: small.drawingName, setup });

const dialectOf = (path: string) => {
  const read = readDialectFile(readText(path));
  if (read.kind === 'bad') throw new Error(sentenceOf(read.findings[0]));
  return read.dialect;
};

describe('a datum set by hand', () => {
  const datum = { x: 12.5, y: -7.25 };
  const moved = withJob({ datum });

  it('is where the program has its zero, and the answer stays the same', () => {
    expect(moved.facts.outcome.answer).toBe('yes');
    const place = { kind: 'spot', x: 12.5, y: -7.25, reach: 2 };
    expect(moved.facts.findings.filter((f) => f.code === 'datum-set').map((f) => f.place)).toEqual([place]);
    const [x, y] = firstPlace(programOf(plain));
    expect(firstPlace(programOf(moved))[0]).toBeCloseTo(there(x) - 12.5, 3);
    expect(firstPlace(programOf(moved))[1]).toBeCloseTo(there(y) + 7.25, 3);
    expect(there(planOf(moved).contours[0]).hole).toEqual(there(planOf(plain).contours[0]).hole);
    const first = proven(moved).read.actions.find((a) => a.kind === 'move');
    expect(first?.kind === 'move' && first.centre.to.x).toBeCloseTo(there(x), 3);
  });

  it('goes into the set-up file, by which the program is proven again, and without which it is not', () => {
    expect(proven(moved).setup.datum).toEqual(datum);
    expect(again(moved)).toMatchObject({ kind: 'judged', proof: { verdict: 'proven' } });
    const { datum: _, ...without } = proven(moved).setup;
    expect(again(moved, { ...proven(moved), setup: without })).toMatchObject({ kind: 'judged', proof: { verdict: 'not proven' } });
  });

  it('is what the program is scaled about', () => {
    const warm = withJob({ datum, temperature: { cutting: 26, measuring: 20, swing: 1, scale: true } });
    expect(warm.facts.outcome.answer).toBe('yes');
    expect(proven(warm).setup.scaled).toEqual({ factor: expect.any(Number), expansion: expect.any(Number), temperature: 26 });
    expect(again(warm)).toMatchObject({ kind: 'judged', proof: { verdict: 'proven' } });
    const { holes } = proven(warm).setup;
    for (const [i, { at }] of proven(plain).setup.holes.entries()) {
      expect(there(holes[i]).at.x).toBeCloseTo(at.x, 2);
      expect(there(holes[i]).at.y).toBeCloseTo(at.y, 2);
    }
  });

  it('at the zero of the drawing changes nothing', () => {
    expect(programOf(withJob({ datum: { x: 0, y: 0 } }))).toBe(programOf(plain));
  });

  it('is what tables count from, in inches as well', () => {
    const inch = { ...small, dialect: dialectOf('dialects/inch.json') };
    const { facts } = withJob({ datum }, inch);
    const hole = there(planOf(plain).contours.find((c) => c.loop === planOf(plain).order[0])).hole.at;
    const inches = (mm: number): string => Number((mm / 25.4).toFixed(4)).toString();
    for (const paper of [setupSheet(facts, { cut: cut(facts), program: program(facts) }), holeSheet(facts, cut(facts))]) {
      const text = paperText(printedPaper(paper, HOUSE));
      expect(text).toContain('X 12.5, Y -7.25 mm of the drawing');
      expect(text).toContain(inches(hole.x - datum.x));
      expect(text).toContain(inches(hole.y - datum.y));
    }
  });
});

describe('registers set by hand', () => {
  const right = planOf(plain).passes.map((p) => Number(p.offset.value.toFixed(4)));
  const wire = planOf(plain).wire.id;
  const wrong = right.map((o, i) => (i === right.length - 1 ? o - 0.0125 : o));

  it('that spoil the contour are refused by the proof', () => {
    const { facts } = withJob({ wire, offsets: wrong });
    expect(facts.outcome.answer).toBe('no');
    expect(program(facts).proof.verdict).toBe('not proven');
    expect(cut(facts).budgets?.profile.rows[0]?.figure.key).toBe('budget.register');
  });

  it('move the path itself where the dialect writes it out', () => {
    const path: JobRun = { ...small, dialect: { ...small.dialect, compensation: 'path' } };
    expect(withJob({ wire, offsets: right }, path).facts.outcome.answer).toBe('yes');
    const spoilt = withJob({ wire, offsets: wrong }, path);
    expect(programOf(spoilt)).not.toBe(programOf(withJob({ wire, offsets: right }, path)));
    expect(spoilt.facts.outcome.answer).toBe('no');
  });
});

describe('a job that sets things by hand', () => {
  it('names them by contour and for the whole', () => {
    const plan = planOf(plain);
    const first = there(plan.contours[0]);
    const others = plan.order.filter((id) => id !== first.loop);
    const ran = withJob({ overrides: { [first.loop]: { entry: first.entry.at, tab: 6 } }, order: [...plan.order], passes: 2 });
    expect(ran.facts.asked.overrides).toEqual({
      contours: { [first.loop]: ['entry', 'tab', 'order'], ...Object.fromEntries(others.map((id) => [id, ['order']])) },
      whole: ['passes', 'order'],
    });
    expect(plain.facts.asked.overrides).toBeUndefined();
  });

  it('reads its keys with their faults located', () => {
    const bad = jobSchema.safeParse({ drawing: 'a.dxf', overrides: { L1: { tab: -1 } }, passes: 0, offsets: [0] });
    expect(bad.error?.issues.map((i) => i.path.join('.'))).toEqual(['overrides.L1.tab', 'passes', 'offsets.0']);
    expect(jobSchema.parse({ drawing: 'a.dxf' })).toMatchObject({ overrides: {}, order: [] });
  });
});

describe('the wire of a job with passes or registers set by hand', () => {
  it('is not exchanged for one that the registers happen to fit', () => {
    const { wire } = planOf(plain);
    const { facts: low } = withJob({ offsets: planOf(plain).passes.map(() => wire.diameter / 2 - 0.01) });
    expect(low.outcome.answer).toBe('no');
    expect(low.findings.find((f) => f.severity === 'refusal')).toMatchObject({
      code: 'offset-below-wire',
      place: { kind: 'field', path: 'offsets.0' },
    });
    expect(resultOf(low)?.wire.id).toBe(wire.id);
  });

  it('is the one that comes nearest where none reaches what is asked', () => {
    const { facts: one } = withJob({ passes: 1, finish: 2.65 });
    expect(one.findings.map((f) => f.code)).toContain('passes-fall-short');
    const { facts: rough } = withJob({ passes: 1, finish: 6, tolerance: 0.05 });
    expect(rough.findings.map((f) => f.code)).not.toContain('passes-fall-short');
  });
});
