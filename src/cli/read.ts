/** `kerfwright read`: what a drawing holds, and what is wrong with it. */

import { basename, extname } from 'node:path';
import { type ReadAnswer, readJson, readOne, readText } from '../job/handout/read-report.ts';
import type { Finding } from '../text/finding.ts';
import { printPlain } from '../text/print/print.ts';
import { stated } from '../text/print/stated.ts';
import { BadInput, readBytes, writeFiles } from './files.ts';
import { type Out, stages, writtenLines } from './out.ts';
import { millimetres } from './typed-numbers.ts';

export interface ReadCommand {
  readonly units?: string | undefined;
  readonly join?: string | undefined;
  readonly fit?: string | undefined;
  readonly out?: string;
  readonly json?: boolean;
}

/** Exit code: 0 when every file could be read, 2 when one was refused. */
export const read = (files: readonly string[], options: ReadCommand, out: Out): number => {
  const asked = optionsOf(options);
  const answers: ReadAnswer[] = [];
  const missing: Finding[] = [];
  for (const [i, file] of files.entries()) {
    out.progress.tell(stages.reading(file), i / files.length);
    const found = bytesOf(file);
    if (found.kind === 'bytes') answers.push(readOne(found.bytes, file, asked));
    else missing.push(...found.findings);
  }
  if (answers.length === 0) throw new BadInput(missing);
  if (options.json === true) {
    const all = [...answers.map(readJson), ...missing.map((f) => ({ state: 'refused', findings: [stated(f)] }))];
    out.print(JSON.stringify(files.length === 1 ? all[0] : all, null, 2));
  } else out.print([...answers.map(readText), ...missing.map((f) => printPlain(f.text))].join('\n\n'));
  if (options.out !== undefined) {
    const pictures = Object.fromEntries(answers.map((a) => [`${basename(a.file, extname(a.file))}.svg`, a.picture]));
    const written = writeFiles(options.out, pictures);
    if (options.json !== true) out.print(`\n${writtenLines(written).join('')}`);
  }
  return missing.length > 0 || answers.some((a) => a.drawing.state === 'refused') ? 2 : 0;
};

type Bytes = { readonly kind: 'bytes'; readonly bytes: Uint8Array } | { readonly kind: 'missing'; readonly findings: readonly Finding[] };

/** One file that is not there does not keep the others from being read. */
const bytesOf = (file: string): Bytes => {
  try {
    return { kind: 'bytes', bytes: readBytes(file) };
  } catch (error) {
    if (error instanceof BadInput) return { kind: 'missing', findings: error.findings };
    throw error;
  }
};

const optionsOf = (options: ReadCommand): Parameters<typeof readOne>[2] => ({
  units: options.units,
  ...joinOf(options.join),
  fit: options.fit === undefined ? undefined : millimetres('fit', options.fit),
});

/** '0.01 units' joins in drawing units, anything else is a length. */
const joinOf = (text: string | undefined): Pick<Parameters<typeof readOne>[2], 'join' | 'joinInDrawingUnits'> => {
  if (text === undefined) return {};
  const own = /^\s*([\d.]+)\s*units?\s*$/.exec(text);
  return own === null ? { join: millimetres('join', text) } : { join: Number(own[1]), joinInDrawingUnits: true };
};
