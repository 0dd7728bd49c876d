/** Whether an opening gives a slug or is cut without a core: as the user says, else by whether a slug could be caught, and by cost. */

import { extentsOf } from '../../geometry/width.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, mm, name, quantity, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { Sorted } from '../kept-side.ts';
import { saidMass } from '../loose-piece-mass.ts';
import type { NoCoreCut } from '../plan.ts';
import type { PlanQuestion, ShopAsked, WayAsked } from '../question.ts';
import { thousandths } from '../said.ts';
import { type LikeLoops, type Surroundings, shapeName } from '../same-shape.ts';
import { costPerMinute } from '../wire/choose-wire.ts';

export interface CoreAsked {
  readonly shape: LikeLoops;
  /** kg of the slug there would be, and mm² of it. */
  readonly piece: { readonly mass: number; readonly area: number };
  /** From the contour to the slug, mm. */
  readonly reach: number;
  readonly kerf: number;
  readonly rough: LadderRow;
  readonly wire: Wire;
  readonly question: PlanQuestion;
}

export type CoreDecision =
  | { readonly kind: 'slug'; readonly refused?: CoreNeeded }
  | { readonly kind: 'no-core'; readonly because: 'asked' | 'too small' | 'cheaper' };

/** What stands against burning. */
export type CoreNeeded = keyof typeof against;

/** A slug shorter than this, mm, cannot be caught; common practice, no source. */
const SHORT = 5;

/** A slug lighter than this, kg, and shorter than the length, mm, is washed anywhere. Our own rule. */
const LIGHT = { mass: 5e-4, length: 10 };

/** A slug that can be caught is cut away only where that costs less than this share of its stops: the estimate is no better. */
const CLEARLY = 0.8;

/** Before anything is laid out; a lower bound of the burning stands for its cost. */
export const coreDecision = (asked: CoreAsked): CoreDecision => {
  const { core } = asked.shape.first;
  if (core === 'slug') return { kind: 'slug' };
  const refused = whyNot(asked);
  if (refused !== undefined) return core === 'no-core' ? { kind: 'slug', refused } : { kind: 'slug' };
  if (core === 'no-core') return { kind: 'no-core', because: 'asked' };
  const length = slugLength(asked);
  if (length < SHORT || (asked.piece.mass < LIGHT.mass && length < LIGHT.length)) return { kind: 'no-core', because: 'too small' };
  return isCheaper(asked, asked.piece.area / (0.8 * asked.kerf)) ? { kind: 'no-core', because: 'cheaper' } : { kind: 'slug' };
};

/** What stands against burning, whoever asks for it, before a way is looked for. */
const whyNot = ({ shape: { first }, question }: CoreAsked): CoreNeeded | undefined => {
  if (first.loop.kept === 'punch') return 'part';
  if (first.inside.length > 0) return 'inside';
  const { start = {} } = question;
  return Object.hasOwn(start, first.loop.loop.id) && start[first.loop.loop.id] === 'edge' ? 'edge' : undefined;
};

const against = phrases('core-against', {
  part: say`the piece inside is the part`,
  inside: say`something else is cut inside it`,
  edge: say`it is started from the block edge`,
  tooMany: say`it would take thousands of rings`,
  untraceable: say`its rings could not be worked out`,
  noWay: say`no wire path leads from a hole over its rings`,
});

/** mm of its longest way, less the kerf on both sides. */
const slugLength = ({ shape, reach }: CoreAsked): number => Math.max(0, extentsOf(shape.first.loop.loop.contour).most - 2 * reach);

/** Whether a way over the rings of so many mm costs clearly less than the stops of a slug. */
export const isCheaper = (asked: CoreAsked, length: number): boolean => {
  const minute = costPerMinute(asked.wire, asked.question);
  const { stops, stopMinutes, hour, threading } = slugNeeds(asked.question);
  const slug = stops * stopMinutes * (minute + hour / 60) + threading * minute;
  return minutesOf(asked, length) * minute < CLEARLY * slug;
};

const minutesOf = ({ rough }: CoreAsked, length: number): number => length / rough.feed.value;

/** Where the shop says nothing: min a stop, and minor money units for an hour of a person. From memory. */
const PERSON = { stopMinutes: 5, hour: 5000 };

