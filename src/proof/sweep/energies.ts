/**
 * With what energy the wire cuts, told by the width of its kerf: the widest gap is that of the rough cut, the narrowest that of the last
 * pass, and where gaps are equal the place in the list of passes decides. Geometry alone sees neither a skim that runs in full metal nor a
 * face that was left rough within the tolerance.
 */
import type { ProofQuestion, Wanted, WantedOpen } from '../proof.ts';

/** Kerfs, mm, nearer to each other than this are of one energy. */
const SAME_ENERGY = 1e-6;

/** One pass of the job. */
export interface Pass {
  /** Condition, or register where the program chooses none. */
  readonly setting: number;
  /** Half of its kerf, mm. */
  readonly radius: number;
  /** Contours that are cut in passes of their own have families of passes, each with its rough cut and its last one; one family when left out. */
  readonly family?: number | undefined;
}

/** Those that the set-up names, in its order; else those that the program uses, from the widest kerf to the narrowest, one of each kerf. */
export const passesOf = (used: readonly Pass[], asked: Asked): readonly Pass[] => {
  const { wireDiameter, gaps, passes } = asked;
  const families = familiesOf(asked);
  const planned = [...new Set(passes)].flatMap((setting) => {
    const gap = gaps.get(setting);
    return gap === undefined ? [] : [{ setting, radius: wireDiameter / 2 + gap, ...families(setting) }];
  });
  if (planned.length > 0) return planned;
  const widest = [...used].sort((a, b) => b.radius - a.radius);
  return widest.filter((pass, n) => n === 0 || (widest[n - 1]?.radius ?? 0) - pass.radius > SAME_ENERGY);
};

type Asked = Pick<ProofQuestion, 'wireDiameter' | 'gaps' | 'passes'> & {
  readonly wanted?: readonly Wanted[] | undefined;
  readonly wantedOpen?: readonly WantedOpen[] | undefined;
};

const familiesOf = ({ wanted = [], wantedOpen = [] }: Asked): ((setting: number) => Pick<Pass, 'family'>) => {
  const lists = [...wanted, ...wantedOpen].flatMap((w) => (w.passes === undefined ? [] : [w.passes]));
  return (setting) => {
    const family = lists.find((list) => list.includes(setting))?.[0];
    return family === undefined ? {} : { family };
  };
};

/** Whose energy a cut has. */
export interface Energy {
  /** Number in the list of passes; none where a cut is of no pass. */
  readonly pass?: number | undefined;
  readonly isRough: boolean;
  readonly isLast: boolean;
}

export const energyOf = (cut: Pass, passes: readonly Pass[]): Energy => {
  const family = passes.find((p) => p.setting === cut.setting)?.family;
  const isOwn = (pass: Pass): boolean => family === undefined || pass.family === family;
  const same = passes.flatMap((pass, n) => (isOwn(pass) && Math.abs(pass.radius - cut.radius) <= SAME_ENERGY ? [n] : []));
  const own = same.find((n) => passes[n]?.setting === cut.setting);
  const pass = own ?? (same.length === 1 ? same[0] : undefined);
  const radii = passes.filter(isOwn).map((p) => p.radius);
  // Of passes with one kerf the first may be the rough and the last one the finish; what is no pass has a kerf and nothing else.
  return {
    pass,
    isRough: cut.radius >= Math.max(...radii) - SAME_ENERGY && (own === undefined || own === same[0]),
    isLast: cut.radius <= Math.min(...radii) + SAME_ENERGY && (own === undefined || own === same.at(-1)),
  };
};
