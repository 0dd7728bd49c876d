/** Places where little metal is left: thin walls and fins, webs between cuts, and frames of the block that are weak or broken. */

import { boundsOfChain } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { closestBetweenChains } from '../../geometry/near/closest.ts';
import { windingIn } from '../../geometry/near/inside.ts';
import { type Lookup, lookupOf, segmentsNear } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import { judgeWall, thinBelow } from '../../physics/cut/thin-wall.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, count, fixed, mm } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { metalStaysBetween, nearestPlace, pairsNear } from '../near-pairs.ts';
import { spot, thousandths } from '../said.ts';
import type { LikeLoops } from '../same-shape.ts';
import { type ThinWall, wallsBetween, wallsWithin } from './thin-walls.ts';
import { areAlike, isThinWeb, type NearPair, WEB } from './thin-webs.ts';
import { betweenLoops, type Pair, type WebLimits, within } from './webs.ts';

export interface ThinAsked {
  readonly cut: readonly KeptLoop[];
  readonly shapes: readonly LikeLoops[];
  readonly block: Contour;
  readonly limits: WebLimits;
  /** Openings that are roughed before they are finished. */
  readonly roughed: ReadonlySet<string>;
}

/** A ring of block round a cut is at least this thick, mm, and this share of the cut's longer side: common practice, no source. */
const FRAME = 3;
const FRAME_SHARE = 0.05;

export const thinFindings = (asked: ThinAsked): readonly Finding[] => [
  ...asked.shapes.flatMap(fins),
  ...betweenCuts(asked),
  ...frames(asked),
];

/** The worst fin of a shape that is too thin, and the worst that is too long. */
const fins = (shape: LikeLoops): Finding[] => {
  const { loop, kept } = shape.first.loop;
  return wallFindings(wallsWithin(loop.contour, kept, thinBelow).map((wall) => ({ wall, where: within(shape), loop: loop.id })));
};

interface PlacedWall {
  readonly wall: ThinWall;
  readonly where: Text;
  readonly loop: string;
}

/** A wall much shorter than it is thick is only the mouth of something. */
const isWall = ({ wall }: PlacedWall): boolean => wall.length >= wall.thickness / 2;

const wallFindings = (walls: readonly PlacedWall[]): Finding[] => {
  const judged = walls.filter(isWall).map((p) => ({ ...p, verdict: judgeWall(p.wall.thickness, p.wall.length) }));
  const thin = judged.filter((j) => j.verdict.kind === 'too thin');
  const long = judged.filter((j) => j.verdict.kind === 'too long');
  return [
    ...worst(thin, (j) => -j.wall.thickness).map((j) =>
      find('wall-too-thin', sentences([words.thin(j), others(thin.length)]), {
        place: alongWall(j.wall, j.loop),
        remedy: say`Make it at least ${{ least: mm(0.12) }} thick, or cut there at low energy only and expect to lose it.`,
      }),
    ),
    ...worst(long, (j) => j.wall.length / j.wall.thickness).map((j) =>
      find('wall-too-long', sentences([words.long(j), others(long.length)]), {
        place: alongWall(j.wall, j.loop),
        remedy: say`Ask whether it may be thicker or shorter; otherwise rough it at low energy, skim both faces alike and measure it.`,
      }),
    ),
  ];
};

const worst = <T>(things: readonly T[], badness: (thing: T) => number): readonly T[] =>
  things.length === 0 ? [] : [things.reduce((a, b) => (badness(b) > badness(a) ? b : a))];

/** Each wall is seen from both of its faces: what is counted here are faces, so it is only said that there are more. */
const others = (faces: number): Text | undefined => (faces > 2 ? words.others : undefined);

const alongWall = ({ at, thickness, length }: ThinWall, loop: string): Finding['place'] & { kind: 'spot' } => ({
  kind: 'spot',
  x: at.x,
  y: at.y,
  reach: Math.max(1, thickness, length / 2),
  loop,
});

