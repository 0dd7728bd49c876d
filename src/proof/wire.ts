/** Whether the wire is there when it must cut, and out when it must not: as far as the program's words tell. */

import { boundsOfChain } from '../geometry/area.ts';
import { boundsOf } from '../geometry/measure.ts';
import type { Proven } from './outcome.ts';
import type { ProofQuestion } from './proof.ts';
import type { Trace, Travel } from './trace.ts';

export type WireFault =
  /** A rapid leads the threaded wire through metal. */
  | { readonly kind: 'drawn through metal'; readonly action: number; readonly block: number }
  /** Cutting begins although the wire was cut or taken out and nobody threaded it. */
  | { readonly kind: 'not threaded'; readonly action: number; readonly block: number };

/** A travel through metal needs the wire out before it (a word that cuts it, or a stop) and in again behind it. */
export const wireFaultsOf = (trace: Trace, proven: readonly Proven[], question: ProofQuestion): readonly WireFault[] => {
  const known = new Map<number, boolean>();
  for (const p of proven) for (const [i, after] of p.travels.entries()) known.set(p.group.cuts[after]!, p.outcome.throughMetal[i] ?? true);
  return trace.travels.flatMap((t): WireFault[] => {
    const through = t.rapids.length > 0 && (known.get(t.before) ?? meetsBlock(t, question));
    const faults: WireFault[] = [];
    const first = t.rapids[0];
    if (through && first !== undefined && t.before >= 0 && !t.wireOut)
      faults.push({ kind: 'drawn through metal', action: first.action, block: first.block });
    const next = trace.cuts[t.after];
    if ((through || t.wireCut) && next !== undefined && !t.threaded)
      faults.push({ kind: 'not threaded', action: next.action, block: next.block });
    return faults;
  });
};

/** Between two separate groups there is metal, unless the way keeps clear of the whole block. */
const meetsBlock = (travel: Travel, question: ProofQuestion): boolean => {
  const block = boundsOfChain(question.block);
  return travel.rapids.some(({ segment }) => {
    const b = boundsOf(segment);
    return b.minX <= block.maxX && b.maxX >= block.minX && b.minY <= block.maxY && b.maxY >= block.minY;
  });
};
