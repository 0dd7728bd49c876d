/** Lines in view of short and very long programs. */
/** Which lines of a long program are drawn. */
import { describe, expect, it } from 'vitest';
import { heightOf, linesInView, linesWith, scrollTo, TALLEST } from './windowing.ts';

const view = (top: number) => ({ top, height: 400, line: 20 });

describe('the lines of a program in view', () => {
  it('are those that can be seen with a few more', () => {
    expect(linesInView(view(0), 100_000)).toEqual({ first: 0, end: 28, offset: 0 });
    const { first, end, offset } = linesInView(view(20_000), 100_000);
    expect([first, end]).toEqual([992, 1028]);
    expect(offset).toBe(992 * 20);
  });
  it('end with the last line at the bottom, also where the text is squeezed', () => {
    for (const count of [30, 100_000, 1_000_000]) {
      const { end, offset, first } = linesInView(view(heightOf(count, 20) - 400), count);
      expect(end).toBe(count);
      expect(offset + (count - first) * 20).toBeCloseTo(heightOf(count, 20), 3);
    }
    expect(heightOf(1_000_000, 20)).toBe(TALLEST);
  });
  it('hold a line that is wanted after scrolling to it', () => {
    for (const count of [100, 100_000, 1_000_000])
      for (const wanted of [0, 37, count - 1]) {
        const top = scrollTo(wanted, view(0), count);
        const { first, end } = linesInView(view(top), count);
        expect(first).toBeLessThanOrEqual(wanted);
        expect(end).toBeGreaterThan(wanted);
      }
  });
  it('stay where they are when the line is in view', () => {
    expect(scrollTo(1005, view(20_000), 100_000)).toBe(20_000);
  });
  it('are found by what stands in them', () => {
    expect(linesWith(['N1 G17', 'N2 G00 X1', '(CONTOUR L4)'], 'contour')).toEqual([2]);
    expect(linesWith(['N1'], ' ')).toEqual([]);
  });
});
