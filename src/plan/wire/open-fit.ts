/** What each pass makes of an open line with a kept side, and whether that is what the drawing wants. */

import type { Path } from '../../geometry/contour.ts';
import { turnAt } from '../../geometry/joints.ts';
import { pointAt } from '../../geometry/measure.ts';
import { lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import { type WantedLine, wireSide } from '../open-line.ts';
import type { PlanQuestion } from '../question.ts';
import { marginOf } from './fit-of-shape.ts';
import { openedPath } from './open-path.ts';

export interface LineFit {
  /** Why this wire cannot cut the line, in a few words. */
  readonly fault?: string;
  readonly findings: readonly Finding[];
}

/** A slit is as wide as its kerf, so every wire fits. */
export const fitOfLine = (line: WantedLine, rows: readonly LadderRow[], wire: Wire, question: PlanQuestion): LineFit => {
  if (line.kept === 'slit') return { findings: [] };
  const margin = marginOf(question);
  const opened: Path[] = [];
  for (const row of rows) {
    const outcome = openedPath(line.path, wireSide(line.kept), row.offset.value + margin);
    if (outcome.kind === 'unsound') return unsound(line, outcome);
    if (outcome.kind === 'parts') return lost(line, wire, 2 * (row.offset.value + margin), outcome.at);
    opened.push(outcome.path);
  }
  const [rough, last] = [opened[0]!, opened.at(-1)!];
  const swallowed = worstLeft(line, rough, rows[0]!.offset.value + margin).find((l) => l.left > l.round + question.tolerance);
  if (swallowed !== undefined) return lost(line, wire, 2 * (rows[0]!.offset.value + margin), swallowed.at);
  const radius = rows.at(-1)!.offset.value + margin;
  return cornersJudged(line, worstLeft(line, last, radius), radius, wire, question);
};

interface Left {
  readonly at: Point;
  /** Metal left there, mm, and what a round of the wire's radius leaves in that corner; 0 where there is none. */
  readonly left: number;
  readonly round: number;
}

/** Places of the line that do not lie on what comes out, the worst first. */
const worstLeft = ({ path, kept }: WantedLine, comesOut: Path, radius: number): readonly Left[] => {
  const lookup = lookupOf(comesOut);
  const side = kept === 'slit' ? 0 : wireSide(kept);
  const places = path.segments.flatMap((s, i) => {
    const next = path.segments[i + 1];
    const turn = next === undefined ? 0 : Math.max(0, side * turnAt(s, next));
    const hollow = s.kind === 'arc' && s.sweep * side > 0 && s.radius < radius ? Math.abs(s.sweep) : 0;
    const of = (t: number, wanted: number): number => (radius - wanted) * (1 / Math.cos(Math.min(t, 3) / 2) - 1);
    return [
      { at: pointAt(s, 0.5), round: hollow === 0 ? 0 : of(hollow, (s as { radius: number }).radius) },
      { at: s.to, round: of(turn, 0) },
    ];
  });
  return places
    .map(({ at, round }) => ({ at, round, left: nearestIn(lookup, at).distance }))
    .filter((l) => l.left > LEAST)
    .toSorted((a, b) => b.left - a.left);
};

/** Less than this, mm, is rounding. */
const LEAST = 1e-5;

const cornersJudged = (line: WantedLine, all: readonly Left[], radius: number, wire: Wire, question: PlanQuestion): LineFit => {
  const worst = all[0];
  if (worst === undefined || worst.left < 0.001) return { findings: [] };
  const at = `(${worst.at.x.toFixed(3)}, ${worst.at.y.toFixed(3)})`;
  const place = { kind: 'spot', x: worst.at.x, y: worst.at.y, reach: radius * 3, loop: line.id } as const;
  const what = `comes out with R ${radius.toFixed(3)} mm with ${wire.name} wire and leaves ${worst.left.toFixed(3)} mm there`;
  if (radius <= question.insideCorner + 1e-9 || worst.left <= question.tolerance)
    return { findings: [find('corner-rounded', `An inside corner of the line ${line.id} at ${at} ${what}.`, { place })] };
  const finding = find(
    'corner-too-tight',
    `An inside corner of the line ${line.id} cannot be made: at ${at} it ${what}; R ${question.insideCorner} mm is accepted.`,
    {
      place,
      remedy: `Accept inside corners of R ${(Math.ceil(radius * 1000) / 1000).toFixed(3)} mm, or ease them to that radius in the drawing.`,
    },
  );
  return { fault: `${line.id} has an inside corner that would come out with R ${radius.toFixed(3)} mm`, findings: [finding] };
};

const lost = ({ id }: WantedLine, wire: Wire, needed: number, at: Point): LineFit => ({
  fault: `${id} has a place narrower than ${needed.toFixed(3)} mm`,
  findings: [
    find(
      'slot-too-narrow',
      `The line ${id} is narrower than ${needed.toFixed(3)} mm on the side of the wire, at (${at.x.toFixed(3)}, ${at.y.toFixed(3)}); the rough cut with ${wire.name} wire cannot follow it there.`,
      {
        place: { kind: 'spot', x: at.x, y: at.y, reach: needed, loop: id },
        remedy: `Widen it, keep the other side, or cut it as a slit (open.${id}).`,
      },
    ),
  ],
});

const unsound = ({ id }: WantedLine, { why, at }: { readonly why: string; readonly at: Point }): LineFit => ({
  fault: `${id} is not a line that can be followed`,
  findings: [
    find('contour-unsound', `The line ${id} cannot be followed by a wire: ${why}, at (${at.x.toFixed(3)}, ${at.y.toFixed(3)}).`, {
      place: { kind: 'spot', x: at.x, y: at.y, reach: 1, loop: id },
      remedy: 'Mend the line in the drawing.',
    }),
  ],
});
