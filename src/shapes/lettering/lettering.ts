/** Lettering as a kind of shape. How it is made comes in as a means: fonts, their parser and much geometry are loaded by whoever needs them. */
import { phrases, say } from '../../text/say.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import { find } from './findings.ts';
import { type LetteringMeans, letteringSchema } from './request.ts';

const words = phrases('lettering', {
  title: say`Lettering`,
  what: say`Text cut with the wire: letters as openings in a plate, with or without bridges, or as pieces`,
});

export const lettering = shapeKind({
  ...words,
  schema: letteringSchema,
  example: { text: 'ROAD 8', letterHeight: 30, bridge: 2 },
  make: (request, { letters }: LetteringMeans) =>
    letters === undefined
      ? refusedWith(find('font-unusable/no-means', say`Fonts cannot be read here.`, { place: { kind: 'field', path: 'face' } }))
      : letters(request),
});
