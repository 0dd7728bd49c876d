/** How far from a refused entry the next one lies. */
import { expect, it } from 'vitest';
import { itemAt } from '../../sequence/sequence.ts';
import { shapesIn } from '../cut/plan-cut.ts';
import { loop, questionFor, rectangle } from '../plan.fixture.ts';
import { isRefused } from './refused-start.ts';

/** Whether an entry so far, mm, from a refused one of a square of that side is refused too. */
const near = (side: number, away: number): boolean => {
  const question = questionFor([loop('B', rectangle(0, 0, 400, 400)), loop('A', rectangle(50, 50, side, side), 1, 'B')], {
    outline: 'block',
  });
  const refused = { A: [{ x: 50, y: 60 }] };
  return isRefused(itemAt(shapesIn(question), 0), { ...question, refused })({ x: 50, y: 60 + away });
};

it('is 2 mm, and a twelfth of the contour where that is more', () => {
  expect([near(3, 1.9), near(3, 2.1)]).toEqual([true, false]);
  expect([near(48, 15.5), near(48, 16.5)]).toEqual([true, false]);
});

it('is told of a contour moved onto another of its shape too', () => {
  const squares = [50, 150].map((x, i) => loop(`A${i}`, rectangle(x, 50, 20, 20), 1, 'B'));
  const question = questionFor([loop('B', rectangle(0, 0, 400, 400)), ...squares], { outline: 'block' });
  const wasRefused = isRefused(itemAt(shapesIn(question), 0), { ...question, refused: { A1: [{ x: 150, y: 60 }] } });
  expect([wasRefused({ x: 50, y: 60 }), wasRefused({ x: 70, y: 60 })]).toEqual([true, false]);
});
