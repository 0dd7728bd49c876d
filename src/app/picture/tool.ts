/** Measuring and picking as a state that clicks move on: what was taken so far, and what comes out. */
import type { Point } from '../../geometry/segment.ts';
import type { Snapped } from './places-index.ts';

export type Tool =
  | { readonly kind: 'none' }
  | { readonly kind: 'measure'; readonly from?: Snapped; readonly to?: Snapped }
  | { readonly kind: 'pick'; readonly wanted: 'place' | 'rectangle'; readonly first?: Point };

export type Picked =
  | { readonly kind: 'place'; readonly at: Point }
  | { readonly kind: 'rectangle'; readonly low: Point; readonly high: Point };

/** A place was taken. A measure that is complete begins anew; a rectangle without area waits for another corner. */
export const taken = (tool: Tool, snap: Snapped): { readonly tool: Tool; readonly picked?: Picked } => {
  if (tool.kind === 'none') return { tool };
  if (tool.kind === 'measure')
    return { tool: tool.from === undefined || tool.to !== undefined ? { kind: 'measure', from: snap } : { ...tool, to: snap } };
  if (tool.wanted === 'place') return { tool: { kind: 'none' }, picked: { kind: 'place', at: snap.at } };
  const { first } = tool;
  if (first === undefined) return { tool: { ...tool, first: snap.at } };
  const low = { x: Math.min(first.x, snap.at.x), y: Math.min(first.y, snap.at.y) };
  const high = { x: Math.max(first.x, snap.at.x), y: Math.max(first.y, snap.at.y) };
  return low.x < high.x && low.y < high.y ? { tool: { kind: 'none' }, picked: { kind: 'rectangle', low, high } } : { tool };
};
