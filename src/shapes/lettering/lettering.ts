/** Lettering as a kind of shape. How it is made comes in as a means: fonts, their parser and much geometry are loaded by whoever needs them. */
import { atField } from '../../text/finding.ts';
import { say } from '../../text/say.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import { find } from './findings.ts';
import { type LetteringMeans, letteringQuestion } from './request.ts';

export const lettering = shapeKind({
  ...letteringQuestion,
  make: (request, { letters }: LetteringMeans) =>
    letters === undefined
      ? refusedWith(find('font-unusable/no-means', say`Fonts cannot be read here.`, { place: atField('face') }))
      : letters(request),
});
