/** The formulas of gear teeth, as ISO 21771 has them. Lengths in mm, angles in rad; a profile shift is a multiple of the module. */

import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';
import { inMm, inRad, plain } from '../inputs.ts';
import { inv } from './involute.ts';

const SOURCE = 'iso-21771';

export const referenceDiameter: Formula<'module' | 'teeth'> = {
  name: say('teeth.reference-diameter')`reference diameter`,
  text: symbols`d = m z`,
  source: SOURCE,
  unit: 'mm',
  inputs: { module: inMm('module'), teeth: plain('teeth') },
  compute: ({ module, teeth }) => module * teeth,
};

export const moduleOfPitch: Formula<'diametralPitch'> = {
  name: say('teeth.module-of-pitch')`module`,
  text: symbols`m = ${25.4} / P`,
  source: 'inch',
  unit: 'mm',
  inputs: { diametralPitch: plain('diametral pitch') },
  compute: ({ diametralPitch }) => 25.4 / diametralPitch,
};

export const tipDiameter: Formula<'module' | 'teeth' | 'addendum' | 'shift'> = {
  name: say('teeth.tip-diameter')`tip diameter`,
  text: symbols`d_a = m (z + 2 h_a + 2 x)`,
  source: SOURCE,
  unit: 'mm',
  inputs: { module: inMm('module'), teeth: plain('teeth'), addendum: plain('addendum'), shift: plain('profile shift') },
  compute: ({ module, teeth, addendum, shift }) => module * (teeth + 2 * addendum + 2 * shift),
};

/** Internal teeth point to the middle; a shift above 0 moves them outwards. */
export const tipDiameterInside: typeof tipDiameter = {
  ...tipDiameter,
  text: symbols`d_a = m (z - 2 h_a + 2 x)`,
  compute: ({ module, teeth, addendum, shift }) => module * (teeth - 2 * addendum + 2 * shift),
};

export const rootDiameter: Formula<'module' | 'teeth' | 'dedendum' | 'shift'> = {
  name: say('teeth.root-diameter')`root diameter`,
  text: symbols`d_f = m (z - 2 h_f + 2 x)`,
  source: SOURCE,
  unit: 'mm',
  inputs: { module: inMm('module'), teeth: plain('teeth'), dedendum: plain('dedendum'), shift: plain('profile shift') },
  compute: ({ module, teeth, dedendum, shift }) => module * (teeth - 2 * dedendum + 2 * shift),
};

export const rootDiameterInside: typeof rootDiameter = {
  ...rootDiameter,
  text: symbols`d_f = m (z + 2 h_f + 2 x)`,
  compute: ({ module, teeth, dedendum, shift }) => module * (teeth + 2 * dedendum + 2 * shift),
};

export const baseDiameter: Formula<'reference' | 'pressureAngle'> = {
  name: say('teeth.base-diameter')`base diameter`,
  text: symbols`d_b = d cos α`,
  source: SOURCE,
  unit: 'mm',
  inputs: { reference: inMm('reference diameter'), pressureAngle: inRad('pressure angle') },
  compute: ({ reference, pressureAngle }) => reference * Math.cos(pressureAngle),
};

export const basePitch: Formula<'base' | 'teeth'> = {
  name: say('teeth.base-pitch')`base pitch`,
  text: symbols`p_b = π d_b / z`,
  source: SOURCE,
  unit: 'mm',
  inputs: { base: inMm('base diameter'), teeth: plain('teeth') },
  compute: ({ base, teeth }) => (Math.PI * base) / teeth,
};

/** `backlash` is what each tooth gives along the line of action. */
export const toothThickness: Formula<'module' | 'shift' | 'pressureAngle' | 'backlash'> = {
  name: say('teeth.tooth-thickness')`tooth thickness at the reference circle`,
  text: symbols`s = m (π / 2 + 2 x tan α) - j / cos α`,
  source: SOURCE,
  unit: 'mm',
  inputs: {
    module: inMm('module'),
    shift: plain('profile shift'),
    pressureAngle: inRad('pressure angle'),
    backlash: inMm('backlash of this gear'),
  },
  compute: ({ module, shift, pressureAngle, backlash }) =>
    module * (Math.PI / 2 + 2 * shift * Math.tan(pressureAngle)) - backlash / Math.cos(pressureAngle),
};

