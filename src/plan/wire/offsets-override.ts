/** Registers that the user sets: put in place of those worked out, and held against what the passes were expected to want. */

import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import { stockByOffset } from '../../physics/cut/pass-table.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { wireLeaf } from '../../physics/wire/wire-leaves.ts';
import { deviationOf, type Figure, given } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { itemAt, lastItem, lastOf, mapFilled, type NonEmpty } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, name, type Part, quantities, quantity, term, um } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';

export interface OffsetRows {
  readonly rows: NonEmpty<LadderRow>;
  /** mm by which the last register is off what was expected: the finished face is off the drawing by as much. None where it is not. */
  readonly shift?: Figure | undefined;
  readonly findings: readonly Finding[];
}

/** mm: registers nearer to what was expected are taken for the same. */
const SAME = 1e-9;

/** As many offsets as rows. */
export const withOffsets = (rows: NonEmpty<LadderRow>, offsets: readonly number[], wire: Wire): OffsetRows => {
  const low = offsets.findIndex((o) => o <= wire.diameter / 2);
  if (low >= 0) return { rows, findings: [belowWire(low, itemAt(offsets, low), wire)] };
  const d = wireLeaf(wire, 'diameter');
  const set = mapFilled(rows, (row, i) => rowWith(row, itemAt(offsets, i), i === rows.length - 1, d));
  const last = lastOf(rows);
  const shift = Math.abs(lastItem(offsets) - last.offset.value);
  return {
    rows: set,
    shift:
      shift <= SAME ? undefined : apply(faceShift, { offset: lastOf(set).offset, expected: expectedOf(last) }, { key: 'offset.shift' }),
    findings: [...farFindings(rows, offsets), ...idleFindings(offsets)],
  };
};

/** Beside the one set by hand, which bears its key. */
const expectedOf = ({ offset }: LadderRow): Figure => ({ ...offset, key: `${offset.key}-expected` });

/** The stock of the last pass stays 0 by meaning: nothing takes it off any more. */
const rowWith = (row: LadderRow, value: number, isLast: boolean, d: Figure): LadderRow => {
  if (Math.abs(value - row.offset.value) <= SAME) return row;
  const { key, name } = row.offset;
  const offset = given({
    key,
    name: say('wire.by-hand')`${{ offset: name }}, set by hand`,
    value,
    unit: 'mm',
    basis: 'job',
    source: saidBy.job,
  });
  if (isLast) return { ...row, offset };
  return { ...row, offset, stock: apply(stockByOffset, { offset, d, gap: row.gap }, { key: row.stock.key, name: row.stock.name }) };
};

const faceShift: Formula<'offset' | 'expected'> = {
  name: say('wire.face-shift')`shift of the finished face by a register set by hand`,
  text: say('wire.face-shift.by')`shift = |offset - expected offset|`,
  source: 'definition',
  unit: 'mm',
  inputs: { offset: { unit: 'mm', name: 'offset set by hand' }, expected: { unit: 'mm', name: 'offset expected' } },
  compute: ({ offset, expected }) => Math.abs(offset - expected),
  bends: true,
};

const place = (i: number) => ({ kind: 'field', path: `offsets.${i}` }) as const;

const belowWire = (i: number, offset: number, wire: Wire): Finding =>
  find(
    'offset-below-wire',
    say`The register of pass ${{ pass: count(i + 1) }} is set to ${{ offset: quantity(offset, 'mm') }} by hand; half the ${{ wire: name(wire.name) }} wire alone is ${{ half: quantity(wire.diameter / 2, 'mm') }}.`,
    {
      place: place(i),
      remedy: remedy(say`Set half the wire, its gap and the stock for later passes, or leave ${{ field: term('offsets') }} out.`, {
        field: place(i).path,
      }),
    },
  );

/** mm that nobody needs to be told of. */
const UNSEEN = 0.002;

const farFindings = (rows: NonEmpty<LadderRow>, offsets: readonly number[]): readonly Finding[] =>
  rows.flatMap(({ offset: expected }, i) => {
    const off = itemAt(offsets, i) - expected.value;
    if (Math.abs(off) <= Math.max(UNSEEN, 2 * deviationOf(expected))) return [];
    const so = i === rows.length - 1 ? (off > 0 ? words.stays : words.missing) : off > 0 ? words.more : words.less;
    return [
      find(
        'offset-far',
        say`The register of pass ${{ pass: count(i + 1) }} is set to ${{ offset: quantity(itemAt(offsets, i), 'mm') }} by hand, where ${{ expected: withDeviation(expected) }} is expected: ${{ so: so(1000 * Math.abs(off)) }}.`,
        {
          place: place(i),
          remedy: remedy(say`Keep it if a trial cut gave it; otherwise leave ${{ field: term('offsets') }} out.`, { field: 'offsets' }),
        },
      ),
    ];
  });

/** To the tenth of a micrometre, as registers are set. */
const withDeviation = (figure: Figure): Part => quantities([figure.value, deviationOf(figure)], '±', 'mm', fixed(4));

const words = phrases('offset', {
  stays: (off: number): Text => say`${{ metal: um(off, fixed(1)) }} of stock left on the finished face`,
  missing: (off: number): Text => say`${{ metal: um(off, fixed(1)) }} of overcut on the finished face`,
  more: (off: number): Text => say`it leaves ${{ metal: um(off, fixed(1)) }} more for the later passes`,
  less: (off: number): Text => say`it leaves ${{ metal: um(off, fixed(1)) }} less for the later passes`,
});

const idleFindings = (offsets: readonly number[]): readonly Finding[] =>
  offsets.flatMap((offset, i) => {
    const before = offsets[i - 1];
    return before === undefined || offset < before
      ? []
      : [
          find(
            'pass-takes-nothing',
            say`Pass ${{ pass: count(i + 1) }} runs ${{ where: offset === before ? where.alike : where.beyond }} ${{ before: count(i) }} ran, since its register is set to ${{ offset: quantity(offset, 'mm') }} by hand and the other to ${{ other: quantity(before, 'mm') }}: it removes no more than its own gap reaches.`,
            { place: place(i) },
          ),
        ];
  });

const where = phrases('pass-runs', { alike: say`where pass`, beyond: say`further out than pass` });
