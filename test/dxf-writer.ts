/** Writes DXF files for tests, ASCII and binary, from a list of group codes and values. */

export type Tag = readonly [code: number, value: string | number];

export interface AsciiStyle {
  readonly lineEnd?: '\n' | '\r\n' | '\r' | '\r\r\n';
  /** Codes set right in three columns, as many programs do. */
  readonly padded?: boolean;
  /** Blanks after every line. */
  readonly trailing?: string;
  /** Put before the first line: a byte order mark, empty lines. */
  readonly before?: string;
  readonly encoding?: Encoding;
}

/** Only signs up to U+00FF are written in windows-1252, where code and byte are the same. */
export type Encoding = 'utf-8' | 'windows-1252';

export const asciiDxf = (tags: readonly Tag[], style: AsciiStyle = {}): Uint8Array => {
  const { lineEnd = '\n', padded = false, trailing = '', before = '', encoding = 'utf-8' } = style;
  const lines = tags.flatMap(([code, value]) => [padded ? String(code).padStart(3) : String(code), asText(code, value)]);
  return encoded(before + lines.map((text) => text + trailing + lineEnd).join(''), encoding);
};

export interface BinaryStyle {
  /** Codes in one byte, as R12 has them. */
  readonly shortCodes?: boolean;
  readonly encoding?: Encoding;
}

export const binaryDxf = (tags: readonly Tag[], { shortCodes = false, encoding = 'utf-8' }: BinaryStyle = {}): Uint8Array => {
  const parts = [encoded('AutoCAD Binary DXF\r\n\u001a\0', 'windows-1252')];
  for (const [code, value] of tags) {
    if (!shortCodes) parts.push(integer(code, 2));
    else parts.push(code < 255 ? Uint8Array.of(code) : Uint8Array.of(255, code & 255, code >> 8));
    parts.push(binaryValue(code, value, encoding));
  }
  return joined(parts);
};

const binaryValue = (code: number, value: string | number, encoding: Encoding): Uint8Array => {
  const size = integerSize(code);
  if (size > 0) return integer(Number(value), size);
  if (isReal(code)) {
    const bytes = new Uint8Array(8);
    new DataView(bytes.buffer).setFloat64(0, Number(value), true);
    return bytes;
  }
  if (isChunk(code)) return joined([Uint8Array.of(String(value).length), encoded(String(value), 'windows-1252')]);
  return encoded(`${value}\0`, encoding);
};

const within = (code: number, ranges: readonly (readonly [number, number])[]): boolean =>
  ranges.some(([first, last]) => code >= first && code <= last);

const isReal = (code: number): boolean =>
  within(code, [
    [10, 59],
    [110, 149],
    [210, 239],
    [460, 469],
    [1010, 1059],
  ]);

const isChunk = (code: number): boolean =>
  within(code, [
    [310, 319],
    [1004, 1004],
  ]);

/** Bytes of a whole number with this code, 0 where the code has no whole number. */
const integerSize = (code: number): number => {
  if (
    within(code, [
      [60, 79],
      [170, 179],
      [270, 289],
      [370, 389],
      [400, 409],
      [1060, 1070],
    ])
  )
    return 2;
  if (
    within(code, [
      [90, 99],
      [420, 429],
      [440, 459],
      [1071, 1071],
    ])
  )
    return 4;
  if (within(code, [[160, 169]])) return 8;
  return within(code, [[290, 299]]) ? 1 : 0;
};

const integer = (value: number, size: number): Uint8Array =>
  Uint8Array.from({ length: size }, (_, i) => (i < 4 ? (value >> (8 * i)) & 255 : 0));

const asText = (code: number, value: string | number): string =>
  typeof value === 'number' && isReal(code) && Number.isInteger(value) ? value.toFixed(1) : String(value);