/** A shift outwards makes internal teeth thinner. */
export const toothThicknessInside: typeof toothThickness = {
  ...toothThickness,
  text: symbols`s = m (π / 2 - 2 x tan α) - j / cos α`,
  unchecked: 'the thickness of an external tooth with the shift turned about',
  compute: (values) => toothThickness.compute({ ...values, shift: -values.shift }),
};

export const baseThickness: Formula<'base' | 'reference' | 'thickness' | 'pressureAngle'> = {
  name: say('teeth.base-thickness')`tooth thickness at the base circle`,
  text: symbols`s_b = d_b (s / d + inv α)`,
  source: SOURCE,
  unit: 'mm',
  inputs: {
    base: inMm('base diameter'),
    reference: inMm('reference diameter'),
    thickness: inMm('tooth thickness at the reference circle'),
    pressureAngle: inRad('pressure angle'),
  },
  compute: ({ base, reference, thickness, pressureAngle }) => base * (thickness / reference + inv(pressureAngle)),
};

/** Over k teeth, square to two flanks: k - 1 base pitches and one tooth. */
export const spanSize: Formula<'basePitch' | 'baseThickness' | 'spanned'> = {
  name: say('teeth.span-size')`span`,
  text: symbols`W_k = (k - 1) p_b + s_b`,
  source: SOURCE,
  unit: 'mm',
  inputs: { basePitch: inMm('base pitch'), baseThickness: inMm('tooth thickness at the base circle'), spanned: plain('teeth spanned') },
  compute: ({ basePitch: p, baseThickness: s, spanned }) => (spanned - 1) * p + s,
};

/** Where the anvils touch, when both do so at the same height. */
export const spanContact: Formula<'base' | 'span'> = {
  name: say('teeth.span-contact')`diameter at which the span is taken`,
  text: symbols`d_c = √(d_b² + W_k²)`,
  source: SOURCE,
  unit: 'mm',
  inputs: { base: inMm('base diameter'), span: inMm('span') },
  compute: ({ base, span }) => Math.hypot(base, span),
};

/** For helical teeth with the normal module and the virtual number of teeth; `teeth` need not be whole then. */
export const chordalThickness: Formula<'module' | 'teeth' | 'thickness'> = {
  name: say('teeth.chordal-thickness')`chordal tooth thickness at the reference circle`,
  text: symbols`s_c = m z sin(s / (m z))`,
  source: SOURCE,
  unit: 'mm',
  inputs: { module: inMm('module'), teeth: plain('teeth'), thickness: inMm('tooth thickness at the reference circle') },
  compute: ({ module, teeth, thickness }) => module * teeth * Math.sin(thickness / (module * teeth)),
};

export const chordalHeight: Formula<'module' | 'teeth' | 'thickness' | 'addendum'> = {
  name: say('teeth.chordal-height')`height of the chord below the tip`,
  text: symbols`h_c = h_a + m z / 2 (1 - cos(s / (m z)))`,
  source: SOURCE,
  unit: 'mm',
  inputs: {
    module: inMm('module'),
    teeth: plain('teeth'),
    thickness: inMm('tooth thickness at the reference circle'),
    addendum: inMm('tip above the reference circle'),
  },
  compute: ({ module, teeth, thickness, addendum }) => addendum + ((module * teeth) / 2) * (1 - Math.cos(thickness / (module * teeth))),
};

/** Over two pins in opposite spaces, or in those nearest to opposite. */
export const overPins: Formula<'base' | 'pinAngle' | 'teeth' | 'pin'> = {
  name: say('teeth.over-pins')`size over two pins`,
  text: say('teeth.over-pins.by')`M = d_b / cos φ + D_M, for odd z with d_b cos(π / 2z) / cos φ`,
  source: SOURCE,
  unit: 'mm',
  inputs: {
    base: inMm('base diameter'),
    pinAngle: inRad('pressure angle at the centre of the pin'),
    teeth: plain('teeth'),
    pin: inMm('pin'),
  },
  compute: ({ base, pinAngle, teeth, pin }) => (base / Math.cos(pinAngle)) * (teeth % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * teeth))) + pin,
};

export const betweenPins: typeof overPins = {
  ...overPins,
  name: say('teeth.between-pins')`size between two pins`,
  text: say('teeth.between-pins.by')`M = d_b / cos φ - D_M, for odd z with d_b cos(π / 2z) / cos φ`,
  compute: ({ base, pinAngle, teeth, pin }) => (base / Math.cos(pinAngle)) * (teeth % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * teeth))) - pin,
};

