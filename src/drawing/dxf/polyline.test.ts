/** Polylines old and new: bulges, closing, frames that are not drawn, vertices that are missing. */

import { describe, expect, it } from 'vitest';
import { polyline } from '../../../test/drawing-fixtures.ts';
import { asciiDxf, dxfTags, entity, lightPolyline, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { there } from '../../../test/there.ts';
import type { Arc } from '../../geometry/segment.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Curve, DrawnFile } from '../curve/curve.ts';
import { readDxf } from './read-dxf.ts';

const read = (...entities: readonly (readonly Tag[])[]): DrawnFile => readDxf(asciiDxf(dxfTags({ entities })));
const curvesOf = (...entities: readonly (readonly Tag[])[]): readonly Curve[] => read(...entities).curves.map((c) => c.curve);
const codesOf = (file: DrawnFile): readonly string[] => file.findings.map((f) => f.code);
const DOWN = { 210: 0, 220: 0, 230: -1 };

describe('polylines', () => {
  it('gives every vertex its bulge, and the last one only in a closed polyline', () => {
    const vertices = [
      [0, 0, 1],
      [10, 0],
      [10, 5, -0.5],
    ] as const;
    const open = curvesOf(lightPolyline(vertices, false));
    const closed = curvesOf(lightPolyline(vertices, true));
    expect(open.map((c) => c.kind)).toEqual(['arc', 'line']);
    expect(closed.map((c) => c.kind)).toEqual(['arc', 'line', 'arc']);
    expect(closed[0]).toMatchObject({ centre: { x: 5, y: 0 }, radius: 5, sweep: Math.PI });
    expect((closed[2] as Arc).sweep).toBeCloseTo(-4 * Math.atan(0.5), 14);
  });

  it('keeps an arc of more than half a turn', () => {
    const [arc] = curvesOf(
      lightPolyline(
        [
          [0, 0, 2.414213562373095],
          [1, 0],
        ],
        false,
      ),
    ) as [Arc];
    expect(arc.sweep).toBeCloseTo((3 * Math.PI) / 2, 12);
    expect(arc.radius).toBeCloseTo(Math.SQRT1_2, 12);
  });

  it('joins the pieces of one polyline at the same numbers and under one number', () => {
    const { curves } = read(
      lightPolyline([
        [0, 0, 0.3],
        [10, 0, -0.2],
        [10, 7],
      ]),
      lineTags(0, 0, 1, 1),
    );
    expect(curves.map((c) => [c.entity, c.closes])).toEqual([
      [0, true],
      [0, true],
      [0, true],
      [1, false],
    ]);
    const ends = curves.slice(0, 3).map(({ curve }) => curve as Arc);
    ends.forEach((piece, i) => void expect(piece.to).toEqual(there(ends[(i + 1) % 3]).from));
  });

  it('adds no closing piece where the last vertex repeats the first', () => {
    expect(
      curvesOf(
        lightPolyline([
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 0],
        ]),
      ).length,
    ).toBe(3);
  });

  it('keeps a piece without length for the joining to report', () => {
    expect(
      curvesOf(
        lightPolyline(
          [
            [0, 0],
            [1, 0, 0.5],
            [1, 0],
            [1, 1],
          ],
          false,
        ),
      ).length,
    ).toBe(3);
  });

  it('takes the middle line of wide polylines and says so once', () => {
    const wide = entity('LWPOLYLINE', { 90: 2, 70: 0, 43: 0.5 }, [
      [10, 0],
      [20, 0],
      [10, 5],
      [20, 0],
    ]);
    const file = read(wide, wide);
    expect(file.curves.length).toBe(2);
    expect(file.findings.map((f) => [f.code, sentenceOf(f)])).toEqual([['width-ignored', '2 polylines have a width, the first one here.']]);
  });

  it('takes the vertices that are there where another number is told, and says so', () => {
    const tags = lightPolyline(
      [
        [0, 0],
        [5, 0],
        [5, 5],
      ],
      false,
    ).map((tag): Tag => (tag[0] === 90 ? [90, 4] : tag));
    const file = read(tags);
    expect(file.curves.length).toBe(2);
    expect(file.findings.map((f) => [f.code, sentenceOf(f)])).toEqual([
      ['count-differs', 'An LWPOLYLINE says it has 4 vertices and gives 3.'],
    ]);
  });

  it('turns a bulge over with its plane', () => {
    const tags = entity('LWPOLYLINE', { 90: 2, 70: 0, ...DOWN }, [
      [10, 0],
      [20, 0],
      [42, 1],
      [10, 10],
      [20, 0],
    ]);
    expect(curvesOf(tags)[0]).toMatchObject({ from: { x: 0, y: 0 }, to: { x: -10, y: 0 }, sweep: -Math.PI });
  });

  it.each([
    [
      'has a vertex without y',
      entity('LWPOLYLINE', { 90: 2, 70: 0 }, [
        [10, 0],
        [10, 5],
        [20, 0],
      ]),
    ],
    [
      'has a vertex without x',
      entity('LWPOLYLINE', { 90: 2, 70: 0 }, [
        [10, 0],
        [20, 0],
        [20, 5],
      ]),
    ],
    ['has one vertex', lightPolyline([[1, 1]])],
    ['has none', polyline([])],
  ])('leaves out a polyline that %s', (_, tags) => {
    const file = read(tags);
    expect(file.curves).toEqual([]);
    expect(codesOf(file)).toEqual(['entity-unfinished']);
  });

  it('reads the old kind with its vertices', () => {
    const { curves, findings } = read(
      polyline(
        [
          [0, 0, 1],
          [10, 0],
          [10, 5],
        ],
        { 8: 'old', 70: 1 },
      ),
    );
    expect(findings).toEqual([]);
    expect(curves.map((c) => [c.curve.kind, c.layer])).toEqual([
      ['arc', 'old'],
      ['line', 'old'],
      ['line', 'old'],
    ]);
  });

  it('draws a spline-fit polyline along its curve and not its frame', () => {
    const vertex = (x: number, y: number, flags: number): readonly Tag[] => entity('VERTEX', { 10: x, 20: y, 70: flags });
    const tags = [
      ...entity('POLYLINE', { 66: 1, 70: 4, 75: 6 }),
      ...[vertex(0, 0, 16), vertex(0, 0, 8), vertex(5, 10, 16), vertex(5, 5, 8), vertex(10, 0, 16), vertex(10, 0, 8)].flat(),
      [0, 'SEQEND'] as Tag,
    ];
    expect(curvesOf(tags).map((c) => [(c as Arc).from, (c as Arc).to])).toEqual([
      [
        { x: 0, y: 0 },
        { x: 5, y: 5 },
      ],
      [
        { x: 5, y: 5 },
        { x: 10, y: 0 },
      ],
    ]);
  });

  it('keeps the arcs of a curve-fit polyline', () => {
    const fit = [
      ...entity('POLYLINE', { 66: 1, 70: 2 }),
      ...entity('VERTEX', { 10: 0, 20: 0, 42: 0.2 }),
      ...entity('VERTEX', { 10: 5, 20: 0, 42: 0.1, 70: 1 }),
    ];
    expect(curvesOf([...fit, ...entity('VERTEX', { 10: 9, 20: 3 }), [0, 'SEQEND']]).map((c) => c.kind)).toEqual(['arc', 'arc']);
  });

  it('sees a polyline in space from above and says where', () => {
    const vertex = (x: number, y: number, z: number): readonly Tag[] => entity('VERTEX', { 10: x, 20: y, 30: z, 70: 32 });
    const file = read([...entity('POLYLINE', { 66: 1, 70: 9 }), ...vertex(0, 0, 0), ...vertex(5, 0, 3), ...vertex(5, 5, 0), [0, 'SEQEND']]);
    expect(file.curves.map((c) => c.curve)).toMatchObject([{ to: { x: 5, y: 0 } }, { to: { x: 5, y: 5 } }, { to: { x: 0, y: 0 } }]);
    expect(file.findings).toMatchObject([{ code: 'tilted-projected', place: { kind: 'line', line: 5 } }]);
  });

  it.each([
    ['a mesh', 16],
    ['faces', 64],
  ])('passes over a POLYLINE that is %s', (_, flags) => {
    const file = read(
      polyline(
        [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        { 70: flags },
      ),
      lineTags(0, 0, 1, 1),
    );
    expect(file.curves.length).toBe(1);
    expect([...file.passedOver]).toEqual([['POLYLINE as a mesh', 1]]);
    expect(codesOf(file)).toEqual(['shapes-not-read']);
  });
});
