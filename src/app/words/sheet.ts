/** What the sheet itself says: sentence, chapters, margin, whys, undo, saving. */

import type { Basis } from '../../quantity/figure.ts';
import type { LogEntry } from '../../server/message/job-record.ts';
import type { Severity } from '../../text/finding.ts';
import { count, name as given, inside } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Chapter } from '../work/views.ts';
import { ready } from './ready.ts';

const CHAPTERS: Readonly<Record<Chapter, Text>> = phrases('page.chapter', {
  drawing: say`Drawing`,
  asked: say`What is asked`,
  passes: say`Wire and passes`,
  way: say`The way of the wire`,
  proof: say`Proof`,
  hours: say`Hours`,
  price: say`Price`,
  papers: say`Papers`,
  log: say`Log`,
});

const SEVERITIES: Readonly<Record<Severity, Text>> = phrases('page.severity', {
  refusal: say`Cannot be done`,
  doubt: say`To be asked`,
  warning: say`Take care`,
  repair: say`Mended`,
  note: say`Note`,
});

const MARKS: Readonly<Record<Severity, string>> = { refusal: '✕', doubt: '?', warning: '!', repair: '∿', note: '·' };

const BASES: Readonly<Record<Basis, Text>> = phrases('page.basis', {
  drawing: say`from the drawing`,
  shop: say`from the shop`,
  published: say`published`,
  measured: say`measured`,
  'common practice': say`common practice`,
  assumed: say`assumed`,
  computed: say`computed`,
});

type Saving = 'saved' | 'saving' | 'waiting for the server' | 'changed elsewhere' | 'put away';

const SAVING: Readonly<Record<Saving, Text>> = phrases('page.saving', {
  saved: say`Saved`,
  saving: say`Saving…`,
  'waiting for the server': say`The server is gone. Your work is kept in this browser and saved when it is back.`,
  'changed elsewhere': say`Another tab has changed this job.`,
  'put away': say`This job was put away. Your work is kept in this browser and saved when it is back.`,
});

const LOG: Readonly<Record<LogEntry['kind'], Text>> = phrases('page.log-kind', {
  tick: say`ticked off:`,
  measured: say`measured:`,
  time: say`time:`,
  break: say`wire broke:`,
  note: say`note:`,
});

const pieces = phrases('page.pieces', {
  one: say`one piece`,
  more: (n: string) => say`${{ n: ready(n) }} pieces`,
});

const steps = phrases('page.undo', {
  noUndo: say`Nothing to undo`,
  undo: (name: string) => say`Undo: ${{ name: given(name) }}`,
  noRedo: say`Nothing to redo`,
  redo: (name: string) => say`Redo: ${{ name: given(name) }}`,
});

const drawings = phrases('page.drawing-line', {
  one: (name: string, width: string, height: string) =>
    say`${{ name: given(name) }}: one contour, ${{ width: ready(width) }} by ${{ height: ready(height) }}`,
  more: (name: string, width: string, height: string, contours: number) =>
    say`${{ name: given(name) }}: ${{ contours: count(contours, 'contour') }}, ${{ width: ready(width) }} by ${{ height: ready(height) }}`,
});

