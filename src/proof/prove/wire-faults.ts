/** Whether the wire is there when it must cut, and out when it must not: as far as the program's words tell. */

import { boundsOfChain } from '../../geometry/area.ts';
import { boundsOf } from '../../geometry/measure.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { Action } from '../../nc/read/program.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { ProofQuestion } from '../proof.ts';
import type { Proven } from '../sweep/proven-group.ts';
import { doingsOf, type Trace, type Travel, type WireDoing } from '../sweep/wire-doings.ts';

export type WireFault =
  /** A rapid leads the threaded wire through metal. */
  | { readonly kind: 'drawn through metal'; readonly action: number; readonly block: number }
  /** Cutting begins although the wire was cut or taken out and nobody threaded it. */
  | { readonly kind: 'not threaded'; readonly action: number; readonly block: number }
  /** The program ends with the wire in, although the dialect has a word that cuts it. */
  | { readonly kind: 'left threaded'; readonly action: number; readonly block: number }
  /** The word that threads the wire comes where it is in. */
  | { readonly kind: 'threaded twice'; readonly action: number; readonly block: number };

/**
 * A rapid through metal needs the wire out before it (a word that cuts it, or a stop) and in again behind it; one that keeps clear of metal may lead
 * the threaded wire. A stop that does not say what it is for may be for what the dialect has no word for.
 */
export const wireFaultsOf = ({ trace, proven, question, actions }: Asked): readonly WireFault[] => {
  const known = new Map<number, readonly boolean[]>();
  const led = new Map<number, readonly boolean[]>();
  for (const { group, travels, outcome } of proven) {
    for (const [i, after] of travels.entries()) known.set(itemAt(group.cuts, after), outcome.throughMetal[i] ?? []);
    for (const { cut, way } of outcome.starts) led.set(itemAt(group.cuts, cut), way);
  }
  const throughMetal = new Set<number>();
  const onTheWay = trace.travels.flatMap((t) => {
    const metal = known.get(t.before);
    const way = led.get(t.after) ?? [];
    // From one group to another there is metal, but where the wire is threaded by then the group knows its own.
    const between = (rapid: number): boolean =>
      way[rapid - (t.rapids.length - way.length)] ?? meetsBlock(itemAt(t.rapids, rapid).segment, question);
    const isThroughMetal = (rapid: number): boolean => metal?.[rapid] ?? between(rapid);
    t.rapids.forEach(({ action }, rapid) => {
      if (isThroughMetal(rapid)) throughMetal.add(action);
    });
    return faultsOn(t, trace, isThroughMetal);
  });
  return [...onTheWay, ...threadedTwice(actions, question, throughMetal), ...faultAtEnd(trace, question)];
};

interface Asked {
  readonly trace: Trace;
  readonly proven: readonly Proven[];
  readonly question: ProofQuestion;
  readonly actions: readonly Action[];
}

/** By word: a stop for it may as well be passed over. */
const threadedTwice = (actions: readonly Action[], question: ProofQuestion, throughMetal: ReadonlySet<number>): readonly WireFault[] => {
  let wire: Wire = 'either';
  return actions.flatMap((a, action): readonly WireFault[] => {
    const twice = a.kind === 'thread' && wire === 'in';
    if (a.kind === 'move') wire = !a.rapid ? 'in' : throughMetal.has(action) ? 'out' : wire;
    else wire = doingsOf(a, question).reduce(afterDoing, wire);
    return twice ? [{ kind: 'threaded twice', action, block: a.block }] : [];
  });
};

/** Where the dialect has a word that cuts the wire, the last cut is followed by it, or by a stop that says so. */
const faultAtEnd = ({ cuts, atEnd }: Trace, { dialect }: ProofQuestion): readonly WireFault[] => {
  const last = cuts.at(-1);
  const wire = atEnd.reduce<Wire>((known, doing) => (typeof doing === 'number' ? known : afterDoing(known, doing)), 'in');
  if (last === undefined || dialect.words.cutWire === undefined || wire === 'out') return [];
  return [{ kind: 'left threaded', action: last.action, block: last.block }];
};

type Wire = 'in' | 'out' | 'either';

const afterDoing = (wire: Wire, doing: Exclude<WireDoing, number>): Wire => {
  if (doing === 'thread') return 'in';
  if (doing === 'cut wire') return 'out';
  return wire === (doing === 'thread or not' ? 'out' : 'in') ? 'either' : wire;
};

/** Before the first cut nobody knows whether the wire is in: the machine may have been made ready by hand. */
const faultsOn = (t: Travel, trace: Trace, isThroughMetal: (rapid: number) => boolean): readonly WireFault[] => {
  const faults: WireFault[] = [];
  let wire: Wire = t.before < 0 ? 'either' : 'in';
  for (const doing of t.doings) {
    if (typeof doing !== 'number') wire = afterDoing(wire, doing);
    else if (isThroughMetal(doing)) {
      const { action, block } = itemAt(t.rapids, doing);
      if (wire === 'in') faults.push({ kind: 'drawn through metal', action, block });
      wire = 'out';
    }
  }
  const next = trace.cuts[t.after];
  if (wire === 'out' && next !== undefined) faults.push({ kind: 'not threaded', action: next.action, block: next.block });
  return faults;
};

/** Between two separate groups there is metal, unless the way keeps clear of the whole block. */
const meetsBlock = (rapid: Segment, question: ProofQuestion): boolean => {
  const block = boundsOfChain(question.block);
  const b = boundsOf(rapid);
  return b.minX <= block.maxX && b.maxX >= block.minX && b.minY <= block.maxY && b.maxY >= block.minY;
};
