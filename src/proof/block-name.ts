/** Masses, places and blocks as findings of the proof show them. */
import type { Point } from '../geometry/segment.ts';
import type { Block } from '../nc/read/program.ts';
import { count, name, type Part, placeWithUnit, quantity, upTo } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

/** '0.52 g', '84 g', '2.36 kg'. */
export const gram = (kg: number): Part => (kg < 1 ? quantity(kg * 1000, 'g', upTo(kg < 0.01 ? 2 : 0)) : quantity(kg, 'kg', upTo(2)));

/** 'x 12.5 mm, y 3 mm'. */
export const whereIs = (at: Point): Part => placeWithUnit(at, upTo(4));

/** 'line 12 (N0110 G01 X4.5)'. Without the text of the program only the number of the block, counted from 1. */
export const blockName = (blocks: readonly Block[], block: number): Text => {
  const known = blocks[block];
  return known === undefined ? words.block(block + 1) : words.line(known.line, known.text.trim());
};

const words = phrases('block-of-program', {
  block: (n: number) => say`block ${{ n: count(n) }}`,
  line: (line: number, text: string) => say`line ${{ line: count(line) }} (${{ text: name(text) }})`,
});
