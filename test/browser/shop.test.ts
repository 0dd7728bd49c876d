/** The shop, pasted into and saved. Each test begins with the shop as it was at first. */
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { ShopRecord } from '../../src/server/message/answers.ts';
import { type Desk, desk } from './desk.ts';
import { smallJob } from './hands.ts';
import { ask, type Stand, stand } from './stand.ts';

describe('the pages of the shop', () => {
  let server: Stand;
  let table: Desk;
  let page: Page;
  let first: ShopRecord;
  beforeAll(async () => {
    server = await stand();
    table = await desk(server);
    page = table.page;
    first = await kept();
  });
  beforeEach(async () => {
    await keep({ ...first, revision: (await kept()).revision });
    await opened();
  });
  afterAll(() => server.close());

  const opened = async (): Promise<void> => {
    await table.turnTo('/shop');
    await page.locator('.shop table').first().waitFor();
  };
  const keep = async (shop: ShopRecord): Promise<void> => {
    const response = await ask(server, '/api/shop', {
      method: 'PUT',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(shop),
    });
    if (!response.ok) throw new Error(`not kept: ${await response.text()}`);
  };

  const kept = async (): Promise<ShopRecord> => (await (await ask(server, '/api/shop')).json()) as ShopRecord;
  const wires = async () => (await kept()).shop['wires'] as readonly Readonly<Record<string, unknown>>[];
  const cell = (table: string, row: number, column: string): Locator => page.getByLabel(`${table}, Row ${row}, ${column}`, { exact: true });
  const save = () => page.getByRole('button', { name: 'Save the shop' }).click();
  const told = (text: string) => page.locator('.saving [role="status"]', { hasText: text }).waitFor();

  it('cells that a spreadsheet copied are pasted, each with its day and where it comes from', async () => {
    const before = await wires();
    await paste(page, cell('Wires', 1, 'Price, EUR/kg'), '11.25\n10,955');
    await page.getByText('2 cells pasted.').waitFor();
    await save();
    await told('Saved.');
    const after = await wires();
    expect(after.map((w) => w['price'])).toEqual([1125, 1095.5, ...before.slice(2).map((w) => w['price'])]);
    expect(after.map(({ price: _, ...rest }) => rest)).toEqual(before.map(({ price: _, ...rest }) => rest));
    const { sources = {} } = await kept();
    expect(sources[`wires/${String(after[0]?.['id'])}/price`]).toMatchObject({
      basis: 'pasted',
      on: expect.stringMatching(/^\d{4}-\d\d-\d\d$/),
    });
  });

  it('a value that cannot be used is not saved, and told at its cell', async () => {
    const before = await kept();
    await cell('Wires', 2, 'Diameter, mm').fill('thick');
    await cell('Wires', 2, 'Diameter, mm').press('Enter');
    await told('Not saved yet.');
    await save();
    await told('these values cannot be used');
    const wrong = cell('Wires', 2, 'Diameter, mm');
    await expect.poll(() => wrong.getAttribute('aria-invalid')).toBe('true');
    expect(await wrong.getAttribute('title')).toMatch(/number|thick/);
    expect(await page.locator('[aria-invalid="true"]').count()).toBe(1);
    expect(await kept()).toEqual(before);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await save();
    await told('Saved.');
  });

  it('the next job is worked out with what was saved', async () => {
    const id = await smallJob(server, { quantity: 20 });
    const price = priceIn(await table.sheetOf(id));
    await opened();
    const rate = cell('Rates', 2, 'Machine, EUR/h');
    expect(await rate.inputValue()).toBe('44.00');
    await rate.fill('88');
    await rate.press('Enter');
    await save();
    await told('Saved.');
    expect(priceIn(await table.sheetOf(id))).toBeGreaterThan(price * 1.2);
  });

  it('two who edit the shop do not overwrite each other silently', async () => {
    const { page: other } = await server.open('/shop');
    await other.getByLabel('Shop name on papers').fill('The other shop');
    await other.getByRole('button', { name: 'Save the shop' }).click();
    await other.locator('.saving [role="status"]', { hasText: 'Saved.' }).waitFor();
    await page.getByLabel('Shop name on papers').fill('This shop');
    await save();
    await told('changed elsewhere');
    expect((await kept()).shop['name']).toBe('The other shop');
    await other.context().close();
    await page.getByRole('button', { name: 'Reload' }).click();
    await expect.poll(() => page.getByLabel('Shop name on papers').inputValue()).toBe('The other shop');
  });
});

const priceIn = (sentence: string): number => Number(/costs ([\d,.]+) EUR/.exec(sentence)?.[1]?.replaceAll(',', '') ?? 'no price');

const paste = async (page: Page, cell: Locator, text: string): Promise<void> => {
  await cell.focus();
  await page.evaluate(`(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', ${JSON.stringify(text)});
    document.activeElement.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  })()`);
};
