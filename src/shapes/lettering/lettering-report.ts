/** What is said about lettering: its sizes, what is narrow in it, and what has to be known before it is cut. */

import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { point } from '../../geometry/segment.ts';
import { given } from '../../quantity/figure.ts';
import type { Finding, Place } from '../../text/finding.ts';
import { standBack } from '../common-keys.ts';
import { millimetres } from '../refused.ts';
import type { Shape, ShapeSize } from '../shape.ts';
import type { CutOuts } from './cut-outs.ts';
import { find } from './findings.ts';
import type { MissingCharacter } from './lay-out.ts';
import type { Letters } from './letters.ts';
import { type Gap, narrowOf } from './measures.ts';
import type { LetteringRequest } from './request.ts';
import type { Typeface } from './typeface.ts';

export const lettersReport = (
  request: LetteringRequest,
  typeface: Typeface,
  scale: number,
  letters: Letters,
  cut: CutOuts,
): Pick<Shape, 'name' | 'sizes' | 'findings'> => ({
  name: nameOf(request, typeface),
  sizes: [...overAll(cut, typeface), ...heights(request, typeface, scale, letters), ...narrowSizes(request, typeface, cut)],
  findings: [...islandFindings(request, cut), ...letterFindings(request, letters)],
});

const field = (path: string): { readonly place: Place } => ({ place: { kind: 'field', path } });

const nameOf = ({ text, letterHeight, heightOf }: LetteringRequest, { name }: Typeface): string => {
  const line = text.trim().replace(/\s*(\r?\n|\\n)\s*/g, ' / ');
  const short = [...line].length > 40 ? `${[...line].slice(0, 39).join('')}…` : line;
  return `Lettering ‘${short}’ in ${name}, ${heightOf === 'em' ? 'em' : 'capitals'} ${letterHeight} mm`;
};

const overAll = ({ contours }: CutOuts, { name }: Typeface): readonly ShapeSize[] => {
  const { minX, minY, maxX, maxY } = mergedBounds(contours.map(boundsOfChain));
  return [
    {
      figure: drawnSize('text-width', 'width over all letters', maxX - minX, name),
      taking: { kind: 'distance', from: point(minX, minY), to: point(maxX, minY) },
    },
    {
      figure: drawnSize('text-height', 'height over all letters', maxY - minY, name),
      taking: { kind: 'distance', from: point(minX, minY), to: point(minX, maxY) },
    },
  ];
};

const drawnSize = (key: string, name: string, value: number, font: string) =>
  given({ key, name, value, unit: 'mm', basis: 'drawing', source: `the outlines of ${font}` });

const heights = (
  request: LetteringRequest,
  { capitals, name, line }: Typeface,
  scale: number,
  { origin }: Letters,
): readonly ShapeSize[] => {
  const back = (request.metal === 'inside' ? -1 : 1) * standBack(request);
  const [low, high] = [point(origin.x, origin.y - back), point(origin.x, origin.y + capitals * scale + back)];
  const tall: readonly ShapeSize[] =
    capitals > 0
      ? [
          {
            figure: drawnSize('capital-height', 'height of a straight capital', high.y - low.y, name),
            taking: { kind: 'distance', from: low, to: high },
          },
        ]
      : [];
  const lines = request.text.split(/\r\n|\r|\n|\\n/).length;
  return lines === 1
    ? tall
    : [...tall, { figure: drawnSize('line-spacing', 'from line to line', request.lineSpacing ?? line * scale, name) }];
};

const narrowSizes = (request: LetteringRequest, { name }: Typeface, cut: CutOuts): readonly ShapeSize[] => {
  const narrow = narrowOf(cut.contours, cut.nested, request.metal === 'inside' ? 'metal' : 'opening');
  const size = (key: string, words: string, gap: Gap | undefined): readonly ShapeSize[] =>
    gap === undefined
      ? []
      : [{ figure: drawnSize(key, words, gap.distance, name), taking: { kind: 'distance', from: gap.from, to: gap.to } }];
  return [
    ...size('narrowest-opening', 'narrowest way for the wire', narrow.opening),
    ...size('thinnest-metal', 'thinnest metal that stays', narrow.metal),
    ...(cut.bridges > 0 ? [{ figure: millimetres('bridge', 'width of the bridges', request.bridge) }] : []),
  ];
};

