/** A part by numbers as the sheet shows it: its name, and its sizes with how each is taken. */
import type { JobFacts } from '../../result/facts.ts';
import { printPlain } from '../../text/print/print.ts';
import { shown } from './figure-view.ts';
import type { ShapeView } from './views.ts';

export const shapeView = ({ shape }: JobFacts): ShapeView | undefined =>
  shape === undefined
    ? undefined
    : {
        name: printPlain(shape.name),
        sizes: shape.sizes.map(({ figure, limits, taking }) => ({
          shown: shown(figure),
          ...(limits === undefined ? {} : { limits }),
          ...(taking === undefined ? {} : { taking }),
        })),
      };
