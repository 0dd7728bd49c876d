/** Contours that come too near each other: webs thinner than the kerf, and cuts that would spoil a neighbour. */
import type { Contour } from '../../geometry/contour.ts';
import { lengthOf } from '../../geometry/measure.ts';
import { lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { isNested, metalStaysBetween, type Near, nearestPlace, pairsNear } from '../near-pairs.ts';
import { type Shape, shapeName } from '../same-shape.ts';
import { narrowestPlace } from '../wire/narrow.ts';

export interface WebLimits {
  readonly kerf: number;
  /** From a contour to the far side of its rough cut. */
  readonly reach: number;
}

export const webFindings = (cut: readonly KeptLoop[], shapes: readonly Shape[], limits: WebLimits): readonly Finding[] => [
  ...shapes.flatMap((shape) => ownWeb(shape, limits)),
  ...pairsNear(cut, 2 * limits.reach).flatMap(([a, b]) => between(cut[a]!, cut[b]!, limits)),
];

/** Two sides whose way round the end between them is no longer than so many times the width make a sharp tip of the metal, not a web: a wedge of 15° or more. */
const TIP = 8;

/** Metal that stays, between two stretches of one contour. */
const ownWeb = (shape: Shape, { kerf }: WebLimits): Finding[] => {
  const { loop, kept } = shape.first.loop;
  const wayBetween = waysAlong(loop.contour);
  const place = narrowestPlace(loop.contour, kept === 'die' ? 'punch' : 'die', kerf, ({ sides, width }) => wayBetween(sides) > TIP * width);
  if (place === undefined) return [];
  return [tooThin(`Within ${shapeName(shape)}`, loop.id, place.at, place.width, kerf)];
};

/** Length of contour between two places on it, the shorter way round, mm. */
const waysAlong = (contour: Contour): ((places: readonly [Point, Point]) => number) => {
  const lookup = lookupOf(contour);
  const before: number[] = [0];
  for (const segment of contour.segments) before.push(before.at(-1)! + lengthOf(segment));
  const whole = before.at(-1)!;
  const along = (p: Point): number => {
    const { segment, share } = nearestIn(lookup, p);
    return before[segment]! + share * lengthOf(contour.segments[segment]!);
  };
  return ([a, b]) => {
    const way = Math.abs(along(a) - along(b));
    return Math.min(way, whole - way);
  };
};

const tooThin = (where: string, loop: string, at: Point, width: number, kerf: number): Finding =>
  find(
    'cuts-too-close',
    `${where} a web of ${width.toFixed(3)} mm is left at (${at.x.toFixed(3)}, ${at.y.toFixed(3)}), thinner than the kerf of ${kerf.toFixed(3)} mm.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: kerf * 2, loop },
      remedy: 'It may bend or burn through: ask whether it can be made thicker.',
    },
  );

const between = (a: KeptLoop, b: KeptLoop, limits: WebLimits): Finding[] => {
  const near = nearestPlace(a.loop.contour, b.loop.contour, 2 * limits.reach);
  if (near === undefined) return [];
  const names = `${a.loop.id} and ${b.loop.id}`;
  const nested = isNested(a, b);
  const stays = metalStaysBetween(a, b);
  if (near.width < TOUCHING) return [touching(names, near, a.loop.id)];
  if (stays) return near.width < limits.kerf ? [tooThin(`Between ${names}`, a.loop.id, near.at, near.width, limits.kerf)] : [];
  if (near.width >= limits.reach) return nested ? [thinWaste(names, near, a.loop.id, limits)] : [];
  return [
    find(
      'cuts-overlap',
      `${names} are ${near.width.toFixed(3)} mm apart at (${near.at.x.toFixed(3)}, ${near.at.y.toFixed(3)}); the rough cut along one reaches ${limits.reach.toFixed(3)} mm and would cut into the other.`,
      {
        place: { kind: 'spot', x: near.at.x, y: near.at.y, reach: limits.reach * 2, loop: a.loop.id },
        remedy: `Move them at least ${(Math.ceil(limits.reach * 100) / 100).toFixed(2)} mm apart.`,
      },
    ),
  ];
};

/** mm: contours nearer than this have nothing between them. */
const TOUCHING = 0.001;

const touching = (names: string, near: Near, loop: string): Finding =>
  find('contours-touch', `${names} touch or cross at (${near.at.x.toFixed(3)}, ${near.at.y.toFixed(3)}): nothing stays between them.`, {
    place: { kind: 'spot', x: near.at.x, y: near.at.y, reach: 1, loop },
    remedy: 'Draw them as one contour, or move them apart.',
  });

/** Around an island in an opening: where the two kerfs run together the slug is cut through. */
const thinWaste = (names: string, near: Near, loop: string, { reach }: WebLimits): Finding =>
  find(
    'slug-splits',
    `Between ${names} the waste is ${near.width.toFixed(3)} mm wide at (${near.at.x.toFixed(3)}, ${near.at.y.toFixed(3)}), and the kerfs on both sides take ${(2 * reach).toFixed(3)} mm: the slug is cut through there and may come off in pieces; the program stops before it does.`,
    {
      place: { kind: 'spot', x: near.at.x, y: near.at.y, reach: reach * 2, loop },
      remedy: 'Fix both pieces at that stop, or cut the two from different places of the block.',
    },
  );
