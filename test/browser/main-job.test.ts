/** The main job, from a dropped drawing to program and papers. */
import { execFile } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { chapters } from '../../src/job/handout/manual-of-all.ts';
import { type Desk, desk } from './desk.ts';
import {
  answered,
  brought,
  drop,
  edit,
  fileAt,
  fileOf,
  jobIn,
  keptInput,
  putInput,
  recordOf,
  saved,
  sheetOf,
  smallPlate,
  word,
} from './hands.ts';
import { type Stand, stand } from './stand.ts';

const DRAWING = 'examples/die-plate/die-plate.dxf';

let server: Stand;
let sheet: Desk;
let page: Page;
let errors: readonly string[];
beforeAll(async () => {
  server = await stand();
  sheet = await desk(server);
  ({ page, errors } = sheet);
});
afterAll(() => server.close());

describe('the main job', () => {
  beforeEach(() => sheet.turnTo('/jobs'));

  it('makes a job of a drawing that is dropped on the page', async () => {
    await page.waitForSelector('.job-list');
    await drop(page, [fileAt(DRAWING)]);
    await page.waitForURL('**/job/*');
    expect(await answered(page)).toMatch(/^Yes\. .*25 mm thick/);
    expect((await recordOf(server, jobIn(page))).drawingName).toBe('die-plate.dxf');
    expect(errors).toEqual([]);
  });

  it('makes a stack of jobs of several drawings, each with its answer in a line', async () => {
    await page.waitForSelector('.job-list');
    await drop(page, [
      fileAt('examples/split-jaw/split-jaw.dxf'),
      fileAt('examples/mixed-plate/tee.dxf'),
      fileOf('letter.txt', 'no drawing'),
    ]);
    for (const name of ['split-jaw', 'tee']) {
      const row = page.locator('.job-row').filter({ has: page.getByRole('link', { name, exact: true }) });
      await row.locator('.job-line', { hasText: /^(Yes|No)/ }).waitFor();
    }
    await page.locator('.uploads .fault', { hasText: 'letter.txt is not a DXF' }).waitFor();
    expect(await page.locator('.job-row', { hasText: 'letter' }).count()).toBe(0);
  });
});

