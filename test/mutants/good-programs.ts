/**
 * Programs that are right, written here line by line from the trade's rules and knowing neither the planner nor the writer:
 * openings and parts, compensation in the control and in the path, tabs, stops, one to three passes.
 */
import type { Contour } from '../../src/geometry/contour.ts';
import type { Point, Segment } from '../../src/geometry/segment.ts';
import { line, point } from '../../src/geometry/segment.ts';
import type { Dialect } from '../../src/nc/dialect/dialect.ts';
import { standardDialect } from '../../src/nc/dialect/dialect.ts';
import type { ProofQuestion } from '../../src/proof/proof.ts';
import { there } from '../there.ts';
import type { Shape } from './shapes.ts';
import { angle, rectangle, round, slot } from './shapes.ts';

export interface GoodProgram {
  readonly name: string;
  readonly lines: readonly string[];
  /** Everything but the program text. */
  readonly question: Omit<ProofQuestion, 'program'>;
  /** First and last line of stretches that can change places: contours, or passes of one contour. */
  readonly stretches: readonly (readonly [first: number, last: number])[];
}

export const textOf = (lines: readonly string[]): string => `${lines.join('\n')}\n`;

const WIRE = 0.25;
const GAPS = new Map([
  [1, 0.03],
  [2, 0.02],
  [3, 0.015],
]);
/** Half the kerf of the rough cut. */
export const ROUGH = WIRE / 2 + there(GAPS.get(1));
/** Offsets: half the wire, the gap, and what later passes take off. */
const offsetsOf = (passes: number): ReadonlyMap<number, number> =>
  new Map(
    Array.from({ length: passes }, (_, i) => [i + 1, WIRE / 2 + there(GAPS.get(i + 1)) + (i + 1 === passes ? 0 : 0.05 / (i + 1))] as const),
  );

interface Writer {
  readonly lines: string[];
  readonly dialect: Dialect;
  readonly passes: number;
  readonly offsets: ReadonlyMap<number, number>;
  at: Point;
}

const word = (letter: string, value: number): string => {
  const text = value.toFixed(4).replace(/0+$/, '');
  return `${letter}${Object.is(Number(text), -0) ? '0.' : text}`;
};

const writer = (dialect: Dialect, passes: number): Writer => ({
  lines: ['%', '(GOOD)', 'G71', dialect.coordinates === 'absolute' ? 'G90' : 'G91'],
  dialect,
  passes,
  offsets: offsetsOf(passes),
  at: point(0, 0),
});

const go = (w: Writer, prefix: string, to: Point, rest = ''): void => {
  const grid = point(Number(to.x.toFixed(4)), Number(to.y.toFixed(4)));
  const from = w.dialect.coordinates === 'absolute' ? point(0, 0) : w.at;
  w.lines.push(`${prefix} ${word('X', grid.x - from.x)} ${word('Y', grid.y - from.y)}${rest}`);
  w.at = grid;
};

const cutAlong = (w: Writer, s: Segment): void => {
  if (s.kind === 'line') {
    go(w, 'G01', s.to);
    return;
  }
  const from = w.at;
  const rest =
    w.dialect.arcs === 'radius' ? ` ${word('R', s.radius)}` : ` ${word('I', s.centre.x - from.x)} ${word('J', s.centre.y - from.y)}`;
  go(w, s.sweep > 0 ? 'G03' : 'G02', s.to, rest);
};

const stop = (w: Writer, comment: string): void => {
  w.lines.push(`M00 (${comment})`);
};
const thread = (w: Writer): void => {
  if (w.dialect.words.thread === undefined) stop(w, 'THREAD THE WIRE');
  else w.lines.push(w.dialect.words.thread);
};
const cutWire = (w: Writer): void => {
  if (w.dialect.words.cutWire === undefined) stop(w, 'CUT THE WIRE');
  else w.lines.push(w.dialect.words.cutWire);
};
const energy = (w: Writer, pass: number): void => {
  if (w.dialect.words.condition !== undefined) w.lines.push(w.dialect.words.condition.replace('{n}', String(pass)));
};

