/**
 * Keeps the painted ground as a bitmap somewhat larger than the canvas. While one pans and zooms the bitmap is moved and
 * stretched; a sharp one is painted behind it, a few milliseconds a frame, and takes its place when it is done.
 */
import type { Brush } from '../brush.ts';
import type { Colours } from '../colours.ts';
import type { PictureGround } from '../scene.ts';
import { type Size, sameView, type View } from '../view.ts';
import { paintGround } from './paint-ground.ts';

/** Share of the canvas that the bitmap is larger on each side. */
const BEYOND = 0.2;
/** Milliseconds of a frame that may be spent on painting behind. */
const BUDGET = 6;

export interface Wanted {
  readonly ground: PictureGround;
  readonly view: View;
  readonly size: Size;
  readonly ratio: number;
  readonly colours: Colours;
  readonly family: string;
}

interface Sheet {
  readonly canvas: HTMLCanvasElement;
  wanted?: Wanted | undefined;
}

interface Painting {
  readonly wanted: Wanted;
  readonly context: CanvasRenderingContext2D;
  readonly steps: Generator<void>;
}

export class GroundBitmap {
  private front: Sheet = { canvas: document.createElement('canvas') };
  private back: Sheet = { canvas: document.createElement('canvas') };
  private painting: Painting | undefined;

  /** Paints on for a while; true when the bitmap in front is what is wanted. `patient` paints until it is. */
  work(wanted: Wanted, patient = false): boolean {
    const until = patient ? Number.POSITIVE_INFINITY : performance.now() + BUDGET;
    // A painting of something else than position is of no use any more; one of an old position soon shows what came into sight.
    if (this.painting !== undefined && (patient ? !same(this.painting.wanted, wanted) : !alike(this.painting.wanted, wanted)))
      this.painting = undefined;
    for (;;) {
      if (this.painting === undefined) {
        if (this.front.wanted !== undefined && same(this.front.wanted, wanted)) return true;
        this.painting = this.begin(wanted);
      }
      while (performance.now() < until) {
        if (this.painting.steps.next().done !== true) {
          if (!patient) settle(this.painting.context);
          continue;
        }
        this.back.wanted = this.painting.wanted;
        [this.front, this.back] = [this.back, this.front];
        this.painting = undefined;
        break;
      }
      if (this.painting !== undefined) return false;
    }
  }

  /** Draws the bitmap in front where a view wants it. */
  draw(context: CanvasRenderingContext2D, view: View, ratio: number): void {
    const { wanted, canvas } = this.front;
    if (wanted === undefined || canvas.width === 0) return;
    const own = beyond(wanted);
    const by = view.scale / wanted.view.scale;
    const left = (view.x - own.view.x * by) * ratio;
    const top = (view.y - own.view.y * by) * ratio;
    const stretch = (by * ratio) / wanted.ratio;
    const still = Math.abs(stretch - 1) < 1e-9;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.imageSmoothingEnabled = !still;
    if (still) context.drawImage(canvas, Math.round(left), Math.round(top));
    else context.drawImage(canvas, left, top, canvas.width * stretch, canvas.height * stretch);
  }

  private begin(wanted: Wanted): Painting {
    const { view, size } = beyond(wanted);
    const { canvas } = this.back;
    const [width, height] = [Math.max(1, Math.round(size.width * wanted.ratio)), Math.max(1, Math.round(size.height * wanted.ratio))];
    if (canvas.width !== width || canvas.height !== height) [canvas.width, canvas.height] = [width, height];
    this.back.wanted = undefined;
    const context = canvas.getContext('2d', { willReadFrequently: true }) as CanvasRenderingContext2D;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, width, height);
    const brush: Brush = { context, ratio: wanted.ratio, view, size, colours: wanted.colours, family: wanted.family };
    return { wanted, context, steps: paintGround(brush, wanted.ground) };
  }
}

/** A canvas only notes down what is drawn and does it later, all at once; asking for a dot makes it do so now, while the time is counted. */
const settle = (context: CanvasRenderingContext2D): void => void context.getImageData(0, 0, 1, 1);

/** The view and size of the bitmap that goes with a canvas, its corner on whole dots of the screen. */
const beyond = ({ view, size, ratio }: Wanted): { readonly view: View; readonly size: Size } => {
  const more = (side: number): number => Math.ceil(side * BEYOND * ratio) / ratio;
  const [x, y] = [more(size.width), more(size.height)];
  return { view: { ...view, x: view.x + x, y: view.y + y }, size: { width: size.width + 2 * x, height: size.height + 2 * y } };
};

const alike = (a: Wanted, b: Wanted): boolean =>
  a.ground === b.ground &&
  a.colours === b.colours &&
  a.ratio === b.ratio &&
  a.family === b.family &&
  a.size.width === b.size.width &&
  a.size.height === b.size.height;

const same = (a: Wanted, b: Wanted): boolean => alike(a, b) && sameView(a.view, b.view);
