/** Runs every bench and prints our figure beside its peers', as ratios; `--json` for the rows, `--only WORD` for some of them, `--against FOLDER` for another build. */

import * as dxf from '../src/drawing/dxf/dxf.bench.ts';
import * as offset from '../src/geometry/offset/offset.bench.ts';
import * as answers from '../src/job/answer.bench.ts';
import * as schedule from '../src/job/pipeline/schedule.bench.ts';
import * as nests from '../src/nest/lay/nest.bench.ts';
import * as tour from '../src/plan/order/tour.bench.ts';
import * as shapes from '../src/shapes/gear/gear.bench.ts';
import * as page from '../test/browser/page.bench.ts';
import { rowsAgainst } from './against.ts';
import type { BenchRow } from './bench-row.ts';

const BENCHES: readonly (readonly [name: string, rows: () => Promise<readonly BenchRow[]>])[] = [
  ['offset', offset.rows],
  ['dxf', dxf.rows],
  ['nest', nests.rows],
  ['tour', tour.rows],
  ['schedule', schedule.rows],
  ['shapes', shapes.rows],
  ['answer', answers.rows],
  ['page', page.rows],
];

const option = (name: string): string | undefined =>
  process.argv.includes(name) ? process.argv[process.argv.indexOf(name) + 1] : undefined;
const only = option('--only');
const against = option('--against');
const asJson = process.argv.includes('--json');

/** How many times as good as the peer: less time or memory, or more of a rate. */
const ratio = (row: BenchRow, peer: number): number => (row.unit === 'MB/s' ? row.ours / peer : peer / row.ours);

const kept = (row: BenchRow): boolean => row.peers.every((p) => p.atLeast === undefined || ratio(row, p.value) >= p.atLeast);

const print = (row: BenchRow): string => {
  const peers = row.peers.map((p) => {
    const times = ratio(row, p.value);
    const promise = p.atLeast === undefined ? '' : `, promised ${Number(p.atLeast.toFixed(2))} ×${times >= p.atLeast ? '' : ': NOT KEPT'}`;
    return `    ${times.toFixed(2)} × ${p.name} (${p.value.toPrecision(4)} ${row.unit}${promise})`;
  });
  return [`${row.name}: ${row.ours.toPrecision(4)} ${row.unit}${row.note === undefined ? '' : `   ${row.note}`}`, ...peers].join('\n');
};

const all: BenchRow[] = [];
const tell = (row: BenchRow): void => {
  all.push(row);
  if (!asJson) process.stdout.write(`${print(row)}\n`);
};
if (against !== undefined) for (const row of rowsAgainst(against)) tell(row);
for (const [name, rows] of against === undefined ? BENCHES : []) {
  if (only !== undefined && only !== name) continue;
  for (const row of await rows()) tell(row);
}
const broken = all.filter((row) => !kept(row));
if (asJson) process.stdout.write(`${JSON.stringify(all, null, 2)}\n`);
else process.stdout.write(`\n${all.length} rows, ${broken.length} promises not kept\n`);
process.exitCode = broken.length === 0 ? 0 : 1;
