/** Findings about the drawing as a whole: fitted curves, hidden layers, nothing to cut, too much work. */
import type { Finding } from '../../text/finding.ts';
import { usualLimits } from '../budget.ts';
import type { DrawnFile } from '../curve/curve.ts';
import type { DrawingUnits, Loop, ReadOptions } from '../drawing.ts';
import { find } from '../findings.ts';
import type { Fitted } from '../piece/fit-pieces.ts';
import { count, length, point, spot } from '../place-in-file.ts';

const CURVES = { ellipse: 'An ellipse', spline: 'A spline', arc: 'An arc', line: 'A line' } as const;

export const toldFit = (fitted: Fitted, units: DrawingUnits, within: number): Finding[] => [
  ...(fitted.curves === 0
    ? []
    : [
        find(
          'curves-fitted',
          `${count(fitted.curves, 'curve')} that ${fitted.curves === 1 ? 'is' : 'are'} neither line nor arc became ${count(fitted.arcs, 'arc')}.`,
          {
            done: `No arc lies further than ${length(fitted.worst)} from its curve; ${length(within)} are allowed.`,
          },
        ),
      ]),
  ...fitted.failed.map(({ at, what }) =>
    find('curve-unfitted', `${CURVES[what]} at ${point(at, units)} could not be turned into arcs.`, {
      place: spot(at, units),
      done: 'It was left out.',
      remedy: 'Draw it again with fewer points, or as lines and arcs of a sensible size.',
    }),
  ),
];

/** mm of mean width, which is twice the area by the perimeter: the thinnest wire in use is about 20 µm (common practice, no source). */
const SLIVER = 0.01;

/** @param loops that do not meet themselves: the width of others says nothing */
export const toldSlivers = (loops: readonly Loop[], units: DrawingUnits): Finding[] =>
  loops.flatMap((loop) => {
    const width = ((2 * loop.area) / loop.perimeter) * units.millimetres;
    if (loop.hidden || width >= SLIVER || width === 0) return [];
    const at = loop.contour.segments[0]!.from;
    return [
      find(
        'loop-sliver',
        `${loop.id} at ${point(at, units)} is ${length(loop.perimeter * units.millimetres)} round and only ${length(width)} wide on average.`,
        {
          place: { ...spot(at, units), loop: loop.id },
          done: 'It was kept as drawn.',
          remedy: 'Leave it out, unless it is meant.',
        },
      ),
    ];
  });

export const toldHidden = (loops: readonly Loop[]): Finding[] => {
  const hidden = loops.filter((loop) => loop.hidden);
  if (hidden.length === 0) return [];
  const layers = [...new Set(hidden.map((loop) => loop.layer))].sort();
  return [
    find('loops-hidden', `${count(hidden.length, 'loop')} lie${hidden.length === 1 ? 's' : ''} on hidden layers (${layers.join(', ')}).`, {
      done: 'They are listed and not cut.',
    }),
  ];
};

export const toldEmpty = (loops: readonly Loop[], chains: number, file: DrawnFile): Finding[] => {
  if (loops.some((loop) => !loop.hidden)) return [];
  const why =
    loops.length > 0
      ? 'closed loops on hidden layers only'
      : chains > 0
        ? `${count(chains, 'open chain')} and no closed loop`
        : file.passedOver.size > 0
          ? `only ${[...file.passedOver.keys()].join(', ')}, which bound no shape to cut`
          : 'nothing that is read here';
  return [
    find('no-loop', `There is nothing to cut: the drawing holds ${why}.`, {
      remedy: 'Draw each outline closed, on a layer that is shown.',
    }),
  ];
};

export const tooMuchWork = (options: ReadOptions): Finding =>
  find('too-much-work', `Joining the drawing needs more than ${options.limits?.work ?? usualLimits.work} steps.`, {
    done: 'Nothing was joined.',
    remedy: 'Save only what is to be cut, check the unit, or allow a smaller join distance.',
  });
