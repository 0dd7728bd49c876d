/** What lettering needs of a font: outlines, widths and kerning, in units of the font. Whoever can read fonts hands it in. */
import type { Point } from '../../geometry/segment.ts';
import type { Text } from '../../text/text.ts';

/** One step along an outline, to `to`: a line, or a Bézier curve of the second or third degree. */
export type GlyphStep =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'quadratic'; readonly control: Point; readonly to: Point }
  | { readonly kind: 'cubic'; readonly first: Point; readonly second: Point; readonly to: Point };

/** A closed outline; what is missing from the last step back to `from` is a line. */
export interface GlyphOutline {
  readonly from: Point;
  readonly steps: readonly GlyphStep[];
}

/** One character; y goes up from the line it stands on, x from the pen. */
export interface Glyph {
  /** How far the pen goes on. */
  readonly advance: number;
  /** What they wind round is ink; a counter winds against the outline around it. */
  readonly outlines: readonly GlyphOutline[];
}

/** `broken`: it is there, but cannot be read. */
export type FoundGlyph = { readonly kind: 'glyph'; readonly glyph: Glyph } | { readonly kind: 'missing' | 'broken' };

export interface Typeface {
  /** As it calls itself: 'DejaVu Sans Bold'. */
  readonly name: string;
  /** Units in an em. */
  readonly em: number;
  /** Height of capitals above the line; 0 where the font has none. */
  readonly capitals: number;
  /** From line to line, as the font means it. */
  readonly line: number;
  readonly glyphOf: (character: string) => FoundGlyph;
  /** What comes on top of the advance between two characters; mostly below 0. */
  readonly kerning: (left: string, right: string) => number;
}

/** Which font is asked for: one of those that come with the house, or a file of the user's own. */
export interface FontAsked {
  readonly face: string;
  readonly font?: string;
}

/** `none` says why there is no such font here. */
export type FontFound = { readonly kind: 'typeface'; readonly typeface: Typeface } | { readonly kind: 'none'; readonly why: Text };
