/** What the browser tests stand on: the built server with a folder of its own, a real browser, and axe to look for what shuts people out. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { launch } from './browser.ts';
import { PATIENCE } from './patience.ts';

export interface Stand {
  readonly address: string;
  readonly folder: string;
  /** A page of a fresh browser profile without motion, since what still scrolls is elsewhere than a test finds it; what it logs as an error is kept. */
  open(path: string, options?: BrowserContextOptions): Promise<OpenPage>;
  /** Closes every page that was opened, with all that its browser profile keeps. */
  forget(): Promise<void>;
  /** Ends the server as a crash would. */
  crash(): Promise<void>;
  /** Starts it again on the same folder and port, if it has ended. */
  restart(): Promise<void>;
  close(): Promise<void>;
}

export interface OpenPage {
  readonly page: Page;
  readonly errors: string[];
}

/** The browser of all test files of this process, since each needs but a profile of its own in it; it ends with the process. */
let shared: Promise<Browser> | undefined;
const sharedBrowser = (): Promise<Browser> => {
  shared ??= launch();
  return shared;
};

/** @param browserFlags for a browser of its own, which ends with the stand. */
export const stand = async (browserFlags?: readonly string[]): Promise<Stand> => {
  const folder = mkdtempSync(join(tmpdir(), 'kerfwright-browser-'));
  const [browser, first] = await Promise.all([browserFlags === undefined ? sharedBrowser() : launch(browserFlags), start(folder, 0)]);
  let server = first;
  const { address } = server;
  const contexts: BrowserContext[] = [];
  const forget = async (): Promise<void> => {
    await Promise.all(contexts.splice(0).map((context) => context.close()));
  };
  return {
    address,
    folder,
    async open(path, options = {}) {
      const context = await browser.newContext({ viewport: SCREEN, locale: 'en-GB', reducedMotion: 'reduce', ...options });
      contexts.push(context);
      return openPage(context, `${address}${path}`);
    },
    forget,
    crash: () => ended(server.child, 'SIGKILL'),
    async restart() {
      if (server.child.exitCode === null && server.child.signalCode === null) return;
      server = await start(folder, Number(new URL(address).port));
    },
    async close() {
      await forget();
      if (browserFlags !== undefined) await browser.close();
      await ended(server.child, 'SIGTERM');
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

/** The window that a page has unless a test asks for another one. */
export const SCREEN = { width: 1280, height: 800 };

const openPage = async (context: BrowserContext, url: string): Promise<OpenPage> => {
  context.setDefaultTimeout(PATIENCE);
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  await page.goto(url);
  return { page, errors };
};

const start = (folder: string, port: number): Promise<{ readonly child: ChildProcess; readonly address: string }> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['dist/server/main.js', '--folder', folder, '--port', String(port)], { stdio: 'pipe' });
    const timer = setTimeout(() => reject(new Error('the server did not print its address')), PATIENCE);
    let told = '';
    child.stderr.on('data', (part: Buffer) => {
      told += part.toString();
    });
    child.stdout.on('data', (part: Buffer) => {
      told += part.toString();
      const address = /http:\/\/[\d.]+:\d+/.exec(told)?.[0];
      if (address === undefined) return;
      clearTimeout(timer);
      resolve({ child, address });
    });
    child.on('exit', () => reject(new Error(`the server ended: ${told}`)));
  });

const ended = (child: ChildProcess, signal: NodeJS.Signals): Promise<void> =>
  new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve();
    child.once('exit', () => resolve());
    child.kill(signal);
  });

/**
 * Asks the server past the page, on a connection of its own: one kept open since a request before may be closed at the other end just when a
 * test that was busy elsewhere writes on it.
 */
export const ask = (
  { address }: Pick<Stand, 'address'>,
  path: string,
  init: RequestInit & { readonly headers?: Readonly<Record<string, string>> } = {},
): Promise<Response> => fetch(`${address}${path}`, { ...init, headers: { ...init.headers, connection: 'close' } });

/** Until nothing on the page changes its colour or place any more, and that has been drawn. */
export const atRest = (page: Page): Promise<void> =>
  page.evaluate(`(async () => {
    const frame = () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
    await frame();
    await Promise.allSettled(document.getAnimations().map((a) => a.finished));
    await frame();
  })()`);

const axeSource = (): string => readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const ALL_OF_AA = { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] };
/** All that another colour scheme can change. */
const COLOURS = { type: 'rule', values: ['color-contrast'] };

/**
 * What axe finds against WCAG 2.2 AA on the page, or within a part of it, as it is now, each with the places; nothing is the right answer.
 * Another colour scheme of a page that was seen already needs a look at its colours alone.
 */
export const shutOut = async (page: Page, within = 'html', coloursAlone = false): Promise<readonly string[]> => {
  await atRest(page);
  if (!(await page.evaluate(`'axe' in window`))) await page.evaluate(axeSource());
  const found = (await page.evaluate(
    `axe.run(document.querySelector('${within}'), { runOnly: ${JSON.stringify(coloursAlone ? COLOURS : ALL_OF_AA)}, resultTypes: ['violations'], preload: false }).then((r) => r.violations.map((v) => [v.id, v.nodes.map((n) => n.target.join(' ') + ': ' + (n.any[0]?.message ?? n.all[0]?.message ?? '')).slice(0, 5)]))`,
  )) as readonly (readonly [string, readonly string[]])[];
  return found.map(([id, places]) => `${id}: ${places.join(' | ')}`);
};
