/** Finding and snapping among lines and arcs whose remarkable places are known beforehand. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { HOUSE } from '../../text/reader.ts';
import { wordsFor } from '../words/words-for.ts';
import { circleView, polygonView } from '../work/chain-view.ts';
import type { ContourView, LayerView, PictureView } from '../work/views.ts';
import { isInside } from './chain-segments.ts';
import { lengthsIn } from './lengths.ts';
import { indexOf, near, snapped } from './places-index.ts';
import { hereAt, insidesOf, saidOf } from './what-is-here.ts';

const WORDS = wordsFor(HOUSE).picture;

const square = polygonView(
  [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
  ],
  true,
  'L1',
);
const circle = circleView(5, 5, 3, 'L2');
const arc = { closed: false, segments: Float64Array.of(20, 0, 24, 4, 20, 4, 4, Math.PI / 2), owner: 'O1' };
const layers: readonly LayerView[] = [
  { role: 'drawing', chains: [square, circle] },
  { role: 'open line', chains: [arc] },
  { role: 'pass', pass: 2, chains: [circleView(5, 5, 2.8, 'L2')] },
];
const all = (): boolean => true;
const index = indexOf(layers);

describe('snapping in the picture', () => {
  it('takes an end before the line it lies on', () => {
    expect(snapped(index, { x: 0.3, y: 0.2 }, 1, all)).toEqual({ kind: 'end', at: { x: 0, y: 0 } });
  });

  it('takes the midpoint of a side', () => {
    expect(snapped(index, { x: 5.2, y: -0.3 }, 1, all)).toEqual({ kind: 'midpoint', at: { x: 5, y: 0 } });
  });

  it('takes the centre of a circle, far from its line', () => {
    expect(snapped(index, { x: 5.2, y: 4.9 }, 0.5, all)).toEqual({ kind: 'centre', at: { x: 5, y: 5 } });
  });

  it('takes top, bottom and sides of a circle by name, and only those that an arc passes', () => {
    expect(snapped(index, { x: 5.1, y: 8.3 }, 0.5, (l) => l.role === 'drawing')).toEqual({ kind: 'top', at: { x: 5, y: 8 } });
    expect(snapped(index, { x: 1.9, y: 5.1 }, 0.5, (l) => l.role === 'drawing')).toEqual({ kind: 'left', at: { x: 2, y: 5 } });
    expect(snapped(index, { x: 16, y: 4 }, 0.5, all).kind).toBe('free');
    expect(snapped(index, { x: 24, y: 4 }, 0.5, all)).toEqual({ kind: 'end', at: { x: 24, y: 4 } });
  });

  it('takes the nearest place on a line where nothing remarkable is near', () => {
    expect(snapped(index, { x: 2.4, y: 0.2 }, 0.5, all)).toEqual({ kind: 'on the line', at: { x: 2.4, y: 0 } });
  });

  it('leaves a place free where nothing is near, and passes over layers that are not shown', () => {
    expect(snapped(index, { x: 40, y: 40 }, 1, all)).toEqual({ kind: 'free', at: { x: 40, y: 40 } });
    expect(snapped(index, { x: 0.3, y: 0.2 }, 1, (l) => l.role === 'pass').kind).toBe('free');
    expect(snapped(indexOf([]), { x: 1, y: 2 }, 5, all)).toEqual({ kind: 'free', at: { x: 1, y: 2 } });
  });
});

describe('what lies near a place of the picture', () => {
  it('comes nearest first, with its distance', () => {
    const found = near(index, { x: 5, y: 8.3 }, 2, (l) => l.role !== 'open line');
    expect(found.map((n) => [n.layer.role, n.chain.owner])).toEqual([
      ['drawing', 'L2'],
      ['pass', 'L2'],
      ['drawing', 'L1'],
    ]);
    expect(there(found[0]).distance).toBeCloseTo(0.3, 12);
  });

  it('tells inside from outside along every row of a ring of arcs and lines', () => {
    const slot = {
      closed: true,
      segments: Float64Array.of(0, 0, 8, 0, 0, 0, 0, 0, 8, 0, 8, 4, 8, 2, 2, Math.PI, 8, 4, 0, 4, 0, 0, 0, 0, 0, 4, 0, 0, 0, 2, 2, Math.PI),
    };
    for (let x = -3; x <= 11; x += 0.37)
      for (let y = -1; y <= 5; y += 0.25) {
        const off = Math.hypot(x - Math.min(8, Math.max(0, x)), y - 2) - 2;
        if (Math.abs(off) > 1e-9) expect(isInside(slot, { x, y })).toBe(off < 0);
      }
    expect(isInside({ ...slot, closed: false }, { x: 4, y: 2 })).toBe(false);
  });

  it('is said as the shop would say it', () => {
    const contour: ContourView = {
      id: 'L2',
      number: 3,
      kept: 'die',
      area: 28,
      perimeter: 19,
      overrides: [],
      hole: { x: 5, y: 5, diameter: 2, origin: 'placed' },
    };
    const picture = {
      layers,
      contours: [{ ...contour, id: 'L1', area: 100 }, contour],
      startHoles: [],
      low: { x: 0, y: 0 },
      high: { x: 10, y: 10 },
      datum: { x: 0, y: 0 },
    } as PictureView;
    const insides = insidesOf(picture);
    const contours = new Map([[contour.id, contour]]);
    const lengths = lengthsIn('mm', 'en');
    const inside = hereAt(index, insides, { x: 5, y: 4 }, 0.3, all);
    expect(inside).toEqual({ kind: 'inside', owner: 'L2' });
    expect(saidOf(inside, contours, lengths, WORDS)).toBe(
      'L2, opening, cut third; start hole Ø\u00a02\u00a0mm at X\u00a05\u00a0mm, Y\u00a05\u00a0mm',
    );
    expect(saidOf(hereAt(index, insides, { x: 7.8, y: 5 }, 0.1, all), contours, lengths, WORDS)).toBe(
      'wire path of L2, pass 2 (first skim). L2, opening, cut third; start hole Ø\u00a02\u00a0mm at X\u00a05\u00a0mm, Y\u00a05\u00a0mm',
    );
    expect(saidOf(hereAt(index, insides, { x: 50, y: 50 }, 0.3, all), contours, lengths, WORDS)).toBe('');
  });

  it('is found among 100,000 segments by looking at a few hundred', () => {
    const many: LayerView = {
      role: 'drawing',
      chains: Array.from({ length: 100 }, (_, k) =>
        polygonView(
          Array.from({ length: 1000 }, (_, i) => ({ x: k * 3 + Math.cos(i / 159.2), y: Math.sin(i / 159.2) })),
          true,
          `L${k}`,
        ),
      ),
    };
    const big = indexOf([many]);
    let lookedAt = 0;
    const counted = (): boolean => {
      lookedAt += 1;
      return true;
    };
    for (let k = 0; k < 100; k += 1) expect(snapped(big, { x: k * 3 + 1, y: 0.001 }, 0.05, counted).kind).not.toBe('free');
    expect(lookedAt).toBeLessThan(100 * 500);
    lookedAt = 0;
    expect(snapped(big, { x: 150, y: 0 }, 200, counted).kind).not.toBe('free');
    expect(lookedAt).toBeLessThan(2000);
  });
});
