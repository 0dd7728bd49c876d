/** What strip, replay, program text, deviation, wall, price curve and what-ifs say. */
import { contour, count, name as given } from '../../text/part.ts';
import { skimName } from '../../text/pass-name.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { ready } from './ready.ts';

type MarkKind = 'thread' | 'slug' | 'tab' | 'spool' | 'load' | 'stop';

const MARKS: Readonly<Record<MarkKind, Text>> = phrases('page.strip-mark', {
  thread: say`thread`,
  slug: say`slug`,
  tab: say`tab`,
  spool: say`spool`,
  load: say`load`,
  stop: say`stop`,
});

const runs = phrases('page.strip-run', {
  alone: (start: string, finish: string) => say`Run from ${{ start: ready(start) }} to ${{ finish: ready(finish) }}: no attendance needed.`,
  byDay: (start: string, finish: string, stops: number) =>
    say`Run from ${{ start: ready(start) }} to ${{ finish: ready(finish) }}: operator needed at ${{ stops: count(stops, 'stop') }}, none outside shift hours.`,
  byNight: (start: string, finish: string, stops: number, night: number) =>
    say`Run from ${{ start: ready(start) }} to ${{ finish: ready(finish) }}: operator needed at ${{ stops: count(stops, 'stop') }}, ${{ night: count(night) }} outside shift hours.`,
  preview: (start: string, night: Text) =>
    say`Preview, start ${{ start: ready(start) }}: every stop moved alike, ${{ night }} outside shift hours. Release to recalculate with waiting times.`,
  stops: (n: number) => say`${{ n: count(n, 'stop') }}`,
  noStop: say`no stop`,
});

const runOf = (start: string, finish: string, needed: number, night: number): Text => {
  if (needed === 0) return runs.alone(start, finish);
  return night === 0 ? runs.byDay(start, finish, needed) : runs.byNight(start, finish, needed, night);
};

const strip = phrases('page.strip', {
  title: say`Run schedule`,
  mark: (kind: MarkKind) => MARKS[kind],
  night: say`unattended`,
  cutting: say`cutting`,
  atNight: say`outside shift hours`,
  picture: runOf,
  start: say`Run start`,
  startAt: (day: string, timeOfDay: string) => say`${{ day: ready(day) }} ${{ timeOfDay: ready(timeOfDay) }}`,
  startHelp: say`Drag the start along the strip, or use the arrow keys: 15 minutes each, an hour with Shift.`,
  preview: (start: string, night: number) => runs.preview(start, night === 0 ? runs.noStop : runs.stops(night)),
  moment: say`Simulation time`,
  stops: (n: number) => say`All ${{ stops: count(n, 'stop') }} with times`,
  noStops: say`No attendance needed during the run.`,
  show: (timeOfDay: string) => say`Show ${{ timeOfDay: ready(timeOfDay) }} in the picture`,
  more: (n: number) => say`and ${{ n: count(n) }} more`,
  near: (n: number) => say`${{ n: count(n) }} more nearby.`,
  step: say`run start`,
  first: say`The first two weeks are shown.`,
});

export const stripWords = {
  ...strip,
  columns: phrases('page.strip-column', { timeOfDay: say`Time`, kind: say`Stop`, what: say`Action`, show: say`Show` }),
};

export const replayWords = phrases('page.replay', {
  title: say`Cut simulation`,
  play: say`Play`,
  pause: say`Pause`,
  again: say`Play again`,
  back: say`Previous block`,
  forward: say`Next block`,
  leave: say`Close`,
  leaveIt: say`Close the simulation`,
  speed: say`Speed, min per s`,
  says: (timeOfDay: string, what: string) => say`${{ timeOfDay: ready(timeOfDay) }} · ${{ what: ready(what) }}`,
  cutting: (pass: number, line: string, share: string) =>
    say`pass ${{ pass: count(pass) }}, line ${{ line: ready(line) }}, ${{ share: ready(share) }} of its length`,
  travel: (line: string) => say`rapid, wire out, line ${{ line: ready(line) }}`,
  stands: (what: string) => say`stopped: ${{ what: ready(what) }}`,
  piece: (n: number) => say` · piece ${{ n: count(n) }}`,
  waits: say`waiting for an operator`,
  ended: say`finished`,
  none: say`No proven program to simulate yet.`,
  shortened: say`Stops and waiting times are shortened.`,
  stepped: say`Your system asks for reduced motion: the cut advances block by block.`,
});

const takings = phrases('page.program-taken', {
  one: say`1 program removed`,
  more: (n: number) => say`${{ n: count(n) }} programs removed`,
});

