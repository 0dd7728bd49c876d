/** What each pass of a wire makes of one shape, and whether that is what the drawing wants. */

import type { Contour } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/segment.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { firstItem, lastItem, lastOf, mapFilled, type NonEmpty } from '../../sequence/sequence.ts';
import { type Finding, type Remedy, remedy } from '../../text/finding.ts';
import { contour, count, fixed, mm, name, type Part, quantity } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { ShopAsked, WayAsked, WorkAsked } from '../question.ts';
import { spot, thousandths } from '../said.ts';
import { type LikeLoops, shapeName } from '../same-shape.ts';
import { narrowestPlace } from './narrow.ts';
import { leftBeyond } from './nook.ts';
import { type NotFollowed, notFollowed } from './not-followed.ts';
import { openedBy } from './opened-contour.ts';
import { roomBeside, roomsTried } from './register-room.ts';
import { type RoundedCorner, roundedCorners } from './rounded-corners.ts';

export interface Fit {
  /** Per pass the wanted contour opened by its offset and a hair more; empty when a pass cannot go round. */
  readonly opened: readonly Contour[];
  /** What would come out, whole or in pieces. */
  readonly comesOut: readonly Contour[];
  readonly corners: readonly RoundedCorner[];
  /** Why this wire cannot make the shape, in a few words. */
  readonly fault?: Text | undefined;
  readonly findings: readonly Finding[];
}

/** Corners that leave less than this (mm) are not worth a word. */
const WORTH_SAYING = 0.001;

/** With room for a larger register, or without where the shape has none to spare. */
export const fitOf = (shape: LikeLoops, rows: NonEmpty<LadderRow>, wire: Wire, question: FitAsked): Fit => {
  const [asked, least] = roomsTried(question);
  const fit = fitWith(asked, shape, rows, wire, question);
  return fit.fault === undefined || least === undefined ? fit : fitWith(least, shape, rows, wire, question);
};

type FitAsked = ShopAsked & WorkAsked & WayAsked;

/** Each pass by itself: roughs may round what skims follow. */
const fitWith = (room: number, shape: LikeLoops, rows: NonEmpty<LadderRow>, wire: Wire, question: FitAsked): Fit => {
  const { loop, kept } = shape.first.loop;
  const finish = lastOf(rows).offset.value;
  const ownRoom = roomBeside(loop.contour, kept, finish, room, question);
  const radii = mapFilled(rows, ({ offset }) => offset.value + (offset.value > finish ? room : ownRoom));
  const opened: Contour[] = [];
  for (const distance of radii) {
    const outcome = openedBy(loop.contour, kept, distance);
    if (outcome.kind === 'unsound') return unsound(shape, outcome);
    if (outcome.kind !== 'whole') return tooNarrow(shape, distance, wire, outcome.kind === 'parts' ? outcome.contours : [], question);
    opened.push(outcome.contour);
  }
  const [first, last] = [firstItem(opened), lastItem(opened)];
  const widest = radii[0];
  const rough = roundedCorners(loop.contour, first, widest, kept);
  // Where the rough cut leaves no more than it leaves in any corner, the skims find no more there either.
  const slot = rough.find((c) => isLost(c, Math.max(widest, question.insideCorner), question));
  if (slot !== undefined) return tooNarrow(shape, slot.radius, wire, [last], question, slot);
  const radius = lastItem(radii);
  const corners = roundedCorners(loop.contour, last, radius, kept);
  const lost = radius > question.insideCorner + 1e-9 ? undefined : corners.find((c) => isLost(c, question.insideCorner, question));
  if (lost !== undefined) return tooNarrow(shape, lost.radius, wire, [last], question, lost);
  const comesOut = [last];
  const tight = corners.filter((c) => radius > question.insideCorner + 1e-9 && c.left > question.tolerance);
  if (tight.length === 0) return { opened, comesOut, corners, findings: cornerNotes(shape, corners, wire) };
  return {
    opened,
    comesOut,
    corners,
    fault: cornerFault(shape.first.loop.loop.id, radius),
    findings: tightFindings(shape, tight, wire, question),
  };
};

/** Whether more stays in a nook than corners of a radius and the tolerance allow. */
const isLost = ({ nook }: RoundedCorner, radius: number, { tolerance }: WorkAsked): boolean =>
  nook !== undefined && leftBeyond(nook, radius, tolerance) > 0;

/** A contour that meets itself has no inside and outside to go by: no wire can help. */
const unsound = (shape: LikeLoops, { why, at }: { readonly why: NotFollowed; readonly at: Point }): Fit => {
  const { id } = shape.first.loop.loop;
  const finding = find(
    'contour-unsound',
    say`${{ shape: shapeName(shape) }} cannot be followed by a wire: ${{ why: notFollowed[why] }}, at ${{ at: spot(at) }}.`,
    { place: { kind: 'spot', x: at.x, y: at.y, reach: 1, loop: id }, remedy: say`Repair the contour in the drawing.` },
  );
  return { opened: [], comesOut: [], corners: [], fault: words.notFollowed(id), findings: [finding] };
};

