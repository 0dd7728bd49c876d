/** How much metal is left standing until somebody holds the loose piece. */
import { spokenMass } from './mass.ts';

export interface TabSize {
  readonly length: number;
  readonly reason: string;
}

/**
 * 1 mm and 2 mm more for each root kilogram, a quarter more for slender pieces that sway, and never more than 15 % of the
 * contour. Common practice is 1 to 6 mm and more when heavy; the rule that fills that range is our own.
 *
 * @param mass kg. @param area mm². @param perimeter mm.
 */
export const tabFor = (piece: { readonly mass: number; readonly area: number; readonly perimeter: number }): TabSize => {
  const slenderness = piece.perimeter / (2 * Math.sqrt(Math.PI * Math.max(piece.area, 1e-9)));
  const slender = slenderness > 2;
  const wanted = (1 + 2 * Math.sqrt(piece.mass)) * (slender ? 1.25 : 1);
  const length = Math.round(Math.min(wanted, 0.15 * piece.perimeter) * 100) / 100;
  const why = length < wanted - 0.01 ? 'as much as a contour so short allows' : slender ? 'a slender piece sways' : 'enough for its mass';
  return { length, reason: `${length.toFixed(1)} mm for ${spokenMass(piece.mass)}: ${why}` };
};
