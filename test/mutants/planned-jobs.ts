/** Small jobs, one for every kind of plan the planner makes, each written as a program on which faults can be tried. */
import { type Path, path } from '../../src/geometry/contour.ts';
import { line, point, type Segment } from '../../src/geometry/segment.ts';
import { easeLoops } from '../../src/job/request/rounded-corners.ts';
import { type Dialect, standardDialect } from '../../src/nc/dialect/dialect.ts';
import { disc, loop, polygon, questionFor, rectangle, slot } from '../../src/plan/plan.fixture.ts';
import type { PlanQuestion, WantedLoop } from '../../src/plan/question.ts';
import { asked, inControl, inPath } from '../planned.ts';
import type { GoodProgram } from './good-programs.ts';

export interface PlannedJob extends GoodProgram {
  /** What lies outside all contours: metal that stays, or waste from which parts are cut. */
  readonly frame: 'stays' | 'waste';
  /** Single passes, and whole contours. */
  readonly passes: GoodProgram['stretches'];
  /** Round the metal beside an open line that nobody wants, and on past the edge of the block. */
  readonly waste?: readonly Segment[];
}

const block = (width = 20, height = 16): WantedLoop => loop('B', rectangle(0, 0, width, height));
const inBlock = (loops: readonly WantedLoop[], changes: Partial<PlanQuestion> = {}, size?: readonly [number, number]) =>
  questionFor([block(...(size ?? [])), ...loops.map((l) => ({ ...l, parent: l.parent ?? 'B' }))], {
    outline: 'block',
    core: Object.fromEntries(loops.map((l) => [l.id, 'slug' as const])),
    startHole: 1,
    ...changes,
  });
const parts = (loops: readonly WantedLoop[], changes: Partial<PlanQuestion> = {}) =>
  questionFor(loops, { blockMargin: 5, startHole: 1, core: Object.fromEntries(loops.map((l) => [l.id, 'slug' as const])), ...changes });
const steps = (...corners: readonly (readonly [number, number])[]): Path =>
  path(corners.slice(1).map(([x, y], i) => line(point(...(corners[i] as [number, number])), point(x, y))));
