/** All that the picture shows at one time, as plain data; what does not change while one pans is prepared once. */
import type { Chapter, DeviationView, PictureView, ProgramView } from '../work/views.ts';
import { type Layered, layered } from './bundles.ts';
import { layersOf } from './layers.ts';
import type { Lengths } from './lengths.ts';
import type { Mark } from './marks.ts';
import { type Indexed, indexOf } from './places-index.ts';
import type { Window } from './view.ts';
import { type Insides, insidesOf } from './what-is-here.ts';

/** Lies under everything else and is kept as a bitmap while one moves about. */
export interface Ground {
  readonly picture: PictureView;
  readonly chapter: Chapter;
  readonly layers: readonly Layered[];
  readonly deviations: readonly DeviationView[];
  /** mm; 0 where none is known. */
  readonly tolerance: number;
  readonly lengths: Lengths;
  readonly box: Window;
}

/** What stands upon it and may change at every frame. */
export interface Upon {
  readonly marks: readonly Mark[];
  readonly chosen?: string | undefined;
  readonly pointed?: string | undefined;
  readonly moves?: ProgramView['moves'] | undefined;
  readonly cutUpTo?: number | undefined;
  /** Width of the kerf, mm. */
  readonly kerf: number;
  readonly wire?: { readonly x: number; readonly y: number; readonly kerf: number } | undefined;
  readonly currentBlock?: number | undefined;
  /** Contours whose slug is out already. */
  readonly fallen: readonly string[];
  readonly datumWord: string;
}

export const groundOf = (
  picture: PictureView,
  chapter: Chapter,
  deviations: readonly DeviationView[],
  tolerance: number,
  lengths: Lengths,
): Ground => ({
  picture,
  chapter,
  layers: layered(layersOf(picture.layers, chapter)),
  deviations: chapter === 'proof' ? deviations : [],
  tolerance,
  lengths,
  box: boxOfPicture(picture),
});

const boxOfPicture = ({ low, high }: PictureView): Window => ({ minX: low.x, minY: low.y, maxX: high.x, maxY: high.y });

const finders = new WeakMap<PictureView, { readonly index: Indexed; readonly insides: Insides }>();

/** What finds things in a picture; made when first asked for, kept as long as the picture. */
export const finderOf = (picture: PictureView): { readonly index: Indexed; readonly insides: Insides } => {
  const kept = finders.get(picture);
  if (kept !== undefined) return kept;
  const made = { index: indexOf(picture.layers), insides: insidesOf(picture) };
  finders.set(picture, made);
  return made;
};
