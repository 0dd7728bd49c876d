/** How long ways through many holes take and how far above their bound they end, against the budgets of the issue. */
import type { BenchRow } from '../../../tools/bench-row.ts';
import { scattered } from './scattered.fixture.ts';
import { type BoundedTour, shortestTour, tourLength } from './tour.ts';
import { travelOrder } from './travel-order.ts';

const timed = <T>(run: () => T, times = 3): { readonly ms: number; readonly result: T } => {
  let result = run();
  const all = Array.from({ length: times }, () => {
    const start = performance.now();
    result = run();
    return performance.now() - start;
  });
  return { ms: all.toSorted((a, b) => a - b)[times >> 1] as number, result };
};

const percent = (share: number): string => `${(share * 100).toFixed(2)} % above the bound`;

/** A budget is kept when ours is at most it; a way that ends too far above its bound counts as never done. */
const boundedRow = (count: number, budget: number, times: number): BenchRow & { readonly tour: BoundedTour } => {
  const { ms, result: tour } = timed(() => shortestTour(scattered(count)), times);
  return {
    name: `way through ${count} scattered holes and its bound, within 5 %`,
    ours: tour.gap <= 0.05 ? ms : Number.POSITIVE_INFINITY,
    unit: 'ms',
    peers: [{ name: 'the budget', value: budget, atLeast: 1 }],
    note: percent(tour.gap),
    tour,
  };
};

export const rows = async (): Promise<readonly BenchRow[]> => {
  const [{ tour: _, ...five }, { tour, ...twenty }] = [boundedRow(500, 5000, 3), boundedRow(2000, 10_000, 1)];
  const two = scattered(2000);
  const planned = timed(() => travelOrder(two));
  const many = timed(() => travelOrder(scattered(10_000)), 1);
  return [
    five,
    twenty,
    {
      name: "planner's order of 2,000 holes",
      ours: planned.ms,
      unit: 'ms',
      peers: [{ name: 'the budget', value: 300, atLeast: 1 }],
      note: percent(tourLength(two, planned.result) / tour.bound - 1),
    },
    {
      name: "planner's order of 10,000 holes",
      ours: many.ms,
      unit: 'ms',
      peers: [{ name: 'the budget', value: 500, atLeast: 1 }],
    },
  ];
};
