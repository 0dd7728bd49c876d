/** A tangle is refused after its first crossings, for counted work and little memory. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, lightPolyline, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Drawing } from '../drawing.ts';
import { readDrawing } from '../read/read-drawing.ts';

type Vertex = readonly [number, number];
const tangle = (n: number, dx = 0): readonly Vertex[] =>
  Array.from({ length: n }, (_, i): Vertex => [dx + 100 * Math.sin(1.3 * i), 100 * Math.cos(2.7 * i)]);
const read = (...entities: readonly (readonly Tag[])[]): Drawing => readDrawing(asciiDxf(dxfTags({ units: 4, entities })), 'a.dxf');
const closedLines = (points: readonly Vertex[]): readonly (readonly Tag[])[] =>
  points.map(([x, y], i) => {
    const [u, v] = points[(i + 1) % points.length] ?? [0, 0];
    return lineTags(x, y, u, v);
  });

describe('a tangle', () => {
  it.each([8000, 16_000])('of %i vertices is refused by its crossings in a moment', (n) => {
    const start = performance.now();
    const drawing = read(lightPolyline(tangle(n)));
    expect(drawing.findings.map((f) => f.code)).toContain('loop-crosses-itself');
    expect(sentenceOf(drawing.findings[0])).toContain('at a hundred other places or more');
    // Two hundred times slower before; the machine may be busy.
    expect(performance.now() - start).toBeLessThan(5000);
  });

  it('of single lines is refused just so', () => {
    expect(read(...closedLines(tangle(3000))).findings.map((f) => f.code)).toContain('loop-crosses-itself');
  });

  it('of two loops that cross each other everywhere is refused by both names', () => {
    const comb = (turned: boolean): readonly Vertex[] =>
      Array.from({ length: 400 }, (_, i): Vertex => {
        const [along, across] = [i / 4, [0, 100, 100, 0][i % 4] ?? 0];
        return turned ? [across + 0.1, along + 0.05] : [along, across];
      });
    const { findings } = read(lightPolyline(comb(false)), lightPolyline(comb(true)));
    const sentence = sentenceOf(findings.find((f) => f.code === 'loops-cross'));
    expect(sentence).toMatch(/^L1 and L2 cross at .* and at a hundred other places or more/);
  });

  it('that only looks like one costs counted work', () => {
    // Slanted teeth whose boxes all overlap, and which never cross.
    const teeth = Array.from({ length: 12_000 }, (_, i): Vertex => (i % 2 === 0 ? [i / 100, 0] : [i / 100 + 100, 100]));
    const { state, findings } = read(lightPolyline([...teeth, [300, 101], [300, -1]]));
    expect([state, findings[0]?.code]).toEqual(['refused', 'too-much-work']);
  });

  it.each([
    [100, 'and at 99 other places'],
    [101, 'and at a hundred other places or more'],
  ])('of %i crossings is told by as many', (crossings, others) => {
    const teeth = Array.from({ length: crossings + 1 }, (_, i): Vertex => [i, i % 2 === 0 ? 1 : -1]);
    const { findings } = read(lightPolyline([...teeth, [crossings + 1, 0], [-1, 0]]));
    expect(sentenceOf(findings[0])).toContain(others);
  });

  it('whose crossings are few has them counted as before', () => {
    const { findings } = read(
      lightPolyline([
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ]),
    );
    expect(sentenceOf(findings[0])).toContain('L1 crosses itself at (5, 5).');
  });
});
