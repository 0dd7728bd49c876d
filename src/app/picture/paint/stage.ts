/** The picture's canvas, outside React: keeps view, tool and pointer, and paints once a frame when any of them changed. */

import type { BoxIndex } from '../../../geometry/near/box-index.ts';
import type { Point } from '../../../geometry/segment.ts';
import type { LayerView } from '../../work/views.ts';
import { type Brush, inPixels } from '../brush.ts';
import { type Colours, LIGHT } from '../colours.ts';
import { layersOf } from '../layers.ts';
import type { PencilMark } from '../marks.ts';
import { type Snapped, snapped } from '../places-index.ts';
import { blockNear, indexOfMoves, type Moves } from '../replayed.ts';
import { finderOf, type PictureGround, type Upon } from '../scene.ts';
import { type Picked, type Tool, taken } from '../tool.ts';
import { centredOn, fitted, keptInSight, limitsFor, panned, type Size, sameView, toPixel, toPlace, type View, zoomedAt } from '../view.ts';
import { type Here, hereAt } from '../what-is-here.ts';
import { GroundBitmap } from './ground-bitmap.ts';
import type { HitBox } from './paint-labels.ts';
import { paintTool } from './paint-tool.ts';
import { paintUpon } from './paint-upon.ts';

export interface Hovered {
  readonly here: Here;
  readonly mark?: PencilMark;
  readonly pixel: Point;
}

export interface StageEvents {
  hovered(what: Hovered | undefined): void;
  /** Where the pointer or the cross is, mm, and what it would snap to. */
  at(snap: Snapped | undefined, scale: number): void;
  clicked(here: Here, mark: PencilMark | undefined, block: number | undefined): void;
  tool(tool: Tool): void;
  picked(what: Picked): void;
  /** The scale of what is seen, pixels per mm. */
  scaled(scale: number): void;
}

const MARGIN = 36;
/** Height of the scale bar, pixels. */
const BAR = 32;
/** Pixels of the picture that always stay in sight. */
const KEPT = 60;
const REACH = { mouse: 8, touch: 18 };

export class Stage {
  view: View = { scale: 1, x: 0, y: 0 };
  tool: Tool = { kind: 'none' };
  private ground: PictureGround | undefined;
  private upon: Upon | undefined;
  private size: Size = { width: 0, height: 0 };
  private ratio = 1;
  private colours: Colours = LIGHT;
  private family = 'sans-serif';
  private readonly bitmap = new GroundBitmap();
  private hits: readonly HitBox[] = [];
  private frame = 0;
  private told = 0;
  /** Follows the size of the canvas until somebody moves or zooms. */
  private fits = true;
  private pointer: Point | undefined;
  private reach = REACH.mouse;
  private pointerMoved = false;
  private hover: Hovered | undefined;
  private cross: Point | undefined;
  private moves: { readonly of: Moves; readonly index: BoxIndex<number> } | undefined;

  private readonly canvas: HTMLCanvasElement;
  private readonly events: StageEvents;

  constructor(canvas: HTMLCanvasElement, events: StageEvents) {
    this.canvas = canvas;
    this.events = events;
  }

  show(ground: PictureGround | undefined, upon: Upon | undefined): void {
    const before = this.ground?.box;
    const box = ground?.box;
    const other = box !== undefined && JSON.stringify(before) !== JSON.stringify(box);
    this.ground = ground;
    this.upon = upon;
    if (other) this.fit();
    this.pointerMoved = true;
    this.request();
  }

  /** `now` paints all of it at once, as paper needs it. */
  dress(colours: Colours, family: string, now: boolean): void {
    [this.colours, this.family] = [colours, family];
    if (now) this.paint(true);
    this.request();
  }

