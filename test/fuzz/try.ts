/** What every damaged input must come to: a result or a named finding, in bounded time, with no NaN anywhere. */

import { readDrawing } from '../../src/drawing/read/read-drawing.ts';
import { parseFile } from '../../src/job/files/parse.ts';
import { standardDialect } from '../../src/nc/dialect/dialect.ts';
import { parseDialect } from '../../src/nc/dialect/parse.ts';
import { readProgram } from '../../src/nc/read/read.ts';
import type { Finding } from '../../src/text/finding.ts';
import { printPlain } from '../../src/text/print/print.ts';
import { drawingCases } from './drawings.ts';
import { fileCases, SCHEMAS } from './files.ts';
import { programCases } from './programs.ts';

export interface Fault {
  readonly name: string;
  readonly what: string;
}

/** Longer than this for one small damaged file is as good as a hang, ms. */
const TOO_LONG = 5000;

/** Runs `act` on every case and gives what went wrong: nothing, when all is well. */
const faultsOf = <C extends { readonly name: string }>(cases: Iterable<C>, act: (given: C) => unknown): readonly Fault[] => {
  const faults: Fault[] = [];
  for (const given of cases) {
    const start = performance.now();
    try {
      const bad = notANumber(act(given));
      if (bad !== undefined) faults.push({ name: given.name, what: `NaN at ${bad}` });
    } catch (error) {
      faults.push({ name: given.name, what: error instanceof Error ? (error.stack ?? error.message).slice(0, 600) : String(error) });
    }
    const took = performance.now() - start;
    if (took > TOO_LONG) faults.push({ name: given.name, what: `took ${Math.round(took)} ms` });
  }
  return faults;
};

export const drawingFaults = (
  count: number,
  seed: number,
  corpus: readonly { readonly name: string; readonly bytes: Uint8Array }[] = [],
): readonly Fault[] =>
  faultsOf(drawingCases(count, seed, corpus), ({ bytes, name }) => {
    const drawing = readDrawing(bytes, name, {});
    if (drawing.state !== 'complete') mustSay(drawing.findings);
    return drawing;
  });

export const programFaults = (count: number, seed: number): readonly Fault[] =>
  faultsOf(programCases(count, seed), ({ text, dialect, registers }) => {
    const read = readProgram(text, dialect ?? standardDialect, registers ?? new Map([[1, 0.2]]));
    if (read.state === 'refused') mustSay(read.findings);
    return read;
  });

export const fileFaults = (count: number, seed: number): readonly Fault[] =>
  faultsOf(fileCases(count, seed), ({ schema, text, name }) => {
    const parsed = parseFile(SCHEMAS[schema], text, name);
    if (parsed.kind === 'bad') return mustSay(parsed.findings);
    if (schema !== 'dialect') return parsed.value;
    const dialect = parseDialect(parsed.value);
    return dialect.kind === 'bad' ? mustSay(dialect.findings) : dialect;
  });

/** A refusal without a finding would leave its user alone. */
const mustSay = (findings: readonly Finding[]): readonly Finding[] => {
  if (findings.length === 0 || findings.some((f) => f.code === '' || printPlain(f.text) === ''))
    throw new Error('refused without saying why');
  return findings;
};

/** Where in a result the first NaN or infinity stands, as a path. */
const notANumber = (value: unknown): string | undefined => {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : '';
  if (typeof value !== 'object' || value === null) return undefined;
  const entries: Iterable<readonly [unknown, unknown]> = value instanceof Map ? value.entries() : Object.entries(value);
  for (const [key, inner] of entries) {
    const bad = notANumber(inner);
    if (bad !== undefined) return `.${String(key)}${bad}`;
  }
  return undefined;
};
