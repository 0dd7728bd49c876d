/** The text and the data that tell a drawing. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { box, drawn } from '../../drawing/drawn.fixture.ts';
import { drawingOf, readDrawing } from '../../drawing/read/read-drawing.ts';
import { describeDrawing, drawingJson } from './drawing-report.ts';

const part = drawn()
  .polyline(box(0, 0, 20, 10), true)
  .circle([5, 5], 1)
  .circle([10, 5], 1)
  .line([30, 0], [34, 3]);

describe('telling a drawing', () => {
  it('as text gives unit, loops, chains and findings, the gravest first', () => {
    const text = describeDrawing(part.read(), 'part.dxf');
    expect(text).toContain('part.dxf: DXF, complete.\nUnit: mm, from the file.\n3 closed loops:');
    expect(text).toContain('  L1: area 200 mm², perimeter 60 mm, layer 0, outermost');
    expect(text).toContain('  L2: area 3.141593 mm², perimeter 6.283185 mm, layer 0, in L1, an opening');
    expect(text).toContain('1 open chain:\n  C1: 5 mm from (30, 0) to (34, 3), layer 0');
    expect(text).toContain('  Warning: C1 on layer 0, 5 mm long from (30, 0) to (34, 3), does not close.');
  });

  it('as text puts many alike loops in one line', () => {
    const plate = drawn().polyline(box(0, 0, 100, 10), true);
    for (let i = 0; i < 9; i += 1) plate.circle([5 + 10 * i, 5], 1);
    expect(describeDrawing(plate.read())).toContain('  L2 … L10: 9 alike, each area 3.141593 mm²');
  });

  it('as text says why a file was refused, and nothing else', () => {
    const text = describeDrawing(readDrawing(new TextEncoder().encode('hello'), 'x.txt'), 'x.txt');
    expect(text.split('\n')).toHaveLength(3);
    expect(text).toContain('x.txt: unknown format, not read.');
  });

  it('as data keeps to drawing units', () => {
    const data = drawingJson(drawingOf(part.file({ units: { name: 'inch', millimetres: 25.4, basis: 'header' } })), 'part.dxf');
    expect(data.file).toBe('part.dxf');
    expect(data.loops.map((l) => [l.id, l.parent, l.depth])).toEqual([
      ['L1', undefined, 0],
      ['L2', 'L1', 1],
      ['L3', 'L1', 1],
    ]);
    expect(there(data.loops[0]).area).toBeCloseTo(200, 9);
    expect(there(data.openChains[0]).ends[1].x).toBeCloseTo(34, 12);
    expect(there(data.openChains[0]).length).toBeCloseTo(5, 12);
    expect(JSON.parse(JSON.stringify(data.findings))[0].sentence).toMatch(/^C1 on layer 0, .* does not close\.$/);
  });
});
