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

const SYSTEM = '/usr/bin/chromium';

/** Unpacks the browser the first time; two processes must not do so at once. */
export const browserPath = async (): Promise<string> => {
  if (process.env['CHROMIUM'] !== undefined) return process.env['CHROMIUM'];
  if (existsSync(SYSTEM)) return SYSTEM;
  sparticuz.setGraphicsMode = true;
  return sparticuz.executablePath();
};

export const launch = async (): Promise<Browser> => chromium.launch({ executablePath: await browserPath(), args: FLAGS, headless: true });
