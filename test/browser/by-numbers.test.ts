/** A part by numbers at the page: begun from the list, changed in its form, its sizes shown and asked why, undone, and saved as a drawing. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { readDrawing } from '../../src/drawing/read/read-drawing.ts';
import { type Desk, desk } from './desk.ts';
import { answered, keptInput, saved } from './hands.ts';
import { type Stand, stand } from './stand.ts';

const numberOf = (page: Page, key: string) => page.locator(`.shape [data-path="shape.${key}"] :is(input, select)`);
const sizeNamed = (page: Page, name: string | RegExp) => page.locator('.sizes tbody tr', { hasText: name }).locator('td').first();

describe('a part by numbers', () => {
  let server: Stand;
  let sheet: Desk;
  let page: Page;
  beforeAll(async () => {
    server = await stand();
    sheet = await desk(server);
    page = sheet.page;
  });
  beforeEach(() => sheet.turnTo('/jobs'));
  afterAll(() => server.close());

  it('is begun from the list, answers, and follows its numbers', async () => {
    await page.getByText('Standard shapes').click();
    await page.getByRole('button', { name: 'Spur gear', exact: true }).click();
    await page.waitForURL(/\/job\//);
    expect(await answered(page)).toMatch(/^Yes\./);
    await page.locator('.shape h3', { hasText: 'Spur gear, module 2 mm, 20 teeth' }).waitFor();
    expect(await sizeNamed(page, 'span over 3 teeth').textContent()).toContain('15.3209 mm');
    await numberOf(page, 'teeth').fill('24');
    await numberOf(page, 'teeth').press('Enter');
    await page.locator('.shape h3', { hasText: '24 teeth' }).waitFor();
    await saved(page);
    const id = page.url().split('/').at(-1) ?? '';
    expect(await keptInput(server, id)).toMatchObject({ shape: { kind: 'gear', teeth: 24, module: 2 } });
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'DXF', exact: true }).click()]);
    const drawing = readDrawing(readFileSync(await download.path()), 'gear.dxf', {});
    expect(drawing.loops.map((l) => l.depth)).toEqual([0, 1]);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await page.locator('.shape h3', { hasText: '20 teeth' }).waitFor();
    await sizeNamed(page, 'over two pins').getByRole('button').click();
    await page.locator('.shape .why-tree', { hasText: 'pressure angle at the centre of the pin' }).waitFor();
    expect(sheet.errors).toEqual([]);
  });

  it('that is a text gets its font when it is asked for, not before', async () => {
    const fetched: string[] = [];
    page.on('request', (r) => {
      if (r.url().endsWith('.ttf')) fetched.push(r.url());
    });
    const begin = async (title: string): Promise<string> => {
      await sheet.turnTo('/jobs');
      await page.getByText('Standard shapes').click();
      await page.getByRole('button', { name: title, exact: true }).click();
      await page.waitForURL(/\/job\//);
      return answered(page);
    };
    await begin('Slot or rectangle');
    expect(fetched).toEqual([]);
    expect(await begin('Lettering')).toMatch(/^Yes\./);
    expect(fetched).toHaveLength(1);
    await numberOf(page, 'text').fill('GO\\nON');
    await numberOf(page, 'text').press('Enter');
    await page.locator('.shape h3', { hasText: '‘GO / ON’ in DejaVu Sans Bold' }).waitFor();
    await numberOf(page, 'font').fill('my.ttf');
    await numberOf(page, 'font').press('Enter');
    await page.locator('.answer', { hasText: 'read on the command line only' }).waitFor();
    expect(sheet.errors).toEqual([]);
  });

  it('shows at its price curve that a finish is assumed until one is chosen there', async () => {
    await page.getByText('Standard shapes').click();
    await page.getByRole('button', { name: 'Slot or rectangle', exact: true }).click();
    await page.waitForURL(/\/job\//);
    await answered(page);
    const curve = page.locator('.price-curve');
    await curve.scrollIntoViewIfNeeded();
    await curve.locator('.chart-chosen-text', { hasText: /^assumed$/ }).waitFor();
    await curve.locator('summary').click();
    expect(await curve.locator('tr[data-marked="true"] td').last().textContent()).toBe('assumed');
    await curve.getByRole('button', { name: 'Require Ra 0.8 µm', exact: true }).click();
    await curve.locator('.chart-chosen-text', { hasText: /^required$/ }).waitFor();
    expect(await answered(page)).toContain('Ra 0.8 µm required');
    expect(await curve.locator('tr[data-marked="true"] td').last().textContent()).toBe('required');
    await saved(page);
  });

  it('that cannot be is refused at its number, and mended there', async () => {
    await page.getByText('Standard shapes').click();
    await page.getByRole('button', { name: 'Involute spline', exact: true }).click();
    await page.waitForURL(/\/job\//);
    await answered(page);
    await numberOf(page, 'rootRadius').fill('5');
    await numberOf(page, 'rootRadius').press('Enter');
    await page.locator('.answer', { hasText: 'A root radius of 5 mm has no room' }).waitFor();
    await numberOf(page, 'rootRadius').fill('0.3');
    await numberOf(page, 'rootRadius').press('Enter');
    await page.locator('.answer .sentence', { hasText: /^Yes\./ }).waitFor();
  });
});
