/** External spur gears: involute flanks, with the root a rack generates, a stated radius, or one full round. */
import { z } from 'zod';
import type { Finding } from '../../finding/finding.ts';
import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { commonKeys } from '../common-keys.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { inverseInv } from '../involute.ts';
import { shapeKind } from '../kind.ts';
import type { MadeShape, Outline, Shape } from '../shape.ts';
import { fullFillet, type Root, type ToothForm, toothed } from '../tooth-form.ts';
import { find } from './findings.ts';
import { leastShift } from './formulas.ts';
import { sizeOf, toothKeys } from './keys.ts';
import { type Mate, pairOf } from './mate.ts';
import { bestPin, pinSize } from './pins.ts';
import { bestSpan, chordSizes, circleSizes, insideSize, type Radii, spanSizes, tipThickness } from './sizes.ts';
import { type ToothFigures, toothFigures } from './tooth-figures.ts';
import { depthToContact, trochoidRoot } from './trochoid.ts';

const schema = z.strictObject({
  kind: z.literal('gear'),
  ...toothKeys,
  root: z
    .enum(['rack', 'full', 'radius'])
    .default('rack')
    .describe('rack: as a rack with rounded tips generates it; full: one round from flank to flank; radius: arcs of rootRadius'),
  rackTip: z.number().min(0).max(1).default(0.38).describe('Tip radius of the generating rack as a multiple of the module, for root rack'),
  rootRadius: z.number().positive().max(50).optional().describe('Radius between flank and root circle, mm, for root radius'),
  reliefAmount: z.number().min(0).max(1).default(0).describe('Tip relief: how far the flank stands back at the tip, mm'),
  reliefFrom: z
    .number()
    .positive()
    .max(2000)
    .optional()
    .describe('Diameter at which the tip relief begins, mm; halfway up the flank when left out'),
  bore: z.number().positive().max(2000).optional().describe('Diameter of a bore in the middle, mm'),
  ...commonKeys,
});

type Request = z.output<typeof schema>;

export const gear = shapeKind({
  title: 'Spur gear',
  what: 'External involute gear by module or diametral pitch',
  schema,
  example: { module: 2, teeth: 20, bore: 12 },
  make: (request) => {
    const sized = sizeOf(request);
    if (sized.kind === 'refused') return { kind: 'refused', findings: [sized.finding] };
    const { size } = sized;
    const figures = toothFigures(size, request.teeth, request.shift, request.clearance * request.share);
    const limits = limitsOf(request, figures);
    const impossible = faultsOf(request, figures, limits);
    if (impossible.length > 0) return { kind: 'refused', findings: impossible };
    const rooted = rootOf(request, figures, limits);
    if (rooted.kind === 'refused') return rooted;
    return drawn(request, figures, limits, rooted, `Spur gear, ${size.words}, ${request.teeth} teeth`);
  },
});

interface Limits {
  readonly tip: number;
  readonly root: number;
}

const limitsOf = ({ tipDiameter, addendum, dedendum, shift, teeth }: Request, { module }: ToothFigures): Limits => ({
  tip: tipDiameter === undefined ? module.value * (teeth / 2 + addendum + shift) : tipDiameter / 2,
  root: module.value * (teeth / 2 - dedendum + shift),
});

const faultsOf = (request: Request, figures: ToothFigures, { tip, root }: Limits): readonly Finding[] => {
  const at = (path: string) => ({ place: { kind: 'field', path } }) as const;
  const base = figures.base.value / 2;
  if (!(figures.thickness.value > 0))
    return [
      find(
        'gear-impossible',
        `The teeth would be ${figures.thickness.value.toFixed(3)} mm thick at the reference circle: the play is more than a tooth.`,
        at('clearance'),
      ),
    ];
  if (!(root > 0)) return [find('gear-impossible', `The root circle would have a radius of ${root.toFixed(3)} mm.`, at('dedendum'))];
  if (request.bore !== undefined && request.bore / 2 >= root)
    return [
      find(
        'gear-impossible',
        `A bore of ${request.bore} mm leaves nothing below the root circle of ${(2 * root).toFixed(3)} mm.`,
        at('bore'),
      ),
    ];
  if (tip <= Math.max(root, base))
    return [
      find(
        'gear-impossible',
        `The tip circle of ${(2 * tip).toFixed(3)} mm lies below the root or base circle of ${(2 * Math.max(root, base)).toFixed(3)} mm.`,
        at('tipDiameter'),
      ),
    ];
  const point = inverseInv(figures.baseThickness.value / figures.base.value);
  const pointed = point === 'none' ? 0 : base / Math.cos(point);
  if (tip >= pointed)
    return [
      find(
        'gear-pointed',
        `The flanks meet at a diameter of ${(2 * pointed).toFixed(3)} mm, below the tip circle of ${(2 * tip).toFixed(3)} mm.`,
        {
          ...at(request.tipDiameter === undefined ? 'shift' : 'tipDiameter'),
          remedy: `A tip diameter below ${(2 * pointed).toFixed(2)} mm, or less profile shift.`,
        },
      ),
    ];
  return [];
};

type Rooted =
  | { readonly kind: 'rooted'; readonly root: Root; readonly findings: readonly Finding[] }
  | Extract<MadeShape, { kind: 'refused' }>;

