/** The question made ready: its numbers looked over, pieces, plate and zones grown or shrunk so that webs and margins are kept where nothing overlaps. */

import { areaOf, boundsOfChain } from '../geometry/area.ts';
import { counterClockwise, regionOf } from '../geometry/chain.ts';
import { type Contour, contour } from '../geometry/contour.ts';
import type { Bounds } from '../geometry/measure.ts';
import { offsetContour, offsetRegion } from '../geometry/offset/offset.ts';
import type { OffsetContourOutcome, OffsetRegionOutcome } from '../geometry/offset/offset-outcome.ts';
import { line, type Point } from '../geometry/segment.ts';
import { soundness } from '../geometry/soundness.ts';
import { firstItem, roundPairs } from '../sequence/sequence.ts';
import { atField, type Finding, remedy } from '../text/finding.ts';
import { count, length, mm, name, number, placeByLetters, quantity, term, upTo } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { find } from './findings.ts';
import type { NestPiece, NestQuestion, Turns } from './nest-question.ts';
import { kindOf, type PieceKind } from './turned-kinds.ts';

/** All that the layouts are made from. Grown shapes that do not overlap keep the web. */
export interface Prepared {
  readonly kinds: readonly PieceKind[];
  /** Counter-clockwise. */
  readonly plate: Contour;
  /** Where the plate is a rectangle along x and y. */
  readonly rectangle: boolean;
  /** Grown pieces must lie inside one of these. */
  readonly free: readonly Contour[];
  /** Grown zones, counter-clockwise. */
  readonly zones: readonly Contour[];
}

export type Preparation =
  | { readonly kind: 'prepared'; readonly prepared: Prepared }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

/** Pieces in all beyond which the question is refused. */
export const MOST_PIECES = 2000;
/** mm by which the ends of an arc may be off its circle. */
const SOUND = 1e-4;

export const prepare = (question: NestQuestion): Preparation => {
  const refusals = [...badNumbers(question), ...badOutlines(question)];
  if (refusals.length > 0) return { kind: 'refused', findings: refusals };
  const plate = counterClockwise(question.plate);
  const rectangle = isRectangle(plate);
  const pieces = question.pieces.map((piece) => ({ piece, grown: offsetRegion(regionOf(piece.outline, piece.holes), -question.web / 2) }));
  const zones = question.forbidden.map((zone) => offsetContour(counterClockwise(zone), -question.web / 2));
  const free = freeOf(plate, rectangle, question);
  const wrong = [
    ...pieces.flatMap(({ piece, grown }) => unusable(grown, outlines.piece(piece.id))),
    ...zones.flatMap((zone, i) => unusable(zone, outlines.zone(i + 1))),
    ...(free.kind === 'vanished' ? [tooSmall(question)] : unusable(free, outlines.plate)),
  ];
  if (wrong.length > 0 || free.kind !== 'offset') return { kind: 'refused', findings: wrong };
  return {
    kind: 'prepared',
    prepared: {
      plate,
      rectangle,
      free: free.contours,
      zones: zones.flatMap((zone) => (zone.kind === 'offset' ? zone.contours : [])),
      kinds: pieces.flatMap(({ piece, grown }) => (grown.kind === 'offset' ? [kindFrom(piece, grown)] : [])),
    },
  };
};

const kindFrom = (piece: NestPiece, grown: Extract<OffsetRegionOutcome, { kind: 'offset' }>): PieceKind =>
  kindOf(piece.id, piece.quantity, regionOf(piece.outline, piece.holes), firstItem(grown.regions), piece.turns);

/**
 * The plate shrunk by its border and grown again by half a web. Growing rounds what a rectangle has square, and closes slots of
 * other plates, so there the border is half a web at least and the plate is never grown.
 */
const freeOf = (plate: Contour, rectangle: boolean, { border, web }: NestQuestion): OffsetContourOutcome => {
  if (!rectangle) return offsetContour(plate, Math.max(border, web / 2) - web / 2);
  const { minX, minY, maxX, maxY } = boundsOfChain(plate);
  const by = border - web / 2;
  const inner = { minX: minX + by, minY: minY + by, maxX: maxX - by, maxY: maxY - by };
  if (Math.min(maxX - minX, maxY - minY) <= 2 * border)
    return { kind: 'vanished', widest: border, at: plate.segments[0].from, atMost: border };
  return { kind: 'offset', contours: [rectangleOf(inner)], enclosed: [], rounded: [], slivers: 0 };
};

export const rectangleOf = ({ minX, minY, maxX, maxY }: Bounds): Contour => {
  const corners: Point[] = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
  return contour(roundPairs(corners).map(([from, to]) => line(from, to)));
};

export const isRectangle = (plate: Contour): boolean => {
  const { minX, minY, maxX, maxY } = boundsOfChain(plate);
  const box = (maxX - minX) * (maxY - minY);
  return plate.segments.every((s) => s.kind === 'line') && Math.abs(Math.abs(areaOf(plate)) - box) <= 1e-12 * box;
};

const unusable = (outcome: OffsetContourOutcome | OffsetRegionOutcome, what: Text): readonly Finding[] => {
  if (outcome.kind === 'self-crossing') {
    const { at } = firstItem(outcome.places);
    return [
      find(
        'nest-outline-unusable/meets-itself',
        say`${{ outline: what }} meets itself, or one of its openings meets its outline, ${{ place: placeByLetters(at, upTo(4)) }}.`,
        { place: { kind: 'spot', ...at } },
      ),
    ];
  }
  if (outcome.kind === 'offset') return [];
  if (outcome.kind !== 'unsound')
    return [find('nest-outline-unusable/offset', say`${{ outline: what }} cannot be used. ${{ why: outlines.noInside }}`)];
  const why = unsound[outcome.what](outcome.amount ?? 0);
  return [find('nest-outline-unusable/unsound', say`${{ outline: what }} cannot be used. ${{ why }}`)];
};

