/** What every page says: masthead, keys, list of jobs, files dropped in. */
import { count, name as given, term } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import { ready } from './ready.ts';

const page = phrases('page.every', {
  name: only(term('Kerfwright')),
  skip: say`Skip to content`,
  pages: say`Pages`,
  jobs: say`Jobs`,
  shop: say`Shop`,
  atMachine: say`At the machine`,
  preferences: say`Display`,
  lengths: say`Lengths`,
  finishes: say`Finish`,
  theme: say`Colours`,
  keys: say`Shortcuts`,
  keysTitle: say`Keyboard shortcuts`,
  closeKeys: say`Close`,
  keyTo: say`to`,
  loading: say`Opening the page…`,
  broken: say`This page has stopped working`,
  brokenHelp: say`Nothing is lost: every step of the job is saved. Reload the page.`,
  reload: say`Reload`,
  notFound: say`No page at this address`,
  notFoundHelp: say`All saved jobs are in the job list.`,
});

export const pageWords = {
  ...page,
  themes: phrases('page.theme', { 'as the system': say`System`, light: say`Light`, dark: say`Dark` }),
  unit: { ...phrases('page.unit', { inch: say`inch` }), mm: only(term('mm')), µm: only(term('µm')), µin: only(term('µin')) },
  /** What each key does; keys that belong together stand apart by blanks. */
  keyRows: phrases('page.key', {
    Tab: say`to the next field or button`,
    Enter: say`edits a blue value, accepts what was typed`,
    Esc: say`cancels an edit, closes a calculation`,
    'Ctrl Z': say`undoes the last step`,
    'Ctrl Shift Z': say`redoes it`,
    '1 to 9': say`to a chapter`,
    '?': say`shows these shortcuts`,
    '+ − 0 M': say`in the picture: zoom in, zoom out, fit, measure; arrow keys pan`,
  }),
};

const OLDER = phrases('page.older-answer', {
  inputs: say`Out of date: inputs have changed.`,
  shop: say`Out of date: the shop has changed.`,
  version: say`Out of date: answered by another version.`,
  rates: say`Out of date: other rates apply now.`,
});

export const jobsWords = phrases('page.jobs', {
  title: say`Jobs`,
  lead: say`Drop DXF or SVG drawings anywhere: each becomes a job with a one-line answer.`,
  bring: say`Add drawings…`,
  empty: say`No jobs yet`,
  emptyHelp: say`Drop a drawing anywhere on this page, or choose a file. Add a job file together with its drawing.`,
  loading: say`Loading jobs…`,
  workingLine: say`Working out the answer…`,
  noLine: say`no answer yet`,
  older: (than: keyof typeof OLDER) => OLDER[than],
  changed: (when: string) => say`changed ${{ when: ready(when) }}`,
  remove: say`Move to bin`,
  removeOf: (name: string) => say`Move to bin: ${{ name: given(name) }}`,
  wasPutAway: (name: string) => say`${{ name: given(name) }} was moved to the bin.`,
  putBack: say`Restore`,
  putBackOf: (name: string) => say`Restore ${{ name: given(name) }}`,
  isBack: (name: string) => say`${{ name: given(name) }} was restored.`,
  bin: (jobs: number) => say`Bin: ${{ jobs: count(jobs, 'job') }}`,
  binLead: say`Latest first. A job is restored as it was, with its steps, log and programs.`,
  binPlace: say`Binned jobs stay on the server computer, one folder each; to delete one for good, delete its folder:`,
  putAway: (when: string) => say`binned ${{ when: ready(when) }}`,
  binFault: say`The bin could not be read.`,
  drop: say`Drop files: each drawing becomes a job`,
  dropOnSheet: say`Drop files: a program is checked against this drawing, a drawing becomes a new job`,
  uploads: say`Files being added`,
  waiting: say`waiting`,
  sending: (percent: string) => say`${{ percent: ready(percent) }} sent`,
  reading: say`server is reading it`,
  brought: say`added`,
  close: say`Close`,
  openJob: (name: string) => say`Open ${{ name: given(name) }}`,
  tooLarge: (name: string, megabytes: number) =>
    say`${{ name: given(name) }} is larger than ${{ megabytes: count(megabytes) }} MB, the limit of the server.`,
  notADrawing: (name: string) => say`${{ name: given(name) }} is not a DXF or SVG drawing, a job file or a program.`,
  programAlone: (name: string) =>
    say`${{ name: given(name) }} is a program: open the job of its drawing and drop it there; it is checked and kept with the job.`,
  programOfWhich: (name: string) =>
    say`${{ name: given(name) }} is a program, but it did not come with exactly one drawing: open the job it belongs to and drop it there.`,
  gone: say`The server does not answer.`,
});
