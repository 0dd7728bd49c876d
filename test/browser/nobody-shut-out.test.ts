/** Every page and state against WCAG 2.2 AA. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answered, brought, copyOfExample, edit, fileAt, fileOf, putInput, word } from './hands.ts';
import { atRest, type Stand, shutOut, stand } from './stand.ts';

/** Every page and state of a page, made as a user would come to it. */
const PAGES: Readonly<Record<string, (server: Stand, example: string) => Promise<Page>>> = {
  'the sheet with all of its notes, helps and details open': async (server, example) => {
    const page = await sheetOf(server, example);
    await page.evaluate('document.querySelectorAll("details").forEach((d) => { d.open = true; })');
    for (const name of ['About thickness', 'About wire', 'What this means'])
      await page.getByRole('button', { name, exact: true }).first().click();
    return page;
  },
  'the sheet with a no': async (server) => jobWith(server, { tolerance: 0.0005 }),
  'inputs that cannot be used': async (server) => jobWith(server, { height: -4, quantity: 'many' }),
  'a drawing that cannot be read': async (server) => {
    const [id = ''] = await brought(server, [fileOf('empty.svg', '<svg xmlns="http://www.w3.org/2000/svg"></svg>')]);
    return sheetOf(server, id);
  },
  'a part by numbers, with a size shown': async (server) => {
    const job = JSON.stringify({ shape: { kind: 'gear', module: 2, teeth: 20 } });
    const [id = ''] = await brought(server, [fileOf('gear.job.json', job)]);
    const page = await sheetOf(server, id);
    await page.locator('.sizes tbody button').first().focus();
    // Else fields that are half scrolled away under the head of the page count as too small to be hit.
    await page.evaluate('scrollTo(0, 0)');
    return page;
  },
  'the list of jobs': async (server) => {
    await brought(server, [fileOf('away.svg', '<svg xmlns="http://www.w3.org/2000/svg"></svg>')]);
    const [older = ''] = await brought(server, [fileAt('examples/split-jaw/split-jaw.dxf')]);
    await fetch(`${server.address}/api/jobs/${older}`, { method: 'DELETE' });
    const { page } = await server.open('/jobs');
    await page.locator('.job-line', { hasText: /^Yes/ }).first().waitFor();
    await page.locator('.bin summary').click();
    await page.getByRole('button', { name: 'Move away to bin' }).click();
    await page.getByRole('button', { name: 'Restore away' }).waitFor();
    await page.locator('.by-numbers summary').click();
    return page;
  },
  'at the machine': async (server, example) => {
    const { page } = await server.open(`/run/${example}`);
    await page.waitForSelector('.stops');
    await page.locator('input[name="size"]').fill('24.006');
    await page.locator('input[name="wanted"]').fill('24');
    await page.getByRole('button', { name: 'Work out correction' }).click();
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
    await page.locator('h1', { hasText: 'No such job' }).waitFor();
    return page;
  },
};

/** What a part of the sheet turns into while it is worked with. */
const PARTS: Readonly<Record<string, { within: string; make: (page: Page) => Promise<unknown> }>> = {
  'the whole sheet with a yes': { within: 'html', make: async () => undefined },
  'a why that is open': {
    within: '.answer',
    make: async (page) => {
      await page.locator('.answer .result-word').last().click();
      await page.waitForSelector('.answer .why-tree');
    },
  },
  'a word that is being edited': {
    within: '.answer',
    make: async (page) => {
      await word(page, 'material').click();
      await page.waitForSelector('[role="listbox"]');
    },
  },
  'a word that cannot be read': {
    within: '.answer',
    make: async (page) => {
      await word(page, 'height').click();
      await page.locator('.in-sentence input').fill('tall');
      await page.keyboard.press('Enter');
      await page.waitForSelector('.in-sentence .fault');
    },
  },
  'the keys': { within: 'dialog', make: (page) => page.getByRole('button', { name: 'Shortcuts' }).click() },
  'a server that is gone': {
    within: '.column',
    make: async (page) => {
      await page.route('**/api/**', (route) => route.abort());
      await edit(page, 'height', '31');
      await page.waitForSelector('.notice');
    },
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
  beforeAll(async () => {
    server = await stand();
  });
  afterAll(() => server.close());

  const clean = async (page: Page, within: string): Promise<void> => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await atRest(page);
      expect(await shutOut(page, within, colorScheme === 'dark'), colorScheme).toEqual([]);
    }
    await page.setViewportSize({ width: 820, height: 1180 });
    await atRest(page);
    expect(await shutOut(page, within), 'tablet').toEqual([]);
    await page.setViewportSize({ width: 1280, height: 800 });
  };

  for (const [state, open] of Object.entries(PAGES))
    it(`axe finds nothing: ${state}, light and dark, on a screen and a tablet`, async () => {
      const page = await open(server, await copyOfExample(server));
      await clean(page, 'html');
      await page.context().close();
    });

  for (const [state, { within, make }] of Object.entries(PARTS))
    it(`axe finds nothing: ${state}, light and dark, on a screen and a tablet`, async () => {
      const page = await sheetOf(server, await copyOfExample(server));
      await make(page);
      await clean(page, within);
      await page.context().close();
    });

  it('axe does find what shuts people out', async () => {
    const { page } = await server.open('/jobs');
    await page.waitForSelector('main h1');
    await page.evaluate(`document.querySelector('main').insertAdjacentHTML('beforeend', '<input><p class="pale">pale</p>');
      document.querySelector('.pale').style.color = '#ddd';`);
    const found = await shutOut(page);
    expect(found.map((f) => f.split(':')[0])).toEqual(expect.arrayContaining(['label', 'color-contrast']));
    expect((await shutOut(page, 'html', true)).map((f) => f.split(':')[0])).toEqual(['color-contrast']);
  });
});
