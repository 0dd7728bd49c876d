/** What the judges look at, and the small things they share: a reason with its block, and the block nearest to a place. */

import { distanceToSegment } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import type { Action, Block } from '../../nc/read/program.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { Finding, Place } from '../../text/finding.ts';
import { mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ProofQuestion, Reason } from '../proof.ts';
import { ownTolerance } from '../share.ts';
import type { Loose } from '../sweep/loose.ts';
import type { Proven } from '../sweep/proven-group.ts';
import type { Trace } from '../sweep/wire-doings.ts';

export interface Evidence {
  readonly trace: Trace;
  readonly proven: readonly Proven[];
  readonly loose: readonly Loose[];
  readonly question: ProofQuestion;
  readonly actions: readonly Action[];
  readonly blocks: readonly Block[];
}

/** What was allowed, and of what: `limit` is less than the tolerance where it is the program's share of it. */
export const allowance = ({ question }: Evidence, of: { readonly tolerance?: number | undefined }, limit: number, fit: number): Text => {
  const { tolerance } = ownTolerance(question, of);
  const allowed = limit < tolerance ? words.share(limit, tolerance) : words.whole(tolerance);
  return fit > 0 ? words.withFit(allowed, fit) : allowed;
};

const words = phrases('tolerance-use', {
  whole: (tolerance: number) => say`${{ allowed: mm(tolerance) }} is allowed`,
  share: (limit: number, tolerance: number) =>
    say`of the ±${{ tolerance: mm(tolerance) }} tolerance the program may use ${{ allowed: mm(limit) }}`,
  withFit: (allowed: Text, fit: number) =>
    say`${{ allowed }}, with ${{ fit: mm(fit) }} for the arcs that stand for drawn curves counted in`,
});

/** A finding with its block. */
export const reason = (finding: Finding, blocks: readonly Block[], block: number, at?: Point): Reason => {
  const text = blocks[block]?.text;
  return { finding, block, text, at };
};

export const lineOf = (blocks: readonly Block[], block: number): { readonly place?: Place | undefined } => {
  const known = blocks[block];
  return known === undefined ? {} : { place: { kind: 'line', line: known.line, text: known.text } };
};

export const spot = (at: Point, loop?: string, reach?: number): Place => ({
  kind: 'spot',
  x: at.x,
  y: at.y,
  reach,
  loop,
});

/** The block whose cut comes nearest to a place, or reaches furthest over it. */
export const nearestBlock = ({ trace }: Evidence, p: Proven, at: Point): number => {
  let best = { block: trace.cuts[p.group.cuts[0] ?? -1]?.block ?? 0, distance: Infinity };
  for (const c of p.group.cuts) {
    const { block, radius, segment } = itemAt(trace.cuts, c);
    const distance = distanceToSegment(segment, at) - radius;
    if (distance < best.distance - 1e-6) best = { block, distance };
  }
  return best.block;
};
