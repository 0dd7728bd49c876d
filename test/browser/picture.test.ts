/** The picture: it is drawn, follows wheel and buttons, and stays fluid when it is large; how fluid is held by the bench. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Desk, desk } from './desk.ts';
import { answered, brought, copyOfExample, putInput } from './hands.ts';
import { largeDrawing } from './large-drawing.ts';
import { strokesPerFrame } from './picture-frames.ts';
import { atRest, type Stand, stand } from './stand.ts';

const SEGMENTS = 100_000;

describe('the picture', () => {
  let server: Stand;
  let sheet: Desk;
  let page: Page;
  beforeAll(async () => {
    server = await stand();
    sheet = await desk(server);
    page = sheet.page;
  });
  afterAll(() => server.close());

  it('stays fluid with 100,000 segments: no frame draws more than its share of them', async () => {
    const [id = ''] = await brought(server, [largeDrawing(SEGMENTS)]);
    // Of no layer anything is cut, so that the answer is there soon; the drawing is shown all the same. The bench has the whole job.
    await putInput(server, id, { layers: [] });
    const { page } = await server.open(`/job/${id}`);
    expect(await answered(page)).not.toMatch(/^Yes/);
    await expect.poll(() => inked(page)).toBeGreaterThan(0.02);
    const strokes = await strokesPerFrame(page, '.beside canvas', 120);
    // A bundle has up to 300 segments; of those the pointer, the scale bar and the labels need some strokes of their own.
    expect(strokes.reduce((sum, n) => sum + n, 0)).toBeGreaterThan(SEGMENTS / 300);
    expect(Math.max(...strokes)).toBeLessThan(SEGMENTS / 300 / 5);
    await page.context().close();
  });

  it('keeps settings by hand in view under a no and after a reload, and hands each back', async () => {
    const id = await copyOfExample(server);
    // A clamp over the whole block: nothing can be cut.
    await putInput(server, id, {
      clamps: [{ low: { x: -50, y: -50 }, high: { x: 500, y: 500 } }],
      overrides: { L3: { tab: 2.5 } },
      kept: { L4: 'leave' },
    });
    expect(await sheet.sheetOf(id)).toMatch(/^No\./);
    const list = page.getByRole('region', { name: 'Set by hand', exact: true });
    await expect.poll(() => list.locator('li').count()).toBe(2);
    await page.reload();
    await list.getByRole('button', { name: 'Reset to automatic: L3, tab' }).click();
    await expect.poll(() => list.locator('li').allTextContents()).toEqual([expect.stringContaining('L4, kept side')]);
    await list.getByRole('button', { name: 'Reset to automatic: L4, kept side' }).click();
    await expect.poll(() => list.count()).toBe(0);
  });

  it('draws the contours, and follows the wheel and the buttons', async () => {
    await sheet.sheetOf(await copyOfExample(server));
    await page.waitForSelector('.beside canvas');
    await expect.poll(() => inked(page)).toBeGreaterThan(0.003);
    const canvas = page.locator('.beside canvas');
    const wheel = async (by: number): Promise<void> => {
      await canvas.hover();
      await page.mouse.wheel(0, by);
    };
    for (const closer of [() => page.getByRole('button', { name: 'Zoom in' }).click(), () => wheel(-300)])
      await expect.poll(() => closerAndBack(page, closer)).toEqual({ closer: 'another picture', back: 'the same picture' });
  });
});

/** What the canvas shows after coming closer and after showing all again, beside what it showed before. */
const closerAndBack = async (page: Page, closer: () => Promise<void>): Promise<{ readonly closer: string; readonly back: string }> => {
  const all = () => page.getByRole('button', { name: 'Fit', exact: true }).click();
  const shown = async (): Promise<Buffer> => {
    await page.mouse.move(0, 0);
    await atRest(page);
    return page.locator('.beside').screenshot();
  };
  await all();
  const before = await shown();
  await closer();
  const near = await shown();
  await all();
  const back = await shown();
  const beside = (picture: Buffer): string => (picture.equals(before) ? 'the same picture' : 'another picture');
  return { closer: beside(near), back: beside(back) };
};

/** Share of the canvas that is not its ground. */
const inked = async (page: Page): Promise<number> =>
  Number(
    await page.evaluate(`(() => {
      const canvas = document.querySelector('.beside canvas');
      const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
      let inked = 0;
      for (let i = 0; i < data.length; i += 4) if (data[i + 3] > 0 && (data[i] !== data[0] || data[i + 1] !== data[1])) inked += 1;
      return inked / (data.length / 4);
    })()`),
  );
