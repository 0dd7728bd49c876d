/** Serrations, shaft or hub: V-shaped teeth with straight flanks, by the sizes of DIN 5481 or by free numbers. */

import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { fixed, mm } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { belowAnyWire } from '../below-any-wire.ts';
import { standBack } from '../common-keys.ts';
import { askedOrFound, found } from '../figures.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import { insideSizes, millimetres } from '../refused.ts';
import type { MadeShape, Outline, ShapeSize } from '../shape.ts';
import { bestPinIs } from '../teeth/pin-choice.ts';
import { alongAt, onFlank, type StraightForm, type StraightTeeth, straightTeeth } from '../teeth/straight-teeth.ts';
import { find } from './findings.ts';
import { refused, type SerrationNominal, type SerrationRequest, serrationNominal, serrationQuestion } from './serration-request.ts';
import { bestStraightPin, pinFault, type StraightFlanks, straightPinSize } from './straight-pins.ts';

const words = phrases('serration', {
  shaft: (size: Text) => say`Serration, shaft, ${{ size }}`,
  hub: (size: Text) => say`Serration, hub, ${{ size }}`,
});

export const serration = shapeKind({
  ...serrationQuestion,
  make: (request, { finestWire }) => {
    const nominal = serrationNominal(request);
    return nominal.kind === 'refused' ? nominal : drawn(request, nominal, finestWire);
  },
});

export const serrationPitch: Formula<'pitchDiameter' | 'teeth'> = {
  name: say('spline.serration-pitch')`pitch of the teeth`,
  text: symbols`t = π d5 / z`,
  source: 'din-5481',
  unit: 'mm',
  inputs: { pitchDiameter: { unit: 'mm', name: 'pitch diameter' }, teeth: { unit: '1', name: 'teeth' } },
  compute: ({ pitchDiameter, teeth }) => (Math.PI * pitchDiameter) / teeth,
};

/** Diameters to which one round between the flanks reaches: roots of the shaft, whose spaces are open outwards, and of the hub. */
export const roundRoot = (
  part: 'shaft' | 'hub',
  { reach, shaftHalf, hubHalf }: Pick<SerrationNominal, 'reach' | 'shaftHalf' | 'hubHalf'>,
  radius: number,
): number =>
  part === 'shaft' ? 2 * ((reach + radius) / Math.sin(shaftHalf) - radius) : 2 * ((reach - radius) / Math.sin(hubHalf) + radius);

interface SerrationCut {
  readonly form: StraightForm;
  readonly tips: number;
  readonly roots: number;
  readonly made: StraightTeeth;
}

const drawn = (request: SerrationRequest, nominal: SerrationNominal, finestWire: number): MadeShape => {
  const cut = cutOf(request, nominal);
  const fault = faultOf(request, nominal, cut);
  if (fault !== undefined) return fault;
  if (cut.made.kind === 'no room') return noRoom(request, nominal, cut);
  const outlines: readonly Outline[] = [
    ...(request.outside === undefined
      ? []
      : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'hub' } as const]),
    { contour: cut.made.contour, metal: request.part === 'shaft' ? 'inside' : 'outside' },
  ];
  const inside = insideRadiusOf(outlines);
  const pins = pinned(request, { ...cut.form, low: cut.made.low, high: cut.made.high, part: request.part });
  return {
    kind: 'made',
    shape: {
      name: words[request.part](nominal.words),
      outlines,
      starts: [],
      sizes: [...pins.sizes, ...sizesOf(request, nominal, cut), ...insideSizes(inside)],
      fitDeviation: 0,
      insideRadius: inside,
      findings: [...pins.findings, ...tipDoubts(request, nominal), ...belowAnyWire(inside, finestWire, 'rootRadius')],
    },
  };
};

