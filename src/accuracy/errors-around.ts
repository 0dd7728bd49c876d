/** What adds to the error of a job whatever its passes are, known before anything is planned: from its contours, its block and its temperatures. */

import { areaOf, boundsOfChain } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import type { Material } from '../physics/material/material.ts';
import { insideArcs } from '../plan/inside-arcs.ts';
import type { Sorted } from '../plan/kept-side.ts';
import type { ErrorsBeside } from '../plan/sureness.ts';
import { deviationOf } from '../quantity/figure.ts';
import { chilled, type Temperatures } from './budget-question.ts';
import { repeatability, stressLeft, stressRate, stressRelease, swingTogether } from './error-shares.ts';
import { growthLeft } from './program-scale.ts';
import { referenceTemperature, thermalGrowth } from './thermal-growth.ts';

/** Of the contours that are cut, and the block they are cut out of. Lengths in mm. */
export interface Around {
  /** Of the largest contour. */
  readonly extent: number;
  /** Of inside arcs, each once, the tightest first. */
  readonly insideRadii: readonly number[];
  /** What is cut loose of the block, 0 to 1; a part cut out of it leaves the rest loose about as much. */
  readonly opened: number;
}

/** @param around the block. */
export const aroundOf = (sorted: Pick<Sorted, 'cut'>, around: Contour): Around => {
  const block = Math.abs(areaOf(around));
  const areas = new Map(sorted.cut.map(({ loop }) => [loop.id, Math.abs(areaOf(loop.contour))]));
  // What lies in a loop that is cut loose is counted with it.
  const loose = sorted.cut.reduce((sum, { loop }) => sum + (areas.has(loop.parent ?? '') ? 0 : (areas.get(loop.id) ?? 0)), 0);
  return {
    extent: sorted.cut.reduce((most, { loop }) => {
      const { minX, minY, maxX, maxY } = boundsOfChain(loop.contour);
      return Math.max(most, maxX - minX, maxY - minY);
    }, 0),
    insideRadii: [...new Set(sorted.cut.flatMap(({ loop, kept }) => insideArcs(loop.contour, kept).map((arc) => arc.radius)))].toSorted(
      (a, b) => a - b,
    ),
    opened: block > 0 ? Math.min(1, loose / block) : 0,
  };
};

export interface BesideAsked {
  readonly material: Material;
  readonly temperatures?: Temperatures | undefined;
  readonly opened: number;
}

/** The same shares as the error budget has, in plain numbers; a profile is judged about the middle of its largest contour. */
export const besideProfile = ({ extent, insideRadii, opened }: Around, asked: Omit<BesideAsked, 'opened'>): ErrorsBeside => ({
  ...besideLength(extent / 2, { ...asked, opened }),
  insideRadii,
  sides: 1,
});

/** @param length mm, that grows and moves. */
const besideLength = (
  length: number,
  { material, temperatures = chilled, opened }: BesideAsked,
): Omit<ErrorsBeside, 'insideRadii' | 'sides'> => {
  const { cutting, measuring, swing, scale = false } = temperatures;
  const expansion = material.expansion.value;
  const away = (celsius: number): number => Math.abs(celsius - referenceTemperature);
  const grows = (rise: number): number => thermalGrowth.compute({ expansion, length, rise });
  const cut = scale ? growthLeft.compute({ doubt: deviationOf(material.expansion), length, rise: away(cutting) }) : grows(away(cutting));
  return {
    growth: cut + grows(away(measuring)),
    swing: grows(swingTogether.compute({ cutting: swing, measuring: swing })),
    repeatability: repeatability.value,
    stress: stressRelease.compute({ rate: stressRate(material.family).value, length, opened, left: stressLeft.value, skims: 0 }),
    stressLeft: stressLeft.value,
  };
};
