/** Every file an answer is handed out as: program, set-up, pictures, papers. */

import { paperText } from '../../documents/paper-text.ts';
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
    [`${stem}.drawing.svg`]: drawingPicture({ ...facts.drawing, findings: marked(facts) }),
    ...(setup === undefined || facts.proof === undefined || ran.wanted === undefined || facts.plan === undefined
      ? {}
      : {
          [`${stem}.proof.svg`]: proofPicture(
            facts.proof,
            proofQuestion(facts.program?.text ?? '', setup, ran.wanted, asDrawn(facts.plan.block, scaledIn(setup)), ran.lines),
          ),
        }),
    ...(facts.otherWays === undefined ? {} : { [`${stem}.edges.svg`]: edgePicture(facts.otherWays) }),
    ...(await papers(facts, handout)),
    [`${stem}.answer.txt`]: `${answerText(facts, handout)}\n`,
  };
};

/** What drawing, plan and proof found wrong, and what was noted of the drawing itself. */
const marked = ({ findings, drawing }: JobFacts): JobFacts['findings'] =>
  findings.filter((f) => f.severity !== 'note' || drawing.findings.includes(f));

/** The same handout with the papers as text: what the examples keep, since PDFs are poor to compare. */
export const goldenFiles = async (ran: Ran, handout: Handout): Promise<Readonly<Record<string, string>>> => {
  const files = await jobFiles(ran, handout);
  const texts = Object.entries(files).filter((entry): entry is [string, string] => typeof entry[1] === 'string');
  if (ran.answer.kind !== 'answered') return Object.fromEntries(texts);
  const { facts } = ran.answer;
  const papers = papersOf(facts, handout).map(([name, paper]) => [`${handout.stem}.${name}.txt`, paperText(paper)]);
  return Object.fromEntries([...texts, ...papers]);
};

/** A program that is not proven keeps a name that nobody loads by mistake. */
const programFiles = (facts: JobFacts, setup: SetupFile | undefined, stem: string): Record<string, string> => {
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
