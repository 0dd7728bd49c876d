/** Where waste behind a neck comes loose, and that the tip of a notch is none. */
import { expect, it } from 'vitest';
import { polygon } from '../plan.fixture.ts';
import type { EntryPlace } from './entry-places.ts';
import type { Measures } from './lead-lengths.ts';
import { pocketBreaks } from './pocket-breaks.ts';

/** Rough offset and half kerf of 0.2 each, so that 0.95 mm across is a neck. */
const measures = { offsets: [0.2], kerf: 0.4 } as unknown as Measures;
const spot = { segment: 0, share: 0.5 } as EntryPlace;

/** A part with a pocket so deep behind a neck of 0.6 mm, begun below: the edge of the pocket is 12.8 mm and twice its depth. */
const breaksOf = (depth: number, half = 3.2) => {
  const part = polygon(
    [0, 0],
    [40, 0],
    [40, 30],
    [20.3, 30],
    [20.3, 25],
    [20 + half, 25],
    [20 + half, 25 - depth],
    [20 - half, 25 - depth],
    [20 - half, 25],
    [19.7, 25],
    [19.7, 30],
    [0, 30],
  );
  return pocketBreaks({ loop: { id: 'A', contour: part, depth: 0 }, kept: 'punch' } as Parameters<typeof pocketBreaks>[0], spot, measures);
};

it('finds the place where the second wall of the neck begins, and goes on 1 mm past it', () => {
  const [only, ...more] = breaksOf(6);
  expect(more).toEqual([]);
  // From the middle below: 20 + 30 + 19.7 + 5 + 2.9 + 6 + 6.4 + 6 + 2.9 to the neck.
  expect(only?.start).toBeGreaterThan(98.9);
  expect(only?.start).toBeLessThan(99.2);
  expect((only?.end ?? 0) - (only?.start ?? 0)).toBeCloseTo(1, 9);
});

it('finds none where the kerf eats the waste: with an edge under four times the way across', () => {
  expect([breaksOf(1, 0.75).length, breaksOf(1, 0.5).length]).toEqual([1, 0]);
  const notch = polygon([0, 0], [40, 0], [40, 30], [20.8, 30], [20, 12], [19.2, 30], [0, 30]);
  expect(
    pocketBreaks({ loop: { id: 'A', contour: notch, depth: 0 }, kept: 'punch' } as Parameters<typeof pocketBreaks>[0], spot, measures),
  ).toEqual([]);
});
