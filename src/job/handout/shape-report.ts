/** What a part by numbers comes to, for `kerfwright shape`: as text and as plain data. */

import { shapeTable } from '../../documents/part/shape-table.ts';
import { tableText, wrapped } from '../../documents/text.ts';
import type { WriteUnit } from '../../drawing/write/drawn.ts';
import type { Shape } from '../../shapes/shape.ts';
import { INCHES, MILLIMETRES } from '../../text/control-unit.ts';
import { findingText } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { stated } from '../../text/print/stated.ts';
import { figure, type Json } from './json-parts.ts';

export const shapeText = (shape: Shape, unit: WriteUnit): string =>
  [
    printPlain(shape.name),
    ...(shape.findings.length === 0 ? [] : [shape.findings.map((f) => wrapped(findingText(f), '  - ')).join('\n')]),
    tableText(shapeTable(shape.sizes, unit === 'inch' ? INCHES : MILLIMETRES, 'only told')),
    wrapped(
      `${shape.outlines.length === 1 ? 'One contour' : `${shape.outlines.length} contours`}${
        shape.fitDeviation > 0
          ? `, its true curves met within ${(shape.fitDeviation * 1000).toFixed(2)} µm by arcs`
          : ', all of lines and arcs'
      }.`,
      '  ',
    ),
  ].join('\n\n');

/** Lengths in mm. */
export const shapeJson = ({ name, sizes }: Pick<Shape, 'name' | 'sizes'>): Json => ({
  name: printPlain(name),
  sizes: sizes.map((s) => ({
    ...figure(s.figure),
    key: s.figure.key,
    name: s.figure.name,
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
