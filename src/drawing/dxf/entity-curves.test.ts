/** Lines, circles, arcs and ellipses become the curves they stand for, also turned over, at heights and tilted. */

import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, entity, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { there } from '../../../test/there.ts';
import type { Arc } from '../../geometry/segment.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Curve, DrawnFile, EllipticArc } from '../curve/curve.ts';
import { readDxf } from './read-dxf.ts';

const read = (...entities: readonly (readonly Tag[])[]): DrawnFile => readDxf(asciiDxf(dxfTags({ entities })));
const curvesOf = (...entities: readonly (readonly Tag[])[]): readonly Curve[] => read(...entities).curves.map((c) => c.curve);
const codesOf = (file: DrawnFile): readonly string[] => file.findings.map((f) => f.code);
const DOWN = { 210: 0, 220: 0, 230: -1 };

describe('LINE, CIRCLE and ARC', () => {
  it('keeps the numbers of a line as they are', () => {
    expect(curvesOf(lineTags(0.1, -0.2, 12.345678901234567, 1e-7))).toEqual([
      { kind: 'line', from: { x: 0.1, y: -0.2 }, to: { x: 12.345678901234567, y: 1e-7 } },
    ]);
  });

  it('makes a circle one whole turn', () => {
    const [circle] = curvesOf(entity('CIRCLE', { 10: 1, 20: 2, 40: 3 })) as [Arc];
    expect(circle).toEqual({
      kind: 'arc',
      from: { x: 4, y: 2 },
      to: { x: 4, y: 2 },
      centre: { x: 1, y: 2 },
      radius: 3,
      sweep: 2 * Math.PI,
    });
  });

  it('turns a circle over with its plane', () => {
    const [circle] = curvesOf(entity('CIRCLE', { 10: 7, 20: 8, 40: 1, ...DOWN })) as [Arc];
    expect(circle.centre).toEqual({ x: -7, y: 8 });
  });

  it('sweeps an arc counter-clockwise, also across 0 degrees', () => {
    const [arc] = curvesOf(entity('ARC', { 10: 0, 20: 0, 40: 10, 50: 350, 51: 20 })) as [Arc];
    expect(arc.sweep).toBeCloseTo(Math.PI / 6, 14);
    expect(arc.to.y).toBeCloseTo(10 * Math.sin(Math.PI / 9), 13);
  });

  it('ends quarter arcs exactly on the axes', () => {
    const [arc] = curvesOf(entity('ARC', { 10: 0, 20: 0, 40: 10, 50: 90, 51: 180 })) as [Arc];
    expect([arc.from, arc.to].map(({ x, y }) => [x + 0, y + 0])).toEqual([
      [0, 10],
      [-10, 0],
    ]);
  });

  it.each([
    [0, 360],
    [30, 390],
    [45, 45],
    [-90, 270],
  ])('takes an arc from %d to %d degrees as a circle', (start, end) => {
    const [arc] = curvesOf(entity('ARC', { 10: 0, 20: 0, 40: 2, 50: start, 51: end })) as [Arc];
    expect(arc.sweep).toBe(2 * Math.PI);
    expect(arc.to).toEqual(arc.from);
  });

  it('turns an arc over with its plane: it runs clockwise then', () => {
    const [arc] = curvesOf(entity('ARC', { 10: 0, 20: 0, 40: 10, 50: 0, 51: 30, ...DOWN })) as [Arc];
    expect(arc.sweep).toBeCloseTo(-Math.PI / 6, 14);
    expect(arc.to.x).toBeCloseTo(-8.66025, 5);
    expect(arc.to.y).toBeCloseTo(5, 5);
  });

  it.each([
    ['radius 0', { 40: 0 }],
    ['a negative radius', { 40: -1 }],
  ])('leaves out a circle of %s and says so', (_, more) => {
    const file = read(entity('CIRCLE', { 10: 0, 20: 0, ...more }));
    expect(file.curves).toEqual([]);
    expect(codesOf(file)).toEqual(['entity-impossible']);
  });

  it('never takes a missing end for 0', () => {
    const file = read(entity('LINE', { 10: 1, 20: 1, 11: 5 }), entity('ARC', { 10: 0, 20: 0, 40: 1, 50: 0 }));
    expect(file.curves).toEqual([]);
    expect(file.findings.map((f) => sentenceOf(f))).toEqual([
      'LINE: The entity has no value for group 21.',
      'ARC: The entity has no value for group 51.',
    ]);
  });
});

