/** Places of findings: plan and proof think in mm, the customer's drawing in its own unit, and a finding points at the drawing. */

import type { DrawingUnits } from '../drawing/drawing.ts';
import type { Point } from '../geometry/segment.ts';
import type { Finding, Remedy } from '../text/finding.ts';
import { type Part, upTo } from '../text/part.ts';
import { placesMapped } from '../text/within.ts';

type Units = Pick<DrawingUnits, 'name' | 'millimetres'>;

/** Spots given in mm as spots of a drawing in its unit, in the sentence too. Other places stay as they are. */
export const inDrawingUnits = (findings: readonly Finding[], { name, millimetres }: Units): readonly Finding[] =>
  millimetres === 1
    ? findings
    : findings.map((f) => ({
        ...f,
        text: placesMapped(f.text, (p) => placeIn(p, name, millimetres)),
        place: f.place?.kind === 'spot' ? spotIn(f.place, millimetres) : f.place,
        remedy: f.remedy && remedyIn(f.remedy, (p) => placeIn(p, name, millimetres), millimetres),
      }));

/** Findings that count from a datum, as the drawing counts. */
export const fromDrawingOrigin = (findings: readonly Finding[], datum: Point | undefined): readonly Finding[] =>
  datum === undefined ? findings : findings.map((f) => movedBy(f, datum));

const movedBy = (finding: Finding, { x, y }: Point): Finding => {
  const move = (place: PlacePart): PlacePart => ({ ...place, x: place.x + x, y: place.y + y });
  const { text, place, remedy } = finding;
  const value = remedy?.value;
  return {
    ...finding,
    text: placesMapped(text, move),
    place: place?.kind === 'spot' ? { ...place, x: place.x + x, y: place.y + y } : place,
    remedy: remedy && {
      ...remedy,
      text: placesMapped(remedy.text, move),
      value: typeof value === 'object' && 'x' in value ? { x: value.x + x, y: value.y + y } : value,
    },
  };
};

const remedyIn = (remedy: Remedy, move: (place: PlacePart) => PlacePart, millimetres: number): Remedy => ({
  ...remedy,
  text: placesMapped(remedy.text, move),
  value:
    typeof remedy.value === 'object' && 'x' in remedy.value
      ? { x: remedy.value.x / millimetres, y: remedy.value.y / millimetres }
      : remedy.value,
});

type PlacePart = Extract<Part, { kind: 'place' }>;

const placeIn = (place: PlacePart, name: string, millimetres: number): PlacePart => ({
  ...place,
  x: place.x / millimetres,
  y: place.y / millimetres,
  digits: upTo(4),
  spelled: typeof place.spelled === 'string' ? place.spelled : { unit: name },
});

type Spot = Extract<NonNullable<Finding['place']>, { readonly kind: 'spot' }>;

const spotIn = (spot: Spot, millimetres: number): Spot => ({
  ...spot,
  x: spot.x / millimetres,
  y: spot.y / millimetres,
  reach: spot.reach === undefined ? undefined : spot.reach / millimetres,
});
