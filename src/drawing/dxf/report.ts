/** The sentences with which reading a DXF file tells what it met, and the count of what it passed over. */
import type { Place } from '../../finding/finding.ts';
import type { DrawingCode, Ledger } from '../ledger.ts';
import { passedOverFindings } from '../passed-over.ts';
import type { Lie } from './flatten.ts';
import type { EntityRecord, Insert, Shape } from './records.ts';

export interface Report {
  readonly at: (place: number) => Place;
  /** An entity that was left out, and why. */
  readonly leftOut: (type: string, place: number, code: DrawingCode, why: string) => void;
  readonly passOver: (type: string, place: number) => void;
  readonly paperSpace: () => void;
  readonly lies: (shape: Shape, lie: Lie) => void;
  readonly noEnd: (place: number) => void;
  readonly width: (place: number) => void;
  readonly knotsMade: (place: number) => void;
  readonly throughPoints: (place: number) => void;
  readonly edgeOn: (shape: Shape) => void;
  readonly tooFar: (record: EntityRecord) => void;
  readonly missing: (insert: Insert) => void;
  readonly withinItself: (insert: Insert) => void;
  readonly passedOver: ReadonlyMap<string, number>;
  /** States what was only counted so far; once, at the end. */
  readonly close: () => void;
}

export const report = (told: Ledger, binary: boolean): Report => {
  const passedOver = new Map<string, number>();
  const firstPlace = new Map<string, number>();
  let paper = 0;
  const wide: { count: number; first: number | undefined } = { count: 0, first: undefined };
  const at = (place: number): Place => (binary ? { kind: 'byte', offset: place } : { kind: 'line', line: place });
  const add = (code: DrawingCode, place: number, sentence: string, done: string): void =>
    told.add(code, sentence, { place: at(place), done });
  return {
    at,
    leftOut: (type, place, code, why) => add(code, place, `${type}: ${why}`, 'This entity was left out.'),
    passOver: (type, place) => {
      passedOver.set(type, (passedOver.get(type) ?? 0) + 1);
      if (!firstPlace.has(type)) firstPlace.set(type, place);
    },
    paperSpace: () => {
      paper++;
    },
    lies: (shape, lie) => {
      if (lie === 'raised')
        add('height-dropped', shape.place, `A ${shape.type} lies at a height other than 0.`, 'It was taken as if it lay at height 0.');
      if (lie === 'tilted')
        add(
          'tilted-projected',
          shape.place,
          `A ${shape.type} does not lie parallel to the XY plane.`,
          'What is seen from above was taken.',
        );
    },
    noEnd: (place) =>
      add('sequence-end-missing', place, 'A POLYLINE has no end mark (SEQEND).', 'It was taken to end with its last vertex.'),
    width: (place) => {
      wide.count++;
      wide.first ??= place;
    },
    knotsMade: (place) => add('spline-knots-made', place, 'A SPLINE has control points and no knots.', 'Evenly spaced knots were taken.'),
    throughPoints: (place) =>
      add(
        'spline-through-points',
        place,
        'A SPLINE gives only points that it passes through.',
        'The smooth cubic through them was taken, free at its ends where no direction is given.',
      ),
    edgeOn: (shape) =>
      add('tilted-projected', shape.place, `A ${shape.type} stands upright on the XY plane and is seen edge on.`, 'It was left out.'),
    tooFar: (record) =>
      add('entity-impossible', record.place, `A ${record.type} reaches further than a thousand million drawing units.`, 'It was left out.'),
    missing: (insert) =>
      add(
        'reference-missing',
        insert.place,
        `The block '${insert.block}' is inserted here and is not in the file.`,
        'Nothing was drawn for it.',
      ),
    withinItself: (insert) =>
      add('reference-to-itself', insert.place, `The block '${insert.block}' is inserted within itself.`, 'The inner one was left out.'),
    passedOver,
    close: () => {
      if (wide.first !== undefined) {
        const whose = wide.count === 1 ? 'A polyline has a width' : `${wide.count} polylines have a width, the first one here`;
        add('width-ignored', wide.first, `${whose}.`, 'The middle line was taken.');
      }
      passedOverFindings(told, passedOver, (type) => at(firstPlace.get(type)!));
      if (paper > 0)
        told.add('paper-space-left-out', `${paper} entities lie on layout sheets (paper space).`, { done: 'Only model space was read.' });
    },
  };
};
