/** What the first visit shows; how soon is held by the bench. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answered } from './hands.ts';
import { type Stand, stand } from './stand.ts';

describe('the first visit', () => {
  let server: Stand;
  beforeAll(async () => {
    server = await stand();
  });
  afterAll(() => server.close());

  it('shows the example answered, without a fault in the page or against its policy', async () => {
    const { page, errors } = await server.open('/');
    const sentence = await answered(page);
    expect(sentence).toMatch(
      /^Yes\. A 0\.\d\d mm \S+ wire cuts .*32 mm thick, .*costs [\d,.]+ EUR for one piece(?: \(assumed\))?, without material, at invented rates\.$/,
    );
    expect(new URL(page.url()).pathname).toMatch(/^\/job\/[a-z0-9]+$/);
    await page.waitForSelector('.beside canvas');
    await page.locator('#papers').scrollIntoViewIfNeeded();
    await page.waitForSelector('.paper');
    expect(errors).toEqual([]);
    await page.context().close();
  });

  it('keeps to itself: every request goes to the server it came from, and the policy forbids scripts from anywhere else', async () => {
    const { page } = await server.open('/nowhere');
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    const response = await page.goto(`${server.address}/`);
    await answered(page);
    expect(asked.length).toBeGreaterThan(3);
    expect(asked.filter((url) => !url.startsWith(server.address) && !url.startsWith('blob:') && !url.startsWith('data:'))).toEqual([]);
    const policy = response?.headers()['content-security-policy'] ?? '';
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toContain('unsafe-eval');
    await expect(page.evaluate(`import('http://localhost:1/elsewhere.js')`)).rejects.toThrow();
    await page.context().close();
  });

  it('shows the list of jobs to whoever comes again', async () => {
    const { page } = await server.open('/');
    await page.waitForURL(/\/job\//);
    await page.goto(`${server.address}/`);
    await page.waitForSelector('.job-list');
    await page.locator('.job-line', { hasText: /^Yes/ }).waitFor();
    await page.click('.job-list a');
    expect(await answered(page)).toMatch(/^Yes\./);
    await page.context().close();
  });
});
