/** Makes lettering: a text in an open font, every letter an opening in a plate or a piece by itself. */

import { areaOf } from '../../geometry/area.ts';
import { counterClockwise } from '../../geometry/chain.ts';
import { sideBySide } from '../../sequence/sequence.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, deviating, list, name, term, um } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { standBack } from '../common-keys.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { type CutOuts, grown, openings, standing, startsOf } from './cut-outs.ts';
import { find } from './findings.ts';
import { layOut, linesOf } from './lay-out.ts';
import { lettersReport, missingLetters, nothingLeft, unshaped } from './lettering-report.ts';
import { drawLetters, type Letters, MOST_SEGMENTS, WITHIN } from './letters.ts';
import type { LetteringRequest } from './request.ts';
import type { FontAsked, FontFound, Typeface } from './typeface.ts';

/** @param fonts finds and reads a font. */
export const makeLettering = (request: LetteringRequest, fonts: (asked: FontAsked) => FontFound): MadeShape => {
  const found = faceOf(request, fonts);
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
    return refusedWith(find('text-without-letters', say`The text has nothing but spaces: nothing is cut.`, AT_TEXT));
  if (drawn.kind === 'too many') return refusedWith(tooFine(request));
  if (drawn.kind === 'unusable') return refusedWith(unusable(drawn.characters, typeface));
  const size = grown(drawn.contours, (request.metal === 'inside' ? -1 : 1) * standBack(request));
  if (size.kind === 'nothing left') return refusedWith(nothingLeft(request));
  const bridge = { width: request.bridge, way: request.bridgeWay };
  return finished(request, typeface, scale, drawn, request.metal === 'inside' ? standing(size.contours) : openings(size.contours, bridge));
};

const AT_TEXT = { place: atField('text') } as const;

type Faced = { readonly kind: 'typeface'; readonly typeface: Typeface } | Extract<MadeShape, { kind: 'refused' }>;

const faceOf = ({ face, font, heightOf }: LetteringRequest, fonts: (asked: FontAsked) => FontFound): Faced => {
  const place = { kind: 'field', path: font === undefined ? 'face' : 'font' } as const;
  const found = fonts(font === undefined ? { face } : { face, font });
  if (found.kind === 'none') return refusedWith(find('font-unusable', found.why, { place }));
  if (heightOf === 'capitals' && !(found.typeface.capitals > 0))
    return refusedWith(
      find(
        'font-unusable/capitals',
        say`The font ${{ font: name(found.typeface.name) }} has no capital H whose height could be measured.`,
        {
          place: atField('heightOf'),
          remedy: remedy(say`Give the height of the em: ${{ change: term('heightOf em') }}.`, { field: 'heightOf', value: 'em' }),
        },
      ),
    );
  return found;
};

const tooFine = ({ fit }: LetteringRequest): Finding =>
  find(
    'letters-too-fine',
    say`The text comes to more than ${{ most: count(MOST_SEGMENTS) }} lines and arcs where curves are met within ${{ fit: um(fit * 1000, deviating(0)) }}.`,
    {
      place: atField('fit'),
      remedy: remedy(say`Let curves be met less closely, or cut the text in parts.`, { field: 'fit' }),
    },
  );

const unusable = (characters: readonly string[], typeface: Typeface): Finding =>
  find(
    'font-unusable/outlines',
    say`The outlines of ${{ characters: list(characters.map(name)) }} in ${{ font: name(typeface.name) }} contradict themselves and cannot be cut.`,
    AT_TEXT,
  );

const finished = (request: LetteringRequest, typeface: Typeface, scale: number, letters: Letters, cut: CutOuts): MadeShape => {
  const { metal } = request;
  const outlines = sideBySide(cut.contours, cut.nested).map(([contour, { depth }]): Outline => {
    const isInk = depth % 2 === 0;
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
      insideRadius: inside,
    },
  };
};
