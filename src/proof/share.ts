/**
 * How much of the tolerance the program itself may use up: the wire's lag, the gap, the axes and the heat need the rest, and a register 7.5 µm off
 * within ±8 µm leaves them nothing. Common practice (gauges may use a tenth to a quarter of what they judge), no source.
 */
import type { ContourProof, Proof, ProofQuestion } from './proof.ts';

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

/** mm: most that what was cut is off the contours aimed at, rounds that inside corners may have left out. */
export const mostOff = (judged: readonly Pick<ContourProof, 'leftMost' | 'gougeMost'>[]): number =>
  Math.max(0, ...judged.flatMap(({ leftMost, gougeMost }) => [leftMost.amount, -gougeMost.amount]));

/** mm: what the program itself takes of the tolerance of some contours and lines, fit of curves and all. */
export const usedOn = ({ use, contours, open = [] }: Pick<Proof, 'use' | 'contours' | 'open'>, ids: readonly string[]): number =>
  mostOff([...contours.filter((c) => ids.includes(c.loop)), ...open.filter((o) => ids.includes(o.chain))]) + (use?.fit ?? 0);
