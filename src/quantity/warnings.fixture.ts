/** What a figure and all it was made of warn of, for tests only. */

import { printPlain } from '../text/print/print.ts';
import type { Figure } from './figure.ts';

/** Every warning of a figure and of all that it was made of, each once, its own first. */
export const allWarnings = (figure: Figure): readonly string[] => {
  const seen = new Set<Figure>();
  const warnings = new Set<string>();
  const visit = (f: Figure): void => {
    if (seen.has(f)) return;
    seen.add(f);
    for (const w of f.warnings) warnings.add(printPlain(w));
    for (const from of f.from) visit(from);
  };
  visit(figure);
  return [...warnings];
};
