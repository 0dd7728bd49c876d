/** A nest told in words and tables: what was laid, what is left over, yield, mass, price, stack. */

import type { NestFacts, PieceRow } from '../../result/nest-facts.ts';
import type { Finding } from '../../text/finding.ts';
import { findingInFull } from '../../text/located.ts';
import { count, list, mass, mm, money, name, type Part, term, upTo } from '../../text/part.ts';
import { NOTHING, phrases, say, sentences, symbols } from '../../text/say.ts';
import { severityLead } from '../../text/severity.ts';
import type { Text } from '../../text/text.ts';
import { column, type Said, type WrittenTable } from '../paper.ts';
import { nestSentence } from '../part/nest-sentence.ts';
import { length } from '../part/numbers.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

export const nestText = (facts: NestFacts, printer: Printer = AS_IT_IS): string => {
  const { said, tableText, wrapped } = printer;
  return [
    wrapped(nestSentence(facts), ''),
    findingLines(facts.findings, printer),
    [said(words.pieces), tableText(piecesTable(facts))].join('\n'),
    [said(words.metal), ...metalSentences(facts).map((s) => wrapped(s, '  '))].join('\n'),
    [said(words.stack), wrapped(stackSentence(facts), '  ')].join('\n'),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
};

const piecesTable = (facts: NestFacts): WrittenTable => {
  const { rows, currency } = facts;
  const columns = [
    column(words.piece, 3),
    column(words.numbers, 2),
    column(words.laid, 1, 'right'),
    column(words.leftOver, 1, 'right'),
    column(words.massEach, 1, 'right'),
  ];
  if (currency === undefined) return { kind: 'table', columns, rows: rows.map((r) => cells(r, facts)) };
  return {
    kind: 'table',
    columns: [...columns, column(words.metalEach, 1, 'right')],
    rows: rows.map((r) => [...cells(r, facts), r.share === undefined || r.laid === 0 ? NOTHING : money(r.share.value, currency)]),
    note: words.note,
  };
};

const cells = (row: PieceRow, { pieces }: NestFacts): readonly Said[] => [
  name(row.piece),
  ranges(pieces.filter((p) => p.piece === row.piece).map((p) => p.number)),
  count(row.laid),
  row.left === 0 ? NOTHING : count(row.left),
  mass(row.mass.value),
];

/** '1-3, 7' for 1, 2, 3, 7. */
const ranges = (numbers: readonly number[]): Part =>
  list(
    numbers
      .reduce<[number, number][]>((found, n) => {
        const last = found.at(-1);
        if (last !== undefined && last[1] === n - 1) last[1] = n;
        else found.push([n, n]);
        return found;
      }, [])
      .map(([from, to]) => (from === to ? count(from) : symbols`${count(from)}-${count(to)}`)),
  );

const metalSentences = (facts: NestFacts): readonly Text[] => [words.weighs(facts), metalPrice(facts)];

const metalPrice = ({ platePrice, currency, suppliedBy }: NestFacts): Text => {
  if (suppliedBy === 'customer') return words.brought;
  return platePrice === undefined || currency === undefined ? words.noPrice : words.costs(money(platePrice.value, currency));
};

/** How many sheets, how high, and what they could be. */
const stackSentence = ({ stack, thickness }: NestFacts): Text => {
  const { sheets, most, height, gap } = stack;
  const laid = sheets === 1 ? words.onePlate(length(thickness)) : words.sheets(sheets, mm(height.value, upTo(2)), length(gap.value));
  return sentences([laid, most > sheets ? words.couldBe(most) : undefined]);
};

/** Nothing was laid. */
export const nestRefusedText = (findings: readonly Finding[], { said }: Printer = AS_IT_IS): string =>
  said(words.refused(sentences(findings.map(findingInFull))));

const findingLines = (findings: readonly Finding[], { said, wrapped }: Printer): string => {
  if (findings.length === 0) return '';
  return [said(words.findings), ...findings.map((f) => wrapped(findingInFull(f), `  ${said(severityLead(f.severity))} `))].join('\n');
};

const words = phrases('nest-text', {
  findings: say`Findings`,
  pieces: say`Pieces`,
  metal: say`Metal`,
  stack: say`Stack`,
  piece: say`Piece`,
  numbers: say`Numbers`,
  laid: say`Laid`,
  leftOver: say`Not laid`,
  massEach: say`Mass each`,
  metalEach: say`Metal each`,
  note: say`Metal each: share of the whole plate, scrap included, by mass of the piece.`,
  weighs: ({ plateMass, piecesMass, scrapMass }: NestFacts) =>
    say`The plate weighs ${{ plate: mass(plateMass.value) }}: ${{ pieces: mass(piecesMass.value) }} of pieces, ${{ scrap: mass(scrapMass.value) }} of kerf, slugs and scrap.`,
  brought: say`The customer supplies the metal.`,
  noPrice: say`No metal price is given: set ${{ price: term('price') }} in the nest file, or ${{ prices: term('materialPrices') }} in the rates of the shop, per kg.`,
  costs: (price: Part) => say`The metal costs ${{ price }}.`,
  onePlate: (high: Part) => say`One plate at a time, ${{ high }} thick.`,
  sheets: (sheets: number, high: Part, gap: Part) =>
    say`${{ sheets: count(sheets, 'sheet') }} in one stack, ${{ high }} high with ${{ gap }} between sheets for bow and burr.`,
  couldBe: (sheets: number) => say`Up to ${{ sheets: count(sheets) }} would fit under the upper guide.`,
  refused: (why: Text) => say`No. ${{ why }}`,
});
