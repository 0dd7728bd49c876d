/** How long a user waits for the page: for the first answer after opening it, and for the answer to an edit beside what the core took of it. */

import type { BenchRow } from '../../tools/bench-row.ts';
import { answered, brought, edit, exampleOf } from './hands.ts';
import { largeDrawing } from './large-drawing.ts';
import { type FrameRatio, frameRatio } from './picture-frames.ts';
import { type Stand, stand } from './stand.ts';

/** Heights to edit to, mm: each is a question that was not asked before. */
const HEIGHTS = ['30', '28', '26', '24', '22', '34', '36'] as const;
const SEGMENTS = 100_000;
/** The first edits find nothing warm yet. */
const COLD = 2;

interface Waited {
  readonly duration: number;
  readonly detail: { readonly core: number; readonly view: number };
}

export const rows = async (): Promise<readonly BenchRow[]> => {
  const server = await stand([]);
  try {
    const id = await exampleOf(server);
    const start = performance.now();
    const { page } = await server.open(`/job/${id}`);
    await answered(page);
    const first = performance.now() - start;
    for (const height of HEIGHTS) await edit(page, 'height', height);
    const entries = (await page.evaluate(
      `performance.getEntriesByName('answer shown').map((e) => ({ duration: e.duration, detail: e.detail }))`,
    )) as readonly Waited[];
    const warm = entries.slice(1 + COLD);
    const [shown, core] = [middle(warm.map((e) => e.duration)), middle(warm.map((e) => e.detail.core))];
    const frames = await framesOfLarge(server);
    return [
      {
        name: 'first answer of the example after opening the page',
        ours: first,
        unit: 'ms',
        peers: [{ name: 'the budget', value: 2000, atLeast: 1 }],
      },
      {
        name: 'answer to an edit of the die plate, from keeping it to its paint',
        ours: shown,
        unit: 'ms',
        peers: [
          { name: 'the budget', value: 300, atLeast: 1 },
          // The page may add half of that again.
          { name: 'what the core took of it', value: core, atLeast: 2 / 3 },
        ],
        note: `the page adds ${Math.round((shown / core - 1) * 100)} %`,
      },
      {
        name: `frame of a picture of ${SEGMENTS} segments while it is dragged and zoomed`,
        ours: frames.picture.middle,
        unit: 'ms',
        peers: [{ name: 'a frame of an empty canvas', value: frames.empty.middle, atLeast: 1 / 2 }],
        note: `nineteen of twenty within ${frames.picture.slow.toFixed(1)} ms, of the empty canvas within ${frames.empty.slow.toFixed(1)} ms`,
      },
    ];
  } finally {
    await server.close();
  }
};

/** The job itself takes far longer than its picture, which is there with the answer. */
const framesOfLarge = async (server: Stand): Promise<FrameRatio> => {
  const [id = ''] = await brought(server, [largeDrawing(SEGMENTS)]);
  const { page } = await server.open(`/job/${id}`);
  await page.waitForSelector('.answer[data-older="false"] .sentence', { timeout: 300_000 });
  await page.waitForSelector('.beside canvas');
  return frameRatio(page, '.beside canvas', 1.5);
};

const middle = (numbers: readonly number[]): number => numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? Number.NaN;
