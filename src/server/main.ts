#!/usr/bin/env node
/** Starts the server of the worksheet, prints its address, and stops it once every request that was begun is answered. */
import { existsSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Start, startFrom } from './arguments.ts';
import { runningOn, sayRunning, sayStopped } from './keep/running.ts';
import { listen } from './listen.ts';
import { papersInThread } from './paper/thread.ts';
import { serve } from './serve.ts';

const BAD_INPUT = 2;
/** ms a request that was begun is waited for. */
const PATIENCE = 10_000;

/** The built files lie beside this one; the examples beside the package's own description, further up. */
const here = dirname(fileURLToPath(import.meta.url));

const packageRoot = (folder: string): string | undefined =>
  existsSync(join(folder, 'package.json')) ? folder : dirname(folder) === folder ? undefined : packageRoot(dirname(folder));

const say = (line: string): void => void process.stdout.write(`${line}\n`);
const complain = (line: string): void => void process.stderr.write(`${line}\n`);

const begin = async ({ folder, host, port, shopFile }: Start): Promise<void> => {
  const other = await runningOn(folder);
  if (other !== undefined) return say(`Kerfwright already runs on this folder: ${other}`);
  const root = packageRoot(here);
  const example = root === undefined ? undefined : join(root, 'examples/die-plate/die-plate.job.json');
  const server = await serve({
    folder,
    host,
    appFolder: join(here, '../app'),
    papers: papersInThread(join(here, 'paper-worker.js')),
    clock: () => new Date(),
    version: root === undefined ? 'unknown' : (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }).version,
    tell: complain,
    example: example !== undefined && existsSync(example) ? example : undefined,
    shopFile,
  });
  const address = await listen(server, host, port);
  await sayRunning(folder, address);
  say(`Kerfwright: ${address}`);
  say(`Jobs and shop are kept in ${folder}. Ctrl+C stops the server.`);
  stopOnSignals(async () => {
    await server.close();
    await sayStopped(folder);
  });
};

const stopOnSignals = (stop: () => Promise<void>): void => {
  let stopping = false;
  for (const signal of ['SIGINT', 'SIGTERM'] as const)
    process.on(signal, () => {
      if (stopping) process.exit(1);
      stopping = true;
      setTimeout(() => process.exit(1), PATIENCE).unref();
      stop().then(
        () => process.exit(0),
        () => process.exit(1),
      );
    });
};

const REASONS: Readonly<Record<string, string>> = {
  EADDRINUSE: 'another program has that port already; ask for another one with --port.',
  EADDRNOTAVAIL: 'this computer does not have that address.',
  ENOENT: 'the folder, or a file it is to begin with, cannot be made or found; see --folder and --shop.',
  EACCES: 'the folder or the port may not be used; see --folder and --port.',
  ENOTDIR: 'what should be a folder is a file; see --folder.',
  EEXIST: 'what should be a folder is a file; see --folder.',
  EROFS: 'the folder is on a disk that is read-only; see --folder.',
  ENOSPC: 'the disk is full.',
};

const reasonOf = (error: unknown): string =>
  REASONS[(error as { code?: string }).code ?? ''] ?? (error instanceof Error ? error.message : String(error));

const asked = startFrom(process.argv.slice(2), process.env, homedir());
if (asked.kind === 'start')
  await begin(asked.start).catch((error: unknown) => {
    complain(`The server cannot start: ${reasonOf(error)}`);
    process.exitCode = BAD_INPUT;
  });
else if (asked.kind === 'help') say(asked.sentence);
else {
  complain(asked.sentence);
  process.exitCode = BAD_INPUT;
}
