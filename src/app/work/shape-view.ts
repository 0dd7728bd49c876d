/** A part by numbers as the sheet shows it: its name, and its sizes with how each is taken. */
import type { JobFacts } from '../../result/facts.ts';
import { shown } from './figure-view.ts';
import type { ShapeView, Untold } from './views.ts';

export const shapeView = ({ shape }: JobFacts): ShapeView<Untold> | undefined =>
  shape === undefined
    ? undefined
    : {
        name: shape.name,
        sizes: shape.sizes.map(({ figure, limits, taking }) => ({
          shown: shown(figure),
          limits,
          taking,
        })),
      };
