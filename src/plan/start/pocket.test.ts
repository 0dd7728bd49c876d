/** Whether a start lies in a pocket of the part, by how far its walls stand apart. */
import { expect, it } from 'vitest';
import { polygon } from '../plan.fixture.ts';
import { type EntryAsked, spotCost } from './entry.ts';
import type { EntryPlace } from './entry-places.ts';
import { isInPocket } from './pocket.ts';

/** A part 60 wide with a slot from its upper edge, 20 deep; an entry in the middle of the slot's floor. */
const onFloor = (width: number): boolean => {
  const [left, right] = [30 - width / 2, 30 + width / 2];
  const part = polygon([0, 0], [60, 0], [60, 30], [right, 30], [right, 10], [left, 10], [left, 30], [0, 30]);
  return isInPocket({ at: { x: 30, y: 10 }, along: { x: -1, y: 0 }, aside: { x: 0, y: 1 } }, part);
};

it('is one where the way out is less than 4 mm wide, and not where it is wider', () => {
  expect([onFloor(3.7), onFloor(4.3)]).toEqual([true, false]);
});

it('is one on a wall that looks at another, and none on the outside', () => {
  const part = polygon([0, 0], [60, 0], [60, 30], [40, 30], [40, 10], [20, 10], [20, 30], [0, 30]);
  expect(isInPocket({ at: { x: 20, y: 20 }, along: { x: 0, y: 1 }, aside: { x: 1, y: 0 } }, part)).toBe(true);
  expect(isInPocket({ at: { x: 0, y: 15 }, along: { x: 0, y: -1 }, aside: { x: -1, y: 0 } }, part)).toBe(false);
});

it('is taken only where any start outside would lack more than 10 mm of straight', () => {
  const contour = polygon([0, 0], [60, 0], [60, 30], [31, 30], [31, 10], [29, 10], [29, 30], [0, 30]);
  const shape = { first: { loop: { loop: { id: 'P', contour }, kept: 'punch' } } };
  const asked = { shape, measures: { kerf: 0.5, overlap: 1 }, tab: 12 } as unknown as EntryAsked;
  const cost = (spot: Partial<EntryPlace>): number => spotCost({ straight: true, back: 20, ahead: 20, ...spot } as EntryPlace, asked);
  const within = cost({ at: { x: 30, y: 10 }, along: { x: -1, y: 0 }, aside: { x: 0, y: 1 } });
  // Of 14 mm before the entry, four kerfs and the tab, each that is lacking counts twice.
  const outside = (lack: number): number => cost({ at: { x: 0, y: 15 }, along: { x: 0, y: -1 }, aside: { x: -1, y: 0 }, back: 14 - lack });
  expect([within > outside(9.5), within < outside(10.5)]).toEqual([true, true]);
});
