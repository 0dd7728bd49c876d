/** What is written as a drawing is read back as the same contours, by our own reader and by a parser of somebody else's. */
import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf, boundsOfChain, mergedBounds, perimeterOf } from '../../geometry/area.ts';
import { type Contour, contour } from '../../geometry/contour.ts';
import { disc, star } from '../../geometry/example-shapes.fixture.ts';
import { pointAt } from '../../geometry/measure.ts';
import { lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import { arc, line } from '../../geometry/segment.ts';
import { inTurn, rotation, transformChain, translation } from '../../geometry/transform.ts';
import { readDrawing } from '../read/read-drawing.ts';
import type { WriteUnit } from './drawn.ts';
import { writeDxf } from './dxf.ts';
import { writeSvg } from './svg.ts';

const radius = fc.double({ min: 8, max: 14, noNaN: true });
const bulge = fc.integer({ min: -100, max: 200 }).map((k) => k / 1000);
const wheel = fc
  .tuple(fc.array(radius, { minLength: 5, maxLength: 16 }), fc.array(bulge, { minLength: 1, maxLength: 4 }))
  .map(([radii, bulges]) => star(radii, bulges));
/** A keyhole: the arc goes round by more than three quarters of a turn. */
const keyhole = fc.double({ min: 0.05, max: 0.6, noNaN: true }).map((half) => {
  const at = (angle: number) => ({ x: 10 * Math.cos(angle), y: 10 * Math.sin(angle) });
  const [a, b] = [at(half), at(-half)];
  return contour([
    arc(a, b, { x: 0, y: 0 }, 2 * (Math.PI - half)),
    line(b, { x: 16, y: b.y }),
    line({ x: 16, y: b.y }, { x: 16, y: a.y }),
    line({ x: 16, y: a.y }, a),
  ]);
});
const round = radius.map((r) => disc(0.1, -0.2, r));
const anyShape: fc.Arbitrary<Contour> = fc.oneof(wheel, keyhole, round);
const turn = fc.double({ min: 0, max: 6, noNaN: true });
/** Side by side, 40 mm apart, so that no loop lies in another. */
const sheet = fc
  .array(fc.tuple(anyShape, turn), { minLength: 1, maxLength: 4 })
  .map((shapes) => shapes.map(([shape, angle], i) => transformChain(inTurn(rotation(angle), translation(40 * i, 7 * i)), shape)));
const unit = fc.constantFrom<WriteUnit>('mm', 'inch');
const runs = { seed: 4_711, numRuns: 60 };

/** Farthest that any place of the one lies from the other, looked at in seven places of each segment. */
const apart = (one: Contour, other: Contour): number => {
  const lookup = lookupOf(other);
  return Math.max(...one.segments.flatMap((s) => [0, 1, 2, 3, 4, 5, 6].map((k) => nearestIn(lookup, pointAt(s, k / 6)).distance)));
};

const readBack = (text: string, name: string): readonly Contour[] =>
  readDrawing(new TextEncoder().encode(text), name, {})
    .loops.map((l) => l.contour)
    .toSorted((a, b) => boundsOfChain(a).minX - boundsOfChain(b).minX);

const sameAs = (read: readonly Contour[], written: readonly Contour[], within: number): void => {
  expect(read.length).toBe(written.length);
  const size = 40 * written.length;
  read.forEach((c, i) => {
    expect(apart(c, there(written[i]))).toBeLessThan(within * size);
    expect(apart(there(written[i]), c)).toBeLessThan(within * size);
    expect(Math.abs(Math.abs(areaOf(c)) - Math.abs(areaOf(there(written[i]))))).toBeLessThan(within * size * perimeterOf(c));
  });
};

describe('a drawing that is written', () => {
  it('is read back from DXF within a billionth of its size, arcs as arcs', () => {
    fc.assert(
      fc.property(sheet, unit, (contours, u) => {
        const text = writeDxf(
          contours.map((chain) => ({ chain })),
          u,
        );
        const read = readBack(text, 'a.dxf');
        sameAs(read, contours, 1e-9);
        for (const [i, c] of read.entries())
          expect(c.segments.filter((s) => s.kind === 'arc').length > 0).toBe(there(contours[i]).segments.some((s) => s.kind === 'arc'));
      }),
      runs,
    );
  });

  it('is read back from SVG within a billionth of its size', () => {
    fc.assert(
      fc.property(sheet, unit, (contours, u) => {
        const text = writeSvg(
          contours.map((chain) => ({ chain })),
          u,
        );
        // A picture has no zero of its own: it is read from its lower left corner.
        const { minX, minY } = mergedBounds(contours.map(boundsOfChain));
        const moved = contours.map((c) => transformChain(translation(-minX, -minY), c));
        sameAs(readBack(text, 'a.svg'), moved, 1e-9);
      }),
      runs,
    );
  });

  it('is understood by another parser with the same corners, bulges and circles', () => {
    fc.assert(
      fc.property(sheet, (contours) => {
        const text = writeDxf(
          contours.map((chain) => ({ chain, layer: 'PART' })),
          'mm',
        );
        const entities = new DxfParser().parseSync(text)?.entities ?? [];
        expect(entities.map((e) => e.layer)).toEqual(contours.map(() => 'PART'));
        entities.forEach((e, i) => {
          const { segments } = there(contours[i]);
          const seen = e as unknown as {
            type: string;
            radius: number;
            shape: boolean;
            vertices: { x: number; y: number; bulge?: number }[];
          };
          if (seen.type === 'CIRCLE') {
            expect(seen.radius).toBe((segments[0] as { radius: number }).radius);
            return;
          }
          expect(seen.shape).toBe(true);
          expect(there(seen.vertices[0]).x).toBe(there(segments[0]).from.x);
          const sweeps = seen.vertices.reduce((sum, v) => sum + 4 * Math.atan(v.bulge ?? 0), 0);
          expect(sweeps).toBeCloseTo(
            segments.reduce((sum, s) => sum + (s.kind === 'arc' ? s.sweep : 0), 0),
            9,
          );
        });
      }),
      runs,
    );
  });

  it('bears every handle once and none beyond its seed', () => {
    const text = writeDxf([{ chain: disc(0, 0, 3), layer: 'A*B' }, { chain: star([9, 12], [0.1]) }], 'inch');
    const lines = text.split('\n').map((l) => l.trim());
    // The file ends with a line break: what follows it is no pair.
    const pairs = lines.flatMap((code, i) => {
      const value = lines[i + 1];
      return i % 2 === 0 && value !== undefined ? [[code, value] as const] : [];
    });
    const seed = there(pairs[pairs.findIndex(([, v]) => v === '$HANDSEED') + 1])[1];
    const handles = pairs.filter(([code, v], i) => code === '5' && v !== seed && i > 0).map(([, v]) => v);
    expect(new Set(handles).size).toBe(handles.length);
    expect(Math.max(...handles.map((h) => Number.parseInt(h, 16)))).toBeLessThan(Number.parseInt(seed, 16));
    const owners = pairs.filter(([code, v]) => (code === '330' || code === '340' || code === '350') && v !== '0').map(([, v]) => v);
    expect(owners.filter((o) => !handles.includes(o))).toEqual([]);
  });
});
