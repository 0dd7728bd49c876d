/** The picture of a drawing: to scale, readable without colour, well-formed whatever the file holds. */
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { placeLabels } from '../../picture/numbered-circles.ts';
import type { Drawing } from '../drawing.ts';
import { box, drawn } from '../drawn.fixture.ts';
import { readDrawing } from '../read/read-drawing.ts';
import { drawingPicture } from './drawing-picture.ts';

/** The elements of a picture with their attributes; throws when it is not well-formed. */
const elementsOf = (svg: string): { name: string; attributes: Record<string, string> }[] => {
  const elements: { name: string; attributes: Record<string, string> }[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', (tag) => elements.push({ name: tag.name, attributes: tag.attributes as Record<string, string> }));
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(svg).close();
  return elements;
};

const styles = (drawing: Drawing): (string | undefined)[] =>
  elementsOf(drawingPicture(drawing))
    .filter((e) => e.name === 'path' && /^M.*[LA]/.test(e.attributes['d'] ?? '') && e.attributes['fill'] !== undefined)
    .map((e) => `${e.attributes['stroke-width']} ${e.attributes['stroke-dasharray'] ?? 'whole'}`);

describe('the picture of a drawing', () => {
  it('tells outlines, openings, hidden and open ones apart by weight and dash', () => {
    const drawing = drawn()
      .polyline(box(0, 0, 20, 10), true)
      .circle([5, 5], 1)
      .line([30, 0], [34, 3])
      .on('old', true)
      .circle([15, 5], 2)
      .read();
    expect(styles(drawing)).toEqual(['1.7 whole', '0.8 whole', '1 1.2 3', '1.3 7 4']);
  });

  it('is to scale: the bar is as long as it says', () => {
    const svg = drawingPicture(
      drawn()
        .polyline(box(0, 0, 200, 100), true)
        .read(),
    );
    const bar = there(elementsOf(svg).find((e) => e.name === 'rect' && e.attributes['fill'] === 'none'));
    const outline = there(there(elementsOf(svg).find((e) => e.name === 'path')).attributes['d']);
    const [x0, x1] = [...outline.matchAll(/[ML](\S+) /g)].map((m) => Number(m[1]));
    expect(svg).toContain('>50 mm<');
    expect(Number(bar.attributes['width']) / 50).toBeCloseTo((there(x1) - there(x0)) / 200, 4);
  });

  it('numbers its findings where they are, and tells them below', () => {
    const svg = drawingPicture(drawn().lines([0, 0], [10, 0], [10, 5], [0, 5], [0, 0.004]).read(), 'a "<b>" & c');
    expect(elementsOf(svg).filter((e) => e.name === 'circle')).toHaveLength(2);
    expect(svg).toContain('Repaired: Two ends at (0, 0) are 4 µm apart. They were joined.');
    expect(svg).toContain('a &quot;&lt;b&gt;&quot; &amp; c');
  });

  it('is well-formed whatever a layer is called', () => {
    const drawing = drawn().on('\u0000\u001b<&\ud800"').line([0, 0], [1, 1]).read();
    expect(elementsOf(drawingPicture(drawing)).length).toBeGreaterThan(5);
  });

  it('holds no number that is none, for a refused file, a point and a single upright line', () => {
    const refused = readDrawing(new Uint8Array(0), 'x');
    const upright = drawn().line([1, 1], [1, 9]).read();
    const mark: Drawing = { ...refused, marks: [{ at: { x: 3, y: 4 }, layer: '0' }] };
    for (const drawing of [refused, upright, mark]) expect(drawingPicture(drawing)).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('draws a circle as two half arcs, counter-clockwise on the sheet too', () => {
    const d = there(there(elementsOf(drawingPicture(drawn().circle([0, 0], 5).read())).find((e) => e.name === 'path')).attributes['d']);
    expect(d.match(/A\S+ \S+ 0 0 0 /g)).toHaveLength(2);
  });

  it('puts no numbered circle on another', () => {
    const spots = placeLabels(
      Array.from({ length: 40 }, (_, i) => [100 + (i % 8), 100 + Math.floor(i / 8)] as const),
      8,
    );
    for (let i = 0; i < spots.length; i += 1)
      for (let j = 0; j < i; j += 1)
        expect(Math.hypot(there(spots[i])[0] - there(spots[j])[0], there(spots[i])[1] - there(spots[j])[1])).toBeGreaterThan(16);
  });
});
