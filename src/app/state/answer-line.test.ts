/** The line of a job in the list: told anew where it is kept as data, as it was written where 0.3 kept its words. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { inputsMark } from '../../server/message/answered-from.ts';
import { mm, name } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { answeredFromOf, lineOf, olderThan, printedLine, sameFrom, sameLine } from './answer-line.ts';

const OLD = 'Yes. Layer "BEND 2.5 mm" can be cut, 25 mm high, in 9 h 40 min; {curly} and 1,234.50 EUR.';
const line = lineOf(say('test.line')`Yes. ${{ layer: name('BEND 2.5 mm') }}, ${{ height: mm(25.4) }} high.`);

const kept = (items: Readonly<Record<string, unknown>>): void => {
  vi.stubGlobal('localStorage', { getItem: (key: string) => JSON.stringify(items[key] ?? null) });
};

describe('the line of a job', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('of 0.3 is told letter by letter, whoever reads it', () => {
    expect(printedLine(OLD)).toBe(OLD);
    kept({ preferences: { lengthUnit: 'inch' } });
    expect(printedLine(OLD)).toBe(OLD);
  });

  it('that is kept as data is told in the units of its reader, names as they are', () => {
    expect(printedLine(JSON.parse(JSON.stringify(line)) as typeof line)).toBe('Yes. BEND 2.5 mm, 25.4 mm high.');
    kept({ preferences: { lengthUnit: 'inch' } });
    expect(printedLine(line)).toBe('Yes. BEND 2.5 mm, 1 in high.');
  });

  it('falls back to its English where the template of another language asks for what it does not hold', () => {
    kept({ language: { code: 'de', templates: { 'test.line': 'Ja. {layer}, {width} breit.' }, nouns: {}, junctions: {}, joints: {} } });
    expect(printedLine(line)).toBe('Yes. BEND 2.5 mm, 25.4 mm high.');
  });

  it('is known again by what it says', () => {
    expect(sameLine(line, lineOf(say('test.line')`Yes. ${{ layer: name('BEND 2.5 mm') }}, ${{ height: mm(25.4) }} high.`))).toBe(true);
    expect(sameLine(OLD, line)).toBe(false);
    expect(sameLine(undefined, OLD)).toBe(false);
  });

  it('is older than inputs, shop or program that changed since, and than the program where nobody kept what it came from', () => {
    const inputs = inputsMark({ height: 20 });
    const job = { line, inputs, answeredFrom: { inputs, shop: 3, version: '1' } };
    const now = { shop: 3, version: '1', day: '2026-11-26' };
    expect(olderThan(job, now)).toBeUndefined();
    expect(olderThan({ ...job, inputs: inputsMark({ height: 20.5 }) }, now)).toBe('inputs');
    expect(olderThan(job, { ...now, shop: 4 })).toBe('shop');
    expect(olderThan(job, { ...now, version: '2' })).toBe('version');
    expect(olderThan({ line: OLD, inputs, answeredFrom: undefined }, now)).toBe('version');
    expect(olderThan({ ...job, line: undefined }, { ...now, shop: 9, version: '9' })).toBeUndefined();
  });

  it('is older from the day on which other rates of the same shop come into force, unless the job names its day', () => {
    const rates = [{ from: '2027-01-01' }, { from: '2028-01-01' }, { from: '2026-01-01' }];
    const shop = { revision: 3, shop: { rates } };
    const fromOf = (input: object, day: string) => answeredFromOf({ height: 20, ...input }, shop, { version: '1', day });
    const answeredFrom = fromOf({}, '2026-12-31');
    const job = { line, inputs: answeredFrom.inputs, answeredFrom };
    const on = (day: string) => ({ shop: 3, version: '1', day });
    expect(['2026-12-31', '2027-01-01', '2027-06-01'].map((day) => olderThan(job, on(day)))).toEqual([undefined, 'rates', 'rates']);
    expect([fromOf({}, '2027-01-01').until, fromOf({}, '2028-01-01').until]).toEqual(['2028-01-01', undefined]);
    expect(fromOf({ date: '2026-11-25' }, '2026-12-31').until).toBeUndefined();
    expect(sameFrom(answeredFrom, fromOf({}, '2027-01-01'))).toBe(false);
    expect(sameFrom(answeredFrom, fromOf({}, '2026-11-30'))).toBe(true);
  });
});
