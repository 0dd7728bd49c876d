/** What the proof says: contours right or wrong, and every reason with its block and place. */

import type { Point } from '../../geometry/segment.ts';
import { itemAt, sideBySide } from '../../sequence/sequence.ts';
import { count, list } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { blockName } from '../block-name.ts';
import { find } from '../findings.ts';
import { placesOf } from '../profile.ts';
import type { ContourProof, OpenProof, Reason } from '../proof.ts';
import type { ContourMeasure } from '../sweep/deviation.ts';
import { moved } from '../sweep/loose.ts';
import type { Evidence } from './evidence.ts';
import { lineOf, reason } from './evidence.ts';
import { contourReasons, stateOf } from './judge-contours.ts';
import { energyReasons } from './judge-energy.ts';
import { looseReasons } from './judge-loose.ts';
import { openProofOf, openReasons } from './judge-open.ts';
import { strayReasons } from './judge-stray.ts';
import { startReasons } from './starts.ts';
import { wireFaultsOf } from './wire-faults.ts';

export interface Judged {
  readonly contours: readonly ContourProof[];
  readonly open: readonly OpenProof[];
  readonly reasons: readonly Reason[];
}

/** Reasons in program order as far as they have a block; those without one first. */
export const judge = (evidence: Evidence): Judged => {
  const contours: ContourProof[] = [];
  const open: OpenProof[] = [];
  const reasons: Reason[] = [
    ...programReasons(evidence),
    ...wireReasons(evidence),
    ...startReasons(evidence),
    ...looseReasons(evidence),
    ...strayReasons(evidence),
    ...energyReasons(evidence),
  ];
  evidence.proven.forEach((p) => {
    const { question } = evidence;
    for (const [wanted, measure] of sideBySide(p.group.wanted, p.outcome.measures)) {
      contours[wanted] = contourProofOf(itemAt(question.wanted, wanted).loop, measure, p.origin, stateOf(measure));
      reasons.push(...contourReasons(evidence, p, wanted, measure));
    }
  });
  for (const p of evidence.proven) {
    for (const [line, measure] of sideBySide(p.group.open, p.outcome.open)) {
      open[line] = openProofOf(evidence, line, measure, p.origin);
      reasons.push(...openReasons(evidence, p, line, measure));
    }
  }
  return { contours, open, reasons: reasons.sort((a, b) => (a.block ?? -1) - (b.block ?? -1)) };
};

/** Apart from `judge`, so that what it remembers for later is one measure and not all the evidence. */
const contourProofOf = (loop: string, measure: ContourMeasure, origin: Point, state: ContourProof['state']): ContourProof => {
  const { leftMost, gougeMost, rounded, profile } = measure;
  return {
    loop,
    leftMost: { at: moved(leftMost.at, origin), amount: leftMost.amount },
    gougeMost: { at: moved(gougeMost.at, origin), amount: gougeMost.amount },
    rounded: rounded.map(({ excused: _, ...r }) => ({ ...r, at: moved(r.at, origin) })),
    // Made when it is asked for: of thousands of contours nobody draws every deviation.
    get profile() {
      return placesOf(profile, origin);
    },
    state,
  };
};

const programReasons = ({ trace, actions, blocks, question }: Evidence): readonly Reason[] => {
  const reasons: Reason[] = [];
  const first = trace.withoutGap[0];
  const action = first === undefined ? undefined : actions[first];
  if (action?.kind === 'move') {
    const setting = action.condition ?? action.register;
    const what =
      setting === undefined ? words.neither : action.condition === undefined ? words.register(setting) : words.condition(setting);
    const known = question.gaps.size === 0 ? words.none : list([...question.gaps.keys()].map((n) => count(n)));
    const text = say(
      'gap-unknown',
    )`In ${{ block: blockName(blocks, action.block) }} the wire cuts with ${{ what }}, for which no spark gap is known (known: ${{ known }}); ${{ moves: count(trace.withoutGap.length) }} such moves.`;
    reasons.push(
      reason(
        find('gap-unknown', text, { remedy: say`Give the gap of every condition or register used in the program.` }),
        blocks,
        action.block,
      ),
    );
  }
  return reasons;
};

/** A program that never cuts its wire does so at every opening; a few places say enough. */
const MOST_WIRE_FAULTS = 20;

const wireReasons = (evidence: Evidence): readonly Reason[] =>
  wireFaultsOf(evidence)
    .slice(0, MOST_WIRE_FAULTS)
    .map(({ kind, block }) => {
      const { blocks } = evidence;
      const name = blockName(blocks, block);
      const place = lineOf(blocks, block);
      if (kind === 'drawn through metal') {
        const text = say(
          'wire-drawn-through-metal',
        )`The rapid move in ${{ block: name }} drags the threaded wire through metal: the wire is not cut, and there is no stop, between this move and the last cut or threading.`;
        return reason(
          find('wire-drawn-through-metal', text, { ...place, remedy: say`Cut the wire, or stop, before the move.` }),
          blocks,
          block,
        );
      }
      if (kind === 'left threaded') {
        const text = say(
          'wire-left-threaded',
        )`Behind the last cut in ${{ block: name }} the program ends with the wire still threaded, although the dialect has a word that cuts it.`;
        return reason(find('wire-left-threaded', text, { ...place, remedy: say`Cut the wire behind the last cut.` }), blocks, block);
      }
      if (kind === 'threaded twice') {
        const text = say(
          'threaded-twice',
        )`${{ block: name }} threads the wire although it is in: it was not cut since it was threaded or cut with.`;
        return reason(
          find('threaded-twice', text, { ...place, remedy: say('threaded-twice.remedy')`Leave the word out, or cut the wire before it.` }),
          blocks,
          block,
        );
      }
      const text = say(
        'cut-without-wire',
      )`The cut in ${{ block: name }} starts without a wire: it was cut or taken out for the rapid before, and not threaded again.`;
      return reason(
        find('cut-without-wire', text, { ...place, remedy: say`Thread the wire, or stop for it, after the rapid.` }),
        blocks,
        block,
      );
    });

const words = phrases('gap-unknown', {
  neither: say`no condition and no register`,
  register: (n: number) => say`register ${{ n: count(n) }}`,
  condition: (n: number) => say`condition ${{ n: count(n) }}`,
  none: say`none`,
});
