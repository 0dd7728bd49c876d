/** Puts a job together from a job file or a drawing, the options, the shop and the dialect. */
import { basename, dirname, extname, resolve } from 'node:path';
import { lettersWith } from '../font-files/letters-on-disk.ts';
import { builtInShop } from '../job/built-in-shop.ts';
import { type Dialect, readDialectFile, standardDialect } from '../job/files/dialects.ts';
import { parseFile, parseValue } from '../job/files/parse.ts';
import { type Job, jobSchema } from '../job/job.ts';
import type { JobRun } from '../job/job-run.ts';
import { withShape } from '../job/request/shape-drawing.ts';
import { type Shop, shopSchema } from '../job/shop.ts';
import type { Finding } from '../text/finding.ts';
import { name } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import { contoursTyped } from './contour-option.ts';
import { BadInput, badInput, readBytes, readText } from './files.ts';
import { millimetres, numberOf } from './typed-numbers.ts';

/** How papers tell their numbers. */
interface PaperOptions {
  readonly contour?: readonly string[];
  readonly paperLengths?: string;
  readonly paperFinish?: string;
  readonly paperDecimals?: string;
}

/** What is work of the drawing, and in which unit. */
interface DrawingOptions {
  readonly join?: string | undefined;
  readonly units?: string | undefined;
  readonly outline?: string;
  readonly layers?: string;
  readonly without?: string;
}

/** What has to come out, and how sure. */
interface RequiredOptions {
  readonly finish?: string;
  readonly finishRule?: string;
  readonly tolerance?: string;
  readonly confidence?: string;
  readonly programShare?: string;
  readonly insideCorner?: string;
}

/** Options of `answer` as typed; each overrules the job file. */
export interface AnswerOptions extends RequiredOptions, PaperOptions, DrawingOptions {
  readonly name?: string;
  readonly material?: string;
  readonly height?: string;
  readonly wire?: string | undefined;
  readonly startHole?: string;
  readonly datum?: string;
  readonly ease?: string;
  readonly quantity?: string;
  readonly dialect?: string;
  readonly shop?: string;
  readonly date?: string;
}

const LENGTHS = ['height', 'tolerance', 'insideCorner', 'startHole', 'ease', 'join'] as const;
const NUMBERS = ['finish', 'quantity', 'confidence', 'programShare'] as const;
/** Names may hold commas, ids do not. */
const LISTS = [
  ['layers', /\s*;\s*/],
  ['without', /[;,\s]+/],
] as const;
const WORDS = ['name', 'material', 'wire', 'units', 'outline', 'date', 'finishRule'] as const;

/** `file` is a drawing, or a job file (its name ends in .json). `today` is used when neither file nor option says a day. */
export const jobRun = (file: string, options: AnswerOptions, today: string): Omit<JobRun, 'progress'> => {
  if (file === '') throw badInput(words.nothingNamed);
  const { fields, notes } = extname(file).toLowerCase() === '.json' ? jobFile(file) : { fields: { drawing: basename(file) }, notes: [] };
  const run = runWith(fields, basename(file), (path) => resolve(dirname(file), path), options, today);
  return { ...run, notes: [...notes, ...(run.notes ?? [])] };
};

/** The same of the fields of a job file; `beside` finds the files that it names. */
export const runWith = (
  fields: object,
  file: string,
  beside: (path: string) => string,
  options: AnswerOptions,
  today: string,
): Omit<JobRun, 'progress'> => {
  const parsed = parseValue(
    jobSchema,
    { ...fields, ...typed(options), ...papersTyped(options, fields), ...contoursTyped(options.contour, fields) },
    file,
  );
  if (parsed.kind === 'bad') throw new BadInput(parsed.findings);
  const job = parsed.value;
  const shopPath = options.shop ?? (job.shop === undefined ? undefined : beside(job.shop));
  const { shop, notes } = shopAt(shopPath);
  const drawn = job.shape === undefined && job.drawing !== undefined;
  const run = {
    job,
    said: parsed.said,
    notes,
    drawing: drawn ? readBytes(beside(job.drawing as string)) : new Uint8Array(),
    drawingName: drawn ? basename(job.drawing as string) : '',
    shop,
    dialect: dialectFor(job, options, shop, shopPath, beside),
    day: job.date ?? today,
  };
  return shaped(run, beside);
};

