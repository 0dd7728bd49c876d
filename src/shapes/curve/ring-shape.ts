/** The outer rotor of a gerotor pump: its opening, the round of its roots, and its sizes. Lengths in mm. */

import { type Contour, contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, mm, type Part, um, upTo } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { standBack } from '../common-keys.ts';
import { asked, found } from '../figures.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { insideSizes, refusedWith } from '../refused.ts';
import type { MadeShape, Outline, ShapeSize, Taking } from '../shape.ts';
import { find } from './findings.ts';
import type { PinRing } from './pin-ring.ts';
import { fouled, pumpRing, type RingForm } from './pump-ring.ts';
import type { RotorRequest } from './rotor-request.ts';

const at = (path: keyof RotorRequest) => ({ place: { kind: 'field', path } }) as const;
const tidy = (value: number): Part => mm(value, upTo(3));

export const ringShape = (request: RotorRequest, ring: PinRing): MadeShape => {
  const back = standBack(request);
  const tooth = request.pinDiameter / 2 - back;
  if (tooth <= 0) return refusedWith(find('rotor-impossible/tooth', say`The clearance is more than a tooth is thick.`, at('clearance')));
  const passing = ring.radius + 2 * ring.eccentricity - request.pinDiameter / 2;
  const form = { ...ring, tooth, root: passing + request.rootClearance + back };
  const rounded = roundedRing(request, form);
  if ('finding' in rounded) return refusedWith(rounded.finding);
  if (request.outside !== undefined && request.outside / 2 <= form.root)
    return refusedWith(
      find(
        'rotor-impossible/outside',
        say`An outside diameter of ${{ outside: tidy(request.outside) }} leaves nothing beyond the roots at ${{ roots: tidy(2 * form.root) }}.`,
        at('outside'),
      ),
    );
  const outlines: readonly Outline[] = [
    ...(request.outside === undefined
      ? []
      : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'outside' } as const]),
    { contour: rounded.contour, metal: 'outside' },
  ];
  const inside = insideRadiusOf(outlines);
  return {
    kind: 'made',
    shape: {
      name: words.name(request, ring.pins),
      outlines,
      starts: [],
      sizes: sizesOf(request, { ...form, round: rounded.round }, back, inside),
      fitDeviation: 0,
      insideRadius: inside,
      findings: [],
    },
  };
};

const words = phrases('gerotor-ring', {
  name: ({ pinCircle, eccentricity }: RotorRequest, teeth: number) =>
    say`Outer rotor of a gerotor, ${{ teeth: count(teeth, 'tooth') }}, ${{ circle: tidy(pinCircle) }} circle, ${{ eccentricity: tidy(eccentricity) }} eccentric`,
});

type Rounded = { readonly contour: Contour; readonly round: number } | { readonly finding: Finding };

/** Shares of a tooth's radius that are tried for the round, the largest first. */
const SHARES = [0.5, 0.4, 0.3, 0.2, 0.15, 0.1, 0.05, 0];

/** Lobes that touch the root's round by less than this do no harm: it is far below what is cut. */
const TOUCHING = 1e-5;

const roundedRing = (request: RotorRequest, form: Omit<RingForm, 'round'>): Rounded => {
  if (request.rootRound !== undefined) return withRound(request, { ...form, round: request.rootRound });
  const tries = SHARES.map((share) => share * form.tooth);
  let last: Rounded | undefined;
  for (const round of tries) {
    last = withRound(request, { ...form, round });
    if (!('finding' in last)) return last;
  }
  return last as Rounded;
};

