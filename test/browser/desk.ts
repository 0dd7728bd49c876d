/** One page for all tests of a file, since opening a page costs more than most tests do on it. Each test turns it to an address and finds it as if it had just been opened. */
import type { BrowserContextOptions } from 'playwright-core';
import { answered } from './hands.ts';
import { type OpenPage, SCREEN, type Stand } from './stand.ts';

export interface Desk extends OpenPage {
  /**
   * Goes to an address as a link of the page would, past an address that shows nothing. The browser keeps nothing of what came before, nothing
   * has the focus, and window, colours, routes and errors are as at the beginning. A page that a test loaded anew is loaded anew once more.
   */
  turnTo(path: string): Promise<void>;
  /** The same, until the job there is answered; gives the answer. */
  sheetOf(id: string): Promise<string>;
}

const NOWHERE = '/nowhere';

/** @param kept what the browser is to keep from the beginning, by its key. */
export const desk = async (
  stand: Stand,
  options: BrowserContextOptions = {},
  kept: Readonly<Record<string, string>> = {},
): Promise<Desk> => {
  const { page, errors } = await stand.open(NOWHERE, options);
  const load = async (): Promise<void> => {
    await page.evaluate(keepOnly(kept));
    await page.goto(`${stand.address}${NOWHERE}`);
    await page.evaluate('window.ofTheDesk = true');
  };
  await load();
  const turnTo = async (path: string): Promise<void> => {
    await page.unrouteAll({ behavior: 'wait' });
    await page.mouse.move(0, 0);
    await page.setViewportSize(options.viewport ?? SCREEN);
    await page.emulateMedia({ colorScheme: options.colorScheme ?? 'light' });
    if (await page.evaluate('window.ofTheDesk === true')) await page.evaluate(leave(kept));
    else await load();
    errors.length = 0;
    await page.evaluate(`${goTo(path)}`);
  };
  return {
    page,
    errors,
    turnTo,
    async sheetOf(id) {
      await turnTo(`/job/${id}`);
      return answered(page);
    },
  };
};

/** In the words of the browser, as all that follows. */
const goTo = (path: string): string => `(history.pushState(null, '', '${path}'), dispatchEvent(new PopStateEvent('popstate')), undefined)`;

const keepOnly = (kept: Readonly<Record<string, string>>): string =>
  `(() => { localStorage.clear(); for (const [key, text] of Object.entries(${JSON.stringify(kept)})) localStorage.setItem(key, text); })()`;

/**
 * Until nothing of the page before is shown any more, nor is anything of it on its way to the server: the list would save an answer of its own
 * meanwhile, and one of the two would be refused. The Tab key begins from the top again, as it does where the body had the focus last.
 */
const leave = (kept: Readonly<Record<string, string>>): string => `(async () => {
  while (document.querySelector('.saving')?.textContent === 'Saving…') await new Promise((drawn) => requestAnimationFrame(drawn));
  document.querySelector('.uploads button')?.click();
  const before = document.querySelector('main');
  const elsewhere = location.pathname !== '${NOWHERE}';
  ${goTo(NOWHERE)};
  while (elsewhere && before?.isConnected) await new Promise((drawn) => requestAnimationFrame(drawn));
  ${keepOnly(kept)};
  document.body.tabIndex = -1;
  document.body.focus();
  document.body.removeAttribute('tabindex');
  document.body.blur();
  scrollTo({ top: 0, behavior: 'instant' });
})()`;
