/** What the job wants of the drawing: the loops to cut with their kept sides, and the question to the planner. */
import { chilled } from '../../accuracy/budget-question.ts';
import { type Around, aroundOf, besideProfile } from '../../accuracy/errors-around.ts';
import type { Drawing, Loop } from '../../drawing/drawing.ts';
import { ratesOn } from '../../estimate/rates.ts';
import type { Contour } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/segment.ts';
import { leastMoveOf } from '../../nc/dialect/dialect.ts';
import type { Material } from '../../physics/material/material.ts';
import { blockFor } from '../../plan/cut/block.ts';
import { sortLoops } from '../../plan/kept-side.ts';
import type { WantedLine } from '../../plan/open-line.ts';
import type { Override, PlanQuestion, WantedLoop } from '../../plan/question.ts';
import { REGISTER_ROOM } from '../../plan/wire/register-room.ts';
import type { Wanted } from '../../proof/proof.ts';
import { allowedTo } from '../../proof/share.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { fixed, name, place } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';
import { cutHeight, type Job } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { aimedLoops } from './aimed.ts';
import type { Aim } from './contour-size.ts';
import { contoursAsked } from './contours.ts';
import { openRequest } from './open-line-request.ts';
import { easeLoops } from './rounded-corners.ts';
import { type Scaled, scaledFor, scaledQuestion, scaleFindings } from './scale.ts';
import { isOpening } from './shape-drawing.ts';
import { takenOf } from './taken.ts';
import { currencyFindings, pricedWires } from './wire-currency.ts';

export interface CutRequest {
  /** Loops that are cut, as the proof wants them. */
  readonly wanted: readonly Wanted[];
  /** Open lines that are cut. */
  readonly lines: readonly WantedLine[];
  /** Loop that is the edge of the block, where the drawing shows it. */
  readonly blockLoop?: { readonly id: string; readonly contour: Contour } | undefined;
  /** Of the work piece as warm as it is cut, where the program is to be scaled for that. */
  readonly question: PlanQuestion;
  readonly scaled?: Scaled | undefined;
  /** What error budgets ask of contours and block. */
  readonly around: Around;
  /** Zero of the program in the drawing, mm; left out where it is the zero of the drawing. */
  readonly datum?: Point | undefined;
  /** Sizes that single contours have to come out with, by loop id: the contours above lie in the middle of their limits. */
  readonly aims?: ReadonlyMap<string, Aim> | undefined;
  readonly findings: readonly Finding[];
}

export type CutRequested =
  | { readonly kind: 'request'; readonly request: CutRequest }
  | { readonly kind: 'nothing'; readonly findings: readonly Finding[] };