/** Shaft walls stand back inwards, those of the hub outwards; a round root keeps its radius and goes along with the flanks. */
const cutOf = (request: SerrationRequest, nominal: SerrationNominal): SerrationCut => {
  const shaft = request.part === 'shaft';
  const grown = (shaft ? -1 : 1) * standBack(request);
  const reach = nominal.reach + grown;
  const tips = (shaft ? nominal.shaft : nominal.bore) + 2 * grown;
  const roots =
    request.rootDiameter === undefined
      ? roundRoot(request.part, { ...nominal, reach }, nominal.rootRadius)
      : request.rootDiameter + 2 * grown;
  const rootCorner = { kind: 'round', radius: nominal.rootRadius } as const;
  const tipCorner = { kind: 'round', radius: request.tipRadius } as const;
  const form: StraightForm = {
    teeth: nominal.teeth,
    lean: nominal.hubHalf,
    reach,
    tip: (shaft ? tips : roots) / 2,
    root: (shaft ? roots : tips) / 2,
    tipCorner: shaft ? tipCorner : rootCorner,
    rootCorner: shaft ? rootCorner : tipCorner,
  };
  return { form, tips, roots, made: reach > 0 ? straightTeeth(form) : { kind: 'no room', where: 'flank' } };
};

const faultOf = (
  request: SerrationRequest,
  { rootRadius }: SerrationNominal,
  { form, tips, roots }: SerrationCut,
): ReturnType<typeof refused> | undefined => {
  const shaft = request.part === 'shaft';
  if (!(form.reach > (shaft ? 0 : rootRadius)))
    return refused(say('serration-impossible/tooth')`The clearance or the root radius is more than a tooth is thick.`, 'clearance');
  if (!(shaft ? roots < tips : roots > tips))
    return refused(
      say(
        'serration-impossible/roots',
      )`Roots at a diameter of ${{ roots: mm(roots, fixed(3)) }} leave no teeth whose tips lie at ${{ tips: mm(tips, fixed(3)) }}.`,
      request.rootDiameter === undefined ? 'rootRadius' : 'rootDiameter',
    );
  if (request.outside === undefined) return undefined;
  if (shaft)
    return refused(
      say('serration-impossible/outside-of-shaft')`A shaft ends at its teeth: an outside diameter belongs to a hub.`,
      'outside',
    );
  return request.outside > roots
    ? undefined
    : refused(
        say(
          'serration-impossible/outside',
        )`An outside diameter of ${{ outside: mm(request.outside) }} leaves no metal outside of the roots at ${{ roots: mm(roots, fixed(3)) }}.`,
        'outside',
      );
};

const noRoom = (request: SerrationRequest, nominal: SerrationNominal, { form, made }: SerrationCut): ReturnType<typeof refused> => {
  const tipSide = made.kind === 'no room' && (made.where === 'tip') === (request.part === 'shaft');
  const sharp = { kind: 'sharp' } as const;
  const without = request.part === 'shaft' ? { ...form, tipCorner: sharp } : { ...form, rootCorner: sharp };
  if (request.tipRadius > 0 && straightTeeth(without).kind === 'toothed')
    return refused(
      say('serration-impossible/tips')`A tip radius of ${{ radius: mm(request.tipRadius) }} has no room on the tips.`,
      'tipRadius',
    );
  if (request.clearance !== 0 && cutOf({ ...request, clearance: 0 }, nominal).made.kind === 'toothed')
    return refused(say('serration-impossible/clearance')`With this clearance the flanks of the teeth meet.`, 'clearance');
  if (tipSide)
    return refused(
      flanksMeet[request.part](request.part === 'shaft' ? nominal.shaft : nominal.bore),
      request.size !== undefined ? 'size' : request.part === 'shaft' ? 'shaftDiameter' : 'boreDiameter',
    );
  return request.rootDiameter === undefined
    ? refused(
        say(
          'serration-impossible/root-radius',
        )`A root radius of ${{ radius: mm(nominal.rootRadius, fixed(3)) }} leaves nothing of the flanks.`,
        'rootRadius',
      )
    : refused(
        say(
          'serration-impossible/flat-roots',
        )`Flat roots at ${{ roots: mm(request.rootDiameter) }} with R ${{ radius: mm(nominal.rootRadius, fixed(3)) }} have no room between the flanks.`,
        'rootDiameter',
      );
};

const flanksMeet = phrases('serration-flanks-meet', {
  shaft: (tips: number) => say`The flanks of the shaft’s teeth meet before the tips at ${{ tips: mm(tips, fixed(3)) }}.`,
  hub: (tips: number) => say`The flanks of the hub’s teeth meet before the tips at ${{ tips: mm(tips, fixed(3)) }}.`,
});

