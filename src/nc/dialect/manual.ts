/** What the manual says of a dialect file. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'dialect-not-json': {
    title: 'The dialect file is not JSON',
    meaning: 'The file that says how the control wants its program could not be read as JSON at all.',
    matters: 'Without a dialect no program can be written or read, because each control spells the same path in its own way.',
    remedy:
      'Look at the place stated: a comma too many, a missing bracket or quotation mark. `dialects/standard.json` is a good file to start from.',
  },
  'dialect-too-long': {
    title: 'The dialect file is longer than the limit',
    meaning: 'A dialect fills one page. A file of more than 100 000 characters is something else, and is not even parsed.',
    matters: 'The usual reason is a program or a drawing given in place of the dialect.',
    remedy: 'Give the dialect file. `dialects/standard.json` shows what one looks like.',
  },
  'dialect-field-bad': {
    title: 'A field of the dialect is missing, unknown or out of range',
    meaning: 'A field is missing, misspelt, or has a value outside its range. The finding names the field.',
    matters: 'A gap in the dialect would have to be filled by a guess, and a guess about units or arcs cuts scrap.',
    remedy: 'Correct the field. `docs/dialects.md` explains each one; `kerfwright schema` prints the exact form.',
  },
  'dialect-word-twice': {
    title: 'One word of the dialect would have two meanings',
    meaning: 'Two entries name the same word, or a word carries the letter that also chooses the condition.',
    matters: 'Neither the control nor the proof could know which of the two is meant.',
    remedy: 'Look both words up in the manual of the control; one of them is mistyped.',
  },
  'dialect-word-taken': {
    title: 'A word of the dialect has another meaning in the standards',
    meaning: 'A word such as G01 or M02, or a letter such as X, is entered as the word for threading, flushing or the like.',
    matters:
      'The standards already say what that word does. A program that used it twice would move where it should thread, or end where it should cut the wire.',
    remedy:
      'Enter the word from the manual of the control. Where the control has none, leave the field out: the program then stops with a message to the operator.',
  },
  'dialect-pair-incomplete': {
    title: 'The dialect names one word of a pair and not the other',
    meaning: 'The dialect has the word that switches something on and not the one that switches it off, or the other way about.',
    matters:
      'The program will state the one and never the other. For wire, flush and power that is right only if the control does the other half by itself.',
    remedy: 'Add the second word, or leave both out.',
  },
  'dialect-coarse': {
    title: 'The last digit of the dialect is coarse for wire cutting',
    meaning: 'With so few decimals every point of the path moves by up to half a last digit.',
    matters: 'Wire cutting holds a few micrometres; a last digit of 0.01 mm or 0.001 inch takes more than that by itself.',
    remedy: 'Give at least 3 decimals in mm or 4 in inch, if the control takes them.',
  },
  'dialect-cannot-speak': {
    title: 'The dialect has neither a word nor a comment to ask the operator with',
    meaning: 'By the dialect the control has no comments, and no word for threading, cutting the wire or choosing a condition.',
    matters: 'Such a program could only stop, and the operator could not know why.',
    remedy: 'Enter the missing words, or allow comments if the control reads them.',
  },
};
