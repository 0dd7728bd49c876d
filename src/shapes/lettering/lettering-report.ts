/** What is said about lettering: its sizes, what is narrow in it, and what has to be known before it is cut. */

import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { point } from '../../geometry/segment.ts';
import { given } from '../../quantity/figure.ts';
import { certain } from '../../sequence/sequence.ts';
import { type Finding, type Place, type Remedy, remedy } from '../../text/finding.ts';
import { name as asName, count, fixed, list, mm, name, number, type Part, term } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
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

const nameOf = ({ text, letterHeight, heightOf }: LetteringRequest, typeface: Typeface): Text => {
  const line = text.trim().replace(/\s*(\r?\n|\\n)\s*/g, ' / ');
  const short = [...line].length > 40 ? `${[...line].slice(0, 39).join('')}…` : line;
  return names[heightOf](short, typeface.name, letterHeight);
};

const names = phrases('lettering-name', {
  em: (text: string, font: string, height: number) =>
    say`Lettering ‘${{ text: name(text) }}’ in ${{ font: name(font) }}, em ${{ height: mm(height) }}`,
  capitals: (text: string, font: string, height: number) =>
    say`Lettering ‘${{ text: name(text) }}’ in ${{ font: name(font) }}, capitals ${{ height: mm(height) }}`,
});

const overAll = ({ contours }: CutOuts, { name: font }: Typeface): readonly ShapeSize[] => {
  const { minX, minY, maxX, maxY } = mergedBounds(contours.map(boundsOfChain));
  return [
    {
      figure: drawnSize('text-width', say('lettering.text-width')`width over all letters`, maxX - minX, font),
      taking: { kind: 'distance', from: point(minX, minY), to: point(maxX, minY) },
    },
    {
      figure: drawnSize('text-height', say('lettering.text-height')`height over all letters`, maxY - minY, font),
      taking: { kind: 'distance', from: point(minX, minY), to: point(minX, maxY) },
    },
  ];
};

const drawnSize = (key: string, words: Text, value: number, font: string) =>
  given({
    key,
    name: words,
    value,
    unit: 'mm',
    basis: 'drawing',
    source: say('lettering.outlines')`the outlines of ${{ font: asName(font) }}`,
  });

const heights = (
  request: LetteringRequest,
  { capitals, name: font, line }: Typeface,
  scale: number,
  { origin }: Letters,
): readonly ShapeSize[] => {
  const back = (request.metal === 'inside' ? -1 : 1) * standBack(request);
  const [low, high] = [point(origin.x, origin.y - back), point(origin.x, origin.y + capitals * scale + back)];
  const tall: readonly ShapeSize[] =
    capitals > 0
      ? [
          {
            figure: drawnSize('capital-height', say('lettering.capital-height')`height of a straight capital`, high.y - low.y, font),
            taking: { kind: 'distance', from: low, to: high },
          },
        ]
      : [];
  const lines = request.text.split(/\r\n|\r|\n|\\n/).length;
  return lines === 1
    ? tall
    : [
        ...tall,
        { figure: drawnSize('line-spacing', say('lettering.line-spacing')`from line to line`, request.lineSpacing ?? line * scale, font) },
      ];
};

const narrowSizes = (request: LetteringRequest, { name: font }: Typeface, cut: CutOuts): readonly ShapeSize[] => {
  const narrow = narrowOf(cut.contours, cut.nested, request.metal === 'inside' ? 'metal' : 'opening');
  const size = (key: string, words: Text, gap: Gap | undefined): readonly ShapeSize[] =>
    gap === undefined
      ? []
      : [{ figure: drawnSize(key, words, gap.distance, font), taking: { kind: 'distance', from: gap.from, to: gap.to } }];
  return [
    ...size('narrowest-opening', say('lettering.narrowest-opening')`narrowest way for the wire`, narrow.opening),
    ...size('thinnest-metal', say('lettering.thinnest-metal')`thinnest metal that stays`, narrow.metal),
    ...(cut.bridges > 0 ? [{ figure: millimetres('bridge', say('lettering.bridge')`width of the bridges`, request.bridge) }] : []),
  ];
};

const islandFindings = ({ bridge, letterHeight }: LetteringRequest, { fallen, unbridged, covered }: CutOuts): readonly Finding[] => [
  ...(fallen.length === 0
    ? []
    : [
        find('letter-islands-fall', fallen.length === 1 ? islands.one : islands.many(fallen.length), {
          ...field('bridge'),
          remedy: bridgesOf(Number(Math.max(0.3, Math.round(letterHeight) / 15).toFixed(1))),
        }),
      ]),
  ...(unbridged.length === 0
    ? []
    : [
        find(
          'letter-bridge-impossible',
          say`Bridges of ${{ bridge: mm(bridge) }} do not tie ${{ middles: middles(unbridged.length) }} to the plate; what lies inside falls out, and is not drawn.`,
          {
            ...field('bridge'),
            remedy: remedy(say`Make bridges narrower, or let them run the other way.`, { field: 'bridgeWay' }),
          },
        ),
      ]),
  ...(covered.length === 0
    ? []
    : [
        find(
          'letter-bridge-wide',
          say`A bridge of ${{ bridge: mm(bridge) }} is wider than ${{ middles: middles(covered.length) }}: little of the counter is left to be read.`,
          { ...field('bridge'), remedy: remedy(say`Make bridges narrower or letters larger.`, { field: 'bridge' }) },
        ),
      ]),
];