export const requestOf = (drawing: Drawing, asked: JobRun, material: Material): CutRequested => {
  const contoursOf = contoursAsked(asked.job, drawing);
  const { job, requirements, aims } = contoursOf;
  const run = { ...asked, job };
  const loops = drawing.loops.filter((l) => !l.hidden && l.aside === undefined).map(asWanted);
  const open = openRequest(drawing, job);
  if (loops.length + open.lines.length === 0) return { kind: 'nothing', findings: [...open.findings, noContour()] };
  const question = { ...questionOf(drawing, run, material, loops), requirements, open: open.lines.length === 0 ? undefined : open.lines };
  const sorted = sortLoops(question);
  const eased = easeLoops(loops, new Map(sorted.cut.map((c) => [c.loop.id, c.kept])), job.ease);
  if (eased.kind === 'failed') return { kind: 'nothing', findings: eased.findings };
  const aimed = aimedLoops(eased.loops, (id) => aims.get(id)?.moved);
  const contours = new Map(aimed.loops.map((l) => [l.id, l.contour]));
  const fits = new Map(drawing.loops.map((l) => [l.id, l.fitDeviation]));
  const block = sorted.block[0];
  const datum = datumOf(job, drawing.units.millimetres);
  const scaled = scaledFor(job, material, datum);
  const drawn = [...sorted.cut.map(({ loop }) => loop.contour), ...open.lines.map((l) => l.path)];
  const lastDigit = question.resolution.unit * 10 ** -question.resolution.decimals;
  const around = aroundOf(sorted, blockFor(sorted, question));
  const fitOf = (id: string): number => Math.max(run.shape?.fitDeviation ?? 0, fits.get(id) ?? 0);
  const coarsest = sorted.cut.reduce((most, { loop }) => Math.max(most, fitOf(loop.id)), lastDigit * Math.SQRT1_2);
  return {
    kind: 'request',
    request: {
      wanted: sorted.cut.map(({ loop, kept }) => ({
        loop: loop.id,
        contour: contours.get(loop.id) as Contour,
        kept,
        fit: fitOf(loop.id),
      })),
      lines: open.lines,
      blockLoop: block === undefined ? undefined : { id: block.id, contour: block.contour },
      question: scaledQuestion({ ...question, ...promiseOf(job, material, around, coarsest), loops: aimed.loops }, scaled),
      around,
      scaled,
      datum,
      aims: aims.size === 0 ? undefined : aims,
      findings: [
        ...currencyFindings(run),
        ...contoursOf.findings,
        ...open.findings,
        ...unknownWithout(drawing, job),
        ...eased.findings,
        ...aimed.findings,
        ...datumNote(datum),
        ...scaleFindings(run, material, drawn, { lastDigit, datum }),
      ],
    },
  };
};

/** How sure the promise has to be, what else goes off besides the cut, and what the program itself takes of the tolerance, mm. */
const promiseOf = (
  job: Job,
  material: Material,
  around: Around,
  coarsest: number,
): Pick<PlanQuestion, 'confidence' | 'beside' | 'reserve'> => ({
  confidence: job.confidence,
  beside: besideProfile(around, { material, temperatures: { ...chilled, ...job.temperature } }),
  reserve: Math.min(allowedTo(job), coarsest),
});

const noContour = (): Finding =>
  find('no-closed-contour', say`The drawing has no closed contour to cut.`, {
    remedy: say`Ask for a drawing with closed contours, or choose other layers.`,
  });

const asWanted = (loop: Loop): WantedLoop => ({
  id: loop.id,
  contour: loop.contour,
  depth: loop.depth,
  parent: loop.parent,
});

const questionOf = (drawing: Drawing, run: JobRun, material: Material, loops: readonly WantedLoop[]): PlanQuestion => {
  const { job, shop, dialect } = run;
  const scale = drawing.units.millimetres;
  return {
    loops,
    material,
    holes: job.holes.map((h) => ({ at: { x: h.at.x * scale, y: h.at.y * scale }, diameter: h.diameter })),
    marks: drawing.marks.map((m) => m.at),
    clamps:
      job.clamps.length === 0 ? undefined : job.clamps.map(({ low, high }) => ({ low: scaled(low, scale), high: scaled(high, scale) })),
    outline: job.outline,
    ...keptOf(drawing, run),
    core: Object.keys(job.core).length === 0 ? undefined : job.core,
    start: Object.keys(job.start).length === 0 ? undefined : job.start,
    ...byHandOf(job, scale),
    blockMargin: job.block.border,
    ...stockOf(job, scale),
    wires: pricedWires(run),
    passTables: shop.passTables,
    wire: job.wire,
    machine: shop.machines[0] as PlanQuestion['machine'],
    height: cutHeight(job),
    flush: job.flush,
    finish: job.finish,
    finishRule: job.finishRule,
    tolerance: job.tolerance,
    insideCorner: job.insideCorner,
    assumed: takenOf(run),
    startHole: job.startHole,
    run: job.run,
    refused: run.refused,
    outsideCorners: dialect.outsideCorners,
    leastMove: leastMoveFor(run),
    registerRoom: dialect.compensation === 'control' ? REGISTER_ROOM : undefined,
    sharpOutside: job.outsideCorners === 'control' ? undefined : job.outsideCorners,
    ...ratesOf(run),
    resolution: { unit: dialect.units === 'inch' ? 25.4 : 1, decimals: dialect.decimals },
  };
};

