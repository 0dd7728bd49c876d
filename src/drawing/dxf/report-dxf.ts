/** The sentences with which reading a DXF file tells what it met, and the count of what it passed over. */

import { itemOf } from '../../sequence/sequence.ts';
import type { Place } from '../../text/finding.ts';
import { count, name, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { DrawingCode, Ledger } from '../ledger.ts';
import { passedOverFindings } from '../passed-over.ts';
import type { Lie } from './flatten.ts';
import type { DrawnEntity, EntityRecord, Insert } from './records.ts';
import { type Tally, tally } from './tally.ts';

/** What an entity states the number of. */
type Counted = 'vertices' | 'knots' | 'control points' | 'fit points';

/** What is told at once, with its place. */
interface Telling {
  readonly at: (place: number) => Place;
  /** An entity that was left out, and why. */
  readonly leftOut: (type: string, place: number, code: DrawingCode, why: Text) => void;
  readonly lies: (shape: DrawnEntity, lie: Lie) => void;
  readonly edgeOn: (shape: DrawnEntity) => void;
  readonly noEnd: (place: number) => void;
  readonly knotsMade: (place: number) => void;
  readonly countDiffers: (place: number, type: string, stated: number, given: number, what: Counted) => void;
  readonly throughPoints: (place: number) => void;
  readonly tooFar: (record: EntityRecord) => void;
  readonly missing: (insert: Insert) => void;
  readonly withinItself: (insert: Insert) => void;
}

/** What is only counted, and told once at the end. */
interface Counting {
  readonly paperSpace: () => void;
  /** What was passed over outside of blocks, or in a block that is drawn somewhere. */
  readonly tally: Tally;
  readonly close: () => void;
}

export interface Report extends Telling, Counting {}

export const report = (told: Ledger, binary: boolean): Report => {
  const at = (place: number): Place => (binary ? { kind: 'byte', offset: place } : { kind: 'line', line: place });
  return { ...telling(told, at), ...counting(told, at) };
};

const telling = (told: Ledger, at: Telling['at']): Telling => {
  const add = (code: DrawingCode, place: number, text: Text, done: Text): void => told.add(code, text, { place: at(place), done });
  return {
    at,
    leftOut: (type, place, code, why) => add(code, place, words.leftOut(type, why), words.thisLeftOut),
    lies: (shape, lie) => {
      if (lie === 'raised')
        add('height-dropped', shape.place, say`${{ one: oneOf(shape.type) }} lies at a height other than 0.`, words.atHeight0);
      if (lie === 'tilted') add('tilted-projected', shape.place, words.tilted(shape.type), words.seenFromAbove);
    },
    edgeOn: (shape) => add('tilted-projected', shape.place, words.edgeOn(shape.type), words.wasLeftOut),
    noEnd: (place) => add('sequence-end-missing', place, say`A POLYLINE has no end mark (SEQEND).`, words.endsWithLast),
    knotsMade: (place) => add('spline-knots-made', place, say`A SPLINE has control points and no knots.`, words.evenKnots),
    countDiffers: (place, type, stated, given, what) => add('count-differs', place, words[what](type, stated, given), words.givenTaken),
    throughPoints: (place) =>
      add('spline-through-points', place, say`A SPLINE gives only points that it passes through.`, words.throughPoints),
    tooFar: ({ place, type }) => add('entity-impossible', place, words.tooFar(type), words.wasLeftOut),
    missing: ({ place, block }) =>
      add(
        'reference-missing',
        place,
        say('reference-missing/block')`The block '${{ block: name(block) }}' is inserted here and is not in the file.`,
        words.nothingDrawn,
      ),
    withinItself: ({ place, block }) =>
      add(
        'reference-to-itself',
        place,
        say('reference-to-itself/block')`The block '${{ block: name(block) }}' is inserted within itself.`,
        words.innerLeftOut,
      ),
  };
};

/** With its article: 'An ARC', 'A LINE'. */
const oneOf = (type: string): Text => (VOWELS.has(type) ? words.an(type) : words.a(type));
const VOWELS: ReadonlySet<string> = new Set(['ARC', 'ELLIPSE', 'INSERT', 'LWPOLYLINE']);

const counting = (told: Ledger, at: Telling['at']): Counting => {
  const counted = tally();
  let paper = 0;
  return {
    paperSpace: () => {
      paper++;
    },
    tally: counted,
    close: () => {
      const { wide, passedOver } = counted;
      if (wide.count > 0)
        told.add('width-ignored', wide.count === 1 ? words.oneWide : words.manyWide(wide.count), {
          place: at(wide.first),
          done: words.middleTaken,
        });
      const kinds = new Map([...passedOver].map(([type, met]) => [type, met.count]));
      passedOverFindings(told, kinds, (type) => at(itemOf(passedOver, type).first));
      if (paper > 0)
        told.add('paper-space-left-out', say`${{ entities: count(paper) }} entities lie on layout sheets (paper space).`, {
          done: say`Only model space was read.`,
        });
    },
  };
};

const words = phrases('reading-dxf', {
  a: (type: string) => say`A ${{ type: term(type) }}`,
  an: (type: string) => say`An ${{ type: term(type) }}`,
  leftOut: (type: string, why: Text) => say`${{ type: term(type) }}: ${{ why }}`,
  thisLeftOut: say`This entity was left out.`,
  wasLeftOut: say`It was left out.`,
  atHeight0: say`It was taken as if it lay at height 0.`,
  tilted: (type: string) => say`${{ one: oneOf(type) }} does not lie parallel to the XY plane.`,
  seenFromAbove: say`What is seen from above was taken.`,
  edgeOn: (type: string) => say`${{ one: oneOf(type) }} stands upright on the XY plane and is seen edge on.`,
  endsWithLast: say`It was taken to end with its last vertex.`,
  evenKnots: say`Evenly spaced knots were taken.`,
  vertices: (type: string, stated: number, given: number) =>
    say`${{ one: oneOf(type) }} says it has ${{ stated: count(stated) }} vertices and gives ${{ given: count(given) }}.`,
  knots: (type: string, stated: number, given: number) =>
    say`${{ one: oneOf(type) }} says it has ${{ stated: count(stated) }} knots and gives ${{ given: count(given) }}.`,
  'control points': (type: string, stated: number, given: number) =>
    say`${{ one: oneOf(type) }} says it has ${{ stated: count(stated) }} control points and gives ${{ given: count(given) }}.`,
  'fit points': (type: string, stated: number, given: number) =>
    say`${{ one: oneOf(type) }} says it has ${{ stated: count(stated) }} fit points and gives ${{ given: count(given) }}.`,
  givenTaken: say`Those given were taken.`,
  throughPoints: say`The smooth cubic through them was taken, free at its ends where no direction is given.`,
  tooFar: (type: string) => say`${{ one: oneOf(type) }} reaches further than a thousand million drawing units.`,
  nothingDrawn: say`Nothing was drawn for it.`,
  innerLeftOut: say`The inner one was left out.`,
  oneWide: say`A polyline has a width.`,
  manyWide: (n: number) => say`${{ polylines: count(n) }} polylines have a width, the first one here.`,
  middleTaken: say`The middle line was taken.`,
});
