/** Registers may be raised as far as the set-up sheet says: the program still reads and gouges nothing, and beyond that `correct` forbids it. */
import { describe, expect, it } from 'vitest';
import { jobRun } from '../src/cli/inputs.ts';
import { roundedRectangle } from '../src/geometry/example-shapes.fixture.ts';
import { runUpTo } from '../src/job/pipeline/pipeline.ts';
import { readProgram } from '../src/nc/read/read.ts';
import { planCut } from '../src/plan/cut/plan-cut.ts';
import { disc, loop, planned, questionFor, rectangle } from '../src/plan/plan.fixture.ts';
import { tightestPath } from '../src/plan/wire/deviation-of-passes.ts';
import { leastRoom, REGISTER_ROOM, registerLimits, writtenTighter } from '../src/plan/wire/register-room.ts';
import { allowedTo } from '../src/proof/share.ts';
import { there } from './there.ts';

const EXAMPLES = [
  'die-plate/die-plate',
  'punch-set/punch-set',
  'split-jaw/split-jaw',
  'form-insert/form-insert-eased',
  'night-plate/night-plate',
];

const made = (example: string) => {
  const run = jobRun(`examples/${example}.job.json`, {}, '2026-11-25');
  const program = runUpTo(run, 'program');
  if (program.kind !== 'programmed') throw new Error(program.kind);
  const { plan, written, asked } = program;
  return { run, plan, written, asked, limits: registerLimits(plan, asked.request.question.resolution) };
};

describe.each(EXAMPLES)('the program of %s', (example) => {
  const { run, plan, written, limits } = made(example);

  const readWith = (change: (before: number, register: number) => number): string =>
    readProgram(written.text, run.dialect, new Map([...written.registers].map(([n, mm]) => [n, change(mm, n)]))).state;

  it('has room for registers raised by 15 µm, and reads with each at its limit', () => {
    for (const [n, limit] of limits) expect(limit - there(written.registers.get(n))).toBeGreaterThan(0.015);
    expect(readWith((mm) => mm + 0.015)).toBe('read');
    expect(readWith((_, n) => there(limits.get(n) ?? written.registers.get(n)))).toBe('read');
  });

  it('cannot be followed with every register well beyond a limit that its arcs set', () => {
    expect(limits.size).toBe(plan.passes.length);
    const byArcs = plan.passes.some((p) => there(limits.get(p.register)) < p.offset.value + 0.0199);
    expect(readWith((_, n) => there(limits.get(n)) + 0.002)).toBe(byArcs ? 'refused' : 'read');
  });
});

it('may give short moves to their neighbours by half of what the program may use', () => {
  const { run, asked } = made('die-plate/die-plate');
  expect(there(asked.request.question.leastMove).within).toBeCloseTo(allowedTo(run.job) / 2, 12);
  expect(allowedTo(run.job)).toBeCloseTo(0.25 * run.job.tolerance, 12);
});

describe('room for a larger register', () => {
  const block = loop('B', rectangle(-30, -30, 90, 90));
  const asked = (inner: ReturnType<typeof rectangle>, more: object = {}) =>
    questionFor([block, loop('A', inner, 1, 'B')], { outline: 'block', registerRoom: REGISTER_ROOM, ...more });
  const roomOf = (question: ReturnType<typeof asked>): number => {
    const plan = planned(question);
    const limits = registerLimits(plan, question.resolution);
    return Math.min(...plan.passes.map((p) => there(limits.get(p.register)) - p.offset.value));
  };

  it('is 16 µm in a sharp corner, and costs less than 8 µm of stock there', () => {
    const question = asked(rectangle(20, 20, 20, 15));
    expect(roomOf(question)).toBeGreaterThan(REGISTER_ROOM);
    expect(roomOf(question)).toBeLessThan(0.02);
    const without = planned({ ...question, registerRoom: undefined });
    const radius = ({ contours }: typeof without) =>
      Math.min(...there(contours[0]).comesOut.flatMap((c) => c.segments.flatMap((s) => (s.kind === 'arc' ? [s.radius] : []))));
    expect((radius(planned(question)) - radius(without)) * (Math.SQRT2 - 1)).toBeLessThan(0.008);
  });

  it('is given up where the corner that is allowed has none to spare, and no job is refused for it', () => {
    const bare = { ...asked(rectangle(20, 20, 20, 15)), registerRoom: undefined };
    const radius = there(planned(bare).passes.at(-1)).offset.value + leastRoom(bare);
    const tight = asked(rectangle(20, 20, 20, 15), { insideCorner: radius + 1e-6, tolerance: 0.01 });
    expect(planCut(tight).kind).toBe('cut');
    expect(roomOf(tight)).toBeLessThan(0.001);
  });

  it('rounds no arc that is drawn and that the last pass can follow', () => {
    const bare = { ...asked(disc(30, 30, 5)), registerRoom: undefined };
    const radius = there(planned(bare).passes.at(-1)).offset.value + 0.006;
    const question = asked(roundedRectangle(20, 15, radius));
    const plan = planned(question);
    expect(there(plan.contours[0]).comesOut.flatMap((c) => c.segments.filter((s) => s.kind === 'arc').map((s) => s.radius))).toEqual(
      [radius, radius, radius, radius].map((r) => expect.closeTo(r, 9)),
    );
  });

  it('is 20 µm at most, where no arc limits it', () => {
    expect(roomOf(asked(disc(30, 30, 5)))).toBeCloseTo(0.02, 9);
  });

  it('leaves two and a half last digits by which rounding may tighten an arc, and takes four at most for that', () => {
    for (const resolution of [
      { unit: 1, decimals: 4 },
      { unit: 25.4, decimals: 5 },
    ]) {
      const digit = resolution.unit * 10 ** -resolution.decimals;
      expect(writtenTighter(resolution)).toBeGreaterThanOrEqual(2.5 * digit);
      expect(leastRoom({ resolution })).toBeGreaterThan(writtenTighter(resolution));
      expect(leastRoom({ resolution })).toBeLessThan(4.5 * digit);
    }
  });

  it('rounds corners that are no part of the profile: the tightest path is beyond 18 µm', () => {
    expect(tightestPath([1.0175, 3], 1)).toBe(2);
    expect(tightestPath([1.0185, 3], 1)).toBeCloseTo(0.0185, 9);
  });
});
