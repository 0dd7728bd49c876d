/** Drawings that try to run something in the page. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { asciiDxf, type Tag } from '../dxf-writer.ts';
import { type Desk, desk } from './desk.ts';
import { answered, brought, type Dropped, drop, fileOf, jobIn, putInput, saved } from './hands.ts';
import { atRest, type Stand, stand } from './stand.ts';

/** Each of these would tell on itself: by a request for '/ran', a window that opens, a mark on the page. */
const IMAGE = `<img src=x onerror="fetch('/ran');window.ran=1;alert(1)">`;
const SCRIPT = `<script>fetch('/ran');window.ran=1;alert(1)</script>`;

const SVG = `<?xml version="1.0"?>
<?xml-stylesheet href="/ran" type="text/css"?>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="60mm" height="40mm" viewBox="0 0 60 40"
 onload="fetch('/ran');window.ran=1;alert(1)">
 ${SCRIPT.replace('<script>', '<script type="text/javascript"><![CDATA[').replace('</script>', ']]></script>')}
 <foreignObject width="9" height="9"><body xmlns="http://www.w3.org/1999/xhtml"><iframe src="/ran"></iframe></body></foreignObject>
 <image xlink:href="/ran" width="9" height="9"/><use xlink:href="/ran#a"/>
 <a xlink:href="javascript:alert(1)"><text x="1" y="1">click</text></a>
 <style>@import url(/ran); rect { fill: url(/ran#b) }</style>
 <rect id="&quot;&gt;${IMAGE.replaceAll('<', '&lt;').replaceAll('"', '&quot;')}" x="10" y="10" width="40" height="20" onclick="fetch('/ran')"/>
</svg>`;

/** A die opening on a layer whose name is markup, with texts that are markup, in a block whose name is markup. */
const hostileDxf = (): Dropped => {
  const square: readonly Tag[] = [
    [0, 'LWPOLYLINE'],
    [8, IMAGE],
    [90, 4],
    [70, 1],
    ...([0, 1, 2, 3].flatMap((i) => [
      [10, i === 1 || i === 2 ? 40 : 0],
      [20, i >= 2 ? 30 : 0],
    ]) as Tag[]),
  ];
  const text: readonly Tag[] = [
    [0, 'TEXT'],
    [8, SCRIPT],
    [10, 5],
    [20, 5],
    [40, 3],
    [1, IMAGE],
  ];
  const odd: readonly Tag[] = [
    [0, IMAGE],
    [8, IMAGE],
    [0, 'INSERT'],
    [8, IMAGE],
    [2, IMAGE],
    [10, 1],
    [20, 1],
  ];
  const tags: readonly Tag[] = [[0, 'SECTION'], [2, 'ENTITIES'], ...square, ...text, ...odd, [0, 'ENDSEC'], [0, 'EOF']];
  return { name: `${IMAGE.replaceAll('/', '')}.dxf`, bytes: asciiDxf(tags) };
};