/** Half of what the program may use of the tolerance: the rest is for its last digits and for curves drawn as splines. */
const leastMoveFor = ({ job, dialect }: JobRun): PlanQuestion['leastMove'] => {
  const length = leastMoveOf(dialect);
  return dialect.compensation === 'control' && length > 0 ? { length, within: allowedTo(job) / 2 } : undefined;
};

/** A shape says itself which side of its contours is metal; the user overrules it. */
const keptOf = (drawing: Drawing, { job, shape }: JobRun): Pick<PlanQuestion, 'kept' | 'keptByShape'> => {
  if (shape === undefined) return { kept: job.kept };
  const byShape = Object.fromEntries(drawing.loops.map((l) => [l.id, isOpening(l) ? 'die' : 'punch'] as const));
  return { kept: { ...byShape, ...job.kept }, keptByShape: Object.keys(byShape).filter((id) => !Object.hasOwn(job.kept, id)) };
};

const stockOf = ({ stock }: Job, scale: number): Pick<PlanQuestion, 'stock'> => {
  if (stock?.width === undefined || stock.depth === undefined) return {};
  const { width, depth, corner } = stock;
  return { stock: { width, depth, corner: corner === undefined ? undefined : scaled(corner, scale) } };
};

const scaled = ({ x, y }: Point, by: number): Point => ({ x: x * by, y: y * by });

/** Zero of the program, mm; none where it is the zero of the drawing anyway. */
export const datumOf = ({ datum }: Job, scale: number): Point | undefined =>
  datum === undefined || (datum.x === 0 && datum.y === 0) ? undefined : scaled(datum, scale);

/** Told in mm like all places of the plan; the answer turns them into units of the drawing. */
const unknownWithout = (drawing: Drawing, { without = [] }: Job): readonly Finding[] =>
  without
    .filter((id) => !drawing.loops.some((loop) => loop.id === id))
    .map((id) =>
      find('without-of-unknown-loop', say`${{ loop: name(id) }} is to be left out, but the drawing has no contour of that name.`, {
        place: atField('without'),
      }),
    );

const datumNote = (datum: Point | undefined): readonly Finding[] =>
  datum === undefined
    ? []
    : [
        find(
          'datum-set',
          say`Program zero is at ${{ datum: place(datum, fixed(3)) }} of the drawing, set by hand: program, set-up sheet and hole table count from there.`,
          { place: { kind: 'spot', x: datum.x, y: datum.y, reach: 2 } },
        ),
      ];

/** Each key only where it says something, so that a job without them asks what it always asked. */
const byHandOf = (
  { overrides, order, passes, offsets }: Job,
  scale: number,
): Pick<PlanQuestion, 'overrides' | 'order' | 'passes' | 'offsets'> => {
  const set = Object.entries(overrides).map(([id, { entry, hole, tab }]): readonly [string, Override] => [
    id,
    {
      entry: entry && scaled(entry, scale),
      hole: hole && { at: scaled(hole, scale), diameter: hole.diameter },
      tab,
    },
  ]);
  return {
    overrides: set.length === 0 ? undefined : Object.fromEntries(set),
    order: order.length === 0 ? undefined : order,
    passes,
    offsets: offsets === undefined || offsets.length === 0 ? undefined : offsets,
  };
};

/** What an hour of the machine and of a person costs on the day, and what a stop takes; where no rates hold yet, the estimate will say so. */
const ratesOf = ({ shop, day }: JobRun): Pick<PlanQuestion, 'machineRate' | 'person'> => {
  const found = ratesOn(shop.rates, day);
  if (found.kind !== 'rates') return {};
  const { machineHour, labourHour, minutes } = found.rates;
  return { machineRate: machineHour, person: { stopMinutes: minutes.stop, hour: labourHour } };
};
