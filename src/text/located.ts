/** A finding's sentence with its place, for readers that have no picture to point into. */
import type { Finding, Place } from './finding.ts';
import { clause, contour, count, placeByLetters, term, upTo } from './part.ts';
import { phrases, say, sentences } from './say.ts';
import type { Text } from './text.ts';
import { namesPlace } from './within.ts';

/** Unless it names that place itself; a field is for whoever edits the file, and the sentence says what it is about. */
export const located = ({ text, place }: Pick<Finding, 'text' | 'place'>): Text => {
  if (place === undefined || place.kind === 'field') return text;
  if (place.kind === 'byte') return words.byte(text, place.offset);
  if (place.kind === 'spot') return namesPlace(text, place) ? text : atSpot(text, place);
  const { line, text: content } = place;
  return content === undefined ? words.line(text, line) : words.lineOf(text, line, content.trim().slice(0, 60));
};

/** One finding in full: sentence, place, what was done, what would help. */
export const findingInFull = (finding: Finding): Text => sentences([located(finding), finding.done, finding.remedy?.text]);

type Spot = Extract<Place, { kind: 'spot' }>;

const atSpot = (text: Text, { x, y, loop }: Spot): Text =>
  loop === undefined ? words.spot(text, { x, y }) : words.spotOf(text, { x, y }, loop);

const words = phrases('located', {
  spot: (text: Text, at: Pick<Spot, 'x' | 'y'>) => say`${{ sentence: clause(text) }} (${{ at: placeByLetters(at, upTo(3)) }}).`,
  spotOf: (text: Text, at: Pick<Spot, 'x' | 'y'>, loop: string) =>
    say`${{ sentence: clause(text) }} (${{ at: placeByLetters(at, upTo(3)) }}, ${{ loop: contour(loop) }}).`,
  line: (text: Text, line: number) => say`${{ sentence: clause(text) }} (line ${{ line: count(line) }}).`,
  lineOf: (text: Text, line: number, content: string) =>
    say`${{ sentence: clause(text) }} (line ${{ line: count(line) }}: ${{ content: term(content) }}).`,
  byte: (text: Text, offset: number) => say`${{ sentence: clause(text) }} (byte ${{ offset: count(offset) }}).`,
});
