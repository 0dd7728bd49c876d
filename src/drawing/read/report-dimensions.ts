/** Asks about dimensions that say another length than is drawn: by another unit, another scale, or typed over. */

import { isFilled } from '../../sequence/sequence.ts';
import { type Finding, type Remedy, remedy } from '../../text/finding.ts';
import { asGiven, count, list, name, number, type Part, significant, term } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { type DrawnDimension, lengthSaid } from '../dimensions.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';

interface Off extends DrawnDimension {
  /** What is said for one of what is drawn, in the same unit. */
  readonly ratio: number;
}

/** One question for all of them. */
export const reportDimensions = (dimensions: readonly DrawnDimension[], units: DrawingUnits): Finding[] => {
  const off = dimensions.flatMap((dimension) => offOf(dimension, units) ?? []);
  if (!isFilled(off)) return [];
  const [first] = off;
  const steady = off.every(({ ratio }) => Math.abs(ratio / first.ratio - 1) < STEADY);
  const unit = steady ? unitFor(first.ratio, units) : undefined;
  // Who named the unit has answered which of both it is.
  if (unit !== undefined && units.basis === 'user') return [];
  const samples = off.slice(0, SHOWN).map(({ said, drawn }) => words.sample(said, drawn));
  return [
    find(
      'dimensions-disagree',
      sentences([
        words.off(off.length, dimensions.length, list(samples, 'and')),
        steady && off.length > 1 ? words.steady(first.ratio) : undefined,
      ]),
      {
        place: { kind: 'spot', x: first.at.x, y: first.at.y, reach: first.drawn },
        done: words.asDrawn(units.name),
        remedy: helpFor(unit),
      },
    ),
  ];
};

const helpFor = (unit: string | undefined): Remedy =>
  unit === undefined ? remedy(words.scale) : remedy(words.unit(unit), { field: 'units', value: unit });

const offOf = (dimension: DrawnDimension, { millimetres }: DrawingUnits): Off | undefined => {
  const said = lengthSaid(dimension.said);
  const [first] = said?.values ?? [];
  if (said === undefined || first === undefined) return undefined;
  const by = said.unit === undefined ? 1 : (said.unit === 'mm' ? 1 : 25.4) / millimetres;
  const drawn = dimension.drawn / by;
  const isSaid = (length: number): boolean => {
    const within = (value: number): boolean => Math.abs(value - length) <= said.rounding * 1.01 + 1e-4 * length;
    const limits = [Math.min(...said.values), Math.max(...said.values)] as const;
    return said.values.some(within) || (limits[0] <= length && length <= limits[1] && limits[1] < 1.2 * limits[0]);
  };
  // A number without unit may be in mm on a drawing in inches.
  const agrees = isSaid(drawn) || (said.unit === undefined && isSaid(dimension.drawn * millimetres));
  return agrees ? undefined : { ...dimension, ratio: first / drawn };
};

/** The unit in which what is drawn would be what is said. */
const unitFor = (ratio: number, { millimetres }: DrawingUnits): string | undefined =>
  [
    { unit: 'mm', of: 1 },
    { unit: 'inch', of: 25.4 },
    { unit: 'cm', of: 10 },
    { unit: 'm', of: 1000 },
  ].find(({ of }) => of !== millimetres && Math.abs((ratio * millimetres) / of - 1) < STEADY)?.unit;

const STEADY = 0.01;
const SHOWN = 3;

const words = phrases('dimensions', {
  off: (off: number, of: number, samples: Part) =>
    say`The drawing has dimensions that do not give what is drawn (${{ off: count(off) }} of ${{ of: count(of) }}): ${{ samples }}.`,
  sample: (said: string, drawn: number): Text =>
    say`"${{ said: name(said.slice(0, LONGEST)) }}" where ${{ drawn: number(drawn, significant(6)) }} is drawn`,
  steady: (ratio: number) => say`Each says ${{ times: asGiven(Number(ratio.toPrecision(4))) }} times what is drawn.`,
  asDrawn: (unit: string) => say`It will be cut as drawn, in ${{ unit: term(unit) }}, unless you say otherwise.`,
  unit: (unit: string) => say`Specify the unit of the drawing: read in ${{ unit: term(unit) }}, it has the sizes that its dimensions say.`,
  scale: say`Ask which of both holds, and for a drawing of that size, 1:1.`,
});

/** Signs of a text. */
const LONGEST = 30;
