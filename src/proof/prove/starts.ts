/** Where the wire is threaded: each such place must be empty, a hole, a kerf, or outside the block. */

import type { Point, Segment } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { mm, placeAsWords, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { blockName } from '../block-name.ts';
import { drawnLine, turnsRound } from '../drawn-line.ts';
import { find } from '../findings.ts';
import type { ProofQuestion, Reason } from '../proof.ts';
import { isWithin } from '../sweep/outline.ts';
import type { Trace, Travel } from '../sweep/wire-doings.ts';
import type { Evidence } from './evidence.ts';
import { reason, spot } from './evidence.ts';

/**
 * Cuts that begin with the wire freshly threaded: the first of all, and each behind a travel or a cut of the wire on which it is threaded again;
 * with the rapids that lead the threaded wire from there to the cut. Where nothing threads it, the fault is that and not the place.
 */
export const startsOf = ({ travels, cuts }: Trace): ReadonlyMap<number, readonly Segment[]> => {
  const starts = new Map<number, readonly Segment[]>();
  if (cuts.length > 0 && travels[0]?.before !== -1) starts.set(0, []);
  for (const t of travels) {
    const way = t.after < cuts.length ? ledWay(t) : undefined;
    if (way !== undefined) starts.set(t.after, way);
  }
  return starts;
};

/** Rapids behind the last threading, or behind the last stop at which it may have been done. */
const ledWay = ({ doings, rapids }: Travel): readonly Segment[] | undefined => {
  const since = doings.slice(doings.lastIndexOf('cut wire') + 1);
  const word = since.lastIndexOf('thread');
  const at = word >= 0 ? word : since.lastIndexOf('thread or not');
  return at < 0 ? undefined : since.slice(at + 1).flatMap((d) => (typeof d === 'number' ? [itemAt(rapids, d).segment] : []));
};

/** A program laid beside its holes is so at every opening; a few places say enough. */
const MOST = 20;

/**
 * Starts in full metal. A group knows neither the block, unless it reaches its edge, nor what fell with a cut of another group: both are told here.
 */
export const startReasons = (evidence: Evidence): readonly Reason[] => {
  const { trace, proven, question } = evidence;
  const block = drawnLine(question.block);
  return proven
    .flatMap(({ group, outcome }) => {
      const inBlock = (c: number): boolean => group.atEdge || turnsRound(block, threadedAt(trace, c)) !== 0;
      return outcome.starts.flatMap((s) => (s.inMetal ? [itemAt(group.cuts, s.cut)] : [])).filter(inBlock);
    })
    .sort((a, b) => a - b)
    .filter((c) => !isFallen(evidence, c))
    .slice(0, MOST)
    .map((c) => startReason(evidence, c));
};

const threadedAt = (trace: Trace, cut: number): Point => {
  const travel = trace.travels.find((t) => t.after === cut);
  const way = travel === undefined ? undefined : ledWay(travel);
  return (way?.[0] ?? itemAt(trace.cuts, cut).segment).from;
};

/** Nothing is left where a slug or scrap was that came loose before. */
const isFallen = ({ loose, trace }: Evidence, cut: number): boolean => {
  const at = threadedAt(trace, cut);
  return loose.some((l) => l.finding.role !== 'part' && l.cut < cut && isWithin(l.outline, at.x - l.origin.x, at.y - l.origin.y));
};

/** The move that brought the wire there is to blame, else the cut itself. */
const startReason = ({ trace, question, blocks }: Evidence, cut: number): Reason => {
  const { block: cutBlock } = itemAt(trace.cuts, cut);
  const travel = trace.travels.find((t) => t.after === cut);
  const led = travel === undefined ? 0 : (ledWay(travel)?.length ?? 0);
  const at = threadedAt(trace, cut);
  const block = travel?.rapids[travel.rapids.length - led - 1]?.block ?? cutBlock;
  const text = say(
    'threaded-in-metal',
  )`The ${{ wire: mm(question.wireDiameter) }} wire that cuts from ${{ block: blockName(blocks, cutBlock) }} on would be threaded in solid metal at ${{ at: placeAsWords(at) }}: ${{ hole: nearestHole(at, question) }}, and there is no kerf yet.`;
  return reason(find('threaded-in-metal', text, { place: spot(at), remedy: remedyFor(question) }), blocks, block, at);
};

const nearestHole = (at: Point, { holes }: ProofQuestion): Text => {
  const [nearest] = holes
    .map((h) => ({ away: Math.hypot(h.at.x - at.x, h.at.y - at.y), diameter: h.diameter }))
    .sort((a, b) => a.away - a.diameter / 2 - (b.away - b.diameter / 2));
  if (nearest === undefined) return words.noHole;
  return words.nearest(nearest.diameter, nearest.away);
};

const remedyFor = ({ holes }: ProofQuestion): Text => (holes.length === 0 ? words.nameHoles : words.beginInHole);

const words = phrases('threaded-in-metal', {
  noHole: say`no hole is known in this block`,
  nearest: (across: number, away: number) =>
    say`the centre of the nearest hole (${{ across: mm(across) }} across) is ${{ away: mm(away, upTo(3)) }} away`,
  nameHoles: say`The wire cannot be threaded in solid metal: list the holes in the block, each with position and diameter, or start outside the block edge.`,
  beginInHole: say`Start in a hole, in a kerf cut by then, or outside the block edge; every existing hole must be listed.`,
});