describe('a job of a dropped drawing', () => {
  let id: string;
  beforeEach(async () => {
    [id = ''] = await brought(server, [smallPlate()]);
    await putInput(server, id, { outline: 'block', height: 20, finish: 0.8 });
    await sheet.sheetOf(id);
  });

  it('answers anew to each word that is typed over', async () => {
    await page.selectOption('.chapter [data-path="outline"] select', { label: 'cut' });
    await answered(page);
    expect(await edit(page, 'height', '22')).toContain('22 mm thick');
    expect(await edit(page, 'finish', 'N7')).toContain('Ra 1.6 µm required');
    expect(await edit(page, 'tolerance', '± 10 µm')).toContain('±0.01 mm required');
    await expect.poll(() => keptInput(server, id)).toMatchObject({ outline: 'cut', height: 22, finish: 1.6, tolerance: 0.01 });
  });

  it('says of what cannot be read why, and keeps the answer', async () => {
    await word(page, 'height').click();
    const input = page.locator('.in-sentence input');
    await input.fill('tall');
    await input.press('Enter');
    expect(await page.textContent('.in-sentence .fault')).toMatch(/tall|length/);
    await input.press('Escape');
    expect(await word(page, 'height').textContent()).toBe('20 mm');
    expect(await answered(page)).toContain('20 mm thick');
  });

  it('tells why a result is what it is, down to what it was made of', async () => {
    const price = page.locator('.answer .result-word').last();
    await price.click();
    const why = page.locator('.answer .why');
    await why.locator('.why-tree').waitFor();
    expect(await why.locator('h3').textContent()).toMatch(/^Calculation: ./);
    expect(await why.locator('.why-value').first().textContent()).toBe(await price.textContent());
    expect(await why.locator('summary').first().textContent()).toMatch(/^calculated from ./);
    await page.keyboard.press('Escape');
    await why.waitFor({ state: 'detached' });
  });

  it('says at a note what it means and what to do, as heading and paragraphs of the manual', async () => {
    await page.getByRole('button', { name: 'What this means' }).first().click();
    const paragraphs = page.locator('.note .manual').first().locator('p');
    await paragraphs.first().waitFor();
    const [title = '', meaning = '', ...more] = await paragraphs.allTextContents();
    const entry = chapters.flatMap((c) => Object.values(c.manual)).find((e) => e.title === title);
    expect(entry?.meaning.replaceAll('`', '')).toBe(meaning);
    expect(more.at(-1)).toBe(`What to do: ${entry?.remedy.replaceAll('`', '')}`);
  });

  it('fills in the value that a remedy names, as a step that can be undone', async () => {
    await edit(page, 'tolerance', '0.001');
    const fill = page.getByRole('button', { name: /^Set tolerance.* to [\d.]+ mm$/ }).first();
    const value = / to ([\d.]+) mm$/.exec((await fill.textContent()) ?? '')?.[1] ?? '';
    expect(Number(value)).toBeGreaterThan(0.001);
    await fill.click();
    expect(await answered(page)).toContain(`±${value} mm required`);
    await expect.poll(() => keptInput(server, id)).toMatchObject({ tolerance: Number(value) });
    await page.getByRole('button', { name: /^Undo: tolerance/i }).click();
    expect(await answered(page)).toMatch(/^No\. ±0\.001 mm/);
  });

  it('undoes and does again, also after a reload', async () => {
    const undo = page.getByRole('button', { name: /^Undo: tolerance/i });
    await edit(page, 'finish', '0.6');
    await edit(page, 'tolerance', '0.01');
    await undo.click();
    expect(await answered(page)).toContain('±0.02 mm assumed');
    await page.getByRole('button', { name: /^Redo: tolerance/i }).click();
    expect(await answered(page)).toContain('±0.01 mm required');
    await saved(page);
    await page.reload();
    expect(await answered(page)).toContain('±0.01 mm required');
    await undo.click();
    await page.getByRole('button', { name: /^Undo: finish/i }).click();
    expect(await answered(page)).toContain('Ra 0.8 µm required');
    await page.getByRole('button', { name: /^Redo: finish/i }).click();
    await page.getByRole('button', { name: /^Redo: tolerance/i }).click();
    expect(await answered(page)).toMatch(/20 mm thick.*±0.01 mm required; .*Ra 0.6 µm required/);
  });

  it('an edit waits for nothing that nobody looks at: papers and what-ifs are not made again', async () => {
    // What is put in between page and worker here stays there: on a page of its own.
    const { page } = await sheetOf(server, id);
    await page.evaluate(`(() => {
      window.asked = [];
      const send = Worker.prototype.postMessage;
      Worker.prototype.postMessage = function (message, ...others) {
        window.asked.push(message?.path?.join('.'));
        return send.call(this, message, ...others);
      };
    })()`);
    await edit(page, 'quantity', '2');
    await edit(page, 'quantity', '1');
    await saved(page);
    const asked = (await page.evaluate('window.asked')) as readonly string[];
    expect(asked.filter((path) => path === 'run')).toHaveLength(2);
    expect(asked.filter((path) => ['paper', 'whatIfs', 'curve', 'prove'].includes(path))).toEqual([]);
    await page.context().close();
  });

  it('hands out the program that the command line writes for the same inputs', async () => {
    const program = await downloaded(page, 'Program');
    expect(program.toString()).toBe(await byCommandLine({ outline: 'block', height: 20, finish: 0.8 }));
    expect(program.toString().length).toBeGreaterThan(2000);
  });

  it('hands out papers as PDF', async () => {
    for (const paper of ['Set-up sheet', 'Quotation'])
      expect((await downloaded(page, `${paper} as PDF`)).subarray(0, 5).toString()).toBe('%PDF-');
    expect(errors).toEqual([]);
  });
});

/** By key: while chapters above still fill in, the button may move away between the press of a mouse and its release. */
const downloaded = async (page: Page, button: string): Promise<Buffer> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('#papers').getByRole('button', { name: button, exact: true }).press('Enter'),
  ]);
  return readFileSync(await download.path());
};

/** Drawing, shop and job file in a folder of their own, as whoever works at the command line has them. */
const byCommandLine = async (job: Readonly<Record<string, unknown>>): Promise<string> => {
  const folder = mkdtempSync(join(tmpdir(), 'kerfwright-command-'));
  try {
    cpSync('examples/workshop', join(folder, 'workshop'), { recursive: true });
    mkdirSync(join(folder, 'job'));
    const { name, bytes } = smallPlate();
    writeFileSync(join(folder, 'job', name), bytes);
    const file = join(folder, 'job', 'plate.job.json');
    writeFileSync(file, JSON.stringify({ drawing: name, shop: '../workshop/shop.json', ...job }));
    await promisify(execFile)(process.execPath, ['dist/cli/main.js', 'answer', file, '--out', join(folder, 'out')]);
    return readFileSync(join(folder, 'out', 'plate.nc'), 'utf8');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
