/** Involute splines for side fit: the shaft as a piece, or the hub as an opening. */
import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { internalOutline } from '../teeth/space-form.ts';
import type { ToothFigures } from '../teeth/tooth-figures.ts';
import { fullFillet, type ToothForm, toothed } from '../teeth/tooth-form.ts';
import { type Radii, spanned } from '../teeth/tooth-sizes.ts';
import { isoHubMinor, type SplineAngle, type SplineSizes, splineSizes } from './basic-sizes.ts';
import { type ClassRoom, classRoom } from './classes.ts';
import { find } from './findings.ts';
import { reported } from './spline-report.ts';
import { type SplineRequest, splineSchema } from './spline-request.ts';
import { splineFigures, type TeethAsked } from './spline-teeth.ts';

export const spline = shapeKind({
  title: 'Involute spline',
  what: 'Shaft or hub with involute splines by ISO 4156 or ANSI B92.1, side fit, with tolerance classes',
  schema: splineSchema,
  example: { module: 2, teeth: 20 },
  make: (request) => {
    const module = request.standard === 'ISO 4156' ? request.module : request.pitch === undefined ? undefined : 25.4 / request.pitch;
    const degrees = Number(request.pressureAngle) as SplineAngle;
    const sizes = splineSizes(request.standard, degrees, request.root, request.pitch);
    const fault = faultOf(request, module, sizes);
    if (fault !== undefined || module === undefined || sizes === undefined) return refusedWith(fault as Finding);
    // The play between two flanks of a space is shared by both of them: each tooth gives twice what a wall stands back.
    const asked: TeethAsked = {
      ...request,
      module,
      diametralPitch: request.standard === 'ISO 4156' ? undefined : request.pitch,
      pressureAngle: (degrees * Math.PI) / 180,
      widening: sizes.widening,
      backlash: 2 * request.clearance * request.share,
    };
    const classed = roomOf(request, asked);
    if (classed?.kind === 'refused') return refusedWith(classed.finding);
    const figures = splineFigures(asked, classed);
    const drawing: Drawing = { figures, sizes, room: classed, name: nameOf(request) };
    return request.part === 'shaft' ? shaft(request, drawing) : hub(request, drawing);
  },
});

const nameOf = ({ part, standard, module, pitch, teeth, pressureAngle, root, class: tolerance, fitClass }: SplineRequest): string => {
  const pitched = standard === 'ISO 4156' ? `module ${module} mm` : `pitch ${pitch}/${2 * (pitch as number)}`;
  const fit = tolerance === undefined ? '' : `, class ${tolerance}${standard === 'ISO 4156' ? (part === 'hub' ? 'H' : fitClass) : ''}`;
  return `Spline ${part}, ${standard}, ${pitched}, ${teeth} teeth, ${pressureAngle}°, ${root} root${fit}`;
};

const impossible = (sentence: string, path: string): Finding => find('spline-impossible', sentence, { place: { kind: 'field', path } });

const faultOf = (request: SplineRequest, module: number | undefined, sizes: SplineSizes | undefined): Finding | undefined => {
  const { standard, helix, pressureAngle, part, spanTeeth } = request;
  if (module === undefined)
    return impossible(
      `${standard} needs the ${standard === 'ISO 4156' ? 'module' : 'diametral pitch'}.`,
      standard === 'ISO 4156' ? 'module' : 'pitch',
    );
  if (sizes === undefined)
    return find('spline-root-form', `${standard} has no flat root at ${pressureAngle}°; its spaces end in one full round there.`, {
      place: { kind: 'field', path: 'root' },
    });
  if (helix !== 0)
    return find(
      'spline-helical',
      `With a helix of ${helix}° the splines would turn about the middle by ${(10 * Math.tan((Math.abs(helix) * Math.PI) / 180)).toFixed(3)} mm along the pitch circle over every 10 mm of length. A wire is straight: it can lean, but then it cuts walls of straight lines, and a flank that turns is none.`,
      { place: { kind: 'field', path: 'helix' }, remedy: 'Cut it straight, or have it broached, rolled or ground.' },
    );
  return part === 'hub' && spanTeeth !== undefined
    ? impossible('Anvils cannot span the teeth of a hub, which point inwards; take the size between pins.', 'spanTeeth')
    : undefined;
};

