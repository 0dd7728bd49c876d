/** Inputs of the command line that findings offer, and heights that nothing can be cut of. */
import { describe, expect, it } from 'vitest';
import { jobSchema } from '../job/job.ts';
import { runWith } from './inputs.ts';

const shape = { shape: { kind: 'gear', module: 2, teeth: 20 } };
const run = (options: Parameters<typeof runWith>[3]) => runWith(shape, 'a.job.json', (path) => path, options, '2026-01-01');

describe('inputs of the command line', () => {
  it('hand the start hole to the job, in the unit typed', () => {
    expect(run({ startHole: '0.6' }).job.startHole).toBe(0.6);
    expect(run({ startHole: '.02 in' }).job.startHole).toBeCloseTo(0.508, 9);
    expect(run({}).job.startHole).toBe(2);
  });

  it.each([
    ['120,45.5', 45.5],
    ['120;45.5', 45.5],
    [' 120 -45 ', -45],
  ])('hand program zero to the job: %s', (datum, y) => {
    expect(run({ datum }).job.datum).toEqual({ x: 120, y });
  });

  it.each(['120', '120,45,5', 'x,y', '1..2,3'])('refuse a program zero that is none: %s', (datum) => {
    expect(() => run({ datum })).toThrow();
  });

  it.each([1e-320, 1e-9, 0, -1, 0.0099])('name the height where it is none: %d', (height) => {
    const parsed = jobSchema.safeParse({ ...shape, height });
    expect(parsed.error?.issues.map((issue) => issue.path)).toEqual([['height']]);
  });
});
