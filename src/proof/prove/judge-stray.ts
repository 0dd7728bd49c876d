/** Judges cuts that come near no wanted contour: harmless in what is waste anyway, a fault in metal that must stay. */

import { boundsOfChain } from '../../geometry/area.ts';
import { lengthOf } from '../../geometry/measure.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { mm } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { blockName } from '../block-name.ts';
import { find } from '../findings.ts';
import type { Reason } from '../proof.ts';
import { innermostOf } from '../sweep/release.ts';
import type { Evidence } from './evidence.ts';
import { reason, spot } from './evidence.ts';

export const strayReasons = (evidence: Evidence): readonly Reason[] => {
  const { proven, trace, question, blocks } = evidence;
  const block = boundsOfChain(question.block);
  return proven.flatMap((p): Reason[] => {
    if (p.group.wanted.length + p.group.open.length > 0 || p.group.cuts.length === 0) return [];
    const cuts = p.group.cuts.map((c) => itemAt(trace.cuts, c));
    const meets = cuts.filter(
      ({ segment: { to }, radius: r }) => to.x > block.minX - r && to.x < block.maxX + r && to.y > block.minY - r && to.y < block.maxY + r,
    );
    const first = meets[0];
    if (first === undefined) return [];
    const at = first.segment.to;
    const length = mm(cuts.reduce((sum, c) => sum + lengthOf(c.segment), 0));
    const through = meets.find(({ segment }) => mustStay(evidence, segment.to) || mustStay(evidence, segment.from));
    if (through === undefined) {
      const text = say(
        'stray-cut',
      )`A cut of ${{ length }} starting in ${{ block: blockName(blocks, first.block) }} belongs to no wanted contour; it lies in waste.`;
      return [reason(find('stray-cut', text, { place: spot(at) }), blocks, first.block, at)];
    }
    const text = say(
      'kept-metal-cut/stray',
    )`A cut of ${{ length }} starting in ${{ block: blockName(blocks, first.block) }} goes through metal that must stay, and belongs to no wanted contour.`;
    const more = { place: spot(through.segment.to), remedy: say('kept-metal-cut/stray.remedy')`Check its coordinates.` };
    return [reason(find('kept-metal-cut/stray', text, more), blocks, through.block, through.segment.to)];
  });
};

/** Inside a part, or outside everything on a block that is kept for its openings. */
const mustStay = ({ question }: Evidence, at: { readonly x: number; readonly y: number }): boolean => {
  const around = innermostOf(question.wanted, at);
  if (around !== undefined) return itemAt(question.wanted, around).kept === 'punch';
  return question.wanted.some((w) => w.kept === 'die') && !question.wanted.some((w) => w.kept === 'punch');
};
