/** The root of an external gear: as a rack generates it, an arc of a stated radius, or one full round. */
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm, number, term } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { MadeShape } from '../shape.ts';
import { find } from '../teeth/findings.ts';
import { leastShift } from '../teeth/formulas.ts';
import { depthToContact, trochoidRoot } from '../teeth/rack-root.ts';
import { rootTooRound } from '../teeth/space-form.ts';
import type { ToothFigures } from '../teeth/tooth-figures.ts';
import { fullFillet, type Root, type ToothForm } from '../teeth/tooth-form.ts';
import type { GearRequest } from './gear-keys.ts';
import type { Limits } from './gear-limits.ts';

export type Rooted =
  | { readonly kind: 'rooted'; readonly root: Root; readonly findings: readonly Finding[] }
  | Extract<MadeShape, { kind: 'refused' }>;

export const rootOf = (
  request: GearRequest,
  figures: ToothFigures,
  limits: Pick<Limits, 'tip'>,
  form: Omit<ToothForm, 'rootForm'>,
): Rooted => {
  if (request.root === 'rack') return rackRoot(request, figures, limits);
  const most = fullFillet(form);
  if (request.root === 'full') return { kind: 'rooted', root: { kind: 'arc', radius: most }, findings: [] };
  const radius = request.rootRadius;
  if (radius !== undefined && radius <= most + 1e-9) return { kind: 'rooted', root: { kind: 'arc', radius }, findings: [] };
  return {
    kind: 'refused',
    findings: [
      radius === undefined
        ? find('gear-impossible/root-radius-missing', say`The radius of the root is missing: give ${{ field: term('rootRadius') }}.`, {
            place: atField('rootRadius'),
          })
        : find('gear-root-too-round', rootTooRound(radius, most), {
            place: atField('rootRadius'),
            remedy: remedy(say`A radius of ${{ most: mm(most, fixed(3)) }} or less, or a full round.`, {
              field: 'rootRadius',
              value: Math.floor(most * 1000) / 1000,
            }),
          }),
    ],
  };
};

const rackRoot = (request: GearRequest, figures: ToothFigures, { tip }: Pick<Limits, 'tip'>): Rooted => {
  const { module, pressureAngle, reference, thickness } = figures;
  const rack = {
    reference: reference.value / 2,
    teeth: request.teeth,
    pressureAngle: pressureAngle.value,
    depth: module.value * (request.dedendum - request.shift),
    tipRadius: module.value * request.rackTip,
    thickness: thickness.value,
  };
  const generated = trochoidRoot(rack, tip);
  const place = { place: atField('rackTip') } as const;
  if (generated.kind === 'tip too round') {
    const most = generated.most / module.value;
    const finding = find(
      'gear-root-too-round/rack-tip',
      say`A rack tip radius of ${{ radius: number(request.rackTip) }} modules has no room in the rack's tip; ${{ most: number(Math.max(0, most), fixed(3)) }} modules make it one round.`,
      place,
    );
    return { kind: 'refused', findings: [finding] };
  }
  if (generated.kind === 'no flank')
    return {
      kind: 'refused',
      findings: [
        find(
          'gear-impossible/no-involute-left',
          say`The root that a rack generates cuts the flanks away up to the tip: there is no involute left.`,
          { place: atField('teeth') },
        ),
      ],
    };
  const { curve, formRadius, undercut } = generated;
  return {
    kind: 'rooted',
    root: { kind: 'curve', curve, formRadius },
    findings: undercut ? [undercutOf(request, rack, module.value, formRadius)] : [],
  };
};

const undercutOf = (request: GearRequest, rack: Parameters<typeof depthToContact>[0], module: number, form: number): Finding => {
  const depth = depthToContact(rack) + request.shift * module;
  const least = leastShift.compute({ depth, module, teeth: request.teeth, pressureAngle: rack.pressureAngle });
  const enough = Math.ceil(least * 1000) / 1000;
  return find(
    'gear-undercut',
    say`The root is undercut: it cuts the involute off below a diameter of ${{ form: mm(2 * form, fixed(3)) }}, which weakens the tooth and shortens the contact.`,
    {
      place: atField('shift'),
      remedy: remedy(say`A profile shift of ${{ shift: number(enough, fixed(3)) }} or more.`, { field: 'shift', value: enough }),
    },
  );
};
