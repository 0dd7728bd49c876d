/** What the pages at the machine say. */
import { count, name as given, list } from '../../text/part.ts';
import { NOTHING, phrases, say } from '../../text/say.ts';
import { ready } from './ready.ts';

const asides = phrases('page.run-aside', { all: (parts: readonly string[]) => say` (${{ parts: list(parts.map(ready)) }})` });

const run = phrases('page.run', {
  title: (job: string) => say`At the machine: ${{ job: given(job) }}`,
  back: say`Back to the sheet`,
  next: say`Next`,
  nothingNext: say`All stops are done.`,
  working: say`Working out the stops of the run…`,
  noStops: say`No attendance needed during the run.`,
  stops: say`Stops`,
  done: say`Done`,
  tick: (what: string) => say`Done: ${{ what: ready(what) }}`,
  untick: (what: string) => say`Not done: ${{ what: ready(what) }}`,
  tickedAt: (time: string) => say`Done ${{ time: ready(time) }}`,
  /** What else is to be said of a stop, after its sentence. */
  aside: (parts: readonly string[]) => (parts.length === 0 ? NOTHING : asides.all(parts)),
  night: say`outside shift hours`,
  line: (line: number) => say`line ${{ line: count(line) }}`,
  notRunnable: say`This job has no proven program. Do not run it.`,
});

export const runWords = {
  ...run,
  cautions: phrases('page.run-caution', {
    tank: say`Before reaching into the tank: wire stopped, generator off, fluid still. Follow the machine’s manual.`,
    slug: say`A falling slug can break the lower nozzle or a finger. Secure it before its tab is cut.`,
  }),
  measure: phrases('page.run-measure', {
    title: say`Measurement`,
    contour: say`Contour`,
    size: say`Measured size`,
    wanted: say`Nominal size`,
    degrees: say`Part temperature, °C`,
    oneSide: say`One cut face only`,
    ask: say`Work out correction`,
    registers: say`New offset registers`,
    inFull: say`Full correction`,
    register: say`Register`,
    before: say`now`,
    after: say`set to`,
    safe: say`Safe to set.`,
    notWorth: say`Leave the registers as they are: the difference is less than the measuring uncertainty.`,
    anyway: say`It is meant so: work it out`,
    notSafe: say`Do not set these registers: see reason.`,
    kept: say`Logged.`,
    unclear: (text: string, readings: readonly string[]) =>
      say`${{ text: ready(text) }} can be ${{ readings: list(readings.map(ready), 'or') }}: enter it with its unit or without grouping.`,
  }),
  log: phrases('page.run-log', {
    title: say`Log`,
    nothing: say`No entries yet.`,
    note: say`Note`,
    keepNote: say`Add note`,
    broke: say`Wire broke`,
    broken: say`wire broke`,
    time: say`Actual time, min`,
    keepTime: say`Log time`,
    waiting: (n: number) => say`${{ n: count(n) }} not sent yet; kept in this browser until the server is back.`,
  }),
};
