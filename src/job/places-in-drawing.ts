/** Places of findings: plan and proof think in mm, the customer's drawing in its own unit, and a finding points at the drawing. */
import type { DrawingUnits } from '../drawing/drawing.ts';
import type { Finding } from '../text/finding.ts';

type Units = Pick<DrawingUnits, 'name' | 'millimetres'>;

/** Spots given in mm as spots of a drawing in its unit, in the sentence too. Other places stay as they are. */
export const inDrawingUnits = (findings: readonly Finding[], { name, millimetres }: Units): readonly Finding[] =>
  millimetres === 1
    ? findings
    : findings.map((f) => ({
        ...f,
        sentence: spotsIn(f.sentence, name, millimetres),
        ...(f.place?.kind === 'spot' ? { place: spotIn(f.place, millimetres) } : {}),
      }));

type Spot = Extract<NonNullable<Finding['place']>, { readonly kind: 'spot' }>;

const spotIn = (spot: Spot, millimetres: number): Spot => ({
  ...spot,
  x: spot.x / millimetres,
  y: spot.y / millimetres,
  ...(spot.reach === undefined ? {} : { reach: spot.reach / millimetres }),
});

/** Plan and proof write a spot as '(12.500, 3.000)' or 'x 12.5 mm, y 3 mm': what else a sentence measures stays in mm. */
const spotsIn = (sentence: string, name: string, millimetres: number): string => {
  const one = (text: string): string => String(Number((Number(text) / millimetres).toFixed(4)));
  return sentence
    .replace(/\((-?\d+\.\d{3}), (-?\d+\.\d{3})\)/g, (_, x: string, y: string) => `(${one(x)}, ${one(y)})`)
    .replace(
      /\bx (-?[\d.]+) mm, y (-?[\d.]+) mm/gi,
      (whole, x: string, y: string) => `${whole.slice(0, 1)} ${one(x)} ${name}, y ${one(y)} ${name}`,
    );
};
