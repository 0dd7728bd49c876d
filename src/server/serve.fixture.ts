/** A server for tests: a folder of its own, a small page, papers that are made at once, a clock that stands. */

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { say } from '../text/say.ts';
import type { JobRecord } from './message/job-record.ts';
import type { PaperQuestion } from './paper/make.ts';
import type { Papers } from './paper/thread.ts';
import type { Server } from './routes/room.ts';
import { type ServeOptions, serve } from './serve.ts';

export const EXAMPLE = 'examples/die-plate/die-plate.job.json';
export const SQUARE =
  '<svg xmlns="http://www.w3.org/2000/svg" width="30mm" height="30mm" viewBox="0 0 30 30"><path d="M5 5H25V25H5Z" fill="none" stroke="black"/></svg>';

/** A file of the page that lies packed beside itself too. */
export const LARGE = 'export const numbers = [0, 0, 0];';

export interface TestServer {
  readonly server: Server;
  readonly folder: string;
  /** Every question that was asked for papers. */
  readonly asked: readonly PaperQuestion[];
  readonly told: readonly string[];
}

const opened: (() => Promise<void>)[] = [];

export const testServer = async (options: Partial<ServeOptions> = {}): Promise<TestServer> => {
  const base = mkdtempSync(join(tmpdir(), 'kerfwright-server-'));
  const appFolder = join(base, 'app');
  mkdirSync(join(appFolder, 'assets'), { recursive: true });
  writeFileSync(join(appFolder, 'index.html'), '<!doctype html><title>the sheet</title>');
  writeFileSync(join(appFolder, 'assets', 'index-abc123.js'), 'export {};');
  writeFileSync(join(appFolder, 'assets', 'large-abc123.js'), LARGE);
  writeFileSync(join(appFolder, 'assets', 'large-abc123.js.gz'), gzipSync(LARGE));
  const folder = join(base, 'kept');
  const asked: PaperQuestion[] = [];
  const told: string[] = [];
  const papers: Papers = {
    make: async (question) => {
      asked.push(question);
      const files = {
        program: { fileName: `${question.stem}.nc`, content: 'M02\n' },
        quotation: { fileName: `${question.stem}.quotation.pdf`, content: new Uint8Array([37, 80, 68, 70]) },
      };
      return { kind: 'made', files, sentence: say('test.answer')`Yes.` };
    },
    close: async () => undefined,
  };
  const clock = (): Date => new Date('2026-11-25T08:00:00Z');
  const server = await serve({ folder, appFolder, host: '127.0.0.1', papers, clock, tell: (line) => told.push(line), ...options });
  opened.push(async () => {
    await server.close();
    rmSync(base, { recursive: true, force: true });
  });
  return { server, folder, asked, told };
};

/** For `afterAll`. */
export const closeAll = async (): Promise<void> => {
  for (const close of opened.splice(0)) await close();
};

export interface Upload {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** Files as the form of a browser sends them. */
export const form = (...files: readonly Upload[]): { payload: Buffer; headers: Record<string, string> } => {
  const boundary = 'a-boundary-of-the-tests';
  const parts = files.flatMap(({ name, content }) => [
    Buffer.from(
      `--${boundary}\r\ncontent-disposition: form-data; name="files"; filename="${name}"\r\ncontent-type: application/octet-stream\r\n\r\n`,
    ),
    Buffer.from(content),
    Buffer.from('\r\n'),
  ]);
  return {
    payload: Buffer.concat([...parts, Buffer.from(`--${boundary}--\r\n`)]),
    headers: { 'content-type': `multipart/form-data; boundary=${boundary}` },
  };
};

/** Brings in a square and gives its record. */
export const square = async (server: Server): Promise<JobRecord> => {
  const answer = await server.inject({ method: 'POST', url: '/api/jobs', ...form({ name: 'square.svg', content: SQUARE }) });
  return (answer.json() as JobRecord[])[0] as JobRecord;
};
