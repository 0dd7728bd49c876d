/** Places where little metal is left: thin walls and fins, webs between cuts, and frames of the block that are weak or broken. */

import { boundsOfChain } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { closestBetweenChains } from '../../geometry/near/closest.ts';
import { windingIn } from '../../geometry/near/inside.ts';
import { type Lookup, lookupOf, segmentsNear } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import { judgeWall, thinBelow } from '../../physics/cut/thin-wall.ts';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { metalStaysBetween, nearestPlace, pairsNear } from '../near-pairs.ts';
import { type Shape, shapeName } from '../same-shape.ts';
import { type ThinWall, wallsBetween, wallsWithin } from './thin-walls.ts';
import type { WebLimits } from './webs.ts';

export interface ThinAsked {
  readonly cut: readonly KeptLoop[];
  readonly shapes: readonly Shape[];
  readonly block: Contour;
  readonly limits: WebLimits;
}

/** A web that holds its shape is at least this thick, mm: common practice, no source. */
const WEB = 1;

/** A ring of block round a cut is at least this thick, mm, and this share of the cut's longer side: common practice, no source. */
const FRAME = 3;
const FRAME_SHARE = 0.05;

export const thinFindings = (asked: ThinAsked): readonly Finding[] => [
  ...asked.shapes.flatMap(fins),
  ...betweenCuts(asked),
  ...frames(asked),
];

/** The worst fin of a shape that is too thin, and the worst that is too long. */
const fins = (shape: Shape): Finding[] => {
  const { loop, kept } = shape.first.loop;
  return wallFindings(
    wallsWithin(loop.contour, kept, thinBelow).map((wall) => ({ wall, where: `Within ${shapeName(shape)}`, loop: loop.id })),
  );
};

interface Placed {
  readonly wall: ThinWall;
  readonly where: string;
  readonly loop: string;
}

/** A wall much shorter than it is thick is only the mouth of something. */
const isWall = ({ wall }: Placed): boolean => wall.length >= wall.thickness / 2;

const wallFindings = (walls: readonly Placed[]): Finding[] => {
  const judged = walls.filter(isWall).map((p) => ({ ...p, verdict: judgeWall(p.wall.thickness, p.wall.length) }));
  const thin = judged.filter((j) => j.verdict.kind === 'too thin');
  const long = judged.filter((j) => j.verdict.kind === 'too long');
  return [
    ...worst(thin, (j) => -j.wall.thickness).map((j) =>
      find(
        'wall-too-thin',
        `${j.where} a wall of ${j.wall.thickness.toFixed(3)} mm stands at ${spoken(j.wall.at)}; the thinnest that came out whole in tests on tool steel had 0.117 mm.${others(thin.length)}`,
        {
          place: spot(j.wall, j.loop),
          remedy: 'Make it at least 0.12 mm thick, or cut that place with little energy only and expect to lose it.',
        },
      ),
    ),
    ...worst(long, (j) => j.wall.length / j.wall.thickness).map((j) =>
      find(
        'wall-too-long',
        `${j.where} a wall of ${j.wall.thickness.toFixed(3)} mm stands out over ${j.wall.length.toFixed(1)} mm at ${spoken(j.wall.at)}; in tests walls below 0.5 mm kept their shape up to 2 mm.${others(long.length)}`,
        {
          place: spot(j.wall, j.loop),
          remedy: 'Ask whether it may be thicker or shorter; otherwise rough it with low energy, skim both faces alike and measure it.',
        },
      ),
    ),
  ];
};

const worst = <T>(things: readonly T[], badness: (thing: T) => number): readonly T[] =>
  things.length === 0 ? [] : [things.reduce((a, b) => (badness(b) > badness(a) ? b : a))];

/** Each wall is seen from both of its faces: what is counted here are faces, so it is only said that there are more. */
const others = (count: number): string => (count > 2 ? ' There are more of the kind.' : '');

const spoken = (p: Point): string => `(${p.x.toFixed(3)}, ${p.y.toFixed(3)})`;

const spot = ({ at, thickness, length }: ThinWall, loop: string): Finding['place'] & { kind: 'spot' } => ({
  kind: 'spot',
  x: at.x,
  y: at.y,
  reach: Math.max(1, thickness, length / 2),
  loop,
});

/** Walls and webs between two openings, and waste between two parts. Pairs nearer than a kerf are told by `webs.ts`. */
const betweenCuts = ({ cut, limits }: ThinAsked): Finding[] => {
  const most = Math.max(limits.kerf + WEB, 2 * limits.reach + WEB);
  const walls: Placed[] = [];
  const webs: Pair[] = [];
  const waste: Pair[] = [];
  for (const [i, j] of pairsNear(cut, most)) {
    const [a, b] = [cut[i]!, cut[j]!];
    const near = nearestPlace(a.loop.contour, b.loop.contour, most);
    if (near === undefined) continue;
    const names = `${a.loop.id} and ${b.loop.id}`;
    const pair = { ...near, names, loop: a.loop.id };
    if (metalStaysBetween(a, b)) {
      if (near.width < thinBelow)
        walls.push(
          ...wallsBetween(a.loop.contour, b.loop.contour, thinBelow).map((wall) => ({ wall, where: `Between ${names}`, loop: a.loop.id })),
        );
      if (near.width >= limits.kerf && near.width < limits.kerf + WEB) webs.push(pair);
    } else if (a.kept === 'punch' && b.kept === 'punch' && a.loop.parent === b.loop.parent && near.width >= limits.reach) waste.push(pair);
  }
  return [...wallFindings(walls), ...(webs.length > 0 ? [webThin(webs, limits)] : []), ...wasteThin(waste, limits)];
};

