/**
 * Finds where the input meets itself, so that no offset is ever made of a contour that crosses itself. It runs over long arrays of plain
 * numbers: `!` stands where one of those is read.
 */

import { distanceSquared } from '../flat/burial.ts';
import { secondMeeting } from '../flat/corner-meetings.ts';
import type { CurveTree, Found, Stack } from '../flat/curve-tree.ts';
import { newFound, newStack, search } from '../flat/curve-tree.ts';
import type { Curves } from '../flat/curves.ts';
import { AY, BX, STRIDE } from '../flat/curves.ts';
import type { Meetings } from '../flat/meet.ts';
import { meet, newMeetings } from '../flat/meet.ts';
import type { Layout } from './flat-source.ts';
import type { SelfMeeting } from './offset-outcome.ts';

/** mm: an end this near to another curve touches it. */
const TOUCH = 1e-11;

/** More places than this are not listed: they say nothing new. */
const ENOUGH = 1000;

/** All places where the laid-out source meets itself other than in its joints; `tree` holds the boxes of the sources. */
export const selfMeetings = (layout: Layout, tree: CurveTree): readonly SelfMeeting[] => {
  const places: SelfMeeting[] = [];
  const stack: Stack = newStack();
  const found: Found = newFound();
  const out = newMeetings();
  const { boxes } = tree;
  for (let i = 0; i < layout.sources && places.length < ENOUGH; i++) {
    const b = i * 4;
    search(tree, boxes[b]!, boxes[b + 1]!, boxes[b + 2]!, boxes[b + 3]!, i + 1, stack, found);
    for (let k = 0; k < found.count; k++) addMeetings(layout, boxes, i, found.list[k]!, out, places);
  }
  return places;
};

const addMeetings = (layout: Layout, boxes: Float64Array, i: number, j: number, out: Meetings, places: SelfMeeting[]): void => {
  const kind = kindOfMeeting(layout, boxes, i, j, out);
  if (kind === 'none') return;
  if (kind === 'crossing') for (let k = 0; k < out.count; k++) places.push(told(layout, kind, out.x[k]!, out.y[k]!, i, j));
  else places.push(told(layout, kind, out.touchX, out.touchY, i, j));
};

const kindOfMeeting = (layout: Layout, boxes: Float64Array, i: number, j: number, out: Meetings): SelfMeeting['kind'] | 'none' => {
  const { curves } = layout;
  if (curves.next[i] === j || curves.next[j] === i) return secondMeeting(curves, i, j, layout.halfTurns, out);
  meet(curves, i, j, out);
  if (out.count > 0) return 'crossing';
  if (out.touches) return 'touching';
  return endsTouch(curves, boxes, i, j, out) || endsTouch(curves, boxes, j, i, out) ? 'touching' : 'none';
};

/** Whether an end of curve i lies on curve j. */
const endsTouch = (curves: Curves, boxes: Float64Array, i: number, j: number, out: Meetings): boolean => {
  const b = 4 * j;
  for (let end = 0; end <= BX; end += BX) {
    const x = curves.data[i * STRIDE + end]!;
    const y = curves.data[i * STRIDE + end + AY]!;
    if (x < boxes[b]! - TOUCH || x > boxes[b + 2]! + TOUCH || y < boxes[b + 1]! - TOUCH || y > boxes[b + 3]! + TOUCH) continue;
    if (!isNear(curves, j, x, y)) continue;
    out.touchX = x;
    out.touchY = y;
    return true;
  }
  return false;
};

/** Whether a place is within `TOUCH` of a curve. */
const isNear = (curves: Curves, i: number, x: number, y: number): boolean => distanceSquared(curves, i, x, y) < TOUCH * TOUCH;

const told = (layout: Layout, kind: SelfMeeting['kind'], x: number, y: number, i: number, j: number): SelfMeeting => ({
  kind,
  at: { x: x + layout.shift.x, y: y + layout.shift.y },
  first: whereIn(layout, i),
  second: whereIn(layout, j),
});

const whereIn = (layout: Layout, i: number): SelfMeeting['first'] => {
  const origin = layout.curves.origin[i]!;
  return { contour: layout.originChains[origin]!, segment: layout.originSegments[origin]! };
};
