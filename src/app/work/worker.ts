/** Runs the job beside the page, so that typing never waits for it; remembers the last run, of which everything else is asked. */

import { expose, transfer } from 'comlink';
import { z } from 'zod';
import type { Paper } from '../../documents/paper.ts';
import { correctText } from '../../job/handout/correct-report.ts';
import { paperOf } from '../../job/handout/papers-of.ts';
import { proofLines } from '../../job/handout/proof-report.ts';
import type { JobRun } from '../../job/job-run.ts';
import { type Memory, memoryOf } from '../../job/memory.ts';
import type { Answer } from '../../job/pipeline/answer.ts';
import { correctJob } from '../../job/pipeline/correct-job.ts';
import { runUpTo } from '../../job/pipeline/pipeline.ts';
import { proveAgain } from '../../job/pipeline/prove-again.ts';
import { askedRun } from '../../job/request/run-from-data.ts';
import { type ShapeMeans, shapeDxf, shapeSvg } from '../../job/request/shape-drawing.ts';
import { compareJob, priceCurve } from '../../job/what-if/compare.ts';
import { programOf } from '../../result/facts.ts';
import { setting } from '../../text/print/phrases.ts';
import { NOTHING, phrases, say, sentences } from '../../text/say.ts';
import { whyTree } from './figure-view.ts';
import { findingViews, foundView } from './finding-view.ts';
import type { DrawingFile, JobWorker, Question, Tell } from './job-worker.ts';
import { noView } from './sentence-view.ts';
import { sheetOf } from './sheet-of.ts';
import type { SheetInTexts } from './views.ts';

const words = phrases('page.worker', {
  noJob: say`No job yet.`,
  noProgram: say`A program can be checked once the job itself has one: it is checked with the set-up of that.`,
});

// The page's policy forbids code made from text, which the checker of schemas would otherwise use to be faster.
z.config({ jitless: true });

let opened: { readonly drawing: DrawingFile; readonly memory: Memory } = {
  drawing: { name: '', bytes: new Uint8Array() },
  memory: memoryOf(),
};
let last: { readonly run: JobRun; readonly answer: Answer } | undefined;

/** Lettering alone needs a font and what can read it; nobody else waits for them. */
const run = (question: Question, tell: Tell): SheetInTexts | Promise<SheetInTexts> => {
  const shape = question.input['shape'] as Readonly<Record<string, unknown>> | undefined;
  if (shape?.['kind'] !== 'lettering') return runWith(question, tell, {});
  // Without a server the shape itself says that there are no fonts.
  return import('./letters.ts')
    .then(async ({ lettersFor }) => ({ letters: await lettersFor(shape) }))
    .catch(() => ({}))
    .then((means) => runWith(question, tell, means));
};

const runWith = (question: Question, tell: Tell, means: ShapeMeans): SheetInTexts => {
  const start = performance.now();
  const { drawing, memory } = opened;
  const asked = askedRun({ ...question, drawing: drawing.bytes, drawingName: drawing.name }, { memory, progress: tell }, () => means);
  if (asked.kind === 'bad') {
    last = undefined;
    const [first] = asked.findings;
    return {
      answer: 'bad input',
      sentence: noView(first?.text ?? NOTHING),
      findings: findingViews(asked.findings, new Set(), 1),
      assumed: [],
      figures: [],
      took: { core: 0, view: performance.now() - start },
    };
  }
  const answer = runUpTo(asked.run, 'answer');
  const core = performance.now() - start;
  last = { run: asked.run, answer };
  const sheet = { ...sheetOf(answer, asked.run), took: { core, view: performance.now() - start - core } };
  return transfer(sheet, buffersOf(sheet));
};

/** What may change threads instead of being copied: the numbers of pictures and moves. */
const buffersOf = ({ picture, program }: SheetInTexts): ArrayBuffer[] => [
  ...(picture?.layers.flatMap((l) => l.chains.map((c) => c.segments.buffer as ArrayBuffer)) ?? []),
  ...(program === undefined ? [] : Object.values(program.moves).map((numbers) => numbers.buffer as ArrayBuffer)),
];

const answered = () => (last?.answer.kind === 'answered' ? last.answer : undefined);

const worker: JobWorker = {
  open: (drawing) => {
    opened = { drawing, memory: memoryOf() };
    last = undefined;
  },
  run,
  why: (key) => {
    const figure = answered()?.figures.get(key);
    return figure === undefined ? undefined : whyTree(figure);
  },
  whatIfs: () => {
    if (last === undefined) return { kind: 'cannot', reason: words.noJob };
    const compared = compareJob(last.run);
    return compared.kind === 'bad input' ? { kind: 'cannot', reason: sentences(compared.findings.map((f) => f.text)) } : compared;
  },
  curve: () => (last === undefined || answered()?.facts.outcome.answer !== 'yes' ? [] : priceCurve(last.run)),
  deviation: (loop) => {
    const facts = answered()?.facts;
    const found = facts && programOf(facts)?.proof.contours.find((c) => c.loop === loop);
    if (found === undefined) return undefined;
    const { profile } = found;
    return {
      loop,
      share: Float64Array.from(profile, (p) => p.share),
      x: Float64Array.from(profile, (p) => p.at.x),
      y: Float64Array.from(profile, (p) => p.at.y),
      deviation: Float64Array.from(profile, (p) => p.deviation),
      rounded: found.rounded.map(({ at, left }) => ({ x: at.x, y: at.y, left })),
    };
  },
  paper: (name, telling): Paper | undefined => {
    const facts = answered()?.facts;
    if (facts === undefined || last === undefined) return undefined;
    return paperOf(name, facts, last.run, telling);
  },
  shapeFile: (format, unit) => {
    const shape = last?.run.shape;
    return shape === undefined ? undefined : format === 'dxf' ? shapeDxf(shape, unit) : shapeSvg(shape, unit);
  },
  prove: (program) => {
    const setup = answered()?.proven?.setup;
    if (last === undefined || setup === undefined) return { kind: 'cannot', sentence: words.noProgram };
    const proven = proveAgain({ program, drawing: last.run.drawing, drawingName: last.run.drawingName, setup });
    if (proven.kind === 'bad input') return { kind: 'judged', verdict: 'not proven', findings: proven.findings.map(foundView), report: [] };
    const { verdict, findings } = proven.proof;
    return { kind: 'judged', verdict, findings: findings.map(foundView), report: proofLines(proven.proof) };
  },
  correct: (measured, telling) => {
    if (last === undefined) return { kind: 'cannot', sentence: words.noJob };
    const answer = correctJob(last.run, { measured });
    if (answer.kind === 'bad input') return { kind: 'bad', findings: answer.findings.map(foundView) };
    if (answer.kind === 'cannot') return { kind: 'cannot', sentence: answer.sentence };
    return {
      kind: 'corrected',
      text: correctText(answer, telling),
      safe: answer.correction?.safe !== false,
      worth: answer.correction?.worth !== false,
      registers: (answer.correction?.registers ?? []).map((r) => ({
        register: r.register,
        before: `${setting(r.before, answer.unit)} ${answer.unit.name}`,
        after: `${setting(r.after.value, answer.unit)} ${answer.unit.name}`,
      })),
    };
  },
};

expose(worker);
