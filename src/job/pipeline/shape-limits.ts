/** Whether the cut can be expected to keep the limits that a part by numbers has: those of its bore, its keyway, its teeth. */

import type { Shape, ShapeSize } from '../../shapes/shape.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { fixed, limit, mm, type Part } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';

/** What may be off, each wall to either side of where it is drawn, mm. */
interface Narrowest {
  readonly size: ShapeSize;
  readonly wall: number;
}

/** A size lies between two walls, both of which may be off. */
const TWO_WALLS = 2;

const narrowestOf = ({ sizes }: Pick<Shape, 'sizes'>): Narrowest | undefined =>
  sizes
    .flatMap((size) =>
      size.limits === undefined || size.figure.unit !== 'mm'
        ? []
        : [{ size, wall: (size.limits.high - size.limits.low) / 2 / (size.moves ?? TWO_WALLS) }],
    )
    .reduce<Narrowest | undefined>((least, one) => (least === undefined || one.wall < least.wall ? one : least), undefined);

/** `within` is what the plan expects, `tolerance` what the job asks for, both mm to either side of the profile. */
export const shapeLimitsFindings = (
  shape: Pick<Shape, 'sizes'> | undefined,
  { within, tolerance }: { readonly within: number; readonly tolerance: number },
): readonly Finding[] => {
  const narrowest = shape === undefined ? undefined : narrowestOf(shape);
  if (narrowest === undefined || Math.max(within, tolerance) <= narrowest.wall) return [];
  const { size, wall } = narrowest;
  const limits = words.apart(size.figure.name, (size.limits?.high ?? 0) - (size.limits?.low ?? 0), wall);
  const place = atField('tolerance');
  // Rounded down to a tenth of a micrometre, so that it is no wider than the limits.
  const value = Math.floor(wall * 10000) / 10000;
  const change = { field: 'tolerance', value };
  return [
    within > wall
      ? find('shape-limits-narrow', say`${{ limits }}; ${{ within: eitherSide(within) }} expected for this cut.`, {
          place,
          remedy: remedy(
            say`Set a tolerance of ${{ tolerance: mm(value, fixed(4)) }}, so that passes are chosen for it, or widen the limits.`,
            change,
          ),
        })
      : find(
          'shape-limits-unasked',
          say`${{ limits }}; the job allows ${{ allowed: eitherSide(tolerance) }}. ${{ within: eitherSide(within) }} is expected, but passes were not chosen for these limits.`,
          { place, remedy: remedy(say`Set a tolerance of ${{ tolerance: mm(value, fixed(4)) }}.`, change) },
        ),
  ];
};

/** '±3.2 µm' of millimetres. */
const eitherSide = (millimetres: number): Part => limit(1000 * millimetres, 'µm', fixed(1));

const words = phrases('shape-limits', {
  apart: (size: Text, apart: number, wall: number) =>
    say`The limits of the ${{ size }} are ${{ apart: mm(apart, fixed(4)) }} apart, which leaves each wall ${{ wall: eitherSide(wall) }}`,
});
