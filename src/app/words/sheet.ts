/** What the sheet itself says: sentence, chapters, margin, whys, undo, saving. */

import type { Basis } from '../../quantity/figure.ts';
import type { LogEntry } from '../../server/message/job-record.ts';
import type { Severity } from '../../text/finding.ts';
import { count, name as given, inside } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import { severityNames } from '../../text/severity.ts';
import type { Text } from '../../text/text.ts';
import type { Chapter } from '../work/views.ts';
import { ready } from './ready.ts';

const CHAPTERS: Readonly<Record<Chapter, Text>> = phrases('page.chapter', {
  drawing: say`Drawing`,
  asked: say`Requirements`,
  passes: say`Wire and passes`,
  way: say`Wire path`,
  proof: say`Proof`,
  hours: say`Hours`,
  price: say`Price`,
  papers: say`Papers`,
  log: say`Log`,
});

const MARKS: Readonly<Record<Severity, string>> = { refusal: '✕', doubt: '?', warning: '!', repair: '∿', note: '·' };

const BASES: Readonly<Record<Basis, Text>> = phrases('page.basis', {
  drawing: say`from the drawing`,
  job: say`asked for`,
  counted: say`counted`,
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
  'waiting for the server': say`The server does not answer. Your work is kept in this browser and saved when it is back.`,
  'changed elsewhere': say`This job was changed in another tab.`,
  'put away': say`This job is in the bin. Your work is kept in this browser and saved when the job is restored.`,
});

