/** Judges what comes loose: held or not, taken out or not, and whether anything wanted fell with it. */

import { blockName, gram, mm } from '../block-name.ts';
import { find } from '../findings.ts';
import type { Reason } from '../proof.ts';
import type { Loose } from '../sweep/loose.ts';
import { isWithin } from '../sweep/outline.ts';
import type { Evidence } from './evidence.ts';
import { reason, spot } from './evidence.ts';

/** A piece up to this mass, kg, is flushed away before it can do harm. Common practice, no source. */
const CRUMB_MASS = 5e-5;

export const looseReasons = (evidence: Evidence): readonly Reason[] => {
  const stopsAfter = new Set(evidence.trace.stops.filter((s) => s.purpose === 'anything').map((s) => s.before));
  return evidence.loose.flatMap((l) => [...unheld(evidence, l), ...leftIn(evidence, l, stopsAfter), ...wantedWithin(evidence, l)]);
};

const unheld = (evidence: Evidence, { finding: piece }: Loose): readonly Reason[] => {
  if (piece.held) return [];
  const { at, block, area, mass, loop, role } = piece;
  const whose = loop === undefined ? '' : ` of the contour ${loop}`;
  const what = `The ${role === 'scrap' ? 'scrap piece' : role}${whose} (${mm(Math.sqrt(area))} across in the mean, ${gram(mass)})`;
  const crumb = mass <= CRUMB_MASS;
  const sentence = crumb
    ? `${what} comes loose in ${blockName(evidence.blocks, block)}; it is light enough to be flushed away.`
    : `${what} comes loose in ${blockName(evidence.blocks, block)}, and no stop stands before that cut to secure it.`;
  const more = {
    place: spot(at, loop),
    remedy: crumb ? 'Look that it does not short the wire.' : 'Leave a tab, stop and secure the piece, then cut the tab.',
  };
  return [reason(find(crumb ? 'crumb-falls' : 'piece-falls-unheld', sentence, more), evidence.blocks, block, at)];
};

/** A slug that fell must come out before the wire goes on; a wanted part may be finished while it is held. */
const leftIn = (evidence: Evidence, { finding: piece, cut }: Loose, stopsAfter: ReadonlySet<number>): readonly Reason[] => {
  const { trace, blocks } = evidence;
  if (piece.role === 'part' || piece.mass <= CRUMB_MASS) return [];
  const freed = trace.cuts[cut]!;
  let next = cut + 1;
  while (next < trace.cuts.length && trace.cuts[next]!.run === freed.run) next += 1;
  if (stopsAfter.has(next - 1)) return [];
  const later = trace.cuts[next];
  if (later === undefined) return [];
  const sentence = `The ${piece.role} of ${gram(piece.mass)} that comes loose in ${blockName(blocks, piece.block)} is not taken out before cutting goes on in ${blockName(blocks, later.block)}: no stop stands between.`;
  return [
    reason(
      find('slug-not-taken-out', sentence, { place: spot(piece.at, piece.loop), remedy: 'Stop after the tab and take the piece out.' }),
      blocks,
      later.block,
      piece.at,
    ),
  ];
};

/** Cuts in a piece that is already loose, and contours whose metal fell with a piece that nobody wants. */
const wantedWithin = (evidence: Evidence, { finding: piece, cut, within }: Loose): readonly Reason[] => {
  const { proven, trace, question, blocks } = evidence;
  const reasons: Reason[] = [];
  for (const g of within) {
    const group = proven[g]!.group;
    const late = group.cuts.find((c) => c > cut);
    if (late !== undefined) {
      const name = group.wanted[0] === undefined ? 'a cut' : `the contour ${question.wanted[group.wanted[0]]!.loop}`;
      const sentence = `In ${blockName(blocks, trace.cuts[late]!.block)} ${name} is cut in the ${piece.role} that has come loose in ${blockName(blocks, piece.block)}.`;
      reasons.push(
        reason(
          find('cut-in-fallen-piece', sentence, { place: spot(piece.at, piece.loop), remedy: 'Cut the inner contours first.' }),
          blocks,
          trace.cuts[late]!.block,
          piece.at,
        ),
      );
    }
  }
  if (piece.role === 'part') return reasons;
  const lost = within.flatMap((g) => proven[g]!.group.wanted).filter((w) => !fellBefore(evidence, w, cut));
  const first = lost[0];
  if (first === undefined) return reasons;
  const sentence = `The ${piece.role} that comes loose in ${blockName(blocks, piece.block)} takes metal of the contour ${question.wanted[first]!.loop} with it that must stay.`;
  reasons.push(
    reason(
      find('kept-metal-falls', sentence, { place: spot(piece.at, piece.loop), remedy: 'Look for the cut that parts it from the block.' }),
      blocks,
      piece.block,
      piece.at,
    ),
  );
  return reasons;
};

/** A wanted part that had come out before is not lost with the metal round it, nor are openings in that part. */
const fellBefore = (evidence: Evidence, wanted: number, cut: number): boolean => {
  const at = evidence.question.wanted[wanted]!.contour.segments[0]!.from;
  return evidence.loose.some(
    ({ finding, cut: then, group, outline, origin }) =>
      finding.role === 'part' &&
      then < cut &&
      (evidence.proven[group]!.group.wanted.includes(wanted) || isWithin(outline, at.x - origin.x, at.y - origin.y)),
  );
};
