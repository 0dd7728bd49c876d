/**
 * Cutter compensation as a machine of one move's memory: where a move ends depends on the next one, so each move waits for
 * its successor, and whatever stands between the two in the program waits behind it. The rules are those of CHECKS I:
 * switched on and off on a straight move, square to the path there; inside corners are entered or refused, never rounded.
 */
import { startDirection } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { halves, millimetres } from './arc.ts';
import { cornerBetween } from './corner.ts';
import { beside, type Compensation, centreBetween, type Element, elementOf, type Move } from './element.ts';
import { done, fault, named, type Outcome } from './outcome.ts';
import type { Action, Block } from './program.ts';

export interface Compensator {
  readonly isOn: () => boolean;
  /** From the next move on, which has to be straight. */
  readonly switchOn: (compensation: Compensation) => void;
  /** With the next move, which has to be straight. */
  readonly switchOff: () => void;
  readonly move: (move: Move) => Outcome;
  /** Everything that is not a move goes through here too, so that the order of the program is kept. */
  readonly pass: (action: Action) => void;
  /** The program has ended in this block. */
  readonly finish: (block: Block) => Outcome;
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

/** `emit` takes the actions in the order of the program. */
export const compensator = (emit: (action: Action) => void): Compensator => {
  let state: State = { kind: 'off' };
  let queue: Action[] = [];
  const release = (): void => {
    for (const action of queue) emit(action);
    queue = [];
  };

  const send = (waiting: Waiting, end: Point, compensation: Compensation): void => {
    const { element, start } = waiting;
    const centres: readonly Segment[] =
      waiting.kind === 'entry' ? [{ kind: 'line', from: start, to: end }] : centreBetween(element, start, end, compensation);
    for (const centre of centres) emit(compensated(element, element.programmed, centre, compensation));
  };

  /** Joins the waiting move to the next one and lets it go. */
  const join = (waiting: Waiting, next: Element, compensation: Compensation): Outcome => {
    if (waiting.kind === 'entry') {
      const start = beside(next.programmed.from, next.startDirection, compensation.signed);
      send(waiting, start, compensation);
      state = { kind: 'on', compensation, waiting: { kind: 'element', element: next, start } };
    } else {
      const corner = cornerBetween(waiting.element, waiting.start, next, compensation);
      if (corner.kind !== 'joined') return cornerFault(corner.kind, waiting.element, next, compensation);
      send(waiting, corner.leave, compensation);
      const spot = next.programmed.from;
      for (const centre of corner.extra) emit(compensated(waiting.element, { kind: 'line', from: spot, to: spot }, centre, compensation));
      state = { kind: 'on', compensation, waiting: { kind: 'element', element: next, start: corner.enter } };
    }
    release();
    return done;
  };

  const compensatedMove = (move: Move, { compensation, waiting }: Extract<State, { kind: 'on' }>): Outcome => {
    const { programmed } = move;
    const whole = programmed.kind === 'arc' && programmed.from === programmed.to;
    const parts = whole ? halves(programmed) : [programmed];
    let before = waiting;
    for (const part of parts) {
      const made = elementOf(move, part, compensation);
      if (made.kind === 'tight') return tightArc(move.block, made.radius, compensation);
      const outcome = join(before, made.element, compensation);
      if (outcome.kind === 'fault') return outcome;
      before = (state as Extract<State, { kind: 'on' }>).waiting;
    }
    return done;
  };

  const begin = (move: Move, compensation: Compensation): Outcome => {
    if (move.programmed.kind === 'arc') return notStraight(move.block, 'on');
    const length = Math.hypot(move.programmed.to.x - move.programmed.from.x, move.programmed.to.y - move.programmed.from.y);
    if (length + compensation.digit < compensation.offset) return shortApproach(move.block, length, compensation);
    const made = elementOf(move, move.programmed, compensation);
    if (made.kind === 'tight') return tightArc(move.block, made.radius, compensation);
    state = { kind: 'on', compensation, waiting: { kind: 'entry', element: made.element, start: move.programmed.from } };
    return done;
  };

  /** The last compensated move ends square to its own path, and the leaving move runs from there to where it was programmed. */
  const end = (move: Move, { compensation, waiting }: Extract<State, { kind: 'ending' }>): Outcome => {
    if (move.programmed.kind === 'arc') return notStraight(move.block, 'off');
    const from = settle(waiting, compensation, waiting.kind === 'entry' ? startDirection(move.programmed) : waiting.element.endDirection);
    if (from.x !== move.programmed.to.x || from.y !== move.programmed.to.y)
      emit(plain(move, { kind: 'line', from, to: move.programmed.to }));
    state = { kind: 'off' };
    return done;
  };

  const settle = (waiting: Waiting, compensation: Compensation, direction: Point): Point => {
    const at = beside(waiting.element.programmed.to, direction, compensation.signed);
    send(waiting, at, compensation);
    release();
    return at;
  };

  return {
    isOn: () => state.kind !== 'off',
    switchOn: (compensation) => {
      state = { kind: 'starting', compensation };
    },
    switchOff: () => {
      if (state.kind === 'starting') state = { kind: 'off' };
      else if (state.kind === 'on') state = { ...state, kind: 'ending' };
    },
    move: (move) => {
      if (state.kind === 'off') emit(plain(move, move.programmed));
      else if (state.kind === 'starting') return begin(move, state.compensation);
      else if (state.kind === 'on') return compensatedMove(move, state);
      else return end(move, state);
      return done;
    },
    pass: (action) => {
      if (state.kind === 'on' || state.kind === 'ending') queue.push(action);
      else emit(action);
    },
    finish: (block) => {
      if (state.kind === 'on' || state.kind === 'ending') settle(state.waiting, state.compensation, state.waiting.element.endDirection);
      if (state.kind === 'on' || state.kind === 'starting') {
        return fault(
          block,
          'compensation-left-on',
          'ends the program while compensation is on',
          'Write G40 on the way out of the last contour.',
        );
      }
      return done;
    },
  };
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

const notStraight = (block: Block, way: 'on' | 'off'): Outcome =>
  fault(block, 'compensation-on-an-arc', `switches compensation ${way} on an arc`, `Switch it ${way} on a straight move.`);

const shortApproach = (block: Block, length: number, { offset, register }: Compensation): Outcome =>
  fault(
    block,
    'approach-too-short',
    `switches compensation on over ${millimetres(length)}, less than the offset of ${millimetres(offset)} in register ${register}, so the wire stands in the contour before it starts`,
    'Begin the approach further from the contour.',
  );

const tightArc = (block: Block, radius: number, { offset, register }: Compensation): Outcome =>
  fault(
    block,
    'arc-tighter-than-offset',
    `has an inside arc of radius ${millimetres(radius)}, which the offset of ${millimetres(offset)} in register ${register} cannot follow`,
    'Use a finer wire, a smaller offset, or a contour opened by the offset.',
  );

const cornerFault = (kind: 'not entered' | 'turns back', first: Element, second: Element, { offset, register }: Compensation): Outcome =>
  kind === 'turns back'
    ? fault(
        second.block,
        'path-turns-back',
        'turns back along the move before it while compensation is on',
        'Switch compensation off before turning round.',
      )
    : fault(
        second.block,
        'inside-corner-not-entered',
        `begins at an inside corner that the offset of ${millimetres(offset)} in register ${register} cannot enter: its path does not meet that of the move before it (${named(
          first.block,
        )
          .replace(/^The b/, 'b')
          .replace(/^B/, 'b')})`,
        'Lengthen the two moves, or use a contour opened by the offset.',
      );
