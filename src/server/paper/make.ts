/** Runs a job as it is saved and gives every file it is handed out as, by the name the address has for it. */
import type { Finding } from '../../finding/finding.ts';
import { readDialectFile, standardDialect } from '../../job/dialects.ts';
import { jobSchema } from '../../job/job.ts';
import { jobFiles } from '../../job/papers.ts';
import { parseValue } from '../../job/parse.ts';
import { type JobRun, type Ran, runJob } from '../../job/run.ts';
import { shopSchema } from '../../job/shop.ts';
import { nameOf } from './names.ts';

export type PaperFonts = Parameters<typeof jobFiles>[1]['fonts'];

/** All that a job's files are made of; plain data, since it goes to another thread. */
export interface PaperQuestion {
  readonly input: Readonly<Record<string, unknown>>;
  readonly drawing: Uint8Array;
  readonly drawingName: string;
  readonly shop: unknown;
  readonly dialect?: string;
  /** ISO 8601 */
  readonly day: string;
  /** Name of every file without its ending. */
  readonly stem: string;
}

export interface MadeFile {
  readonly fileName: string;
  readonly content: string | Uint8Array;
}

export type Made =
  /** `sentence` says what the answer is, also where it is why a file is missing. */
  | { readonly kind: 'made'; readonly files: Readonly<Record<string, MadeFile>>; readonly sentence: string }
  | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

export const makeFiles = async (question: PaperQuestion, fonts: PaperFonts): Promise<Made> => {
  const asked = runOf(question);
  if (asked.kind === 'bad') return asked;
  const ran = runJob(asked.run);
  const files = await jobFiles(ran, { ...asked.run, stem: question.stem, fonts });
  const named = Object.entries(files).map(([fileName, content]) => [nameOf(fileName, question.stem), { fileName, content }] as const);
  return { kind: 'made', files: Object.fromEntries(named), sentence: sentenceOf(ran) };
};

type Asked = { readonly kind: 'run'; readonly run: JobRun } | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

const runOf = ({ input, drawing, drawingName, shop, dialect, day }: PaperQuestion): Asked => {
  const job = parseValue(jobSchema, input, 'The job');
  if (job.kind === 'bad') return job;
  const parsed = parseValue(shopSchema, shop, 'The shop');
  if (parsed.kind === 'bad') return parsed;
  const words = dialect === undefined ? { kind: 'dialect' as const, dialect: standardDialect } : readDialectFile(dialect);
  if (words.kind === 'bad') return words;
  const { value, said } = job;
  return {
    kind: 'run',
    run: { job: value, said, drawing, drawingName, shop: parsed.value, dialect: words.dialect, day: value.date ?? day },
  };
};

const sentenceOf = ({ answer }: Ran): string =>
  answer.kind === 'answered'
    ? answer.facts.sentence
    : answer.kind === 'cannot'
      ? answer.sentence
      : answer.findings.map((f) => f.sentence).join(' ');