/** The contour for a pass: as drawn when the control compensates, else where the wire's centre runs. */
const course = (w: Writer, shape: Shape, kept: 'die' | 'punch', pass: number): Contour =>
  shape.contour(w.dialect.compensation === 'control' ? 0 : there(w.offsets.get(pass)) * (kept === 'die' ? 1 : -1));

const enter = (w: Writer, side: 'G41' | 'G42', pass: number, to: Point): void =>
  go(w, w.dialect.compensation === 'control' ? `${side} D${pass} G01` : 'G01', to);
const leave = (w: Writer, to: Point): void => go(w, w.dialect.compensation === 'control' ? 'G40 G01' : 'G01', to);

/** All pieces of a contour but the last, and the last one up to a tab before the entry. */
const upToTab = (contour: Contour, tab: number): readonly Segment[] => {
  const last = there(contour.segments[contour.segments.length - 1]);
  return [...contour.segments.slice(0, -1), partOf(last, 0, tab)];
};

/** A piece that ends (or begins) a given length before its end. */
const partOf = (s: Segment, skip: number, short: number): Segment => {
  if (s.kind === 'line') {
    const length = Math.hypot(s.to.x - s.from.x, s.to.y - s.from.y);
    const along = (d: number): Point => point(s.from.x + ((s.to.x - s.from.x) * d) / length, s.from.y + ((s.to.y - s.from.y) * d) / length);
    return line(skip === 0 ? s.from : along(skip), short === 0 ? s.to : along(length - short));
  }
  const at = (angle: number): Point => {
    const start = Math.atan2(s.from.y - s.centre.y, s.from.x - s.centre.x) + angle;
    return point(s.centre.x + s.radius * Math.cos(start), s.centre.y + s.radius * Math.sin(start));
  };
  const sense = Math.sign(s.sweep);
  const [a, b] = [(sense * skip) / s.radius, s.sweep - (sense * short) / s.radius];
  return { ...s, from: skip === 0 ? s.from : at(a), to: short === 0 ? s.to : at(b), sweep: b - a };
};

const reversed = (s: Segment): Segment => (s.kind === 'line' ? line(s.to, s.from) : { ...s, from: s.to, to: s.from, sweep: -s.sweep });

interface Opening {
  readonly shape: Shape;
  readonly hole: Point;
  readonly tab: number;
}

const OVERLAP = 0.3;

/** Rough to the tab, stop, tab, stop, skims, each once round and out towards the hole. Returns the stretches of its passes. */
const cutOpening = (w: Writer, { shape, hole, tab }: Opening): (readonly [number, number])[] => {
  go(w, 'G00', hole);
  thread(w);
  const stretches: [number, number][] = [];
  for (let pass = 1; pass <= w.passes; pass += 1) {
    const first = w.lines.length;
    const contour = course(w, shape, 'die', pass);
    const entry = there(contour.segments[0]).from;
    const out = point(entry.x + (hole.x - entry.x) * 0.4, entry.y + (hole.y - entry.y) * 0.4);
    energy(w, pass);
    enter(w, 'G41', pass, entry);
    if (pass === 1) {
      for (const s of upToTab(contour, tab)) cutAlong(w, s);
      stop(w, 'SECURE THE SLUG');
      cutAlong(w, partOf(there(contour.segments.at(-1)), lengthOf(there(contour.segments.at(-1))) - tab, 0));
    } else for (const s of contour.segments) cutAlong(w, s);
    cutAlong(w, partOf(there(contour.segments[0]), 0, lengthOf(there(contour.segments[0])) - OVERLAP));
    if (pass === 1) stop(w, 'TAKE THE SLUG OUT');
    leave(w, out);
    stretches.push([first, w.lines.length - 1]);
  }
  cutWire(w);
  return stretches;
};

const lengthOf = (s: Segment): number =>
  s.kind === 'line' ? Math.hypot(s.to.x - s.from.x, s.to.y - s.from.y) : s.radius * Math.abs(s.sweep);

