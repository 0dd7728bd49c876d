/** The table of stops with the time of day at which each comes up. */

import { controlUnit, hoursOf, type JobFacts } from '../../result/facts.ts';
import type { ProgramFacts } from '../../result/outcome-facts.ts';
import { filled, sideBySide } from '../../sequence/sequence.ts';
import { moment, type Part } from '../../text/part.ts';
import { NOTHING, phrases, say, sentences } from '../../text/say.ts';
import { column } from '../paper.ts';
import { stopTable } from './job-tables.ts';
import { timeText } from './schedule-text.ts';

/** As the plain table where the run is not scheduled. */
export const stopsOnSchedule = (facts: JobFacts, { stops }: Pick<ProgramFacts['proof'], 'stops'>): ReturnType<typeof stopTable> => {
  const { quantity, datum } = facts.asked;
  const table = stopTable(stops, controlUnit(facts), datum);
  const schedule = hoursOf(facts)?.schedule;
  if (table === undefined || schedule === undefined) return table;
  // The same stop comes again with every piece: the first one is told.
  const first = schedule.events.filter((e) => e.needsPerson && e.piece === 1 && e.kind !== 'spool change');
  const timeOfDay = new Map(first.map((e) => [e.block, timeText(e.from, schedule)]));
  const [stop, ...others] = filled(table.columns, 'a table has a column');
  const note = (quantity > 1 ? words.firstPiece : words.estimated)(moment(schedule.start));
  return {
    ...table,
    columns: [stop, column(words.timeOfDay, 1.1), ...others],
    rows: sideBySide(table.rows, stops.slice(0, table.rows.length)).map(([row, { block }]) => [
      ...row.slice(0, 1),
      timeOfDay.get(block) ?? NOTHING,
      ...row.slice(1),
    ]),
    note: sentences([note, table.note]),
  };
};

const words = phrases('stops-on-schedule', {
  timeOfDay: say`Time`,
  estimated: (start: Part) => say`Times for a start on ${{ start }}: estimated, less certain later in the run.`,
  firstPiece: (start: Part) => say`Times for a start on ${{ start }}, first piece: estimated, less certain later in the run.`,
});
