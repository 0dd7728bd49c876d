/** What the page asks, made into the run of a job; bad inputs come back as findings with their field. */

import type { Finding } from '../../finding/finding.ts';
import { readDialectFile, standardDialect } from '../../job/dialects.ts';
import { houseShop } from '../../job/house-shop.ts';
import { jobSchema } from '../../job/job.ts';
import type { Memory } from '../../job/memory.ts';
import { parseValue } from '../../job/parse.ts';
import type { JobRun } from '../../job/run.ts';
import { withShape } from '../../job/shape-drawing.ts';
import { shopSchema } from '../../job/shop.ts';
import type { DrawingFile, Question } from './job-worker.ts';

export type Asked = { readonly kind: 'run'; readonly run: JobRun } | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

export const runOf = (question: Question, drawing: DrawingFile, memory: Memory, progress: JobRun['progress']): Asked => {
  const job = parseValue(jobSchema, question.input, 'The job');
  if (job.kind === 'bad') return job;
  const shop =
    question.shop === undefined ? { kind: 'parsed' as const, value: houseShop } : parseValue(shopSchema, question.shop, 'The shop');
  if (shop.kind === 'bad') return shop;
  const dialect =
    question.dialect === undefined ? { kind: 'dialect' as const, dialect: standardDialect } : readDialectFile(question.dialect);
  if (dialect.kind === 'bad') return dialect;
  const run: JobRun = {
    job: job.value,
    said: job.said,
    drawing: drawing.bytes,
    drawingName: drawing.name,
    shop: shop.value,
    dialect: dialect.dialect,
    day: job.value.date ?? question.day,
    memory,
    ...(progress === undefined ? {} : { progress }),
  };
  return withShape(run, () => ({}));
};
