/** Sprockets for roller chains of ISO 606: root circle, roller seating arcs, flank arcs and tip circle between the smallest and the largest gap. */

import { type Contour, contour } from '../../geometry/contour.ts';
import { arc, type Point, point, type Segment } from '../../geometry/segment.ts';
import { type Figure, given } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { zoneLimits } from '../../quantity/limits-and-fits.ts';
import { saidBy } from '../../quantity/source.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { count, fixed, mm, quantities, term, upTo } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import { standBack } from '../common-keys.ts';
import { askedOrFound, found } from '../figures.ts';
import { inMm, plain } from '../inputs.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { type WheelBore, wheelBore } from '../keyway/wheel-bore.ts';
import { shapeKind } from '../kind.ts';
import { turned } from '../linked.ts';
import { polar, spun } from '../polar.ts';
import { millimetres, refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from './findings.ts';
import { ROLLER_CHAINS } from './roller-chains.ts';
import { type SprocketRequest, sprocketQuestion } from './sprocket-request.ts';

export const pitchDiameter: Formula<'pitch' | 'teeth'> = {
  name: say('wheel.pitch-diameter')`pitch diameter`,
  text: symbols`d = p / sin(180° / z)`,
  source: 'iso-606',
  unit: 'mm',
  inputs: { pitch: inMm('pitch of the chain'), teeth: plain('teeth') },
  compute: ({ pitch, teeth }) => pitch / Math.sin(Math.PI / teeth),
};

/** A pin lies on the root of its gap. With the greatest root, the pitch diameter less the roller, that is M = d + d_R of the standard. */
export const overRollers: Formula<'root' | 'teeth' | 'pin'> = {
  name: say('wheel.over-rollers')`size over two pins of the roller’s diameter`,
  text: say('wheel.over-rollers.by')`M = d_f + 2 d_R, for odd z (d_f + d_R) cos(90° / z) + d_R`,
  source: 'iso-606',
  unit: 'mm',
  inputs: { root: inMm('root diameter'), teeth: plain('teeth'), pin: inMm('pin') },
  compute: ({ root, teeth, pin }) => (root + pin) * (teeth % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * teeth))) + pin,
};

interface Gap {
  /** Radius of the seating arc, its whole angle (rad), radius of the flank. */
  readonly seat: number;
  readonly angle: number;
  readonly flank: number;
}

const RAD = Math.PI / 180;

/** The gap between its limits: `share` 0 the smallest, 1 the largest. */
export const gapOf = (roller: number, teeth: number, share: number): Gap => {
  const between = (small: number, large: number): number => small + share * (large - small);
  return {
    seat: between(0.505 * roller, 0.505 * roller + 0.069 * Math.cbrt(roller)),
    angle: between(140 - 90 / teeth, 120 - 90 / teeth) * RAD,
    flank: between(0.12 * roller * (teeth + 2), 0.008 * roller * (teeth * teeth + 180)),
  };
};

interface RootLimits {
  readonly low: number;
  readonly high: number;
}

/** The root diameter is pitch diameter less roller at most, and h11 below; above the table of h11 as at its end. */
const rootLimits = (greatest: number): RootLimits => {
  const zone = zoneLimits('h11', Math.min(greatest, 500));
  return { low: greatest + (zone.kind === 'limits' ? zone.low / 1000 : 0), high: greatest };
};

const SHARES = { smallest: 0, middle: 0.5, largest: 1 } as const;

const words = phrases('sprocket', {
  name: (chain: string, teeth: number) => say`Sprocket for chain ${{ chain: term(chain) }}, ${{ teeth: count(teeth, 'tooth') }}`,
});