const lineAcross = (kept: 'left' | 'right' | 'slit', along: Path, changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor([block()], { outline: 'block', startHole: 1, open: [{ id: 'C1', path: along, kept }], ...changes });
const eased = (): PlanQuestion => {
  const opening = loop('A', rectangle(5, 4, 10, 8), 1, 'B');
  const result = easeLoops([block(), opening], new Map([['A', 'die']]), 0.8);
  if (result.kind !== 'eased') throw new Error('the corners of a rectangle can be eased');
  return questionFor(result.loops, { outline: 'block', startHole: 1 });
};
const INCH = 25.4;

const washer = [loop('P', rectangle(0, 0, 12, 10)), loop('H', disc(6, 5, 2.5), 1, 'P')];

type Kind = readonly [name: string, question: PlanQuestion, frame: PlannedJob['frame'], dialect?: Dialect, waste?: readonly Segment[]];

const KINDS: readonly Kind[] = [
  ['die opening', inBlock([loop('A', rectangle(5, 4, 10, 8), 1)]), 'stays'],
  ['die opening, no words of its own', inBlock([loop('A', rectangle(5, 4, 10, 8), 1)]), 'stays', standardDialect],
  ['part on a tab, no words of its own', parts(washer), 'waste', standardDialect],
  ['die opening, path compensated', inBlock([loop('A', slot(7, 8, 6, 5), 1)]), 'stays', inPath],
  [
    'two openings, roughs first',
    inBlock([loop('A', disc(5, 8, 3), 1), loop('C', disc(15, 8, 3), 1)], { run: 'unattended first' }),
    'stays',
  ],
  ['two openings, each to the end', inBlock([loop('A', disc(5, 8, 3), 1), loop('C', rectangle(12, 5, 6, 6), 1)]), 'stays'],
  ['part with an opening, on a tab', parts(washer), 'waste'],
  ['part with an opening, roughs first', parts(washer, { run: 'unattended first' }), 'waste'],
  ['two parts that share a hole', parts([loop('P', rectangle(0, 0, 8, 8)), loop('Q', rectangle(12, 0, 8, 8))], { finish: 1.6 }), 'waste'],
  ['opening from the edge', inBlock([loop('A', rectangle(6, 4, 9, 8), 1)], { start: { A: 'edge' } }), 'stays'],
  ['part from the edge', parts([loop('P', rectangle(0, 0, 10, 8))], { start: { P: 'edge' } }), 'waste'],
  [
    'open line, left kept',
    lineAcross('left', steps([0, 5], [10, 5], [10, 7], [20, 7])),
    'stays',
    inControl,
    polygon([-9, -9], [29, -9], [29, 7], [10, 7], [10, 5], [-9, 5]).segments,
  ],
  [
    'open line, right kept',
    lineAcross('right', steps([20, 5], [0, 5]), { run: 'unattended first' }),
    'stays',
    inControl,
    polygon([-9, -9], [29, -9], [29, 5], [-9, 5]).segments,
  ],
  ['block parted by a slit', lineAcross('slit', steps([0, 5], [20, 5])), 'stays'],
  ['blind slit', lineAcross('slit', steps([10, 16], [10, 8], [14, 6])), 'stays'],
  ['no core', inBlock([loop('A', disc(6, 6, 1.6), 1)], { core: { A: 'no-core' } }, [12, 12]), 'stays'],
  ['outside corners by loop', parts([loop('P', polygon([0, 0], [10, 0], [5, 8]))], { sharpOutside: 'loop', finish: 1.6 }), 'waste'],
  [
    'clamped block',
    inBlock([loop('A', rectangle(6, 4, 9, 8), 1)], { start: { A: 'edge' }, clamps: [{ low: { x: 0, y: 0 }, high: { x: 2, y: 16 } }] }),
    'stays',
  ],
  ['heavy slug', inBlock([loop('A', rectangle(5, 5, 18, 14), 1)], { height: 150, finish: 1.6 }, [28, 24]), 'stays'],
  ['eased corners', eased(), 'stays'],
  ['given hole', inBlock([loop('A', rectangle(5, 4, 10, 8), 1)], { holes: [{ at: { x: 8, y: 7 }, diameter: 3 }], finish: 1.6 }), 'stays'],
  [
    'inch sizes',
    inBlock([loop('A', rectangle(0.25 * INCH, 0.1875 * INCH, 0.375 * INCH, 0.3125 * INCH), 1)], {
      resolution: { unit: INCH, decimals: 5 },
    }),
    'stays',
    { ...inControl, units: 'inch', decimals: 5 },
  ],
];

export const plannedJobs = (): readonly PlannedJob[] => KINDS.map(jobOf);

const jobOf = ([name, question, frame, dialect = inControl, waste]: Kind): PlannedJob => {
  const { program, ...rest } = asked(question, dialect);
  // Block numbers change with every fault; the control does not need them.
  const lines = program
    .trimEnd()
    .split('\n')
    .map((l) => l.replace(/^N\d+ /, ''));
  const last = Math.min(...rest.gaps.values());
  const insideCorner = Math.min(question.insideCorner, rest.wireDiameter / 2 + last + 0.001);
  return {
    name,
    lines,
    frame,
    question: { ...rest, insideCorner },
    stretches: stretchesFrom(lines, /^\(CONTOUR|^\(C1|^\(LINE/),
    passes: stretchesFrom(lines, /^E\d|^M00 \(CONDITION/),
    ...(waste === undefined ? {} : { waste }),
  };
};

/** From each line that begins a stretch to the line before the next one, or before the end. */
const stretchesFrom = (lines: readonly string[], begins: RegExp): GoodProgram['stretches'] => {
  const starts = lines.flatMap((l, i) => (begins.test(l) ? [i] : []));
  const end = lines.findIndex((l) => /^M(02|30)/.test(l));
  return starts.map((s, i) => [s, (starts[i + 1] ?? end) - 1] as const);
};
