/** Straight-sided splines, shaft or hub, centred on the inner diameter: by ISO 14, by SAE J499, or by free numbers. */

import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { given } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { zoneLimits } from '../../quantity/limits-and-fits.ts';
import { saidBy } from '../../quantity/source.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { fixed, mm } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { belowAnyWire } from '../below-any-wire.ts';
import { standBack } from '../common-keys.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import { insideSizes, millimetres } from '../refused.ts';
import type { MadeShape, Outline, ShapeSize } from '../shape.ts';
import { alongAt, type StraightForm, straightTeeth } from '../teeth/straight-teeth.ts';
import { find } from './findings.ts';
import { bestStraightPin, pinFault, type StraightFlanks, straightPinSize } from './straight-pins.ts';
import { nominalOf, refused, type StraightNominal, type StraightRequest, straightSplineQuestion } from './straight-request.ts';

const words = phrases('straight-spline', {
  shaft: (size: Text) => say`Straight-sided spline shaft, ${{ size }}`,
  hub: (size: Text) => say`Straight-sided spline hub, ${{ size }}`,
});

export const straightSpline = shapeKind({
  ...straightSplineQuestion,
  make: (request, { finestWire }) => {
    const nominal = nominalOf(request);
    return nominal.kind === 'refused' ? nominal : drawn(request, nominal, cutOf(request, nominal), finestWire);
  },
});

/** Chord between two splines on a circle. */
export const chordBetween: Formula<'diameter' | 'width' | 'splines'> = {
  name: say('spline.chord-between')`chord between two splines`,
  text: symbols`c = d sin(180° / N - arcsin(B / d))`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs: {
    diameter: { unit: 'mm', name: 'diameter of the circle' },
    width: { unit: 'mm', name: 'width of a spline' },
    splines: { unit: '1', name: 'splines' },
  },
  compute: ({ diameter, width, splines }) => diameter * Math.sin(Math.PI / splines - Math.asin(width / diameter)),
};

interface Limits {
  readonly low: number;
  readonly high: number;
}

/** Limits by the standard and what is cut, mm: diameters and the width. */
interface StraightSplineCut {
  readonly limits: { readonly inner?: Limits; readonly outer?: Limits; readonly width?: Limits };
  readonly inner: number;
  readonly outer: number;
  readonly width: number;
}

/** The middle of each tolerance, every wall then standing back by its share of the clearance. */
const cutOf = (request: StraightRequest, nominal: StraightNominal): StraightSplineCut => {
  const grown = (request.part === 'shaft' ? -2 : 2) * standBack(request);
  const limits = Object.fromEntries(
    Object.entries(nominal.zones ?? {}).flatMap(([key, zone]) => {
      const size = nominal[key as keyof StraightSplineCut & keyof StraightNominal] as number;
      const found = zoneLimits(zone, size);
      return found.kind === 'limits' ? [[key, { low: size + found.low / 1000, high: size + found.high / 1000 }]] : [];
    }),
  ) as StraightSplineCut['limits'];
  const middle = (key: 'inner' | 'outer' | 'width'): number => {
    const zone = limits[key];
    return (zone === undefined ? nominal[key] : (zone.low + zone.high) / 2) + grown;
  };
  return { limits, inner: middle('inner'), outer: middle('outer'), width: middle('width') };
};

