/** Places of findings: plan and proof think in mm, the customer's drawing in its own unit, and a finding points at the drawing. */
import type { Finding } from '../finding/finding.ts';

/** Spots given in mm as spots of a drawing whose unit is so many mm. Other places stay as they are. */
export const inDrawingUnits = (findings: readonly Finding[], millimetres: number): readonly Finding[] =>
  millimetres === 1 ? findings : findings.map((f) => (f.place?.kind === 'spot' ? { ...f, place: spotIn(f.place, millimetres) } : f));

type Spot = Extract<NonNullable<Finding['place']>, { readonly kind: 'spot' }>;

const spotIn = (spot: Spot, millimetres: number): Spot => ({
  ...spot,
  x: spot.x / millimetres,
  y: spot.y / millimetres,
  ...(spot.reach === undefined ? {} : { reach: spot.reach / millimetres }),
});
