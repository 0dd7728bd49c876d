/** What single contours require and what is expected of them: none where all require the same. */
import type { CutFacts } from '../../result/outcome-facts.ts';
import { firstItem, lastItem } from '../../sequence/sequence.ts';
import { bare, contour, fixed, limit, list, significant, term, unitName } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type WrittenTable } from '../paper.ts';

/** Customers are shown no registers. */
export const classTable = (classes: NonNullable<CutFacts['plan']['classes']>, whose: 'shop' | 'customer'): WrittenTable => ({
  kind: 'table',
  columns: [
    column(words.contours, 2.4),
    ...(whose === 'shop' ? [column(words.registers, 1.4)] : []),
    column(words.profile, 1.3, 'right'),
    column(words.expected, 1.3, 'right'),
    column(words.finish, 1.1, 'right'),
    column(words.finishExpected, 1.1, 'right'),
  ],
  rows: classes.map(({ loops, asked, passes, accuracy, finish }) => [
    list(loops.map((id) => contour(id))),
    ...(whose === 'shop' ? [registersOf(passes.map((p) => p.register))] : []),
    limit(asked.tolerance, 'mm', fixed(4)),
    limit(Math.ceil(accuracy.value * 1e4 - 1e-6) / 1e4, 'mm', fixed(4)),
    bare(asked.finish, 'µm', { as: 'given' }),
    bare(finish.value, 'µm', significant(2)),
  ]),
  note: words.note,
});

const registersOf = (registers: readonly number[]): Text => {
  const [first, last] = [firstItem(registers), lastItem(registers)];
  return first === last ? symbols`${term(`D${first}`)}` : words.upTo(first, last);
};

const words = phrases('class-table', {
  contours: say`Contours`,
  registers: say`Registers`,
  profile: say`Required`,
  expected: say`Expected`,
  finish: say`Ra required ${{ unit: unitName('µm') }}`,
  finishExpected: say`Ra expected ${{ unit: unitName('µm') }}`,
  upTo: (first: number, last: number) => say`${{ first: term(`D${first}`) }} to ${{ last: term(`D${last}`) }}`,
  note: say`Profile per face; a size between two faces may be off by twice as much. What is cut in one pass has the finish and form of one pass.`,
});
