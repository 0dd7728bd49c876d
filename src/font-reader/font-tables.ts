/**
 * Takes out of a font file the tables that letters are made of, and holds each against its checksum: a damaged font must not be cut in
 * steel, and the parser would chew on wild numbers for long. Source of the layout: opentype-format.
 */
import { itemAt } from '../sequence/sequence.ts';
import type { FontFound } from '../shapes/lettering/typeface.ts';
import { name as named, term } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

export type Tables = { readonly kind: 'tables'; readonly file: ArrayBuffer } | Extract<FontFound, { kind: 'none' }>;

/** Outlines, widths, which character is which glyph, names and kerning; nothing that hints, substitutes or varies. */
const WANTED = new Set(['head', 'hhea', 'maxp', 'hmtx', 'cmap', 'name', 'OS/2', 'post', 'loca', 'glyf', 'CFF ', 'kern', 'GPOS']);

/** @param name of the file, for what is said. */
export const fontTables = (bytes: Uint8Array, name: string): Tables => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kind = kindOf(bytes);
  if (kind !== 'readable') return none(other[kind](name));
  const count = bytes.length < 12 ? 0 : view.getUint16(4);
  if (count === 0 || 12 + 16 * count > bytes.length) return none(damaged.list(name));
  const tables = Array.from({ length: count }, (_, i) => tableAt(view, 12 + 16 * i)).filter((t) => WANTED.has(t.tag));
  for (const t of tables) {
    if (t.offset + t.length > bytes.length) return none(damaged.beyondEnd(name, t.tag));
    if (checksumOf(view, t) !== t.checksum) return none(damaged.checksum(name, t.tag));
  }
  const twice = tables.find((t, i) => tables.findIndex((o) => o.tag === t.tag) !== i);
  return twice === undefined ? { kind: 'tables', file: packed(bytes, tables) } : none(damaged.twice(name, twice.tag));
};

const none = (why: Text): Tables => ({ kind: 'none', why });

const damaged = phrases('font-damaged', {
  list: (file: string) => say`${{ font: named(file) }} is damaged, or cut short: its list of tables is not whole.`,
  beyondEnd: (file: string, table: string) =>
    say`${{ font: named(file) }} is damaged, or cut short: its table ${{ table: term(table.trim()) }} lies beyond its end.`,
  checksum: (file: string, table: string) =>
    say`${{ font: named(file) }} is damaged: its table ${{ table: term(table.trim()) }} does not have the sum it says. Save it anew with what made it.`,
  twice: (file: string, table: string) => say`${{ font: named(file) }} has its table ${{ table: term(table.trim()) }} twice.`,
});

const other = phrases('no-font', {
  packed: (file: string) =>
    say`${{ font: named(file) }} is a font packed for web pages: take the TrueType or OpenType file it was made of.`,
  collection: (file: string) => say`${{ font: named(file) }} is a collection of fonts: take one of them out of it.`,
  unknown: (file: string) => say`${{ font: named(file) }} is no TrueType or OpenType font.`,
});

/** By the first four bytes. */
const kindOf = (bytes: Uint8Array): 'readable' | keyof typeof other => {
  const tag = String.fromCharCode(...bytes.subarray(0, 4));
  if (tag === '\0\x01\0\0' || tag === 'OTTO' || tag === 'true') return 'readable';
  if (tag === 'wOFF' || tag === 'wOF2') return 'packed';
  return tag === 'ttcf' ? 'collection' : 'unknown';
};

interface Table {
  readonly tag: string;
  readonly checksum: number;
  readonly offset: number;
  readonly length: number;
}

const tableAt = (view: DataView, at: number): Table => ({
  tag: String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i))),
  checksum: view.getUint32(at + 4),
  offset: view.getUint32(at + 8),
  length: view.getUint32(at + 12),
});

/** Sum of the table's words of four bytes, the last filled up with zeros; the sum of the whole font, which stands in `head`, is left out. */
const checksumOf = (view: DataView, { tag, offset, length }: Table): number => {
  let sum = 0;
  const whole = length - (length % 4);
  for (let i = 0; i < whole; i += 4) if (tag !== 'head' || i !== 8) sum = (sum + view.getUint32(offset + i)) >>> 0;
  let rest = 0;
  for (let i = 0; i < 4; i += 1) rest = rest * 256 + (whole + i < length ? view.getUint8(offset + whole + i) : 0);
  return (sum + rest) >>> 0;
};

/** A font file of these tables alone, each at a multiple of four bytes. */
const packed = (bytes: Uint8Array, tables: readonly Table[]): ArrayBuffer => {
  const head = 12 + 16 * tables.length;
  const starts: number[] = [];
  let size = head;
  for (const { length } of tables) {
    starts.push(size);
    size += 4 * Math.ceil(length / 4);
  }
  const file = new Uint8Array(size);
  const view = new DataView(file.buffer);
  file.set(bytes.subarray(0, 4));
  view.setUint16(4, tables.length);
  tables.forEach((t, i) => {
    const at = 12 + 16 * i;
    for (let k = 0; k < 4; k += 1) view.setUint8(at + k, t.tag.charCodeAt(k));
    view.setUint32(at + 4, t.checksum);
    view.setUint32(at + 8, itemAt(starts, i));
    view.setUint32(at + 12, t.length);
    file.set(bytes.subarray(t.offset, t.offset + t.length), itemAt(starts, i));
  });
  return file.buffer;
};
