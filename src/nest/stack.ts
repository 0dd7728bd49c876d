/** Sheets cut in one stack: how many, how high they really stand with their burrs and bows, and what sets the limit. */

import { type Figure, given } from '../quantity/figure.ts';
import { apply, type Formula } from '../quantity/formula.ts';
import { saidBy } from '../quantity/source.ts';
import { atField, type Finding, remedy } from '../text/finding.ts';
import { count, fixed, mm, number, type Part, quantity, term, upTo } from '../text/part.ts';
import { phrases, say, sentences } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { find } from './findings.ts';

/** Lengths in mm. */
export interface StackQuestion {
  readonly thickness: number;
  /** How far one sheet is out of flat, lying free. */
  readonly flatness: number;
  /** Height of the burr on its worse side. */
  readonly burr: number;
  /** Between the guides, what the machine can take. */
  readonly tallest: number;
  /** Sheets wanted in all; the stack is no higher than that. As many as possible when left out. */
  readonly wanted?: number;
  /** Share of the bow that clamping or bolting the stack presses out, 0 up to 1; 0 when left out. */
  readonly pressedOut?: number;
}

/** 'gap': sheets lie so far apart that the flush breaks down between them, so that none are stacked. */
export type StackLimit = 'height' | 'gap' | 'wanted';

export type Stack =
  | {
      readonly kind: 'stacked';
      readonly sheets: number;
      /** mm with burrs and gaps: what must pass under the upper guide. */
      readonly height: Figure;
      /** mm of sheet alone: what the wire cuts. */
      readonly metal: Figure;
      /** mm between two sheets. */
      readonly gap: Figure;
      readonly limit: StackLimit;
      readonly findings: readonly Finding[];
    }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

/** mm between two sheets beyond which water escapes sideways and the flush breaks down; the wire may break there. Common practice, no source. */
export const WIDEST_GAP = 0.3;
/** Share of the height of a stack that gaps may take before it is worth a word. */
const UNEVEN = 0.1;

const sheetGap: Formula<'burr' | 'flatness' | 'pressedOut'> = {
  name: say('nest.sheet-gap')`gap between two sheets`,
  text: say('nest.sheet-gap.by')`gap = burr + out of flat · (1 - share pressed out)`,
  source: 'definition',
  unit: 'mm',
  inputs: {
    burr: { unit: 'mm', name: 'height of the burr' },
    flatness: { unit: 'mm', name: 'out of flat' },
    pressedOut: { unit: '1', name: 'share of the bow that is pressed out' },
  },
  compute: ({ burr, flatness, pressedOut }) => burr + flatness * (1 - pressedOut),
};

/** The lowest sheet stands off the table by a gap as well. */
const stackHeight: Formula<'sheets' | 'thickness' | 'gap'> = {
  name: say('nest.stack-height')`height of the stack`,
  text: say('nest.stack-height.by')`height = sheets · (thickness + gap)`,
  source: 'definition',
  unit: 'mm',
  inputs: {
    sheets: { unit: '1', name: 'sheets in the stack' },
    thickness: { unit: 'mm', name: 'thickness of a sheet' },
    gap: { unit: 'mm', name: 'gap between two sheets' },
  },
  compute: ({ sheets, thickness, gap }) => sheets * (thickness + gap),
};

const stackMetal: Formula<'sheets' | 'thickness'> = {
  name: say('nest.stack-metal')`metal in the stack`,
  text: say('nest.stack-metal.by')`metal = sheets · thickness`,
  source: 'definition',
  unit: 'mm',
  inputs: { sheets: { unit: '1', name: 'sheets in the stack' }, thickness: { unit: 'mm', name: 'thickness of a sheet' } },
  compute: ({ sheets, thickness }) => sheets * thickness,
};

/**
 * How many sheets are cut in one stack.
 *
 * A bowed sheet on a flat one stands off it by as much as it is out of flat; two bowed alike lie closer, two bowed against each
 * other up to twice as far, so that the gap carries half of the bow as its deviation. Lengths in mm; numbers that are missing,
 * negative or not finite are refused with the field they stand in.
 */
export const stackOf = (question: StackQuestion): Stack => {
  const bad = badFields(question);
  if (bad.length > 0) return { kind: 'refused', findings: bad };
  const figures = figuresOf(question);
  const each = question.thickness + figures.gap.value;
  // A stack that fills the machine exactly has room: rounding of the division must not cost a sheet.
  const room = Math.floor(question.tallest / each + 1e-9);
  if (room < 1) return { kind: 'refused', findings: [tooHigh(question, each)] };
  const { sheets, limit } = limited(question, room, figures.gap.value);
  const number = given({
    key: 'stack.sheets',
    name: say('nest.stack-sheets')`sheets in the stack`,
    value: sheets,
    unit: '1',
    basis: 'assumed',
    source: saidBy.stack,
  });
  const height = apply(stackHeight, { sheets: number, thickness: figures.thickness, gap: figures.gap }, { key: 'stack.height' });
  const metal = apply(stackMetal, { sheets: number, thickness: figures.thickness }, { key: 'stack.metal' });
  const stack = { sheets, height, metal, gap: figures.gap, limit };
  return { kind: 'stacked', ...stack, findings: findingsOf(question, stack) };
};

const limited = ({ wanted }: StackQuestion, room: number, gap: number): { readonly sheets: number; readonly limit: StackLimit } => {
  if (wanted === 1) return { sheets: 1, limit: 'wanted' };
  if (gap > WIDEST_GAP && room > 1) return { sheets: 1, limit: 'gap' };
  return wanted !== undefined && wanted <= room ? { sheets: wanted, limit: 'wanted' } : { sheets: room, limit: 'height' };
};