export const sprocket = shapeKind({
  ...sprocketQuestion,
  make: (request) => {
    const { pitch, roller } = ROLLER_CHAINS.get(request.chain) as { pitch: number; roller: number };
    const { teeth } = request;
    const number = given({
      key: 'teeth',
      name: say('wheel.teeth')`teeth`,
      value: teeth,
      unit: '1',
      basis: 'job',
      source: saidBy.request,
    });
    const reference = apply(
      pitchDiameter,
      { pitch: millimetres('chain-pitch', say('wheel.chain-pitch')`pitch of the chain`, pitch, { file: 'iso-606' }), teeth: number },
      { key: 'pitch-diameter' },
    );
    const d = reference.value;
    const tip = (request.tipDiameter ?? d - roller + (1.25 * pitch + pitch * (1 - 1.6 / teeth)) / 2) / 2;
    const back = standBack(request);
    const gap = gapOf(roller, teeth, SHARES[request.gap]);
    const roots = rootLimits(d - roller);
    const asCut = (roots.low + roots.high) / 4;
    const root = asCut - back;
    const bore = wheelBore(request, { root, depth: tip - back - root });
    if (bore.kind === 'refused') return bore;
    const made = ringOf(teeth, asCut + gap.seat, tip - back, { ...gap, seat: gap.seat + back, flank: gap.flank - back });
    if (made === undefined)
      return refusedWith(
        find('form-impossible/sprocket-tip', say`A tip diameter of ${{ tip: mm(2 * tip, fixed(3)) }} lies below the flanks of the teeth.`, {
          place: atField('tipDiameter'),
        }),
      );
    return finished(request, { reference, number, roller, tip, root, roots, gap, back, bore }, made);
  },
});

interface Wheel {
  readonly reference: Figure;
  readonly number: Figure;
  readonly roller: number;
  readonly tip: number;
  readonly root: number;
  readonly roots: RootLimits;
  readonly gap: Gap;
  readonly back: number;
  readonly bore: WheelBore;
}

const finished = (
  { chain, teeth, tipDiameter }: SprocketRequest,
  { reference, number, roller, tip, root, roots, gap, back, bore }: Wheel,
  made: Ring,
): MadeShape => {
  const outlines: readonly Outline[] = [{ contour: made.contour, metal: 'inside' }, ...bore.outlines];
  const by = { source: { file: 'iso-606' }, from: [reference] };
  const pin = millimetres('pin', say('wheel.pin')`pin`, roller, { file: 'iso-606' });
  const rootFigure = found('root-diameter', sizes.root, 2 * root, sizes.rootBy, by);
  const overOf = (diameter: number): number => overRollers.compute({ root: diameter, teeth, pin: roller });
  const over = apply(
    overRollers,
    { root: rootFigure, teeth: number, pin },
    { key: 'over-pins', name: say('wheel.over-pins')`over two pins of ${{ pin: mm(roller, upTo(6)) }}` },
  );
  const overs = { low: overOf(roots.low), high: overOf(roots.high) };
  const opposite = (2 * Math.PI * Math.floor(teeth / 2)) / teeth;
  const centres = [0, opposite].map((a) => polar(root + roller / 2, a)) as [Point, Point];
  const inside = insideRadiusOf(outlines);
  const rim = { kind: 'circle', centre: point(0, 0) } as const;
  return {
    kind: 'made',
    shape: {
      name: words.name(chain, teeth),
      outlines,
      starts: [],
      sizes: [
        ...(root + roller > made.tip
          ? [{ figure: over, taking: { kind: 'pins', centres, diameter: roller, ...across(centres, roller / 2) } as const, limits: overs }]
          : []),
        { figure: reference, taking: { ...rim, radius: reference.value / 2, drawn: true } },
        {
          figure: askedOrFound(tipDiameter, 'tip-diameter', sizes.tip, 2 * made.tip, sizes.tipBy, by),
          taking: { ...rim, radius: made.tip },
        },
        {
          figure: rootFigure,
          taking: { ...rim, radius: root },
          limits: roots,
        },
        { figure: millimetres('seat-radius', say('wheel.seat-radius')`radius of the roller seat`, gap.seat + back, { file: 'iso-606' }) },
        { figure: millimetres('flank-radius', say('wheel.flank-radius')`radius of the flank`, gap.flank - back, { file: 'iso-606' }) },
        ...bore.sizes,
      ],
      fitDeviation: 0,
      insideRadius: inside,
      findings: [...(made.pointed ? [pointed(made.tip, tip)] : []), ...rootOutside(2 * root, roots), ...bore.findings],
    },
  };
};

