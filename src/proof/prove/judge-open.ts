/** Judges one open line: uncut, standing in places, metal left beside it, cut into the side that stays, or right. */
import type { Point } from '../../geometry/segment.ts';
import { blockName, mm } from '../block-name.ts';
import { find } from '../findings.ts';
import type { OpenProof, Reason, WantedOpen } from '../proof.ts';
import { moved } from '../sweep/loose.ts';
import type { OpenMeasure } from '../sweep/open-line-deviation.ts';
import type { Proven } from '../sweep/proven-group.ts';
import { RESOLUTION } from '../sweep/sweep.ts';
import type { Evidence } from './evidence.ts';
import { nearestBlock, reason, spot } from './evidence.ts';

export const openProofOf = ({ question }: Evidence, line: number, measure: OpenMeasure, origin: Point): OpenProof => {
  const { chain, kept } = question.wantedOpen![line]!;
  const { leftMost, gougeMost } = measure;
  return {
    chain,
    kept,
    leftMost: { at: moved(leftMost.at, origin), amount: leftMost.amount },
    gougeMost: { at: moved(gougeMost.at, origin), amount: gougeMost.amount },
    state: stateOf(measure, question.tolerance),
  };
};

/** Right only when it would still be right with the greatest error of the measurement against it. A line beside the block is no cut. */
const stateOf = ({ leftMost, gougeMost, standing, length }: OpenMeasure, tolerance: number): OpenProof['state'] => {
  if (length === 0 || standing.length > length / 2) return 'uncut';
  return standing.length === 0 && Math.max(leftMost.amount, -gougeMost.amount) + RESOLUTION <= tolerance ? 'right' : 'out of tolerance';
};

export const openReasons = (evidence: Evidence, p: Proven, line: number, measure: OpenMeasure): readonly Reason[] => {
  const wanted = evidence.question.wantedOpen![line]!;
  const { tolerance } = evidence.question;
  const state = stateOf(measure, tolerance);
  if (state === 'right') return [];
  const context: Context = { evidence, p, wanted, measure };
  const gouge = -measure.gougeMost.amount + RESOLUTION > tolerance ? [gouged(context)] : [];
  if (state === 'uncut') return [uncut(context), ...gouge];
  if (measure.standing.length > 0) return [standing(context), ...gouge];
  return [...(measure.leftMost.amount + RESOLUTION > tolerance ? [left(context)] : []), ...gouge];
};

interface Context {
  readonly evidence: Evidence;
  readonly p: Proven;
  readonly wanted: WantedOpen;
  readonly measure: OpenMeasure;
}

const uncut = ({ p, wanted: { chain }, measure }: Context): Reason => {
  const at = moved(measure.standing.at, p.origin);
  const why =
    measure.length === 0
      ? 'No part of it lies in the block'
      : p.group.cuts.length === 0
        ? 'No cut comes near it'
        : `Metal stands along ${mm(measure.standing.length)} of it`;
  return {
    finding: find('contour-uncut', `The line ${chain} is not cut. ${why}.`, {
      place: spot(at, chain),
      remedy: 'Cut it, or take it off the list.',
    }),
    at,
  };
};

const standing = (context: Context): Reason => {
  const { wanted, measure } = context;
  const sentence = (at: Point) =>
    `On the line ${wanted.chain} metal is left standing over ${mm(measure.standing.length)}, the longest piece at x ${mm(at.x)}, y ${mm(at.y)}.`;
  return blamed(context, measure.standing.at, (at) =>
    find('tab-left-standing', sentence(at), { place: spot(at, wanted.chain), remedy: 'Cut this stretch too.' }),
  );
};

const left = (context: Context): Reason => {
  const { wanted, measure, evidence } = context;
  const { amount } = measure.leftMost;
  return blamed(context, measure.leftMost.at, (at, name) => {
    const what =
      wanted.kept === 'slit'
        ? `the slit ${wanted.chain} is ${mm(amount)} short of its width or off its middle`
        : `${mm(amount)} of metal is left on the line ${wanted.chain}`;
    const sentence = `At x ${mm(at.x)}, y ${mm(at.y)}, beside ${name}, ${what}; ${mm(evidence.question.tolerance)} is allowed.`;
    return find('metal-left', sentence, {
      place: spot(at, wanted.chain, amount),
      remedy: 'Look at this block, its register, and the passes that run here.',
    });
  });
};

const gouged = (context: Context): Reason => {
  const { wanted, measure, evidence, p } = context;
  const depth = -measure.gougeMost.amount;
  const kerf = 2 * Math.max(...p.group.cuts.map((c) => evidence.trace.cuts[c]!.radius), 0);
  const code = depth > kerf ? 'kept-metal-cut' : 'contour-gouged';
  return blamed(context, measure.gougeMost.at, (at, name) =>
    find(
      code,
      `In ${name} the wire cuts ${mm(depth)} deep into metal that must stay beside the line ${wanted.chain}, at x ${mm(at.x)}, y ${mm(at.y)}; ${mm(evidence.question.tolerance)} is allowed.`,
      {
        place: spot(at, wanted.chain, depth),
        remedy: 'Look at this block: its coordinates, the side of compensation and its register.',
      },
    ),
  );
};

const blamed = ({ evidence, p }: Context, local: Point, say: (at: Point, block: string) => ReturnType<typeof find>): Reason => {
  const at = moved(local, p.origin);
  const block = nearestBlock(evidence, p, at);
  return reason(say(at, blockName(evidence.blocks, block)), evidence.blocks, block, at);
};
