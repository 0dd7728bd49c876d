/** A server that is gone and comes back; two tabs on one job. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answered, edit, exampleOf, keptInput, recordOf, saved, word } from './hands.ts';
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
  afterAll(() => server.close());

  it('a page that is opened meanwhile says so and opens by itself', async () => {
    const { page } = await server.open('/jobs');
    await page.waitForSelector('.job-list');
    await expect.poll(() => page.evaluate(fetched('sheet-page')), { timeout: 10_000 }).toBe(true);
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
    await page.locator('[role="status"]', { hasText: '1 not yet with the server' }).waitFor();
    await server.restart();
    await expect.poll(async () => (await recordOf(server, id)).log.map((e) => e.kind), { timeout: 15_000 }).toEqual(['tick']);
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
    await expect.poll(() => keptInput(server, id), { timeout: 5000 }).toMatchObject({ height: Number(first) });
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
    await expect.poll(() => keptInput(server, id), { timeout: 5000 }).toMatchObject({ height: 30, quantity: 3 });
  });

  it('or keeps its own, which is then in force for both', async () => {
    await one.reload();
    await answered(one);
    await contest('26', '22');
    await other.getByRole('button', { name: 'Keep mine' }).click();
    await expect.poll(() => keptInput(server, id), { timeout: 5000 }).toMatchObject({ height: 22 });
    await saved(other);
    await one.reload();
    await answered(one);
    expect(await word(one, 'height').textContent()).toBe('22 mm');
  });
});
