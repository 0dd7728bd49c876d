/** A sentence of the house told in other units and marks: 'R 0.165 mm at (98.000, 58.000)' becomes 'R 0,00650 in at (3,8583; 2,2835)'. */
import { firstItem } from '../../sequence/sequence.ts';
import { HOUSE, type Reader } from '../reader.ts';
import { type SaidNumber, type SaidPart, type SaidUnit, saidParts } from './said.ts';

export type Telling = Reader;

/** The same sentence for this reader. */
export const restated = (sentence: string, telling: Telling): string =>
  isAsWritten(telling) || !/\d/.test(sentence) ? sentence : printed(saidParts(sentence, telling.names), telling);

/** As the house itself writes: told so, every sentence stays as it is. */
export const AS_WRITTEN: Telling = HOUSE;

const isAsWritten = ({ length, finish, decimalMark, groupMark, drawn = 1 }: Telling): boolean =>
  length === 'mm' && finish === 'µm' && drawn === 1 && decimalMark === '.' && groupMark === ',';

type Marks = Pick<Telling, 'decimalMark' | 'groupMark'>;

const printed = (parts: readonly SaidPart[], telling: Telling): string => {
  const texts = parts.map((part) => partText(part, telling));
  if (telling.decimalMark !== ',') return texts.join('');
  // '0.1, 0.2' would become '0,1, 0,2', in which nobody sees where one number ends.
  return texts.map((t, i) => (t === ', ' && endsInDecimals(parts[i - 1]) && beginsANumber(parts[i + 1]) ? '; ' : t)).join('');
};

const endsInDecimals = (part: SaidPart | undefined): boolean => part?.kind === 'number' && part.number.decimals > 0;
const beginsANumber = (part: SaidPart | undefined): boolean => part?.kind === 'number' || part?.kind === 'quantity';

const partText = (part: SaidPart, telling: Telling): string => {
  const { length, drawn, decimalMark, places = length } = telling;
  if (part.kind === 'words') return part.text;
  if (part.kind === 'number') return marked(part.number, part.number.size, part.number.decimals, telling);
  if (part.kind === 'place') {
    const factor = drawn === undefined ? 1 : drawn / (places === 'inch' ? 25.4 : 1);
    const [x, y] = [part.x, part.y].map((n) => (factor === 1 ? marked(n, n.size, n.decimals, telling) : spot(n, n.size * factor, telling)));
    return part.spelled === 'by letters' ? `at X ${x}, Y ${y}` : `(${x}${decimalMark === ',' ? ';' : ','} ${y})`;
  }
  const scale = scaleOf(part.unit, telling);
  const numbers = scale === undefined ? part.numbers.map((n) => marked(n, n.size, n.decimals, telling)) : scaledAlike(part, scale, telling);
  return `${numbers.map((n, i) => `${n}${part.joints[i] ?? ''}`).join('')}${part.gap}${scale?.name ?? part.unit}`;
};

/** To a ten thousandth of the unit: finer than anybody points. */
const spot = (number: SaidNumber, size: number, marks: Marks): string => marked(number, size, trimmed(size, 4), marks);

interface Scale {
  readonly factor: number;
  readonly name: string;
}

const INCH: Readonly<Partial<Record<SaidUnit, Scale>>> = {
  mm: { factor: 1 / 25.4, name: 'in' },
  MM: { factor: 1 / 25.4, name: 'IN' },
  'mm/min': { factor: 1 / 25.4, name: 'in/min' },
  'mm²': { factor: 1 / 25.4 ** 2, name: 'in²' },
  'mm²/min': { factor: 1 / 25.4 ** 2, name: 'in²/min' },
  'mm³': { factor: 1 / 25.4 ** 3, name: 'in³' },
  'mm³/min': { factor: 1 / 25.4 ** 3, name: 'in³/min' },
  'mm³/s': { factor: 1 / 25.4 ** 3, name: 'in³/s' },
  m: { factor: 1 / 0.3048, name: 'ft' },
  'm/min': { factor: 1 / 0.3048, name: 'ft/min' },
};
const MICROINCH: Scale = { factor: 1 / 0.0254, name: 'µin' };

const scaleOf = (unit: SaidUnit, { length, finish }: Telling): Scale | undefined => {
  if (unit === 'µm') return finish === 'µin' ? MICROINCH : undefined;
  return length === 'inch' ? INCH[unit] : undefined;
};

type Quantity = Extract<SaidPart, { kind: 'quantity' }>;

/** A number and how sure it is have their last digit at the same place, the second that counts of how sure. */
const scaledAlike = ({ numbers, joints }: Quantity, { factor }: Scale, marks: Marks): readonly string[] => {
  const sure = joints.at(-1) === ' ± ' ? numbers.at(-1) : undefined;
  if (sure === undefined || sure.size === 0) return numbers.map((n) => scaled(n, factor, marks));
  const alike = decimalsOf(sure.size * factor, Math.max(2, sure.digits));
  return numbers.map((n) => marked(n, n.size * factor, alike, marks));
};

/**
 * As many digits that count as were written, at least three: nothing gets surer by being told anew.
 * A limit that was promised is rounded up, so that nothing is promised that does not hold.
 */
const scaled = (number: SaidNumber, factor: number, marks: Marks): string => {
  const size = number.size * factor;
  if (size === 0) return marked(number, 0, 0, marks);
  const decimals = decimalsOf(size, Math.max(3, number.digits));
  const parts = 10 ** decimals;
  const rounded = number.within ? Math.ceil(size * parts - 1e-6) / parts : Math.round(size * parts) / parts;
  return marked(number, rounded, rounded === 0 ? 0 : trimmed(rounded, decimals), marks);
};

/** Decimals with which so many digits of a size count. */
const decimalsOf = (size: number, digits: number): number => Math.min(9, Math.max(0, digits - 1 - Math.floor(Math.log10(size))));

/** Without zeros at its end. */
const trimmed = (value: number, decimals: number): number =>
  value
    .toFixed(decimals)
    .replace(/\.?0+$/, '')
    .split('.')[1]?.length ?? 0;

/** Thousands are grouped where they were, and where a number became that long by being told anew. */
const marked = ({ text, sign, grouped }: SaidNumber, size: number, decimals: number, { decimalMark, groupMark }: Marks): string => {
  if (text.includes('e')) return text.replace('.', decimalMark);
  const [whole = '', rest] = size.toFixed(decimals).split('.');
  const longer = whole.length > 4 && firstItem(text.split('.')).length < whole.length;
  const led = grouped || longer ? whole.replace(/\B(?=(\d{3})+$)/g, groupMark) : whole;
  return `${sign}${led}${rest === undefined ? '' : `${decimalMark}${rest}`}`;
};
