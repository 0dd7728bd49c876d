/** Stacks of sheets whose heights can be reckoned by hand. */

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sentenceOf } from '../text/finding.fixture.ts';
import { type StackQuestion, stackOf, WIDEST_GAP } from './stack.ts';

const stacked = (question: StackQuestion) => {
  const stack = stackOf(question);
  if (stack.kind === 'refused') throw new Error(stack.findings.map((f) => sentenceOf(f)).join(' '));
  return stack;
};

const SHEET: StackQuestion = { thickness: 2, flatness: 0.1, burr: 0.05, tallest: 100 };

describe('stackOf', () => {
  it('counts burr and bow under every sheet', () => {
    const { sheets, height, metal, gap, limit, findings } = stacked(SHEET);
    expect([sheets, limit]).toEqual([46, 'height']);
    expect(gap.value).toBeCloseTo(0.15, 12);
    expect(height.value).toBeCloseTo(46 * 2.15, 9);
    expect(metal.value).toBe(92);
    expect(height.high - height.value).toBeCloseTo(46 * 0.05, 9);
    expect(findings.map((f) => f.code)).toEqual(['stack-sheets']);
  });

  it('fills the machine exactly where sheets are perfect', () => {
    expect(stacked({ thickness: 0.1, flatness: 0, burr: 0, tallest: 0.7 }).sheets).toBe(7);
  });

  it('cuts sheets one by one where they would lie too far apart, unless the bow is pressed out', () => {
    const bowed = { ...SHEET, flatness: 0.5 };
    const { sheets, limit, findings } = stacked(bowed);
    expect([sheets, limit]).toEqual([1, 'gap']);
    expect(findings.map((f) => f.code)).toEqual(['stack-sheets', 'stack-flush']);
    expect(stacked({ ...bowed, pressedOut: 0.9 }).limit).toBe('height');
  });

  it('stops at what is wanted, and tells how many stacks more would take', () => {
    expect(stacked({ ...SHEET, wanted: 10 })).toMatchObject({ sheets: 10, limit: 'wanted' });
    expect(sentenceOf(stacked({ ...SHEET, wanted: 100 }).findings[0])).toContain('3 stacks');
    expect(stacked({ ...SHEET, flatness: 5, wanted: 1 }).limit).toBe('wanted');
  });

  it('warns where much of the height is air', () => {
    expect(stacked({ ...SHEET, thickness: 1 }).findings.map((f) => f.code)).toContain('stack-uneven');
  });

  it('refuses a sheet that is too high and numbers that are none', () => {
    const codes = (more: Partial<StackQuestion>) => stackOf({ ...SHEET, ...more }).findings.map((f) => f.code);
    expect(codes({ thickness: 99.9 })).toEqual(['stack-too-high']);
    for (const more of [
      { thickness: 0 },
      { flatness: -1 },
      { burr: Number.NaN },
      { tallest: Number.POSITIVE_INFINITY },
      { wanted: 1.5 },
      { pressedOut: 2 },
    ])
      expect(codes(more)).toEqual(['stack-value-unusable']);
  });

  it('never stands higher than the machine takes, and one sheet more always would', () => {
    const length = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
    fc.assert(
      fc.property(length(0.1, 20), length(0, 0.5), length(0, 0.2), length(30, 400), (thickness, flatness, burr, tallest) => {
        const { sheets, height, gap, limit } = stacked({ thickness, flatness, burr, tallest });
        expect(height.value).toBeLessThanOrEqual(tallest * (1 + 1e-8));
        if (limit === 'height') expect(height.value + thickness + gap.value).toBeGreaterThan(tallest);
        else expect(sheets === 1 && gap.value > WIDEST_GAP).toBe(true);
      }),
      { seed: 7, numRuns: 100 },
    );
  });
});
