/** How fast offsets of arc-rich shapes are, beside three libraries on the same work in the same run. */
import { there } from '../../../test/there.ts';
import type { BenchRow } from '../../../tools/bench-row.ts';
import { areaOf, perimeterOf } from '../area.ts';
import type { Contour } from '../contour.ts';
import { gear, randomStar, scallops, wave } from './big-shapes.fixture.ts';
import { offsetContour } from './offset.ts';
import type { Peer } from './peers.bench.ts';
import { CHORD_ERROR, peersOf } from './peers.bench.ts';

interface Work {
  readonly name: string;
  readonly shape: Contour;
  /** mm; each round offsets by it inwards and outwards. */
  readonly distance: number;
  readonly rounds: number;
}

const WORK: readonly Work[] = [
  { name: 'gear of 40 teeth, 240 arcs, ±0.17 mm', shape: gear(), distance: 0.17, rounds: 25 },
  { name: '200 scallops, ±0.2 mm', shape: scallops(), distance: 0.2, rounds: 15 },
  { name: 'wave of 2,000 arcs, ±0.05 mm', shape: wave(), distance: 0.05, rounds: 5 },
  { name: 'random star of 10,000 corners, ±0.05 mm', shape: randomStar(), distance: 0.05, rounds: 3 },
];

/** One row for each shape: ms for one offset, the median over rounds in which all take their turn. */
export const rows = async (): Promise<BenchRow[]> => {
  const all: BenchRow[] = [];
  for (const work of WORK) all.push(await measure(work));
  return all;
};

const measure = async ({ name, shape, distance, rounds }: Work): Promise<BenchRow> => {
  const all = [ours(shape), ...(await peersOf(shape))];
  const off = all.slice(1).map((peer) => agreement(shape, distance, there(all[0]), peer));
  const times = all.map((): number[] => []);
  for (let round = 0; round < rounds; round++) {
    all.forEach((peer, i) => {
      const start = performance.now();
      peer.run(distance);
      peer.run(-distance);
      there(times[i]).push((performance.now() - start) / 2);
    });
  }
  const [own, ...others] = times.map(median);
  return {
    name,
    ours: there(own),
    unit: 'ms',
    peers: all.slice(1).map((peer, i) => ({ name: peer.name, value: there(others[i]), atLeast: peer.atLeast })),
    note: off.filter((s) => s !== '').join('; ') || 'all areas agree',
  };
};

const ours = (shape: Contour): Peer => ({
  name: 'ours',
  atLeast: 1,
  run: (distance) => {
    const result = offsetContour(shape, distance);
    if (result.kind !== 'offset') throw new Error(`the offset by ${distance} mm ended in '${result.kind}'`);
    return () => [...result.contours, ...result.enclosed].reduce((sum, c) => sum + areaOf(c), 0);
  },
});

/** Areas may differ by a chord's error all along the source and the result. Where a polygon library says otherwise nothing is measured. */
const agreement = (shape: Contour, distance: number, own: Peer, peer: Peer): string => {
  const tolerance = 4 * CHORD_ERROR * perimeterOf(shape);
  // Ours first warms up: the compiler has then seen the work a few times, as it has that of the others.
  for (let k = 0; k < 3; k++) own.run(distance);
  for (const d of [distance, -distance]) {
    const difference = Math.abs(own.run(d)() - peer.run(d)());
    if (difference <= tolerance) continue;
    if (peer.name.startsWith('clipper2')) throw new Error(`areas differ by ${difference} mm² from ${peer.name} at ${d} mm`);
    return `${peer.name} is off by ${difference.toPrecision(3)} mm² at ${d} mm`;
  }
  return '';
};

const median = (values: readonly number[]): number => there(values.toSorted((a, b) => a - b)[values.length >> 1]);
