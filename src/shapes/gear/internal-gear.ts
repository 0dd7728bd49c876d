/** Internal spur gears: an opening whose spaces have the form of external teeth, with round roots; with an outside diameter the whole ring. */

import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { found } from '../figures.ts';
import { shapeKind } from '../kind.ts';
import { insideSizes } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from '../teeth/findings.ts';
import { thicknessAtInside } from '../teeth/formulas.ts';
import { pinned } from '../teeth/pin-choice.ts';
import { type Flanked, reliefBegin, reliefFault } from '../teeth/relief.ts';
import { internalOutline } from '../teeth/space-form.ts';
import { type ToothFigures, toothFigures } from '../teeth/tooth-figures.ts';
import { sizeOf } from '../teeth/tooth-keys.ts';
import { circleSizes } from '../teeth/tooth-sizes.ts';
import { type Limits, limitsOf } from './gear-limits.ts';
import { sharpRoot, thinTip } from './gear-report.ts';
import { type InternalGearRequest, internalGearQuestion } from './internal-gear-request.ts';
import { FULL_DEPTH, type Paired, pairOf } from './mate.ts';
import { wheelOf } from './rolling.ts';

const words = phrases('internal-gear', {
  name: (size: Text, teeth: number) => say`Internal gear, ${{ size }}, ${{ teeth: count(teeth, 'tooth') }}`,
});

export const internalGear = shapeKind({
  ...internalGearQuestion,
  make: (request) => {
    const sized = sizeOf(request);
    if (sized.kind === 'refused') return { kind: 'refused', findings: [sized.finding] };
    const figures = toothFigures(sized.size, request.teeth, request.shift, request.clearance * request.share, 'internal');
    const limits = limitsOf(request, figures, 'internal');
    const fault =
      faultOf(request, figures, limits) ??
      pointedFault(request, figures, limits) ??
      reliefFault(request, flankedOf(request, figures, limits));
    if (fault !== undefined) return { kind: 'refused', findings: [fault] };
    return drawn(request, figures, limits, words.name(sized.size.words, request.teeth));
  },
});

const impossible = (path: string, text: Text): Finding => find('gear-impossible', text, { place: { kind: 'field', path } });

const faultOf = (request: InternalGearRequest, { thickness, module, base }: ToothFigures, { tip, root }: Limits): Finding | undefined => {
  const foot = base.value / 2;
  if (!(thickness.value > 0) || thickness.value >= Math.PI * module.value)
    return impossible(
      request.clearance === 0 ? 'shift' : 'clearance',
      say(
        'gear-impossible/ring-without-space',
      )`The teeth would be ${{ thickness: mm(thickness.value, fixed(3)) }} thick at the reference circle, where one follows the other after ${{ pitch: mm(Math.PI * module.value, fixed(3)) }}.`,
    );
  if (tip < foot)
    return find(
      'gear-ring-tip',
      say`The tip circle of ${{ tip: mm(2 * tip, fixed(3)) }} lies inside the base circle of ${{ base: mm(2 * foot, fixed(3)) }}, where there is no involute: the tips would foul every pinion.`,
      {
        place: { kind: 'field', path: request.tipDiameter === undefined ? 'addendum' : 'tipDiameter' },
        remedy: remedy(say`A tip diameter of ${{ base: mm(2 * foot, fixed(3)) }} or more, more teeth, or a larger pressure angle.`, {
          field: 'tipDiameter',
          value: Math.ceil(2 * foot * 1000) / 1000,
        }),
      },
    );
  if (root <= tip)
    return impossible(
      request.tipDiameter === undefined ? 'dedendum' : 'tipDiameter',
      say(
        'gear-impossible/root-inside-tip',
      )`The root circle of ${{ root: mm(2 * root, fixed(3)) }} lies inside the tip circle of ${{ tip: mm(2 * tip, fixed(3)) }}.`,
    );
  if (request.outside !== undefined && request.outside / 2 <= root)
    return impossible(
      'outside',
      say(
        'gear-impossible/outside',
      )`An outside diameter of ${{ outside: mm(request.outside) }} leaves no metal behind the root circle of ${{ root: mm(2 * root, fixed(3)) }}.`,
    );
  if (request.mate !== undefined && request.mate >= request.teeth)
    return impossible(
      'mate',
      say(
        'gear-impossible/pinion-in-ring',
      )`A pinion of ${{ pinion: count(request.mate, 'tooth') }} does not run inside a ring of ${{ ring: count(request.teeth) }}.`,
    );
  return undefined;
};