const texts = phrases('page.program-text', {
  one: say`Program text, one line`,
  more: (lines: string) => say`Program text, ${{ lines: ready(lines) }} lines`,
});

const program = phrases('page.program', {
  title: say`Program`,
  about: (lines: string, dialect: string, units: string) =>
    say`${{ lines: ready(lines) }} lines, control dialect ${{ dialect: ready(dialect) }}, in ${{ units: ready(units) }}.`,
  text: say`Program text`,
  help: say`Arrow keys move from line to line, Enter shows the line in the picture.`,
  find: say`Find in the program`,
  next: say`Next`,
  before: say`Previous`,
  found: (n: string, of: string) => say`${{ n: ready(n) }} of ${{ of: ready(of) }}`,
  notFound: say`not found`,
  copy: say`Copy`,
  copied: say`Copied`,
  notCopied: say`The browser did not allow copying.`,
  download: say`Download`,
  meaning: (line: string, meaning: Text) => say`Line ${{ line: ready(line) }}: ${{ meaning }}`,
  saysNothing: (line: string) => say`Line ${{ line: ready(line) }}: no action`,
  none: say`No program yet.`,
  other: say`Programs from other sources`,
  otherLead: say`Drop programs anywhere on this sheet, or choose files: each is read word by word, checked against this drawing with the set-up of this job, and kept with the job.`,
  choose: say`Choose programs…`,
  came: (when: string) => say`added ${{ when: ready(when) }}`,
  reading: say`reading…`,
  unread: say`could not be read`,
  unreadHelp: say`The server did not send it, or reading failed. Nothing is lost: try again.`,
  again: say`Try again`,
  notKeptYet: say`Not saved yet: the server does not answer. It is sent again automatically; until then it is in this tab only.`,
  refused: (sentence: string) => say`Not saved: ${{ sentence: ready(sentence) }}`,
  downloadOf: (name: string) => say`Download ${{ name: given(name) }}`,
  remove: say`Remove`,
  removeOf: (name: string) => say`Remove ${{ name: given(name) }}`,
  wasTaken: (name: string) => say`${{ name: given(name) }} was removed from this job.`,
  putBack: say`Restore`,
  putBackOf: (name: string) => say`Restore ${{ name: given(name) }}`,
  taken: (n: number) => (n === 1 ? takings.one : takings.more(n)),
  removedAt: (when: string) => say`removed ${{ when: ready(when) }}`,
  serverGone: say`The server does not answer; nothing was changed. Try again.`,
  itsText: (n: number, lines: string) => (n === 1 ? texts.one : texts.more(lines)),
  emptyLine: say`empty line`,
  textOf: (name: string) => say`Text of ${{ name: given(name) }}`,
  noProgram: (name: string) => say`${{ name: given(name) }} is a drawing or a job file, not a program. Drop it anywhere to make it a job.`,
  proven: (name: string) => say`${{ name: given(name) }} is proven: it cuts the part to drawing.`,
  notProven: (name: string) => say`${{ name: given(name) }} is not proven.`,
  cannot: (name: string) => say`${{ name: given(name) }} could not be checked.`,
  whole: say`All findings`,
  findings: say`Findings`,
  line: (n: string) => say`line ${{ n: ready(n) }}`,
  tooLarge: (name: string, most: string) => say`${{ name: given(name) }} is larger than ${{ most: ready(most) }} MB.`,
  readingFailed: (name: string) => say`${{ name: given(name) }} could not be read.`,
});

export const programWords = {
  ...program,
  verdicts: phrases('page.verdict', { proven: say`proven`, 'not proven': say`not proven`, cannot: say`not checked` }),
};

const peaks = phrases('page.deviation-peaks', {
  one: (left: string) =>
    say`Peaks beyond the chart are at an inside corner that may stay rounded: up to ${{ left: ready(left) }} of stock is left there and does not count.`,
  more: (n: number, left: string) =>
    say`Peaks beyond the chart are at ${{ n: count(n) }} inside corners that may stay rounded: up to ${{ left: ready(left) }} of stock is left there and does not count.`,
});

const deviation = phrases('page.deviation', {
  title: say`Deviation from the drawing`,
  choose: (id: string) => say`Show the deviation of ${{ loop: contour(id) }}`,
  chart: (id: string, left: string, deep: string) =>
    say`Deviation along ${{ loop: contour(id) }}: max. stock left ${{ left: ready(left) }}, max. overcut ${{ deep: ready(deep) }}.`,
  along: (id: string, length: string) => say`${{ loop: contour(id) }} is ${{ length: ready(length) }} long`,
  rounded: (n: number, left: string) => (n === 1 ? peaks.one(left) : peaks.more(n, left)),
  above: say`stock left`,
  below: say`overcut`,
  allowed: say`tolerance`,
  magnified: (factor: string) => say`Deviation scale ${{ factor: ready(factor) }} × length scale.`,
  outOfView: (tolerance: string) =>
    say`The tolerance of ±${{ tolerance: ready(tolerance) }} is outside the chart: every deviation is far smaller.`,
  working: say`Measuring along the contour…`,
  none: say`No deviation measured on this contour.`,
  at: (share: string, deviation: string) => say`at ${{ share: ready(share) }}: ${{ deviation: ready(deviation) }}`,
  place: say`Place along the contour`,
});

