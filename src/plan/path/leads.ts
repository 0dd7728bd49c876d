/**
 * The ways onto a contour and off it, and the stretches along it. Compensation comes on over a straight move that ends at
 * right angles to the start of what follows, and goes off over the straight move away.
 */

import { type ContourFrame, from, sideOf, turned } from '../../geometry/frame.ts';
import type { Arc, Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import type { Step } from '../plan.ts';
import { cut, type DesignStep } from './design-step.ts';
import { frameAt, type Lap, stretch } from './lap.ts';

/** A lap with the number of its pass. */
export interface PassLap {
  readonly lap: Lap;
  readonly pass: number;
}

/** 1 forward, -1 backward. */
export type Way = 1 | -1;

type Part = Extract<Step, { readonly kind: 'cut' }>['part'];

/** The frame at a place for travel in the given way. */
export const facing = ({ lap }: PassLap, at: number, way: Way): ContourFrame => {
  const frame = frameAt(lap, at);
  return way === 1 ? frame : turned(frame);
};

/** Along the contour, `to` below `from` for the way back. */
export const along = (p: PassLap, start: number, end: number, part: Part): DesignStep[] =>
  start === end ? [] : stretch(p.lap, start, end).map((piece) => cut(p.pass, part, piece));

/** Straight from a point without compensation to the contour, compensated at the end. */
export const straightIn = (p: PassLap, start: Point, at: number, way: Way): DesignStep[] => {
  const frame = facing(p, at, way);
  return [
    compensate(p, frame),
    cut(p.pass, 'approach', { programmed: straight(start, frame.at), centre: straight(start, from(frame, 0, p.lap.offset)) }),
  ];
};

/** Straight off the contour to a point where compensation is off. */
export const straightOut = (p: PassLap, at: number, way: Way, end: Point): DesignStep[] => {
  const frame = facing(p, at, way);
  return [
    { kind: 'cancel compensation' },
    cut(p.pass, 'leave', { programmed: straight(frame.at, end), centre: straight(from(frame, 0, p.lap.offset), end) }),
  ];
};

/** Straight to the start of a quarter arc of radius `lead` that runs into the contour tangentially. */
export const arcIn = (p: PassLap, start: Point, at: number, way: Way, lead: number): DesignStep[] => {
  const frame = facing(p, at, way);
  const { offset } = p.lap;
  const [outer, inner] = [from(frame, -lead, lead), from(frame, -(lead - offset), lead)];
  return [
    compensate(p, frame),
    cut(p.pass, 'approach', { programmed: straight(start, outer), centre: straight(start, inner) }),
    cut(p.pass, 'approach', {
      programmed: quarter(frame, lead, outer, frame.at),
      centre: quarter(frame, lead, inner, from(frame, 0, offset)),
    }),
  ];
};

/** The same way out: a quarter arc off the contour, then straight to a point where compensation is off. */
export const arcOut = (p: PassLap, at: number, way: Way, lead: number, end: Point): DesignStep[] => {
  const frame = facing(p, at, way);
  const { offset } = p.lap;
  const [outer, inner] = [from(frame, lead, lead), from(frame, lead - offset, lead)];
  return [
    cut(p.pass, 'leave', {
      programmed: quarter(frame, lead, frame.at, outer),
      centre: quarter(frame, lead, from(frame, 0, offset), inner),
    }),
    { kind: 'cancel compensation' },
    cut(p.pass, 'leave', { programmed: straight(outer, end), centre: straight(inner, end) }),
  ];
};

/** A move without compensation. */
export const plain = (pass: number, start: Point, end: Point, part: Part): DesignStep[] =>
  distanceBetween(start, end) < 1e-9 ? [] : [cut(pass, part, { programmed: straight(start, end), centre: straight(start, end) })];

export const compensate = (p: PassLap, frame: ContourFrame): DesignStep => ({
  kind: 'compensate',
  side: sideOf(frame) === 1 ? 'left' : 'right',
  register: p.pass,
});

const straight = (start: Point, end: Point): Segment => ({ kind: 'line', from: start, to: end });

/** A quarter turn about the point `lead` beside the contour, towards the wire's side of travel. */
const quarter = (frame: ContourFrame, lead: number, start: Point, end: Point): Arc => {
  const centre = from(frame, 0, lead);
  return { kind: 'arc', from: start, to: end, centre, radius: distanceBetween(start, centre), sweep: (sideOf(frame) * Math.PI) / 2 };
};
