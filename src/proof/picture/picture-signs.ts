/** Words on the proof's picture: in the order of their weight, each only where it hides none that is there already. */
import { placed } from '../../picture/label-room.ts';
import { label, number, type OnPaper, type PaperView } from './picture-frame.ts';

export interface Sign {
  /** Drawn in any case: a dot, a ring. */
  readonly mark: string;
  /** Middle of the words. */
  readonly at: OnPaper;
  /** Where a line leads from. */
  readonly from?: OnPaper;
  readonly words: string;
  readonly colour: string;
  /** In a rounded box, as numbers are. */
  readonly box: boolean;
}

/** Letters are about 0.6 of their height wide. */
export const halfWidth = (words: string, frame: PaperView): number => (words.length * 0.6 + 0.5) * frame.letter * 0.5;

export const drawnSigns = (signs: readonly Sign[], frame: PaperView): string => {
  const up = (frame.letter * 1.25) / 2;
  const found = placed(signs.map(({ at, words }) => ({ tries: [{ ...at, across: halfWidth(words, frame), up }] })));
  return signs.map((sign, i) => (found[i] === undefined ? sign.mark : `${sign.mark}${wordsOf(sign, frame)}`)).join('\n');
};

const wordsOf = ({ at, from, words, colour, box }: Sign, frame: PaperView): string => {
  const line = `stroke="#111" stroke-width="${number(frame.pen * 0.7)}"`;
  const lead = from === undefined ? '' : `<path d="M${number(from.x)} ${number(from.y)}L${number(at.x)} ${number(at.y)}" ${line}/>`;
  const half = halfWidth(words, frame);
  const frameOfWords = box
    ? `<rect x="${number(at.x - half)}" y="${number(at.y - frame.letter * 0.6)}" width="${number(2 * half)}" height="${number(frame.letter * 1.2)}" rx="${number(frame.letter * 0.6)}" fill="#fff" fill-opacity="0.85" ${line}/>`
    : '';
  return `${lead}${frameOfWords}\n${label(frame, at, words, colour)}`;
};
