/** Paper for the proof's picture: where a place of the work lies on it, and lines and letters in its measure, pixels. */
import type { Chain } from '../../geometry/contour.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { pointAt } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import type { PlacedOutline } from '../proof.ts';

export interface PaperView {
  readonly width: number;
  readonly height: number;
  /** Pixels for each mm of the work. */
  readonly scale: number;
  /** Height of letters and width of a plain line. */
  readonly letter: number;
  readonly pen: number;
  readonly x: (x: number) => number;
  /** Upwards in the work is upwards in the picture. */
  readonly y: (y: number) => number;
}

export const WIDTH = 1100;

/** In pixels, however large the work: viewers set letters of a fraction of a unit badly. */
export const frameOf = (b: Bounds): PaperView => {
  const size = Math.max(b.maxX - b.minX, (b.maxY - b.minY) * 1.2);
  const margin = size * 0.05;
  const scale = WIDTH / (size + 2 * margin);
  return {
    width: WIDTH,
    height: (b.maxY - b.minY + 2 * margin) * scale,
    scale,
    letter: 13.75,
    pen: 1,
    x: (x) => (x - b.minX + margin + (size - (b.maxX - b.minX)) / 2) * scale,
    y: (y) => (b.maxY - y + margin) * scale,
  };
};

/** Path data; a piece that does not begin where the one before ended starts a new stroke. */
export const chainData = (frame: PaperView, chain: Chain): string => {
  let data = '';
  let at: Point | undefined;
  for (const s of chain.segments) {
    if (at === undefined || Math.abs(at.x - s.from.x) + Math.abs(at.y - s.from.y) > 1e-3) data += `M${pair(frame, s.from)}`;
    data += pieceData(frame, s);
    at = s.to;
  }
  return chain.closed ? `${data}Z` : data;
};

/** An arc is written in parts of less than half a turn, so that nothing about it has to be guessed. */
const pieceData = (frame: PaperView, s: Segment): string => {
  if (s.kind === 'line') return `L${pair(frame, s.to)}`;
  const parts = Math.ceil(Math.abs(s.sweep) / 3);
  const r = number(s.radius * frame.scale);
  return Array.from({ length: parts }, (_, i) => `A${r} ${r} 0 0 ${s.sweep > 0 ? 0 : 1} ${pair(frame, pointAt(s, (i + 1) / parts))}`).join(
    '',
  );
};

export const outlineData = (frame: PaperView, { origin, points }: PlacedOutline): string =>
  points.length === 0 ? '' : `M${points.map((p) => pair(frame, { x: p.x + origin.x, y: p.y + origin.y })).join('L')}Z`;

/** Words centred on a place of the paper, with a white edge so that lines below do not run into them. */
export const label = (frame: PaperView, { x, y }: OnPaper, words: string, colour: string): string =>
  `<text x="${number(x)}" y="${number(y + frame.letter * 0.35)}" text-anchor="middle" fill="${colour}" stroke="#fff" stroke-width="${number(frame.letter * 0.2)}" paint-order="stroke">${text(words)}</text>`;

/** Pixels, y down. */
export interface OnPaper {
  readonly x: number;
  readonly y: number;
}

export const onPaper = (frame: PaperView, p: Point): OnPaper => ({ x: frame.x(p.x), y: frame.y(p.y) });

export const pair = (frame: PaperView, p: Point): string => `${number(frame.x(p.x))} ${number(frame.y(p.y))}`;

export const number = (v: number): string => String(Number(v.toFixed(3)));

export const text = (words: string): string =>
  words.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
