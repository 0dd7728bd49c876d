/** Layers that make whole loops by themselves are joined by themselves, and that is asked about. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { doneTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import type { Drawing } from '../drawing.ts';
import { takenOf } from '../left-out.ts';
import { readDrawing } from '../read/read-drawing.ts';

type Place = readonly [number, number];
const ring = (layer: string, ...corners: readonly Place[]): readonly (readonly Tag[])[] => way(layer, ...corners, corners[0] ?? [0, 0]);
const way = (layer: string, ...corners: readonly Place[]): readonly (readonly Tag[])[] =>
  corners.slice(1).map(([x, y], i) => lineTags(...(corners[i] ?? [0, 0]), x, y, layer));
const read = (...entities: readonly (readonly Tag[])[]): Drawing => readDrawing(asciiDxf(dxfTags({ units: 4, entities })), 'a.dxf');
const square = ring('cut', [0, 0], [40, 0], [40, 40], [0, 40]);
const areas = ({ loops }: Drawing): readonly number[] => loops.map((l) => l.area);
const doubts = ({ findings }: Drawing): readonly string[] => findings.filter((f) => f.severity === 'doubt').map((f) => f.code);

describe('layers that meet', () => {
  it('are kept apart where one part is drawn over another', () => {
    const drawing = read(...ring('A', [0, 0], [22, 0], [22, 31], [0, 31]), ...ring('B', [8, 0], [14, 0], [14, 31], [8, 31]));
    expect(areas(drawing)).toEqual([682, 186]);
    expect(drawing.loops.map((l) => l.layer)).toEqual(['A', 'B']);
    expect(doubts(drawing)).toEqual(['layers-apart', 'loops-share-edge']);
    const [told] = drawing.findings.filter((f) => f.code === 'layers-apart');
    expect(sentenceOf(told)).toMatch(
      /^Lines of the layers A and B meet at \(\d+, \d+\) and at 3 other places; A and B make whole loops, each by itself\.$/,
    );
    expect(told?.remedy).toMatchObject({ field: 'layers', value: ['A'] });
    expect(doneTextOf(told)).toContain('nothing is cut along B unless you say otherwise');
  });

  describe('and cannot be cut together', () => {
    const over = [...ring('A', [0, 0], [22, 0], [22, 31], [0, 31]), ...ring('B', [8, 0], [14, 0], [14, 31], [8, 31])];
    const beside = ring('C', [40, 0], [60, 0], [60, 20]);
    const cutOf = (drawing: Drawing, layers?: readonly string[]) => {
      const { loops, findings } = takenOf(drawing, { layers });
      const work = loops.filter((l) => l.aside === undefined);
      return { cut: work.map((l) => `${l.layer} ${l.depth}`), asked: doubts({ ...drawing, findings }) };
    };

    it('are one question: the largest is cut with what does not meet it, and the answer may be another', () => {
      const drawing = read(...over, ...beside);
      expect(drawing.findings.find((f) => f.code === 'layers-apart')?.remedy?.value).toEqual(['A', 'C']);
      expect(cutOf(drawing)).toEqual({ cut: ['A 0', 'C 0'], asked: ['layers-apart'] });
      expect(cutOf(drawing, ['A', 'C'])).toEqual({ cut: ['A 0', 'C 0'], asked: [] });
      expect(cutOf(drawing, ['B'])).toEqual({ cut: ['B 0'], asked: [] });
      expect(cutOf(drawing, ['A', 'B'])).toEqual({ cut: ['A 0', 'B 1'], asked: ['loops-share-edge'] });
    });

    it.each([
      ['crossing', ring('B', [10, 0], [15, -5], [15, 40], [10, 31]), ring('A', [0, 0], [10, 0], [22, 0], [22, 31], [10, 31], [0, 31])],
      ['edge to edge', ring('B', [22, 0], [30, 0], [30, 31], [22, 31]), ring('A', [0, 0], [22, 0], [22, 31], [0, 31])],
    ])('whether %s', (_, b, a) => {
      expect(cutOf(read(...a, ...b))).toEqual({ cut: ['A 0'], asked: ['layers-apart'] });
    });
  });

  it.each([
    ['corner to corner', way('centre', [0, 0], [40, 40])],
    ['by a bend', way('centre', [0, 0], [20, 15], [40, 40])],
    ['twice', [...way('centre', [0, 0], [40, 40]), ...way('centre', [40, 0], [0, 40])]],
    ['with arms beyond', way('centre', [-5, -5], [0, 0], [40, 40], [45, 45])],
  ])('leave a line across on a layer of its own uncut: %s', (_, lines) => {
    const drawing = read(...square, ...lines);
    expect(areas(drawing)).toEqual([1600]);
    expect(doubts(drawing)).toEqual(['layers-apart']);
    const [told] = drawing.findings;
    expect(sentenceOf(told)).toContain('cut makes whole loops by itself');
    expect(doneTextOf(told)).toContain('does not divide its loops');
    expect(drawing.openChains.length).toBeGreaterThan(0);
  });

  it('divide the loop where the line across is on the same layer, or where no layer is whole', () => {
    expect(areas(read(...square, ...way('cut', [0, 0], [40, 40])))).toEqual([800, 800]);
    const halves = [...way('a', [0, 0], [40, 0], [40, 40]), ...way('b', [40, 40], [0, 40], [0, 0]), ...way('c', [0, 0], [40, 40])];
    expect(doubts(read(...halves))).toContain('branched');
  });

  it('say nothing where they do not meet, or close only together', () => {
    expect(doubts(read(...square, ...ring('hole', [10, 10], [20, 10], [20, 20])))).toEqual([]);
    expect(doubts(read(...way('a', [0, 0], [40, 0], [40, 40]), ...way('b', [40, 40], [0, 40], [0, 0])))).toEqual([]);
  });
});
