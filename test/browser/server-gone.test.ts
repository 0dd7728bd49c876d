/** A server that is gone and comes back; two tabs on one job. Each test has a job and pages of its own, and finds the server running. */
import { readFileSync } from 'node:fs';
import type { Page, Request } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { answered, drop, edit, fileOf, keptInput, putInput, recordOf, saved, sheetOf, smallJob, typed, word } from './hands.ts';
import { type Stand, stand } from './stand.ts';

let server: Stand;
let id: string;
beforeAll(async () => {
  server = await stand();
});
beforeEach(async () => {
  await server.restart();
  id = await smallJob(server);
});
// Whatever a test left unsaved in a browser goes with it.
afterEach(() => server.forget());
afterAll(() => server.close());

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly version: string };

const notice = (page: Page, text: string) => page.locator('.notice', { hasText: text });
const gone = (page: Page) => notice(page, 'The server does not answer');

/** Whether the script of a page is there, with all that it asks for, in the words of the browser. */
const fetched = (script: string): string => `(() => {
  const there = performance.getEntriesByType('resource').map((r) => r.name);
  const asked = [...document.querySelectorAll('link[rel=modulepreload], link[rel=stylesheet]')].map((l) => l.href);
  return there.some((name) => /${script}.*js$/.test(name)) && asked.every((name) => there.includes(name));
})()`;

describe('a server that goes and comes back', () => {
  it('work goes on while it is gone, is told to be unsaved, and saved when it is back', async () => {
    const { page } = await sheetOf(server, id);
    await server.crash();
    expect(await edit(page, 'height', '30')).toContain('30 mm thick');
    await gone(page).waitFor();
    expect(await edit(page, 'quantity', '4')).toContain('for 4 pieces');
    await drop(page, [fileOf('sent.nc', 'G21 G90\nM02\n')]);
    const notKept = page.locator('.other-program [role="alert"]', { hasText: 'Not saved yet' });
    await notKept.waitFor();
    await server.restart();
    await saved(page);
    await gone(page).waitFor({ state: 'detached' });
    await notKept.waitFor({ state: 'detached' });
    expect((await recordOf(server, id)).programs?.map((p) => p.name)).toEqual(['sent.nc']);
    expect(await keptInput(server, id)).toMatchObject({ height: 30, quantity: 4 });
  });

  it('a saving that the server took, but could not answer any more, is no change by another tab', async () => {
    const { page } = await sheetOf(server, id);
    await saved(page);
    const lines = await lossyLine(page);
    await edit(page, 'height', '29');
    // The first saving is lost on its way back, the second is held on its way there: so long it is told that the server is gone.
    await lines.secondHeld;
    await gone(page).waitFor();
    expect(await keptInput(server, id)).toMatchObject({ height: 29 });
    await edit(page, 'height', '30');
    await gone(page).waitFor();
    lines.letGo();
    await saved(page);
    await page.locator('.notice').waitFor({ state: 'detached' });
    expect(await keptInput(server, id)).toMatchObject({ height: 30 });
  });

  it('work that was not saved outlives the tab', async () => {
    const { page } = await sheetOf(server, id);
    await saved(page);
    await server.crash();
    await edit(page, 'height', '28');
    await gone(page).waitFor();
    const context = page.context();
    await page.close();
    await server.restart();
    expect(await keptInput(server, id)).toMatchObject({ height: 32 });
    const again = await context.newPage();
    await again.goto(`${server.address}/job/${id}`);
    expect(await answered(again)).toContain('28 mm thick');
    await expect.poll(() => keptInput(server, id)).toMatchObject({ height: 28 });
  });

  it.each([
    ['another address', (page: Page) => page.goto('about:blank')],
    ['the list', (page: Page) => page.locator('a[href="/jobs"]').first().click()],
    ['nothing: the tab is closed', (page: Page) => page.close({ runBeforeUnload: true })],
  ])('what was typed a moment before the sheet is left for %s is saved', async (_, leave) => {
    const { page } = await sheetOf(server, id);
    await saved(page);
    await typed(page, 'height', '27');
    await leave(page);
    await expect.poll(() => keptInput(server, id)).toMatchObject({ height: 27 });
  });

  it('an answer is kept with the version of the page, whatever a server says of itself', async () => {
    const { page } = await sheetOf(server, id);
    await page.route('**/api/health', (route) => route.abort());
    await page.reload();
    await edit(page, 'height', '26');
    await saved(page);
    expect((await recordOf(server, id)).answeredFrom).toMatchObject({ version });
  });

  it('work that was not saved does not overwrite what somebody else saved since', async () => {
    const { page } = await sheetOf(server, id);
    await saved(page);
    await page.route('**/api/jobs/*', (route) => (route.request().method() === 'PUT' ? route.abort() : route.continue()));
    await edit(page, 'height', '21');
    await gone(page).waitFor();
    const context = page.context();
    await page.close();
    await putInput(server, id, { height: 33 });
    const again = await context.newPage();
    await again.goto(`${server.address}/job/${id}`);
    expect(await answered(again)).toContain('21 mm thick');
    await notice(again, 'This job was changed in another tab').waitFor();
    expect(await keptInput(server, id)).toMatchObject({ height: 33 });
    await again.getByRole('button', { name: 'Use the other version' }).click();
    expect(await answered(again)).toContain('33 mm thick');
  });

  it('a page that is opened meanwhile says so and opens by itself', async () => {
    const { page } = await server.open('/jobs');
    await page.waitForSelector('.job-list');
    await expect.poll(() => page.evaluate(fetched('sheet-page'))).toBe(true);
    await server.crash();
    await page.click('.job-list a');
    await page.locator('h1', { hasText: 'The server does not answer' }).waitFor();
    await server.restart();
    expect(await answered(page)).toMatch(/^Yes\./);
  });

  it('a tick at the machine is kept until the server is back', async () => {
    const { page } = await server.open(`/run/${id}`);
    await page.locator('.stops input').first().waitFor();
    await server.crash();
    await page.locator('.stops input').first().check();
    await page.locator('[role="status"]', { hasText: '1 not sent yet' }).waitFor();
    await server.restart();
    await expect.poll(async () => (await recordOf(server, id)).log.map((e) => e.kind)).toEqual(['tick']);
  });
});

