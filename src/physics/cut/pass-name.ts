/** What a pass is called in the names of figures. */
import { count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

const words = phrases('pass', {
  rough: say`the rough cut`,
  skim: (number: number) => say`skim ${{ number: count(number) }}`,
});

/** The first is the rough cut; skims count from 1 after it. */
export const passName = (index: number): Text => (index === 0 ? words.rough : words.skim(index));
