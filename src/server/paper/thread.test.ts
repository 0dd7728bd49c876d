/** Papers from the built thread, and threads that break. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, describe, expect, it } from 'vitest';
import { builtInShop } from '../../job/built-in-shop.ts';
import { printPlain } from '../../text/print/print.ts';
import { SQUARE } from '../serve.fixture.ts';
import type { PaperQuestion } from './make.ts';
import { nameOf, plainStem, typeOf } from './names.ts';
import { papersInThread } from './thread.ts';

/** Within the checkout, where the built file finds the packages it needs. */
mkdirSync('out', { recursive: true });
const folder = mkdtempSync(join('out', 'thread-'));
const elsewhere = mkdtempSync(join(tmpdir(), 'kerfwright-thread-'));
afterAll(() => {
  for (const path of [folder, elsewhere]) rmSync(path, { recursive: true, force: true });
});

const question = (input: object): PaperQuestion => ({
  input: { drawing: 'square.svg', ...input },
  drawing: new TextEncoder().encode(SQUARE),
  drawingName: 'square.svg',
  shop: builtInShop,
  day: '2026-11-25',
  stem: 'square',
});

const script = (name: string, text: string): string => {
  const path = join(elsewhere, name);
  writeFileSync(path, text);
  return path;
};

describe('papers', () => {
  it('come from a thread of their own, while this one goes on', async () => {
    await build({
      configFile: false,
      logLevel: 'error',
      build: { ssr: 'src/server/paper/paper-worker.ts', outDir: folder, rolldownOptions: { output: { entryFileNames: 'worker.js' } } },
    });
    const papers = papersInThread(join(process.cwd(), folder, 'worker.js'));
    let ticks = 0;
    const ticking = setInterval(() => ticks++, 5);
    const [made, bad] = await Promise.all([papers.make(question({})), papers.make(question({ height: -1 }))]);
    clearInterval(ticking);
    await papers.close();
    if (made.kind !== 'made') throw new Error(made.kind);
    expect(Object.keys(made.files)).toEqual(
      expect.arrayContaining(['program', 'setup', 'set-up-sheet', 'quotation', 'drawing-picture', 'answer']),
    );
    expect(printPlain(made.sentence)).toMatch(/^Yes\. /);
    expect(made.files['program']).toMatchObject({ fileName: 'square.nc', content: expect.stringContaining('G41') });
    const pdf = made.files['quotation']?.content as Uint8Array;
    expect(Buffer.from(pdf.slice(0, 5)).toString()).toBe('%PDF-');
    expect(bad).toMatchObject({ kind: 'bad', findings: [{ place: { path: 'height' } }] });
    expect(ticks).toBeGreaterThan(10);
  });

  it('that break the thread fail alone, and the next question gets a new thread', async () => {
    const path = script(
      'breaks.mjs',
      `import { parentPort } from 'node:worker_threads';
       parentPort.on('message', ({ number, question }) => {
         if (question.stem === 'exit') process.exit(3);
         if (question.stem === 'throw') throw new Error('out of memory');
         parentPort.postMessage(question.stem === 'fail' ? { number, failed: 'Error: no\\n at x' } : { number, made: { kind: 'made', files: {}, sentence: 'Yes.' } });
       });`,
    );
    const papers = papersInThread(path);
    const ask = (stem: string) => papers.make({ ...question({}), stem });
    await expect(ask('exit')).rejects.toMatchObject({ status: 500, answer: { error: 'papers-failed' } });
    await expect(ask('throw')).rejects.toThrow('out of memory');
    await expect(ask('fail')).rejects.toThrow('a fault in the program, not in your job. (Error: no)');
    expect(await ask('good')).toMatchObject({ kind: 'made' });
    await papers.close();
  });

  it('that are too many at once are refused, and those that wait when the server stops are told', async () => {
    const papers = papersInThread(
      script('silent.mjs', `import { parentPort } from 'node:worker_threads'; parentPort.on('message', () => {});`),
    );
    const waiting = Array.from({ length: 30 }, () => papers.make(question({})).catch((e: Error) => e.message));
    await expect(papers.make(question({}))).rejects.toMatchObject({ status: 503 });
    await papers.close();
    for (const told of await Promise.all(waiting)) expect(told).toContain('the server stops');
  });
});

describe('names of files', () => {
  it('in an address come from the ending, in a header they are plain', () => {
    const names = ['.nc', '.not-proven.nc', '.setup.json', '.proof.svg', '.inspection-sheet.pdf', '.hole-table.csv'].map((e) =>
      nameOf(`a.b${e}`, 'a.b'),
    );
    expect(names).toEqual(['program', 'program', 'setup', 'proof-picture', 'inspection-sheet', 'hole-table-csv']);
    expect(['Prüf "x"\r\n.1', '../..', 'plate_7'].map(plainStem)).toEqual(['Pru-f-x-1', 'job', 'plate_7']);
    expect([typeOf('a.nc'), typeOf('a.pdf')]).toEqual(['text/plain; charset=utf-8', 'application/pdf']);
  });
});
