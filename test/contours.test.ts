/** A job whose contours ask different things: sizes with fits, fine faces, holes as roughed, and requirements that find their contour again. */
import { describe, expect, it } from 'vitest';
import { jobRun, runWith } from '../src/cli/inputs.ts';
import { readDrawing } from '../src/drawing/read/read-drawing.ts';
import { type JobInput, jobSchema } from '../src/job/job.ts';
import type { JobRun } from '../src/job/job-run.ts';
import type { Answered } from '../src/job/pipeline/answer.ts';
import { runUpTo } from '../src/job/pipeline/pipeline.ts';
import { proveAgain } from '../src/job/pipeline/prove-again.ts';
import { putOn } from '../src/job/request/contour-shape.ts';
import { contoursAsked } from '../src/job/request/contours.ts';
import { printPlain } from '../src/text/print/print.ts';
import { asciiDxf, type Tag } from './dxf-writer.ts';
import { there } from './there.ts';

const shop = jobRun('examples/split-jaw/split-jaw.job.json', {}, '2026-11-25');

const circle = (x: number, y: number, diameter: number, layer = '0'): readonly Tag[] => [
  [0, 'CIRCLE'],
  [8, layer],
  [10, x],
  [20, y],
  [40, diameter / 2],
];
const box = (x: number, y: number, width: number, height: number): readonly Tag[] => [
  [0, 'LWPOLYLINE'],
  [8, '0'],
  [90, 4],
  [70, 1],
  ...[
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ].flatMap(([px, py]): readonly Tag[] => [
    [10, px ?? 0],
    [20, py ?? 0],
  ]),
];
const drawn = (...entities: readonly (readonly Tag[])[]): Uint8Array =>
  asciiDxf([
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$INSUNITS'],
    [70, 4],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...entities.flat(),
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ]);

/** A plate 100 x 60 (L1) with an opening 30 x 20 (L2), a hole of 20 (L3) and two of 8 (L4, L5). */
const PLATE = drawn(box(0, 0, 100, 60), box(10, 20, 30, 20), circle(60, 30, 20), circle(85, 15, 8, 'SCREWS'), circle(85, 45, 8, 'SCREWS'));

const run = (fields: Partial<JobInput>, drawing = PLATE): JobRun => ({
  ...shop,
  shop: { ...shop.shop, wires: shop.shop.wires.filter((w) => w.id === 'brass-0.25') },
  job: jobSchema.parse({
    drawing: 'plate.dxf',
    material: 'd2',
    height: 20,
    tolerance: 0.02,
    finish: 1.2,
    outline: 'block',
    wire: 'brass-0.25',
    ...fields,
  }),
  drawing,
  drawingName: 'plate.dxf',
});

const answered = (of: JobRun): Answered => {
  const answer = runUpTo(of, 'answer');
  if (answer.kind !== 'answered') throw new Error(answer.kind);
  return answer;
};

const asked = (contours: JobInput['contours'], drawing = PLATE) =>
  contoursAsked(run({ contours }).job, readDrawing(drawing, 'plate.dxf', {}));

describe('a size on a contour', () => {
  it('of 20 H7 is 20.000 to 20.021, aimed at 20.0105: 5.25 µm outward a side, and each face may be off by as much', () => {
    const { aims, findings } = asked({ L3: { size: '20 H7' } });
    const aim = there(aims.get('L3'));
    expect(findings.map((f) => f.code)).toEqual(['contour-aimed']);
    expect(aim.aimed).toBeCloseTo(20.0105, 10);
    expect(aim.moved).toBeCloseTo(0.00525, 10);
    expect(aim.tolerance).toBeCloseTo(0.00525, 10);
  });

  it('drawn in the middle of its limits already stays where it is, and of a part below its size it moves inward', () => {
    const middle = there(asked({ L3: { size: { length: 20, upper: 0.01, lower: -0.01 } } }).aims.get('L3'));
    expect(middle.moved).toBe(0);
    const below = there(asked({ L2: { size: { length: 30, upper: -0.02, lower: -0.06 } } }).aims.get('L2'));
    expect(below.moved).toBeCloseTo(-0.02, 10);
    expect(below.aimed).toBeCloseTo(29.96, 10);
  });

  it('that is not the one drawn is refused with both, and so is a zone that no table has', () => {
    const unlike = asked({ L3: { size: '22 H7' } });
    expect(unlike.findings.map((f) => f.code)).toEqual(['contour-size-unusable']);
    expect(printPlain(there(unlike.findings[0]).text)).toBe('L3: 22 H7 is required, and the nearest size across it is 20 mm.');
    expect(unlike.aims.size).toBe(0);
    expect(asked({ L3: { size: '20 Z7' } }).findings.map((f) => f.code)).toEqual(['contour-size-unusable']);
  });

  it.each([
    [{ L3: { size: '20 H7', tolerance: 0.01 } }, /size and tolerance/],
    [{ L3: { passes: 2, offsets: [0.2] } }, /passes and offsets/],
    [{ L3: { size: 'twenty' } }, /20 H7/],
  ])('that contradicts another field is refused with both: %j', (contours, message) => {
    const read = jobSchema.safeParse({ drawing: 'plate.dxf', contours });
    expect(read.success).toBe(false);
    expect(JSON.stringify(read.error?.issues)).toMatch(message);
  });

  it('and older fields that say different things of one contour are refused', () => {
    const read = jobSchema.safeParse({ drawing: 'plate.dxf', kept: { L3: 'die' }, contours: { L3: { kept: 'punch' } } });
    expect(JSON.stringify(read.error?.issues)).toMatch(/contours.L3.kept and kept.L3/);
    expect(jobSchema.safeParse({ drawing: 'plate.dxf', kept: { L3: 'die' }, contours: { L3: { kept: 'die' } } }).success).toBe(true);
  });
});