const drawn = (request: StraightRequest, nominal: StraightNominal, cut: StraightSplineCut, finestWire: number): MadeShape => {
  if (!(cut.width > 0))
    return refused(say('straight-spline-impossible/clearance')`The clearance is more than a spline is wide.`, 'clearance');
  if (request.outside !== undefined && (request.part === 'shaft' || request.outside <= cut.outer))
    return refused(
      request.part === 'shaft'
        ? say('straight-spline-impossible/outside-of-shaft')`A shaft ends at its splines: an outside diameter belongs to a hub.`
        : say(
            'straight-spline-impossible/outside',
          )`An outside diameter of ${{ outside: mm(request.outside) }} leaves no metal outside of the splines, which reach ${{ splines: mm(cut.outer, fixed(3)) }}.`,
      'outside',
    );
  const form = formOf(request, nominal, cut);
  const made = straightTeeth(form);
  if (made.kind === 'no room') return noRoom(request, form);
  const outlines: readonly Outline[] = [
    ...(request.outside === undefined
      ? []
      : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'hub' } as const]),
    { contour: made.contour, metal: request.part === 'shaft' ? 'inside' : 'outside' },
  ];
  const inside = insideRadiusOf(outlines);
  const pins = pinned(request, { ...form, low: made.low, high: made.high, part: request.part });
  return {
    kind: 'made',
    shape: {
      name: words[request.part](nominal.words),
      outlines,
      starts: [],
      sizes: [
        ...sizesOf(request, nominal, cut, (alongAt(cut.width / 2, made.low) + alongAt(cut.width / 2, made.high)) / 2),
        ...pins.sizes,
        ...insideSizes(inside),
      ],
      fitDeviation: 0,
      insideRadius: inside,
      findings: [...pins.findings, ...cornerDoubts(request, nominal), ...belowAnyWire(inside, finestWire, 'rootRadius')],
    },
  };
};

const rootRadiusOf = ({ rootRadius }: StraightRequest, { radius }: StraightNominal): number => rootRadius ?? radius;

/** Ridges of a shaft have their edges broken and radii at their feet; grooves of a hub have radii at their bottoms and the edges of the bore broken. */
const formOf = (request: StraightRequest, nominal: StraightNominal, { inner, outer, width }: StraightSplineCut): StraightForm => {
  const round = { kind: 'round', radius: rootRadiusOf(request, nominal) } as const;
  const chamfer = { kind: 'chamfer', size: request.chamfer ?? nominal.chamfer } as const;
  const relief = { kind: 'relief', radius: round.radius } as const;
  return {
    teeth: nominal.splines,
    lean: 0,
    reach: width / 2,
    tip: outer / 2,
    root: inner / 2,
    tipCorner: request.part === 'shaft' ? chamfer : round,
    rootCorner: request.part === 'hub' ? chamfer : request.root === 'relief' && relief.radius > 0 ? relief : round,
  };
};

/** Names the number whose leaving out would make room. */
const noRoom = (request: StraightRequest, form: StraightForm): Extract<MadeShape, { kind: 'refused' }> => {
  const sharp = { kind: 'sharp' } as const;
  const [rounds, chamfers] = request.part === 'shaft' ? (['rootCorner', 'tipCorner'] as const) : (['tipCorner', 'rootCorner'] as const);
  if (straightTeeth({ ...form, [rounds]: sharp }).kind === 'toothed')
    return refused(
      say(
        'straight-spline-impossible/radius',
      )`A radius of ${{ radius: mm(sizeOf(form[rounds])) }} has no room in the corners of the splines.`,
      'rootRadius',
    );
  if (straightTeeth({ ...form, [chamfers]: sharp }).kind === 'toothed')
    return refused(
      say('straight-spline-impossible/chamfer')`A chamfer of ${{ chamfer: mm(sizeOf(form[chamfers])) }} leaves nothing of the splines.`,
      'chamfer',
    );
  if (straightTeeth({ ...form, tipCorner: sharp, rootCorner: sharp }).kind === 'toothed')
    return refused(say('straight-spline-impossible/corners')`Radius and chamfer together leave nothing of the flanks.`, 'rootRadius');
  return refused(say('straight-spline-impossible/nothing-left')`With this clearance nothing is left between the splines.`, 'clearance');
};

const sizeOf = (corner: StraightForm['rootCorner']): number =>
  corner.kind === 'sharp' ? 0 : corner.kind === 'chamfer' ? corner.size : corner.radius;

const sizes = phrases('straight-spline-size', {
  inner: say`inner diameter`,
  bore: say`bore`,
  spline: say`width of a spline, flank to flank`,
  groove: say`width of a groove, flank to flank`,
  betweenSplines: say`chord between two splines on the inner diameter`,
  betweenGrooves: say`chord between two grooves on the inner diameter`,
});

