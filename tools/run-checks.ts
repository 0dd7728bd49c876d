/** `npm run checks`: every check row against our code, what each value rests on, and what nothing rests on. */
import { OBTAINED } from '../src/quantity/check.ts';
import { collectChecks, judgeChecks } from './checks.ts';
import { NOT_MODELLED } from './not-modelled.ts';

const print = (line: string): void => void process.stdout.write(`${line}\n`);

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
for (const { kind, sentence } of problems) print(`${kind}: ${sentence}`);
print(`${problems.length} faults`);
process.exitCode = problems.length === 0 ? 0 : 1;
