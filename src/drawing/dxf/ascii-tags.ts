/** Pairs of an ASCII DXF file: two lines each, ended by CR, LF or both, with blanks allowed around either. */
import { itemAt } from '../../sequence/sequence.ts';
import { numberIn } from './number.ts';
import type { Words } from './strings.ts';
import { type Damage, isGroupCode, type Tags } from './tags.ts';

export class AsciiTags implements Tags {
  readonly binary = false;
  readonly damages: Damage[] = [];
  code = 0;
  place = 0;
  readonly #bytes: Uint8Array;
  readonly #words: Words;
  #at: number;
  /** Lines consumed so far. */
  #line = 0;
  #from = 0;
  #to = 0;

  constructor(bytes: Uint8Array, words: Words) {
    this.#bytes = bytes;
    this.#words = words;
    this.#at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  }

  next(): boolean {
    do {
      const code = this.#groupCode();
      if (code === ENDED) return false;
      if (code === UNREADABLE) {
        if (!this.#findNextEntity()) return false;
      } else if (this.#at >= this.#bytes.length) {
        return false;
      } else {
        this.code = code;
        this.place = this.#line;
        this.#value();
      }
    } while (this.code === COMMENT);
    return true;
  }

  number(): number {
    return numberIn(this.#bytes, this.#from, this.#to);
  }

  text(): string {
    return this.#words.text(this.#bytes, this.#from, this.#to);
  }

  /** Reads the line of a group code. Empty lines in its stead are stepped over: nothing can be lost by that. */
  #groupCode(): number {
    const bytes = this.#bytes;
    const length = bytes.length;
    let i = this.#at;
    for (;;) {
      while (i < length && (bytes[i] === SPACE || bytes[i] === TAB)) i++;
      if (i >= length) return ENDED;
      if (bytes[i] !== CR && bytes[i] !== LF) break;
      i = this.#breakAt(i);
    }
    const start = i;
    const negative = bytes[i] === MINUS;
    if (negative) i++;
    const first = i;
    let code = 0;
    let byte = bytes[i] ?? END;
    for (; byte >= ZERO && byte <= NINE && i - first < 5; byte = bytes[++i] ?? END) code = code * 10 + (byte - ZERO);
    const digits = i - first;
    while (i < length && (bytes[i] === SPACE || bytes[i] === TAB)) i++;
    const ends = i >= length || bytes[i] === CR || bytes[i] === LF;
    if (negative) code = -code;
    if (!ends || digits === 0 || !isGroupCode(code)) {
      this.#at = start;
      return UNREADABLE;
    }
    this.#at = this.#breakAt(i);
    return code;
  }

  /** Takes the line at the cursor as the value of the pair. */
  #value(): void {
    const bytes = this.#bytes;
    const length = bytes.length;
    let i = this.#at;
    while (i < length && (bytes[i] === SPACE || bytes[i] === TAB)) i++;
    this.#from = i;
    while (i < length && bytes[i] !== CR && bytes[i] !== LF) i++;
    const end = i;
    while (i > this.#from && (bytes[i - 1] === SPACE || bytes[i - 1] === TAB)) i--;
    this.#to = i;
    this.#at = this.#breakAt(end);
  }

  /** Steps over one line end; CR CR LF is one too, as files moved between systems in text mode have it. */
  #breakAt(i: number): number {
    const bytes = this.#bytes;
    this.#line++;
    if (bytes[i] === LF) return i + 1;
    if (bytes[i + 1] === LF) return i + 2;
    return bytes[i + 1] === CR && bytes[i + 2] === LF ? i + 3 : i + 1;
  }

  /**
   * After a line that is no group code nobody knows whether the next line is a code or a value: a line may have been lost
   * as well as spoilt. The next '0' followed by a word in capitals is where an entity begins, and reading goes on there.
   */
  #findNextEntity(): boolean {
    this.#value();
    this.damages.push({ place: this.#line, text: this.#words.text(this.#bytes, this.#from, Math.min(this.#to, this.#from + 60)) });
    let zero = false;
    while (this.#at < this.#bytes.length) {
      this.#value();
      if (zero && this.#isEntityName()) {
        this.code = 0;
        this.place = this.#line - 1;
        return true;
      }
      zero = this.#to - this.#from === 1 && this.#bytes[this.#from] === ZERO;
    }
    return false;
  }

  #isEntityName(): boolean {
    const bytes = this.#bytes;
    for (let i = this.#from; i < this.#to; i++) {
      const b = itemAt(bytes, i);
      const letter = (b >= 0x41 && b <= 0x5a) || b === 0x5f;
      const digit = b >= 0x30 && b <= 0x39;
      if (!letter && !digit) return false;
    }
    // '3DFACE' begins with a digit, so a digit may come first; a name of digits alone is a number.
    return this.#to - this.#from >= 3 && itemAt(bytes, this.#to - 1) >= 0x41;
  }
}

/** Stands for a byte after the last: no digit, no blank. */
const END = 0;
const SPACE = 0x20;
const TAB = 0x09;
const CR = 0x0d;
const LF = 0x0a;
const MINUS = 0x2d;
const ZERO = 0x30;
const NINE = 0x39;
const COMMENT = 999;
const ENDED = 10_000;
const UNREADABLE = 10_001;
