/** Moments on the clock, minutes of the machine, moves and blocks of the program: each found from the other. Moments count minutes from the start of the run. */
import type { ClockView, ProgramView } from '../work/views.ts';

export type Moves = ProgramView['moves'];

/** A stretch of the run: the machine's own minutes go on while the wire moves, and stand while somebody or something is waited for. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly moving: boolean;
  /** Minutes of the machine within its piece. */
  readonly machineFrom: number;
  readonly machineTo: number;
  /** Moves from `firstMove` up to but not including `endMove` are made in it, or partly made. */
  readonly firstMove: number;
  readonly endMove: number;
  readonly piece: number;
  readonly block?: number;
}

export interface Timeline {
  readonly stretches: readonly Stretch[];
  readonly moves: Moves;
  readonly minutes: number;
  /** Minutes from start to finish, waiting included. */
  readonly length: number;
}

/** Where the run is: `share` of the move is done; `moving` says whether the wire goes on. */
export interface Standing {
  readonly stretch: number;
  readonly move: number;
  readonly share: number;
  readonly block?: number;
  readonly piece: number;
  readonly moving: boolean;
}

/** Nothing that matters is shorter, minutes: moments as large as those of the clock are not exact below it. */
const INSTANT = 1e-6;

/**
 * The clock tells stretches by the block with which they begin, so that its minutes and those of the moves are matched block by
 * block: rounding in one stretch never moves another. Only where a spool ends within a block are minutes counted.
 */
export const timelineOf = (clock: ClockView, program: Pick<ProgramView, 'moves' | 'minutes'>): Timeline => {
  const { moves, minutes } = program;
  const following = followingMoves(clock.events);
  const stretches: Stretch[] = [];
  let [machine, move, piece] = [0, 0, 1];
  for (const [i, event] of clock.events.entries()) {
    if (event.piece !== piece) [machine, move, piece] = [0, 0, event.piece];
    const [machineFrom, firstMove] = [machine, move];
    const moving = isMoving(event);
    if (moving) {
      const next = following[i];
      const end = next?.block === undefined ? moves.begins.length : Math.max(move, firstOfBlock(moves, next.block));
      const whole = next === undefined || next.block !== event.block;
      const reached = end < moves.begins.length ? moves.begins[end] : minutes;
      machine = whole ? reached : machineFrom + event.to - event.from;
      move = whole ? end : Math.max(move, moveAt(moves, machine));
    }
    stretches.push({
      from: event.from - clock.start,
      to: event.to - clock.start,
      moving,
      machineFrom,
      machineTo: machine,
      firstMove,
      endMove: moving && machine > (moves.begins[move] ?? minutes) + INSTANT ? move + 1 : move,
      piece,
      ...(event.block === undefined ? {} : { block: event.block }),
    });
  }
  return { stretches, moves, minutes, length: clock.finish - clock.start };
};

const isMoving = ({ kind }: ClockView['events'][number]): boolean => kind === 'cutting' || kind === 'travel';

/** For each event the next one of the same piece in which the wire moves. */
const followingMoves = (events: ClockView['events']): readonly (ClockView['events'][number] | undefined)[] => {
  const found: (ClockView['events'][number] | undefined)[] = new Array(events.length);
  let next: ClockView['events'][number] | undefined;
  for (let i = events.length - 1; i >= 0; i -= 1) {
    found[i] = next?.piece === events[i].piece ? next : undefined;
    if (isMoving(events[i])) next = events[i];
  }
  return found;
};

/** The first move of a block, or of the first block after it that moves; all moves where none does. Blocks of moves never fall. */
export const firstOfBlock = ({ block }: Moves, wanted: number): number => lowest(block.length, (i) => block[i] >= wanted);

/** The move that is made at a minute of the machine; the first where there are none before. */
const moveAt = ({ begins }: Moves, machine: number): number => Math.max(0, lowest(begins.length, (i) => begins[i] > machine + INSTANT) - 1);

export const standingAt = ({ stretches, moves, minutes, length }: Timeline, moment: number): Standing | undefined => {
  if (stretches.length === 0 || moves.begins.length === 0) return undefined;
  const at = Math.min(Math.max(moment, 0), length) + INSTANT;
  const index = Math.max(0, lowest(stretches.length, (i) => stretches[i].from > at) - 1);
  const { from, to, moving, machineFrom, machineTo, firstMove, endMove, piece, block } = stretches[index];
  const part = moving ? shareOf(at - INSTANT - from, to - from) : 0;
  const machine = machineFrom + part * (machineTo - machineFrom);
  const found = moveAt(moves, machine);
  const move = moving ? Math.min(Math.max(found, firstMove), Math.max(firstMove, endMove - 1)) : found;
  const ends = move + 1 < moves.begins.length ? moves.begins[move + 1] : minutes;
  const share = shareOf(machine - moves.begins[move], ends - moves.begins[move]);
  const current = moving ? moves.block[move] : (block ?? moves.block[move]);
  return { stretch: index, move, share, piece, moving, block: current };
};

/** What lasts no time is done at once. */
const shareOf = (part: number, whole: number): number => (whole > 0 ? Math.min(1, Math.max(0, part / whole)) : 1);

/** The moment at which a move begins, in the stretch that holds it. */
const momentOfMove = ({ stretches, moves }: Timeline, stretch: number, move: number): number => {
  const { from, to, machineFrom, machineTo } = stretches[stretch];
  const done = moves.begins[move] - machineFrom;
  return done <= 0 ? from : from + shareOf(done, machineTo - machineFrom) * (to - from);
};

/** When a block is first reached; that of the next one that does something where it does nothing itself. */
export const momentOfBlock = (timeline: Timeline, block: number): number => {
  const { stretches, moves } = timeline;
  const standing = stretches.find((s) => !s.moving && s.block === block);
  const move = firstOfBlock(moves, block);
  const own = moves.block[move] === block;
  if (standing !== undefined && !own) return standing.from;
  const holding = stretches.findIndex((s) => s.moving && move >= s.firstMove && move < s.endMove);
  if (holding < 0) return timeline.length;
  if (own) return momentOfMove(timeline, holding, move);
  const waiting = stretches.find((s, i) => i < holding && !s.moving && s.block !== undefined && s.block > block);
  return waiting?.from ?? momentOfMove(timeline, holding, move);
};

/** When the next block begins; the end of the run after the last. */
export const nextStep = (timeline: Timeline, moment: number): number => {
  const { stretches, moves, length } = timeline;
  const here = standingAt(timeline, moment);
  if (here === undefined) return length;
  const { endMove } = stretches[here.stretch];
  if (here.moving)
    for (let move = here.move + 1; move < endMove; move += 1) {
      if (moves.block[move] === here.block) continue;
      const begins = momentOfMove(timeline, here.stretch, move);
      if (begins > moment + INSTANT) return begins;
    }
  return stretches[here.stretch + 1]?.from ?? length;
};

/** When this block began; when it has only just begun, when the one before it did. */
export const stepBefore = (timeline: Timeline, moment: number): number => {
  const { stretches, moves } = timeline;
  const here = standingAt(timeline, moment - 3 * INSTANT);
  if (here === undefined || moment <= INSTANT) return 0;
  const { from, firstMove, moving } = stretches[here.stretch];
  if (!moving) return from;
  let move = here.move;
  while (move > firstMove && moves.block[move - 1] === here.block) move -= 1;
  return move === firstMove ? from : momentOfMove(timeline, here.stretch, move);
};

/** The lowest index from which on a condition holds; `count` where it never does. */
const lowest = (count: number, holds: (index: number) => boolean): number => {
  let [low, high] = [0, count];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
};