/** `x` is the middle of a flank, where its width is taken. */
const sizesOf = (
  { part }: StraightRequest,
  nominal: StraightNominal,
  { limits, inner, outer, width }: StraightSplineCut,
  x: number,
): readonly ShapeSize[] => {
  const { source, splines } = nominal;
  const shaft = part === 'shaft';
  const d = millimetres('inner-diameter', shaft ? sizes.inner : sizes.bore, inner, source);
  const b = millimetres('width', shaft ? sizes.spline : sizes.groove, width, source);
  const n = given({
    key: 'splines',
    name: say('spline.splines')`splines`,
    value: splines,
    unit: '1',
    basis: 'job',
    source: saidBy.request,
  });
  const chord = apply(
    chordBetween,
    { diameter: d, width: b, splines: n },
    { key: 'chord-at-foot', name: shaft ? sizes.betweenSplines : sizes.betweenGrooves },
  );
  const [turn, half] = [Math.PI / splines, chord.value / 2];
  const foot = Math.sqrt(Math.max(0, (inner / 2) ** 2 - half ** 2));
  const at = (side: 1 | -1) =>
    point(foot * Math.cos(turn) - side * half * Math.sin(turn), foot * Math.sin(turn) + side * half * Math.cos(turn));
  return [
    { figure: d, limits: limits.inner, taking: { kind: 'circle', centre: point(0, 0), radius: inner / 2 } },
    {
      figure: millimetres('outer-diameter', say('spline.outer-diameter')`outer diameter`, outer, source),
      limits: limits.outer,
      taking: { kind: 'circle', centre: point(0, 0), radius: outer / 2 },
    },
    { figure: b, limits: limits.width, taking: { kind: 'distance', from: point(x, -width / 2), to: point(x, width / 2) } },
    { figure: chord, taking: { kind: 'distance', from: at(-1), to: at(1) } },
    ...(nominal.symmetry === undefined
      ? []
      : [
          {
            figure: millimetres('symmetry', say('spline.symmetry')`symmetry of the splines to the axis, width of its zone`, 0, source),
            limits: { low: 0, high: nominal.symmetry },
            // Half of the zone is how far the middle of a spline may lie off, and so how far its walls may.
            moves: 1,
          },
        ]),
  ];
};

/** Pins measure few shafts: with low ridges they rest on the inner diameter. Those of a hub would find no seat at all. */
const pinned = (
  request: StraightRequest,
  flanks: StraightFlanks,
): { readonly sizes: readonly ShapeSize[]; readonly findings: readonly Finding[] } => {
  const pin = request.pin ?? (request.part === 'shaft' ? bestStraightPin(flanks) : undefined);
  if (pin === undefined) return { sizes: [], findings: [] };
  const fault = pinFault(flanks, pin);
  if (fault === undefined) return { sizes: [straightPinSize(flanks, pin, request.pin)], findings: [] };
  return { sizes: [], findings: [find('straight-pin-off-flank', fault, { place: atField('pin') })] };
};

/** The mate is taken to have the usual chamfer, or the one that is asked for here. */
const cornerDoubts = (request: StraightRequest, nominal: StraightNominal): readonly Finding[] => {
  const radius = rootRadiusOf(request, nominal);
  const mate = request.chamfer ?? nominal.chamfer;
  if ((request.part === 'shaft' && request.root === 'relief') || radius <= mate + 1e-9) return [];
  return [
    find('spline-corner-clash', clash[request.part](radius, mate), {
      place: { kind: 'field', path: request.rootRadius === undefined ? 'chamfer' : 'rootRadius' },
    }),
  ];
};

const clash = phrases('spline-corner-clash', {
  shaft: (radius: number, chamfer: number) =>
    say`Corners of R ${{ radius: mm(radius) }} are larger than the chamfer of ${{ chamfer: mm(chamfer) }} that the edges of the hub’s bore usually have: the parts would bear in the corners.`,
  hub: (radius: number, chamfer: number) =>
    say`Corners of R ${{ radius: mm(radius) }} are larger than the chamfer of ${{ chamfer: mm(chamfer) }} that the ridges of the shaft usually have: the parts would bear in the corners.`,
});
