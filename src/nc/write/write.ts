/** A plan's steps -> program text in a dialect, with the offset table that belongs to it. */

import type { Pass, PlannedStop, Step } from '../../plan/plan.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, count, deviating, mm, term } from '../../text/part.ts';
import { printPlain } from '../../text/print/print.ts';
import { phrases, say } from '../../text/say.ts';
import type { StopPurpose } from '../../text/stop-purpose.ts';
import type { Text } from '../../text/text.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { plain } from './comment.ts';
import { find } from './findings.ts';
import { type Grid, gridOf, isWritable, printed, toGrid } from './grid.ts';
import { type ProgramPen, pen, roundedOffset, type Written } from './pen.ts';
import { type Sheet, sheet } from './sheet.ts';

/** What of a plan the program is made of. */
export interface ProgramPlan {
  readonly steps: readonly Step[];
  readonly passes: readonly Pick<Pass, 'number' | 'condition' | 'register' | 'offset' | 'gap'>[];
}

export interface ProgramHeader {
  readonly name: string;
  /** As it is to be printed; the writer has no clock. */
  readonly date: string;
  readonly notes: readonly Text[];
}

/**
 * `registers` are the offsets by number in mm, rounded to the last digit as they are typed into the control; empty where the path
 * is compensated. `gaps` are the spark gaps by condition, mm.
 */
export type WrittenProgram =
  | {
      readonly kind: 'written';
      readonly text: string;
      readonly registers: ReadonlyMap<number, number>;
      readonly gaps: ReadonlyMap<number, number>;
      readonly blocks: number;
      /** What it says at each of its stops, in order. */
      readonly stops: readonly ToldStop[];
      readonly findings: readonly Finding[];
    }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

/** What a stop says: as data, and as it stands in the program; empty where the dialect has no comments. */
export interface ToldStop {
  readonly text: Text;
  /** Lines that stand before it. */
  readonly details?: readonly Text[] | undefined;
  readonly comment: string;
}

export const writeProgram = (plan: ProgramPlan, dialect: Dialect, header: ProgramHeader): WrittenProgram => {
  const grid = gridOf(dialect);
  const page = sheet(dialect);
  const offsets = offsetTable(plan, dialect, grid);
  if (offsets.kind === 'refused') return { kind: 'refused', findings: [offsets.finding] };
  begin(plan, dialect, header, grid, page);
  const wire = pen(dialect, grid, page);
  const state: Writing = { dialect, plan, page, pen: wire, condition: 'none chosen', contour: undefined, stops: [], findings: [] };
  for (const step of plan.steps) {
    const written = writeStep(step, state);
    if (written.kind === 'refused') return { kind: 'refused', findings: [...state.findings, written.finding] };
    if (step.kind === 'end') break;
  }
  state.pen.settle();
  page.block(dialect.end);
  page.percent();
  if (page.startedAgain())
    state.findings.push(
      find(
        'sequence-starts-again',
        say`The program has ${{ blocks: count(page.blocks(), 'block') }}; after ${{ last: term('N99999') }} the sequence numbers begin again.`,
      ),
    );
  return {
    kind: 'written',
    text: page.text(),
    registers: offsets.registers,
    gaps: new Map(plan.passes.map((pass) => [pass.condition, pass.gap.value])),
    blocks: page.blocks(),
    stops: state.stops,
    findings: state.findings,
  };
};

interface Writing {
  readonly dialect: Dialect;
  readonly plan: ProgramPlan;
  readonly page: Sheet;
  readonly pen: ProgramPen;
  condition: number | 'none chosen';
  contour: Text | undefined;
  readonly stops: ToldStop[];
  readonly findings: Finding[];
}

const done: Written = { kind: 'done' };

type Offsets =
  | { readonly kind: 'table'; readonly registers: ReadonlyMap<number, number> }
  | { readonly kind: 'refused'; readonly finding: Finding };

