/** Collects the findings of one reading: the same trouble a thousand times is told ten times and then counted. */

import type { Finding, Place, Remedy } from '../text/finding.ts';
import { count } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { type catalogue, find } from './findings.ts';

export type DrawingCode = keyof typeof catalogue & string;

interface More {
  readonly place?: Place | undefined;
  readonly done?: Text | undefined;
  readonly remedy?: Text | Remedy | undefined;
}

export interface Ledger {
  readonly add: (code: DrawingCode, text: Text, more?: More) => void;
  /** All findings in the order in which their kinds came up first. */
  readonly findings: () => readonly Finding[];
}

export const ledger = (): Ledger => {
  const kinds = new Map<DrawingCode, { told: Finding[]; untold: number; next: Place | undefined }>();
  return {
    add: (code, text, more = {}) => {
      const kind = kinds.get(code) ?? { told: [], untold: 0, next: undefined };
      kinds.set(code, kind);
      if (kind.told.length < TOLD) kind.told.push(find(code, text, more));
      else if (kind.untold++ === 0) kind.next = more.place;
    },
    findings: () =>
      [...kinds].flatMap(([code, { told, untold, next }]) =>
        untold === 0 ? told : [...told, find(code, untold === 1 ? words.once : words.often(untold), next && { place: next })],
      ),
  };
};

/** More than this of one kind help nobody. */
const TOLD = 10;

const words = phrases('same-again', {
  once: say`The same again once in this file.`,
  often: (times: number) => say`The same again ${{ times: count(times) }} times in this file.`,
});
