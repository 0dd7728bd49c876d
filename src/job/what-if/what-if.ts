/** The same job under one change: what it would be if the customer, or the shop, gave way a little. */
import { printNumber } from '../../text/print/figure.ts';
import { cutHeight, type Job } from '../job.ts';
import type { Shop } from '../shop.ts';

export interface WhatIf {
  /** 'finish', 'tolerance' ...: what is changed. */
  readonly kind: 'finish' | 'tolerance' | 'inside corners' | 'outside corners' | 'core' | 'wire' | 'stack' | 'quantity' | 'holes';
  /** As one would say it to the customer. */
  readonly sentence: string;
  readonly job: Partial<Job>;
  /** One of the few that nearly always save something. */
  readonly likely?: boolean;
  /** The customer brings the start holes. */
  readonly holesDrilled?: boolean;
}

/** Roughness classes in the order of ISO 1302 grades, µm: a class coarser or finer is the next of these. */
const CLASSES = [0.1, 0.2, 0.4, 0.8, 1.6, 3.2, 6.3] as const;
const MOST_STACKED = 4;

export const whatIfs = (job: Job, shop: Shop, tallest: number): readonly WhatIf[] => [
  ...finishes(job),
  ...tolerances(job),
  ...corners(job, shop),
  ...wiresOf(job, shop),
  ...stacks(job, tallest),
  ...quantities(job),
  DRILLED,
];

const DRILLED: WhatIf = {
  kind: 'holes',
  sentence: 'You bring the block with the start holes drilled',
  job: {},
  holesDrilled: true,
  likely: true,
};

const finishes = (job: Job): readonly WhatIf[] => {
  const coarser = CLASSES.find((c) => c > job.finish * 1.01);
  const finer = CLASSES.findLast((c) => c < job.finish * 0.99);
  const change = (finish: number | undefined, word: string): readonly WhatIf[] =>
    finish === undefined
      ? []
      : [
          {
            kind: 'finish',
            sentence: `A class ${word}: Ra ${finish} µm instead of ${job.finish} µm`,
            job: { finish },
            likely: word === 'coarser',
          },
        ];
  return [...change(coarser, 'coarser'), ...change(finer, 'finer')];
};

const tolerances = (job: Job): readonly WhatIf[] =>
  [2, 0.5].map((factor) => {
    const tolerance = Number((job.tolerance * factor).toPrecision(3));
    return {
      kind: 'tolerance',
      sentence: `A profile tolerance of ±${printNumber(tolerance)} mm instead of ±${printNumber(job.tolerance)} mm`,
      job: { tolerance },
      likely: factor > 1,
    };
  });

/** Corners just large enough for each thicker wire: half of it and a wide finishing gap. */
const corners = (job: Job, shop: Shop): readonly WhatIf[] =>
  [...new Set(shop.wires.filter((w) => w.inStock).map((w) => w.diameter))]
    .map((d) => Number((Math.ceil((d / 2 + 0.02) * 100) / 100).toFixed(2)))
    .filter((radius) => radius > job.insideCorner)
    .toSorted((a, b) => a - b)
    .map((insideCorner) => ({
      kind: 'inside corners',
      sentence: `Inside corners with a radius of ${insideCorner} mm allowed instead of ${job.insideCorner} mm`,
      job: { insideCorner },
    }));

const wiresOf = (job: Job, shop: Shop): readonly WhatIf[] =>
  shop.wires
    .filter((w) => w.id !== job.wire)
    .map((w) => ({
      kind: 'wire',
      sentence: `With ${w.name} wire${w.inStock ? '' : ', which would have to be ordered'}`,
      job: { wire: w.id },
    }));

/** As many as the machine takes; whether they lie flat on each other is for the shop to judge. */
const stacks = (job: Job, tallest: number): readonly WhatIf[] =>
  Array.from({ length: MOST_STACKED - 1 }, (_, i) => i + 2)
    .filter((stack) => job.stack === 1 && stack <= job.quantity && cutHeight({ ...job, stack }) <= tallest)
    .map((stack) => ({ kind: 'stack', sentence: `${stack} pieces on top of each other in one cut`, job: { stack } }));

const quantities = (job: Job): readonly WhatIf[] =>
  [2, 5, 10].map((factor) => ({
    kind: 'quantity',
    sentence: `${factor * job.quantity} pieces instead of ${job.quantity}`,
    job: { quantity: factor * job.quantity },
  }));
