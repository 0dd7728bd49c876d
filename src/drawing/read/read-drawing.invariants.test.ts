/** What holds for every drawing: its order, direction and position do not matter, and nothing is lost. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { lengthOf } from '../../geometry/measure.ts';
import type { Segment } from '../../geometry/segment.ts';
import { soundness } from '../../geometry/soundness.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { DrawnCurve } from '../curve/curve.ts';
import type { Drawing } from '../drawing.ts';
import type { Drawn } from '../drawn.fixture.ts';
import { box, codesOf, drawn } from '../drawn.fixture.ts';
import { reversed, turned } from '../drawn-arcs.fixture.ts';
import { drawingOf } from './read-drawing.ts';

const seed = { seed: 20261125, numRuns: 60 };

/** A sheet of plates on a grid, each with holes, drawn as polylines, loose lines, arcs and circles. */
const sheet = fc
  .array(
    fc.record({
      kind: fc.constantFrom('polyline', 'lines', 'slot', 'circle', 'doubled', 'gap', 'stub'),
      wide: fc.integer({ min: 4, max: 9 }),
      high: fc.integer({ min: 4, max: 9 }),
      hole: fc.boolean(),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((plates) => {
    const all = drawn();
    plates.forEach((plate, i) => {
      drawPlate(all, plate, (i % 4) * 20, Math.floor(i / 4) * 20);
    });
    return all;
  });

const drawPlate = (
  all: Drawn,
  { kind, wide, high, hole }: { kind: string; wide: number; high: number; hole: boolean },
  x: number,
  y: number,
): void => {
  const corners = box(x, y, wide, high);
  const closed = [...corners, there(corners[0])];
  if (kind === 'polyline') all.polyline(corners, true);
  else if (kind === 'slot')
    all
      .line([x + 2, y], [x + wide, y])
      .arc([x + wide, y + 2], 2, -90, 90)
      .line([x + wide, y + 4], [x + 2, y + 4])
      .arc([x + 2, y + 2], 2, 90, 270);
  else if (kind === 'circle') all.circle([x + 4, y + 4], wide / 2);
  else if (kind === 'gap') all.lines(...corners, [x, y + 0.003]);
  else all.lines(...closed);
  if (kind === 'doubled') all.line(there(corners[1]), there(corners[0])).line([x + 1, y], [x + 3, y]);
  if (kind === 'stub') all.line(there(corners[2]), [x + wide + 3, y + high + 4]);
  if (hole && kind !== 'circle') all.circle([x + 2, y + 2], 0.75);
};

/** What must not change with the order or direction of what is drawn: shapes by area and perimeter, nesting, chains, findings. */
const essence = (drawing: Drawing): unknown => ({
  loops: drawing.loops.map((l) => [l.area.toFixed(6), l.perimeter.toFixed(6), l.depth]).sort(),
  chains: drawing.openChains.map((c) => c.length.toFixed(6)).sort(),
  codes: codesOf(drawing),
});

/** Borders, tables and views are drawn along x and y: a sheet that is turned has none. */
const upright = (drawing: Drawing): unknown =>
  essence({ ...drawing, findings: drawing.findings.filter((f) => !f.code.startsWith('looks-like-')) });

const readCurves = (curves: readonly DrawnCurve[]): Drawing => drawingOf(drawn().file({ curves }));

/** Entities in another order; the pieces of a polyline stay together. */
const shuffled = (curves: readonly DrawnCurve[], order: readonly number[]): DrawnCurve[] =>
  [...curves].sort((p, q) => there(order[p.entity % order.length]) - there(order[q.entity % order.length]) || p.entity - q.entity);

describe('reading a drawing, for every sheet of plates', () => {
  it('is the same for every order of its entities', () => {
    fc.assert(
      fc.property(sheet, fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 7, maxLength: 7 }), (all, order) => {
        expect(essence(readCurves(shuffled(all.curves, order)))).toEqual(essence(readCurves(all.curves)));
      }),
      seed,
    );
  });

  it('is the same when every entity runs the other way', () => {
    fc.assert(
      fc.property(sheet, (all) => {
        expect(essence(readCurves(reversed(all.curves)))).toEqual(essence(readCurves(all.curves)));
      }),
      seed,
    );
  });

  it('is the same when the sheet is turned and moved', () => {
    fc.assert(
      fc.property(sheet, fc.double({ min: 0, max: 6.28, noNaN: true }), fc.integer({ min: -1000, max: 1000 }), (all, angle, by) => {
        expect(upright(readCurves(turned(all.curves, angle, by)))).toEqual(upright(readCurves(all.curves)));
      }),
      seed,
    );
  });

  it('hands out only sound contours, counter-clockwise, and no number that is none', () => {
    fc.assert(
      fc.property(sheet, (all) => {
        for (const loop of readCurves(all.curves).loops) {
          expect(soundness(loop.contour, 1e-9)).toEqual({ kind: 'sound' });
          expect(Number.isFinite(loop.area) && loop.area > 0 && Number.isFinite(loop.perimeter)).toBe(true);
        }
      }),
      seed,
    );
  });
});

const coordinate = fc.oneof(
  fc.integer({ min: -3, max: 3 }),
  fc.constantFrom(0.001, 0.004, -0.002, 1e-6, 1e-9, 2.9999999),
  fc.double({ min: -4, max: 4, noNaN: true }),
);
const place = fc.tuple(coordinate, coordinate);
const tangle = fc.array(
  fc.oneof(
    fc.tuple(place, place).map(([a, b]) => there(drawn().line(a, b).curves[0]).curve as Segment),
    fc
      .tuple(place, fc.constantFrom(1, 2, 0.002, 1.5), fc.integer({ min: 0, max: 8 }), fc.integer({ min: 1, max: 8 }))
      .map(([c, r, start, turn]) => there(drawn().arc(c, r, start * 45, start * 45 + turn * 45).curves[0]).curve as Segment),
  ),
  { maxLength: 40 },
);

describe('reading a tangle of lines and arcs', () => {
  it('always ends in sound loops and chains and findings that have a sentence', () => {
    fc.assert(
      fc.property(tangle, fc.boolean(), (segments, asOne) => {
        const all = drawn();
        if (asOne) all.entity(segments, true);
        else for (const segment of segments) all.entity([segment]);
        const drawing = all.read();
        for (const loop of drawing.loops) expect(soundness(loop.contour, 1e-6)).toEqual({ kind: 'sound' });
        for (const chain of drawing.openChains) expect(soundness(chain.path, 1e-6)).toEqual({ kind: 'sound' });
        for (const finding of drawing.findings) expect(sentenceOf(finding)).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { seed: 4, numRuns: 400 },
    );
  });

  it('loses no length: what is drawn is in the loops and chains, unless it is told as dropped or shared', () => {
    fc.assert(
      fc.property(tangle, (segments) => {
        const all = drawn();
        for (const segment of segments) all.entity([segment]);
        const drawing = all.read();
        fc.pre(!codesOf(drawing).some((code) => /dropped|without-area|share-edge/.test(code)));
        const total = segments.reduce((sum, s) => sum + lengthOf(s), 0);
        const kept = [...drawing.loops.map((l) => l.perimeter), ...drawing.openChains.map((c) => c.length)].reduce((a, b) => a + b, 0);
        expect(Math.abs(total - kept)).toBeLessThan(0.02 * segments.length + 1e-6);
      }),
      { seed: 5, numRuns: 200 },
    );
  });
});
