/** Another build of the product beside this one, in turns: each work runs in a process of its own, so that nothing of how either is made inside matters. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { mixedAscii, mixedTags } from '../src/drawing/dxf/dxf.bench.ts';
import { binaryDxf } from '../test/dxf-writer.ts';
import { there } from '../test/there.ts';
import type { BenchRow } from './bench-row.ts';

interface Work {
  readonly name: string;
  /** A program of the build, from its folder on, and what it is asked. */
  readonly command: readonly string[];
  readonly rounds: number;
}

const work = (drawings: string): readonly Work[] => {
  const die = ['examples/die-plate/die-plate.dxf', '--material', 'd2', '--height', '20', '--finish', '1.6', '--tolerance', '0.02'];
  const cli = 'dist/cli/main.js';
  const plate = 'dist/tools/plate-memory.js';
  return [
    { name: 'command line, list of materials', command: [cli, 'list', 'materials'], rounds: 9 },
    { name: 'command line, die plate answered', command: [cli, 'answer', ...die], rounds: 7 },
    { name: 'command line, die plate with its papers', command: [cli, 'answer', ...die, '--out', join(drawings, 'out')], rounds: 7 },
    { name: 'command line, 20 MB of ASCII DXF read', command: [cli, 'read', join(drawings, 'ascii.dxf')], rounds: 5 },
    { name: 'command line, the same as binary DXF', command: [cli, 'read', join(drawings, 'binary.dxf')], rounds: 5 },
    { name: '1,000 openings, no two alike, with proof', command: [plate, '1000', '1000'], rounds: 3 },
    { name: '10,000 openings of few kinds, with proof', command: [plate, '10000'], rounds: 3 },
  ];
};

interface Spent {
  /** Processor time of all threads, ms: other work on the machine disturbs it less than the clock on the wall. */
  readonly ms: number;
  readonly megabytes: number;
}

/**
 * Said by the process itself when it ends. The most memory is what Linux counts from the start of the program on: `maxRSS` never
 * falls below what the process that started it held.
 */
const TELLS = `data:text/javascript,${encodeURIComponent(`import { existsSync, readFileSync } from 'node:fs';
process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const status = existsSync('/proc/self/status') ? readFileSync('/proc/self/status', 'utf8') : '';
  const kilobytes = Number(/VmHWM:\\s*(\\d+)/.exec(status)?.[1] ?? maxRSS);
  process.stderr.write(['\\nspent', (userCPUTime + systemCPUTime) / 1000, kilobytes / 1024 + '\\n'].join(' '));
});`)}`;

const spent = (folder: string, { name, command }: Work): Spent => {
  const { stderr } = spawnSync(process.execPath, ['--import', TELLS, ...command], { cwd: folder, encoding: 'utf8', maxBuffer: 1e9 });
  const [, ms, megabytes] = /\nspent ([\d.]+) ([\d.]+)\n$/.exec(stderr) ?? [];
  if (ms === undefined || megabytes === undefined) throw new Error(`${name} did not end in ${folder}:\n${stderr.slice(-2000)}`);
  return { ms: Number(ms), megabytes: Number(megabytes) };
};

/** Two rows for each work: processor time and most memory, medians over rounds in which both builds take their turn, the first of each in every second one. */
export const rowsAgainst = function* (folder: string): Generator<BenchRow> {
  const drawings = mkdtempSync(join(tmpdir(), 'kerfwright-bench-'));
  try {
    writeFileSync(join(drawings, 'ascii.dxf'), mixedAscii());
    writeFileSync(join(drawings, 'binary.dxf'), binaryDxf(mixedTags()));
    for (const one of work(drawings)) yield* rowsOf(one, folder);
  } finally {
    rmSync(drawings, { recursive: true });
  }
};

const rowsOf = (one: Work, folder: string): readonly BenchRow[] => {
  const [ours, theirs]: [Spent[], Spent[]] = [[], []];
  for (let round = 0; round < one.rounds; round++) {
    const turns = [() => ours.push(spent('.', one)), () => theirs.push(spent(folder, one))];
    for (const turn of round % 2 === 0 ? turns : turns.reverse()) turn();
  }
  const row = (what: 'ms' | 'megabytes', unit: 'ms' | 'MB'): BenchRow => ({
    name: `${one.name}, ${unit === 'ms' ? 'processor time' : 'most memory'}`,
    ours: median(ours.map((s) => s[what])),
    unit,
    peers: [{ name: folder, value: median(theirs.map((s) => s[what])) }],
  });
  return [row('ms', 'ms'), row('megabytes', 'MB')];
};

const median = (values: readonly number[]): number => there(values.toSorted((a, b) => a - b)[values.length >> 1]);