/** With its shape drawn, where the job is by numbers. */
const shaped = (run: JobRun, beside: (path: string) => string): JobRun => {
  const made = withShape(run, () => ({ letters: lettersWith(beside) }));
  if (made.kind === 'bad') throw new BadInput(made.findings);
  return made.run;
};

interface JobFields {
  readonly fields: object;
  readonly notes: readonly Finding[];
}

const jobFile = (file: string): JobFields => {
  const text = readText(file);
  // The defaults come later, together with the options; here only the shape of the file is of interest.
  const parsed = parseFile(jobSchema, text, basename(file));
  if (parsed.kind === 'bad') throw new BadInput(parsed.findings);
  return { fields: parsed.given as object, notes: parsed.notes };
};

interface ShopRead {
  readonly shop: Shop;
  readonly notes: readonly Finding[];
}

/** The shop of a file, or the invented one where none is named. */
export const shopAt = (path: string | undefined): ShopRead => (path === undefined ? { shop: builtInShop, notes: [] } : shopFile(path));

const shopFile = (path: string): ShopRead => {
  const parsed = parseFile(shopSchema, readText(path), basename(path));
  if (parsed.kind === 'bad') throw new BadInput(parsed.findings);
  return { shop: parsed.value, notes: parsed.notes };
};

/** An option beats the job, the job beats the shop; without any the standard words are used. */
const dialectFor = (
  job: Job,
  options: AnswerOptions,
  shop: Shop,
  shopPath: string | undefined,
  beside: (path: string) => string,
): Dialect => {
  if (options.dialect !== undefined) return dialectNamed(options.dialect, options.dialect);
  if (job.dialect !== undefined) return dialectNamed(job.dialect, beside(job.dialect));
  if (shop.dialect !== undefined && shopPath !== undefined) return dialectNamed(shop.dialect, resolve(dirname(shopPath), shop.dialect));
  return standardDialect;
};

const dialectNamed = (called: string, path: string): Dialect => {
  if (called === 'standard') return standardDialect;
  const read = readDialectFile(readText(path));
  if (read.kind === 'bad') throw new BadInput(read.findings);
  return read.dialect;
};

/** The options that were given, as a job file would have them: lengths in mm, numbers as numbers. */
const typed = (options: AnswerOptions): Record<string, unknown> => {
  const values: Record<string, unknown> = {};
  for (const key of LENGTHS) if (options[key] !== undefined) values[key] = millimetres(key, options[key]);
  for (const key of NUMBERS) if (options[key] !== undefined) values[key] = numberOf(key, options[key]);
  if (options.datum !== undefined) values['datum'] = placeOf('datum', options.datum);
  for (const [key, between] of LISTS)
    if (options[key] !== undefined) values[key] = options[key].split(between).filter((part) => part !== '');
  for (const key of WORDS) if (options[key] !== undefined) values[key] = options[key];
  return values;
};

/** What is said of papers, key by key over the job file's. */
const papersTyped = ({ paperLengths, paperFinish, paperDecimals }: AnswerOptions, fromFile: { readonly papers?: unknown }): object => {
  const typed = {
    lengths: paperLengths,
    // Not every keyboard has a µ.
    finish: paperFinish === undefined ? undefined : paperFinish.replace(/^u/, 'µ'),
    decimals: paperDecimals,
  };
  return Object.keys(typed).length === 0 ? {} : { papers: { ...(fromFile.papers as object | undefined), ...typed } };
};

const words = phrases('command-input', {
  nothingNamed: say`No drawing and no job file given.`,
  noPlace: (text: string) => say`'${{ typed: name(text) }}' is not a position: write it like 120,45.5.`,
});

/** Two numbers with a comma, a semicolon or a blank between them. */
const placeOf = (key: string, text: string): { readonly x: number; readonly y: number } => {
  const found = /^\s*([-+]?[\d.]+)\s*[,; ]\s*([-+]?[\d.]+)\s*$/.exec(text);
  if (found === null) throw badInput(words.noPlace(text), key);
  return { x: numberOf(key, found[1] ?? ''), y: numberOf(key, found[2] ?? '') };
};
