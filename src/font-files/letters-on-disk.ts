/** The letters that lettering is made with, where there is a disk: of the house's fonts, or of a file of the user's own. */
import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { FACE_FILES, isFace } from '../font-reader/face-files.ts';
import { type FontAsked, type FontFound, type LetterMaker, makeLettering } from '../font-reader/letter-maker.ts';
import { LARGEST_FONT, readFont } from '../font-reader/read-font.ts';
import { fontFile } from './font-files.ts';

/** Faces stay read: the same letters are asked for again and again. */
const faces = new Map<string, FontFound>();

/** With the house's own fonts; a file of the user's own is refused: paths that come over a network reach no disk. */
export const houseLetters: LetterMaker = (request) => makeLettering(request, houseFont);

/** With the house's fonts and files of the user's own; `find` says where the file lies that is named. */
export const lettersWith =
  (find: (path: string) => string): LetterMaker =>
  (request) =>
    makeLettering(request, (asked) => (asked.font === undefined ? houseFont(asked) : ownFont(find(asked.font))));

const houseFont = ({ face, font }: FontAsked): FontFound => {
  if (font !== undefined)
    return {
      kind: 'none',
      why: `The font file ${font.slice(0, 200)} is not read here: on the command line a font of your own can be named.`,
    };
  if (!isFace(face)) return { kind: 'none', why: `There is no font called ${face.slice(0, 80)}.` };
  const found = faces.get(face) ?? readFont(fontFile(FACE_FILES[face]), FACE_FILES[face]);
  faces.set(face, found);
  return found;
};

const ownFont = (path: string): FontFound => {
  try {
    // Looked at before it is opened: a pipe would be waited for.
    const { size, isFile } = statOf(path);
    if (!isFile) return { kind: 'none', why: `${path} is no file.` };
    if (size > LARGEST_FONT) return { kind: 'none', why: `${path} has ${size} bytes; fonts of up to ${LARGEST_FONT} are read.` };
    return readFont(readFileSync(path), basename(path));
  } catch (error) {
    const code = (error as { readonly code?: string }).code;
    return { kind: 'none', why: `${path} cannot be read${code === 'ENOENT' ? ': there is no such file' : ''}.` };
  }
};

const statOf = (path: string): { readonly size: number; readonly isFile: boolean } => {
  const status = statSync(path);
  return { size: status.size, isFile: status.isFile() };
};
