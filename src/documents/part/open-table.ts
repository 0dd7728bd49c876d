/** The table of open lines on the set-up sheet: where the wire comes in and goes out, and what comes off. */
import type { Point } from '../../geometry/segment.ts';
import type { OpenCutPlan, OpenEnd } from '../../plan/open-line.ts';
import { type ControlUnit, MILLIMETRES } from '../../text/control-unit.ts';
import { mass, place } from '../../text/print/phrases.ts';
import { column, controlColumn, type PaperBlock } from '../paper.ts';
import { placesOf } from './job-tables.ts';

type Table = Extract<PaperBlock, { kind: 'table' }>;

export const openTable = (lines: readonly OpenCutPlan[], unit: ControlUnit = MILLIMETRES, datum?: Point): Table => ({
  kind: 'table',
  columns: [
    column('Line', 0.7),
    column('Kept', 1.5),
    controlColumn('Comes in', 3, 'left'),
    controlColumn('Goes out', 3, 'left'),
    controlColumn(`Tab ${unit.name}`, 0.9),
    column('Comes off', 1.7, 'right'),
  ],
  rows: lines.map(({ chain, kept, from, to, piece }) => [
    chain,
    kept === 'slit' ? 'both sides' : `its ${kept} side`,
    endSaid(from, unit, datum),
    endSaid(to, unit, datum),
    piece === undefined ? 'none' : place(piece.tab, unit),
    piece === undefined ? 'nothing' : `${piece.role}, ${mass(piece.mass.value)}`,
  ]),
  note: 'Left and right as the line runs in the drawing, from the first place to the second. Beside the block: threaded in the open.',
});

const endSaid = (end: OpenEnd, unit: ControlUnit, datum: Point | undefined): string => {
  const [x, y] = placesOf(end.at, unit, datum);
  const at = `X ${x} Y ${y}`;
  if (end.kind === 'edge') return `beside the block, ${at}`;
  if (end.kind === 'blind') return `blind end, ${at}`;
  return `hole Ø ${place(end.diameter, unit)}${end.origin === 'placed' ? ', to be drilled' : ''}, ${at}`;
};
