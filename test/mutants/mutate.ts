/** Faults put into a good program, as hands and bad software make them. Everything follows from a seed. */
import type { Registers } from '../../src/nc/read/program.ts';
import { there } from '../there.ts';
import type { GoodProgram } from './good-programs.ts';

export interface Mutant {
  readonly kind: string;
  /** What was done, with the line. */
  readonly name: string;
  readonly lines: readonly string[];
  readonly registers: Registers;
}

type Random = () => number;

/** A small generator of even numbers in 0..1 (multiply with carry): the same seed gives the same mutants everywhere. */
export const randomFrom = (seed: number): Random => {
  let [z, w] = [seed | 1, (seed ^ 0x5bd1e995) | 1];
  return () => {
    z = (36969 * (z & 65535) + (z >>> 16)) | 0;
    w = (18000 * (w & 65535) + (w >>> 16)) | 0;
    return (((z << 16) + w) >>> 0) / 2 ** 32;
  };
};

/** `count` mutants of one program: every kind takes its turn, and a kind that finds nothing to change is passed over. */
export const mutantsOf = (good: GoodProgram, count: number, seed: number): readonly Mutant[] => {
  const random = randomFrom(seed);
  const mutants: Mutant[] = [];
  const seen = new Set<string>();
  for (let turn = 0; mutants.length < count && turn < count * 20; turn += 1) {
    const [kind, make] = there(KINDS[turn % KINDS.length]);
    const made = make(good, random);
    if (made === undefined) continue;
    const mutant: Mutant = {
      kind,
      name: `${kind}: ${made.name}`,
      lines: made.lines ?? good.lines,
      registers: made.registers ?? good.question.registers,
    };
    const key = `${mutant.lines.join('|')}${[...mutant.registers].join()}`;
    if (seen.has(key)) continue;
    seen.add(key);
    mutants.push(mutant);
  }
  return mutants;
};

interface Made {
  readonly name: string;
  readonly lines?: readonly string[];
  readonly registers?: Registers;
}
type Make = (good: GoodProgram, random: Random) => Made | undefined;

const STEPS = [0.005, 0.005, 0.008, 0.02, 0.1, 0.7, 4];

const pick = <T>(things: readonly T[], random: Random): T | undefined => things[Math.floor(random() * things.length)];

const linesWith = (good: GoodProgram, pattern: RegExp): readonly number[] => good.lines.flatMap((l, i) => (pattern.test(l) ? [i] : []));

const changed = (good: GoodProgram, line: number, text: string): Made => ({
  name: `line ${line + 1} ${good.lines[line]} -> ${text}`,
  lines: good.lines.map((l, i) => (i === line ? text : l)),
});

/** Moves one coordinate, arc centre or radius by 5 µm or more. */
const moveNumber =
  (letters: string): Make =>
  (good, random) => {
    const pattern = new RegExp(`[${letters}]-?[\\d.]+`, 'g');
    const line = pick(
      linesWith(good, new RegExp(`(?:^| )[${letters}]-?\\d`)).filter((l) => !there(good.lines[l]).startsWith('(')),
      random,
    );
    if (line === undefined) return undefined;
    const words = [...there(good.lines[line]).matchAll(pattern)];
    const word = pick(words, random);
    if (word === undefined) return undefined;
    const step = there(pick(STEPS, random)) * (random() < 0.5 ? -1 : 1);
    const value = Number((Number(word[0].slice(1)) + step).toFixed(4));
    const text = `${there(good.lines[line]).slice(0, word.index)}${word[0][0]}${value}${there(good.lines[line]).slice(word.index + word[0].length)}`;
    return changed(good, line, text.replace(/([A-Z]-?\d+)(?= |$)(?<=[XYIJR]-?\d+)/g, '$1.'));
  };

const replaceWord =
  (pattern: RegExp, by: (found: string, random: Random) => string): Make =>
  (good, random) => {
    const line = pick(
      linesWith(good, pattern).filter((l) => !there(good.lines[l]).startsWith('(')),
      random,
    );
    if (line === undefined) return undefined;
    return changed(
      good,
      line,
      there(good.lines[line])
        .replace(pattern, (found) => by(found, random))
        .trim(),
    );
  };

const dropWord: Make = (good, random) => {
  const line = pick(
    linesWith(good, /^[GXYME].* /).filter((l) => !there(good.lines[l]).startsWith('M00')),
    random,
  );
  if (line === undefined) return undefined;
  const words = there(good.lines[line]).split(' ');
  const gone = Math.floor(random() * words.length);
  return changed(good, line, words.filter((_, i) => i !== gone).join(' '));
};

