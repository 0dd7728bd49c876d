/** What the files of a handout are called in an address, and as what they are sent. */
import { extname } from 'node:path';

/** By what follows the stem in the file's name; a PDF goes by the name of its paper. */
const NAMES: Readonly<Record<string, string>> = {
  '.nc': 'program',
  '.not-proven.nc': 'program',
  '.setup.json': 'setup',
  '.not-proven.setup.json': 'setup',
  '.drawing.svg': 'drawing-picture',
  '.proof.svg': 'proof-picture',
  '.edges.svg': 'edge-picture',
  '.answer.txt': 'answer',
};

/** 'quotation' for 'plate.quotation.pdf'; whatever is new goes by its own ending. */
export const nameOf = (fileName: string, stem: string): string => {
  const rest = fileName.slice(stem.length);
  return (
    NAMES[rest] ??
    rest
      .replace(/\.pdf$/, '')
      .replace(/^\./, '')
      .replaceAll('.', '-')
  );
};

const TYPES: Readonly<Record<string, string>> = {
  '.pdf': 'application/pdf',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
};

export const typeOf = (fileName: string): string => TYPES[extname(fileName)] ?? 'text/plain; charset=utf-8';

/** A name that every system and every header takes. */
export const plainStem = (name: string): string =>
  name
    .normalize('NFKD')
    .replaceAll(/[^A-Za-z0-9_-]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60) || 'job';
