/** What a pass is called: pass 1 is the rough cut, pass 2 the first skim, pass 3 the second. */
import { count } from './part.ts';
import { phrases, say } from './say.ts';
import type { Text } from './text.ts';

const words = phrases('pass', {
  rough: say`the rough cut`,
  the: (skim: Text) => say`the ${{ skim }}`,
  later: (pass: number) => say`skim, pass ${{ pass: count(pass) }}`,
});

const ordinals = phrases('skim', {
  first: say`first skim`,
  second: say`second skim`,
  third: say`third skim`,
  fourth: say`fourth skim`,
  fifth: say`fifth skim`,
  sixth: say`sixth skim`,
  seventh: say`seventh skim`,
});

const inOrder = [ordinals.first, ordinals.second, ordinals.third, ordinals.fourth, ordinals.fifth, ordinals.sixth, ordinals.seventh];

/** Of a pass from the second on: 'first skim' for pass 2. */
export const skimName = (pass: number): Text => inOrder[pass - 2] ?? words.later(pass);

/** Of the pass at that index: the first is the rough cut. */
export const passName = (index: number): Text => (index === 0 ? words.rough : words.the(skimName(index + 1)));
