/** A correction from what is typed to what is printed, and the program written anew for it. */

import { describe, expect, it } from 'vitest';
import { asciiDxf } from '../../../test/dxf-writer.ts';
import { there } from '../../../test/there.ts';
import { jobRun } from '../../cli/inputs.ts';
import { printPlain } from '../../text/print/print.ts';
import { answered, cut, factsOf, program } from '../answered.fixture.ts';
import { correctJson, correctText } from '../handout/correct-report.ts';
import type { JobRun } from '../job-run.ts';
import { readMeasured } from '../request/read-measured.ts';
import { type CorrectAnswer, correctJob } from './correct-job.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');

const corrected = (run: JobRun, measured: readonly string[], change?: number): Extract<CorrectAnswer, { kind: 'corrected' }> => {
  const answer = correctJob(run, { measured, ...(change === undefined ? {} : { change }) });
  if (answer.kind !== 'corrected') throw new Error(answer.kind);
  return answer;
};

/** The findings where something is asked back, or else what came of it. */
const answerTo = (run: JobRun, measured: string): string => {
  const answer = correctJob(run, { measured: [measured] });
  return answer.kind === 'bad input' ? answer.findings.map((f) => `${f.code} ${f.severity} ${printPlain(f.text)}`).join() : answer.kind;
};

describe('what somebody measured', () => {
  it.each([
    ['L2: 24.006 of 24 at 22', { loop: 'L2', size: 24.006, expected: 24, temperature: 22, sides: 2 }],
    ['L12 = 0,9451 in of 24.0 mm at 21,5 °C', { loop: 'L12', size: 0.9451 * 25.4, expected: 24, temperature: 21.5, sides: 2 }],
    ['L3: 11.99 of 12 one side', { loop: 'L3', size: 11.99, expected: 12, temperature: 20, sides: 1 }],
  ])('is read: %s', (text, measured) => {
    const read = readMeasured(text);
    expect(read).toMatchObject({ kind: 'measured', measured: { ...measured, size: expect.closeTo(measured.size, 9) } });
  });

  it.each(['', 'L2', 'L2: 24', 'L2: of 24', 'L2: 1,250 of 3', 'L2: 24 of 24 at 900', 'L2: 24 of 0', `L2: ${'9'.repeat(200)} of 3`])(
    'is not guessed at: %s',
    (text) => {
      expect(readMeasured(text)).toMatchObject({ kind: 'bad', finding: { code: 'measured-not-readable' } });
    },
  );
});

