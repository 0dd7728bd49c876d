/** What we use of opentype.js, which ships no declarations. */
declare module 'opentype.js/dist/opentype.mjs' {
  interface Ending {
    readonly x: number;
    readonly y: number;
  }
  interface Controlled extends Ending {
    readonly x1: number;
    readonly y1: number;
  }
  type Command =
    | (Ending & { readonly type: 'M' })
    | (Ending & { readonly type: 'L' })
    | (Controlled & { readonly type: 'Q' })
    | (Controlled & { readonly type: 'C'; readonly x2: number; readonly y2: number })
    | { readonly type: 'Z' };
  interface Glyph {
    readonly index: number;
    readonly advanceWidth?: number;
    readonly path: { readonly commands: readonly Command[] };
  }
  interface Font {
    readonly unitsPerEm: number;
    readonly ascender: number;
    readonly descender: number;
    readonly tables: { readonly hhea?: { readonly lineGap?: number } };
    readonly kerningPairs: Readonly<Record<string, number>>;
    readonly position: {
      readonly getKerningTables: (script: string) => readonly unknown[] | undefined;
      readonly getKerningValue: (tables: readonly unknown[], left: number, right: number) => number;
    };
    readonly charToGlyph: (character: string) => Glyph;
    readonly hasChar: (character: string) => boolean;
    readonly getEnglishName: (name: string) => string | undefined;
  }
  export const parse: (buffer: ArrayBuffer) => Font;
}