/** Walls and webs between two openings, and waste between two parts. Pairs nearer than a kerf are told by `webs.ts`. */
const betweenCuts = ({ cut, limits, roughed }: ThinAsked): Finding[] => {
  const most = Math.max(limits.kerf + WEB, 2 * limits.reach + WEB);
  const walls: PlacedWall[] = [];
  const webs: NearPair[] = [];
  const waste: NearPair[] = [];
  for (const [i, j] of pairsNear(cut, most)) {
    const [a, b] = [itemAt(cut, i), itemAt(cut, j)];
    const near = nearestPlace(a.loop.contour, b.loop.contour, most);
    if (near === undefined) continue;
    const loops: Pair = [a.loop.id, b.loop.id];
    const pair = { ...near, loops, alike: areAlike(a, b) };
    if (metalStaysBetween(a, b)) {
      if (near.width < thinBelow)
        walls.push(
          ...wallsBetween(a.loop.contour, b.loop.contour, thinBelow).map((wall) => ({ wall, where: betweenLoops(loops), loop: a.loop.id })),
        );
      if (isThinWeb(near, limits)) webs.push(pair);
    } else if (a.kept === 'punch' && b.kept === 'punch' && a.loop.parent === b.loop.parent && near.width >= limits.reach) waste.push(pair);
  }
  return [...wallFindings(walls), ...(webs.length > 0 ? [webThin(webs, limits, roughed)] : []), ...wasteThin(waste, limits)];
};

const narrowest = (pairs: readonly NearPair[]): NearPair => pairs.reduce((a, b) => (b.width < a.width ? b : a));

/** Of the pairs but the one that is named. */
const morePairs = (pairs: readonly NearPair[]): Text | undefined => {
  if (pairs.length === 1) return undefined;
  return pairs.length === 2 ? words.onePairMore : words.pairsMore(pairs.length - 1);
};

/** An outside waits for the openings in it anyway; of two openings neither is finished before both are roughed. */
const helpFor = ({ loops, alike }: NearPair, roughed: ReadonlySet<string>): Pick<Finding, 'done' | 'remedy'> => {
  if (!alike) return { done: words.insideFirst, remedy: remedy(words.measureWeb) };
  if (loops.every((id) => roughed.has(id))) return { done: words.roughedFirst, remedy: remedy(words.measureWeb) };
  return { remedy: remedy(words.roughFirst, { field: 'run', value: 'unattended first' }) };
};

const webThin = (webs: readonly NearPair[], { kerf }: WebLimits, roughed: ReadonlySet<string>): Finding => {
  const worst = narrowest(webs);
  const { at, width, loops } = worst;
  return find('web-thin', sentences([words.web(worst, kerf), morePairs(webs)]), {
    place: { kind: 'spot', x: at.x, y: at.y, reach: width, loop: loops[0] },
    ...helpFor(worst, roughed),
  });
};

/** Between two parts of one block: below two kerfs the waste falls as a strip of its own. */
const wasteThin = (waste: readonly NearPair[], { reach }: WebLimits): Finding[] => {
  const near = waste.filter((w) => w.width < 2 * reach + WEB);
  if (near.length === 0) return [];
  const worst = narrowest(near);
  const { at, width, loops } = worst;
  const left = width - 2 * reach;
  const apart = Math.ceil((2 * reach + WEB) * 10) / 10;
  return [
    find('parts-too-near', sentences([words.parts(worst, left <= 0 ? words.together : words.strip(left)), morePairs(near)]), {
      place: { kind: 'spot', x: at.x, y: at.y, reach: width, loop: loops[0] },
      remedy: say`Place them at least ${{ apart: mm(apart, fixed(1)) }} apart.`,
    }),
  ];
};

/** Outermost cuts against the edge of the block. */
const frames = ({ cut, block, limits }: ThinAsked): Finding[] => {
  const edge = lookupOf(block);
  const ids = new Set(cut.map((c) => c.loop.id));
  const weak: StandingFrame[] = [];
  const near: StandingFrame[] = [];
  for (const one of cut) {
    if (one.loop.parent !== undefined && ids.has(one.loop.parent)) continue;
    const frame = frameOf(one, block, edge, limits);
    if (frame === undefined) continue;
    if (frame.beyond || frame.standing < limits.kerf) near.push(frame);
    else if (frame.standing < frame.least) weak.push(frame);
  }
  return [...near.map(nearEdge), ...weakFrames(weak)];
};

interface StandingFrame {
  readonly one: KeptLoop;
  readonly at: Point;
  /** mm of block that stays between the kerf and the edge. */
  readonly standing: number;
  readonly least: number;
  /** The contour reaches over the edge. */
  readonly beyond: boolean;
}

