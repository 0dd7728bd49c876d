/** Writes what every example gives today into its expected/ folder; the diff is what a reviewer accepts or not. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { exampleJobs, exampleNests, runExample, runNestExample } from './example-jobs.ts';

const jobs = [...exampleJobs(), ...exampleNests()];
for (const folder of new Set(jobs.map((j) => join(dirname(j), 'expected')))) rmSync(folder, { recursive: true, force: true });
for (const job of jobs) {
  const folder = join(dirname(job), 'expected');
  mkdirSync(folder, { recursive: true });
  const files = job.endsWith('.nest.json') ? runNestExample(job) : await runExample(job);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  process.stdout.write(`${job}: ${Object.keys(files).length} files\n`);
}