const islandFindings = ({ bridge, letterHeight }: LetteringRequest, { fallen, unbridged, covered }: CutOuts): readonly Finding[] => [
  ...(fallen.length === 0
    ? []
    : [
        find(
          'letter-islands-fall',
          `${fallen.length === 1 ? 'The middle of a letter is an island: it comes' : `The middles of letters are islands: ${fallen.length} of them come`} loose when the outline is cut, and only the outline around is drawn.`,
          {
            ...field('bridge'),
            remedy: `Give bridges to the plate: bridge ${Math.max(0.3, Math.round(letterHeight) / 15).toFixed(1)} mm.`,
          },
        ),
      ]),
  ...(unbridged.length === 0
    ? []
    : [
        find(
          'letter-bridge-impossible',
          `Bridges of ${bridge} mm do not tie ${middles(unbridged.length)} to the plate; what lies inside falls out, and is not drawn.`,
          { ...field('bridge'), remedy: 'Make bridges narrower, or let them run the other way.' },
        ),
      ]),
  ...(covered.length === 0
    ? []
    : [
        find(
          'letter-bridge-wide',
          `A bridge of ${bridge} mm is wider than ${middles(covered.length)}: little of the counter is left to be read.`,
          {
            ...field('bridge'),
            remedy: 'Make bridges narrower or letters larger.',
          },
        ),
      ]),
];

const middles = (count: number): string => (count === 1 ? 'one middle' : `${count} middles`);

const letterFindings = ({ metal }: LetteringRequest, { together, inParts }: Letters): readonly Finding[] => [
  ...(together.length === 0
    ? []
    : [
        find('letters-run-together', `Letters run into each other and are cut as one: ${list(together)}.`, {
          ...field('spacing'),
          remedy: 'If they are to stay apart, give more spacing, or leave kerning out.',
        }),
      ]),
  ...(metal === 'outside' || inParts.length === 0
    ? []
    : [find('letters-in-parts', `Each part of these letters is a piece by itself: ${list(inParts)}.`, field('text'))]),
];

const list = (words: readonly string[]): string => `${words.slice(0, 12).join(', ')}${words.length > 12 ? ' and more' : ''}`;

/** The first characters that are not there, with their places. */
export const missingLetters = (missing: readonly MissingCharacter[], font: string): Finding => {
  const told = missing.slice(0, 6).map((m) => `${spelled(m.character)} (line ${m.line}, place ${m.column})`);
  const more = missing.length > 6 ? ` and ${missing.length - 6} more` : '';
  return find('letter-missing', `${font} has no ${told.join(', ')}${more}.`, {
    ...field('text'),
    remedy: 'Write it otherwise, or name a font that has it.',
  });
};

/** A control sign is not seen: its number is told. */
const spelled = (character: string): string => {
  const number = `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;
  return /[\p{C}\p{Z}]/u.test(character) ? number : `‘${character}’ ${number}`;
};

/** Only scripts whose letters stand one after the other from left to right, unchanged by their neighbours, are set. */
export const unshaped = (lines: readonly (readonly string[])[]): Finding | undefined => {
  const odd = lines.flatMap((l, i) =>
    l.flatMap((character, k) => (SET_SINGLY.test(character) ? [] : [{ character, line: i + 1, column: k + 1 }])),
  );
  const first = odd[0];
  if (first === undefined) return undefined;
  const where = `${spelled(first.character)} (line ${first.line}, place ${first.column})`;
  return find(
    'letters-need-shaping',
    `Letters are set one by one from left to right; ${where} belongs to a script that is written otherwise, or stands over another letter.`,
    { ...field('text'), remedy: 'Have such a text drawn, and cut the drawing.' },
  );
};

const SET_SINGLY =
  /^(?!\p{M})[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Armenian}\p{Script=Georgian}\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Common}\p{C}]$/u;

export const nothingLeft = ({ clearance }: LetteringRequest): Finding =>
  find(
    'letter-without-room',
    `With a clearance of ${clearance} mm nothing is left of a part of the letters, or its parts contradict each other.`,
    {
      ...field('clearance'),
      remedy: 'Give less clearance, or larger letters.',
    },
  );
