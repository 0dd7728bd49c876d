/** Other processes as text: the verdict, and each beside the wire. */

import type { OtherEdge, OtherWays } from '../../physics/other-process/other-question.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printPlain } from '../../text/print/print.ts';
import { column } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

export const otherWaysLines = (ways: OtherWays, { tableText, wrapped }: Printer = AS_IT_IS): readonly string[] => [
  wrapped(printPlain(ways.verdict), '  '),
  tableText({
    kind: 'table',
    columns: [
      column('Process', 1.4),
      column('Result', 1.8),
      column('Face within mm', 1, 'right'),
      column('Slope °', 1, 'right'),
      column('Ra µm', 1, 'right'),
      column('Time', 1.2, 'right'),
    ],
    rows: [...wireRow(ways), ...ways.ways.map((w) => [w.process, w.kind, ...cells(w.edge)])],
    note: 'Thermal cuts: ISO 9013 at the best range that a good machine can be expected to hold (common practice); Ra from Rz is only a band. Jet: published feed law at its best edge.',
  }),
  ...ways.ways.map((w) => wrapped(printPlain(w.sentence), '  - ')),
];

const wireRow = ({ wire }: OtherWays): readonly (readonly string[])[] => {
  if (wire === undefined) return [];
  return [['wire', 'planned', three(wire.formError / 1000), two(wire.slope), two(wire.ra), printDuration(wire.minutes)]];
};

const cells = (edge: OtherEdge | undefined): readonly string[] =>
  edge === undefined
    ? ['', '', '', '']
    : [
        three(edge.perpendicularity.value),
        two(edge.slope.value),
        `${two(edge.ra.low)} to ${two(edge.ra.high)}`,
        printDuration(edge.minutes.value),
      ];

const two = (x: number): string => Number(x.toPrecision(2)).toString();
const three = (x: number): string => Number(x.toPrecision(3)).toString();
