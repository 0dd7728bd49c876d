/** What each pass of a wire makes of one shape, and whether that is what the drawing wants. */

import type { Contour } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/segment.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import type { PlanQuestion } from '../question.ts';
import { type Shape, shapeName } from '../same-shape.ts';
import { narrowestPlace } from './narrow.ts';
import { openedBy } from './opened-contour.ts';
import { type RoundedCorner, roundedCorners } from './rounded-corners.ts';

export interface Fit {
  /** Per pass the wanted contour opened by its offset and a hair more; empty when a pass cannot go round. */
  readonly opened: readonly Contour[];
  /** What would come out, whole or in pieces. */
  readonly comesOut: readonly Contour[];
  readonly corners: readonly RoundedCorner[];
  /** Why this wire cannot make the shape, in a few words. */
  readonly fault?: string;
  readonly findings: readonly Finding[];
}

/** Corners that leave less than this (mm) are not worth a word. */
const WORTH_SAYING = 0.001;

export const fitOf = (shape: Shape, rows: readonly LadderRow[], wire: Wire, question: PlanQuestion): Fit => {
  const { loop, kept } = shape.first.loop;
  const margin = marginOf(question);
  const opened: Contour[] = [];
  for (const row of rows) {
    const outcome = openedBy(loop.contour, kept, row.offset.value + margin);
    if (outcome.kind === 'unsound') return unsound(shape, outcome);
    if (outcome.kind !== 'whole')
      return tooNarrow(shape, row.offset.value + margin, wire, outcome.kind === 'parts' ? outcome.contours : [], question);
    opened.push(outcome.contour);
  }
  const rough = roundedCorners(loop.contour, opened[0]!, rows[0]!.offset.value + margin, kept);
  const lost = rough.find((c) => c.swallowed && c.left > question.tolerance);
  if (lost !== undefined) return tooNarrow(shape, lost.radius, wire, [opened.at(-1)!], question, lost);
  const radius = rows.at(-1)!.offset.value + margin;
  const corners = roundedCorners(loop.contour, opened.at(-1)!, radius, kept);
  const comesOut = [opened.at(-1)!];
  const tight = corners.filter((c) => radius > question.insideCorner + 1e-9 && c.left > question.tolerance);
  if (tight.length === 0) return { opened, comesOut, corners, findings: cornerNotes(shape, corners, wire) };
  return {
    opened,
    comesOut,
    corners,
    fault: `${shape.first.loop.loop.id} has an inside corner that would come out with R ${radius.toFixed(3)} mm`,
    findings: tightFindings(shape, tight, wire, question),
  };
};

/**
 * Programmed inside arcs must stay larger than the register after both are rounded to the last digit of the program:
 * ends, centre and register are off by half a digit each, which adds to at most two and a half; four leaves room.
 */
export const marginOf = ({ resolution }: PlanQuestion): number => 4 * resolution.unit * 10 ** -resolution.decimals;

/** A contour that meets itself has no inside and outside to go by: no wire can help. */
const unsound = (shape: Shape, { why, at }: { readonly why: string; readonly at: Point }): Fit => {
  const { id } = shape.first.loop.loop;
  const finding = find(
    'contour-unsound',
    `${shapeName(shape)} cannot be followed by a wire: ${why}, at (${at.x.toFixed(3)}, ${at.y.toFixed(3)}).`,
    { place: { kind: 'spot', x: at.x, y: at.y, reach: 1, loop: id }, remedy: 'Mend the contour in the drawing.' },
  );
  return { opened: [], comesOut: [], corners: [], fault: `${id} is not a contour that can be followed`, findings: [finding] };
};

const tooNarrow = (
  shape: Shape,
  distance: number,
  wire: Wire,
  comesOut: readonly Contour[],
  question: PlanQuestion,
  lost?: RoundedCorner,
): Fit => {
  const { loop, kept } = shape.first.loop;
  const needed = 2 * distance;
  const place = narrowestPlace(loop.contour, kept, needed * 1.0001);
  const at = place?.at ?? lost?.at ?? loop.contour.segments[0]!.from;
  const wide = place === undefined ? `narrower than ${needed.toFixed(3)} mm` : `${place.width.toFixed(3)} mm wide`;
  const widen = Math.ceil(needed * 100) / 100;
  const finding = find(
    'slot-too-narrow',
    `${shapeName(shape)} is ${wide} at (${at.x.toFixed(3)}, ${at.y.toFixed(3)}); the rough cut with ${wire.name} wire needs ${needed.toFixed(3)} mm to pass.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: needed, loop: loop.id },
      remedy: `Widen it to ${widen.toFixed(2)} mm${question.wire === undefined ? '' : ', or take a finer wire'}.`,
    },
  );
  return {
    opened: [],
    comesOut,
    corners: [],
    fault: `${loop.id} is ${wide}, its rough cut needs ${needed.toFixed(3)} mm`,
    findings: [finding],
  };
};

const tightFindings = (shape: Shape, tight: readonly RoundedCorner[], wire: Wire, question: PlanQuestion): Finding[] => {
  const worst = tight.reduce((a, b) => (b.left > a.left ? b : a));
  const drawn = worst.wanted === 0 ? 'sharp' : `with R ${worst.wanted.toFixed(3)} mm`;
  const allow = Math.ceil(worst.radius * 1000) / 1000;
  const count = tight.length === 1 ? 'An inside corner' : `${tight.length} inside corners`;
  return [
    find(
      'corner-too-tight',
      `${count} of ${shapeName(shape)} cannot be made: drawn ${drawn} at (${worst.at.x.toFixed(3)}, ${worst.at.y.toFixed(3)}), it comes out with R ${worst.radius.toFixed(3)} mm ` +
        `with ${wire.name} wire and leaves ${worst.left.toFixed(3)} mm there; R ${question.insideCorner} mm is accepted.`,
      {
        place: { kind: 'spot', x: worst.at.x, y: worst.at.y, reach: worst.radius * 3, loop: shape.first.loop.loop.id },
        remedy: `Accept inside corners of R ${allow.toFixed(3)} mm, or ease them to that radius in the drawing.`,
      },
    ),
  ];
};

const cornerNotes = (shape: Shape, corners: readonly RoundedCorner[], wire: Wire): Finding[] => {
  const seen = corners.filter((c) => c.left > WORTH_SAYING);
  if (seen.length === 0) return [];
  const worst = seen.reduce((a, b) => (b.left > a.left ? b : a));
  const count = seen.length === 1 ? '1 inside corner' : `${seen.length} inside corners`;
  return [
    find(
      'corner-rounded',
      `${count} of ${shapeName(shape)} ${seen.length === 1 ? 'comes' : 'come'} out with R ${worst.radius.toFixed(3)} mm with ${wire.name} wire; ` +
        `the most is left at (${worst.at.x.toFixed(3)}, ${worst.at.y.toFixed(3)}), ${worst.left.toFixed(3)} mm from the corner drawn.`,
      { place: { kind: 'spot', x: worst.at.x, y: worst.at.y, reach: worst.radius * 3, loop: shape.first.loop.loop.id } },
    ),
  ];
};
