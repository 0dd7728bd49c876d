/** External spur gears: involute flanks, with the root a rack generates, a stated radius, or one full round. */
import { atField } from '../../text/finding.ts';
import { count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { wheelBore } from '../keyway/wheel-bore.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from '../teeth/findings.ts';
import { reliefBegin } from '../teeth/relief.ts';
import { chamferWithoutRoom, reliefTakesTip } from '../teeth/space-form.ts';
import { type ToothFigures, toothFigures } from '../teeth/tooth-figures.ts';
import { type ToothForm, toothed } from '../teeth/tooth-form.ts';
import { sizeOf } from '../teeth/tooth-keys.ts';
import { spanned } from '../teeth/tooth-sizes.ts';
import { type GearRequest, gearQuestion } from './gear-keys.ts';
import { faultsOf, flankedOf, flankTop, type Limits, limitsOf } from './gear-limits.ts';
import { type DrawnGear, gearReport } from './gear-report.ts';
import { type Rooted, rootOf } from './gear-root.ts';

const words = phrases('gear', {
  name: (size: Text, teeth: number) => say`Spur gear, ${{ size }}, ${{ teeth: count(teeth, 'tooth') }}`,
});

export const gear = shapeKind({
  ...gearQuestion,
  make: (request) => {
    const sized = sizeOf(request);
    if (sized.kind === 'refused') return { kind: 'refused', findings: [sized.finding] };
    const { size } = sized;
    const figures = toothFigures(size, request.teeth, request.shift, request.clearance * request.share);
    const limits = limitsOf(request, figures);
    const impossible = faultsOf(request, figures, limits);
    if (impossible.length > 0) return { kind: 'refused', findings: impossible };
    const form = plainForm(request, figures, limits);
    const rooted = rootOf(request, figures, limits, form);
    if (rooted.kind === 'refused') return rooted;
    return drawn(request, figures, limits, { form, name: words.name(size.words, request.teeth) }, rooted);
  },
});

const plainForm = (request: GearRequest, figures: ToothFigures, limits: Limits): Omit<ToothForm, 'rootForm'> => ({
  teeth: request.teeth,
  base: figures.base.value / 2,
  halfAngle: figures.baseThickness.value / figures.base.value,
  tip: limits.tip,
  root: limits.root,
  tipChamfer: request.tipChamfer,
  tipRelief:
    request.reliefAmount > 0
      ? { amount: request.reliefAmount, from: reliefBegin(request, flankedOf(request, limits, figures)) }
      : undefined,
});

const drawn = (
  request: GearRequest,
  figures: ToothFigures,
  limits: Limits,
  { form, name }: { readonly form: Omit<ToothForm, 'rootForm'>; readonly name: Text },
  { root, findings }: Extract<Rooted, { kind: 'rooted' }>,
): MadeShape => {
  const made = toothed({ ...form, rootForm: root }, request.fit);
  if (made.kind === 'no room') return noRoom(made.what, request);
  const bore = wheelBore(request, { root: limits.root, depth: limits.tip - limits.root });
  if (bore.kind === 'refused') return bore;
  const span = spanned(figures, { tip: flankTop(request, limits, figures), form: made.formRadius }, request.spanTeeth);
  if (span.kind === 'off the flank') return refusedWith(find('gear-impossible', span.text, { place: atField('spanTeeth') }));
  const teeth: Outline = { contour: made.contour, metal: 'inside' };
  const shown: DrawnGear = { name, teeth, bore, fitDeviation: made.deviation, half: made.half, form: made.formRadius, span: span.teeth };
  return { kind: 'made', shape: gearReport(shown, request, figures, limits, findings) };
};

const noRoom = (what: 'root' | 'tip' | 'chamfer' | 'relief', request: GearRequest): Extract<MadeShape, { kind: 'refused' }> => {
  const fields = {
    chamfer: 'tipChamfer',
    tip: 'reliefAmount',
    relief: 'reliefFrom',
    root: request.root === 'radius' ? 'rootRadius' : 'dedendum',
  };
  const texts = {
    chamfer: chamferWithoutRoom(request.tipChamfer),
    tip: reliefTakesTip(request.reliefAmount),
    relief: say('gear-impossible/relief-below-form')`The tip relief begins below the form diameter, where there is no involute yet.`,
    root: say(
      'gear-impossible/roots-without-room',
    )`The flanks of a space meet above the root circle: the teeth have no room for their roots.`,
  };
  return refusedWith(find('gear-impossible', texts[what], { place: { kind: 'field', path: fields[what] } }));
};
