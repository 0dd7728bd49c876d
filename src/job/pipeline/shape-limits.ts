/** Whether the cut can be expected to keep the limits that a part by numbers has: those of its bore, its keyway, its teeth. */

import type { Shape, ShapeSize } from '../../shapes/shape.ts';
import type { Finding } from '../../text/finding.ts';
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
  const [name, room] = [size.figure.name, `±${micrometres(wall)} µm`];
  const begin = `The limits of the ${name} are ${((size.limits?.high ?? 0) - (size.limits?.low ?? 0)).toFixed(4)} mm apart, which leaves each wall ${room};`;
  return [
    within > wall
      ? find('shape-limits-narrow', `${begin} this cut is expected within ±${micrometres(within)} µm.`, {
          place: { kind: 'field', path: 'tolerance' },
          remedy: `A tolerance of ${suggested(wall)} mm, so that passes are chosen for it, or wider limits.`,
        })
      : find(
          'shape-limits-unasked',
          `${begin} the job allows ±${micrometres(tolerance)} µm. This cut is expected within ±${micrometres(within)} µm, but it was not chosen for the limits.`,
          {
            place: { kind: 'field', path: 'tolerance' },
            remedy: `A tolerance of ${suggested(wall)} mm.`,
          },
        ),
  ];
};

const micrometres = (mm: number): string => (1000 * mm).toFixed(1);

/** Rounded down to a tenth of a micrometre, so that it is no wider than the limits. */
const suggested = (wall: number): string => (Math.floor(wall * 10000) / 10000).toFixed(4);