const LOG: Readonly<Record<LogEntry['kind'], Text>> = phrases('page.log-kind', {
  tick: say`done:`,
  measured: say`measured:`,
  time: say`actual time, min:`,
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
  answer: say`Answer`,
  picture: say`Picture`,
  opening: say`Opening the job…`,
  firstAnswer: say`Working out the first answer…`,
  noSuchJob: say`No such job`,
  toJobs: say`To the job list`,
  inBin: (name: string, when: string) => say`${{ name: given(name) }} has been in the bin since ${{ when: ready(when) }}.`,
  putBack: say`Restore`,
  serverGone: say`The server does not answer`,
  serverGoneHelp: say`It may have been stopped. Start it again with npm start; this page reconnects by itself.`,
  tryAgain: say`Try again`,
  change: (label: Text, text: string) => say`${{ label }}: ${{ text: ready(text) }}. Change`,
  whyOf: (text: string) => say`${{ text: ready(text) }}. Show calculation`,
  starting: (percent: string) => say`starting, ${{ percent: ready(percent) }}`,
  working: (stage: string, percent: string) => say`${{ stage: ready(stage) }}, ${{ percent: ready(percent) }}`,
  workingTitle: say`Working out the answer`,
  cancel: say`Cancel`,
  cancelled: say`Cancelled: this answer is for the inputs before your last change.`,
  workAgain: say`Recalculate`,
  older: say`Out of date: inputs have changed.`,
  fault: say`The answer could not be worked out.`,
  faultHelp: say`This is a fault in the program, not in your drawing. Undo the last step or try again.`,
  asked: say`Required:`,
  high: say` thick`,
  pieces: (n: string) => (n === '1' ? pieces.one : pieces.more(n)),
  smallest: say`What would make it possible`,
  reasons: say`Reasons`,
  assumed: say`Assumptions`,
  assumedMark: say`assumed`,
  assumedHelp: say`Not specified; default used.`,
  saidMark: say`given`,
  backToDefault: say`Reset`,
  backToDefaultOf: (label: Text) => say`${{ label }}: reset to default`,
  stepBack: (label: Text) => say`${{ label }} reset to default`,
  step: (label: Text, said: string) => say`${{ label: inside(label) }} ${{ said: ready(said) }}`,
  defaultSaid: say`reset to default`,
  refused: (label: Text, fault: Text) => say`${{ label }} ${{ fault }}.`,
  help: (label: Text) => say`About ${{ label: inside(label) }}`,
  whichOne: say`Which one is meant?`,
  suggestions: (label: Text) => say`Choices for ${{ label: inside(label) }}`,
  nothingFound: say`No match.`,
  more: (n: number) => say`${{ n: count(n) }} more`,
  less: say`Fewer`,
  severity: (severity: Severity) => severityNames[severity],
  mark: (severity: Severity) => only(ready(MARKS[severity])),
  notes: (chapter: Chapter) => say`Notes on ${{ chapter: inside(CHAPTERS[chapter]) }}`,
  showInPicture: say`Show in the picture`,
  numbered: (n: number) => say`mark ${{ n: count(n) }} in the picture`,
  stands: (n: number) => say`(stands for ${{ n: count(n) }})`,
  done: say`What was done: `,
  remedy: say`Remedy: `,
  setField: (label: Text, value: string) => say`Set ${{ label: inside(label) }} to ${{ value: ready(value) }}`,
  changeField: (label: Text) => say`Change ${{ label: inside(label) }}`,
  whatItMeans: say`What this means`,
  whatToDo: say`What to do: `,
  why: say`Calculation`,
  whyTitle: (name: string) => say`Calculation: ${{ name: ready(name) }}`,
  closeWhy: say`Close`,
  noWhy: say`This figure belongs to an earlier answer. Wait for the new one, or ask again.`,
  by: say`by `,
  madeOf: say`calculated from`,
  likely: (low: string, high: string) => say`likely ${{ low: ready(low) }} to ${{ high: ready(high) }}`,
  exact: say`exact`,
  basis: (basis: Basis) => BASES[basis],
  undo: (name: string | undefined) => (name === undefined ? steps.noUndo : steps.undo(name)),
  redo: (name: string | undefined) => (name === undefined ? steps.noRedo : steps.redo(name)),
  undoShort: say`Undo`,
  redoShort: say`Redo`,
  saving: (saving: Saving) => SAVING[saving],
  notSaved: say`Not saved yet`,
  takeTheirs: say`Use the other version`,
  keepMine: say`Keep my version`,
  elsewhereHelp: say`Use what it saved and lose your changes since, or overwrite it with yours.`,
  drawingLine: (name: string, width: string, height: string, contours: number) =>
    contours === 1 ? drawings.one(name, width, height) : drawings.more(name, width, height, contours),
  noDrawing: say`Too little of the drawing could be read to show it.`,
  contours: say`Contours in cutting order`,
  noTab: say`none`,
  fromEdge: say`from the edge`,
  proven: say`The program was read back and cuts the part to drawing.`,
  notProven: say`The program is not proven; see the notes beside it.`,
  noProof: say`No program to prove yet.`,
  budget: say`Error budget`,
  sizes: say`Toleranced dimensions`,
  otherWays: say`Other processes`,
  passTable: say`Passes`,
  wireTable: say`Wires in the shop`,
  hoursTable: say`Hours breakdown`,
  costTable: say`Price breakdown`,
  breakTable: say`Price by quantity`,
  schedule: (start: string, finish: string) => say`Shop time: starts ${{ start: ready(start) }}, finishes ${{ finish: ready(finish) }}.`,
  atMachine: say`At the machine`,
  noLog: say`No log entries from the machine yet.`,
  steps: say`Steps of this job`,
  stepNow: say`current`,
  stepUndone: say`undone`,
  goToStep: (name: string) => say`Go back to: ${{ name: given(name) }}`,
  manualGone: say`The manual could not be loaded: the server does not answer. Reload the page once it does.`,
  nothingYet: say`Needs an answer first.`,
  took: (core: string, view: string) => say`Worked out in ${{ core: ready(core) }} ms, shown in ${{ view: ready(view) }} ms.`,
});

export const sheetWords = {
  ...sheet,
  contourColumns: phrases('page.contour-column', {
    number: say`Order`,
    id: say`Contour`,
    kept: say`Kept side`,
    length: say`Length`,
    hole: say`Start hole`,
    tab: say`Tab`,
    piece: say`Piece`,
  }),
  kept: phrases('page.kept', {
    die: say`outside`,
    punch: say`inside`,
    leave: say`not cut`,
    left: say`left`,
    right: say`right`,
    slit: say`both sides`,
  }),
};
