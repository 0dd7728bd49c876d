/** How much of the tolerance a program may use, and what the verdict says of it. */
import { describe, expect, it } from 'vitest';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Proof, ProofQuestion, Wanted } from '../proof.ts';
import { box, openingOf, question } from './by-hand.fixture.ts';
import { proveActions } from './prove.ts';

const opening = (fit?: number): Wanted => ({ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die', fit });

/** An opening cut by a wire whose gap, or a register that, is off by so many µm to either side of right. */
const off = (micrometres: number, asked: Partial<ProofQuestion>, fit?: number): Proof => {
  const s = openingOf(10, 10);
  s.end();
  return proveActions(s.actions, question([opening(fit)], { gaps: new Map([[1, 0.03 - micrometres / 1000]]), ...asked }));
};
const verdict = (micrometres: number, asked: Partial<ProofQuestion>, fit?: number): string => off(micrometres, asked, fit).verdict;

describe("the program's share of the tolerance", () => {
  it('is a quarter: a register 7.5 µm off within ±8 is refused, to either side', () => {
    expect([verdict(7.5, { tolerance: 0.008 }), verdict(-7.5, { tolerance: 0.008 })]).toEqual(['not proven', 'not proven']);
    expect([verdict(4.5, { tolerance: 0.02 }), verdict(5.2, { tolerance: 0.02 })]).toEqual(['proven', 'not proven']);
    expect([verdict(-4.5, { tolerance: 0.02 }), verdict(-5.2, { tolerance: 0.02 })]).toEqual(['proven', 'not proven']);
  });

  it('is at least 1 µm, and never more than the tolerance', () => {
    expect([verdict(0.7, { tolerance: 0.002 }), verdict(1.1, { tolerance: 0.002 })]).toEqual(['proven', 'not proven']);
    expect(verdict(0.9, { tolerance: 0.002 })).toBe('not proven');
    expect([verdict(0.3, { tolerance: 0.0007 }), verdict(0.6, { tolerance: 0.0007 })]).toEqual(['proven', 'not proven']);
  });

  it('is what the question says', () => {
    expect([verdict(7.5, { tolerance: 0.008, programShare: 1 }), verdict(2.5, { tolerance: 0.02, programShare: 0.1 })]).toEqual([
      'proven',
      'not proven',
    ]);
  });

  it('holds the arcs of a fitted curve against it too', () => {
    expect([verdict(4.2, { tolerance: 0.02 }, 0.0004), verdict(4.2, { tolerance: 0.02 }, 0.0008)]).toEqual(['proven', 'not proven']);
  });

  it('is told beside what was measured, off contours and off curves', () => {
    const { use } = off(1.5, { tolerance: 0.008 }, 0.0003);
    expect(use).toMatchObject({ tolerance: 0.008, allowed: 0.002, fit: 0.0003 });
    expect(use?.measured).toBeCloseTo(0.0015, 5);
  });

  it('says what is allowed, of what, and why', () => {
    const refused = off(7.5, { tolerance: 0.008 }, 0.0004).findings.find((f) => f.code === 'metal-left');
    expect(sentenceOf(refused)).toMatch(
      /0\.0075 mm of stock left .* of the ±0\.008 mm tolerance the program may use 0\.002 mm, with 0\.0004 mm/,
    );
  });
});
