/** Pictures whose table changed are left in a folder for a look. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Change, Files } from './changes.ts';

const FOLDER = 'out/goldens';

/** Where the table of a picture changed, the picture itself. */
export const picturesToSee = (changes: readonly Change[], pictures: Files): Files =>
  Object.fromEntries(Object.entries(pictures).filter(([name]) => changes.some((c) => c.file === name.replace(/\.svg$/, '.txt'))));

export const leave = (files: Files): void => {
  mkdirSync(FOLDER, { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(FOLDER, name), text);
};