const encoded = (text: string, encoding: Encoding): Uint8Array =>
  encoding === 'utf-8' ? new TextEncoder().encode(text) : Uint8Array.from(text, (sign) => sign.charCodeAt(0));

const joined = (parts: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(parts.reduce((sum, p) => sum + p.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};

export interface Parts {
  /** 'AC1009' is R12, 'AC1015' 2000, 'AC1021' 2007 (from here on names are UTF-8), 'AC1032' 2018. None leaves the header out. */
  readonly version?: string;
  readonly codePage?: string;
  readonly units?: number;
  readonly layers?: readonly (readonly Tag[])[];
  /** Each with its own BLOCK tags first (see `block`). */
  readonly blocks?: readonly (readonly Tag[])[];
  readonly entities: readonly (readonly Tag[])[];
}

/** A whole file with the sections that have something in them. */
export const dxfTags = ({ version, codePage, units, layers = [], blocks = [], entities }: Parts): readonly Tag[] => {
  const header: Tag[] = [];
  if (version !== undefined) header.push([9, '$ACADVER'], [1, version]);
  if (codePage !== undefined) header.push([9, '$DWGCODEPAGE'], [3, codePage]);
  if (units !== undefined) header.push([9, '$INSUNITS'], [70, units]);
  const table: Tag[] = [[0, 'TABLE'], [2, 'LAYER'], [70, layers.length], ...layers.flat(), [0, 'ENDTAB']];
  return [
    ...(header.length > 0 ? section('HEADER', header) : []),
    ...(layers.length > 0 ? section('TABLES', table) : []),
    ...(blocks.length > 0 ? section('BLOCKS', blocks.flat()) : []),
    ...section('ENTITIES', entities.flat()),
    [0, 'EOF'],
  ];
};

export const section = (name: string, tags: readonly Tag[]): readonly Tag[] => [[0, 'SECTION'], [2, name], ...tags, [0, 'ENDSEC']];

export const layer = (name: string, { colour = 7, flags = 0 } = {}): readonly Tag[] => [
  [0, 'LAYER'],
  [2, name],
  [70, flags],
  [62, colour],
];

export const block = (name: string, entities: readonly (readonly Tag[])[], base: readonly [number, number] = [0, 0]): readonly Tag[] => [
  [0, 'BLOCK'],
  [8, '0'],
  [2, name],
  [70, 0],
  [10, base[0]],
  [20, base[1]],
  [30, 0],
  ...entities.flat(),
  [0, 'ENDBLK'],
  [8, '0'],
];

/** An entity from its numbers by code: `entity('CIRCLE', { 10: 0, 20: 0, 40: 5 })`. Codes that repeat go into `more`. */
export const entity = (type: string, numbers: Readonly<Record<number, string | number>>, more: readonly Tag[] = []): readonly Tag[] => [
  [0, type],
  ...('8' in numbers ? [] : [[8, '0'] as Tag]),
  ...Object.entries(numbers)
    .map(([code, value]): Tag => [Number(code), value])
    .toSorted(([a], [b]) => place(a) - place(b)),
  ...more,
];

/** Programs write the three coordinates of a point one after the other, the first point first. */
const place = (code: number): number => (code < 10 ? code : code < 40 ? 100 + (code % 10) * 100 + code : 2000 + code);

export const lineTags = (x1: number, y1: number, x2: number, y2: number, layerName = '0'): readonly Tag[] =>
  entity('LINE', { 8: layerName, 10: x1, 20: y1, 11: x2, 21: y2 });

/** Vertices as [x, y, bulge]. */
export const lightPolyline = (vertices: readonly (readonly [number, number, number?])[], closed = true): readonly Tag[] =>
  entity(
    'LWPOLYLINE',
    { 90: vertices.length, 70: closed ? 1 : 0 },
    vertices.flatMap(([x, y, bulge]): readonly Tag[] => [[10, x], [20, y], ...(bulge === undefined ? [] : [[42, bulge] as Tag])]),
  );
