/** The basic shapes of SVG as runs of curves in their own user units. */

import { arc, type Line, line, type Point } from '../../geometry/segment.ts';
import { itemAt, itemOf, neighbours } from '../../sequence/sequence.ts';
import { asGiven, name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Curve } from '../curve/curve.ts';
import { lengthOf, numbersOf } from './lengths.ts';
import type { Element } from './markup.ts';
import { type PathRun, pathRuns } from './path.ts';
import type { Size } from './viewport.ts';

export type ShapeOutcome =
  | { readonly kind: 'runs'; readonly runs: readonly PathRun[] }
  | { readonly kind: 'unreadable'; readonly code: 'path-unreadable' | 'length-unreadable' | 'entity-impossible'; readonly why: Text };

type Maker = (element: Element, around: Size) => ShapeOutcome;

export const isShape = (name: string): boolean => MAKERS.has(name);

/** @param around what percentages refer to */
export const shapeRuns = (element: Element, around: Size): ShapeOutcome => itemOf(MAKERS, element.name)(element, around);

const pathShape: Maker = (element) => {
  const data = element.attributes.get('d');
  if (data === undefined || data.trim() === '' || data.trim() === 'none') return { kind: 'runs', runs: [] };
  const outcome = pathRuns(data);
  return outcome.kind === 'runs' ? outcome : { kind: 'unreadable', code: 'path-unreadable', why: outcome.why };
};

const lineShape: Maker = (element, around) => {
  const values = lengths(element, around, ['x1', 'y1', 'x2', 'y2']);
  if (values === undefined) return badLength(element);
  const [x1, y1, x2, y2] = values as [number, number, number, number];
  return open([line({ x: x1, y: y1 }, { x: x2, y: y2 })]);
};

const polyShape =
  (closes: boolean): Maker =>
  (element) => {
    const values = numbersOf(element.attributes.get('points') ?? '');
    if (values.length % 2 === 1 || values.some(Number.isNaN)) return { kind: 'unreadable', code: 'length-unreadable', why: words.noPairs };
    const points = Array.from({ length: values.length / 2 }, (_, i): Point => ({ x: itemAt(values, 2 * i), y: itemAt(values, 2 * i + 1) }));
    const drawn = neighbours(points).map(([from, to]) => line(from, to));
    const lines = closes ? closedRound(drawn) : drawn;
    return { kind: 'runs', runs: lines.length > 0 ? [{ curves: lines, closes }] : [] };
  };

const circleShape: Maker = (element, around) => {
  const values = lengths(element, around, ['cx', 'cy', 'r']);
  if (values === undefined) return badLength(element);
  const [x, y, radius] = values as [number, number, number];
  if (!(radius > 0)) return noSize(words.radius(radius));
  const from = { x: x + radius, y };
  return closed([arc(from, from, { x, y }, 2 * Math.PI)]);
};

const ellipseShape: Maker = (element, around) => {
  const values = lengths(element, around, ['cx', 'cy', 'rx', 'ry']);
  if (values === undefined) return badLength(element);
  const [x, y, givenX, givenY] = values as [number, number, number, number];
  const has = (name: string): boolean => isGiven(element.attributes.get(name));
  const [rx, ry] = [has('rx') ? givenX : givenY, has('ry') ? givenY : givenX];
  if (!(rx > 0 && ry > 0)) return noSize(words.axes(rx, ry));
  return closed([{ kind: 'ellipse', centre: { x, y }, major: { x: rx, y: 0 }, minor: { x: 0, y: ry }, start: 0, end: 2 * Math.PI }]);
};

const rectangleShape: Maker = (element, around) => {
  const values = lengths(element, around, ['x', 'y', 'width', 'height', 'rx', 'ry']);
  if (values === undefined) return badLength(element);
  const [x, y, width, height, givenX, givenY] = values as [number, number, number, number, number, number];
  if (!(width > 0 && height > 0)) return noSize(words.sides(width, height));
  const has = (name: string): boolean => isGiven(element.attributes.get(name));
  // One corner radius alone stands for both, and none is more than half a side.
  const rx = Math.min(has('rx') ? givenX : givenY, width / 2);
  const ry = Math.min(has('ry') ? givenY : givenX, height / 2);
  return closed(roundedRectangle({ x, y }, { width, height }, { rx: Math.max(rx, 0), ry: Math.max(ry, 0) }));
};

interface Radii {
  readonly rx: number;
  readonly ry: number;
}

