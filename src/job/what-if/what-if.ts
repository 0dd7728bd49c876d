/** The same job under one change: what it would be if the customer, or the shop, gave way a little. */
import { count, limit, name, type Part, quantity } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { cutHeight, type Job } from '../job.ts';
import type { Shop } from '../shop.ts';

export interface WhatIf {
  /** 'finish', 'tolerance' ...: what is changed. */
  readonly kind: 'finish' | 'tolerance' | 'inside corners' | 'outside corners' | 'core' | 'wire' | 'stack' | 'quantity' | 'holes';
  /** As one would say it to the customer. */
  readonly sentence: Text;
  readonly job: Partial<Job>;
  /** One of the few that nearly always save something. */
  readonly likely?: boolean;
  /** The customer brings the start holes. */
  readonly holesDrilled?: boolean;
}

/** Roughness classes in the order of ISO 1302 grades, µm: a class coarser or finer is the next of these. */
const CLASSES = [0.1, 0.2, 0.4, 0.8, 1.6, 3.2, 6.3] as const;
const MOST_STACKED = 4;

const words = phrases('what-if', {
  drilled: say`You supply the block with the start holes drilled`,
  coarser: (finish: Part, asked: Part) => say`One class coarser: Ra ${{ finish }} instead of ${{ asked }}`,
  finer: (finish: Part, asked: Part) => say`One class finer: Ra ${{ finish }} instead of ${{ asked }}`,
  tolerance: (tolerance: number, asked: number) =>
    say`A profile tolerance of ${{ tolerance: limit(tolerance) }} instead of ${{ asked: limit(asked) }}`,
  corners: (radius: number, asked: number) =>
    say`Inside corner radius of ${{ radius: quantity(radius, 'mm') }} allowed instead of ${{ asked: quantity(asked, 'mm') }}`,
  wire: (wire: string) => say`With ${{ wire: name(wire) }} wire`,
  wireToOrder: (wire: string) => say`With ${{ wire: name(wire) }} wire, to be ordered`,
  stack: (pieces: number) => say`${{ pieces: count(pieces, 'piece') }} stacked in one cut`,
  quantity: (pieces: number, asked: number) => say`${{ pieces: count(pieces, 'piece') }} instead of ${{ asked: count(asked) }}`,
});

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
  sentence: words.drilled,
  job: {},
  holesDrilled: true,
  likely: true,
};

const finishes = (job: Job): readonly WhatIf[] => {
  const coarser = CLASSES.find((c) => c > job.finish * 1.01);
  const finer = CLASSES.findLast((c) => c < job.finish * 0.99);
  const change = (finish: number | undefined, word: 'coarser' | 'finer'): readonly WhatIf[] =>
    finish === undefined
      ? []
      : [
          {
            kind: 'finish',
            sentence: words[word](quantity(finish, 'µm'), quantity(job.finish, 'µm')),
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
      sentence: words.tolerance(tolerance, job.tolerance),
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
      sentence: words.corners(insideCorner, job.insideCorner),
      job: { insideCorner },
    }));

const wiresOf = (job: Job, shop: Shop): readonly WhatIf[] =>
  shop.wires
    .filter((w) => w.id !== job.wire)
    .map((w) => ({
      kind: 'wire',
      sentence: (w.inStock ? words.wire : words.wireToOrder)(w.name),
      job: { wire: w.id },
    }));

/** As many as the machine takes; whether they lie flat on each other is for the shop to judge. */
const stacks = (job: Job, tallest: number): readonly WhatIf[] =>
  Array.from({ length: MOST_STACKED - 1 }, (_, i) => i + 2)
    .filter((stack) => job.stack === 1 && stack <= job.quantity && cutHeight({ ...job, stack }) <= tallest)
    .map((stack) => ({ kind: 'stack', sentence: words.stack(stack), job: { stack } }));

const quantities = (job: Job): readonly WhatIf[] =>
  [2, 5, 10].map((factor) => ({
    kind: 'quantity',
    sentence: words.quantity(factor * job.quantity, job.quantity),
    job: { quantity: factor * job.quantity },
  }));
