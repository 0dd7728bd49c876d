/** Judges one open line: uncut, standing in places, metal left beside it, cut into the side that stays, or right. */

import type { Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { contour, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { blockName, whereIs } from '../block-name.ts';
import { find } from '../findings.ts';
import type { OpenProof, ProofQuestion, Reason, WantedOpen } from '../proof.ts';
import { allowedTo, ownTolerance } from '../share.ts';
import { moved } from '../sweep/loose.ts';
import type { OpenMeasure } from '../sweep/open-line-deviation.ts';
import type { Proven } from '../sweep/proven-group.ts';
import { RESOLUTION } from '../sweep/sweep.ts';
import type { Evidence } from './evidence.ts';
import { allowance, nearestBlock, reason, spot } from './evidence.ts';

export const openProofOf = ({ question }: Evidence, line: number, measure: OpenMeasure, origin: Point): OpenProof => {
  const wanted = itemAt(question.wantedOpen ?? [], line);
  const { chain, kept } = wanted;
  const { leftMost, gougeMost } = measure;
  return {
    chain,
    kept,
    leftMost: { at: moved(leftMost.at, origin), amount: leftMost.amount },
    gougeMost: { at: moved(gougeMost.at, origin), amount: gougeMost.amount },
    state: stateOf(measure, allowedFor(question, wanted)),
  };
};

/** mm that is left for the cut where arcs stand for the curve that was drawn. */
const allowedFor = (question: ProofQuestion, wanted: WantedOpen): number => allowedTo(ownTolerance(question, wanted)) - (wanted.fit ?? 0);

/** Right only when it would still be right with the greatest error of the measurement against it. A line beside the block is no cut. */
const stateOf = ({ leftMost, gougeMost, standing, length }: OpenMeasure, allowed: number): OpenProof['state'] => {
  if (length === 0 || standing.length > length / 2) return 'uncut';
  return standing.length === 0 && Math.max(leftMost.amount, -gougeMost.amount) + RESOLUTION <= allowed ? 'right' : 'out of tolerance';
};

export const openReasons = (evidence: Evidence, p: Proven, line: number, measure: OpenMeasure): readonly Reason[] => {
  const wanted = itemAt(evidence.question.wantedOpen ?? [], line);
  const allowed = allowedFor(evidence.question, wanted);
  const state = stateOf(measure, allowed);
  if (state === 'right') return [];
  const context: Context = { evidence, p, wanted, measure };
  const gouge = -measure.gougeMost.amount + RESOLUTION > allowed ? [gouged(context)] : [];
  if (state === 'uncut') return [uncut(context), ...gouge];
  if (measure.standing.length > 0) return [standing(context), ...gouge];
  return [...(measure.leftMost.amount + RESOLUTION > allowed ? [left(context)] : []), ...gouge];
};

interface Context {
  readonly evidence: Evidence;
  readonly p: Proven;
  readonly wanted: WantedOpen;
  readonly measure: OpenMeasure;
}

const uncut = ({ p, wanted: { chain }, measure }: Context): Reason => {
  const at = moved(measure.standing.at, p.origin);
  const why = measure.length === 0 ? words.outside : p.group.cuts.length === 0 ? words.noCut : words.stands(measure.standing.length);
  return {
    finding: find('contour-uncut/line', say`Line ${{ chain: contour(chain) }} is not cut. ${{ why }}.`, {
      place: spot(at, chain),
      remedy: say`Cut it, or take it off the list.`,
    }),
    at,
  };
};

const standing = (context: Context): Reason => {
  const { wanted, measure } = context;
  return blamed(context, measure.standing.at, (at) =>
    find('tab-left-standing/line', words.standing(wanted.chain, measure.standing.length, at), {
      place: spot(at, wanted.chain),
      remedy: say`Cut this stretch too.`,
    }),
  );
};

const left = (context: Context): Reason => {
  const { wanted, measure, evidence } = context;
  const { amount } = measure.leftMost;
  return blamed(context, measure.leftMost.at, (at, name) => {
    const what = wanted.kept === 'slit' ? words.slitShort(wanted.chain, amount) : words.leftOnLine(wanted.chain, amount);
    const text = say(
      'metal-left/line',
    )`At ${{ at: whereIs(at) }}, beside ${{ block: name }}, ${{ what }}; ${{ allowed: allowance(evidence, wanted, allowedTo(ownTolerance(evidence.question, wanted)), wanted.fit ?? 0) }}.`;
    return find('metal-left/line', text, {
      place: spot(at, wanted.chain, amount),
      remedy: say`Check this block, its register, and the passes here.`,
    });
  });
};

const gouged = (context: Context): Reason => {
  const { wanted, measure, evidence, p } = context;
  const depth = -measure.gougeMost.amount;
  const kerf = 2 * Math.max(...p.group.cuts.map((c) => itemAt(evidence.trace.cuts, c).radius), 0);
  const code = depth > kerf ? 'kept-metal-cut' : 'contour-gouged';
  return blamed(context, measure.gougeMost.at, (at, name) =>
    find(
      code,
      words.intoLine(
        wanted.chain,
        name,
        depth,
        at,
        allowance(evidence, wanted, allowedTo(ownTolerance(evidence.question, wanted)), wanted.fit ?? 0),
      ),
      {
        place: spot(at, wanted.chain, depth),
        remedy: words.look,
      },
    ),
  );
};

const blamed = ({ evidence, p }: Context, local: Point, found: (at: Point, block: Text) => ReturnType<typeof find>): Reason => {
  const at = moved(local, p.origin);
  const block = nearestBlock(evidence, p, at);
  return reason(found(at, blockName(evidence.blocks, block)), evidence.blocks, block, at);
};

const words = phrases('line-judged', {
  outside: say`No part of it lies in the block`,
  noCut: say`No cut comes near it`,
  stands: (along: number) => say`${{ along: mm(along) }} of it is uncut`,
  standing: (chain: string, over: number, at: Point) =>
    say`On line ${{ chain: contour(chain) }} metal is left standing over ${{ over: mm(over) }}, the longest piece at ${{ at: whereIs(at) }}.`,
  slitShort: (chain: string, short: number) =>
    say`slit ${{ chain: contour(chain) }} is ${{ short: mm(short) }} short of its width or off its centre line`,
  leftOnLine: (chain: string, left: number) => say`${{ left: mm(left) }} of stock is left on line ${{ chain: contour(chain) }}`,
  intoLine: (chain: string, block: Text, depth: number, at: Point, allowed: Text) =>
    say`In ${{ block }} the wire cuts ${{ depth: mm(depth) }} deep into metal that must stay beside line ${{ chain: contour(chain) }}, at ${{ at: whereIs(at) }}; ${{ allowed }}.`,
  look: say`Check this block: its coordinates, the side of compensation and its register.`,
});
