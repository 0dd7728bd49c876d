/** The gear a gear runs with: centre distance, contact ratio, and whether tips run into roots. mm, rad; all without backlash. */

import type { Figure } from '../../quantity/figure.ts';
import type { Formula } from '../../quantity/formula.ts';
import { apply } from '../../quantity/formula.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { count, fixed, mm, number } from '../../text/part.ts';
import { say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { asked, found } from '../figures.ts';
import { inMm, inRad, plain } from '../inputs.ts';
import type { ShapeSize } from '../shape.ts';
import { find } from '../teeth/findings.ts';
import { contactRatio } from '../teeth/formulas.ts';
import { inv, inverseInv } from '../teeth/involute.ts';
import { trochoidRoot } from '../teeth/rack-root.ts';
import type { ToothFigures } from '../teeth/tooth-figures.ts';
import { halfTooth } from '../teeth/tooth-form.ts';
import { edgeInExternal, edgeInPinion, edgeInRing, stringTo, type Wheel, wheelOf } from './rolling.ts';

export interface Mate {
  readonly teeth: number;
  readonly shift: number;
  /** As multiples of the module: the tip of the mate, and the rack that generates its root. */
  readonly addendum: number;
  readonly dedendum: number;
  readonly rackTip: number;
}

export const centreDistance: Formula<'module' | 'teeth' | 'mateTeeth' | 'pressureAngle' | 'workingAngle'> = {
  name: say('gear.centre-distance')`centre distance`,
  text: symbols`a = m (z1 + z2) / 2 · cos α / cos α_w, inv α_w = inv α + 2 tan α (x1 + x2) / (z1 + z2)`,
  source: 'iso-21771',
  unit: 'mm',
  inputs: {
    module: inMm('module'),
    teeth: plain('teeth'),
    mateTeeth: plain('teeth of the mate, below 0 inside a ring'),
    pressureAngle: inRad('pressure angle'),
    workingAngle: inRad('working pressure angle'),
  },
  compute: ({ module, teeth, mateTeeth, pressureAngle, workingAngle }) =>
    (Math.abs(teeth + mateTeeth) / 2) * module * (Math.cos(pressureAngle) / Math.cos(workingAngle)),
};

/** Working pressure angle of two gears; an internal one counts its teeth and its shift below nothing. */
export const workingAngle = (pressureAngle: number, teeth: number, shifts: number): number | 'none' =>
  inverseInv(inv(pressureAngle) + (2 * Math.tan(pressureAngle) * shifts) / teeth);

/** What a mate is taken to be where nothing says otherwise: full depth, in modules. */
export const FULL_DEPTH = { addendum: 1, dedendum: 1.25, rackTip: 0.38 };

export interface Paired {
  readonly sizes: readonly ShapeSize[];
  readonly findings: readonly Finding[];
}

/** `own` is the gear itself, external, or a ring about a pinion. */
export const pairOf = (figures: ToothFigures, own: Wheel, mate: Mate): Paired => {
  const inRing = own.metal === 'outside';
  const { module, teeth, pressureAngle, shift, basePitch } = figures;
  const mateTeeth = asked('mate-teeth', say('gear.mate-teeth')`teeth of the mate`, inRing ? -mate.teeth : mate.teeth, '1');
  const mateShift = asked('mate-shift', say('gear.mate-shift')`profile shift of the mate`, mate.shift, '1');
  const together = teeth.value + mateTeeth.value;
  const angle = workingAngle(pressureAngle.value, together, inRing ? shift.value - mate.shift : shift.value + mate.shift);
  if (angle === 'none' || angle === 0)
    return only(
      doubt(
        'mateShift',
        say(
          'gear-impossible/shifts',
        )`With profile shifts of ${{ own: number(shift.value) }} and ${{ mate: number(mate.shift) }} the two gears cannot run without play.`,
      ),
    );
  const working = workingFigure(figures, angle, inRing, mateTeeth, mateShift);
  const distance = apply(
    centreDistance,
    { module, teeth, mateTeeth, pressureAngle, workingAngle: working },
    { key: 'centre-distance', name: say('gear.distance-to')`centre distance to a gear of ${{ teeth: count(mate.teeth, 'tooth') }}` },
  );
  const wheel = mateWheel(figures, mate);
  if (wheel === undefined)
    return {
      sizes: [{ figure: distance }],
      findings: [
        doubt(
          'mate',
          say(
            'gear-impossible/mate',
          )`A mate of ${{ teeth: count(mate.teeth, 'tooth') }} with a shift of ${{ shift: number(mate.shift) }} has no sound teeth of its own: they are pointed, or undercut up to their tips.`,
        ),
      ],
    };
  const contact = inRing ? contactInRing(own, wheel, distance, working) : contactOutside(own, wheel, distance, working);
  const ratio = apply(
    contactRatio,
    { ...contact, basePitch },
    { key: 'contact-ratio', name: say('gear.ratio-with')`contact ratio with a gear of ${{ teeth: count(mate.teeth, 'tooth') }}` },
  );
  const room = inRing
    ? Math.min(own.root - distance.value - wheel.tip, own.tip - distance.value - wheel.root)
    : distance.value - Math.max(own.tip + wheel.root, own.root + wheel.tip);
  return {
    sizes: [
      { figure: distance },
      { figure: ratio },
      {
        figure: found('bottom-clearance', CLEARANCE, room, ON_CENTRES, { from: [distance] }),
      },
    ],
    findings: [...interference(own, wheel, distance.value, module.value), ...short(ratio.value)],
  };
};

export const CLEARANCE = say('gear.bottom-clearance')`least room between tips and roots`;
const ON_CENTRES = say('gear.bottom-clearance.by')`from tips to roots on the line of centres`;

/** The working pressure angle as a figure that says how it was found. */
const workingFigure = (
  { pressureAngle, teeth, shift }: ToothFigures,
  angle: number,
  inRing: boolean,
  mateTeeth: Figure,
  mateShift: Figure,
): Figure => {
  const shifts = inRing ? symbols`(x2 - x1) / (z2 - z1)` : symbols`(x1 + x2) / (z1 + z2)`;
  const how = say('gear.working-angle.by')`the angle α_w with inv α_w = inv α + 2 tan α ${{ shifts }}`;
  return found('working-angle', say('gear.working-angle')`working pressure angle`, angle, how, {
    unit: 'rad',
    source: { file: 'iso-21771' },
    from: [pressureAngle, teeth, mateTeeth, shift, mateShift],
  });
};

const only = (finding: Finding): Paired => ({ sizes: [], findings: [finding] });

const doubt = (path: string, text: Text): Finding => find('gear-impossible', text, { severity: 'warning', place: { kind: 'field', path } });

/** The mate as a rack generates it, without backlash; nothing where it comes out pointed or without flanks. */
export const mateWheel = ({ module, pressureAngle }: Pick<ToothFigures, 'module' | 'pressureAngle'>, mate: Mate): Wheel | undefined => {
  const [m, angle] = [module.value, pressureAngle.value];
  const reference = (m * mate.teeth) / 2;
  const [tip, root, base] = [
    reference + m * (mate.addendum + mate.shift),
    reference - m * (mate.dedendum - mate.shift),
    reference * Math.cos(angle),
  ];
  const thickness = m * (Math.PI / 2 + 2 * mate.shift * Math.tan(angle));
  if (!(root > 0 && tip > Math.max(root, base) && thickness > 0)) return undefined;
  const rack = { reference, teeth: mate.teeth, pressureAngle: angle, depth: m * (mate.dedendum - mate.shift), thickness };
  const generated = trochoidRoot({ ...rack, tipRadius: m * mate.rackTip }, tip);
  if (generated.kind !== 'root') return undefined;
  const half = halfTooth(
    {
      teeth: mate.teeth,
      base,
      halfAngle: thickness / (2 * reference) + inv(angle),
      tip,
      root,
      rootForm: { kind: 'curve', curve: generated.curve, formRadius: generated.formRadius },
      tipChamfer: 0,
    },
    1e-4 * m,
  );
  if (half.kind !== 'half') return undefined;
  return wheelOf({ teeth: mate.teeth, metal: 'inside', base, tip, root, low: half.formRadius, high: tip }, half.segments, 0);
};

interface Contact {
  readonly begins: Figure;
  readonly ends: Figure;
}

/** The strings of both flanks add up to the line of action between the base circles; told from this gear's end of it. */
const contactOutside = (own: Wheel, mate: Wheel, distance: Figure, working: Figure): Contact => {
  const line = distance.value * Math.sin(working.value);
  return contactOf(
    Math.max(stringTo(own.low, own.base), line - stringTo(mate.high, mate.base)),
    Math.min(stringTo(own.high, own.base), line - stringTo(mate.low, mate.base)),
    [distance, working],
  );
};

/** The ring's string is the pinion's and the line between the base circles; told from the pinion's end. */
const contactInRing = (ring: Wheel, pinion: Wheel, distance: Figure, working: Figure): Contact => {
  const line = distance.value * Math.sin(working.value);
  return contactOf(
    Math.max(stringTo(pinion.low, pinion.base), stringTo(ring.low, ring.base) - line),
    Math.min(stringTo(pinion.high, pinion.base), stringTo(ring.high, ring.base) - line),
    [distance, working],
  );
};

export const contactOf = (begins: number, ends: number, from: readonly Figure[]): Contact => {
  const how = say('gear.contact.by')`where the involute of this gear or of its mate ends, as a length on the line of action`;
  return {
    begins: found('contact-begins', say('gear.contact-begins')`contact begins`, begins, how, { source: { file: 'iso-21771' }, from }),
    ends: found('contact-ends', say('gear.contact-ends')`contact ends`, Math.max(begins, ends), how, {
      source: { file: 'iso-21771' },
      from,
    }),
  };
};

/** Less than this part of the module is the fitting of the outlines. */
const TOUCHING = 0.001;

const interference = (own: Wheel, mate: Wheel, distance: number, module: number): readonly Finding[] =>
  own.metal === 'outside'
    ? interferenceOf(edgeInRing(own, mate, distance), edgeInPinion(mate, own, distance), mate.teeth, module)
    : interferenceOf(edgeInExternal(own, mate, distance), edgeInExternal(mate, own, distance), mate.teeth, module);

/** By how deep the edges go into the metal, mm. */
export const interferenceOf = (mateIn: number, ownIn: number, teeth: number, module: number): readonly Finding[] => {
  const told = (depth: number, text: Text): readonly Finding[] =>
    depth <= TOUCHING * module
      ? []
      : [
          find('gear-mate-interferes', text, {
            place: atField('mate'),
            remedy: say`Smaller tips, more profile shift on the smaller gear, a deeper root with a smaller radius, or a mate of other size.`,
          }),
        ];
  const mate = count(teeth, 'tooth');
  return [
    ...told(
      mateIn,
      say(
        'gear-mate-interferes/mate',
      )`The tips of the mate with ${{ teeth: mate }} go ${{ depth: mm(mateIn, fixed(3)) }} into the metal of this part.`,
    ),
    ...told(
      ownIn,
      say(
        'gear-mate-interferes/own',
      )`The tips of this part go ${{ depth: mm(ownIn, fixed(3)) }} into the metal of the mate with ${{ teeth: mate }}.`,
    ),
  ];
};

export const short = (ratio: number): readonly Finding[] =>
  ratio >= 1
    ? []
    : [
        find(
          'gear-contact-short',
          say`The contact ratio is ${{ ratio: number(ratio, fixed(2)) }}: between one pair of teeth and the next nothing carries.`,
          { place: atField('mate') },
        ),
      ];
