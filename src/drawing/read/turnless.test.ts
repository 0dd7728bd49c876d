/** An arc with equal angles is what was left of a fillet or a question, never an opening that nobody drew. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, block, dxfTags, entity, lightPolyline, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Drawing } from '../drawing.ts';
import { readDrawing } from './read-drawing.ts';

const plate = lightPolyline([
  [0, 0],
  [40, 0],
  [40, 40],
  [0, 40],
]);
const arcTags = (
  x: number,
  y: number,
  radius: number,
  start: number,
  end: number,
  more: Readonly<Record<number, number>> = {},
): readonly Tag[] => entity('ARC', { 10: x, 20: y, 40: radius, 50: start, 51: end, ...more });
const drawn = (...entities: readonly (readonly Tag[])[]): Drawing => readDrawing(asciiDxf(dxfTags({ units: 4, entities })), 'a.dxf');
const codes = ({ findings }: Drawing): readonly (readonly string[])[] => findings.map((f) => [f.code, f.severity]);

describe('an arc that ends at the angle where it starts', () => {
  it.each([
    [90, 90],
    [0, 0],
    [360, 360],
    [89.9236056725, 89.9236056725],
    [90.0000000001, 90],
    [90, 90.0000000001],
    [-30, -30],
  ])('is asked about where it stands alone (%s to %s)', (start, end) => {
    const drawing = drawn(plate, arcTags(20, 20, 5, start, end));
    expect(drawing.loops.length).toBe(1);
    expect(codes(drawing)).toEqual([['arc-without-turn', 'doubt']]);
    expect(drawing.findings[0]?.place).toMatchObject({ kind: 'spot', reach: 5 });
    expect(sentenceOf(drawing.findings[0])).toContain('(20, 20), of radius 5 mm');
  });

  it.each([
    [0, 360],
    [360, 0],
    [90, 450],
    [-90, 270],
    [0, 359.99999999],
    [0, 720],
  ])('is a full circle where a whole turn lies between them (%s to %s)', (start, end) => {
    const drawing = drawn(plate, arcTags(20, 20, 5, start, end));
    expect(drawing.loops.map((loop) => loop.contour.segments.length)).toEqual([4, 1]);
    expect(codes(drawing)).toEqual([]);
  });

  it.each([
    [180, 180],
    [180.0000000001, 180],
  ])('is left out with a note as the fillet of a corner in a chain (%s to %s)', (start, end) => {
    const chain = [lineTags(0, 0, 40, 0), lineTags(40, 0, 40, 30), lineTags(40, 30, 0, 30), lineTags(0, 30, 0, 0)];
    const drawing = drawn(...chain, arcTags(42, 30, 2, start, end));
    expect(drawing.loops.map((loop) => loop.area)).toEqual([1200]);
    expect(codes(drawing)).toEqual([['arc-without-turn', 'note']]);
  });

  it('is the same of an ellipse, in a block, turned and stretched, and hidden it is only a note', () => {
    const flat = entity('ELLIPSE', { 10: 20, 20: 20, 11: 8, 21: 0, 40: 0.5, 41: 1, 42: 1 });
    expect(codes(drawn(plate, flat))).toEqual([['arc-without-turn', 'doubt']]);
    const tags = dxfTags({
      units: 4,
      blocks: [block('B', [arcTags(0, 0, 5, 30, 30)])],
      entities: [plate, entity('INSERT', { 2: 'B', 10: 20, 20: 20, 41: 2, 50: 30 }), entity('INSERT', { 2: 'B', 10: 20, 20: 20, 60: 1 })],
    });
    const placed = readDrawing(asciiDxf(tags), 'a.dxf');
    expect(placed.loops.length).toBe(1);
    expect(codes(placed)).toEqual([
      ['arc-without-turn', 'doubt'],
      ['arc-without-turn', 'note'],
    ]);
  });

  it('does not count for the size of the drawing', () => {
    expect(codes(drawn(plate, arcTags(20, 20, 90_000, 7, 7)))).toEqual([['arc-without-turn', 'doubt']]);
  });
});
