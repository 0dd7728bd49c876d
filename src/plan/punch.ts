/** The steps of a part: the piece inside is kept, and held by the tab until nearly everything on it is finished. */
import type { Point } from '../geometry/segment.ts';
import { type DesignStep, stop } from './design-step.ts';
import { from } from './frame.ts';
import type { Layout, Visit } from './layout.ts';
import { along, facing, type PassLap, straightIn, straightOut, type Way } from './legs.ts';
import { kerfLeadLength } from './measures.ts';
import { advance, type Standing, toAndFro } from './turning.ts';

/** Attended: rough and skims while the tab holds, then the tab, all from one threading. */
export const punchAttended = (layout: Layout): readonly Visit[] => {
  const held = holding(layout);
  const steps = [...begin(layout), ...held.steps, secure(layout), ...freeing(layout, held.standing), takeOut(layout), cutWire];
  return [{ kind: 'whole', steps }];
};

/** Alone at night: rough and skims while the tab holds; by day the tab, threaded again. */
export const punchUnattended = (layout: Layout): readonly Visit[] => [
  { kind: 'rough', steps: [...begin(layout), ...holding(layout).steps, cutWire] },
  {
    kind: 'tab',
    steps: [secure(layout), ...begin(layout), ...freeing(layout, { at: layout.hole, meets: 0, way: -1 }), takeOut(layout), cutWire],
  },
];

const cutWire: DesignStep = { kind: 'cut wire' };

const begin = ({ hole }: Layout): DesignStep[] => [
  { kind: 'thread', at: hole },
  { kind: 'condition', pass: 1 },
];

interface Held {
  readonly steps: DesignStep[];
  /** Where the wire stands, and which way the tab lies from there. */
  readonly standing: Standing;
}

/** Rough up to the tab and skims to and fro over the same stretch, turning round within the kerf at both of its ends. */
const holding = (layout: Layout): Held => {
  const { laps, hole, tab, measures } = layout;
  const rough = laps[0]!;
  const { retreat } = measures;
  const end = rough.lap.length - tab;
  const roughing: DesignStep[] = [
    ...straightIn(rough, hole, 0, 1),
    ...along(rough, 0, end, 'contour'),
    ...straightOut(rough, end, 1, beside(layout, end - retreat)),
  ];
  const first = laps[1];
  if (first === undefined) return { steps: roughing, standing: { at: beside(layout, end - retreat), meets: end, way: 1 } };
  // Told from the nearest entry, backwards for the far side of the tab, so that it holds for laps of different length.
  const near = (p: PassLap): number => retreat + measures.runUp + advance(layout, p);
  const far = (p: PassLap): number => -tab - near(p);
  const start: Standing = { at: beside(layout, end - retreat), meets: far(first), way: -1 };
  const run = toAndFro(layout, start, (p, _, way) => {
    const leaves = way === -1 ? near(p) - p.lap.length : far(p) + p.lap.length;
    return { leaves, settles: way === -1 ? near(p) : far(p), parts: [[leaves, 'contour']] };
  });
  const way: Way = run.standing.way === -1 ? 1 : -1;
  return { steps: [...roughing, ...run.steps], standing: { at: run.standing.at, meets: way === 1 ? end : 0, way } };
};

/** Rough over the tab from the side on which the wire stands, then the same skims over it, blended into what is finished. */
const freeing = (layout: Layout, standing: Standing): DesignStep[] => {
  const { laps, tab, measures } = layout;
  const rough = laps[0]!;
  const { way } = standing;
  const round = rough.lap.length;
  const [start, end] = way === 1 ? [round - tab, round] : [round, round - tab];
  const beyond = end + way * measures.overlap;
  const reach = reachBeyond(layout);
  const at = beside(layout, end + way * reach);
  const roughing: DesignStep[] = [
    { kind: 'condition', pass: 1 },
    ...straightIn(rough, standing.at, start, way),
    ...along(rough, start, end, 'tab'),
    ...along(rough, end, beyond, 'overlap'),
    ...straightOut(rough, beyond, way, at),
  ];
  const first = laps[1];
  if (first === undefined) return roughing;
  return [...roughing, ...finishing(layout, { at, way: way === 1 ? -1 : 1 })];
};

/** From the tab's end to where the wire turns round when the tab stretch is finished. */
const reachBeyond = (layout: Layout): number => {
  const { measures, laps } = layout;
  if (laps.length === 1) return measures.overlap + measures.retreat;
  return measures.retreat + 2 * kerfLeadLength(measures) + measures.blend;
};

/** Each skim from well beyond one end of the tab to well beyond the other. */
const finishing = (layout: Layout, { at, way }: { readonly at: Point; readonly way: Way }): DesignStep[] => {
  const { laps, tab, measures } = layout;
  const inner = (p: PassLap): number => reachBeyond(layout) - measures.runUp - advance(layout, p);
  const side = (p: PassLap, which: Way): number => (which === 1 ? inner(p) : -tab - inner(p));
  const start: Standing = { at, meets: side(laps[1]!, way === -1 ? 1 : -1), way };
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

/** Over the rough's kerf, where lead arcs start and compensation is off. */
const beside = (layout: Layout, at: number): Point => from(facing(layout.laps[0]!, at, 1), 0, layout.lead);

const secure = ({ mass, tab, laps }: Layout): DesignStep =>
  stop(
    'secure the part',
    (loop) =>
      `${loop}: the part of ${mass} hangs on a tab of ${tab.toFixed(1)} mm. Hold it so that it can neither drop nor tilt, then run on; the tab is cut${laps.length > 1 ? ' and finished' : ''} next.`,
  );

const takeOut = ({ mass }: Layout): DesignStep => stop('take the part out', (loop) => `${loop}: the part of ${mass} is free. Take it out.`);
