/** Texts, dimension styles and header that disagree about the unit are asked about, with what they say. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, entity, lightPolyline, section, type Tag } from '../../../test/dxf-writer.ts';
import { doneTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import type { Drawing } from '../drawing.ts';
import { readDrawing } from './read-drawing.ts';

const plate = lightPolyline([
  [0, 0],
  [74, 0],
  [74, 78],
  [0, 78],
]);
const text = (words: string, type = 'TEXT'): readonly Tag[] => entity(type, { 10: 1, 20: 1, 40: 2 }, [[1, words]]);
const texts = (count: number, words: string): readonly (readonly Tag[])[] => Array.from({ length: count }, () => text(words));
const style = (name: string, behind = ''): readonly Tag[] => [
  [0, 'DIMSTYLE'],
  [2, name],
  [3, behind],
  [70, 0],
];
const styles = (...all: readonly (readonly Tag[])[]): readonly Tag[] =>
  section('TABLES', [[0, 'TABLE'], [2, 'DIMSTYLE'], [70, all.length], ...all.flat(), [0, 'ENDTAB']]);
const read = (units: number | undefined, entities: readonly (readonly Tag[])[], before: readonly Tag[] = [], asked?: string): Drawing =>
  readDrawing(
    asciiDxf([...before, ...dxfTags(units === undefined ? { entities: [plate, ...entities] } : { units, entities: [plate, ...entities] })]),
    'a.dxf',
    { units: asked },
  );
const doubts = ({ findings }: Drawing): readonly string[] => findings.filter((f) => f.severity === 'doubt').map((f) => f.code);

describe('a drawing without a unit', () => {
  it.each(['3/8"', '.375"', '\\A1;1.25"', '2.5 in.', '%%c.500"', 'ALL DIMENSIONS IN INCHES'])(
    'is assumed to be in inches by its texts: %s',
    (words) => {
      const drawing = read(undefined, texts(22, words));
      expect(drawing.units).toEqual({ name: 'inch', millimetres: 25.4, basis: 'assumed' });
      expect(doubts(drawing)).toEqual(['units-missing']);
      const told = drawing.findings.find((f) => f.code === 'units-missing');
      expect(sentenceOf(told)).toContain('It has texts in inches (22): ');
      expect(doneTextOf(told)).toBe('Inches were assumed.');
    },
  );

  it.each(['25 mm', 'DIMENSIONS IN MM', '1"-8 UNC', '1/4" NPT', '1" (25.4 mm)', 'PLATE 12', '4 HOLES IN A ROW'])(
    'stays assumed to be in mm: %s',
    (words) => {
      expect(read(undefined, texts(3, words)).units.name).toBe('mm');
    },
  );
});

describe('what speaks of a unit', () => {
  const told = ({ findings }: Drawing): string => sentenceOf(findings.find((f) => f.code === 'units-disagree'));

  it('is quoted three times at most, and of a long note no more than forty signs', () => {
    expect(told(read(4, [text('1"'), text('2"'), text('3"'), text('4"')]))).toContain('It has texts in inches (4): 1", 2", 3".');
    const note = 'ALL DIMENSIONS ARE IN INCHES, UNLESS SOMETHING ELSE IS SAID';
    expect(told(read(4, [text(note)]))).toContain('(1): ALL DIMENSIONS ARE IN INCHES, UNLESS SOM.');
  });

  it('is read on a layout sheet too, where the title block stands', () => {
    const sheet: readonly Tag[] = entity('TEXT', { 67: 1, 10: 1, 20: 1, 40: 2 }, [[1, 'ALL DIMENSIONS IN INCHES']]);
    expect(doubts(read(4, [sheet]))).toEqual(['units-disagree']);
  });
});

describe('the texts of an SVG', () => {
  const svg = (...texts: readonly string[]): Drawing =>
    readDrawing(
      new TextEncoder().encode(
        `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="80mm" viewBox="0 0 100 80"><rect x="5" y="5" width="60" height="40"/>${texts.join('')}</svg>`,
      ),
      'a.svg',
    );

  it('speak of its unit', () => {
    const drawing = svg('<text x="1" y="1">2.36"</text>', '<text><tspan>1.</tspan><tspan>57 in</tspan></text>');
    expect(doubts(drawing)).toEqual(['units-disagree']);
    expect(sentenceOf(drawing.findings.find((f) => f.code === 'units-disagree'))).toContain('It has texts in inches (2): 2.36", 1.57 in.');
  });

  it('say nothing where they agree or name no unit', () => {
    expect(doubts(svg('<text>60 mm</text>'))).toEqual([]);
    expect(doubts(svg('<text>PLATE 7</text>'))).toEqual([]);
  });
});

describe('a header that texts or styles contradict', () => {
  it.each([
    ['metric styles in inches', read(1, [], styles(style('ISO-25'))), 'Its dimension styles are metric: ISO-25.'],
    ['mm behind sizes in inches', read(1, [], styles(style('shop', '<> mm'))), 'metric: shop'],
    ['a text in inches', read(1, [text('30 mm', 'MTEXT')]), 'It has texts in mm (1): 30 mm.'],
    ['the text of a dimension', read(1, [text('30 mm', 'DIMENSION')]), 'It has texts in mm (1): 30 mm.'],
    ['inch marks in mm', read(4, texts(5, '1.5"')), 'It has texts in inches (5): 1.5".'],
    ['inch styles in mm', read(4, [], styles(style('a', '<>"'))), 'Its dimension styles are in inches: a.'],
  ])('is asked about, with what they say: %s', (_, drawing, quoted) => {
    expect(doubts(drawing)).toEqual(['units-disagree']);
    const told = sentenceOf(drawing.findings.find((f) => f.code === 'units-disagree'));
    expect(told).toContain(quoted);
    expect(told).toMatch(/Read as (inch|mm) it measures .* by .*; read as (mm|inch) it would be/);
  });

  it.each([
    ['the unit that was asked for', read(1, [text('30 mm')], [], 'inch')],
    ['agreement', read(1, texts(4, '1.5"'), styles(style('STANDARD')))],
    ['more of its own than of the other', read(4, [...texts(4, '30 mm'), text('1.5"')], styles(style('ISO-25')))],
    ['pipe threads', read(4, texts(3, 'G 1/2"'))],
  ])('is not asked about: %s', (_, drawing) => {
    expect(doubts(drawing)).toEqual([]);
  });
});
