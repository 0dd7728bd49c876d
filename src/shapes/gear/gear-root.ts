/** The root of an external gear: as a rack generates it, an arc of a stated radius, or one full round. */
import type { Finding } from '../../text/finding.ts';
import type { MadeShape } from '../shape.ts';
import { find } from '../teeth/findings.ts';
import { leastShift } from '../teeth/formulas.ts';
import { depthToContact, trochoidRoot } from '../teeth/rack-root.ts';
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
        ? find('gear-impossible', 'The radius of the root is missing: give rootRadius.', { place: { kind: 'field', path: 'rootRadius' } })
        : find(
            'gear-root-too-round',
            `A root radius of ${radius} mm has no room between the flanks; ${most.toFixed(3)} mm is one full round.`,
            {
              place: { kind: 'field', path: 'rootRadius' },
              remedy: `A radius of ${most.toFixed(3)} mm or less, or a full round.`,
            },
          ),
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
  const place = { place: { kind: 'field', path: 'rackTip' } } as const;
  if (generated.kind === 'tip too round') {
    const most = generated.most / module.value;
    const sentence = `A rack tip radius of ${request.rackTip} modules has no room in the rack's tip; ${Math.max(0, most).toFixed(3)} modules make it one round.`;
    return { kind: 'refused', findings: [find('gear-root-too-round', sentence, place)] };
  }
  if (generated.kind === 'no flank')
    return {
      kind: 'refused',
      findings: [
        find('gear-impossible', 'The root that a rack generates cuts the flanks away up to the tip: there is no involute left.', {
          place: { kind: 'field', path: 'teeth' },
        }),
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
  return find(
    'gear-undercut',
    `The root is undercut: it cuts the involute off below a diameter of ${(2 * form).toFixed(3)} mm, which weakens the tooth and shortens the contact.`,
    { place: { kind: 'field', path: 'shift' }, remedy: `A profile shift of ${(Math.ceil(least * 1000) / 1000).toFixed(3)} or more.` },
  );
};
