/**
 * The steps of a part: the piece inside is kept, and held by the tab until nearly everything on it is finished. The wire turns
 * round in stubs that the rough cut digs into the waste, so that no skim ever meets solid metal.
 */

import { from } from '../../geometry/frame.ts';
import { distanceBetween, type Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { beyondTab } from '../start/lead-lengths.ts';
import type { Layout, Visit } from './contour-layout.ts';
import type { DesignStep } from './design-step.ts';
import { along, facing, type PassLap, plain, straightIn, straightOut, type Way } from './leads.ts';
import { secure, secureWaste, takeOut, takeWaste } from './piece-stops.ts';
import { advance, type Standing, toAndFro } from './turning.ts';

/** Attended: rough and skims while the tab holds, then the tab, all from one threading. */
export const punchAttended = (layout: Layout): readonly Visit[] => {
  const held = holding(layout);
  const steps = [
    ...begin(layout),
    ...held.steps,
    secure(layout.piece, layout.tab, layout.laps.length > 1),
    ...freeing(layout, held.end),
    takeOut(layout.piece, layout.laps.length > 1),
    cutWire,
  ];
  return [{ kind: 'whole', steps }];
};

/** Alone at night: rough and skims while the tab holds; by day the tab, threaded again. */
export const punchUnattended = (layout: Layout): readonly Visit[] => {
  const way = wayToEntry(layout);
  return [
    { kind: 'rough', steps: [...begin(layout), ...holding(layout).steps, cutWire] },
    {
      kind: 'tab',
      steps: [
        secure(layout.piece, layout.tab, layout.laps.length > 1),
        ...begin(layout),
        ...way.steps,
        ...freeing(layout, { at: way.at, side: 'entry' }),
        takeOut(layout.piece, layout.laps.length > 1),
        cutWire,
      ],
    },
  ];
};

const cutWire: DesignStep = { kind: 'cut wire' };

const begin = ({ hole }: Layout): DesignStep[] => [
  { kind: 'thread', at: hole },
  { kind: 'condition', pass: 1 },
];

/** Where the wire stands with compensation off: over the entry, or over the far end of the tab. */
interface End {
  readonly at: Point;
  readonly side: 'entry' | 'far';
}

/** From the hole to where compensation comes on: the hole itself when it stands square to the entry, else over the entry. */
const wayToEntry = (layout: Layout): { readonly steps: DesignStep[]; readonly at: Point } => {
  const { hole, laps } = layout;
  const entry = facing(laps[0], 0, 1);
  const ahead = (hole.x - entry.at.x) * entry.aside.x + (hole.y - entry.at.y) * entry.aside.y;
  const over = stubAt(layout, 0);
  if (distanceBetween(hole, entry.at) - ahead < 1e-6 || distanceBetween(hole, over) < 0.05) return { steps: [], at: hole };
  return { steps: plain(1, hole, over, 'approach'), at: over };
};

/** Rough up to the tab and skims to and fro over the same stretch, turning round at both of its ends. */
const holding = (layout: Layout): { readonly steps: DesignStep[]; readonly end: End } => {
  const { laps, tab } = layout;
  const rough = laps[0];
  const far = rough.lap.length - tab;
  const way = wayToEntry(layout);
  const roughing: DesignStep[] = [
    ...way.steps,
    ...straightIn(rough, way.at, 0, 1),
    ...pastPockets(layout, far),
    ...straightOut(rough, far, 1, stubAt(layout, far)),
  ];
  const first = laps[1];
  if (first === undefined) return { steps: roughing, end: { at: stubAt(layout, far), side: 'far' } };
  // Told from the nearest entry, backwards for the far side of the tab, so that it holds for laps of different length.
  const farMeets = (p: PassLap): number => -tab - advance(layout, p);
  const start: Standing = { at: stubAt(layout, far), meets: farMeets(first), way: -1 };
  const run = toAndFro(layout, start, (p, _, way) => {
    const settles = way === -1 ? advance(layout, p) : farMeets(p);
    const leaves = settles + way * p.lap.length;
    return { leaves, settles, parts: [[leaves, 'contour']] };
  });
  const { at, way: next } = run.standing;
  return { steps: [...roughing, ...run.steps], end: { at, side: next === -1 ? 'far' : 'entry' } };
};

/** Round up to the tab; before each place where waste in a pocket comes loose it is left on a tab of its own, with a stop on either side of it. */
const pastPockets = ({ laps, tab, breaks }: Layout, far: number): DesignStep[] => {
  const rough = laps[0];
  const steps: DesignStep[] = [];
  let at = 0;
  for (const { start, end } of breaks) {
    const held = Math.max(at, start - tab);
    steps.push(...along(rough, at, held, 'contour'), secureWaste, ...along(rough, held, end, 'tab'), takeWaste);
    at = end;
  }
  return [...steps, ...along(rough, at, far, 'contour')];
};

/** Rough over the tab from the side on which the wire stands, then the same skims over it, blended into what is finished. */
const freeing = (layout: Layout, end: End): DesignStep[] => {
  const { laps, tab, measures } = layout;
  const rough = laps[0];
  const way: Way = end.side === 'far' ? 1 : -1;
  const [start, finish] = way === 1 ? [-tab, 0] : [0, -tab];
  const reach = beyondTab(measures);
  const [before, after] = [start - way * reach, finish + way * reach];
  const skims = laps.length > 1;
  // A way in for the skims has to be dug beyond both ends of the tab: first on this side, coming back along the open kerf.
  const digging: DesignStep[] = [
    ...straightIn(rough, end.at, start, turnedWay(way)),
    ...along(rough, start, before, 'leave'),
    ...straightOut(rough, before, turnedWay(way), stubAt(layout, before)),
    ...straightIn(rough, stubAt(layout, before), before, way),
    ...along(rough, before, start, 'overlap'),
  ];
  return [
    { kind: 'condition', pass: 1 },
    ...(skims ? digging : straightIn(rough, end.at, start, way)),
    ...along(rough, start, finish, 'tab'),
    ...along(rough, finish, after, 'overlap'),
    ...straightOut(rough, after, way, stubAt(layout, after)),
    ...(skims ? finishing(layout, { at: stubAt(layout, after), way: turnedWay(way) }) : []),
  ];
};

const turnedWay = (way: Way): Way => (way === 1 ? -1 : 1);

/** Each skim from well beyond one end of the tab to well beyond the other. */
const finishing = (layout: Layout, { at, way }: { readonly at: Point; readonly way: Way }): DesignStep[] => {
  const { laps, tab, measures } = layout;
  const inner = (p: PassLap): number => beyondTab(measures) - advance(layout, p);
  const side = (p: PassLap, which: Way): number => (which === 1 ? inner(p) : -tab - inner(p));
  const start: Standing = { at, meets: side(itemAt(laps, 1), turnedWay(way)), way };
  return toAndFro(layout, start, (p, _, way) => {
    const leaves = side(p, way);
    const [enter, leave] = way === 1 ? [-tab, 0] : [0, -tab];
    return {
      leaves,
      settles: leaves,
      parts: [
        [enter, 'overlap'],
        [leave, 'tab'],
        [leaves, 'overlap'],
      ],
    };
  }).steps;
};

/** The head of a stub that the rough cut digs into the waste, square to the contour. */
const stubAt = (layout: Layout, at: number): Point => from(facing(layout.laps[0], at, 1), 0, layout.lead + layout.measures.stub);