const without = (good: GoodProgram, line: number): Made => ({
  name: `without line ${line + 1} ${good.lines[line]}`,
  lines: good.lines.filter((_, i) => i !== line),
});

const dropBlock: Make = (good, random) => {
  const line = pick(linesWith(good, /^(G0[0-3]|G4|M7|E)/), random);
  return line === undefined ? undefined : without(good, line);
};

const dropStop: Make = (good, random) => {
  const line = pick(linesWith(good, /^(M00|M7)/), random);
  return line === undefined ? undefined : without(good, line);
};

const doubleBlock: Make = (good, random) => {
  const line = pick(linesWith(good, /^(G0[0-3]|M00|M7|E|G40)/), random);
  if (line === undefined) return undefined;
  return { name: `line ${line + 1} ${good.lines[line]} twice`, lines: [...good.lines.slice(0, line + 1), ...good.lines.slice(line)] };
};

const swapBlocks: Make = (good, random) => {
  const line = pick(linesWith(good, /^(G|M|E)/), random);
  if (line === undefined || line + 2 >= good.lines.length) return undefined;
  const lines = [...good.lines];
  [lines[line], lines[line + 1]] = [there(lines[line + 1]), there(lines[line])];
  return { name: `lines ${line + 1} and ${line + 2} changed round`, lines };
};

/** Contours, or the passes of one, in another order. */
const swapStretches: Make = (good, random) => {
  if (good.stretches.length < 2) return undefined;
  const n = Math.floor(random() * (good.stretches.length - 1));
  const [a, b] = [there(good.stretches[n]), there(good.stretches[n + 1])];
  const { lines } = good;
  const middle = lines.slice(a[1] + 1, b[0]);
  const order = [
    ...lines.slice(0, a[0]),
    ...lines.slice(b[0], b[1] + 1),
    ...middle,
    ...lines.slice(a[0], a[1] + 1),
    ...lines.slice(b[1] + 1),
  ];
  return { name: `lines ${a[0] + 1}-${a[1] + 1} behind lines ${b[0] + 1}-${b[1] + 1}`, lines: order };
};

const dropStretch: Make = (good, random) => {
  const s = pick(good.stretches, random);
  if (s === undefined) return undefined;
  return { name: `without lines ${s[0] + 1}-${s[1] + 1}`, lines: good.lines.filter((_, i) => i < s[0] || i > s[1]) };
};

/** All of one pass but the first and the last, wherever its condition is chosen. */
const dropPass: Make = (good, random) => {
  const pass = pick((good.question.passes ?? []).slice(1, -1), random);
  if (pass === undefined || good.question.dialect.words.condition === undefined) return undefined;
  let isOn = false;
  const lines = good.lines.filter((l) => {
    if (/^(E|M)\d/.test(l)) isOn = l === `E${pass}`;
    return !isOn;
  });
  return { name: `without pass ${pass}`, lines };
};

const wrongRegister =
  (steps: (good: GoodProgram) => readonly number[]): Make =>
  (good, random) => {
    if (good.question.dialect.compensation === 'path') return undefined;
    const number = there(pick([...good.question.registers.keys()], random));
    const by = there(pick(steps(good), random)) * (random() < 0.5 ? -1 : 1);
    const registers = new Map(good.question.registers);
    registers.set(number, Number((there(registers.get(number)) + by).toFixed(4)));
    return { name: `register ${number} by ${by}`, registers };
  };

/** Within the tolerance, and beyond the quarter of it that the program may use. */
const betweenShareAndTolerance = ({ question: { tolerance } }: GoodProgram): readonly number[] => [0.75 * tolerance];

/** One pass is cut with the register of another one, and that with its own: each reaches what the other should. */
const registersChangedRound: Make = (good) => {
  const { registers } = good.question;
  const [a, b] = [...registers.keys()];
  if (a === undefined || b === undefined || good.question.dialect.compensation === 'path') return undefined;
  const changedRound = new Map([...registers, [a, there(registers.get(b))], [b, there(registers.get(a))]]);
  return { name: `registers ${a} and ${b} changed round`, registers: changedRound };
};

