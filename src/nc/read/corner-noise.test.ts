/** How much of a corner may be rounding: directions of short moves, ends that do not quite reach, and moves that go straight back. */
import { describe, expect, it } from 'vitest';
import { line, type Point, point } from '../../geometry/segment.ts';
import { type CompensatedCorner, cornerBetween } from './compensated-corner.ts';
import { type Element, elementOf, type Move } from './element.ts';

const DIGIT = 0.001;
const OFFSET = 0.1;
const MOVE = { rapid: false, condition: undefined } as Move;

/** A move so long, mm, and another one from its end, turned to the left by an angle, rad; the wire left or right of both. */
const corner = (turn: number, [before, after]: readonly [number, number], side: 'left' | 'right'): CompensatedCorner => {
  const signed = side === 'left' ? OFFSET : -OFFSET;
  const compensation = { side, register: 1, offset: OFFSET, signed, digit: DIGIT, outsideCorners: 'arc' } as const;
  const element = (from: Point, to: Point): Element => {
    const made = elementOf(MOVE, line(from, to), compensation);
    if (made.kind !== 'element') throw new Error('a line is never too tight');
    return made.element;
  };
  const first = element(point(-before, 0), point(0, 0));
  const second = element(point(0, 0), point(after * Math.cos(turn), after * Math.sin(turn)));
  return cornerBetween(first, point(-before, signed), second, compensation);
};
const goesRound = (turn: number, length: number): boolean => {
  const found = corner(turn, [length, length], 'right');
  return found.kind === 'joined' && found.extra.length > 0;
};

describe('a corner under compensation', () => {
  it('is none where two last digits across each of its moves make as much', () => {
    expect([goesRound(0.39, 0.01), goesRound(0.41, 0.01)]).toEqual([false, true]);
  });

  it('is one beyond 0.8 rad however short the moves are', () => {
    expect([goesRound(0.79, 0.002), goesRound(0.81, 0.002)]).toEqual([false, true]);
  });

  it('has no side on which to go round within a ten-thousandth of a radian of straight back', () => {
    expect([0.9e-4, 1.1e-4].map((short) => corner(Math.PI - short, [10, 10], 'right').kind)).toEqual(['turns back', 'joined']);
  });

  it('is entered where a move falls short of it by two last digits, and no more', () => {
    expect([1.9, 2.1].map((short) => corner(Math.PI / 2, [10, OFFSET - short * DIGIT], 'left').kind)).toEqual(['joined', 'not entered']);
  });
});
