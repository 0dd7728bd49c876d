/** What the sheet shows of a job that could not be judged. */
import { describe, expect, it } from 'vitest';
import { sheetOf } from '../src/app/work/sheet-of.ts';
import { jobRun } from '../src/cli/inputs.ts';
import type { Job } from '../src/job/job.ts';
import { runUpTo } from '../src/job/pipeline/pipeline.ts';

const die = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const sheetFor = (change: Partial<Job>, drawing = die.drawing) => {
  const run = { ...die, drawing, job: { ...die.job, ...change } };
  return sheetOf(runUpTo(run, 'answer'), run);
};

describe('a job that cannot be judged still shows its drawing', () => {
  it.each<[string, Partial<Job>, string]>([
    ['a material that does not conduct', { material: 'glass' }, 'cannot'],
    ['a wire that nobody has', { wire: 'gold-0.25' }, 'bad input'],
    ['a layer that is not there', { layers: ['nowhere'] }, 'bad input'],
  ])('with %s', (_, change, answer) => {
    const { picture, ...sheet } = sheetFor(change);
    expect(sheet.answer).toBe(answer);
    expect(picture?.contours).toHaveLength(sheetFor({}).picture?.contours.length ?? 0);
    expect(picture?.layers.map((l) => l.role)).toEqual(['drawing']);
    expect(picture?.high.x).toBeCloseTo(180, 6);
  });

  it('and none where the file itself cannot be read', () => {
    expect(sheetFor({}, Uint8Array.of(1, 2, 3)).picture).toBeUndefined();
  });
});
