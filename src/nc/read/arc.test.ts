/** How near to impossible an arc may come before it is refused, counted in last digits of the program. */
import { describe, expect, it } from 'vitest';
import { point } from '../../geometry/segment.ts';
import { arcByRadius } from './arc.ts';

const half = (short: number, digit: number): string =>
  arcByRadius({ from: point(0, 0), to: point(10, 0), digit, counterClockwise: true, slack: 0 }, 5 - short * digit).kind;

describe('an arc by its radius', () => {
  it.each([0.001, 0.0001])('may fall short of half its chord by one and a half last digits of %d mm', (digit) => {
    expect([1.4, 1.6].map((short) => half(short, digit))).toEqual(['arcs', 'bad']);
  });
});

describe('a short arc', () => {
  it.each([0.001, 0.0001])('of less than half a turn is a line up to four last digits of %d mm', (digit) => {
    const shape = (long: number): string => {
      const to = point(long * digit, 0);
      const made = arcByRadius({ from: point(0, 0), to, digit, counterClockwise: true, slack: 0 }, 1);
      return made.kind === 'arcs' ? made.arcs.map((a) => a.kind).join() : made.kind;
    };
    expect([3.9, 4.1].map(shape)).toEqual(['line', 'arc']);
  });
});
