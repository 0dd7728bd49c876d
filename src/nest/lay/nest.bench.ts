/** How long the named set 'mixed sixteen' takes to be nested against its budget, what it yields, and how time grows with the pieces. */
import type { BenchRow } from '../../../tools/bench-row.ts';
import { rectangle } from '../../geometry/example-shapes.fixture.ts';
import type { LaidNest } from '../nest-outcome.ts';
import type { NestQuestion } from '../nest-question.ts';
import { MIXED_SIXTEEN } from './mixed-parts.fixture.ts';
import { nest } from './nest.ts';

/** ms allowed for 60 pieces, and the yield without which they count as never done. */
const BUDGET = 20_000;
const YIELD = 0.75;

const timed = (question: NestQuestion): { readonly ms: number; readonly laid: LaidNest } => {
  const start = performance.now();
  const laid = nest(question);
  if (laid.kind === 'refused') throw new Error('the named set is refused');
  return { ms: performance.now() - start, laid };
};

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

const told = ({ placed, yield: share, bound }: LaidNest): string =>
  `${placed.length} pieces, yield ${percent(share)} of the plate, where area alone would allow ${percent(bound)}`;

/** Four times the pieces on a plate twice as long and twice as high, with the same work: what is not counted as work grows. */
const fourfold: NestQuestion = {
  ...MIXED_SIXTEEN,
  plate: rectangle(1040, 928),
  pieces: MIXED_SIXTEEN.pieces.map((p) => ({ ...p, quantity: 4 * p.quantity })),
};

export const rows = async (): Promise<readonly BenchRow[]> => {
  const sixty = timed(MIXED_SIXTEEN);
  const many = timed(fourfold);
  const rowsOnly = timed({ ...MIXED_SIXTEEN, manner: 'rows' });
  return [
    {
      name: "60 pieces of the set 'mixed sixteen' nested by shape, at least 75 % yield",
      ours: sixty.laid.yield >= YIELD ? sixty.ms : Number.POSITIVE_INFINITY,
      unit: 'ms',
      peers: [{ name: 'the budget', value: BUDGET, atLeast: 1 }],
      note: told(sixty.laid),
    },
    {
      name: '240 pieces on a plate four times as large',
      ours: many.ms,
      unit: 'ms',
      peers: [{ name: '60 pieces', value: sixty.ms }],
      note: `${(many.ms / sixty.ms).toFixed(1)} times as long for 4 times the pieces; ${told(many.laid)}`,
    },
    {
      name: "the set 'mixed sixteen' in rows",
      ours: rowsOnly.ms,
      unit: 'ms',
      peers: [{ name: 'by shape', value: sixty.ms }],
      note: told(rowsOnly.laid),
    },
  ];
};
