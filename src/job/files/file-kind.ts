/** Tells what a file from elsewhere is by what stands in it, and only then by its ending: a drawing, a job file, a program. */
import { formatOf } from '../../drawing/read/format.ts';

export type FileKind = 'dxf' | 'svg' | 'job file' | 'program' | 'unknown';

/** Bytes from the beginning of a file that are enough to tell it by. */
export const HEAD = 65_536;

/** `head` are the first bytes of the file, the whole of it where it is short. */
export const fileKind = (head: Uint8Array, name: string): FileKind => {
  const text = programText(head);
  if (readsLikeProgram(text)) return 'program';
  if (/\.json$/i.test(name)) return 'job file';
  const format = formatOf(head, name);
  // Any page is written in angle brackets; it is a drawing where it says so, or is called one.
  if (format === 'svg' && !/<(\w+:)?svg[\s>]/i.test(text) && !/\.svg$/i.test(name)) return 'unknown';
  if (format !== 'unknown') return format;
  return PROGRAM_ENDINGS.test(name) ? 'program' : 'unknown';
};

/** What a program from elsewhere is often called. A text may be anything, so that ending alone says nothing. */
const PROGRAM_ENDINGS = /\.(nc|cnc|iso|eia|din|tap|mpf|ngc|prg|min|gcode)$/i;

/** The text of a program as it came: marked as what it is, UTF-8, or else one letter a byte, as older systems write. */
export const programText = (bytes: Uint8Array): string => {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
};

const MOST_LINES = 400;
const LONGEST_LINE = 300;
/** Of the lines that say something; the others may be a maker's own words, which the proof will name. */
const LEAST_SHARE = 0.5;

const BLOCK = /^(?:[A-Z][ \t]*[-+]?(?:\d+\.?\d*|\.\d+)[ \t]*)+$/i;
/** A preparatory word, a word of the machine, or a coordinate. */
const TELLING = /[GMXY][ \t]*[-+]?[\d.]/i;

const readsLikeProgram = (text: string): boolean => {
  const said = text
    .split(/\r\n|\r|\n/, MOST_LINES)
    .map(withoutComments)
    .filter((line) => line !== '' && !line.startsWith('%'));
  const blocks = said.filter((line) => BLOCK.test(line));
  return blocks.length >= said.length * LEAST_SHARE && blocks.some((line) => TELLING.test(line));
};

const withoutComments = (line: string): string =>
  line
    .slice(0, LONGEST_LINE)
    .replaceAll(/\([^)]*\)?|;.*$/g, '')
    .trim()
    .replace(/^\//, '')
    .trim();
