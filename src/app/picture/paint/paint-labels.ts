/** Paints the numbers of holes, the pencil marks of findings and the numbers of the deviation, none upon another. */
import type { Point } from '../../../geometry/segment.ts';
import { type Brush, haloed, seen } from '../brush.ts';
import { extremes } from '../deviation.ts';
import { type Label, placedLabels } from '../labels.ts';
import { holesNamed } from '../layers.ts';
import type { PencilMark } from '../marks.ts';
import type { PictureGround, Upon } from '../scene.ts';
import { meets, toPixel, type Window } from '../view.ts';
import { isUpon, placeOf } from './paint-takings.ts';

/** Where a finding stands in the canvas, pixels. */
export interface HitBox {
  readonly mark: PencilMark;
  readonly box: Window;
}

interface Said extends Label {
  readonly text: string;
  readonly mark?: PencilMark;
  /** A thin line leads from the place to the text. */
  readonly led: boolean;
}

/** At most so many in sight, so that a plate of thousands of holes stays fluid. */
const MOST = 400;

export const paintLabels = (brush: Brush, ground: PictureGround, upon: Upon): readonly HitBox[] => {
  brush.context.font = `600 12px ${brush.family}`;
  const inSight = (l: Said): boolean =>
    l.needed || meets(around(l.at, 40), { minX: 0, minY: 0, maxX: brush.size.width, maxY: brush.size.height });
  const labels = [
    ...holeLabels(brush, ground),
    ...markLabels(brush, upon),
    ...takingLabels(brush, ground, upon),
    ...amountLabels(brush, ground),
  ]
    .filter(inSight)
    .slice(0, MOST);
  const placed = placedLabels(labels, [datumBox(brush, ground), barBox(brush)]);
  const hits: HitBox[] = [];
  for (const { label: said } of placed) {
    if (said.mark !== undefined) paintRing(brush, said.mark, said, upon.pointed === said.mark.id);
  }
  for (const { label: said, box } of placed) {
    if (said.mark === undefined) paintPlain(brush, said, box);
    else {
      paintTag(brush, said.mark, said, box, upon.pointed === said.mark.id);
      hits.push({ mark: said.mark, box }, { mark: said.mark, box: around(said.at, 10) });
    }
  }
  return hits;
};

const around = ({ x, y }: Point, by: number): Window => ({ minX: x - by, minY: y - by, maxX: x + by, maxY: y + by });

const datumBox = ({ view }: Brush, { picture }: PictureGround): Window => {
  const { x, y } = toPixel(view, picture.datum);
  return { minX: x - 11, minY: y - 11, maxX: x + 50, maxY: y + 19 };
};

const barBox = ({ size }: Brush): Window => ({ minX: 0, minY: size.height - 44, maxX: 180, maxY: size.height });

const markLabels = (brush: Brush, { marks, pointed }: Upon): readonly Said[] =>
  marks
    .toSorted((a, b) => Number(b.id === pointed) - Number(a.id === pointed))
    .map((mark) => {
      const at = toPixel(brush.view, mark);
      const text = String(mark.number);
      const inside = at.x > -20 && at.y > -20 && at.x < brush.size.width + 20 && at.y < brush.size.height + 20;
      return {
        key: mark.id,
        at,
        text,
        mark,
        led: true,
        width: Math.max(mark.light ? 17 : 20, brush.context.measureText(text).width + (mark.light ? 8 : 12)),
        height: mark.light ? 17 : 20,
        away: ringOf(brush, mark) * 0.75 + 4,
        needed: inside,
      };
    });

/** Radius in pixels of the circle around a finding: its reach where that is of use, else just large enough to be seen. */
const ringOf = ({ view, size }: Brush, { reach, light }: PencilMark): number => {
  const pixels = reach * view.scale;
  const least = light ? 5 : 9;
  return pixels > Math.min(size.width, size.height) * 0.25 ? least : Math.max(least, pixels);
};

const paintRing = (brush: Brush, mark: PencilMark, { at }: Said, pointed: boolean): void => {
  const { context, colours } = brush;
  const ring = ringOf(brush, mark);
  context.setLineDash([]);
  context.strokeStyle = colours.paper;
  context.lineWidth = pointed || mark.heavy ? 6 : 4;
  if (!mark.light || pointed) circle(context, at, ring);
  context.strokeStyle = colours.pencil;
  context.lineWidth = pointed || mark.heavy ? 3 : 1.4;
  circle(context, at, ring);
  if (mark.heavy) circle(context, at, ring + 5);
};

