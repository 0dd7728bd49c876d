/** What each chapter of the sheet looks like, held against the accepted pictures. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import pixelmatch from 'pixelmatch';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CHAPTERS } from '../../src/app/work/views.ts';
import { answered, exampleOf } from './hands.ts';
import { type Stand, stand } from './stand.ts';

const KEPT = 'test/browser/expected';
/** Where a picture that differs is left, beside what differs in it. */
const SEEN = 'out/shots';
const UPDATE = process.env['UPDATE_SHOTS'] === '1';

/** Edges of letters fall a little otherwise from one browser to the next: this share of the pixels may differ. */
const TOLERATED = 0.01;
const COLOUR_DISTANCE = 0.2;

const LIGHT: BrowserContextOptions = { colorScheme: 'light', reducedMotion: 'reduce' };

/** Day and hour stand still, so that the papers and the clock say the same every time. */
const NOW = new Date('2026-11-25T09:00:00');

describe('what the sheet looks like', () => {
  let server: Stand;
  let id: string;
  let sheet: Page;
  beforeAll(async () => {
    server = await stand();
    id = await exampleOf(server);
    sheet = await open(`/job/${id}`, LIGHT);
    await settledSheet(sheet);
  });
  afterAll(() => server.close());

  const open = async (path: string, options: BrowserContextOptions): Promise<Page> => {
    const { page } = await server.open('/jobs', options);
    await page.clock.setFixedTime(NOW);
    await page.goto(`${server.address}${path}`);
    return page;
  };

  for (const chapter of CHAPTERS)
    it(`is as it was accepted: the chapter '${chapter}'`, async () => {
      await toChapter(sheet, chapter);
      await alike(sheet, `chapter-${chapter}`);
    });

  it('is as it was accepted: the answer on top', async () => {
    await sheet.evaluate('scrollTo(0, 0)');
    await alike(sheet, 'answer');
  });

  it('is as it was accepted: in the dark', async () => {
    const page = await open(`/job/${id}`, { ...LIGHT, colorScheme: 'dark' });
    await settledSheet(page);
    await toChapter(page, 'passes');
    await alike(page, 'dark');
  });

  it('is as it was accepted: at the machine, on a tablet', async () => {
    const page = await open(`/run/${id}`, { ...LIGHT, viewport: { width: 1180, height: 820 }, hasTouch: true });
    await page.waitForSelector('.stops');
    await alike(page, 'machine-tablet');
  });
});

const settledSheet = async (page: Page): Promise<void> => {
  await answered(page);
  await page.waitForSelector('.beside canvas');
  // A paper is made when it is looked at.
  await toChapter(page, 'papers');
  await page.locator('#papers .paper').waitFor();
};

const toChapter = async (page: Page, chapter: string): Promise<void> => {
  await page.evaluate(`document.getElementById('${chapter}').scrollIntoView({ block: 'start', behavior: 'instant' })`);
  await page.waitForTimeout(50);
};

/** Two pictures alike in a row: fonts are there, the canvas is drawn, nothing is on its way. */
const still = async (page: Page): Promise<Buffer> => {
  await page.evaluate('document.fonts.ready.then(() => undefined)');
  let last = await page.screenshot({ animations: 'disabled', caret: 'hide' });
  for (let i = 0; i < 20; i += 1) {
    await page.waitForTimeout(150);
    const next = await page.screenshot({ animations: 'disabled', caret: 'hide' });
    if (next.equals(last)) return next;
    last = next;
  }
  throw new Error('the page does not come to rest');
};

const alike = async (page: Page, name: string): Promise<void> => {
  const seen = await still(page);
  const kept = join(KEPT, `${name}.png`);
  if (UPDATE) {
    mkdirSync(KEPT, { recursive: true });
    writeFileSync(kept, seen);
  }
  if (!existsSync(kept)) throw new Error(`${kept} is missing: look at the page, then run once with UPDATE_SHOTS=1`);
  const [is, was] = [PNG.sync.read(seen), PNG.sync.read(readFileSync(kept))];
  expect([is.width, is.height], 'its size').toEqual([was.width, was.height]);
  const differing = new PNG({ width: is.width, height: is.height });
  const share = pixelmatch(is.data, was.data, differing.data, is.width, is.height, { threshold: COLOUR_DISTANCE }) / (is.width * is.height);
  if (share > TOLERATED) {
    mkdirSync(SEEN, { recursive: true });
    writeFileSync(join(SEEN, `${name}.png`), seen);
    writeFileSync(join(SEEN, `${name}.differs.png`), PNG.sync.write(differing));
  }
  expect(share, `share of ${name} that differs; see ${SEEN}`).toBeLessThanOrEqual(TOLERATED);
};
