/** A server that is gone and comes back; two tabs on one job. */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { answered, drop, edit, exampleOf, fileOf, keptInput, PATIENCE, putInput, recordOf, saved, word } from './hands.ts';
import { type Stand, stand } from './stand.ts';

const notice = (page: Page, text: string) => page.locator('.notice', { hasText: text });

/** Whether the script of a page is there, in the words of the browser. */
const fetched = (script: string): string => `performance.getEntriesByType('resource').some((r) => /${script}.*js$/.test(r.name))`;

describe('a server that goes and comes back', () => {
  let server: Stand;
  let id: string;
  beforeAll(async () => {
    server = await stand();
    id = await exampleOf(server);
  });
  // A test that failed leaves no dead server to those after it.
  afterEach(() => server.restart());
  afterAll(() => server.close());

  it('work goes on while it is gone, is told to be unsaved, and saved when it is back', async () => {
    const { page } = await server.open(`/job/${id}`);
    await answered(page);
    await server.crash();
    expect(await edit(page, 'height', '30')).toContain('30 mm high');
    await notice(page, 'The server is gone').waitFor();
    expect(await edit(page, 'quantity', '4')).toContain('for 4 pieces');
    await drop(page, [fileOf('sent.nc', 'G21 G90\nM02\n')]);
    await page.locator('.other-program [role="alert"]', { hasText: 'Not kept yet' }).waitFor();
    await server.restart();
    await saved(page);
    await expect.poll(async () => (await recordOf(server, id)).programs?.map((p) => p.name), { timeout: PATIENCE }).toEqual(['sent.nc']);
    expect(await page.locator('.other-program [role="alert"]').count()).toBe(0);
    expect(await notice(page, 'The server is gone').count()).toBe(0);
    expect(await keptInput(server, id)).toMatchObject({ height: 30, quantity: 4 });
    await page.context().close();
  });

  it('a saving that the server took, but could not answer any more, is no change by another tab', async () => {
    const { page } = await server.open(`/job/${id}`);
    await answered(page);
    let lost = 0;
    await page.route('**/api/jobs/*', async (route) => {
      if (route.request().method() !== 'PUT' || lost > 0) return route.continue();
      lost += 1;
      await route.fetch();
      return route.abort();
    });
    // It is told for a moment only: the answer's own line is saved next.
    const told = notice(page, 'The server is gone').waitFor();
    await edit(page, 'height', '29');
    await told;
    expect(await keptInput(server, id)).toMatchObject({ height: 29 });
    await edit(page, 'height', '30');
    await saved(page);
    expect(lost).toBe(1);
    expect(await keptInput(server, id)).toMatchObject({ height: 30 });
    expect(await page.locator('.notice').count()).toBe(0);
    await page.context().close();
  });

  it('work that was not saved outlives the tab', async () => {
    const { page } = await server.open(`/job/${id}`);
    await answered(page);
    await saved(page);
    await server.crash();
    await edit(page, 'height', '28');
    await notice(page, 'The server is gone').waitFor();
    const context = page.context();
    await page.close();
    await server.restart();
    expect(await keptInput(server, id)).toMatchObject({ height: 30 });
    const again = await context.newPage();
    await again.goto(`${server.address}/job/${id}`);
    expect(await answered(again)).toContain('28 mm high');
    await expect.poll(() => keptInput(server, id), { timeout: PATIENCE }).toMatchObject({ height: 28 });
    await context.close();
  });

  it('work that was not saved does not overwrite what somebody else saved since', async () => {
    const { page } = await server.open(`/job/${id}`);
    await answered(page);
    await page.route('**/api/jobs/*', (route) => (route.request().method() === 'PUT' ? route.abort() : route.continue()));
    await edit(page, 'height', '21');
    await notice(page, 'The server is gone').waitFor();
    const context = page.context();
    await page.close();
    await putInput(server, id, { height: 33 });
    const again = await context.newPage();
    await again.goto(`${server.address}/job/${id}`);
    expect(await answered(again)).toContain('21 mm high');
    await notice(again, 'Another tab has changed this job').waitFor();
    expect(await keptInput(server, id)).toMatchObject({ height: 33 });
    await again.getByRole('button', { name: 'Take the other one' }).click();
    expect(await answered(again)).toContain('33 mm high');
    await context.close();
  });

  it('a page that is opened meanwhile says so and opens by itself', async () => {
    const { page } = await server.open('/jobs');
    await page.waitForSelector('.job-list');
    await expect.poll(() => page.evaluate(fetched('sheet-page')), { timeout: PATIENCE }).toBe(true);
    await server.crash();
    await page.click('.job-list a');
    await page.locator('h1', { hasText: 'The server does not answer' }).waitFor();
    await server.restart();
    expect(await answered(page)).toMatch(/^Yes\./);
    await page.context().close();
  });

  it('a tick at the machine is kept until the server is back', async () => {
    const { page } = await server.open(`/run/${id}`);
    await page.locator('.stops input').first().waitFor();
    await server.crash();
    await page.locator('.stops input').first().check();
    await page.locator('[role="status"]', { hasText: '1 not yet with the server' }).waitFor();
    await server.restart();
    await expect.poll(async () => (await recordOf(server, id)).log.map((e) => e.kind), { timeout: PATIENCE }).toEqual(['tick']);
  });
});

describe('two tabs on one job', () => {
  let server: Stand;
  let id: string;
  let [one, other] = [] as unknown as [Page, Page];
  beforeAll(async () => {
    server = await stand();
    id = await exampleOf(server);
    ({ page: one } = await server.open(`/job/${id}`));
    await answered(one);
    await saved(one);
    other = await one.context().newPage();
    await other.goto(`${server.address}/job/${id}`);
    await answered(other);
  });
  afterAll(() => server.close());

  /** Both change the height: the first is kept, the second is told. */
  const contest = async (first: string, second: string): Promise<void> => {
    await edit(one, 'height', first);
    await expect.poll(() => keptInput(server, id), { timeout: PATIENCE }).toMatchObject({ height: Number(first) });
    await edit(other, 'height', second);
    await notice(other, 'Another tab has changed this job').waitFor();
    expect(await keptInput(server, id)).toMatchObject({ height: Number(first) });
  };

  it('the later one is told, and may take what the other saved', async () => {
    await contest('30', '20');
    await other.getByRole('button', { name: 'Take the other one' }).click();
    expect(await answered(other)).toContain('30 mm high');
    expect(await notice(other, 'Another tab').count()).toBe(0);
    expect(await edit(other, 'quantity', '3')).toContain('for 3 pieces');
    await expect.poll(() => keptInput(server, id), { timeout: PATIENCE }).toMatchObject({ height: 30, quantity: 3 });
  });

  it('or keeps its own, which is then in force for both', async () => {
    await one.reload();
    await answered(one);
    await contest('26', '22');
    await other.getByRole('button', { name: 'Keep mine' }).click();
    await expect.poll(() => keptInput(server, id), { timeout: PATIENCE }).toMatchObject({ height: 22 });
    await saved(other);
    await one.reload();
    await answered(one);
    expect(await word(one, 'height').textContent()).toBe('22 mm');
  });
});
