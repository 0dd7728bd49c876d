/** The wire chosen by the whole job: each is carried through program and hours to its price, unless a lower bound already lies above the best. */

import { ratesOn } from '../../estimate/rates.ts';
import type { ReadProgram } from '../../nc/read/program.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { mainPasses } from '../../plan/classes.ts';
import { laidBound, wireBound } from '../../plan/cut/least-of-wire.ts';
import { shapesIn } from '../../plan/cut/plan-cut.ts';
import type { LikeLoops } from '../../plan/same-shape.ts';
import { conditionsOf, wireTried } from '../../plan/wire/choose-wire.ts';
import { accuracyFigure } from '../../plan/wire/deviation-of-passes.ts';
import { passCount } from '../../plan/wire/passes-for.ts';
import type { Proof } from '../../proof/proof.ts';
import type { Figure } from '../../quantity/figure.ts';
import type { WireOutcome, WireRow, WireTable } from '../../result/wires.ts';
import { lastOf } from '../../sequence/sequence.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, name, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { find } from '../findings.ts';
import type { JobRun } from '../job-run.ts';
import { noMemory } from '../memory.ts';
import type { CutRequest } from '../request/request.ts';
import { estimateOf, type Made, madeOf, programKey, programOf, readBack, refusalsOf } from './stages.ts';
import { leastOf } from './wire-least.ts';
import { dropOutOf } from './wire-reason.ts';
import { wireTableOf } from './wire-table.ts';

export interface ChosenProgram {
  readonly made: Made;
  /** Where it was read back already. */
  readonly program?: ReadProgram | undefined;
  /** Only where the table was asked for and rates hold on the day. */
  readonly wires?: WireTable | undefined;
  readonly findings: readonly Finding[];
}

/** Jobs of more contours than this work out only the wires that could be the cheapest; the others are told by their lower bound. */
const ALL_WORKED_OUT = 60;

/**
 * Of wires that cost the same the one with fewer passes is taken, then the thicker, then the first of the shop file. With
 * `table` every wire of the shop gets a row, whether in stock or not; with `program` only what the choice needs is made.
 */
export const chosenProgram = (run: JobRun, request: CutRequest, want: 'table' | 'program'): ChosenProgram => {
  const named = request.question.wire !== undefined;
  const onDay = ratesOn(run.shop.rates, run.day);
  if (onDay.kind !== 'rates' || (named && want === 'program')) return { made: programOf(run, request), findings: [] };
  const memory = run.memory ?? noMemory;
  const freed = withoutOffsets(request);
  if (want === 'program') {
    let made: Made | undefined;
    const settled = memory.recall('settled wire', `${run.day} ${programKey(run, freed)}`, () => {
      const trial = tryWires(run, freed, 'in stock');
      made = freed === request ? trial.made : undefined;
      return trial.chosen;
    });
    const fresh = made;
    if (settled === undefined) return { made: programOf(run, request), findings: [] };
    const own = withWire(request, settled);
    return { made: fresh === undefined ? programOf(run, own) : programOf(run, own, () => fresh), findings: [] };
  }
  const trial = memory.recall('wires', trialKey(run), () => tryWires(run, freed, 'all'), TRIALS);
  const chosen = named ? request.question.wire : trial.chosen;
  const own =
    named || trial.made === undefined
      ? { made: programOf(run, request) }
      : freed === request
        ? { made: trial.made, program: trial.program }
        : { made: programOf(run, withWire(request, trial.chosen as string)) };
  const { made, program } = { program: undefined, ...own };
  const asChosen = made.kind === 'made' && chosen !== undefined ? { chosen } : {};
  const wires = wireTableOf({ rows: trial.rows, ...asChosen, named, currency: onDay.rates.currency });
  return { made, program, wires, findings: [find('wire-by-whole-job', wires.sentence)] };
};

/** Trials that are remembered: each holds a whole plan. */
const TRIALS = 2;

/** All that plan, hours and price of every wire depend on, and some more: what is left out of the job changes none of them. */
const trialKey = ({ job, shop, dialect, day, drawingName, refused }: JobRun): string => {
  const { customer: _, papers: __, startAt: ___, spoolLeft: ____, sizes: _____, ...rest } = job;
  return JSON.stringify([rest, shop, dialect, day, drawingName, refused]);
};

const withWire = (request: CutRequest, id: string): CutRequest => ({ ...request, question: { ...request.question, settled: id } });

/** Registers set by hand were meant for the wire that is chosen without them: they choose no other one by fitting it better. */
const withoutOffsets = (request: CutRequest): CutRequest => {
  const { offsets, requirements = {}, ...question } = request.question;
  const passes = passCount(request.question);
  const own = Object.entries(requirements);
  const freed = own.some(([, r]) => r.offsets !== undefined)
    ? Object.fromEntries(own.map(([id, r]) => [id, { ...r, passes: passCount(r), offsets: undefined }]))
    : request.question.requirements;
  if (offsets === undefined && freed === request.question.requirements) return request;
  return { ...request, question: { ...question, passes, requirements: freed } };
};

