/** The examples, run as a user would run them, and all that comes out of each as text to hold against what was accepted. */
import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { readBytes, readText } from '../../src/cli/files.ts';
import { jobRun, shopAt } from '../../src/cli/inputs.ts';
import { paperText } from '../../src/documents/paper-text.fixture.ts';
import { nestSchema } from '../../src/job/files/nest-file.ts';
import { parseFile } from '../../src/job/files/parse.ts';
import { correctText } from '../../src/job/handout/correct-report.ts';
import { describeDrawing } from '../../src/job/handout/drawing-report.ts';
import { answerText, pictureFiles, programFiles } from '../../src/job/handout/papers.ts';
import { papersOf } from '../../src/job/handout/papers-of.ts';
import { shapeText } from '../../src/job/handout/shape-report.ts';
import type { JobRun } from '../../src/job/job-run.ts';
import { memoryOf } from '../../src/job/memory.ts';
import { nestFiles, nestText, runNest } from '../../src/job/nest/nest-answer.ts';
import type { Answered } from '../../src/job/pipeline/answer.ts';
import { correctJob } from '../../src/job/pipeline/correct-job.ts';
import { runUpTo } from '../../src/job/pipeline/pipeline.ts';
import { readerOfPapers } from '../../src/job/reader-of-papers.ts';
import { askedRun } from '../../src/job/request/run-from-data.ts';
import { shapeDxf } from '../../src/job/request/shape-drawing.ts';
import { compareJob, comparisonText, priceCurve, timeComparison } from '../../src/job/what-if/comparing.ts';
import { plannedOf, programOf } from '../../src/result/facts.ts';
import { printPlain } from '../../src/text/print/print.ts';
import { HOUSE } from '../../src/text/reader.ts';
import type { Files } from './changes.ts';
import { edgesTable, fingerprint, proofTable } from './tables.ts';

const EXAMPLES = 'examples';
/** Where neither job nor option names a day. */
const DAY = '2026-11-25';

export interface Outcome {
  /** What is accepted, by name. */
  readonly files: Files;
  /** Every picture by name: of most of them only the table and the hash are among the files. */
  readonly pictures: Files;
}

/** Folders below examples/, each an example; one may hold several jobs, and the workshop holds none. */
export const exampleNames = (): readonly string[] =>
  readdirSync(EXAMPLES, { withFileTypes: true })
    .filter((f) => f.isDirectory())
    .map((f) => f.name)
    .sort();

export const expectedFolder = (example: string): string => join(EXAMPLES, example, 'expected');

/** Everything that the jobs and nests of an example give. */
export const runExample = (example: string): Outcome => {
  const files = readdirSync(join(EXAMPLES, example)).sort();
  const at = (ending: string): readonly string[] => files.filter((f) => f.endsWith(ending)).map((f) => join(EXAMPLES, example, f));
  return together([...at('.job.json').map(runJobExample), ...at('.nest.json').map(runNestExample)]);
};

const together = (outcomes: readonly Outcome[]): Outcome => ({
  files: Object.assign({}, ...outcomes.map((o) => o.files)),
  pictures: Object.assign({}, ...outcomes.map((o) => o.pictures)),
});

const stemOf = (path: string): string => basename(path).replace(/\.(job|nest)\.json$/, '');

const runJobExample = (path: string): Outcome => {
  const stem = stemOf(path);
  const measured = path.replace(/\.job\.json$/, '.measured.txt');
  const lines = existsSync(measured) ? readText(measured).trim().split('\n') : [];
  return outcomeOf(jobRun(path, {}, DAY), stem, lines);
};

/** A nest file as it is laid, with the path of its shop. */
export const layNest = (path: string) => {
  const parsed = parseFile(nestSchema, readText(path), basename(path));
  if (parsed.kind === 'bad') throw new Error(`${path} is no nest: ${parsed.findings.map((f) => printPlain(f.text)).join(' ')}`);
  const file = parsed.value;
  const beside = (name: string): string => join(dirname(path), name);
  const shopPath = file.shop === undefined ? undefined : beside(file.shop);
  const drawingOf = (name: string): Uint8Array => readBytes(beside(name));
  const answer = runNest({ file, name: stemOf(path), drawingOf, shop: shopAt(shopPath).shop, day: file.date ?? DAY });
  if (answer.kind !== 'laid') throw new Error(`${path} cannot be laid: ${answer.findings.map((f) => printPlain(f.text)).join(' ')}`);
  return { file, shopPath, answer };
};

/** What is printed, plate as picture and drawing, the job that cuts it, and all that this job gives. */
const runNestExample = (path: string): Outcome => {
  const stem = stemOf(path);
  const { file, shopPath, answer } = layNest(path);
  // The job lies one folder deeper than the nest.
  const files: Files = nestFiles(answer.facts, file, stem, {
    reader: HOUSE,
    shop: file.shop === undefined ? undefined : `../${file.shop}`,
  });
  const printed = { [`${stem}.nest.txt`]: `${nestText(answer, HOUSE)}\n`, ...files };
  return together([{ files: printed, pictures: {} }, outcomeOf(plateRun(files, `${stem}.plate`, shopPath), `${stem}.plate`, [])]);
};

