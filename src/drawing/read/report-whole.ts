/** Findings about the drawing as a whole: fitted curves, hidden layers, nothing to cut, too much work. */

import type { Finding } from '../../text/finding.ts';
import { contour, count, length, list, name, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { usualLimits } from '../budget.ts';
import type { DrawnFile } from '../curve/curve.ts';
import type { DrawingUnits, Loop, ReadOptions } from '../drawing.ts';
import { find } from '../findings.ts';
import type { Fitted } from '../piece/fit-pieces.ts';
import { point, spot } from '../place-in-file.ts';

export const reportFit = (fitted: Fitted, units: DrawingUnits, within: number): Finding[] => [
  ...(fitted.curves === 0
    ? []
    : [
        find('curves-fitted', fitted.curves === 1 ? words.oneFitted(fitted.arcs) : words.manyFitted(fitted.curves, fitted.arcs), {
          done: say`No arc lies further than ${{ worst: length(fitted.worst) }} from its curve; ${{ allowed: length(within) }} are allowed.`,
        }),
      ]),
  ...(fitted.straightened.worst <= HAIR
    ? []
    : [
        find('curves-fitted/straight', words.straightened(fitted.straightened.arcs), {
          done: say`No line lies further than ${{ worst: length(fitted.straightened.worst) }} from its arc; ${{ allowed: length(within) }} are allowed.`,
        }),
      ]),
  ...fitted.failed.map(({ at, what }) =>
    find('curve-unfitted', say`${{ curve: words[what] }} at ${{ at: point(at, units) }} could not be turned into arcs.`, {
      place: spot(at, units),
      done: say`It was left out.`,
      remedy: say`Draw it again with fewer points, or as lines and arcs of a sensible size.`,
    }),
  ),
];

/** mm: what nobody could measure is not told. */
const HAIR = 1e-6;

/** mm of mean width, which is twice the area by the perimeter: the thinnest wire in use is about 20 µm (common practice, no source). */
const SLIVER = 0.01;

/** @param loops that do not meet themselves: the width of others says nothing */
export const reportSlivers = (loops: readonly Loop[], units: DrawingUnits): Finding[] =>
  loops.flatMap((loop) => {
    const width = ((2 * loop.area) / loop.perimeter) * units.millimetres;
    if (loop.hidden || width >= SLIVER || width === 0) return [];
    const at = loop.contour.segments[0].from;
    return [
      find(
        'loop-sliver',
        say`${{ loop: contour(loop.id) }} at ${{ at: point(at, units) }} is ${{ round: length(loop.perimeter * units.millimetres) }} long and only ${{ width: length(width) }} wide on average.`,
        {
          place: { ...spot(at, units), loop: loop.id },
          done: say`It was kept as drawn.`,
          remedy: say`Remove it, unless it is intended.`,
        },
      ),
    ];
  });

export const reportHidden = (loops: readonly Loop[]): Finding[] => {
  const hidden = loops.filter((loop) => loop.hidden);
  if (hidden.length === 0) return [];
  const layers = [...new Set(hidden.map((loop) => loop.layer))].sort();
  return [
    find('loops-hidden', hidden.length === 1 ? words.oneHidden(layers) : words.manyHidden(hidden.length, layers), {
      done: say`They are listed and not cut.`,
    }),
  ];
};

export const reportEmpty = (loops: readonly Loop[], chains: number, file: DrawnFile): Finding[] => {
  if (loops.some((loop) => !loop.hidden)) return [];
  const why =
    loops.length > 0
      ? words.hiddenOnly
      : chains > 0
        ? words.chainsOnly(chains)
        : file.passedOver.size > 0
          ? words.kindsOnly([...file.passedOver.keys()])
          : words.nothing;
  return [
    find('no-loop', say`There is nothing to cut: the drawing holds ${{ why }}.`, {
      remedy: say`Draw each outline closed, on a layer that is shown.`,
    }),
  ];
};

export const tooMuchWork = (options: ReadOptions): Finding =>
  find(
    'too-much-work',
    say('too-much-work/joining')`Joining the drawing needs more than ${{ limit: count(options.limits?.work ?? usualLimits.work) }} steps.`,
    {
      done: say('too-much-work/joining.done')`Nothing was joined.`,
      remedy: say('too-much-work/joining.remedy')`Save only what is to be cut, check the unit, or allow a smaller gap to be joined.`,
    },
  );

const words = phrases('drawing-whole', {
  ellipse: say`An ellipse`,
  spline: say`A spline`,
  arc: say`An arc`,
  line: say`A line`,
  oneFitted: (arcs: number) => say`1 curve that is neither line nor arc became ${{ arcs: count(arcs, 'arc') }}.`,
  manyFitted: (curves: number, arcs: number) =>
    say`${{ curves: count(curves, 'curve') }} that are neither line nor arc became ${{ arcs: count(arcs, 'arc') }}.`,
  straightened: (arcs: number) => say`${{ arcs: count(arcs, 'arc') }} so nearly straight that no program can name a centre became lines.`,
  oneHidden: (layers: readonly string[]) => say`1 loop lies on hidden layers (${{ layers: list(layers.map(name)) }}).`,
  manyHidden: (loops: number, layers: readonly string[]) =>
    say`${{ loops: count(loops, 'loop') }} lie on hidden layers (${{ layers: list(layers.map(name)) }}).`,
  hiddenOnly: say`closed loops on hidden layers only`,
  chainsOnly: (chains: number) => say`${{ chains: count(chains, 'open chain') }} and no closed loop`,
  kindsOnly: (kinds: readonly string[]) => say`only ${{ kinds: list(kinds.map(term)) }}, which bound no shape to cut`,
  nothing: say`nothing that is read here`,
});
