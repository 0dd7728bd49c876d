/** How fluid a canvas is while it is dragged and zoomed: by the time of its frames beside an empty canvas, and by what is drawn in each. */
import type { Page } from 'playwright-core';

/** The little of a page that is used here; the tests as a whole are written for Node. */
interface Canvas {
  width: number;
  height: number;
  id: string;
  readonly clientWidth: number;
  readonly clientHeight: number;
  readonly style: { cssText: string };
  setPointerCapture: (id: number) => void;
  getContext(kind: '2d'): { clearRect(x: number, y: number, width: number, height: number): void };
  getBoundingClientRect(): { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  addEventListener(kind: string, listener: () => void): void;
  dispatchEvent(event: object): boolean;
  remove(): void;
}
declare const document: {
  querySelector(selector: string): Canvas;
  createElement(name: 'canvas'): Canvas;
  readonly body: { append(canvas: Canvas): void };
};
declare const PointerEvent: new (kind: string, values: object) => object;
declare const WheelEvent: new (kind: string, values: object) => object;
declare let requestAnimationFrame: (then: (now: number) => void) => number;
declare const CanvasRenderingContext2D: { readonly prototype: { stroke(path?: object): void } };
declare const window: { strokesOfFrames?: readonly number[] };

export interface Frames {
  /** ms between two frames: the middle one, and the one that nineteen of twenty do not exceed. */
  readonly middle: number;
  readonly slow: number;
  readonly longest: number;
  readonly count: number;
}

export interface FrameRatio {
  readonly picture: Frames;
  readonly empty: Frames;
  /** Middle frame of the picture over that of the empty canvas: 1 is as fluid as the browser can be. */
  readonly ratio: number;
  readonly slowRatio: number;
}

/** From all of the picture: drags it in circles and turns the wheel over it for `seconds`; then the same on an empty canvas of its size. */
export const frameRatio = async (page: Page, canvas: string, seconds = 2): Promise<FrameRatio> => {
  await page.dblclick(canvas);
  const picture = await framesOf(page, canvas, seconds);
  await page.evaluate((selector) => {
    const shown = document.querySelector(selector);
    const empty = document.createElement('canvas');
    [empty.width, empty.height] = [shown.width, shown.height];
    empty.id = 'empty-canvas';
    empty.style.cssText = `position:fixed;left:0;top:0;z-index:9;width:${shown.clientWidth}px;height:${shown.clientHeight}px`;
    const context = empty.getContext('2d');
    const clear = (): void => context.clearRect(0, 0, empty.width, empty.height);
    empty.addEventListener('pointermove', clear);
    empty.addEventListener('wheel', clear);
    document.body.append(empty);
  }, canvas);
  const empty = await framesOf(page, '#empty-canvas', seconds);
  await page.evaluate(() => document.querySelector('#empty-canvas').remove());
  return { picture, empty, ratio: picture.middle / empty.middle, slowRatio: picture.slow / empty.slow };
};

/**
 * From all of the picture: how many lines and bundles of lines it strokes in each of `frames` frames, while it is dragged and zoomed.
 * The page's clock counts strokes meanwhile, one for each ms, so that what it does in its share of a frame hangs on no machine.
 */
export const strokesPerFrame = async (page: Page, canvas: string, frames: number): Promise<readonly number[]> => {
  await page.dblclick(canvas);
  await page.evaluate(countStrokes);
  await page.evaluate(moveAbout, { selector: canvas, seconds: 0, frames });
  return page.evaluate(() => window.strokesOfFrames ?? []);
};

/** Runs in the page. */
const countStrokes = (): void => {
  const counts: number[] = [];
  let strokes = 0;
  const { stroke } = CanvasRenderingContext2D.prototype;
  CanvasRenderingContext2D.prototype.stroke = function (...path): void {
    strokes += 1;
    stroke.apply(this, path);
  };
  performance.now = () => strokes;
  const request = requestAnimationFrame;
  requestAnimationFrame = (then) =>
    request((now) => {
      const before = strokes;
      then(now);
      counts.push(strokes - before);
    });
  window.strokesOfFrames = counts;
};

const framesOf = (page: Page, selector: string, seconds: number): Promise<Frames> =>
  page.evaluate(moveAbout, { selector, seconds, frames: 0 });

interface Moving {
  readonly selector: string;
  /** It goes on for so long and so many frames. */
  readonly seconds: number;
  readonly frames: number;
}

/** Runs in the page: a pointer that is down moves every frame, and each tenth frame the wheel turns, in and out again. */
const moveAbout = ({ selector, seconds, frames }: Moving): Promise<Frames> =>
  new Promise((done) => {
    const canvas = document.querySelector(selector);
    const box = canvas.getBoundingClientRect();
    canvas.setPointerCapture = () => undefined;
    const send = (kind: string, x: number, y: number): boolean =>
      canvas.dispatchEvent(
        new PointerEvent(kind, {
          pointerId: 1,
          pointerType: 'mouse',
          button: 0,
          bubbles: true,
          clientX: box.left + x,
          clientY: box.top + y,
        }),
      );
    const place = (n: number): readonly [number, number] => [
      box.width / 2 + (box.width / 5) * Math.cos(n / 12),
      box.height / 2 + (box.height / 5) * Math.sin(n / 12),
    ];
    const times: number[] = [];
    let [begun, last, n] = [-1, 0, 0];
    send('pointerdown', ...place(0));
    const step = (now: number): void => {
      if (n === 0) [begun, last] = [now, now];
      times.push(now - last);
      last = now;
      n += 1;
      send('pointermove', ...place(n));
      if (n % 10 === 0)
        canvas.dispatchEvent(
          new WheelEvent('wheel', {
            deltaY: n % 80 < 40 ? -90 : 90,
            clientX: box.left + box.width / 2,
            clientY: box.top + box.height / 2,
            cancelable: true,
            bubbles: true,
          }),
        );
      if (now - begun < seconds * 1000 || n < frames) return void requestAnimationFrame(step);
      send('pointerup', ...place(n));
      const sorted = times.slice(2).sort((a, b) => a - b);
      const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
      done({ middle: at(0.5), slow: at(0.95), longest: at(1), count: sorted.length });
    };
    requestAnimationFrame(step);
  });
