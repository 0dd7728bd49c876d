/** What is said about entry, hole and tab of a contour. */

import { meanWidth, widthOf } from '../../geometry/width.ts';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import { spokenMass } from '../loose-piece-mass.ts';
import { TACKLE } from '../path/loose-piece.ts';
import type { GivenHole, PlanQuestion } from '../question.ts';
import { type Shape, shapeName } from '../same-shape.ts';
import { type Candidate, type Candidates, cornerNeed } from '../start/entry.ts';
import type { Measures } from '../start/lead-lengths.ts';
import type { Hand } from '../start/override.ts';

export interface Laid {
  readonly tab: number;
  readonly piece: { readonly mass: number; readonly area: number };
  /** Even the longest tab that the contour allows would bend. */
  readonly weak?: boolean;
  readonly measures: Measures;
  /** Without a core: nothing comes loose. */
  readonly burnt?: boolean;
  /** What of it the user set: that is not for want of a better place. */
  readonly hand?: Hand;
}

/** A slug that could fall between table and nozzle, mm across. */
const TINY = 5;

export const entryFindings = (shape: Shape, candidate: Candidate, laid: Laid, question: PlanQuestion): Finding[] => {
  const { spot, hole } = candidate;
  const id = shapeName(shape);
  const place = { kind: 'spot', x: spot.at.x, y: spot.at.y, reach: 2, loop: shape.first.loop.loop.id } as const;
  const findings: Finding[] = [];
  const byHand = laid.hand?.entry !== undefined;
  if (laid.hand?.hole === undefined && hole.origin === 'placed' && hole.diameter < question.startHole - 1e-9)
    findings.push(
      find(
        'hole-made-smaller',
        `${id} has room for a start hole of ${hole.diameter.toFixed(1)} mm only, not the ${question.startHole} mm asked for.`,
        {
          place: { kind: 'spot', x: hole.at.x, y: hole.at.y, reach: hole.diameter, loop: shape.first.loop.loop.id },
          done: `A hole of ${hole.diameter.toFixed(1)} mm is planned.`,
        },
      ),
    );
  const short = Math.min(spot.back - laid.tab, spot.ahead);
  if (short < cornerNeed(laid.measures) - 0.05)
    findings.push(
      find(
        short < 0 ? 'tab-round-corner' : 'entry-near-corner',
        short < 0
          ? `The tab of ${id} reaches round a corner: ${byHand ? 'so its entry is set by hand' : 'no stretch is long enough for it'}.`
          : `${id} is begun ${short.toFixed(2)} mm from a corner, ${byHand ? 'as it is set by hand' : 'since no stretch is longer'}; ${cornerNeed(laid.measures).toFixed(1)} mm is better.`,
        { place, remedy: 'Look at the trace there, or choose another side by hand.' },
      ),
    );
  if (candidate.splits)
    findings.push(
      find(
        'slug-splits',
        `The start hole of ${hole.diameter.toFixed(2)} mm in ${id} reaches nearly across the opening: the slug comes off in two, and the program stops for each half.`,
        {
          place: { kind: 'spot', x: hole.at.x, y: hole.at.y, reach: hole.diameter, loop: shape.first.loop.loop.id },
          remedy: 'Fix both halves at the first stop. A smaller hole, or one at the end of the opening, would leave one slug.',
        },
      ),
    );
  if (!spot.straight)
    findings.push(
      find(
        'entry-on-arc',
        `${id} is begun on a curve, ${byHand ? 'as it is set by hand' : 'since it has no straight stretch that is long enough'}; the trace is harder to stone off there.`,
        { place },
      ),
    );
  if (laid.burnt !== true) findings.push(...pieceFindings(shape, laid, place));
  return findings;
};

const pieceFindings = (shape: Shape, { piece, weak, tab, hand }: Laid, place: Finding['place']): Finding[] => {
  const { kept, loop } = shape.first.loop;
  const findings: Finding[] = [];
  const across = kept === 'die' && meanWidth(loop.contour) < TINY ? widthOf(loop.contour) : TINY;
  if (across < TINY)
    findings.push(
      find(
        'slug-tiny',
        `The slug of ${shapeName(shape)} is only ${across.toFixed(1)} mm across (${spokenMass(piece.mass)}): it may slip into the lower nozzle when its tab is cut.`,
        { ...(place && { place }), remedy: 'Catch it with a magnet or a plate under the work.' },
      ),
    );
  if (weak === true)
    findings.push(
      find(
        'tab-weak',
        `The loose piece of ${shapeName(shape)} (${spokenMass(piece.mass)}) would bend its tab of ${tab.toFixed(1)} mm, ${hand?.tab === undefined ? 'and the contour allows no longer one' : 'which is set by hand'}: it sags while the cut goes on.`,
        { ...(place && { place }), remedy: 'Support it from below before the rough cut is half round, or give it more height to hang by.' },
      ),
    );
  if (piece.mass >= TACKLE)
    findings.push(
      find('slug-heavy', `The loose piece of ${shapeName(shape)} weighs ${spokenMass(piece.mass)}.`, {
        ...(place && { place }),
        remedy: 'Have lifting tackle ready before the tab is cut.',
      }),
    );
  return findings;
};

export const holeFinding = (shape: Shape, none: Extract<Candidates, { readonly kind: 'no hole' }>, question: PlanQuestion): Finding => {
  const { id } = shape.first.loop.loop;
  const short = none.needed - none.room;
  return find(
    'hole-does-not-fit',
    `${shapeName(shape)} has no room for a start hole: the smallest, ${Math.min(1, question.startHole).toFixed(1)} mm, needs ${none.needed.toFixed(2)} mm ` +
      `from its middle to the contour at ${question.height} mm height, and the roomiest place found has ${none.room.toFixed(2)} mm.`,
    {
      place: { kind: 'spot', x: none.at.x, y: none.at.y, reach: none.needed, loop: id },
      remedy: `Make it ${(2 * short).toFixed(2)} mm wider, give a hole that is there already, or set kept.${id} to leave and make it another way.`,
    },
  );
};

export const leadFinding = (shape: Shape, measures: Measures): Finding => {
  const { loop } = shape.first.loop;
  const at = loop.contour.segments[0]!.from;
  return find(
    'no-room-for-lead',
    `In ${shapeName(shape)} the wire has no room to come in and turn round: it needs about ${(2 * measures.runUp + measures.retreat).toFixed(1)} mm of smooth contour.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: 2, loop: loop.id },
      remedy: `Give a start hole in a wider place, or set kept.${loop.id} to leave.`,
    },
  );
};

/** Holes around a part that are no good for it are nobody's mistake; those in an opening were meant for it. */
export const unusableFindings = (shape: Shape, holes: readonly GivenHole[]): Finding[] =>
  shape.first.loop.kept === 'punch'
    ? []
    : holes.map(({ at, diameter }) =>
        find(
          'hole-not-usable',
          `The hole of ${diameter.toFixed(2)} mm at (${at.x.toFixed(3)}, ${at.y.toFixed(3)}) in ${shapeName(shape)} is too near the contour to start from.`,
          {
            place: { kind: 'spot', x: at.x, y: at.y, reach: diameter, loop: shape.first.loop.loop.id },
            done: 'Another start hole is planned.',
          },
        ),
      );
