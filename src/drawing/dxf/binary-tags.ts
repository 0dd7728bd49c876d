/** Pairs of a binary DXF file: codes of one byte (R12) or two, and values whose kind follows from the code. */

import { itemAt } from '../../sequence/sequence.ts';
import type { Words } from './strings.ts';
import { type Damage, isGroupCode, type Tags } from './tags.ts';

/** The 22 bytes every binary DXF file begins with. */
const SENTINEL = 'AutoCAD Binary DXF\r\n\u001a\0';

export const isBinaryDxf = (bytes: Uint8Array): boolean => {
  for (let i = 0; i < SENTINEL.length; i++) if (bytes[i] !== SENTINEL.charCodeAt(i)) return false;
  return true;
};

export class BinaryTags implements Tags {
  readonly binary = true;
  readonly damages: Damage[] = [];
  code = 0;
  place = 0;
  readonly #bytes: Uint8Array;
  readonly #view: DataView;
  readonly #words: Words;
  /** R12 writes codes in one byte, 255 announcing one of two bytes; later versions always in two. */
  readonly #short: boolean;
  #at = SENTINEL.length;
  #from = 0;
  #to = 0;
  #number = 0;

  constructor(bytes: Uint8Array, words: Words) {
    this.#bytes = bytes;
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.#words = words;
    const [first, second] = [bytes[SENTINEL.length], bytes[SENTINEL.length + 1]];
    this.#short = first === LONG_CODE || (first === 0 && second !== 0);
  }

  next(): boolean {
    do {
      this.place = this.#at;
      if (!this.#groupCode() || !this.#value()) {
        // A binary value has no mark at its end: once lost, the way cannot be found again.
        if (this.place < this.#bytes.length) this.damages.push({ place: this.place, text: `code ${this.code}` });
        this.#at = this.#bytes.length;
        return false;
      }
    } while (this.code === 999);
    return true;
  }

  number(): number {
    return Number.isFinite(this.#number) ? this.#number : Number.NaN;
  }

  text(): string {
    let from = this.#from;
    let to = this.#to;
    while (from < to && itemAt(this.#bytes, from) <= 0x20) from++;
    while (to > from && itemAt(this.#bytes, to - 1) <= 0x20) to--;
    return this.#words.text(this.#bytes, from, to);
  }

  #groupCode(): boolean {
    const left = this.#bytes.length - this.#at;
    if (this.#short && left >= 1 && this.#bytes[this.#at] !== LONG_CODE) {
      this.code = itemAt(this.#bytes, this.#at);
      this.#at += 1;
      return true;
    }
    const skip = this.#short ? 1 : 0;
    if (left < 2 + skip) return false;
    this.code = this.#view.getInt16(this.#at + skip, true);
    this.#at += 2 + skip;
    return isGroupCode(this.code);
  }

  #value(): boolean {
    const kind = this.code < 0 ? TEXT : itemAt(KINDS, this.code);
    const at = this.#at;
    const left = this.#bytes.length - at;
    this.#number = Number.NaN;
    this.#from = at;
    this.#to = at;
    if (kind === TEXT) return this.#textValue();
    if (kind === CHUNK) {
      this.#at = at + 1 + (this.#bytes[at] ?? 0);
      return left >= 1 && this.#at <= this.#bytes.length;
    }
    const size = kind === INT64 ? 8 : kind;
    if (left < size) return false;
    if (kind === DOUBLE) this.#number = this.#view.getFloat64(at, true);
    else if (kind === INT16) this.#number = this.#view.getInt16(at, true);
    else if (kind === INT32) this.#number = this.#view.getInt32(at, true);
    else if (kind === BYTE) this.#number = itemAt(this.#bytes, at);
    this.#at = at + size;
    return true;
  }

  #textValue(): boolean {
    // Names are short: a plain loop is faster here than a search by the engine.
    let end = this.#at;
    while (end < this.#bytes.length && this.#bytes[end] !== 0) end++;
    if (end === this.#bytes.length) return false;
    this.#to = end;
    this.#at = end + 1;
    return true;
  }
}

const LONG_CODE = 255;

/** The kind of value is its length in bytes, but for those that tell their own. */
const [TEXT, BYTE, INT16, CHUNK, INT32, INT64, DOUBLE] = [0, 1, 2, 3, 4, 9, 8] as const;

/** Which kind of value follows which code, as the DXF reference lists it; all others are text. */
const RANGES: readonly (readonly [number, number, number])[] = [
  [10, 59, DOUBLE],
  [60, 79, INT16],
  [90, 99, INT32],
  [110, 149, DOUBLE],
  [160, 169, INT64],
  [170, 179, INT16],
  [210, 239, DOUBLE],
  [270, 289, INT16],
  [290, 299, BYTE],
  [310, 319, CHUNK],
  [370, 389, INT16],
  [400, 409, INT16],
  [420, 429, INT32],
  [440, 459, INT32],
  [460, 469, DOUBLE],
  [1004, 1004, CHUNK],
  [1010, 1059, DOUBLE],
  [1060, 1070, INT16],
  [1071, 1071, INT32],
];
const KINDS = Uint8Array.from({ length: 1072 }, (_, code) => RANGES.find(([first, last]) => code >= first && code <= last)?.[2] ?? TEXT);
