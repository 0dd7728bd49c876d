/** Sets a text in lines: which glyph comes where, in mm, the first line on y = 0. */
import type { Point } from '../../geometry/segment.ts';
import type { Glyph, Typeface } from './typeface.ts';

export interface Setting {
  /** mm for one unit of the font. */
  readonly scale: number;
  /** Added after every letter, mm. */
  readonly spacing: number;
  readonly kerning: boolean;
  /** From line to line, mm. */
  readonly lineSpacing: number;
  readonly align: 'left' | 'middle' | 'right';
}

export interface PlacedGlyph {
  readonly character: string;
  readonly glyph: Glyph;
  /** Where its origin comes to lie, mm. */
  readonly at: Point;
  /** Line and place in it, from 1. */
  readonly line: number;
  readonly column: number;
}

/** A character that is not there, with its line and place in it, from 1. */
export interface MissingCharacter {
  readonly character: string;
  readonly line: number;
  readonly column: number;
}

export type LaidOut =
  | { readonly kind: 'laid out'; readonly glyphs: readonly PlacedGlyph[] }
  | { readonly kind: 'missing'; readonly characters: readonly MissingCharacter[] }
  | { readonly kind: 'broken'; readonly characters: readonly string[] };

/** Accents that stand beside their letter are taken together with it; \n is a new line also where it is typed as two characters. */
export const linesOf = (text: string): readonly (readonly string[])[] =>
  text
    .normalize('NFC')
    .split(/\r\n|\r|\n|\\n/)
    .map((line) => [...line]);

export const layOut = (text: string, typeface: Typeface, setting: Setting): LaidOut => {
  const lines = linesOf(text).map((characters, i) => setLine(characters, i, typeface, setting));
  const missing = lines.flatMap((l) => l.missing);
  if (missing.length > 0) return { kind: 'missing', characters: missing };
  const broken = lines.flatMap((l) => l.broken);
  if (broken.length > 0) return { kind: 'broken', characters: broken };
  const width = Math.max(...lines.map((l) => l.width));
  const share = { left: 0, middle: 0.5, right: 1 }[setting.align];
  return {
    kind: 'laid out',
    glyphs: lines.flatMap((l) =>
      l.glyphs.map((g) => ({ ...g, at: { x: g.at.x + share * (width - l.width), y: g.at.y - (g.line - 1) * setting.lineSpacing } })),
    ),
  };
};

interface SetLine {
  readonly glyphs: readonly PlacedGlyph[];
  readonly missing: readonly MissingCharacter[];
  readonly broken: readonly string[];
  /** From the first pen place to the last, mm; the space after the last letter does not count. */
  readonly width: number;
}

const setLine = (characters: readonly string[], index: number, typeface: Typeface, setting: Setting): SetLine => {
  const glyphs: PlacedGlyph[] = [];
  const missing: MissingCharacter[] = [];
  const broken: string[] = [];
  let pen = 0;
  characters.forEach((character, i) => {
    const place = { character, line: index + 1, column: i + 1 };
    const found = typeface.glyphOf(character);
    if (found.kind !== 'glyph') {
      if (found.kind === 'missing') missing.push(place);
      else broken.push(character);
      return;
    }
    const before = characters[i - 1];
    if (before !== undefined) pen += setting.spacing + (setting.kerning ? typeface.kerning(before, character) * setting.scale : 0);
    glyphs.push({ ...place, glyph: found.glyph, at: { x: pen, y: 0 } });
    pen += found.glyph.advance * setting.scale;
  });
  return { glyphs, missing, broken, width: pen };
};