/** The last block of a pass that cuts, taken out: the pass ends a stretch early. */
const endOfPassDropped: Make = (good, random) => {
  const ends = good.lines.flatMap((l, i) => (/^G0[123] /.test(l) && /^(G40|M00|E\d|M7)/.test(good.lines[i + 1] ?? '') ? [i] : []));
  const line = pick(ends, random);
  return line === undefined ? undefined : without(good, line);
};

/** The word that threads the wire, or the stop for it, in the middle of the cuts. */
const threadedAgain: Make = (good, random) => {
  const word = good.lines.find((l) => l === 'M70');
  const line = pick(linesWith(good, /^G0[123] /), random);
  return word === undefined || line === undefined
    ? undefined
    : { name: `${word} before line ${line + 1}`, lines: good.lines.toSpliced(line, 0, word) };
};

/** The program is cut short behind a block that moves. */
const endEarly: Make = (good, random) => {
  const moves = linesWith(good, /(^| )G0[1-3] /);
  const line = pick(moves.slice(Math.floor(moves.length / 4)), random);
  if (line === undefined) return undefined;
  const end = there(good.lines.find((l) => /^M(02|30)/.test(l)));
  return { name: `${end} behind line ${line + 1}`, lines: [...good.lines.slice(0, line + 1), end, '%'] };
};

const behindTheMark: Make = (good, random) => {
  const line = pick(linesWith(good, /(^| )G0[0-3] /), random);
  return line === undefined
    ? undefined
    : { name: `line ${line + 1} again behind the last %`, lines: [...good.lines, there(good.lines[line])] };
};

/** M00 becomes a stop that a switch may pass over. */
const maybeStop: Make = (good, random) => {
  const line = pick(linesWith(good, /^M00/), random);
  if (line === undefined) return undefined;
  const text = there(good.lines[line]);
  return changed(good, line, random() < 0.5 ? text.replace('M00', 'M01') : `/${text}`);
};

const bareStop: Make = (good, random) => {
  const line = pick(linesWith(good, /^(M7|M00 \(THREAD|M00 \(CUT THE WIRE)/), random);
  return line === undefined ? undefined : changed(good, line, 'M00');
};

const skipped: Make = (good, random) => {
  const line = pick(linesWith(good, /^(G0[0-3]|G4|M7|E)/), random);
  return line === undefined ? undefined : changed(good, line, `/${there(good.lines[line])}`);
};

const shifted: Make = (good, random) => {
  const first = good.lines.findIndex((l) => /(^| )G0[0-3] /.test(l));
  const by = there(pick(['G92 X0.5 Y0.', 'G92 X0. Y-3.'], random));
  return first < 0 ? undefined : { name: `${by} before line ${first + 1}`, lines: good.lines.toSpliced(first, 0, by) };
};

const KINDS: readonly (readonly [string, Make])[] = [
  ['coordinate', moveNumber('XY')],
  ['stop dropped', dropStop],
  ['arc words', moveNumber('IJR')],
  ['word dropped', dropWord],
  ['coordinate', moveNumber('XY')],
  ['side', replaceWord(/G4[12]/, (g) => (g === 'G41' ? 'G42' : 'G41'))],
  ['block dropped', dropBlock],
  ['register number', replaceWord(/D\d/, (d, random) => `D${1 + ((Number(d[1]) + Math.floor(random() * 2)) % 3)}`)],
  ['coordinate', moveNumber('XY')],
  ['arc direction', replaceWord(/G0[23]/, (g) => (g === 'G02' ? 'G03' : 'G02'))],
  ['block doubled', doubleBlock],
  ['register value', wrongRegister(() => [0.005, 0.008, 0.02, 0.1])],
  ['order of passes or contours', swapStretches],
  ['coordinate', moveNumber('XY')],
  ['compensation not cancelled', replaceWord(/G40 /, () => '')],
  ['blocks changed round', swapBlocks],
  ['condition', replaceWord(/E\d/, (e, random) => `E${1 + ((Number(e[1]) + Math.floor(random() * 2)) % 3)}`)],
  ['pass or contour dropped', dropStretch],
  ['early end', endEarly],
  ['stop that may not stop', maybeStop],
  ['bare stop for a word', bareStop],
  ['words behind the last %', behindTheMark],
  ['block that may be skipped', skipped],
  ['zero moved', shifted],
  ['register between share and tolerance', wrongRegister(betweenShareAndTolerance)],
  ['whole pass left out', dropPass],
  ['registers changed round', registersChangedRound],
  ['end of a pass dropped', endOfPassDropped],
  ['wire threaded twice', threadedAgain],
];
