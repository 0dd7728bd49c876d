/** Patterns of rows for equal pieces: what stands in a row at which pitch, and how each row lies to the one below. */
import { lastOf, type NonEmpty } from '../../sequence/sequence.ts';
import { clearance, type Outline } from './clearance.ts';

/** A piece turned one way. */
export interface TurnedShape {
  readonly degrees: number;
  readonly outline: Outline;
  /** With x and y changed over. */
  readonly over: Outline;
}

/** A piece within the group that is repeated along a row. */
export interface Member {
  readonly shape: TurnedShape;
  readonly x: number;
  readonly y: number;
}

/** What is repeated along a row, and how far apart. */
export interface Row {
  readonly members: NonEmpty<Member>;
  readonly pitch: number;
}

/** Two rows that follow each other in turn, the second shifted along; a row's height over every row below it is found when it is laid. */
export interface Pattern {
  readonly rows: readonly [Row, Row];
  /** mm by which the second row is shifted. */
  readonly shift: number;
  /** mm² of the plate for each piece in an endless field of it. */
  readonly areaEach: number;
}

/** Shifts of one row against the next and heights of one of a pair against the other that are tried, as parts of the pitch and the height. */
const SHIFTS = 12;
const HEIGHTS = 16;
/** Ways to lie beyond which only each so many-th is tried in rows. */
const MOST_WAYS = 24;

export const patternsOf = (shapes: readonly TurnedShape[]): readonly Pattern[] => {
  const every = Math.ceil(shapes.length / MOST_WAYS);
  const opposite = (s: TurnedShape): TurnedShape | undefined => shapes.find(({ degrees }) => degrees === (s.degrees + 180) % 360);
  // A pattern of pieces turned by half a turn is the same pattern upside down, so one of both ways will do.
  const tried = shapes.filter((s, i) => i % every === 0 && (s.degrees < 180 || opposite(s) === undefined));
  return tried.flatMap((shape) => {
    const single = rowOf([{ shape, x: 0, y: 0 }]);
    const other = opposite(shape);
    if (other === undefined) return shifted(single, single);
    return [
      ...shifted(single, single),
      ...shifted(single, rowOf([{ shape: other, x: 0, y: 0 }])),
      ...pairs(shape, other).flatMap((row) => shifted(row, row)),
    ];
  });
};

const rowOf = (members: NonEmpty<Member>): Row => {
  const [first, last] = [members[0], lastOf(members)];
  const beside = members.flatMap((a) => members.map((b) => clearance(a.shape.outline, b.shape.outline, b.y - a.y) + a.x - b.x));
  return { members, pitch: Math.max(...beside, clearance(last.shape.outline, first.shape.outline, first.y - last.y) + last.x - first.x) };
};

/** A piece and the same half-turned beside it, at several heights. */
const pairs = (shape: TurnedShape, other: TurnedShape): readonly Row[] => {
  const [a, b] = [shape.outline, other.outline];
  const low = a.minY - b.maxY;
  const high = a.maxY - b.minY;
  const level = [a.minY - b.minY, a.maxY - b.maxY];
  const heights = Array.from({ length: HEIGHTS - 1 }, (_, i) => low + ((high - low) * (i + 1)) / HEIGHTS);
  return [...level, ...heights].flatMap((y) => {
    const x = clearance(a, b, y);
    return Number.isFinite(x)
      ? [
          rowOf([
            { shape, x: 0, y: 0 },
            { shape: other, x, y },
          ]),
        ]
      : [];
  });
};

const shifted = (first: Row, second: Row): readonly Pattern[] =>
  Array.from({ length: SHIFTS }, (_, i) => {
    const shift = (first.pitch * i) / SHIFTS + first.members[0].shape.outline.minX - second.members[0].shape.outline.minX;
    const rise = rowRise(first, second, shift) + rowRise(second, first, -shift);
    const both = Math.max(rise, rowRise(first, first, 0), rowRise(second, second, 0));
    return { rows: [first, second], shift, areaEach: (both * first.pitch) / (2 * first.members.length) };
  });

/** How far above `below` the row `above` must lie at least, when it is shifted along by `shift`. Both have the same pitch. */
export const rowRise = (below: Row, above: Row, shift: number): number => {
  const pitch = below.pitch;
  let rise = Number.NEGATIVE_INFINITY;
  for (const a of below.members)
    for (const b of above.members) {
      const [p, q] = [a.shape.over, b.shape.over];
      const along = b.x + shift - a.x;
      const from = Math.ceil((p.minY - q.maxY - along) / pitch);
      const to = Math.floor((p.maxY - q.minY - along) / pitch);
      for (let k = from; k <= to; k += 1) rise = Math.max(rise, clearance(p, q, along + k * pitch) + a.y - b.y);
    }
  return rise;
};
