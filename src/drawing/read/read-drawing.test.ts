/** From curves or bytes to a judged and nested drawing, with every finding in its place. */

import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, entity, lightPolyline } from '../../../test/dxf-writer.ts';
import { there } from '../../../test/there.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { areasOf, box, codesOf, drawn, placeOf } from '../drawn.fixture.ts';
import { drawingOf, readDrawing } from './read-drawing.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('judging loops', () => {
  it('names a loop that crosses itself, with the place', () => {
    const drawing = drawn()
      .polyline(
        [
          [0, 0],
          [4, 4],
          [4, 0],
          [0, 4],
        ],
        true,
      )
      .read();
    expect(codesOf(drawing)).toEqual(['loop-crosses-itself']);
    expect(placeOf(drawing, 'loop-crosses-itself')).toEqual([2, 2]);
    expect(there(drawing.findings[0]).severity).toBe('refusal');
  });

  it('keeps a bow tie of loose lines as one loop, though its area is nothing on balance', () => {
    const drawing = drawn().lines([0, 0], [4, 4], [4, 0], [0, 4], [0, 0]).read();
    expect(areasOf(drawing)).toEqual([0]);
    expect(codesOf(drawing)).toEqual(['loop-crosses-itself']);
  });

  it('ends with a bow tie whose centre of mass is anywhere', () => {
    const drawing = drawn()
      .polyline(
        [
          [0, 0],
          [4, 4],
          [4, 0],
          [0, 4 + 1e-14],
        ],
        true,
      )
      .polyline(
        [
          [9, 0],
          [13, 4],
          [13, 0],
          [9, 4 + 4e-15],
        ],
        true,
      )
      .read();
    expect(codesOf(drawing)).toEqual(['loop-crosses-itself 2']);
  });

  it('names a loop that runs over itself', () => {
    const drawing = drawn()
      .polyline(
        [
          [0, 0],
          [9, 0],
          [9, 9],
          [5, 9],
          [5, 5],
          [5, 9],
          [0, 9],
        ],
        true,
      )
      .read();
    expect(codesOf(drawing)).toEqual(['loop-touches-itself']);
    expect(areasOf(drawing)).toEqual([81]);
  });

  it('names two loops that cross', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 10, 5), true)
      .polyline(box(8, 3, 9, 9), true)
      .read();
    expect(codesOf(drawing)).toEqual(['loops-cross']);
    expect(sentenceOf(drawing.findings[0])).toContain('and at 1 other place');
    expect(drawing.loops.map((l) => l.depth)).toEqual([0, 0]);
  });

  it('names two loops that touch in a point', () => {
    const drawing = drawn().circle([0, 0], 5).circle([8, 0], 3).read();
    expect(codesOf(drawing)).toEqual(['loops-touch']);
    expect(placeOf(drawing, 'loops-touch')).toEqual([5, 0]);
  });

  it('does not take the ends of a shared edge for crossings', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 4, 4), true)
      .polyline(box(4, 1, 4, 2), true)
      .read();
    expect(codesOf(drawing)).toEqual(['loops-share-edge']);
    expect(placeOf(drawing, 'loops-share-edge')).toEqual([4, 2]);
  });

  it('drops a polyline that runs there and back', () => {
    const drawing = drawn()
      .polyline(
        [
          [0, 0],
          [9, 0],
        ],
        true,
      )
      .circle([3, 3], 1)
      .read();
    expect(codesOf(drawing)).toEqual(['loop-without-area']);
    expect(drawing.loops).toHaveLength(1);
  });

  it('doubts a loop that is narrower than any wire', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 8, 0.004), true)
      .circle([3, 3], 1)
      .read();
    expect(codesOf(drawing)).toEqual(['loop-sliver']);
    expect(sentenceOf(drawing.findings[0])).toContain('16.01 mm long and only 4 µm wide');
  });

  it('nests loops, and counts openings and islands by depth', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 20, 20), true)
      .circle([10, 10], 8)
      .circle([10, 10], 4)
      .circle([2, 2], 0.5)
      .read();
    expect(drawing.loops.map((l) => [l.id, l.parent, l.depth])).toEqual([
      ['L1', undefined, 0],
      ['L2', 'L1', 1],
      ['L3', 'L2', 2],
      ['L4', 'L1', 1],
    ]);
  });

  it('nests a loop that touches its parent from within, also a hair outside', () => {
    const drawing = drawn()
      .polyline(box(-5, -5, 10, 10), true)
      .circle([0, 0], 5 + 1e-9)
      .read();
    expect(drawing.loops.map((l) => l.parent)).toEqual([undefined, 'L1']);
  });
});

describe('hidden layers', () => {
  it('lists hidden loops and leaves them out of nesting', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 20, 20), true)
      .on('frame', true)
      .polyline(box(-5, -5, 40, 40), true)
      .on('0')
      .circle([5, 5], 1)
      .read();
    expect(drawing.loops.map((l) => [l.id, l.hidden, l.parent, l.depth])).toEqual([
      ['L1', true, undefined, 0],
      ['L2', false, undefined, 0],
      ['L3', false, 'L2', 1],
    ]);
    expect(codesOf(drawing)).toEqual(['loops-hidden']);
  });

  it('does not join visible lines with hidden ones, unless nothing else closes', () => {
    const drawing = drawn().lines([0, 0], [5, 0], [5, 5]).on('old', true).lines([5, 5], [0, 5], [0, 0]).read();
    expect(drawing.loops.map((l) => [l.area, l.hidden])).toEqual([[25, false]]);
    expect(codesOf(drawing)).toEqual(['loop-partly-hidden']);
    const apart = drawn().lines([0, 0], [5, 0], [5, 5], [0, 0]).on('old', true).lines([5, 5], [0, 5], [0, 0]).read();
    expect(apart.loops.map((l) => l.area)).toEqual([12.5]);
    expect(apart.openChains.map((c) => c.hidden)).toEqual([true]);
  });

  it('only notes conflicts of hidden loops', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 10, 5), true)
      .on('old', true)
      .polyline(box(8, 3, 9, 9), true)
      .read();
    expect(drawing.findings.map((f) => [f.code, f.severity])).toEqual([
      ['loops-cross', 'note'],
      ['loops-hidden', 'note'],
    ]);
  });

  it('says that there is nothing to cut when all loops are hidden', () => {
    const drawing = drawn().on('old', true).circle([0, 0], 4).read();
    expect(codesOf(drawing)).toEqual(['loops-hidden', 'no-loop']);
    expect(sentenceOf(drawing.findings.find((f) => f.code === 'no-loop'))).toContain('closed loops on hidden layers only');
  });
});

