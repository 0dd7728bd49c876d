/** Lettering as a kind of shape. How it is made comes in as a means: fonts, their parser and much geometry are loaded by whoever needs them. */
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import { find } from './findings.ts';
import { letteringSchema } from './request.ts';

export const lettering = shapeKind({
  title: 'Lettering',
  what: 'Text cut with the wire: letters as openings in a plate, with or without bridges, or as pieces',
  schema: letteringSchema,
  example: { text: 'ROAD 8', letterHeight: 30, bridge: 2 },
  make: (request, { letters }) =>
    letters === undefined
      ? refusedWith(find('font-unusable', 'Fonts cannot be read here.', { place: { kind: 'field', path: 'face' } }))
      : letters(request),
});