const tooNarrow = (
  shape: LikeLoops,
  distance: number,
  wire: Wire,
  comesOut: readonly Contour[],
  question: ShopAsked,
  lost?: RoundedCorner,
): Fit => {
  const { loop, kept } = shape.first.loop;
  const needed = 2 * distance;
  const place = narrowestPlace(loop.contour, kept, needed * 1.0001);
  const at = place?.at ?? lost?.at ?? loop.contour.segments[0].from;
  const wide = place === undefined ? words.narrower(needed) : words.wide(place.width);
  const widen = mm(Math.ceil(needed * 100) / 100, fixed(2));
  const finding = find(
    'slot-too-narrow',
    say`${{ shape: shapeName(shape) }} is ${{ width: wide }} at ${{ at: spot(at) }}; the rough cut with ${{ wire: name(wire.name) }} wire needs ${{ needed: thousandths(needed) }}.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: needed, loop: loop.id },
      remedy: question.wire === undefined ? words.widen(widen) : remedy(words.widenOrFiner(widen), { field: 'wire' }),
    },
  );
  return {
    opened: [],
    comesOut,
    corners: [],
    fault: words.tooNarrow(loop.id, wide, needed),
    findings: [finding],
  };
};

const tightFindings = (shape: LikeLoops, tight: readonly RoundedCorner[], wire: Wire, question: WorkAsked): Finding[] => {
  const worst = tight.reduce((a, b) => (b.left > a.left ? b : a));
  const drawn = worst.wanted === 0 ? words.sharp : words.round(worst.wanted);
  const allow = Math.ceil(worst.radius * 1000) / 1000;
  const corners = tight.length === 1 ? words.anInsideCorner : count(tight.length, 'inside corner');
  return [
    find(
      'corner-too-tight',
      say`${{ corners }} of ${{ shape: shapeName(shape) }} cannot be made: drawn ${{ drawn }} at ${{ at: spot(worst.at) }}, R ${{ radius: thousandths(worst.radius) }} with ${{ wire: name(wire.name) }} wire, ${{ left: thousandths(worst.left) }} of stock left there; R ${{ accepted: quantity(question.insideCorner, 'mm') }} is allowed.`,
      {
        place: { kind: 'spot', x: worst.at.x, y: worst.at.y, reach: worst.radius * 3, loop: shape.first.loop.loop.id },
        remedy: acceptCorners(allow),
      },
    ),
  ];
};

/** Of a contour or an open line. */
export const cornerFault = (id: string, radius: number): Text => words.corner(id, radius);

export const acceptCorners = (radius: number): Remedy => remedy(words.accept(radius), { field: 'insideCorner', value: radius });

const cornerNotes = (shape: LikeLoops, corners: readonly RoundedCorner[], wire: Wire): Finding[] => {
  const seen = corners.filter((c) => c.left > WORTH_SAYING);
  if (seen.length === 0) return [];
  const worst = seen.reduce((a, b) => (b.left > a.left ? b : a));
  const come = seen.length === 1 ? words.oneRounded : words.rounded;
  return [
    find('corner-rounded', come({ corners: seen.length, shape: shapeName(shape), worst, wire }), {
      place: { kind: 'spot', x: worst.at.x, y: worst.at.y, reach: worst.radius * 3, loop: shape.first.loop.loop.id },
    }),
  ];
};

interface Rounded {
  readonly corners: number;
  readonly shape: Part | Text;
  readonly worst: RoundedCorner;
  readonly wire: Wire;
}

const words = phrases('fit', {
  notFollowed: (loop: string) => say`${{ loop: contour(loop) }} is not a contour that can be followed`,
  narrower: (needed: number) => say`narrower than ${{ needed: thousandths(needed) }}`,
  wide: (width: number) => say`${{ width: thousandths(width) }} wide`,
  widen: (to: Part) => say`Widen it to ${{ to }}.`,
  widenOrFiner: (to: Part) => say`Widen it to ${{ to }}, or use a finer wire.`,
  tooNarrow: (loop: string, width: Text, needed: number) =>
    say`${{ loop: contour(loop) }} is ${{ width }}, its rough cut needs ${{ needed: thousandths(needed) }}`,
  corner: (loop: string, radius: number) =>
    say`${{ loop: contour(loop) }} has an inside corner that would come out at R ${{ radius: thousandths(radius) }}`,
  sharp: say`sharp`,
  round: (radius: number) => say`with R ${{ radius: thousandths(radius) }}`,
  anInsideCorner: say`An inside corner`,
  accept: (radius: number) =>
    say`Allow inside corner radii of R ${{ radius: thousandths(radius) }}, or ease them to that radius in the drawing.`,
  oneRounded: ({ shape, worst, wire }: Rounded) =>
    say`1 inside corner of ${{ shape }} comes out at R ${{ radius: thousandths(worst.radius) }} with ${{ wire: name(wire.name) }} wire; most stock left ${{ left: thousandths(worst.left) }}, at ${{ at: spot(worst.at) }}.`,
  rounded: ({ corners, shape, worst, wire }: Rounded) =>
    say`${{ corners: count(corners, 'inside corner') }} of ${{ shape }} come out at R ${{ radius: thousandths(worst.radius) }} with ${{ wire: name(wire.name) }} wire; most stock left ${{ left: thousandths(worst.left) }}, at ${{ at: spot(worst.at) }}.`,
});
