/** An answer as plain data for `--json` and for whoever builds on it. Lengths in mm, times in min, money in minor units. */

import type { Estimate } from '../../estimate/estimate.ts';
import type { CutPlan, RefusedPlan, WireResult } from '../../plan/plan.ts';
import { cutOf, hoursOf, plannedOf, programOf } from '../../result/facts.ts';
import { printPlain } from '../../text/print/print.ts';
import type { Answer } from '../pipeline/answer.ts';
import { budgetJson, figure, type Json, otherWaysJson, statedFindings } from './json-parts.ts';
import { proofJson } from './proof-report.ts';
import { scheduleJson } from './schedule-json.ts';
import { shapeJson } from './shape-report.ts';
import { wiresJson } from './wires-json.ts';

/** `files` are the paths of what was written. */
export const answerJson = (answer: Answer, files: readonly string[] = []): Json => {
  if (answer.kind === 'bad input') return { answer: 'bad input', findings: statedFindings(answer.findings) };
  if (answer.kind === 'cannot') return { answer: 'no', sentence: printPlain(answer.sentence), findings: statedFindings(answer.findings) };
  const { facts } = answer;
  const [cut, planned, program, hours] = [cutOf(facts), plannedOf(facts), programOf(facts), hoursOf(facts)];
  return {
    answer: facts.outcome.answer,
    sentence: printPlain(facts.sentence),
    name: facts.head.name,
    day: facts.head.day,
    job: answer.job,
    assumed: facts.asked.assumed.map((a) => printPlain(a.text)),
    findings: facts.findings,
    scaled: program?.scaled,
    shape: facts.shape && shapeJson(facts.shape),
    ...(planned && wiresJson(planned)),
    ...(planned && planJson(planned.plan)),
    ...(hours && estimateJson(hours.estimate, facts.head.inventedRates)),
    ...(hours && scheduleJson(hours)),
    ...(cut && budgetJson(cut)),
    ...(planned && otherWaysJson(planned)),
    proof: program && proofJson(program.proof),
    files,
  };
};

/** Of a refused plan only the wire that comes nearest has passes. */
const planJson = (plan: CutPlan | RefusedPlan): Json => {
  if (plan.kind === 'refused') return plan.nearest === undefined ? {} : { nearest: resultJson(plan.nearest) };
  return {
    ...resultJson(plan),
    contours: plan.contours.map((c) => ({
      loop: c.loop,
      kept: c.kept,
      hole: c.hole,
      entry: c.entry.at,
      tab: c.tab,
      core: c.core,
      piece: { ...c.piece, mass: figure(c.piece.mass) },
    })),
  };
};

const resultJson = ({ wire, accuracy, finish, passes, classes }: WireResult): Json => ({
  wire,
  accuracy: figure(accuracy),
  finish: figure(finish),
  passes: passes.map((p) => ({
    number: p.number,
    condition: p.condition,
    register: p.register,
    offset: figure(p.offset),
    gap: figure(p.gap),
    stock: figure(p.stock),
    feed: figure(p.feed),
    ra: figure(p.ra),
    formError: figure(p.formError),
  })),
  classes: classes?.map((c) => ({
    loops: c.loops,
    asked: c.asked,
    passes: c.passes.map((p) => p.number),
    accuracy: figure(c.accuracy),
    finish: figure(c.finish),
  })),
});

const estimateJson = (e: Estimate, inventedRates: boolean): Json => ({
  hours: {
    passes: e.passes.map((p) => ({ pass: p.pass, length: figure(p.length), minutes: figure(p.minutes) })),
    threading: figure(e.threading),
    travel: figure(e.travel),
    stops: figure(e.stops),
    drilling: figure(e.drilling),
    setUp: figure(e.setUp),
    programming: figure(e.programming),
    attended: figure(e.attended),
    unattended: figure(e.unattended),
    total: figure(e.total),
  },
  wireUsed: { length: figure(e.wireLength), mass: figure(e.wireMass), spools: figure(e.spools) },
  stack: e.stack,
  metal: e.metal && { mass: figure(e.metal.mass), suppliedBy: e.metal.suppliedBy, cost: e.metal.cost && figure(e.metal.cost) },
  price: {
    currency: e.currency,
    ratesFrom: e.ratesFrom,
    inventedRates,
    each: figure(e.each),
    lines: e.lines.map((l, i) => ({ name: printPlain(l.cost.name), per: l.per, cost: figure(l.cost), amount: e.order.lines[i] })),
    quantity: e.order.quantity,
    markup: e.order.markup,
    rounding: e.order.rounding,
    total: e.order.total,
    breaks: e.breaks.map((b) => ({ quantity: b.quantity, each: figure(b.each), total: figure(b.total) })),
  },
});
