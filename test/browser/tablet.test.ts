/** A tablet at the machine. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type Desk, desk } from './desk.ts';
import { answered, copyOfExample, recordOf, word } from './hands.ts';
import { type Stand, stand } from './stand.ts';

/** Decimals with a comma, as on many tablets. */
const TABLET = { locale: 'de-DE', viewport: { width: 1180, height: 820 }, hasTouch: true } as const;

describe('on a tablet, by touch', () => {
  let server: Stand;
  let tablet: Desk;
  let page: Page;
  let id: string;
  beforeAll(async () => {
    server = await stand();
    tablet = await desk(server, TABLET);
    page = tablet.page;
  });
  beforeEach(async () => {
    id = await copyOfExample(server);
    await tablet.turnTo(`/run/${id}`);
    await page.locator('.stops input').first().waitFor();
  });
  afterAll(() => server.close());

  const ticked = () => page.locator('.stops li[data-ticked="true"]');
  const log = async () => (await recordOf(server, id)).log;

  it('a stop is ticked off, and the next one stands on top with its hour', async () => {
    const next = page.locator('.next');
    const first = await next.locator('.what').textContent();
    expect(await next.locator('.oclock').textContent()).toMatch(/[A-Z][a-z]+ \d\d:\d\d/);
    await next.locator('button').tap();
    await expect.poll(() => ticked().count()).toBe(1);
    await expect.poll(() => next.locator('.what').textContent()).not.toBe(first);
    await page.locator('.stops li[data-ticked="false"] label').first().tap();
    await expect.poll(() => ticked().count()).toBe(2);
    await expect.poll(async () => (await log()).map((e) => e.kind)).toEqual(['tick', 'tick']);
    await page.reload();
    await expect.poll(() => ticked().count()).toBe(2);
  });

  it('a size that was measured gives new registers that may be set', async () => {
    await measured(page, '27,994', '28');
    const registers = page.locator('.run table', { hasText: 'New offset registers' });
    await registers.waitFor();
    await page.locator('.run .safe', { hasText: 'Safe to set' }).waitFor();
    const [before = 0, after = 0] = (await registers.locator('tbody tr').first().locator('td').allTextContents()).map((t) =>
      parseFloat(t.replace(',', '.')),
    );
    // An opening that came out 0.006 mm too narrow wants every register smaller by half of it.
    expect(after - before).toBeCloseTo(-0.003, 4);
    await expect.poll(log).toMatchObject([{ kind: 'measured', text: expect.stringContaining('27.994 of 28') }]);
  });

  it('a 25 typed for 22 is asked about, and worked out where it is meant so, without a table that must not be set', async () => {
    await page.locator('select[name="contour"]').selectOption('L3');
    await measured(page, '25,004', '25');
    await page.locator('.run .warning', { hasText: 'L3 has no size of 25 mm; the nearest: 22 mm' }).waitFor();
    const registers = page.locator('.run table', { hasText: 'New offset registers' });
    expect(await registers.count()).toBe(0);
    await page.getByRole('button', { name: 'It is meant so: work it out' }).tap();
    await page.locator('.run .told').waitFor();
    const [forbidden, tables] = [await page.locator('.run', { hasText: 'Do not set these registers' }).count(), await registers.count()];
    expect(forbidden + tables).toBe(1);
  });

  it('a size that is no size is asked again instead of being corrected', async () => {
    await measured(page, 'wide', '24');
    await page.locator('.run .warning').first().waitFor();
    expect(await page.locator('.run table', { hasText: 'New offset registers' }).count()).toBe(0);
  });

  it('a change that would cut too deep is not let through without a warning', async () => {
    await measured(page, '28,05', '28');
    await page.locator('.run .warning', { hasText: 'Do not set these' }).waitFor();
  });

  it('notes, times and a broken wire stay with the job', async () => {
    await page.getByLabel('Note', { exact: true }).fill('flushing weak on L4');
    await page.getByRole('button', { name: 'Add note', exact: true }).tap();
    await page.getByLabel('Actual time, min').fill('312');
    await page.getByRole('button', { name: 'Log time' }).tap();
    await page.getByRole('button', { name: 'Wire broke' }).tap();
    await expect
      .poll(async () => (await log()).map((e) => [e.kind, e.text]))
      .toEqual([
        ['note', 'flushing weak on L4'],
        ['time', '312'],
        ['break', 'wire broke'],
      ]);
    await page.reload();
    await page.locator('.entries', { hasText: 'flushing weak on L4' }).waitFor();
  });

  it('whatever is touched at the machine is as wide as a gloved finger', async () => {
    const small =
      (await page.evaluate(`[...document.querySelectorAll('.run :is(button, select, input:not([type=checkbox]), label:has(input[type=checkbox]))')]
      .map((e) => [e.textContent || e.name, e.getBoundingClientRect()]).filter(([, r]) => r.width < 44 || r.height < 44).map(([t, r]) => t + ' ' + r.width + ' x ' + r.height)`)) as readonly string[];
    expect(small).toEqual([]);
  });

  it('the sheet is worked by touch too, and nothing of it hangs over the edge', async () => {
    await tablet.sheetOf(id);
    await word(page, 'height').tap();
    await page.locator('.in-sentence input').fill('30');
    await page.locator('.in-sentence input').press('Enter');
    expect(await answered(page)).toContain('30 mm thick');
    await page.locator('.answer .result-word').first().tap();
    await page.waitForSelector('.answer .why-tree');
    for (const width of [1180, 820]) {
      await page.setViewportSize({ width, height: width === 820 ? 1180 : 820 });
      await expect.poll(() => page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
    }
  });
});

const measured = async (page: Page, size: string, wanted: string): Promise<void> => {
  await page.locator('input[name="size"]').fill(size);
  await page.locator('input[name="wanted"]').fill(wanted);
  await page.getByRole('button', { name: 'Work out correction' }).tap();
};
