/** What is written is what is read: for every dialect the same moves, stops, conditions, registers and wire-centre paths. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitOf, endsApart, lapsRead, pathsApart, type ReadMove, unsound } from '../../test/nc/compare.ts';
import { everyDialect } from '../../test/nc/dialects.ts';
import { type TestPlan, testPlan } from '../../test/nc/plans.ts';
import { seeded } from '../../test/seeded.ts';
import { say } from '../text/say.ts';
import { type Dialect, standardDialect } from './dialect/dialect.ts';
import { parseDialect } from './dialect/parse.ts';
import type { Action, ReadProgram } from './read/program.ts';
import { readProgram } from './read/read.ts';
import { plain } from './write/comment.ts';
import { type WrittenProgram, writeProgram } from './write/write.ts';

const header = {
  name: 'Round trip',
  date: '2026-03-04',
  notes: [say('test.note')`A note (in brackets) that goes on for quite a while so that it has to be broken into lines`],
};

/**
 * The wire's centre in the control is worked out from ends, centres and offsets that are each rounded by half a digit; their errors
 * add up to at most this many last digits on these shapes (2.3 seen in 2 400 plans).
 */
const CENTRE_WITHIN = 3;

interface Trip {
  readonly written: Extract<WrittenProgram, { kind: 'written' }>;
  readonly program: ReadProgram;
  readonly moves: readonly ReadMove[];
}

const trip = (planned: TestPlan, dialect: Dialect): Trip => {
  const written = writeProgram(planned.plan, dialect, header);
  if (written.kind === 'refused') throw new Error(JSON.stringify(written.findings));
  const program = readProgram(written.text, dialect, written.registers);
  if (program.state === 'refused') throw new Error(`${JSON.stringify(program.findings)}\n${written.text}`);
  return { written, program, moves: program.actions.filter((action) => action.kind === 'move') };
};

/** All that is wrong with a trip, in words; nothing when it is right. */
const wrong = (planned: TestPlan, dialect: Dialect): string[] => {
  const { written, program, moves } = trip(planned, dialect);
  const digit = digitOf(dialect);
  const inControl = dialect.compensation === 'control';
  const found = [...unsound(moves), ...wrongWords(planned, dialect, program.actions), ...untold(written, program)];
  const laps = lapsRead(moves, planned.laps, digit);
  if (laps.length !== planned.laps.length) return [...found, `${laps.length} laps for ${planned.laps.length}`];
  for (const [index, lap] of planned.laps.entries()) {
    const read = laps[index] as readonly ReadMove[];
    const ends = endsApart(
      inControl ? lap.programmed : lap.centre,
      read.map((move) => (inControl ? move.programmed : move.centre)),
      digit,
    );
    const centre = pathsApart(
      lap.centre,
      read.map((move) => move.centre),
      digit,
    );
    if (ends > 0.501) found.push(`lap ${index}: an end is ${ends} digits off`);
    if (centre > CENTRE_WITHIN) found.push(`lap ${index}: the wire is ${centre} digits off`);
    if (read.some((move) => move.condition !== lap.condition)) found.push(`lap ${index}: another condition`);
    const compensated = read.slice(0, -1);
    if (inControl && compensated.some((move) => move.register !== lap.register || move.side !== lap.side))
      found.push(`lap ${index}: another register or side`);
    if (!inControl && read.some((move) => move.register !== undefined)) found.push(`lap ${index}: a register`);
  }
  return found;
};

