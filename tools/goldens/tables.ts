/** Pictures as tables of their numbers, with a hash of the picture: what a reviewer can judge line by line. */

import { createHash } from 'node:crypto';
import { perimeterOf } from '../../src/geometry/area.ts';
import { lengthOf } from '../../src/geometry/measure.ts';
import type { Point } from '../../src/geometry/segment.ts';
import { proofText } from '../../src/job/handout/proof-report.ts';
import type { OtherWays } from '../../src/physics/other-process/other-question.ts';
import type { ContourProof, OpenProof, Proof, Wanted } from '../../src/proof/proof.ts';
import { printPlain } from '../../src/text/print/print.ts';

/** Cells right-aligned but the first, in columns just wide enough; a table without rows is no table. */
export const columns = (title: string, heads: readonly string[], rows: readonly (readonly string[])[]): readonly string[] => {
  if (rows.length === 0) return [];
  const all = [heads, ...rows];
  const widths = heads.map((_, i) => Math.max(...all.map((row) => (row[i] ?? '').length)));
  const line = (row: readonly string[]): string =>
    `  ${row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))).join('  ')}`.trimEnd();
  return ['', title, ...all.map(line)];
};

/** Its size and hash: a picture that looks the same line by line has the same hash on every machine, since its places are rounded. */
export const fingerprint = (name: string, file: string): string =>
  `${name}: ${file.length} characters in ${file.split('\n').length} lines, SHA-256 ${createHash('sha256').update(file).digest('hex')}`;

/** What the proof's picture shows: the deviation along every contour, the corners that come out rounder, what came loose, the cuts. */
export const proofTable = (proof: Proof, wanted: readonly Wanted[]): string =>
  [
    proofText(proof),
    ...columns(
      'Along each contour, µm; plus is stock left, minus overcut',
      ['Contour', 'kept', 'state', 'length mm', 'stations', 'most left', 'at X', 'Y', 'most overcut', 'at X', 'Y', 'mean', 'off by over 1'],
      proof.contours.map((c, i) => contourRow(c, wanted[i])),
    ),
    ...columns(
      'Along each open line, µm',
      ['Line', 'kept', 'state', 'most left', 'at X', 'Y', 'most overcut', 'at X', 'Y'],
      (proof.open ?? []).map((o) => [o.chain, o.kept, o.state, ...extremes(o)]),
    ),
    ...columns(
      'Inside corners that come out rounder, mm',
      ['Contour', 'at X', 'Y', 'radius drawn', 'radius cut', 'left in the corner'],
      proof.contours.flatMap((c) =>
        c.rounded.map((r) => [c.loop, ...place(r.at), fixed(r.wanted, 4), fixed(r.radius, 4), fixed(r.left, 4)]),
      ),
    ),
    ...columns(
      'What comes loose',
      ['Piece', 'of', 'line', 'at X', 'Y', 'mm²', 'g', 'held'],
      proof.loose.map((l) => [
        l.role,
        l.loop ?? '-',
        `${l.block + 1}`,
        ...place(l.at),
        fixed(l.area, 2),
        fixed(l.mass * 1000, 2),
        l.held ? 'yes' : 'no',
      ]),
    ),
    ...columns('Cuts by setting', ['Setting', 'moves', 'length mm'], cutRows(proof)),
  ].join('\n');

const contourRow = (c: ContourProof, wanted: Wanted | undefined): readonly string[] => {
  // Made anew at every asking.
  const { profile } = c;
  const mean = profile.reduce((sum, p) => sum + p.deviation, 0) / Math.max(profile.length, 1);
  return [
    c.loop,
    wanted?.kept ?? '-',
    c.state,
    wanted === undefined ? '-' : fixed(perimeterOf(wanted.contour), 3),
    `${profile.length}`,
    ...extremes(c),
    signed(mean),
    `${profile.filter((p) => Math.abs(p.deviation) > 0.001).length}`,
  ];
};

const extremes = ({ leftMost, gougeMost }: Pick<ContourProof | OpenProof, 'leftMost' | 'gougeMost'>): readonly string[] => [
  signed(leftMost.amount),
  ...place(leftMost.at),
  signed(gougeMost.amount),
  ...place(gougeMost.at),
];

const cutRows = ({ cuts }: Proof): readonly (readonly string[])[] =>
  [...new Set(cuts.map((c) => c.setting))]
    .sort((a, b) => a - b)
    .map((setting) => {
      const lengths = cuts.filter((c) => c.setting === setting).map((c) => lengthOf(c.segment));
      return [
        `${setting}`,
        `${lengths.length}`,
        fixed(
          lengths.reduce((sum, l) => sum + l, 0),
          3,
        ),
      ];
    });

/** What the picture of the cut faces shows. */
export const edgesTable = ({ ways, wire, thickness, verdict }: OtherWays): string =>
  [
    `Cut faces of ${fixed(thickness, 3)} mm. ${printPlain(verdict)}`,
    ...columns(
      'Faces',
      ['Process', 'outcome', 'off the straight mm', 'slope °', 'Ra from', 'to µm'],
      [
        ...(wire === undefined
          ? []
          : [['wire', 'as planned', fixed(wire.formError / 1000, 5), fixed(wire.slope, 4), fixed(wire.ra, 3), fixed(wire.ra, 3)]]),
        ...ways.map(({ process, kind, edge }) => [
          process,
          kind,
          ...(edge === undefined
            ? ['-', '-', '-', '-']
            : [fixed(edge.perpendicularity.value, 4), fixed(edge.slope.value, 3), fixed(edge.ra.low, 2), fixed(edge.ra.high, 2)]),
        ]),
      ],
    ),
    ...ways.filter((w) => w.edge === undefined).map((w) => `  ${printPlain(w.sentence)}`),
  ].join('\n');

/** Never '-0.00'. */
const fixed = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? text.replace('-', '') : text;
};
const signed = (mm: number): string => {
  const text = fixed(mm * 1000, 2);
  return Number(text) > 0 ? `+${text}` : text;
};
const place = ({ x, y }: Point): readonly [string, string] => [fixed(x, 3), fixed(y, 3)];
