/** Mouse, pen, fingers, wheel and keys of the canvas, each led to what the stage does. */

import type { Point } from '../../../geometry/segment.ts';
import { pinched } from '../view.ts';
import { down, moved, untouched, up } from './gestures.ts';
import type { Stage } from './stage.ts';

/** Pixels that an arrow key pans, and that it moves the cross; with Shift by single pixels. */
const PAN_STEP = 60;
const CROSS_STEP = 10;
/** One notch of a wheel changes the scale by about a fifth; pinching a pad is ten times finer and so weighs more. */
const WHEEL = 0.0018;
const PAD_PINCH = 0.012;
const KEY_ZOOM = 1.5;

/** Gives what takes all of it away again. */
export const listen = (canvas: HTMLCanvasElement, stage: Stage): (() => void) => {
  const stop = new AbortController();
  const { signal } = stop;
  onPointers(canvas, stage, signal);
  canvas.addEventListener('wheel', (event) => onWheel(event, canvas, stage), { signal, passive: false });
  canvas.addEventListener('dblclick', () => stage.tool.kind === 'none' && stage.fit(), { signal });
  canvas.addEventListener('keydown', (event) => onKey(event, stage), { signal });
  return () => stop.abort();
};

const pixelOf = (event: MouseEvent, canvas: HTMLCanvasElement): Point => {
  const box = canvas.getBoundingClientRect();
  return { x: event.clientX - box.left - canvas.clientLeft, y: event.clientY - box.top - canvas.clientTop };
};

const onPointers = (canvas: HTMLCanvasElement, stage: Stage, signal: AbortSignal): void => {
  let touching = untouched;
  const kindOf = (event: PointerEvent): 'mouse' | 'touch' => (event.pointerType === 'touch' ? 'touch' : 'mouse');
  canvas.addEventListener(
    'pointerdown',
    (event) => {
      if (event.button !== 0 && event.button !== 1) return;
      canvas.setPointerCapture(event.pointerId);
      touching = down(touching, event.pointerId, pixelOf(event, canvas));
    },
    { signal },
  );
  canvas.addEventListener(
    'pointermove',
    (event) => {
      const at = pixelOf(event, canvas);
      const next = moved(touching, event.pointerId, at);
      touching = next.touching;
      const { gesture } = next;
      if (gesture.kind === 'pan') stage.pan(gesture.dx, gesture.dy);
      if (gesture.kind === 'pinch') stage.move(pinched(stage.view, gesture.before, gesture.after, stage.limits()));
      stage.point(touching.moved && stage.tool.kind === 'none' ? undefined : at, kindOf(event));
    },
    { signal },
  );
  const end = (event: PointerEvent, counts: boolean): void => {
    const at = pixelOf(event, canvas);
    const next = up(touching, event.pointerId, at);
    touching = next.touching;
    if (next.gesture.kind !== 'tap' || !counts) return;
    stage.point(at, kindOf(event));
    stage.click(next.gesture.at);
  };
  canvas.addEventListener('pointerup', (event) => end(event, event.button === 0), { signal });
  canvas.addEventListener('pointercancel', (event) => end(event, false), { signal });
  canvas.addEventListener('pointerleave', () => stage.point(undefined), { signal });
};

const onWheel = (event: WheelEvent, canvas: HTMLCanvasElement, stage: Stage): void => {
  event.preventDefault();
  const pixels = event.deltaMode === 1 ? event.deltaY * 16 : event.deltaMode === 2 ? event.deltaY * 400 : event.deltaY;
  const strength = event.ctrlKey ? PAD_PINCH : WHEEL;
  stage.zoom(Math.exp(-Math.max(-600, Math.min(600, pixels)) * strength), pixelOf(event, canvas));
};

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const onKey = (event: KeyboardEvent, stage: Stage): void => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  if (!pressed(event, stage)) return;
  event.preventDefault();
  event.stopPropagation();
};

/** True when the key meant something here. */
const pressed = ({ key, shiftKey }: KeyboardEvent, stage: Stage): boolean => {
  const arrow = ARROWS[key];
  const tooled = stage.tool.kind !== 'none';
  if (arrow !== undefined) {
    const [x, y] = arrow;
    if (tooled) stage.moveCross(x * (shiftKey ? 1 : CROSS_STEP), y * (shiftKey ? 1 : CROSS_STEP));
    else stage.pan(-x * PAN_STEP, -y * PAN_STEP);
    return true;
  }
  if (key === '+' || key === '=') stage.zoom(KEY_ZOOM);
  else if (key === '-' || key === '_') stage.zoom(1 / KEY_ZOOM);
  else if (key === '0') stage.fit();
  else if (key === 'm' || key === 'M') stage.take(stage.tool.kind === 'measure' ? { kind: 'none' } : { kind: 'measure' });
  else if (key === 'Enter' && tooled) stage.takeAtCross();
  else if (key === 'Escape' && tooled) stage.take({ kind: 'none' });
  else return false;
  return true;
};
