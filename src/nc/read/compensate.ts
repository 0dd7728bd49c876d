/**
 * Cutter compensation as a machine of one move's memory: where a move ends depends on the next one, so each move waits for
 * its successor, and whatever stands between the two in the program waits behind it. The rules are those of CHECKS I:
 * switched on and off on a straight move, square to the path there; inside corners are entered or refused, never rounded.
 */
import type { Point, Segment } from '../../geometry/segment.ts';
import { count } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { halves, millimetres } from './arc.ts';
import { cornerBetween } from './compensated-corner.ts';
import { beside, type Compensation, centreBetween, type Element, elementOf, type Move } from './element.ts';
import type { Action, Block } from './program.ts';
import { type BlockOutcome, done, fault, namedBehind, type ReadFault } from './read-outcome.ts';

export interface Compensator {
  readonly isOn: () => boolean;
  /** From the next move on, which has to be straight. */
  readonly switchOn: (compensation: Compensation) => void;
  /** With the next move, which has to be straight. */
  readonly switchOff: () => void;
  readonly move: (move: Move) => BlockOutcome;
  /** Everything that is not a move goes through here too, so that the order of the program is kept. */
  readonly pass: (action: Action) => void;
  /** The program has ended in this block. */
  readonly finish: (block: Block) => BlockOutcome;
}

/** The move that waits. An entry begins on the programmed path, another move where its corner left it. */
interface Waiting {
  readonly kind: 'entry' | 'element';
  readonly element: Element;
  readonly start: Point;
}

type State =
  | { readonly kind: 'off' }
  | { readonly kind: 'starting'; readonly compensation: Compensation }
  | { readonly kind: 'on'; readonly compensation: Compensation; readonly waiting: Waiting }
  | { readonly kind: 'ending'; readonly compensation: Compensation; readonly waiting: Waiting };

/** What the machine holds: its state, and what waits behind the waiting move. */
interface Track {
  readonly emit: (action: Action) => void;
  state: State;
  queue: Action[];
}

/** `emit` takes the actions in the order of the program. */
export const compensator = (emit: (action: Action) => void): Compensator => {
  const track: Track = { emit, state: { kind: 'off' }, queue: [] };
  return {
    isOn: () => track.state.kind !== 'off',
    switchOn: (compensation) => {
      track.state = { kind: 'starting', compensation };
    },
    switchOff: () => switchOff(track),
    move: (move) => take(move, track),
    pass: (action) => {
      if (track.state.kind === 'on' || track.state.kind === 'ending') track.queue.push(action);
      else emit(action);
    },
    finish: (block) => finish(block, track),
  };
};

const switchOff = (track: Track): void => {
  if (track.state.kind === 'starting') track.state = { kind: 'off' };
  else if (track.state.kind === 'on') track.state = { ...track.state, kind: 'ending' };
};

const take = (move: Move, track: Track): BlockOutcome => {
  const { state } = track;
  if (state.kind === 'starting') return begin(move, state.compensation, track);
  if (state.kind === 'on') return follow(move, state, track);
  if (state.kind === 'ending') return end(move, state, track);
  track.emit(plain(move, move.programmed));
  return done;
};

const finish = (block: Block, track: Track): BlockOutcome => {
  const { state } = track;
  if (state.kind === 'on' || state.kind === 'ending') settle(state, state.waiting.element.endDirection, track);
  if (state.kind === 'off' || state.kind === 'ending') return done;
  return fault('compensation-left-on', block, (named) => say`${{ block: named }} ends the program while compensation is on.`, {
    remedy: say`Write G40 on the lead-out of the last contour.`,
  });
};

const begin = (move: Move, compensation: Compensation, track: Track): BlockOutcome => {
  const { programmed } = move;
  if (programmed.kind === 'arc') return notStraight(move.block, 'on');
  const length = Math.hypot(programmed.to.x - programmed.from.x, programmed.to.y - programmed.from.y);
  if (length + compensation.digit < compensation.offset) return shortApproach(move.block, length, compensation);
  const made = elementOf(move, programmed, compensation);
  if (made.kind === 'tight') return tightArc(move.block, made.radius, compensation);
  track.state = { kind: 'on', compensation, waiting: { kind: 'entry', element: made.element, start: programmed.from } };
  return done;
};

/** A full circle goes in two halves, because an arc without a chord has no ends to work corners out from. */
const follow = (move: Move, { compensation, waiting }: Extract<State, { kind: 'on' }>, track: Track): BlockOutcome => {
  const { programmed } = move;
  const parts = programmed.kind === 'arc' && programmed.from === programmed.to ? halves(programmed) : [programmed];
  let before = waiting;
  for (const part of parts) {
    const made = elementOf(move, part, compensation);
    if (made.kind === 'tight') return tightArc(move.block, made.radius, compensation);
    const joined = join(before, made.element, compensation, track);
    if (joined.kind === 'fault') return joined;
    before = joined.waiting;
  }
  track.state = { kind: 'on', compensation, waiting: before };
  return done;
};

/** Joins the waiting move to the next one, lets it go, and gives what waits now. */
const join = (
  waiting: Waiting,
  next: Element,
  compensation: Compensation,
  track: Track,
): { readonly kind: 'joined'; readonly waiting: Waiting } | ReadFault => {
  const spot = next.programmed.from;
  if (waiting.kind === 'entry') {
    const start = beside(spot, next.startDirection, compensation.signed);
    send(waiting, start, compensation, track);
    release(track);
    return { kind: 'joined', waiting: { kind: 'element', element: next, start } };
  }
  const corner = cornerBetween(waiting.element, waiting.start, next, compensation);
  if (corner.kind !== 'joined') return cornerFault(corner.kind, waiting.element, next, compensation);
  send(waiting, corner.leave, compensation, track);
  for (const centre of corner.extra) track.emit(compensated(waiting.element, { kind: 'line', from: spot, to: spot }, centre, compensation));
  release(track);
  return { kind: 'joined', waiting: { kind: 'element', element: next, start: corner.enter } };
};

/** The last compensated move ends square to its own path, and the leaving move runs from there to where it was programmed. */
const end = (move: Move, state: Extract<State, { kind: 'ending' }>, track: Track): BlockOutcome => {
  const { programmed } = move;
  if (programmed.kind === 'arc') return notStraight(move.block, 'off');
  const { element, kind } = state.waiting;
  if (kind === 'entry') return nothingBetween(move.block);
  const from = settle(state, element.endDirection, track);
  if (from.x !== programmed.to.x || from.y !== programmed.to.y) track.emit(plain(move, { kind: 'line', from, to: programmed.to }));
  track.state = { kind: 'off' };
  return done;
};

const settle = ({ waiting, compensation }: Extract<State, { kind: 'on' | 'ending' }>, direction: Point, track: Track): Point => {
  const at = beside(waiting.element.programmed.to, direction, compensation.signed);
  send(waiting, at, compensation, track);
  release(track);
  return at;
};

const send = (waiting: Waiting, to: Point, compensation: Compensation, track: Track): void => {
  const { element, start } = waiting;
  const centres: readonly Segment[] =
    waiting.kind === 'entry' ? [{ kind: 'line', from: start, to }] : centreBetween(element, start, to, compensation);
  for (const centre of centres) track.emit(compensated(element, element.programmed, centre, compensation));
};

const release = (track: Track): void => {
  for (const action of track.queue) track.emit(action);
  track.queue.length = 0;
};

const compensated = (move: Move, programmed: Segment, centre: Segment, { register, side }: Compensation): Action => ({
  kind: 'move',
  block: move.block.index,
  rapid: move.rapid,
  programmed,
  centre,
  condition: move.condition,
  register,
  side,
});

const plain = (move: Move, centre: Segment): Action => ({
  kind: 'move',
  block: move.block.index,
  rapid: move.rapid,
  programmed: move.programmed,
  centre,
  condition: move.condition,
});

/** Some controls end the approach square to the leaving move, others in the programmed point: the offset apart. */
const nothingBetween = (block: Block): BlockOutcome =>
  fault(
    'compensation-without-contour',
    block,
    (named) => say`${{ block: named }} switches compensation off in the move behind the one that switched it on: no contour lies between.`,
    { remedy: say`Cut the contour between G41 or G42 and G40, or take both out.` },
  );

const notStraight = (block: Block, way: 'on' | 'off'): BlockOutcome =>
  way === 'on'
    ? fault('compensation-on-an-arc/on', block, (named) => say`${{ block: named }} switches compensation on on an arc.`, {
        remedy: say`Switch it on on a straight move.`,
      })
    : fault('compensation-on-an-arc/off', block, (named) => say`${{ block: named }} switches compensation off on an arc.`, {
        remedy: say`Switch it off on a straight move.`,
      });

const shortApproach = (block: Block, length: number, { offset, register }: Compensation): BlockOutcome =>
  fault(
    'approach-too-short',
    block,
    (named) =>
      say`${{ block: named }} switches compensation on over ${{ length: millimetres(length) }}, less than the offset of ${{ offset: millimetres(offset) }} in register ${{ register: count(register) }}, so the wire is already in the contour.`,
    { remedy: say`Start the lead-in further from the contour.` },
  );

const tightArc = (block: Block, radius: number, { offset, register }: Compensation): BlockOutcome =>
  fault(
    'arc-tighter-than-offset',
    block,
    (named) =>
      say`${{ block: named }} has an inside arc of radius ${{ radius: millimetres(radius) }}, which the offset of ${{ offset: millimetres(offset) }} in register ${{ register: count(register) }} cannot follow.`,
    { remedy: say`Use a finer wire, a smaller offset, or a contour opened by the offset.` },
  );

const cornerFault = (kind: 'not entered' | 'turns back', first: Element, second: Element, { offset, register }: Compensation): ReadFault =>
  kind === 'turns back'
    ? fault(
        'path-turns-back',
        second.block,
        (named) => say`${{ block: named }} turns back along the move before it with compensation on.`,
        { remedy: say`Switch compensation off before turning round.` },
      )
    : fault(
        'inside-corner-not-entered',
        second.block,
        (named) =>
          say`${{ block: named }} begins at an inside corner that the offset of ${{ offset: millimetres(offset) }} in register ${{ register: count(register) }} cannot enter: its path does not meet that of the move before it (${{ before: namedBehind(first.block) }}).`,
        { remedy: say`Lengthen the two moves, or use a contour opened by the offset.` },
      );
