/** Whether a server already keeps this folder: two of them would not see each other's savings in time. */
import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { healthSchema, paths } from '../message/answers.ts';
import { writeWhole } from './whole-file.ts';

const fileIn = (folder: string): string => join(folder, 'running.json');
/** ms */
const PATIENCE = 2000;

/** The address of a server that answers and keeps this very folder; what a crash left behind answers nothing. */
export const runningOn = async (folder: string): Promise<string | undefined> => {
  try {
    const { address } = JSON.parse(await readFile(fileIn(folder), 'utf8')) as { address: string };
    const answer = await fetch(new URL(paths.health, address), { signal: AbortSignal.timeout(PATIENCE) });
    const health = healthSchema.safeParse(await answer.json());
    return health.success && health.data.folder === folder ? address : undefined;
  } catch {
    return undefined;
  }
};

export const sayRunning = (folder: string, address: string): Promise<void> =>
  writeWhole(fileIn(folder), `${JSON.stringify({ address })}\n`);

export const sayStopped = (folder: string): Promise<void> => rm(fileIn(folder), { force: true });
