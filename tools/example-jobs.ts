/** The example jobs, run as a user would run them, and all that comes out as text to hold against what was accepted. */

import { readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { readBytes, readText } from '../src/cli/files.ts';
import { jobRun, shopAt } from '../src/cli/inputs.ts';
import { paperFonts } from '../src/font-files/font-files.ts';
import { nestSchema } from '../src/job/files/nest-file.ts';
import { parseFile } from '../src/job/files/parse.ts';
import { goldenFiles } from '../src/job/handout/papers.ts';
import { nestFiles, nestText, runNest } from '../src/job/nest/nest-answer.ts';
import { runJob } from '../src/job/pipeline/pipeline.ts';
import { printPlain } from '../src/text/print/print.ts';

/** Paths of all job files under examples/. */
export const exampleJobs = (): readonly string[] =>
  (readdirSync('examples', { recursive: true, encoding: 'utf8' }) as string[])
    // A nest leaves a job among what is expected of it.
    .filter((f) => f.endsWith('.job.json') && !f.includes('expected'))
    .map((f) => join('examples', f))
    .sort();

/** Paths of all nest files under examples/. */
export const exampleNests = (): readonly string[] =>
  (readdirSync('examples', { recursive: true, encoding: 'utf8' }) as string[])
    .filter((f) => f.endsWith('.nest.json'))
    .map((f) => join('examples', f))
    .sort();

export const stemOf = (job: string): string => basename(job).replace(/\.(job|nest)\.json$/, '');

/** The accepted files of a job by name: answer, program, set-up, pictures, and the papers as text. */
export const runExample = (job: string): Promise<Readonly<Record<string, string>>> => {
  const run = jobRun(job, {}, '2026-11-25');
  return goldenFiles(runJob(run), { ...run, stem: stemOf(job), fonts: paperFonts() });
};

/** The accepted files of a nest by name: what is printed, plate as picture and drawing, and the job that cuts it. */
export const runNestExample = (path: string): Readonly<Record<string, string>> => {
  const parsed = parseFile(nestSchema, readText(path), basename(path));
  if (parsed.kind === 'bad') throw new Error(`${path} is no nest: ${parsed.findings.map((f) => printPlain(f.text)).join(' ')}`);
  const file = parsed.value;
  const beside = (name: string): string => join(dirname(path), name);
  const answer = runNest({
    file,
    name: stemOf(path),
    drawingOf: (name) => readBytes(beside(name)),
    shop: shopAt(file.shop === undefined ? undefined : beside(file.shop)),
    day: file.date ?? '2026-11-25',
  });
  if (answer.kind === 'bad input') throw new Error(answer.findings.map((f) => printPlain(f.text)).join(' '));
  const printed = { [`${stemOf(path)}.nest.txt`]: `${nestText(answer)}\n` };
  if (answer.kind === 'refused') return printed;
  // The job lies one folder deeper than the nest.
  return { ...printed, ...nestFiles(answer.facts, file, stemOf(path), file.shop === undefined ? {} : { shop: `../${file.shop}` }) };
};
