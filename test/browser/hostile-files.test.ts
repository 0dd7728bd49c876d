/** Drawings that try to run something in the page. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asciiDxf, type Tag } from '../dxf-writer.ts';
import { answered, brought, type Dropped, drop, fileOf, jobIn, putInput } from './hands.ts';
import { atRest, type OpenPage, type Stand, stand } from './stand.ts';

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
  beforeAll(async () => {
    server = await stand();
  });
  afterAll(() => server.close());

  it('the script of an SVG never runs in the page, nor anything of what it points to', async () => {
    const watched = await watch(server, '/jobs');
    expect(await opened(watched.page, fileOf('plate.svg', SVG))).toMatch(/^Yes\./);
    await lookedThrough(watched.page);
    expect(await watched.ran()).toEqual([]);
  });

  it('an SVG that defines entities is refused and says so', async () => {
    const watched = await watch(server, '/jobs');
    const file = fileOf('plate.svg', SVG.replace('<svg', '<!DOCTYPE svg [<!ENTITY far SYSTEM "/ran">]><svg'));
    expect(await opened(watched.page, file)).toContain('defines entities of its own');
    await lookedThrough(watched.page);
    expect(await watched.ran()).toEqual([]);
  });

  it('names and texts of a DXF that are markup are shown as text', async () => {
    const watched = await watch(server, '/jobs');
    await opened(watched.page, hostileDxf());
    await lookedThrough(watched.page);
    expect(await watched.page.textContent('.job-name')).toContain('<img src=x onerror=');
    expect(await watched.page.locator('main img:not([src^="blob:"])').count()).toBe(0);
    await watched.page.goto(`${server.address}/jobs`);
    await watched.page.locator('.job-row', { hasText: '<img src=x' }).waitFor();
    expect(await watched.ran()).toEqual([]);
  });

  it('inputs that are markup are shown as text, at the machine too', async () => {
    const [id = ''] = await brought(server, [hostileDxf()]);
    await putInput(server, id, { customer: IMAGE, name: SCRIPT, material: IMAGE, wire: IMAGE });
    const watched = await watch(server, `/job/${id}`);
    await answered(watched.page);
    await lookedThrough(watched.page);
    await putInput(server, id, { material: 'd2', wire: undefined });
    await watched.page.goto(`${server.address}/run/${id}`);
    await watched.page.locator('input[name="text"]').last().fill(IMAGE);
    await watched.page.getByRole('button', { name: 'Add note', exact: true }).click();
    await watched.page.locator('.entries', { hasText: '<img' }).waitFor();
    expect(await watched.ran()).toEqual([]);
  });

  it('a drawing that is opened by its own address runs nothing either', async () => {
    const [id = ''] = await brought(server, [fileOf('plate.svg', SVG)]);
    const watched = await watch(server, '/jobs');
    for (const file of ['drawing', 'files/drawing-picture'])
      await watched.page.goto(`${server.address}/api/jobs/${id}/${file}`).catch((error: unknown) => {
        // Handed out as a download, which is the best of answers.
        if (!String(error).includes('Download')) throw error;
      });
    expect(await watched.ran()).toEqual([]);
  });

  it('what does run is seen', async () => {
    const watched = await watch(server, '/jobs');
    const opens = watched.page.context().waitForEvent('page');
    await watched.page.evaluate(`(() => { fetch('/ran'); window.ran = 1; open('about:blank'); setTimeout(() => alert(1)); })()`);
    await opens;
    expect((await watched.ran()).map((sign) => sign.replace(server.address, ''))).toEqual(
      expect.arrayContaining(['/ran', '1', 'a window: about:blank', 'the page is marked']),
    );
  });
});

const watch = async (server: Stand, path: string): Promise<OpenPage & { ran(): Promise<readonly string[]> }> => {
  const { page, errors } = await server.open(path);
  const signs: string[] = [];
  const context = page.context();
  context.on('request', (request) => {
    if (request.url().includes('/ran') || !/^(blob:|data:)/.test(request.url().replace(server.address, 'data:'))) signs.push(request.url());
  });
  context.on('dialog', (dialog) => {
    signs.push(dialog.message());
    void dialog.dismiss();
  });
  context.on('page', (other) => signs.push(`a window: ${other.url()}`));
  const ran = async (): Promise<readonly string[]> => {
    // What the page began is told before what it is asked now, and what it left for later has run once it is at rest.
    await atRest(page);
    const marked = await page.evaluate('window.ran === 1 ? "the page is marked" : ""');
    await context.close();
    return [...signs, ...errors.filter((e) => !/favicon/.test(e)), ...(marked === '' ? [] : [String(marked)])];
  };
  return { page, errors, ran };
};

const opened = async (page: Page, file: Dropped): Promise<string> => {
  await page.waitForSelector('.job-list');
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
