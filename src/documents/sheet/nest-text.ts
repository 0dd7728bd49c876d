/** A nest told in words and tables: what was laid, what is left over, yield, mass, price, stack. */

import type { NestFacts } from '../../result/nest-facts.ts';
import type { Finding } from '../../text/finding.ts';
import { printMoney } from '../../text/print/money.ts';
import { findingText, mass, place } from '../../text/print/phrases.ts';
import { column } from '../paper.ts';
import { nestSentence } from '../part/nest-sentence.ts';
import { tableText, wrapped } from '../text.ts';

export const nestText = (facts: NestFacts): string =>
  [
    wrapped(nestSentence(facts), ''),
    findingLines(facts.findings),
    `Pieces\n${piecesTable(facts)}`,
    `Metal\n${metalLines(facts)
      .map((l) => wrapped(l, '  '))
      .join('\n')}`,
    `Stack\n${wrapped(stackSentence(facts), '  ')}`,
  ]
    .filter((part) => part !== '')
    .join('\n\n');

const piecesTable = ({ rows, currency, pieces }: NestFacts): string =>
  tableText({
    kind: 'table',
    columns: [
      column('Piece', 3),
      column('Numbers', 2),
      column('Laid', 1, 'right'),
      column('Left over', 1, 'right'),
      column('Mass each', 1, 'right'),
      ...(currency === undefined ? [] : [column('Metal each', 1, 'right')]),
    ],
    rows: rows.map((r) => [
      r.piece,
      ranges(pieces.filter((p) => p.piece === r.piece).map((p) => p.number)),
      String(r.laid),
      r.left === 0 ? '' : String(r.left),
      mass(r.mass.value),
      ...(currency === undefined ? [] : [r.share === undefined || r.laid === 0 ? '' : printMoney(r.share.value, currency)]),
    ]),
    note: currency === undefined ? undefined : 'Metal each: the share of the whole plate, scrap and all, by the mass of the piece.',
  });

/** '1-3, 7' for 1, 2, 3, 7. */
const ranges = (numbers: readonly number[]): string =>
  numbers
    .reduce<[number, number][]>((found, n) => {
      const last = found.at(-1);
      if (last !== undefined && last[1] === n - 1) last[1] = n;
      else found.push([n, n]);
      return found;
    }, [])
    .map(([from, to]) => (from === to ? String(from) : `${from}-${to}`))
    .join(', ');

const metalLines = ({ plateMass, piecesMass, scrapMass, platePrice, currency, suppliedBy }: NestFacts): readonly string[] => [
  `The plate weighs ${mass(plateMass.value)}: ${mass(piecesMass.value)} of pieces, ${mass(scrapMass.value)} of kerf, slugs and scrap.`,
  suppliedBy === 'customer'
    ? 'The customer brings the metal.'
    : platePrice === undefined || currency === undefined
      ? 'Nobody has said what the metal costs: give price in the nest file, or materialPrices in the rates of the shop, per kg.'
      : `Its metal costs ${printMoney(platePrice.value, currency)}.`,
];

/** How many sheets, how high, and what they could be. */
const stackSentence = ({ stack, thickness }: NestFacts): string => {
  const { sheets, most, height, gap } = stack;
  const could = most > sheets ? ` Up to ${most} would go under the upper guide.` : '';
  if (sheets === 1) return `One plate at a time, ${place(thickness)} mm high.${could}`;
  return `${sheets} sheets in one stack, ${Number(height.value.toFixed(2))} mm high with ${Number(gap.value.toFixed(3))} mm between two of them for bow and burr.${could}`;
};

/** Nothing was laid. */
export const nestRefusedText = (findings: readonly Finding[]): string => `No. ${findings.map(findingText).join(' ')}`;

const findingLines = (findings: readonly Finding[]): string =>
  findings.length === 0
    ? ''
    : `Findings\n${findings.map((f) => wrapped(findingText(f), `  ${f.severity === 'refusal' ? 'No' : f.severity === 'warning' ? 'Warning' : 'Note'}: `)).join('\n')}`;
