/** The command line as it runs: what it prints on, and what its exit code is. */
import { printPlain } from '../text/print/print.ts';
import { BAD_INPUT, run } from './commands.ts';
import { reasonOf } from './files.ts';
import { troubles } from './help.ts';
import { progressOn } from './progress.ts';

// Whoever reads only the first lines and hangs up still gets the exit code of the answer.
process.stdout.on('error', (error: { code?: string }) => {
  if (error.code === 'EPIPE') return;
  process.stderr.write(`${printPlain(troubles.cannotPrint(reasonOf(error)))}\n`);
  process.exit(BAD_INPUT);
});
process.exitCode = await run(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  progress: progressOn(process.stderr),
  today: new Date().toISOString().slice(0, 10),
});
