/** What lies under the pointer, and how it is said: 'L3, opening, cut third; start hole Ø 2 mm at X 28, Y 90'. */
import type { Point } from '../../geometry/segment.ts';
import type { Words } from '../words/words-for.ts';
import type { ContourView, LayerView, PictureView } from '../work/views.ts';
import { boxAround, boxOf, countOf, isInside } from './chain-segments.ts';
import type { Lengths } from './lengths.ts';
import { type Indexed, near } from './places-index.ts';
import type { Window } from './view.ts';

export type Here =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'line'; readonly layer: LayerView; readonly owner?: string | undefined }
  | { readonly kind: 'inside'; readonly owner: string };

export interface Insides {
  /** Closed contours, the smallest first. */
  readonly contours: readonly { readonly owner: string; readonly chain: LayerView['chains'][number]; readonly box: Window }[];
}

/** What a pointer means first when several lie under it. */
const FIRST: readonly LayerView['role'][] = ['clamp', 'start hole', 'tab', 'lead', 'drawing', 'open line', 'pass', 'comes out', 'core'];

export const insidesOf = (picture: PictureView): Insides => {
  const area = new Map(picture.contours.map((c) => [c.id, c.area]));
  // Where something is cut, the plate around it all says nothing worth a word at every place.
  const planned = picture.contours.some((c) => c.number > 0);
  const silent = new Set(picture.contours.filter((c) => planned && c.number === 0).map((c) => c.id));
  const contours = picture.layers
    .filter((l) => l.role === 'drawing')
    .flatMap((l) => l.chains)
    .flatMap((chain) => {
      const box = boxAround(Array.from({ length: countOf(chain.segments) }, (_, i) => boxOf(chain.segments, i)));
      return chain.closed && chain.owner !== undefined && !silent.has(chain.owner) && box !== undefined
        ? [{ owner: chain.owner, chain, box }]
        : [];
    })
    .toSorted((a, b) => (area.get(a.owner) ?? 0) - (area.get(b.owner) ?? 0));
  return { contours };
};

/** The line within `reach` mm that matters most, else the smallest contour around the place. */
export const hereAt = (index: Indexed, insides: Insides, p: Point, reach: number, shown: (layer: LayerView) => boolean): Here => {
  const lines = near(index, p, reach, (l) => l.role !== 'block' && shown(l));
  const rank = (role: LayerView['role']): number => (FIRST.includes(role) ? FIRST.indexOf(role) : FIRST.length);
  const first = lines.toSorted((a, b) => rank(a.layer.role) - rank(b.layer.role) || a.distance - b.distance)[0];
  if (first !== undefined) return { kind: 'line', layer: first.layer, owner: first.chain.owner };
  const around = insides.contours.find(
    ({ box, chain }) => p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY && isInside(chain, p),
  );
  return around === undefined ? { kind: 'nothing' } : { kind: 'inside', owner: around.owner };
};

/** In words; empty for nothing. */
export const saidOf = (here: Here, contours: ReadonlyMap<string, ContourView>, lengths: Lengths, words: Words['picture']): string => {
  if (here.kind === 'nothing') return '';
  const contour = here.owner === undefined ? undefined : contours.get(here.owner);
  const about = contour === undefined ? '' : contourSaid(contour, lengths, words);
  if (here.kind === 'inside' || here.layer.role === 'drawing' || here.layer.role === 'open line') return about || (here.owner ?? '');
  const thing = words.thing(here.layer.role, here.owner, here.layer.pass);
  return about === '' ? thing : `${thing}. ${about}`;
};

export const contourSaid = (contour: ContourView, lengths: Lengths, words: Words['picture']): string => {
  const { hole } = contour;
  const begins =
    hole === undefined
      ? []
      : [
          hole.diameter > 0
            ? words.hole(lengths.full(hole.diameter, 3), lengths.full(hole.x, 3), lengths.full(hole.y, 3))
            : words.beginsAtEdge(lengths.full(hole.x, 3), lengths.full(hole.y, 3)),
        ];
  return [words.contour(contour), ...begins, ...(contour.piece === undefined ? [] : [contour.piece])].join('; ');
};
