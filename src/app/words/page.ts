/** What every page says: masthead, keys, list of jobs, files dropped in. */
import { count, name as given, term } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import { ready } from './ready.ts';

const page = phrases('page.every', {
  name: only(term('Kerfwright')),
  skip: say`To the content`,
  pages: say`Pages`,
  jobs: say`Jobs`,
  shop: say`Shop`,
  atMachine: say`At the machine`,
  preferences: say`How it is shown`,
  lengths: say`Lengths`,
  finishes: say`Finish`,
  theme: say`Colours`,
  keys: say`Keys`,
  keysTitle: say`What the keys do`,
  closeKeys: say`Close`,
  keyTo: say`to`,
  loading: say`Opening the page…`,
  broken: say`This page broke off`,
  brokenHelp: say`Nothing is lost: the job is kept step by step. Load the page again.`,
  reload: say`Load again`,
  notFound: say`There is no page at this address`,
  notFoundHelp: say`The list of jobs has everything that is kept.`,
});

export const pageWords = {
  ...page,
  themes: phrases('page.theme', { 'as the system': say`as the system`, light: say`light`, dark: say`dark` }),
  unit: { ...phrases('page.unit', { inch: say`inch` }), mm: only(term('mm')), µm: only(term('µm')), µin: only(term('µin')) },
  /** What each key does; keys that belong together stand apart by blanks. */
  keyRows: phrases('page.key', {
    Tab: say`to the next thing that can be changed or asked`,
    Enter: say`opens a word of the sentence, keeps what was typed`,
    Esc: say`leaves a word as it was, closes a why`,
    'Ctrl Z': say`undoes the last step`,
    'Ctrl Shift Z': say`does it again`,
    '1 to 9': say`to a chapter`,
    '?': say`shows these keys`,
    '+ − 0 M': say`in the picture: closer, farther, all of it, measure; arrows move`,
  }),
};

export const jobsWords = phrases('page.jobs', {
  title: say`Jobs`,
  lead: say`Drop drawings anywhere, DXF or SVG: each becomes a job with its answer in one line.`,
  bring: say`Bring in drawings…`,
  empty: say`There is no job yet`,
  emptyHelp: say`Drop a drawing anywhere on this page, or choose a file. A job file comes together with its drawing.`,
  loading: say`Reading the list of jobs…`,
  workingLine: say`Working out the answer…`,
  noLine: say`not answered yet`,
  changed: (when: string) => say`changed ${{ when: ready(when) }}`,
  remove: say`Put away`,
  removeOf: (name: string) => say`Put away ${{ name: given(name) }}`,
  wasPutAway: (name: string) => say`${{ name: given(name) }} was put away into the bin.`,
  putBack: say`Put back`,
  putBackOf: (name: string) => say`Put back ${{ name: given(name) }}`,
  isBack: (name: string) => say`${{ name: given(name) }} is back in the list.`,
  bin: (jobs: number) => say`In the bin: ${{ jobs: count(jobs, 'job') }}`,
  binLead: say`What was put away, the last one first. Each comes back as it was: with its steps, its log, its programs.`,
  binPlace: say`Nothing is deleted here. The bin lies on the computer of the server, one folder for each job; whoever wants one gone deletes it there:`,
  putAway: (when: string) => say`put away ${{ when: ready(when) }}`,
  binFault: say`The bin could not be read.`,
  drop: say`Drop the files: each drawing becomes a job`,
  dropOnSheet: say`Drop the files: a program is held against this drawing, a drawing becomes a job of its own`,
  uploads: say`Files being brought in`,
  waiting: say`waiting`,
  sending: (percent: string) => say`${{ percent: ready(percent) }} sent`,
  reading: say`the server reads it`,
  brought: say`brought in`,
  close: say`Close`,
  openJob: (name: string) => say`Open ${{ name: given(name) }}`,
  tooLarge: (name: string, megabytes: number) =>
    say`${{ name: given(name) }} is larger than ${{ megabytes: count(megabytes) }} MB, which the server does not take.`,
  notADrawing: (name: string) => say`${{ name: given(name) }} is neither a DXF nor an SVG drawing, nor a job file, nor a program.`,
  programAlone: (name: string) =>
    say`${{ name: given(name) }} is a program: open the job of its drawing and drop it there, and it is proven and kept with the job.`,
  programOfWhich: (name: string) =>
    say`${{ name: given(name) }} is a program, and several drawings or none came with it: open the job it belongs to and drop it there.`,
  gone: say`The server does not answer.`,
});
