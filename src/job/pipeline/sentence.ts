/** The answer in one plain sentence: the words of page, papers and command line are made here and nowhere else. */

import type { Estimate } from '../../estimate/estimate.ts';
import type { Material } from '../../physics/material/material.ts';
import type { CutPlan } from '../../plan/plan.ts';
import type { Proof } from '../../proof/proof.ts';
import type { Finding } from '../../text/finding.ts';
import { located } from '../../text/located.ts';
import { count, duration, limit, money, name, type Part, quantity, significant, um, upTo } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { cutHeight, type Job } from '../job.ts';

export interface Said {
  readonly job: Job;
  readonly material: Material;
  readonly plan: CutPlan;
  readonly estimate: Estimate;
  /** mm: what the profile is to be expected within. */
  readonly within: number;
  /** mm: what the program itself uses of the tolerance. */
  readonly used: number;
}

/** A page marks its holes: what was asked bears the name of its field in the job file. */
export const yesSentence = ({ job, material, plan, estimate, within, used }: Said): Text =>
  (within + used <= job.tolerance ? words.yes : words.doubt)({
    wire: words.wire(plan.wire.name),
    material: name(material.name),
    high: job.stack === 1 ? words.high(job.height) : words.stacked(job),
    passes: count(plan.passes.length, 'pass'),
    // Rounded up to whole thousandths: no more is promised than holds.
    within: limit(Math.ceil(within * 1000 - 1e-6) / 1000, 'mm', upTo(3)),
    tolerance: limit(job.tolerance),
    ra: words.ra(um(plan.finish.value, significant(2))),
    finish: words.ra(quantity(job.finish, 'µm')),
    runs: (estimate.unattended.value >= 1 ? words.alone : words.attended)(estimate),
    costs: (job.quantity === 1 ? words.forOne : words.forMany)(estimate, job.quantity),
  });

interface Yes {
  readonly wire: Text;
  readonly material: Part;
  readonly high: Text;
  readonly passes: Part;
  readonly within: Part;
  readonly tolerance: Part;
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
  yes: ({ wire, material, high, passes, within, tolerance, ra, finish, runs, costs }: Yes) =>
    say`Yes. A ${{ wire }} cuts ${{ material }}, ${{ high }}, in ${{ passes }}: ${{ within }} expected, ${{ tolerance }} required; ${{ ra }} expected, ${{ finish }} required. It runs ${{ runs }} and ${{ costs }}.`,
  doubt: ({ wire, material, high, passes, within, tolerance, ra, finish, runs, costs }: Yes) =>
    say`Yes, but the tolerance is in doubt. A ${{ wire }} cuts ${{ material }}, ${{ high }}, in ${{ passes }}: ${{ within }} expected, ${{ tolerance }} required; ${{ ra }} expected, ${{ finish }} required. It runs ${{ runs }} and ${{ costs }}.`,
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
