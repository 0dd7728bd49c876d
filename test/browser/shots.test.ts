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
      await alike(sheet, `chapter-${chapter}`, toChapter(chapter));
    });

  it('is as it was accepted: the answer on top', async () => {
    await alike(sheet, 'answer', 'scrollTo(0, 0)');
  });

  it('is as it was accepted: in the dark', async () => {
    await sheet.emulateMedia({ colorScheme: 'dark' });
    await alike(sheet, 'dark', toChapter('passes')).finally(() => sheet.emulateMedia({ colorScheme: 'light' }));
  });

  it('is as it was accepted: at the machine, on a tablet', async () => {
    const page = await open(`/run/${id}`, { ...LIGHT, viewport: { width: 1180, height: 820 }, hasTouch: true });
    await page.waitForSelector('.stops');
    await alike(page, 'machine-tablet', 'scrollTo(0, 0)');
    await page.context().close();
  });
});

const settledSheet = async (page: Page): Promise<void> => {
  await answered(page);
  await page.waitForSelector('.beside canvas');
  // A paper is made when it is looked at.
  await page.evaluate(toChapter('papers'));
  await page.locator('#papers .paper').waitFor();
};

/** In the words of the browser. */
const toChapter = (chapter: string): string =>
  `document.getElementById('${chapter}').scrollIntoView({ block: 'start', behavior: 'instant' })`;

/** What is seen at a place of the page. It is gone to anew each time: what came above it meanwhile has moved it. */
const shot = async (page: Page, goThere: string): Promise<Buffer> => {
  await page.evaluate(goThere);
  await page.evaluate('document.fonts.ready.then(() => undefined)');
  return page.screenshot({ animations: 'disabled', caret: 'hide' });
};

/** The page is looked at until it is as it was accepted: what is still on its way to it may come late. */
const alike = async (page: Page, name: string, goThere: string): Promise<void> => {
  const kept = join(KEPT, `${name}.png`);
  if (UPDATE) return accept(page, kept, goThere);
  if (!existsSync(kept)) throw new Error(`${kept} is missing: look at the page, then run once with UPDATE_SHOTS=1`);
  let last: Seen | undefined;
  const share = async (): Promise<number> => {
    last = seenBeside(await shot(page, goThere), readFileSync(kept));
    return last.share;
  };
  try {
    await expect.poll(share, { message: `share of ${name} that differs; see ${SEEN}` }).toBeLessThanOrEqual(TOLERATED);
  } catch (error) {
    mkdirSync(SEEN, { recursive: true });
    if (last !== undefined) {
      writeFileSync(join(SEEN, `${name}.png`), last.picture);
      writeFileSync(join(SEEN, `${name}.differs.png`), PNG.sync.write(last.differing));
    }
    throw error;
  }
};

interface Seen {
  readonly picture: Buffer;
  readonly differing: PNG;
  readonly share: number;
}

const seenBeside = (picture: Buffer, kept: Buffer): Seen => {
  const [is, was] = [PNG.sync.read(picture), PNG.sync.read(kept)];
  expect([is.width, is.height], 'its size').toEqual([was.width, was.height]);
  const differing = new PNG({ width: is.width, height: is.height });
  const count = pixelmatch(is.data, was.data, differing.data, is.width, is.height, { threshold: COLOUR_DISTANCE });
  return { picture, differing, share: count / (is.width * is.height) };
};

/** Two pictures alike in a row: fonts are there, the canvas is drawn, nothing is on its way. Whoever accepts them looks at them. */
const accept = async (page: Page, kept: string, goThere: string): Promise<void> => {
  let last = await shot(page, goThere);
  for (let next = await shot(page, goThere); !next.equals(last); next = await shot(page, goThere)) {
    last = next;
    await page.waitForTimeout(500);
  }
  mkdirSync(KEPT, { recursive: true });
  writeFileSync(kept, last);
};