interface Part {
  readonly shape: Shape;
  readonly start: Point;
  readonly tab: number;
  /** Direction from the entry into the waste. */
  readonly outward: Point;
}

/** Rough to the tab, skims to and fro while the tab holds, stop, the tab with every pass, stop. */
const cutPart = (w: Writer, { shape, start, tab, outward }: Part): void => {
  go(w, 'G00', start);
  thread(w);
  const outOf = (p: Point): Point => point(p.x + outward.x, p.y + outward.y);
  for (let pass = 1; pass <= w.passes; pass += 1) {
    const segments = upToTab(course(w, shape, 'punch', pass), tab);
    const forward = pass % 2 === 1;
    const run = forward ? segments : [...segments].reverse().map(reversed);
    energy(w, pass);
    enter(w, forward ? 'G42' : 'G41', pass, there(run[0]).from);
    for (const s of run) cutAlong(w, s);
    leave(w, outOf(there(run.at(-1)).to));
  }
  stop(w, 'SECURE THE PART');
  const ends = w.passes % 2 === 1;
  for (let pass = 1; pass <= w.passes; pass += 1) {
    const contour = course(w, shape, 'punch', pass);
    const [first, last] = [there(contour.segments[0]), there(contour.segments.at(-1))];
    const run = [partOf(last, lengthOf(last) - tab - OVERLAP, 0), partOf(first, 0, lengthOf(first) - OVERLAP)];
    const forward = ends === (pass % 2 === 1);
    const way = forward ? run : [...run].reverse().map(reversed);
    energy(w, pass);
    enter(w, forward ? 'G42' : 'G41', pass, there(way[0]).from);
    for (const s of way) cutAlong(w, s);
    leave(w, outOf(there(way.at(-1)).to));
  }
  stop(w, 'TAKE THE PART OUT');
  cutWire(w);
};

const block = (size: number): Contour => ({
  closed: true,
  segments: [
    line(point(0, 0), point(size, 0)),
    line(point(size, 0), point(size, size)),
    line(point(size, size), point(0, size)),
    line(point(0, size), point(0, 0)),
  ],
});

interface Rest {
  readonly wanted: ProofQuestion['wanted'];
  readonly holes: readonly Point[];
  readonly size: number;
  readonly stretches?: GoodProgram['stretches'];
}

const finished = (w: Writer, name: string, { wanted, holes, size, stretches = [] }: Rest): GoodProgram => {
  const last = there(w.offsets.get(w.passes));
  return {
    name,
    lines: [...w.lines, 'M02', '%'],
    stretches,
    question: {
      dialect: w.dialect,
      registers: w.offsets,
      wireDiameter: WIRE,
      gaps: GAPS,
      passes: [...w.offsets.keys()],
      wanted,
      block: block(size),
      holes: holes.map((at) => ({ at, diameter: 1.5 })),
      height: 40,
      density: 7.7,
      tolerance: 0.002,
      insideCorner: last + 0.001,
    },
  };
};

const opening = (name: string, dialect: Dialect, passes: number, shape: Shape, hole: Point, tab: number): GoodProgram => {
  const w = writer(dialect, passes);
  const stretches = cutOpening(w, { shape, hole, tab });
  return finished(w, name, { wanted: [{ loop: 'A', contour: shape.contour(0), kept: 'die' }], holes: [hole], size: 18, stretches });
};

const part = (name: string, dialect: Dialect, passes: number, p: Part, holes: readonly Point[]): GoodProgram => {
  const w = writer(dialect, passes);
  cutPart(w, p);
  return finished(w, name, { wanted: [{ loop: 'P', contour: p.shape.contour(0), kept: 'punch' }], holes, size: 18 });
};

const inPath: Dialect = {
  ...standardDialect,
  name: 'path',
  compensation: 'path',
  words: { thread: 'M70', cutWire: 'M71', condition: 'E{n}' },
};
const byRadius: Dialect = { ...standardDialect, name: 'radius', arcs: 'radius' };
const incremental: Dialect = { ...standardDialect, name: 'incremental', coordinates: 'incremental' };
const withWords: Dialect = { ...standardDialect, name: 'words', words: { thread: 'M70', cutWire: 'M71', condition: 'E{n}' } };