/** Without a class there are no limits. */
const roomOf = (request: SplineRequest, asked: TeethAsked): ReturnType<typeof classRoom> | undefined =>
  request.class === undefined
    ? undefined
    : classRoom(splineFigures({ ...asked, part: 'shaft', backlash: 0 }), {
        standard: request.standard,
        part: request.part,
        class: request.class,
        fitClass: request.fitClass,
        engagement: request.engagement,
        pitch: request.pitch,
      });

interface Drawing {
  readonly figures: ToothFigures;
  readonly sizes: SplineSizes;
  readonly room: ClassRoom | undefined;
  readonly name: string;
}

/** Common practice, no source: what a hob or broach leaves in a flat root. */
const USUAL_ROOT = 0.2;

const shaft = (request: SplineRequest, { figures, sizes, room, name }: Drawing): MadeShape => {
  const module = figures.module.value;
  // A thinner tooth is taken from a rack set deeper: tip and root come down with it; a thicker one keeps its tip.
  const lower = (room?.deviation.value ?? 0) / Math.tan(figures.pressureAngle.value) / 2;
  const tip = (module * (request.teeth + sizes.shaftMajor)) / 2 + Math.min(0, lower);
  const root = (module * (request.teeth - sizes.shaftMinor)) / 2 + lower;
  const form: Omit<ToothForm, 'rootForm'> = {
    teeth: request.teeth,
    base: figures.base.value / 2,
    halfAngle: figures.baseThickness.value / figures.base.value,
    tip,
    root,
    tipChamfer: 0,
  };
  if (!(figures.thickness.value > 0)) return refusedWith(impossible('The clearance is more than a tooth is thick.', 'clearance'));
  const most = fullFillet(form);
  const radius = request.root === 'fillet' ? most : (request.rootRadius ?? Math.min(most, USUAL_ROOT * module));
  if (radius > most + 1e-9)
    return refusedWith(impossible(`A root radius of ${radius} mm has no room; ${most.toFixed(3)} mm is one full round.`, 'rootRadius'));
  const made = toothed({ ...form, rootForm: { kind: 'arc', radius } }, request.fit);
  if (made.kind === 'no room') return refusedWith(impossible('The teeth have no room at their tips or roots.', 'teeth'));
  const radii: Radii = { tip, root, form: made.formRadius };
  const span = spanned(figures, radii, request.spanTeeth);
  if (span.kind === 'off the flank') return refusedWith(impossible(span.sentence, 'spanTeeth'));
  return reported(request, figures, radii, room, {
    name,
    outlines: [{ contour: made.contour, metal: 'inside' }],
    fitDeviation: made.deviation,
    insideRadius: radius,
    span: span.teeth,
  });
};

const hub = (request: SplineRequest, { figures, sizes, room, name }: Drawing): MadeShape => {
  const module = figures.module.value;
  const root = (module * (request.teeth + sizes.hubMajor)) / 2;
  const inner =
    request.standard === 'ISO 4156'
      ? (module * isoHubMinor(request.teeth, Number(request.pressureAngle) as SplineAngle)) / 2
      : (module * (request.teeth - sizes.hubMinor)) / 2;
  const tip = Math.max(inner, figures.base.value / 2);
  if (request.outside !== undefined && request.outside / 2 <= root)
    return refusedWith(
      impossible(
        `An outside diameter of ${request.outside} mm leaves no metal behind the splines, which reach ${(2 * root).toFixed(3)} mm.`,
        'outside',
      ),
    );
  const radius = request.root === 'fillet' ? 'full' : (request.rootRadius ?? (`at most ${USUAL_ROOT * module}` as const));
  const made = internalOutline(figures, { tip, root }, radius, request.fit);
  if (made.kind === 'refused') return refusedWith(made.finding);
  const ring: readonly Outline[] =
    request.outside === undefined ? [] : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'hub' }];
  return reported(request, figures, { tip, root, form: made.formRadius }, room, {
    name,
    outlines: [...ring, { contour: made.contour, metal: 'outside' }],
    fitDeviation: made.deviation,
    insideRadius: made.inside,
    span: undefined,
  });
};
