/** Tells from the first bytes, and only then from the name, which format a file is in. */

export type Format = 'dxf' | 'svg' | 'unknown';

export const formatOf = (bytes: Uint8Array, name: string): Format => {
  const head = textOf(bytes.subarray(0, 4096));
  if (head.startsWith('AutoCAD Binary DXF')) return 'dxf';
  if (/<svg[\s>]/i.test(head) || /<(\w+):svg[\s>]/.test(head)) return 'svg';
  if (/^\s*(999\s*\r?\n|0\s*\r?\n\s*SECTION\b)/.test(head)) return 'dxf';
  // A long comment or preamble may push the first tag out of sight: then the name decides.
  if (/^\s*<(\?xml|!--|!DOCTYPE)/i.test(head)) return /\.dxf$/i.test(name) ? 'dxf' : 'svg';
  if (/\.dxf$/i.test(name)) return 'dxf';
  if (/\.svg$/i.test(name)) return 'svg';
  return 'unknown';
};

/** Latin letters byte by byte; zero bytes of two-byte text and marks at the start of a file are left out. */
const textOf = (bytes: Uint8Array): string => {
  let text = '';
  for (const byte of bytes) if (byte !== 0 && byte < 0x80) text += String.fromCharCode(byte);
  return text;
};
