/** What every offset has to keep, checked by means of its own: joints, distance all along, no crossing, sense. */
import { there } from '../../../test/there.ts';
import { areaOf } from '../area.ts';
import type { Chain, Contour } from '../contour.ts';
import { lengthOf, pointAt } from '../measure.ts';
import type { ChainContact } from '../near/crossings.ts';
import { crossingsWith, selfCrossings } from '../near/crossings.ts';
import type { Lookup } from '../near/lookup.ts';
import { lookupOf, lookupOfSegments, nearestIn } from '../near/lookup.ts';
import type { Segment } from '../segment.ts';

/** mm: the accuracy promised. */
export const PROMISED = 1e-6;

/** Where along each segment the distance is measured: all over, and closely beside the ends. */
const SHARES = [0, 1e-9, 1e-6, 1e-4, 0.01, 0.1, 0.3, 0.5, 0.6180339887, 0.8, 0.95, 0.999, 0.9999999, 1];

/** All that is wrong with the result of an offset, in words; empty when it is right. */
export const faultsOf = (sources: readonly Chain[], results: readonly Chain[], distance: number): string[] => [
  ...results.flatMap(jointFaults),
  ...distanceFaults(sources, results, Math.abs(distance)),
  ...crossingFaults(results),
];

const jointFaults = (chain: Chain): string[] => {
  const faults: string[] = [];
  const last = there(chain.segments[chain.segments.length - 1]);
  let before = chain.closed ? last.to : there(chain.segments[0]).from;
  for (const s of chain.segments) {
    if (s.from.x !== before.x || s.from.y !== before.y) faults.push('not joined');
    if (!(lengthOf(s) >= 0.9e-7)) faults.push(`a segment of ${lengthOf(s)} mm`);
    faults.push(...arcFaults(s));
    before = s.to;
  }
  return faults;
};

const arcFaults = (s: Segment): string[] => {
  if (s.kind === 'line') return [];
  const off = Math.hypot(s.to.x - s.centre.x, s.to.y - s.centre.y) - s.radius;
  const size = Math.abs(s.centre.x) + Math.abs(s.centre.y) + s.radius;
  return Math.abs(off) > 1e-11 + 1e-14 * size ? [`an arc ends ${off} mm off its circle`] : [];
};

const distanceFaults = (sources: readonly Chain[], results: readonly Chain[], distance: number): string[] => {
  const lookup: Lookup = lookupOfSegments(sources.flatMap((c) => c.segments));
  const faults: string[] = [];
  for (const s of results.flatMap((c) => c.segments)) {
    for (const share of SHARES) {
      const p = pointAt(s, share);
      const off = nearestIn(lookup, p).distance - distance;
      if (!(Math.abs(off) <= PROMISED)) faults.push(`${off} mm off the distance at ${p.x}, ${p.y}`);
    }
  }
  return faults;
};

/** mm: results may come as near to themselves as this, at a neck that all but closes. */
const APART = 1e-12;

const crossingFaults = (results: readonly Chain[]): string[] => {
  const faults: string[] = [];
  results.forEach((c, i) => {
    for (const x of selfCrossings(c, APART)) if (!isAtJoint(c, x)) faults.push(`${x.kind} at ${x.at.x}, ${x.at.y}`);
    const lookup = lookupOf(c);
    for (const other of results.slice(i + 1)) {
      for (const x of crossingsWith(other, lookup, c, APART)) faults.push(`${x.kind} of two at ${x.at.x}, ${x.at.y}`);
    }
  });
  return faults;
};

/** mm: neighbours that meet at a corner meet, by the rounding of large radii, once more within this of it. */
const AT_JOINT = 1e-7;

const isAtJoint = (chain: Chain, { at, first, second }: ChainContact): boolean => {
  const [a, b] = [there(chain.segments[first]), there(chain.segments[second])];
  return [a.from, a.to].some((p) => [b.from, b.to].includes(p) && Math.hypot(p.x - at.x, p.y - at.y) < AT_JOINT);
};

export const totalArea = (contours: readonly Contour[]): number => contours.reduce((sum, c) => sum + areaOf(c), 0);
