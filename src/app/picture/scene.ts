/** All that the picture shows at one time, as plain data; what does not change while one pans is prepared once. */
import type { Chapter, DeviationView, PictureView, ProgramView, ShapeSizeView } from '../work/views.ts';
import { type Layered, layered } from './bundles.ts';
import { boxAround } from './chain-segments.ts';
import { layersOf } from './layers.ts';
import type { Lengths } from './lengths.ts';
import type { PencilMark } from './marks.ts';
import { type Indexed, indexOf, type SnapKind } from './places-index.ts';
import type { Window } from './view.ts';
import { type Insides, insidesOf } from './what-is-here.ts';

/** Lies under everything else and is kept as a bitmap while one moves about. */
export interface PictureGround {
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
  readonly marks: readonly PencilMark[];
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
  /** What a place that is snapped to is called. */
  readonly snapWords: Readonly<Record<SnapKind, string>>;
  /** How the sizes of a part by numbers are taken; none in chapters that show other things. */
  readonly takings: readonly ShapeSizeView[];
}

export const groundOf = (
  picture: PictureView,
  chapter: Chapter,
  deviations: readonly DeviationView[],
  tolerance: number,
  lengths: Lengths,
): PictureGround => ({
  picture,
  chapter,
  layers: layered(layersOf(picture.layers, chapter)),
  deviations: chapter === 'proof' ? deviations : [],
  tolerance,
  lengths,
  box: boxOfPicture(picture),
});

const boxes = new WeakMap<PictureView, Window>();

/** Around everything in any chapter, clamps beside the block and the datum too, so that the view does not jump from chapter to chapter. */
const boxOfPicture = (picture: PictureView): Window => {
  const known = boxes.get(picture);
  if (known !== undefined) return known;
  const { low, high, datum, layers } = picture;
  const all = layered(layers).flatMap((l) => l.bundles.map((b) => b.box));
  const ends = { minX: low.x, minY: low.y, maxX: high.x, maxY: high.y };
  const near = reachable(datum, ends) ? [{ minX: datum.x, minY: datum.y, maxX: datum.x, maxY: datum.y }] : [];
  const box = boxAround([ends, ...all, ...near]) ?? ends;
  boxes.set(picture, box);
  return box;
};

/** A datum far away from the part would leave the part a dot. */
const reachable = ({ x, y }: PictureView['datum'], { minX, minY, maxX, maxY }: Window): boolean => {
  const by = Math.max(maxX - minX, maxY - minY) / 2;
  return x >= minX - by && x <= maxX + by && y >= minY - by && y <= maxY + by;
};

const finders = new WeakMap<PictureView, { readonly index: Indexed; readonly insides: Insides }>();

/** What finds things in a picture; made when first asked for, kept as long as the picture. */
export const finderOf = (picture: PictureView): { readonly index: Indexed; readonly insides: Insides } => {
  const kept = finders.get(picture);
  if (kept !== undefined) return kept;
  const made = { index: indexOf(picture.layers), insides: insidesOf(picture) };
  finders.set(picture, made);
  return made;
};
