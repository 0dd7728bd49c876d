/** Runs a job from the drawing to the answer, stage by stage; each stage is a function of what the stages before it gave. */

import { expectedWithin } from '../../accuracy/budget-of-plan.ts';
import { chilled } from '../../accuracy/budget-question.ts';
import { inspectionOf } from '../../accuracy/inspection-of-plan.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Estimated } from '../../estimate/estimate.ts';
import type { ReadProgram } from '../../nc/read/program.ts';
import type { Material } from '../../physics/material/material.ts';
import { cornerFigures } from '../../plan/lay/corner-lag.ts';
import type { WantedLine } from '../../plan/open-line.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Proof, Wanted } from '../../proof/proof.ts';
import { proveRead } from '../../proof/prove/prove.ts';
import type { JobFacts } from '../../result/facts.ts';
import type { WireTable } from '../../result/wires.ts';
import type { Finding } from '../../text/finding.ts';
import type { Answer } from '../answer.ts';
import { figuresIn } from '../figures.ts';
import { proofQuestion, type SetupFile } from '../files/setup-file.ts';
import { materialOf } from '../job-material.ts';
import type { JobRun } from '../job-run.ts';
import { toldOnce } from '../listed-once.ts';
import { inDrawingUnits } from '../places-in-drawing.ts';
import { assumptions } from '../request/assumptions.ts';
import { withoutCutLines } from '../request/open-line-request.ts';
import { setByHand } from '../request/overrides.ts';
import { datumOf, wishOf } from '../request/request.ts';
import { asDrawn } from '../request/scale.ts';
import { unusable } from '../request/unusable.ts';
import { machineOf } from '../shop.ts';
import { clockOf, type OnClock } from './clock-of.ts';
import { nothingWider, widerFacts } from './extras.ts';
import { noSentence, yesSentence } from './sentence.ts';
import { setupOf } from './setup-of.ts';
import { shapeLimitsFindings } from './shape-limits.ts';
import { drawingOf, estimateOf, readBack, type Written } from './stages.ts';
import { chosenProgram, wireDoubt } from './wire-choice.ts';
import { wireFigures } from './wire-table.ts';

/** The answer, and the set-up file of its program where there is one. */
export interface Ran {
  readonly answer: Answer;
  /** The drawing as it was read, where the job itself could not be judged: it can be shown all the same. */
  readonly drawing?: Drawing;
  readonly setup?: SetupFile;
  /** The program as its control reads it. */
  readonly read?: ReadProgram;
  /** The contours the proof was asked about. */
  readonly wanted?: readonly Wanted[];
  /** The open lines it was asked about. */
  readonly lines?: readonly WantedLine[];
}

export const runJob = (run: JobRun): Ran => {
  const tell = run.progress ?? (() => undefined);
  tell('reading the drawing', 0);
  const drawing = drawingOf(run);
  const faults = unusable(run, drawing);
  const found = materialOf(run.job.material, run.shop);
  if (faults.length > 0 || found.kind === 'unknown') return { answer: { kind: 'bad input', findings: faults }, drawing };
  if (found.kind === 'non-conductor')
    return { answer: { kind: 'cannot', sentence: noSentence([found.finding]), findings: [found.finding] }, drawing };
  const wish = wishOf(drawing, run, found.material);
  if (wish.kind === 'nothing')
    return { answer: answered(run, { drawing, material: found.material, findings: [...found.findings, ...wish.findings] }) };
  const told = [...found.findings, ...wish.wish.findings];
  tell('planning the cut', 0.15);
  const { made, ...choice } = chosenProgram(run, wish.wish, 'table');
  const wires = choice.wires === undefined ? {} : { wires: choice.wires };
  if (made.kind === 'refused')
    return {
      answer: answered(run, {
        drawing,
        material: found.material,
        plan: made.plan,
        wanted: wish.wish.wanted,
        lines: wish.wish.lines,
        ...wires,
        findings: [...told, ...choice.findings, ...made.findings],
      }),
    };
  tell('proving the program', 0.4);
  const setup = setupOf(run, wish.wish, made.plan, found.material, made.written);
  const program = choice.program ?? readBack(run, made.written, wish.wish.datum);
  const proof = proveRead(
    program,
    proofQuestion(made.written.text, setup, wish.wish.wanted, asDrawn(made.plan.block, wish.wish.scaled), wish.wish.lines),
  );
  tell('working out hours and price', 0.9);
  const estimated = estimateOf(run, made.plan, program);
  const onClock = estimated.kind === 'estimate' ? clockOf(run, made.plan, program, estimated.estimate) : undefined;
  return {
    answer: answered(run, {
      drawing,
      material: found.material,
      plan: made.plan,
      written: made.written,
      setup,
      proof,
      estimated,
      ...(onClock === undefined ? {} : { onClock }),
      wanted: wish.wish.wanted,
      lines: wish.wish.lines,
      ...wires,
      findings: [...told, ...choice.findings, ...wireDoubt(proof, choice.wires)],
    }),
    setup,
    read: program,
    wanted: wish.wish.wanted,
    ...(wish.wish.lines.length === 0 ? {} : { lines: wish.wish.lines }),
  };
};

