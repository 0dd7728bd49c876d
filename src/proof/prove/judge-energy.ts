/** Judges with what energy is cut: full metal and tabs with that of the rough cut, faces last with that of the last pass. */
import { itemAt, sideBySide } from '../../sequence/sequence.ts';
import { contour, count, mm } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { blockName } from '../block-name.ts';
import { find } from '../findings.ts';
import type { ProofQuestion, Reason } from '../proof.ts';
import { energyOf } from '../sweep/energies.ts';
import { moved } from '../sweep/loose.ts';
import type { Proven } from '../sweep/proven-group.ts';
import { CRUMB_MASS } from '../sweep/release.ts';
import type { Coverage } from '../sweep/unfinished.ts';
import { type Evidence, lineOf, nearestBlock, reason, spot } from './evidence.ts';

/** Less of a face, mm, lies where passes overlap or the wire comes in. */
const OVERLAP = 0.2;

/** Beside a corner, sharp to the wire, a pass that leaves stock turns earlier than the last one, mm. */
const CORNER = 0.5;

/** A program with the wrong condition has it at every opening; a few places say enough. */
const MOST = 20;

/** Nothing can be told where there is one pass, nor where a cut has no gap that is known, which is said already. */
export const energyReasons = (evidence: Evidence): readonly Reason[] => {
  if (evidence.trace.passes.length < 2 || evidence.trace.withoutGap.length > 0) return missing(evidence);
  return [...missing(evidence), ...roughs(evidence), ...tabs(evidence), ...faces(evidence), ...leftOut(evidence), ...idle(evidence)];
};

/** What is to be finished: contours and open lines, by name, with what is known of their passes. */
const facesOf = (
  { group, outcome: { covered } }: Proven,
  { wanted, wantedOpen = [] }: ProofQuestion,
): readonly (readonly [string, Coverage])[] => [
  ...sideBySide(group.wanted, covered.wanted).map(([n, c]) => [itemAt(wanted, n).loop, c] as const),
  ...sideBySide(group.open, covered.open).map(([n, c]) => [itemAt(wantedOpen, n).chain, c] as const),
];

const isUnfinished = ({ unfinished }: Coverage): boolean => unfinished !== undefined && unfinished.length >= OVERLAP;

/** A pass in between that never ran: the last one alone reaches every size, but not with the stock that was left for two. */
const leftOut = (evidence: Evidence): readonly Reason[] => {
  const { proven, question, trace, blocks } = evidence;
  const isLast = (pass: number): boolean => energyOf(itemAt(trace.passes, pass), trace.passes).isLast;
  return proven
    .flatMap((p) =>
      facesOf(p, question).flatMap(([loop, coverage]) =>
        coverage.leftOut
          // A face that is not finished is told as that.
          .filter(({ length, pass }) => length > CORNER && !(isLast(pass) && isUnfinished(coverage)))
          .map((stretch) => ({ p, loop, stretch })),
      ),
    )
    .slice(0, MOST)
    .map(({ p, loop, stretch: { pass, length, at: local } }) => {
      const at = moved(local, p.origin);
      const block = nearestBlock(evidence, p, at);
      const { setting, family } = itemAt(trace.passes, pass);
      const turn = trace.passes.slice(0, pass + 1).filter((p) => p.family === family).length;
      const text = say(
        'pass-left-out',
      )`Pass ${{ turn: count(turn) }} of the contour ${{ loop: contour(loop) }}, with condition ${{ setting: count(setting) }}, is missing over ${{ length: mm(length) }} of the way round.`;
      const more = {
        place: spot(at, loop),
        remedy: say('pass-left-out.remedy')`Run every pass that the set-up file names, each with its own condition, or name fewer there.`,
      };
      return reason(find('pass-left-out', text, more), blocks, block, at);
    });
};

/** One that did not come by is told as that. */
const idleOf = ({ idle: found, leftOut: missing }: Coverage): Coverage['idle'] =>
  found.filter(({ pass, length }) => length > CORNER && !missing.some((m) => m.pass === pass && m.length > CORNER));

