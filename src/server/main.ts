#!/usr/bin/env node
/** Starts the server of the worksheet, prints its address, and stops it once every request that was begun is answered. */
import { existsSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { name, term } from '../text/part.ts';
import { printPlain } from '../text/print/print.ts';
import { only, phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
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

const tell = (line: Text): void => void process.stdout.write(`${printPlain(line)}\n`);
const complain = (line: string): void => void process.stderr.write(`${line}\n`);

const words = phrases('server-start', {
  runsAlready: (address: string) => say`Kerfwright already runs on this folder: ${{ address: name(address) }}`,
  runs: (address: string) => say`Kerfwright: ${{ address: name(address) }}`,
  kept: (folder: string) => say`Jobs and shop are kept in ${{ folder: name(folder) }}. ${{ keys: term('Ctrl+C') }} stops the server.`,
  cannotStart: (reason: Text) => say`The server cannot start: ${{ reason }}`,
});

const begin = async ({ folder, host, port, shopFile }: Start): Promise<void> => {
  const other = await runningOn(folder);
  if (other !== undefined) return tell(words.runsAlready(other));
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
  tell(words.runs(address));
  tell(words.kept(folder));
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

const reasons: Readonly<Record<string, Text>> = phrases('server-start-reason', {
  EADDRINUSE: say`another program has that port already; ask for another one with --port.`,
  EADDRNOTAVAIL: say`this computer does not have that address.`,
  ENOENT: say`the folder, or a file it is to begin with, cannot be made or found; see --folder and --shop.`,
  EACCES: say`the folder or the port may not be used; see --folder and --port.`,
  ENOTDIR: say`what should be a folder is a file; see --folder.`,
  EEXIST: say`what should be a folder is a file; see --folder.`,
  EROFS: say`the folder is on a disk that is read-only; see --folder.`,
  ENOSPC: say`the disk is full.`,
});

const reasonOf = (error: unknown): Text =>
  reasons[(error as { code?: string }).code ?? ''] ?? only(name(error instanceof Error ? error.message : String(error)));

const asked = startFrom(process.argv.slice(2), process.env, homedir());
if (asked.kind === 'start')
  await begin(asked.start).catch((error: unknown) => {
    complain(printPlain(words.cannotStart(reasonOf(error))));
    process.exitCode = BAD_INPUT;
  });
else if (asked.kind === 'help') asked.lines.forEach(tell);
else {
  for (const line of asked.lines) complain(printPlain(line));
  process.exitCode = BAD_INPUT;
}
