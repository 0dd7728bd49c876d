/** Judges one wanted contour: uncut, standing on a tab, metal left, gouged, or right but for corners that may be round. */

import type { Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { contour, count, fixed, mm, type Part, quantity } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { blockName, whereIs } from '../block-name.ts';
import { find } from '../findings.ts';
import { placesOf } from '../profile.ts';
import type { ContourProof, Reason } from '../proof.ts';
import type { ContourMeasure } from '../sweep/deviation.ts';
import { moved } from '../sweep/loose.ts';
import type { Proven } from '../sweep/proven-group.ts';
import type { Evidence } from './evidence.ts';
import { allowance, nearestBlock, reason, spot } from './evidence.ts';

/** Right only when it would still be right with the greatest error of the measurement against it. */
export const stateOf = (measure: ContourMeasure): ContourProof['state'] => {
  const standing = measure.standing.reduce((sum, s) => sum + (s.from === 0 && s.to === 1 ? 1 : (s.to - s.from + 1) % 1), 0);
  if (standing > 0.5) return 'uncut';
  const within = measure.beyond.left === undefined && measure.beyond.gouge === undefined;
  return within && measure.standing.length === 0 ? 'right' : 'out of tolerance';
};

export const contourReasons = (evidence: Evidence, p: Proven, wanted: number, measure: ContourMeasure): readonly Reason[] => {
  const { loop, fit = 0, tolerance } = itemAt(evidence.question.wanted, wanted);
  const context: Context = { evidence, p, loop, fit, tolerance, measure };
  if (p.group.cuts.length === 0 || stateOf(measure) === 'uncut') return [uncut(context), ...gouged(context)];
  if (measure.standing.length > 0) return [...standing(context), ...gouged(context)];
  return [...left(context), ...gouged(context), ...rounded(context)];
};

interface Context {
  readonly evidence: Evidence;
  readonly p: Proven;
  readonly loop: string;
  readonly fit: number;
  /** Its own; none where it is that of the question. */
  readonly tolerance: number | undefined;
  readonly measure: ContourMeasure;
}

const uncut = ({ p, loop, measure }: Context): Reason => {
  const at = moved(measure.leftMost.at, p.origin);
  const stands = measure.standing.reduce((sum, s) => sum + s.length, 0);
  const much = p.group.cuts.length === 0 ? words.noCut : words.stands(stands);
  const finding = find('contour-uncut', say`Contour ${{ loop: contour(loop) }} is not cut. ${{ much }}.`, {
    place: spot(at, loop),
    remedy: say`Cut it, or take it off the list.`,
  });
  return { finding, at };
};

/** A contour can be cut in so many pieces; a few places say enough. */
const MOST_TABS = 5;

const standing = ({ evidence, p, loop, measure }: Context): readonly Reason[] =>
  measure.standing.slice(0, MOST_TABS).map((s) => {
    const at = moved(s.at, p.origin);
    const text = words.standing(loop, s.length, at);
    const near = nearestBlock(evidence, p, at);
    return reason(
      find('tab-left-standing', text, { place: spot(at, loop, s.length / 2), remedy: say`Cut this stretch too.` }),
      evidence.blocks,
      near,
      at,
    );
  });

const left = ({ evidence, p, loop, fit, tolerance, measure }: Context): readonly Reason[] => {
  const { insideCorner } = evidence.question;
  const beyond = measure.beyond.left;
  if (beyond === undefined) return [];
  const { amount, limit } = beyond;
  const at = moved(beyond.at, p.origin);
  const block = nearestBlock(evidence, p, at);
  const name = blockName(evidence.blocks, block);
  const corner = measure.rounded.find((r) => !r.excused && nearCorner(r, beyond.at));
  const elsewhere = placesOf(measure.profile, { x: 0, y: 0 }).some(
    (p) => p.deviation > limit && !measure.rounded.some((r) => nearCorner(r, p.at)),
  );
  if (corner !== undefined && !elsewhere) {
    const place = moved(corner.at, p.origin);
    const text = words.tooRound(loop, corner.radius, Math.max(corner.wanted, insideCorner), corner.left);
    const remedy = words.finer;
    return [reason(find('corner-too-round', text, { place: spot(place, loop, corner.radius), remedy }), evidence.blocks, block, place)];
  }
  const text = say(
    'metal-left',
  )`Contour ${{ loop: contour(loop) }}: ${{ amount: mm(amount) }} of stock left at ${{ at: whereIs(at) }}, beside ${{ block: name }}; ${{ allowed: allowance(evidence, { tolerance }, limit, fit) }}, and ${{ share: percent(measure.outShare) }} of the contour is beyond that.`;
  return [
    reason(
      find('metal-left', text, {
        place: spot(at, loop, amount),
        remedy: say`Check this block, its register, and the passes here.`,
      }),
      evidence.blocks,
      block,
      at,
    ),
  ];
};

/** Within the round that came out, with a little to spare. */
const nearCorner = (r: ContourMeasure['rounded'][number], p: Point): boolean =>
  Math.hypot(r.at.x - p.x, r.at.y - p.y) < 1.2 * (r.left + r.radius);

const gouged = ({ evidence, p, loop, fit, tolerance, measure }: Context): readonly Reason[] => {
  const { gouge } = measure.beyond;
  if (gouge === undefined) return [];
  const depth = -gouge.amount;
  const at = moved(gouge.at, p.origin);
  const block = nearestBlock(evidence, p, at);
  const name = blockName(evidence.blocks, block);
  const kerf = 2 * Math.max(...p.group.cuts.map((c) => itemAt(evidence.trace.cuts, c).radius), 0);
  const more = { place: spot(at, loop, depth), remedy: words.look };
  if (depth > kerf) {
    const text = say(
      'kept-metal-cut/contour',
    )`In ${{ block: name }} the wire cuts ${{ depth: mm(depth) }} deep into metal that must stay beside contour ${{ loop: contour(loop) }}, at ${{ at: whereIs(at) }}.`;
    return [reason(find('kept-metal-cut', text, more), evidence.blocks, block, at)];
  }
  const text = say(
    'contour-gouged',
  )`In ${{ block: name }} the wire gouges contour ${{ loop: contour(loop) }} by ${{ depth: mm(depth) }} at ${{ at: whereIs(at) }}; ${{ allowed: allowance(evidence, { tolerance }, gouge.limit, fit) }}.`;
  return [reason(find('contour-gouged', text, more), evidence.blocks, block, at)];
};

const rounded = ({ p, loop, measure }: Context): readonly Reason[] => {
  const excused = measure.rounded.filter((r) => r.excused);
  if (excused.length === 0) return [];
  const worst = excused.reduce((a, b) => (b.left > a.left ? b : a));
  const at = moved(worst.at, p.origin);
  const text = excused.length === 1 ? words.oneRounder(loop, worst) : words.manyRounder(excused.length, loop, worst);
  return [{ finding: find('corner-comes-out-round', text, { place: spot(at, loop, worst.radius) }), at }];
};

const percent = (share: number): Part | Text => (share > 0 && share < 0.01 ? words.underOne : quantity(share * 100, '%', fixed(0)));

interface Rounder {
  readonly radius: number;
  readonly left: number;
}

const words = phrases('contour-judged', {
  noCut: say`No cut comes near it`,
  stands: (along: number) => say`${{ along: mm(along) }} of it is uncut`,
  standing: (loop: string, over: number, at: Point) =>
    say`On contour ${{ loop: contour(loop) }} metal is left standing over ${{ over: mm(over) }} at ${{ at: whereIs(at) }}: the piece is not cut free there.`,
  tooRound: (loop: string, radius: number, allowed: number, left: number) =>
    say`An inside corner of contour ${{ loop: contour(loop) }} comes out at R ${{ radius: mm(radius) }} where ${{ allowed: mm(allowed) }} is allowed: ${{ left: mm(left) }} of stock is left in it.`,
  finer: say`Allow a larger radius, use a finer wire, or a smaller offset in the last pass.`,
  look: say`Check this block: its coordinates, the side of compensation and its register.`,
  oneRounder: (loop: string, { radius, left }: Rounder) =>
    say`One inside corner of contour ${{ loop: contour(loop) }} comes out rounder than drawn, as allowed: R ${{ radius: mm(radius) }} at most, with ${{ left: mm(left) }} of stock left in it.`,
  manyRounder: (corners: number, loop: string, { radius, left }: Rounder) =>
    say`${{ corners: count(corners) }} inside corners of contour ${{ loop: contour(loop) }} come out rounder than drawn, as allowed: R ${{ radius: mm(radius) }} at most, with ${{ left: mm(left) }} of stock left in it.`,
  underOne: say`under 1 %`,
});
