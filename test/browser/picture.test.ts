/** The picture: it is drawn, and follows wheel and buttons. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answered, exampleOf } from './hands.ts';
import { type Stand, stand } from './stand.ts';

describe('the picture', () => {
  let server: Stand;
  beforeAll(async () => {
    server = await stand();
  });
  afterAll(() => server.close());

  it('draws the contours, and follows the wheel and the buttons', async () => {
    const { page } = await server.open(`/job/${await exampleOf(server)}`);
    await answered(page);
    await page.waitForSelector('.beside canvas');
    await expect.poll(() => inked(page), { timeout: 5000 }).toBeGreaterThan(0.003);
    const bar = page.locator('.beside');
    const before = await bar.screenshot();
    await page.getByRole('button', { name: 'Closer' }).click();
    await expect.poll(async () => (await bar.screenshot()).equals(before)).toBe(false);
    await page.getByRole('button', { name: 'Show all' }).click();
    await expect.poll(async () => (await bar.screenshot()).equals(before)).toBe(true);
  });
});

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
