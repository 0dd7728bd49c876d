/** The error budget: where the error of a profile or of a size comes from, which share is the biggest, and what would lower it. */

import { lagOnArc } from '../physics/cut/corner-error.ts';
import { positioningOf } from '../physics/cut/machine-leaves.ts';
import { gapDoubt, shiftInMicrometres } from '../plan/wire/deviation-of-passes.ts';
import { confidenceOf, heldTogether, usualConfidence } from '../quantity/confidence.ts';
import { deviationOf, type Figure, type Given, given } from '../quantity/figure.ts';
import { apply } from '../quantity/formula.ts';
import type { Source } from '../quantity/source.ts';
import { saidBy } from '../quantity/source.ts';
import { firstItem, lastOf } from '../sequence/sequence.ts';
import { name as asName, fixed, quantity, um } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { Unit } from '../text/unit.ts';
import { type BudgetQuestion, type Cause, chilled, type Toleranced } from './budget-question.ts';
import { remedyFor } from './budget-remedies.ts';
import {
  addedUp,
  awayFromReference,
  gapError,
  overSides,
  promisedSpread,
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
  /** µm, one standard deviation where it is random. */
  readonly figure: Figure;
  readonly kind: 'systematic' | 'random';
  /** Of the total, 0 to 1; all rows together make 1. */
  readonly share: number;
  readonly remedy: Text;
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
  /** k, of the random errors in the total. */
  readonly confidence: number;
  /** Share of the variance of the random errors that all contours of a job have in common: a gap is wrong for all of them. */
  readonly common: number;
  readonly biggest: { readonly row: BudgetRow; readonly sentence: Text };
}

/** Whether more is expected than the tolerance allows: sentence, papers and findings all ask here. */
export const isOver = ({ total, tolerance }: Pick<Budget, 'total' | 'tolerance'>): boolean => total.value > tolerance * 1000;

/** Chance, 0 to 1, that every one of so many contours comes out as each is promised by itself. */
export const allHeld = ({ systematic, random, confidence, common }: Budget, contours: number): number =>
  heldTogether(confidence, { bias: systematic.value / random.value, shared: common, contours });

/** There must be at least one pass. */
export const errorBudget = (question: BudgetQuestion): Budget => {
  const shares = sharesOf(question);
  const only = (kind: BudgetRow['kind']): readonly Figure[] => shares.filter((s) => s.kind === kind).map((s) => s.figure);
  const named = namer(question);
  const systematic = addedUp(only('systematic'), { key: named('systematic'), name: say('accuracy.systematic')`systematic errors, added` });
  const random = rootOfSquares(only('random'), { key: named('random'), name: say('accuracy.random')`random errors, root of squares` });
  const { confidence = usualConfidence } = question;
  const spread = apply(promisedSpread, { random, confidence: confidenceOf(confidence) }, { key: named('spread') });
  const total = addedUp([systematic, spread], { key: named('total'), name: say('accuracy.total')`expected error` });
  const rows = shares
    .map((s) => ({
      ...s,
      share: shareOf(s, { random: random.value, confidence, total: total.value }),
      remedy: remedyFor(s.what, s.figure.value, question),
    }))
    .toSorted((a, b) => b.share - a.share)
    .map(({ what: _, ...row }): BudgetRow => row);
  const common = shares.reduce((sum, { what, figure }) => (what === 'gap' ? sum + figure.value ** 2 : sum), 0) / random.value ** 2;
  return {
    of: question.of,
    tolerance: question.tolerance,
    rows,
    systematic,
    random,
    total,
    confidence,
    common,
    biggest: biggestOf(rows, total),
  };
};

interface Share {
  readonly what: Cause;
  readonly figure: Figure;
  readonly kind: BudgetRow['kind'];
}

const sharesOf = (question: BudgetQuestion): readonly Share[] => {
  const key = namer(question);
  const share = (what: Cause, name: Text, kind: BudgetRow['kind'], figure: Figure): Share => ({
    what,
    kind,
    figure: { ...figure, key: key(what), name },
  });
  return [
    share(
      'barrel',
      say('accuracy.barrel')`bow and wire lag after the last pass`,
      'systematic',
      onSides(question, barrelOf(question), key('barrel')),
    ),
    ...registerOf(question).map((figure) => share('register', say('accuracy.register')`registers set by hand`, 'systematic', figure)),
    ...cornerOf(question).map((figure) => share('corner', say('accuracy.corner')`wire lag on the tightest arc`, 'systematic', figure)),
    ...heatOf(question).map(({ what, kind, figure }) => share(what, figure.name, kind, figure)),
    share('gap', say('accuracy.gap')`offset and gap`, 'random', onSides(question, gapOf(question), key('gap'))),
    share('stress', say('accuracy.stress')`stress relief in the block`, 'random', stressOf(question)),
    { what: 'positioning', kind: 'random', figure: positioningOf(question.machine) },
    { what: 'repeatability', kind: 'random', figure: repeatability },
  ];
};

const namer =
  ({ key = 'budget' }: BudgetQuestion) =>
  (what: string): string =>
    `${key}.${what}`;

const told = (key: string, name: Text, value: number, unit: Unit, source: Source, basis: Given['basis']): Figure =>
  given({ key, name, value, unit, basis, source });

const barrelOf = ({ passes }: BudgetQuestion): Figure => lastOf(passes).formError;

const gapOf = ({ passes }: BudgetQuestion): Figure => apply(gapError, { doubt: gapDoubt(lastOf(passes).gap) }, { key: 'budget.gap-side' });

