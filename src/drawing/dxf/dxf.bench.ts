/** How fast DXF is read, beside dxf-parser on the same 20 MB of mixed entities. */
import DxfParser from 'dxf-parser';
import { asciiDxf, binaryDxf, dxfTags, entity, layer, lightPolyline, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { there } from '../../../test/there.ts';
import type { BenchRow } from '../../../tools/bench-row.ts';
import { readDxf } from './read-dxf.ts';

const MEGABYTES = 20;
const ROUNDS = 7;

export const rows = async (): Promise<BenchRow[]> => {
  const tags = mixedTags();
  const ascii = mixedAscii();
  const binary = binaryDxf(tags);
  // The other parser takes text; turning the bytes into text is left out of its time, which is kind to it.
  const text = new TextDecoder().decode(ascii);
  const times = { ascii: [] as number[], binary: [] as number[], peer: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    times.ascii.push(timed(() => readDxf(ascii).curves.length));
    times.binary.push(timed(() => readDxf(binary).curves.length));
    times.peer.push(timed(() => new DxfParser().parseSync(text)?.entities.length ?? 0));
  }
  // The first round is for the engine to warm up.
  const speed = (size: number, all: readonly number[]): number => size / 1e3 / median(all.slice(1));
  const peer = { name: 'dxf-parser 1.1.2', value: speed(ascii.length, times.peer) };
  return [
    {
      name: `read DXF, ASCII, ${(ascii.length / 1e6).toFixed(1)} MB of mixed entities`,
      ours: speed(ascii.length, times.ascii),
      unit: 'MB/s',
      peers: [{ ...peer, atLeast: 1.5 }],
      note: 'ours also expands blocks, checks every number and keeps layers, heights and damage apart',
    },
    {
      name: 'the same drawing as binary DXF, in MB of its ASCII file',
      ours: speed(ascii.length, times.binary),
      unit: 'MB/s',
      peers: [{ ...peer, atLeast: 3 }],
      note: 'the peer reads no binary DXF and is timed on the ASCII file',
    },
  ];
};

const timed = (work: () => number): number => {
  const start = performance.now();
  if (work() === 0) throw new Error('nothing was read');
  return performance.now() - start;
};

const median = (values: readonly number[]): number => there(values.toSorted((a, b) => a - b)[values.length >> 1]);

/** Lines, arcs, circles and bulged polylines in the shares a drawing of plates has, with handles and class marks as real files carry. */
export const mixedTags = (): readonly Tag[] => {
  const entities: (readonly Tag[])[] = [];
  let size = 0;
  for (let i = 0; size < MEGABYTES * 1e6; i++) {
    const [x, y] = [(i % 1000) * 1.234567 + 0.1 / (1 + (i % 7)), Math.floor(i / 1000) * 2.345678];
    const tags = withMarks(entityNumber(i, x, y), i);
    entities.push(tags);
    for (const [code, value] of tags) size += Math.max(3, String(code).length) + String(value).length + 2;
  }
  const layers = ['0', 'outline', 'holes'].map((name) => layer(name));
  return dxfTags({ version: 'AC1015', units: 4, layers, entities });
};

/** The same as a file, padded as real ones are. */
export const mixedAscii = (): Uint8Array => asciiDxf(mixedTags(), { padded: true });

const entityNumber = (i: number, x: number, y: number): readonly Tag[] => {
  const kind = i % 10;
  if (kind < 4) return lineTags(x, y, x + Math.sqrt(2), y + Math.sqrt(3), 'outline');
  if (kind < 6) return entity('ARC', { 8: 'outline', 10: x, 20: y, 30: 0, 40: 0.4, 50: 12.5, 51: 190.25 });
  if (kind < 7) return entity('CIRCLE', { 8: 'holes', 10: x, 20: y, 30: 0, 40: 0.35 });
  return lightPolyline([
    [x, y],
    [x + 1.1, y, 0.41421356237309503],
    [x + 1.3, y + 0.2],
    [x + 1.3, y + 1.05],
    [x, y + 1.05, -0.5],
  ]);
};

const withMarks = (tags: readonly Tag[], i: number): readonly Tag[] => [
  there(tags[0]),
  [5, (0x100 + i).toString(16).toUpperCase()],
  [330, '1F'],
  [100, 'AcDbEntity'],
  ...tags.slice(1, 2),
  [100, `AcDb${there(tags[0])[1]}`],
  ...tags.slice(2),
];
