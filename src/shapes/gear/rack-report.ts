/** The sizes a rack is measured by, and what has to be known about it. Heights in mm above the reference line. */

import { point } from '../../geometry/segment.ts';
import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { fixed, mm, quantities, upTo } from '../../text/part.ts';
import { say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { askedOrFound, found } from '../figures.ts';
import { insideSizes } from '../refused.ts';
import type { Shape, ShapeSize } from '../shape.ts';
import { find } from '../teeth/findings.ts';
import { basePitch, overRackPin } from '../teeth/formulas.ts';
import { bestPinIs } from '../teeth/pin-choice.ts';
import { STOCK, TOUCHING } from '../teeth/pins.ts';
import { standardPin } from '../teeth/standard-pins.ts';
import { sharpRoot, thinTip } from './gear-report.ts';
import { FULL_DEPTH, type Paired } from './mate.ts';
import { flankTop, formHeight, halfFlank, halfTip, type RackForm } from './rack-form.ts';
import { rackPair } from './rack-mate.ts';
import type { RackRequest } from './rack-request.ts';

interface RackFigures {
  readonly module: Figure;
  readonly pressureAngle: Figure;
  readonly thickness: Figure;
  readonly pitch: Figure;
}

export const rackReport = (
  request: RackRequest,
  figures: RackFigures,
  form: RackForm,
  inside: number | undefined,
): Pick<Shape, 'sizes' | 'findings' | 'insideRadius'> => {
  const pins = pinned(request, figures, form);
  const base = baseOf(figures);
  const pair: Paired =
    request.mate === undefined
      ? { sizes: [], findings: [] }
      : rackPair({ ...figures, basePitch: base }, form, request.clearance * request.share, {
          ...FULL_DEPTH,
          teeth: request.mate,
          shift: request.mateShift,
          addendum: request.mateAddendum ?? FULL_DEPTH.addendum,
        });
  return {
    insideRadius: inside,
    sizes: [...pins.sizes, ...plainSizes(figures, form), { figure: base }, ...insideSizes(inside), ...pair.sizes],
    findings: [
      ...pins.findings,
      ...thinTip(2 * halfTip(form), figures.module.value, 'addendum'),
      ...(inside === undefined ? [] : sharpRoot(inside, 'rootRadius')),
      ...pair.findings,
    ],
  };
};

/** A rack is a gear of any number of teeth: its base pitch is that of a gear of one. */
const baseOf = ({ module, pressureAngle }: RackFigures): Figure => {
  const value = module.value * Math.cos(pressureAngle.value);
  const one = found('one-tooth', say('gear.one-tooth')`teeth`, 1, say('gear.one-tooth.by')`of a gear of one tooth`, {
    unit: '1',
    source: { file: 'definition' },
  });
  const base = found('base-of-one', say('gear.base-of-one')`base diameter for each tooth`, value, symbols`m cos α`, {
    source: { file: 'iso-21771' },
    from: [module, pressureAngle],
  });
  return apply(basePitch, { base, teeth: one }, { key: 'base-pitch' });
};

const plainSizes = ({ thickness, pitch, module }: RackFigures, form: RackForm): readonly ShapeSize[] => {
  const middle = form.teeth % 2 === 0 ? form.pitch / 2 : 0;
  const across = (height: number, half: number) =>
    ({ kind: 'distance', from: point(middle - half, height), to: point(middle + half, height) }) as const;
  const end = (form.teeth * form.pitch) / 2;
  const told = (key: string, name: Text, value: number, how: Text, from: readonly Figure[]): Figure =>
    found(key, name, value, how, { source: { file: 'definition' }, from });
  return [
    { figure: thickness, taking: across(0, halfFlank(form, 0)) },
    {
      figure: told(
        'chordal-height',
        say('gear.chordal-height')`height of the reference line below the tips`,
        form.addendum,
        symbols`m h_a`,
        [module],
      ),
      taking: { kind: 'distance', from: point(middle, 0), to: point(middle, form.addendum) },
    },
    { figure: pitch },
    {
      figure: told('whole-depth', say('gear.whole-depth')`depth of the teeth`, form.addendum + form.dedendum, symbols`m (h_a + h_f)`, [
        module,
      ]),
    },
    {
      figure: told('height', say('gear.height')`height over the teeth`, form.back + form.addendum, symbols`H + m h_a`, [module]),
      taking: { kind: 'distance', from: point(end, -form.back), to: point(end, form.addendum) },
    },
    {
      figure: told('length', say('gear.length')`length`, 2 * end, symbols`z π m`, [pitch]),
      taking: { kind: 'distance', from: point(-end, -form.back), to: point(end, -form.back) },
    },
    {
      figure: told(
        'tip-thickness',
        say('gear.tip-width')`width of the tips`,
        2 * halfTip(form),
        say('gear.tip-width.by')`s - 2 h_a tan α, less chamfers and relief`,
        [thickness],
      ),
    },
  ];
};

/** The flanks of a space, made longer, meet at this height. */
const meeting = ({ pitch, thickness, pressureAngle }: RackForm): number => -(pitch - thickness) / 2 / Math.tan(pressureAngle);

const pinned = (
  request: RackRequest,
  figures: RackFigures,
  form: RackForm,
): { readonly sizes: readonly ShapeSize[]; readonly findings: readonly Finding[] } => {
  if (form.teeth < 2) return { sizes: [], findings: [] };
  const best = bestPin(form, request.diametralPitch);
  const ours = best === undefined ? [] : [pinSize(figures, form, best, request, request.pin !== undefined)];
  if (request.pin === undefined) return { sizes: ours, findings: [] };
  const fault = pinFault(form, request.pin);
  return {
    sizes: [pinSize(figures, form, request.pin, request, false), ...ours],
    findings:
      fault === undefined
        ? []
        : [
            find('gear-pin-off-flank', fault, {
              place: atField('pin'),
              remedy: best === undefined ? undefined : bestPinIs(best),
            }),
          ],
  };
};

const bestPin = (form: RackForm, diametralPitch: number | undefined): number | undefined => {
  const middle = (formHeight(form) + flankTop(form)) / 2;
  const ideal = (2 * (middle - meeting(form)) * Math.sin(form.pressureAngle)) / Math.cos(form.pressureAngle) ** 2;
  return standardPin(ideal, (pin) => pinFault(form, pin) === undefined, diametralPitch);
};

const centreOf = (form: RackForm, pin: number): number => meeting(form) + pin / 2 / Math.sin(form.pressureAngle);

const pinFault = (form: RackForm, pin: number): Text | undefined => {
  const centre = centreOf(form, pin);
  const contact = centre - (pin / 2) * Math.sin(form.pressureAngle);
  const [low, high] = [formHeight(form), flankTop(form)];
  if (contact < low - 1e-9 || contact > high + 1e-9)
    return say(
      'gear-pin-off-flank/rack-beside',
    )`A pin of ${{ pin: mm(pin) }} would touch ${{ contact: mm(contact, fixed(3)) }} above the reference line; the flank reaches from ${{ flank: quantities([low, high], 'to', 'mm', fixed(3)) }}.`;
  if (centre - pin / 2 < -form.dedendum)
    return say('gear-pin-off-flank/on-root-line')`A pin of ${{ pin: mm(pin) }} rests on the root line before it touches the flanks.`;
  return centre + pin / 2 <= form.addendum
    ? say('gear-pin-off-flank/rack-below-tips')`A pin of ${{ pin: mm(pin) }} lies below the tips, where a flat anvil does not reach it.`
    : undefined;
};

const pinSize = (figures: RackFigures, form: RackForm, pin: number, request: RackRequest, best: boolean): ShapeSize => {
  const x = form.teeth % 2 === 0 ? 0 : form.pitch / 2;
  const back = askedOrFound(
    request.back,
    'back',
    say('gear.back')`from the back to the reference line`,
    form.back,
    say('gear.back.by')`four modules`,
    {
      source: { file: 'common-practice' },
    },
  );
  const wanted = best ? undefined : request.pin;
  const figure = apply(
    overRackPin,
    { ...figures, back, pin: askedOrFound(wanted, 'pin', say('gear.pin')`pin`, pin, TOUCHING, STOCK) },
    { key: best ? 'over-best-pin' : 'over-pin', name: say('gear.over-rack-pin')`over a pin of ${{ pin: mm(pin, upTo(6)) }} from the back` },
  );
  const centre = centreOf(form, pin);
  return {
    figure,
    taking: { kind: 'pins', centres: [point(x, centre)], diameter: pin, from: point(x, -form.back), to: point(x, centre + pin / 2) },
  };
};