interface Results {
  readonly drawing: Drawing;
  readonly material: Material;
  readonly plan?: Plan;
  readonly written?: Written;
  readonly setup?: SetupFile;
  readonly proof?: Proof;
  readonly estimated?: Estimated;
  readonly onClock?: OnClock;
  readonly wanted?: readonly Wanted[];
  readonly lines?: readonly WantedLine[];
  readonly wires?: WireTable;
  readonly findings: readonly Finding[];
}

const answered = (run: JobRun, r: Results): Answer => {
  const estimate = r.estimated?.kind === 'estimate' ? r.estimated.estimate : undefined;
  const wider = widerOf(run, r);
  const findings = findingsOf(r, [...(run.shape?.findings ?? []), ...limitsKept(run, r, wider.facts.budgets), ...wider.findings]);
  const yes =
    r.plan?.kind === 'cut' && r.proof?.verdict === 'proven' && estimate !== undefined && !findings.some((f) => f.severity === 'refusal');
  const sentence =
    yes && r.plan !== undefined && estimate !== undefined
      ? yesSentence({ job: run.job, material: r.material, plan: r.plan, estimate, within: expectedWithin(r.plan, wider.facts.budgets) })
      : noSentence(findings, r.proof);
  const facts: JobFacts = {
    answer: yes ? 'yes' : 'no',
    sentence,
    ...askedFacts(run, r),
    ...madeFacts(run, r),
    ...(estimate === undefined ? {} : { estimate }),
    ...(r.onClock?.clock === undefined ? {} : { clock: r.onClock.clock }),
    ...(r.wires === undefined ? {} : { wires: r.wires }),
    ...wider.facts,
    ...inspectionFact(run, r, wider.facts.budgets),
    findings,
  };
  const figures = new Map([
    ...figuresIn(...figureRoots(r.plan), estimate, r.material, wider.facts, run.shape?.sizes),
    ...wireFigures(r.wires),
  ]);
  return { kind: 'answered', facts, job: run.job, figures };
};

/** Of a part by numbers, once it is known how well it will be cut. */
const limitsKept = ({ job, shape }: JobRun, { plan }: Results, budgets: JobFacts['budgets']): readonly Finding[] =>
  plan?.kind === 'cut' ? shapeLimitsFindings(shape, { within: expectedWithin(plan, budgets), tolerance: job.tolerance }) : [];

/** Of all stages, the gravest first, in the unit of the drawing, each told once. */
const findingsOf = (r: Results, wider: readonly Finding[]): readonly Finding[] => {
  const estimate = r.estimated?.kind === 'estimate' ? r.estimated.estimate : undefined;
  const later = [
    ...r.findings,
    ...(r.plan?.findings ?? []),
    ...(r.written?.findings ?? []),
    ...(r.proof?.findings ?? []),
    ...(r.estimated?.kind === 'refused' ? [r.estimated.finding] : []),
    ...(estimate?.findings ?? []),
    ...(r.onClock?.findings ?? []),
    ...wider,
  ];
  return toldOnce(byGravity([...withoutCutLines(r.drawing.findings, r.lines ?? []), ...inDrawingUnits(later, r.drawing.units)]));
};

