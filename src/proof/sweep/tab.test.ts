/** How much metal a piece must hang by, and that what hangs by less is refused. */
import { describe, expect, it } from 'vitest';
import { point } from '../../geometry/segment.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Proof, ProofQuestion } from '../proof.ts';
import { box, faults, question, RADIUS, script } from '../prove/by-hand.fixture.ts';
import { proveActions } from '../prove/prove.ts';
import { leastTab } from './tab.ts';

const STEEL = { height: 20, density: 7.7, strength: 360 };

/** An opening of 19 mm, 52 g at 20 mm: the rough leaves so many mm of metal, which are cut after a stop. */
const hanging = (tab: number, more: Partial<ProofQuestion> = {}): Proof => {
  const s = script();
  const [low, high] = [10 + RADIUS, 29 - RADIUS];
  s.go(19.5, 19.5);
  s.stop('THREAD THE WIRE');
  s.cut(19.5, low);
  s.cut(high, low);
  s.cut(high, high);
  s.cut(low, high);
  s.cut(low, low);
  s.cut(19.5 - 2 * RADIUS - tab, low);
  s.stop('SECURE THE SLUG');
  s.cut(19.7, low);
  s.stop('TAKE THE SLUG OUT');
  s.end();
  const asked = { height: 20, holes: [{ at: point(19.5, 19.5), diameter: 0.26 }], ...more };
  return proveActions(s.actions, question([{ loop: 'A', contour: box(10, 10, 29, 29), kept: 'die' }], asked));
};

/** The same opening, cut from a hole in each half: two tabs, below and above, that are both cut after one stop. */
const hangingByTwo = (below: number, above: number): Proof => {
  const s = script();
  const [low, high] = [10 + RADIUS, 29 - RADIUS];
  const half = (side: 1 | -1): void => {
    const wall = side < 0 ? low : high;
    s.go(19.5 + side * 4, 19.5);
    s.stop('THREAD THE WIRE');
    s.cut(wall, 19.5);
    s.cut(wall, low);
    s.cut(19.5 + side * (RADIUS + below / 2), low);
    s.cut(wall, low);
    s.cut(wall, high);
    s.cut(19.5 + side * (RADIUS + above / 2), high);
  };
  half(-1);
  s.stop('CUT THE WIRE');
  half(1);
  s.stop('SECURE THE SLUG');
  s.cut(19, high);
  s.cut(high, high);
  s.cut(high, low);
  s.cut(19, low);
  s.stop('TAKE THE SLUG OUT');
  s.end();
  const holes = [15.5, 23.5].map((x) => ({ at: point(x, 19.5), diameter: 0.26 }));
  return proveActions(s.actions, question([{ loop: 'A', contour: box(10, 10, 29, 29), kept: 'die' }], { height: 20, holes }));
};

/** Whether a tab a twentieth longer than so many mm holds and one a twentieth shorter does not. */
const needs = (least: number, more: Partial<ProofQuestion> = {}): readonly (readonly string[])[] =>
  [1.05, 0.95].map((share) => faults(hanging(share * least, more)));
const HOLDS_AND_NOT = [[], ['tab-too-weak']];

describe('the tab that a piece hangs by', () => {
  it('is refused at 6 µm under 52 g, with its place, its metal and what it needs', () => {
    const proof = hanging(0.006);
    expect([proof.verdict, faults(proof)]).toEqual(['not proven', ['tab-too-weak']]);
    const finding = proof.findings.find((f) => f.code === 'tab-too-weak');
    expect(sentenceOf(finding)).toMatch(/slug of contour A \(5\d g\) hangs by 0\.00[5-7] mm of metal at .* need 0\.2\d mm/);
    expect(finding?.place).toMatchObject({ kind: 'spot', loop: 'A' });
  });

  it('must stand the flushing from the side: 0.02 MPa over its height and 10 mm of its breadth, in mild steel', () => {
    // 6 * 0.02 * 20 * 10 N * 9.345 mm = 200 MPa * 20 mm * b²
    expect(needs(Math.sqrt((6 * 4 * 9.345) / (200 * 20)))).toEqual(HOLDS_AND_NOT);
  });

  it('may be two: what counts against the push from the side is the sum of their squares', () => {
    // Alone 0.237 mm would be needed.
    const both = Math.sqrt((6 * 4 * 9.345) / (200 * 20) / 2);
    expect([1.05, 0.95].map((share) => faults(hangingByTwo(share * both, share * both)))).toEqual(HOLDS_AND_NOT);
    const [wide, narrow] = [0.2, Math.sqrt(2 * both ** 2 - 0.2 ** 2)];
    expect(faults(hangingByTwo(wide, 1.1 * narrow))).toEqual([]);
    expect(faults(hangingByTwo(wide, 0.85 * narrow))).toEqual(['tab-too-weak']);
    const weak = hangingByTwo(0.1, 0.1).findings.find((f) => f.code === 'tab-too-weak');
    expect(sentenceOf(weak)).toMatch(/hangs by 0\.14\d? mm of metal at .* need 0\.24 mm/);
  });

  it('is judged by what the set-up says of the metal', () => {
    expect(needs(Math.sqrt((6 * 4 * 9.345) / (1000 * 20)), { strength: 1000 })).toEqual(HOLDS_AND_NOT);
  });

  it('must carry the weight, which counts for more in a heavy plate than in a light one', () => {
    const light = leastTab({ area: 1e4, lever: 50, breadth: 1e-9 }, { height: 2, density: 2.7, strength: 100 });
    // 6 * 0.054 kg * 9.81 m/s² * 50 mm / (100 MPa * 4 mm²)
    expect(light).toBeCloseTo((6 * 0.054 * 9.81 * 50) / 400, 9);
    expect(leastTab({ area: 1e4, lever: 50, breadth: 1e-9 }, { height: 2, density: 8.1, strength: 100 })).toBeCloseTo(3 * light, 9);
  });

  it('must not shear off where the weight hangs right beside it', () => {
    expect(leastTab({ area: 1e4, lever: 0, breadth: 1e-9 }, STEEL)).toBeCloseTo((Math.sqrt(3) * 1.54 * 9.81) / (360 * 20), 9);
  });
});
