/** Moments on the schedule, minutes of the machine, moves and blocks of the program: each found from the other. Moments count minutes from the start of the run. */
import { firstFrom } from '../../sequence/sequence.ts';
import type { ProgramView, ScheduleView } from '../work/views.ts';

export type Moves = ProgramView['moves'];

/** A stretch of the run: the machine's own minutes go on while the wire moves, and stand while somebody or something is waited for. */
export interface RunStretch {
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
  readonly block?: number | undefined;
  /** What the clock tells of it. */
  readonly event: Event;
}

export interface Timeline {
  readonly stretches: readonly RunStretch[];
  readonly moves: Moves;
  readonly minutes: number;
  /** Minutes from start to finish, waiting included. */
  readonly length: number;
}

/** Where the run is: `share` of the move is done; `moving` says whether the wire goes on. */
export interface Standing {
  readonly stretch: RunStretch;
  /** The stretch after it; none at the end of the run. */
  readonly next?: RunStretch | undefined;
  readonly move: number;
  readonly share: number;
  readonly block?: number | undefined;
  readonly piece: number;
  readonly moving: boolean;
}

/** Nothing that matters is shorter, minutes: moments as large as those of the clock are not exact below it. */
const INSTANT = 1e-6;

/**
 * The clock tells stretches by the block with which they begin, so that its minutes and those of the moves are matched block by
 * block: rounding in one stretch never moves another. Only where a spool ends within a block are minutes counted.
 */
export const timelineOf = (schedule: ScheduleView, program: Pick<ProgramView, 'moves' | 'minutes'>): Timeline => {
  const { moves, minutes } = program;
  const stretches: RunStretch[] = [];
  let [machine, move, piece] = [0, 0, 1];
  for (const { event, next } of withFollowing(schedule.events)) {
    if (event.piece !== piece) [machine, move, piece] = [0, 0, event.piece];
    const [machineFrom, firstMove] = [machine, move];
    const moving = isMoving(event);
    if (moving) {
      const end = next?.block === undefined ? moves.begins.length : Math.max(move, firstOfBlock(moves, next.block));
      const whole = next === undefined || next.block !== event.block;
      const reached = beginOf(moves, end, minutes);
      machine = whole ? reached : machineFrom + event.to - event.from;
      move = whole ? end : Math.max(move, moveAt(moves, machine));
    }
    stretches.push({
      from: event.from - schedule.start,
      to: event.to - schedule.start,
      moving,
      machineFrom,
      machineTo: machine,
      firstMove,
      endMove: moving && machine > beginOf(moves, move, minutes) + INSTANT ? move + 1 : move,
      piece,
      block: event.block,
      event,
    });
  }
  return { stretches, moves, minutes, length: schedule.finish - schedule.start };
};

type Event = ScheduleView['events'][number];

const isMoving = ({ kind }: Event): boolean => kind === 'cutting' || kind === 'travel';

/** For each event the next one of the same piece in which the wire moves. */
const withFollowing = (events: readonly Event[]): readonly { readonly event: Event; readonly next: Event | undefined }[] => {
  let after: Event | undefined;
  const found = events.toReversed().map((event) => {
    const next = after?.piece === event.piece ? after : undefined;
    if (isMoving(event)) after = event;
    return { event, next };
  });
  return found.reverse();
};

/** Minutes of the machine at which a move begins; after the last, those of all together. */
const beginOf = ({ begins }: Moves, move: number, minutes: number): number => begins[move] ?? minutes;

/** The first move of a block, or of the first block after it that moves; all moves where none does. Blocks of moves never fall. */
export const firstOfBlock = ({ block }: Moves, wanted: number): number => firstFrom(block, (b) => b >= wanted);

/** The move that is made at a minute of the machine; the first where there are none before. */
const moveAt = ({ begins }: Moves, machine: number): number => Math.max(0, firstFrom(begins, (begin) => begin > machine + INSTANT) - 1);

export const standingAt = ({ stretches, moves, minutes, length }: Timeline, moment: number): Standing | undefined => {
  const at = Math.min(Math.max(moment, 0), length) + INSTANT;
  const index = Math.max(0, firstFrom(stretches, (s) => s.from > at) - 1);
  const stretch = stretches[index];
  if (stretch === undefined || moves.begins.length === 0) return undefined;
  const { from, to, moving, machineFrom, machineTo, firstMove, endMove, piece } = stretch;
  const part = moving ? shareOf(at - INSTANT - from, to - from) : 0;
  const machine = machineFrom + part * (machineTo - machineFrom);
  const found = moveAt(moves, machine);
  const move = moving ? Math.min(Math.max(found, firstMove), Math.max(firstMove, endMove - 1)) : found;
  const begins = beginOf(moves, move, minutes);
  const share = shareOf(machine - begins, beginOf(moves, move + 1, minutes) - begins);
  const block = moving ? moves.block[move] : (stretch.block ?? moves.block[move]);
  return { stretch, next: stretches[index + 1], move, share, piece, moving, block };
};

/** What lasts no time is done at once. */
const shareOf = (part: number, whole: number): number => (whole > 0 ? Math.min(1, Math.max(0, part / whole)) : 1);

/** The moment at which a move begins, in the stretch that holds it. */
const momentOfMove = ({ moves, minutes }: Timeline, { from, to, machineFrom, machineTo }: RunStretch, move: number): number => {
  const done = beginOf(moves, move, minutes) - machineFrom;
  return done <= 0 ? from : from + shareOf(done, machineTo - machineFrom) * (to - from);
};

/** When a block is first reached; that of the next one that does something where it does nothing itself. */
export const momentOfBlock = (timeline: Timeline, block: number): number => {
  const { stretches, moves } = timeline;
  const standing = stretches.find((s) => !s.moving && s.block === block);
  const move = firstOfBlock(moves, block);
  const own = moves.block[move] === block;
  if (standing !== undefined && !own) return standing.from;
  const at = stretches.findIndex((s) => s.moving && move >= s.firstMove && move < s.endMove);
  const holding = stretches[at];
  if (holding === undefined) return timeline.length;
  if (own) return momentOfMove(timeline, holding, move);
  const waiting = stretches.find((s, i) => i < at && !s.moving && s.block !== undefined && s.block > block);
  return waiting?.from ?? momentOfMove(timeline, holding, move);
};

/** When the next block begins; the end of the run after the last. */
export const nextStep = (timeline: Timeline, moment: number): number => {
  const { moves, length } = timeline;
  const here = standingAt(timeline, moment);
  if (here === undefined) return length;
  const { endMove } = here.stretch;
  if (here.moving)
    for (let move = here.move + 1; move < endMove; move += 1) {
      if (moves.block[move] === here.block) continue;
      const begins = momentOfMove(timeline, here.stretch, move);
      if (begins > moment + INSTANT) return begins;
    }
  return here.next?.from ?? length;
};

/** When this block began; when it has only just begun, when the one before it did. */
export const stepBefore = (timeline: Timeline, moment: number): number => {
  const { moves } = timeline;
  const here = standingAt(timeline, moment - 3 * INSTANT);
  if (here === undefined || moment <= INSTANT) return 0;
  const { from, firstMove, moving } = here.stretch;
  if (!moving) return from;
  let move = here.move;
  while (move > firstMove && moves.block[move - 1] === here.block) move -= 1;
  return move === firstMove ? from : momentOfMove(timeline, here.stretch, move);
};
