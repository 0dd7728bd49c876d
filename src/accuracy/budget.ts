/** The error budget: where the error of a profile or of a size comes from, which share is the biggest, and what would lower it. */
import { lagOnArc } from '../physics/cut/corner-error.ts';
import { gapDoubt, shiftInMicrometres } from '../plan/wire/deviation-of-passes.ts';
import { deviationOf, type Figure, given } from '../quantity/figure.ts';
import { apply } from '../quantity/formula.ts';
import type { Unit } from '../text/unit.ts';
import { type BudgetQuestion, type Cause, chilled, type Toleranced } from './budget-question.ts';
import { remedyFor } from './budget-remedies.ts';
import {
  addedUp,
  awayFromReference,
  gapError,
  overSides,
  repeatability,
  rootOfSquares,
  stressLeft,
  stressRate,
  stressRelease,
  swingTogether,
} from './error-shares.ts';
import { growthLeft } from './program-scale.ts';
import { thermalGrowth } from './thermal-growth.ts';

/** `systematic` goes the same way every time and is added; `random` goes this way and that: root of the sum of squares. */
export interface BudgetRow {
  readonly name: string;
  /** µm, one standard deviation where it is random. */
  readonly figure: Figure;
  readonly kind: 'systematic' | 'random';
  /** Of the total, 0 to 1; all rows together make 1. */
  readonly share: number;
  readonly remedy: string;
}

export interface Budget {
  readonly of: Toleranced;
  /** Either side of the drawing, mm. */
  readonly tolerance: number;
  /** The greatest share first. */
  readonly rows: readonly BudgetRow[];
  /** µm */
  readonly systematic: Figure;
  readonly random: Figure;
  readonly total: Figure;
  readonly biggest: { readonly row: BudgetRow; readonly sentence: string };
}

/** There must be at least one pass. */
export const errorBudget = (question: BudgetQuestion): Budget => {
  const shares = sharesOf(question);
  const only = (kind: BudgetRow['kind']): readonly Figure[] => shares.filter((s) => s.kind === kind).map((s) => s.figure);
  const named = namer(question);
  const systematic = addedUp(only('systematic'), { key: named('systematic'), name: 'systematic errors, added' });
  const random = rootOfSquares(only('random'), { key: named('random'), name: 'random errors, root of squares' });
  const total = addedUp([systematic, random], { key: named('total'), name: 'error to be expected' });
  const rows = shares
    .map((s) => ({ ...s, share: shareOf(s, random.value, total.value), remedy: remedyFor(s.what, s.figure.value, question) }))
    .toSorted((a, b) => b.share - a.share)
    .map(({ what: _, ...row }): BudgetRow => row);
  return { of: question.of, tolerance: question.tolerance, rows, systematic, random, total, biggest: biggestOf(rows, total) };
};

interface Share {
  readonly what: Cause;
  readonly name: string;
  readonly figure: Figure;
  readonly kind: BudgetRow['kind'];
}

const sharesOf = (question: BudgetQuestion): readonly Share[] => {
  const { machine } = question;
  const key = namer(question);
  const positioning = shop('machine.positioning', 'positioning of the machine', machine.positioning, 'µm', machine.name);
  const share = (what: Cause, name: string, kind: BudgetRow['kind'], figure: Figure): Share => ({
    what,
    name,
    kind,
    figure: { ...figure, key: key(what), name },
  });
  return [
    share('barrel', 'barrel and lag that the last pass leaves', 'systematic', onSides(question, barrelOf(question), key('barrel'))),
    ...registerOf(question).map((figure) => share('register', 'registers set by hand', 'systematic', figure)),
    ...cornerOf(question).map((figure) => share('corner', 'wire lag on the tightest arc', 'systematic', figure)),
    ...heatOf(question).map(({ what, name, kind, figure }) => share(what, name, kind, figure)),
    share('gap', 'error of offset and gap', 'random', onSides(question, gapOf(question), key('gap'))),
    share('stress', 'stress let go in the block', 'random', stressOf(question)),
    share('positioning', 'positioning of the machine', 'random', positioning),
    share('repeatability', 'from one piece to the next', 'random', repeatability),
  ];
};

const namer =
  ({ key = 'budget' }: BudgetQuestion) =>
  (what: string): string =>
    `${key}.${what}`;

const shop = (key: string, name: string, value: number, unit: Unit, source: string): Figure =>
  given({ key, name, value, unit, basis: source === 'the drawing' ? 'drawing' : 'shop', source });

const barrelOf = ({ passes }: BudgetQuestion): Figure => passes.at(-1)!.formError;

const gapOf = ({ passes, factors }: BudgetQuestion): Figure =>
  apply(gapError, { gap: passes.at(-1)!.gap, doubt: gapDoubt(factors?.gap) }, { key: 'budget.gap-side' });

