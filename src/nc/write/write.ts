/** A plan's steps -> program text in a dialect, with the offset table that belongs to it. */

import type { Pass, Step, StopReason } from '../../plan/plan.ts';
import type { Finding } from '../../text/finding.ts';
import { count, deviating, mm, term } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { plain } from './comment.ts';
import { find } from './findings.ts';
import { type Grid, gridOf, isWritable, printed, toGrid } from './grid.ts';
import { type Pen, pen, roundedOffset, type Written } from './pen.ts';
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
  readonly notes: readonly string[];
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
      readonly findings: readonly Finding[];
    }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

export const writeProgram = (plan: ProgramPlan, dialect: Dialect, header: ProgramHeader): WrittenProgram => {
  const grid = gridOf(dialect);
  const page = sheet(dialect);
  const offsets = offsetTable(plan, dialect, grid);
  if (offsets.kind === 'refused') return { kind: 'refused', findings: [offsets.finding] };
  begin(plan, dialect, header, grid, page);
  const state: Writing = { dialect, plan, page, pen: pen(dialect, grid, page), condition: 'none chosen', contour: '', findings: [] };
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
    findings: state.findings,
  };
};

interface Writing {
  readonly dialect: Dialect;
  readonly plan: ProgramPlan;
  readonly page: Sheet;
  readonly pen: Pen;
  condition: number | 'none chosen';
  contour: string;
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
  for (const text of [header.name, header.date, ...header.notes]) page.remark(text);
  page.remark(`Units ${dialect.units}`);
  for (const pass of plan.passes) {
    const register =
      dialect.compensation === 'control' ? `, offset D${pass.register} = ${printed(toGrid(pass.offset.value, grid), grid)}` : '';
    page.remark(`Pass ${pass.number}, condition ${pass.condition}${register}`);
  }
  const unit = unitWords[dialect.unitsWord][dialect.units];
  const distance = dialect.coordinates === 'absolute' ? 'G90' : 'G91';
  page.block(['G17', unit, distance, dialect.compensation === 'control' ? 'G40' : ''].filter((word) => word !== '').join(' '));
};

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
      state.page.remark(`Contour ${step.name}`);
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
  const where = state.contour === '' ? '' : ` for ${state.contour}`;
  const on = [words.wireOn, words.flushOn, words.powerOn].filter((word) => word !== undefined);
  const byHand = on.length === 0 ? '. Wire, flush, power on' : '';
  const threaded = wordOrStop(words.thread, `Thread the wire${where}${byHand}`, state);
  if (threaded.kind === 'done') for (const word of on) state.page.block(word);
  return threaded;
};

const cutWire = (state: Writing): Written => {
  const { words } = state.dialect;
  for (const word of [words.powerOff, words.flushOff, words.wireOff]) if (word !== undefined) state.page.block(word);
  return wordOrStop(words.cutWire, 'Cut the wire', state);
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
  return wordOrStop(word, `Condition ${pass.condition}`, state);
};

/** The dialect's word, or a stop that tells the operator; with neither there is no program. */
const wordOrStop = (word: string | undefined, sentence: string, state: Writing): Written => {
  if (word !== undefined) state.page.block(word);
  else if (state.dialect.comments === 'none') {
    const finding = find('operator-not-told', `The dialect has neither a word nor a comment to say: ${sentence.toLowerCase()}.`, {
      place: { kind: 'field', path: 'dialect.words' },
      remedy: 'Give the dialect comments, or the word that the manual of the control names for it.',
    });
    return { kind: 'refused', finding };
  } else state.page.told('M00', sentence);
  return done;
};

/** Where the operator may run on without doing anything. */
const optional: ReadonlySet<StopReason> = new Set(['check']);

const stop = (step: Extract<Step, { kind: 'stop' }>, state: Writing): Written => {
  const { dialect, page, findings } = state;
  if (dialect.comments === 'none' && !findings.some((f) => f.code === 'stop-unexplained')) {
    findings.push(
      find('stop-unexplained', `The program stops without a comment; the set-up sheet has to say: ${step.sentence}`, {
        place: { kind: 'field', path: 'dialect.comments' },
      }),
    );
  }
  page.told(dialect.optionalStops && optional.has(step.reason) ? 'M01' : 'M00', ownWords(step.sentence));
  return done;
};

/** A stop of the plan must not be taken for the choice of a condition, which the reader knows by its first word. */
const ownWords = (sentence: string): string => (/^CONDITION \d/.test(plain(sentence)) ? `Stop, ${sentence}` : sentence);
