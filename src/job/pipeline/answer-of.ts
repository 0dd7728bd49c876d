/** The answer to a job out of what its stages gave: facts, findings in the order of gravity, figures that can be asked why. */

import { chilled } from '../../accuracy/budget-question.ts';
import { inspectionOf } from '../../accuracy/inspection-of-plan.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Material } from '../../physics/material/material.ts';
import { numbered } from '../../plan/numbered.ts';
import type { CutPlan } from '../../plan/plan.ts';
import { registerLimits } from '../../plan/wire/register-room.ts';
import type { Proof } from '../../proof/proof.ts';
import type { Asked, Head, JobFacts, JobOutcome } from '../../result/facts.ts';
import type { CutFacts, HoursFacts, ProgramFacts, RefusedFacts } from '../../result/outcome-facts.ts';
import type { Finding } from '../../text/finding.ts';
import { byGravity } from '../../text/severity.ts';
import { ratesInvented } from '../built-in-shop.ts';
import type { JobRun } from '../job-run.ts';
import { listedOnce } from '../listed-once.ts';
import { inDrawingUnits } from '../places-in-drawing.ts';
import { assumptions } from '../request/assumptions.ts';
import { withoutCutLines } from '../request/open-line-request.ts';
import { overridesOf } from '../request/overrides.ts';
import { datumOf } from '../request/request.ts';
import { machineOf } from '../shop.ts';
import type { Answer, Answered, ProvenProgram } from './answer.ts';
import { besideCut, besideRefused } from './extras.ts';
import { figuresOf } from './figures-of.ts';
import type { NoHours, NotRequested, NotWritten, Programmed, Refused, Requested, Timed } from './outcomes.ts';
import { settledPlan } from './plan-again.ts';
import { scheduleFindings, scheduleOf } from './schedule.ts';
import { noSentence, yesSentence } from './sentence.ts';
import { shapeLimitsFindings } from './shape-limits.ts';
import { type ChosenProgram, wireDoubt, wiresAgain } from './wire-choice.ts';

type Choice = Pick<ChosenProgram, 'wires' | 'findings'>;

/** Of a job that has a program: what its proof says, its hours where they are known, and whether it is a yes. */
export const answerOf = (run: JobRun, planned: Timed | NoHours, first: Choice): Answer => {
  const { hours, proven, proof, refused, findings: ours } = settledPlan(run, planned);
  const { made } = hours;
  const { asked, plan, written } = made;
  const choice = refused === undefined ? first : wiresAgain({ ...run, refused }, asked.request, first);
  const laid = hours.kind === 'timed' ? scheduleOf(run, hours) : undefined;
  const beside = besideCut(besideAsked(run, asked), plan, hours.kind === 'timed' ? hours.estimate : undefined);
  const cut = cutFacts(plan, beside.facts, choice);
  const findings = findingsOf(asked, [
    ...ours,
    ...asked.findings,
    ...choice.findings,
    ...wireDoubt(proof, choice.wires),
    ...plan.findings,
    ...written.findings,
    ...proof.findings,
    ...(hours.kind === 'timed' ? hours.estimate.findings : hours.findings),
    ...(laid === undefined ? [] : scheduleFindings(run, laid)),
    ...inputFindings(run, cut),
    ...beside.findings,
  ]);
  const program = programFacts(run, made, { proven, proof, cut });
  const known: HoursFacts | undefined =
    hours.kind === 'timed' ? { estimate: hours.estimate, schedule: laid?.kind === 'laid' ? laid.schedule : undefined } : undefined;
  const yes = proof.verdict === 'proven' && !findings.some((f) => f.severity === 'refusal');
  const outcome: JobOutcome =
    yes && known !== undefined
      ? { answer: 'yes', kind: 'program', cut, program, hours: known }
      : { answer: 'no', kind: 'program', cut, program, hours: known };
  const sentence =
    outcome.answer === 'yes'
      ? yesSentence({
          job: run.job,
          said: run.said,
          material: asked.material,
          plan,
          estimate: outcome.hours.estimate,
          inventedRates: ratesInvented(run.shop, run.day),
          within: cut.within,
          budgets: cut.budgets,
          findings,
          proof,
        })
      : noSentence(findings, proof);
  return { ...answered(run, asked, { outcome, sentence, findings }), proven };
};

/** Of a job that stopped before it had a program. */
export const refusedAnswer = (run: JobRun, stopped: NotRequested | Refused | NotWritten, choice: Choice = { findings: [] }): Answer => {
  if (stopped.kind === 'bad input') return stopped;
  if (stopped.kind === 'non-conductor')
    return { kind: 'cannot', sentence: noSentence(stopped.findings), findings: stopped.findings, drawing: stopped.drawing };
  if (stopped.kind === 'nothing to cut') {
    const findings = findingsOf(stopped, [...stopped.findings, ...inputFindings(run)]);
    return answered(run, stopped, {
      outcome: { answer: 'no', kind: 'nothing to cut' },
      sentence: noSentence(findings),
      findings,
    });
  }
  return stopped.kind === 'refused' ? planRefused(run, stopped, choice) : notWritten(run, stopped, choice);
};

