/** Contours that come too near each other: webs thinner than the kerf, and cuts that would spoil a neighbour. */

import type { Contour } from '../../geometry/contour.ts';
import { lengthOf } from '../../geometry/measure.ts';
import { lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import { itemAt, lastItem } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, fixed, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { isNested, metalStaysBetween, type Near, nearestPlace, pairsNear } from '../near-pairs.ts';
import { spot, thousandths } from '../said.ts';
import { type LikeLoops, shapeName } from '../same-shape.ts';
import { narrowestPlace } from '../wire/narrow.ts';

export interface WebLimits {
  readonly kerf: number;
  /** From a contour to the far side of its rough cut. */
  readonly reach: number;
}

export const webFindings = (cut: readonly KeptLoop[], shapes: readonly LikeLoops[], limits: WebLimits): readonly Finding[] => [
  ...shapes.flatMap((shape) => ownWeb(shape, limits)),
  ...pairsNear(cut, 2 * limits.reach).flatMap(([a, b]) => between(itemAt(cut, a), itemAt(cut, b), limits)),
];

/** Two sides whose way round the end between them is no longer than so many times the width make a sharp tip of the metal, not a web: a wedge of 15° or more. */
const TIP = 8;

/** Metal that stays, between two stretches of one contour. */
const ownWeb = (shape: LikeLoops, { kerf }: WebLimits): Finding[] => {
  const { loop, kept } = shape.first.loop;
  const wayBetween = waysAlong(loop.contour);
  const place = narrowestPlace(loop.contour, kept === 'die' ? 'punch' : 'die', kerf, ({ sides, width }) => wayBetween(sides) > TIP * width);
  if (place === undefined) return [];
  return [tooThin(within(shape), loop.id, place, kerf)];
};

const words = phrases('web', {
  within: (shape: LikeLoops) => say`Within ${{ shape: shapeName(shape) }}`,
  between: ([one, other]: Pair) => say`Between ${{ one: contour(one) }} and ${{ other: contour(other) }}`,
});

/** 'Within L1', of the metal between two stretches of one contour. */
export const { within, between: betweenLoops } = words;

/** Ids of two contours. */
export type Pair = readonly [string, string];

/** Length of contour between two places on it, the shorter way round, mm. */
const waysAlong = (contour: Contour): ((places: readonly [Point, Point]) => number) => {
  const lookup = lookupOf(contour);
  const before: number[] = [0];
  for (const segment of contour.segments) before.push(lastItem(before) + lengthOf(segment));
  const whole = lastItem(before);
  const along = (p: Point): number => {
    const { segment, share } = nearestIn(lookup, p);
    return itemAt(before, segment) + share * lengthOf(itemAt(contour.segments, segment));
  };
  return ([a, b]) => {
    const way = Math.abs(along(a) - along(b));
    return Math.min(way, whole - way);
  };
};

const tooThin = (where: Text, loop: string, { at, width }: Near, kerf: number): Finding =>
  find(
    'cuts-too-close',
    say`${{ where }} a web of ${{ web: thousandths(width) }} is left at ${{ at: spot(at) }}, thinner than the kerf of ${{ kerf: thousandths(kerf) }}.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: kerf * 2, loop },
      remedy: say`It may bend or be cut away by the spark gap: ask whether it can be thicker.`,
    },
  );

const between = (a: KeptLoop, b: KeptLoop, limits: WebLimits): Finding[] => {
  const near = nearestPlace(a.loop.contour, b.loop.contour, 2 * limits.reach);
  if (near === undefined) return [];
  const pair: Pair = [a.loop.id, b.loop.id];
  if (near.width < TOUCHING) return [touching(pair, near)];
  if (metalStaysBetween(a, b)) return near.width < limits.kerf ? [tooThin(betweenLoops(pair), a.loop.id, near, limits.kerf)] : [];
  if (near.width < limits.reach) return [overlapping(pair, near, limits)];
  return isNested(a, b) ? [thinWaste(pair, near, limits)] : [];
};

const overlapping = ([one, other]: Pair, { at, width }: Near, { reach }: WebLimits): Finding =>
  find(
    'cuts-overlap',
    say`${{ one: contour(one) }} and ${{ other: contour(other) }} are ${{ apart: thousandths(width) }} apart at ${{ at: spot(at) }}; the rough cut along one reaches ${{ reach: thousandths(reach) }} and would cut into the other.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: reach * 2, loop: one },
      remedy: say`Move them at least ${{ least: mm(Math.ceil(reach * 100) / 100, fixed(2)) }} apart.`,
    },
  );

/** mm: contours nearer than this have nothing between them. */
const TOUCHING = 0.001;

const touching = ([one, other]: Pair, { at }: Near): Finding =>
  find(
    'contours-touch',
    say`${{ one: contour(one) }} and ${{ other: contour(other) }} touch or cross at ${{ at: spot(at) }}: nothing is left between them.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: 1, loop: one },
      remedy: say`Draw them as one contour, or move them apart.`,
    },
  );

/** Around an island in an opening: where the two kerfs run together the slug is cut through. */
const thinWaste = ([one, other]: Pair, { at, width }: Near, { reach }: WebLimits): Finding =>
  find(
    'slug-splits/island',
    say`Between ${{ one: contour(one) }} and ${{ other: contour(other) }} the waste is ${{ waste: thousandths(width) }} wide at ${{ at: spot(at) }}, and the two kerfs take ${{ kerfs: thousandths(2 * reach) }}: the slug is cut through there and may come off in pieces; the program stops first.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: reach * 2, loop: one },
      remedy: say`Secure both pieces at that stop, or enter the two contours at different places.`,
    },
  );
