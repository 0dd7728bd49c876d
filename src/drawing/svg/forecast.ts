/** Foresees how many elements are drawn once every `use` has repeated what it asks for, so that a bomb never goes off. */
import { NOT_DRAWN } from './kinds.ts';
import type { Element } from './markup.ts';

/** Each element is counted once and remembered. One within itself counts as nothing there, as it is not drawn there. */
export const elementsDrawn = (root: Element, byId: ReadonlyMap<string, Element>): number => {
  const known = new Map<Element, number>();
  const count = (element: Element, depth: number): number => {
    const before = known.get(element);
    // Deeper than any limit: drawing will refuse it.
    if (before !== undefined || depth > DEEP) return before ?? 0;
    known.set(element, 0);
    const target = element.name === 'use' ? targetOf(element, byId) : undefined;
    let sum = 1 + (target === undefined ? 0 : count(target, depth + 1));
    for (const child of element.children) sum += NOT_DRAWN.has(child.name) ? 1 : count(child, depth + 1);
    known.set(element, sum);
    return sum;
  };
  return count(root, 0);
};

/** The element that a `use` repeats, if it is in this file. */
export const targetOf = (use: Element, byId: ReadonlyMap<string, Element>): Element | undefined => {
  const link = linkOf(use);
  return link.startsWith('#') ? byId.get(link.slice(1)) : undefined;
};

export const linkOf = (use: Element): string => use.attributes.get('href') ?? use.attributes.get('xlink:href') ?? '';

const DEEP = 500;
