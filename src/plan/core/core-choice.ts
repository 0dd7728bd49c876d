/** Whether an opening gives a slug or is burnt out without a core: as the user says, else by whether a slug could be caught, and by cost. */

import { extentsOf } from '../../geometry/width.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import type { Sorted } from '../kept-side.ts';
import { spokenMass } from '../loose-piece-mass.ts';
import type { CoreBurnt } from '../plan.ts';
import type { PlanQuestion } from '../question.ts';
import { type Shape, type Surroundings, shapeName } from '../same-shape.ts';
import { costPerMinute } from '../wire/choose-wire.ts';

export interface CoreAsked {
  readonly shape: Shape;
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
  | { readonly kind: 'slug'; readonly refused?: string }
  | { readonly kind: 'burn'; readonly because: 'asked' | 'too small' | 'cheaper' };

/** A slug shorter than this, mm, cannot be caught; common practice, no source. */
const SHORT = 5;

/** A slug lighter than this, kg, and shorter than the length, mm, is washed anywhere. Our own rule. */
const LIGHT = { mass: 5e-4, length: 10 };

/** A slug that can be caught is burnt only where that costs less than this share of its stops: the estimate is no better. */
const CLEARLY = 0.8;

/** Before anything is laid out; a lower bound of the burning stands for its cost. */
export const coreDecision = (asked: CoreAsked): CoreDecision => {
  const { core } = asked.shape.first;
  if (core === 'slug') return { kind: 'slug' };
  const refused = whyNot(asked);
  if (refused !== undefined) return core === 'burn' ? { kind: 'slug', refused } : { kind: 'slug' };
  if (core === 'burn') return { kind: 'burn', because: 'asked' };
  const length = slugLength(asked);
  if (length < SHORT || (asked.piece.mass < LIGHT.mass && length < LIGHT.length)) return { kind: 'burn', because: 'too small' };
  return isCheaper(asked, asked.piece.area / (0.8 * asked.kerf)) ? { kind: 'burn', because: 'cheaper' } : { kind: 'slug' };
};

/** What stands against burning, whoever asks for it. */
const whyNot = ({ shape: { first }, question }: CoreAsked): string | undefined => {
  if (first.loop.kept === 'punch') return 'the piece inside is the part';
  if (first.inside.length > 0) return 'something else is cut inside it';
  const { start = {} } = question;
  return Object.hasOwn(start, first.loop.loop.id) && start[first.loop.loop.id] === 'edge'
    ? 'it is begun from the edge of the block'
    : undefined;
};

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
const slugNeeds = ({ run, machine, person = PERSON }: PlanQuestion) => ({
  ...person,
  stops: 2,
  threading: run === 'attended' ? 0 : machine.threadMinutes,
});

/** Why, in a few words that can follow 'because'. */
export const coreReason = (asked: CoreAsked, because: Extract<CoreDecision, { kind: 'burn' }>['because']): string => {
  if (because === 'asked') return 'you said so';
  if (because === 'cheaper') return 'that costs less than the stops of a slug';
  return `its slug would be only ${slugLength(asked).toFixed(1)} mm long (${spokenMass(asked.piece.mass)}), too small to be caught`;
};

export const burntFinding = (asked: CoreAsked, { rings, length, bites, kerf, reason }: CoreBurnt): Finding => {
  const { stops, stopMinutes } = slugNeeds(asked.question);
  const { loop } = asked.shape.first.loop;
  const most = Math.max(...bites.filter((b) => b < kerf), 0);
  const how =
    rings === 0
      ? `the rough cut alone leaves nothing standing in it (kerf ${kerf.toFixed(3)} mm)`
      : `${rings === 1 ? '1 ring' : `${rings} rings`} inside the rough cut, the first as wide as the kerf of ${kerf.toFixed(3)} mm, ${rings === 1 ? 'the rough cut then taking' : 'then each taking'} at most ${most.toFixed(3)} mm`;
  const more = minutesOf(asked, length);
  return find(
    'core-burnt',
    `${shapeName(asked.shape)} is burnt out without a core because ${reason}: ${how}. ` +
      `That takes ${more.toFixed(more < 10 ? 1 : 0)} min of cutting more, alone; a slug would need ${stops} stops of ${stopMinutes} min with somebody there.`,
    {
      place: { kind: 'spot', x: loop.contour.segments[0]!.from.x, y: loop.contour.segments[0]!.from.y, reach: 2, loop: loop.id },
      ...(asked.shape.first.core === undefined && { remedy: `If a slug is wanted, set core.${loop.id} to slug.` }),
    },
  );
};

/** Said only where the user asked for it, or where a slug too small to be caught is left because of it. */
export const notBurntFinding = ({ shape }: CoreAsked, why: string): Finding => {
  const { loop } = shape.first.loop;
  return find('core-not-burnt', `${shapeName(shape)} cannot be burnt out without a core: ${why}. The piece inside comes out whole.`, {
    place: { kind: 'field', path: `core.${loop.id}` },
  });
};

/** Choices for loops that are not cut. */
export const coresOfUnknown = ({ core = {} }: PlanQuestion, { cut }: Sorted): readonly Finding[] => {
  const known = new Set(cut.map((c) => c.loop.id));
  return Object.keys(core)
    .filter((id) => !known.has(id))
    .map((id) =>
      find('core-of-unknown-loop', `It is said what becomes of the core of ${id}, but no loop that is cut has that name.`, {
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