interface Pair {
  readonly at: Point;
  readonly width: number;
  readonly names: string;
  readonly loop: string;
}

const narrowest = (pairs: readonly Pair[]): Pair => pairs.reduce((a, b) => (b.width < a.width ? b : a));

const more = (count: number, what: string): string =>
  count === 1 ? '' : ` ${count - 1} more ${count === 2 ? 'pair is' : 'pairs are'} ${what}.`;

const webThin = (webs: readonly Pair[], { kerf }: WebLimits): Finding => {
  const { at, width, names, loop } = narrowest(webs);
  return find(
    'web-thin',
    `Between ${names} a web of ${width.toFixed(3)} mm is left at ${spoken(at)}; a kerf and ${WEB} mm, ${(kerf + WEB).toFixed(3)} mm, is the least that surely keeps its size.${more(webs.length, 'as near')}`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: width, loop },
      remedy: 'Rough both before either is finished, and measure the web.',
    },
  );
};

/** Between two parts of one block: below two kerfs the waste falls as a strip of its own. */
const wasteThin = (waste: readonly Pair[], { reach }: WebLimits): Finding[] => {
  const near = waste.filter((w) => w.width < 2 * reach + WEB);
  if (near.length === 0) return [];
  const { at, width, names, loop } = narrowest(near);
  const left = width - 2 * reach;
  const what =
    left <= 0
      ? 'the two kerfs run together there and the waste comes apart'
      : `between the two kerfs a strip of ${left.toFixed(3)} mm is left, which bends and may short the wire`;
  const apart = Math.ceil((2 * reach + WEB) * 10) / 10;
  return [
    find('parts-too-near', `${names} are ${width.toFixed(3)} mm apart at ${spoken(at)}: ${what}.${more(near.length, 'as near')}`, {
      place: { kind: 'spot', x: at.x, y: at.y, reach: width, loop },
      remedy: `Lay them at least ${apart.toFixed(1)} mm apart.`,
    }),
  ];
};

/** Outermost cuts against the edge of the block. */
const frames = ({ cut, block, limits }: ThinAsked): Finding[] => {
  const edge = lookupOf(block);
  const ids = new Set(cut.map((c) => c.loop.id));
  const weak: Frame[] = [];
  const near: Frame[] = [];
  for (const one of cut) {
    if (one.loop.parent !== undefined && ids.has(one.loop.parent)) continue;
    const frame = frameOf(one, block, edge, limits);
    if (frame === undefined) continue;
    if (frame.beyond || frame.standing < limits.kerf) near.push(frame);
    else if (frame.standing < frame.least) weak.push(frame);
  }
  return [...near.map(nearEdge), ...weakFrames(weak)];
};

interface Frame {
  readonly one: KeptLoop;
  readonly at: Point;
  /** mm of block that stays between the kerf and the edge. */
  readonly standing: number;
  readonly least: number;
  /** The contour reaches over the edge. */
  readonly beyond: boolean;
}

const frameOf = (one: KeptLoop, block: Contour, edge: Lookup, { reach }: WebLimits): Frame | undefined => {
  const b = boundsOfChain(one.loop.contour);
  const least = Math.max(FRAME, FRAME_SHARE * Math.max(b.maxX - b.minX, b.maxY - b.minY));
  if (segmentsNear(edge, b, least + reach).length === 0) return undefined;
  const { distance, first } = closestBetweenChains(one.loop.contour, block, 0);
  const beyond = distance === 0 || windingIn(edge, one.loop.contour.segments[0]!.from) === 0;
  // Beside an opening the block is kept up to the contour; beside a part the kerf is taken out of the frame.
  return { one, at: first.at, standing: one.kept === 'die' ? distance : distance - reach, least, beyond };
};

const nearEdge = ({ one, at, standing, beyond }: Frame): Finding => {
  const { id } = one.loop;
  const sentence = beyond
    ? `${id} reaches over the edge of the block at ${spoken(at)}: there is no metal for all of it.`
    : `Between ${id} and the edge of the block ${Math.max(0, standing).toFixed(3)} mm of metal are left at ${spoken(at)}: too little to hold anything.`;
  return find('near-block-edge', sentence, {
    place: { kind: 'spot', x: at.x, y: at.y, reach: 2, loop: id },
    remedy: 'Take a larger block, move the contour inward, or begin it from the edge of the block.',
  });
};

const weakFrames = (weak: readonly Frame[]): Finding[] => {
  if (weak.length === 0) return [];
  const { one, at, standing, least } = weak.reduce((a, b) => (b.standing / b.least < a.standing / a.least ? b : a));
  const rest = weak.length === 1 ? '' : ` ${weak.length - 1} more ${weak.length === 2 ? 'contour has' : 'contours have'} a weak frame.`;
  return [
    find(
      'frame-weak',
      `Round ${one.loop.id} the ring of block is only ${standing.toFixed(2)} mm thick at ${spoken(at)}; ${least.toFixed(1)} mm is the least for a contour of this size, by a rule of thumb (common practice, no source).${rest}`,
      {
        place: { kind: 'spot', x: at.x, y: at.y, reach: Math.max(2, standing), loop: one.loop.id },
        remedy: 'Take a larger block, or rough first, let it move, and finish then.',
      },
    ),
  ];
};
