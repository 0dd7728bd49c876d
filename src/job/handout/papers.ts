/** Every file an answer is handed out as: program, set-up, pictures, papers. */

import { edgePicture } from '../../documents/part/edge-picture.ts';
import { type Fonts, paperPdf } from '../../documents/pdf/pdf.ts';
import { answerText as textOf } from '../../documents/sheet/answer-text.ts';
import { drawingPicture } from '../../drawing/picture/drawing-picture.ts';
import { proofPicture } from '../../proof/picture/proof-picture.ts';
import type { JobFacts } from '../../result/facts.ts';
import { proofQuestion, type SetupFile } from '../files/setup-file.ts';
import type { JobRun } from '../job-run.ts';
import type { Ran } from '../pipeline/pipeline.ts';
import { tellingOf } from '../reader-of-papers.ts';
import { asDrawn, scaledIn } from '../request/scale.ts';
import { papersOf } from './papers-of.ts';

export type Handout = JobRun & {
  /** Name of every file, without its ending. */
  readonly stem: string;
  readonly fonts: Fonts;
};

export const answerText = (facts: JobFacts, run: Pick<JobRun, 'job' | 'shop' | 'drawingName'>): string => textOf(facts, tellingOf(run));

/** The files by name. A job that could not be judged has none; one answered with no has no program to run. */
export const jobFiles = async (ran: Ran, handout: Handout): Promise<Readonly<Record<string, string | Uint8Array>>> => {
  const { answer, setup } = ran;
  if (answer.kind !== 'answered') return {};
  const { facts } = answer;
  const { stem } = handout;
  return {
    ...programFiles(facts, setup, stem),
    ...pictureFiles(ran, stem),
    ...(await papers(facts, handout)),
    [`${stem}.answer.txt`]: `${answerText(facts, handout)}\n`,
  };
};

/** Drawing, proof and cut faces as pictures, as far as there is anything to show. */
export const pictureFiles = ({ answer, setup, wanted, lines }: Ran, stem: string): Readonly<Record<string, string>> => {
  if (answer.kind !== 'answered') return {};
  const { facts } = answer;
  const { drawing, proof, program, plan, otherWays } = facts;
  return {
    [`${stem}.drawing.svg`]: drawingPicture({ ...drawing, findings: marked(facts) }),
    ...(setup === undefined || proof === undefined || wanted === undefined || plan === undefined
      ? {}
      : {
          [`${stem}.proof.svg`]: proofPicture(
            proof,
            proofQuestion(program?.text ?? '', setup, wanted, asDrawn(plan.block, scaledIn(setup)), lines),
          ),
        }),
    ...(otherWays === undefined ? {} : { [`${stem}.edges.svg`]: edgePicture(otherWays) }),
  };
};

/** What drawing, plan and proof found wrong, and what was noted of the drawing itself. */
const marked = ({ findings, drawing }: JobFacts): JobFacts['findings'] =>
  findings.filter((f) => f.severity !== 'note' || drawing.findings.includes(f));

/** A program that is not proven keeps a name that nobody loads by mistake. */
export const programFiles = (facts: JobFacts, setup: SetupFile | undefined, stem: string): Record<string, string> => {
  if (facts.program === undefined || setup === undefined) return {};
  const name = facts.answer === 'yes' ? stem : `${stem}.not-proven`;
  return { [`${name}.nc`]: facts.program.text, [`${name}.setup.json`]: `${JSON.stringify(setup, null, 2)}\n` };
};

const papers = async (facts: JobFacts, handout: Handout): Promise<Record<string, Uint8Array>> => {
  const set = papersOf(facts, handout).map(
    async ([name, paper]) => [`${handout.stem}.${name}.pdf`, await paperPdf(paper, handout.fonts, handout.day)] as const,
  );
  return Object.fromEntries(await Promise.all(set));
};