/** The involute may end a little before the root circle, where its round begins. */
const flankedOf = ({ tipChamfer }: InternalGearRequest, { base }: ToothFigures, { tip, root }: Limits): Flanked => ({
  tip,
  rootSide: root,
  tipSide: tip + tipChamfer,
  base: base.value / 2,
});

const tipThickness = (figures: ToothFigures, tip: number): Figure => {
  const radius = found('tip-radius', say('gear.tip-radius')`tip radius`, tip, say('gear.tip-radius.by')`half the tip diameter`, {
    source: { file: 'definition' },
  });
  return apply(
    thicknessAtInside,
    { ...figures, radius },
    { key: 'tip-thickness', name: say('gear.tip-thickness')`tooth thickness at the tip, before chamfer or relief` },
  );
};

const pointedFault = (request: InternalGearRequest, figures: ToothFigures, { tip }: Limits): Finding | undefined =>
  tipThickness(figures, tip).value > 0
    ? undefined
    : find('gear-pointed/ring', say`The flanks of a tooth meet outside of the tip circle of ${{ tip: mm(2 * tip, fixed(3)) }}.`, {
        place: { kind: 'field', path: request.tipDiameter === undefined ? 'addendum' : 'tipDiameter' },
        remedy: remedy(say`A larger tip diameter.`, { field: 'tipDiameter' }),
      });

const SHAPER = 0.25;

const drawn = (request: InternalGearRequest, figures: ToothFigures, limits: Limits, name: Text): MadeShape => {
  const { tip, root, tipFigure, rootFigure } = limits;
  const radius = request.root === 'full' ? 'full' : (request.rootRadius ?? (`at most ${SHAPER * figures.module.value}` as const));
  const flank = flankedOf(request, figures, limits);
  const begin = reliefBegin(request, flank);
  const made = internalOutline(figures, { tip, root }, radius, request.fit, {
    chamfer: request.tipChamfer,
    relief: request.reliefAmount > 0 ? { amount: request.reliefAmount, from: begin } : undefined,
  });
  if (made.kind === 'refused') return { kind: 'refused', findings: [made.finding] };
  const outlines: readonly Outline[] = [
    ...(request.outside === undefined
      ? []
      : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'ring' } as const]),
    { contour: made.contour, metal: 'outside' },
  ];
  const form = made.formRadius;
  const how = say('gear.form-of-round')`where the round of the root touches the flank`;
  const told = found('form-diameter', say('gear.form-diameter')`form diameter, where the involute ends`, 2 * form, how, {
    from: [figures.base, rootFigure],
  });
  const low = request.reliefAmount > 0 ? Math.max(flank.tipSide, begin) : flank.tipSide;
  const pins = pinned(figures, { side: 'internal', tip, root, low, high: form }, request.pin);
  const pair = paired(request, figures, limits, made);
  const top = tipThickness(figures, tip);
  return {
    kind: 'made',
    shape: {
      name,
      outlines,
      starts: [],
      sizes: [
        ...pins.sizes,
        ...circleSizes(figures, { form }, { tip: tipFigure, root: rootFigure, form: told }),
        { figure: figures.thickness },
        { figure: top },
        { figure: figures.basePitch },
        ...insideSizes(made.inside),
        ...pair.sizes,
      ],
      fitDeviation: made.deviation,
      insideRadius: made.inside,
      findings: [
        ...thinTip(top.value, figures.module.value, 'addendum'),
        ...pins.findings,
        ...sharpRoot(made.inside, 'rootRadius'),
        ...pair.findings,
      ],
    },
  };
};

const paired = (
  request: InternalGearRequest,
  figures: ToothFigures,
  { tip, root }: Limits,
  { half, formRadius }: Extract<ReturnType<typeof internalOutline>, { kind: 'made' }>,
): Paired => {
  if (request.mate === undefined) return { sizes: [], findings: [] };
  const circles = { teeth: request.teeth, base: figures.base.value / 2, tip, root, low: tip + request.tipChamfer, high: formRadius };
  const own = wheelOf({ ...circles, metal: 'outside' }, half, request.clearance * request.share);
  return pairOf(figures, own, {
    ...FULL_DEPTH,
    teeth: request.mate,
    shift: request.mateShift,
    addendum: request.mateAddendum ?? FULL_DEPTH.addendum,
  });
};
