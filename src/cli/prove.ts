/** `kerfwright prove`: a program, from here or elsewhere, against a drawing. */
import { basename, extname } from 'node:path';
import { programText } from '../job/files/file-kind.ts';
import { parseFile } from '../job/files/parse.ts';
import { setupSchema } from '../job/files/setup-file.ts';
import { proofJson, proofPicture, proofText } from '../job/handout/proof-report.ts';
import { proveAgain } from '../job/pipeline/prove-again.ts';
import { BadInput, readBytes, readText, writeFiles } from './files.ts';
import { type Out, stages, writtenLines } from './out.ts';

export interface ProveCommand {
  readonly drawing: string;
  readonly setup?: string;
  readonly units?: string | undefined;
  readonly out?: string;
  readonly json?: boolean;
}

/** Exit code: 0 proven, 1 not proven. */
export const prove = (program: string, options: ProveCommand, out: Out): number => {
  const stem = basename(program, extname(program));
  const setupPath = options.setup ?? program.replace(/\.[^./\\]*$/, '.setup.json');
  const setup = parseFile(setupSchema, readText(setupPath), basename(setupPath));
  if (setup.kind === 'bad') throw new BadInput(setup.findings);
  out.progress.tell(stages.proving, 0);
  const proven = proveAgain({
    program: programText(readBytes(program)),
    drawing: readBytes(options.drawing),
    drawingName: basename(options.drawing),
    setup: setup.value,
    units: options.units,
  });
  if (proven.kind === 'bad input') throw new BadInput(proven.findings);
  const written =
    options.out === undefined ? [] : writeFiles(options.out, { [`${stem}.proof.svg`]: proofPicture(proven.proof, proven.question) });
  if (options.json === true) out.print(JSON.stringify(proofJson(proven.proof, written), null, 2));
  else out.print([proofText(proven.proof), ...writtenLines(written)].join('\n\n'));
  return proven.proof.verdict === 'proven' ? 0 : 1;
};
