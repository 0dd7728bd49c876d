/** Every page and state against WCAG 2.2 AA. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answered, brought, exampleOf, fileAt, fileOf, putInput, word } from './hands.ts';
import { type Stand, shutOut, stand } from './stand.ts';

/** Every page and state, made as a user would come to it. */
const STATES: Readonly<Record<string, (server: Stand, example: string) => Promise<Page>>> = {
  'the sheet with a yes': async (server, example) => sheetOf(server, example),
  'the sheet with all of its notes, helps and details open': async (server, example) => {
    const page = await sheetOf(server, example);
    await page.evaluate('document.querySelectorAll("details").forEach((d) => { d.open = true; })');
    for (const name of ['About height', 'About wire', 'What this means'])
      await page.getByRole('button', { name, exact: true }).first().click();
    return page;
  },
  'a why that is open': async (server, example) => {
    const page = await sheetOf(server, example);
    await page.locator('.answer .result-word').last().click();
    await page.waitForSelector('.answer .why-tree');
    return page;
  },
  'a word that is being edited': async (server, example) => {
    const page = await sheetOf(server, example);
    await word(page, 'material').click();
    await page.waitForSelector('[role="listbox"]');
    return page;
  },
  'a word that cannot be read': async (server, example) => {
    const page = await sheetOf(server, example);
    await word(page, 'height').click();
    await page.locator('.in-sentence input').fill('tall');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.in-sentence .fault');
    return page;
  },
  'the sheet with a no': async (server) => jobWith(server, { tolerance: 0.0005 }),
  'inputs that cannot be used': async (server) => jobWith(server, { height: -4, quantity: 'many' }),
  'a drawing that cannot be read': async (server) => {
    const [id = ''] = await brought(server, [fileOf('empty.svg', '<svg xmlns="http://www.w3.org/2000/svg"></svg>')]);
    return sheetOf(server, id);
  },
  'the keys': async (server, example) => {
    const page = await sheetOf(server, example);
    await page.getByRole('button', { name: 'Keys' }).click();
    return page;
  },
  'a server that is gone': async (server, example) => {
    const page = await sheetOf(server, example);
    await page.route('**/api/**', (route) => route.abort());
    await page.getByRole('button', { name: 'Undo: came', exact: false }).isVisible();
    await word(page, 'height').click();
    await page.locator('.in-sentence input').fill('31');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.notice');
    await answered(page);
    return page;
  },
  'the list of jobs': async (server) => {
    const { page } = await server.open('/jobs');
    await page.locator('.job-line', { hasText: /^Yes/ }).first().waitFor();
    await page
      .getByRole('button', { name: /^Put away/ })
      .first()
      .click();
    return page;
  },
  'at the machine': async (server, example) => {
    const { page } = await server.open(`/run/${example}`);
    await page.waitForSelector('.stops');
    await page.locator('input[name="size"]').fill('24.006');
    await page.locator('input[name="wanted"]').fill('24');
    await page.getByRole('button', { name: 'What now?' }).click();
    await page.locator('.run table').waitFor();
    return page;
  },
  'the shop': async (server) => {
    const { page } = await server.open('/shop');
    await page.locator('.shop td input').first().click();
    await page.locator('.basis').waitFor();
    return page;
  },
  'no such page': async (server) => (await server.open('/nowhere')).page,
  'no such job': async (server) => {
    const { page } = await server.open('/job/aaaaaaaaaaaa');
    await page.locator('h1', { hasText: 'There is no such job' }).waitFor();
    return page;
  },
};

const sheetOf = async (server: Stand, id: string): Promise<Page> => {
  const { page } = await server.open(`/job/${id}`);
  await answered(page);
  await page.waitForSelector('.beside canvas');
  return page;
};

const jobWith = async (server: Stand, input: Readonly<Record<string, unknown>>): Promise<Page> => {
  const [id = ''] = await brought(server, [fileAt('examples/split-jaw/split-jaw.dxf')]);
  await putInput(server, id, input);
  const { page } = await server.open(`/job/${id}`);
  expect(await answered(page)).not.toMatch(/^Yes/);
  return page;
};

describe('nobody is shut out', () => {
  let server: Stand;
  let example: string;
  beforeAll(async () => {
    server = await stand();
    example = await exampleOf(server);
  });
  afterAll(() => server.close());

  for (const [state, open] of Object.entries(STATES))
    it(`axe finds nothing: ${state}, light and dark, on a screen and a tablet`, async () => {
      const page = await open(server, example);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        // What had begun to change its colour before is done by then.
        await page.waitForTimeout(300);
        expect(await shutOut(page), colorScheme).toEqual([]);
      }
      await page.setViewportSize({ width: 820, height: 1180 });
      expect(await shutOut(page), 'tablet').toEqual([]);
      await page.close();
    });

  it('axe does find what shuts people out', async () => {
    const { page } = await server.open('/jobs');
    await page.waitForSelector('main h1');
    await page.evaluate(`document.querySelector('main').insertAdjacentHTML('beforeend', '<input><p class="pale">pale</p>');
      document.querySelector('.pale').style.color = '#ddd';`);
    const found = await shutOut(page);
    expect(found.map((f) => f.split(':')[0])).toEqual(expect.arrayContaining(['label', 'color-contrast']));
  });
});
