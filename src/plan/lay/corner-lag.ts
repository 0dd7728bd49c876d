/** What wire lag does at the worst corner or arc of a contour, pass by pass: each skim lags less, and takes off what the one before left. */

import type { Contour } from '../../geometry/contour.ts';
import { pointAt } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { lagAtPointedTurn, lagAtSharpTurn, lagOnArc, pathInsideArc, pathOutsideArc } from '../../physics/cut/corner-error.ts';
import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { lastItem, lastOf, type NonEmpty } from '../../sequence/sequence.ts';
import { type Finding, type Remedy, remedy } from '../../text/finding.ts';
import { contour, count, fixed, limit, list, term, um } from '../../text/part.ts';
import { passName } from '../../text/pass-name.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { type Taken, wanted } from '../../text/wanted.ts';
import { find } from '../findings.ts';
import { insideTurns } from '../inside-arcs.ts';
import { POINTED } from '../path/offset-corner.ts';
import { outsideCorners } from '../path/outside-corners.ts';
import type { ContourPlan, Kept, Pass, WorstCorner } from '../plan.ts';
import type { WorkAsked } from '../question.ts';
import { spot as spotted } from '../said.ts';

export interface LagAsked {
  /** As wanted, counter-clockwise. */
  readonly contour: Contour;
  readonly kept: Kept;
  readonly passes: NonEmpty<Pick<Pass, 'offset' | 'formError'>>;
  readonly outsideCorners: 'arc' | 'intersection';
  /** Corners that are gone round by a loop: there the wire has straightened out. */
  readonly looped: readonly Point[];
}

type LagPlace = Omit<WorstCorner, 'errors'>;

/** None where the contour has neither corner nor arc. */
export const worstCorner = (asked: LagAsked): WorstCorner | undefined => {
  const last = lastOf(asked.passes);
  let worst: { readonly spot: LagPlace; readonly error: number } | undefined;
  for (const spot of spotsOf(asked)) {
    const error = errorOf(spot, last);
    if (worst === undefined || error > worst.error + 1e-9) worst = { spot, error };
  }
  if (worst === undefined) return undefined;
  const { spot } = worst;
  return { ...spot, errors: asked.passes.map((pass) => errorOf(spot, pass)) };
};

/** Arcs turned the way that lag spoils, and corners: an arc is told by its middle. */
const spotsOf = ({ contour, kept, outsideCorners: way, looped }: LagAsked): readonly LagPlace[] => {
  const inner = kept === 'die' ? 1 : -1;
  const arcs = contour.segments.flatMap((s): LagPlace[] =>
    s.kind === 'line'
      ? []
      : [{ what: s.sweep * inner > 0 ? 'inside arc' : 'outside arc', at: pointAt(s, 0.5), radius: s.radius, turn: Math.abs(s.sweep) }],
  );
  const inside = insideTurns(contour, kept).map(({ at, turn }): LagPlace => ({ what: 'inside corner', at, radius: 0, turn }));
  const outside = outsideCorners(contour, kept)
    .filter(({ at }) => !looped.some((p) => distanceBetween(p, at) < 1e-6))
    .map(({ at, turn }): LagPlace => {
      const pointed = way === 'intersection' && 1 / Math.cos(turn / 2) <= POINTED;
      return { what: pointed ? 'outside corner run out to a point' : 'outside corner rolled round', at, radius: 0, turn };
    });
  return [...arcs, ...inside, ...outside];
};

/** mm: an arc that leaves the wire a tighter path than this is a sharp turn to it. */
const SHARP = 0.01;

type Lagging = Pick<Pass, 'offset' | 'formError'>;

const errorOf = ({ what, radius, turn }: LagPlace, { offset, formError }: Lagging): number => {
  const [lag, away] = [formError.value, offset.value];
  if (what === 'inside corner') return lagAtSharpTurn.compute({ lag, turn });
  if (what === 'outside corner run out to a point') return lagAtPointedTurn.compute({ lag, turn, offset: away });
  if (what === 'outside corner rolled round') return lagOnArc.compute({ lag, radius: away });
  if (what === 'outside arc') return lagOnArc.compute({ lag, radius: radius + away });
  return radius - away > SHARP ? lagOnArc.compute({ lag, radius: radius - away }) : lagAtSharpTurn.compute({ lag, turn });
};

/** The errors of a contour's worst corner as figures that can be asked why, one per pass, µm. None where there is no corner. */
export const cornerFigures = ({ loop, corner }: ContourPlan, passes: readonly Pass[]): readonly Figure[] => {
  if (corner === undefined) return [];
  const turn = drawn(`contour.${loop}.corner.turn`, names.turn(cornerWords[corner.what]), corner.turn, 'rad');
  const radius = drawn(`contour.${loop}.corner.radius`, names.radius(cornerWords[corner.what]), corner.radius, 'mm');
  return passes.map((pass, i) => figureOf(corner, pass, { turn, radius }, nameOf(loop, i)));
};

