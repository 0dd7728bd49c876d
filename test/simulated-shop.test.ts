/**
 * A made-up shop of 2,000 jobs whose true errors are known: whether what the planner promises holds as often as it says. First by the
 * planner's own law, which must give the share that the formula has; then by laws it does not know, since no shop keeps to ours.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { conditions } from '../src/physics/cases.fixture.ts';
import type { CutConditions } from '../src/physics/cut/conditions.ts';
import { cutModel } from '../src/physics/cut/model.ts';
import type { ErrorsBeside } from '../src/plan/sureness.ts';
import { deviationNow } from '../src/plan/wire/deviation-of-passes.ts';
import { type Finished, findLadder, finishedBy, type LadderAsked } from '../src/plan/wire/find-ladder.ts';
import { heldShare, heldTogether } from '../src/quantity/confidence.ts';
import { lastOf } from '../src/sequence/sequence.ts';
import { type Random, seeded } from './seeded.ts';

const JOBS = 2000;
const CONTOURS = 8;
const CONFIDENCE = 2;

/** A job as planned; lengths in µm. */
interface Planned {
  readonly last: Finished;
  readonly asked: LadderAsked & { readonly beside: ErrorsBeside };
  readonly cut: CutConditions;
  readonly promised: number;
  readonly bias: number;
  readonly gap: number;
  /** One standard deviation of all that is random but the gap. */
  readonly others: number;
}

const between = (random: Random, low: number, high: number): number => low + (high - low) * random();
const oneOf = <T>(random: Random, all: readonly T[]): T => all[Math.floor(random() * all.length)] as T;

/** Of a standard normal spread, by Box and Muller. */
const normal = (random: Random): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Student's t of 4 degrees of freedom, brought to a spread of 1: one in 140 lies beyond 3 of them, not one in 370. */
const heavy = (random: Random): number => {
  const squares = [1, 2, 3, 4].reduce((sum) => sum + normal(random) ** 2, 0);
  return normal(random) / Math.sqrt(squares / 4) / Math.SQRT2;
};

const jobOf = (random: Random): Planned[] => {
  const cut = conditions({ material: oneOf(random, ['d2', '304', 'wc-6co', 'ti-6al-4v', '6061']), height: between(random, 8, 120) });
  const beside: ErrorsBeside = {
    growth: oneOf(random, [0, 0, between(random, 0, 1)]),
    swing: between(random, 0.2, 1),
    repeatability: 0.8,
    stress: between(random, 0.3, 8),
    stressLeft: 0.3,
    insideRadii: [],
    sides: 1,
  };
  const asked = { finish: oneOf(random, [0.4, 0.8, 1.2, 1.6]), tolerance: between(random, 0.008, 0.03), confidence: CONFIDENCE, beside };
  const ladder = findLadder(cut, asked);
  if (ladder.kind !== 'found') return [];
  const model = cutModel(cut);
  const skims = ladder.energies.length - 1;
  const formError = ladder.energies.slice(1).reduce((left) => model.formErrorAfter(left), model.formErrorStart);
  return [plannedWith(cut, finishedBy(cut, model, { energy: lastOf(ladder.energies), formError, skims }), asked)];
};

const plannedWith = (cut: CutConditions, last: Finished, asked: Planned['asked']): Planned => {
  const { beside } = asked;
  const others = Math.hypot(cut.machine.positioning, beside.stress * beside.stressLeft ** last.skims, beside.swing, beside.repeatability);
  const promised = deviationNow(cut, last, asked) * 1000;
  return { last, asked, cut, promised, bias: last.formError + beside.growth, gap: last.gapDoubt * 1000, others };
};

const shopOf = (seed: number): readonly Planned[] => {
  const random = seeded(seed);
  const jobs: Planned[] = [];
  while (jobs.length < JOBS) jobs.push(...jobOf(random));
  return jobs;
};

/** True errors of the contours of one job, µm. */
type Law = (job: Planned, random: Random) => readonly number[];

const contours = (one: () => number): readonly number[] => Array.from({ length: CONTOURS }, one);

/** As the planner has it, each contour by itself. */
const own: Law = ({ bias, gap, others }, random) => contours(() => bias + gap * normal(random) + others * normal(random));

/** The gap is off by the same on every contour of a job. */
const sharedGap: Law = ({ bias, gap, others }, random) => {
  const common = gap * normal(random);
  return contours(() => bias + common + others * normal(random));
};

/** Bias and spread of this job are up to 30 % off what the planner thinks, its gap is common, and what is left has a heavy tail. */
const otherShop: Law = ({ bias, gap, others }, random) => {
  const [more, wider] = [between(random, 0.7, 1.3), between(random, 0.7, 1.3)];
  const common = wider * gap * normal(random);
  return contours(() => more * bias + common + wider * others * heavy(random));
};

const heldOf = (jobs: readonly Planned[], law: Law, seed: number): { readonly each: number; readonly all: number } => {
  const random = seeded(seed);
  let [each, all] = [0, 0];
  for (const job of jobs) {
    const held = law(job, random).filter((error) => Math.abs(error) <= job.promised).length;
    each += held;
    all += held === CONTOURS ? 1 : 0;
  }
  return { each: (100 * each) / (jobs.length * CONTOURS), all: (100 * all) / jobs.length };
};

const shop = shopOf(1);

describe('a simulated shop of 2,000 jobs', () => {
  it.each([0, 0.2, 0.7, 1.5])('keeps its promises as often as the formula says, with a bias of %s standard deviations', (share) => {
    const jobs = shop.map(({ cut, last, asked, gap, others }) =>
      plannedWith(cut, { ...last, formError: share * Math.hypot(gap, others) }, { ...asked, beside: { ...asked.beside, growth: 0 } }),
    );
    expect(Math.abs(heldOf(jobs, own, 2).each - 100 * heldShare(CONFIDENCE, share))).toBeLessThan(1.5);
  });

  it.each([
    ['own', own],
    ['shared gap', sharedGap],
    ['scale 30 % off, shared gap, heavy tail', otherShop],
  ] as const)('holds the promise of at least 95 of 100 contours where errors go by the law: %s', (_, law) => {
    expect(heldOf(shop, law, 3).each).toBeGreaterThanOrEqual(95);
  });

  it('prints in docs/confidence.md what came out', () => {
    const page = readFileSync('docs/confidence.md', 'utf8');
    for (const law of [own, sharedGap, otherShop]) {
      const { each, all } = heldOf(shop, law, 3);
      expect(page).toContain(`| ${each.toFixed(1)} | ${all.toFixed(1)} |`);
    }
  });

  it('says how likely all contours of a part hold, where the gap is common to them', () => {
    const said = shop.reduce(
      (sum, { bias, gap, others }) =>
        sum +
        heldTogether(CONFIDENCE, { bias: bias / Math.hypot(gap, others), shared: gap ** 2 / (gap ** 2 + others ** 2), contours: CONTOURS }),
      0,
    );
    expect(Math.abs((100 * said) / JOBS - heldOf(shop, sharedGap, 4).all)).toBeLessThan(2);
  });

  it('plans finishes so that at most 16 + 3 in 100 faces exceed their limit, also where spreads are 30 % off', () => {
    const random = seeded(5);
    const failed = shop.filter(({ last, asked }) => {
      const spread = last.raSpread * between(random, 0.7, 1.3);
      return last.ra * Math.exp(spread * normal(random)) > asked.finish;
    }).length;
    expect((100 * failed) / JOBS).toBeLessThanOrEqual(19);
  });
});