  resize(size: Size, ratio: number): void {
    if (size.width === this.size.width && size.height === this.size.height && ratio === this.ratio) return;
    const middle = toPlace(this.view, { x: this.size.width / 2, y: this.size.height / 2 });
    const begun = this.size.width > 0;
    [this.size, this.ratio] = [size, ratio];
    [this.canvas.width, this.canvas.height] = [Math.round(size.width * ratio), Math.round(size.height * ratio)];
    if (this.fits || !begun) this.fit();
    else this.view = centredOn(this.view, middle, size);
    // Setting the size has emptied the canvas: painting later would show one empty frame.
    this.paint();
    this.pointerMoved = true;
    this.request();
  }

  fit(): void {
    if (this.ground === undefined || this.size.width === 0) return;
    this.view = this.fitting(this.ground);
    this.fits = true;
    this.request();
  }

  /** The scale bar keeps its strip at the bottom. */
  private fitting({ box }: PictureGround): View {
    const { width, height } = this.size;
    return fitted(box, { width, height: Math.max(height / 2, height - BAR) }, Math.min(MARGIN, width / 8));
  }

  pan(dx: number, dy: number): void {
    this.move(panned(this.view, dx, dy));
  }

  /** At a pixel of the canvas; in its middle when left out. */
  zoom(factor: number, at: Point = { x: this.size.width / 2, y: this.size.height / 2 }): void {
    this.move(zoomedAt(this.view, at, factor, this.limits()));
  }

  limits(): ReturnType<typeof limitsFor> {
    return limitsFor(this.ground === undefined ? this.view : this.fitting(this.ground));
  }

  move(wanted: View): void {
    const view = this.ground === undefined ? wanted : keptInSight(wanted, this.ground.box, this.size, KEPT);
    if (sameView(view, this.view)) return;
    this.view = view;
    this.fits = false;
    this.pointerMoved = true;
    this.request();
  }

  /** Brings a place into sight without changing the scale, if it is not there already. */
  reveal(place: Point): void {
    const { x, y } = toPixel(this.view, place);
    const inside = x > 24 && y > 24 && x < this.size.width - 24 && y < this.size.height - 24;
    if (!inside && this.size.width > 0) this.move(centredOn(this.view, place, this.size));
  }

  take(tool: Tool): void {
    this.tool = tool;
    if (tool.kind === 'none') this.cross = undefined;
    this.events.tool(tool);
    this.pointerMoved = true;
    this.request();
  }

  /** Brings the keys here and the picture into sight, from the row above the canvas that says what is to be done. */
  focus(): void {
    this.canvas.focus({ preventScroll: true });
    this.canvas.closest('figure')?.firstElementChild?.scrollIntoView({ block: 'nearest' });
  }

  point(pixel: Point | undefined, kind: 'mouse' | 'touch' = 'mouse'): void {
    this.pointer = pixel;
    this.reach = REACH[kind];
    if (pixel !== undefined) this.cross = undefined;
    this.pointerMoved = true;
    this.request();
  }

  /** Moves the cross of the keys; it begins in the middle. */
  moveCross(dx: number, dy: number): void {
    const from = this.cross ?? this.pointer ?? { x: this.size.width / 2, y: this.size.height / 2 };
    const to = { x: from.x + dx, y: from.y + dy };
    const inside = { x: Math.min(Math.max(to.x, 12), this.size.width - 12), y: Math.min(Math.max(to.y, 12), this.size.height - 12) };
    this.cross = inside;
    this.pointer = undefined;
    this.pan(inside.x - to.x, inside.y - to.y);
    this.pointerMoved = true;
    this.request();
  }

  takeAtCross(): void {
    this.click(this.cross ?? { x: this.size.width / 2, y: this.size.height / 2 });
  }

  click(pixel: Point): void {
    if (this.ground === undefined) return;
    if (this.tool.kind !== 'none') {
      const { tool, picked } = taken(this.tool, this.snapAt(pixel));
      this.take(tool);
      if (picked !== undefined) this.events.picked(picked);
      return;
    }
    const mark = this.markAt(pixel);
    this.events.clicked(mark === undefined ? this.hereAt(pixel) : { kind: 'nothing' }, mark, this.blockAt(pixel));
  }

