/** What can stand in a hole of a sentence: data with its unit, frame or owner, never finished words. */
import type { Noun } from './noun.ts';
import type { Text } from './text.ts';
import type { Unit } from './unit.ts';

/** How many digits of a number are shown in the unit in which it was worked out. */
export type Digits =
  /** At most so many decimals, zeros at the end left out. */
  | { readonly upTo: number }
  | { readonly fixed: number }
  /** So many digits that count, zeros at the end left out. */
  | { readonly significant: number }
  /** All that it has. */
  | { readonly as: 'given' }
  /** As many decimals as its standard deviation deserves. */
  | { readonly deviation: number };

export interface Amount {
  readonly value: number;
  readonly digits: Digits;
  /** Groups of thousands are set apart. */
  readonly grouped?: true | undefined;
}

/** What stands between the numbers of one quantity. */
export type Joint = 'to' | 'by' | 'x' | '×' | '±' | 'or' | 'and' | '–';

/** 'drawing': units of the customer's drawing; 'program': as the control counts; 'block': mm from the corner of the block. */
export type Frame = 'drawing' | 'program' | 'block';

/** How much of a moment is shown. */
export type ShownMoment = 'day and time' | 'day' | 'time' | 'weekday and time';

export type Part =
  /** One number with its unit, or several that share it. `limit`: a promise, set behind ± and rounded up in any unit. */
  | {
      readonly kind: 'quantity';
      readonly amounts: readonly [Amount, ...Amount[]];
      readonly joint?: Joint | undefined;
      readonly unit: Unit;
      readonly limit?: true | undefined;
      /** It is smaller than that: 'less than 0.001 µm'. */
      readonly below?: true | undefined;
      /** Its unit stands elsewhere: in the heading of its column, or behind the next number. */
      readonly bare?: true | undefined;
    }
  /** A unit without a number, as in a heading: 'inch', since 'in' would be read as a word. */
  | { readonly kind: 'unit'; readonly unit: Unit }
  /** A number without a unit. */
  | { readonly kind: 'number'; readonly amount: Amount }
  /** Things that are counted: '1 contour', '3 contours'; the number alone without a noun. */
  | { readonly kind: 'count'; readonly count: number; readonly noun?: Noun | undefined }
  | {
      readonly kind: 'place';
      readonly x: number;
      readonly y: number;
      readonly frame: Frame;
      readonly digits: Digits;
      /** '(12.5, 3)', 'at X 12.5, Y 3', 'X12.5 Y3' or 'x 12.5 mm, y 3 mm', which names its unit. */
      readonly spelled: 'in brackets' | 'by letters' | 'as words' | { readonly unit: string };
    }
  /** A contour, open line or piece by its id: 'L3'. */
  | { readonly kind: 'contour'; readonly id: string }
  /** Given by a person (layer, job, customer, wire, material, file, typed text): printed byte for byte for every reader. */
  | { readonly kind: 'name'; readonly name: string }
  /** A word of a program, a file format, a standard or the command line, the same in every language: 'G41', 'kept.L1', 'ISO 286'. */
  | { readonly kind: 'term'; readonly term: string }
  | { readonly kind: 'duration'; readonly minutes: number }
  /** By the clock on the shop's wall, minutes since 1970: 'Thu 26 Nov 07:00', 'Thu 26 Nov', '07:00', 'Thu 07:00'. */
  | { readonly kind: 'moment'; readonly at: number; readonly shown: ShownMoment }
  | { readonly kind: 'money'; readonly minor: number; readonly currency: string; readonly per?: Unit | undefined }
  | { readonly kind: 'mass'; readonly kilograms: number; readonly digits: 3 | 4 }
  /**
   * `inside`: a heading or label within a sentence, where English begins it with a small letter. `clause`: without its closing stop.
   * `begins`: what is small elsewhere begins a cell or a line, where English takes a capital.
   */
  | {
      readonly kind: 'text';
      readonly text: Text;
      readonly inside?: true | undefined;
      readonly clause?: true | undefined;
      readonly begins?: true | undefined;
    }
  | {
      readonly kind: 'list';
      readonly items: readonly Part[];
      readonly joined: 'and' | 'or' | 'comma' | 'semicolon' | 'blank' | 'dot' | 'plus';
    };

export const upTo = (decimals: number): Digits => ({ upTo: decimals });
export const fixed = (decimals: number): Digits => ({ fixed: decimals });
export const significant = (digits: number): Digits => ({ significant: digits });
export const deviating = (deviation: number): Digits => ({ deviation });

/** '12.5 mm/min': one number with its unit. */
export const quantity = (value: number, unit: Unit, digits: Digits = deviating(0)): Part => ({
  kind: 'quantity',
  amounts: [{ value, digits }],
  unit,
});

/** '0.25 mm', four decimals at most. */
export const mm = (value: number, digits: Digits = upTo(4)): Part => quantity(value, 'mm', digits);
/** '3.2 µm', three digits that count. */
export const um = (value: number, digits: Digits = significant(3)): Part => quantity(value, 'µm', digits);

/** A length in mm, shown in µm below a tenth of a millimetre. */
export const length = (millimetres: number): Part => {
  if (millimetres === 0) return mm(0);
  if (millimetres > 0 && millimetres < 1e-6)
    return { kind: 'quantity', amounts: [{ value: 0.001, digits: upTo(3) }], unit: 'µm', below: true };
  if (millimetres < 0.1) return um(millimetres * 1000);
  return mm(millimetres, upTo(millimetres < 10 ? 3 : 2));
};

