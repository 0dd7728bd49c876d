/** How long a whole answer takes, what the proof's share is, and how both grow with the number of openings. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { BenchRow } from '../../tools/bench-row.ts';
import { jobRun } from '../cli/inputs.ts';
import type { JobRun } from './job-run.ts';
import { runUpTo } from './pipeline/pipeline.ts';
import { onLargeTable, plateOf } from './plate.fixture.ts';
import { compareJob } from './what-if/compare.ts';

const JOB = 'examples/die-plate/die-plate.job.json';
/** Ten times the openings may cost this many times as much: a little for sorting and for memory farther away. */
const GROWTH = 13;

const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] as number;

const timed = (run: () => void, times: number): number => {
  const all: number[] = [];
  for (let i = 0; i < times; i++) {
    const start = performance.now();
    run();
    all.push(performance.now() - start);
  }
  return median(all);
};

/** The budgets of the issue stand as peers: a budget is kept when ours is at most it. */
export const rows = async (): Promise<readonly BenchRow[]> => {
  const die = jobRun(JOB, {}, '2026-11-25');
  timed(() => void runUpTo({ ...die }, 'answer'), 5);
  const answer = timed(() => void runUpTo(die, 'hours'), 9);
  const proven = timed(() => void runUpTo(die, 'answer'), 9);
  const reading = timed(() => void readFileSync('examples/die-plate/die-plate.dxf'), 3);
  return [
    {
      name: 'answer to the die plate without its proof',
      ours: answer,
      unit: 'ms',
      peers: [{ name: 'the budget', value: 150, atLeast: 1 }],
      note: `reading the file from disk takes ${reading.toFixed(2)} ms of it`,
    },
    { name: 'answer to the die plate with its proof', ours: proven, unit: 'ms', peers: [{ name: 'the budget', value: 1000, atLeast: 1 }] },
    whatIfsRow(die, proven),
    ...growth(die, [100, 1000, 10_000], 'openings'),
    ...growth(die, [100, 1000], 'openings, no two alike,'),
    memoryRow(),
  ];
};

/** At least ten what-ifs, figured for ten, against three times one answer with its proof. */
const whatIfsRow = (die: JobRun, answer: number): BenchRow => {
  let count = 0;
  const ms = timed(() => {
    const comparison = compareJob(die);
    count = comparison.kind === 'compared' ? comparison.rows.length : 0;
  }, 5);
  return {
    name: `comparison of the die plate: ${count} what-ifs, figured for ten`,
    ours: (ms * 10) / count,
    unit: 'ms',
    peers: [{ name: 'three times one answer', value: 3 * answer, atLeast: 1 }],
    note: `${ms.toFixed(0)} ms in all`,
  };
};

const growth = (die: JobRun, counts: readonly number[], what: 'openings' | 'openings, no two alike,'): readonly BenchRow[] => {
  const measured = counts.map((openings) => {
    const drawing = what === 'openings' ? plateOf(openings) : plateOf(openings, openings);
    const run = { ...die, drawing, shop: onLargeTable(die.shop), job: { ...die.job, quantityBreaks: [] } };
    return { openings, ms: timed(() => void runUpTo(run, 'answer'), openings > 1000 ? 1 : 3) };
  });
  return measured.slice(1).map(({ openings, ms }, i) => {
    const smaller = measured[i] as (typeof measured)[number];
    return {
      name: `${openings} ${what} with proof`,
      ours: ms,
      unit: 'ms',
      peers: [{ name: `${GROWTH} times what ${smaller.openings} took`, value: GROWTH * smaller.ms, atLeast: 1 }],
      note: `${(ms / smaller.ms).toFixed(1)} times the time of a tenth as many`,
    };
  });
};

/** In a process of its own, so that nothing else that was measured before counts. */
const memoryRow = (): BenchRow => {
  const tool = join(dirname(process.argv[1] as string), 'plate-memory.js');
  const megabytes = Number(execFileSync(process.execPath, [tool], { encoding: 'utf8' }));
  return {
    name: '10000 openings with proof, most memory held',
    ours: megabytes,
    unit: 'MB',
    peers: [{ name: 'the budget', value: 1000, atLeast: 1 }],
  };
};