/** The job that a nest leaves, run before it lies on a disk. */
const plateRun = (files: Files, stem: string, shopPath: string | undefined): JobRun => {
  const shop: unknown = shopPath === undefined ? undefined : JSON.parse(readText(shopPath));
  const dialect = (shop as { readonly dialect?: string } | undefined)?.dialect;
  const asked = askedRun({
    input: JSON.parse(files[`${stem}.job.json`] ?? '{}') as Record<string, unknown>,
    drawing: new TextEncoder().encode(files[`${stem}.dxf`]),
    drawingName: `${stem}.dxf`,
    ...(shop === undefined ? {} : { shop }),
    ...(dialect === undefined || shopPath === undefined ? {} : { dialect: readText(join(dirname(shopPath), dialect)) }),
    day: DAY,
  });
  if (asked.kind === 'bad') throw new Error(asked.findings.map((f) => printPlain(f.text)).join(' '));
  return asked.run;
};

/** What `answer`, `compare`, `correct`, `prove`, `read` and `shape` tell of one job. */
const outcomeOf = (asked: JobRun, stem: string, measured: readonly string[]): Outcome => {
  const run: JobRun = { ...asked, memory: memoryOf() };
  const answer = runUpTo(run, 'answer');
  if (answer.kind !== 'answered') throw new Error(`${stem} could not be judged: an example has an answer.`);
  const { facts, proven } = answer;
  const pictures = pictureFiles(answer, stem, readerOfPapers(run));
  const named = (files: Files): Files => Object.fromEntries(Object.entries(files).map(([name, text]) => [`${stem}.${name}`, `${text}\n`]));
  return {
    files: {
      ...programFiles(facts, proven, stem),
      ...Object.fromEntries(papersOf(facts, run).map(([name, paper]) => [`${stem}.${name}.txt`, paperText(paper)])),
      ...named({
        'answer.txt': answerText(facts, run),
        'compare.txt': compared(run, stem),
        'correct.txt': corrected(run, measured),
        ...shapeFile(run, stem),
      }),
      ...named(tablesOf(answer, pictures, run, stem)),
      ...Object.fromEntries(Object.entries(pictures).filter(([name]) => KEPT.has(name))),
    },
    pictures,
  };
};

/** One small picture of each kind is kept whole, to be looked at; that of a plate comes with its nest. */
const KEPT: ReadonlySet<string> = new Set(['form-insert-eased.proof.svg', 'form-insert-eased.drawing.svg', 'form-insert-eased.edges.svg']);

const tablesOf = ({ facts, proven }: Answered, pictures: Files, run: JobRun, stem: string): Files => {
  const otherWays = plannedOf(facts)?.otherWays;
  const proof = programOf(facts)?.proof;
  const table = (kind: string, text: () => string): Files => {
    const [name, picture] = [`${stem}.${kind}.svg`, pictures[`${stem}.${kind}.svg`]];
    return picture === undefined ? {} : { [`${kind}.txt`]: `${text()}\n\n${fingerprint(name, picture)}` };
  };
  return {
    ...table('drawing', () => describeDrawing(facts.drawing, run.drawingName)),
    ...table('edges', () => (otherWays === undefined ? '' : edgesTable(otherWays))),
    ...table('proof', () => (proof === undefined ? '' : proofTable(proof, proven?.question.wanted ?? []))),
  };
};

/** The price over the finish runs a job some thirty times: it is left out where that takes longer than all the rest together. */
const WITHOUT_CURVE: ReadonlySet<string> = new Set(['mixed-plate.plate', 'split-jaw', 'thick-gear']);

const compared = (run: JobRun, stem: string): string => {
  const found = compareJob(run);
  if (found.kind === 'bad input') throw new Error(found.findings.map((f) => printPlain(f.text)).join(' '));
  if (found.kind === 'cannot') return comparisonText(found, []);
  const time = timeComparison(run);
  return comparisonText(time === undefined ? found : { ...found, time }, WITHOUT_CURVE.has(stem) ? [] : priceCurve(run));
};

/** What follows from what was measured, and what three micrometres less in every register would do. */
const corrected = (run: JobRun, measured: readonly string[]): string => {
  const answer = correctJob(run, { measured, change: -0.003 });
  if (answer.kind === 'bad input') throw new Error(answer.findings.map((f) => printPlain(f.text)).join(' '));
  return answer.kind === 'cannot' ? printPlain(answer.sentence) : correctText(answer);
};

const shapeFile = ({ shape }: JobRun, stem: string): Files =>
  shape === undefined ? {} : { 'sizes.txt': `${shapeText(shape, 'mm')}\n\n${fingerprint(`${stem}.dxf`, shapeDxf(shape, 'mm'))}` };
