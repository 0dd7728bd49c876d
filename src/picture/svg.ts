/** The few SVG shapes and the inks the picture is made of. */

import type { Chain } from '../geometry/contour.ts';
import type { Arc, Point } from '../geometry/segment.ts';
import { lastItem } from '../sequence/sequence.ts';

export const PAPER = '#fdfcf8';
export const INK = '#26282b';
export const QUIET = '#6f7276';
/** Metal: a hair darker than the paper. */
export const METAL = '#ece9e0';
export const RUST = '#a8431f';

/** How the drawing lies on the sheet: `scale` in px per mm, `wide` and `high` in mm, `at` from mm to px. */
export interface View {
  readonly empty: boolean;
  readonly wide: number;
  readonly high: number;
  readonly scale: number;
  readonly top: number;
  readonly bottom: number;
  readonly at: (p: Point) => readonly [number, number];
}

export const px = (value: number): string => {
  const rounded = Math.round(value * 1000) / 1000;
  return String(Object.is(rounded, -0) ? 0 : rounded);
};

/** Path data of a chain; arcs stay arcs. */
export const pathOf = (chain: Chain, view: View): string => {
  const start = view.at(chain.segments[0].from);
  const parts = chain.segments.map((segment) => {
    if (segment.kind === 'arc') return arcOf(segment, view);
    const [x, y] = view.at(segment.to);
    return `L${px(x)} ${px(y)}`;
  });
  return `M${px(start[0])} ${px(start[1])}${parts.join('')}${chain.closed ? 'Z' : ''}`;
};

/** In two halves, since SVG cannot tell a full circle from none. Counter-clockwise has the sweep flag 0, as y points down. */
const arcOf = (arc: Arc, view: View): string => {
  const half = arc.sweep / 2;
  const x = arc.from.x - arc.centre.x;
  const y = arc.from.y - arc.centre.y;
  const middle = {
    x: arc.centre.x + x * Math.cos(half) - y * Math.sin(half),
    y: arc.centre.y + x * Math.sin(half) + y * Math.cos(half),
  };
  const radius = px(arc.radius * view.scale);
  const to = (p: Point): string => {
    const [a, b] = view.at(p);
    return `A${radius} ${radius} 0 0 ${arc.sweep > 0 ? 0 : 1} ${px(a)} ${px(b)}`;
  };
  return to(middle) + to(arc.to);
};

export interface Lettering {
  readonly size: number;
  readonly colour: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
}

export const text = (x: number, y: number, words: string, { size, colour, anchor = 'start', bold = false }: Lettering): string =>
  `<text x="${px(x)}" y="${px(y)}" font-size="${size}" fill="${colour}"${anchor === 'start' ? '' : ` text-anchor="${anchor}"`}${bold ? ' font-weight="bold"' : ''}>${escaped(words)}</text>`;

/** Marks that XML gives a meaning are written out; control characters, which it forbids, become a space. */
export const escaped = (words: string): string =>
  words
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters to keep out
    .replace(/[\u0000-\u001f\u007f\ud800-\udfff\ufffe\uffff]/g, ' ')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');

/** Words in lines of at most so many letters; a word longer than a line is cut. */
export const wrapped = (words: string, letters: number): string[] => {
  const lines: string[] = [''];
  for (const word of words.split(/\s+/).flatMap((w) => w.match(new RegExp(`.{1,${letters}}`, 'gu')) ?? [])) {
    const last = lastItem(lines);
    if (last === '') lines[lines.length - 1] = word;
    else if (last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
};
