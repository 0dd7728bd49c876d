/** The sizes an external gear is measured by, and what has to be known about it. */

import { type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { found } from '../figures.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import type { WheelBore } from '../keyway/wheel-bore.ts';
import { insideSizes } from '../refused.ts';
import type { Outline, Shape, ShapeSize } from '../shape.ts';
import { find } from '../teeth/findings.ts';
import { pinned } from '../teeth/pin-choice.ts';
import type { ToothFigures } from '../teeth/tooth-figures.ts';
import { chordSizes, circleSizes, spanSizes, tipThickness } from '../teeth/tooth-sizes.ts';
import type { GearRequest } from './gear-keys.ts';
import { flankTop, type Limits } from './gear-limits.ts';
import { type Paired, pairOf } from './mate.ts';
import { type Wheel, wheelOf } from './rolling.ts';

/** The contours with what they were made of. */
export interface DrawnGear extends Pick<Shape, 'name' | 'fitDeviation'> {
  readonly teeth: Outline;
  readonly bore: WheelBore;
  readonly half: Parameters<typeof wheelOf>[1];
  /** Where the involute ends towards the root, a radius. */
  readonly form: number;
  /** Teeth to span, where they can be. */
  readonly span: number | undefined;
}

export const gearReport = (
  { half, form, teeth, bore, span, ...drawing }: DrawnGear,
  request: GearRequest,
  figures: ToothFigures,
  limits: Limits,
  before: readonly Finding[],
): Shape => {
  const outlines = [teeth, ...bore.outlines];
  const [root, bored] = [insideRadiusOf([teeth]), insideRadiusOf(bore.outlines)];
  const inside = root === undefined || bored === undefined ? (root ?? bored) : Math.min(root, bored);
  const high = flankTop(request, limits, figures);
  const pins = pinned(figures, { side: 'external', tip: limits.tip, root: limits.root, low: form, high }, request.pin);
  const own = wheelOf(
    {
      teeth: request.teeth,
      metal: 'inside',
      base: figures.base.value / 2,
      tip: limits.tip,
      root: limits.root,
      low: form,
      high: limits.tip - request.tipChamfer,
    },
    half,
    request.clearance * request.share,
  );
  const pair = paired(figures, own, request);
  const top = tipThickness(figures, limits.tip);
  return {
    ...drawing,
    outlines,
    starts: [],
    insideRadius: inside,
    sizes: [
      ...(span === undefined ? [] : spanSizes(figures, span, request.spanTeeth)),
      ...pins.sizes,
      ...chordSizes(figures, limits.tip),
      ...circles(figures, limits, form, request),
      { figure: figures.thickness },
      top,
      { figure: figures.basePitch },
      ...insideSizes(inside),
      ...bore.sizes,
      ...pair.sizes,
    ],
    findings: [
      ...before,
      ...thinTip(top.figure.value, figures.module.value),
      ...pins.findings,
      ...(root === undefined ? [] : sharpRoot(root)),
      ...bore.findings,
      ...pair.findings,
    ],
  };
};

const circles = (figures: ToothFigures, { tipFigure, rootFigure }: Limits, form: number, request: GearRequest): readonly ShapeSize[] => {
  const how = request.root === 'rack' ? forms.rack : forms.round;
  return circleSizes(
    figures,
    { form },
    { tip: tipFigure, root: rootFigure, form: found('form-diameter', FORM, 2 * form, how, { from: [figures.base, rootFigure] }) },
  );
};

const forms = phrases('form-diameter', {
  rack: say`where the root that the rack generates meets the involute`,
  round: say`where the round of the root touches the flank`,
});

const FORM = say('gear.form-diameter')`form diameter, where the involute ends`;

const paired = (figures: ToothFigures, own: Wheel, request: GearRequest): Paired =>
  request.mate === undefined
    ? { sizes: [], findings: [] }
    : pairOf(figures, own, {
        teeth: request.mate,
        shift: request.mateShift,
        addendum: request.mateAddendum ?? request.addendum,
        dedendum: request.dedendum,
        rackTip: request.rackTip,
      });

/** Common practice, no source: a hardened tip wants a fifth of the module. */
export const thinTip = (thickness: number, module: number, path = 'shift'): readonly Finding[] =>
  thickness >= 0.2 * module
    ? []
    : [
        find(
          'gear-tip-thin',
          say`The tooth is ${{ thickness: mm(thickness, fixed(3)) }} thick at its tip, less than a fifth of the module; it chips when it is hardened.`,
          { place: { kind: 'field', path } },
        ),
      ];

/** Common practice, no source: the thinnest wires, of 0.02 mm, cut a little wider than they are. */
const LEAST = 0.015;
const THINNEST = 0.02;

export const sharpRoot = (inside: number, path = 'module'): readonly Finding[] =>
  inside >= LEAST
    ? []
    : [
        find(
          'gear-root-sharp',
          say`The smallest inside radius is ${{ inside: mm(inside, fixed(4)) }}. Even the thinnest wires, of ${{ wire: mm(THINNEST) }}, leave about ${{ least: mm(LEAST) }}: the corner comes out rounder than drawn.`,
          { place: { kind: 'field', path }, remedy: remedy(say`A root with a radius; it is stronger as well.`, { field: 'rootRadius' }) },
        ),
      ];
