/** Passes and turns by name: pass 1 is the rough cut, pass 2 the first skim, everywhere. */
import { count } from '../../text/part.ts';
import { skimName } from '../../text/pass-name.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

const ordinals = phrases('page.ordinal', {
  first: say`first`,
  second: say`second`,
  third: say`third`,
  fourth: say`fourth`,
  fifth: say`fifth`,
  sixth: say`sixth`,
  seventh: say`seventh`,
  eighth: say`eighth`,
  ninth: say`ninth`,
  tenth: say`tenth`,
  st: (n: number) => say`${{ n: count(n) }}st`,
  nd: (n: number) => say`${{ n: count(n) }}nd`,
  rd: (n: number) => say`${{ n: count(n) }}rd`,
  th: (n: number) => say`${{ n: count(n) }}th`,
});

const { st, nd, rd, th, ...toTen } = ordinals;
const FIRST_TEN: readonly Text[] = Object.values(toTen);

/** 'third'; '11th' from eleven on. */
export const ordinal = (n: number): Text => {
  const later = n % 100 > 10 && n % 100 < 14 ? th : ([th, st, nd, rd][n % 10] ?? th);
  return FIRST_TEN[n - 1] ?? later(n);
};

const names = phrases('page.pass-name', {
  rough: say`pass 1 (rough)`,
  later: (pass: number, skim: Text) => say`pass ${{ pass: count(pass) }} (${{ skim }})`,
});

/** 'pass 1 (rough)', 'pass 3 (second skim)'. */
export const passOf = (pass: number): Text => (pass === 1 ? names.rough : names.later(pass, skimName(pass)));
