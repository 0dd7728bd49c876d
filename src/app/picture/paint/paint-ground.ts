/** Paints block, drawing, ways of the wire and deviation; gives way after each bundle, so that a large picture never holds up a frame. */
import type { Point } from '../../../geometry/segment.ts';
import { roundPairs } from '../../../sequence/sequence.ts';
import type { DeviationView } from '../../work/views.ts';
import { type Brush, bundlePath, inMillimetres, penOf, seen, wholePath } from '../brush.ts';
import type { Layered } from '../bundles.ts';
import { boxAround } from '../chain-segments.ts';
import { mixed } from '../colours.ts';
import { deviationScale, HIGHEST, STEPS, type Standing, stepOf, towardsCut } from '../deviation.ts';
import type { PictureGround } from '../scene.ts';
import { meets, type Window } from '../view.ts';

/** How far the span of the scale stands off, pixels; and how far off lines of tolerance are still drawn. */
export const SPAN_OFF = 12;
export const TOLERANCE_OFF = 80;

export function* paintGround(brush: Brush, ground: PictureGround): Generator<void> {
  inMillimetres(brush);
  for (const layer of ground.layers) {
    if (layer.filled.length > 0) fill(brush, layer);
    yield;
    for (const bundle of layer.bundles) {
      if (!meets(bundle.box, seen(brush))) continue;
      penOf(brush, bundle.style);
      brush.context.stroke(bundlePath(brush, bundle));
      yield;
    }
  }
  const scale = deviationScale(ground.deviations, ground.tolerance, brush.view.scale, SPAN_OFF);
  if (scale === undefined) return;
  for (const profile of ground.deviations) {
    paintDeviation(brush, ground, profile, scale);
    yield;
  }
}

const fill = (brush: Brush, layer: Layered): void => {
  const { context, colours, view } = brush;
  const path = wholePath(layer, layer.filled, view.scale);
  if (layer.style.fill !== undefined) {
    context.fillStyle = colours[layer.style.fill];
    context.fill(path, 'evenodd');
  }
  if (layer.style.hatched === true) hatch(brush, path, layer);
};

/** Slanted lines eight pixels apart, over a quiet ground so that nothing beneath is mistaken for cut. */
const hatch = (brush: Brush, path: Path2D, layer: Layered): void => {
  const { context, colours, view } = brush;
  const box = boxAround(layer.bundles.map((b) => b.box));
  if (box === undefined) return;
  const [low, high] = [overlap(box.minX, seen(brush).minX, 1), overlap(box.maxX, seen(brush).maxX, -1)];
  const [bottom, top] = [overlap(box.minY, seen(brush).minY, 1), overlap(box.maxY, seen(brush).maxY, -1)];
  context.save();
  context.clip(path);
  context.fillStyle = colours.grid;
  context.fill(path);
  penOf(brush, { colour: 'muted', width: 1, dash: [] });
  context.beginPath();
  const step = 8 / view.scale;
  for (let at = Math.floor((low - top) / step) * step; at <= high - bottom; at += step) {
    context.moveTo(at + bottom, bottom);
    context.lineTo(at + top, top);
  }
  context.stroke();
  context.restore();
};

const overlap = (a: number, b: number, side: 1 | -1): number => (side === 1 ? Math.max(a, b) : Math.min(a, b));

/** Seven colours from cut too deep over true to metal left. */
export const deviationColour = ({ colours }: Pick<Brush, 'colours'>, step: number): string =>
  step === 0 ? colours.muted : mixed(colours.grid, step > 0 ? colours.over : colours.under, 0.25 + (0.75 * Math.abs(step)) / STEPS);

const paintDeviation = (
  brush: Brush,
  ground: PictureGround,
  profile: DeviationView,
  { factor, span }: { factor: number; span: number },
): void => {
  const { context, view } = brush;
  const places = spaced(profile, ground, 1.5 / view.scale);
  if (places.length < 2 || !meets(boxOfPlaces(places), grown(seen(brush), TOLERANCE_OFF / view.scale))) return;
  const cutOff = (d: number): number => Math.max(-HIGHEST * span, Math.min(HIGHEST * span, d));
  const paths = new Map<number, Path2D>();
  for (const [a, b] of roundPairs(places)) {
    const step = stepOf((a.deviation + b.deviation) / 2, span);
    const path = paths.get(step) ?? new Path2D();
    paths.set(step, path);
    const [p, q] = [off(a, cutOff(a.deviation) * factor), off(b, cutOff(b.deviation) * factor)];
    path.moveTo(a.at.x, a.at.y);
    path.lineTo(p.x, p.y);
    path.lineTo(q.x, q.y);
    path.lineTo(b.at.x, b.at.y);
    path.closePath();
  }
  for (const [step, path] of paths) {
    context.fillStyle = deviationColour(brush, step);
    context.fill(path);
    penOf(brush, { colour: 'ink', width: 0.6, dash: [] });
    context.strokeStyle = deviationColour(brush, step);
    context.stroke(path);
  }
  around(brush, places, 0, { colour: 'ink', width: 1, dash: [] });
  if (ground.tolerance > 0 && ground.tolerance * factor * view.scale <= TOLERANCE_OFF)
    for (const side of [1, -1]) around(brush, places, side * ground.tolerance * factor, { colour: 'muted', width: 0.8, dash: [2, 3] });
};

const off = ({ at, out }: Standing, by: number): Point => ({ x: at.x + out.x * by, y: at.y + out.y * by });

const around = (brush: Brush, places: readonly Standing[], by: number, style: Parameters<typeof penOf>[1]): void => {
  const path = new Path2D();
  places.forEach((p, i) => {
    const { x, y } = off(p, by);
    if (i === 0) path.moveTo(x, y);
    else path.lineTo(x, y);
  });
  path.closePath();
  penOf(brush, style);
  brush.context.stroke(path);
};

const standings = new WeakMap<DeviationView, readonly Standing[]>();

/** Places at least `apart` mm from each other; of those passed over the largest amount is kept. */
const spaced = (profile: DeviationView, ground: PictureGround, apart: number): readonly Standing[] => {
  const kept = ground.picture.contours.find((c) => c.id === profile.loop)?.kept ?? 'die';
  const all = standings.get(profile) ?? towardsCut(profile, kept, true);
  standings.set(profile, all);
  const places: Standing[] = [];
  let worst = 0;
  let last: Point | undefined;
  for (const { at, out, deviation } of all) {
    if (Math.abs(deviation) > Math.abs(worst)) worst = deviation;
    if (last !== undefined && Math.abs(at.x - last.x) + Math.abs(at.y - last.y) < apart) continue;
    places.push({ at, out, deviation: worst });
    [worst, last] = [0, at];
  }
  return places;
};

const boxOfPlaces = (places: readonly Standing[]): Window => {
  const box = boxAround(places.map(({ at }) => ({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })));
  return box ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
};

const grown = (w: Window, by: number): Window => ({ minX: w.minX - by, minY: w.minY - by, maxX: w.maxX + by, maxY: w.maxY + by });
