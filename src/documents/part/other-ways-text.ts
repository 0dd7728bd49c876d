/** Other processes as text: the verdict, and each beside the wire. */

import type { OtherEdge, OtherWays } from '../../result/shown.ts';
import { bare, type Digits, duration, type Part, quantities, significant, unitName } from '../../text/part.ts';
import { NOTHING, phrases, say } from '../../text/say.ts';
import { column, type Said } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

export const otherWaysLines = (ways: OtherWays, { tableText, wrapped }: Printer = AS_IT_IS): readonly string[] => [
  wrapped(ways.verdict, '  '),
  tableText({
    kind: 'table',
    columns: [
      column(words.process, 1.4),
      column(words.result, 1.8),
      column(words.face, 1, 'right'),
      column(words.slope, 1, 'right'),
      column(words.finish, 1, 'right'),
      column(words.time, 1.2, 'right'),
    ],
    rows: [...wireRow(ways), ...ways.ways.map((w) => [w.name, words[w.kind], ...cells(w.edge)])],
    note: words.note,
  }),
  ...ways.ways.map((w) => wrapped(w.sentence, '  - ')),
];

const wireRow = ({ wire }: OtherWays): readonly (readonly Said[])[] => {
  if (wire === undefined) return [];
  return [
    [
      wire.name,
      words.planned,
      bare(wire.formError / 1000, 'mm', THREE),
      bare(wire.slope, '°', TWO),
      bare(wire.ra, 'µm', TWO),
      duration(wire.minutes),
    ],
  ];
};

const cells = (edge: OtherEdge | undefined): readonly Said[] =>
  edge === undefined
    ? [NOTHING, NOTHING, NOTHING, NOTHING]
    : [
        bare(edge.perpendicularity.value, 'mm', THREE),
        bare(edge.slope.value, '°', TWO),
        { ...quantities([edge.ra.low, edge.ra.high], 'to', 'µm', TWO), bare: true } as Part,
        duration(edge.minutes.value),
      ];

const TWO: Digits = significant(2);
const THREE: Digits = significant(3);

const words = phrases('other-ways', {
  process: say`Process`,
  result: say`Result`,
  face: say`Face within ${{ unit: unitName('mm') }}`,
  slope: say`Slope ${{ unit: unitName('°') }}`,
  finish: say`Ra ${{ unit: unitName('µm') }}`,
  time: say`Time`,
  planned: say`planned`,
  'cannot cut it': say`cannot cut it`,
  'out of scope': say`out of scope`,
  'out of square': say`out of square`,
  'out of size': say`out of size`,
  'corners too round': say`corners too round`,
  'too rough': say`too rough`,
  'would do': say`would do`,
  note: say`Thermal cuts: ISO 9013, the best range a good machine holds (common practice); Ra from Rz is only a band. Jet: published feed law at its best edge.`,
});
