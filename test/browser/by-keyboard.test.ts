/** The sheet by keyboard alone. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type Desk, desk } from './desk.ts';
import { answered, keptInput, smallJob } from './hands.ts';
import { type Stand, stand } from './stand.ts';

interface Focused {
  readonly name: string;
  readonly field: string;
  readonly kind: string;
  readonly seen: boolean;
}

/** What has the focus, and whether it is drawn so that one sees it. */
const focused = async (page: Page): Promise<Focused> =>
  (await page.evaluate(`(() => {
    const e = document.activeElement;
    const style = getComputedStyle(e);
    const label = e.getAttribute('aria-label') ?? e.textContent.trim();
    return {
      name: e.tagName.toLowerCase() + ' ' + (label || e.id || e.className).slice(0, 60),
      field: e.getAttribute('data-field') ?? '',
      kind: e.className,
      seen: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 1,
    };
  })()`)) as Focused;

/** Presses Tab, or Shift and Tab, until what has the focus is what is looked for. */
const tabTo = async (page: Page, wanted: (at: Focused) => boolean, key = 'Tab'): Promise<Focused> => {
  for (let i = 0; i < 60; i += 1) {
    await page.keyboard.press(key);
    const at = await focused(page);
    if (wanted(at)) return at;
  }
  throw new Error('the Tab key does not lead there');
};

let server: Stand;
let sheet: Desk;
let page: Page;
let id: string;
beforeAll(async () => {
  server = await stand();
  sheet = await desk(server);
  page = sheet.page;
});
beforeEach(async () => {
  id = await smallJob(server);
});
afterAll(() => server.close());

describe('by keyboard alone', () => {
  beforeEach(() => sheet.sheetOf(id));

  const toField = (field: string) => tabTo(page, (at) => at.field === field);
  /** Types over a word of the sentence that has the focus, and gives the answer. */
  const type = async (text: string, key = 'Enter'): Promise<string> => {
    await page.keyboard.press('Enter');
    await page.keyboard.type(text);
    await page.keyboard.press(key);
    return answered(page);
  };

  it('a word of the sentence is reached, opened, typed over and kept, and the next one follows', async () => {
    await page.keyboard.press('Tab');
    expect((await focused(page)).name).toContain('Skip to content');
    await page.keyboard.press('Enter');
    await toField('height');
    await page.keyboard.press('Enter');
    expect((await focused(page)).name).toMatch(/^input Thickness/);
    await page.keyboard.type('40');
    await page.keyboard.press('Enter');
    expect(await answered(page)).toContain('40 mm thick');
    expect((await focused(page)).field).toBe('height');
    expect(await type('36', 'Tab')).toContain('36 mm thick');
    expect((await focused(page)).name).toMatch(/^input Passes/);
    await page.keyboard.press('Escape');
    expect((await focused(page)).field).toBe('passes');
    await expect.poll(() => keptInput(server, id)).toMatchObject({ height: 36 });
  });

  it('Escape leaves a word as it was', async () => {
    await toField('passes');
    expect(await type('5', 'Escape')).toContain('in 3 passes');
    expect((await focused(page)).field).toBe('passes');
    await toField('quantity');
    expect(await type('2')).toContain('for 2 pieces');
    // What was kept after it shows that nothing of it is still on its way.
    await expect.poll(() => keptInput(server, id)).toMatchObject({ quantity: 2 });
    expect(await keptInput(server, id)).not.toHaveProperty('passes');
  });

  it('a material is chosen with the arrows from what was typed', async () => {
    await toField('height');
    await tabTo(page, (at) => at.field === 'material', 'Shift+Tab');
    await page.keyboard.press('Enter');
    await page.keyboard.type('carb');
    await page.keyboard.press('ArrowDown');
    const chosen = (await page.textContent('[role="option"][aria-selected="true"] span')) ?? '';
    expect(chosen.toLowerCase()).toContain('carb');
    await page.keyboard.press('Enter');
    expect(await answered(page)).toContain(chosen);
    await page.keyboard.press('Control+z');
    expect(await answered(page)).toContain('tool steel D2');
  });

  it('a why is asked, read, left, and the focus is back where it was asked', async () => {
    const asked = await tabTo(page, (at) => at.kind.includes('result-word'));
    await page.keyboard.press('Enter');
    await page.waitForSelector('.answer .why-tree');
    await expect.poll(async () => (await focused(page)).kind).toContain('why');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Escape');
    await page.locator('.why').waitFor({ state: 'detached' });
    await expect.poll(async () => (await focused(page)).name).toBe(asked.name);
  });

  it('the digits lead to the chapters, and the picture follows', async () => {
    for (const [key, chapter] of [
      ['4', 'way'],
      ['7', 'price'],
      ['1', 'drawing'],
    ] as const) {
      await page.keyboard.press(key);
      expect(await page.evaluate('document.activeElement.id')).toBe(`${chapter}-title`);
      await page.waitForSelector(`.contents [aria-current="location"][href="#${chapter}"]`);
    }
  });

  it('the first chapter counts as read at the top of the sheet, wherever one came from', async () => {
    await page.keyboard.press('9');
    await page.waitForSelector('.contents [aria-current="location"][href="#log"]');
    await page.evaluate('scrollTo(0, 0)');
    await page.waitForSelector('.contents [aria-current="location"][href="#drawing"]');
  });

  it('undo and redo have keys, and the keys are told by a key', async () => {
    await toField('height');
    expect(await type('40')).toContain('40 mm thick');
    expect(await type('36')).toContain('36 mm thick');
    await page.keyboard.press('Control+z');
    expect(await answered(page)).toContain('40 mm thick');
    await page.keyboard.press('Control+Shift+z');
    expect(await answered(page)).toContain('36 mm thick');
    await page.keyboard.press('?');
    await page.locator('dialog.keys[open]').waitFor();
    await page.keyboard.press('Escape');
    await page.locator('dialog.keys[open]').waitFor({ state: 'detached' });
  });
});

describe('every stop of the Tab key is seen', () => {
  for (const place of ['sheet', 'jobs', 'shop', 'run'])
    it(`on the page '${place}'`, async () => {
      const path = { sheet: `/job/${id}`, jobs: '/jobs', shop: '/shop', run: `/run/${id}` }[place] ?? '/';
      await sheet.turnTo(path);
      await page.waitForSelector({ sheet: '.sentence', jobs: '.job-row', shop: '.shop table', run: '.stops' }[place] ?? 'main');
      const stops = await tabRound(page);
      expect(stops.length).toBeGreaterThan(8);
      expect(stops.filter((s) => !s.seen).map((s) => s.name)).toEqual([]);
    });
});

/** Once round the page with the Tab key; the shop's tables have many cells alike, so it ends after a good part of them. */
const tabRound = async (page: Page, most = 160): Promise<readonly Focused[]> => {
  const stops: Focused[] = [];
  for (let i = 0; i < most; i += 1) {
    await page.keyboard.press('Tab');
    const at = await focused(page);
    if (at.name.startsWith('body')) break;
    stops.push(at);
  }
  return stops;
};
