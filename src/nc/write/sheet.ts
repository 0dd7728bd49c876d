/** The growing program text: numbers its blocks and spells its comments. */
import type { Dialect } from '../dialect/dialect.ts';
import { lines, plain } from './comment.ts';

const LARGEST_SEQUENCE = 99_999;

export interface Sheet {
  /** A block of words, numbered; `comment` is one line of plain text or nothing. */
  readonly block: (words: string, comment?: string) => void;
  /** Comment lines of their own. */
  readonly remark: (text: string) => void;
  /** A stop with its comment in full on the block: the control may show no other line. */
  readonly told: (words: string, text: string) => void;
  readonly percent: () => void;
  readonly text: () => string;
  readonly blocks: () => number;
  /** The sequence numbers went past 99999. */
  readonly startedAgain: () => boolean;
}

export const sheet = (dialect: Dialect): Sheet => {
  const rows: string[] = [];
  const { sequence } = dialect;
  let number = sequence?.start ?? 0;
  let again = false;
  let count = 0;

  const numbered = (): string => {
    if (sequence === undefined) return '';
    const now = number;
    number += sequence.step;
    if (number > LARGEST_SEQUENCE) {
      number = sequence.start;
      again = true;
    }
    return `N${now} `;
  };

  const comment = (text: string): string => {
    if (dialect.comments === 'none') return '';
    return dialect.comments === 'semicolon' ? `; ${text}` : `(${text})`;
  };

  const block = (words: string, text = ''): void => {
    count += 1;
    rows.push(text === '' || dialect.comments === 'none' ? `${numbered()}${words}` : `${numbered()}${words} ${comment(text)}`);
  };

  const remarkLines = (texts: readonly string[]): void => {
    if (dialect.comments !== 'none') for (const text of texts) rows.push(comment(text));
  };

  return {
    block,
    remark: (text) => remarkLines(lines(text)),
    told: (words, text) => block(words, plain(text)),
    percent: () => {
      if (dialect.percent) rows.push('%');
    },
    text: () => `${rows.join('\n')}\n`,
    blocks: () => count,
    startedAgain: () => again,
  };
};
