/** Figures as the page shows them, and the tree behind one of them. */

import type { Figure } from '../../quantity/figure.ts';
import { sourceText } from '../../quantity/source.ts';
import { identityOf } from '../../text/print/explain.ts';
import type { Text } from '../../text/text.ts';
import type { Shown, WhyTree } from './views.ts';

export const shown = ({ key, name, value, unit, low, high }: Figure): Shown<Text> => ({ key, name, value, unit, low, high });

/** A figure that goes in at several places is told in full once. */
export const whyTree = (figure: Figure, told = new Set<unknown>()): WhyTree<Text> => {
  const again = told.has(identityOf(figure));
  told.add(identityOf(figure));
  return {
    shown: shown(figure),
    basis: figure.basis,
    source: sourceText(figure.source),
    formula: figure.formula,
    warnings: figure.warnings,
    from: again ? [] : figure.from.map((f) => whyTree(f, told)),
  };
};