const rootOf = (request: Request, figures: ToothFigures, limits: Limits): Rooted => {
  if (request.root === 'rack') return rackRoot(request, figures, limits);
  const most = fullFillet(plainForm(request, figures, limits));
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

const rackRoot = (request: Request, figures: ToothFigures, { tip }: Limits): Rooted => {
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

const undercutOf = (request: Request, rack: Parameters<typeof depthToContact>[0], module: number, form: number): Finding => {
  const depth = depthToContact(rack) + request.shift * module;
  const least = leastShift.compute({ depth, module, teeth: request.teeth, pressureAngle: rack.pressureAngle });
  return find(
    'gear-undercut',
    `The root is undercut: it cuts the involute off below a diameter of ${(2 * form).toFixed(3)} mm, which weakens the tooth and shortens the contact.`,
    { place: { kind: 'field', path: 'shift' }, remedy: `A profile shift of ${(Math.ceil(least * 1000) / 1000).toFixed(3)} or more.` },
  );
};

const plainForm = (request: Request, figures: ToothFigures, { tip, root }: Limits): Omit<ToothForm, 'rootForm'> => ({
  teeth: request.teeth,
  base: figures.base.value / 2,
  halfAngle: figures.baseThickness.value / figures.base.value,
  tip,
  root,
  tipChamfer: request.tipChamfer,
  ...(request.reliefAmount > 0
    ? {
        tipRelief: {
          amount: request.reliefAmount,
          from: request.reliefFrom === undefined ? (tip + Math.max(root, figures.base.value / 2)) / 2 : request.reliefFrom / 2,
        },
      }
    : {}),
});

const drawn = (
  request: Request,
  figures: ToothFigures,
  limits: Limits,
  { root, findings }: Extract<Rooted, { kind: 'rooted' }>,
  name: string,
): MadeShape => {
  const made = toothed({ ...plainForm(request, figures, limits), rootForm: root }, request.fit);
  if (made.kind === 'no room') {
    const path = made.what === 'root' ? 'rootRadius' : made.what === 'chamfer' ? 'tipChamfer' : 'reliefAmount';
    return {
      kind: 'refused',
      findings: [find('gear-impossible', `There is no room for the ${made.what} of the teeth.`, { place: { kind: 'field', path } })],
    };
  }
  const outlines: readonly Outline[] = [
    { contour: made.contour, metal: 'inside' },
    ...(request.bore === undefined
      ? []
      : [{ contour: contour([circle(point(0, 0), request.bore / 2)]), metal: 'outside', layer: 'bore' } as const]),
  ];
  const radii: Radii = { ...limits, form: made.formRadius };
  return { kind: 'made', shape: measured({ name, outlines, fitDeviation: made.deviation }, request, figures, radii, findings) };
};

const measured = (
  drawing: Pick<Shape, 'name' | 'outlines' | 'fitDeviation'>,
  request: Request,
  figures: ToothFigures,
  radii: Radii,
  findings: readonly Finding[],
): Shape => {
  const inside = insideRadiusOf(drawing.outlines);
  const span = bestSpan(figures, { tip: radii.tip - request.tipChamfer, form: radii.form });
  const pin =
    request.pin ?? Number(bestPin(figures, (radii.tip + Math.max(radii.form, figures.base.value / 2)) / 2, 'external').toFixed(2));
  const over = pinSize(figures, pin, 'external');
  const mate: Mate | undefined =
    request.mate === undefined ? undefined : { teeth: request.mate, shift: request.mateShift, addendum: request.addendum };
  const pair = mate === undefined ? undefined : pairOf(figures, radii, mate);
  const top = tipThickness(figures, radii.tip);
  return {
    ...drawing,
    starts: [],
    ...(inside === undefined ? {} : { insideRadius: inside }),
    sizes: [
      ...(span === undefined ? [] : spanSizes(figures, span)),
      ...(over === undefined ? [] : [{ figure: over.size, taking: over.taking }]),
      ...chordSizes(figures, radii.tip),
      ...circleSizes(figures, radii),
      { figure: figures.thickness },
      top,
      { figure: figures.basePitch },
      ...(inside === undefined ? [] : [insideSize(inside)]),
      ...(pair?.sizes ?? []),
    ],
    findings: [
      ...findings,
      ...thinTip(top.figure.value, figures.module.value),
      ...pinDoubt(over?.contact, pin, radii, request),
      ...(pair?.findings ?? []),
    ],
  };
};

/** Common practice, no source: a hardened tip wants a fifth of the module. */
const thinTip = (thickness: number, module: number): readonly Finding[] =>
  thickness >= 0.2 * module
    ? []
    : [
        find(
          'gear-tip-thin',
          `The tooth is ${thickness.toFixed(3)} mm thick at its tip, less than a fifth of the module; it chips when it is hardened.`,
          {
            place: { kind: 'field', path: 'shift' },
          },
        ),
      ];

const pinDoubt = (contact: number | undefined, pin: number, { tip, form }: Radii, { tipChamfer }: Request): readonly Finding[] =>
  contact !== undefined && contact <= tip - tipChamfer + 1e-9 && contact >= form - 1e-9
    ? []
    : [
        find(
          'gear-pin-off-flank',
          contact === undefined
            ? `A pin of ${pin} mm falls to the bottom of the space.`
            : `A pin of ${pin} mm would touch at a diameter of ${(2 * contact).toFixed(3)} mm; the flank reaches from ${(2 * form).toFixed(3)} to ${(2 * (tip - tipChamfer)).toFixed(3)} mm.`,
          { place: { kind: 'field', path: 'pin' }, remedy: 'Leave the pin out: the best one is chosen then.' },
        ),
      ];
