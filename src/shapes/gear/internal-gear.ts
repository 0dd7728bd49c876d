/** Internal spur gears: an opening whose spaces have the form of external teeth, with round roots; with an outside diameter the whole ring. */
import { z } from 'zod';
import type { Finding } from '../../finding/finding.ts';
import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeKind } from '../kind.ts';
import type { MadeShape, Outline, ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import { sizeOf, toothKeys } from './keys.ts';
import { bestPin, pinSize } from './pins.ts';
import { circleSizes, insideSize, type Radii } from './sizes.ts';
import { internalOutline } from './space-form.ts';
import { type ToothFigures, toothFigures } from './tooth-figures.ts';

const { mate: _, mateShift: __, tipChamfer: ___, ...keys } = toothKeys;

const schema = z.strictObject({
  kind: z.literal('internal-gear'),
  ...keys,
  rootRadius: z
    .number()
    .min(0)
    .max(50)
    .optional()
    .describe('Radius between flank and root circle, mm; as a shaper of 0.25 modules leaves it when left out'),
  outside: z.number().positive().max(4000).optional().describe('Outside diameter of the ring, mm, where it is cut as well'),
  ...commonKeys,
});

type Request = z.output<typeof schema>;

export const internalGear = shapeKind({
  title: 'Internal gear',
  what: 'Ring with involute teeth inside, by module or diametral pitch',
  schema,
  example: { module: 2, teeth: 40 },
  make: (request) => {
    const sized = sizeOf(request);
    if (sized.kind === 'refused') return { kind: 'refused', findings: [sized.finding] };
    const figures = toothFigures(sized.size, request.teeth, -request.shift, request.clearance * request.share);
    const { module } = figures;
    const tip =
      request.tipDiameter === undefined ? module.value * (request.teeth / 2 - request.addendum + request.shift) : request.tipDiameter / 2;
    const root = module.value * (request.teeth / 2 + request.dedendum + request.shift);
    const faults = faultsOf(request, figures, tip, root);
    if (faults.length > 0) return { kind: 'refused', findings: faults };
    return drawn(request, figures, { tip, root }, `Internal gear, ${sized.size.words}, ${request.teeth} teeth`);
  },
});

const faultsOf = (request: Request, figures: ToothFigures, tip: number, root: number): readonly Finding[] => {
  const at = (path: string) => ({ place: { kind: 'field', path } }) as const;
  const base = figures.base.value / 2;
  if (!(figures.thickness.value > 0) || figures.thickness.value >= Math.PI * figures.module.value)
    return [
      find('gear-impossible', `The teeth would be ${figures.thickness.value.toFixed(3)} mm thick at the reference circle.`, at('shift')),
    ];
  if (tip < base)
    return [
      find(
        'gear-impossible',
        `The tip circle of ${(2 * tip).toFixed(3)} mm lies inside the base circle of ${(2 * base).toFixed(3)} mm, where there is no involute: the tips would foul every pinion.`,
        {
          ...at(request.tipDiameter === undefined ? 'addendum' : 'tipDiameter'),
          remedy: `A tip diameter of ${(2 * base).toFixed(3)} mm or more, more teeth, or a larger pressure angle.`,
        },
      ),
    ];
  if (root <= tip)
    return [find('gear-impossible', `The root circle of ${(2 * root).toFixed(3)} mm lies inside the tip circle.`, at('tipDiameter'))];
  if (request.outside !== undefined && request.outside / 2 <= root)
    return [
      find(
        'gear-impossible',
        `An outside diameter of ${request.outside} mm leaves no metal behind the root circle of ${(2 * root).toFixed(3)} mm.`,
        at('outside'),
      ),
    ];
  return [];
};

const SHAPER = 0.25;

const drawn = (request: Request, figures: ToothFigures, { tip, root }: Pick<Radii, 'tip' | 'root'>, name: string): MadeShape => {
  const made = internalOutline(figures, { tip, root }, request.rootRadius ?? `at most ${SHAPER * figures.module.value}`, request.fit);
  if (made.kind === 'refused') return { kind: 'refused', findings: [made.finding] };
  const outlines: readonly Outline[] = [
    ...(request.outside === undefined
      ? []
      : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'ring' } as const]),
    { contour: made.contour, metal: 'outside' },
  ];
  const radii: Radii = { tip, root, form: made.formRadius };
  const pin = request.pin ?? Number(bestPin(figures, (tip + made.formRadius) / 2, 'internal').toFixed(2));
  const between = pinSize(figures, pin, 'internal');
  const sizes: readonly ShapeSize[] = [
    ...(between === undefined ? [] : [{ figure: between.size, taking: between.taking }]),
    ...circleSizes(figures, radii),
    { figure: figures.thickness },
    { figure: figures.basePitch },
    insideSize(made.inside),
  ];
  const rests = between !== undefined && between.contact >= tip - 1e-9 && between.contact <= made.formRadius + 1e-9;
  const findings = rests
    ? []
    : [
        find(
          'gear-pin-off-flank',
          `A pin of ${pin} mm does not rest on the flanks, which reach from ${(2 * tip).toFixed(3)} to ${(2 * made.formRadius).toFixed(3)} mm.`,
          { place: { kind: 'field', path: 'pin' } },
        ),
      ];
  return { kind: 'made', shape: { name, outlines, starts: [], sizes, fitDeviation: made.deviation, insideRadius: made.inside, findings } };
};
