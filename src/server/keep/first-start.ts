/** Fills an empty folder with the example job and the shop it belongs to, so that the first minute shows the whole thing working. */

import { mkdir, readFile, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { parseFile } from '../../job/files/parse.ts';
import { shopSchema } from '../../job/shop.ts';
import { sentences } from '../../text/say.ts';
import { notValid } from '../answer/refusal.ts';
import { jobFileOf } from './job-file.ts';
import type { Jobs } from './jobs.ts';
import { jobsFolder, shopFileIn } from './places.ts';
import { mustBeShop } from './shop.ts';
import { writeWhole } from './whole-file.ts';

export interface FirstStart {
  /** A job file whose drawing and shop lie where it says. */
  readonly example?: string | undefined;
  /** A shop file that is taken instead of the one of the example; its dialect lies where it says. */
  readonly shopFile?: string | undefined;
}

/** Makes the folder, and on the very first start fills it; what is there already is never touched. */
export const firstStart = async (folder: string, jobs: Jobs, { example, shopFile }: FirstStart): Promise<void> => {
  const fresh = !(await isThere(jobsFolder(folder)));
  const job = example === undefined || !fresh ? undefined : await exampleJob(example);
  const shop = shopFile ?? job?.shop;
  await makeFolder(folder);
  if (shop !== undefined && !(await isThere(shopFileIn(folder)))) await takeShop(folder, shop);
  // Last of all: a start that fails before leaves the folder as fresh as it was.
  await makeFolder(jobsFolder(folder));
  if (job !== undefined) await jobs.bringIn(job.job);
};

/** Step by step: asked to make all parents at once, Node goes round for ever where the system takes no folders at all. */
const makeFolder = async (path: string): Promise<void> => {
  const there = await stat(path).catch(() => undefined);
  if (there?.isDirectory() === true) return;
  const parent = dirname(path);
  if (there === undefined && parent !== path) await makeFolder(parent);
  await mkdir(path, { mode: 0o700 });
};

const exampleJob = async (path: string) => {
  const { job, shop, drawing: made } = jobFileOf(await readFile(path, 'utf8'), basename(path));
  const drawing = made ?? (await readFile(resolve(dirname(path), job.drawingName)));
  return { job: { ...job, drawing }, shop: shop === undefined ? undefined : resolve(dirname(path), shop) };
};

/** Throws a refusal where the file cannot be used. */
const takeShop = async (folder: string, path: string): Promise<void> => {
  const text = await readFile(path, 'utf8');
  const parsed = parseFile(shopSchema, text, basename(path));
  if (parsed.kind === 'bad') throw notValid(sentences(parsed.findings.map((f) => f.text)), parsed.findings);
  const words = parsed.value.dialect;
  const dialect = words === undefined || words === 'standard' ? undefined : await readFile(join(dirname(path), words), 'utf8');
  const record = { revision: 0, shop: parsed.given as Record<string, unknown>, dialect };
  mustBeShop(record);
  await writeWhole(shopFileIn(folder), `${JSON.stringify(record, null, 1)}\n`);
};

const isThere = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );
