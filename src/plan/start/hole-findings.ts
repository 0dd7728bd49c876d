/** Holes that the wire is threaded through, held against the wire, and holes of the job that nothing is begun from. */

import type { Point } from '../../geometry/segment.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { isFilled, type NonEmpty } from '../../sequence/sequence.ts';
import { type Finding, type Place, remedy } from '../../text/finding.ts';
import { contour, count, fixed, mm, name, type Part, quantity, term, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { OpenCutPlan } from '../open-line.ts';
import type { ContourPlan } from '../plan.ts';
import type { GivenHole, PlanQuestion, WayAsked, WorkAsked } from '../question.ts';
import { spot } from '../said.ts';
import { safeDiameter, WANDER } from './holes.ts';

/** mm: finer holes are not drilled, from common practice. */
const FINEST = 0.3;

/** A hole takes at least so many times the wire's diameter: common practice, no source. */
const THREADABLE = 1.3;

interface HolesAsked {
  readonly contours: readonly ContourPlan[];
  readonly lines: readonly OpenCutPlan[];
  readonly wire: Wire;
  readonly question: PlanQuestion;
}

export const holeFindings = ({ contours, lines, wire, question }: HolesAsked): readonly Finding[] => {
  const begun = new Set([...contours.map((c) => c.hole.at), ...lines.flatMap((l) => [l.from.at, l.to.at])].map(spelled));
  const drilled = drilledOf(contours, lines);
  return [
    ...tooFine(contours, wire),
    ...notDrilled(drilled, question),
    ...smaller(drilled, question),
    ...mayDrift(drilled, wire, question),
    ...question.holes.filter(({ at }) => !begun.has(spelled(at))).map(notUsed),
  ];
};

/** A hole that the planner has drilled, and for what. */
interface DrilledHole {
  readonly of: string;
  readonly at: Point;
  readonly diameter: number;
  readonly past?: number | undefined;
}

const drilledOf = (contours: readonly ContourPlan[], lines: readonly OpenCutPlan[]): readonly DrilledHole[] => {
  const own = contours.filter(({ hole, overrides = [] }) => hole.origin === 'placed' && !overrides.includes('hole'));
  const ends = lines.flatMap((l) =>
    [l.from, l.to].flatMap((e) => (e.kind === 'hole' && e.origin === 'placed' ? [{ of: l.chain, ...e }] : [])),
  );
  return [...own.map(({ loop, hole }) => ({ of: loop, ...hole })), ...ends];
};

/** One finding for all of them, with the smallest. */
const smaller = (drilled: readonly DrilledHole[], { startHole }: WayAsked): readonly Finding[] => {
  const small = drilled.filter(({ diameter }) => diameter < startHole - 1e-9);
  if (!isFilled(small)) return [];
  const least = small.reduce((a, b) => (b.diameter < a.diameter ? b : a));
  return [
    find(
      'hole-made-smaller',
      say`${{ loops: namesOf(small) }} ${{ have: small.length === 1 ? words.has : words.have }} room for a start hole of only ${{ planned: mm(least.diameter, fixed(1)) }}, not the ${{ asked: quantity(startHole, 'mm') }} specified.`,
      {
        place: placeOf(least),
        done: say`The largest that fits is planned.`,
      },
    ),
  ];
};

/** Drilled every week and mostly good: the shop is told how far it may go wrong, once for all. */
const mayDrift = (drilled: readonly DrilledHole[], wire: Wire, { height }: WorkAsked): readonly Finding[] => {
  const past = drilled.filter((hole) => hole.past !== undefined);
  if (!isFilled(past)) return [];
  const worst = past.reduce((a, b) => ((b.past ?? 0) > (a.past ?? 0) ? b : a));
  const safe = safeDiameter(worst);
  const leave = term(past.length === 1 ? `kept.${past[0].of}` : 'kept');
  const more = {
    loops: namesOf(past),
    hole: mm(worst.diameter, fixed(1)),
    drift: mm(WANDER * height, fixed(2)),
    past: mm(worst.past ?? 0, fixed(2)),
  };
  return [
    find('hole-may-drift', past.length === 1 ? words.drifts(more) : words.drift(more), {
      place: placeOf(worst),
      done: say`It is drilled so all the same.`,
      remedy:
        safe >= Math.max(FINEST, threadable(wire))
          ? remedy(
              say`Drill ${{ safe: mm(safe, fixed(1)) }} or less (${{ option: term('--start-hole') }}), or set ${{ leave }} to leave and make it another way.`,
              {
                field: 'startHole',
                value: safe,
              },
            )
          : say('hole-may-drift/no-finer')`Check the hole below before cutting, or set ${{ leave }} to leave and make it another way.`,
    }),
  ];
};

/** Diamond is eroded by the wire and drilled by nobody: it is begun from an edge, or from a hole that the blank came with. */
const notDrilled = (drilled: readonly DrilledHole[], { material }: WorkAsked): readonly Finding[] => {
  if (material.family !== 'pcd' || !isFilled(drilled)) return [];
  const [first] = drilled;
  const field = `start.${first.of}`;
  return [
    find(
      'hole-not-drilled',
      say`${{ loops: namesOf(drilled) }} would be started from a drilled hole, and ${{ material: name(material.name) }} is not drilled.`,
      {
        place: placeOf(first),
        remedy: remedy(say`Start from the edge of the block (${{ field: term(field) }}), or give a hole that the blank has.`, {
          field,
          value: 'edge',
        }),
      },
    ),
  ];
};

const placeOf = ({ at, diameter, of }: DrilledHole): Place => ({ kind: 'spot', x: at.x, y: at.y, reach: diameter, loop: of });

const namesOf = (holes: NonEmpty<DrilledHole>): Part | Text =>
  holes.length === 1 ? contour(holes[0].of) : words.andMore(holes[0].of, holes.length - 1);

/** Contours of one shape are moved copies: their holes may be off by the last digits of a number. */
const spelled = ({ x, y }: Point): string => `${x.toFixed(4)} ${y.toFixed(4)}`;

/** mm */
const threadable = (wire: Wire): number => Math.ceil(wire.diameter * THREADABLE * 100 - 1e-9) / 100;

const tooFine = (contours: readonly ContourPlan[], wire: Wire): readonly Finding[] => {
  const least = threadable(wire);
  const fine = contours.filter(({ hole }) => hole.origin !== 'block edge' && hole.diameter < least);
  const first = fine[0];
  if (first === undefined) return [];
  const loops = fine.length === 1 ? contour(first.loop) : words.andMore(first.loop, fine.length - 1);
  const { at, diameter } = first.hole;
  return [
    find(
      'hole-too-fine',
      say`The start hole of ${{ loops }} is ${{ hole: bore(diameter) }}; ${{ wire: name(wire.name) }} wire needs at least ${{ least: mm(least, upTo(2)) }} to be threaded.`,
      {
        place: { kind: 'spot', x: at.x, y: at.y, reach: least, loop: first.loop },
        remedy: say`Drill it ${{ least: mm(least, upTo(2)) }} or larger, or use a finer wire.`,
      },
    ),
  ];
};

interface Drift {
  readonly loops: Part | Text;
  readonly hole: Part;
  readonly drift: Part;
  readonly past: Part;
}

const bore = (diameter: number): Part => mm(diameter, upTo(3));

const words = phrases('hole', {
  drifts: ({ loops, hole, drift, past }: Drift) =>
    say`The start hole of ${{ loops }} has little room: ${{ hole }} may drift by ${{ drift }} on its way down and reach ${{ past }} into stock that must stay.`,
  drift: ({ loops, hole, drift, past }: Drift) =>
    say`The start holes of ${{ loops }} have little room: ${{ hole }} may drift by ${{ drift }} on its way down and reach ${{ past }} into stock that must stay.`,
  has: say`has`,
  have: say`have`,
  andMore: (loop: string, more: number): Text => say`${{ loop: contour(loop) }} (and ${{ more: count(more) }} more)`,
});

const notUsed = ({ at, diameter }: GivenHole): Finding =>
  find('hole-not-used', say`Nothing starts from the hole of ${{ hole: bore(diameter) }} that the job gives at ${{ at: spot(at) }}.`, {
    place: { kind: 'spot', x: at.x, y: at.y, reach: diameter / 2 },
    remedy: say`Check its position, and that it removes no metal that must stay: the proof does not know it.`,
  });
