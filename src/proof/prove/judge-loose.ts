/** Judges what comes loose: held or not, taken out or not, and whether anything wanted fell with it. */

import { lengthOf } from '../../geometry/measure.ts';
import { firstItem, itemAt, roundPairs } from '../../sequence/sequence.ts';
import { contour, mm, placeAsWords, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { blockName, gram } from '../block-name.ts';
import { find } from '../findings.ts';
import type { LooseFinding, Reason } from '../proof.ts';
import type { Loose } from '../sweep/loose.ts';
import { isWithin } from '../sweep/outline.ts';
import { CRUMB_MASS } from '../sweep/release.ts';
import type { WeakTab } from '../sweep/tab.ts';
import { tendsToWork } from '../sweep/wire-doings.ts';
import type { Evidence } from './evidence.ts';
import { reason, spot } from './evidence.ts';

export const looseReasons = (evidence: Evidence): readonly Reason[] => {
  const stopsAfter = new Set(evidence.trace.stops.filter(tendsToWork).map((s) => s.before));
  return evidence.loose.flatMap((l) => [
    ...unheld(evidence, l),
    ...weakly(evidence, l),
    ...leftIn(evidence, l, stopsAfter),
    ...wantedWithin(evidence, l),
  ]);
};

const unheld = (evidence: Evidence, { finding: piece }: Loose): readonly Reason[] => {
  if (piece.held) return [];
  const { at, block, area, mass, loop, role } = piece;
  const whose =
    loop === undefined
      ? words.piece(role === 'scrap' ? words.scrapPiece : roles[role])
      : words.pieceOf(role === 'scrap' ? words.scrapPiece : roles[role], loop);
  const crumb = mass <= CRUMB_MASS;
  const what = words.what(whose, Math.sqrt(area), mass);
  const where = blockName(evidence.blocks, block);
  const text = crumb ? words.crumb(what, where) : words.unheld(what, where);
  const more = {
    place: spot(at, loop),
    remedy: crumb ? words.noShort : words.leaveTab,
  };
  return [reason(find(crumb ? 'crumb-falls' : 'piece-falls-unheld', text, more), evidence.blocks, block, at)];
};

/** One that nobody holds falls anyway. */
const weakly = ({ blocks }: Evidence, { finding: { held, loop, role, mass, block }, weak }: Loose): readonly Reason[] => {
  if (weak === undefined || !held) return [];
  const whose = loop === undefined ? words.piece(roles[role]) : words.pieceOf(roles[role], loop);
  const text = words.hangs(whose, mass, weak, blockName(blocks, block));
  const place = spot(weak.at, loop, weak.needed);
  return [reason(find('tab-too-weak', text, { place, remedy: words.strongerTab }), blocks, block, weak.at)];
};

/**
 * How far the wire may go on, mm, while a slug that was held still lies there: the rest of the tab and the way out. A finishing pass is
 * further. Common practice, no source.
 */
const wayOut = ({ outline }: LooseFinding): number => 3 + perimeterOf(outline) / 4;

const perimeterOf = ({ points }: LooseFinding['outline']): number =>
  roundPairs(points).reduce((sum, [p, q]) => sum + Math.hypot(q.x - p.x, q.y - p.y), 0);

/** A slug that fell must come out before the wire goes on, or before the program ends; a wanted part may be finished while it is held. */
const leftIn = (evidence: Evidence, { finding: piece, cut }: Loose, stopsAfter: ReadonlySet<number>): readonly Reason[] => {
  const { trace, blocks } = evidence;
  // One that nobody held has fallen, which is said already.
  if (piece.role === 'part' || piece.mass <= CRUMB_MASS || !piece.held) return [];
  const freed = itemAt(trace.cuts, cut);
  const most = wayOut(piece);
  let [next, way] = [cut + 1, 0];
  for (; trace.cuts[next]?.run === freed.run; next += 1) {
    way += lengthOf(itemAt(trace.cuts, next).segment);
    if (way > most) break;
  }
  if (way <= most && stopsAfter.has(next - 1)) return [];
  const later = trace.cuts[next];
  if (later === undefined) return [leftAtEnd(evidence, piece)];
  const text = say(
    'slug-not-taken-out',
  )`The ${{ piece: roles[piece.role] }} of ${{ mass: gram(piece.mass) }} cut free in ${{ freed: blockName(blocks, piece.block) }} is not taken out before cutting goes on in ${{ later: blockName(blocks, later.block) }}: there is no stop between.`;
  return [
    reason(
      find('slug-not-taken-out', text, {
        place: spot(piece.at, piece.loop),
        remedy: say('slug-not-taken-out.remedy')`Stop after the tab and take the piece out.`,
      }),
      blocks,
      later.block,
      piece.at,
    ),
  ];
};

const leftAtEnd = ({ blocks }: Evidence, piece: LooseFinding): Reason => {
  const text = say(
    'slug-not-taken-out/end',
  )`The ${{ piece: roles[piece.role] }} of ${{ mass: gram(piece.mass) }} that comes loose in ${{ freed: blockName(blocks, piece.block) }} is not taken out before the program ends: no stop stands between.`;
  return reason(
    find('slug-not-taken-out/end', text, {
      place: spot(piece.at, piece.loop),
      remedy: say('slug-not-taken-out.remedy')`Stop after the tab and take the piece out.`,
    }),
    blocks,
    piece.block,
    piece.at,
  );
};

/** Cuts in a piece that is already loose, and contours whose metal fell with a piece that nobody wants. */
const wantedWithin = (evidence: Evidence, { finding: piece, cut, within }: Loose): readonly Reason[] => {
  const { proven, trace, question, blocks } = evidence;
  const reasons: Reason[] = [];
  for (const g of within) {
    const group = itemAt(proven, g).group;
    const late = group.cuts.find((c) => c > cut);
    if (late !== undefined) {
      const what = group.wanted[0] === undefined ? words.aCut : words.theContour(itemAt(question.wanted, group.wanted[0]).loop);
      const text = say(
        'cut-in-fallen-piece',
      )`In ${{ block: blockName(blocks, itemAt(trace.cuts, late).block) }} ${{ what }} is cut in the ${{ piece: roles[piece.role] }} that was cut free in ${{ freed: blockName(blocks, piece.block) }}.`;
      reasons.push(
        reason(
          find('cut-in-fallen-piece', text, { place: spot(piece.at, piece.loop), remedy: say`Cut the inner contours first.` }),
          blocks,
          itemAt(trace.cuts, late).block,
          piece.at,
        ),
      );
    }
  }
  if (piece.role === 'part') return reasons;
  const lost = within.flatMap((g) => itemAt(proven, g).group.wanted).filter((w) => !fellBefore(evidence, w, cut));
  const first = lost[0];
  if (first === undefined) return reasons;
  const text = say(
    'kept-metal-falls',
  )`The ${{ piece: roles[piece.role] }} cut free in ${{ freed: blockName(blocks, piece.block) }} takes metal of contour ${{ loop: contour(itemAt(question.wanted, first).loop) }} with it that must stay.`;
  reasons.push(
    reason(
      find('kept-metal-falls', text, {
        place: spot(piece.at, piece.loop),
        remedy: say`Look for the cut that separates it from the block.`,
      }),
      blocks,
      piece.block,
      piece.at,
    ),
  );
  return reasons;
};

/** A wanted part that had come out before is not lost with the metal round it, nor are openings in that part. */
const fellBefore = (evidence: Evidence, wanted: number, cut: number): boolean => {
  const at = firstItem(itemAt(evidence.question.wanted, wanted).contour.segments).from;
  return evidence.loose.some(
    ({ finding, cut: then, group, outline, origin }) =>
      finding.role === 'part' &&
      then < cut &&
      (itemAt(evidence.proven, group).group.wanted.includes(wanted) || isWithin(outline, at.x - origin.x, at.y - origin.y)),
  );
};

const roles = phrases('role-of-piece', { slug: say`slug`, part: say`part`, scrap: say`scrap` });

const words = phrases('loose-piece', {
  scrapPiece: say`scrap piece`,
  piece: (role: Text) => say`The ${{ role }}`,
  pieceOf: (role: Text, loop: string) => say`The ${{ role }} of contour ${{ loop: contour(loop) }}`,
  what: (piece: Text, across: number, mass: number) => say`${{ piece }} (mean ${{ across: mm(across) }} across, ${{ mass: gram(mass) }})`,
  crumb: (what: Text, block: Text) => say`${{ what }} comes loose in ${{ block }}; it is light enough to be flushed away.`,
  unheld: (what: Text, block: Text) => say`${{ what }} is cut free in ${{ block }}, with no stop before that cut to secure it.`,
  hangs: (piece: Text, mass: number, { width, needed, at }: WeakTab, block: Text) =>
    say`${{ piece }} (${{ mass: gram(mass) }}) hangs by ${{ width: mm(width, upTo(3)) }} of metal at ${{ at: placeAsWords(at) }} before it is cut free in ${{ block }}; its weight and the flushing need ${{ needed: mm(needed, upTo(2)) }}.`,
  strongerTab: say`Leave a longer tab, or move it to where more metal stands behind it.`,
  noShort: say`Check that it does not short the wire.`,
  leaveTab: say`Leave a tab, stop and secure the piece, then cut the tab.`,
  aCut: say`a cut`,
  theContour: (loop: string) => say`contour ${{ loop: contour(loop) }}`,
});