const pointed = (end: number, tip: number): Finding =>
  find(
    'sprocket-pointed',
    say`The flanks meet at a diameter of ${{ meet: mm(2 * end, fixed(3)) }}, below the tip circle of ${{ tip: mm(2 * tip, fixed(3)) }}: the teeth end in a point there.`,
    { place: atField('gap') },
  );

const rootOutside = (root: number, { low, high }: RootLimits): readonly Finding[] =>
  root >= low - 1e-9 && root <= high + 1e-9
    ? []
    : [
        find(
          'sprocket-root-outside',
          say`With this clearance the root diameter is ${{ root: mm(root, fixed(3)) }}; ISO 606 allows ${{ limits: quantities([low, high], 'to', 'mm', fixed(3)) }}, so that the chain runs on its pitch circle.`,
          { place: atField('clearance') },
        ),
      ];

const across = ([a, b]: readonly [Point, Point], beyond: number): { readonly from: Point; readonly to: Point } => {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [x, y] = [((b.x - a.x) / length) * beyond, ((b.y - a.y) / length) * beyond];
  return { from: point(a.x - x, a.y - y), to: point(b.x + x, b.y + y) };
};

interface Ring {
  readonly contour: Contour;
  readonly tip: number;
  readonly pointed: boolean;
}

/** The first gap has its roller on the X axis. */
const ringOf = (teeth: number, pitch: number, tip: number, { seat, angle, flank }: Gap): Ring | undefined => {
  const half = angle / 2;
  const [cx, cy] = [-Math.cos(half), Math.sin(half)];
  const foot = point(pitch + seat * cx, seat * cy);
  const centre = point(pitch + (seat + flank) * cx, (seat + flank) * cy);
  const reach = Math.hypot(centre.x, centre.y);
  const middle = Math.PI / teeth;
  const spread = (reach * reach + tip * tip - flank * flank) / (2 * reach * tip);
  const meets = Math.abs(spread) <= 1 ? Math.atan2(centre.y, centre.x) - Math.acos(spread) : Number.POSITIVE_INFINITY;
  const pointed = meets > middle - 1e-12;
  const top = pointed ? onMiddle(centre, flank, middle) : tip;
  if (top === undefined || top <= Math.hypot(foot.x, foot.y)) return undefined;
  const end = point(top * Math.cos(pointed ? middle : meets), top * Math.sin(pointed ? middle : meets));
  const turn = (from: Point, to: Point, about: Point): number => {
    const a = Math.atan2(from.y - about.y, from.x - about.x);
    const b = Math.atan2(to.y - about.y, to.x - about.x);
    return Math.atan2(Math.sin(b - a), Math.cos(b - a));
  };
  const land = pointed ? 0 : 2 * (middle - meets);
  const low = point(foot.x, -foot.y);
  const one: Segment[] = [
    arc(low, foot, point(pitch, 0), -angle),
    arc(foot, end, centre, turn(foot, end, centre)),
    ...(land > 1e-12 ? [arc(end, spun(end, land), point(0, 0), land)] : []),
  ];
  const mirror = ({ x, y }: Point): Point => spun(point(x, -y), 2 * middle);
  const down = arc(mirror(end), mirror(foot), mirror(centre), turn(mirror(end), mirror(foot), mirror(centre)));
  const segments = Array.from({ length: teeth }, (_, i) => [...one, down].map((s) => turned(s, 2 * middle * i))).flat();
  const linked = segments.map((s, i) => ({ ...s, from: (segments[(i + segments.length - 1) % segments.length] as Segment).to }));
  return { contour: contour(linked), tip: top, pointed };
};

/** Where the flank crosses the middle of the tooth, as a radius. */
const onMiddle = (centre: Point, flank: number, middle: number): number | undefined => {
  const along = centre.x * Math.cos(middle) + centre.y * Math.sin(middle);
  const aside = centre.y * Math.cos(middle) - centre.x * Math.sin(middle);
  const square = flank * flank - aside * aside;
  return square < 0 ? undefined : along + Math.sqrt(square);
};

const sizes = phrases('sprocket-size', {
  tip: say`tip diameter`,
  tipBy: say`the middle of its limits`,
  root: say`root diameter`,
  rootBy: say`the pitch diameter less the roller, in the middle of h11, less the clearance`,
});