/** A profile is judged face by face; a size has as many faces as it has sides. */
const onSides = ({ of }: BudgetQuestion, error: Figure, key: string): Figure =>
  of.kind === 'profile'
    ? error
    : apply(
        overSides,
        {
          error,
          sides: told(`${key}-sides`, say('accuracy.sides-of-size')`cut faces of the size`, of.sides, '1', saidBy.drawing, 'drawing'),
        },
        { key },
      );

/** The face is off by as much as the last register is, side by side. */
const registerOf = (question: BudgetQuestion): readonly Figure[] =>
  question.shift === undefined
    ? []
    : [onSides(question, apply(shiftInMicrometres, { shift: question.shift }, { key: 'budget.register-side' }), 'budget.register')];

/** Not in a size: it is measured on its flanks. */
const cornerOf = (question: BudgetQuestion): readonly Figure[] => {
  const { of } = question;
  if (of.kind !== 'profile' || of.tightestPath === undefined) return [];
  const radius = told(
    'budget.tightest-path',
    say('accuracy.budget-tightest-path')`wire path round the tightest inside arc`,
    of.tightestPath,
    'mm',
    saidBy.drawing,
    'drawing',
  );
  return [apply(lagOnArc, { lag: barrelOf(question), radius }, { key: 'budget.corner' })];
};

const heatOf = (question: BudgetQuestion): readonly Share[] => {
  const { cutting, measuring, swing, scale = false } = question.temperatures ?? chilled;
  const by =
    question.temperatures === undefined
      ? ({ source: saidBy.builtIn, basis: 'assumed' } as const)
      : ({ source: saidBy.job, basis: 'job' } as const);
  const length = lengthThatGrows(question);
  const { expansion } = question.material;
  const away = (key: string, name: Text, value: number): Figure =>
    apply(
      awayFromReference,
      { temperature: told(`temperature.${key}`, name, value, '°C', by.source, by.basis) },
      { key: `temperature.${key}-away` },
    );
  const growth = (rise: Figure): Figure => apply(thermalGrowth, { expansion, length, rise }, { key: 'growth' });
  const each = (key: string, name: Text): Figure =>
    given({
      key: `temperature.${key}`,
      name,
      value: swing,
      unit: 'K',
      basis: 'common practice',
      source: { file: 'common-practice' },
    });
  const together = apply(
    swingTogether,
    {
      cutting: each('cutting-swing', say('accuracy.cutting-swing')`temperature variation of water and part while cutting`),
      measuring: each('measuring-swing', say('accuracy.measuring-swing')`temperature variation of the measuring room`),
    },
    { key: 'temperature.swing' },
  );
  const rise = away('cutting', say('accuracy.cutting')`temperature of the part while it is cut`, cutting);
  const cut = scale ? apply(growthLeft, { doubt: expansionDoubt(expansion), length, rise }, { key: 'growth' }) : growth(rise);
  const read = growth(away('measuring', say('accuracy.measuring')`temperature of the part while it is measured`, measuring));
  return [
    {
      what: 'thermal',
      kind: 'systematic',
      figure: { ...cut, name: scale ? heat.scaled : heat.cut },
    },
    { what: 'measuring', kind: 'systematic', figure: { ...read, name: heat.measured } },
    { what: 'temperature', kind: 'random', figure: { ...growth(together), name: heat.swings } },
  ];
};

const heat = phrases('heat-share', {
  scaled: say`growth: what scaling the program leaves`,
  cut: say`growth: cut away from 20 °C`,
  measured: say`growth: measured away from 20 °C`,
  swings: say`temperature variation`,
});

const expansionDoubt = (expansion: Figure): Figure =>
  given({
    key: 'material.expansion-doubt',
    name: say('accuracy.material-expansion-doubt')`uncertainty of the expansion`,
    value: deviationOf(expansion),
    unit: '1e-6/K',
    basis: 'assumed',
    source: expansion.source,
  });

const lengthThatGrows = (question: BudgetQuestion): Figure =>
  question.of.kind === 'profile'
    ? told(
        'budget.half-extent',
        say('accuracy.budget-half-extent')`half the extent of the largest contour`,
        question.of.extent / 2,
        'mm',
        saidBy.drawing,
        'drawing',
      )
    : told(
        namer(question)('length'),
        say('accuracy.size')`size ${{ size: asName(question.of.name) }}`,
        question.of.length,
        'mm',
        saidBy.drawing,
        'drawing',
      );

const stressOf = (question: BudgetQuestion): Figure =>
  apply(
    stressRelease,
    {
      rate: stressRate(question.material.family),
      length: lengthThatGrows(question),
      opened: told(
        'budget.opened',
        say('accuracy.budget-opened')`share of the block cut free`,
        question.opened,
        '1',
        saidBy.drawing,
        'drawing',
      ),
      left: stressLeft,
      skims: told('budget.skims', say('accuracy.budget-skims')`skims`, question.passes.length - 1, '1', saidBy.plan, 'counted'),
    },
    { key: 'budget.stress' },
  );

/** A random error counts by what its square has of all squares. */
const shareOf = (
  { kind, figure }: Share,
  { random, confidence, total }: { readonly random: number; readonly confidence: number; readonly total: number },
): number => {
  if (total === 0) return 0;
  if (kind === 'systematic') return figure.value / total;
  return random === 0 ? 0 : (confidence * figure.value ** 2) / random / total;
};

const biggestOf = (rows: readonly BudgetRow[], total: Figure): Budget['biggest'] => {
  const row = firstItem(rows);
  const percent = Math.round(row.share * 100);
  return {
    row,
    sentence: say(
      'accuracy.biggest',
    )`Largest contributor: ${{ row: row.figure.name }}, ${{ error: um(row.figure.value, fixed(1)) }}, ${{ percent: quantity(percent, '%', fixed(0)) }} of the total of ${{ total: um(total.value, fixed(1)) }}. ${{ remedy: row.remedy }}`,
  };
};
