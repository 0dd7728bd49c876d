/** What strip, replay, program text, deviation, wall, price curve and what-ifs say. */
import type { Severity } from '../../text/finding.ts';
import { contour, count, name as given } from '../../text/part.ts';
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
  alone: (start: string, finish: string) => say`The run from ${{ start: ready(start) }} to ${{ finish: ready(finish) }}: nobody is needed.`,
  byDay: (start: string, finish: string, stops: number) =>
    say`The run from ${{ start: ready(start) }} to ${{ finish: ready(finish) }}: somebody is needed at ${{ stops: count(stops, 'stop') }}, none of them at night.`,
  byNight: (start: string, finish: string, stops: number, night: number) =>
    say`The run from ${{ start: ready(start) }} to ${{ finish: ready(finish) }}: somebody is needed at ${{ stops: count(stops, 'stop') }}, ${{ night: count(night) }} at night.`,
  preview: (start: string, night: Text) =>
    say`Preview, start ${{ start: ready(start) }}: all shifted alike, ${{ night }} at night. Let go, and it is worked out with its waits.`,
  stops: (n: number) => say`${{ n: count(n, 'stop') }}`,
  noStop: say`no stop`,
});

const runOf = (start: string, finish: string, needed: number, night: number): Text => {
  if (needed === 0) return runs.alone(start, finish);
  return night === 0 ? runs.byDay(start, finish, needed) : runs.byNight(start, finish, needed, night);
};

const strip = phrases('page.strip', {
  title: say`The run on the clock`,
  mark: (kind: MarkKind) => MARKS[kind],
  night: say`nobody there`,
  cutting: say`cutting`,
  atNight: say`at night`,
  picture: runOf,
  start: say`Start of the run`,
  startAt: (day: string, oclock: string) => say`${{ day: ready(day) }} ${{ oclock: ready(oclock) }}`,
  startHelp: say`Drag the start along the strip, or use the arrow keys on it; a quarter of an hour each, an hour with Shift.`,
  preview: (start: string, night: number) => runs.preview(start, night === 0 ? runs.noStop : runs.stops(night)),
  moment: say`Moment of the replay`,
  stops: (n: number) => say`All ${{ stops: count(n, 'stop') }} with their time`,
  noStops: say`Nobody is needed between start and finish.`,
  show: (oclock: string) => say`Show ${{ oclock: ready(oclock) }} in the picture`,
  more: (n: number) => say`and ${{ n: count(n) }} more`,
  near: (n: number) => say`${{ n: count(n) }} more close by.`,
  step: say`start of the run`,
  first: say`The first fortnight is shown.`,
});

export const stripWords = {
  ...strip,
  columns: phrases('page.strip-column', { oclock: say`When`, kind: say`What for`, what: say`What`, show: say`Show` }),
};

export const replayWords = phrases('page.replay', {
  title: say`The cut replayed`,
  play: say`Play`,
  pause: say`Pause`,
  again: say`Play again`,
  back: say`Block back`,
  forward: say`Block on`,
  leave: say`Leave`,
  leaveIt: say`Leave the replay`,
  speed: say`Minutes a second`,
  says: (oclock: string, what: string) => say`${{ oclock: ready(oclock) }} · ${{ what: ready(what) }}`,
  cutting: (pass: number, line: string, share: string) =>
    say`pass ${{ pass: count(pass) }}, line ${{ line: ready(line) }}, ${{ share: ready(share) }} of its way`,
  travel: (line: string) => say`travels without the wire, line ${{ line: ready(line) }}`,
  stands: (what: string) => say`stands: ${{ what: ready(what) }}`,
  piece: (n: number) => say` · piece ${{ n: count(n) }}`,
  waits: say`waits for somebody`,
  ended: say`done`,
  none: say`There is no proven program to be replayed yet.`,
  shortened: say`Stops and waits are passed over quickly.`,
  stepped: say`Your system asks for less motion: it goes on block by block.`,
});

const takings = phrases('page.program-taken', {
  one: say`1 program was taken away`,
  more: (n: number) => say`${{ n: count(n) }} programs were taken away`,
});

const texts = phrases('page.program-text', {
  one: say`Its text, one line`,
  more: (lines: string) => say`Its text, ${{ lines: ready(lines) }} lines`,
});

