/**
 * How much of the tolerance the program itself may use up: the wire's lag, the gap, the axes and the heat need the rest, and a register 7.5 µm off
 * within ±8 µm leaves them nothing. Common practice (gauges may use a tenth to a quarter of what they judge), no source.
 */
import type { ProofQuestion } from './proof.ts';

/** Of the tolerance, where nothing else is said. */
const PROGRAM_SHARE = 0.25;

/** mm: a control counts in whole micrometres, so a program can hardly be asked to be better. */
const LEAST = 1e-3;

/** mm by which what a program cuts may be off the contour it is aimed at. */
export const allowedTo = ({ tolerance, programShare = PROGRAM_SHARE }: Pick<ProofQuestion, 'tolerance' | 'programShare'>): number =>
  Math.min(tolerance, Math.max(LEAST, programShare * tolerance));

/** The question with the tolerance of one contour or line. */
export const ownTolerance = (
  question: ProofQuestion,
  { tolerance = question.tolerance }: { readonly tolerance?: number | undefined },
): ProofQuestion => (tolerance === question.tolerance ? question : { ...question, tolerance });

/** The question with the least tolerance of all that is wanted. */
export const tightest = (question: ProofQuestion): ProofQuestion =>
  ownTolerance(question, {
    tolerance: Math.min(question.tolerance, ...[...question.wanted, ...(question.wantedOpen ?? [])].flatMap((w) => w.tolerance ?? [])),
  });
