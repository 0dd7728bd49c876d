/** Involute splines for side fit: the shaft as a piece, or the hub as an opening. */
import { z } from 'zod';
import type { Finding } from '../../finding/finding.ts';
import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { commonKeys } from '../common-keys.ts';
import { bestPin, pinSize } from '../gear/pins.ts';
import { bestSpan, circleSizes, insideSize, type Radii, spanSizes } from '../gear/sizes.ts';
import { internalOutline } from '../gear/space-form.ts';
import { type ToothFigures, toothFigures } from '../gear/tooth-figures.ts';
import { shapeKind } from '../kind.ts';
import type { MadeShape, Outline, ShapeSize } from '../shape.ts';
import { fullFillet, type ToothForm, toothed } from '../tooth-form.ts';
import { type SplineSizes, splineSizes } from './basic-sizes.ts';
import { find } from './findings.ts';

const schema = z.strictObject({
  kind: z.literal('spline'),
  part: z.enum(['shaft', 'hub']).default('hub').describe('shaft: external teeth, a piece; hub: internal teeth, an opening'),
  standard: z.enum(['ISO 4156', 'ANSI B92.1']).default('ISO 4156').describe('ISO by module, ANSI by diametral pitch'),
  module: z.number().positive().max(20).optional().describe('Module, mm, for ISO 4156'),
  pitch: z
    .number()
    .min(1)
    .max(128)
    .optional()
    .describe('Diametral pitch, teeth per inch of the pitch diameter, for ANSI B92.1: 12 of 12/24'),
  teeth: z.int().min(6).max(400).describe('How many teeth'),
  pressureAngle: z.enum(['30', '37.5', '45']).default('30').describe('Pressure angle, °'),
  root: z.enum(['flat', 'fillet']).default('flat').describe('flat: root circle with small radii; fillet: one full round'),
  rootRadius: z.number().positive().max(10).optional().describe('Radius of a flat root, mm; 0.2 modules when left out'),
  pin: z.number().positive().max(100).optional().describe('Diameter of the measuring pins, mm; the best is chosen when left out'),
  outside: z.number().positive().max(2000).optional().describe('Outside diameter of the hub, mm, where it is cut as well'),
  ...commonKeys,
});

type Request = z.output<typeof schema>;

export const spline = shapeKind({
  title: 'Involute spline',
  what: 'Shaft or hub with involute splines by ISO 4156 or ANSI B92.1, side fit',
  schema,
  example: { module: 2, teeth: 20 },
  make: (request) => {
    const degrees = Number(request.pressureAngle) as 30 | 37.5 | 45;
    const module = request.standard === 'ISO 4156' ? request.module : request.pitch === undefined ? undefined : 25.4 / request.pitch;
    if (module === undefined)
      return refused(
        'spline-impossible',
        `${request.standard} needs the ${request.standard === 'ISO 4156' ? 'module' : 'diametral pitch'}.`,
        request.standard === 'ISO 4156' ? 'module' : 'pitch',
      );
    const sizes = splineSizes(request.standard, degrees, request.root);
    if (sizes === undefined)
      return refused(
        'spline-root-form',
        `${request.standard} has no flat root at ${degrees}°; its spaces end in one full round there.`,
        'root',
      );
    // The play between two flanks of a space is shared by both of them: each tooth gives twice what a wall stands back.
    const figures = toothFigures(
      { module, pressureAngle: (degrees * Math.PI) / 180, words: '' },
      request.teeth,
      0,
      2 * request.clearance * request.share,
    );
    const pitched = request.standard === 'ISO 4156' ? `module ${module} mm` : `pitch ${request.pitch}/${2 * (request.pitch as number)}`;
    const name = `Spline ${request.part}, ${request.standard}, ${pitched}, ${request.teeth} teeth, ${degrees}°, ${request.root} root`;
    return request.part === 'shaft' ? shaft(request, figures, sizes, name) : hub(request, figures, sizes, name);
  },
});

const refused = (code: Parameters<typeof find>[0], sentence: string, path: string): Extract<MadeShape, { kind: 'refused' }> => ({
  kind: 'refused',
  findings: [find(code, sentence, { place: { kind: 'field', path } })],
});

/** Common practice, no source: what a hob or broach leaves in a flat root. */
const USUAL_ROOT = 0.2;

