/** Text that comes from a file or a message: held against what a text can be before anything prints it. */
import { nouns } from './noun.ts';
import type { Part } from './part.ts';
import type { Text } from './text.ts';

type Check = (value: unknown) => boolean;

/** As JSON: whatever says more in one line is no line. */
const MOST = 10_000;

/** True for the data of a text all of whose holes are filled with parts that the printer knows. */
export const isKeptText = (value: unknown): value is Text => isText(value) && JSON.stringify(value).length <= MOST;

const isString: Check = (value) => typeof value === 'string';
const isNumber: Check = (value) => Number.isFinite(value);
const among =
  (...known: readonly unknown[]): Check =>
  (value) =>
    known.includes(value);
const matching =
  (form: RegExp): Check =>
  (value) =>
    typeof value === 'string' && form.test(value);
const listOf =
  (check: Check): Check =>
  (value) =>
    Array.isArray(value) && value.every(check);
const either =
  (...checks: readonly Check[]): Check =>
  (value) =>
    checks.some((check) => check(value));
const ifAny = (check: Check): Check => either(among(undefined), check);
const isData = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
/** These keys and no others. */
const keys =
  (checks: Readonly<Record<string, Check>>): Check =>
  (value) =>
    isData(value) &&
    Object.keys(value).every((key) => Object.hasOwn(checks, key)) &&
    Object.entries(checks).every(([key, check]) => check(value[key]));

const isText: Check = (value) =>
  keys({ key: ifAny(isString), template: isString, holes: (holes) => isData(holes) && Object.values(holes).every(isPart) })(value) &&
  isFilled(value as { template: string; holes: object });

const isFilled = ({ template, holes }: { readonly template: string; readonly holes: object }): boolean =>
  [...template.matchAll(/\{(\w+)(?::\w+)?\}/g)].every(([, hole = '']) => Object.hasOwn(holes, hole));

const isPart: Check = (value) => {
  const kind = isData(value) ? value['kind'] : undefined;
  return typeof kind === 'string' && Object.hasOwn(PARTS, kind) && keys({ kind: isString, ...PARTS[kind as Part['kind']] })(value);
};

/** No more digits than a number has. */
const places: Check = (value) => Number.isInteger(value) && Number(value) >= 0 && Number(value) <= 20;
const counting: Check = (value) => places(value) && value !== 0;
const digits = either(
  keys({ upTo: places }),
  keys({ fixed: places }),
  keys({ significant: counting }),
  keys({ as: among('given') }),
  keys({ deviation: isNumber }),
);
const flag = among(undefined, true);
const amount = keys({ value: isNumber, digits, grouped: flag });
const unit = matching(/^(?:1|1e-6\/K|[%°\p{L}][\p{L}²³°]*(?:\/[\p{L}²³]+)?)$/u);
/** Minutes that a calendar still has a day for. */
const minute: Check = (value) => isNumber(value) && Math.abs(Number(value)) < 1e10;

const PARTS: Readonly<Record<Part['kind'], Readonly<Record<string, Check>>>> = {
  quantity: {
    amounts: (value) => listOf(amount)(value) && (value as readonly unknown[]).length > 0,
    joint: among(undefined, 'to', 'by', 'x', '×', '±', 'or', 'and', '–'),
    unit,
    limit: flag,
    below: flag,
    bare: flag,
  },
  unit: { unit },
  number: { amount },
  count: { count: isNumber, noun: ifAny((noun) => typeof noun === 'string' && Object.hasOwn(nouns, noun)) },
  place: {
    x: isNumber,
    y: isNumber,
    frame: among('drawing', 'program', 'block'),
    digits,
    spelled: either(among('in brackets', 'by letters', 'as words'), keys({ unit: isString })),
  },
  contour: { id: isString },
  name: { name: isString },
  term: { term: isString },
  duration: { minutes: isNumber },
  moment: { at: minute, shown: among('day and time', 'day', 'time', 'weekday and time') },
  money: { minor: isNumber, currency: matching(/^[A-Z]{3}$/), per: ifAny(unit) },
  mass: { kilograms: isNumber, digits: among(3, 4) },
  text: { text: (value) => isText(value), inside: flag, clause: flag, begins: flag },
  list: {
    items: (value) => listOf(isPart)(value),
    joined: among('and', 'or', 'comma', 'semicolon', 'blank', 'dot', 'plus'),
  },
};
