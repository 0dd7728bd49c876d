/** Holds a drawing as we read it against what another program found in it. */

import type { Drawing } from '../../src/drawing/drawing.ts';
import { sideBySide } from '../../src/sequence/sequence.ts';
import { flagged } from './flags.ts';
import type { Truth } from './truth.ts';

export interface Verdict {
  readonly path: string;
  /** Fails the run. */
  readonly wrong: readonly string[];
  /** Worth a look: counts in a faulty drawing for which there is no one right answer. */
  readonly differs: readonly string[];
}

/** Relative: truth prints areas with six digits, half a last digit of which is up to 5e-6. */
const AREA = 1e-5;
/** Relative: perimeters there go back to chords of the curves. */
const PERIMETER = 2e-4;

/**
 * In a clean drawing the loops, their areas and that nothing is open decide; in a faulty one that each fault is told. What a
 * drawing's faults are counted as depends on tolerances, so other counts are only shown where they differ.
 */
export const compared = (drawing: Drawing, truth: Truth): Verdict => {
  const shapes = [
    ...differs('loops', drawing.loops.length, truth.loops),
    ...openDiffers(drawing, truth),
    ...listDiffers('area', areasOf(drawing, truth), truth.areas, AREA),
  ];
  const counts = [...listDiffers('perimeter', perimetersOf(drawing, truth), truth.perimeters, PERIMETER), ...countsOf(drawing, truth)];
  const flags = truth.flags.flatMap((flag) => flagged(drawing, flag));
  const faults = [...unitDiffers(drawing, truth), ...flags];
  return truth.clean
    ? { path: truth.path, wrong: [...faults, ...shapes], differs: counts }
    : { path: truth.path, wrong: faults, differs: [...shapes, ...counts] };
};

const countsOf = (drawing: Drawing, truth: Truth): string[] => [
  ...differs('doubled loops', total(drawing, 'doubled-loop-dropped'), truth.duplicateLoops),
  ...differs('doubled edges', total(drawing, 'doubled-edge-dropped'), truth.duplicateEdges),
  ...differs('loops without area', total(drawing, 'loop-without-area'), truth.degenerateLoops),
  ...differs('loops that cross themselves', total(drawing, 'loop-crosses-itself'), truth.selfIntersecting),
  ...depthsDiffer(drawing, truth),
];

/** A chain that lies exactly on the edge of a loop is dropped there as an edge drawn twice: it counts as well. */
const openDiffers = (drawing: Drawing, { openChains }: Truth): string[] => {
  const ours = drawing.openChains.length;
  const onEdges = total(drawing, 'doubled-edge-dropped');
  const right = openChains === undefined || (ours <= openChains && openChains <= ours + onEdges);
  return right ? [] : differs('open chains', ours, openChains);
};

const differs = (what: string, ours: number, theirs: number | undefined): string[] =>
  theirs === undefined || ours === theirs ? [] : [`${what}: ${ours}, expected ${theirs}`];

/** How many findings of a code there are, those of a shortened list among them. */
const total = (drawing: Drawing, code: string): number =>
  drawing.findings.filter((f) => f.code === code).reduce((sum, f) => sum + (f.stands ?? 1), 0);

/** With hidden loops the truth nests what we leave out, so only drawings without them are held against it. */
const depthsDiffer = (drawing: Drawing, truth: Truth): string[] => {
  if (truth.depths === undefined || drawing.loops.some((l) => l.hidden)) return [];
  const depths: number[] = [];
  for (const loop of drawing.loops) depths[loop.depth] = (depths[loop.depth] ?? 0) + 1;
  const [ours, theirs] = [Array.from(depths, (n) => n ?? 0).join(' '), truth.depths.join(' ')];
  return ours === theirs ? [] : [`loops at each depth: ${ours}, expected ${theirs}`];
};

/** The truth of an SVG drawing is in mm, whatever its own unit. */
const scaleOf = (drawing: Drawing, truth: Truth): number =>
  drawing.format === 'svg' && truth.units?.startsWith('mm') ? drawing.units.millimetres : 1;

const areasOf = (drawing: Drawing, truth: Truth): number[] => drawing.loops.map((l) => l.area * scaleOf(drawing, truth) ** 2);

const perimetersOf = (drawing: Drawing, truth: Truth): number[] => drawing.loops.map((l) => l.perimeter * scaleOf(drawing, truth));

const listDiffers = (what: string, ours: readonly number[], theirs: readonly number[] | undefined, within: number): string[] => {
  if (theirs === undefined || ours.length !== theirs.length) return [];
  const [a, b] = [[...ours].sort((p, q) => q - p), [...theirs].sort((p, q) => q - p)];
  const wrong = sideBySide(a, b).flatMap(([value, wanted]) =>
    Math.abs(value - wanted) <= within * Math.abs(wanted) ? [] : [`${what} ${value.toPrecision(8)}, expected ${wanted}`],
  );
  return wrong.length > 5 ? [...wrong.slice(0, 5), `and ${wrong.length - 5} more of ${what}`] : wrong;
};

const UNITS: readonly (readonly [RegExp, number])[] = [
  [/^(mm|millimet)/i, 1],
  [/^(cm|centimet)/i, 10],
  [/^(in\b|inch)/i, 25.4],
  [/^(m|met(re|er)s?)$/i, 1000],
  [/^(ft|foot|feet)/i, 304.8],
  [/^(µm|um|micro)/i, 0.001],
  [/^(mil|mils|thou)$/i, 0.0254],
];

/** Without a shape there is nothing that a unit could be asked about for. */
const holdsNothing = ({ loops, openChains }: Drawing): boolean => loops.length === 0 && openChains.length === 0;

/** A unit that the truth names must be ours; where it names none, ours must be an assumption that is told as a doubt. */
const unitDiffers = (drawing: Drawing, truth: Truth): string[] => {
  if (truth.units === undefined || drawing.format === 'unknown' || holdsNothing(drawing)) return [];
  if (/^(absent|unitless|none|missing)/i.test(truth.units)) {
    const told = drawing.findings.some((f) => f.severity === 'doubt' && f.code.startsWith('units-'));
    return drawing.units.basis === 'assumed' && told
      ? []
      : [`the missing unit is not asked about (${drawing.units.name}, ${drawing.units.basis})`];
  }
  const { units } = truth;
  const known = units === undefined ? undefined : UNITS.find(([pattern]) => pattern.test(units));
  if (!known || drawing.format === 'svg') return [];
  return Math.abs(drawing.units.millimetres - known[1]) <= 1e-12 ? [] : [`unit ${drawing.units.name}, expected ${truth.units}`];
};