/** A profile is judged face by face; a size has as many faces as it has sides. */
const onSides = ({ of }: BudgetQuestion, error: Figure, key: string): Figure =>
  of.kind === 'profile'
    ? error
    : apply(overSides, { error, sides: shop(`${key}-sides`, 'cut faces of the size', of.sides, '1', 'the drawing') }, { key });

/** The face is off by as much as the last register is, side by side. */
const registerOf = (question: BudgetQuestion): readonly Figure[] =>
  question.shift === undefined
    ? []
    : [onSides(question, apply(shiftInMicrometres, { shift: question.shift }, { key: 'budget.register-side' }), 'budget.register')];

/** Not in a size: it is measured on its flanks. */
const cornerOf = (question: BudgetQuestion): readonly Figure[] => {
  const { of } = question;
  if (of.kind !== 'profile' || of.tightestPath === undefined) return [];
  const radius = shop('budget.tightest-path', 'wire path round the tightest inside arc', of.tightestPath, 'mm', 'the drawing');
  return [apply(lagOnArc, { lag: barrelOf(question), radius }, { key: 'budget.corner' })];
};

const heatOf = (question: BudgetQuestion): readonly Share[] => {
  const { cutting, measuring, swing, scale = false } = question.temperatures ?? chilled;
  const length = lengthThatGrows(question);
  const { expansion } = question.material;
  const away = (key: string, name: string, value: number): Figure =>
    apply(awayFromReference, { temperature: shop(`temperature.${key}`, name, value, '°C', 'the job') }, { key: `temperature.${key}-away` });
  const growth = (rise: Figure): Figure => apply(thermalGrowth, { expansion, length, rise }, { key: 'growth' });
  const each = (key: string, name: string): Figure => given(assumedSwing(key, name, swing));
  const together = apply(
    swingTogether,
    { cutting: each('cutting-swing', 'swing of water and part while cutting'), measuring: each('measuring-swing', 'swing of the room') },
    { key: 'temperature.swing' },
  );
  const rise = away('cutting', 'temperature of the part while it is cut', cutting);
  const cut = scale ? apply(growthLeft, { doubt: expansionDoubt(expansion), length, rise }, { key: 'growth' }) : growth(rise);
  const read = growth(away('measuring', 'temperature of the part while it is measured', measuring));
  return [
    {
      what: 'thermal',
      name: scale ? 'growth: what scaling the program leaves' : 'growth: cut away from 20 °C',
      kind: 'systematic',
      figure: cut,
    },
    { what: 'measuring', name: 'growth: measured away from 20 °C', kind: 'systematic', figure: read },
    { what: 'temperature', name: 'swings of temperature', kind: 'random', figure: growth(together) },
  ];
};

const expansionDoubt = (expansion: Figure): Figure =>
  given({
    key: 'material.expansion-doubt',
    name: 'doubt about the expansion',
    value: deviationOf(expansion),
    unit: '1e-6/K',
    basis: 'assumed',
    source: expansion.source,
  });

const assumedSwing = (key: string, name: string, value: number) =>
  ({ key: `temperature.${key}`, name, value, unit: 'K', basis: 'common practice', source: 'common-practice' }) as const;

const lengthThatGrows = (question: BudgetQuestion): Figure =>
  question.of.kind === 'profile'
    ? shop('budget.half-extent', 'half the extent of the largest contour', question.of.extent / 2, 'mm', 'the drawing')
    : shop(namer(question)('length'), `size ${question.of.name}`, question.of.length, 'mm', 'the drawing');

const stressOf = (question: BudgetQuestion): Figure =>
  apply(
    stressRelease,
    {
      rate: stressRate(question.material.family),
      length: lengthThatGrows(question),
      opened: shop('budget.opened', 'share of the block cut loose', question.opened, '1', 'the drawing'),
      left: stressLeft,
      skims: shop('budget.skims', 'skims', question.passes.length - 1, '1', 'the plan'),
    },
    { key: 'budget.stress' },
  );

/** A random error counts by what its square has of all squares. */
const shareOf = ({ kind, figure }: Share, random: number, total: number): number => {
  if (total === 0) return 0;
  if (kind === 'systematic') return figure.value / total;
  return random === 0 ? 0 : figure.value ** 2 / random / total;
};

const biggestOf = (rows: readonly BudgetRow[], total: Figure): Budget['biggest'] => {
  const row = rows[0]!;
  const percent = Math.round(row.share * 100);
  return {
    row,
    sentence: `The biggest share is ${row.name}: ${row.figure.value.toFixed(1)} µm, ${percent} % of the ${total.value.toFixed(1)} µm in all. ${row.remedy}`,
  };
};
