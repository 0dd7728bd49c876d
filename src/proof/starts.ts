/** Where the wire is threaded: each such place must be empty, a hole, a kerf, or outside the block. */
import { contains } from '../geometry/contain.ts';
import type { Point } from '../geometry/segment.ts';
import type { Evidence } from './evidence.ts';
import { reason, spot } from './evidence.ts';
import { find } from './findings.ts';
import { isWithin } from './outline.ts';
import type { ProofQuestion, Reason } from './proof.ts';
import { blockName, mm } from './say.ts';
import type { Trace } from './trace.ts';

/**
 * Cuts that begin with the wire freshly threaded: the first of all, and each behind a travel or a cut of the wire on which it is threaded again.
 * Where nothing threads it, the fault is that and not the place.
 */
export const startsOf = ({ travels, cuts }: Trace): ReadonlySet<number> => {
  const starts = new Set(travels.filter((t) => t.threaded && t.after < cuts.length).map((t) => t.after));
  if (cuts.length > 0 && travels[0]?.before !== -1) starts.add(0);
  return starts;
};

/** A program laid beside its holes is so at every opening; a few places say enough. */
const MOST = 20;

/**
 * Starts in full metal. A group knows neither the block, unless it reaches its edge, nor what fell with a cut of another group: both are told here.
 */
export const startReasons = (evidence: Evidence): readonly Reason[] => {
  const { trace, proven, question } = evidence;
  return proven
    .flatMap(({ group, outcome }) => {
      const inBlock = (c: number): boolean => group.atEdge || contains(question.block, trace.cuts[c]!.segment.from, 0) === 'inside';
      return outcome.startsInMetal.map((c) => group.cuts[c]!).filter(inBlock);
    })
    .sort((a, b) => a - b)
    .filter((c) => !isFallen(evidence, c))
    .slice(0, MOST)
    .map((c) => startReason(evidence, c));
};

/** Nothing is left where a slug or scrap was that came loose before. */
const isFallen = ({ loose, trace }: Evidence, cut: number): boolean => {
  const at = trace.cuts[cut]!.segment.from;
  return loose.some((l) => l.finding.role !== 'part' && l.cut < cut && isWithin(l.outline, at.x - l.origin.x, at.y - l.origin.y));
};

/** The move that brought the wire there is to blame, else the cut itself. */
const startReason = ({ trace, question, blocks }: Evidence, cut: number): Reason => {
  const { segment, block: cutBlock } = trace.cuts[cut]!;
  const at = segment.from;
  const block = trace.travels.find((t) => t.after === cut)?.rapids.at(-1)?.block ?? cutBlock;
  const sentence = `The wire of ${mm(question.wireDiameter)} that cuts from ${blockName(blocks, cutBlock)} on would be threaded in full metal at X${at.x.toFixed(3)} Y${at.y.toFixed(3)}: ${nearestHole(at, question)}, and no kerf is there yet.`;
  return reason(find('threaded-in-metal', sentence, { place: spot(at), remedy: remedyFor(question) }), blocks, block, at);
};

const nearestHole = (at: Point, { holes }: ProofQuestion): string => {
  const [nearest] = holes
    .map((h) => ({ away: Math.hypot(h.at.x - at.x, h.at.y - at.y), diameter: h.diameter }))
    .sort((a, b) => a.away - a.diameter / 2 - (b.away - b.diameter / 2));
  if (nearest === undefined) return 'no hole is known in this block';
  return `the middle of the nearest hole (${mm(nearest.diameter)} across) is ${mm(Number(nearest.away.toFixed(3)))} away`;
};

const remedyFor = ({ holes }: ProofQuestion): string =>
  holes.length === 0
    ? 'Nobody can thread in full metal: name the holes that are in the block, each with its place and diameter, or begin outside the edge of the block.'
    : 'Begin in a hole, in a kerf that is cut by then, or outside the edge of the block; a hole that is there and not named must be named.';
