/** What is said comes out whole for every reader: names byte for byte, each quantity once, in any unit, mark or language. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Language } from '../language.ts';
import {
  contour,
  count,
  duration,
  figured,
  length,
  limit,
  list,
  mass,
  mm,
  money,
  name,
  type Part,
  place,
  quantities,
  quantity,
  term,
} from '../part.ts';
import { HOUSE, type Reader } from '../reader.ts';
import { only, say } from '../say.ts';
import type { Text } from '../text.ts';
import { contoursIn, placesMapped } from '../within.ts';
import { type Printed, type PrintedPart, print, printedParts, printPlain } from './print.ts';

/** Words apart from the holes, so that what they hold can be told from the sentence. */
const TURNED: Language = {
  code: 'de',
  templates: {
    'test/three': '«{second}» — «{first}» — «{third}»',
    'test/counted': { by: 'n', forms: { one: 'eins: {n}', other: 'mehr: {n}' } },
  },
  nouns: { contour: { '': { one: 'Kontur', other: 'Konturen' } } },
  junctions: { and: ' und ', or: ' oder ', comma: ', ' },
  joints: { to: ' bis ' },
};

const reader: fc.Arbitrary<Reader> = fc.record({
  length: fc.constantFrom('mm' as const, 'inch' as const),
  finish: fc.constantFrom('µm' as const, 'µin' as const),
  decimalMark: fc.constantFrom('.', ','),
  groupMark: fc.constantFrom('', ',', '.', '\u202f'),
  names: fc.constant([]),
  drawn: fc.constantFrom(undefined, 1, 25.4),
  language: fc.constantFrom(undefined, TURNED),
});

/** What people call their layers, jobs and wires: quantities, places and braces among them. */
const given = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 30 }),
  fc.constantFrom('BEND 2.5 mm', 'Bracket 2.5 mm', 'M6 x 1 mm', '(1.5, 2.5)', '{first}', '±0.01 mm', 'at X 1, Y 2', '1,234.5', "'x'"),
);

const size = fc.double({ min: 1e-4, max: 5000, noNaN: true });
const measured: fc.Arbitrary<Part> = fc.oneof(
  size.map((v) => mm(v)),
  size.map((v) => length(v)),
  size.map((v) => limit(v)),
  size.map((v) => quantity(v, 'mm/min')),
  size.map((v) => figured({ value: v, low: v * 0.9, high: v * 1.1, unit: 'µm' })),
  fc.tuple(size, size).map(([a, b]) => quantities([a, b], 'to', 'mm')),
);

const three = (first: Part | Text, second: Part | Text, third: Part | Text): Text =>
  say('test/three')`First ${{ first }}, then ${{ second }} and ${{ third }}.`;

type Printer = (text: Text, whom: Reader) => readonly Pick<PrintedPart, 'of' | 'text'>[];

/** Names and quantities of what a printer makes of a text. */
const heldBy = (printer: Printer, text: Text, whom: Reader) => {
  const parts = printer(text, whom);
  const of = (kind: PrintedPart['of']) => parts.filter((p) => p.of === kind).map((p) => String(p.text));
  return { names: of('name').toSorted(), quantities: of('quantity').toSorted() };
};

const holdsNames = (printer: Printer) =>
  fc.property(given, given, measured, reader, (layer, job, part, whom) => {
    const text = three(name(layer), part, list([name(job), term('G41')], 'and'));
    expect(heldBy(printer, text, whom).names).toEqual([layer, job].toSorted());
  });

const holdsQuantities = (printer: Printer) =>
  fc.property(measured, measured, measured, reader, (a, b, c, whom) => {
    const alone = [a, b, c].map((part) => String(print(only(part), whom)));
    expect(heldBy(printer, three(a, b, c), whom).quantities).toEqual(alone.toSorted());
  });

/** Finished words read again, as was done once: whatever looks like a number with a unit is turned into another. */
const rereads: Printer = (text, whom) =>
  printedParts(text, whom).map(({ of, text: words }) => ({
    of,
    text: `${words}`.replace(/\d+\.\d+ (?=mm)/g, (n) => `${Number(n) / 25.4} `) as Printed,
  }));
const repeats: Printer = (text, whom) => printedParts(text, whom).flatMap((part) => (part.of === 'quantity' ? [part, part] : [part]));

