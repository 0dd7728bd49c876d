/** A part drawn where no program can name it: the zero that the answer offers makes it a program. */
import { describe, expect, it } from 'vitest';
import { jobRun } from '../src/cli/inputs.ts';
import type { Point } from '../src/geometry/segment.ts';
import { jobSchema } from '../src/job/job.ts';
import type { JobRun } from '../src/job/job-run.ts';
import type { Answered } from '../src/job/pipeline/answer.ts';
import { runUpTo } from '../src/job/pipeline/pipeline.ts';
import { asciiDxf } from './dxf-writer.ts';
import { there } from './there.ts';

const plate = jobRun('examples/split-jaw/split-jaw.job.json', {}, '2026-11-25');
const UNITS = { inch: 1, mm: 4 } as const;

const drawn = (unit: keyof typeof UNITS, { x, y }: Point, side: number, datum?: Point): JobRun => {
  const corners = [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ] as const;
  const drawing = asciiDxf([
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$ACADVER'],
    [1, 'AC1015'],
    [9, '$INSUNITS'],
    [70, UNITS[unit]],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    [0, 'LWPOLYLINE'],
    [8, '0'],
    [90, 4],
    [70, 1],
    ...corners.flatMap(([px, py]): readonly (readonly [number, number])[] => [
      [10, px],
      [20, py],
    ]),
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ]);
  const job = { ...jobSchema.parse({ drawing: 'far.dxf', material: 'd2', height: 20, tolerance: 0.02 }), datum };
  const shop = { ...plate.shop, wires: plate.shop.wires.filter((w) => w.id === 'brass-0.25') };
  return { ...plate, shop, job, drawing, drawingName: 'far.dxf' };
};

const answered = (run: JobRun): Answered => {
  const answer = runUpTo(run, 'answer');
  if (answer.kind !== 'answered') throw new Error(answer.kind);
  return answer;
};

describe('a part far from zero', () => {
  it.each([
    ['in mm', drawn('mm', { x: 251_320, y: 412_200 }, 20)],
    ['in mm, on the other side', drawn('mm', { x: -251_320.4, y: -100_220 }, 20)],
    ['in inches', drawn('inch', { x: 9900, y: -16_000 }, 0.8)],
    ['from a zero set by hand that is no better', drawn('mm', { x: 251_320, y: 412_200 }, 20, { x: 100, y: -4000 })],
  ])('is refused with a zero that helps: %s', (_, run) => {
    const refused = answered(run);
    expect(refused.facts.outcome.answer).toBe('no');
    const remedy = there(refused.facts.findings.find((f) => f.code === 'coordinate-unusable')?.remedy);
    expect(remedy.field).toBe('datum');
    const helped = { ...run, job: jobSchema.parse({ ...run.job, datum: remedy.value }) };
    expect(answered(helped).facts.outcome.answer).toBe('yes');
  });
});
