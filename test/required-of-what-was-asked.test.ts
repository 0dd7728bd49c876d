/** Nobody asked for anything: then nothing that is printed or shown calls a value required, whatever falls short of it. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { printedSheet } from '../src/app/work/sheet-for-reader.ts';
import { sheetOf } from '../src/app/work/sheet-of.ts';
import { runWith } from '../src/cli/inputs.ts';
import { paperText } from '../src/documents/paper-text.fixture.ts';
import { answerText } from '../src/documents/sheet/answer-text.ts';
import { answered } from '../src/job/answered.fixture.ts';
import { papersOf } from '../src/job/handout/papers-of.ts';
import type { Job } from '../src/job/job.ts';
import type { JobRun } from '../src/job/job-run.ts';
import { HOUSE } from '../src/text/reader.ts';

const gear = runWith({ shape: { kind: 'gear', module: 2, teeth: 16, bore: 10 } }, 'gear.job.json', (path) => path, {}, '2026-11-25');
const withJob = (more: Partial<Job>, said: readonly string[]): JobRun => ({ ...gear, job: { ...gear.job, ...more }, said: new Set(said) });

/** Terminal, papers and sheet of a run. */
const everything = (run: JobRun): string => {
  const answer = answered(run);
  const sheet = printedSheet({ ...sheetOf(answer, run), took: { core: 0, view: 0 } }, HOUSE);
  return [answerText(answer.facts), ...papersOf(answer.facts, run).map(([, paper]) => paperText(paper)), JSON.stringify(sheet)]
    .join('\n')
    .replace(/\s+/g, ' ');
};

const WARM = { cutting: 35, measuring: 20, swing: 1, scale: false } as const;

/** Each with a sentence that holds the cut against a wish, and the fields of that wish. */
const HELD: readonly (readonly [name: string, job: Partial<Job>, fields: readonly string[], sentence: RegExp])[] = [
  [
    'as it comes',
    {},
    ['tolerance', 'finish'],
    /±0\.\d+ mm expected \(k = 2, about 95 %\), ±0\.02 mm (required|assumed); .*Ra 1\.6 µm (required|assumed)/,
  ],
  [
    'with too few passes, and warm',
    { passes: 1, tolerance: 0.004, finish: 0.4, temperature: WARM },
    ['tolerance', 'finish'],
    /are expected; Ra 0\.4 µm (required|assumed) and ±0\.004 mm (required|assumed)\..*than at 20 °C; ±4\.0 µm (required|assumed)\. A part cut to the drawing/,
  ],
  ['with a finish out of reach', { finish: 0.02 }, ['finish'], /Ra 0\.02 µm (required|assumed); with/],
  ['with a tolerance out of reach', { tolerance: 0.0002 }, ['tolerance'], /±0\.0002 mm (required|assumed); with/],
];

describe.each(HELD)('a job %s', (_, job, fields, sentence) => {
  it('calls nothing required where nobody asked', () => {
    const said = everything(withJob(job, ['shape']));
    expect(said.match(/.{0,60}\brequired\b.{0,20}/g)).toBeNull();
    expect(said.match(sentence)?.slice(1)).toEqual(
      said
        .match(sentence)
        ?.slice(1)
        .map(() => 'assumed'),
    );
    expect(said).toMatch(sentence);
  });

  it('calls required what somebody asked for', () => {
    expect(
      everything(withJob(job, ['shape', ...fields]))
        .match(sentence)
        ?.slice(1),
    ).not.toContain('assumed');
  });
});

describe('the words of the page', () => {
  it('say "required" in one place, where it is chosen between that and "assumed"', () => {
    const lines = readdirSync('src/app/words').flatMap((file) => readFileSync(`src/app/words/${file}`, 'utf8').split('\n'));
    expect(lines.filter((line) => /say`[^`]*\brequired\b/.test(line)).map((line) => line.trim())).toEqual(['chosen: say`required`,']);
  });
});
