/** What the words of a program mean, block by block, in plain sentences: for whoever stands before the text and did not write it. */
import type { Dialect, WordName } from '../../nc/dialect/dialect.ts';
import { asGiven, count, list, name, type Part, term } from '../../text/part.ts';
import { calmed } from '../../text/print/phrases.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

/** Words of ISO 6983-1 and RS274NGC that keep their meaning in every dialect. */
const COMMON: Readonly<Record<string, Text>> = phrases('program-word', {
  G0: say`rapid move`,
  G1: say`straight cut`,
  G2: say`arc, clockwise`,
  G3: say`arc, counter-clockwise`,
  G40: say`compensation off`,
  G41: say`wire left of the contour`,
  G42: say`wire right of the contour`,
  G17: say`arcs lie in the plane of the table`,
  G90: say`coordinates from the program zero`,
  G91: say`coordinates from the last position`,
  G92: say`sets the program zero from here`,
  M0: say`stop until cycle start`,
  M1: say`optional stop`,
  M2: say`end of program`,
  M30: say`end of program`,
});

const units = phrases('program-unit', { inches: say`inches`, millimetres: say`millimetres` });
const UNITS: Readonly<Record<string, Text>> = {
  G20: units.inches,
  G21: units.millimetres,
  G70: units.inches,
  G71: units.millimetres,
};

const OF_DIALECT: Readonly<Record<Exclude<WordName, 'condition'>, Text>> = phrases('dialect-word', {
  thread: say`thread the wire`,
  cutWire: say`cut the wire`,
  wireOn: say`wire feed on`,
  wireOff: say`wire feed off`,
  flushOn: say`flushing on`,
  flushOff: say`flushing off`,
  powerOn: say`power on`,
  powerOff: say`power off`,
});

const words = phrases('program-block-says', {
  tape: say`start or end of tape`,
  note: (comment: string) => say`note: ${{ comment: name(comment) }}`,
  condition: (number: number) => say`condition ${{ number: count(number) }}`,
  register: (number: number) => say`offset register ${{ number: count(number) }}`,
  feed: (feed: number) => say`feed ${{ feed: asGiven(feed) }}`,
  ofControl: (word: string) => say`${{ word: term(word) }}: a word of this control`,
  to: (place: Part) => say`to ${{ place }}`,
  centre: (place: Part) => say`centre off by ${{ place }}`,
  radius: (radius: number) => say`radius ${{ radius: asGiven(radius) }}`,
  axis: (letter: string, value: number) => say`${{ letter: term(letter) }} ${{ value: asGiven(value) }}`,
});

/** What one line of a program says; undefined where it says nothing. */
export const blockMeaning = (line: string, spelled: Dialect['words']): Text | undefined => {
  const comments = [...line.matchAll(/\(([^)]*)\)|;(.*)$/g)].map((m) => (m[1] ?? m[2] ?? '').trim()).filter((t) => t !== '');
  const block = line.replace(/\([^)]*\)|;.*$/g, ' ').trim();
  if (block === '%') return words.tape;
  const known = wordsOf(spelled);
  const condition = spelled.condition?.charAt(0);
  const parts = [...block.matchAll(/([A-Z])\s*(-?\d*\.?\d+)/g)].flatMap(([, letter = '', number = '']) =>
    partOf(letter, number, known, condition),
  );
  const all = [...parts, ...placeOf(block), ...comments.map((c) => words.note(calmed(c)))];
  return all.length === 0 ? undefined : only(list(all, 'semicolon'));
};

/** Numbers without leading zeros, so that G01 and G1 are one word. */
const plain = (word: string): string => word.replace(/^([A-Z])0+(?=\d)/, '$1');

const wordsOf = (spelled: Dialect['words']): ReadonlyMap<string, Text> => {
  const known = new Map(Object.entries({ ...COMMON, ...UNITS }));
  for (const [meaning, said] of Object.entries(OF_DIALECT)) {
    const word = spelled[meaning as WordName];
    if (word !== undefined) known.set(plain(word), said);
  }
  return known;
};

const partOf = (letter: string, number: string, known: ReadonlyMap<string, Text>, condition: string | undefined): readonly Text[] => {
  const word = known.get(plain(`${letter}${number}`));
  if (word !== undefined) return [word];
  if (letter === condition) return [words.condition(Number(number))];
  if (letter === 'D') return [words.register(Number(number))];
  if (letter === 'F') return [words.feed(Number(number))];
  return letter === 'G' || letter === 'M' ? [words.ofControl(`${letter}${number}`)] : [];
};

/** Where the block leads: one part for all its coordinates. */
const placeOf = (block: string): readonly Text[] => {
  const found = [...block.matchAll(/([XYIJR])\s*(-?\d*\.?\d+)/g)].map((m) => ({ letter: m[1] as string, value: Number(m[2]) }));
  const named = (letters: string): Part | undefined => {
    const axes = found.filter(({ letter }) => letters.includes(letter));
    return axes.length === 0
      ? undefined
      : list(
          axes.map(({ letter, value }) => words.axis(letter, value)),
          'blank',
        );
  };
  const [to, centre, radius] = [named('XY'), named('IJ'), found.find(({ letter }) => letter === 'R')];
  const parts = [to && words.to(to), centre && words.centre(centre), radius && words.radius(radius.value)].filter((t) => t !== undefined);
  return parts.length === 0 ? [] : [only(list(parts))];
};
