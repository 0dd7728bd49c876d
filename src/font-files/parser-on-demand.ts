/** The parser of fonts, loaded when the first font is read: loading it takes longer than reading a drawing, and few answers have letters. */
import { createRequire } from 'node:module';
import type { FontParser } from '../font-reader/read-font.ts';

export const parserOnDemand: FontParser = (file) =>
  (createRequire(import.meta.url)('opentype.js') as { readonly parse: FontParser }).parse(file);
