/** The answer in one plain sentence. */

import type { Estimate } from '../../estimate/estimate.ts';
import type { Material } from '../../physics/material/material.ts';
import type { CutPlan } from '../../plan/plan.ts';
import type { Proof } from '../../proof/proof.ts';
import type { Finding } from '../../text/finding.ts';
import { located } from '../../text/located.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printNumber } from '../../text/print/figure.ts';
import { printMoney } from '../../text/print/money.ts';
import { accuracy, finish } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { cutHeight, type Job } from '../job.ts';

export interface Said {
  readonly job: Job;
  readonly material: Material;
  readonly plan: CutPlan;
  readonly estimate: Estimate;
  /** mm: what the profile is to be expected within. */
  readonly within: number;
}

export const yesSentence = ({ job, material, plan, estimate, within }: Said): string => {
  const passes = `${plan.passes.length} ${plan.passes.length === 1 ? 'pass' : 'passes'}`;
  const profile =
    within <= job.tolerance
      ? `holds ±${accuracy(within)} mm`
      : `is to be expected within ±${accuracy(within)} mm, where ±${printNumber(job.tolerance)} mm is asked,`;
  const holds = `${profile} and Ra ${finish(plan.finish)} µm`;
  const alone =
    estimate.unattended.value >= 1
      ? `, of which ${printDuration(estimate.unattended.value)} need nobody,`
      : ', all of it with somebody there,';
  const each = printMoney(estimate.each.value, estimate.currency);
  const pieces = job.quantity === 1 ? `costs ${each} for one piece` : `costs ${each} each for ${job.quantity} pieces`;
  return `${within <= job.tolerance ? 'Yes. A' : 'Yes, but the tolerance is in doubt. A'} ${plan.wire.name} wire in ${material.name}, ${printNumber(job.height)} mm high${stackSaid(job)}, with ${passes} ${holds}; it runs ${printDuration(estimate.total.value)}${alone} and ${pieces}.`;
};

const stackSaid = (job: Job): string =>
  job.stack === 1 ? '' : ` and ${job.stack} sheets in one stack of ${printNumber(cutHeight(job))} mm`;

/** The gravest finding is the reason; the smallest change that would help follows it. */
export const noSentence = (findings: readonly Finding[], proof?: Proof): string => {
  const refusals = findings.filter((f) => f.severity === 'refusal');
  const first = refusals[0];
  if (first === undefined)
    return proof?.verdict === 'not proven' ? 'No. The program could not be proven against the drawing.' : 'No. It cannot be cut as asked.';
  const more =
    refusals.length > 1 ? ` ${refusals.length - 1} more ${refusals.length === 2 ? 'reason is' : 'reasons are'} listed below.` : '';
  return `No. ${printPlain(located(first))}${first.remedy === undefined ? '' : ` ${printPlain(first.remedy.text)}`}${more}`;
};
