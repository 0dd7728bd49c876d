/** The proof's own error counts against the program, never for it: on contours and on open lines, to either side. */
import { describe, expect, it } from 'vitest';
import { polyline } from '../../geometry/contour.ts';
import { line, point } from '../../geometry/segment.ts';
import type { Action } from '../../nc/read/program.ts';
import { box, openingOf, question, RADIUS } from './by-hand.fixture.ts';
import { proveActions } from './prove.ts';

/** A program may use 5 µm of it. */
const tolerance = 0.02;

/** An opening whose gap is off by so many µm. */
const opening = (off: number): string => {
  const s = openingOf(10, 10);
  s.end();
  const gaps = new Map([[1, 0.03 - off / 1000]]);
  return proveActions(s.actions, question([{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }], { gaps, tolerance })).verdict;
};

/** A cut across the block, so many µm beside its line; the metal above stays. */
const across = (off: number): string | undefined => {
  const y = 15 - RADIUS + off / 1000;
  const cut = (from: number, to: number, block: number): Action => {
    const centre = line(point(from, y), point(to, y));
    return { kind: 'move', block, rapid: false, programmed: centre, centre, register: 1 };
  };
  const stop = (block: number, purpose: 'thread' | 'other'): Action => ({
    kind: 'stop',
    block,
    optional: false,
    comment: 'SECURE',
    purpose,
  });
  const way = line(point(0, 0), point(-1, y));
  const actions: readonly Action[] = [
    { kind: 'move', block: 0, rapid: true, programmed: way, centre: way, register: 1 },
    stop(0, 'thread'),
    cut(-1, 58, 1),
    stop(2, 'other'),
    cut(58, 61, 3),
    stop(4, 'other'),
    { kind: 'end', block: 5 },
  ];
  const wanted = { chain: 'C1', path: polyline([point(0, 15), point(60, 15)]), kept: 'left' } as const;
  return proveActions(actions, { ...question([], { tolerance }), wantedOpen: [wanted] }).open?.[0]?.state;
};

describe('a quarter of a micrometre that the proof may be wrong by', () => {
  it.each([1, -1])('is taken off what a contour may be off, to side %d', (side) => {
    expect([4.7, 4.8].map((off) => opening(side * off))).toEqual(['proven', 'not proven']);
  });

  it.each([1, -1])('is taken off what an open line may be off, to side %d', (side) => {
    expect([4.7, 4.8].map((off) => across(side * off))).toEqual(['right', 'out of tolerance']);
  });
});