export const deviationWords = {
  ...deviation,
  columns: phrases('page.deviation-column', {
    contour: say`Contour`,
    state: say`State`,
    left: say`Max. stock left`,
    deep: say`Max. overcut`,
    tolerance: say`Tolerance, either side`,
  }),
};

const cuts = phrases('page.glass-pass', {
  rough: say`after the rough cut`,
  skim: (pass: number) => say`after the ${{ skim: skimName(pass) }}`,
});

export const glassWords = phrases('page.glass', {
  title: say`Cut surface, magnified`,
  lead: say`The cut wall, seen along the wire, after each pass. All to one scale.`,
  pass: (n: number) => (n === 1 ? cuts.rough : cuts.skim(n)),
  ra: say`roughness`,
  damage: say`recast layer`,
  stock: say`stock for later passes`,
  nothing: say`none`,
  wanted: say`finished surface`,
  metal: say`metal`,
  layer: say`recast layer`,
  stockWord: say`stock for later passes`,
  picture: (passes: number) => say`The cut wall after each of ${{ passes: count(passes) }} passes, to scale; the figures are below.`,
  caption: say`Drawn from the Ra and the recast depth of each pass. Crater shapes are illustrative, their sizes to scale.`,
  others: (thickness: string) => say`Cut wall of other processes, ${{ thickness: ready(thickness) }} thick`,
  othersCaption: (factor: string) =>
    say`Height to scale; sideways ${{ factor: ready(factor) }} × that, for all alike. Waviness is illustrative, its depth to scale.`,
  within: (text: string) => say`within ${{ text: ready(text) }}`,
  barrel: (text: string) => say`barrel ${{ text: ready(text) }}`,
  raRange: (low: string, high: string) => say`${{ low: ready(low) }} to ${{ high: ready(high) }}`,
});

const price = phrases('page.price', {
  curve: say`Price against finish`,
  curvePicture: (from: string, to: string) =>
    say`Price each against finish, from ${{ from: ready(from) }} to ${{ to: ready(to) }}; the numbers are in the table below.`,
  passes: (n: number) => say`${{ passes: count(n, 'pass') }}`,
  finish: say`Finish, coarse to fine`,
  each: say`Each`,
  chosen: say`required`,
  chosenAssumed: say`assumed`,
  choose: (finish: string) => say`Require ${{ finish: ready(finish) }}`,
  point: (finish: string, money: string, passes: number) =>
    say`${{ finish: ready(finish) }}: ${{ money: ready(money) }}, ${{ passes: count(passes, 'pass') }}`,
  table: say`The curve as a table`,
  working: say`Pricing every finish: the whole job is run again for each…`,
  noCurve: say`Prices follow once the part can be made.`,
  step: (finish: string) => say`finish ${{ finish: ready(finish) }}`,
  failed: say`This could not be worked out.`,
  again: say`Try again`,
  older: say`Out of date: inputs have changed.`,
  whatIf: say`What would it cost if`,
  whatIfWorking: say`Running the whole job again with each change…`,
  asAsked: say`as it stands`,
  saves: (money: string) => only(ready(money)),
  costsMore: (money: string) => say`costs ${{ money: ready(money) }} more`,
  same: say`no change`,
  tryIt: say`Try it`,
  tryItOf: (sentence: string) => say`Try it: ${{ sentence: ready(sentence) }}`,
  notPossible: say`Not possible`,
  cannot: (reason: string) => say`Nothing to compare: ${{ reason: ready(reason) }}`,
  byAgreement: say`by agreement`,
});

export const priceWords = {
  ...price,
  columns: phrases('page.price-column', {
    finish: say`Finish`,
    each: say`Each`,
    passes: say`Passes`,
    reached: say`Expected`,
    choose: say`Require it`,
  }),
  rows: phrases('page.price-row', {
    change: say`Change`,
    each: say`Each`,
    saves: say`Saves`,
    machine: say`Machine`,
    passes: say`Passes`,
    holds: say`Holds`,
    finish: say`Ra`,
    tryIt: say`Try it`,
  }),
};
