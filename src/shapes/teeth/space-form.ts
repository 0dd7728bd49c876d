/** The opening of internal teeth: a ring of spaces that have the form of external teeth, rounded at their outer end. */

import type { Contour } from '../../geometry/contour.ts';
import type { Segment } from '../../geometry/segment.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { fixed, mm } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from './findings.ts';
import { inv } from './involute.ts';
import type { ToothFigures } from './tooth-figures.ts';
import { fullTipFillet, type Root, type ToothForm, toothed } from './tooth-form.ts';
import type { Radii } from './tooth-sizes.ts';

export type InternalOutline =
  | {
      readonly kind: 'made';
      readonly contour: Contour;
      readonly deviation: number;
      readonly formRadius: number;
      readonly inside: number;
      /** Half a space, from the middle of its root inwards. */
      readonly half: readonly Segment[];
    }
  | { readonly kind: 'refused'; readonly finding: Finding };

/** What is taken off the tips of the internal teeth: a chamfer, mm, and a relief from a radius inwards. */
export interface TipEnds {
  readonly chamfer: number;
  readonly relief?: { readonly amount: number; readonly from: number } | undefined;
}

export const rootTooRound = (radius: number, most: number): Text =>
  say(
    'gear-root-too-round',
  )`A root radius of ${{ radius: mm(radius) }} has no room between the flanks; ${{ most: mm(most, fixed(3)) }} is one full round.`;

const noRoom = (what: 'root' | 'tip' | 'chamfer' | 'relief', { chamfer, relief }: TipEnds): Finding => {
  const [path, text] =
    chamfer > 0 && what === 'chamfer'
      ? ['tipChamfer', chamferWithoutRoom(chamfer)]
      : relief !== undefined && what !== 'tip'
        ? ['reliefAmount', reliefTakesTip(relief.amount)]
        : ['dedendum', say('gear-impossible/space-flanks-meet')`The flanks of a space meet before they reach the root circle.`];
  return find('gear-impossible', text, { place: { kind: 'field', path } });
};

export const chamferWithoutRoom = (chamfer: number): Text =>
  say('gear-impossible/chamfer')`A tip chamfer of ${{ chamfer: mm(chamfer) }} has no room on the teeth.`;

export const reliefTakesTip = (amount: number): Text =>
  say('gear-impossible/relief-takes-tip')`A tip relief of ${{ relief: mm(amount) }} takes the whole tip away.`;

/** `radius` mm between flank and root circle, or the most of it that has room, or one full round. The middle of the first space lies on X. */
export const internalOutline = (
  figures: ToothFigures,
  { tip, root }: Pick<Radii, 'tip' | 'root'>,
  radius: number | `at most ${number}` | 'full',
  fit: number,
  ends: TipEnds = { chamfer: 0 },
): InternalOutline => {
  const { module, teeth, thickness, pressureAngle, base } = figures;
  const space = (Math.PI * module.value - thickness.value) / (module.value * teeth.value) + inv(pressureAngle.value);
  const form: Omit<ToothForm, 'rootForm' | 'tipFillet'> = {
    teeth: teeth.value,
    base: base.value / 2,
    halfAngle: space,
    tip: root,
    root: tip,
    tipChamfer: 0,
    footRelief: ends.relief,
  };
  const most = fullTipFillet(form);
  const wanted = typeof radius === 'number' ? radius : radius === 'full' ? most : Math.min(most, Number(radius.slice('at most '.length)));
  if (wanted > most + 1e-9)
    return {
      kind: 'refused',
      finding: find('gear-root-too-round', rootTooRound(wanted, most), { place: atField('rootRadius') }),
    };
  const rootForm: Root = ends.chamfer > 0 ? { kind: 'chamfer', size: ends.chamfer } : { kind: 'arc', radius: 0 };
  const made = toothed({ ...form, tipFillet: wanted, rootForm }, fit);
  if (made.kind === 'no room') return { kind: 'refused', finding: noRoom(made.what, ends) };
  const flankEnd = wanted > 0 ? base.value / 2 : root;
  const { contour, deviation, half } = made;
  return { kind: 'made', contour, deviation, formRadius: outerForm(form, wanted, flankEnd), inside: wanted, half };
};

/** Where the round begins: on the normal of the flank through its centre. */
const outerForm = ({ tip, base }: Pick<ToothForm, 'tip' | 'base'>, radius: number, sharp: number): number => {
  if (!(radius > 0)) return sharp;
  const string = Math.sqrt(Math.max(0, ((tip - radius) / base) ** 2 - 1));
  return base * Math.hypot(1, string + radius / base);
};
