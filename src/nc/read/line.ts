/** One line of program text -> its words and comments. Knows letters, numbers and comment signs, and no meaning. */
import { count, name, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { type Broken, broken } from './read-outcome.ts';

/** A letter with its number. */
export interface Word {
  readonly letter: string;
  readonly value: number;
  /** The number was written with a decimal point. */
  readonly point: boolean;
}

export interface Line {
  readonly words: readonly Word[];
  readonly comments: readonly string[];
  /** The line began with a slash: a switch at the machine decides whether it runs. */
  readonly skippable: boolean;
  /** The line is a % mark. */
  readonly percent: boolean;
}

export type LineOutcome = { readonly kind: 'line'; readonly line: Line } | Broken;

/** More digits than this are not exact in a number of the machine. */
const MOST_DIGITS = 15;

const none: readonly never[] = [];
const percentLine: LineOutcome = { kind: 'line', line: { words: none, comments: none, skippable: false, percent: true } };

const isBlank = (code: number): boolean => code === 32 || code === 9;
export const isDigit = (code: number): boolean => code >= 48 && code <= 57;

/** Spaces between and within words do not count, letters may be small. */
export const splitLine = (text: string, style: Dialect['comments']): LineOutcome => {
  const words: Word[] = [];
  let comments: string[] | undefined;
  let skippable = false;
  let at = 0;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (isBlank(code)) at += 1;
    else if (code === 40 || code === 59 || code === 41) {
      const comment = readComment(text, at, style);
      if (comment.kind === 'bad') return comment;
      comments ??= [];
      comments.push(comment.text);
      at = comment.next;
    } else if (code === 37 && words.length === 0) return percentLine;
    else if (code === 47 && words.length === 0 && !skippable) {
      skippable = true;
      at += 1;
    } else {
      const word = readWord(text, at);
      if (word.kind === 'bad') return word;
      words.push(word.word);
      at = word.next;
    }
  }
  return { kind: 'line', line: { words, comments: comments ?? none, skippable, percent: false } };
};

type CommentOutcome = { readonly kind: 'comment'; readonly text: string; readonly next: number } | Broken;

const readComment = (text: string, at: number, style: Dialect['comments']): CommentOutcome => {
  const sign = text[at] as string;
  const wanted = style === 'round brackets' ? '(' : style === 'semicolon' ? ';' : '';
  if (sign === ')') return broken('comment-bad/not-opened', (block) => say`${{ block }} closes a comment that was never opened.`);
  if (sign !== wanted)
    return broken(
      'comment-bad/other-sign',
      (block) => say`${{ block }} has a comment that begins with '${{ sign: term(sign) }}', which the dialect does not know.`,
    );
  if (sign === ';') return { kind: 'comment', text: text.slice(at + 1).trim(), next: text.length };
  const end = text.indexOf(')', at + 1);
  if (end < 0) return broken('comment-bad/not-closed', (block) => say`${{ block }} opens a comment and does not close it.`);
  const inside = text.slice(at + 1, end);
  if (inside.includes('(')) return broken('comment-bad/within', (block) => say`${{ block }} opens a comment within a comment.`);
  return { kind: 'comment', text: inside.trim(), next: end + 1 };
};

/** A colon gives the number of a program as the letter O does. */
const COLON = 58;
const LETTER_O = 79;

type WordOutcome = { readonly kind: 'word'; readonly word: Word; readonly next: number } | Broken;

const readWord = (text: string, start: number): WordOutcome => {
  const sign = text.charCodeAt(start);
  const code = sign === COLON ? LETTER_O : sign & 0xdf;
  if (code < 65 || code > 90 || sign > 127) {
    return broken(
      'sign-unknown',
      (block) => say`${{ block }} has the sign '${{ sign: printable(text, start) }}', which no program may contain.`,
    );
  }
  const letter = String.fromCharCode(code);
  let at = start + 1;
  let negative = false;
  let signed = false;
  let point = false;
  let digits = 0;
  let whole = 0;
  let behind = 0;
  for (; at < text.length; at += 1) {
    const sign = text.charCodeAt(at);
    if (isBlank(sign)) continue;
    if (isDigit(sign)) {
      whole = whole * 10 + (sign - 48);
      digits += 1;
      if (point) behind += 1;
    } else if (sign === 46 && !point) point = true;
    else if ((sign === 43 || sign === 45) && !signed && digits === 0 && !point) {
      signed = true;
      negative = sign === 45;
    } else break;
  }
  if (digits === 0)
    return broken('number-bad/none', (block) => say`${{ block }} has the letter ${{ letter: term(letter) }} without a number.`);
  if (digits > MOST_DIGITS) {
    return broken(
      'number-bad/long',
      (block) =>
        say`${{ block }} has a number of ${{ digits: count(digits) }} digits behind ${{ letter: term(letter) }}; at most ${{ most: count(MOST_DIGITS) }} can be read exactly.`,
    );
  }
  const size = behind === 0 ? whole : whole / 10 ** behind;
  return { kind: 'word', word: { letter, value: negative && size !== 0 ? -size : size, point }, next: at };
};

const words = phrases('program-sign', {
  shown: (sign: string) => say`${{ sign: name(sign) }}`,
  byCode: (code: number) => say`code ${{ code: count(code) }}`,
});

const printable = (text: string, at: number): Text => {
  const point = text.codePointAt(at) as number;
  return point >= 32 && point !== 127 ? words.shown(String.fromCodePoint(point)) : words.byCode(point);
};
