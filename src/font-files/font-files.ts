/** The fonts that come with the house, from the package that ships them; each is read once, and only when somebody asks for it. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const read = new Map<string, Uint8Array>();

/** 'DejaVuSans.ttf' */
export const fontFile = (name: string): Uint8Array => {
  const folder = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf');
  const bytes = read.get(name) ?? readFileSync(join(folder, name));
  read.set(name, bytes);
  return bytes;
};

/** The fonts of the papers. */
export const paperFonts = (): { readonly plain: Uint8Array; readonly bold: Uint8Array; readonly mono: Uint8Array } => ({
  plain: fontFile('DejaVuSans.ttf'),
  bold: fontFile('DejaVuSans-Bold.ttf'),
  mono: fontFile('DejaVuSansMono.ttf'),
});
