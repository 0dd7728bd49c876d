/** Figures as the page shows them, and the tree behind one of them. */

import type { Figure } from '../../quantity/figure.ts';
import { identityOf, printSource } from '../../text/print/explain.ts';
import { printPlain } from '../../text/print/print.ts';
import type { Shown, WhyTree } from './views.ts';

export const shown = ({ key, name, value, unit, low, high }: Figure): Shown => ({ key, name: printPlain(name), value, unit, low, high });

/** A figure that goes in at several places is told in full once. */
export const whyTree = (figure: Figure, told = new Set<unknown>()): WhyTree => {
  const again = told.has(identityOf(figure));
  told.add(identityOf(figure));
  return {
    shown: shown(figure),
    basis: figure.basis,
    source: printSource(figure.source),
    ...(figure.formula && { formula: printPlain(figure.formula) }),
    warnings: figure.warnings.map(printPlain),
    from: again ? [] : figure.from.map((f) => whyTree(f, told)),
  };
};
