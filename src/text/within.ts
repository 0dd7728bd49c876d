/** What a text holds, by data: the contours it is about, its places moved, its parts in reading order. */

import { bodyOf, textOf } from './body.ts';
import type { Part } from './part.ts';
import type { Text } from './text.ts';

type PlacePart = Extract<Part, { kind: 'place' }>;

/** Tells a text from what else stands in a table of words. */
export const isText = (value: unknown): value is Text =>
  typeof value === 'object' && value !== null && 'template' in value && 'holes' in value;

/** The same text with each place moved; nothing else of it changes. */
export const placesMapped = (text: Text, move: (place: PlacePart) => PlacePart): Text => {
  const { holes, ...rest } = bodyOf(text);
  return textOf({ ...rest, holes: Object.fromEntries(Object.entries(holes).map(([hole, part]) => [hole, moved(part, move)])) });
};

const moved = (part: Part, move: (place: PlacePart) => PlacePart): Part => {
  if (part.kind === 'place') return move(part);
  if (part.kind === 'text') return { ...part, text: placesMapped(part.text, move) };
  if (part.kind === 'list') return { ...part, items: part.items.map((item) => moved(item, move)) };
  return part;
};

/** All parts of a text in the order of its holes, those of texts and lists within it too. */
export const partsOf = (text: Text): readonly Part[] => Object.values(bodyOf(text).holes).flatMap(flattened);

const flattened = (part: Part): readonly Part[] => {
  if (part.kind === 'text') return partsOf(part.text);
  return part.kind === 'list' ? part.items.flatMap(flattened) : [part];
};

/** Ids of the contours a text names, each once. */
export const contoursIn = (text: Text): readonly string[] => [
  ...new Set(partsOf(text).flatMap((p) => (p.kind === 'contour' ? [p.id] : []))),
];

/** True where the text names this place itself. */
export const namesPlace = (text: Text, { x, y }: { readonly x: number; readonly y: number }): boolean =>
  partsOf(text).some((p) => p.kind === 'place' && near(p.x, x) && near(p.y, y));

const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.002;

/** The contours a sentence is about: those it names before its first colon, where it goes on to quote or to explain. */
export const subjectsIn = (text: Text): readonly string[] => {
  const { template, holes } = bodyOf(text);
  const before = template.split(':', 1)[0] ?? '';
  return Object.entries(holes).flatMap(([hole, part]) => {
    if (!before.includes(`{${hole}}`)) return [];
    return flattened(part).flatMap((p) => (p.kind === 'contour' ? [p.id] : []));
  });
};

/** True where the text quotes the other whole at its end. */
export const quotes = (text: Text, other: Text): boolean => {
  const last = Object.values(bodyOf(text).holes).at(-1);
  return last?.kind === 'text' && same(last.text, other);
};

/** The same words about the same things. */
export const same = (a: Text, b: Text): boolean => JSON.stringify(bodyOf(a)) === JSON.stringify(bodyOf(b));