/** A pass behind one that was nearer already: registers changed round, say. The size may be right, by another pass than the one that was meant. */
const idle = (evidence: Evidence): readonly Reason[] => {
  const { proven, question, trace, blocks } = evidence;
  return proven
    .flatMap((p) => facesOf(p, question).flatMap(([loop, coverage]) => idleOf(coverage).map((stretch) => ({ p, loop, stretch }))))
    .slice(0, MOST)
    .map(({ p, loop, stretch: { pass, length, at: local } }) => {
      const at = moved(local, p.origin);
      const { setting } = itemAt(trace.passes, pass);
      const own = p.group.cuts.filter((c) => itemAt(trace.cuts, c).energy.pass === pass);
      const block = nearestBlock(evidence, { ...p, group: { ...p.group, cuts: own } }, at);
      const text = say(
        'pass-left-out/idle',
      )`Pass ${{ turn: count(pass + 1) }} of the contour ${{ loop: contour(loop) }}, with condition ${{ setting: count(setting) }}, takes nothing over ${{ length: mm(length) }} of the way round: an earlier pass was nearer. Its cut is that of ${{ block: blockName(blocks, block) }}.`;
      const more = { place: spot(at, loop), remedy: say('pass-left-out/idle.remedy')`Check the registers of both passes.` };
      return reason(find('pass-left-out/idle', text, more), blocks, block, at);
    });
};

/** Where a register alone gave the gap although conditions are chosen by word, or elsewhere in the program. */
const missing = ({ actions, question, blocks }: Evidence): readonly Reason[] => {
  const cuts = actions.flatMap((a) => (a.kind === 'move' && !a.rapid ? [a] : []));
  const chosen = cuts.some((a) => a.condition !== undefined);
  const first = cuts.find((a) => a.condition === undefined);
  if (first === undefined || (!chosen && question.dialect.words.condition === undefined)) return [];
  const text = say('condition-missing')`In ${{ block: blockName(blocks, first.block) }} the wire cuts, and no condition is chosen before.`;
  const remedy = say('condition-missing.remedy')`Choose the condition before the first cut.`;
  return [reason(find('condition-missing', text, { ...lineOf(blocks, first.block), remedy }), blocks, first.block)];
};

const roughs = ({ proven, trace, blocks }: Evidence): readonly Reason[] =>
  proven
    .flatMap(({ group, outcome }) => outcome.inFull.map((c) => itemAt(trace.cuts, itemAt(group.cuts, c))))
    .filter((cut) => !cut.energy.isRough)
    .slice(0, MOST)
    .map(({ block, setting, segment }) => {
      const text = say(
        'rough-on-skim-energy',
      )`From ${{ block: blockName(blocks, block) }} on the wire cuts in full metal with the energy of a skim (${{ setting: count(setting) }}).`;
      const more = {
        place: spot(segment.from),
        remedy: say('rough-on-skim-energy.remedy')`Choose the condition of the rough cut before this block.`,
      };
      return reason(find('rough-on-skim-energy', text, more), blocks, block, segment.from);
    });

const tabs = ({ loose, trace, blocks }: Evidence): readonly Reason[] =>
  loose
    .filter(({ finding, cut }) => finding.mass > CRUMB_MASS && !itemAt(trace.cuts, cut).energy.isRough)
    .slice(0, MOST)
    .map(({ finding: { block, at, loop } }) => {
      const text = say('tab-on-skim-energy')`In ${{ block: blockName(blocks, block) }} a piece is cut free with the energy of a skim.`;
      const more = {
        place: spot(at, loop),
        remedy: say('tab-on-skim-energy.remedy')`Cut the tab with the condition of the rough cut, then skim over it.`,
      };
      return reason(find('tab-on-skim-energy', text, more), blocks, block, at);
    });

const faces = ({ proven, question, trace, blocks }: Evidence): readonly Reason[] =>
  proven.flatMap((p) =>
    facesOf(p, question).flatMap(([loop, coverage]) => {
      const u = isUnfinished(coverage) ? coverage.unfinished : undefined;
      if (u === undefined) return [];
      const { block } = itemAt(trace.cuts, itemAt(p.group.cuts, u.cut));
      const at = moved(u.at, p.origin);
      const text = say(
        'finish-on-rough-energy',
      )`On the contour ${{ loop: contour(loop) }} the last pass does not reach ${{ length: mm(u.length) }} of the face: the last cut there is that of ${{ block: blockName(blocks, block) }}.`;
      const more = {
        place: spot(at, loop),
        remedy: say('finish-on-rough-energy.remedy')`Let the last pass run over the whole contour, with its own condition.`,
      };
      return [reason(find('finish-on-rough-energy', text, more), blocks, block, at)];
    }),
  );