/** Below it a rack with this straight depth cuts into the involute. */
export const leastShift: Formula<'depth' | 'module' | 'teeth' | 'pressureAngle'> = {
  name: say('teeth.least-shift')`least profile shift without undercut`,
  text: symbols`x = h / m - z sin² α / 2`,
  source: SOURCE,
  unit: '1',
  inputs: {
    depth: inMm('straight depth of the generating rack below its reference line'),
    module: inMm('module'),
    teeth: plain('teeth'),
    pressureAngle: inRad('pressure angle'),
  },
  compute: ({ depth, module, teeth, pressureAngle }) => depth / module - (teeth * Math.sin(pressureAngle) ** 2) / 2,
};

/** Of the thickness at any radius where the flank is an involute. */
export const thicknessAt: Formula<'radius' | 'base' | 'baseThickness'> = {
  name: say('teeth.thickness-at')`tooth thickness on a circle`,
  text: symbols`s_y = 2 r_y (s_b / d_b - inv α_y), cos α_y = r_b / r_y`,
  source: SOURCE,
  unit: 'mm',
  unchecked: 'no printed thickness on another circle was at hand; contours are held against the involute by sampling',
  inputs: { radius: inMm('radius'), base: inMm('base diameter'), baseThickness: inMm('tooth thickness at the base circle') },
  compute: ({ radius, base, baseThickness: s }) => 2 * radius * (s / base - inv(Math.acos(Math.min(1, base / 2 / radius)))),
};

/** Of how many pairs of teeth share the way of contact; its two ends are told on the line of action. */
export const contactRatio: Formula<'begins' | 'ends' | 'basePitch'> = {
  name: say('teeth.contact-ratio')`contact ratio`,
  text: symbols`ε = (g_2 - g_1) / p_b`,
  source: SOURCE,
  unit: '1',
  inputs: { begins: inMm('contact begins'), ends: inMm('contact ends'), basePitch: inMm('base pitch') },
  compute: ({ begins, ends, basePitch: p }) => (ends - begins) / p,
};

/** Over one pin in a space of a rack, from its back. */
export const overRackPin: Formula<'back' | 'pitch' | 'thickness' | 'pressureAngle' | 'pin'> = {
  name: say('teeth.over-rack-pin')`size over a pin from the back`,
  text: symbols`M = H - (p - s) / (2 tan α) + D_M / 2 (1 + 1 / sin α)`,
  source: SOURCE,
  unit: 'mm',
  inputs: {
    back: inMm('from the back to the reference line'),
    pitch: inMm('pitch'),
    thickness: inMm('tooth thickness at the reference line'),
    pressureAngle: inRad('pressure angle'),
    pin: inMm('pin'),
  },
  compute: ({ back, pitch, thickness, pressureAngle, pin }) =>
    back - (pitch - thickness) / (2 * Math.tan(pressureAngle)) + (pin / 2) * (1 + 1 / Math.sin(pressureAngle)),
};

export const rackPitch: Formula<'module'> = {
  name: say('teeth.rack-pitch')`pitch`,
  text: symbols`p = π m`,
  source: SOURCE,
  unit: 'mm',
  inputs: { module: inMm('module') },
  compute: ({ module }) => Math.PI * module,
};

/** The same for internal teeth, which become thinner inwards. */
export const thicknessAtInside: Formula<'radius' | 'base' | 'reference' | 'thickness' | 'pressureAngle'> = {
  name: say('teeth.thickness-at-inside')`thickness of an internal tooth on a circle`,
  text: symbols`s_y = 2 r_y (s / d - inv α + inv α_y), cos α_y = r_b / r_y`,
  source: SOURCE,
  unit: 'mm',
  inputs: {
    radius: inMm('radius'),
    base: inMm('base diameter'),
    reference: inMm('reference diameter'),
    thickness: inMm('tooth thickness at the reference circle'),
    pressureAngle: inRad('pressure angle'),
  },
  compute: ({ radius, base, reference, thickness, pressureAngle }) =>
    2 * radius * (thickness / reference - inv(pressureAngle) + inv(Math.acos(Math.min(1, base / 2 / radius)))),
  unchecked: 'external and internal flanks are the same curves: what is no tooth is space',
};
