/** A job asked for as plain data, as page and server hold it, made into a run; what cannot be used comes back as findings with its field. */
import type { Finding } from '../../text/finding.ts';
import { phrases, say } from '../../text/say.ts';
import { builtInShop } from '../built-in-shop.ts';
import { readDialectFile, standardDialect } from '../files/dialects.ts';
import { parseValue } from '../files/parse.ts';
import { jobSchema } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { shopSchema } from '../shop.ts';
import { type ShapeMeans, withShape } from './shape-drawing.ts';

/** Everything of a run but what the caller remembers and tells. */
export interface AskedJob {
  /** Inputs as typed; `jobSchema` judges them. */
  readonly input: Readonly<Record<string, unknown>>;
  readonly drawing: Uint8Array;
  readonly drawingName: string;
  /** The shop file as data; the house's own when left out. */
  readonly shop?: unknown;
  /** Text of a dialect file; the standard words when left out. */
  readonly dialect?: string | undefined;
  /** The day where the job names none, ISO 8601. */
  readonly day: string;
}

export type AskedRun = { readonly kind: 'run'; readonly run: JobRun } | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

const called = phrases('data', { job: say`The job`, shop: say`The shop` });

/** `means` is what lettering needs; it is asked for only where the job is by numbers. */
export const askedRun = (
  { input, drawing, drawingName, shop, dialect, day }: AskedJob,
  more: Pick<JobRun, 'memory' | 'progress'> = {},
  means: () => ShapeMeans = () => ({}),
): AskedRun => {
  const job = parseValue(jobSchema, input, called.job);
  if (job.kind === 'bad') return job;
  const parsed =
    shop === undefined ? { kind: 'parsed' as const, value: builtInShop, notes: [] } : parseValue(shopSchema, shop, called.shop);
  if (parsed.kind === 'bad') return parsed;
  const words = dialect === undefined ? { kind: 'dialect' as const, dialect: standardDialect } : readDialectFile(dialect);
  if (words.kind === 'bad') return words;
  const { value, said } = job;
  const notes = [...job.notes, ...parsed.notes];
  const run = {
    job: value,
    said,
    notes,
    drawing,
    drawingName,
    shop: parsed.value,
    dialect: words.dialect,
    day: value.date ?? day,
    ...more,
  };
  return withShape(run, means);
};
