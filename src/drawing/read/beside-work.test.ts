/** Tables, grids, frames, other views and lines of construction are one question each, and what is none of them is not asked about. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, entity, layer, lightPolyline, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { doneTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import type { Drawing } from '../drawing.ts';
import { takenOf } from '../left-out.ts';
import { readDrawing } from './read-drawing.ts';

type Entities = readonly (readonly Tag[])[];
const rectangle = (x: number, y: number, wide: number, high: number): readonly Tag[] =>
  lightPolyline([
    [x, y],
    [x + wide, y],
    [x + wide, y + high],
    [x, y + high],
  ]);
const chain = (...points: readonly (readonly [number, number])[]): Entities =>
  points.slice(1).map(([x, y], i) => lineTags(points[i]?.[0] ?? 0, points[i]?.[1] ?? 0, x, y));
const hole = (x: number, y: number, radius = 4): readonly Tag[] => entity('CIRCLE', { 10: x, 20: y, 40: radius });
const text = (words: string): readonly Tag[] => entity('TEXT', { 10: 1, 20: 1, 40: 2 }, [[1, words]]);
const part = [rectangle(60, 90, 80, 50), hole(80, 110), hole(120, 110)];
const plain = lightPolyline([
  [60, 90],
  [140, 90],
  [140, 140],
  [100, 120],
]);

const read = (...entities: Entities): Drawing =>
  takenOf(readDrawing(asciiDxf(dxfTags({ units: 4, entities, layers: [layer('0')] })), 'a.dxf'), {});
const asked = ({ findings }: Drawing): readonly string[] => findings.filter((f) => f.severity === 'doubt').map((f) => f.code);
const work = ({ loops }: Drawing): readonly string[] =>
  loops.filter((l) => l.aside === undefined).map((l) => `${Math.round(l.area)} ${l.depth}`);

/** Cells of 20 by 8 as lines between all corners. */
const lattice = (x: number, y: number, columns: number, rows: number): Entities => [
  ...Array.from({ length: rows + 1 }, (_, r) =>
    chain(...Array.from({ length: columns + 1 }, (_, c) => [x + 20 * c, y + 8 * r] as const)),
  ).flat(),
  ...Array.from({ length: columns + 1 }, (_, c) =>
    chain(...Array.from({ length: rows + 1 }, (_, r) => [x + 20 * c, y + 8 * r] as const)),
  ).flat(),
];

describe('a lattice', () => {
  it.each([
    ['of lines beside a part', [...lattice(200, 0, 3, 2), ...part]],
    ['of rectangles', [...[0, 1, 2].map((i) => rectangle(200, 8 * i, 30, 8)), ...part]],
    ['of cells of unlike width', [rectangle(200, 0, 30, 8), rectangle(200, 8, 12, 8), rectangle(212, 8, 18, 8), ...part]],
  ])('is left out, and the part is cut: %s', (_, entities) => {
    const drawing = read(...entities);
    expect(asked(drawing)).toEqual(['looks-like-table']);
    expect(work(drawing)).toEqual(['4000 0', '50 1', '50 1']);
    expect(doneTextOf(drawing.findings.find((f) => f.code === 'looks-like-table'))).toContain('left out unless you say otherwise');
  });

  it('against a border is left out with it', () => {
    const border: Entities = [...chain([240, 0], [0, 0], [0, 180], [300, 180], [300, 16]), ...chain([300, 16], [300, 8], [300, 0])];
    const drawing = read(...border, ...lattice(240, 0, 3, 2), ...part);
    expect(asked(drawing)).toEqual(['looks-like-table', 'looks-like-border']);
    expect(work(drawing)).toEqual(['4000 0', '50 1', '50 1']);
  });

  it('is work where there is nothing else', () => {
    expect(asked(read(...[0, 1, 2].map((i) => rectangle(0, 8 * i, 30, 8))))).not.toContain('looks-like-table');
  });
});

describe('a border of any size', () => {
  const frame = rectangle(0, 0, 333, 222);
  const ticks: Entities = [
    lineTags(100, 0, 100, 5),
    lineTags(200, 0, 200, 5),
    lineTags(0, 100, 5, 100),
    lineTags(333, 100, 328, 100),
    lineTags(100, 222, 100, 217),
  ];
  it.each([
    ['marks of zones', [frame, ...ticks, plain]],
    ['a grid', [frame, ...[50, 100, 150].flatMap((at) => [lineTags(0, at, 333, at), lineTags(at, 0, at, 222)]), plain]],
    [
      'lines of a title block',
      [frame, lineTags(233, 0, 233, 40), lineTags(233, 40, 333, 40), lineTags(233, 20, 333, 20), lineTags(280, 0, 280, 20), plain],
    ],
    ['words of a title block', [frame, text('SCALE 1:1'), text('DATE'), text('DRAWN BY'), plain]],
    ['two lines', [frame, rectangle(10, 10, 313, 202), plain]],
  ])('is known by %s', (_, entities) => {
    const drawing = read(...entities);
    expect(asked(drawing).filter((code) => code !== 'branched')).toEqual(['looks-like-border']);
    expect(work(drawing)).toEqual(['2200 0']);
  });

  it.each([
    ['slits from two of its sides', [plain, ...[100, 200].flatMap((x) => [lineTags(x, 0, x, 5), lineTags(x, 222, x, 217)])]],
    ['an opening', [plain]],
    ['openings and bend lines', [plain, lineTags(20, 0, 20, 222), lineTags(300, 0, 300, 222)]],
    ['an opening and a note', [plain, text('MATERIAL D2'), text('2 PIECES')]],
    ['a window with a plain part', []],
  ])('is a plate where it has only %s', (_, entities) => {
    expect(asked(read(frame, ...entities))).toEqual([]);
  });
});

