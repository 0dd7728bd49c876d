/** Every nasty shape, at every distance, in every pose: the promises hold, the poses agree, and the second library confirms the area. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf, perimeterOf } from '../area.ts';
import { reverseChain, startAt } from '../chain.ts';
import type { Contour } from '../contour.ts';
import { mirroring, rotation, scaling, transformChain } from '../transform.ts';
import { faultsOf, totalArea } from './judge.fixture.ts';
import { NASTY_SHAPES } from './nasty-shapes.fixture.ts';
import { offsetContour } from './offset.ts';
import { CHORD_ERROR, inWasm } from './peers.bench.ts';

interface Pose {
  readonly how: string;
  readonly contour: Contour;
  readonly distance: number;
  /** By how much lengths are larger than in the plain pose. */
  readonly scale: number;
}

/** A pose that reverses the sense swaps the sides. */
const posesOf = (contour: Contour, distance: number): readonly Pose[] => {
  const count = contour.segments.length;
  const starts = [...new Set([1, Math.floor(count / 2), count - 1])].filter((k) => k > 0 && k < count);
  const pose = (how: string, posed: Contour, d: number, scale = 1): Pose => ({ how, contour: posed, distance: d, scale });
  return [
    pose('as it is', contour, distance),
    pose('reversed', reverseChain(contour), -distance),
    pose('mirrored', transformChain(mirroring(0.7), contour), -distance),
    pose('turned', transformChain(rotation(1.234), contour), distance),
    pose('scaled', transformChain(scaling(2.5), contour), 2.5 * distance, 2.5),
    ...starts.map((k) => pose(`from corner ${k}`, startAt(contour, k, 0), distance)),
    pose('from within a segment', startAt(contour, 0, 0.37), distance),
  ];
};

/** Large shapes are posed in fewer ways, for the time it takes. */
const LARGE = 1000;

/** mm: the library counts whole nanometres, and knows nothing of shapes thinner than that. */
const THINNEST = 1e-6;

const resultsOf = ({ contour, distance }: Pose): readonly Contour[] => {
  const outcome = offsetContour(contour, distance);
  if (outcome.kind === 'vanished') {
    expect(outcome.widest).toBeLessThanOrEqual(Math.abs(distance) + 1e-6);
    return [];
  }
  if (outcome.kind !== 'offset') throw new Error(JSON.stringify(outcome).slice(0, 500));
  for (const c of outcome.contours) expect(areaOf(c) > 0).toBe(areaOf(contour) > 0);
  for (const c of outcome.enclosed) expect(areaOf(c) > 0).toBe(areaOf(contour) < 0);
  return [...outcome.contours, ...outcome.enclosed];
};

describe('nasty shapes', () => {
  it('are at least 20 with different names', () => {
    expect(new Set(NASTY_SHAPES.map((s) => s.name)).size).toBeGreaterThanOrEqual(20);
  });

  const cases = NASTY_SHAPES.flatMap((s) => s.distances.flatMap((d) => [d, -d].map((distance) => ({ ...s, distance }))));

  it.each(cases)('keep the promises: $name by $distance', async ({ contour, distance }) => {
    const poses = posesOf(contour, distance).slice(0, contour.segments.length > LARGE ? 2 : undefined);
    const areas = poses.map((pose) => {
      const results = resultsOf(pose);
      expect(faultsOf([pose.contour], results, pose.distance), pose.how).toEqual([]);
      return {
        how: pose.how,
        area: Math.abs(totalArea(results)) / pose.scale ** 2,
        around: results.reduce((sum, c) => sum + perimeterOf(c), 0),
      };
    });
    const plain = there(areas[0]);
    // At a special distance poses may differ by the hair that the distance was changed by.
    for (const other of areas) expect(Math.abs(other.area - plain.area), other.how).toBeLessThanOrEqual(1e-6 * (1 + other.around));
    if ((2 * Math.abs(areaOf(contour))) / perimeterOf(contour) < THINNEST) return;
    const confirmed = (await inWasm(contour)).run(distance)();
    expect(Math.abs(plain.area - confirmed)).toBeLessThanOrEqual(2 * CHORD_ERROR * (perimeterOf(contour) + plain.around) + 1e-6);
  });
});

describe('slivers thinner than the second library can see', () => {
  it('grow to the area of a stadium', () => {
    const sliver = there(NASTY_SHAPES.find((s) => s.name === 'sliver of 1e-9')).contour;
    const outcome = offsetContour(sliver, -1);
    expect(outcome.kind === 'offset' && Math.abs(totalArea(outcome.contours) - (20 + Math.PI)) < 1e-6).toBe(true);
  });
});
