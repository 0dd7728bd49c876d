/** Entry, hole and tab that the user sets: whether they can be, and whether the planner would have chosen the same. */

import { perimeterOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { awayFrom } from '../../geometry/near/clearance-to.ts';
import { nearestOnChain } from '../../geometry/near/distance.ts';
import { windingOf } from '../../geometry/near/inside.ts';
import type { Lookup } from '../../geometry/near/lookup.ts';
import { distanceBetween, type Point } from '../../geometry/segment.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, list, contour as loopNamed, mm, name, quantity, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { KeptLoop, Sorted } from '../kept-side.ts';
import type { ContourPlan, StartHole } from '../plan.ts';
import { type GivenHole, type Override, type OverridesAsked, originOf, overrideOf, type PlanQuestion } from '../question.ts';
import { someLoops, spot } from '../said.ts';
import type { Surroundings } from '../same-shape.ts';
import { WANDER } from './holes.ts';

/** What was set of one contour, as the design takes it. */
export interface PlacedOverride {
  readonly entry?: { readonly segment: number; readonly share: number } | undefined;
  readonly hole?: StartHole | undefined;
  readonly tab?: number | undefined;
}

export interface OverrideAsked {
  readonly around: Surroundings;
  readonly said: Override;
  /** Contours that the drill must keep clear of. */
  readonly clear: Lookup;
  readonly roughOffset: number;
  readonly question: PlanQuestion;
  /** Begun from the edge of the block: a hole has nothing to do there. */
  readonly fromEdge: boolean;
}

export type HandRead =
  | { readonly kind: 'set'; readonly override: PlacedOverride; readonly findings: readonly Finding[] }
  | { readonly kind: 'cannot'; readonly findings: readonly Finding[] };

/** mm: an entry is meant to be on the contour, and whoever points at it does so with a hand. */
const NEAR = 1;
/** mm within which two places are one. */
const SAME = 1e-6;
/** Of the contour, at most: with more left standing nothing has been cut. */
const MOST_TAB = 0.5;

export const readOverride = (asked: OverrideAsked): HandRead => {
  const { around, said, fromEdge } = asked;
  const { loop } = around.loop;
  const entry: EntryRead = said.entry === undefined ? { findings: [] } : entryAt(loop.id, loop.contour, said.entry);
  const hole: HoleRead = said.hole === undefined || fromEdge ? { findings: [] } : holeAt(asked, said.hole);
  const tab = said.tab === undefined ? [] : tabFindings(around.loop, said.tab);
  const idle = said.hole !== undefined && fromEdge ? [idleHole(loop.id)] : [];
  const findings = [...entry.findings, ...hole.findings, ...tab, ...idle];
  if (findings.some((f) => f.severity === 'refusal')) return { kind: 'cannot', findings };
  return {
    kind: 'set',
    override: {
      entry: entry.at,
      hole: hole.drilled,
      tab: said.tab,
    },
    findings,
  };
};

/** Whether the planner chose by itself what the user sets: then its choice stands to the last digit. */
export const agrees = (chosen: Pick<ContourPlan, 'entry' | 'hole' | 'tab'>, said: Override, by: Point): boolean => {
  const near = (p: Point, q: Point): boolean => Math.abs(p.x + by.x - q.x) <= SAME && Math.abs(p.y + by.y - q.y) <= SAME;
  const { entry, hole, tab } = chosen;
  return (
    (said.entry === undefined || near(entry.at, said.entry)) &&
    (said.hole === undefined || (near(hole.at, said.hole.at) && Math.abs(hole.diameter - (said.hole.diameter ?? hole.diameter)) <= SAME)) &&
    (said.tab === undefined || Math.abs((tab?.length ?? 0) - said.tab) <= SAME)
  );
};

/** Names of what is set, in the order in which it is told. */
export const setOf = (said: Override): readonly ('entry' | 'hole' | 'tab')[] =>
  (['entry', 'hole', 'tab'] as const).filter((what) => said[what] !== undefined);

const field = (id: string, what: keyof Override) => ({ kind: 'field', path: `overrides.${id}.${what}` }) as const;

interface EntryRead {
  readonly at?: NonNullable<PlacedOverride['entry']> | undefined;
  readonly findings: readonly Finding[];
}

interface HoleRead {
  readonly drilled?: StartHole;
  readonly findings: readonly Finding[];
}

const entryAt = (id: string, contour: Contour, at: Point): EntryRead => {
  const found = nearestOnChain(contour, at);
  if (found.distance <= NEAR) return { at: { segment: found.segment, share: found.share }, findings: [] };
  return {
    findings: [
      find(
        'entry-off-contour',
        say`The entry of ${{ loop: loopNamed(id) }} is set by hand to ${{ entry: spot(at) }}, ${{ off: mm(found.distance, fixed(2)) }} off its contour; the nearest point of the contour is ${{ nearest: spot(found.at) }}.`,
        {
          place: field(id, 'entry'),
          remedy: remedy(say`Set it within ${{ near: mm(NEAR) }} of the contour, or leave it out.`, { field: field(id, 'entry').path }),
        },
      ),
    ],
  };
};

/** A hole that is there already keeps its diameter; any other is drilled. */
const holeAt = (asked: OverrideAsked, said: NonNullable<Override['hole']>): HoleRead => {
  const { around, clear, roughOffset, question } = asked;
  const { id } = around.loop.loop;
  const there = around.holes.find((h: GivenHole) => distanceBetween(h.at, said.at) <= SAME);
  const hole: StartHole = {
    at: said.at,
    diameter: said.diameter ?? there?.diameter ?? question.startHole,
    origin: there === undefined ? 'placed' : originOf(there),
  };
  const room = awayFrom(clear, hole.at);
  const unusable = (why: Text): HoleRead => ({
    findings: [
      find(
        'hand-hole-unusable',
        say`The wire cannot start ${{ loop: loopNamed(id) }} from the hole of ${{ hole: quantity(hole.diameter, 'mm') }} set by hand at ${{ at: spot(hole.at) }}: ${{ why }}.`,
        {
          place: field(id, 'hole'),
          remedy: remedy(say`Set another place or a smaller hole, or leave it out.`, { field: field(id, 'hole').path }),
        },
      ),
    ],
  });
  if (isInMetal(around, hole.at)) return unusable(words.inMetal);
  const needed = Math.max(hole.diameter / 2, roughOffset + 0.01);
  if (room <= needed) return unusable(words.tooNear(room, needed));
  const safe = hole.diameter / 2 + WANDER * question.height;
  if (hole.origin === 'drawing' || room >= safe) return { drilled: hole, findings: [] };
  return {
    drilled: hole,
    findings: [
      find(
        'hand-hole-near',
        say`The hole of ${{ loop: loopNamed(id) }} set by hand at ${{ at: spot(hole.at) }} is ${{ room: mm(room, fixed(2)) }} from the nearest contour: a drill wanders by about ${{ wander: mm(question.height / 100, fixed(2)) }} through ${{ height: quantity(question.height, 'mm') }}, and may break into the contour.`,
        {
          place: field(id, 'hole'),
          remedy: remedy(say`Keep its centre ${{ safe: mm(safe, fixed(2)) }} away, or have it EDM-drilled.`, {
            field: field(id, 'hole').path,
          }),
        },
      ),
    ],
  };
};

/** An opening's hole lies in its slug, a part's in the waste round it. */
const isInMetal = ({ loop, inside }: Surroundings, at: Point): boolean => {
  const within = windingOf(loop.loop.contour, at) !== 0;
  if (loop.kept === 'punch') return within;
  return !within || inside.some((k) => windingOf(k.loop.contour, at) !== 0);
};

const tabFindings = ({ loop }: KeptLoop, tab: number): readonly Finding[] => {
  const most = MOST_TAB * perimeterOf(loop.contour);
  if (tab <= most) return [];
  const floored = Math.floor(most * 10) / 10;
  return [
    find(
      'tab-by-hand',
      say`The tab of ${{ loop: loopNamed(loop.id) }} is set to ${{ tab: quantity(tab, 'mm') }} by hand; its contour is ${{ round: mm(2 * most, fixed(1)) }} long, and at most half of it can be left standing.`,
      {
        place: field(loop.id, 'tab'),
        remedy: remedy(say`Set ${{ most: mm(floored, fixed(1)) }} or less, or leave it out.`, {
          field: field(loop.id, 'tab').path,
          value: floored,
        }),
      },
    ),
  ];
};

const idleHole = (id: string): Finding =>
  find('by-hand-idle/hole', say`A hole is set by hand for ${{ loop: loopNamed(id) }}, which starts from the block edge and needs none.`, {
    place: field(id, 'hole'),
    remedy: remedy(say`Leave ${{ hole: term(field(id, 'hole').path) }} or ${{ start: term(`start.${id}`) }} out.`, {
      field: field(id, 'hole').path,
    }),
  });

export const idleTab = (id: string): Finding =>
  find(
    'by-hand-idle/tab',
    say`A tab is set by hand for ${{ loop: loopNamed(id) }}, which is cut without a core: there is nothing for it to hold.`,
    {
      place: field(id, 'tab'),
      remedy: remedy(say`Leave ${{ tab: term(field(id, 'tab').path) }} out, or set ${{ core: term(`core.${id}`) }} to slug.`, {
        field: field(id, 'tab').path,
      }),
    },
  );

export const noWayForOverride = (id: string, said: Override, at: Point): Finding => {
  const set = setOf(said);
  const first = field(id, set[0] ?? 'entry');
  const names = list(
    set.map((what) => words[what]),
    'and',
  );
  return find(
    'no-way-by-hand',
    say`With the ${{ set: names }} of ${{ loop: loopNamed(id) }} set by hand no wire path is possible, at ${{ at: spot(at) }}: the wire would cut metal that stays, or has no room to turn.`,
    {
      place: first,
      remedy: remedy(say`Set another position, with a few millimetres of smooth contour on either side, or leave it to the planner.`, {
        field: first.path,
      }),
    },
  );
};

/** Loops that are not cut. */
export const handOfUnknown = (question: OverridesAsked, { cut }: Sorted): readonly Finding[] => {
  const known = new Set(cut.map((c) => c.loop.id));
  return Object.keys(question.overrides ?? {})
    .filter((id) => !known.has(id))
    .flatMap((id) => {
      const override = overrideOf(question, id);
      if (override === undefined) return [];
      const [first, ...rest] = setOf(override);
      const set = list([...(first === undefined ? [] : [beginning[first]]), ...rest.map((what) => words[what])]);
      return find('by-hand-of-unknown-loop', say`${{ set }} set by hand for ${{ loop: name(id) }}, but no contour of that name is cut.`, {
        place: { kind: 'field', path: `overrides.${id}` },
      });
    });
};

/** What is set by hand of the job as a whole, beside what the wire is said with. */
export const setFindings = ({ offsets = [], order = [] }: OverridesAsked): readonly Finding[] => [
  ...(offsets.length === 0 ? [] : [offsetsSet(offsets)]),
  ...(order.length === 0
    ? []
    : [
        find('set-by-hand/order', say`The order is set by hand: ${{ first: someLoops(order, 'comma') }} first.`, {
          place: atField('order'),
        }),
      ]),
];

const offsetsSet = (offsets: readonly number[]): Finding =>
  find(
    'set-by-hand/offsets',
    say`The registers are set by hand: ${{ registers: list(offsets.map((o, i) => words.register(o, i + 1))) }}.`,
    {
      place: atField('offsets'),
    },
  );

const words = phrases('set-by-hand', {
  entry: say`entry`,
  hole: say`hole`,
  tab: say`tab`,
  register: (offset: number, pass: number) => say`${{ offset: quantity(offset, 'mm') }} for pass ${{ pass: count(pass) }}`,
  inMetal: say`it lies in metal that is kept`,
  tooNear: (room: number, needed: number) =>
    say`the nearest contour is ${{ room: mm(room, fixed(2)) }} from its centre, and it needs more than ${{ needed: mm(needed, fixed(2)) }}`,
});

/** Of a sentence. */
const beginning = phrases('set-by-hand-first', { entry: say`Entry`, hole: say`Hole`, tab: say`Tab` });
