/**
 * With what energy the wire cuts, told by the width of its kerf: the widest gap is that of the rough cut, the narrowest that of the last
 * pass. Geometry alone sees neither a skim that runs in full metal nor a face that was left rough within the tolerance.
 */
import type { ProofQuestion } from '../proof.ts';

/** Kerfs, mm, nearer to each other than this are of one energy. */
export const SAME_ENERGY = 1e-6;

/** Half kerfs of the rough cut and of the last pass, mm. */
export interface Energies {
  readonly rough: number;
  readonly last: number;
}

/** mm; nothing where the gap of that condition, or register, is not known. */
export const halfKerf = ({ wireDiameter, gaps }: Pick<ProofQuestion, 'wireDiameter' | 'gaps'>, setting: number): number | undefined => {
  const gap = gaps.get(setting);
  return gap === undefined ? undefined : wireDiameter / 2 + gap;
};

/** From the passes that were planned, or else from those that the program uses. */
export const energiesOf = (radii: readonly number[], question: Pick<ProofQuestion, 'wireDiameter' | 'gaps' | 'passes'>): Energies => {
  const planned = question.passes?.flatMap((n) => halfKerf(question, n) ?? []) ?? [];
  let [rough, last] = [0, Infinity];
  for (const radius of planned.length > 0 ? planned : radii) [rough, last] = [Math.max(rough, radius), Math.min(last, radius)];
  return { rough, last };
};