describe('a printed text', () => {
  it('holds each name byte for byte, for every reader', () => {
    fc.assert(holdsNames(printedParts));
  });

  it('holds each quantity once, as it is printed alone', () => {
    fc.assert(holdsQuantities(printedParts));
  });

  it('would be seen to lose a name or to say a quantity twice', () => {
    expect(fc.check(holdsNames(rereads), { numRuns: 1000 }).failed).toBe(true);
    expect(fc.check(holdsQuantities(repeats)).failed).toBe(true);
    const dropped: Language = { ...TURNED, templates: { 'test/three': '{first}' } };
    expect(fc.check(holdsQuantities((text, whom) => printedParts(text, { ...whom, language: dropped }))).failed).toBe(true);
  });

  it('is what its parts say, joined', () => {
    fc.assert(
      fc.property(given, measured, reader, (layer, part, whom) => {
        const text = three(name(layer), part, contour('L3'));
        const joined = printedParts(text, whom)
          .map((p) => p.text)
          .join('');
        expect(String(print(text, whom))).toBe(joined);
      }),
    );
  });

  it('promises nothing in another unit that does not hold', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (tenths) => {
        const micrometres = tenths / 10;
        const inches = Number(
          /±([\d.]+) in/.exec(print(say('t')`${{ within: limit(micrometres / 1000) }}`, { ...HOUSE, length: 'inch' }))?.[1],
        );
        expect(inches * 25.4 * 1000).toBeGreaterThanOrEqual(micrometres * (1 - 1e-9));
        expect(inches * 25.4 * 1000).toBeLessThan(micrometres * 1.01 + 0.03);
      }),
    );
  });

  it('takes order and plural from another language', () => {
    const whom: Reader = { ...HOUSE, decimalMark: ',', language: TURNED };
    expect(String(print(three(mm(1.5), contour('L2'), name('BEND 2.5 mm')), whom))).toBe('«L2» — «1,5 mm» — «BEND 2.5 mm»');
    const counted = (n: number): Text => say('test/counted')`there: ${{ n: count(n, 'contour') }}`;
    expect([1, 3].map((n) => String(print(counted(n), whom)))).toEqual(['eins: 1 Kontur', 'mehr: 3 Konturen']);
    expect([1, 3].map((n) => String(printPlain(counted(n))))).toEqual(['there: 1 contour', 'there: 3 contours']);
  });
});

describe('a length too small to be shown', () => {
  it('is called less than what can be, and never that itself', () => {
    expect(String(printPlain(say('t')`${{ gap: length(1e-9) }}`))).toBe('less than 0.001 µm');
  });
});

describe('hours, money and masses', () => {
  const text = say(
    't',
  )`${{ time: duration(580) }}, ${{ price: money(123_450, 'EUR', 'money/h') }}, ${{ light: mass(0.0841) }}, ${{ heavy: mass(2.3567) }}`;

  it('are printed as the shop says them', () => {
    expect(String(printPlain(text))).toBe('9 h 40 min, 1,234.50 EUR/h, 84.1 g, 2.36 kg');
  });

  it('take the marks of their reader', () => {
    const whom: Reader = { ...HOUSE, length: 'inch', decimalMark: ',', groupMark: '.' };
    expect(String(print(text, whom))).toBe('9 h 40 min, 1.234,50 EUR/h, 84,1 g, 2,36 kg');
  });
});

describe('what a text holds', () => {
  const text = three(contour('L1'), place({ x: 3, y: 4 }), name('L9 at (3, 4)'));

  it('is asked by data: a name that looks like a contour is none', () => {
    expect(contoursIn(text)).toEqual(['L1']);
  });

  it('moves without touching names', () => {
    const moved = placesMapped(text, (p) => ({ ...p, x: p.x + 10 }));
    expect(String(printPlain(moved))).toBe('First L1, then (13, 4) and L9 at (3, 4).');
  });
});

describe('a text is opaque', () => {
  it('has no member that another layer could read', () => {
    const text = say('t')`Words.`;
    // @ts-expect-error a text is printed, never read
    const replaced = (): unknown => text.replace('a', 'b');
    // @ts-expect-error nor does it turn into a string by itself
    const turned = (): unknown => text.toString();
    // @ts-expect-error nor when it is added to a string
    // biome-ignore lint/style/useTemplate: the compiler is asked about both
    const added = (): unknown => 'See ' + text;
    // @ts-expect-error nor in a template literal
    const written = (): unknown => `See ${text}`;
    // @ts-expect-error nor when it may be missing
    const perhaps = (given: Text | undefined): unknown => `See ${given}`;
    // @ts-expect-error nor by being told to: what comes of it is no string
    const told = (): string => String(text);
    // @ts-expect-error what was printed may be joined and laid out, not taken apart again
    const reread = (): unknown => printPlain(text).replace('a', 'b');
    // @ts-expect-error a hole is a part or a text, never a finished string
    const hole = (): unknown => say`${{ word: 'finished' }}`;
    expect([replaced, turned, perhaps, reread, hole]).toHaveLength(5);
    for (const forced of [added, written, told]) expect(forced).toThrow('printed for a reader');
  });
});