const withRound = (request: RotorRequest, form: RingForm): Rounded => {
  const made = pumpRing(form);
  const path = request.rootRound === undefined ? 'pinDiameter' : 'rootRound';
  if (made.kind === 'teeth apart')
    return {
      finding: find(
        'rotor-impossible/teeth-apart',
        say`The teeth do not reach the root circle of ${{ root: tidy(2 * form.root) }} that the lobes need: an arc of ${{ tooth: tidy(form.tooth) }} about a circle of ${{ circle: tidy(2 * form.radius) }} ends before it.`,
        {
          ...at('pinDiameter'),
          remedy: remedy(say`A larger radius of the teeth, less eccentricity, or less clearance at the root.`, { field: 'pinDiameter' }),
        },
      ),
    };
  if (made.kind === 'no room')
    return {
      finding: find(
        'rotor-impossible/rounds',
        say`Rounds of R ${{ round: tidy(form.round) }} have no room in the roots of the ring.`,
        at(path),
      ),
    };
  // A round of our own choice keeps half of the clearance; one that was asked for may use it up.
  const kept = request.rootRound === undefined ? -request.rootClearance / 2 : 0;
  const deep = made.kind === 'in contact' ? 0 : fouled(form, request.pinDiameter / 2);
  if (made.kind === 'in contact' || deep > kept + TOUCHING)
    return {
      finding: find('rotor-ring-fouls', made.kind === 'in contact' ? fouls.inContact(form.round) : foulsBy(deep, form.round), {
        ...at(path),
        remedy: remedy(say`A smaller round, or more clearance at the root.`, { field: 'rootRound' }),
      }),
    };
  return { contour: made.contour, round: form.round };
};

const foulsBy = (deep: number, round: number): Text => (deep > 0 ? fouls.runInto(deep, round) : fouls.leftBetween(-deep, round));

const fouls = phrases('rotor-ring-fouls', {
  inContact: (round: number) => say`Rounds of R ${{ round: tidy(round) }} begin on the part of the teeth that the lobes roll on.`,
  runInto: (deep: number, round: number) =>
    say`The lobes run ${{ deep: um(deep * 1000, fixed(1)) }} into roots of R ${{ round: tidy(round) }}.`,
  leftBetween: (room: number, round: number) =>
    say`Only ${{ room: um(room * 1000, fixed(1)) }} are left between the lobes and roots of R ${{ round: tidy(round) }}.`,
});

const sizesOf = (request: RotorRequest, form: RingForm, back: number, inside: number | undefined): readonly ShapeSize[] => {
  const rim = (radius: number, drawn?: true): Taking => ({
    kind: 'circle',
    centre: point(0, 0),
    radius,
    drawn,
  });
  const tips = form.radius - form.tooth;
  const own = { source: { file: 'trochoid-rotors' } };
  return [
    {
      figure: found('tip-diameter', say('curve.tip-diameter')`circle inside the teeth`, 2 * tips, symbols`2 (R + j) - d`, own),
      taking: rim(tips),
    },
    ...(form.pins % 2 === 0
      ? [
          {
            figure: found('between-teeth', say('curve.between-teeth')`between two opposite teeth`, 2 * tips, symbols`2 (R + j) - d`, own),
            taking: { kind: 'distance', from: point(-tips, 0), to: point(tips, 0) },
          } as const,
        ]
      : []),
    {
      figure: found('root-diameter', say('curve.root-diameter')`root diameter`, 2 * form.root, symbols`2 (R + 2 e + c + j) - d`, own),
      taking: rim(form.root),
    },
    {
      figure: found('tooth-radius', say('curve.tooth-radius')`radius of a tooth`, form.tooth, symbols`d / 2 - j`, own),
      taking: { kind: 'radius', centre: point(form.radius, 0), at: point(tips, 0) },
    },
    {
      figure: found(
        'root-round',
        say('curve.root-round')`radius between tooth and root`,
        form.round,
        say('curve.root-round.by')`as asked, or the most that has room`,
      ),
    },
    {
      figure: asked('pin-circle', say('curve.middle-circle')`circle of the teeth’s middles`, request.pinCircle),
      taking: rim(form.radius, true),
    },
    { figure: asked('eccentricity', say('curve.eccentricity')`eccentricity`, form.eccentricity) },
    ...(back === 0
      ? []
      : [
          {
            figure: found('back', say('curve.walls-back')`what the walls stand back`, back, say('curve.back.by')`clearance × share`, {
              source: { file: 'definition' },
            }),
          },
        ]),
    ...(request.outside === undefined
      ? []
      : [{ figure: asked('outside', say('curve.outside')`outside diameter`, request.outside), taking: rim(request.outside / 2) }]),
    ...insideSizes(inside),
  ];
};
