/** The way in: the bytes of a customer's file become closed loops, open chains and findings. */

import type { Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { say } from '../../text/say.ts';
import { usualLimits } from '../budget.ts';
import type { DrawnFile } from '../curve/curve.ts';
import { drawnBounds } from '../curve/drawn-bounds.ts';
import type { Drawing, DrawingUnits, ReadLimits, ReadOptions } from '../drawing.ts';
import { readDxf } from '../dxf/read-dxf.ts';
import { find } from '../findings.ts';
import { conflictsOf } from '../join/conflicts.ts';
import { joinPieces } from '../join/join.ts';
import type { Nested } from '../join/loop-around.ts';
import { nestingOf } from '../join/loop-around.ts';
import { fitPieces, type WorkCurve } from '../piece/fit-pieces.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import type { Tolerances } from '../piece/tolerances.ts';
import { tolerancesOf } from '../piece/tolerances.ts';
import type { WorkLimit } from '../piece/work-limit.ts';
import { WorkSpent } from '../piece/work-limit.ts';
import { readSvg } from '../svg/read-svg.ts';
import { besideWork } from './beside-work.ts';
import { capped } from './capped.ts';
import { besideConstruction } from './construction.ts';
import { formatOf } from './format.ts';
import { layersTaken, withLayersAside } from './layers-taken.ts';
import { chainsInOrder, finishedChains, finishedLoops, loopName, loopsInOrder } from './numbered-loops.ts';
import { reportChains } from './report-chains.ts';
import { reportConflicts } from './report-conflicts.ts';
import { reportDimensions } from './report-dimensions.ts';
import { reportJoining } from './report-joining.ts';
import { reportTurnless } from './report-turnless.ts';
import { reportEmpty, reportFit, reportHidden, reportSlivers, tooMuchWork } from './report-whole.ts';
import { decideUnits } from './units.ts';

/**
 * Reads a drawing. Never throws on a bad file: `state` tells how far it came and `findings` what was found and done. Contours
 * are in mm, counter-clockwise and joined exactly; places of findings and the areas of loops are in drawing units.
 *
 * @param name of the file; only asked when its first bytes do not show the format
 */
export const readDrawing = (bytes: Uint8Array, name: string, options: ReadOptions = {}): Drawing => {
  const limits: ReadLimits = { ...usualLimits, ...options.limits };
  return drawingOf(readFile(bytes, name, limits), options);
};

const readFile = (bytes: Uint8Array, name: string, limits: ReadLimits): DrawnFile => {
  const format = formatOf(bytes, name);
  if (format === 'dxf') return readDxf(bytes, limits);
  if (format === 'svg') return readSvg(bytes, limits);
  const finding = find('not-a-drawing', say('not-a-drawing/neither')`The file is neither a DXF nor an SVG drawing.`, {
    done: say('not-a-drawing/neither.done')`Nothing was read.`,
    remedy: say('not-a-drawing/neither.remedy')`Save the drawing as DXF or SVG.`,
  });
  return { state: 'refused', format, unitless: false, curves: [], marks: [], layers: [], passedOver: new Map(), findings: [finding] };
};

/** The same from curves that were read already, or that another program made. */
export const drawingOf = (file: DrawnFile, options: ReadOptions = {}): Drawing => {
  const bounds = drawnBounds(file.curves.filter((c) => c.turnless !== true));
  const { units, findings } = decideUnits(file, options.units, bounds);
  const told = [...file.findings, ...(file.state === 'refused' ? [] : [...findings, ...reportDimensions(file.dimensions ?? [], units)])];
  if (file.state === 'refused') return refusedDrawing(file, units, told);
  try {
    return judged(file, units, tolerancesOf(options, units, bounds), options, told);
  } catch (error) {
    if (!(error instanceof WorkSpent)) throw error;
    return refusedDrawing(file, units, [...told, tooMuchWork(options)]);
  }
};

const refusedDrawing = (file: DrawnFile, units: DrawingUnits, findings: readonly Finding[]): Drawing => ({
  state: 'refused',
  format: file.format,
  units,
  loops: [],
  openChains: [],
  marks: [],
  layers: file.layers,
  findings: capped(findings),
});

const judged = (file: DrawnFile, units: DrawingUnits, tolerances: Tolerances, options: ReadOptions, told: readonly Finding[]): Drawing => {
  const work = { left: options.limits?.work ?? usualLimits.work };
  const turnless = file.curves.filter((c) => c.turnless === true);
  const drawn = turnless.length === 0 ? file.curves : file.curves.filter((c) => c.turnless !== true);
  const joinedAs = (curves: readonly WorkCurve[]) => {
    const fitted = fitPieces(curves, units.millimetres, tolerances.fit, work);
    return { fitted, joined: joinPieces(fitted.pieces, tolerances, work) };
  };
  const { fitted, joined } = besideConstruction(drawn, joinedAs, ({ joined }) => joined.loops);
  const loops = loopsInOrder(joined.loops);
  const chains = chainsInOrder(joined.chains);
  const names = loops.map((loop, i) => ({ id: loopName(i), hidden: loop.hidden, segments: loop.contour.segments }));
  const conflicts = conflictsOf(loops, TOUCHING, work);
  const tangled = new Set(conflicts.flatMap((c) => (c.first === c.second ? [c.first] : [])));
  const all = finishedLoops(loops, nestingOfVisible(loops, tolerances.same, work), units);
  const layers = layersTaken(joined.events.apart, all, conflicts);
  const nested = withLayersAside(all, layers);
  const around = {
    known: new Map(loops.map((loop, i) => [loopName(i), loop.construction])),
    chains: finishedChains(chains, units),
    titled: file.titled === true,
    units,
  };
  const beside = options.alone === true ? { loops: nested, lines: NONE, findings: [] } : besideWork(nested, around);
  const finished = beside.loops;
  return {
    state: file.state,
    format: file.format,
    units,
    loops: finished,
    openChains: finishedChains(chains, units),
    marks: file.marks.filter((m) => !m.hidden).map(({ at, layer }) => ({ at: inMillimetres(at, units), layer })),
    layers: file.layers,
    findings: capped([
      ...told,
      ...reportFit(fitted, units, tolerances.fit),
      ...reportTurnless(turnless, fitted.pieces, units, tolerances.join),
      ...reportJoining(joined.events, layers, units),
      ...reportConflicts(conflicts, names, units),
      ...reportSlivers(
        finished.filter((_, i) => !tangled.has(i)),
        units,
      ),
      ...reportChains(chains, units, tolerances.join, beside.lines),
      ...beside.findings,
      ...reportHidden(finished),
      ...reportEmpty(finished, chains.length, file),
    ]),
  };
};

const NONE: ReadonlySet<string> = new Set();

/** mm: loops this near to each other touch; a thousandth of the finest step of a machine. */
const TOUCHING = 1e-6;

/** Numbers of the visible loops among all, with what is around each. */
const nestingOfVisible = (loops: readonly FoundLoop[], edge: number, work: WorkLimit): Map<number, Nested> => {
  const visible = loops.flatMap((loop, i) => (loop.hidden && loop.construction === undefined ? [] : [i]));
  const nested = nestingOf(
    visible.map((i) => itemAt(loops, i)),
    edge,
    work,
  );
  return new Map(nested.map(({ parent, depth }, i) => [itemAt(visible, i), { parent: parent < 0 ? -1 : itemAt(visible, parent), depth }]));
};

const inMillimetres = (at: Point, { millimetres }: DrawingUnits): Point => ({ x: at.x * millimetres, y: at.y * millimetres });
