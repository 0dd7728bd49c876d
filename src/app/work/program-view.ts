/** The program block by block: its text, what its words mean, and where the wire is, when. */
import { replayOf } from '../../job/handout/replay.ts';
import type { JobRun } from '../../job/job-run.ts';
import type { Answered } from '../../job/pipeline/answer.ts';
import { machineOf } from '../../job/shop.ts';
import { segmentsView } from './chain-view.ts';
import type { ProgramView } from './views.ts';

export const programView = ({ facts, proven }: Answered, run: JobRun): ProgramView | undefined => {
  const { outcome } = facts;
  if (outcome.kind !== 'program' || proven === undefined) return undefined;
  const { cut, program } = outcome;
  const { read } = proven;
  const replay = replayOf(read, cut.plan, machineOf(run.shop).travelFeed);
  return {
    text: program.text,
    units: program.units,
    dialect: program.dialect,
    registers: [...program.registers],
    words: run.dialect.words,
    moves: {
      block: Uint32Array.from(replay.moves, (m) => m.block),
      segments: segmentsView(replay.moves.map((m) => m.centre)),
      cutting: Uint8Array.from(replay.moves, (m) => (m.pass > 0 ? 1 : 0)),
      begins: Float64Array.from(replay.moves, (m) => m.begins),
      pass: Uint8Array.from(replay.moves, (m) => m.pass),
    },
    falls: program.proof.loose.map(({ block, role, loop }) => ({ block, role, loop })),
    minutes: replay.minutes,
    kerf: replay.kerf,
  };
};