const wrongWords = (planned: TestPlan, dialect: Dialect, actions: readonly Action[]): string[] => {
  const found: string[] = [];
  const own = /^(THREAD THE WIRE|CUT THE WIRE|CONDITION )/;
  const stops = actions.filter((action) => action.kind === 'stop').filter((stop) => !own.test(stop.comment));
  if (stops.length !== planned.stops.length) found.push(`${stops.length} stops for ${planned.stops.length}`);
  for (const [index, stop] of stops.entries()) {
    const wanted = planned.stops[index];
    if (dialect.comments !== 'none' && stop.comment !== plain(wanted?.sentence ?? '')) found.push(`stop ${index}: ${stop.comment}`);
    if (stop.optional !== (dialect.optionalStops && wanted?.optional === true)) found.push(`stop ${index}: optional`);
  }
  const count = (kind: Action['kind'], words: RegExp): number =>
    actions.filter((action) => action.kind === kind || (action.kind === 'stop' && words.test(action.comment))).length;
  const holes = planned.travels.length;
  if (count('thread', /^THREAD THE WIRE/) !== holes) found.push('threads');
  if (count('cut wire', /^CUT THE WIRE/) !== holes) found.push('wire cuts');
  if (actions.at(-1)?.kind !== 'end') found.push('end');
  return found;
};

/** What the writer says of its stops, the wire's too, is what is read back there, one by one. */
const untold = (written: Trip['written'], program: ReadProgram): readonly string[] => {
  const read = program.actions.flatMap((action) => (action.kind === 'stop' ? [action.comment] : []));
  const told = written.stops.map((stop) => stop.comment);
  return JSON.stringify(read) === JSON.stringify(told) ? [] : [`stops: ${JSON.stringify(read)} for ${JSON.stringify(told)}`];
};

const plans = (outsideCorners: 'arc' | 'intersection'): readonly TestPlan[] =>
  Array.from({ length: 7 }, (_, k) =>
    testPlan(seeded(100 + k), {
      contours: 1,
      passes: 1 + (k % 2),
      vertices: 3 + (k % 2),
      outsideCorners,
      offsetStep: k % 3 === 0 ? 1e-7 : 1e-4,
    }),
  );

describe('a program written and read back', () => {
  // Each of the 161 280 combinations was run once (46 s); 13 shares no factor with any option's choices, so that this share of
  // them has every choice beside every other many times.
  it('says the same across all combinations of dialect options', () => {
    const ready = { arc: plans('arc'), intersection: plans('intersection') };
    let count = 0;
    const faults: string[] = [];
    for (const dialect of everyDialect()) {
      count += 1;
      if (count % 13 !== 0) continue;
      const choice = ready[dialect.outsideCorners];
      const found = wrong(choice[(count / 13) % choice.length] as TestPlan, dialect);
      if (found.length > 0) faults.push(`${JSON.stringify(dialect)}: ${found.join('; ')}`);
    }
    expect(faults.slice(0, 3)).toEqual([]);
    expect(count).toBe(161_280);
  });

  it('keeps random contours and passes to half a last digit', () => {
    const settings = fc.record({
      seed: fc.integer({ min: 0, max: 2 ** 31 }),
      contours: fc.integer({ min: 1, max: 3 }),
      passes: fc.integer({ min: 1, max: 4 }),
      vertices: fc.integer({ min: 3, max: 7 }),
      offsetStep: fc.constantFrom(1e-7, 1e-4, 1e-3),
      units: fc.constantFrom('mm' as const, 'inch' as const),
      decimals: fc.integer({ min: 3, max: 6 }),
      arcs: fc.constantFrom('centre' as const, 'radius' as const),
      coordinates: fc.constantFrom('absolute' as const, 'incremental' as const),
      compensation: fc.constantFrom('control' as const, 'path' as const),
      outsideCorners: fc.constantFrom('arc' as const, 'intersection' as const),
    });
    fc.assert(
      fc.property(settings, ({ seed, contours, passes, vertices, offsetStep, ...choice }) => {
        const planned = testPlan(seeded(seed), { contours, passes, vertices, offsetStep, outsideCorners: choice.outsideCorners });
        expect(wrong(planned, { ...standardDialect, ...choice })).toEqual([]);
      }),
      { seed: 20260301, numRuns: 600 },
    );
  });

  it('is written in dialects that pass their own check', () => {
    let count = 0;
    for (const dialect of everyDialect()) {
      count += 1;
      if (count % 97 === 0) expect(parseDialect(dialect).kind).toBe('dialect');
    }
  });
});
