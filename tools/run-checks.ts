/** `npm run checks`: every check row against our code, what each value rests on, and what nothing rests on; with --mutate it tries the latter. */
import { OBTAINED } from '../src/quantity/check.ts';
import { fallenRows, isPinned } from './altered.ts';
import { collectChecks, judgeChecks } from './checks.ts';
import { CONSTANTS } from './constants.ts';
import { NOT_MODELLED } from './not-modelled.ts';
import { sourceFiles } from './source-files.ts';

const print = (line: string): void => void process.stdout.write(`${line}\n`);

const summary = async (): Promise<number> => {
  const collection = await collectChecks();
  const problems = judgeChecks(collection, 0);
  const { rows } = collection;
  print(`${rows.length} rows, all of code that the product runs:`);
  for (const how of OBTAINED) {
    const of = rows.filter((row) => row.how === how);
    const ranges = of.filter((row) => row.limits !== undefined).length;
    const wider = of.filter((row) => row.wider !== undefined).length;
    print(`  ${String(of.length).padStart(4)} ${how.padEnd(17)} ${ranges} by limits, ${wider} with a tolerance of their own`);
  }
  print('Not modelled, held by no row:');
  for (const { what, source } of NOT_MODELLED) print(`  ${what} [${source}]`);
  print('Nothing outside pins this (fewer than two rows fall, or none that somebody printed, when it is a third off):');
  for (const { law, name, value } of CONSTANTS.filter((c) => c.unpinned)) print(`  ${law}: ${name}, ${value}`);
  for (const { kind, sentence } of problems) print(`${kind}: ${sentence}`);
  return problems.length;
};

/** How many constants are told wrongly to be pinned or not. */
const mutate = async (): Promise<number> => {
  const fallen = await fallenRows(CONSTANTS, sourceFiles('.', ['src']));
  for (const { constant, factor, rows } of fallen) {
    print(`${constant.law}: ${constant.name}, ${constant.value} × ${factor.toFixed(2)}: ${rows.length} fall`);
    for (const { id, how, question } of rows) print(`    ${id} (${how}) ${question}`);
  }
  const wrong = CONSTANTS.filter((c) => isPinned(c, fallen) === (c.unpinned === true));
  for (const { law, name, unpinned } of wrong)
    print(`${law}: ${name} is ${unpinned ? 'pinned, and told not to be' : 'not pinned from outside, and not told'}`);
  return wrong.length;
};

const faults = (await summary()) + (process.argv.includes('--mutate') ? await mutate() : 0);
print(`${faults} faults`);
process.exitCode = faults === 0 ? 0 : 1;
