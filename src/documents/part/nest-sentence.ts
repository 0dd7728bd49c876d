/** A nest in one sentence: what was laid, and how much of the plate becomes pieces. */

import { boundsOfChain } from '../../geometry/area.ts';
import type { NestFacts } from '../../result/nest-facts.ts';
import { place } from '../../text/print/phrases.ts';

/** '14 pieces of 5 kinds lie on the plate of 300 by 200 mm; ...' */
export const nestSentence = ({ nest, pieces, rows, plate, material, thickness }: NestFacts): string => {
  const { minX, minY, maxX, maxY } = boundsOfChain(plate);
  const left = nest.left.reduce((sum, l) => sum + l.quantity, 0);
  const kinds = rows.filter((r) => r.laid > 0).length;
  const all = left === 0 ? 'All' : `${pieces.length} of`;
  return `${all} ${pieces.length + left} pieces ${left === 0 ? 'lie' : 'have room'} on the plate of ${material}, ${place(maxX - minX)} by ${place(maxY - minY)} mm and ${place(thickness)} mm thick, ${kinds} ${kinds === 1 ? 'kind' : 'kinds'}, ${nest.manner === 'rows' ? 'in rows' : 'each where it fits best'}: ${percent(nest.yield)} of it becomes pieces${outlook(nest)}.`;
};

/** What is left of the plate where all lie on it; else how much more could have had room. */
const outlook = ({ left, used, bound }: NestFacts['nest']): string =>
  left.length === 0
    ? `, and they take ${place(Math.round((used.maxX - used.minX) * 10) / 10)} by ${place(Math.round((used.maxY - used.minY) * 10) / 10)} mm of it`
    : `, where the areas of the pieces alone would allow ${percent(bound)}`;

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
