/** The sentences with which reading a DXF file tells what it met, and the count of what it passed over. */
import type { Place } from '../../text/finding.ts';
import type { DrawingCode, Ledger } from '../ledger.ts';
import { passedOverFindings } from '../passed-over.ts';
import type { Lie } from './flatten.ts';
import type { EntityRecord, Insert, Shape } from './records.ts';

/** What is told at once, with its place. */
interface Telling {
  readonly at: (place: number) => Place;
  /** An entity that was left out, and why. */
  readonly leftOut: (type: string, place: number, code: DrawingCode, why: string) => void;
  readonly lies: (shape: Shape, lie: Lie) => void;
  readonly edgeOn: (shape: Shape) => void;
  readonly noEnd: (place: number) => void;
  readonly knotsMade: (place: number) => void;
  readonly countDiffers: (place: number, type: string, told: number, given: number, what: string) => void;
  readonly throughPoints: (place: number) => void;
  readonly tooFar: (record: EntityRecord) => void;
  readonly missing: (insert: Insert) => void;
  readonly withinItself: (insert: Insert) => void;
}

/** What is only counted, and told once at the end. */
interface Counting {
  readonly passOver: (type: string, place: number) => void;
  readonly paperSpace: () => void;
  readonly width: (place: number) => void;
  readonly passedOver: ReadonlyMap<string, number>;
  readonly close: () => void;
}

export interface Report extends Telling, Counting {}

export const report = (told: Ledger, binary: boolean): Report => {
  const at = (place: number): Place => (binary ? { kind: 'byte', offset: place } : { kind: 'line', line: place });
  return { ...telling(told, at), ...counting(told, at) };
};

const telling = (told: Ledger, at: Telling['at']): Telling => {
  const add = (code: DrawingCode, place: number, sentence: string, done: string): void =>
    told.add(code, sentence, { place: at(place), done });
  const sees = (shape: Shape, how: string, done: string): void =>
    add('tilted-projected', shape.place, `${oneOf(shape.type)} ${how}.`, done);
  return {
    at,
    leftOut: (type, place, code, why) => add(code, place, `${type}: ${why}`, 'This entity was left out.'),
    lies: (shape, lie) => {
      if (lie === 'raised')
        add('height-dropped', shape.place, `${oneOf(shape.type)} lies at a height other than 0.`, 'It was taken as if it lay at height 0.');
      if (lie === 'tilted') sees(shape, 'does not lie parallel to the XY plane', 'What is seen from above was taken.');
    },
    edgeOn: (shape) => sees(shape, 'stands upright on the XY plane and is seen edge on', 'It was left out.'),
    noEnd: (place) =>
      add('sequence-end-missing', place, 'A POLYLINE has no end mark (SEQEND).', 'It was taken to end with its last vertex.'),
    knotsMade: (place) => add('spline-knots-made', place, 'A SPLINE has control points and no knots.', 'Evenly spaced knots were taken.'),
    countDiffers: (place, type, said, given, what) =>
      add('count-differs', place, `${oneOf(type)} says it has ${said} ${what} and gives ${given}.`, 'Those given were taken.'),
    throughPoints: (place) => add('spline-through-points', place, 'A SPLINE gives only points that it passes through.', THROUGH_POINTS),
    tooFar: ({ place, type }) =>
      add('entity-impossible', place, `${oneOf(type)} reaches further than a thousand million drawing units.`, 'It was left out.'),
    missing: ({ place, block }) =>
      add('reference-missing', place, `The block '${block}' is inserted here and is not in the file.`, 'Nothing was drawn for it.'),
    withinItself: ({ place, block }) =>
      add('reference-to-itself', place, `The block '${block}' is inserted within itself.`, 'The inner one was left out.'),
  };
};

const oneOf = (type: string): string => `${/^(ARC|ELLIPSE|INSERT|LWPOLYLINE)$/.test(type) ? 'An' : 'A'} ${type}`;

const THROUGH_POINTS = 'The smooth cubic through them was taken, free at its ends where no direction is given.';

const counting = (told: Ledger, at: Telling['at']): Counting => {
  const passedOver = new Map<string, number>();
  const firstPlace = new Map<string, number>();
  let paper = 0;
  let wide = 0;
  let firstWide = 0;
  return {
    passOver: (type, place) => {
      passedOver.set(type, (passedOver.get(type) ?? 0) + 1);
      if (!firstPlace.has(type)) firstPlace.set(type, place);
    },
    paperSpace: () => {
      paper++;
    },
    width: (place) => {
      if (wide++ === 0) firstWide = place;
    },
    passedOver,
    close: () => {
      const whose = wide === 1 ? 'A polyline has a width' : `${wide} polylines have a width, the first one here`;
      if (wide > 0) told.add('width-ignored', `${whose}.`, { place: at(firstWide), done: 'The middle line was taken.' });
      passedOverFindings(told, passedOver, (type) => at(firstPlace.get(type)!));
      if (paper > 0)
        told.add('paper-space-left-out', `${paper} entities lie on layout sheets (paper space).`, { done: 'Only model space was read.' });
    },
  };
};
