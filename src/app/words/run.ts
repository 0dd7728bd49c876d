/** What the pages at the machine say. */
import { count, name as given, list } from '../../text/part.ts';
import { NOTHING, phrases, say } from '../../text/say.ts';
import { ready } from './ready.ts';

const asides = phrases('page.run-aside', { all: (parts: readonly string[]) => say` (${{ parts: list(parts.map(ready)) }})` });

const run = phrases('page.run', {
  title: (job: string) => say`At the machine: ${{ job: given(job) }}`,
  back: say`Back to the sheet`,
  next: say`Next`,
  nothingNext: say`All stops are ticked off.`,
  noStops: say`Nobody is needed between start and end.`,
  stops: say`Stops`,
  done: say`Done`,
  tick: (what: string) => say`Done: ${{ what: ready(what) }}`,
  untick: (what: string) => say`Not done after all: ${{ what: ready(what) }}`,
  tickedAt: (time: string) => say`Ticked off ${{ time: ready(time) }}`,
  /** What else is to be said of a stop, after its sentence. */
  aside: (parts: readonly string[]) => (parts.length === 0 ? NOTHING : asides.all(parts)),
  night: say`at night`,
  line: (line: number) => say`line ${{ line: count(line) }}`,
  notRunnable: say`This job has no program that is proven. Nothing may be run.`,
});

export const runWords = {
  ...run,
  cautions: phrases('page.run-caution', {
    tank: say`Before you reach into the tank: wire stopped, generator off, fluid still. Follow the manual of the machine.`,
    slug: say`A slug that falls can break the lower nozzle or a finger. Hold it before its tab is cut.`,
  }),
  measure: phrases('page.run-measure', {
    title: say`Measured`,
    contour: say`Contour`,
    size: say`Measured size`,
    wanted: say`Size wanted`,
    degrees: say`Part at, °C`,
    oneSide: say`Only one of its sides is cut`,
    ask: say`What now?`,
    registers: say`New offset registers`,
    inFull: say`The correction in full`,
    register: say`Register`,
    before: say`now`,
    after: say`set it to`,
    safe: say`These may be set.`,
    notSafe: say`Do not set these: read why.`,
    kept: say`Written down.`,
    unclear: (text: string, readings: readonly string[]) =>
      say`${{ text: ready(text) }} can be ${{ readings: list(readings.map(ready), 'or') }}: write it with its unit or without grouping.`,
  }),
  log: phrases('page.run-log', {
    title: say`Written down`,
    nothing: say`Nothing yet.`,
    note: say`Note`,
    keepNote: say`Write down`,
    broke: say`The wire broke`,
    broken: say`wire broke`,
    time: say`Minutes it really took`,
    keepTime: say`Write down the time`,
    waiting: (n: number) => say`${{ n: count(n) }} not yet with the server; kept in this browser until it is back.`,
  }),
};