interface Trial {
  readonly rows: readonly WireRow[];
  /** The cheapest in stock, and its program. */
  readonly chosen?: string | undefined;
  readonly made?: Made;
  /** As read back. */
  readonly program?: ReadProgram | undefined;
}

/** A wire that fits every contour, with what the job costs at least with it. */
interface Fitting {
  readonly wire: Wire;
  readonly least: WireOutcome;
  /** 1 where the passes reach what is asked; above it where as many as the user wants fall short. */
  readonly short: number;
}

type Judged = { readonly kind: 'fits'; readonly fitting: Fitting } | { readonly kind: 'row'; readonly row: WireRow };

interface Asked {
  readonly run: JobRun;
  /** With no wire named. */
  readonly request: CutRequest;
  readonly shapes: readonly LikeLoops[];
}

const stages = phrases('stage-wire', {
  trying: (wire: string) => say`trying ${{ wire: name(wire) }} wire`,
  wholeJob: (wire: string) => say`the whole job with ${{ wire: name(wire) }} wire`,
});

const tryWires = (run: JobRun, request: CutRequest, which: 'all' | 'in stock'): Trial => {
  const { wire: named, ...free } = request.question;
  const asked: Asked = { run, request: { ...request, question: free }, shapes: shapesIn(free) };
  const wires = free.wires.filter((w) => which === 'all' || w.inStock);
  const judged = wires.map((wire, i) => {
    run.progress?.(stages.trying(wire.name), 0.15 + (0.1 * i) / wires.length);
    return judgedWire(wire, asked);
  });
  const all = judged.flatMap((j) => (j.kind === 'fits' ? [j.fitting] : [])).toSorted((a, b) => a.least.each - b.least.each);
  const nearest = Math.min(...all.filter((f) => f.wire.inStock).map((f) => f.short));
  const fitting = all.filter((f) => f.short <= nearest);
  const everything = which === 'all' && request.wanted.length + request.lines.length <= ALL_WORKED_OUT;
  const rows = [...judged.flatMap((j) => (j.kind === 'row' ? [j.row] : [])), ...all.filter((f) => f.short > nearest).map(shortRow)];
  let best: (Standing & Pick<Trial, 'made' | 'program'>) | undefined;
  fitting.forEach((fits, i) => {
    const { wire } = fits;
    run.progress?.(stages.wholeJob(wire.name), 0.25 + (0.15 * i) / fitting.length);
    const bounded = everything || wire.id === named || best === undefined ? undefined : beyond(fits, best.row.outcome.each, asked);
    const one = bounded === undefined ? workedOut(wire, run, asked.request) : { row: bounded };
    rows.push(one.row);
    const { row } = one;
    if (row.kind === 'worked out' && wire.inStock && (best === undefined || isBetter({ row, wire }, best))) best = { ...one, row, wire };
  });
  return best === undefined ? { rows } : { ...best, rows, chosen: best.wire.id };
};

const shortRow = ({ wire, least }: Fitting): WireRow => ({
  id: wire.id,
  name: wire.name,
  inStock: wire.inStock,
  ...dropOutOf([], words.short(least.passes)),
});

/** The row of a wire that cannot become the best, by the quick bound or else by the close one. */
const beyond = ({ wire, least }: Fitting, best: number, { run, request, shapes }: Asked): WireRow | undefined => {
  const said = { id: wire.id, name: wire.name, inStock: wire.inStock };
  const { question } = request;
  // Bounds leave the metal out, which the best has in it: a bound above the best is above it all the more.
  if (least.each > best) return { ...said, kind: 'at least', outcome: least };
  const tried = wireTried(wire, question, shapes);
  if (tried.kind === 'no passes') return { ...said, ...dropOutOf(tried.findings, tried.fault) };
  const laid = laidBound(tried, shapes, question);
  if (laid.kind === 'refused') return { ...said, ...dropOutOf(laid.findings) };
  const closer = { ...least, ...leastOf(laid.bound, { wire, run, contours: request.wanted.length, material: question.material }) };
  return closer.each > best ? { ...said, kind: 'at least', outcome: closer } : undefined;
};

type WorkedOut = Extract<WireRow, { kind: 'worked out' }>;
type Standing = { readonly row: WorkedOut; readonly wire: Wire };

/** Prices that differ by less than a hundred-millionth are the same. */
const SAME = 1e-8;

