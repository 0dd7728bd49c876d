/** A thousand random shapes of lines and arcs: the promises hold, and the second library agrees on every area. */
import { describe, expect, it } from 'vitest';
import { areaOf, perimeterOf } from '../area.ts';
import { reverseChain } from '../chain.ts';
import type { Contour } from '../contour.ts';
import { selfCrossings } from '../near/crossings.ts';
import { faultsOf, totalArea } from './judge.fixture.ts';
import { offsetContour } from './offset.ts';
import type { OffsetContourOutcome } from './offset-outcome.ts';
import { CHORD_ERROR, inWasm } from './peers.bench.ts';
import type { RandomShape } from './random-shapes.fixture.ts';
import { randomShape } from './random-shapes.fixture.ts';

/** Shapes asked for, not counting those that meet themselves; some two in a row are needed for each. */
const ENOUGH = 1000;

const judge = async ({ contour, distance }: RandomShape, outcome: OffsetContourOutcome): Promise<string[]> => {
  if (outcome.kind !== 'offset' && outcome.kind !== 'vanished') return [JSON.stringify(outcome)];
  const results: readonly Contour[] = outcome.kind === 'offset' ? [...outcome.contours, ...outcome.enclosed] : [];
  const leftward = areaOf(contour) > 0;
  const confirmed = (await inWasm(leftward ? contour : reverseChain(contour))).run(leftward ? distance : -distance)();
  const around = perimeterOf(contour) + results.reduce((sum, c) => sum + perimeterOf(c), 0);
  const off = Math.abs(Math.abs(totalArea(results)) - confirmed);
  const faults = faultsOf([contour], results, distance);
  return off <= 2 * CHORD_ERROR * around + 1e-6 ? faults : [...faults, `area is ${off} mm² off`];
};

describe('random shapes of lines and arcs', () => {
  it('keep every promise, and none is passed over but those that another search finds to meet themselves', async () => {
    const faults: string[] = [];
    let judged = 0;
    for (let number = 0; judged < ENOUGH; number++) {
      const shape = randomShape(number);
      const outcome = offsetContour(shape.contour, shape.distance);
      const meets = selfCrossings(shape.contour, 1e-10).length > 0;
      if (meets !== (outcome.kind === 'self-crossing')) faults.push(`shape ${number}: ${outcome.kind}, but the other search says ${meets}`);
      if (meets) continue;
      judged++;
      faults.push(...(await judge(shape, outcome)).map((f) => `shape ${number} by ${shape.distance}: ${f}`));
    }
    expect(faults).toEqual([]);
  });
});