/** A slug is secured and taken out; alone at night it also takes a threading more, for its tab. */
const slugNeeds = ({ run, machine, person = PERSON }: ShopAsked & WayAsked) => ({
  ...person,
  stops: 2,
  threading: run === 'attended' ? 0 : machine.threadMinutes,
});

/** Why, in a few words that can follow 'because'. */
export const coreReason = (asked: CoreAsked, because: Extract<CoreDecision, { kind: 'no-core' }>['because']): Text => {
  if (because === 'asked') return words.asked;
  return because === 'cheaper' ? words.cheaper : words.small(slugLength(asked), asked.piece.mass);
};

export const noCoreFinding = (asked: CoreAsked, noCore: NoCoreCut): Finding => {
  const { stops, stopMinutes } = slugNeeds(asked.question);
  const { loop } = asked.shape.first.loop;
  const { x, y } = loop.contour.segments[0].from;
  const more = minutesOf(asked, noCore.length);
  const field = `core.${loop.id}`;
  return find(
    'no-core-cut',
    say`${{ shape: shapeName(asked.shape) }} is cut without a core because ${{ reason: noCore.reason }}: ${{ how: ringsSaid(noCore) }}. ${{ more: quantity(more, 'min', fixed(more < 10 ? 1 : 0)) }} more unattended cutting, against ${{ stops: count(stops, 'stop') }} of ${{ stop: quantity(stopMinutes, 'min') }} attended for a slug.`,
    {
      place: { kind: 'spot', x, y, reach: 2, loop: loop.id },
      remedy:
        asked.shape.first.core === undefined
          ? remedy(say`For a slug set ${{ field: term(field) }} to slug.`, { field, value: 'slug' })
          : undefined,
    },
  );
};

const ringsSaid = ({ rings, bites, kerf }: NoCoreCut): Text => {
  const most = Math.max(...bites.filter((b) => b < kerf), 0);
  if (rings === 0) return words.roughAlone(kerf);
  return rings === 1 ? words.oneRing(kerf, most) : words.rings(rings, kerf, most);
};

const words = phrases('no-core-cut', {
  asked: say`you specified it`,
  cheaper: say`that costs less than the stops for a slug`,
  small: (slug: number, mass: number) =>
    say`its slug would be only ${{ slug: mm(slug, fixed(1)) }} long (${{ mass: saidMass(mass) }}), too small to catch`,
  roughAlone: (kerf: number) => say`the rough cut alone leaves nothing standing in it (kerf ${{ kerf: thousandths(kerf) }})`,
  oneRing: (kerf: number, most: number) =>
    say`1 ring inside the rough cut, as wide as the kerf of ${{ kerf: thousandths(kerf) }}, the rough cut then taking at most ${{ most: thousandths(most) }}`,
  rings: (rings: number, kerf: number, most: number) =>
    say`${{ rings: count(rings, 'ring') }} inside the rough cut, the first as wide as the kerf of ${{ kerf: thousandths(kerf) }}, each of the rest taking at most ${{ most: thousandths(most) }}`,
});

/** Said only where the user asked for it, or where a slug too small to be caught is left because of it. */
export const coreNeededFinding = ({ shape }: CoreAsked, why: CoreNeeded): Finding =>
  find('core-needed', say`${{ shape: shapeName(shape) }} cannot be cut without a core: ${{ why: against[why] }}. It comes out as a slug.`, {
    place: { kind: 'field', path: `core.${shape.first.loop.loop.id}` },
  });

/** Choices for loops that are not cut. */
export const coresOfUnknown = ({ core = {} }: PlanQuestion, { cut }: Sorted): readonly Finding[] => {
  const known = new Set(cut.map((c) => c.loop.id));
  return Object.keys(core)
    .filter((id) => !known.has(id))
    .map((id) =>
      find('core-of-unknown-loop', say`A core setting is given for ${{ loop: name(id) }}, but no contour of that name is cut.`, {
        place: { kind: 'field', path: `core.${id}` },
      }),
    );
};

/** What the user said of a loop's core; only own keys of the record say something. */
export const withCore = (around: Surroundings, { core = {} }: PlanQuestion): Surroundings => {
  const { id } = around.loop.loop;
  const said = Object.hasOwn(core, id) ? core[id] : undefined;
  return said === undefined ? around : { ...around, core: said };
};
