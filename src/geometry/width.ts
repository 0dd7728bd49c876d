/** How wide and how long a contour is: the least and the greatest width of the box around it, turned every few degrees. */
import { areaOf, perimeterOf } from './area.ts';
import type { Contour } from './contour.ts';
import { pointAt } from './measure.ts';

/** Twice the area over the perimeter, mm: never more than the least width, and quickly had. */
export const meanWidth = (contour: Contour): number => (2 * Math.abs(areaOf(contour))) / perimeterOf(contour);

/** mm, never less than the true least width by more than a percent. */
export const widthOf = (contour: Contour): number => extentsOf(contour).least;

/** mm; the greatest never more than the true one, the least never more than a percent above it. */
export const extentsOf = (contour: Contour): { readonly least: number; readonly most: number } => {
  const points = contour.segments.flatMap((s) => (s.kind === 'line' ? [s.from] : [0, 0.25, 0.5, 0.75].map((share) => pointAt(s, share))));
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (let n = 0; n < 24; n += 1) {
    const angle = (n * Math.PI) / 24;
    const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (const p of points) {
      const along = p.x * cosine + p.y * sine;
      if (along < low) low = along;
      if (along > high) high = along;
    }
    least = Math.min(least, high - low);
    most = Math.max(most, high - low);
  }
  return { least, most };
};