const sheet = phrases('page.sheet', {
  logKind: (kind: LogEntry['kind']) => LOG[kind],
  chapter: (chapter: Chapter) => CHAPTERS[chapter],
  contents: say`Chapters`,
  answer: say`The answer`,
  picture: say`Picture`,
  opening: say`Opening the job…`,
  firstAnswer: say`Working out the first answer…`,
  noSuchJob: say`There is no such job`,
  toJobs: say`To the list of jobs`,
  inBin: (name: string, when: string) => say`${{ name: given(name) }} lies in the bin since ${{ when: ready(when) }}.`,
  putBack: say`Put back`,
  serverGone: say`The server does not answer`,
  serverGoneHelp: say`It may have been stopped. Start it again with npm start; this page tries again by itself.`,
  tryAgain: say`Try again`,
  change: (label: Text, text: string) => say`${{ label }}: ${{ text: ready(text) }}. Change`,
  whyOf: (text: string) => say`${{ text: ready(text) }}. Why?`,
  starting: (percent: string) => say`starting, ${{ percent: ready(percent) }}`,
  working: (stage: string, percent: string) => say`${{ stage: ready(stage) }}, ${{ percent: ready(percent) }}`,
  workingTitle: say`Working out the answer`,
  cancel: say`Cancel`,
  cancelled: say`Cancelled: this is the answer to the inputs before your last change.`,
  workAgain: say`Work it out`,
  older: say`The answer shown is older than what is asked.`,
  fault: say`The answer could not be worked out.`,
  faultHelp: say`This is a fault of the program, not of your drawing. Undo the last step or try again.`,
  asked: say`Asked:`,
  high: say` high`,
  pieces: (n: string) => (n === '1' ? pieces.one : pieces.more(n)),
  smallest: say`What would make it a yes`,
  reasons: say`Why not`,
  assumed: say`Taken for granted`,
  assumedMark: say`assumed`,
  assumedHelp: say`Nobody said this; the usual value is taken.`,
  saidMark: say`said`,
  backToDefault: say`default`,
  backToDefaultOf: (label: Text) => say`${{ label }}: back to the default`,
  stepBack: (label: Text) => say`${{ label }} back to the default`,
  step: (label: Text, said: string) => say`${{ label: inside(label) }} ${{ said: ready(said) }}`,
  defaultSaid: say`back to the default`,
  refused: (label: Text, fault: Text) => say`${{ label }} ${{ fault }}.`,
  help: (label: Text) => say`About ${{ label: inside(label) }}`,
  whichOne: say`Which one is meant?`,
  suggestions: (label: Text) => say`Choices for ${{ label: inside(label) }}`,
  nothingFound: say`Nothing of that name.`,
  more: (n: number) => say`${{ n: count(n) }} more`,
  less: say`Fewer`,
  severity: (severity: Severity) => SEVERITIES[severity],
  mark: (severity: Severity) => only(ready(MARKS[severity])),
  notes: (chapter: Chapter) => say`Notes on ${{ chapter: inside(CHAPTERS[chapter]) }}`,
  showInPicture: say`Show in the picture`,
  numbered: (n: number) => say`mark ${{ n: count(n) }} in the picture`,
  stands: (n: number) => say`(stands for ${{ n: count(n) }})`,
  done: say`What was done: `,
  remedy: say`Helps: `,
  setField: (label: Text, value: string) => say`Set ${{ label: inside(label) }} to ${{ value: ready(value) }}`,
  changeField: (label: Text) => say`Change ${{ label: inside(label) }}`,
  whatItMeans: say`What this means`,
  whatToDo: say`What to do: `,
  why: say`Why`,
  whyTitle: (name: string) => say`Why ${{ name: ready(name) }}?`,
  closeWhy: say`Close`,
  noWhy: say`This number is of an answer that is gone. Wait for the new one, or ask again.`,
  by: say`by `,
  madeOf: say`made of`,
  likely: (low: string, high: string) => say`likely ${{ low: ready(low) }} to ${{ high: ready(high) }}`,
  exact: say`exactly so`,
  basis: (basis: Basis) => BASES[basis],
  undo: (name: string | undefined) => (name === undefined ? steps.noUndo : steps.undo(name)),
  redo: (name: string | undefined) => (name === undefined ? steps.noRedo : steps.redo(name)),
  undoShort: say`Undo`,
  redoShort: say`Redo`,
  saving: (saving: Saving) => SAVING[saving],
  notSaved: say`Not saved yet`,
  takeTheirs: say`Take the other one`,
  keepMine: say`Keep mine`,
  elsewhereHelp: say`Take what it saved and lose your changes since, or save yours over it.`,
  drawingLine: (name: string, width: string, height: string, contours: number) =>
    contours === 1 ? drawings.one(name, width, height) : drawings.more(name, width, height, contours),
  noDrawing: say`The drawing could not be read far enough to be shown.`,
  contours: say`Contours in the order of cutting`,
  noTab: say`none`,
  fromEdge: say`from the edge`,
  proven: say`The program, read back word by word, cuts what the drawing asks.`,
  notProven: say`The program is not proven; the reasons stand in the margin.`,
  noProof: say`There is no program to be proven yet.`,
  budget: say`Where the error comes from`,
  sizes: say`Sizes with limits of their own`,
  otherWays: say`Other processes`,
  passTable: say`Passes`,
  wireTable: say`Wires of the shop`,
  hoursTable: say`Where the hours go`,
  costTable: say`What the price is made of`,
  breakTable: say`Price by quantity`,
  clock: (start: string, finish: string) =>
    say`On the clock of the shop it starts ${{ start: ready(start) }} and is done ${{ finish: ready(finish) }}.`,
  atMachine: say`At the machine`,
  noLog: say`Nothing has been written down at the machine yet.`,
  steps: say`Steps of this job`,
  stepNow: say`in force`,
  stepUndone: say`undone`,
  goToStep: (name: string) => say`Go back to: ${{ name: given(name) }}`,
  manualGone: say`The manual could not be fetched: the server does not answer. Load the page again once it does.`,
  nothingYet: say`This needs an answer first.`,
  took: (core: string, view: string) => say`Worked out in ${{ core: ready(core) }} ms, shown in ${{ view: ready(view) }} ms.`,
});

export const sheetWords = {
  ...sheet,
  contourColumns: phrases('page.contour-column', {
    number: say`No.`,
    id: say`Contour`,
    kept: say`Kept`,
    length: say`Length`,
    hole: say`Start hole`,
    tab: say`Tab`,
    piece: say`Piece`,
  }),
  kept: phrases('page.kept', {
    die: say`the block`,
    punch: say`the piece inside`,
    leave: say`not cut`,
    left: say`left of it`,
    right: say`right of it`,
    slit: say`both sides`,
  }),
};
