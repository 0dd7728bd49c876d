/** Collects the findings of one reading: the same trouble a thousand times is told ten times and then counted. */

import type { Finding, Place, Remedy } from '../text/finding.ts';
import type { Text } from '../text/text.ts';
import { type catalogue, find } from './findings.ts';

export type DrawingCode = keyof typeof catalogue & string;

interface More {
  readonly place?: Place | undefined;
  readonly done?: string | Text | undefined;
  readonly remedy?: string | Text | Remedy | undefined;
}

export interface Ledger {
  readonly add: (code: DrawingCode, sentence: string | Text, more?: More) => void;
  /** All findings in the order in which their kinds came up first. */
  readonly findings: () => readonly Finding[];
}

export const ledger = (): Ledger => {
  const kinds = new Map<DrawingCode, { told: Finding[]; untold: number; next: Place | undefined }>();
  return {
    add: (code, sentence, more = {}) => {
      const kind = kinds.get(code) ?? { told: [], untold: 0, next: undefined };
      kinds.set(code, kind);
      if (kind.told.length < TOLD) kind.told.push(find(code, sentence, more));
      else if (kind.untold++ === 0) kind.next = more.place;
    },
    findings: () =>
      [...kinds].flatMap(([code, { told, untold, next }]) =>
        untold === 0
          ? told
          : [...told, find(code, `The same again ${untold === 1 ? 'once' : `${untold} times`} in this file.`, next && { place: next })],
      ),
  };
};

/** More than this of one kind help nobody. */
const TOLD = 10;