describe('a key', () => {
  it('of a layer, a shape and a contour: the more exact overrules, field by field', () => {
    const { requirements, job } = asked({
      L5: { finish: 0.6 },
      'like:L4': { finish: 2, tab: 1 },
      'layer:SCREWS': { finish: 3, tolerance: 0.1 },
    });
    expect(requirements?.['L4']).toMatchObject({ finish: 2, tolerance: 0.1 });
    expect(requirements?.['L5']).toMatchObject({ finish: 0.6, tolerance: 0.1 });
    expect(Object.keys(there(requirements)).toSorted()).toEqual(['L4', 'L5']);
    expect(job.overrides['L5']?.tab).toBe(1);
  });

  it('that asks what the job asks says nothing', () => {
    expect(asked({ L3: { finish: 1.2 } }).requirements).toBeUndefined();
  });
});

describe('what was put on a contour', () => {
  const loops = readDrawing(PLATE, 'plate.dxf', {}).loops;
  const on = putOn(there(loops.find((l) => l.id === 'L3')).contour);
  /** A new revision with one opening more: what was L3 is L4 now. */
  const revised = drawn(box(0, 0, 100, 60), box(10, 20, 30, 20), circle(60, 30, 20), circle(85, 15, 8), box(72, 38, 22, 18));

  it('finds it again by its shape, and says so', () => {
    const again = asked({ L3: { finish: 0.6, on } }, revised);
    expect(Object.keys(there(again.requirements))).toEqual(['L4']);
    expect(again.findings.map((f) => f.code)).toEqual(['contour-found-again']);
  });

  it('is a question where the shape is gone, and never put on the neighbour that has its number', () => {
    const gone = asked({ L3: { finish: 0.6, on } }, drawn(box(0, 0, 100, 60), box(10, 20, 30, 20), circle(60, 30, 21)));
    expect(gone.requirements).toBeUndefined();
    expect(gone.findings.map((f) => [f.code, f.severity])).toEqual([['contour-not-found', 'doubt']]);
    expect(asked({ L9: { finish: 0.6 } }).findings.map((f) => f.code)).toEqual(['contour-not-found']);
    expect(asked({ 'layer:NONE': { finish: 0.6 } }).findings.map((f) => f.code)).toEqual(['contour-not-found']);
  });
});

describe('a plate whose openings ask different things', () => {
  const given = answered(run({ contours: { L3: { size: '20 H7', finish: 0.8 }, 'layer:SCREWS': { finish: 6, tolerance: 0.06 } } }));
  const { proven, facts } = given as Answered & { readonly proven: NonNullable<Answered['proven']> };

  it('is proven, with registers of its own for each family', () => {
    expect(facts.outcome.answer, printPlain(facts.sentence)).toBe('yes');
    const registers = Object.keys(proven.setup.registers).map(Number);
    expect(registers.filter((n) => n > 20)).toHaveLength(1);
    expect(registers.filter((n) => n > 10 && n < 20).length).toBeGreaterThan(registers.filter((n) => n < 10).length);
    expect(proven.setup.contours?.['L4']?.passes).toEqual([21]);
    expect(proven.setup.contours?.['L3']?.moved).toBeCloseTo(0.00525, 9);
  });

  it('is proven again from its set-up file alone, and no more when the aim or a pass is taken away', () => {
    const ask = (setup = proven.setup, program = proven.question.program) =>
      proveAgain({ program, drawing: PLATE, drawingName: 'plate.dxf', setup });
    const verdict = (outcome: ReturnType<typeof ask>) => (outcome.kind === 'judged' ? outcome.proof.verdict : outcome.kind);
    expect(verdict(ask())).toBe('proven');
    const { contours = {}, ...rest } = proven.setup;
    expect(verdict(ask({ ...rest, contours: { ...contours, L3: { ...contours['L3'], moved: 0 } } }))).toBe('not proven');
    // The program of one pass does not finish a contour that is to have the passes of the first family.
    expect(verdict(ask({ ...rest, contours: { ...contours, L4: { tolerance: 0.06 } } }))).toBe('not proven');
    const swapped = proven.question.program.replace(/ D21\b/g, ' D11');
    expect(verdict(ask(proven.setup, swapped))).toBe('not proven');
  });
});

it('the command line takes what contours require, over the job file', () => {
  const taken = runWith(
    { drawing: 'die.dxf', contours: { L3: { finish: 0.4, tab: 2 } } },
    'die.job.json',
    () => 'examples/split-jaw/split-jaw.dxf',
    { contour: ['L3:finish=0.6,size=20 H7', 'like:L4:offsets=0.2/0.15,tolerance=10 µm'] },
    '2026-11-25',
  );
  expect(taken.job.contours).toEqual({
    L3: { finish: 0.6, tab: 2, size: '20 H7' },
    'like:L4': { offsets: [0.2, 0.15], tolerance: 0.01 },
  });
  expect(() => runWith({ drawing: 'a.dxf' }, 'a', () => '', { contour: ['L3 finish 0.4'] }, '2026-11-25')).toThrow();
});
