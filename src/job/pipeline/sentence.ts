/** The answer in one plain sentence: the words of page, papers and command line are made here and nowhere else. */

import { isOver } from '../../accuracy/budget.ts';
import type { PlanBudgets } from '../../accuracy/budget-of-plan.ts';
import type { Estimate } from '../../estimate/estimate.ts';
import type { Material } from '../../physics/material/material.ts';
import { fallingShort, familiesIn, isTooRough } from '../../plan/classes.ts';
import type { CutPlan } from '../../plan/plan.ts';
import type { Proof } from '../../proof/proof.ts';
import { usedOn } from '../../proof/share.ts';
import { confidenceTold } from '../../quantity/confidence.ts';
import { type FinishRule, finishRuleWords } from '../../quantity/finish-rule.ts';
import { usedByProgram } from '../../result/tolerance-told.ts';
import type { Finding } from '../../text/finding.ts';
import { located } from '../../text/located.ts';
import { contour, count, duration, limit, list, money, name, type Part, promised, quantity, significant, um } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { cutHeight, type Job } from '../job.ts';

export interface Said {
  readonly job: Job;
  /** Top-level keys of the job that somebody gave: what else it holds is assumed. */
  readonly said: ReadonlySet<string>;
  readonly material: Material;
  readonly plan: CutPlan;
  readonly estimate: Estimate;
  /** Nobody has set the rates of this shop yet. */
  readonly inventedRates: boolean;
  /** mm: what the profile is to be expected within. */
  readonly within: number;
  readonly proof: Proof;
  readonly budgets?: PlanBudgets | undefined;
  readonly findings: readonly Finding[];
}

/** A page marks its holes: what was asked bears the name of its field in the job file. */
export const yesSentence = (asked: Said): Text => {
  const { job, said, material, plan, estimate, within } = asked;
  return words.yes({
    answer: verdictOf(asked),
    wire: words.wire(plan.wire.name),
    material: (said.has('material') ? words.material : words.materialAssumed)(material),
    high: heightOf(asked),
    passes: passesSaid(plan),
    within: promised(within),
    sure: confidenceTold(job.confidence),
    tolerance: (said.has('tolerance') ? words.tolerance : words.toleranceAssumed)(job.tolerance),
    ra: words.ra(um(plan.finish.value, significant(2))),
    finish: (said.has('finish') ? words.finish : words.finishAssumed)(words.ra(quantity(job.finish, 'µm')), job.finishRule),
    runs: (estimate.unattended.value >= 1 ? words.alone : words.attended)(estimate),
    costs: costsOf(asked),
  });
};

/** 4 passes; where contours are asked different things, 4, 1 and 2 passes. */
const passesSaid = (plan: CutPlan): Part | Text => {
  const counts = familiesIn(plan).map((f) => f.length);
  const [only] = counts;
  return counts.length === 1 && only !== undefined ? count(only, 'pass') : words.several(counts.slice(0, -1), counts.at(-1) ?? 0);
};

const heightOf = ({ job, said }: Said): Text => {
  const high = job.stack === 1 ? words.high(job.height) : words.stacked(job);
  return said.has('height') ? high : words.assumed(high);
};

const costsOf = ({ job, said, estimate, inventedRates }: Said): Text => {
  const price = (job.quantity === 1 ? words.forOne : words.forMany)(estimate, job.quantity);
  const costs = said.has('quantity') ? price : words.assumed(price);
  const metal = estimate.metal?.cost === undefined ? words.withoutMetal(costs) : costs;
  return inventedRates ? words.invented(metal) : metal;
};

/** Yes, as far as it is one: limits that the cut is not expected to hold, and questions that nobody has answered. */
const verdictOf = ({ job, plan, within, proof, budgets, findings }: Said): Text => {
  const sizes = (budgets?.sizes ?? []).flatMap((size) => (size.of.kind === 'size' && isOver(size) ? [name(size.of.name)] : []));
  const questions = findings.filter((f) => f.severity === 'doubt').reduce((sum, f) => sum + (f.stands ?? 1), 0);
  const short = fallingShort(plan, { ...job, usedOn: (loops) => usedOn(proof, loops) }).flatMap((c) => c.loops.map(contour));
  const inDoubt = [...sizes, ...short];
  const doubts = [
    ...(within + usedByProgram(proof.use) <= job.tolerance ? [] : [words.theTolerance]),
    ...(isTooRough(plan, job) ? [words.theFinish] : []),
    ...(inDoubt.length === 0 ? [] : [words.theSizes(inDoubt)]),
  ];
  if (doubts.length === 0) return questions === 0 ? words.plainYes : (questions === 1 ? words.ifOne : words.ifMore)(questions);
  const doubtful = (doubts.length > 1 || inDoubt.length > 1 ? words.inDoubt : words.isInDoubt)(doubts);
  return sentences([doubtful, questions === 0 ? undefined : (questions === 1 ? words.openOne : words.openMore)(questions)]);
};