const offsetTable = (plan: ProgramPlan, dialect: Dialect, grid: Grid): Offsets => {
  const registers = new Map<number, number>();
  if (dialect.compensation === 'path') return { kind: 'table', registers };
  for (const pass of plan.passes) {
    const offset = roundedOffset(pass.offset.value, grid);
    const other = registers.get(pass.register);
    if (!isWritable(offset, grid) || offset < 0) {
      return {
        kind: 'refused',
        finding: find(
          'coordinate-unusable/offset',
          say`Pass ${{ pass: count(pass.number) }} has an offset of ${{ offset: mm(pass.offset.value, deviating(0)) }}, which no register can hold.`,
        ),
      };
    }
    if (other !== undefined && other !== offset) {
      return {
        kind: 'refused',
        finding: find(
          'register-shared',
          say`Register ${{ register: term(`D${pass.register}`) }} is to hold both ${{ one: mm(other, deviating(0)) }} and ${{ other: mm(offset, deviating(0)) }}.`,
        ),
      };
    }
    registers.set(pass.register, offset);
  }
  return { kind: 'table', registers };
};

/** Start mark, name, date, notes and offset table in comments, then the words that say how everything else is meant. */
const begin = (plan: ProgramPlan, dialect: Dialect, header: ProgramHeader, grid: Grid, page: Sheet): void => {
  page.percent();
  for (const text of [header.name, header.date, ...header.notes.map(printPlain)]) page.remark(text);
  page.remark(printPlain(remarks.units(dialect.units)));
  for (const { number: pass, condition, register, offset } of plan.passes) {
    const said =
      dialect.compensation === 'control'
        ? remarks.passWithOffset(pass, condition, `D${register}`, printed(toGrid(offset.value, grid), grid))
        : remarks.pass(pass, condition);
    page.remark(printPlain(said));
  }
  const unit = unitWords[dialect.unitsWord][dialect.units];
  const distance = dialect.coordinates === 'absolute' ? 'G90' : 'G91';
  page.block(['G17', unit, distance, dialect.compensation === 'control' ? 'G40' : ''].filter((word) => word !== '').join(' '));
};

const remarks = phrases('program-remark', {
  units: (unit: string) => say`Units ${{ unit: term(unit) }}`,
  pass: (pass: number, condition: number) => say`Pass ${{ pass: count(pass) }}, condition ${{ condition: count(condition) }}`,
  passWithOffset: (pass: number, condition: number, register: string, offset: string) =>
    say`Pass ${{ pass: count(pass) }}, condition ${{ condition: count(condition) }}, offset ${{ register: term(register) }} = ${{ offset: term(offset) }}`,
  contour: (name: Text) => say`Contour ${{ name }}`,
});

const unitWords = {
  'G20/G21': { inch: 'G20', mm: 'G21' },
  'G70/G71': { inch: 'G70', mm: 'G71' },
  none: { inch: '', mm: '' },
} as const;

const writeStep = (step: Step, state: Writing): Written => {
  if (step.kind !== 'cut' && step.kind !== 'compensate') state.pen.settle();
  switch (step.kind) {
    case 'contour begins':
      state.contour = step.name;
      state.page.remark(printPlain(remarks.contour(step.name)));
      return done;
    case 'travel':
      return state.pen.travel(step.to);
    case 'thread':
      return thread(state);
    case 'cut wire':
      return cutWire(state);
    case 'condition':
      return chooseCondition(step.pass, state);
    case 'compensate':
      return compensate(step, state);
    case 'cancel compensation':
      if (state.dialect.compensation === 'control') state.pen.cancel();
      return done;
    case 'cut':
      return cut(step, state);
    case 'stop':
      return stop(step, state);
    case 'end':
      return done;
  }
};

/** Under compensation the wanted contour is written and moves that only the wire's centre makes are left to the control. */
const cut = (step: Extract<Step, { kind: 'cut' }>, state: Writing): Written => {
  const { dialect, pen } = state;
  let segment = step.centre;
  if (dialect.compensation === 'control') segment = pen.isCompensated() ? step.programmed : (step.programmed ?? step.centre);
  return segment === undefined ? done : pen.cut(segment);
};

const compensate = (step: Extract<Step, { kind: 'compensate' }>, state: Writing): Written => {
  if (state.dialect.compensation === 'path') return done;
  if (!state.plan.passes.some((pass) => pass.register === step.register)) {
    return {
      kind: 'refused',
      finding: find(
        'pass-not-planned/register',
        say`A step asks for register ${{ register: term(`D${step.register}`) }}, which no pass of the plan has.`,
      ),
    };
  }
  return state.pen.compensate(step.side, step.register);
};

