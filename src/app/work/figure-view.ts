/** Figures as the page shows them, and the tree behind one of them. */
import type { Figure } from '../../quantity/figure.ts';
import type { Shown, WhyTree } from './views.ts';

export const shown = ({ key, name, value, unit, low, high }: Figure): Shown => ({ key, name, value, unit, low, high });

/** A figure that goes in at several places is told in full once. */
export const whyTree = (figure: Figure, told = new Set<Figure>()): WhyTree => {
  const again = told.has(figure);
  told.add(figure);
  return {
    shown: shown(figure),
    basis: figure.basis,
    source: figure.source,
    ...(figure.formula === undefined ? {} : { formula: figure.formula }),
    warnings: figure.warnings,
    from: again ? [] : figure.from.map((f) => whyTree(f, told)),
  };
};
