/** Every file an answer is handed out as: program, set-up, pictures, papers. */

import { edgePicture } from '../../documents/part/edge-picture.ts';
import { type Fonts, paperPdf } from '../../documents/pdf/pdf.ts';
import { answerText as textOf } from '../../documents/sheet/answer-text.ts';
import { drawingPicture } from '../../drawing/picture/drawing-picture.ts';
import { proofPicture } from '../../proof/picture/proof-picture.ts';
import { type JobFacts, plannedOf, programOf } from '../../result/facts.ts';
import type { Reader } from '../../text/reader.ts';
import type { JobRun } from '../job-run.ts';
import type { Answer, ProvenProgram } from '../pipeline/answer.ts';
import { readerOfPapers } from '../reader-of-papers.ts';
import { papersOf } from './papers-of.ts';

export type Handout = JobRun & {
  /** Name of every file, without its ending. */
  readonly stem: string;
  readonly fonts: Fonts;
};

export const answerText = (facts: JobFacts, run: Pick<JobRun, 'job' | 'shop'>): string => textOf(facts, readerOfPapers(run));

/** The files by name. A job that could not be judged has none; one answered with no has no program to run. */
export const jobFiles = async (answer: Answer, handout: Handout): Promise<Readonly<Record<string, string | Uint8Array>>> => {
  if (answer.kind !== 'answered') return {};
  const { facts, proven } = answer;
  const { stem } = handout;
  return {
    ...programFiles(facts, proven, stem),
    ...pictureFiles(answer, stem, readerOfPapers(handout)),
    ...(await papers(facts, handout)),
    [`${stem}.answer.txt`]: `${answerText(facts, handout)}\n`,
  };
};

/** Drawing, proof and cut faces as pictures, as far as there is anything to show. */
export const pictureFiles = (answer: Answer, stem: string, reader: Reader): Readonly<Record<string, string>> => {
  if (answer.kind !== 'answered') return {};
  const { facts, proven } = answer;
  const otherWays = plannedOf(facts)?.otherWays;
  const pictures = {
    [`${stem}.drawing.svg`]: drawingPicture({ ...facts.drawing, findings: marked(facts) }, '', reader),
    ...proofFiles(facts, proven, stem, reader),
  };
  return otherWays === undefined ? pictures : { ...pictures, [`${stem}.edges.svg`]: edgePicture(otherWays, reader) };
};

/** What drawing, plan and proof found wrong, and what was noted of the drawing itself. */
const marked = ({ findings, drawing }: JobFacts): JobFacts['findings'] =>
  findings.filter((f) => f.severity !== 'note' || drawing.findings.includes(f));

/** A program that is not proven keeps a name that nobody loads by mistake. */
export const programFiles = ({ outcome }: JobFacts, proven: ProvenProgram | undefined, stem: string): Record<string, string> => {
  if (proven === undefined) return {};
  const name = outcome.answer === 'yes' ? stem : `${stem}.not-proven`;
  return { [`${name}.nc`]: proven.question.program, [`${name}.setup.json`]: `${JSON.stringify(proven.setup, null, 2)}\n` };
};

const proofFiles = (facts: JobFacts, proven: ProvenProgram | undefined, stem: string, reader: Reader): Record<string, string> => {
  const program = programOf(facts);
  return proven === undefined || program === undefined
    ? {}
    : { [`${stem}.proof.svg`]: proofPicture(program.proof, proven.question, reader) };
};

const papers = async (facts: JobFacts, handout: Handout): Promise<Record<string, Uint8Array>> => {
  const set = papersOf(facts, handout).map(
    async ([name, paper]) => [`${handout.stem}.${name}.pdf`, await paperPdf(paper, handout.fonts, handout.day)] as const,
  );
  return Object.fromEntries(await Promise.all(set));
};