const frameOf = (one: KeptLoop, block: Contour, edge: Lookup, { reach }: WebLimits): StandingFrame | undefined => {
  const b = boundsOfChain(one.loop.contour);
  const least = Math.max(FRAME, FRAME_SHARE * Math.max(b.maxX - b.minX, b.maxY - b.minY));
  if (segmentsNear(edge, b, least + reach).length === 0) return undefined;
  const { distance, first } = closestBetweenChains(one.loop.contour, block, 0);
  const beyond = distance === 0 || windingIn(edge, one.loop.contour.segments[0].from) === 0;
  // Beside an opening the block is kept up to the contour; beside a part the kerf is taken out of the frame.
  return { one, at: first.at, standing: one.kept === 'die' ? distance : distance - reach, least, beyond };
};

const nearEdge = ({ one, at, standing, beyond }: StandingFrame): Finding => {
  const { id } = one.loop;
  return find('near-block-edge', beyond ? words.beyondEdge(id, at) : words.nearEdge(id, at, Math.max(0, standing)), {
    place: { kind: 'spot', x: at.x, y: at.y, reach: 2, loop: id },
    remedy: say`Use a larger block, move the contour inward, or start it from the block edge.`,
  });
};

const weakFrames = (weak: readonly StandingFrame[]): Finding[] => {
  if (weak.length === 0) return [];
  const worst = weak.reduce((a, b) => (b.standing / b.least < a.standing / a.least ? b : a));
  const { one, at, standing } = worst;
  const more = weak.length - 1;
  const rest = more === 0 ? undefined : more === 1 ? words.oneFrameMore : words.framesMore(more);
  return [
    find('frame-weak', sentences([words.frame(worst), rest]), {
      place: { kind: 'spot', x: at.x, y: at.y, reach: Math.max(2, standing), loop: one.loop.id },
      remedy: say`Use a larger block, or rough first, let it move, then finish.`,
    }),
  ];
};

const words = phrases('thin-place', {
  insideFirst: say`The opening is finished before the outside is cut.`,
  roughedFirst: say`The openings on both sides are roughed before either is finished.`,
  measureWeb: say`Measure the web.`,
  roughFirst: say`Rough both before finishing either, and measure the web.`,
  thin: ({ where, wall }: PlacedWall) =>
    say`${{ where }} a wall is ${{ wall: thousandths(wall.thickness) }} thick at ${{ at: spot(wall.at) }}; the thinnest that came out whole in tests on tool steel was ${{ tested: mm(0.117) }}.`,
  long: ({ where, wall }: PlacedWall) =>
    say`${{ where }} a wall ${{ wall: thousandths(wall.thickness) }} thick stands out ${{ length: mm(wall.length, fixed(1)) }} at ${{ at: spot(wall.at) }}; in tests, walls below ${{ thin: mm(0.5) }} kept their shape up to ${{ long: mm(2) }}.`,
  others: say`There are more like it.`,
  web: ({ loops, at, width }: NearPair, kerf: number) =>
    say`${{ between: betweenLoops(loops) }} a web of ${{ web: thousandths(width) }} is left at ${{ at: spot(at) }}; a kerf and ${{ beside: mm(WEB) }}, ${{ least: thousandths(kerf + WEB) }}, is the least that reliably keeps its size.`,
  parts: ({ loops: [one, other], at, width }: NearPair, what: Text) =>
    say`${{ one: contour(one) }} and ${{ other: contour(other) }} are ${{ apart: thousandths(width) }} apart at ${{ at: spot(at) }}: ${{ what }}.`,
  together: say`the two kerfs run together there and the waste comes apart`,
  strip: (left: number) => say`a strip of ${{ strip: thousandths(left) }} is left between the kerfs; it bends and may short the wire`,
  onePairMore: say`1 more pair is as close.`,
  pairsMore: (more: number) => say`${{ more: count(more) }} more pairs are as close.`,
  beyondEdge: (loop: string, at: Point) =>
    say`${{ loop: contour(loop) }} extends beyond the block edge at ${{ at: spot(at) }}: the block does not hold all of it.`,
  nearEdge: (loop: string, at: Point, left: number) =>
    say`Between ${{ loop: contour(loop) }} and the block edge ${{ left: thousandths(left) }} of metal is left at ${{ at: spot(at) }}: too little to hold anything.`,
  frame: ({ one, at, standing, least }: StandingFrame) =>
    say`The frame of block around ${{ loop: contour(one.loop.id) }} is only ${{ ring: mm(standing, fixed(2)) }} thick at ${{ at: spot(at) }}; ${{ least: mm(least, fixed(1)) }} is the least for a contour of this size, as a rule of thumb (common practice, no source).`,
  oneFrameMore: say`1 more contour has a weak frame.`,
  framesMore: (more: number) => say`${{ more: count(more) }} more contours have a weak frame.`,
});