const planRefused = (run: JobRun, { asked, plan }: Refused, { wires, findings: chosen }: Choice): Answer => {
  const beside = besideRefused(besideAsked(run, asked));
  const refused: RefusedFacts = { plan, ...beside.facts, wires };
  const findings = findingsOf(asked, [...asked.findings, ...chosen, ...plan.findings, ...inputFindings(run), ...beside.findings]);
  return answered(run, asked, { outcome: { answer: 'no', kind: 'refused', refused }, sentence: noSentence(findings), findings });
};

const notWritten = (run: JobRun, { asked, plan, findings: unspelled }: NotWritten, choice: Choice): Answer => {
  const beside = besideCut(besideAsked(run, asked), plan);
  const cut = cutFacts(plan, beside.facts, choice);
  const findings = findingsOf(asked, [
    ...asked.findings,
    ...choice.findings,
    ...unspelled,
    ...plan.findings,
    ...inputFindings(run, cut),
    ...beside.findings,
  ]);
  return answered(run, asked, { outcome: { answer: 'no', kind: 'plan', cut }, sentence: noSentence(findings), findings });
};

/** What is known of any job that was judged. */
type Judged = Pick<Requested, 'drawing' | 'material'> & Partial<Pick<Requested, 'request'>>;

const answered = (run: JobRun, { drawing, material }: Judged, said: Pick<JobFacts, 'outcome' | 'sentence' | 'findings'>): Answered => {
  const { job, shape } = run;
  const facts: JobFacts = {
    head: headOf(run),
    asked: askedOf(run, drawing, material),
    drawing,
    shape: shape === undefined ? undefined : { name: shape.name, sizes: shape.sizes },
    ...said,
  };
  return { kind: 'answered', facts, job, figures: figuresOf(facts) };
};

const headOf = ({ job, shop, day, drawingName }: JobRun): Head => ({
  inventedRates: ratesInvented(shop, day),
  name: job.name ?? drawingName,
  customer: job.customer,
  shop: shop.name,
  day,
  drawingName,
});

const askedOf = (run: JobRun, drawing: Drawing, material: Material): Asked => {
  const { height, quantity, finish, finishRule, tolerance, confidence, insideCorner } = run.job;
  const [datum, overrides] = [datumOf(run.job, drawing.units.millimetres), overridesOf(run.job)];
  return {
    material,
    height,
    quantity,
    finish,
    finishRule,
    tolerance,
    confidence,
    insideCorner,
    datum,
    overrides,
    assumed: assumptions(run, drawing, material),
  };
};

const besideAsked = ({ job, said, shop }: JobRun, { material, request }: Requested) => ({
  job,
  said,
  machine: machineOf(shop),
  material,
  wanted: request.wanted,
  around: request.around,
});

const cutFacts = (plan: CutPlan, beside: Pick<CutFacts, 'budgets' | 'otherWays'>, { wires }: Choice): CutFacts => ({
  plan,
  contours: numbered(plan),
  within: plan.accuracy.value,
  ...beside,
  wires,
});

const programFacts = (
  { job, dialect }: JobRun,
  { asked, plan, written }: Programmed,
  { proven, proof, cut }: { readonly proven: ProvenProgram; readonly proof: Proof; readonly cut: CutFacts },
): ProgramFacts => ({
  text: written.text,
  dialect: dialect.name,
  units: dialect.units,
  registers: written.registers,
  registerLimits: registerLimits(plan, asked.request.question.resolution),
  gaps: written.gaps,
  scaled: proven.setup.scaled,
  proof: { ...proof, findings: inDrawingUnits(proof.findings, asked.drawing.units) },
  inspection: inspectionOf({
    finish: job.finish,
    tolerance: job.tolerance,
    insideCorner: job.insideCorner,
    measuring: job.temperature?.measuring ?? chilled.measuring,
    sizes: job.sizes ?? [],
    plan,
    material: asked.material,
    wanted: asked.request.wanted,
    budgets: cut.budgets,
  }),
});

/** Of its files, and of a part by numbers: what was found when it was made, and once it is known how well it will be cut, whether its limits are kept. */
const inputFindings = ({ job, shape, notes }: JobRun, cut?: CutFacts): readonly Finding[] => [
  ...(notes ?? []),
  ...(shape?.findings ?? []),
  ...(cut === undefined ? [] : shapeLimitsFindings(shape, { within: cut.within, tolerance: job.tolerance })),
];

/** Of drawing and stages, the gravest first, in the unit of the drawing, each told once. */
const findingsOf = ({ drawing, request }: Judged, later: readonly Finding[]): readonly Finding[] =>
  listedOnce(byGravity([...withoutCutLines(drawing.findings, request?.lines ?? []), ...inDrawingUnits(later, drawing.units)]));