const cornerWords: Readonly<Record<WorstCorner['what'], Text>> = phrases('worst-corner', {
  'inside corner': say`inside corner`,
  'inside arc': say`inside arc`,
  'outside arc': say`outside arc`,
  'outside corner rolled round': say`outside corner rounded by the wire`,
  'outside corner run out to a point': say`outside corner taken to a point`,
});

const names = phrases('corner-figure', {
  turn: (corner: Text) => say`turn of the ${{ corner }}`,
  radius: (corner: Text) => say`radius of the ${{ corner }}`,
  error: (loop: string, pass: Text) => say`error by wire lag at the worst corner of ${{ loop: contour(loop) }} after ${{ pass }}`,
});

const drawn = (key: string, name: Text, value: number, unit: 'rad' | 'mm'): Figure =>
  given({ key, name, value, unit, basis: 'drawing', source: saidBy.drawing });

const nameOf = (loop: string, i: number): { readonly key: string; readonly name: Text } => ({
  key: `contour.${loop}.corner.pass.${i + 1}`,
  name: names.error(loop, passName(i)),
});

const figureOf = (
  corner: WorstCorner,
  { offset, formError: lag }: Lagging,
  { turn, radius }: { readonly turn: Figure; readonly radius: Figure },
  as: { readonly key: string; readonly name: Text },
): Figure => {
  const path = { key: `${as.key}.path` };
  switch (corner.what) {
    case 'inside corner':
      return apply(lagAtSharpTurn, { lag, turn }, as);
    case 'outside corner run out to a point':
      return apply(lagAtPointedTurn, { lag, turn, offset }, as);
    case 'outside corner rolled round':
      return apply(lagOnArc, { lag, radius: offset }, as);
    case 'outside arc':
      return apply(lagOnArc, { lag, radius: apply(pathOutsideArc, { radius, offset }, path) }, as);
    case 'inside arc':
      return corner.radius - offset.value > SHARP
        ? apply(lagOnArc, { lag, radius: apply(pathInsideArc, { radius, offset }, path) }, as)
        : apply(lagAtSharpTurn, { lag, turn }, as);
  }
};

/** The worst of the plan: a warning where it is beyond the tolerance, else good to know. */
export const lagFindings = (
  contours: readonly Pick<ContourPlan, 'loop' | 'corner'>[],
  asked: Pick<WorkAsked, 'tolerance'> & Taken,
): readonly Finding[] => {
  const all = contours.flatMap(({ loop, corner }) => (corner === undefined ? [] : [{ loop, corner, last: lastItem(corner.errors) }]));
  if (all.length === 0) return [];
  const { loop, corner, last } = all.reduce((a, b) => (b.last > a.last + 1e-9 ? b : a));
  const beyond = all.filter((c) => c.last > asked.tolerance * 1000).length;
  if (last < WORTH_SAYING) return [];
  const worst = words.worst(loop, corner, wanted(asked, 'tolerance', limit(asked.tolerance * 1000, 'µm', fixed(1))));
  const place = { kind: 'spot', x: corner.at.x, y: corner.at.y, reach: 1, loop } as const;
  if (beyond === 0) return [find('corner-lag', worst, { place })];
  const many = beyond === 1 ? undefined : words.many(beyond);
  return [find('corner-lag', sentences([worst, many]), { place, severity: 'warning', remedy: remedyFor(corner) })];
};

/** Below this, µm, no measuring shows it. */
const WORTH_SAYING = 0.5;

const passesSaid = ([rough = 0, ...skims]: readonly number[]): Text =>
  skims.length === 0
    ? words.single(rough)
    : words.roughAndSkims(
        rough,
        skims.map((error, i) => words.skim(passName(i + 1), error)),
      );

const remedyFor = ({ what }: WorstCorner): Remedy =>
  what === 'outside corner rolled round' || what === 'outside corner run out to a point'
    ? remedy(words.loop, { field: 'outsideCorners', value: 'loop' })
    : remedy(words.oneMore);

const words = phrases('corner-lag', {
  worst: (loop: string, { what, at, errors }: WorstCorner, asked: Text) =>
    say`Wire lag is largest at the ${{ corner: cornerWords[what] }} of ${{ loop: contour(loop) }} at ${{ at: spotted(at) }}: ${{ passes: passesSaid(errors) }}; ${{ asked }}.`,
  many: (contours: number) => say`${{ contours: count(contours, 'contour') }} have such a corner.`,
  single: (rough: number) => say`the single pass is off by ${{ rough: um(rough, fixed(1)) }} there`,
  roughAndSkims: (rough: number, skims: readonly Text[]) =>
    say`the rough cut is off by ${{ rough: um(rough, fixed(1)) }} there, ${{ skims: list(skims) }}`,
  skim: (skim: Text, error: number) => say`${{ skim }} by ${{ error: um(error, fixed(1)) }}`,
  loop: say`Loop out and back at sharp outside corners (${{ change: term('outsideCorners: loop') }}), or add a skim.`,
  oneMore: say`Add a skim, or ask for a larger radius in that corner.`,
});
