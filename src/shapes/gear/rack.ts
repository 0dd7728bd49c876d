/** Straight racks: flanks at the pressure angle, rounded roots, the back parallel to the teeth. */
import { apply } from '../../quantity/formula.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, mm, quantities } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { asked } from '../figures.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from '../teeth/findings.ts';
import { rackPitch, toothThickness } from '../teeth/formulas.ts';
import { tooMuch } from '../teeth/relief.ts';
import { rootTooRound } from '../teeth/space-form.ts';
import { moduleOf } from '../teeth/tooth-figures.ts';
import { sizeOf } from '../teeth/tooth-keys.ts';
import { formHeight, fullRound, halfTip, type RackForm, rackContour } from './rack-form.ts';
import { rackReport } from './rack-report.ts';
import { type RackRequest, rackQuestion } from './rack-request.ts';

/** Common practice, no source: as the standard basic rack has it, and a back that holds the teeth. */
const [USUAL_ROUND, USUAL_BACK] = [0.38, 4];

const words = phrases('rack', {
  name: (size: Text, teeth: number) => say`Rack, ${{ size }}, ${{ teeth: count(teeth, 'tooth') }}`,
});

export const rack = shapeKind({
  ...rackQuestion,
  make: (request) => {
    const sized = sizeOf(request, 'rack');
    if (sized.kind === 'refused') return { kind: 'refused', findings: [sized.finding] };
    const module = moduleOf(sized.size);
    const pressureAngle = asked('pressure-angle', say('gear.pressure-angle')`pressure angle`, sized.size.pressureAngle, 'rad');
    const backlash = asked(
      'backlash',
      say('gear.backlash')`backlash of this rack along the line of action`,
      request.clearance * request.share,
      'mm',
    );
    const shift = asked('profile-shift', say('gear.profile-shift')`profile shift`, 0, '1');
    const thickness = apply(
      toothThickness,
      { module, shift, pressureAngle, backlash },
      { key: 'tooth-thickness', name: say('gear.tooth-thickness')`tooth thickness at the reference line` },
    );
    const figures = { module, pressureAngle, thickness, pitch: apply(rackPitch, { module }, { key: 'pitch' }) };
    const form = formOf(request, { module: module.value, pressureAngle: pressureAngle.value, thickness: thickness.value });
    const fault = faultOf(request, form);
    if (fault !== undefined) return { kind: 'refused', findings: [fault] };
    return drawn(request, figures, form, words.name(sized.size.words, request.teeth));
  },
});

const formOf = (
  request: RackRequest,
  tooth: { readonly module: number; readonly pressureAngle: number; readonly thickness: number },
): RackForm => {
  const { module, pressureAngle, thickness } = tooth;
  const plain = { pitch: Math.PI * module, pressureAngle, thickness, dedendum: request.dedendum * module };
  return {
    ...plain,
    teeth: request.teeth,
    addendum: request.addendum * module,
    rootRadius: rootRadiusOf(request, plain, module),
    tipChamfer: request.tipChamfer,
    ...reliefOf(request, { ...plain, module }),
    back: request.back ?? USUAL_BACK * module,
  };
};

const rootRadiusOf = ({ rootRadius }: RackRequest, plain: Parameters<typeof fullRound>[0], module: number): number =>
  rootRadius ?? Math.max(0, Math.min(USUAL_ROUND * module, fullRound(plain)));

/** From halfway up the straight flank, when it is not said where. */
const reliefOf = (
  request: RackRequest,
  plain: Parameters<typeof fullRound>[0] & { readonly module: number },
): Pick<RackForm, 'tipRelief'> => {
  if (request.reliefAmount === 0) return {};
  const low = formHeight({ ...plain, rootRadius: rootRadiusOf(request, plain, plain.module) });
  return { tipRelief: { amount: request.reliefAmount, from: request.reliefFrom ?? (low + request.addendum * plain.module) / 2 } };
};

const impossible = (path: string, text: Text): Finding => find('gear-impossible', text, { place: { kind: 'field', path } });

const faultOf = ({ clearance }: RackRequest, form: RackForm): Finding | undefined => {
  const most = fullRound(form);
  if (!(form.thickness > 0) || form.thickness >= form.pitch)
    return impossible(
      'clearance',
      say(
        'gear-impossible/rack-without-space',
      )`The teeth would be ${{ thickness: mm(form.thickness, fixed(3)) }} thick at the reference line, of a pitch of ${{ pitch: mm(form.pitch, fixed(3)) }}.`,
    );
  if (most < 0)
    return impossible(
      clearance < 0 ? 'clearance' : 'dedendum',
      say(
        'gear-impossible/rack-flanks-meet',
      )`The flanks of a space meet above the root line, which lies ${{ root: mm(form.dedendum, fixed(3)) }} below the reference line.`,
    );
  if (form.rootRadius > most + 1e-9)
    return find('gear-root-too-round', rootTooRound(form.rootRadius, most), {
      place: atField('rootRadius'),
      remedy: remedy(say('gear-root-too-round/rack.remedy')`A radius of ${{ most: mm(most, fixed(3)) }} or less.`, {
        field: 'rootRadius',
        value: Math.floor(most * 1000) / 1000,
      }),
    });
  if (form.addendum - form.tipChamfer <= formHeight(form))
    return impossible(
      'tipChamfer',
      say('gear-impossible/rack-chamfer')`A chamfer of ${{ chamfer: mm(form.tipChamfer) }} takes the whole flank away.`,
    );
  const { tipRelief } = form;
  if (tipRelief !== undefined) {
    const [low, high] = [formHeight(form), form.addendum - form.tipChamfer];
    if (!(tipRelief.from > low && tipRelief.from < high))
      return impossible(
        'reliefFrom',
        say(
          'gear-impossible/relief-off-rack-flank',
        )`A tip relief from ${{ from: mm(tipRelief.from, fixed(3)) }} above the reference line does not begin on the flank, which lies between ${{ flank: quantities([low, high], 'and', 'mm', fixed(3)) }}.`,
      );
    const fault = tooMuch(tipRelief.amount, (form.addendum - tipRelief.from) / Math.cos(form.pressureAngle));
    if (fault !== undefined) return fault;
  }
  if (!(halfTip(form) > 0))
    return find(
      'gear-pointed/rack',
      say`The flanks meet below the tip line, which lies ${{ tip: mm(form.addendum, fixed(3)) }} above the reference line.`,
      { place: { kind: 'field', path: form.tipChamfer > 0 ? 'tipChamfer' : 'addendum' } },
    );
  if (form.back <= form.dedendum)
    return impossible(
      'back',
      say(
        'gear-impossible/rack-back',
      )`A back ${{ back: mm(form.back) }} below the reference line leaves no metal under the root line, which lies ${{ root: mm(form.dedendum, fixed(3)) }} below it.`,
    );
  return undefined;
};

const drawn = (request: RackRequest, figures: Parameters<typeof rackReport>[1], form: RackForm, name: Text): MadeShape => {
  const made = rackContour(form);
  if (made.kind === 'no room')
    return {
      kind: 'refused',
      findings: [
        impossible('rootRadius', say('gear-impossible/rack-rounds')`The rounds of the roots and the chamfers have no room on the flanks.`),
      ],
    };
  const outlines: readonly Outline[] = [{ contour: made.contour, metal: 'inside' }];
  const inside = insideRadiusOf(outlines);
  return { kind: 'made', shape: { name, outlines, starts: [], fitDeviation: 0, ...rackReport(request, figures, form, inside) } };
};
