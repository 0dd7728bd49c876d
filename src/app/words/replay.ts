/** What strip, replay, program text, deviation, wall, price curve and what-ifs say. */
import type { Severity } from '../../finding/finding.ts';

type MarkKind = 'thread' | 'slug' | 'tab' | 'spool' | 'load' | 'stop';

const MARKS: Readonly<Record<MarkKind, string>> = {
  thread: 'thread',
  slug: 'slug',
  tab: 'tab',
  spool: 'spool',
  load: 'load',
  stop: 'stop',
};

const stops = (n: number): string => (n === 1 ? '1 stop' : `${n} stops`);

export const stripWords = {
  title: 'The run on the clock',
  mark: (kind: MarkKind): string => MARKS[kind],
  night: 'nobody there',
  cutting: 'cutting',
  atNight: 'at night',
  picture: (start: string, finish: string, needed: number, night: number): string =>
    `The run from ${start} to ${finish}: ${needed === 0 ? 'nobody is needed' : `somebody is needed at ${stops(needed)}, ${night === 0 ? 'none of them' : night} at night`}.`,
  start: 'Start of the run',
  startAt: (day: string, oclock: string): string => `${day} ${oclock}`,
  startHelp: 'Drag the start along the strip, or use the arrow keys on it; a quarter of an hour each, an hour with Shift.',
  preview: (start: string, night: number): string =>
    `Preview, start ${start}: all shifted alike, ${night === 0 ? 'no stop' : stops(night)} at night. Let go, and it is worked out with its waits.`,
  moment: 'Moment of the replay',
  stops: (n: number): string => `All ${stops(n)} with their time`,
  noStops: 'Nobody is needed between start and finish.',
  columns: { oclock: 'When', kind: 'What for', what: 'What', show: 'Show' },
  show: (oclock: string): string => `Show ${oclock} in the picture`,
  more: (n: number): string => `and ${n} more`,
  near: (n: number): string => `${n} more close by.`,
  step: 'start of the run',
  first: 'The first fortnight is shown.',
} as const;

export const replayWords = {
  title: 'The cut replayed',
  play: 'Play',
  pause: 'Pause',
  again: 'Play again',
  back: 'Block back',
  forward: 'Block on',
  leave: 'Leave',
  leaveIt: 'Leave the replay',
  speed: 'Minutes a second',
  says: (oclock: string, what: string): string => `${oclock} · ${what}`,
  cutting: (pass: number, line: string, share: string): string => `pass ${pass}, line ${line}, ${share} of its way`,
  travel: (line: string): string => `travels without the wire, line ${line}`,
  stands: (what: string): string => `stands: ${what}`,
  piece: (n: number): string => ` · piece ${n}`,
  waits: 'waits for somebody',
  ended: 'done',
  none: 'There is no proven program to be replayed yet.',
  shortened: 'Stops and waits are passed over quickly.',
  stepped: 'Your system asks for less motion: it goes on block by block.',
} as const;

export const programWords = {
  title: 'Program',
  about: (lines: string, dialect: string, units: string): string => `${lines} lines in the words of ${dialect}, in ${units}.`,
  text: 'Program text',
  help: 'Arrow keys go from line to line, Enter shows the line in the picture.',
  find: 'Find in the program',
  next: 'Next',
  before: 'Before',
  found: (n: string, of: string): string => `${n} of ${of}`,
  notFound: 'not found',
  copy: 'Copy',
  copied: 'Copied',
  notCopied: 'The browser did not let it be copied.',
  download: 'Download',
  meaning: (line: string, meaning: string): string => `Line ${line}: ${meaning}`,
  nothing: 'nothing to be done',
  none: 'There is no program yet.',
  other: 'A program from elsewhere',
  otherLead: 'Drop a program here, or choose its file: it is read word by word and held against this drawing, with the set-up of this job.',
  choose: 'Choose a program…',
  proving: (name: string): string => `Reading ${name}…`,
  proven: (name: string): string => `${name} is proven: it cuts what the drawing asks.`,
  notProven: (name: string): string => `${name} is not proven.`,
  cannot: (name: string): string => `${name} could not be judged.`,
  whole: 'What was found, in full',
  findings: 'What was found',
  line: (n: string): string => `line ${n}`,
  own: 'Back to the program of this job',
  tooLarge: (name: string, most: string): string => `${name} is larger than ${most} MB.`,
  readingFailed: (name: string): string => `${name} could not be read.`,
  severity: (severity: Severity): string =>
    ({ refusal: 'Wrong', doubt: 'To be asked', warning: 'Take care', repair: 'Mended', note: 'Note' })[severity],
} as const;

