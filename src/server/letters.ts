/** The font that lettering is cut in, from the package that ships it; read once, and only when somebody asks for it. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

let read: Uint8Array | undefined;

export const letters = (): Uint8Array => {
  read ??= readFileSync(join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf', 'DejaVuSans.ttf'));
  return read;
};