describe('ELLIPSE', () => {
  it('keeps centre, axes and parameters', () => {
    const [ellipse] = curvesOf(entity('ELLIPSE', { 10: 1, 20: 2, 11: 0, 21: 4, 40: 0.25, 41: 0.5, 42: 2 })) as [EllipticArc];
    expect(ellipse).toMatchObject({ kind: 'ellipse', centre: { x: 1, y: 2 }, major: { x: 0, y: 4 }, start: 0.5, end: 2 });
    expect([ellipse.minor.x, ellipse.minor.y + 0]).toEqual([-1, 0]);
  });

  it('runs over 0 where the end lies before the start', () => {
    const [ellipse] = curvesOf(entity('ELLIPSE', { 10: 0, 20: 0, 11: 4, 21: 0, 40: 0.5, 41: 6, 42: 1 })) as [EllipticArc];
    expect(ellipse.end - ellipse.start).toBeCloseTo(2 * Math.PI - 5, 12);
  });

  it('is a circle where its axes are alike', () => {
    expect(curvesOf(entity('ELLIPSE', { 10: 0, 20: 0, 11: 3, 21: 0, 40: 1 }))).toMatchObject([
      { kind: 'arc', radius: 3, sweep: 2 * Math.PI },
    ]);
  });

  it('turns its minor axis over with its plane, but not its centre', () => {
    const [ellipse] = curvesOf(entity('ELLIPSE', { 10: 5, 20: 0, 11: 4, 21: 0, 40: 0.5, 41: 0, 42: 1, ...DOWN })) as [EllipticArc];
    expect(ellipse.centre).toEqual({ x: 5, y: 0 });
    expect(ellipse.minor.y).toBe(-2);
  });

  it.each([
    ['no axis', { 11: 0, 21: 0, 40: 0.5 }],
    ['ratio 0', { 11: 1, 21: 0, 40: 0 }],
  ])('is left out with %s', (_, more) => {
    expect(codesOf(read(entity('ELLIPSE', { 10: 0, 20: 0, ...more })))).toEqual(['entity-impossible']);
  });
});

describe('the least ratio of an ellipse', () => {
  it('is a thousandth of a millionth', () => {
    const read1 = (ratio: number) => codesOf(read(entity('ELLIPSE', { 10: 0, 20: 0, 11: 1e6, 21: 0, 40: ratio })));
    expect([0.8e-9, 1.2e-9].map((ratio) => read1(ratio).includes('entity-impossible'))).toEqual([true, false]);
  });
});

describe('what does not lie flat', () => {
  it('drops a height and says where', () => {
    const file = read(entity('CIRCLE', { 10: 0, 20: 0, 30: 7, 40: 1 }), entity('LINE', { 10: 0, 20: 0, 30: 1, 11: 1, 21: 0, 31: 1 }));
    expect(file.curves.length).toBe(2);
    expect(file.findings).toMatchObject([
      { code: 'height-dropped', place: { line: 5 } },
      { code: 'height-dropped', place: { line: 17 } },
    ]);
  });

  it('sees a tilted circle as the ellipse it is from above', () => {
    const file = read(entity('CIRCLE', { 10: 0, 20: 0, 40: 2, 210: 1, 220: 0, 230: 1 }));
    const ellipse = there(file.curves[0]).curve as EllipticArc;
    const lengths = [ellipse.major, ellipse.minor].map((p) => Math.hypot(p.x, p.y)).toSorted();
    expect(lengths[0]).toBeCloseTo(Math.SQRT2, 12);
    expect(lengths[1]).toBeCloseTo(2, 12);
    expect(codesOf(file)).toEqual(['tilted-projected']);
  });

  it('leaves out a circle that stands upright', () => {
    const file = read(entity('CIRCLE', { 10: 0, 20: 0, 40: 2, 210: 1, 220: 0, 230: 0 }));
    expect(file.curves).toEqual([]);
    expect(file.findings.some((f) => sentenceOf(f).includes('edge on'))).toBe(true);
  });

  it('takes the axes of a plane nearly level from the other rule', () => {
    // Within 1/64 of the z axis x lies square to the world's y axis, so that it does not jump about.
    const [arc] = curvesOf(
      entity('LWPOLYLINE', { 90: 2, 70: 0, 210: 1e-12, 220: 1e-12, 230: 1 }, [
        [10, 1],
        [20, 2],
        [10, 3],
        [20, 4],
      ]),
    ) as [Arc];
    expect(arc.from.x).toBeCloseTo(1, 9);
    expect(arc.from.y).toBeCloseTo(2, 9);
  });

  it('leaves out what has an extrusion without length', () => {
    expect(codesOf(read(entity('CIRCLE', { 10: 0, 20: 0, 40: 2, 210: 0, 220: 0, 230: 0 })))).toEqual(['entity-impossible']);
  });

  it('leaves out what reaches beyond all measure', () => {
    const file = read(lineTags(0, 0, 1e300, 0), entity('CIRCLE', { 10: 0, 20: 0, 40: 1e200 }), entity('POINT', { 10: 1e99, 20: 0 }));
    expect(file.curves).toEqual([]);
    expect(file.marks).toEqual([]);
    expect(codesOf(file)).toEqual(['entity-impossible', 'entity-impossible', 'entity-impossible']);
  });
});
