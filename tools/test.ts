/** Runs every gate and every test, and closes with one line that counts them: 'N passed, N failed'. */
import { execFile, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';

const REPORT = 'out/test-report.json';

/** The gates run side by side: more threads in one would only do its work twice. */
const ALONE = ['--checkers', '1'];

/** The gates beside the tests; each counts as one test. */
const GATES: readonly (readonly [name: string, command: string, ...args: string[]])[] = [
  ['types of the whole', 'tsc', '-p', 'tsconfig.json', ...ALONE],
  ['types of the page', 'tsc', '-p', 'tsconfig.app.json', ...ALONE],
  ['types of the core, which knows neither Node nor browser', 'tsc', '-p', 'tsconfig.core.json', ...ALONE],
  ['style and lint', 'biome', 'check', '--error-on-warnings'],
  ['no dead code, no unused package', 'knip'],
];

const run = (command: string, args: readonly string[]): boolean => {
  const result = spawnSync(`node_modules/.bin/${command}`, args, { stdio: 'inherit', env: process.env });
  return result.status === 0;
};

/** All gates at once: none of them keeps both cores busy alone. What they say is printed whole, each after the other. */
const gates = await Promise.all(
  GATES.map(
    ([name, command, ...args]) =>
      new Promise<{ readonly name: string; readonly passed: boolean }>((done) => {
        execFile(`node_modules/.bin/${command}`, args, { maxBuffer: 1 << 26 }, (error, said, complained) => {
          process.stdout.write(`gate: ${name}\n${said}${complained}`);
          done({ name, passed: error === null });
        });
      }),
  ),
);

mkdirSync('out', { recursive: true });
rmSync(REPORT, { force: true });
const testsPassed = run('vitest', ['run', '--reporter=dot', '--reporter=json', `--outputFile.json=${REPORT}`, ...process.argv.slice(2)]);
const report = existsSync(REPORT)
  ? (JSON.parse(readFileSync(REPORT, 'utf8')) as { numPassedTests: number; numFailedTests: number; numPendingTests: number })
  : undefined;

const failedGates = gates.filter((g) => !g.passed);
for (const gate of failedGates) process.stdout.write(`gate failed: ${gate.name}\n`);
const passed = gates.length - failedGates.length + (report?.numPassedTests ?? 0);
/** A run that broke before it could count, or a file that failed to load, counts as one failure. */
const failed = failedGates.length + (report?.numFailedTests ?? 0) + (!testsPassed && (report?.numFailedTests ?? 0) === 0 ? 1 : 0);
const skipped = report?.numPendingTests ?? 0;
process.stdout.write(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`);
process.exitCode = failed === 0 ? 0 : 1;
