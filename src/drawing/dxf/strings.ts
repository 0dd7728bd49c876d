/**
 * The names in a DXF file: bytes become text by the file's code page, and the same bytes become the same string only once. Every byte of
 * every name is looked at: `!` stands where one is read.
 */

export interface Words {
  /** The text in `bytes[start..end)`. */
  readonly text: (bytes: Uint8Array, start: number, end: number) => string;
  /** From here on texts are decoded so; false when the code page is not known and another was taken. */
  readonly setCodePage: (version: string, codePage: string) => boolean;
}

export const words = (): Words => {
  const known = new Map<number, { readonly bytes: Uint8Array; readonly text: string }>();
  let decode = decoderOf('utf-8');
  const text = (bytes: Uint8Array, start: number, last: number): string => {
    const end = Math.min(last, start + LONGEST);
    let hash = end - start;
    for (let i = start; i < end; i++) hash = (Math.imul(hash, 31) + bytes[i]!) | 0;
    const entry = known.get(hash);
    if (entry !== undefined && same(entry.bytes, bytes, start, end)) return entry.text;
    const own = bytes.slice(start, end);
    const decoded = decode(own);
    // A file of a million different names must not fill the memory with a second copy of itself.
    if (known.size < 10_000) known.set(hash, { bytes: own, text: decoded });
    return decoded;
  };
  const setCodePage = (version: string, codePage: string): boolean => {
    known.clear();
    const label = version >= 'AC1021' || codePage === '' ? 'utf-8' : labelOf(codePage);
    decode = decoderOf(label ?? 'windows-1252');
    return label !== undefined;
  };
  return { text, setCodePage };
};

/** Bytes; the format allows 255. A longer name is damage, and costs no more than this each time it is asked for. */
const LONGEST = 1024;

const same = (known: Uint8Array, bytes: Uint8Array, start: number, end: number): boolean => {
  if (known.length !== end - start) return false;
  for (let i = 0; i < known.length; i++) if (known[i] !== bytes[start + i]) return false;
  return true;
};

/**
 * Bytes to text. Plain ASCII needs no decoder. Bytes that the code page does not have are read as windows-1252, which has
 * a sign for every byte, rather than as question marks that would make two names one. '\U+00D8' is the sign it names.
 */
const decoderOf = (label: string): ((bytes: Uint8Array) => string) => {
  const strict = new TextDecoder(label, { fatal: true });
  const lenient = new TextDecoder('windows-1252');
  return (bytes) => {
    let text: string;
    try {
      text = bytes.every((b) => b < 0x80) && bytes.length < 256 ? String.fromCharCode(...bytes) : strict.decode(bytes);
    } catch {
      text = lenient.decode(bytes);
    }
    return text.includes('\\U+') ? text.replace(/\\U\+([0-9A-Fa-f]{4})/g, (_, hex) => String.fromCharCode(Number.parseInt(hex, 16))) : text;
  };
};

/** The encoding that $DWGCODEPAGE names ('ANSI_1252', 'dos932'), as TextDecoder calls it, if it has it. */
const labelOf = (codePage: string): string | undefined => {
  const page = /(\d+)$/.exec(codePage)?.[1] ?? '';
  const label = LABELS.get(page);
  if (label === undefined) return undefined;
  try {
    new TextDecoder(label, { fatal: true });
    return label;
  } catch {
    return undefined;
  }
};

const LABELS: ReadonlyMap<string, string> = new Map([
  ...['1250', '1251', '1252', '1253', '1254', '1255', '1256', '1257', '1258', '874'].map((p) => [p, `windows-${p}`] as const),
  ['866', 'ibm866'],
  ['932', 'shift_jis'],
  ['936', 'gbk'],
  ['949', 'euc-kr'],
  ['950', 'big5'],
]);
