/** Any text -> comments that every control can read: capital letters, plain signs, no bracket within a bracket, short lines. */

/** Signs that a control is sure to show of a comment. */
export const LONGEST_LINE = 60;

/** Signs of the trade and of typing that have a plain spelling. */
const spelled: Readonly<Record<string, string>> = {
  µ: 'U',
  μ: 'U',
  ß: 'SS',
  Ø: 'DIA ',
  ø: 'DIA ',
  '⌀': 'DIA ',
  '°': ' DEG',
  '±': '+-',
  '×': ' X ',
  '–': '-',
  '—': '-',
  '−': '-',
  '²': '2',
  '³': '3',
  '%': ' PER CENT',
  '&': ' AND ',
  '(': ', ',
  '[': ', ',
  '{': ', ',
  ';': ',',
  ':': ',',
};

/** Letters A to Z, digits, space and + - * / = . , and never two points in a row. */
export const plain = (text: string): string =>
  text
    .replace(/[^A-Za-z0-9+\-*/=., ]/g, (sign) => spelled[sign] ?? (/\s/.test(sign) ? ' ' : sign))
    .normalize('NFD')
    .toUpperCase()
    .replace(/[^A-Z0-9+\-*/=., ]+/g, '')
    .replace(/ {2,}/g, ' ')
    .replace(/ +(?=[,.])/g, '')
    .replace(/,{2,}/g, ',')
    .replace(/\.{2,}/g, '.')
    .replace(/,\./g, '.')
    .replace(/\.{2,}/g, '.')
    .trim();

/** Plain text in lines of at most 60 signs. */
export const lines = (text: string): readonly string[] => {
  const found: string[] = [];
  let line = '';
  for (const word of plain(text).split(' ')) {
    if (line !== '' && line.length + 1 + word.length > LONGEST_LINE) {
      found.push(line);
      line = '';
    }
    line = line === '' ? word : `${line} ${word}`;
    for (; line.length > LONGEST_LINE; line = line.slice(LONGEST_LINE)) found.push(line.slice(0, LONGEST_LINE));
  }
  return line === '' ? found : [...found, line];
};
