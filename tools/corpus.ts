/** Compares every drawing of a folder with its truth.json: `npm run corpus -- DIR`. Exits 1 when one is wrong. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readDrawing } from '../src/drawing/read/read-drawing.ts';
import type { Verdict } from './corpus/compare.ts';
import { compared } from './corpus/compare.ts';
import type { Truth } from './corpus/truth.ts';
import { readTruths } from './corpus/truth.ts';

/** The verdict on one drawing; a file that is missing or a reader that throws is a wrong one, not a crash. */
export const verdictOn = (folder: string, truth: Truth): Verdict => {
  const file = join(folder, truth.path);
  if (!existsSync(file)) return { path: truth.path, wrong: ['the file is missing'], differs: [] };
  try {
    const drawing = readDrawing(readFileSync(file), truth.path, { join: 0.01, joinInDrawingUnits: true });
    return compared(drawing, truth);
  } catch (error) {
    return { path: truth.path, wrong: [`the reader threw: ${String(error)}`], differs: [] };
  }
};

export const verdictsOn = (folder: string): Verdict[] =>
  readTruths(readFileSync(join(folder, 'truth.json'), 'utf8')).map((truth) => verdictOn(folder, truth));

/** One line per drawing, and below it what is wrong and what merely differs. */
export const table = (verdicts: readonly Verdict[]): string => {
  const width = Math.max(0, ...verdicts.map((v) => v.path.length));
  const lines = verdicts.flatMap((v) => [
    `${v.path.padEnd(width)}  ${v.wrong.length > 0 ? 'WRONG' : v.differs.length > 0 ? 'flagged, differs' : 'right'}`,
    ...v.wrong.map((w) => `    wrong: ${w}`),
    ...v.differs.map((d) => `    differs: ${d}`),
  ]);
  const wrong = verdicts.filter((v) => v.wrong.length > 0).length;
  return [...lines, `${verdicts.length} drawings, ${verdicts.length - wrong} right or rightly flagged, ${wrong} wrong`].join('\n');
};

const main = (folder: string | undefined): number => {
  if (folder === undefined || !existsSync(join(folder, 'truth.json'))) {
    process.stderr.write('Give the folder that holds truth.json: npm run corpus -- DIR\n');
    return 2;
  }
  const verdicts = verdictsOn(folder);
  process.stdout.write(`${table(verdicts)}\n`);
  return verdicts.length > 0 && verdicts.every((v) => v.wrong.length === 0) ? 0 : 1;
};

if (process.argv[1] !== undefined && /corpus\.(js|ts)$/.test(process.argv[1])) process.exitCode = main(process.argv[2]);
