/** For tests: a job through planner and writer, and the question that its program puts to the proof. */

import { path } from '../src/geometry/contour.ts';
import { type Dialect, standardDialect } from '../src/nc/dialect/dialect.ts';
import { writeProgram } from '../src/nc/write/write.ts';
import { planned } from '../src/plan/plan.fixture.ts';
import type { PlanQuestion } from '../src/plan/question.ts';
import { slitOf } from '../src/plan/start/block-edge.ts';
import type { ProofQuestion } from '../src/proof/proof.ts';
import { printPlain } from '../src/text/print/print.ts';
import { there } from './there.ts';

const words = { thread: 'M70', cutWire: 'M71', condition: 'E{n}' };
export const inControl: Dialect = { ...standardDialect, words };
export const inPath: Dialect = { ...standardDialect, compensation: 'path', words };

/** The question that the plan's program puts to the proof: what is wanted comes from the drawing, holes and leads from the plan. */
export const asked = (question: PlanQuestion, dialect: Dialect): ProofQuestion => {
  const plan = planned(question);
  const written = writeProgram(plan, dialect, { name: 'TEST', date: '', notes: [] });
  if (written.kind === 'refused') throw new Error(written.findings.map((f) => printPlain(f.text)).join(' '));
  const leads = [...plan.contours.map(slitOf), ...(plan.openCuts ?? []).flatMap((o) => o.leads)].filter((l) => l !== undefined);
  const ends = (plan.openCuts ?? []).flatMap((o) => [o.from, o.to].filter((e) => e.kind === 'hole'));
  return {
    program: written.text,
    dialect,
    registers: written.registers,
    wireDiameter: plan.wire.diameter,
    gaps: written.gaps,
    passes: [...written.gaps.keys()],
    wanted: plan.contours.map((c) => ({ loop: c.loop, contour: there(question.loops.find((l) => l.id === c.loop)).contour, kept: c.kept })),
    wantedOpen: [
      ...(question.open ?? []).map((o) => ({ chain: o.id, path: o.path, kept: o.kept })),
      ...leads.map((l, i) => ({ chain: `lead ${i}`, path: path([l]), kept: 'slit' as const })),
    ],
    block: plan.block,
    holes: [...plan.contours.map((c) => c.hole).filter((h) => h.origin !== 'block edge'), ...ends],
    height: question.height,
    density: question.material.density.value,
    tolerance: question.tolerance,
    insideCorner: question.insideCorner,
  };
};