describe('a border around nothing but circles', () => {
  const title = [text('SCALE 1:1'), text('DATE'), text('DRAWN BY')];
  it.each([
    ['with words of a title block beside it', [rectangle(0, 0, 100, 80), hole(20, 20), hole(80, 20), ...title], ['8000 0', '50 1', '50 1']],
    ['of the size of a sheet', [rectangle(0, 0, 297, 210), hole(20, 20)], ['62370 0', '50 1']],
    [
      'with lines both ways across it',
      [rectangle(0, 0, 100, 80), hole(20, 20), ...[30, 60].flatMap((at) => [lineTags(0, at, 100, at), lineTags(at, 0, at, 80)])],
      ['8000 0', '50 1'],
    ],
    ['in a border of a sheet', [rectangle(0, 0, 420, 297), rectangle(20, 20, 380, 257), hole(60, 60)], ['97660 0', '50 1']],
  ])('is a plate as well, so it is asked about and cut: %s', (_, entities, cut) => {
    const drawing = read(...entities);
    expect(work(drawing)).toEqual(cut);
    const told = drawing.findings.filter((f) => f.code === 'looks-like-border').at(-1);
    expect(doneTextOf(told)).toContain('will be cut unless you leave it out');
    expect(told?.remedy?.field).toBe('without');
  });

  it.each([
    ['of a sheet', ['BORDER', 'sheet 1'], ['50 0']],
    ['of sheet metal', ['SHEET_METAL'], ['8000 0', '50 1']],
  ])('is judged by the name of its layer: %s', (_, layers, cut) => {
    for (const on of layers) {
      const frame = rectangle(0, 0, 100, 80).map(([code, value]): Tag => [code, code === 8 ? on : value]);
      expect(work(read(frame, hole(20, 20)))).toEqual(cut);
    }
  });
});

describe('another view', () => {
  it.each([
    ['a side view', [...part, rectangle(60, 60, 80, 20)], ['looks-like-view']],
    ['a view from the side', [...part, rectangle(160, 90, 12, 50)], ['looks-like-view']],
    ['both', [...part, rectangle(160, 90, 12, 50), rectangle(60, 60, 80, 12)], ['looks-like-view']],
    [
      'a section in pieces',
      [...part, rectangle(60, 60, 16, 20), rectangle(84, 60, 32, 20), rectangle(124, 60, 16, 20)],
      ['looks-like-view'],
    ],
    ['the view of a disc', [entity('CIRCLE', { 10: 0, 20: 0, 40: 30 }), hole(0, 0), rectangle(50, -30, 15, 60)], ['looks-like-view']],
    ['another part', [...part, rectangle(65, 60, 70, 20)], []],
    ['one a little longer', [...part, rectangle(60, 60, 80.1, 20)], []],
    ['the same part again', [...part, rectangle(60, 20, 80, 50), hole(80, 40), hole(120, 40)], []],
    ['a plain plate beside a plain plate', [rectangle(0, 0, 80, 50), rectangle(0, 60, 80, 20)], []],
  ])('is asked about once, and cut unless it is left out: %s', (_, entities, codes) => {
    const drawing = read(...entities);
    expect(asked(drawing)).toEqual(codes);
    expect(drawing.loops.filter((l) => l.aside !== undefined)).toEqual([]);
    const told = drawing.findings.find((f) => f.code === 'looks-like-view');
    if (told !== undefined) expect([sentenceOf(told), doneTextOf(told)].join(' ')).toMatch(/looks? like .* cut as .* unless you leave/);
  });
});

describe('a line that explains', () => {
  const pitch = (more: Readonly<Record<number, string>>): readonly Tag[] => entity('CIRCLE', { ...more, 10: 100, 20: 115, 40: 24 });
  const flange = [entity('CIRCLE', { 10: 100, 20: 115, 40: 40 }), hole(76, 115), hole(124, 115)];
  it.each([
    ['by its line type', pitch({ 6: 'CENTER2' })],
    ['by that of hidden edges', pitch({ 6: 'ACAD_ISO02W100' })],
    ['by its layer', pitch({ 8: 'Center Lines' })],
    ['by a layer of dimensions', pitch({ 8: 'AM_DIM' })],
  ])('is left out and asked about: a pitch circle known %s', (_, circle) => {
    const drawing = read(...flange, circle);
    expect(asked(drawing)).toEqual(['looks-like-construction']);
    expect(work(drawing)).toEqual(['5027 0', '50 1', '50 1']);
  });

  it.each([
    ['all of a drawing', [pitch({ 6: 'DASHED' })]],
    ['a layer that only sounds like one', [...flange, pitch({ 8: 'AXIAL_PLATE' })]],
    ['a line type of its own', [...flange, pitch({ 6: 'CONTINUOUS' })]],
  ])('is none in %s', (_, entities) => {
    expect(asked(read(...entities))).not.toContain('looks-like-construction');
  });

  it('has the line type of its layer or block where it names none', () => {
    const layers = [[...layer('x'), [6, 'CENTER'] as Tag]];
    const entities = [...flange, entity('CIRCLE', { 8: 'x', 10: 100, 20: 115, 40: 24 })];
    expect(asked(readDrawing(asciiDxf(dxfTags({ units: 4, layers, entities })), 'a.dxf'))).toEqual(['looks-like-construction']);
  });

  it('is dashed in an SVG', () => {
    const svg = (dashes: string) =>
      `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100"><circle cx="50" cy="50" r="40"/><g stroke-dasharray="${dashes}"><circle cx="50" cy="50" r="24"/></g></svg>`;
    const of = (dashes: string) => asked(readDrawing(new TextEncoder().encode(svg(dashes)), 'a.svg'));
    expect([of('4 2'), of('none')]).toEqual([['looks-like-construction'], []]);
  });
});
