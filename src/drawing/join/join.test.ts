/** How loose ends are joined, and what becomes of places where three or more of them meet. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { soundness } from '../../geometry/soundness.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { areasOf, box, codesOf, drawn, placeOf } from '../drawn.fixture.ts';

describe('joining ends', () => {
  it('closes four loose lines into one loop without a word', () => {
    const drawing = drawn().lines([0, 0], [10, 0], [10, 5], [0, 5], [0, 0]).read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(there(drawing.loops[0]).perimeter).toBe(30);
    expect(codesOf(drawing)).toEqual([]);
  });

  it('closes a gap within the join distance, exactly, and tells its place and size', () => {
    const drawing = drawn().lines([0, 0], [10, 0], [10, 5], [0, 5], [0, 0.004]).read();
    expect(codesOf(drawing)).toEqual(['gap-closed']);
    expect(sentenceOf(drawing.findings[0])).toContain('4 µm apart');
    expect(placeOf(drawing, 'gap-closed')).toEqual([0, 0.002]);
    expect(soundness(there(drawing.loops[0]).contour, 1e-12).kind).toBe('sound');
    expect(there(drawing.loops[0]).area).toBeCloseTo(50, 6);
  });

  it('takes ends for one within a hundredth of a micrometre, and tells of a gap above it', () => {
    const ends = (apart: number) => codesOf(drawn().lines([0, 0], [10, 0], [10, 5], [0, 5], [0, apart]).read());
    expect([ends(0.8e-5), ends(1.2e-5)]).toEqual([['rounding-closed'], ['gap-closed']]);
    const joined = (apart: number) => drawn().lines([0, 0], [10, 0], [10, 5], [0, 5], [0, apart]).read().loops.length;
    expect([joined(0.0049), joined(0.0051)]).toEqual([1, 0]);
  });

  it('leaves a gap beyond the join distance open and says how wide it is', () => {
    const drawing = drawn().lines([0, 0], [10, 0], [10, 5], [0, 5], [0, 0.006]).read();
    expect(drawing.loops).toEqual([]);
    expect(codesOf(drawing)).toEqual(['no-loop', 'open-chain']);
    expect(sentenceOf(drawing.findings[0])).toContain('Its ends are 6 µm apart, and only 5 µm are closed');
  });

  it('takes the join distance in drawing units when asked to', () => {
    const inches = drawn().lines([0, 0], [1, 0], [1, 1], [0, 1], [0, 0.009]);
    const units = { name: 'inch', millimetres: 25.4, basis: 'header' } as const;
    const read = (joinInDrawingUnits: boolean) => inches.read({ units: units.name, join: 0.01, joinInDrawingUnits });
    expect(read(true).loops.length).toBe(1);
    expect(read(false).loops.length).toBe(0);
  });

  it('joins the nearest free ends first, whatever the order of the file', () => {
    const near = drawn()
      .lines([0, 0], [10, 0])
      .line([10.001, 0], [10.001, 9])
      .line([10.004, 0], [20, 0])
      .lines([10.001, 9], [0, 9], [0, 0]);
    expect(near.read().loops.length).toBe(1);
    expect(near.read().openChains.length).toBe(1);
    near.curves.reverse();
    expect(near.read().loops.length).toBe(1);
    expect(near.read().openChains.length).toBe(1);
  });

  it('moves two lines to where they would cross, so that neither turns', () => {
    const drawing = drawn().lines([0, 0], [10, 0]).lines([10.003, -0.002], [10.003, 8], [0, 8], [0, 0]).read();
    const corner = there(there(drawing.loops[0]).contour.segments.find((s) => Math.hypot(s.from.x - 10, s.from.y) < 0.01)).from;
    expect(corner).toEqual({ x: 10.003, y: 0 });
  });

  it('keeps an arc and moves the line that ends near it', () => {
    const drawing = drawn().arc([0, 0], 5, 0, 180).line([-5, 0.003], [-5, -3]).lines([-5, -3], [5, -3], [5, 0]).read();
    const arc = there(there(drawing.loops[0]).contour.segments.find((s) => s.kind === 'arc'));
    expect(arc.kind === 'arc' && arc.radius).toBe(5);
    expect(codesOf(drawing)).toEqual(['gap-closed']);
    expect(soundness(there(drawing.loops[0]).contour, 1e-9).kind).toBe('sound');
  });

  it('makes a circle of an arc that lacks a hair', () => {
    const drawing = drawn().arc([3, 4], 2, 0, 359.9).read();
    expect(codesOf(drawing)).toEqual(['gap-closed']);
    expect(there(drawing.loops[0]).contour.segments).toHaveLength(1);
    expect(there(drawing.loops[0]).area).toBeCloseTo(Math.PI * 4, 9);
  });

  it('bridges rather than bends an arc whose chord is short', () => {
    const almost = drawn().arc([0, 0], 10, 1, 359).line([10, -0.172], [10.0, 0.1745]);
    const drawing = almost.read({ join: 0.01 });
    expect(drawing.loops).toHaveLength(1);
    expect(soundness(there(drawing.loops[0]).contour, 1e-9).kind).toBe('sound');
    const radii = there(drawing.loops[0]).contour.segments.flatMap((s) => (s.kind === 'arc' ? [s.radius] : []));
    for (const radius of radii) expect(Math.abs(radius - 10)).toBeLessThan(0.01);
  });

  it('makes ends one that differ by rounding, and tells the worst once', () => {
    const drawing = drawn().lines([0, 0], [10, 0]).lines([10.000003, 0], [10, 5], [0, 5], [0, 0]).read();
    expect(areasOf(drawing)).toHaveLength(1);
    expect(codesOf(drawing)).toEqual(['rounding-closed']);
    expect(sentenceOf(drawing.findings[0])).toContain('0.003 µm');
  });

  it('does not close a short piece onto itself', () => {
    const drawing = drawn().line([0, 0], [0.004, 0]).read();
    expect(drawing.loops).toEqual([]);
    expect(drawing.openChains).toHaveLength(1);
  });

  it('drops pieces without length and says where', () => {
    const drawing = drawn()
      .line([7, 8], [7, 8])
      .polyline([...box(0, 0, 4, 4), [0, 0]], true)
      .read();
    expect(codesOf(drawing)).toEqual(['zero-length-dropped 2']);
    expect(placeOf(drawing, 'zero-length-dropped')).toEqual([7, 8]);
    expect(areasOf(drawing)).toEqual([16]);
  });

  it('closes a polyline that is said to be closed but ends short', () => {
    const open = drawn().entity(
      drawn()
        .lines([0, 0], [6, 0], [6, 6])
        .curves.map((c) => c.curve),
      true,
    );
    expect(areasOf(open.read())).toEqual([18]);
    expect(codesOf(open.read())).toEqual(['gap-closed']);
  });
});

describe('places where three or more ends meet', () => {
  it('sets a stub aside and keeps the loop', () => {
    const drawing = drawn().lines([0, 0], [10, 0], [10, 5], [0, 5], [0, 0]).line([10, 5], [14, 8]).read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(drawing.openChains).toHaveLength(1);
    expect(codesOf(drawing)).toEqual(['branched', 'chain-ends-on-loop', 'open-chain']);
    expect(placeOf(drawing, 'branched')).toEqual([10, 5]);
  });

  it('takes a line between two loops as an open chain', () => {
    const drawing = drawn()
      .lines([0, 0], [4, 0], [4, 4], [0, 4], [0, 0])
      .lines([10, 0], [14, 0], [14, 4], [10, 4], [10, 0])
      .line([4, 0], [10, 0])
      .read();
    expect(areasOf(drawing)).toEqual([16, 16]);
    expect(drawing.openChains.map((c) => c.length)).toEqual([6]);
  });

  it('reads a divided rectangle as the two faces that share the dividing line', () => {
    const drawing = drawn().lines([0, 0], [6, 0], [10, 0], [10, 5], [6, 5], [0, 5], [0, 0]).line([6, 0], [6, 5]).read();
    expect(areasOf(drawing)).toEqual([30, 20]);
    expect(codesOf(drawing)).toEqual(['branched 2', 'loops-share-edge']);
    expect(sentenceOf(drawing.findings.find((f) => f.code === 'loops-share-edge'))).toContain('5 mm of edge at (6, 2.5)');
  });

  it('reads two squares that touch in a corner as two squares', () => {
    const drawing = drawn().lines([0, 0], [4, 0], [4, 4], [0, 4], [0, 0]).lines([4, 4], [8, 4], [8, 8], [4, 8], [4, 4]).read();
    expect(areasOf(drawing)).toEqual([16, 16]);
    expect(codesOf(drawing)).toEqual(['branched', 'loops-touch']);
  });

  it('reads a triangle that touches its square from within as two nested loops', () => {
    const drawing = drawn().lines([0, 0], [8, 0], [8, 8], [0, 8], [0, 0]).lines([0, 0], [4, 1], [1, 4], [0, 0]).read();
    expect(areasOf(drawing)).toEqual([64, 7.5]);
    expect(drawing.loops.map((l) => l.parent)).toEqual([undefined, 'L1']);
  });

  it('tells a line from an arc that leaves along it', () => {
    // At (0, 0) a line goes on and an arc leaves tangentially; both come back to (-10, 0).
    const drawing = drawn()
      .line([-10, 0], [0, 0])
      .arc([0, 5], 5, -90, 90)
      .lines([0, 10], [-10, 10], [-10, 0])
      .lines([0, 0], [12, 0], [12, 10], [0, 10])
      .read();
    expect(areasOf(drawing)).toEqual([100 + 12.5 * Math.PI, 120 - 12.5 * Math.PI].map((a) => Math.round(a * 1e6) / 1e6));
  });

  it('follows polylines that pass through each other', () => {
    const drawing = drawn()
      .polyline(
        [
          [0, 0],
          [4, 4],
          [8, 0],
        ],
        false,
      )
      .polyline(
        [
          [0, 8],
          [4, 4],
          [8, 8],
        ],
        false,
      )
      .line([0, 0], [8, 0])
      .line([0, 8], [8, 8])
      .read();
    expect(areasOf(drawing)).toEqual([16, 16]);
    expect(there(drawing.findings.find((f) => f.code === 'branched')).severity).toBe('note');
  });

  it('keeps closed polylines whole where loose lines meet them', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 10, 5), true)
      .line([0, 0], [10, 5])
      .read();
    expect(areasOf(drawing)).toEqual([50]);
    expect(codesOf(drawing)).toEqual(['chain-ends-on-loop', 'open-chain']);
  });
});
