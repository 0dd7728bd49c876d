/** A real browser for the tests: headless Chromium from npm, or the one that `CHROMIUM` names or the system has. */
import { existsSync } from 'node:fs';
import sparticuz from '@sparticuz/chromium';
import { type Browser, chromium } from 'playwright-core';

/** The package's own flags switch web security off and slow the canvas down thirty times; these do neither. */
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--font-render-hinting=none',
];

/** A page of a test lives for seconds: compiling its code to be fast later costs more than it ever gives back, and so does clearing a small memory often. */
const SHORT_LIVED = '--js-flags=--no-maglev --no-turbofan --min-semi-space-size=16';

const SYSTEM = '/usr/bin/chromium';

/** Unpacks the browser the first time; two processes must not do so at once. */
export const browserPath = async (): Promise<string> => {
  if (process.env['CHROMIUM'] !== undefined) return process.env['CHROMIUM'];
  if (existsSync(SYSTEM)) return SYSTEM;
  sparticuz.setGraphicsMode = true;
  return sparticuz.executablePath();
};

/** @param flags `[]` for measuring, where the page is to run as it does at a user's. */
export const launch = async (flags: readonly string[] = [SHORT_LIVED]): Promise<Browser> =>
  chromium.launch({ executablePath: await browserPath(), args: [...FLAGS, ...flags], headless: true });
