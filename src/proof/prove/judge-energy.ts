/** Judges with what energy is cut: full metal and tabs with that of the rough cut, faces last with that of the last pass. */
import { perimeterOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { distanceToSegment, lengthOf, pointAt } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { contour, count, mm } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { blockName } from '../block-name.ts';
import { find } from '../findings.ts';
import type { Reason } from '../proof.ts';
import { type Energies, halfKerf, SAME_ENERGY } from '../sweep/energies.ts';
import { moved } from '../sweep/loose.ts';
import { CRUMB_MASS } from '../sweep/release.ts';
import { type Evidence, lineOf, nearestBlock, reason, spot } from './evidence.ts';

/** Shorter stretches, mm, are where passes overlap or the wire comes in. */
const STRETCH = 0.75;

/** A program with the wrong condition has it at every opening; a few places say enough. */
const MOST = 20;

/** Nothing can be told where all gaps are one, nor where a cut has none that is known, which is said already. */
export const energyReasons = (evidence: Evidence): readonly Reason[] => {
  const { energies } = evidence.trace;
  if (energies.rough - energies.last <= SAME_ENERGY || evidence.trace.withoutGap.length > 0) return missing(evidence);
  return [...missing(evidence), ...roughs(evidence, energies), ...tabs(evidence, energies), ...faces(evidence), ...leftOut(evidence)];
};

/** A pass leaves no more stock, mm, than this for the next: a cut that runs further from the face is none of its passes. */
const STOCK = 0.3;

/** Places on a contour, as far apart as each other, that are asked which passes came by. At a quarter of them a needle may keep the wire off. */
const PLACES = 12;

/** A pass in between that never ran: the last one alone reaches every size, but not with the stock that was left for two. */
const leftOut = (evidence: Evidence): readonly Reason[] => {
  const { proven, question, trace, blocks } = evidence;
  return proven
    .flatMap((p) => {
      const cuts = p.group.cuts.map((c) => itemAt(trace.cuts, c));
      return p.group.wanted.flatMap((n) => {
        const { loop, contour: drawn } = itemAt(question.wanted, n);
        const places = placesOn(drawn);
        return (question.passes ?? []).flatMap((setting, turn) => {
          const radius = halfKerf(question, setting);
          if (radius === undefined) return [];
          const own = cuts.filter((c) => Math.abs(c.radius - radius) <= SAME_ENERGY);
          const without = places.filter((at) => own.every(({ segment }) => distanceToSegment(segment, at) > radius + STOCK));
          return without.length <= PLACES / 4 ? [] : [{ p, loop, turn, setting, at: itemAt(without, 0) }];
        });
      });
    })
    .slice(0, MOST)
    .map(({ p, loop, turn, setting, at }) => {
      const block = nearestBlock(evidence, p, at);
      const text = say(
        'pass-left-out',
      )`Pass ${{ turn: count(turn + 1) }} of the contour ${{ loop: contour(loop) }}, with condition ${{ setting: count(setting) }}, is missing over more than a quarter of the way round.`;
      const more = {
        place: spot(at, loop),
        remedy: say('pass-left-out.remedy')`Run every pass that the set-up file names, each with its own condition, or name fewer there.`,
      };
      return reason(find('pass-left-out', text, more), blocks, block, at);
    });
};

/** Evenly along its length: many short segments in one corner count for no more than they are long. */
const placesOn = (drawn: Contour): readonly Point[] => {
  const step = perimeterOf(drawn) / PLACES;
  let way = 0;
  return drawn.segments.flatMap((s) => {
    const [start, length] = [way, lengthOf(s)];
    way += length;
    const first = Math.ceil(start / step - 0.5);
    const count = Math.ceil(way / step - 0.5) - first;
    return Array.from({ length: count }, (_, n) => pointAt(s, ((first + n + 0.5) * step - start) / length));
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

const roughs = ({ proven, trace, blocks }: Evidence, { rough }: Energies): readonly Reason[] =>
  proven
    .flatMap(({ group, outcome }) => outcome.inFull.map((c) => itemAt(trace.cuts, itemAt(group.cuts, c))))
    .filter((cut) => cut.radius < rough - SAME_ENERGY)
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

const tabs = ({ loose, trace, blocks }: Evidence, { rough }: Energies): readonly Reason[] =>
  loose
    .filter(({ finding, cut }) => finding.mass > CRUMB_MASS && itemAt(trace.cuts, cut).radius < rough - SAME_ENERGY)
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
  proven.flatMap(({ group, origin, outcome }) =>
    outcome.unfinished.flatMap((u, n) => {
      if (u === undefined || u.length < STRETCH) return [];
      const { loop } = itemAt(question.wanted, itemAt(group.wanted, n));
      const { block } = itemAt(trace.cuts, itemAt(group.cuts, u.cut));
      const at = moved(u.at, origin);
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