const paintTag = (brush: Brush, mark: PencilMark, { at, text }: Said, box: Window, pointed: boolean): void => {
  const { context, colours, family } = brush;
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const ring = ringOf(brush, mark);
  const away = Math.hypot(middle.x - at.x, middle.y - at.y) || 1;
  context.strokeStyle = colours.pencil;
  if (away > ring + 10) {
    context.lineWidth = 1;
    context.beginPath();
    context.moveTo(at.x + ((middle.x - at.x) / away) * ring, at.y + ((middle.y - at.y) / away) * ring);
    context.lineTo(middle.x, middle.y);
    context.stroke();
  }
  context.beginPath();
  context.roundRect(box.minX, box.minY, box.maxX - box.minX, box.maxY - box.minY, (box.maxY - box.minY) / 2);
  context.fillStyle = pointed ? colours.pencil : colours.paper;
  context.fill();
  context.lineWidth = mark.heavy ? 2.5 : mark.light ? 1 : 1.5;
  context.stroke();
  context.fillStyle = pointed ? colours.paper : colours.pencil;
  context.font = `${mark.light ? 11 : 12}px ${family}`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.fillText(text, middle.x, middle.y + 0.5);
};

const circle = (context: CanvasRenderingContext2D, { x, y }: Point, radius: number): void => {
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.stroke();
};

const paintPlain = (brush: Brush, { text, at, led }: Said, box: Window): void => {
  if (led) {
    const { context, colours } = brush;
    context.setLineDash([]);
    context.strokeStyle = colours.ink;
    context.lineWidth = 0.8;
    context.beginPath();
    context.moveTo(at.x, at.y);
    context.lineTo((box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2);
    context.stroke();
  }
  brush.context.font = `600 12px ${brush.family}`;
  brush.context.textAlign = 'left';
  brush.context.textBaseline = 'middle';
  haloed(brush, text, box.minX + 2, (box.minY + box.maxY) / 2, 'ink');
};

/** Contours that begin from one hole are named together beside it. */
const holeLabels = (brush: Brush, { picture, chapter }: PictureGround): readonly Said[] => {
  if (!holesNamed(chapter)) return [];
  const window = seen(brush);
  const byPlace = new Map<string, { at: Point; texts: string[] }>();
  for (const p of picture.startHoles) {
    if (!meets({ minX: p.x, minY: p.y, maxX: p.x, maxY: p.y }, window)) continue;
    const key = `${p.x} ${p.y}`;
    const known = byPlace.get(key) ?? { at: p, texts: [] };
    known.texts.push(p.owner);
    byPlace.set(key, known);
  }
  return [...byPlace.values()].map(({ at, texts }) => plain(brush, toPixel(brush.view, at), texts.join(', '), 8));
};

const amountLabels = (brush: Brush, { deviations, lengths }: PictureGround): readonly Said[] =>
  deviations
    .flatMap((d) => extremes(d))
    .filter((e) => e.deviation !== 0)
    .map((e) => ({
      ...plain(brush, toPixel(brush.view, e.at), lengths.signed(e.deviation), 14),
      led: true,
    }));

/** The one that is pointed at comes first and always finds room. */
const takingLabels = (brush: Brush, { lengths }: PictureGround, { takings, pointed }: Upon): readonly Said[] =>
  takings
    .toSorted((a, b) => Number(b.shown.key === pointed) - Number(a.shown.key === pointed))
    .flatMap(({ shown, taking }) => {
      if (taking === undefined || (pointed !== shown.key && isUpon(takings, pointed))) return [];
      // What it is called stands in the table beside.
      const text = shown.unit === 'mm' ? lengths.full(shown.value) : shown.name;
      return [{ ...plain(brush, toPixel(brush.view, placeOf(taking)), text, 8), key: shown.key, needed: shown.key === pointed }];
    });

const plain = (brush: Brush, at: Point, text: string, away: number): Said => ({
  key: text,
  at,
  text,
  led: false,
  width: brush.context.measureText(text).width + 4,
  height: 15,
  away,
  needed: false,
});
