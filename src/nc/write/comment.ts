/** Any text -> comments that every control can read: capital letters, plain signs, no bracket within a bracket, short lines. */

const LONGEST_LINE = 60;

/** At the end of a comment line: the comment goes on in the next one. */
const GOES_ON = ' ...';

const spelled: readonly (readonly [RegExp, string])[] = [
  [/µ|μ/g, 'U'],
  [/ß/g, 'SS'],
  [/[Øø⌀]/g, 'DIA '],
  [/°/g, ' DEG'],
  [/±/g, '+-'],
  [/[×✕]/g, ' X '],
  [/[–—−]/g, '-'],
  [/²/g, '2'],
  [/³/g, '3'],
  [/%/g, ' PER CENT'],
  [/&/g, ' AND '],
  [/[([{]/g, ', '],
  [/[)\]}]/g, ''],
  [/[;:]/g, ','],
];

/** Letters A to Z, digits, space and + - * / = . , and never two points in a row. */
export const plain = (text: string): string => {
  let plainText = text;
  for (const [sign, word] of spelled) plainText = plainText.replace(sign, word);
  return plainText
    .normalize('NFD')
    .toUpperCase()
    .replace(/[^A-Z0-9+\-*/=.,\n ]/g, '')
    .replace(/\s+/g, ' ')
    .replace(/ +([,.])/g, '$1')
    .replace(/,+/g, ',')
    .replace(/\.{2,}/g, '.')
    .replace(/,\./g, '.')
    .trim();
};

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

/** The same for a sentence that has to be read as one: every line but the last says that it goes on. */
export const continuedLines = (text: string): readonly string[] => {
  const parts = lines(text);
  return parts.map((part, index) => (index < parts.length - 1 ? `${part}${GOES_ON}` : part));
};