  request(): void {
    if (this.frame === 0) this.frame = requestAnimationFrame(() => this.onFrame());
  }

  stop(): void {
    cancelAnimationFrame(this.frame);
    this.frame = -1;
  }

  private onFrame(): void {
    this.frame = 0;
    this.tellPointer();
    if (!this.paint()) this.request();
    if (this.told !== this.view.scale) {
      this.told = this.view.scale;
      this.events.scaled(this.view.scale);
    }
  }

  /** True when nothing is left to paint. */
  private paint(patient = false): boolean {
    const context = this.canvas.getContext('2d') as CanvasRenderingContext2D;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, this.canvas.width, this.canvas.height);
    const { ground, upon, view, size, ratio, colours, family } = this;
    if (ground === undefined || upon === undefined || size.width === 0) return true;
    const done = this.bitmap.work({ ground, view, size, ratio, colours, family }, patient);
    this.bitmap.draw(context, view, ratio);
    const brush: Brush = { context, ratio, view, size, colours, family };
    const pointed = upon.pointed ?? (this.hover?.here.kind === 'nothing' ? undefined : this.hover?.here.owner);
    this.hits = paintUpon(brush, ground, { ...upon, pointed });
    inPixels(brush);
    const cursor = this.cross ?? this.pointer;
    const snap = cursor === undefined ? undefined : this.snapAt(cursor);
    paintTool(brush, { tool: this.tool, snap, cross: this.cross, lengths: ground.lengths, words: upon.snapWords });
    return done;
  }

  /** What lies under the pointer is looked for once a frame, however often it moved. */
  private tellPointer(): void {
    if (!this.pointerMoved) return;
    this.pointerMoved = false;
    const cursor = this.cross ?? this.pointer;
    this.events.at(cursor === undefined || this.ground === undefined ? undefined : this.snapAt(cursor), this.view.scale);
    const looks = this.pointer !== undefined && this.ground !== undefined && this.tool.kind === 'none';
    const next = looks && this.pointer !== undefined ? this.hoverAt(this.pointer) : undefined;
    this.hover = next;
    this.events.hovered(next);
  }

  private hoverAt(pixel: Point): Hovered | undefined {
    const mark = this.markAt(pixel);
    if (mark !== undefined) return { here: { kind: 'nothing' }, mark, pixel };
    const here = this.hereAt(pixel);
    return here.kind === 'nothing' ? undefined : { here, pixel };
  }

  private markAt({ x, y }: Point): PencilMark | undefined {
    const more = this.reach === REACH.touch ? 8 : 2;
    return this.hits.find(({ box }) => x >= box.minX - more && x <= box.maxX + more && y >= box.minY - more && y <= box.maxY + more)?.mark;
  }

  private hereAt(pixel: Point): Here {
    if (this.ground === undefined) return { kind: 'nothing' };
    const { index, insides } = finderOf(this.ground.picture);
    return hereAt(index, insides, toPlace(this.view, pixel), this.reach / this.view.scale, this.shown());
  }

  private snapAt(pixel: Point): Snapped {
    const at = toPlace(this.view, pixel);
    if (this.ground === undefined || this.tool.kind === 'none') return { kind: 'free', at };
    return snapped(finderOf(this.ground.picture).index, at, (this.reach + 2) / this.view.scale, this.shown());
  }

  private shown(): (layer: LayerView) => boolean {
    const shown = new Set(this.ground === undefined ? [] : layersOf(this.ground.picture.layers, this.ground.chapter));
    return (layer) => shown.has(layer);
  }

  private blockAt(pixel: Point): number | undefined {
    const moves = this.upon?.moves;
    if (moves === undefined) return undefined;
    if (this.moves?.of !== moves) this.moves = { of: moves, index: indexOfMoves(moves) };
    return blockNear(moves, this.moves.index, toPlace(this.view, pixel), (this.reach + 4) / this.view.scale);
  }
}