const pinned = (
  request: SerrationRequest,
  flanks: StraightFlanks,
): { readonly sizes: readonly ShapeSize[]; readonly findings: readonly Finding[] } => {
  const best = bestStraightPin(flanks);
  const pin = request.pin ?? best;
  if (pin === undefined) return { sizes: [], findings: [] };
  const fault = pinFault(flanks, pin);
  if (fault === undefined) return { sizes: [straightPinSize(flanks, pin, request.pin)], findings: [] };
  return {
    sizes: best === undefined ? [] : [straightPinSize(flanks, best, undefined)],
    findings: [
      find('straight-pin-off-flank', fault, {
        place: atField('pin'),
        remedy: best === undefined ? undefined : bestPinIs(best),
      }),
    ],
  };
};

/** The mate is taken to have roots of the same radius, and no play. */
const tipDoubts = ({ part, rootDiameter }: SerrationRequest, nominal: SerrationNominal): readonly Finding[] => {
  if (rootDiameter !== undefined) return [];
  const mate = part === 'shaft' ? 'hub' : 'shaft';
  const roots = roundRoot(mate, nominal, nominal.rootRadius);
  const tips = part === 'shaft' ? nominal.shaft : nominal.bore;
  if (part === 'shaft' ? tips < roots : tips > roots) return [];
  return [
    find('serration-tip-meets-root', touching[mate](tips, nominal.rootRadius, roots), {
      place: { kind: 'field', path: part === 'shaft' ? 'shaftDiameter' : 'boreDiameter' },
    }),
  ];
};

const touching = phrases('serration-tip-meets-root', {
  shaft: (tips: number, radius: number, roots: number) =>
    say`Tips at a diameter of ${{ tips: mm(tips, fixed(3)) }} touch the roots of the shaft, which with R ${{ radius: mm(radius, fixed(3)) }} lie at ${{ roots: mm(roots, fixed(3)) }}: the flanks would not bear.`,
  hub: (tips: number, radius: number, roots: number) =>
    say`Tips at a diameter of ${{ tips: mm(tips, fixed(3)) }} touch the roots of the hub, which with R ${{ radius: mm(radius, fixed(3)) }} lie at ${{ roots: mm(roots, fixed(3)) }}: the flanks would not bear.`,
});

const sizes = phrases('serration-size', {
  tipsOfShaft: say`outer diameter, over the tips`,
  tipsOfHub: say`bore, over the tips`,
  toothChord: say`chord of a tooth on the pitch diameter`,
  spaceChord: say`chord of a space on the pitch diameter`,
  between: say`between the flanks`,
});

const sizesOf = (
  { part, teeth: wanted, rootDiameter }: SerrationRequest,
  nominal: SerrationNominal,
  { form, tips, roots }: SerrationCut,
): readonly ShapeSize[] => {
  const { source, limits } = nominal;
  const shaft = part === 'shaft';
  const tipLimits = shaft ? limits.shaft : limits.bore;
  const ring = { kind: 'circle', centre: point(0, 0) } as const;
  const teeth = askedOrFound(wanted, 'teeth', say('spline.teeth')`teeth`, nominal.teeth, say('spline.teeth.by')`by the size`, {
    unit: '1',
    source: source ?? saidBy.request,
  });
  const pitchDiameter = millimetres('pitch-diameter', say('spline.pitch-diameter')`pitch diameter`, nominal.pitchDiameter, source);
  const at = onFlank(form, alongAt(form.reach, nominal.pitchDiameter / 2));
  return [
    {
      figure: millimetres('tip-diameter', shaft ? sizes.tipsOfShaft : sizes.tipsOfHub, tips, source),
      limits: tipLimits,
      taking: { ...ring, radius: tips / 2 },
    },
    {
      figure: askedOrFound(
        rootDiameter,
        'root-diameter',
        say('spline.root-diameter')`root diameter`,
        roots,
        say('spline.root-diameter.by')`where the round of the root ends`,
      ),
      taking: { ...ring, radius: roots / 2 },
    },
    { figure: pitchDiameter, taking: { ...ring, radius: nominal.pitchDiameter / 2, drawn: true } },
    { figure: apply(serrationPitch, { pitchDiameter, teeth }, { key: 'pitch' }) },
    {
      figure: found('chord-at-pitch', shaft ? sizes.toothChord : sizes.spaceChord, 2 * at.y, sizes.between),
      taking: { kind: 'distance', from: point(at.x, -at.y), to: at },
    },
  ];
};
