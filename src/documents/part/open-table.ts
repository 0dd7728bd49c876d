/** The table of open lines on the set-up sheet: where the wire comes in and goes out, and what comes off. */
import type { OpenCutPlan, OpenEnd, Point } from '../../result/shown.ts';
import { type ControlUnit, MILLIMETRES } from '../../text/control-unit.ts';
import { contour, mass, type Part, term } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type WrittenTable } from '../paper.ts';
import { placesOf } from './job-tables.ts';
import { onBlock } from './numbers.ts';

export const openTable = (lines: readonly OpenCutPlan[], unit: ControlUnit = MILLIMETRES, datum?: Point): WrittenTable => ({
  kind: 'table',
  columns: [
    column(words.line, 0.7),
    column(words.kept, 1.5),
    column(words.comesIn, 3),
    column(words.goesOut, 3),
    column(words.tab(unit), 0.9, 'right'),
    column(words.comesOff, 1.7, 'right'),
  ],
  rows: lines.map(({ chain, kept, from, to, piece }) => [
    contour(chain),
    words[kept],
    endSaid(from, unit, datum),
    endSaid(to, unit, datum),
    piece === undefined ? words.none : onBlock(piece.tab, unit),
    piece === undefined ? words.nothing : words[piece.role](piece.mass.value),
  ]),
  note: words.note,
});

const endSaid = (end: OpenEnd, unit: ControlUnit, datum: Point | undefined): Text => {
  const [x, y] = placesOf(end.at, unit, datum);
  const at = symbols`X ${x} Y ${y}`;
  if (end.kind === 'edge') return words.beside(at);
  if (end.kind === 'blind') return words.blind(at);
  return (end.origin === 'placed' ? words.toDrill : words.hole)(onBlock(end.diameter, unit), at);
};

const words = phrases('open-table', {
  line: say`Line`,
  kept: say`Kept`,
  comesIn: say`Wire enters`,
  goesOut: say`Wire leaves`,
  tab: ({ name }: ControlUnit) => say`Tab ${{ unit: term(name) }}`,
  comesOff: say`Comes off`,
  slit: say`both sides`,
  left: say`its left side`,
  right: say`its right side`,
  none: say`none`,
  nothing: say`nothing`,
  part: (kilograms: number) => say`part, ${{ mass: mass(kilograms) }}`,
  waste: (kilograms: number) => say`waste, ${{ mass: mass(kilograms) }}`,
  beside: (at: Text) => say`beside the block, ${{ at }}`,
  blind: (at: Text) => say`blind end, ${{ at }}`,
  hole: (diameter: Part, at: Text) => say`hole Ø ${{ diameter }}, ${{ at }}`,
  toDrill: (diameter: Part, at: Text) => say`hole Ø ${{ diameter }}, to be drilled, ${{ at }}`,
  note: say`Left and right as the line runs in the drawing, from the first end to the second. Beside the block: threaded clear of the block.`,
});
