/**
 * Fuzzes for as long as one likes: `npm run fuzz -- --minutes 10`, with `--corpus DIR` on real drawings as well, and with
 * `--planned` puts faults into the programs of planned jobs instead, each held against the proof.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { drawingFaults, type Fault, fileFaults, programFaults } from '../test/fuzz/try.ts';
import { plannedJobs } from '../test/mutants/planned-jobs.ts';
import { tryFaults } from '../test/mutants/try-planned.ts';

const option = (name: string, otherwise: string): string => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? otherwise : (process.argv[at + 1] ?? otherwise);
};

const minutes = Number(option('minutes', '1'));
const corpusFolder = option('corpus', '');
const corpus =
  corpusFolder === ''
    ? []
    : (readdirSync(corpusFolder, { recursive: true, encoding: 'utf8' }) as string[])
        .filter((f) => /\.(dxf|svg)$/i.test(f))
        .map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(corpusFolder, name))) }));

const BATCH = 500;
const PLANNED_BATCH = 40;
const end = Date.now() + minutes * 60_000;
let seed = Number(option('seed', String(Date.now() % 1_000_000)));
let cases = 0;
const faults: Fault[] = [];
while (Date.now() < end && faults.length < 20) {
  if (process.argv.includes('--planned')) {
    const tried = plannedJobs().flatMap((job, n) => tryFaults(job, PLANNED_BATCH, seed * 100 + n));
    const wrong = tried.filter(({ result }) => result === 'missed' || result === 'blamed wrongly');
    faults.push(...wrong.map(({ result, what }) => ({ name: result, what })));
    cases += tried.length;
  } else {
    for (const some of [drawingFaults(BATCH, seed, corpus), programFaults(BATCH, seed), fileFaults(BATCH, seed)]) faults.push(...some);
    cases += 3 * BATCH;
  }
  process.stderr.write(`seed ${seed}: ${cases} cases, ${faults.length} faults\n`);
  seed += 1;
}
for (const fault of faults) process.stdout.write(`${fault.name}: ${fault.what}\n`);
process.stdout.write(`${cases} cases, ${faults.length} faults\n`);
process.exitCode = faults.length === 0 ? 0 : 1;
