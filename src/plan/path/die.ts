/** The steps of an opening: the block is kept, the piece inside is the slug. */

import { from } from '../../geometry/frame.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { Layout, Visit } from './contour-layout.ts';
import type { DesignStep } from './design-step.ts';
import { along, facing, plain, straightIn, straightOut } from './leads.ts';
import { secure, secureHalf, takeHalf, takeOut } from './piece-stops.ts';
import { advance, type Standing, skimRounds, startingPoint } from './turning.ts';

/** Attended: rough, tab, slug out, then all skims, without ever rethreading. */
export const dieAttended = (layout: Layout): readonly Visit[] => {
  const { laps, hole, tab, measures, piece } = layout;
  const rough = laps[0];
  const round = rough.lap.length;
  const skims = laps.length > 1;
  const standing = afterOverlap(layout);
  const steps: DesignStep[] = [
    ...begin(layout),
    ...straightIn(rough, hole, 0, 1),
    ...pastBreaks(layout, 0),
    secure(piece, tab, skims),
    ...along(rough, round - tab, round, 'tab'),
    ...along(rough, round, round + measures.overlap, 'overlap'),
    takeOut(piece, skims),
    ...straightOut(rough, measures.overlap, 1, standing.at),
    ...skimRounds(layout, standing),
    { kind: 'cut wire' },
  ];
  return [{ kind: 'whole', steps }];
};

/** Alone at night: rough up to the tab; by day the tab; then all skims alone. */
export const dieUnattended = (layout: Layout): readonly Visit[] => {
  const { laps, hole, measures } = layout;
  const rough = laps[0];
  const held = firstHeld(layout);
  const roughing: DesignStep[] = [
    ...begin(layout),
    ...straightIn(rough, hole, 0, 1),
    ...along(rough, 0, held, 'contour'),
    ...straightOut(rough, held, 1, aside(layout, held, -1)),
    { kind: 'cut wire' },
  ];
  const beyond = held - measures.overlap;
  const backward = [...straightIn(rough, hole, rough.lap.length, -1), ...along(rough, rough.lap.length, held, 'tab')];
  const freeing: DesignStep[] = [
    secure(layout.piece, layout.tab, laps.length > 1),
    ...begin(layout),
    ...backward,
    ...along(rough, held, beyond, 'overlap'),
    takeOut(layout.piece, laps.length > 1),
    ...straightOut(rough, beyond, -1, aside(layout, beyond, -1)),
    { kind: 'cut wire' },
  ];
  const visits: Visit[] = [
    { kind: 'rough', steps: roughing },
    { kind: 'tab', steps: layout.breaks.length === 0 ? freeing : freeingInPieces(layout) },
  ];
  return laps.length === 1 ? visits : [...visits, { kind: 'skims', steps: skimming(layout) }];
};

const begin = ({ hole }: Layout): DesignStep[] => [
  { kind: 'thread', at: hole },
  { kind: 'condition', pass: 1 },
];

/** As far as the rough cut may go with nobody there. */
const firstHeld = ({ laps, tab, breaks }: Layout): number => Math.max(0, (breaks[0]?.start ?? laps[0].lap.length) - tab);

/** By day, of a slug that comes apart: forward through the open kerf, and on from where the night ended. */
const freeingInPieces = (layout: Layout): DesignStep[] => {
  const { laps, hole, measures, piece, tab } = layout;
  const rough = laps[0];
  const round = rough.lap.length;
  const held = firstHeld(layout);
  return [
    ...begin(layout),
    ...straightIn(rough, hole, 0, 1),
    ...along(rough, 0, held, 'overlap'),
    ...pastBreaks(layout, held),
    secure(piece, tab, laps.length > 1),
    ...along(rough, round - tab, round, 'tab'),
    ...along(rough, round, round + measures.overlap, 'overlap'),
    takeOut(piece, laps.length > 1),
    ...straightOut(rough, measures.overlap, 1, afterOverlap(layout).at),
    { kind: 'cut wire' },
  ];
};

/** Round up to the tab; before each place where the slug comes apart a tab as well, and a stop on either side of it. */
const pastBreaks = ({ laps, piece, tab, breaks }: Layout, from: number): DesignStep[] => {
  const rough = laps[0];
  const steps: DesignStep[] = [];
  let at = from;
  for (const { start, end } of breaks) {
    const held = Math.max(at, start - tab);
    steps.push(
      ...along(rough, at, held, 'contour'),
      secureHalf(piece, Math.max(0, start - held)),
      ...along(rough, held, end, 'tab'),
      takeHalf(piece),
    );
    at = end;
  }
  return [...steps, ...along(rough, at, rough.lap.length - tab, 'contour')];
};

/** Threaded again in the hole, along the way that the rough cut has opened, then all skims. */
export const skimming = (layout: Layout): DesignStep[] => {
  const { hole, laps } = layout;
  const [rough, first] = [laps[0], itemAt(laps, 1)];
  const start = startingPoint(layout, first, 0, 1);
  const entry = facing(rough, 0, 1);
  const opened = from(entry, 0, rough.lap.offset);
  const square = distanceBetween(hole, entry.at) - ((hole.x - entry.at.x) * entry.aside.x + (hole.y - entry.at.y) * entry.aside.y);
  const direct = square < 1e-6 && layout.turning === 'in the open' && distanceBetween(hole, entry.at) > layout.lead;
  // A start that is the hole itself, nearly, would be a move too short to write.
  const at = distanceBetween(hole, start) < 0.02 ? hole : start;
  const way =
    direct || at === hole ? plain(2, hole, at, 'approach') : [...plain(2, hole, opened, 'approach'), ...plain(2, opened, at, 'approach')];
  const standing: Standing = { at, meets: 0, way: 1 };
  return [{ kind: 'thread', at: hole }, { kind: 'condition', pass: 2 }, ...way, ...skimRounds(layout, standing), { kind: 'cut wire' }];
};

/** Where the wire goes after the rough's overlap, and how the first skim starts from there. */
export const afterOverlap = (layout: Layout): Standing => {
  const { measures, laps } = layout;
  const { overlap, retreat, runUp } = measures;
  const rough = laps[0];
  if (layout.turning === 'in the open') return { at: from(facing(rough, overlap, 1), 0, layout.lead), meets: overlap, way: -1 };
  const first = laps[1] ?? rough;
  const at = from(facing(rough, overlap + retreat, 1), 0, layout.lead);
  return { at, meets: overlap + retreat - runUp - advance(layout, first), way: -1 };
};

/** Where the wire goes when the slug still stands: a little into it, or back along the kerf where that would reach the other side. */
const aside = ({ laps, measures, turning }: Layout, at: number, back: 1 | -1) =>
  turning === 'in the open'
    ? from(facing(laps[0], at, 1), 0, measures.kerfLead + measures.stub)
    : from(facing(laps[0], at + back * measures.retreat, 1), 0, measures.kerfLead);