const islands = phrases('letter-islands-fall', {
  one: say`The middle of a letter is an island: it comes loose when the outline is cut, and only the outline around is drawn.`,
  many: (n: number) =>
    say`The middles of letters are islands: ${{ middles: count(n) }} of them come loose when the outline is cut, and only the outline around is drawn.`,
});

const bridgesOf = (width: number): Remedy =>
  remedy(say('letter-islands-fall.remedy')`Give bridges to the plate: bridge ${{ bridge: mm(width, fixed(1)) }}.`, {
    field: 'bridge',
    value: width,
  });

const middles = (n: number): Text => (n === 1 ? some.oneMiddle : some.middles(n));

const some = phrases('letters', {
  oneMiddle: say`one middle`,
  middles: (n: number) => say`${{ middles: count(n, 'middle') }}`,
  more: (first: readonly string[]) => say`${{ letters: list(first.map(name)) }} and more`,
});

const letterFindings = ({ metal }: LetteringRequest, { together, inParts }: Letters): readonly Finding[] => [
  ...(together.length === 0
    ? []
    : [
        find('letters-run-together', say`Letters run into each other and are cut as one: ${{ letters: listed(together) }}.`, {
          ...field('spacing'),
          remedy: remedy(say`If they are to stay apart, give more spacing, or leave kerning out.`, { field: 'spacing' }),
        }),
      ]),
  ...(metal === 'outside' || inParts.length === 0
    ? []
    : [find('letters-in-parts', say`Each part of these letters is a piece by itself: ${{ letters: listed(inParts) }}.`, field('text'))]),
];

const listed = (letters: readonly string[]): Text =>
  letters.length > 12 ? some.more(letters.slice(0, 12)) : only(list(letters.map(name)));

/** The first characters that are not there, with their places. */
export const missingLetters = (missing: readonly MissingCharacter[], font: string): Finding => {
  const told = list(missing.slice(0, 6).map(signs.placed));
  return find(
    'letter-missing',
    missing.length > 6
      ? say('letter-missing/many')`${{ font: name(font) }} has no ${{ letters: told }} and ${{ more: count(missing.length - 6) }} more.`
      : say`${{ font: name(font) }} has no ${{ letters: told }}.`,
    { ...field('text'), remedy: remedy(say`Write it otherwise, or name a font that has it.`, { field: 'text' }) },
  );
};

/** A control sign is not seen: its number is told. */
const spelled = (character: string): Text => {
  const number = certain(character.codePointAt(0), 'a character that is spelled is not empty');
  const code = term(`U+${number.toString(16).toUpperCase().padStart(4, '0')}`);
  return /[\p{C}\p{Z}]/u.test(character) ? only(code) : signs.seen(character, code);
};

const signs = phrases('letter', {
  seen: (character: string, code: Part) => say`‘${{ letter: name(character) }}’ ${{ code }}`,
  placed: ({ character, line, column }: MissingCharacter) =>
    say`${{ letter: spelled(character) }} (line ${{ line: number(line) }}, place ${{ place: number(column) }})`,
});

/** Only scripts whose letters stand one after the other from left to right, unchanged by their neighbours, are set. */
export const unshaped = (lines: readonly (readonly string[])[]): Finding | undefined => {
  const odd = lines.flatMap((l, i) =>
    l.flatMap((character, k) => (SET_SINGLY.test(character) ? [] : [{ character, line: i + 1, column: k + 1 }])),
  );
  const first = odd[0];
  if (first === undefined) return undefined;
  return find(
    'letters-need-shaping',
    say`Letters are set one by one from left to right; ${{ letter: signs.placed(first) }} belongs to a script that is written otherwise, or stands over another letter.`,
    { ...field('text'), remedy: say`Have such a text drawn, and cut the drawing.` },
  );
};

const SET_SINGLY =
  /^(?!\p{M})[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Armenian}\p{Script=Georgian}\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Common}\p{C}]$/u;

export const nothingLeft = ({ clearance }: LetteringRequest): Finding =>
  find(
    'letter-without-room',
    say`With a clearance of ${{ clearance: mm(clearance) }} nothing is left of a part of the letters, or its parts contradict each other.`,
    { ...field('clearance'), remedy: remedy(say`Give less clearance, or larger letters.`, { field: 'clearance' }) },
  );
