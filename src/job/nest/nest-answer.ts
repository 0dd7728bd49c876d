/** What the command `nest` needs of the core. */
import { nestRefusedText, nestText as textOf } from '../../documents/sheet/nest-text.ts';
import { printerIn } from '../../documents/text.ts';
import type { Reader } from '../../text/reader.ts';
import { figure, type Json, statedFindings } from '../handout/json-parts.ts';
import type { NestAnswer } from './nest-run.ts';

export { nestFiles } from './nest-files.ts';
export { type NestAnswer, runNest } from './nest-run.ts';

type Judged = Exclude<NestAnswer, { kind: 'bad input' }>;

export const nestText = (answer: Judged, reader: Reader): string => {
  const printer = printerIn(reader);
  return answer.kind === 'laid' ? textOf(answer.facts, printer) : nestRefusedText(answer.findings, printer);
};

/** Lengths in mm, masses in kg, money in minor units; `files` are the paths of what was written. */
export const nestJson = (answer: Judged, files: readonly string[]): Json => {
  if (answer.kind === 'refused') return { answer: 'no', findings: statedFindings(answer.findings) };
  const { facts } = answer;
  const { nest, stack } = facts;
  return {
    answer: nest.left.length === 0 ? 'yes' : 'no',
    name: facts.name,
    manner: nest.manner,
    placed: nest.placed.map((p, i) => ({ number: i + 1, ...p })),
    left: nest.left,
    yield: nest.yield,
    bound: nest.bound,
    used: nest.used,
    stopped: nest.stopped,
    pieces: facts.rows.map((r) => ({
      piece: r.piece,
      laid: r.laid,
      left: r.left,
      mass: figure(r.mass),
      metal: r.share === undefined ? undefined : figure(r.share),
    })),
    metal: {
      plate: figure(facts.plateMass),
      pieces: figure(facts.piecesMass),
      scrap: figure(facts.scrapMass),
      price: facts.platePrice === undefined ? undefined : figure(facts.platePrice),
      currency: facts.platePrice === undefined ? undefined : facts.currency,
      suppliedBy: facts.suppliedBy,
    },
    stack: { sheets: stack.sheets, most: stack.most, height: figure(stack.height), gap: figure(stack.gap) },
    findings: statedFindings(facts.findings),
    files,
  };
};
