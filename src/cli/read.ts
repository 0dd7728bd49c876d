/** `kerfwright read`: what a drawing holds, and what is wrong with it. */
import { basename, extname } from 'node:path';
import { type ReadAnswer, readJson, readOne, readText } from '../job/reading.ts';
import { readBytes, writeFiles } from './files.ts';
import { millimetres } from './inputs.ts';
import type { Out } from './out.ts';

export interface ReadCommand {
  readonly units?: string;
  readonly join?: string;
  readonly fit?: string;
  readonly out?: string;
  readonly json?: boolean;
}

/** Exit code: 0 when every file could be read, 2 when one was refused. */
export const read = (files: readonly string[], options: ReadCommand, out: Out): number => {
  const answers = files.map((file, i) => {
    out.progress.tell(`reading ${file}`, i / files.length);
    return readFile(file, options);
  });
  if (options.json === true)
    out.print(JSON.stringify(files.length === 1 ? readJson(answers[0] as ReadAnswer) : answers.map(readJson), null, 2));
  else out.print(answers.map(readText).join('\n\n'));
  if (options.out !== undefined) {
    const pictures = Object.fromEntries(answers.map((a) => [`${basename(a.file, extname(a.file))}.svg`, a.picture]));
    const written = writeFiles(options.out, pictures);
    if (options.json !== true) out.print(`\nWritten\n${written.map((w) => `  ${w}`).join('\n')}`);
  }
  return answers.some((a) => a.drawing.state === 'refused') ? 2 : 0;
};

const readFile = (file: string, options: ReadCommand): ReadAnswer =>
  readOne(readBytes(file), file, {
    ...(options.units === undefined ? {} : { units: options.units }),
    ...(options.join === undefined ? {} : joinOf(options.join)),
    ...(options.fit === undefined ? {} : { fit: millimetres('fit', options.fit) }),
  });

/** '0.01 units' joins in drawing units, anything else is a length. */
const joinOf = (text: string): { readonly join: number; readonly joinInDrawingUnits?: boolean } => {
  const own = /^\s*([\d.]+)\s*units?\s*$/.exec(text);
  return own === null ? { join: millimetres('join', text) } : { join: Number(own[1]), joinInDrawingUnits: true };
};
