/** Ratchet wheels: faces radial or undercut, backs straight or curved, either way round. */

import { reverseChain } from '../../geometry/chain.ts';
import { contour } from '../../geometry/contour.ts';
import { circle, midpoint, type Point, point } from '../../geometry/segment.ts';
import { mirroring, transformChain, transformPoint } from '../../geometry/transform.ts';
import type { Figure } from '../../quantity/figure.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, mm, number, type Part } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { belowAnyWire } from '../below-any-wire.ts';
import { standBack } from '../common-keys.ts';
import { askedOrFound, found } from '../figures.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import { spun } from '../polar.ts';
import { millimetres, refusedWith } from '../refused.ts';
import type { MadeShape, Outline, ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import { drawOf, type Pawl, pivotOf } from './pawl.ts';
import { type Ratchet, type RatchetForm, ratchetRing } from './ratchet-profile.ts';
import { type RatchetRequest, ratchetQuestion } from './ratchet-request.ts';

type Drawn = Extract<Ratchet, { kind: 'ratchet' }>;

const words = phrases('ratchet', {
  counterClockwise: (teeth: number, over: number) =>
    say`Ratchet wheel, ${{ teeth: count(teeth, 'tooth') }}, ${{ size: mm(over) }}, free counter-clockwise`,
  clockwise: (teeth: number, over: number) =>
    say`Ratchet wheel, ${{ teeth: count(teeth, 'tooth') }}, ${{ size: mm(over) }}, free clockwise`,
});

export const ratchet = shapeKind({
  ...ratchetQuestion,
  make: (request, { finestWire }) => {
    const { outerDiameter, depth, bore, clearance } = request;
    if (depth >= outerDiameter / 2)
      return refused(say('form-impossible/ratchet-depth')`Teeth ${{ depth: mm(depth) }} deep reach the middle of the wheel.`, 'depth');
    if ((request.pawlPivot === undefined) !== (request.pawlLength === undefined))
      return refused(
        say('form-impossible/pawl')`A pawl is known by its pivot and its length together.`,
        request.pawlPivot === undefined ? 'pawlPivot' : 'pawlLength',
      );
    if (request.back === 'straight' && request.backRadius !== undefined)
      return refused(say('form-impossible/straight-back')`A straight back has no radius; take the back curved.`, 'backRadius');
    const form = formOf(request);
    const root = form.root - form.standBack;
    if (bore !== undefined && bore / 2 >= root)
      return refused(
        say(
          'form-impossible/ratchet-bore',
        )`A bore of ${{ bore: mm(bore) }} leaves nothing below the root circle of ${{ root: mm(2 * root, fixed(3)) }}.`,
        'bore',
      );
    const made = ratchetRing(form);
    if (made.kind === 'ratchet') return finished(request, form, made, finestWire);
    return clearance !== 0 && ratchetRing({ ...form, standBack: 0 }).kind === 'ratchet'
      ? refused(say('form-impossible/ratchet-clearance')`With this clearance nothing is left of the teeth.`, 'clearance')
      : noRoom(request, form, made.where);
  },
});

const refused = (text: Text, path: string): Extract<MadeShape, { kind: 'refused' }> =>
  refusedWith(find('form-impossible', text, { place: { kind: 'field', path } }));

/** Common practice, no source: a sharp tip chips, and a land of this part of the pitch costs little. */
const USUAL_LAND = 0.05;

const formOf = (request: RatchetRequest): RatchetForm => {
  const { teeth, outerDiameter, depth, back, backRadius } = request;
  return {
    teeth,
    tip: outerDiameter / 2,
    root: outerDiameter / 2 - depth,
    undercut: (request.undercut * Math.PI) / 180,
    rootRadius: request.rootRadius,
    land: request.land ?? (USUAL_LAND * Math.PI * outerDiameter) / teeth,
    back: back === 'straight' ? { kind: 'straight' } : { kind: 'curved', radius: backRadius },
    standBack: standBack(request),
  };
};

/** Names the number whose change would make room. */
const noRoom = (
  request: RatchetRequest,
  form: RatchetForm,
  where: Extract<Ratchet, { kind: 'no room' }>['where'],
): ReturnType<typeof refused> => {
  const fits = (change: Partial<RatchetForm>): boolean => ratchetRing({ ...form, standBack: 0, ...change }).kind === 'ratchet';
  if (where === 'back radius')
    return refused(
      say(
        'form-impossible/ratchet-back',
      )`A back of R ${{ radius: mm(request.backRadius ?? 0) }} would rise above the tips before it falls to the next face: take a larger radius.`,
      'backRadius',
    );
  if (fits({ rootRadius: 0 }))
    return refused(
      say('form-impossible/ratchet-root')`A root radius of ${{ radius: mm(request.rootRadius) }} has no room between face and back.`,
      'rootRadius',
    );
  if (request.land !== undefined && fits({ land: 0, rootRadius: 0 }))
    return refused(say('form-impossible/ratchet-land')`A land of ${{ land: mm(request.land) }} leaves nothing of the backs.`, 'land');
  if (fits({ undercut: 0, rootRadius: 0 }))
    return refused(
      say('form-impossible/ratchet-faces')`Faces leaning by ${{ lean: number(request.undercut) }}° cut through the teeth.`,
      'undercut',
    );
  return refused(
    say(
      'form-impossible/ratchet-teeth',
    )`${{ teeth: count(request.teeth, 'tooth') }} ${{ depth: mm(request.depth) }} deep have no room on a wheel of ${{ size: mm(request.outerDiameter) }}.`,
    'depth',
  );
};

const finished = (request: RatchetRequest, form: RatchetForm, made: Drawn, finestWire: number): MadeShape => {
  const { teeth, outerDiameter, bore, turns } = request;
  // A mirrored contour runs the other way round.
  const over = mirroring(0);
  const ring = turns === 'clockwise' ? reverseChain(transformChain(over, made.contour)) : made.contour;
  const outlines: readonly Outline[] = [
    { contour: ring, metal: 'inside' },
    ...(bore === undefined ? [] : [{ contour: contour([circle(point(0, 0), bore / 2)]), metal: 'outside', layer: 'bore' } as const]),
  ];
  const inside = insideRadiusOf(outlines);
  const place = (p: Point): Point => (turns === 'clockwise' ? transformPoint(over, p) : p);
  return {
    kind: 'made',
    shape: {
      name: (turns === 'clockwise' ? words.clockwise : words.counterClockwise)(teeth, outerDiameter),
      outlines,
      starts: [],
      sizes: sizesOf(request, form, made, place),
      fitDeviation: 0,
      insideRadius: inside,
      findings: [...pawlDoubts(request, made), ...tipDoubts(made), ...belowAnyWire(inside, finestWire, 'rootRadius')],
    },
  };
};

/** The push of a tooth is square to its face; it has to pass the pivot on the wheel's side. */
const pawlDoubts = ({ undercut, pawlPivot, pawlLength }: RatchetRequest, { top, foot }: Drawn): readonly Finding[] => {
  const pawl: Pawl | undefined = pawlPivot === undefined || pawlLength === undefined ? undefined : { pivot: pawlPivot, length: pawlLength };
  const contact = midpoint(top, foot);
  const pivot = pivotOf(contact, pawl);
  if (pivot === undefined)
    return [
      find(
        'ratchet-pawl-out-of-reach',
        say`A pawl ${{ pawl: mm(pawlLength ?? 0) }} long on a pivot ${{ pivot: mm(pawlPivot ?? 0) }} from the middle does not reach a face at ${{ face: mm(Math.hypot(contact.x, contact.y), fixed(3)) }}.`,
        { place: atField('pawlLength') },
      ),
    ];
  const height = Math.hypot(top.x - foot.x, top.y - foot.y);
  const normal = point((top.y - foot.y) / height, -(top.x - foot.x) / height);
  const draw = (drawOf(contact, normal, pivot) * 180) / Math.PI;
  if (draw > -0.001) return [];
  const [lean, past] = [leaning(undercut), number(-draw, fixed(1))];
  const text =
    pawl === undefined
      ? say(
          'ratchet-throws-pawl/usual',
        )`The faces ${{ lean }}: under load a pawl square to the radius is pushed outwards, ${{ past }}° past its pivot, and only friction and its spring hold it.`
      : say(
          'ratchet-throws-pawl/this',
        )`The faces ${{ lean }}: under load this pawl is pushed outwards, ${{ past }}° past its pivot, and only friction and its spring hold it.`;
  return [
    find('ratchet-throws-pawl', text, {
      place: { kind: 'field', path: pawl === undefined || undercut < 0 ? 'undercut' : 'pawlPivot' },
    }),
  ];
};

const leaning = (undercut: number): Text => {
  if (undercut === 0) return faces.radial;
  return undercut < 0 ? faces.leanOut(-undercut) : faces.leanIn(undercut);
};

const faces = phrases('ratchet-faces', {
  radial: say`are radial`,
  leanOut: (by: number) => say`lean outwards by ${{ lean: number(by) }}°`,
  leanIn: (by: number) => say`lean in by only ${{ lean: number(by) }}°`,
});

/** mm, below which a land is none worth having. */
const SHARP = 0.02;

const tipDoubts = ({ land, tipAngle }: Drawn): readonly Finding[] =>
  land >= SHARP
    ? []
    : [
        find('ratchet-pointed', points(number((tipAngle * 180) / Math.PI, fixed(1)), land), {
          place: atField('land'),
          remedy: remedy(say`Give the tips a land.`, { field: 'land' }),
        }),
      ];

const points = (angle: Part, land: number): Text =>
  land > 1e-6
    ? say(
        'ratchet-pointed/land',
      )`The teeth end in points of ${{ angle }}°, with a land of ${{ land: mm(land, fixed(3)) }}: they chip and wear under the pawl.`
    : say('ratchet-pointed')`The teeth end in points of ${{ angle }}°: they chip and wear under the pawl.`;

const sizesOf = (
  { teeth, bore, backRadius }: RatchetRequest,
  form: RatchetForm,
  made: Drawn,
  place: (p: Point) => Point,
): readonly ShapeSize[] => {
  const ring = { kind: 'circle', centre: point(0, 0) } as const;
  const [tip, root] = [form.tip - form.standBack, form.root - form.standBack];
  const reached = made.land > 1e-9 ? tip : Math.hypot(made.top.x, made.top.y);
  const next = (2 * Math.PI) / teeth;
  const neighbour = spun(made.top, next);
  const lengthOf = (key: string, name: Text, from: Point, to: Point): ShapeSize => ({
    figure: found(key, name, Math.hypot(to.x - from.x, to.y - from.y), say('wheel.length-of.by')`off the contour`),
    taking: { kind: 'distance', from: place(from), to: place(to) },
  });
  return [
    {
      figure: millimetres('tip-diameter', say('wheel.tip-diameter')`diameter over the tips`, 2 * reached),
      taking: { ...ring, radius: reached },
    },
    {
      figure: found(
        'root-diameter',
        say('wheel.root-diameter')`root diameter`,
        2 * root,
        say('wheel.root-diameter.by')`the tips less twice the depth`,
      ),
      taking: { ...ring, radius: root },
    },
    lengthOf('tip-pitch', say('wheel.tip-pitch')`from tip to tip of two teeth, face to face`, made.top, neighbour),
    lengthOf('face-height', say('wheel.face-height')`straight part of a face`, made.foot, made.top),
    { figure: found('land', say('wheel.land')`land of a tip`, made.land, say('wheel.land.by')`off the contour`) },
    { figure: tipAngle(made.tipAngle) },
    ...(made.backRadius === undefined
      ? []
      : [
          {
            figure: askedOrFound(
              backRadius,
              'back-radius',
              say('wheel.back-radius')`radius of the backs`,
              made.backRadius,
              say('wheel.back-radius.by')`off the contour`,
            ),
          },
        ]),
    { figure: millimetres('root-radius', say('wheel.root-radius')`radius at the bottom of a space`, form.rootRadius + form.standBack) },
    ...(bore === undefined ? [] : [{ figure: millimetres('bore', say('wheel.bore')`bore`, bore), taking: { ...ring, radius: bore / 2 } }]),
  ];
};

const tipAngle = (radians: number): Figure =>
  found(
    'tip-angle',
    say('wheel.tip-angle')`angle between face and back at the tip`,
    Number(((radians * 180) / Math.PI).toFixed(2)),
    say('wheel.tip-angle.by')`off the contour`,
    {
      unit: '°',
    },
  );