const isBetter = (one: Standing, other: Standing): boolean => {
  const [a, b] = [one.row.outcome, other.row.outcome];
  if (Math.abs(a.each - b.each) > SAME * b.each) return a.each < b.each;
  return a.passes === b.passes ? one.wire.diameter > other.wire.diameter : a.passes < b.passes;
};

const judgedWire = (wire: Wire, { run, request, shapes }: Asked): Judged => {
  const { question } = request;
  const tried = wireTried(wire, question, shapes);
  if (tried.kind === 'no passes' || tried.fault !== undefined) {
    const row: WireRow = { id: wire.id, name: wire.name, inStock: wire.inStock, ...dropOutOf(tried.findings, tried.fault) };
    return { kind: 'row', row };
  }
  const last = lastOf(tried.rows);
  const surface = {
    accuracy: accuracyFigure(conditionsOf(wire, question), tried.rows, question),
    finish: last.ra,
    form: last.formError,
    rough: tried.rows[0].feed.value,
  };
  const least = leastOf(wireBound(tried, shapes, question), { wire, run, contours: request.wanted.length, material: question.material });
  return { kind: 'fits', fitting: { wire, least: { passes: tried.rows.length, ...least, ...surface }, short: tried.short ?? 1 } };
};

/** Plan, program, hours and price; of a wire that is not taken nothing else is kept. */
const workedOut = (
  wire: Wire,
  run: JobRun,
  request: CutRequest,
): { readonly row: WireRow; readonly made: Made; readonly program?: ReadProgram | undefined } => {
  const made = madeOf(run, withWire(request, wire.id));
  const said = { id: wire.id, name: wire.name, inStock: wire.inStock };
  if (made.kind !== 'made') return { made, row: { ...said, ...dropOutOf(refusalsOf(made)) } };
  const program = readBack(run, made.written, request);
  const estimated = estimateOf(run, made.plan, program, request.question.material);
  if (estimated.kind === 'refused') return { made, row: { ...said, ...dropOutOf([estimated.finding]) } };
  const { plan } = made;
  const { total, unattended, each } = estimated.estimate;
  const price: Figure = {
    ...each,
    key: `wire.${wire.id}.each`,
    name: say('wire-choice.each')`price each with ${{ wire: name(wire.name) }} wire`,
  };
  const outcome: WireOutcome = {
    passes: mainPasses(plan).length,
    minutes: total.value,
    each: each.value,
    accuracy: plan.accuracy,
    finish: plan.finish,
    form: lastOf(mainPasses(plan)).formError,
    rough: plan.passes[0].feed.value,
  };
  return { made, program, row: { ...said, kind: 'worked out', outcome, unattended: unattended.value, price } };
};

/** The table of a plan that was made again, with the wire that was chosen before: the others are begun elsewhere in it too. */
export const wiresAgain = (run: JobRun, request: CutRequest, before: Pick<ChosenProgram, 'wires' | 'findings'>): typeof before => {
  const { wires: first } = before;
  const onDay = ratesOn(run.shop.rates, run.day);
  if (first === undefined || onDay.kind !== 'rates') return before;
  const again: CutRequest = { ...request, question: { ...request.question, refused: run.refused } };
  const { rows } = (run.memory ?? noMemory).recall('wires', trialKey(run), () => tryWires(run, withoutOffsets(again), 'all'), TRIALS);
  const { chosen, named } = first;
  const wires = wireTableOf({ rows, chosen, named, currency: onDay.rates.currency });
  return { wires, findings: [find('wire-by-whole-job', wires.sentence)] };
};

/** The wire that was taken is never exchanged behind the user's back: where its program fails the proof, the next one is named. */
export const wireDoubt = ({ verdict }: Pick<Proof, 'verdict'>, wires: WireTable | undefined): readonly Finding[] => {
  const next = wires?.rows.find((r) => r.id === wires.nextCheapest);
  if (verdict === 'proven' || wires === undefined || wires.named || next === undefined) return [];
  const taken = wires.rows.find((r) => r.id === wires.chosen);
  return [
    find(
      'wire-not-proven',
      say`${{ wire: taken === undefined ? words.unnamed : words.named(taken.name) }} is the cheapest, but its program was not proven; no other wire was selected in its place.`,
      {
        place: atField('wire'),
        remedy: remedy(
          say`The next cheapest is ${{ wire: name(next.name) }}: set the wire to ${{ id: term(next.id) }} and check whether its program is proven.`,
          {
            field: 'wire',
            value: next.id,
          },
        ),
      },
    ),
  ];
};

const words = phrases('wire-trial', {
  short: (passes: number) => say`with ${{ passes: count(passes, 'pass') }} it falls further short of the requirement`,
  named: (wire: string) => say`${{ wire: name(wire) }} wire`,
  unnamed: say`The wire`,
});
