/** The gear that rolls on a rack: where its middle lies, how many teeth carry, and whether tips run into roots. mm, rad. */

import type { Figure } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { atField } from '../../text/finding.ts';
import { count, number } from '../../text/part.ts';
import { say, symbols } from '../../text/say.ts';
import { asked, found } from '../figures.ts';
import { inMm, plain } from '../inputs.ts';
import { find } from '../teeth/findings.ts';
import { contactRatio } from '../teeth/formulas.ts';
import { CLEARANCE, contactOf, interferenceOf, type Mate, mateWheel, type Paired, short } from './mate.ts';
import { formHeight, halfAtHeight, halfTip, type RackForm } from './rack-form.ts';
import { deepest, depthIn, stringTo, type Wheel } from './rolling.ts';

export const rackDistance: Formula<'module' | 'teeth' | 'shift'> = {
  name: say('gear.rack-distance')`from the middle of the gear to the reference line of the rack`,
  text: symbols`H = m (z / 2 + x)`,
  source: 'iso-21771',
  unit: 'mm',
  inputs: {
    module: inMm('module'),
    teeth: plain('teeth of the gear'),
    shift: plain('profile shift of the gear'),
  },
  unchecked: 'the gear rolls on the line of the rack that touches its reference circle',
  compute: ({ module, teeth, shift }) => module * (teeth / 2 + shift),
};

interface RackFigures {
  readonly module: Figure;
  readonly pressureAngle: Figure;
  readonly basePitch: Figure;
}

/** `play` is the backlash that the rack gives along the line of action; it is taken back by moving it against the flank. */
export const rackPair = (figures: RackFigures, form: RackForm, play: number, mate: Mate): Paired => {
  const { module, pressureAngle, basePitch } = figures;
  const teeth = asked('mate-teeth', say('gear.mate-teeth')`teeth of the mate`, mate.teeth, '1');
  const shift = asked('mate-shift', say('gear.mate-shift')`profile shift of the mate`, mate.shift, '1');
  const distance = apply(rackDistance, { module, teeth, shift }, { key: 'centre-distance' });
  const wheel = mateWheel(figures, mate);
  if (wheel === undefined)
    return {
      sizes: [{ figure: distance }],
      findings: [
        find(
          'gear-impossible/rack-mate',
          say`A gear of ${{ teeth: count(mate.teeth, 'tooth') }} with a shift of ${{ shift: number(mate.shift) }} has no sound teeth of its own.`,
          { severity: 'warning', place: atField('mate') },
        ),
      ],
    };
  const rolling: Rolling = { form, wheel, height: distance.value, radius: (module.value * mate.teeth) / 2, play };
  const ratio = apply(contactRatio, { ...contactOn(rolling, [distance, pressureAngle]), basePitch }, { key: 'contact-ratio' });
  const room = distance.value - Math.max(wheel.tip - form.dedendum, wheel.root + form.addendum);
  return {
    sizes: [
      { figure: distance },
      { figure: ratio },
      {
        figure: found('bottom-clearance', CLEARANCE, room, say('gear.rack-clearance.by')`from tips to roots below the gear`, {
          from: [distance],
        }),
      },
    ],
    findings: [...interferenceOf(edgeInRack(rolling), edgeInGear(rolling), mate.teeth, module.value), ...short(ratio.value)],
  };
};

interface Rolling {
  readonly form: RackForm;
  readonly wheel: Wheel;
  /** Of the gear's middle above the reference line. */
  readonly height: number;
  /** Of the circle that rolls. */
  readonly radius: number;
  readonly play: number;
}

/** Told on the gear's string: the higher a place on the rack's flank, the shorter it is. */
const contactOn = ({ form, wheel, height, radius }: Rolling, from: readonly Figure[]) => {
  const sine = Math.sin(form.pressureAngle);
  const stringAt = (above: number): number => radius * sine + (height - radius - above) / sine;
  return contactOf(
    Math.max(stringTo(wheel.low, wheel.base), stringAt(form.addendum - form.tipChamfer)),
    Math.min(stringTo(wheel.high, wheel.base), stringAt(formHeight(form))),
    from,
  );
};

/** How far half a tooth is thicker once the play is taken back. */
const thicker = ({ form, play }: Rolling): number => play / 2 / Math.cos(form.pressureAngle);

/** How deep the edge of the gear goes into the rack. A tooth of the gear points down into a space of the rack at first. */
const edgeInRack = (rolling: Rolling): number => {
  const { form, wheel, height, radius } = rolling;
  const { radius: tip, angle } = wheel.edge;
  const reach = Math.acos(Math.min(1, Math.max(-1, (height - form.addendum) / tip)));
  return deepest(-reach - angle, reach - angle, (turn) => {
    const x = tip * Math.sin(turn + angle) - radius * turn - form.pitch / 2;
    const y = height - tip * Math.cos(turn + angle);
    if (y > form.addendum) return form.addendum - y;
    if (y < -form.dedendum) return -form.dedendum - y;
    const aside = Math.abs(x - form.pitch * Math.round(x / form.pitch));
    return (halfAtHeight(form, y) + thicker(rolling) - aside) * Math.cos(form.pressureAngle);
  });
};

/** How deep the edge of a rack's tooth goes into the gear. */
const edgeInGear = (rolling: Rolling): number => {
  const { form, wheel, height, radius } = rolling;
  const edge = halfTip(form) + thicker(rolling);
  const below = height - form.addendum;
  const reach = Math.sqrt(Math.max(0, wheel.tip ** 2 - below ** 2));
  return deepest(-reach - edge, reach - edge, (middle) => {
    const x = middle + edge;
    const turn = (middle - form.pitch / 2) / radius;
    return depthIn(wheel, { radius: Math.hypot(x, below), angle: Math.atan2(x, below) - turn });
  });
};
