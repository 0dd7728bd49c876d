/** Paints the replay: metal removed so far to the width of the kerf, the wire, and the block that is current. */

import { nearestShare, pointAt } from '../../../geometry/measure.ts';
import type { Segment } from '../../../geometry/segment.ts';
import { segmentsView } from '../../work/chain-view.ts';
import { type Brush, penOf, wholePath } from '../brush.ts';
import { countOf, segmentAt } from '../chain-segments.ts';
import type { ChainStretch } from '../chain-strokes.ts';
import { cutStretches, type Moves, movesOfBlock, PER_STROKE } from '../replayed.ts';
import type { Upon } from '../scene.ts';

export const paintCut = (brush: Brush, upon: Upon): void => {
  const { moves, cutUpTo, wire, currentBlock } = upon;
  if (moves !== undefined && cutUpTo !== undefined) {
    const paths = pathsUpTo(brush, moves, Math.max(0, Math.min(cutUpTo, countOf(moves.segments))), wire);
    const wide = Math.max(upon.kerf * brush.view.scale, 1.5);
    const { context } = brush;
    // An edge of ink first, then the gap itself: at a small scale only a line remains, to scale it is a trench.
    penOf(brush, { colour: 'ink', width: wide + 1.6, dash: [] });
    context.lineCap = 'round';
    for (const path of paths) context.stroke(path);
    penOf(brush, { colour: 'paper', width: wide, dash: [] });
    context.lineCap = 'round';
    for (const path of paths) context.stroke(path);
  }
  if (moves !== undefined && currentBlock !== undefined) {
    const path = wholeOf(movesOfBlock(moves, currentBlock), brush);
    penOf(brush, { colour: 'paper', width: 7, dash: [] });
    brush.context.stroke(path);
    penOf(brush, { colour: 'accent', width: 4, dash: [] });
    brush.context.stroke(path);
  }
  if (wire !== undefined) paintWire(brush, wire);
};

/** A dot to scale where it can be seen, within a ring that always can. */
const paintWire = (brush: Brush, wire: NonNullable<Upon['wire']>): void => {
  const { context, colours, view } = brush;
  const ring = Math.max(wire.kerf / 2, 6 / view.scale);
  context.beginPath();
  context.arc(wire.x, wire.y, ring, 0, 2 * Math.PI);
  penOf(brush, { colour: 'paper', width: 5, dash: [] });
  context.stroke();
  penOf(brush, { colour: 'pencil', width: 2.5, dash: [] });
  context.stroke();
  context.fillStyle = colours.pencil;
  context.beginPath();
  context.arc(wire.x, wire.y, Math.max(wire.kerf / 2.6, 2 / view.scale), 0, 2 * Math.PI);
  context.fill();
};

const wholeOf = (stretches: readonly ChainStretch[], { view }: Brush): Path2D => wholePath({}, stretches, view.scale);

const keys = new WeakMap<Moves, Map<number, object>>();

/** Full bundles of moves from those kept, the last one made anew up to the wire. */
const pathsUpTo = (brush: Brush, moves: Moves, cutUpTo: number, wire: Upon['wire']): readonly Path2D[] => {
  const full = Math.floor(cutUpTo / PER_STROKE);
  const known = keys.get(moves) ?? new Map<number, object>();
  keys.set(moves, known);
  const paths = Array.from({ length: full }, (_, k) => {
    const key = known.get(k) ?? {};
    known.set(k, key);
    return wholePath(key, cutStretches(moves, k * PER_STROKE, (k + 1) * PER_STROKE), brush.view.scale);
  });
  return [...paths, wholeOf([...cutStretches(moves, full * PER_STROKE, cutUpTo), ...underWay(moves, cutUpTo, wire)], brush)];
};

/** The part of the move under way that lies behind the wire. */
const underWay = ({ segments, cutting }: Moves, move: number, wire: Upon['wire']): readonly ChainStretch[] => {
  if (wire === undefined || move >= countOf(segments) || cutting[move] !== 1) return [];
  const segment = segmentAt(segments, move);
  const share = nearestShare(segment, wire);
  const to = pointAt(segment, share);
  const behind: Segment = segment.kind === 'line' ? { ...segment, to } : { ...segment, to, sweep: segment.sweep * share };
  return share > 0 ? [{ numbers: segmentsView([behind]), from: 0, to: 1, closed: false }] : [];
};
