/** Regular polygons across flats: squares, hexagons and the like, as a punch or as an opening. */
import { z } from 'zod';
import { contour } from '../../geometry/contour.ts';
import { line, type Point, point } from '../../geometry/segment.ts';
import { given } from '../../quantity/figure.ts';
import { commonKeys, standBack } from '../common-keys.ts';
import { shapeKind } from '../kind.ts';

const schema = z.strictObject({
  kind: z.literal('polygon'),
  sides: z.int().min(3).max(64).default(6).describe('How many sides'),
  acrossFlats: z.number().positive().max(1000).describe('Between two opposite sides, or twice the distance from the middle to a side, mm'),
  metal: z.enum(['inside', 'outside']).default('inside').describe('inside: a piece of this form; outside: an opening of this form'),
  ...commonKeys,
});

/** A polygon with its first side at right angles to X. */
export const polygon = shapeKind({
  title: 'Polygon',
  what: 'Square, hexagon or another regular form by its size across flats',
  schema,
  example: { sides: 6, acrossFlats: 24 },
  make: ({ sides, acrossFlats, metal, ...common }) => {
    const half = acrossFlats / 2 + (metal === 'inside' ? -1 : 1) * standBack(common);
    const corners = cornersOf(sides, half);
    return {
      kind: 'made',
      shape: {
        name: `Polygon, ${sides} sides, ${acrossFlats} mm across flats`,
        outlines: [{ contour: contour(corners.map((c, i) => line(c, corners[(i + 1) % sides]!))), metal }],
        starts: [],
        sizes: [
          {
            figure: given({
              key: 'across-flats',
              name: 'across flats',
              value: 2 * half,
              unit: 'mm',
              basis: 'drawing',
              source: 'the request',
            }),
            taking: { kind: 'distance', from: point(-half, 0), to: point(half, 0) },
          },
        ],
        fitDeviation: 0,
        findings: [],
      },
    };
  },
});

const cornersOf = (sides: number, half: number): readonly Point[] => {
  const radius = half / Math.cos(Math.PI / sides);
  return Array.from({ length: sides }, (_, i) => {
    const angle = ((2 * i - 1) * Math.PI) / sides;
    return point(radius * Math.cos(angle), radius * Math.sin(angle));
  });
};
