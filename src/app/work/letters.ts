/** What lettering is made with in the page: the parser and one font. This file, and what it imports, is loaded only once a text is asked for. */

import sans from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';
import sansBold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url';
import condensed from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import condensedBold from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import mono from 'dejavu-fonts-ttf/ttf/DejaVuSansMono.ttf?url';
import monoBold from 'dejavu-fonts-ttf/ttf/DejaVuSansMono-Bold.ttf?url';
import serif from 'dejavu-fonts-ttf/ttf/DejaVuSerif.ttf?url';
import serifBold from 'dejavu-fonts-ttf/ttf/DejaVuSerif-Bold.ttf?url';
import { type FaceName, isFace, USUAL_FACE } from '../../font-reader/face-files.ts';
import { type FontFound, type LetterMaker, makeLettering } from '../../font-reader/letter-maker.ts';
import { fontParser } from '../../font-reader/parser.ts';
import { readFont } from '../../font-reader/read-font.ts';
import { count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';

/** Where the page finds the fonts it brings along. */
const ADDRESSES: Readonly<Record<FaceName, string>> = {
  sans,
  'sans-bold': sansBold,
  condensed,
  'condensed-bold': condensedBold,
  serif,
  'serif-bold': serifBold,
  mono,
  'mono-bold': monoBold,
};

/** Fonts stay read while the page is open. */
const read = new Map<string, FontFound>();

/** How lettering is made for a shape as it is asked for; whatever is wrong with the font is told by the shape. */
export const lettersFor = async (shape: Readonly<Record<string, unknown>>): Promise<LetterMaker> => {
  const found = await fontFor(shape);
  return (request) => makeLettering(request, () => found);
};

const missing = phrases('page-font', {
  own: say`Your own font files are read on the command line only; here the built-in fonts are available.`,
  unknown: say`No such font.`,
  answered: (status: number) => say`The font did not come from the server: it answered ${{ status: count(status) }}.`,
  silent: say`The font did not come from the server: it does not answer.`,
});

const fontFor = async ({ face = USUAL_FACE, font }: Readonly<Record<string, unknown>>): Promise<FontFound> => {
  if (font !== undefined) return { kind: 'none', why: missing.own };
  if (typeof face !== 'string' || !isFace(face)) return { kind: 'none', why: missing.unknown };
  const found = read.get(face) ?? (await fetched(face));
  // What did not come may come the next time.
  if (found.kind === 'typeface') read.set(face, found);
  return found;
};

const fetched = async (face: FaceName): Promise<FontFound> => {
  try {
    const answer = await fetch(ADDRESSES[face]);
    if (answer.ok) return readFont(new Uint8Array(await answer.arrayBuffer()), face, fontParser);
    return { kind: 'none', why: missing.answered(answer.status) };
  } catch {
    return { kind: 'none', why: missing.silent };
  }
};