const shaft = (request: Request, figures: ToothFigures, { shaftMajor, shaftMinor }: SplineSizes, name: string): MadeShape => {
  const module = figures.module.value;
  const [tip, root] = [(module * (request.teeth + shaftMajor)) / 2, (module * (request.teeth - shaftMinor)) / 2];
  const form: Omit<ToothForm, 'rootForm'> = {
    teeth: request.teeth,
    base: figures.base.value / 2,
    halfAngle: figures.baseThickness.value / figures.base.value,
    tip,
    root,
    tipChamfer: 0,
  };
  if (!(figures.thickness.value > 0)) return refused('spline-impossible', 'The clearance is more than a tooth is thick.', 'clearance');
  const most = fullFillet(form);
  const radius = request.root === 'fillet' ? most : (request.rootRadius ?? Math.min(most, USUAL_ROOT * module));
  if (radius > most + 1e-9)
    return refused(
      'spline-impossible',
      `A root radius of ${radius} mm has no room; ${most.toFixed(3)} mm is one full round.`,
      'rootRadius',
    );
  const made = toothed({ ...form, rootForm: { kind: 'arc', radius } }, request.fit);
  if (made.kind === 'no room') return refused('spline-impossible', 'The teeth have no room at their tips or roots.', 'teeth');
  const radii: Radii = { tip, root, form: made.formRadius };
  const span = bestSpan(figures, radii);
  const { size, doubts } = pinned(request, figures, radii, 'external');
  return finished(
    name,
    [{ contour: made.contour, metal: 'inside' }],
    made.deviation,
    radius,
    [...(span === undefined ? [] : spanSizes(figures, span)), ...size, ...circleSizes(figures, radii), { figure: figures.thickness }],
    doubts,
  );
};

const hub = (request: Request, figures: ToothFigures, { hubMajor, hubMinor }: SplineSizes, name: string): MadeShape => {
  const module = figures.module.value;
  const [root, inner] = [(module * (request.teeth + hubMajor)) / 2, (module * (request.teeth - hubMinor)) / 2];
  const tip = Math.max(inner, figures.base.value / 2);
  if (request.outside !== undefined && request.outside / 2 <= root)
    return refused(
      'spline-impossible',
      `An outside diameter of ${request.outside} mm leaves no metal behind the splines, which reach ${(2 * root).toFixed(3)} mm.`,
      'outside',
    );
  const radius = request.root === 'fillet' ? 'full' : (request.rootRadius ?? (`at most ${USUAL_ROOT * module}` as const));
  const made = internalOutline(figures, { tip, root }, radius, request.fit);
  if (made.kind === 'refused') return { kind: 'refused', findings: [made.finding] };
  const radii: Radii = { tip, root, form: made.formRadius };
  const ring: readonly Outline[] =
    request.outside === undefined ? [] : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'hub' }];
  const { size, doubts } = pinned(request, figures, radii, 'internal');
  return finished(
    name,
    [...ring, { contour: made.contour, metal: 'outside' }],
    made.deviation,
    made.inside,
    [...size, ...circleSizes(figures, radii), { figure: figures.thickness }],
    doubts,
  );
};

const pinned = (
  request: Request,
  figures: ToothFigures,
  { tip, form }: Radii,
  side: 'external' | 'internal',
): { readonly size: readonly ShapeSize[]; readonly doubts: readonly Finding[] } => {
  const pin = request.pin ?? Number(bestPin(figures, figures.reference.value / 2, side).toFixed(2));
  const found = pinSize(figures, pin, side);
  const [low, high] = [Math.min(tip, form), Math.max(tip, form)];
  const rests = found !== undefined && found.contact >= low - 1e-9 && found.contact <= high + 1e-9;
  return {
    size: found === undefined ? [] : [{ figure: found.size, taking: found.taking }],
    doubts: rests
      ? []
      : [
          find(
            'spline-impossible',
            `A pin of ${pin} mm does not rest on the flanks, which reach from ${(2 * low).toFixed(3)} to ${(2 * high).toFixed(3)} mm.`,
            {
              severity: 'warning',
              place: { kind: 'field', path: 'pin' },
            },
          ),
        ],
  };
};

const finished = (
  name: string,
  outlines: readonly Outline[],
  fitDeviation: number,
  inside: number,
  sizes: readonly ShapeSize[],
  findings: readonly Finding[],
): MadeShape => ({
  kind: 'made',
  shape: { name, outlines, starts: [], sizes: [...sizes, insideSize(inside)], fitDeviation, insideRadius: inside, findings },
});