const outlines = phrases('nest-outline', {
  plate: say`The plate`,
  piece: (id: string) => say`Piece ${{ piece: name(id) }}`,
  zone: (n: number) => say`Keep-out zone ${{ zone: count(n) }}`,
  opening: (n: number, id: string) => say`Opening ${{ opening: count(n) }} of piece ${{ piece: name(id) }}`,
  noInside: say`It has no inside.`,
});

const unsound = phrases('nest-outline-unsound', {
  'distance is not a number': (distance: number) =>
    say`The distance of an offset is a finite number of mm, not ${{ distance: number(distance) }}.`,
  'not a number': () => say`A segment holds something that is not a finite number.`,
  'not joined': (gap: number) => say`A segment starts ${{ gap: length(gap) }} from the end of the one before.`,
  'zero-length segment': () => say`A segment ends where it starts.`,
  'arc does not fit its ends': (off: number) => say`The end of an arc is ${{ off: length(off) }} from where its centre and sweep put it.`,
  'arc of more than a turn': (sweep: number) => say`An arc sweeps ${{ sweep: quantity(sweep, 'rad') }}, more than a full turn.`,
  'wrong winding': () => say`The outer contour of a region runs counter-clockwise, its holes clockwise.`,
  'result contradicts itself': (distance: number) =>
    say`The offset by ${{ distance: length(Math.abs(distance)) }} could not be traced without contradiction.`,
});

const faults = phrases('nest-outline-fault', {
  'not finite': say`not finite`,
  gap: say`gap`,
  'zero length': say`zero length`,
  'bad sweep': say`bad sweep`,
  'ends off the circle': say`ends off the circle`,
});

const tooSmall = ({ border }: NestQuestion): Finding =>
  find('plate-too-small', say`With a border of ${{ border: mm(border) }} nothing is left of the plate.`, {
    remedy: remedy(say`Use a larger plate or a smaller border.`, { field: 'border' }),
  });

const badOutlines = ({ plate, forbidden, pieces }: NestQuestion): readonly Finding[] => {
  const named: readonly (readonly [Text, Contour])[] = [
    [outlines.plate, plate],
    ...forbidden.map((zone, i) => [outlines.zone(i + 1), zone] as const),
    ...pieces.flatMap(({ id, outline, holes = [] }) => [
      [outlines.piece(id), outline] as const,
      ...holes.map((hole, i) => [outlines.opening(i + 1, id), hole] as const),
    ]),
  ];
  return named.flatMap(([what, c]) => {
    const judged = soundness(c, SOUND);
    const fault = judged.kind === 'sound' ? undefined : judged.faults[0];
    return fault === undefined
      ? []
      : [find('nest-outline-unusable', say`${{ outline: what }} does not hold together: ${{ fault: faults[fault.kind] }}.`)];
  });
};

const badNumbers = ({ border, web, pieces, work }: NestQuestion): readonly Finding[] => {
  const bad = (path: string, text: Text): Finding => find('nest-value-unusable', text, { place: { kind: 'field', path } });
  const length = (path: string, value: number): readonly Finding[] =>
    Number.isFinite(value) && value >= 0 ? [] : [bad(path, values.length(path, value))];
  const total = pieces.reduce((sum, p) => sum + p.quantity, 0);
  const ids = new Set(pieces.map((p) => p.id));
  return [
    ...length('border', border),
    ...length('web', web),
    ...(work === undefined || work >= 0 ? [] : [bad('work', values.work(work))]),
    ...(pieces.length > 0 ? [] : [bad('pieces', values.noPiece)]),
    ...(ids.size === pieces.length ? [] : [bad('pieces', values.sameName)]),
    ...(total <= MOST_PIECES ? [] : [tooMany(total)]),
    ...pieces.flatMap(({ id, quantity, turns }) => [
      ...(Number.isInteger(quantity) && quantity >= 1 ? [] : [bad('quantity', values.quantity(id, quantity))]),
      ...(divides(turns) ? [] : [bad('turns', values.turns(id))]),
    ]),
  ];
};

const values = phrases('nest-value-unusable', {
  length: (field: string, value: number) =>
    say`The ${{ field: term(field) }} is a length of ${{ least: mm(0) }} or more, not ${{ value: number(value) }}.`,
  work: (work: number) => say`Work is counted from 0 up, not ${{ work: number(work) }}.`,
  noPiece: say`No piece is listed.`,
  sameName: say`Two kinds of piece have the same name.`,
  quantity: (id: string, quantity: number) =>
    say`Piece ${{ piece: name(id) }} needs a whole number, not ${{ quantity: number(quantity) }}.`,
  turns: (id: string) => say`Piece ${{ piece: name(id) }} is turned by a step that does not divide 360°, or is below 1°.`,
});

const tooMany = (total: number): Finding =>
  find('pieces-too-many', say`${{ pieces: count(total, 'piece') }} are listed; at most ${{ most: count(MOST_PIECES) }} are laid at once.`, {
    place: atField('pieces'),
    remedy: say`Lay one plateful at a time.`,
  });

const divides = (turns: Turns): boolean => typeof turns === 'string' || (turns.step >= 1 && Number.isInteger(360 / turns.step));
