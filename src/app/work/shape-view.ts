/** A part by numbers as the sheet shows it: its name, and its sizes with how each is taken. */

import type { JobFacts } from '../../result/facts.ts';
import type { Text } from '../../text/text.ts';
import { shown } from './figure-view.ts';
import type { ShapeView } from './views.ts';

export const shapeView = ({ shape }: JobFacts): ShapeView<Text> | undefined =>
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
