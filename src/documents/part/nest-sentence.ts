/** A nest in one sentence: what was laid, and how much of the plate becomes pieces. */

import { extentOf } from '../../picture/extent.ts';
import type { NestFacts } from '../../result/nest-facts.ts';
import { count, fixed, name, type Part, quantities, quantity, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { length } from './numbers.ts';

/** 'All 14 pieces lie on the plate of 1.2379, 300 by 200 mm and 20 mm thick; ...' */
export const nestSentence = ({ nest, pieces, rows, plate, material, thickness }: NestFacts): Text => {
  const { minX, minY, maxX, maxY } = extentOf([plate]);
  const left = nest.left.reduce((sum, l) => sum + l.quantity, 0);
  const laid: Laid = {
    laid: pieces.length,
    asked: pieces.length + left,
    plate: words.plate(name(material), quantities([maxX - minX, maxY - minY], 'by', 'mm', upTo(3)), length(thickness)),
    kinds: rows.filter((r) => r.laid > 0).length,
    manner: nest.manner === 'rows' ? words.inRows : words.whereBest,
    share: percent(nest.yield),
  };
  if (laid.asked === 1) return left === 0 ? words.only(laid, used(nest)) : words.none(laid);
  return left === 0 ? words.all(laid, used(nest)) : words.some(laid, percent(nest.bound));
};

/** What is left of the plate where all lie on it, to a tenth. */
const used = ({ used }: NestFacts['nest']): Part => quantities([used.maxX - used.minX, used.maxY - used.minY], 'by', 'mm', upTo(1));

const percent = (share: number): Part => quantity(100 * share, '%', fixed(1));

interface Laid {
  readonly laid: number;
  readonly asked: number;
  readonly plate: Text;
  readonly kinds: number;
  readonly manner: Text;
  readonly share: Part;
}

const words = phrases('nest', {
  plate: (material: Part, size: Part, thickness: Part) => say`${{ material }}, ${{ size }} and ${{ thickness }} thick`,
  inRows: say`in rows`,
  whereBest: say`each where it fits best`,
  all: ({ asked, plate, kinds, manner, share }: Laid, used: Part) =>
    say`All ${{ pieces: count(asked) }} pieces fit on the ${{ plate }} plate, ${{ kinds: count(kinds, 'kind') }}, ${{ manner }}: ${{ share }} of it becomes pieces, and they occupy ${{ used }} of it.`,
  only: ({ plate, share }: Laid, used: Part) =>
    say`The piece fits on the ${{ plate }} plate: ${{ share }} of it becomes the piece, and it occupies ${{ used }} of it.`,
  none: ({ plate }: Laid) => say`The piece does not fit on the ${{ plate }} plate.`,
  some: ({ laid, asked, plate, kinds, manner, share }: Laid, bound: Part) =>
    say`${{ laid: count(laid) }} of ${{ asked: count(asked) }} pieces fit on the ${{ plate }} plate, ${{ kinds: count(kinds, 'kind') }}, ${{ manner }}: ${{ share }} of it becomes pieces; by area alone ${{ bound }} would be possible.`,
});
