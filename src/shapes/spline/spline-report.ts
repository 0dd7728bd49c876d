/** The sizes a spline is measured by, with the limits of its class. Radii in mm. */

import type { Figure } from '../../quantity/figure.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { fixed, mm, quantities } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { found } from '../figures.ts';
import { insideSizes } from '../refused.ts';
import type { MadeShape, Shape, ShapeSize } from '../shape.ts';
import { pinOn } from '../teeth/pin-choice.ts';
import { pinSize } from '../teeth/pins.ts';
import type { ToothFigures } from '../teeth/tooth-figures.ts';
import { circleSizes, type Radii, spanSizes } from '../teeth/tooth-sizes.ts';
import type { ClassRoom } from './classes.ts';
import { find } from './findings.ts';
import type { SplineRequest } from './spline-request.ts';
import { halfRoom, thickerBy, widths } from './spline-teeth.ts';

interface Drawn extends Pick<Shape, 'name' | 'outlines' | 'fitDeviation'> {
  readonly insideRadius: number;
  /** Teeth to span, where they can be. */
  readonly span: number | undefined;
}

export const reported = (
  request: SplineRequest,
  figures: ToothFigures,
  radii: Radii,
  room: ClassRoom | undefined,
  { span, ...drawn }: Drawn,
): MadeShape => {
  const pins = pinned(request, figures, radii, room);
  return {
    kind: 'made',
    shape: {
      ...drawn,
      starts: [],
      sizes: [
        ...(span === undefined ? [] : spans(figures, span, request.spanTeeth, room)),
        ...pins.sizes,
        ...circleSizes(figures, radii, circlesOf(radii)),
        ...widths(figures, request.part, room),
        ...insideSizes(drawn.insideRadius),
      ],
      findings: pins.findings,
    },
  };
};

/** Tip and root follow from module and teeth, moved by the clearance and by the class. */
const circlesOf = ({ tip, root }: Radii): { readonly tip: Figure; readonly root: Figure } => {
  const more = { source: { file: 'involute-splines' } };
  return {
    tip: found(
      'tip-diameter',
      say('spline.tip-diameter')`tip diameter`,
      2 * tip,
      say('spline.circles.by')`by module, teeth and root`,
      more,
    ),
    root: found(
      'root-diameter',
      say('spline.root-diameter')`root diameter`,
      2 * root,
      say('spline.circles.by')`by module, teeth and root`,
      more,
    ),
  };
};

const spans = (figures: ToothFigures, span: number, wanted: number | undefined, room: ClassRoom | undefined): readonly ShapeSize[] => {
  const [size, ...more] = spanSizes(figures, span, wanted);
  const limits = limitsBy(room, (by) => spanSizes(thickerBy(figures, by), span, wanted)[0]?.figure.value);
  return size === undefined ? [] : [{ ...size, ...limits }, ...more];
};

/** What a size comes to with the thinnest and the thickest tooth of the class. */
const limitsBy = (room: ClassRoom | undefined, size: (thicker: number) => number | undefined): Pick<ShapeSize, 'limits'> => {
  const half = halfRoom(room);
  if (half === undefined) return {};
  const ends = [size(-half), size(half)].filter((v) => v !== undefined);
  return ends.length < 2 ? {} : { limits: { low: Math.min(...ends), high: Math.max(...ends) } };
};

const pinned = (
  { pin: asked, part }: SplineRequest,
  figures: ToothFigures,
  { tip, root, form }: Radii,
  room: ClassRoom | undefined,
): { readonly sizes: readonly ShapeSize[]; readonly findings: readonly Finding[] } => {
  const side = part === 'shaft' ? 'external' : 'internal';
  const [low, high] = [Math.min(tip, form), Math.max(tip, form)];
  const pin = asked ?? pinOn(figures, { side, tip, root, low, high });
  if (pin === undefined) return { sizes: [], findings: [] };
  const seated = pinSize(figures, pin, side, asked === undefined ? 'alone' : 'asked');
  const rests = seated !== undefined && seated.contact >= low - 1e-9 && seated.contact <= high + 1e-9;
  return {
    sizes:
      seated === undefined
        ? []
        : [
            {
              figure: seated.size,
              taking: seated.taking,
              ...limitsBy(room, (by) => pinSize(thickerBy(figures, by), pin, side)?.size.value),
            },
          ],
    findings: rests
      ? []
      : [
          find(
            'spline-impossible/pin',
            say`A pin of ${{ pin: mm(pin) }} does not rest on the flanks, which reach from ${{ flanks: quantities([2 * low, 2 * high], 'to', 'mm', fixed(3)) }}.`,
            { severity: 'warning', place: atField('pin') },
          ),
        ],
  };
};