const figuresOf = ({ thickness, flatness, burr, pressedOut = 0 }: StackQuestion): { readonly thickness: Figure; readonly gap: Figure } => {
  const leaf = (key: string, name: Text, value: number, unit: 'mm' | '1', deviation = 0): Figure =>
    given({ key: `stack.${key}`, name, value, unit, deviation, basis: 'job', source: saidBy.job });
  return {
    thickness: leaf('thickness', say('nest.thickness')`thickness of a sheet`, thickness, 'mm'),
    gap: apply(
      sheetGap,
      {
        burr: leaf('burr', say('nest.burr')`height of the burr`, burr, 'mm'),
        flatness: leaf('flatness', say('nest.flatness')`out of flat`, flatness, 'mm', flatness / 2),
        pressedOut: leaf('pressedOut', say('nest.pressed-out')`share of the bow that is pressed out`, pressedOut, '1'),
      },
      { key: 'stack.gap' },
    ),
  };
};

type Found = Omit<Extract<Stack, { kind: 'stacked' }>, 'kind' | 'findings'>;

const findingsOf = (question: StackQuestion, { sheets, height, gap, limit }: Found): readonly Finding[] => {
  const { wanted, thickness } = question;
  const why: Readonly<Record<StackLimit, Text>> = {
    height: words.height(question.tallest),
    gap: words.gap(gap.value),
    wanted: words.wanted,
  };
  const stacks = wanted === undefined || wanted <= sheets ? undefined : words.stacks(wanted, Math.ceil(wanted / sheets));
  const share = gap.value / (thickness + gap.value);
  return [
    find('stack-sheets', sentences([(sheets === 1 ? words.single : words.stacked)(sheets, height.value, why[limit]), stacks])),
    ...(limit === 'gap'
      ? [
          find(
            'stack-flush',
            say`Sheets of ${{ sheet: tidy(thickness) }} would be ${{ gap: tidy(gap.value) }} apart; flushing breaks down across gaps wider than about ${{ widest: tidy(WIDEST_GAP) }}, and the wire may break there.`,
            {
              done: say`They are cut one by one.`,
              remedy: remedy(say`Remove the burrs, or press the stack flat between plates and state what share of the bow that removes.`, {
                field: 'pressedOut',
              }),
            },
          ),
        ]
      : []),
    ...(sheets > 1 && share > UNEVEN
      ? [
          find(
            'stack-uneven',
            say`${{ share: quantity(share * 100, '%', fixed(0)) }} of the height of the stack is burr and bow, not sheet.`,
            { remedy: remedy(say`Remove the burrs, or press the stack flat between plates.`, { field: 'pressedOut' }) },
          ),
        ]
      : []),
  ];
};

const words = phrases('stack-sheets', {
  single: (sheets: number, height: number, why: Text) =>
    say`${{ sheets: count(sheets, 'sheet') }} is cut at a time, ${{ height: tidy(height) }} high with burrs and bow: ${{ why }}.`,
  stacked: (sheets: number, height: number, why: Text) =>
    say`${{ sheets: count(sheets, 'sheet') }} are cut in one stack, ${{ height: tidy(height) }} high with burrs and bow: ${{ why }}.`,
  height: (tallest: number) => say`no more fit under ${{ most: tidy(tallest) }}`,
  gap: (gap: number) =>
    say`sheets would be ${{ gap: tidy(gap) }} apart, and beyond about ${{ widest: tidy(WIDEST_GAP) }} flushing breaks down between them`,
  wanted: say`no more are needed`,
  stacks: (wanted: number, stacks: number) => say`The ${{ sheets: count(wanted, 'sheet') }} take ${{ stacks: count(stacks, 'stack') }}.`,
});

const needs = phrases('stack-value', {
  above: say`a length above ${{ least: mm(0) }}`,
  orMore: say`a length of ${{ least: mm(0) }} or more`,
  whole: say`a whole number of sheets`,
  share: say`a share from 0 to 1`,
});

const tooHigh = ({ thickness, tallest }: StackQuestion, each: number): Finding =>
  find(
    'stack-too-high',
    say`One sheet of ${{ sheet: tidy(thickness) }} is ${{ height: tidy(each) }} high with its burr and bow; the machine takes ${{ most: tidy(tallest) }}.`,
    { place: atField('thickness') },
  );

const badFields = ({ thickness, flatness, burr, tallest, wanted = 1, pressedOut = 0 }: StackQuestion): readonly Finding[] => {
  const rows: readonly (readonly [field: string, good: boolean, need: Text, value: number])[] = [
    ['thickness', thickness > 0, needs.above, thickness],
    ['flatness', flatness >= 0, needs.orMore, flatness],
    ['burr', burr >= 0, needs.orMore, burr],
    ['tallest', tallest > 0, needs.above, tallest],
    ['wanted', Number.isInteger(wanted) && wanted >= 1, needs.whole, wanted],
    ['pressedOut', pressedOut >= 0 && pressedOut <= 1, needs.share, pressedOut],
  ];
  return rows
    .filter(([, good, , value]) => !good || !Number.isFinite(value))
    .map(([path, , need, value]) =>
      find('stack-value-unusable', say`'${{ field: term(path) }}' is ${{ need }}, not ${{ value: number(value) }}.`, {
        place: { kind: 'field', path },
      }),
    );
};

const tidy = (length: number): Part => mm(length, upTo(3));
