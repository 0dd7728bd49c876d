/**
 * With what energy the wire cuts, told by the width of its kerf: the widest gap is that of the rough cut, the narrowest that of the last
 * pass, and where gaps are equal the place in the list of passes decides. Geometry alone sees neither a skim that runs in full metal nor a
 * face that was left rough within the tolerance.
 */
import type { ProofQuestion } from '../proof.ts';

/** Kerfs, mm, nearer to each other than this are of one energy. */
const SAME_ENERGY = 1e-6;

/** One pass of the job. */
export interface Pass {
  /** Condition, or register where the program chooses none. */
  readonly setting: number;
  /** Half of its kerf, mm. */
  readonly radius: number;
}

/** Those that the set-up names, in its order; else those that the program uses, from the widest kerf to the narrowest, one of each kerf. */
export const passesOf = (used: readonly Pass[], { wireDiameter, gaps, passes }: Asked): readonly Pass[] => {
  const planned = [...new Set(passes)].flatMap((setting) => {
    const gap = gaps.get(setting);
    return gap === undefined ? [] : [{ setting, radius: wireDiameter / 2 + gap }];
  });
  if (planned.length > 0) return planned;
  const widest = [...used].sort((a, b) => b.radius - a.radius);
  return widest.filter((pass, n) => n === 0 || (widest[n - 1]?.radius ?? 0) - pass.radius > SAME_ENERGY);
};

type Asked = Pick<ProofQuestion, 'wireDiameter' | 'gaps' | 'passes'>;

/** Whose energy a cut has. */
export interface Energy {
  /** Number in the list of passes; none where a cut is of no pass. */
  readonly pass?: number | undefined;
  readonly isRough: boolean;
  readonly isLast: boolean;
}

export const energyOf = (cut: Pass, passes: readonly Pass[]): Energy => {
  const same = passes.flatMap(({ radius }, n) => (Math.abs(radius - cut.radius) <= SAME_ENERGY ? [n] : []));
  const own = same.find((n) => passes[n]?.setting === cut.setting);
  const pass = own ?? (same.length === 1 ? same[0] : undefined);
  const radii = passes.map((p) => p.radius);
  // Of passes with one kerf the first may be the rough and the last one the finish; what is no pass has a kerf and nothing else.
  return {
    pass,
    isRough: cut.radius >= Math.max(...radii) - SAME_ENERGY && (own === undefined || own === same[0]),
    isLast: cut.radius <= Math.min(...radii) + SAME_ENERGY && (own === undefined || own === same.at(-1)),
  };
};
