/** Every page and state against WCAG 2.2 AA. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Desk, desk } from './desk.ts';
import { brought, copyOfExample, edit, fileOf, putInput, smallJob, smallPlate, word } from './hands.ts';
import { ask, type Stand, shutOut, stand } from './stand.ts';

/** Every page and state of a page, made as a user would come to it. */
const PAGES: Readonly<Record<string, (sheet: Desk, server: Stand) => Promise<unknown>>> = {
  'the sheet with all of its notes, helps and details open': async (sheet, server) => {
    const { page } = sheet;
    await sheetOf(sheet, await copyOfExample(server));
    await page.evaluate('document.querySelectorAll("details").forEach((d) => { d.open = true; })');
    for (const name of ['About thickness', 'About wire', 'What this means'])
      await page.getByRole('button', { name, exact: true }).first().click();
  },
  'the sheet with a no': (sheet, server) => notYes(sheet, server, { tolerance: 0.0005 }),
  'inputs that cannot be used': (sheet, server) => notYes(sheet, server, { height: -4, quantity: 'many' }),
  'a drawing that cannot be read': async (sheet, server) => {
    const [id = ''] = await brought(server, [fileOf('empty.svg', '<svg xmlns="http://www.w3.org/2000/svg"></svg>')]);
    await sheetOf(sheet, id);
  },
  'a part by numbers, with a size shown': async (sheet, server) => {
    const { page } = sheet;
    const job = JSON.stringify({ shape: { kind: 'gear', module: 2, teeth: 20 } });
    const [id = ''] = await brought(server, [fileOf('gear.job.json', job)]);
    await sheetOf(sheet, id);
    await page.locator('.sizes tbody button').first().focus();
    // Else fields that are half scrolled away under the head of the page count as too small to be hit.
    await page.evaluate('scrollTo(0, 0)');
  },
  'the list of jobs': async (sheet, server) => {
    const { page } = sheet;
    await brought(server, [fileOf('away.svg', '<svg xmlns="http://www.w3.org/2000/svg"></svg>')]);
    const [older = ''] = await brought(server, [smallPlate()]);
    await ask(server, `/api/jobs/${older}`, { method: 'DELETE' });
    await sheet.turnTo('/jobs');
    await page.locator('.job-line', { hasText: /^Yes/ }).first().waitFor();
    await page.locator('.bin summary').click();
    await page.getByRole('button', { name: 'Move to bin: away' }).click();
    await page.getByRole('button', { name: 'Restore away' }).waitFor();
    await page.locator('.by-numbers summary').click();
  },
  'at the machine': async (sheet, server) => {
    const { page } = sheet;
    await sheet.turnTo(`/run/${await smallJob(server)}`);
    await page.waitForSelector('.stops');
    await page.locator('input[name="size"]').fill('5.994');
    await page.locator('input[name="wanted"]').fill('6');
    await page.getByRole('button', { name: 'Work out correction' }).click();
    await page.locator('.run table').waitFor();
  },
  'the shop': async (sheet) => {
    const { page } = sheet;
    await sheet.turnTo('/shop');
    await page.locator('.shop td input').first().click();
    await page.locator('.basis').waitFor();
  },
  'no such page': (sheet) => sheet.turnTo('/nowhere'),
  'no such job': async (sheet) => {
    await sheet.turnTo('/job/aaaaaaaaaaaa');
    await sheet.page.locator('h1', { hasText: 'No such job' }).waitFor();
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

const sheetOf = async (sheet: Desk, id: string): Promise<void> => {
  await sheet.sheetOf(id);
  await sheet.page.waitForSelector('.beside canvas');
};

const notYes = async (sheet: Desk, server: Stand, input: Readonly<Record<string, unknown>>): Promise<void> => {
  const id = await smallJob(server);
  await putInput(server, id, input);
  expect(await sheet.sheetOf(id)).not.toMatch(/^Yes/);
};

describe('nobody is shut out', () => {
  let server: Stand;
  let sheet: Desk;
  beforeAll(async () => {
    server = await stand();
    sheet = await desk(server);
  });
  afterAll(() => server.close());

  const clean = async (within: string): Promise<void> => {
    const { page } = sheet;
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await shutOut(page, within, colorScheme === 'dark'), colorScheme).toEqual([]);
    }
    await page.setViewportSize({ width: 820, height: 1180 });
    expect(await shutOut(page, within), 'tablet').toEqual([]);
  };

  for (const [state, open] of Object.entries(PAGES))
    it(`axe finds nothing: ${state}, light and dark, on a screen and a tablet`, async () => {
      await open(sheet, server);
      await clean('html');
    });

  for (const [state, { within, make }] of Object.entries(PARTS))
    it(`axe finds nothing: ${state}, light and dark, on a screen and a tablet`, async () => {
      await sheetOf(sheet, await smallJob(server));
      await make(sheet.page);
      await clean(within);
    });

  it('axe does find what shuts people out', async () => {
    const { page } = sheet;
    await sheet.turnTo('/shop');
    await page.waitForSelector('main h1');
    await page.evaluate(`document.querySelector('main').insertAdjacentHTML('beforeend', '<input><p class="pale">pale</p>');
      document.querySelector('.pale').style.color = '#ddd';`);
    const found = await shutOut(page);
    expect(found.map((f) => f.split(':')[0])).toEqual(expect.arrayContaining(['label', 'color-contrast']));
    expect((await shutOut(page, 'html', true)).map((f) => f.split(':')[0])).toEqual(['color-contrast']);
  });
});
