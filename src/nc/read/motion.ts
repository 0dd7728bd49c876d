/** Coordinates of a block -> exact segments, handed on to the compensation. */
import type { Point, Segment } from '../../geometry/segment.ts';
import { type ArcOutcome, type ArcWords, arcByCentre, arcByRadius, millimetres } from './arc.ts';
import { INCH, lastDigit, type Machine, type Memory, rounded, unitsNotStated } from './memory.ts';
import type { Block } from './program.ts';
import { done, fault, type Outcome } from './read-outcome.ts';
import type { Statement } from './statement.ts';

/** Beyond this many units no machine travels, and numbers begin to lose their last digits. */
const FARTHEST = 100_000;

/** The move of a block, if it has one, in the motion mode in force. */
export const move = (block: Block, s: Readonly<Statement>, machine: Machine): Outcome => {
  const { memory, dialect } = machine;
  if (s.datum !== undefined) return setDatum(block, s, memory);
  if (s.motion !== undefined) memory.motion = s.motion;
  const arc = memory.motion === 'clockwise' || memory.motion === 'counter-clockwise';
  const arcWords = s.i !== undefined || s.j !== undefined || s.r !== undefined;
  if (s.x === undefined && s.y === undefined) {
    if (!arcWords) return done;
    return arc
      ? fault(block, 'arc-incomplete', 'has an arc without its end', 'Write X and Y also where they do not change.')
      : fault(block, 'arc-words-idle', 'has I, J or R and is no arc');
  }
  if (memory.motion === 'not stated')
    return fault(block, 'motion-not-stated', 'has coordinates before any of G00 to G03 has said how to move');
  if (arcWords && !arc) return fault(block, 'arc-words-idle', 'has I, J or R and is no arc', 'Write G02 or G03, or take them out.');
  if (memory.units === 'not stated') return unitsNotStated(block, dialect);
  if (memory.distance === 'not stated')
    return fault(block, 'distance-mode-not-stated', 'moves before G90 or G91 has said how coordinates count');
  if (memory.motion !== 'rapid' && memory.feed === 0)
    return fault(block, 'feed-zero', 'cuts with the feed set to F0', 'Leave F out (the condition sets the feed) or give one above 0.');
  return segmentsOf(block, s, machine);
};

const setDatum = (block: Block, s: Readonly<Statement>, memory: Memory): Outcome => {
  if (memory.moved) return fault(block, 'datum-moved', 'sets the datum by G92 after the wire has moved', 'Keep to one datum.');
  memory.x = s.x ?? memory.x;
  memory.y = s.y ?? memory.y;
  return done;
};

const segmentsOf = (block: Block, s: Readonly<Statement>, machine: Machine): Outcome => {
  const { memory, path } = machine;
  const factor = memory.units === 'inch' ? INCH : 1;
  const relative = memory.distance === 'incremental';
  const x = s.x === undefined ? memory.x : relative ? rounded(memory.x + s.x) : s.x;
  const y = s.y === undefined ? memory.y : relative ? rounded(memory.y + s.y) : s.y;
  const farthest = Math.max(Math.abs(x), Math.abs(y), Math.abs(s.i ?? 0), Math.abs(s.j ?? 0), Math.abs(s.r ?? 0));
  if (farthest > FARTHEST) return fault(block, 'coordinate-too-large', `has a coordinate of ${farthest}, more than ${FARTHEST}`);
  const from = hereOf(memory, factor);
  const to: Point = x === memory.x && y === memory.y ? from : { x: x * factor, y: y * factor };
  const rapid = memory.motion === 'rapid';
  memory.moved = true;
  let segments: readonly Segment[];
  if (rapid || memory.motion === 'straight') segments = from === to ? [] : [{ kind: 'line', from, to }];
  else {
    const words = { from, to, counterClockwise: memory.motion === 'counter-clockwise', digit: lastDigit(machine) };
    const made = arcOf(s, words, factor);
    if (made.kind === 'bad') return fault(block, made.code, made.predicate);
    segments = made.arcs;
  }
  memory.x = x;
  memory.y = y;
  memory.reached = to;
  for (const programmed of segments) {
    const moved = path.move({ block, rapid, condition: memory.condition, programmed });
    if (moved.kind === 'fault') return moved;
  }
  return done;
};

/** One point for the end of a move and the start of the next: of a large program they are most of what it weighs. */
const hereOf = ({ x, y, reached }: Memory, factor: number): Point =>
  reached.x === x * factor && reached.y === y * factor ? reached : { x: x * factor, y: y * factor };

const arcOf = (s: Readonly<Statement>, words: ArcWords, factor: number): ArcOutcome => {
  const byCentre = s.i !== undefined || s.j !== undefined;
  if (byCentre && s.r !== undefined)
    return { kind: 'bad', code: 'arc-incomplete', predicate: 'gives an arc both by its centre and by its radius' };
  if (byCentre) return arcByCentre(words, { x: words.from.x + (s.i ?? 0) * factor, y: words.from.y + (s.j ?? 0) * factor });
  if (s.r !== undefined) return arcByRadius(words, s.r * factor);
  const predicate = `has an arc to ${millimetres(words.to.x)}, ${millimetres(words.to.y)} with neither centre nor radius`;
  return { kind: 'bad', code: 'arc-incomplete', predicate };
};
