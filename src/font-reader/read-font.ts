/** The bytes of a font -> its letters. A font may come from anywhere: whatever is wrong with it is said in a sentence, never thrown. */
import type { Font, Glyph as FontGlyph } from 'opentype.js/dist/opentype.mjs';
import type { FontFound, FoundGlyph, Typeface } from '../shapes/lettering/typeface.ts';
import { count, name as named } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import { fontTables } from './font-tables.ts';
import { outlinesOf } from './glyph-outlines.ts';

/** Larger files are not read, bytes; fonts for half of the world's scripts stay below it. */
export const LARGEST_FONT = 30_000_000;

/** What makes tables into a font. It is given, since it is long to load and not every program that may be asked for letters is. */
export type FontParser = (file: ArrayBuffer) => Font;

/** @param name what the font is called where it cannot be read: its file. */
export const readFont = (bytes: Uint8Array, name: string, parse: FontParser): FontFound => {
  if (bytes.length > LARGEST_FONT) return { kind: 'none', why: unreadable.tooLarge(name, bytes.length) };
  const tables = fontTables(bytes, name);
  if (tables.kind === 'none') return tables;
  try {
    return faceOf(parse(tables.file), name);
  } catch {
    return { kind: 'none', why: unreadable.contradicts(name) };
  }
};

/** Why there is no font in a file. */
export const unreadable = phrases('font-unusable', {
  tooLarge: (file: string, bytes: number) =>
    say`${{ font: named(file) }} has ${{ size: count(bytes, 'byte') }}; fonts of up to ${{ most: count(LARGEST_FONT) }} are read.`,
  contradicts: (file: string) => say`${{ font: named(file) }} cannot be read as a font: tables are missing, or contradict each other.`,
  sizeless: (file: string) => say`${{ font: named(file) }} does not say how large its letters are.`,
});

const faceOf = (font: Font, file: string): FontFound => {
  const { unitsPerEm: em, ascender, descender } = font;
  const line = ascender - descender + (font.tables.hhea?.lineGap ?? 0);
  if (!(em >= 16 && em <= 16_384) || !(line > 0)) return { kind: 'none', why: unreadable.sizeless(file) };
  const known = new Map<string, FoundGlyph>();
  const glyphOf = (character: string): FoundGlyph => {
    const found = known.get(character) ?? glyphIn(font, character);
    known.set(character, found);
    return found;
  };
  const capital = glyphOf('H');
  const heights = capital.kind === 'glyph' ? capital.glyph.outlines.flatMap((o) => [o.from.y, ...o.steps.map((s) => s.to.y)]) : [];
  const typeface: Typeface = {
    name: nameOf(font) ?? file,
    em,
    line,
    // Less than that is a mark that stands for a missing letter.
    capitals: Math.max(0, ...heights) > em / 50 ? Math.max(...heights) : 0,
    glyphOf,
    kerning: kerningOf(font),
  };
  return { kind: 'typeface', typeface };
};

const nameOf = (font: Font): string | undefined => {
  const name = font.getEnglishName('fullName') ?? font.getEnglishName('fontFamily');
  return typeof name === 'string' && name.trim() !== '' ? name.trim().slice(0, 80) : undefined;
};

const glyphIn = (font: Font, character: string): FoundGlyph => {
  try {
    const glyph = font.charToGlyph(character);
    // Number 0 is the box that stands for what a font does not have.
    if (!(glyph.index > 0)) return { kind: 'missing' };
    const advance = advanceOf(glyph, font.unitsPerEm);
    const outlines = outlinesOf(glyph.path.commands, font.unitsPerEm);
    return advance === undefined || outlines.kind === 'unusable'
      ? { kind: 'broken' }
      : { kind: 'glyph', glyph: { advance, outlines: outlines.outlines } };
  } catch {
    return { kind: 'broken' };
  }
};

const advanceOf = ({ advanceWidth = 0 }: FontGlyph, em: number): number | undefined =>
  Number.isFinite(advanceWidth) && Math.abs(advanceWidth) < 50 * em ? advanceWidth : undefined;

/** By the pairs that the font has for the script of the left letter, else for any, else by its old table of pairs. */
const kerningOf = (font: Font): Typeface['kerning'] => {
  const tables = new Map<string, readonly unknown[]>();
  const tablesFor = (script: string): readonly unknown[] => {
    const known = tables.get(script) ?? font.position.getKerningTables(script) ?? [];
    tables.set(script, known);
    return known;
  };
  return (left, right) => {
    try {
      const [a, b] = [font.charToGlyph(left).index, font.charToGlyph(right).index];
      const own = tablesFor(scriptOf(left));
      const value = own.length > 0 ? font.position.getKerningValue(own, a, b) : (font.kerningPairs[`${a},${b}`] ?? 0);
      return Number.isFinite(value) && Math.abs(value) < font.unitsPerEm ? value : 0;
    } catch {
      // A pair that cannot be read is no reason to cut nothing.
      return 0;
    }
  };
};

const SCRIPTS: readonly (readonly [RegExp, string])[] = [
  [/\p{Script=Greek}/u, 'grek'],
  [/\p{Script=Cyrillic}/u, 'cyrl'],
  [/\p{Script=Armenian}/u, 'armn'],
  [/\p{Script=Georgian}/u, 'geor'],
];

const scriptOf = (character: string): string => SCRIPTS.find(([is]) => is.test(character))?.[1] ?? 'latn';
