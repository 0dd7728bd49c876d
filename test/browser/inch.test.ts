/** Inches, and numbers with a decimal comma. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type Desk, desk } from './desk.ts';
import { answered, copyOfExample, edit, keptInput, smallJob, word } from './hands.ts';
import { type Stand, stand } from './stand.ts';

describe('in inch, by somebody who writes decimals with a comma', () => {
  let server: Stand;
  let sheet: Desk;
  let page: Page;
  let id: string;
  beforeAll(async () => {
    server = await stand();
    sheet = await desk(server, { locale: 'de-DE' });
    page = sheet.page;
  });
  beforeEach(async () => {
    id = await smallJob(server, { height: 12.7 });
    await sheet.sheetOf(id);
  });
  afterAll(() => server.close());

  const kept = () => keptInput(server, id);
  const button = (unit: string) => page.getByRole('button', { name: unit, exact: true });
  const inInch = async (): Promise<string> => {
    await button('inch').click();
    await button('µin').click();
    return answered(page);
  };

  it('half an inch is kept as 12.7 mm, typed with its unit or without', async () => {
    expect(await edit(page, 'height', '1 in')).toContain('25,4 mm thick');
    await expect.poll(kept).toMatchObject({ height: 25.4 });
    await button('inch').click();
    expect(await word(page, 'height').textContent()).toBe('1 in');
    expect(await edit(page, 'height', '0,75')).toContain('0,75 in thick');
    await expect.poll(kept).toMatchObject({ height: 19.05 });
    expect(await edit(page, 'height', '1/2 in')).toContain('0,5 in thick');
    await expect.poll(kept).toMatchObject({ height: 12.7 });
  });

  it('inputs and results alike are told in inch and microinch, and nothing that is kept changes', async () => {
    const before = await kept();
    const sentence = await inInch();
    expect(sentence).toContain('0,5 in thick');
    expect(sentence).toMatch(/: ±0,000\d+ in expected \(k = 2, about 95 %\), ±0,000\d+ in required/);
    expect(sentence).toMatch(/Ra \d+(,\d+)? µin expected, Ra 31,5 µin required/);
    expect(sentence).toMatch(/costs [\d.]+,\d\d EUR/);
    expect(sentence).not.toMatch(/\d (mm|µm)\b(?! brass| coated| wire)/);
    expect(await kept()).toEqual(before);
  });

  it('nothing on the whole page is left in mm, but what the program, the papers and the names say', async () => {
    await sheet.sheetOf(await copyOfExample(server, { height: 12.7 }));
    await edit(page, 'height', '13 mm');
    await inInch();
    await page.evaluate('document.querySelectorAll("details").forEach((d) => { d.open = true; })');
    const text = (await page.evaluate(`(() => {
      const page = document.body.cloneNode(true);
      page.querySelectorAll('.masthead, .program-lines, .paper, .paper-page, select, script, .unseen').forEach((e) => e.remove());
      return [...page.querySelectorAll('p, li, td, th, caption, h1, h2, h3, label, dt, dd, figcaption, text')].map((e) => e.textContent.trim());
    })()`)) as readonly string[];
    expect(text.length).toBeGreaterThan(200);
    const named = (t: string): string => t.replace(/\d[.,]\d\d mm (coated brass|brass|molybdenum|tungsten)( wire)?/g, '');
    // The unit of the program is its own; the steps of undo are called as they were typed.
    const own = /^\d+ lines, control dialect|^thickness 13 mm( current)?$/;
    expect([...new Set(text.map(named))].filter((t) => !own.test(t)).filter((t) => /(?<![\p{L}])(mm|µm)(?![\p{L}])/u.test(t))).toEqual([]);
  });

  it('the paper on screen follows its reader, but for what is typed into the control', async () => {
    await inInch();
    await page.locator('#papers').scrollIntoViewIfNeeded();
    const paper = page.locator('.paper');
    await expect.poll(() => paper.textContent()).toMatch(/±0,000\d+ in, Ra [\d,]+ µin/);
    expect(await paper.locator('dd, li').allInnerTexts()).not.toContainEqual(expect.stringMatching(/\d (mm|µm)(?! (coated )?brass)/));
    expect(await paper.textContent()).toMatch(/Set the offset registers: D1 = 0,\d{4}, .* mm\./);
    expect(await paper.locator('svg').first().textContent()).toMatch(/\d in$/);
  });

  it('thou and microinch are understood', async () => {
    await inInch();
    expect(await edit(page, 'tolerance', '0,5 thou')).toContain('±0,0005 in required');
    await expect.poll(kept).toMatchObject({ tolerance: 0.0127 });
    expect(await edit(page, 'finish', '40')).toContain('Ra 40 µin required');
    await expect.poll(kept).toMatchObject({ finish: 1.016 });
  });

  it('the units stay with the user over a reload', async () => {
    await inInch();
    await page.reload();
    expect(await answered(page)).toMatch(/0,5 in thick.* Ra 31,5 µin required/);
    await button('mm').click();
    await button('µm').click();
    expect(await answered(page)).toMatch(/12,7 mm thick.*±0,008 mm required; .*, Ra 0,8 µm required/);
  });
});