describe('hostile files', () => {
  let server: Stand;
  let sheet: Desk;
  let page: Page;
  let ran: () => Promise<readonly string[]>;
  beforeAll(async () => {
    server = await stand();
    sheet = await desk(server);
    page = sheet.page;
    ran = watched(sheet, server.address);
  });
  beforeEach(() => sheet.turnTo('/shop'));
  afterAll(() => server.close());

  it('the script of an SVG never runs in the page, nor anything of what it points to', async () => {
    expect(await opened(page, fileOf('plate.svg', SVG))).toMatch(/^Yes\./);
    await lookedThrough(page);
    expect(await ran()).toEqual([]);
  });

  it('an SVG that takes entities from elsewhere is refused and says so', async () => {
    const file = fileOf('plate.svg', SVG.replace('<svg', '<!DOCTYPE svg [<!ENTITY far SYSTEM "/ran">]><svg'));
    expect(await opened(page, file)).toContain('takes definitions from another file');
    await lookedThrough(page);
    expect(await ran()).toEqual([]);
  });

  it('names and texts of a DXF that are markup are shown as text', async () => {
    await opened(page, hostileDxf());
    await lookedThrough(page);
    expect(await page.textContent('.job-name')).toContain('<img src=x onerror=');
    expect(await page.locator('main img:not([src^="blob:"])').count()).toBe(0);
    expect(await ran()).toEqual([]);
    await sheet.turnTo('/jobs');
    await page.locator('.job-row', { hasText: '<img src=x' }).first().waitFor();
    expect(await ran()).toEqual([]);
  });

  it('inputs that are markup are shown as text, at the machine too', async () => {
    const [id = ''] = await brought(server, [hostileDxf()]);
    await putInput(server, id, { customer: IMAGE, name: SCRIPT, material: IMAGE, wire: IMAGE });
    await sheet.sheetOf(id);
    await lookedThrough(page);
    await saved(page);
    expect(await ran()).toEqual([]);
    await putInput(server, id, { material: 'd2', wire: undefined });
    await sheet.turnTo(`/run/${id}`);
    await page.locator('input[name="text"]').last().fill(IMAGE);
    await page.getByRole('button', { name: 'Add note', exact: true }).click();
    await page.locator('.entries', { hasText: '<img' }).waitFor();
    expect(await ran()).toEqual([]);
  });

  it('a drawing that is opened by its own address runs nothing either', async () => {
    const [id = ''] = await brought(server, [fileOf('plate.svg', SVG)]);
    for (const file of ['drawing', 'files/drawing-picture'])
      await page.goto(`${server.address}/api/jobs/${id}/${file}`).catch((error: unknown) => {
        // Handed out as a download, which is the best of answers.
        if (!String(error).includes('Download')) throw error;
      });
    expect(await ran()).toEqual([]);
  });

  it('what does run is seen', async () => {
    const opens = page.context().waitForEvent('page');
    await page.evaluate(`(() => { fetch('/ran'); window.ran = 1; open('about:blank'); setTimeout(() => alert(1)); })()`);
    await (await opens).close();
    const seen = await ran();
    await page.reload();
    expect(seen.map((sign) => sign.replace(server.address, ''))).toEqual(
      expect.arrayContaining(['/ran', '1', 'a window: about:blank', 'the page is marked']),
    );
  });
});

/** From now on whatever runs in the page is noted; what it gives tells all that was noted since it was asked last. */
const watched = ({ page, errors }: Desk, address: string): (() => Promise<readonly string[]>) => {
  const signs: string[] = [];
  const context = page.context();
  context.on('request', (request) => {
    if (request.url().includes('/ran') || !/^(blob:|data:)/.test(request.url().replace(address, 'data:'))) signs.push(request.url());
  });
  context.on('dialog', (dialog) => {
    signs.push(dialog.message());
    void dialog.dismiss();
  });
  context.on('page', (other) => signs.push(`a window: ${other.url()}`));
  return async () => {
    // What the page began is told before what it is asked now, and what it left for later has run once it is at rest.
    await atRest(page);
    const marked = await page.evaluate('window.ran === 1 ? "the page is marked" : ""');
    return [...signs.splice(0), ...errors.filter((e) => !/favicon/.test(e)), ...(marked === '' ? [] : [String(marked)])];
  };
};

const opened = async (page: Page, file: Dropped): Promise<string> => {
  await drop(page, [file]);
  await page.waitForURL('**/job/*');
  expect(jobIn(page)).toMatch(/^[a-z0-9]{8,40}$/);
  return answered(page);
};

/** All that can show a text of the file is opened: notes, what they mean, papers, contours, the picture under the pointer. */
const lookedThrough = async (page: Page): Promise<void> => {
  await page.waitForSelector('.beside canvas');
  await page.evaluate('document.querySelectorAll("details").forEach((d) => { d.open = true; })');
  for (const note of await page.getByRole('button', { name: 'What this means' }).all()) await note.click();
  const papers = page.locator('#papers .papers select');
  if ((await papers.count()) > 0)
    for (const paper of ['set-up-sheet', 'inspection-sheet', 'quotation', 'annex']) {
      await papers.selectOption(paper);
      await papers.scrollIntoViewIfNeeded();
      await page.waitForSelector(`#papers [data-paper="${paper}"][aria-busy="false"]`, { state: 'attached' });
    }
  const box = await page.locator('.beside canvas').first().boundingBox();
  if (box !== null) for (const share of [0.3, 0.5, 0.7]) await page.mouse.move(box.x + box.width * share, box.y + box.height * share);
};