export const deviationWords = {
  title: 'Deviation from the drawing',
  columns: {
    contour: 'Contour',
    state: 'State',
    left: 'Left on, at most',
    deep: 'Cut too deep, at most',
    tolerance: 'Allowed either side',
  },
  choose: (id: string): string => `Show the deviation of ${id}`,
  chart: (id: string, left: string, deep: string): string => `Deviation along ${id}: at most ${left} left on and ${deep} cut too deep.`,
  along: (id: string, length: string): string => `${id} is ${length} long`,
  rounded: (n: number, left: string): string =>
    `Peaks that leave the chart stand in ${n === 1 ? 'an inside corner' : `${n} inside corners`} that may come out round: up to ${left} stays there and is not counted.`,
  above: 'left on',
  below: 'cut too deep',
  allowed: 'allowed',
  magnified: (factor: string): string => `Drawn across ${factor} times as large as along.`,
  outOfView: (tolerance: string): string => `The tolerance of ±${tolerance} lies outside of the chart: all deviation is far smaller.`,
  working: 'Measuring along the contour…',
  none: 'Nothing was measured on this contour.',
  at: (share: string, deviation: string): string => `at ${share}: ${deviation}`,
  place: 'Place along the contour',
} as const;

export const glassWords = {
  title: 'Under the glass',
  lead: 'The wall of the cut, seen along the wire, after each pass. All to one scale.',
  pass: (n: number): string => (n === 1 ? 'after the rough cut' : `after skim ${n - 1}`),
  ra: 'roughness',
  damage: 'layer',
  stock: 'to come off',
  nothing: 'nothing',
  wanted: 'wanted surface',
  metal: 'metal',
  layer: 'molten once, frozen again',
  stockWord: 'still to come off',
  picture: (passes: number): string => `The cut wall after each of ${passes} passes, to scale; the numbers stand below.`,
  caption:
    'Drawn from the roughness Ra and the depth of the layer of each pass. The shape of the craters is invented, their size is to scale.',
  others: (thickness: string): string => `The wall of other processes, ${thickness} thick`,
  othersCaption: (factor: string): string =>
    `Height to scale; sideways ${factor} times as large, for all alike. The waviness is invented, its height is not.`,
  within: (text: string): string => `within ${text}`,
  barrel: (text: string): string => `barrel ${text}`,
  raRange: (low: string, high: string): string => `${low} to ${high}`,
} as const;

export const priceWords = {
  curve: 'Price against finish',
  curvePicture: (from: string, to: string): string =>
    `Price of one piece over the finish asked for, from ${from} to ${to}; the numbers are in the table below.`,
  passes: (n: number): string => (n === 1 ? '1 pass' : `${n} passes`),
  finish: 'Finish asked for, coarse to fine',
  each: 'Each',
  chosen: 'asked for',
  columns: { finish: 'Finish', each: 'Each', passes: 'Passes', reached: 'Comes out', choose: 'Ask for it' },
  choose: (finish: string): string => `Ask for ${finish}`,
  point: (finish: string, money: string, passes: number): string => `${finish}: ${money}, ${passes === 1 ? '1 pass' : `${passes} passes`}`,
  table: 'The curve as a table',
  working: 'Working out the price at every finish: the whole job is run again for each…',
  noCurve: 'There is a price once the answer is yes.',
  step: (finish: string): string => `finish ${finish}`,
  failed: 'This could not be worked out.',
  again: 'Try again',
  older: 'For the inputs before the last change.',
  whatIf: 'What would it cost if',
  whatIfWorking: 'Running the whole job again under each change…',
  asAsked: 'as asked',
  rows: {
    change: 'Change',
    each: 'Each',
    saves: 'Saves',
    machine: 'Machine',
    passes: 'Passes',
    holds: 'Holds',
    finish: 'Ra',
    tryIt: 'Try it',
  },
  saves: (money: string): string => money,
  costsMore: (money: string): string => `costs ${money} more`,
  same: 'nothing',
  tryIt: 'Try it',
  tryItOf: (sentence: string): string => `Try it: ${sentence}`,
  notPossible: 'Not possible',
  cannot: (reason: string): string => `Nothing to compare: ${reason}`,
  byAgreement: 'by agreement',
} as const;
