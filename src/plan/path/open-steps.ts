/**
 * The steps of an open line. With a kept side the wire comes in beside the line's start, runs to its end and back once for each pass,
 * and turns outside the block or in its holes; a slit is cut once, along its middle, without compensation.
 */

import { reverseChain } from '../../geometry/chain.ts';
import { type Path, path } from '../../geometry/contour.ts';
import { slice } from '../../geometry/cut.ts';
import { besides, type ContourFrame, from as placed, turned } from '../../geometry/frame.ts';
import { endDirection, lengthOf, startDirection } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { certain, lastOf, type NonEmpty } from '../../sequence/sequence.ts';
import { fixed, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { saidMass } from '../loose-piece-mass.ts';
import type { OpenEnd } from '../open-line.ts';
import type { Measures } from '../start/lead-lengths.ts';
import type { Visit } from './contour-layout.ts';
import { cut, type DesignStep, stop } from './design-step.ts';
import { frameAt } from './lap.ts';
import { along, compensate, type PassLap, plain, straightOut } from './leads.ts';

/** What comes loose, in kg. */
export interface Loosened {
  readonly role: 'waste' | 'part';
  readonly mass: number;
  /** mm of metal left standing before the line leaves the block. */
  readonly tab: number;
}

export interface LineLayout {
  /** Index = pass number - 1, along the extended line. */
  readonly laps: NonEmpty<PassLap>;
  readonly from: OpenEnd;
  readonly to: OpenEnd;
  /** mm of extension behind the line's end. */
  readonly after: number;
  readonly measures: Measures;
  readonly loose?: Loosened | undefined;
  readonly attended: boolean;
}

const cutWire: DesignStep = { kind: 'cut wire' };

export const lineVisits = (layout: LineLayout): readonly Visit[] => {
  const { attended, loose } = layout;
  if (loose === undefined)
    return [{ kind: attended ? 'whole' : 'rough', steps: [...begin(layout, 'from', 1), ...rough(layout), ...skims(layout, -1), cutWire] }];
  return attended ? wholeLine(layout, loose) : lineByNight(layout, loose);
};

type Side = 'from' | 'to';

const begin = (layout: LineLayout, side: Side, pass: number): DesignStep[] => [
  { kind: 'thread', at: standAt(layout, side) },
  { kind: 'condition', pass },
];

/** Rough from start to end without stopping: nothing comes loose. */
const rough = (layout: LineLayout): DesignStep[] => {
  const p = layout.laps[0];
  return [...lineIn(layout, p, 'from'), ...along(p, 0, p.lap.length, 'contour'), ...lineOut(layout, p, 'to')];
};

/** Rough to the tab, stop, the tab, stop; then the skims: over metal that stays clamped, or along a part that is held. */
const wholeLine = (layout: LineLayout, loose: Loosened): readonly Visit[] => {
  const p = layout.laps[0];
  const tab = p.lap.length - layout.after - loose.tab;
  const out = takeOut(loose);
  const steps = [
    ...begin(layout, 'from', 1),
    ...lineIn(layout, p, 'from'),
    ...along(p, 0, tab, 'contour'),
    secure(loose, layout.laps.length > 1),
    ...along(p, tab, p.lap.length, 'tab'),
    ...lineOut(layout, p, 'to'),
    ...(loose.role === 'waste' ? [out] : []),
    ...skims(layout, -1),
    ...(loose.role === 'part' ? [out] : []),
    cutWire,
  ];
  return [{ kind: 'whole', steps }];
};

/** Rough to the tab alone; by day the tab from the other end; then the skims, alone where the waste is gone. */
const lineByNight = (layout: LineLayout, loose: Loosened): readonly Visit[] => {
  const p = layout.laps[0];
  const { measures, after } = layout;
  const { length } = p.lap;
  const tab = length - after - loose.tab;
  const aside = (at: number): Point => placed(frameAt(p.lap, at), 0, measures.kerfLead + measures.stub);
  const beyond = tab - measures.overlap;
  const out = takeOut(loose);
  const roughing = [
    ...begin(layout, 'from', 1),
    ...lineIn(layout, p, 'from'),
    ...along(p, 0, tab, 'contour'),
    ...straightOut(p, tab, 1, aside(tab)),
    cutWire,
  ];
  const freeing = [
    secure(loose, layout.laps.length > 1),
    ...begin(layout, 'to', 1),
    ...lineIn(layout, p, 'to'),
    ...along(p, length, tab, 'tab'),
    ...along(p, tab, beyond, 'overlap'),
    ...(loose.role === 'waste' || layout.laps.length === 1 ? [out] : []),
    ...straightOut(p, beyond, -1, aside(beyond)),
    cutWire,
  ];
  const visits: Visit[] = [
    { kind: 'rough', steps: roughing },
    { kind: 'tab', steps: freeing },
  ];
  if (layout.laps.length === 1) return visits;
  const finishing = [...begin(layout, 'from', 2), ...skims(layout, 1, false), ...(loose.role === 'part' ? [out] : []), cutWire];
  return [...visits, { kind: 'skims', steps: finishing }];
};

/** Each skim the whole line, the other way than the one before. */
const skims = (layout: LineLayout, first: 1 | -1, chosen = true): DesignStep[] =>
  layout.laps.slice(1).flatMap((p, i) => {
    const forward = (i % 2 === 0) === (first === 1);
    const [enter, leave]: [Side, Side] = forward ? ['from', 'to'] : ['to', 'from'];
    const { length } = p.lap;
    return [
      ...(chosen || i > 0 ? [{ kind: 'condition', pass: p.pass } as const] : []),
      ...lineIn(layout, p, enter),
      ...(forward ? along(p, 0, length, 'contour') : along(p, length, 0, 'contour')),
      ...lineOut(layout, p, leave),
    ];
  });

/** Straight from where the wire stands to the line's end, square to it beside the block, compensated there. */
const lineIn = (layout: LineLayout, p: PassLap, side: Side): DesignStep[] => {
  const frame = side === 'from' ? startFrame(p) : turned(endFrame(p));
  const stand = standAt(layout, side);
  return [
    compensate(p, frame),
    cut(p.pass, 'approach', { programmed: straight(stand, frame.at), centre: straight(stand, placed(frame, 0, p.lap.offset)) }),
  ];
};

const lineOut = (layout: LineLayout, p: PassLap, side: Side): DesignStep[] => {
  const frame = side === 'to' ? endFrame(p) : turned(startFrame(p));
  const stand = standAt(layout, side);
  return [
    { kind: 'cancel compensation' },
    cut(p.pass, 'leave', { programmed: straight(frame.at, stand), centre: straight(placed(frame, 0, p.lap.offset), stand) }),
  ];
};

const straight = (from: Point, to: Point): Segment => ({ kind: 'line', from, to });

/** In the hole, or beside the block square to the line's end. */
const standAt = (layout: LineLayout, side: Side): Point => {
  const end = layout[side];
  if (end.kind === 'hole') return end.at;
  const p = layout.laps[0];
  return placed(side === 'from' ? startFrame(p) : endFrame(p), 0, p.lap.offset + BESIDE);
};

/** From the rough's path to where compensation is off, mm. */
const BESIDE = 0.5;

const startFrame = ({ lap }: PassLap): ContourFrame => {
  const first = certain(lap.pieces[0]?.programmed, 'a lap begins with what is programmed');
  const way = startDirection(first);
  return { at: first.from, along: way, aside: besides(way, lap.side) };
};

const endFrame = ({ lap }: PassLap): ContourFrame => {
  const last = certain(lap.pieces.findLast((p) => p.programmed !== undefined)?.programmed, 'a lap ends with what is programmed');
  const way = endDirection(last);
  return { at: last.to, along: way, aside: besides(way, lap.side) };
};

export interface SlitLayout {
  /** Extended to where the wire comes in and goes out. */
  readonly path: Path;
  readonly from: OpenEnd;
  readonly to: OpenEnd;
  readonly before: number;
  readonly after: number;
  readonly overlap: number;
  readonly loose?: Loosened | undefined;
  readonly attended: boolean;
}

export const slitVisits = (layout: SlitLayout): readonly Visit[] => {
  const { loose, attended } = layout;
  // The wire comes in where it can: a slit that is blind at its start is cut from its end.
  if (layout.from.kind === 'blind') {
    const { from, to, before, after } = layout;
    return slitVisits({ ...layout, path: reverseChain(layout.path), from: to, to: from, before: after, after: before });
  }
  const line = layout.path;
  const length = lineLength(line);
  const lead = layout.from.kind === 'hole' ? plain(1, layout.from.at, line.segments[0].from, 'approach') : [];
  const start = layout.from.kind === 'hole' ? layout.from.at : line.segments[0].from;
  const begun: DesignStep[] = [{ kind: 'thread', at: start }, { kind: 'condition', pass: 1 }, ...lead];
  const out = layout.to.kind === 'hole' ? plain(1, lastOf(line.segments).to, layout.to.at, 'leave') : [];
  if (loose === undefined)
    return [{ kind: attended ? 'whole' : 'rough', steps: [...begun, ...stretchOf(line, 0, length, 'contour'), ...out, cutWire] }];
  const tab = length - layout.after - loose.tab;
  const first = [...begun, ...stretchOf(line, 0, tab, 'contour')];
  if (attended)
    return [{ kind: 'whole', steps: [...first, secure(loose, false), ...stretchOf(line, tab, length, 'tab'), takeOut(loose), cutWire] }];
  const back = stretchOf(reverseChain(line), 0, length - tab, 'tab');
  const overlap = stretchOf(reverseChain(line), length - tab, length - tab + layout.overlap, 'overlap');
  const freeing: DesignStep[] = [
    secure(loose, false),
    { kind: 'thread', at: lastOf(line.segments).to },
    { kind: 'condition', pass: 1 },
    ...back,
    ...overlap,
    takeOut(loose),
    cutWire,
  ];
  return [
    { kind: 'rough', steps: [...first, cutWire] },
    { kind: 'tab', steps: freeing },
  ];
};

const lineLength = (line: Path): number => line.segments.reduce((sum, s) => sum + lengthOf(s), 0);

/** The moves between two lengths along a line: what is programmed is where the wire runs. */
const stretchOf = (line: Path, low: number, high: number, part: 'contour' | 'tab' | 'overlap'): DesignStep[] =>
  partOf(line, low, high).segments.map((s) => cut(1, part, { programmed: s, centre: s }));

const partOf = (line: Path, low: number, high: number): Path => {
  const segments: Segment[] = [];
  let run = 0;
  for (const s of line.segments) {
    const length = lengthOf(s);
    const [a, b] = [Math.max(0, (low - run) / length), Math.min(1, (high - run) / length)];
    run += length;
    if ((b - a) * length < 1e-6) continue;
    const piece = a === 0 && b === 1 ? s : slice(s, a, b);
    // Neighbours share the very same point.
    segments.push({ ...piece, from: segments.at(-1)?.to ?? piece.from });
  }
  return path(segments);
};

const secure = (loose: Loosened, skims: boolean): DesignStep => {
  if (loose.role === 'waste') return stop('secure slug', words.secureWaste(loose), [words.stands(loose), words.steady]);
  return stop('secure part', (skims ? words.secureFinished : words.securePart)(loose), [words.stands(loose), words.fast]);
};

const takeOut = (loose: Loosened): DesignStep =>
  loose.role === 'waste' ? stop('take out slug', words.takeWaste(loose)) : stop('take out part', words.takePart(loose));

const words = phrases('line-stop', {
  secureWaste: ({ mass }: Loosened) => say`secure waste ${{ mass: saidMass(mass) }}, then cycle start cuts it off`,
  securePart: ({ mass }: Loosened) => say`clamp part ${{ mass: saidMass(mass) }}, then cycle start cuts it off`,
  secureFinished: ({ mass }: Loosened) => say`clamp part ${{ mass: saidMass(mass) }}, cycle start cuts it off and skims`,
  takeWaste: ({ mass }: Loosened) => say`take away waste ${{ mass: saidMass(mass) }}, then cycle start`,
  takePart: ({ mass }: Loosened) => say`take out part ${{ mass: saidMass(mass) }}, then cycle start`,
  stands: ({ tab }: Loosened) => say`Held by the last ${{ tab: mm(tab, fixed(1)) }} of the line`,
  steady: say`Secure it so it cannot drop or tilt`,
  fast: say`Clamp it so it cannot move`,
});
