/** The page in the pseudo-language: whatever is two fifths longer than English is neither cut off nor wider than the window, and no English is left in it. */
import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, onTestFailed } from 'vitest';
import { englishIn } from '../pseudo/english.ts';
import { listedTemplates, pseudoLanguage } from '../pseudo/pseudo-language.ts';
import { type Desk, desk } from './desk.ts';
import { brought, copyOfExample, fileOf, smallJob } from './hands.ts';
import { ask, atRest, type Stand, stand } from './stand.ts';

/** Where a picture of a page is left on which something is wrong. */
const SEEN = 'out/pseudo';

/** The page has no control for a language: it takes what the browser keeps. */
const LANGUAGE = { language: JSON.stringify(pseudoLanguage(listedTemplates())) };

const PAGES: Readonly<Record<string, (sheet: Desk, server: Stand) => Promise<unknown>>> = {
  sheet: async (sheet, server) => {
    await sheet.sheetOf(await copyOfExample(server));
    await sheet.page.locator('.suggestions, .field-row').first().waitFor();
  },
  no: async (sheet, server) => sheet.sheetOf(await copyOfExample(server, { tolerance: 0.0005 })),
  'by-numbers': async (sheet, server) => {
    const [id = ''] = await brought(server, [fileOf('gear.job.json', JSON.stringify({ shape: { kind: 'gear', module: 2, teeth: 20 } }))]);
    await sheet.sheetOf(id);
  },
  jobs: async (sheet, server) => {
    const [away = ''] = await brought(server, [fileOf('7.svg', '<svg xmlns="http://www.w3.org/2000/svg"></svg>')]);
    await ask(server, `/api/jobs/${away}`, { method: 'DELETE' });
    await sheet.turnTo('/jobs');
    await sheet.page.locator('.job-list').waitFor();
    await sheet.page.locator('.bin').waitFor();
  },
  machine: async (sheet, server) => {
    await sheet.turnTo(`/run/${await smallJob(server)}`);
    await sheet.page.locator('.stops').waitFor();
  },
  shop: async (sheet) => {
    await sheet.turnTo('/shop');
    await sheet.page.locator('.shop td input').first().click();
    await sheet.page.locator('.basis').waitFor();
  },
};

/** Elements that hide a part of their own words, each with what it says. */
const CUT_OFF = `[...document.querySelectorAll('body *')].filter((e) => {
  const style = getComputedStyle(e);
  const hides = (overflow) => overflow === 'hidden' || overflow === 'clip';
  const unseen = e.clientWidth <= 1 || e.closest('.unseen, .skip') !== null;
  return e.getClientRects().length > 0 && !unseen && e.textContent.trim() !== '' &&
    ((hides(style.overflowX) && e.scrollWidth > e.clientWidth + 1) || (hides(style.overflowY) && e.scrollHeight > e.clientHeight + 1));
}).map((e) => e.tagName + '.' + e.className + ': ' + e.textContent.slice(0, 80))`;

/** Fields whose words are longer than they are: what is chosen, or what stands in place of a value. Cells of the shop are as wide as its table has them. */
const TOO_NARROW = `[...document.querySelectorAll('select, input[placeholder]')].filter((e) => {
  const words = e.tagName === 'SELECT' ? (e.selectedOptions[0]?.textContent ?? '') : e.value === '' ? e.placeholder : '';
  const style = getComputedStyle(e);
  const pen = document.createElement('canvas').getContext('2d');
  pen.font = style.font;
  const room = e.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
  return e.getClientRects().length > 0 && e.closest('.shop td') === null && pen.measureText(words).width > room + 1;
}).map((e) => e.tagName + ' ' + (e.closest('[data-path]')?.dataset.path ?? e.className))`;

/** What speaks a language of its own: programs, keys of files, days as the browser writes them, the line that is kept with a job as the house writes it. */
const OWN_WORDS = [
  '.program-lines',
  '.job-line',
  '.strip-quiet',
  '.stop-scroll small',
  '.shop table',
  '.shop textarea',
  '.basis legend',
  '.bin-place code',
];

/** What layers say that do not say texts yet, and choices that are keys of a file: none is added here. */
const NOT_MOVED = ['.assumed li', '.table-scroll', '.table-note', '.stops', '.run .what', '.run .big', '.editor option'];

/** What people named, and days of the browser in a sentence of the page. */
const NAMES = ['Blanking die plate', 'die-plate', 'gear', 'toolroom', 'came in', ...'Mon Tue Wed Thu Fri Sat Sun Nov Dec'.split(' ')];

/** Every stretch of words on the page with where it stands, those that only a screen reader hears too. */
const SAID = `[...document.querySelectorAll('body *')].filter((e) => !['SCRIPT', 'STYLE'].includes(e.tagName) && e.closest('${[...OWN_WORDS, ...NOT_MOVED].join()}') === null).flatMap((e) => {
  const where = (e.closest('[class]')?.className.baseVal ?? e.closest('[class]')?.className ?? '') + ' ' + e.tagName.toLowerCase();
  const own = [...e.childNodes].filter((n) => n.nodeType === 3).map((n) => n.data);
  return [...own, ...['aria-label', 'title', 'placeholder'].map((a) => e.getAttribute(a) ?? '')].filter((t) => t.trim() !== '').map((t) => [where, t]);
})`;

describe('the page in a longer language', () => {
  let server: Stand;
  let sheet: Desk;
  let page: Page;
  beforeAll(async () => {
    server = await stand();
    sheet = await desk(server, {}, LANGUAGE);
    page = sheet.page;
  });
  afterAll(() => server.close());

  for (const [name, show] of Object.entries(PAGES))
    it(`${name}: nothing is cut off at 1280 and 820 pixels, nor wider than the window, and no English is left`, async () => {
      onTestFailed(async () => {
        mkdirSync(SEEN, { recursive: true });
        await page.screenshot({ path: `${SEEN}/${name}.png`, fullPage: true });
      });
      await show(sheet, server);
      await page.evaluate('document.querySelectorAll("details").forEach((d) => { d.open = true; })');
      const found: Record<string, unknown> = {};
      for (const width of [1280, 820]) {
        await page.setViewportSize({ width, height: 800 });
        await atRest(page);
        found[width] = {
          cut: await page.evaluate(CUT_OFF),
          narrow: await page.evaluate(TOO_NARROW),
          wider: (await page.evaluate('document.documentElement.scrollWidth - innerWidth')) as number,
        };
      }
      const said = (await page.evaluate(SAID)) as readonly (readonly [string, string])[];
      expect(said.length).toBeGreaterThan(20);
      expect(said.filter(([, text]) => englishIn(text, NAMES).length > 0)).toEqual([]);
      const whole = { cut: [], narrow: [], wider: 0 };
      expect(found).toEqual({ 1280: whole, 820: whole });
    });
});