/** '±0.005 mm': a promise or a demand, in any unit rounded to the safe side. */
export const limit = (value: number, unit: Unit = 'mm', digits: Digits = deviating(0)): Part => ({
  kind: 'quantity',
  amounts: [{ value, digits }],
  unit,
  limit: true,
});

/** '±0.0059 mm' of a deviation that is to be expected: rounded up to 0.1 µm, so that nothing is promised that does not hold and no limit is met by rounding. */
export const promised = (millimetres: number): Part => limit(Math.ceil(millimetres * 1e4 - 1e-6) / 1e4, 'mm', upTo(4));

/** '78 x 78 x 90 mm', '0.5 to 32 mm': several numbers and their unit once. */
export const quantities = (values: readonly [number, ...number[]], joint: Joint, unit: Unit, digits: Digits = deviating(0)): Part => {
  const [first, ...rest] = values;
  const amount = (value: number): Amount => ({ value, digits });
  return { kind: 'quantity', amounts: [amount(first), ...rest.map(amount)], joint, unit };
};

/** A value with its range as a figure of the house has them; one standard deviation either side. */
export interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: Unit;
}

/** '5.6 ± 1.7 mm/min'; '50 mm' for what is exactly so. */
export const figured = ({ value, low, high, unit }: Ranged): Part => {
  const deviation = (high - low) / 2;
  const amount = { value, digits: deviating(deviation) };
  return deviation > 0
    ? { kind: 'quantity', amounts: [amount, { value: deviation, digits: deviating(deviation) }], joint: '±', unit }
    : { kind: 'quantity', amounts: [amount], unit };
};

/** The number of a quantity alone, in the unit of its reader, which is named elsewhere. */
export const bare = (value: number, unit: Unit, digits: Digits = deviating(0)): Part => ({
  kind: 'quantity',
  amounts: [{ value, digits }],
  unit,
  bare: true,
});
/** 'mm', 'inch': the unit in which a reader is shown what is in this one. */
export const unitName = (unit: Unit): Part => ({ kind: 'unit', unit });

/** A number without a unit; six digits that count unless told otherwise. */
export const number = (value: number, digits: Digits = deviating(0)): Part => ({ kind: 'number', amount: { value, digits } });
/** A number from a file with every digit that it has there. */
export const asGiven = (value: number): Part => ({ kind: 'number', amount: { value, digits: { as: 'given' } } });
/** '1,234': whole, thousands set apart. */
export const grouped = (value: number): Part => ({ kind: 'number', amount: { value, digits: fixed(0), grouped: true } });
/** '3 contours'; the number alone where no noun is given. */
export const count = (n: number, noun?: Noun): Part => ({ kind: 'count', count: n, noun });
/** 'L3': a contour, an open line or a piece. */
export const contour = (id: string): Part => ({ kind: 'contour', id });
/** What a person named or typed: no reader ever alters it. */
export const name = (given: string): Part => ({ kind: 'name', name: given });
/** A word of a program, file or standard: the same in every language. */
export const term = (word: string): Part => ({ kind: 'term', term: word });
/** 'Thu 26 Nov 07:00' */
export const moment = (at: number, shown: ShownMoment = 'day and time'): Part => ({ kind: 'moment', at, shown });
export const duration = (minutes: number): Part => ({ kind: 'duration', minutes });
export const money = (minor: number, currency: string, per?: Unit): Part => ({ kind: 'money', minor, currency, per });
/** '84 g', '2.36 kg' of kilograms. */
export const mass = (kilograms: number, digits: 3 | 4 = 3): Part => ({ kind: 'mass', kilograms, digits });
export const list = (items: readonly (Part | Text)[], joined: Extract<Part, { kind: 'list' }>['joined'] = 'comma'): Part => ({
  kind: 'list',
  items: items.map(asPart),
  joined,
});

interface Point {
  readonly x: number;
  readonly y: number;
}

/** '(12.5, 3)': a place on the drawing, in its units. */
export const place = ({ x, y }: Point, digits: Digits = upTo(4)): Part => ({
  kind: 'place',
  x,
  y,
  frame: 'drawing',
  digits,
  spelled: 'in brackets',
});
/** 'at X 12.5, Y 3'. */
export const placeByLetters = ({ x, y }: Point, digits: Digits = upTo(3), frame: Frame = 'drawing'): Part => ({
  kind: 'place',
  x,
  y,
  frame,
  digits,
  spelled: 'by letters',
});
/** 'X12.500 Y3.000', as a program has it. */
export const placeAsWords = ({ x, y }: Point, digits: Digits = fixed(3)): Part => ({
  kind: 'place',
  x,
  y,
  frame: 'drawing',
  digits,
  spelled: 'as words',
});
/** 'x 12.5 mm, y 3 mm'. */
export const placeWithUnit = ({ x, y }: Point, digits: Digits = upTo(3), unit = 'mm'): Part => ({
  kind: 'place',
  x,
  y,
  frame: 'drawing',
  digits,
  spelled: { unit },
});

/** A heading or label within a sentence: 'Height' in 'About height'. */
export const inside = (label: Text): Part => ({ kind: 'text', text: label, inside: true });

/** A whole sentence within another: its closing stop is left out. */
export const clause = (text: Text): Part => ({ kind: 'text', text, clause: true });

/** At the beginning of a cell or a line: 'Swings of temperature'. */
export const beginning = (text: Text): Part => ({ kind: 'text', text, begins: true });

/** A text is itself a part; a part stays what it is. */
export const asPart = (given: Part | Text): Part => ('kind' in given ? given : { kind: 'text', text: given });