const GRAVITY: Readonly<Record<Severity, Text>> = phrases('page.program-gravity', {
  refusal: say`Wrong`,
  doubt: say`To be asked`,
  warning: say`Take care`,
  repair: say`Mended`,
  note: say`Note`,
});

const program = phrases('page.program', {
  title: say`Program`,
  about: (lines: string, dialect: string, units: string) =>
    say`${{ lines: ready(lines) }} lines in the words of ${{ dialect: ready(dialect) }}, in ${{ units: ready(units) }}.`,
  text: say`Program text`,
  help: say`Arrow keys go from line to line, Enter shows the line in the picture.`,
  find: say`Find in the program`,
  next: say`Next`,
  before: say`Before`,
  found: (n: string, of: string) => say`${{ n: ready(n) }} of ${{ of: ready(of) }}`,
  notFound: say`not found`,
  copy: say`Copy`,
  copied: say`Copied`,
  notCopied: say`The browser did not let it be copied.`,
  download: say`Download`,
  meaning: (line: string, meaning: Text) => say`Line ${{ line: ready(line) }}: ${{ meaning }}`,
  saysNothing: (line: string) => say`Line ${{ line: ready(line) }}: nothing to be done`,
  none: say`There is no program yet.`,
  other: say`Programs from elsewhere`,
  otherLead: say`Drop programs anywhere on this sheet, or choose their files: each is read word by word, held against this drawing with the set-up of this job, and kept with the job.`,
  choose: say`Choose programs…`,
  came: (when: string) => say`came ${{ when: ready(when) }}`,
  reading: say`being read…`,
  unread: say`could not be read`,
  unreadHelp: say`The server did not hand it out, or the reading broke off. Nothing is lost: try again.`,
  again: say`Try again`,
  notKeptYet: say`Not kept yet: the server does not answer. It is sent again by itself; until then it is in this tab alone.`,
  refused: (sentence: string) => say`Not kept: ${{ sentence: ready(sentence) }}`,
  downloadOf: (name: string) => say`Download ${{ name: given(name) }}`,
  away: say`Take away`,
  awayOf: (name: string) => say`Take away ${{ name: given(name) }}`,
  wasTaken: (name: string) => say`${{ name: given(name) }} was taken away from this job.`,
  putBack: say`Put back`,
  putBackOf: (name: string) => say`Put back ${{ name: given(name) }}`,
  taken: (n: number) => (n === 1 ? takings.one : takings.more(n)),
  wentAway: (when: string) => say`taken away ${{ when: ready(when) }}`,
  serverGone: say`The server does not answer; nothing was changed. Try again.`,
  itsText: (n: number, lines: string) => (n === 1 ? texts.one : texts.more(lines)),
  emptyLine: say`empty line`,
  textOf: (name: string) => say`Text of ${{ name: given(name) }}`,
  noProgram: (name: string) =>
    say`${{ name: given(name) }} is a drawing or a job file, no program. Drop it anywhere, and it becomes a job of its own.`,
  proven: (name: string) => say`${{ name: given(name) }} is proven: it cuts what the drawing asks.`,
  notProven: (name: string) => say`${{ name: given(name) }} is not proven.`,
  cannot: (name: string) => say`${{ name: given(name) }} could not be judged.`,
  whole: say`What was found, in full`,
  findings: say`What was found`,
  line: (n: string) => say`line ${{ n: ready(n) }}`,
  tooLarge: (name: string, most: string) => say`${{ name: given(name) }} is larger than ${{ most: ready(most) }} MB.`,
  readingFailed: (name: string) => say`${{ name: given(name) }} could not be read.`,
  severity: (severity: Severity) => GRAVITY[severity],
});

export const programWords = {
  ...program,
  verdicts: phrases('page.verdict', { proven: say`proven`, 'not proven': say`not proven`, cannot: say`not judged` }),
};

const peaks = phrases('page.deviation-peaks', {
  one: (left: string) =>
    say`Peaks that leave the chart stand in an inside corner that may come out round: up to ${{ left: ready(left) }} stays there and is not counted.`,
  more: (n: number, left: string) =>
    say`Peaks that leave the chart stand in ${{ n: count(n) }} inside corners that may come out round: up to ${{ left: ready(left) }} stays there and is not counted.`,
});

