/** How the user units of an `svg` or `symbol` become those around it: width, height, viewBox and how it is fitted. */
import { composed, type Matrix, UNMOVED } from '../curve/move-curve.ts';
import { lengthOf, numbersOf } from './lengths.ts';
import type { Element } from './markup.ts';

/** The size in user units that percentages refer to. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Viewport {
  /** From inside to the units around. */
  readonly matrix: Matrix;
  /** Of the inside. */
  readonly inner: Size;
  /** In the units around. */
  readonly outer: Size;
  /** True when width or height carry a unit of the world. */
  readonly real: boolean;
  /** True when x and y are scaled unequally. */
  readonly stretched: boolean;
}

export type ViewportOutcome =
  | { readonly kind: 'viewport'; readonly viewport: Viewport }
  | { readonly kind: 'unreadable'; readonly what: string };

/**
 * @param around the size that percentages refer to; none at the root, where a percentage says nothing
 * @param given width and height from a `use`, which go before the element's own
 */
export const viewportOf = (element: Element, around: Size | undefined, given?: ReadonlyMap<string, string>): ViewportOutcome => {
  const attribute = (name: string): string | undefined => given?.get(name) ?? element.attributes.get(name);
  const box = viewBoxOf(element.attributes.get('viewBox'));
  if (box === 'unreadable') return { kind: 'unreadable', what: `viewBox="${element.attributes.get('viewBox')?.slice(0, 80)}"` };
  const width = sideOf(attribute('width'), around?.width);
  const height = sideOf(attribute('height'), around?.height);
  if (width === 'unreadable' || height === 'unreadable')
    return {
      kind: 'unreadable',
      what: `width="${attribute('width')?.slice(0, 40) ?? ''}" height="${attribute('height')?.slice(0, 40) ?? ''}"`,
    };
  const outer = outerSize(width.size, height.size, box, around);
  const place = placeOf(element, around);
  const fit =
    box === undefined ? { matrix: UNMOVED, stretched: false } : fitted(box, outer, element.attributes.get('preserveAspectRatio') ?? '');
  const viewport: Viewport = {
    matrix: composed(place, fit.matrix),
    inner: box ?? outer,
    outer,
    real: width.real || height.real,
    stretched: fit.stretched,
  };
  return { kind: 'viewport', viewport };
};

interface Box extends Size {
  readonly x: number;
  readonly y: number;
}

const viewBoxOf = (text: string | undefined): Box | undefined | 'unreadable' => {
  if (text === undefined) return undefined;
  const [x, y, width, height, ...more] = numbersOf(text.slice(0, 200));
  if (more.length > 0 || x === undefined || y === undefined || width === undefined || height === undefined) return 'unreadable';
  if (!(width > 0) || !(height > 0) || Number.isNaN(x + y)) return 'unreadable';
  return { x, y, width, height };
};

interface Side {
  /** None where it is left to the other side, to the viewBox or to the window. */
  readonly size: number | undefined;
  readonly real: boolean;
}

const sideOf = (text: string | undefined, around: number | undefined): Side | 'unreadable' => {
  if (text === undefined || text.trim() === 'auto') return { size: undefined, real: false };
  const length = lengthOf(text);
  if (length.kind === 'unreadable') return 'unreadable';
  if (length.kind === 'percent') return { size: around === undefined ? undefined : length.share * around, real: false };
  return length.value > 0 ? { size: length.value, real: length.real } : 'unreadable';
};

/** A side that is not given follows from the other one and the shape of the viewBox. */
const outerSize = (width: number | undefined, height: number | undefined, box: Box | undefined, around: Size | undefined): Size => {
  if (box === undefined) return { width: width ?? around?.width ?? 0, height: height ?? around?.height ?? 0 };
  if (around !== undefined) return { width: width ?? around.width, height: height ?? around.height };
  return {
    width: width ?? (height === undefined ? box.width : (height * box.width) / box.height),
    height: height ?? (width === undefined ? box.height : (width * box.height) / box.width),
  };
};

/** An `svg` within another is put at its x and y; at the root these mean nothing. */
const placeOf = (element: Element, around: Size | undefined): Matrix => {
  if (around === undefined || element.name !== 'svg') return UNMOVED;
  const at = (name: string): number => {
    const length = lengthOf(element.attributes.get(name) ?? '0');
    return length.kind === 'length' ? length.value : 0;
  };
  return { ...UNMOVED, e: at('x'), f: at('y') };
};

/** Fits the viewBox into the size: evenly unless 'none' is asked for, and by default in the middle. */
const fitted = (box: Box, outer: Size, ask: string): { readonly matrix: Matrix; readonly stretched: boolean } => {
  const [sx, sy] = [outer.width / box.width, outer.height / box.height];
  if (/\bnone\b/.test(ask)) {
    const matrix = { a: sx, b: 0, c: 0, d: sy, e: -box.x * sx, f: -box.y * sy };
    return { matrix, stretched: Math.abs(sx - sy) > 1e-9 * Math.max(sx, sy) };
  }
  const scale = /\bslice\b/.test(ask) ? Math.max(sx, sy) : Math.min(sx, sy);
  const spare = (share: number, out: number, size: number): number => share * (out - size * scale);
  const e = spare(shareOf(/x(Min|Mid|Max)/.exec(ask)?.[1]), outer.width, box.width) - box.x * scale;
  const f = spare(shareOf(/Y(Min|Mid|Max)/.exec(ask)?.[1]), outer.height, box.height) - box.y * scale;
  return { matrix: { a: scale, b: 0, c: 0, d: scale, e, f }, stretched: false };
};

const shareOf = (word: string | undefined): number => (word === 'Min' ? 0 : word === 'Max' ? 1 : 0.5);
