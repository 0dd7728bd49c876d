/** Whether the cut can be expected to keep the limits that a part by numbers has: those of its bore, its keyway, its teeth. */

import type { Shape, ShapeSize } from '../../shapes/shape.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm, type Part, um } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
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
  const narrow = words.narrow(size, wall);
  const place = { kind: 'field', path: 'tolerance' } as const;
  const asked = suggested(wall);
  const [held, allowed] = [within, tolerance].map(micrometres) as [Part, Part];
  return [
    within > wall
      ? find('shape-limits-narrow', say`${{ limits: narrow }} this cut is expected within ±${{ within: held }}.`, {
          place,
          remedy: remedy(say`A tolerance of ${{ tolerance: mm(asked, fixed(4)) }}, so that passes are chosen for it, or wider limits.`, {
            field: 'tolerance',
            value: asked,
          }),
        })
      : find(
          'shape-limits-unasked',
          say`${{ limits: narrow }} the job allows ±${{ tolerance: allowed }}. This cut is expected within ±${{ within: held }}, but it was not chosen for the limits.`,
          { place, remedy: remedy(say`A tolerance of ${{ tolerance: mm(asked, fixed(4)) }}.`, { field: 'tolerance', value: asked }) },
        ),
  ];
};

const words = phrases('shape-limits', {
  narrow: ({ figure, limits }: ShapeSize, wall: number) =>
    say`The limits of the ${{ size: figure.name }} are ${{ apart: mm((limits?.high ?? 0) - (limits?.low ?? 0), fixed(4)) }} apart, which leaves each wall ±${{ room: micrometres(wall) }};`,
});

const micrometres = (millimetres: number): Part => um(1000 * millimetres, fixed(1));

/** Rounded down to a tenth of a micrometre, so that it is no wider than the limits. */
const suggested = (wall: number): number => Math.floor(wall * 10000) / 10000;
