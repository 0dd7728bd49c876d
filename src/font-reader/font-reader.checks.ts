/** What is read from the fonts of the house, held against metric files that other parsers made. */
import { there } from '../../test/there.ts';
import { fontFile } from '../font-files/font-files.ts';
import { parserOnDemand } from '../font-files/parser-on-demand.ts';
import type { CheckRow } from '../quantity/check.ts';
import type { Typeface } from '../shapes/lettering/typeface.ts';
import { FACE_FILES } from './face-files.ts';
import { fontTables } from './font-tables.ts';
import { readFont } from './read-font.ts';

const faces = new Map<string, Typeface>();

const face = (file: string): Typeface => {
  const found = readFont(fontFile(file), file, parserOnDemand);
  if (found.kind === 'none') throw new Error(`${file} is no font`);
  faces.set(file, faces.get(file) ?? found.typeface);
  return there(faces.get(file));
};

/** Thousandths of an em. */
const width = (file: string, character: string): number => {
  const { em, glyphOf } = face(file);
  const found = glyphOf(character);
  return found.kind === 'glyph' ? (1000 * found.glyph.advance) / em : Number.NaN;
};

const height = (file: string, character: string): number => {
  const { em, glyphOf } = face(file);
  const found = glyphOf(character);
  if (found.kind !== 'glyph') return Number.NaN;
  return (1000 * Math.max(...found.glyph.outlines.flatMap((o) => [o.from.y, ...o.steps.map((s) => s.to.y)]))) / em;
};

const SANS = 'DejaVuSans.ttf';
const MONO = 'DejaVuSansMono.ttf';

/** Those files cut off what is behind the point, where others round. */
const wider = { tolerance: 1, reason: 'the metric files cut off thousandths of an em or round them' } as const;

const WIDTHS = [
  ['A', '684'],
  ['H', '752'],
  ['O', '787'],
  ['W', '989'],
  ['i', '278'],
  ['8', '636'],
  ['@', '1000'],
  ['Ø', '787'],
] as const;

export const checks: readonly CheckRow[] = [
  ...WIDTHS.map(
    ([character, value], i): CheckRow => ({
      id: `LT-01${'abcdefgh'[i]}`,
      source: 'dejavu-metrics',
      place: `DejaVuSans.ufm, U ${character.codePointAt(0)}`,
      how: 'printed and seen',
      question: `width of ${character} in DejaVu Sans, thousandths of an em`,
      value,
      ours: () => width(SANS, character),
      wider,
    }),
  ),
  {
    id: 'LT-02a',
    source: 'dejavu-metrics',
    place: 'dejavusansmono, CapHeight',
    how: 'printed and seen',
    question: 'height of capitals in DejaVu Sans Mono, thousandths of an em',
    value: '729',
    ours: () => (1000 * face(MONO).capitals) / face(MONO).em,
    wider,
  },
  {
    id: 'LT-02b',
    source: 'dejavu-metrics',
    place: 'dejavusansmono, XHeight',
    how: 'printed and seen',
    question: 'height of a small x in DejaVu Sans Mono, thousandths of an em',
    value: '547',
    ours: () => height(MONO, 'x'),
    wider,
  },
  {
    id: 'LT-02c',
    source: 'dejavu-metrics',
    place: 'dejavusansmono, MissingWidth',
    how: 'printed and seen',
    question: 'width of every character of DejaVu Sans Mono, thousandths of an em',
    value: '602',
    ours: () => width(MONO, 'm'),
    wider,
  },
  {
    id: 'LT-02d',
    source: 'dejavu-metrics',
    place: 'dejavusansmono, hhea Ascent/Descent/LineGap',
    how: 'printed and seen',
    question: 'from line to line in DejaVu Sans Mono, thousandths of an em',
    value: '1164',
    ours: () => (1000 * face(MONO).line) / face(MONO).em,
    wider,
  },
  {
    id: 'LT-03',
    source: 'opentype-format',
    place: 'table directory, checksum',
    how: 'printed and seen',
    question: 'every table of the eight font files has the sum that its makers stored',
    value: 'yes',
    ours: () => (Object.values(FACE_FILES).every((f) => fontTables(fontFile(f), f).kind === 'tables') ? 'yes' : 'no'),
  },
];
