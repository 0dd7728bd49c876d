/** Damaged drawings: good ones with bytes changed, lines lost, numbers spoilt, ends cut, halves of two put together. */
import { type DrawingFile, drawingFixtures } from '../drawing-fixtures.ts';
import { type Dice, diceOf } from './dice.ts';

export type DrawingCase = DrawingFile;

/**
 * Repeatable: the same count, seed and corpus give the same cases. A name keeps the ending of the file it was made from, so
 * that it is read as that format.
 */
export function* drawingCases(count: number, seed: number, corpus: readonly DrawingFile[] = []): Iterable<DrawingCase> {
  const dice = diceOf(seed);
  const good = [...drawingFixtures(), ...corpus];
  for (let i = 0; i < count; i++) {
    const file = dice.pick(good);
    let bytes = file.bytes;
    for (let wounds = 1 + dice.below(3); wounds > 0; wounds--) bytes = wounded(bytes, good, dice);
    yield { name: `${seed}-${i}-${file.name}`, bytes };
  }
}

const wounded = (bytes: Uint8Array, good: readonly DrawingFile[], dice: Dice): Uint8Array => {
  if (bytes.length === 0) return bytes;
  return dice.pick(WOUNDS)(bytes, dice, good);
};

type Wound = (bytes: Uint8Array, dice: Dice, good: readonly DrawingFile[]) => Uint8Array;

const changedByte: Wound = (bytes, dice) => {
  const changed = bytes.slice();
  for (let times = 1 + dice.below(4); times > 0; times--) changed[dice.below(bytes.length)] = dice.below(256);
  return changed;
};

const cut: Wound = (bytes, dice) => bytes.slice(0, dice.below(bytes.length));

const lostBytes: Wound = (bytes, dice) => {
  const from = dice.below(bytes.length);
  return spliced(bytes, from, Math.min(bytes.length, from + 1 + dice.below(40)), new Uint8Array(0));
};

const addedBytes: Wound = (bytes, dice) => {
  const at = dice.below(bytes.length);
  return spliced(
    bytes,
    at,
    at,
    Uint8Array.from({ length: 1 + dice.below(20) }, () => dice.below(256)),
  );
};

/** A stretch of the file once more: pairs, entities, sections, elements within themselves. */
const repeated: Wound = (bytes, dice) => {
  const from = dice.below(bytes.length);
  const to = Math.min(bytes.length, from + 1 + dice.below(400));
  const at = dice.below(bytes.length);
  return spliced(bytes, at, at, bytes.slice(from, to));
};

const lostLine: Wound = (bytes, dice) => {
  const { from, to } = someLine(bytes, dice);
  return spliced(bytes, from, to, new Uint8Array(0));
};

/** A line, or a number in it, made into something that a careless reader half understands. */
const oddLine: Wound = (bytes, dice) => {
  const { from, to } = someLine(bytes, dice);
  const text = latin(bytes.subarray(from, to));
  const odd = dice.pick(ODD);
  const changed = dice.below(2) === 0 ? `${odd}\n` : text.replace(/-?\d+(\.\d+)?/, odd);
  return spliced(
    bytes,
    from,
    to,
    Uint8Array.from(changed, (sign) => sign.charCodeAt(0) & 255),
  );
};

const halves: Wound = (bytes, dice, good) => {
  const other = dice.pick(good).bytes;
  const at = dice.below(bytes.length);
  return spliced(bytes, at, bytes.length, other.slice(dice.below(other.length)));
};

const WOUNDS: readonly Wound[] = [changedByte, cut, lostBytes, addedBytes, repeated, lostLine, oddLine, oddLine, halves];

const ODD: readonly string[] = [
  ...['nan', 'inf', '-inf', '1e999', '-1e308', '1e308', '1e-320', '1,5', '1.0D+02', '--1', '.', '-', '', '0', '-0', '1e9', '2147483648'],
  ...['32767', '-32768', '99999999999999999999', '0x10', 'EOF', 'SECTION', 'ENDSEC', 'POLYLINE', 'INSERT', 'BLOCK', 'ENDBLK', 'hole'],
  ...['__proto__', '999', '1071', '-5', '100%', '1em', 'url(#hole)', '#hole', '#outline', '<', '</g>', '&x;', 'matrix(0 0 0 0 0 0)'],
];

const someLine = (bytes: Uint8Array, dice: Dice): { readonly from: number; readonly to: number } => {
  const somewhere = dice.below(bytes.length);
  const from = bytes.lastIndexOf(10, somewhere) + 1;
  const end = bytes.indexOf(10, from);
  return { from, to: end < 0 ? bytes.length : end + 1 };
};

const spliced = (bytes: Uint8Array, from: number, to: number, between: Uint8Array): Uint8Array => {
  const result = new Uint8Array(from + between.length + bytes.length - to);
  result.set(bytes.subarray(0, from));
  result.set(between, from);
  result.set(bytes.subarray(to), from + between.length);
  return result;
};

const latin = (bytes: Uint8Array): string => {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return text;
};
