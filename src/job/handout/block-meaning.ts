/** What the words of a program mean, block by block, in plain sentences: for whoever stands before the text and did not write it. */
import type { Dialect, WordName } from '../../nc/dialect/dialect.ts';

/** Words of ISO 6983-1 and RS274NGC that keep their meaning in every dialect. */
const COMMON: Readonly<Record<string, string>> = {
  G0: 'travel without cutting',
  G1: 'straight cut',
  G2: 'arc, clockwise',
  G3: 'arc, counter-clockwise',
  G40: 'offset off',
  G41: 'wire left of the contour',
  G42: 'wire right of the contour',
  G17: 'arcs lie in the plane of the table',
  G90: 'places counted from the zero',
  G91: 'places counted from where the wire is',
  G92: 'the zero is set from here',
  M0: 'stop until somebody starts again',
  M1: 'stop where the operator wants it',
  M2: 'end of the program',
  M30: 'end of the program',
};

const UNITS: Readonly<Record<string, string>> = { G20: 'inches', G21: 'millimetres', G70: 'inches', G71: 'millimetres' };

const OF_DIALECT: Readonly<Record<Exclude<WordName, 'condition'>, string>> = {
  thread: 'thread the wire',
  cutWire: 'cut the wire',
  wireOn: 'wire runs',
  wireOff: 'wire stands',
  flushOn: 'flushing on',
  flushOff: 'flushing off',
  powerOn: 'sparking on',
  powerOff: 'sparking off',
};

/** One text for each line; empty where a line says nothing. */
export const blockMeanings = (lines: readonly string[], dialect: Dialect): readonly string[] => {
  const known = wordsOf(dialect);
  return lines.map((line) => meaningOf(line, dialect, known));
};

/** Numbers without leading zeros, so that G01 and G1 are one word. */
const plain = (word: string): string => word.replace(/^([A-Z])0+(?=\d)/, '$1');

const wordsOf = ({ words }: Dialect): ReadonlyMap<string, string> => {
  const known = new Map(Object.entries({ ...COMMON, ...UNITS }));
  for (const [name, meaning] of Object.entries(OF_DIALECT)) {
    const word = words[name as WordName];
    if (word !== undefined) known.set(plain(word), meaning);
  }
  return known;
};

const meaningOf = (line: string, dialect: Dialect, known: ReadonlyMap<string, string>): string => {
  const comments = [...line.matchAll(/\(([^)]*)\)|;(.*)$/g)].map((m) => (m[1] ?? m[2] ?? '').trim()).filter((t) => t !== '');
  const text = line.replace(/\([^)]*\)|;.*$/g, ' ').trim();
  if (text === '%') return 'begin or end of the tape';
  const condition = dialect.words.condition?.charAt(0);
  const parts = [...text.matchAll(/([A-Z])\s*(-?\d*\.?\d+)/g)].flatMap(([, letter, number]) =>
    partOf(letter as string, number as string, known, condition),
  );
  const at = placeOf(text);
  return [...parts, ...(at === '' ? [] : [at]), ...comments.map((c) => `note: ${calm(c)}`)].join('; ');
};

/** Comments of a program know only capitals; names of contours, lines and registers keep theirs. */
const calm = (comment: string): string => comment.toLowerCase().replace(/\b[lod]\d+\b/g, (name) => name.toUpperCase());

const partOf = (letter: string, number: string, known: ReadonlyMap<string, string>, condition: string | undefined): readonly string[] => {
  const word = known.get(plain(`${letter}${number}`));
  if (word !== undefined) return [word];
  if (letter === condition) return [`condition ${Number(number)}`];
  if (letter === 'D') return [`offset register ${Number(number)}`];
  if (letter === 'F') return [`feed ${Number(number)}`];
  return letter === 'G' || letter === 'M' ? [`${letter}${number}: a word of this control`] : [];
};

const placeOf = (text: string): string => {
  const words = [...text.matchAll(/([XYIJR])\s*(-?\d*\.?\d+)/g)].map((m) => [m[1], m[2]] as const);
  const named = (letters: string): string =>
    words
      .filter(([letter]) => letters.includes(letter as string))
      .map(([letter, number]) => `${letter} ${Number(number)}`)
      .join(' ');
  const [to, centre, radius] = [named('XY'), named('IJ'), named('R')];
  return [to === '' ? '' : `to ${to}`, centre === '' ? '' : `centre off by ${centre}`, radius === '' ? '' : `radius ${radius.slice(2)}`]
    .filter((t) => t !== '')
    .join(', ');
};
