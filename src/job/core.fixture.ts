/** For tests of openings that are cut without a core: a plan written, read back and proven, also with every single move looked at by itself. */

import { there } from '../../test/there.ts';
import { standardDialect } from '../nc/dialect/dialect.ts';
import type { Action } from '../nc/read/program.ts';
import { readProgram } from '../nc/read/read.ts';
import { writeProgram } from '../nc/write/write.ts';
import { planCut } from '../plan/cut/plan-cut.ts';
import type { CutPlan } from '../plan/plan.ts';
import type { PlanQuestion } from '../plan/question.ts';
import type { Proof, ProofQuestion } from '../proof/proof.ts';
import { proveActions } from '../proof/prove/prove.ts';
import { printPlain } from '../text/print/print.ts';

export interface Proved {
  readonly plan: CutPlan;
  readonly proof: Proof;
  /** The proof of the same moves with a stop between any two, so that whatever hangs on nothing after any one of them is seen. */
  readonly byMove: () => Proof;
  /** The proof of other moves in the place of these. */
  readonly instead: (change: (actions: readonly Action[]) => readonly Action[]) => Proof;
}

/** Throws where the plan is refused or cannot be written or read. */
export const proved = (question: PlanQuestion): Proved => {
  const plan = planCut(question);
  if (plan.kind !== 'cut') throw new Error(plan.findings.map((f) => printPlain(f.text)).join(' '));
  const written = writeProgram(plan, standardDialect, { name: 'test', date: '2026-11-25', notes: [] });
  if (written.kind !== 'written') throw new Error(written.findings.map((f) => printPlain(f.text)).join(' '));
  const read = readProgram(written.text, standardDialect, written.registers);
  if (read.state !== 'read') throw new Error(read.findings.map((f) => printPlain(f.text)).join(' '));
  const asked: ProofQuestion = {
    program: written.text,
    dialect: standardDialect,
    registers: written.registers,
    wireDiameter: plan.wire.diameter,
    gaps: written.gaps,
    wanted: plan.contours.map(({ loop, kept }) => ({ loop, kept, contour: there(question.loops.find((l) => l.id === loop)).contour })),
    block: plan.block,
    holes: plan.contours.filter((c) => c.hole.origin !== 'block edge').map((c) => c.hole),
    height: question.height,
    density: question.material.density.value,
    tolerance: question.tolerance,
    insideCorner: question.insideCorner,
  };
  return {
    plan,
    proof: proveActions(read.actions, asked, read.blocks),
    byMove: () => proveActions(read.actions.flatMap(stopBehind), asked, read.blocks),
    instead: (change) => proveActions(change(read.actions), asked, read.blocks),
  };
};

const stopBehind = (action: Action): readonly Action[] =>
  action.kind === 'move' && !action.rapid
    ? [action, { kind: 'stop', block: action.block, optional: false, comment: '', purpose: 'other' }]
    : [action];
