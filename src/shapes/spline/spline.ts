/** Involute splines for side fit: the shaft as a piece, or the hub as an opening. */
import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, mm, number, term, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
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
import { type SplineRequest, splineQuestion } from './spline-request.ts';
import { splineFigures, type TeethAsked } from './spline-teeth.ts';

export const spline = shapeKind({
  ...splineQuestion,
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

const nameOf = (request: SplineRequest): Text => {
  const { part, standard, module = 0, pitch = 0, class: tolerance, fitClass } = request;
  const plain = names[part](request, standard === 'ISO 4156' ? names.module(module) : names.pitch(pitch));
  if (tolerance === undefined) return plain;
  return names.classed(plain, standard === 'ISO 4156' ? `${tolerance}${part === 'hub' ? 'H' : fitClass}` : tolerance);
};

const roots = phrases('spline-root', { flat: say`flat root`, fillet: say`fillet root` });

const names = phrases('spline-name', {
  shaft: ({ standard, teeth, pressureAngle, root }: SplineRequest, size: Text) =>
    say`Spline shaft, ${{ standard: term(standard) }}, ${{ size }}, ${{ teeth: count(teeth, 'tooth') }}, ${{ angle: number(Number(pressureAngle)) }}°, ${{ root: roots[root] }}`,
  hub: ({ standard, teeth, pressureAngle, root }: SplineRequest, size: Text) =>
    say`Spline hub, ${{ standard: term(standard) }}, ${{ size }}, ${{ teeth: count(teeth, 'tooth') }}, ${{ angle: number(Number(pressureAngle)) }}°, ${{ root: roots[root] }}`,
  module: (module: number) => say`module ${{ module: mm(module, upTo(6)) }}`,
  pitch: (pitch: number) => say`pitch ${{ pitch: number(pitch) }}/${{ stub: number(2 * pitch) }}`,
  classed: (plain: Text, tolerance: string) => say`${{ spline: plain }}, class ${{ class: term(tolerance) }}`,
});

const impossible = (text: Text, path: string): Finding => find('spline-impossible', text, { place: { kind: 'field', path } });

const faultOf = (request: SplineRequest, module: number | undefined, sizes: SplineSizes | undefined): Finding | undefined => {
  const { standard, helix, pressureAngle, part, spanTeeth } = request;
  if (module === undefined)
    return standard === 'ISO 4156'
      ? impossible(say('spline-impossible/module')`ISO 4156 needs the module.`, 'module')
      : impossible(say('spline-impossible/diametral-pitch')`ANSI B92.1 needs the diametral pitch.`, 'pitch');
  if (sizes === undefined)
    return find(
      'spline-root-form',
      say`${{ standard: term(standard) }} has no flat root at ${{ angle: number(Number(pressureAngle)) }}°; its spaces end in one full round there.`,
      { place: atField('root') },
    );
  if (helix !== 0)
    return find(
      'spline-helical',
      say`With a helix of ${{ helix: number(helix) }}° the splines would turn about the middle by ${{ aside: mm(10 * Math.tan((Math.abs(helix) * Math.PI) / 180), fixed(3)) }} along the pitch circle over every ${{ length: mm(10) }} of length. A wire is straight: it can lean, but then it cuts walls of straight lines, and a flank that turns is none.`,
      {
        place: atField('helix'),
        remedy: remedy(say`Cut it straight, or have it broached, rolled or ground.`, { field: 'helix', value: 0 }),
      },
    );
  return part === 'hub' && spanTeeth !== undefined
    ? impossible(
        say('spline-impossible/hub-span')`Anvils cannot span the teeth of a hub, which point inwards; take the size between pins.`,
        'spanTeeth',
      )
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
  readonly name: Text;
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
  if (!(figures.thickness.value > 0))
    return refusedWith(impossible(say('spline-impossible/clearance')`The clearance is more than a tooth is thick.`, 'clearance'));
  const most = fullFillet(form);
  const radius = request.root === 'fillet' ? most : (request.rootRadius ?? Math.min(most, USUAL_ROOT * module));
  if (radius > most + 1e-9)
    return refusedWith(
      impossible(
        say(
          'spline-impossible/root-radius',
        )`A root radius of ${{ radius: mm(radius) }} has no room; ${{ most: mm(most, fixed(3)) }} is one full round.`,
        'rootRadius',
      ),
    );
  const made = toothed({ ...form, rootForm: { kind: 'arc', radius } }, request.fit);
  if (made.kind === 'no room')
    return refusedWith(impossible(say('spline-impossible/no-room')`The teeth have no room at their tips or roots.`, 'teeth'));
  const radii: Radii = { tip, root, form: made.formRadius };
  const span = spanned(figures, radii, request.spanTeeth);
  if (span.kind === 'off the flank') return refusedWith(impossible(span.text, 'spanTeeth'));
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
        say(
          'spline-impossible/outside',
        )`An outside diameter of ${{ outside: mm(request.outside) }} leaves no metal behind the splines, which reach ${{ splines: mm(2 * root, fixed(3)) }}.`,
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
