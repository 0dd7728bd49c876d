/** Damaged, scrambled and invented program texts: good programs with a wound, and blocks of words thrown together. */
import { type Dialect, standardDialect } from '../../src/nc/dialect/dialect.ts';
import { writeProgram } from '../../src/nc/write/write.ts';
import { inventedWords } from '../nc/dialects.ts';
import { testPlan } from '../nc/plans.ts';
import { seeded } from '../seeded.ts';
import { type Dice, diceOf } from './dice.ts';

export interface ProgramCase {
  readonly name: string;
  readonly text: string;
  readonly dialect: Dialect;
  readonly registers: ReadonlyMap<number, number>;
}

/** `count` cases, the same for the same seed. */
export function* programCases(count: number, seed: number): Generator<ProgramCase> {
  const dice = diceOf(seed);
  const sound = soundPrograms();
  for (let index = 0; index < count; index += 1) {
    const base = dice.pick(sound);
    const name = `program ${seed}/${index}`;
    const kind = dice.below(10);
    if (kind < 7) yield { ...base, name, text: wounded(base.text, dice) };
    else if (kind < 9) yield { ...base, name, text: thrownTogether(dice) };
    else yield { ...base, name, text: noise(dice) };
  }
}

const dialects: readonly Dialect[] = [
  standardDialect,
  { ...standardDialect, coordinates: 'incremental', arcs: 'radius', comments: 'semicolon' },
  { ...standardDialect, units: 'inch', decimals: 5, words: inventedWords, comments: 'none', outsideCorners: 'intersection' },
  { ...standardDialect, unitsWord: 'none', compensation: 'path', percent: false },
];

const soundPrograms = (): readonly Omit<ProgramCase, 'name'>[] =>
  dialects.flatMap((dialect, k) => {
    const { plan } = testPlan(seeded(k + 1), {
      contours: 2,
      passes: 2,
      vertices: 4,
      outsideCorners: dialect.outsideCorners,
      offsetStep: 1e-4,
    });
    const written = writeProgram(plan, dialect, { name: 'Fuzz', date: '2026-03-04', notes: [] });
    return written.kind === 'written' ? [{ text: written.text, dialect, registers: written.registers }] : [];
  });

/** One to four wounds. */
const wounded = (text: string, dice: Dice): string => {
  let now = text;
  for (let wound = 0; wound <= dice.below(4); wound += 1) now = dice.pick(wounds)(now, dice);
  return now;
};

type Wound = (text: string, dice: Dice) => string;

const changeLine =
  (change: (line: string, dice: Dice) => string): Wound =>
  (text, dice) => {
    const lines = text.split('\n');
    const at = dice.below(lines.length);
    lines[at] = change(lines[at] as string, dice);
    return lines.join('\n');
  };

const changeWord = (change: (word: string, dice: Dice) => string): Wound =>
  changeLine((line, dice) => {
    const words = line.split(' ');
    const at = dice.below(words.length);
    words[at] = change(words[at] as string, dice);
    return words.filter((word) => word !== '').join(' ');
  });

const signs = '%()/;.-+XYIJRDGMNKUVWZFPE0123456789 \tx\u0000\u00e9\ud83d\n';
const numbers = [
  '0',
  '-0',
  '.',
  '-',
  '+.5',
  '1e9',
  '999999999999999',
  '9999999999999999999',
  '0.0001',
  '-0.00005',
  '99999.9999',
  '41',
  '40',
  '0.2',
  'NaN',
];

const wounds: readonly Wound[] = [
  changeWord(() => ''),
  changeWord((word, dice) => `${word[0] ?? 'X'}${dice.pick(numbers)}`),
  changeWord((word, dice) => `${dice.pick([...'XYIJRDGMNKUVWZFPE'])}${word.slice(1)}`),
  changeWord((word) => `${word} ${word}`),
  changeWord((word, dice) => word.replace(/\d(?=\D*$)/, String(dice.below(10)))),
  changeWord((word) => word.replace('-', '').replace(/^([A-Z])/, '$1-')),
  changeLine(() => ''),
  changeLine((line) => `${line}\n${line}`),
  changeLine((line) => `/${line}`),
  changeLine((line) => line.toLowerCase()),
  changeLine((line) => line.replace(/ /g, '')),
  changeLine((line) => line.repeat(40)),
  (text, dice) => text.slice(0, dice.below(text.length + 1)),
  (text, dice) => {
    const at = dice.below(text.length + 1);
    return text.slice(0, at) + dice.pick([...signs]) + text.slice(at + dice.below(3));
  },
  (text, dice) => {
    const lines = text.split('\n');
    const [a, b] = [dice.below(lines.length), dice.below(lines.length)];
    [lines[a], lines[b]] = [lines[b] as string, lines[a] as string];
    return lines.join('\n');
  },
];

/** Blocks of words that mean something, in no order. */
const thrownTogether = (dice: Dice): string => {
  const lines = ['G21 G90', dice.pick(['G00 X5. Y5.', 'G01 X1.', ''])];
  for (let block = 0; block <= dice.below(30); block += 1) {
    const words = [
      dice.pick(['G00', 'G01', 'G01', 'G02', 'G03', 'G03', '', 'G41 D1 G01', 'G42 D2 G01', 'G40 G01', 'G91', 'G90', 'M00', 'G92']),
    ];
    for (const letter of dice.pick(['XY', 'XYIJ', 'XYIJ', 'XYR', 'X', 'Y', 'IJ', ''])) words.push(letter + number(dice));
    lines.push(words.join(' '));
  }
  return `${lines.join('\n')}\n${dice.pick(['M02', 'M30', 'G40\nM02', ''])}`;
};

const number = (dice: Dice): string => {
  const size = dice.pick([0.0001, 0.001, 0.1, 1, 1, 1, 10, 1000, 99_999]);
  return (size * (dice.below(7) - 3) * (dice.below(2) === 0 ? 1 : 0.5)).toFixed(dice.pick([0, 1, 4, 4, 6, 8]));
};

const noise = (dice: Dice): string => {
  let text = '';
  for (let sign = 0; sign < dice.below(400); sign += 1)
    text += dice.below(3) === 0 ? String.fromCharCode(dice.below(0x3000)) : dice.pick([...signs]);
  return text;
};