/** From now on the first saving of a page reaches the server and is lost on its way back; the next is held until it is let go. */
const lossyLine = async (page: Page): Promise<{ readonly secondHeld: Promise<Request>; readonly letGo: () => void }> => {
  let letGo = (): void => undefined;
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  let savings = 0;
  let comes = (_: Request): void => undefined;
  const secondHeld = new Promise<Request>((resolve) => {
    comes = resolve;
  });
  await page.route('**/api/jobs/*', async (route) => {
    if (route.request().method() !== 'PUT') return route.continue();
    savings += 1;
    if (savings === 1) {
      await route.fetch();
      return route.abort();
    }
    comes(route.request());
    await held;
    return route.continue();
  });
  return { secondHeld, letGo };
};

describe('two tabs on one job', () => {
  let [one, other] = [] as unknown as [Page, Page];
  beforeEach(async () => {
    ({ page: one } = await sheetOf(server, id));
    await saved(one);
    other = await one.context().newPage();
    await other.goto(`${server.address}/job/${id}`);
    await answered(other);
  });

  /** Both change the height: the first is kept, the second is told. */
  const contest = async (first: string, second: string): Promise<void> => {
    await edit(one, 'height', first);
    await saved(one);
    await edit(other, 'height', second);
    await notice(other, 'This job was changed in another tab').waitFor();
    expect(await keptInput(server, id)).toMatchObject({ height: Number(first) });
  };

  it('the later one is told, and may take what the other saved', async () => {
    await contest('30', '20');
    await other.getByRole('button', { name: 'Use the other version' }).click();
    expect(await answered(other)).toContain('30 mm thick');
    expect(await notice(other, 'another tab').count()).toBe(0);
    expect(await edit(other, 'quantity', '3')).toContain('for 3 pieces');
    await expect.poll(() => keptInput(server, id)).toMatchObject({ height: 30, quantity: 3 });
  });

  it('or keeps its own, which is then in force for both', async () => {
    await contest('26', '22');
    await other.getByRole('button', { name: 'Keep my version' }).click();
    await expect.poll(() => keptInput(server, id)).toMatchObject({ height: 22 });
    await one.reload();
    await answered(one);
    expect(await word(one, 'height').textContent()).toBe('22 mm');
  });
});
