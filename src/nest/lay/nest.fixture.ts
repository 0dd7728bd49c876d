/** Judges a nest by the independent polygon library: every web, the border, and the web to each forbidden zone. */
import { difference, FillRule, intersect, type Paths64, union } from 'clipper2-ts';
import { there } from '../../../test/there.ts';
import { counterClockwise, regionOf } from '../../geometry/chain.ts';
import type { Contour } from '../../geometry/contour.ts';
import { areaOfPolygons, offsetByLibrary, polygonOf } from '../../geometry/offset/second-library.fixture.ts';
import type { LaidNest } from '../nest-outcome.ts';
import type { NestQuestion } from '../nest-question.ts';
import { placedContours } from './nest.ts';

/** mm by which arcs are cut off when they become polygons, and mm less than asked that is let pass for it. */
const CHORD = 2e-4;
const SLACK = 1e-3;
/** mm² of overlap that is no more than rounding to nanometres. */
const NOTHING = 1e-7;

/** What is wrong with a nest, in words; nothing when it keeps all it should. */
export const faultsOf = (question: NestQuestion, { placed }: LaidNest): readonly string[] => {
  const { plate, border, web, forbidden } = question;
  const pieces = new Map(question.pieces.map((p) => [p.id, p]));
  const shapes = placed.map((p) => {
    const { outline, holes } = placedContours(there(pieces.get(p.piece)), p);
    const { outer, holes: inner } = regionOf(outline, holes);
    return { name: `${p.piece} ${p.copy}`, polygons: boxed([outer, ...inner].map((c) => polygonOf(c, CHORD))) };
  });
  const grown = shapes.map(({ polygons }) => boxed(grownBy(polygons.paths, (web - SLACK) / 2)));
  const inside = grownBy([ofContour(plate)], SLACK - border);
  const zones = forbidden.map((zone) => boxed(grownBy([ofContour(zone)], web - SLACK)));
  return [
    ...shapes.flatMap(({ name, polygons }, i) => [
      ...(areaOfPolygons(difference(polygons.paths, inside, FillRule.NonZero)) > NOTHING
        ? [`${name} is nearer to the edge than the border`]
        : []),
      ...zones.flatMap((zone, k) => (shared(polygons, zone) ? [`${name} is nearer to zone ${k + 1} than the web`] : [])),
      ...shapes.flatMap((other, j) =>
        j > i && shared(there(grown[i]), there(grown[j])) ? [`${name} and ${other.name} are nearer than the web`] : [],
      ),
    ]),
  ];
};

/** Metal that two placed pieces cover, of the pieces themselves, mm². */
export const metalByLibrary = (question: NestQuestion, { placed }: LaidNest): number => {
  const pieces = new Map(question.pieces.map((p) => [p.id, p]));
  const all = placed.flatMap((p) => {
    const { outline, holes } = placedContours(there(pieces.get(p.piece)), p);
    const region = regionOf(outline, holes);
    return [region.outer, ...region.holes].map((c) => polygonOf(c, CHORD));
  });
  return areaOfPolygons(union(all, FillRule.NonZero));
};

const ofContour = (c: Contour): Paths64[number] => polygonOf(counterClockwise(c), CHORD);

const grownBy = (polygons: Paths64, by: number): Paths64 => (by === 0 ? polygons : offsetByLibrary(polygons, by, CHORD));

/** Polygons with the box around them, so that of many pairs only those are cut whose boxes meet. */
interface Boxed {
  readonly paths: Paths64;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

const boxed = (paths: Paths64): Boxed => {
  const xs = paths.flatMap((path) => path.map((p) => p.x));
  const ys = paths.flatMap((path) => path.map((p) => p.y));
  return { paths, minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
};

const shared = (a: Boxed, b: Boxed): boolean => boxesMeet(a, b) && areaOfPolygons(intersect(a.paths, b.paths, FillRule.NonZero)) > NOTHING;

const boxesMeet = (p: Boxed, q: Boxed): boolean => p.minX < q.maxX && q.minX < p.maxX && p.minY < q.maxY && q.minY < p.maxY;