/** From the upper left, with y pointing down: along the top, then down the right side. */
const roundedRectangle = ({ x, y }: Point, { width, height }: Size, radii: Radii): readonly Curve[] => {
  const { rx, ry } = radii;
  const [right, bottom] = [x + width, y + height];
  const round = rx > 0 && ry > 0;
  const [sideX, sideY] = round ? [rx, ry] : [0, 0];
  const corners: readonly (readonly [Point, Point, Point, number])[] = [
    [{ x: right - sideX, y }, { x: right, y: y + sideY }, { x: right - sideX, y: y + sideY }, 3],
    [{ x: right, y: bottom - sideY }, { x: right - sideX, y: bottom }, { x: right - sideX, y: bottom - sideY }, 0],
    [{ x: x + sideX, y: bottom }, { x, y: bottom - sideY }, { x: x + sideX, y: bottom - sideY }, 1],
    [{ x, y: y + sideY }, { x: x + sideX, y }, { x: x + sideX, y: y + sideY }, 2],
  ];
  const curves: Curve[] = [];
  let at: Point = { x: x + sideX, y };
  for (const [from, to, centre, quarter] of corners) {
    if (at.x !== from.x || at.y !== from.y) curves.push(line(at, from));
    if (round) curves.push(corner([from, to], centre, radii, quarter));
    at = to;
  }
  return curves;
};

const corner = ([from, to]: readonly [Point, Point], centre: Point, { rx, ry }: Radii, quarter: number): Curve => {
  if (rx === ry) return arc(from, to, centre, Math.PI / 2);
  const start = (quarter * Math.PI) / 2;
  return { kind: 'ellipse', centre, major: { x: rx, y: 0 }, minor: { x: 0, y: ry }, start, end: start + Math.PI / 2 };
};

const isGiven = (value: string | undefined): boolean => value !== undefined && value.trim() !== 'auto';

/** The named lengths in user units, 0 where they are not given; none when one cannot be read. */
const lengths = (element: Element, around: Size, names: readonly string[]): readonly number[] | undefined => {
  const values = names.map((name) => {
    const text = element.attributes.get(name);
    if (text === undefined || text.trim() === 'auto') return 0;
    const length = lengthOf(text);
    if (length.kind === 'percent') return length.share * reference(name, around);
    return length.kind === 'length' ? length.value : Number.NaN;
  });
  return values.some(Number.isNaN) ? undefined : values;
};

/** Percentages refer to the width, the height, or for a radius to the diagonal over the square root of two. */
const reference = (name: string, { width, height }: Size): number => {
  if (/^(x|x1|x2|cx|rx|width)$/.test(name)) return width;
  return name === 'r' ? Math.hypot(width, height) / Math.SQRT2 : height;
};

const open = (curves: readonly Curve[]): ShapeOutcome => ({ kind: 'runs', runs: [{ curves, closes: false }] });
const closed = (curves: readonly Curve[]): ShapeOutcome => ({ kind: 'runs', runs: [{ curves, closes: true }] });
const noSize = (why: Text): ShapeOutcome => ({ kind: 'unreadable', code: 'entity-impossible', why });
/** With the line from the last end to the first start, where these differ. */
const closedRound = (lines: readonly Line[]): readonly Line[] => {
  const [start, end] = [lines[0]?.from, lines.at(-1)?.to];
  if (start === undefined || end === undefined) return lines;
  return start.x !== end.x || start.y !== end.y ? [...lines, line(end, start)] : lines;
};

const badLength = (element: Element): ShapeOutcome => ({
  kind: 'unreadable',
  code: 'length-unreadable',
  why: words.noLength(shownOf(element)),
});

const shownOf = ({ attributes }: Element): string =>
  SHAPING.flatMap((name) => {
    const value = attributes.get(name);
    return value === undefined ? [] : [`${name}="${value.slice(0, 20)}"`];
  }).join(' ');

const SHAPING = ['x', 'y', 'width', 'height', 'r', 'rx', 'ry', 'cx', 'cy', 'x1', 'y1', 'x2', 'y2'];

const MAKERS: ReadonlyMap<string, Maker> = new Map([
  ['path', pathShape],
  ['line', lineShape],
  ['polyline', polyShape(false)],
  ['polygon', polyShape(true)],
  ['rect', rectangleShape],
  ['circle', circleShape],
  ['ellipse', ellipseShape],
]);

const words = phrases('svg-element', {
  noPairs: say`its points are not pairs of numbers`,
  radius: (radius: number) => say`its radius is ${{ radius: asGiven(radius) }}`,
  axes: (rx: number, ry: number) => say`its half axes are ${{ rx: asGiven(rx) }} and ${{ ry: asGiven(ry) }}`,
  sides: (width: number, height: number) => say`it is ${{ width: asGiven(width) }} wide and ${{ height: asGiven(height) }} high`,
  noLength: (given: string) => say`one of its lengths is no length (${{ given: name(given) }})`,
});