describe('a correction of a job', () => {
  it('prints the registers, and the same as data', () => {
    const answer = corrected(die, ['L2: 27.994 of 28 at 20', 'L3: 21.996 of 22 at 20']);
    expect(correctText(answer)).toMatch(/set every register down by 2\.5 µm, D3 to 0\.\d{4} mm/);
    const data = JSON.parse(JSON.stringify(correctJson(answer))) as {
      registers: { before: number; after: { value: number } }[];
      safe: boolean;
    };
    expect(data.safe).toBe(true);
    for (const r of data.registers) expect(r.before - r.after.value).toBeCloseTo(0.0025, 9);
  });

  it('tells the registers of an inch program in inch, as they are typed into the control', () => {
    const millimetres = correctText(corrected(die, ['L2: 27.994 of 28 at 20']));
    const inches = correctText(corrected({ ...die, dialect: { ...die.dialect, units: 'inch' } }, ['L2: 27.994 of 28 at 20']));
    const [mm, inch] = [/D3 to (0\.\d{4}) mm/.exec(millimetres)?.[1], /D3 to (0\.\d{5}) inch/.exec(inches)?.[1]];
    expect(Math.abs(Number(inch) * 25.4 - Number(mm))).toBeLessThan(0.0002);
    expect(inches).toMatch(/old inch +new inch/);
    expect(corrected(die, [], 0.001).unit.name).toBe('mm');
  });

  it('leads to a program that is proven with the corrected registers, where they cannot be set in the old one', () => {
    const answer = corrected(die, ['L2: 28.036 of 28 at 20']);
    expect(answer.correction?.safe).toBe(false);
    expect(correctText(answer)).toContain('"passes":[{"offset":');
    const shop = { ...die.shop, passTables: [there(answer.passTable)] };
    const again = factsOf({ ...die, shop, job: { ...die.job, wire: there(answer.passTable).wire } });
    expect(again.outcome.answer).toBe('yes');
    const [before, after] = [answer.registers, program(again).registers];
    for (const [number, value] of before) expect(there(after.get(number)) - value).toBeCloseTo(0.018, 3);
  });

  it('asks about a size that the contour does not have and one that no cut is off by, and takes it where it is meant so', () => {
    expect(answerTo(die, 'L3: 25.004 of 25')).toBe(
      'measured-doubted doubt L3 has no size of 25 mm; the nearest: 22 mm. No correction is worked out.',
    );
    expect(correctJob(die, { measured: ['L3: 25 of 22'] })).toMatchObject({
      kind: 'bad input',
      findings: [{ code: 'measured-doubted', severity: 'doubt' }],
    });
    expect(answerTo(die, 'L3: 25 of 22')).toContain('L3: 25 mm is further from 22 mm than any cut is off.');
    const ellipse = asciiDxf([
      ...([
        [0, 'SECTION'],
        [2, 'ENTITIES'],
        [0, 'ELLIPSE'],
        [8, '0'],
        [10, 50],
        [20, 50],
        [11, 15],
        [21, 0],
        [40, 0.6],
      ] as const),
      ...([
        [41, 0],
        [42, 2 * Math.PI],
        [0, 'ENDSEC'],
        [0, 'EOF'],
      ] as const),
    ]);
    const oval = { ...die, drawing: ellipse, job: { ...die.job, outline: 'cut' as const } };
    expect([answerTo(oval, 'L1: 24.004 of 24'), answerTo(oval, 'L1: 29.996 of 30'), answerTo(oval, 'L1: 17.998 of 18')]).toEqual([
      expect.stringMatching(/^measured-doubted doubt L1 has no size of 24 mm; the nearest: 18 mm, 30 mm\./),
      'corrected',
      'corrected',
    ]);
    for (const measured of [
      'L3: 25.004 of 25 anyway',
      'L3: 25.004 of 25 at 20 one side anyway',
      'L3: 24.99 of 25 one side',
      'L3: 21.996 of 22',
    ])
      expect([measured, answerTo(die, measured)]).toEqual([measured, 'corrected']);
    const listed = { ...die, job: { ...die.job, sizes: [{ name: 'step', length: 25, tolerance: 0.02, sides: 2 as const }] } };
    expect(answerTo(listed, 'L3: 25.004 of 25')).toBe('corrected');
  });

  it.each([
    ['L3: 22.084 of 22.08', 'corrected'],
    ['L3: 22.124 of 22.12', 'has no size of 22.12 mm; the nearest: 22 mm.'],
    ['L3: 22.16 of 22', 'corrected'],
    ['L3: 22.24 of 22', 'is further from 22 mm than any cut is off.'],
  ])('takes a size rounded to a tenth and a cut off by a tenth per side, and asks beyond: %s', (measured, answer) => {
    expect(answerTo(die, measured)).toContain(answer);
  });

  it('names the four sizes nearest to one that is none', () => {
    const sizes = [10, 12, 14, 16, 18].map((length) => ({ name: `step ${length}`, length, tolerance: 0.02, sides: 2 as const }));
    expect(answerTo({ ...die, job: { ...die.job, sizes } }, 'L3: 25.004 of 25')).toContain('the nearest: 14 mm, 16 mm, 18 mm, 22 mm.');
  });

  it('sets out no registers beside the sentence that forbids or discourages setting them', () => {
    const told = (measured: string): string => correctText(corrected(die, [measured])).replace(/\s+/g, ' ');
    const [forbidden, idle, given] = ['L2: 28.036 of 28 at 20', 'L2: 27.9996 of 28 at 20', 'L2: 27.994 of 28 at 20'].map(told);
    expect(forbidden).toContain('Do not set these registers');
    expect(idle).toMatch(
      /0\.2 µm stock left per side: less than the measuring uncertainty \(±[\d.]+ µm\); leave the registers as they are\./,
    );
    for (const text of [forbidden, idle]) expect(text).not.toMatch(/new mm|set every register/);
    expect(given).toMatch(/set every register down by 3\.0 µm, D3 to .* new mm/);
  });

  it('tells the reverse: what a change of the registers does', () => {
    const text = correctText(corrected(die, [], -0.003)).replaceAll('\n', ' ');
    expect(text).toMatch(/an opening gets 6\.0 µm wider and a part 6\.0 µm smaller/);
    expect(correctText(corrected(die, ['L2: 28 of 28'], 0.002))).toContain('L2 would be 27.9960 mm at 20 °C');
  });

  it('knows a contour that is not cut, and a job without a program', () => {
    expect(correctJob(die, { measured: ['L1: 3 of 3'] })).toMatchObject({
      kind: 'bad input',
      findings: [{ code: 'measured-loop-unknown' }],
    });
    expect(correctJob({ ...die, job: { ...die.job, finish: 0.001 } }, { measured: ['L2: 3 of 3'] })).toMatchObject({ kind: 'cannot' });
  });
});

describe('the error budget and other processes of a job', () => {
  it('are in the answer with figures that can be asked why', () => {
    const answer = answered({ ...die, job: { ...die.job, sizes: [{ name: 'bore', length: 20, tolerance: 0.01, sides: 2 }] } });
    for (const key of ['budget.total', 'budget.thermal', 'budget.barrel', 'budget.size.1.total', 'other.laser.perpendicularity'])
      expect(answer.figures.has(key), key).toBe(true);
    expect(cut(answer.facts).otherWays?.kind).toBe('only the wire');
    const coarse = factsOf({ ...die, job: { ...die.job, height: 6, tolerance: 0.5, finish: 16 } });
    expect(cut(coarse).otherWays?.kind).toBe('not for the wire');
  });
});
