/** What each pass makes of an open line with a kept side, and whether that is what the drawing wants. */

import type { Path } from '../../geometry/contour.ts';
import { turnAt } from '../../geometry/joints.ts';
import { pointAt } from '../../geometry/measure.ts';
import { lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { firstItem, lastItem, lastOf, type NonEmpty } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, name, quantity, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import { type WantedLine, wireSide } from '../open-line.ts';
import type { WayAsked, WorkAsked } from '../question.ts';
import { spot, thousandths } from '../said.ts';
import { acceptCorners, cornerFault } from './fit-of-shape.ts';
import { type NotFollowed, notFollowed } from './not-followed.ts';
import { openedPath } from './open-path.ts';
import { roomsTried } from './register-room.ts';

export interface LineFit {
  /** Why this wire cannot cut the line, in a few words. */
  readonly fault?: Text | undefined;
  readonly findings: readonly Finding[];
}

/** A slit is as wide as its kerf, so every wire fits. */
export const fitOfLine = (line: WantedLine, rows: NonEmpty<LadderRow>, wire: Wire, question: WorkAsked & WayAsked): LineFit =>
  roomyFit(line, rows, wire, question).fit;

/** mm of room for a larger register in the inside arcs of a line. */
export const roomInLine = (line: WantedLine, rows: NonEmpty<LadderRow>, wire: Wire, question: WorkAsked & WayAsked): number =>
  roomyFit(line, rows, wire, question).room;

const roomyFit = (line: WantedLine, rows: NonEmpty<LadderRow>, wire: Wire, question: WorkAsked & WayAsked) => {
  const [asked, least = asked] = roomsTried(question);
  const fit = fitWith(asked, line, rows, wire, question);
  return fit.fault === undefined ? { room: asked, fit } : { room: least, fit: fitWith(least, line, rows, wire, question) };
};

const fitWith = (margin: number, line: WantedLine, rows: NonEmpty<LadderRow>, wire: Wire, question: WorkAsked & WayAsked): LineFit => {
  if (line.kept === 'slit') return { findings: [] };
  const opened: Path[] = [];
  for (const row of rows) {
    const outcome = openedPath(line.path, wireSide(line.kept), row.offset.value + margin);
    if (outcome.kind === 'unsound') return unsound(line, outcome);
    if (outcome.kind === 'parts') return lost(line, wire, 2 * (row.offset.value + margin), outcome.at);
    opened.push(outcome.path);
  }
  const [rough, last] = [firstItem(opened), lastItem(opened)];
  const swallowed = worstLeft(line, rough, rows[0].offset.value + margin).find((l) => l.left > l.round + question.tolerance);
  if (swallowed !== undefined) return lost(line, wire, 2 * (rows[0].offset.value + margin), swallowed.at);
  const radius = lastOf(rows).offset.value + margin;
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

const cornersJudged = (line: WantedLine, all: readonly Left[], radius: number, wire: Wire, question: WorkAsked): LineFit => {
  const worst = all[0];
  if (worst === undefined || worst.left < 0.001) return { findings: [] };
  const place = { kind: 'spot', x: worst.at.x, y: worst.at.y, reach: radius * 3, loop: line.id } as const;
  const comesOut = words.comesOut(radius, wire, worst.left);
  if (radius <= question.insideCorner + 1e-9 || worst.left <= question.tolerance)
    return {
      findings: [
        find(
          'corner-rounded/line',
          say`An inside corner of line ${{ line: contour(line.id) }} at ${{ at: spot(worst.at) }} ${{ so: comesOut }}.`,
          { place },
        ),
      ],
    };
  const allow = Math.ceil(radius * 1000) / 1000;
  const finding = find(
    'corner-too-tight/line',
    say`An inside corner of line ${{ line: contour(line.id) }} cannot be made: at ${{ at: spot(worst.at) }} it ${{ so: comesOut }}; R ${{ accepted: quantity(question.insideCorner, 'mm') }} is allowed.`,
    { place, remedy: acceptCorners(allow) },
  );
  return { fault: cornerFault(line.id, radius), findings: [finding] };
};

const lost = ({ id }: WantedLine, wire: Wire, needed: number, at: Point): LineFit => ({
  fault: words.narrow(id, needed),
  findings: [
    find(
      'slot-too-narrow/line',
      say`Line ${{ line: contour(id) }} is narrower than ${{ needed: thousandths(needed) }} on the wire side, at ${{ at: spot(at) }}; the rough cut with ${{ wire: name(wire.name) }} wire cannot follow it there.`,
      {
        place: { kind: 'spot', x: at.x, y: at.y, reach: needed, loop: id },
        remedy: remedy(say`Widen it, keep the other side, or cut it as a slit (${{ field: term(`open.${id}`) }}).`, {
          field: `open.${id}`,
          value: 'slit',
        }),
      },
    ),
  ],
});

const unsound = ({ id }: WantedLine, { why, at }: { readonly why: NotFollowed; readonly at: Point }): LineFit => ({
  fault: words.notFollowed(id),
  findings: [
    find(
      'contour-unsound/line',
      say`Line ${{ line: contour(id) }} cannot be followed by a wire: ${{ why: notFollowed[why] }}, at ${{ at: spot(at) }}.`,
      {
        place: { kind: 'spot', x: at.x, y: at.y, reach: 1, loop: id },
        remedy: say`Repair the line in the drawing.`,
      },
    ),
  ],
});

const words = phrases('line-fit', {
  comesOut: (radius: number, wire: Wire, left: number) =>
    say`comes out at R ${{ radius: thousandths(radius) }} with ${{ wire: name(wire.name) }} wire, ${{ left: thousandths(left) }} of stock left there`,
  narrow: (line: string, needed: number) => say`${{ line: contour(line) }} has a place narrower than ${{ needed: thousandths(needed) }}`,
  notFollowed: (line: string) => say`${{ line: contour(line) }} is not a line that can be followed`,
});
