/** The error budget: shares that add up as they should, a remedy for the greatest, and figures that can be asked why. */

import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { standardMachine } from '../physics/cut/machine.ts';
import { findMaterial } from '../physics/material/find-material.ts';
import type { Material } from '../physics/material/material.ts';
import { planned, plate, questionFor } from '../plan/plan.fixture.ts';
import { sentenceOf } from '../text/finding.fixture.ts';
import { explain, explainLines } from '../text/print/explain.ts';
import { printPlain } from '../text/print/print.ts';
import { errorBudget } from './budget.ts';
import { budgetFindings, budgetsOf } from './budget-of-plan.ts';
import type { BudgetQuestion } from './budget-question.ts';
import { besideProfile } from './errors-around.ts';

const material = (id: string): Material => {
  const found = findMaterial(id);
  if (found.kind !== 'material') throw new Error(id);
  return found.material;
};

const plan = planned(questionFor(plate()));

const ask = (changes: Partial<BudgetQuestion> = {}): BudgetQuestion => ({
  of: { kind: 'profile', extent: 120, tightestPath: 0.6 },
  tolerance: 0.02,
  passes: plan.passes,
  machine: standardMachine,
  material: material('d2'),
  opened: 0.3,
  ...changes,
});

const share = (question: BudgetQuestion, name: RegExp): number =>
  there(errorBudget(question).rows.find((r) => name.test(printPlain(r.figure.name)))).figure.value;

describe('an error budget', () => {
  it('adds what is systematic, takes the root of squares of what is random, and shares out the whole', () => {
    const budget = errorBudget(ask({ temperatures: { cutting: 23, measuring: 22, swing: 1 } }));
    const values = (kind: string): number[] => budget.rows.filter((r) => r.kind === kind).map((r) => r.figure.value);
    const added = values('systematic').reduce((a, b) => a + b, 0);
    const squares = Math.sqrt(values('random').reduce((a, b) => a + b * b, 0));
    expect(budget.systematic.value).toBeCloseTo(added, 9);
    expect(budget.random.value).toBeCloseTo(squares, 9);
    expect(budget.total.value).toBeCloseTo(added + 2 * squares, 9);
    expect(budget.rows.reduce((sum, r) => sum + r.share, 0)).toBeCloseTo(1, 9);
    expect(budget.rows.map((r) => r.share)).toEqual(budget.rows.map((r) => r.share).toSorted((a, b) => b - a));
    expect(budget.biggest.row).toBe(budget.rows[0]);
  });

  it('knows what a warm block does: 100 mm of 10.4e-6/K grow by 5.2 µm in 5 °C', () => {
    const size = { kind: 'size', name: 'length', length: 100, sides: 2 } as const;
    const warm = ask({ of: size, temperatures: { cutting: 25, measuring: 20, swing: 0 } });
    expect(share(warm, /cut away/)).toBeCloseTo(5.2, 9);
    expect(share(warm, /measured away/)).toBe(0);
    expect(share(warm, /variation/)).toBe(0);
    expect(
      printPlain(
        errorBudget(ask({ of: { ...size, length: 2000 }, temperatures: { cutting: 30, measuring: 20, swing: 1 } })).biggest.sentence,
      ),
    ).toMatch(/from 30 to 20 °C/);
  });

  it('counts the error of a face on each side of a size, and no arc', () => {
    const one = ask({ of: { kind: 'size', name: 'step', length: 40, sides: 1 } });
    const two = ask({ of: { kind: 'size', name: 'width', length: 40, sides: 2 } });
    expect(share(two, /bow/)).toBeCloseTo(2 * share(one, /bow/), 9);
    expect(share(two, /offset/)).toBeCloseTo(2 * share(one, /offset/), 9);
    expect(errorBudget(two).rows.some((r) => /arc/.test(printPlain(r.figure.name)))).toBe(false);
  });

  it('gets smaller with skims, and moves more in aluminium than in carbide', () => {
    const rough = ask({ passes: [plan.passes[0]] });
    expect(errorBudget(rough).total.value).toBeGreaterThan(2 * errorBudget(ask()).total.value);
    expect(printPlain(errorBudget({ ...rough, confidence: 1 }).biggest.sentence)).toMatch(/One more skim would leave/);
    expect(printPlain(errorBudget(rough).biggest.sentence)).toMatch(/stress relief/);
    expect(share(ask({ material: material('6061') }), /stress/)).toBeGreaterThan(
      5 * share(ask({ material: material('wc-6co') }), /stress/),
    );
  });

  it('can be asked why, down to the drawing and the trade', () => {
    const lines = explainLines(explain(errorBudget(ask()).total)).join('\n');
    expect(lines).toMatch(/budget\.random/);
    expect(lines).toMatch(/common practice: common practice/);
    expect(lines).toMatch(/drawing: the drawing/);
  });

  it('is taken from a plan with its largest contour, and says where the tolerance is not sure', () => {
    const question = {
      machine: standardMachine,
      material: material('d2'),
      sizes: [{ name: 'bore', length: 16, tolerance: 0.001, sides: 2 as const }],
      around: { extent: 120, insideRadii: [], opened: 0.3 },
    };
    const { profile, sizes } = budgetsOf(plan, { ...question, tolerance: 0.02 });
    expect(profile.of).toMatchObject({ kind: 'profile' });
    expect(profile.of.kind === 'profile' && profile.of.extent).toBeCloseTo(120, 2);
    expect(there(sizes[0]).total.key).toBe('budget.size.1.total');
    const codes = budgetFindings({ profile, sizes }).map((f) => f.code);
    expect(codes).toEqual(['budget-over-tolerance']);
    expect(sentenceOf(budgetFindings({ profile, sizes })[0])).toMatch(/bore, 16 mm/);
    const tight = budgetsOf(plan, { ...question, tolerance: 0.001 });
    const said = (assumed: boolean) => budgetFindings(tight, assumed).map(sentenceOf);
    expect(said(false)[0]).toMatch(/expected on the profile, ±1\.0 µm required\./);
    expect(said(true)[0]).toMatch(/expected on the profile, ±1\.0 µm assumed\./);
    expect(said(true)[1]).toMatch(/bore, 16 mm; ±1\.0 µm required\./);
  });

  it('is what is expected of every family of passes, and that of the first by the passes of the first', () => {
    const around = { extent: 80, insideRadii: [0.2, 0.25, 4], opened: 0.3 };
    const temperatures = { cutting: 23, measuring: 22, swing: 0.5 };
    const asked = { material: material('d2'), temperatures };
    const job = { ...questionFor(plate()), tolerance: 0.03, confidence: 2.5, beside: besideProfile(around, asked) };
    const some = planned({ ...job, requirements: { L3: { finish: 0.4, tolerance: 0.02 }, L4: { finish: 3.2, tolerance: 0.2 } } });
    expect(some.classes).toHaveLength(3);
    for (const { passes, accuracy } of there(some.classes)) {
      const alone = { ...some, passes, classes: undefined };
      const { profile } = budgetsOf(alone, { ...job, ...asked, sizes: [], around });
      expect(profile.total.value / 1000).toBeCloseTo(accuracy.value, 9);
      if (passes === some.classes?.[0].passes)
        expect(budgetsOf(some, { ...job, ...asked, sizes: [], around }).profile.total.value).toBe(profile.total.value);
    }
  });
});
