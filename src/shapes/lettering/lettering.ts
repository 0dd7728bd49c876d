/** Lettering: a text in an open font, every letter an opening in a plate or a piece by itself. */
import { z } from 'zod';
import type { Finding } from '../../finding/finding.ts';
import { areaOf } from '../../geometry/area.ts';
import { counterClockwise } from '../../geometry/chain.ts';
import { commonKeys, standBack } from '../common-keys.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { type ShapeMeans, shapeKind } from '../kind.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { refusedWith } from '../told.ts';
import { type CutOuts, grown, openings, standing, startsOf } from './cut-outs.ts';
import { FACES, USUAL_FACE } from './faces.ts';
import { find } from './findings.ts';
import { layOut, linesOf } from './lay-out.ts';
import { drawLetters, type Letters, WITHIN } from './letters.ts';
import { lettersReport, missingLetters, nothingLeft, unshaped } from './report.ts';
import type { Typeface } from './typeface.ts';

const schema = z.strictObject({
  kind: z.literal('lettering'),
  text: z.string().min(1).max(300).describe('What is to be read; a new line begins at a line break, or where \\n is typed'),
  letterHeight: z.number().min(0.5).max(1000).describe('Height of the letters, mm: of capitals, or of the em, see heightOf'),
  heightOf: z
    .enum(['capitals', 'em'])
    .default('capitals')
    .describe('What letterHeight measures: a capital as H, or the em, which is about 1.4 times as high'),
  face: z.enum(FACES).default(USUAL_FACE).describe('Cut of the font that comes with the house (DejaVu)'),
  font: z
    .string()
    .min(1)
    .max(1000)
    .optional()
    .describe('A TrueType or OpenType font file of your own in place of face; found beside the job file, on the command line only'),
  spacing: z
    .number()
    .min(-200)
    .max(200)
    .default(0)
    .describe('Added between letters beyond what the font gives, mm; below 0 they come closer'),
  kerning: z.boolean().default(true).describe('Move pairs such as AV together as the font says'),
  lineSpacing: z.number().positive().max(5000).optional().describe('From line to line, mm; as the font means it when left out'),
  align: z.enum(['left', 'middle', 'right']).default('left').describe('Where lines of different length stand against each other'),
  metal: z
    .enum(['outside', 'inside'])
    .default('outside')
    .describe('outside: letters are openings in a plate; inside: every letter is a piece'),
  bridge: z
    .number()
    .min(0)
    .max(100)
    .default(0)
    .describe('Width of the bridges that tie the middles of letters to the plate where letters are openings, mm; 0: the middles fall out'),
  bridgeWay: z
    .enum(['upright', 'level', 'shortest'])
    .default('upright')
    .describe('Bridges run up and down, to both sides, or where they cross less of the letter'),
  ...commonKeys,
});

export type LetteringRequest = z.output<typeof schema>;

export const lettering = shapeKind({
  title: 'Lettering',
  what: 'Text cut with the wire: letters as openings in a plate, with or without bridges, or as pieces',
  schema,
  example: { text: 'ROAD 8', letterHeight: 30, bridge: 2 },
  make: (request, means) => {
    const found = faceOf(request, means);
    if (found.kind === 'refused') return found;
    const { typeface } = found;
    const scale = request.letterHeight / (request.heightOf === 'em' ? typeface.em : typeface.capitals);
    const odd = unshaped(linesOf(request.text));
    if (odd !== undefined) return refusedWith(odd);
    const laid = layOut(request.text, typeface, { ...request, scale, lineSpacing: request.lineSpacing ?? typeface.line * scale });
    if (laid.kind === 'missing') return refusedWith(missingLetters(laid.characters, typeface.name));
    if (laid.kind === 'broken') return refusedWith(unusable(laid.characters, typeface));
    const drawn = drawLetters(laid.glyphs, scale, request.fit - 2 * WITHIN);
    if (drawn.kind === 'empty')
      return refusedWith(find('text-without-letters', 'The text has nothing but spaces: nothing is cut.', AT_TEXT));
    if (drawn.kind === 'unusable') return refusedWith(unusable(drawn.characters, typeface));
    const size = grown(drawn.contours, (request.metal === 'inside' ? -1 : 1) * standBack(request));
    if (size.kind === 'nothing left') return refusedWith(nothingLeft(request));
    const wish = { width: request.bridge, way: request.bridgeWay };
    return finished(request, typeface, scale, drawn, request.metal === 'inside' ? standing(size.contours) : openings(size.contours, wish));
  },
});

const AT_TEXT = { place: { kind: 'field', path: 'text' } } as const;

type Faced = { readonly kind: 'typeface'; readonly typeface: Typeface } | Extract<MadeShape, { kind: 'refused' }>;

const faceOf = ({ face, font, heightOf }: LetteringRequest, { letters }: ShapeMeans): Faced => {
  const place = { kind: 'field', path: font === undefined ? 'face' : 'font' } as const;
  if (letters === undefined) return refusedWith(find('font-unusable', 'Fonts cannot be read here.', { place }));
  const found = letters(font === undefined ? { face } : { face, font });
  if (found.kind === 'none') return refusedWith(find('font-unusable', found.why, { place }));
  if (heightOf === 'capitals' && !(found.typeface.capitals > 0))
    return refusedWith(
      find('font-unusable', `The font ${found.typeface.name} has no capital H whose height could be measured.`, {
        place: { kind: 'field', path: 'heightOf' },
        remedy: 'Give the height of the em: heightOf em.',
      }),
    );
  return found;
};

const unusable = (characters: string, typeface: Typeface): Finding =>
  find('font-unusable', `The outlines of ${characters} in ${typeface.name} contradict themselves and cannot be cut.`, AT_TEXT);

const finished = (request: LetteringRequest, typeface: Typeface, scale: number, letters: Letters, cut: CutOuts): MadeShape => {
  const { metal } = request;
  const outlines = cut.contours.map((contour, i): Outline => {
    const isInk = cut.nested[i]!.depth % 2 === 0;
    return {
      contour: areaOf(contour) > 0 ? contour : counterClockwise(contour),
      metal: isInk === (metal === 'inside') ? 'inside' : 'outside',
    };
  });
  const inside = insideRadiusOf(outlines);
  return {
    kind: 'made',
    shape: {
      ...lettersReport(request, typeface, scale, letters, cut),
      outlines,
      starts: startsOf(cut, metal === 'inside' ? 'pieces' : 'openings'),
      fitDeviation: letters.deviation,
      ...(inside === undefined ? {} : { insideRadius: inside }),
    },
  };
};
