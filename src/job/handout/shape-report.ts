/** What a part by numbers comes to, for `kerfwright shape`: as text and as plain data. */

import { shapeTable } from '../../documents/part/shape-table.ts';
import { tableText, wrapped } from '../../documents/text.ts';
import type { WriteUnit } from '../../drawing/write/drawn.ts';
import type { Shape } from '../../shapes/shape.ts';
import { INCHES, MILLIMETRES } from '../../text/control-unit.ts';
import { findingInFull } from '../../text/located.ts';
import { count, fixed, type Part, um } from '../../text/part.ts';
import { printPlain } from '../../text/print/print.ts';
import { stated } from '../../text/print/stated.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { figure, type Json } from './json-parts.ts';

export const shapeText = (shape: Shape, unit: WriteUnit): string =>
  [
    printPlain(shape.name),
    ...(shape.findings.length === 0 ? [] : [shape.findings.map((f) => wrapped(findingInFull(f), '  - ')).join('\n')]),
    tableText(shapeTable(shape.sizes, unit === 'inch' ? INCHES : MILLIMETRES, 'only told')),
    wrapped(outlinesOf(shape), '  '),
  ].join('\n\n');

const outlinesOf = ({ outlines, fitDeviation }: Shape): Text => {
  const contours = outlines.length === 1 ? words.one : words.several(outlines.length);
  return fitDeviation > 0 ? words.curved(contours, um(fitDeviation * 1000, fixed(2))) : words.exact(contours);
};

const words = phrases('shape-report', {
  one: say`One contour`,
  several: (contours: number) => say`${{ contours: count(contours, 'contour') }}`,
  curved: (contours: Text, within: Part) => say`${{ contours }}, true curves replaced by arcs within ${{ within }}.`,
  exact: (contours: Text) => say`${{ contours }}, all of lines and arcs.`,
});

/** Lengths in mm. */
export const shapeJson = ({ name, sizes }: Pick<Shape, 'name' | 'sizes'>): Json => ({
  name: printPlain(name),
  sizes: sizes.map((s) => ({
    ...figure(s.figure),
    key: s.figure.key,
    name: printPlain(s.figure.name),
    limits: s.limits,
  })),
});

export const wholeShapeJson = (shape: Shape): Json => ({
  ...shapeJson(shape),
  fitDeviation: shape.fitDeviation,
  insideRadius: shape.insideRadius,
  starts: shape.starts,
  findings: shape.findings.map((f) => stated(f)),
  outlines: shape.outlines,
});