/** What was asked, and by whom. */
const askedFacts = (run: JobRun, r: Results) => {
  const [datum, byHand] = [datumOf(run.job, r.drawing.units.millimetres), setByHand(run.job)];
  return {
    name: run.job.name ?? run.drawingName,
    ...(run.job.customer === undefined ? {} : { customer: run.job.customer }),
    shop: run.shop.name,
    day: run.day,
    material: r.material,
    height: run.job.height,
    ...(r.setup?.scaled === undefined ? {} : { scaled: r.setup.scaled }),
    quantity: run.job.quantity,
    asked: { finish: run.job.finish, tolerance: run.job.tolerance, insideCorner: run.job.insideCorner },
    ...(datum === undefined ? {} : { datum }),
    ...(byHand === undefined ? {} : { byHand }),
    assumed: assumptions(run, r.drawing, r.material),
    drawingName: run.drawingName,
    drawing: r.drawing,
    ...(run.shape === undefined ? {} : { shape: { name: run.shape.name, sizes: run.shape.sizes } }),
  };
};

/** Plan, program and proof, as far as there are any. */
const madeFacts = ({ dialect }: JobRun, { plan, written, proof, drawing }: Results): Pick<JobFacts, 'plan' | 'program' | 'proof'> => ({
  ...(plan === undefined ? {} : { plan }),
  ...(written === undefined
    ? {}
    : { program: { text: written.text, dialect: dialect.name, units: dialect.units, registers: written.registers, gaps: written.gaps } }),
  ...(proof === undefined ? {} : { proof: { ...proof, findings: inDrawingUnits(proof.findings, drawing.units) } }),
});

/** Only of a plan with a program is there a piece to be measured. */
const inspectionFact = (
  { job }: JobRun,
  { plan, material, wanted, written }: Results,
  budgets: JobFacts['budgets'],
): Pick<JobFacts, 'inspection'> =>
  plan === undefined || wanted === undefined || written === undefined
    ? {}
    : {
        inspection: inspectionOf({
          finish: job.finish,
          tolerance: job.tolerance,
          insideCorner: job.insideCorner,
          measuring: job.temperature?.measuring ?? chilled.measuring,
          sizes: job.sizes ?? [],
          plan,
          material,
          wanted,
          ...(budgets === undefined ? {} : { budgets }),
        }),
      };

const widerOf = (run: JobRun, { plan, material, wanted, estimated }: Results) =>
  plan === undefined || wanted === undefined
    ? nothingWider
    : widerFacts({
        job: run.job,
        machine: machineOf(run.shop),
        material,
        plan,
        wanted,
        ...(estimated?.kind === 'estimate' ? { estimate: estimated.estimate } : {}),
      });

const GRAVITY: readonly Finding['severity'][] = ['refusal', 'doubt', 'warning', 'repair', 'note'];

/** The gravest first; findings of the same gravity keep the order of the stages. */
const byGravity = (findings: readonly Finding[]): readonly Finding[] => GRAVITY.flatMap((g) => findings.filter((f) => f.severity === g));

/** Where a plan keeps its figures: paths and steps hold none, and there are very many of them. */
const figureRoots = (plan: Plan | undefined): readonly unknown[] =>
  plan === undefined
    ? []
    : [
        plan.passes,
        plan.accuracy,
        plan.finish,
        plan.contours.map((c) => c.piece),
        (plan.openCuts ?? []).map((o) => o.piece),
        plan.contours.slice(0, MOST_CORNERS).map((c) => cornerFigures(c, plan.passes)),
      ];

/** Corner errors can be asked why for as many contours; of thousands of openings nobody asks. */
const MOST_CORNERS = 200;