const thread = (state: Writing): Written => {
  const { words } = state.dialect;
  const on = [words.wireOn, words.flushOn, words.powerOn].filter((word) => word !== undefined);
  const threaded = wordOrStop(words.thread, 'thread', threadComment(state.contour, on.length === 0), state);
  if (threaded.kind === 'done') for (const word of on) state.page.block(word);
  return threaded;
};

const threadComment = (contour: Text | undefined, allOn: boolean): Text => {
  if (contour === undefined) return allOn ? comments.allOn : comments.thread;
  return (allOn ? comments.allOnFor : comments.threadFor)(contour);
};

const cutWire = (state: Writing): Written => {
  const { words } = state.dialect;
  for (const word of [words.powerOff, words.flushOff, words.wireOff]) if (word !== undefined) state.page.block(word);
  return wordOrStop(words.cutWire, 'cut the wire', comments.cutWire, state);
};

const chooseCondition = (number: number, state: Writing): Written => {
  const pass = state.plan.passes.find((candidate) => candidate.number === number);
  if (pass === undefined)
    return {
      kind: 'refused',
      finding: find('pass-not-planned', say`A step asks for pass ${{ pass: count(number) }}, which the plan does not have.`),
    };
  if (state.condition === pass.condition) return done;
  state.condition = pass.condition;
  const word = state.dialect.words.condition?.replace('{n}', String(pass.condition));
  return wordOrStop(word, 'set condition', comments.condition(pass.condition), state);
};

/** What stands for a word of the wire that the dialect does not have. The reader knows each by how it begins. */
const comments = phrases('stop-comment', {
  thread: say`Thread the wire`,
  threadFor: (contour: Text) => say`Thread the wire for ${{ contour }}`,
  allOn: say`Thread the wire, all on`,
  allOnFor: (contour: Text) => say`Thread the wire, all on, for ${{ contour }}`,
  cutWire: say`Cut the wire`,
  condition: (condition: number) => say`Condition ${{ condition: count(condition) }}`,
  planned: (loop: string, text: Text) => say`${{ loop: contour(loop) }} ${{ text }}`,
});

type ForTheWire = Extract<StopPurpose, 'thread' | 'cut the wire' | 'set condition'>;

const missingStop: Readonly<Record<ForTheWire, Text>> = phrases('stop-unsaid', {
  thread: say`thread the wire`,
  'cut the wire': say`cut the wire`,
  'set condition': say`set the condition`,
});

/** The dialect's word, or a stop that tells the operator; with neither there is no program. */
const wordOrStop = (word: string | undefined, purpose: ForTheWire, comment: Text, state: Writing): Written => {
  if (word !== undefined) state.page.block(word);
  else if (state.dialect.comments === 'none') {
    const finding = find(
      'operator-not-told',
      say`The dialect has neither a word nor a comment for: ${{ purpose: missingStop[purpose] }}.`,
      {
        place: { kind: 'field', path: 'dialect.words' },
        remedy: remedy(say`Give the dialect comments, or the word that the manual of the control names for it.`, {
          field: 'dialect.comments',
          value: 'round brackets',
        }),
      },
    );
    return { kind: 'refused', finding };
  } else tell('M00', comment, state);
  return done;
};

const tell = (word: 'M00' | 'M01', text: Text, { dialect, page, stops }: Writing, details?: readonly Text[]): void => {
  const words = printPlain(text);
  page.told(word, words);
  stops.push({ text, details, comment: dialect.comments === 'none' ? '' : plain(words) });
};

/** Where the operator may run on without doing anything. */
const optional: ReadonlySet<PlannedStop> = new Set(['check']);

const stop = (step: Extract<Step, { kind: 'stop' }>, state: Writing): Written => {
  const { dialect, page, findings } = state;
  // It begins with its contour, so that nobody takes it for the choice of a condition.
  const comment = comments.planned(step.loop, step.text);
  if (dialect.comments === 'none' && !findings.some((f) => f.code === 'stop-unexplained')) {
    findings.push(
      find('stop-unexplained', say`The program stops without a comment; the set-up sheet must explain it: ${{ stop: comment }}`, {
        place: { kind: 'field', path: 'dialect.comments' },
      }),
    );
  }
  if (dialect.comments !== 'none') for (const detail of step.details ?? []) page.remark(printPlain(detail));
  tell(dialect.optionalStops && optional.has(step.purpose) ? 'M01' : 'M00', comment, state, step.details);
  return done;
};
