/** Hand-made drawings for the tests: curves as a format reader would hand them over, and places on the result. */

import { there } from '../../test/there.ts';
import type { Curve, DrawnCurve, DrawnFile } from './curve/curve.ts';
import type { Drawing, ReadOptions } from './drawing.ts';
import { arcOf } from './drawn-arcs.fixture.ts';
import { drawingOf } from './read/read-drawing.ts';

type XY = readonly [number, number];

/** Adds curves one after the other; each is an entity of its own unless several are added at once. */
export class Drawn {
  readonly curves: DrawnCurve[] = [];
  #entity = 0;
  #layer = '0';
  #hidden = false;

  on(layer: string, hidden = false): this {
    this.#layer = layer;
    this.#hidden = hidden;
    return this;
  }

  entity(curves: readonly Curve[], closes = false): this {
    this.#entity += 1;
    for (const curve of curves)
      this.curves.push({ curve, layer: this.#layer, hidden: this.#hidden, entity: this.#entity, closes, line: this.#entity });
    return this;
  }

  line(from: XY, to: XY): this {
    return this.entity([straight(from, to)]);
  }

  /** Loose lines from point to point. */
  lines(...points: readonly XY[]): this {
    for (let i = 1; i < points.length; i += 1) this.line(there(points[i - 1]), there(points[i]));
    return this;
  }

  /** One polyline. */
  polyline(points: readonly XY[], closed: boolean): this {
    const all = closed ? [...points, there(points[0])] : points;
    return this.entity(
      all.slice(1).map((p, i) => straight(there(all[i]), p)),
      closed,
    );
  }

  /** An arc by centre, radius and angles in degrees, counter-clockwise where `to` is above `from`. */
  arc(centre: XY, radius: number, from: number, to: number): this {
    return this.entity([arcOf(centre, radius, from, to)]);
  }

  circle(centre: XY, radius: number): this {
    return this.arc(centre, radius, 0, 360);
  }

  file(changes: Partial<DrawnFile> = {}): DrawnFile {
    return {
      state: 'complete',
      format: 'dxf',
      units: { name: 'mm', millimetres: 1, basis: 'header' },
      unitless: false,
      curves: this.curves,
      marks: [],
      layers: [],
      passedOver: new Map(),
      findings: [],
      ...changes,
    };
  }

  read(options: ReadOptions = {}): Drawing {
    return drawingOf(this.file(), options);
  }
}

export const drawn = (): Drawn => new Drawn();

const straight = ([ax, ay]: XY, [bx, by]: XY): Curve => ({ kind: 'line', from: { x: ax, y: ay }, to: { x: bx, y: by } });

/** Corners of an upright rectangle, counter-clockwise. */
export const box = (x: number, y: number, wide: number, high: number): XY[] => [
  [x, y],
  [x + wide, y],
  [x + wide, y + high],
  [x, y + high],
];

/** The codes of a drawing with how often each stands in it, as 'code' or 'code 3'. */
export const codesOf = (drawing: Drawing): string[] => {
  const counts = new Map<string, number>();
  for (const f of drawing.findings) counts.set(f.code, (counts.get(f.code) ?? 0) + (f.stands ?? 1));
  return [...counts].map(([code, n]) => (n === 1 ? code : `${code} ${n}`)).sort();
};

export const areasOf = (drawing: Drawing): number[] => drawing.loops.map((l) => Math.round(l.area * 1e6) / 1e6);

/** Where the first finding of a code is, in drawing units to six digits. */
export const placeOf = (drawing: Drawing, code: string): readonly [number, number] | string => {
  const place = drawing.findings.find((f) => f.code === code)?.place;
  return place?.kind === 'spot' ? [Math.round(place.x * 1e6) / 1e6, Math.round(place.y * 1e6) / 1e6] : 'nowhere';
};
