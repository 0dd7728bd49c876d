/** The example jobs, run as a user would run them, and all that comes out as text to hold against what was accepted. */
import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { readFonts } from '../src/cli/files.ts';
import { jobRun } from '../src/cli/inputs.ts';
import { goldenFiles } from '../src/job/papers.ts';
import { runJob } from '../src/job/run.ts';

/** Paths of all job files under examples/. */
export const exampleJobs = (): readonly string[] =>
  (readdirSync('examples', { recursive: true, encoding: 'utf8' }) as string[])
    .filter((f) => f.endsWith('.job.json'))
    .map((f) => join('examples', f))
    .sort();

export const stemOf = (job: string): string => basename(job).replace('.job.json', '');

/** The accepted files of a job by name: answer, program, set-up, pictures, and the papers as text. */
export const runExample = (job: string): Promise<Readonly<Record<string, string>>> => {
  const run = jobRun(job, {}, '2026-11-25');
  return goldenFiles(runJob(run), { ...run, stem: stemOf(job), fonts: readFonts() });
};
