/** The fonts of the papers, from the package that ships them. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { PaperFonts } from './make.ts';

export const paperFonts = (): PaperFonts => {
  const folder = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf');
  const font = (name: string): Uint8Array => readFileSync(join(folder, name));
  return { plain: font('DejaVuSans.ttf'), bold: font('DejaVuSans-Bold.ttf'), mono: font('DejaVuSansMono.ttf') };
};
