/** What a user does at the page, and what the server then keeps: dropping files, editing a word of the sentence, waiting for the answer. */
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import type { JobRecord } from '../../src/server/message/job-record.ts';
import { asciiDxf, type Tag } from '../dxf-writer.ts';
import { ask, type OpenPage, type Stand } from './stand.ts';

/** Until the answer on the page is that of the inputs in force. */
export const answered = async (page: Page): Promise<string> => {
  const sentence = page.locator('.answer[data-older="false"] .sentence');
  return (await sentence.textContent()) ?? '';
};

/** Until the page says that the server has everything. */
export const saved = (page: Page): Promise<void> => page.locator('.saving', { hasText: /^Saved$/ }).waitFor();

export const word = (page: Page, field: string): Locator => page.locator(`.answer [data-field="${field}"]`);

/** Types over a word of the sentence and waits for nothing. By keyboard: a notice that comes just then moves no key away. */
export const typed = async (page: Page, field: string, text: string): Promise<void> => {
  const input = page.locator('.in-sentence input');
  await word(page, field).press('Enter');
  await input.fill(text);
  await input.press('Enter');
};

/** The same, and waits for the new answer. */
export const edit = async (page: Page, field: string, text: string): Promise<string> => {
  await typed(page, field, text);
  return answered(page);
};

export interface Dropped {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export const fileAt = (path: string): Dropped => ({ name: basename(path), bytes: readFileSync(path) });
export const fileOf = (name: string, text: string): Dropped => ({ name, bytes: Buffer.from(text) });

/** Lets files fall on the page as from a folder window. */
export const drop = async (page: Page, files: readonly Dropped[]): Promise<void> => {
  const told = files.map(({ name, bytes }) => ({ name, text: Buffer.from(bytes).toString('base64') }));
  const held = await page.evaluateHandle(`(() => {
    const held = new DataTransfer();
    for (const { name, text } of ${JSON.stringify(told)})
      held.items.add(new File([Uint8Array.from(atob(text), (c) => c.charCodeAt(0))], name));
    return held;
  })()`);
  await page.dispatchEvent('body', 'dragover', { dataTransfer: held });
  await page.dispatchEvent('body', 'drop', { dataTransfer: held });
};

/** Brings files in past the page; gives the ids of the jobs they became. */
export const brought = async (stand: Stand, files: readonly Dropped[]): Promise<readonly string[]> => {
  const form = new FormData();
  for (const { name, bytes } of files) form.append('files', new File([Uint8Array.from(bytes)], name));
  const response = await ask(stand, '/api/jobs', { method: 'POST', body: form });
  if (response.status !== 201) throw new Error(`not brought in: ${await response.text()}`);
  return ((await response.json()) as readonly JobRecord[]).map((r) => r.id);
};

/** The job of the first visit. */
export const exampleOf = async (stand: Stand): Promise<string> => {
  const jobs = (await (await ask(stand, '/api/jobs')).json()) as readonly JobRecord[];
  const example = jobs.find((j) => j.drawingName === 'die-plate.dxf');
  if (example === undefined) throw new Error('the server did not begin with its example');
  return example.id;
};

/** A job of the test's own, with drawing and inputs of the example and what is to be otherwise. */
export const copyOfExample = (stand: Stand, change: Readonly<Record<string, unknown>> = {}): Promise<string> =>
  asExample(stand, fileAt(`${EXAMPLE}.dxf`), change);

/** The same with a drawing that is soon answered: two round openings in a small block. */
export const smallJob = (stand: Stand, change: Readonly<Record<string, unknown>> = {}): Promise<string> =>
  asExample(stand, smallPlate(), change);

export const smallPlate = (): Dropped => ({ name: 'plate.dxf', bytes: asciiDxf(SMALL_PLATE) });

const asExample = async (stand: Stand, drawing: Dropped, change: Readonly<Record<string, unknown>>): Promise<string> => {
  const job = JSON.parse(readFileSync(`${EXAMPLE}.job.json`, 'utf8')) as Readonly<Record<string, unknown>>;
  const [id] = await brought(stand, [fileOf('copy.job.json', JSON.stringify({ ...job, drawing: drawing.name, ...change })), drawing]);
  if (id === undefined) throw new Error('the job was not brought in');
  return id;
};

const EXAMPLE = 'examples/die-plate/die-plate';

/** mm */
const hole = (x: number): readonly Tag[] => [
  [0, 'CIRCLE'],
  [8, '0'],
  [10, x],
  [20, 10],
  [40, 3],
];

const SMALL_PLATE: readonly Tag[] = [
  [0, 'SECTION'],
  [2, 'HEADER'],
  [9, '$INSUNITS'],
  [70, 4],
  [0, 'ENDSEC'],
  [0, 'SECTION'],
  [2, 'ENTITIES'],
  ...hole(8),
  ...hole(22),
  [0, 'LWPOLYLINE'],
  [8, '0'],
  [90, 4],
  [70, 1],
  ...[
    [0, 0],
    [30, 0],
    [30, 20],
    [0, 20],
  ].flatMap(([x = 0, y = 0]): readonly Tag[] => [
    [10, x],
    [20, y],
  ]),
  [0, 'ENDSEC'],
  [0, 'EOF'],
];

/** A job of the test's own on a page of its own, answered. */
export const sheetOf = async (stand: Stand, id: string, options?: BrowserContextOptions): Promise<OpenPage> => {
  const opened = await stand.open(`/job/${id}`, options);
  await answered(opened.page);
  return opened;
};

export const jobIn = (page: Page): string => page.url().split('/').at(-1) ?? '';

export const recordOf = async (stand: Stand, id: string): Promise<JobRecord> =>
  (await (await ask(stand, `/api/jobs/${id}`)).json()) as JobRecord;

/** The inputs in force as the server keeps them. */
export const keptInput = async (stand: Stand, id: string): Promise<Readonly<Record<string, unknown>>> => {
  const { steps, cursor } = await recordOf(stand, id);
  return steps[cursor]?.input ?? {};
};

/** Puts other inputs under a job past the page, as a step of their own; again, where a page saved the line of its answer just then. */
export const putInput = async (stand: Stand, id: string, change: Readonly<Record<string, unknown>>): Promise<void> => {
  const { revision, name, steps } = await recordOf(stand, id);
  const input = { ...steps.at(-1)?.input, ...change };
  const response = await ask(stand, `/api/jobs/${id}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ revision, name, steps: [...steps, { name: 'put', input }], cursor: steps.length }),
  });
  if (response.status === 409) return putInput(stand, id, change);
  if (!response.ok) throw new Error(`not kept: ${await response.text()}`);
};
