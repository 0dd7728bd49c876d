/** Shares of an error that the pass ladder does not know: heat, stress let go, and how shares add up. */

import { familyWords } from '../physics/material/family-words.ts';
import type { Family } from '../physics/material/material.ts';
import { type Figure, given } from '../quantity/figure.ts';
import { type Applied, apply, type Formula } from '../quantity/formula.ts';
import { list, type Part } from '../text/part.ts';
import { say, symbols } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { referenceTemperature } from './thermal-growth.ts';

const micrometres = (name: string): { readonly unit: 'µm'; readonly name: string } => ({ unit: 'µm', name });

export const awayFromReference: Formula<'temperature'> = {
  name: say('accuracy.away-from-reference')`away from 20 °C`,
  text: say('accuracy.away-from-reference.by')`away = |temperature - 20 °C|`,
  source: 'definition',
  unit: 'K',
  inputs: { temperature: { unit: '°C', name: 'temperature' } },
  compute: ({ temperature }) => Math.abs(temperature - referenceTemperature),
};

/** Cutting and measuring swing each for itself. */
export const swingTogether: Formula<'cutting' | 'measuring'> = {
  name: say('accuracy.swing-together')`temperature variation, cutting and measuring together`,
  text: say('accuracy.swing-together.by')`variation = √(variation while cutting² + variation while measuring²)`,
  source: 'definition',
  unit: 'K',
  inputs: { cutting: { unit: 'K', name: 'swing while cutting' }, measuring: { unit: 'K', name: 'swing while measuring' } },
  compute: ({ cutting, measuring }) => Math.hypot(cutting, measuring),
};

/** Across an opening or a part the same error counts on each of its sides. */
export const overSides: Formula<'error' | 'sides'> = {
  name: say('accuracy.over-sides')`error over all sides`,
  text: say('accuracy.over-sides.by')`error of a size = sides · error of one side`,
  source: 'definition',
  unit: 'µm',
  inputs: { error: micrometres('error of one side'), sides: { unit: '1', name: 'sides that count' } },
  compute: ({ error, sides }) => error * sides,
};

export const gapError: Formula<'doubt'> = {
  name: say('accuracy.gap-error')`offset error`,
  text: say('accuracy.gap-error.by')`error = uncertainty of the spark gap of the last pass, in µm`,
  source: 'definition',
  unit: 'µm',
  inputs: { doubt: { unit: 'mm', name: 'doubt about the gap' } },
  compute: ({ doubt }) => doubt * 1000,
};

/** So much of what is random is within a promise. */
export const promisedSpread: Formula<'random' | 'confidence'> = {
  name: say('accuracy.promised-spread')`random errors as far as they are promised`,
  text: say('accuracy.promised-spread.by')`spread = k · random errors`,
  source: 'definition',
  unit: 'µm',
  inputs: { random: micrometres('random errors'), confidence: { unit: '1', name: 'k' } },
  compute: ({ random, confidence }) => random * confidence,
};

/** How far the metal moves when stress in the block is let go, of which every skim cuts most away again. */
export const stressRelease: Formula<'rate' | 'length' | 'opened' | 'left' | 'skims'> = {
  name: say('accuracy.stress-release')`movement by stress relief`,
  text: say('accuracy.stress-release.by')`movement = rate · length · (1 + 2 · share of the block cut free) · left^skims`,
  source: 'common-practice',
  unit: 'µm',
  inputs: {
    rate: { unit: '1', name: 'movement of this kind of metal, µm per mm' },
    length: { unit: 'mm', name: 'length that moves' },
    opened: { unit: '1', name: 'share of the block cut loose', low: 0, high: 1 },
    left: { unit: '1', name: 'share that one skim leaves' },
    skims: { unit: '1', name: 'skims' },
  },
  compute: ({ rate, length, opened, left, skims }) => rate * length * (1 + 2 * opened) * left ** skims,
};

/** µm per mm of an opening in a block as it is usually delivered; rolled plate moves, sintered and relieved metal hardly does. */
const movement: Readonly<Record<Family, number>> = {
  'tool steel': 0.08,
  steel: 0.08,
  stainless: 0.1,
  carbide: 0.01,
  aluminium: 0.15,
  titanium: 0.12,
  'nickel alloy': 0.1,
  copper: 0.06,
  brass: 0.08,
  graphite: 0.01,
  refractory: 0.03,
  pcd: 0.01,
  magnesium: 0.1,
  zirconium: 0.1,
};

const practice = (key: string, name: Text, value: number, unit: Figure['unit'], deviation: number): Figure =>
  given({ key, name, value, unit, deviation, basis: 'common practice', source: { file: 'common-practice' } });

/** Half of it is doubt: two blocks of one steel differ by more than that. */
export const stressRate = (family: Family): Figure => rates[family];

const rateOf = (family: Family): Figure =>
  practice(
    'stress.rate',
    say('stress.rate')`movement of ${{ family: familyWords[family] }} by stress relief, µm per mm`,
    movement[family],
    '1',
    movement[family] / 2,
  );

const rates = Object.fromEntries((Object.keys(movement) as Family[]).map((family) => [family, rateOf(family)])) as Readonly<
  Record<Family, Figure>
>;

export const stressLeft = practice('stress.left', say('accuracy.stress-left')`share of a movement left by one skim`, 0.3, '1', 0.1);

/** From one piece to the next with nothing changed: wire diameter and tension, water, picking up. */
export const repeatability = practice('repeatability', say('accuracy.repeatability')`repeatability`, 0.8, 'µm', 0.4);

type Named = Applied & { readonly name: Text };

/** What goes the same way every time is added. */
export const addedUp = (figures: readonly Figure[], as: Named): Figure =>
  combined(
    figures,
    as,
    (names) => list(names, 'plus'),
    (v) => v.reduce((a, b) => a + b, 0),
  );

/** What goes this way and that is combined by the root of the sum of squares. */
export const rootOfSquares = (figures: readonly Figure[], as: Named): Figure =>
  combined(
    figures,
    as,
    (names) =>
      symbols`√(${list(
        names.map((name) => symbols`${name}²`),
        'plus',
      )})`,
    (v) => Math.hypot(...v),
  );

const combined = (
  figures: readonly Figure[],
  as: Named,
  joined: (names: readonly Text[]) => Part | Text,
  compute: (values: readonly number[]) => number,
): Figure => {
  const named = figures.map((figure, i) => ({ key: `a${i}`, figure }));
  const formula: Formula<string> = {
    name: as.name,
    text: symbols`${as.name} = ${joined(figures.map((f) => f.name))}`,
    source: 'definition',
    unit: 'µm',
    inputs: Object.fromEntries(named.map(({ key, figure }) => [key, micrometres(figure.key)])),
    compute: (values) => compute(Object.values(values)),
  };
  return apply(formula, Object.fromEntries(named.map(({ key, figure }) => [key, figure])), as);
};