interface Yes {
  readonly answer: Text;
  readonly wire: Text;
  readonly material: Text;
  readonly high: Text;
  readonly passes: Part | Text;
  readonly within: Part;
  readonly sure: Text;
  readonly tolerance: Text;
  readonly ra: Text;
  readonly finish: Text;
  readonly runs: Text;
  readonly costs: Text;
}

/** The gravest finding is the reason; the smallest change that would help follows it. */
export const noSentence = (findings: readonly Finding[], proof?: Proof): Text => {
  const [first, ...more] = findings.filter((f) => f.severity === 'refusal');
  if (first === undefined) return words.no(proof?.verdict === 'not proven' ? words.notProven : words.cannot);
  const others = more.length === 0 ? undefined : more.length === 1 ? words.oneMore : words.more(more.length);
  return words.no(sentences([located(first), first.remedy?.text, others]));
};

const short = phrases('answer-part', { no: say`No.`, onePiece: say`one piece` });

const words = phrases('answer', {
  yes: ({ answer, wire, material, high, passes, within, sure, tolerance, ra, finish, runs, costs }: Yes) =>
    say`${{ answer }} A ${{ wire }} cuts ${{ what: material }}, ${{ high }}, in ${{ passes }}: ${{ within }} expected (${{ sure }}), ${{ limits: tolerance }}; ${{ ra }} expected, ${{ roughness: finish }}. It runs ${{ runs }} and ${{ costs }}.`,
  several: (before: readonly number[], last: number) =>
    say`${{
      before: list(
        before.map((n) => count(n)),
        'comma',
      ),
    }} and ${{ last: count(last, 'pass') }} by contour`,
  plainYes: say`Yes.`,
  ifOne: (questions: number) => say`Yes, if ${{ questions: count(questions, 'question') }} is answered.`,
  ifMore: (questions: number) => say`Yes, if ${{ questions: count(questions, 'question') }} are answered.`,
  openOne: (questions: number) => say`${{ questions: count(questions, 'question') }} is open.`,
  openMore: (questions: number) => say`${{ questions: count(questions, 'question') }} are open.`,
  isInDoubt: (doubts: readonly Text[]) => say`Yes, but ${{ doubts: list(doubts, 'and') }} is in doubt.`,
  inDoubt: (doubts: readonly Text[]) => say`Yes, but ${{ doubts: list(doubts, 'and') }} are in doubt.`,
  theTolerance: say`the tolerance`,
  theFinish: say`the finish`,
  theSizes: (sizes: readonly Part[]) => say`what is required of ${{ sizes: list(sizes, 'and') }}`,
  material: (material: Material) => say`${{ material: name(material.name) }}`,
  materialAssumed: (material: Material) => say`${{ material: name(material.name) }} (assumed)`,
  assumed: (what: Text) => say`${{ what }} (assumed)`,
  tolerance: (tolerance: number) => say`${{ tolerance: limit(tolerance) }} required`,
  toleranceAssumed: (tolerance: number) => say`${{ tolerance: limit(tolerance) }} assumed`,
  finish: (finish: Text, rule: FinishRule) => say`${{ finish }} required (${{ rule: finishRuleWords[rule] }})`,
  finishAssumed: (finish: Text, rule: FinishRule) => say`${{ finish }} assumed (${{ rule: finishRuleWords[rule] }})`,
  withoutMetal: (costs: Text) => say`${{ costs }}, without material`,
  invented: (costs: Text) => say`${{ costs }}, at invented rates`,
  wire: (wire: string) => say`${{ name: name(wire) }} wire`,
  high: (height: number) => say`${{ height: quantity(height, 'mm') }} thick`,
  stacked: (job: Job) =>
    say`${{ height: quantity(job.height, 'mm') }} thick, ${{ sheets: count(job.stack, 'sheet') }} in one stack of ${{ stack: quantity(cutHeight(job), 'mm') }}`,
  ra: (roughness: Part) => say`Ra ${{ roughness }}`,
  alone: ({ total, unattended }: Estimate) =>
    say`${{ minutes: duration(total.value) }}, ${{ unattended: duration(unattended.value) }} of it unattended,`,
  attended: ({ total }: Estimate) => say`${{ minutes: duration(total.value) }}, all attended,`,
  forOne: ({ each, currency }: Estimate, _: number) =>
    say`costs ${{ each: money(each.value, currency) }} for ${{ quantity: short.onePiece }}`,
  forMany: ({ each, currency }: Estimate, pieces: number) =>
    say`costs ${{ each: money(each.value, currency) }} each for ${{ quantity: count(pieces, 'piece') }}`,
  no: (why: Text) => say`${{ verdict: short.no }} ${{ why }}`,
  notProven: say`The program could not be proven against the drawing.`,
  cannot: say`It cannot be cut as specified.`,
  oneMore: say`1 more reason is listed below.`,
  more: (reasons: number) => say`${{ reasons: count(reasons) }} more reasons are listed below.`,
});