describe('reading whole files', () => {
  it('refuses what is no drawing, whatever it is called', () => {
    for (const [content, name] of [
      ['%PDF-1.7', 'part.pdf'],
      ['', 'part.txt'],
      ['<html></html>', 'part.htm'],
    ] as const) {
      const drawing = readDrawing(bytes(content), name);
      expect(drawing.state).toBe('refused');
      expect(codesOf(drawing)).toEqual(['not-a-drawing']);
    }
  });

  it('reads DXF and SVG by their content', () => {
    const dxf = '0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n8\n0\n10\n0\n20\n0\n40\n5\n0\nENDSEC\n0\nEOF\n';
    expect(there(readDrawing(bytes(dxf), 'no-name').loops[0]).area).toBeCloseTo(25 * Math.PI, 9);
    const svg =
      '<svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10"><circle cx="5" cy="5" r="5"/></svg>';
    expect(there(readDrawing(bytes(svg), 'no-name').loops[0]).area).toBeCloseTo(25 * Math.PI, 9);
  });

  it('refuses more work than is allowed, by name', () => {
    const grid = drawn();
    for (let i = 0; i < 40; i += 1) grid.line([0, i], [40, i]).line([i, 0], [i, 40]);
    const drawing = grid.read({ limits: { work: 100 } });
    expect(drawing.state).toBe('refused');
    expect(codesOf(drawing)).toEqual(['too-much-work']);
  });

  it('gives contours in mm and areas in drawing units', () => {
    const file = drawn()
      .polyline(box(0, 0, 2, 1), true)
      .file({ units: { name: 'inch', millimetres: 25.4, basis: 'header' } });
    const drawing = drawingOf(file);
    expect(there(drawing.loops[0]).area).toBeCloseTo(2, 12);
    expect(there(drawing.loops[0]).perimeter).toBeCloseTo(6, 12);
    expect(Math.max(...there(drawing.loops[0]).contour.segments.map((s) => s.from.x))).toBeCloseTo(50.8, 12);
  });

  it('hands on points that are shown, in mm', () => {
    const marks = [
      { at: { x: 1, y: 2 }, layer: 'start', hidden: false },
      { at: { x: 3, y: 4 }, layer: 'start', hidden: true },
    ];
    const file = drawn()
      .circle([0, 0], 1)
      .file({ marks, units: { name: 'cm', millimetres: 10, basis: 'header' } });
    expect(drawingOf(file).marks).toEqual([{ at: { x: 10, y: 20 }, layer: 'start' }]);
  });

  it('leaves out a curve whose size is lost in rounding, and says where it was', () => {
    // Metres: a circle of two thousand kilometres has no digit left for a ten-thousandth of a micrometre.
    const circleOf = (radius: number) =>
      readDrawing(
        asciiDxf(dxfTags({ version: 'AC1015', units: 6, entities: [entity('CIRCLE', { 10: 0, 20: 0, 40: radius })] })),
        'circle.dxf',
      );
    const [small, huge] = [circleOf(0.5), circleOf(2e6)];
    expect([small.loops.length, codesOf(small)]).toEqual([1, []]);
    expect([huge.loops.length, huge.findings.find((f) => f.code === 'curve-unfitted')?.place?.kind]).toEqual([0, 'spot']);
  });

  it('asks for the unit where the code of the header is none that is known', () => {
    const square = lightPolyline([
      [0, 0],
      [30, 0],
      [30, 30],
    ]);
    const coded = (units: number) =>
      codesOf(readDrawing(asciiDxf(dxfTags({ version: 'AC1015', units, entities: [square] })), 'square.dxf'));
    expect(coded(99)).toEqual(['unit-code-unknown', 'units-missing']);
    expect(coded(4)).toEqual([]);
  });

  it('gives the area of the drawn ellipse to far more digits than its arcs have', () => {
    const ellipse = {
      kind: 'ellipse',
      centre: { x: 1, y: 2 },
      major: { x: 5, y: 0 },
      minor: { x: 0, y: 2 },
      start: 0,
      end: 2 * Math.PI,
    } as const;
    const drawing = drawn().entity([ellipse], true).read({ fit: 0.001 });
    expect(there(drawing.loops[0]).area / (10 * Math.PI)).toBeCloseTo(1, 8);
    expect(there(drawing.loops[0]).fitDeviation).toBeLessThanOrEqual(0.001);
    expect(codesOf(drawing)).toEqual(['curves-fitted']);
  });

  it('keeps its findings when it lies far from the origin', () => {
    const far = 4e6;
    const drawing = drawn()
      .lines([far, far], [far + 10, far], [far + 10, far + 5], [far, far + 5], [far, far + 0.004])
      .read();
    expect(codesOf(drawing)).toEqual(['gap-closed']);
    expect(there(drawing.loops[0]).area).toBeCloseTo(50, 5);
  });
});
