/** Coordinates of a block -> exact segments, handed on to the compensation. */
import type { Point, Segment } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import { asGiven, count } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { type ArcOutcome, type ArcWords, arcByCentre, arcByRadius, millimetres } from './arc.ts';
import { INCH, lastDigit, type Machine, type Memory, remark, rounded, unitsNotStated } from './memory.ts';
import type { Block } from './program.ts';
import { at, type BlockOutcome, broken, done, fault, faultOf } from './read-outcome.ts';
import type { Statement } from './statement.ts';

/** Beyond this many units no machine travels, and numbers begin to lose their last digits. */
const FARTHEST = 100_000;

/** The move of a block, if it has one, in the motion mode in force. */
export const move = (block: Block, s: Readonly<Statement>, machine: Machine): BlockOutcome => {
  const { memory, dialect } = machine;
  if (s.datum !== undefined) return setDatum(block, s, memory);
  if (s.motion !== undefined) memory.motion = s.motion;
  const arc = memory.motion === 'clockwise' || memory.motion === 'counter-clockwise';
  const arcWords = s.i !== undefined || s.j !== undefined || s.r !== undefined;
  if (s.x === undefined && s.y === undefined) {
    if (!arcWords) return done;
    return arc
      ? fault('arc-incomplete/no-end', block, (named) => say`${{ block: named }} has an arc without its end.`, {
          remedy: say`Write X and Y also where they do not change.`,
        })
      : fault('arc-words-idle', block, (named) => say`${{ block: named }} has I, J or R and is no arc.`);
  }
  if (memory.motion === 'not stated')
    return fault(
      'motion-not-stated',
      block,
      (named) => say`${{ block: named }} has coordinates before any of G00 to G03 has said how to move.`,
    );
  if (arcWords && !arc)
    return fault('arc-words-idle', block, (named) => say`${{ block: named }} has I, J or R and is no arc.`, {
      remedy: say`Write G02 or G03, or take them out.`,
    });
  if (memory.units === 'not stated') return unitsNotStated(block, dialect);
  if (memory.distance === 'not stated')
    return fault(
      'distance-mode-not-stated',
      block,
      (named) => say`${{ block: named }} moves before G90 or G91 has said how coordinates count.`,
    );
  if (memory.motion !== 'rapid' && memory.feed === 0)
    return fault('feed-zero', block, (named) => say`${{ block: named }} cuts with the feed set to F0.`, {
      remedy: say`Leave F out (the condition sets the feed) or give one above 0.`,
    });
  return segmentsOf(block, s, machine);
};

const setDatum = (block: Block, s: Readonly<Statement>, memory: Memory): BlockOutcome => {
  if (memory.moved)
    return fault('datum-moved/datum', block, (named) => say`${{ block: named }} sets the program zero by G92 after the wire has moved.`, {
      remedy: say`Keep to one datum.`,
    });
  if ((s.x ?? memory.x) !== memory.x || (s.y ?? memory.y) !== memory.y)
    return fault(
      'datum-moved/shifted',
      block,
      (named) =>
        say`${{ block: named }} moves the datum by G92 to where the wire does not stand: the program begins with the wire at X0 Y0.`,
      { remedy: say`Write G92 X0 Y0 or nothing, and give every place from the datum.` },
    );
  return done;
};

const segmentsOf = (block: Block, s: Readonly<Statement>, machine: Machine): BlockOutcome => {
  const { memory, path } = machine;
  const factor = memory.units === 'inch' ? INCH : 1;
  const relative = memory.distance === 'incremental';
  const x = s.x === undefined ? memory.x : relative ? rounded(memory.x + s.x) : s.x;
  const y = s.y === undefined ? memory.y : relative ? rounded(memory.y + s.y) : s.y;
  const farthest = Math.max(Math.abs(x), Math.abs(y), Math.abs(s.i ?? 0), Math.abs(s.j ?? 0), Math.abs(s.r ?? 0));
  if (farthest > FARTHEST) return tooFar(block, farthest);
  const from = hereOf(memory, factor);
  const to: Point = x === memory.x && y === memory.y ? from : { x: x * factor, y: y * factor };
  const rapid = memory.motion === 'rapid';
  memory.moved = true;
  let segments: readonly Segment[];
  if (rapid || memory.motion === 'straight') segments = from === to ? [] : [{ kind: 'line', from, to }];
  else {
    const words = { from, to, counterClockwise: memory.motion === 'counter-clockwise', digit: lastDigit(machine), slack: machine.arcEnds };
    const made = arcOf(s, words, factor);
    if (made.kind === 'bad') return faultOf(made, block);
    if (made.apart !== undefined) remark('arc-ends-apart', () => endsApart(block, made.apart ?? 0), machine);
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

const endsApart = (block: Block, apart: number): Finding =>
  at(
    'arc-ends-apart',
    block,
    (named) =>
      say`${{ block: named }} has an arc whose ends lie ${{ apart: millimetres(apart) }} differently far from its centre, more than rounding makes; some controls refuse it.`,
    { done: say`It was read with its centre moved along the chord, which changes the path by a share of the tolerance.` },
  );

const tooFar = (block: Block, farthest: number): BlockOutcome =>
  fault(
    'coordinate-too-large',
    block,
    (named) => say`${{ block: named }} has a coordinate of ${{ coordinate: asGiven(farthest) }}, more than ${{ most: count(FARTHEST) }}.`,
  );

/** One point for the end of a move and the start of the next: of a large program they are most of what it weighs. */
const hereOf = ({ x, y, reached }: Memory, factor: number): Point =>
  reached.x === x * factor && reached.y === y * factor ? reached : { x: x * factor, y: y * factor };

const arcOf = (s: Readonly<Statement>, words: ArcWords, factor: number): ArcOutcome => {
  const byCentre = s.i !== undefined || s.j !== undefined;
  if (byCentre && s.r !== undefined)
    return broken('arc-incomplete/both', (block) => say`${{ block }} gives an arc both by its centre and by its radius.`);
  if (byCentre) return arcByCentre(words, { x: words.from.x + (s.i ?? 0) * factor, y: words.from.y + (s.j ?? 0) * factor });
  if (s.r !== undefined) return arcByRadius(words, s.r * factor);
  const { x, y } = words.to;
  return broken(
    'arc-incomplete/neither',
    (block) => say`${{ block }} has an arc to ${{ x: millimetres(x) }}, ${{ y: millimetres(y) }} with neither centre nor radius.`,
  );
};