/** Two openings one after the other, each with a contour of its own. */
const pair = (): GoodProgram => {
  const w = writer(withWords, 1);
  const shapes = [rectangle(3, 4, 8, 10, 1), round(13, 7, 2.5)];
  const holes = [point(5.5, 7), point(13, 7)];
  const stretches = shapes.map((shape, i): readonly [number, number] => {
    const first = w.lines.length;
    cutOpening(w, { shape, hole: there(holes[i]), tab: 1.5 });
    return [first, w.lines.length - 1];
  });
  const wanted = shapes.map((s, i) => ({ loop: there('AB'[i]), contour: s.contour(0), kept: 'die' as const }));
  return finished(w, 'two openings', { wanted, holes, size: 18, stretches });
};

/** A part with an opening in it: the opening first. */
const washer = (): GoodProgram => {
  const w = writer(standardDialect, 2);
  const inner = round(9, 9, 2);
  const outer = rectangle(4, 4, 14, 14, 2);
  const first = w.lines.length;
  cutOpening(w, { shape: inner, hole: point(9, 9), tab: 1.5 });
  const middle = w.lines.length;
  cutPart(w, { shape: outer, start: point(9, 2), tab: 2, outward: point(0, -0.8) });
  const wanted = [
    { loop: 'in', contour: inner.contour(0), kept: 'die' as const },
    { loop: 'out', contour: outer.contour(0), kept: 'punch' as const },
  ];
  const stretches = [
    [first, middle - 1],
    [middle, w.lines.length - 1],
  ] as const;
  return finished(w, 'part with an opening', { wanted, holes: [point(9, 9), point(9, 2)], size: 18, stretches });
};

/** A rectangular opening whose slug hangs by so many mm of metal: the kerf of the rough cut rounds the tab at both ends. */
export const hangingBy = (metal: number, width: number, depth: number): GoodProgram => {
  const shape = rectangle(9 - width / 2, 9 - depth / 2, 9 + width / 2, 9 + depth / 2, 0);
  return opening('slug on a tab', withWords, 2, shape, point(9, 9), metal + 2 * ROUGH);
};

export const goodPrograms = (): readonly GoodProgram[] => [
  opening('sharp opening, control', standardDialect, 2, rectangle(4, 4, 14, 12, 0), point(9, 8), 2),
  opening('rounded opening, control', withWords, 3, rectangle(4, 4, 14, 12, 1.5), point(9, 8), 2),
  opening('rounded opening, path', inPath, 2, rectangle(4, 4, 14, 12, 1.5), point(9, 8), 2),
  opening('round opening, radius words', byRadius, 2, round(9, 9, 4), point(9, 9), 2),
  opening('slot, incremental', incremental, 2, slot(9, 9, 7, 2), point(9, 9), 1.5),
  opening('angle, control', standardDialect, 2, angle(4, 4, 10), point(7, 7), 1.5),
  part(
    'rounded part, control',
    standardDialect,
    2,
    { shape: rectangle(4, 5, 14, 14, 1.5), start: point(9, 2), tab: 2.5, outward: point(0, -0.8) },
    [point(9, 2)],
  ),
  part('sharp part, control', withWords, 3, { shape: rectangle(4, 5, 14, 14, 0), start: point(9, 2), tab: 2.5, outward: point(0, -0.8) }, [
    point(9, 2),
  ]),
  part('rounded part, path', inPath, 2, { shape: rectangle(4, 5, 14, 14, 1.5), start: point(9, 2), tab: 2.5, outward: point(0, -0.8) }, [
    point(9, 2),
  ]),
  part('round part from the edge', standardDialect, 1, { shape: round(9, 9, 4), start: point(9, -1), tab: 2, outward: point(0, -0.8) }, []),
  pair(),
  washer(),
];
