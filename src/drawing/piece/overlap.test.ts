/** What is drawn more than once is kept once: edges, parts of edges, curves and whole loops. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { soundness } from '../../geometry/soundness.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { areasOf, box, codesOf, drawn, placeOf } from '../drawn.fixture.ts';

const corners: [number, number][] = [
  [0, 0],
  [10, 0],
  [10, 5],
  [0, 5],
  [0, 0],
];

describe('doubled edges', () => {
  it('keeps one of two equal lines, also when one runs backwards', () => {
    const drawing = drawn()
      .lines(...corners)
      .line([10, 0], [0, 0])
      .read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(codesOf(drawing)).toEqual(['doubled-edge-dropped']);
    expect(placeOf(drawing, 'doubled-edge-dropped')).toEqual([5, 0]);
  });

  it('keeps one of two arcs drawn in opposite directions', () => {
    const drawing = drawn().arc([0, 0], 5, 0, 180).arc([0, 0], 5, 180, 0).line([-5, 0], [5, 0]).read();
    expect(areasOf(drawing)).toEqual([Math.round(12.5 * Math.PI * 1e6) / 1e6]);
    expect(codesOf(drawing)).toEqual(['doubled-edge-dropped']);
  });

  it('keeps once the stretch that two lines share in part', () => {
    const drawing = drawn().line([0, 0], [7, 0]).line([4, 0], [10, 0]).lines([10, 0], [10, 5], [0, 5], [0, 0]).read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(codesOf(drawing)).toEqual(['doubled-edge-dropped']);
    expect(sentenceOf(drawing.findings[0])).toContain('A length of 3 mm around (5.5, 0) is drawn twice');
  });

  it('keeps once what is drawn again in pieces, and makes the line whole again', () => {
    const drawing = drawn()
      .lines(...corners)
      .line([0, 0], [4, 0])
      .line([4, 0], [10, 0])
      .read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(there(drawing.loops[0]).contour.segments).toHaveLength(4);
  });

  it('keeps both rectangles where one shares part of an edge of the other', () => {
    const drawing = drawn()
      .lines(...corners)
      .lines([3, 5], [8, 5], [8, 9], [3, 9], [3, 5])
      .read();
    expect(areasOf(drawing)).toEqual([50, 20]);
    expect(codesOf(drawing)).toEqual(['branched 2', 'doubled-edge-dropped', 'loops-share-edge']);
  });

  it('keeps once the stretch that two arcs of one circle share across the seam', () => {
    const drawing = drawn().arc([0, 0], 5, -100, 100).arc([0, 0], 5, 80, 280).read();
    expect(drawing.loops).toHaveLength(1);
    expect(there(drawing.loops[0]).area).toBeCloseTo(25 * Math.PI, 9);
    expect(codesOf(drawing)).toEqual(['doubled-edge-dropped 2']);
    expect(soundness(there(drawing.loops[0]).contour, 1e-9).kind).toBe('sound');
  });

  it('drops a loose line that lies on the edge of a closed polyline', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 10, 5), true)
      .line([2, 5], [6, 5])
      .read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(drawing.openChains).toEqual([]);
    expect(codesOf(drawing)).toEqual(['doubled-edge-dropped']);
  });

  it('counts the copies of a line drawn many times', () => {
    const drawing = drawn()
      .lines(...corners)
      .line([0, 0], [10, 0])
      .line([10, 0], [0, 0])
      .line([0, 0], [10, 0])
      .read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(sentenceOf(drawing.findings[0])).toContain('drawn 4 times');
  });

  it('leaves apart what runs side by side further than a micrometre', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 10, 5), true)
      .line([2, 4.998], [6, 4.998])
      .read();
    expect(drawing.openChains).toHaveLength(1);
  });

  it('keeps once a spline that is drawn twice, the second time backwards', () => {
    const knots = [0, 0, 0, 0, 1, 1, 1, 1];
    const points = [
      { x: 0, y: 0 },
      { x: 1, y: 6 },
      { x: 8, y: 7 },
      { x: 10, y: 0 },
    ];
    const spline = { kind: 'spline', degree: 3, weights: [1, 1, 1, 1], knots } as const;
    const drawing = drawn()
      .entity([{ ...spline, points }])
      .entity([{ ...spline, points: [...points].reverse() }])
      .line([0, 0], [10, 0])
      .read();
    expect(drawing.loops).toHaveLength(1);
    expect(codesOf(drawing)).toEqual(['curves-fitted', 'doubled-edge-dropped']);
  });
});

describe('doubled loops', () => {
  it('keeps one of two equal polylines, drawn from other corners', () => {
    const [a, b, c, d] = box(0, 0, 10, 5);
    const drawing = drawn()
      .polyline([there(a), there(b), there(c), there(d)], true)
      .polyline([there(c), there(b), there(a), there(d)], true)
      .read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(codesOf(drawing)).toEqual(['doubled-loop-dropped']);
  });

  it('knows a circle from two half circles as the same', () => {
    const drawing = drawn().circle([3, 3], 2).arc([3, 3], 2, 0, 180).arc([3, 3], 2, 180, 360).read();
    expect(drawing.loops).toHaveLength(1);
    expect(codesOf(drawing)).toEqual(['doubled-loop-dropped']);
  });

  it('knows a copy that lies a few micrometres off, and keeps what lies further off', () => {
    expect(drawn().circle([3, 3], 2).circle([3.003, 3], 2).read().loops).toHaveLength(1);
    expect(drawn().circle([3, 3], 2).circle([3, 3], 2.01).read().loops).toHaveLength(2);
  });

  it('tells shapes apart that share area, perimeter, bounds and centre', () => {
    const s: [number, number][] = [
      [0, 0],
      [2, 0],
      [2, 1],
      [3, 1],
      [3, 2],
      [1, 2],
      [1, 1],
      [0, 1],
    ];
    const z = s.map(([x, y]): [number, number] => [3 - x, y]);
    const drawing = drawn().polyline(s, true).polyline(z, true).read();
    expect(areasOf(drawing)).toEqual([4, 4]);
    expect(codesOf(drawing)).not.toContain('doubled-loop-dropped');
  });
});

describe('spurs', () => {
  it('leaves out a line that overshoots a corner and comes back', () => {
    const drawing = drawn().lines([0, 0], [12, 0]).lines([12, 0], [10, 0], [10, 5], [0, 5], [0, 0]).read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(drawing.openChains).toEqual([]);
    expect(codesOf(drawing)).toEqual(['branched', 'doubled-edge-dropped', 'spur-dropped']);
    expect(there(drawing.loops[0]).perimeter).toBe(30);
  });

  it('leaves out a line to an inner loop and back', () => {
    const inner = [
      [2, 2],
      [4, 2],
      [4, 4],
      [2, 4],
      [2, 2],
    ] as const;
    const drawing = drawn()
      .lines([0, 0], [9, 0], [9, 9], [0, 9], [0, 0])
      .lines([0, 0], [2, 2])
      .lines(...inner)
      .lines([2, 2], [0, 0])
      .read();
    expect(areasOf(drawing)).toEqual([81, 4]);
    expect(codesOf(drawing)).toContain('spur-dropped');
    expect(drawing.loops.map((l) => l.depth)).toEqual([0, 1]);
  });

  it('keeps a line of its own that is drawn twice as an open chain', () => {
    const drawing = drawn().line([0, 0], [5, 0]).line([5, 0], [0, 0]).read();
    expect(drawing.openChains.map((c) => c.length)).toEqual([5]);
  });
});
