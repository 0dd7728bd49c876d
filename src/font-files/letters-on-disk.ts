/** The letters that lettering is made with, where there is a disk: of the house's fonts, or of a file of the user's own. */
import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { FACE_FILES, isFace } from '../font-reader/face-files.ts';
import { type FontAsked, type FontFound, type LetterMaker, makeLettering } from '../font-reader/letter-maker.ts';
import { LARGEST_FONT, readFont, unreadable } from '../font-reader/read-font.ts';
import { name } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import { fontFile } from './font-files.ts';
import { parserOnDemand } from './parser-on-demand.ts';

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
  if (font !== undefined) return { kind: 'none', why: missing.onlyByCommand(font.slice(0, 200)) };
  if (!isFace(face)) return { kind: 'none', why: missing.unknown(face.slice(0, 80)) };
  const found = faces.get(face) ?? readFont(fontFile(FACE_FILES[face]), FACE_FILES[face], parserOnDemand);
  faces.set(face, found);
  return found;
};

const missing = phrases('font-file', {
  onlyByCommand: (file: string) =>
    say`The font file ${{ file: name(file) }} is not read here: on the command line a font of your own can be named.`,
  unknown: (face: string) => say`There is no font called ${{ font: name(face) }}.`,
  noFile: (path: string) => say`${{ path: name(path) }} is no file.`,
  noSuchFile: (path: string) => say`${{ path: name(path) }} cannot be read: there is no such file.`,
  unreadable: (path: string) => say`${{ path: name(path) }} cannot be read.`,
});

const ownFont = (path: string): FontFound => {
  try {
    // Looked at before it is opened: a pipe would be waited for.
    const { size, isFile } = statOf(path);
    if (!isFile) return { kind: 'none', why: missing.noFile(path) };
    if (size > LARGEST_FONT) return { kind: 'none', why: unreadable.tooLarge(path, size) };
    return readFont(readFileSync(path), basename(path), parserOnDemand);
  } catch (error) {
    const code = (error as { readonly code?: string }).code;
    return { kind: 'none', why: code === 'ENOENT' ? missing.noSuchFile(path) : missing.unreadable(path) };
  }
};

const statOf = (path: string): { readonly size: number; readonly isFile: boolean } => {
  const status = statSync(path);
  return { size: status.size, isFile: status.isFile() };
};