const deviation = phrases('page.deviation', {
  title: say`Deviation from the drawing`,
  choose: (id: string) => say`Show the deviation of ${{ loop: contour(id) }}`,
  chart: (id: string, left: string, deep: string) =>
    say`Deviation along ${{ loop: contour(id) }}: at most ${{ left: ready(left) }} left on and ${{ deep: ready(deep) }} cut too deep.`,
  along: (id: string, length: string) => say`${{ loop: contour(id) }} is ${{ length: ready(length) }} long`,
  rounded: (n: number, left: string) => (n === 1 ? peaks.one(left) : peaks.more(n, left)),
  above: say`left on`,
  below: say`cut too deep`,
  allowed: say`allowed`,
  magnified: (factor: string) => say`Drawn across ${{ factor: ready(factor) }} times as large as along.`,
  outOfView: (tolerance: string) =>
    say`The tolerance of ±${{ tolerance: ready(tolerance) }} lies outside of the chart: all deviation is far smaller.`,
  working: say`Measuring along the contour…`,
  none: say`Nothing was measured on this contour.`,
  at: (share: string, deviation: string) => say`at ${{ share: ready(share) }}: ${{ deviation: ready(deviation) }}`,
  place: say`Place along the contour`,
});

export const deviationWords = {
  ...deviation,
  columns: phrases('page.deviation-column', {
    contour: say`Contour`,
    state: say`State`,
    left: say`Left on, at most`,
    deep: say`Cut too deep, at most`,
    tolerance: say`Allowed either side`,
  }),
};

const cuts = phrases('page.glass-pass', {
  rough: say`after the rough cut`,
  skim: (n: number) => say`after skim ${{ n: count(n) }}`,
});

export const glassWords = phrases('page.glass', {
  title: say`Under the glass`,
  lead: say`The wall of the cut, seen along the wire, after each pass. All to one scale.`,
  pass: (n: number) => (n === 1 ? cuts.rough : cuts.skim(n - 1)),
  ra: say`roughness`,
  damage: say`layer`,
  stock: say`to come off`,
  nothing: say`nothing`,
  wanted: say`wanted surface`,
  metal: say`metal`,
  layer: say`molten once, frozen again`,
  stockWord: say`still to come off`,
  picture: (passes: number) => say`The cut wall after each of ${{ passes: count(passes) }} passes, to scale; the numbers stand below.`,
  caption: say`Drawn from the roughness Ra and the depth of the layer of each pass. The shape of the craters is invented, their size is to scale.`,
  others: (thickness: string) => say`The wall of other processes, ${{ thickness: ready(thickness) }} thick`,
  othersCaption: (factor: string) =>
    say`Height to scale; sideways ${{ factor: ready(factor) }} times as large, for all alike. The waviness is invented, its height is not.`,
  within: (text: string) => say`within ${{ text: ready(text) }}`,
  barrel: (text: string) => say`barrel ${{ text: ready(text) }}`,
  raRange: (low: string, high: string) => say`${{ low: ready(low) }} to ${{ high: ready(high) }}`,
});

const price = phrases('page.price', {
  curve: say`Price against finish`,
  curvePicture: (from: string, to: string) =>
    say`Price of one piece over the finish asked for, from ${{ from: ready(from) }} to ${{ to: ready(to) }}; the numbers are in the table below.`,
  passes: (n: number) => say`${{ passes: count(n, 'pass') }}`,
  finish: say`Finish asked for, coarse to fine`,
  each: say`Each`,
  chosen: say`asked for`,
  choose: (finish: string) => say`Ask for ${{ finish: ready(finish) }}`,
  point: (finish: string, money: string, passes: number) =>
    say`${{ finish: ready(finish) }}: ${{ money: ready(money) }}, ${{ passes: count(passes, 'pass') }}`,
  table: say`The curve as a table`,
  working: say`Working out the price at every finish: the whole job is run again for each…`,
  noCurve: say`There is a price once the answer is yes.`,
  step: (finish: string) => say`finish ${{ finish: ready(finish) }}`,
  failed: say`This could not be worked out.`,
  again: say`Try again`,
  older: say`For the inputs before the last change.`,
  whatIf: say`What would it cost if`,
  whatIfWorking: say`Running the whole job again under each change…`,
  asAsked: say`as asked`,
  saves: (money: string) => only(ready(money)),
  costsMore: (money: string) => say`costs ${{ money: ready(money) }} more`,
  same: say`nothing`,
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
    reached: say`Comes out`,
    choose: say`Ask for it`,
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
