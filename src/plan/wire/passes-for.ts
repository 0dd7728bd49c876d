/** The passes of a wire: out of the shop's tables or by the model, the cheapest that do what is asked or as many as the user wants. */

import type { CutConditions } from '../../physics/cut/conditions.ts';
import { type LadderRow, ladderRows } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { confidenceTold, usualConfidence } from '../../quantity/confidence.ts';
import { lastOf, type NonEmpty } from '../../sequence/sequence.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, limit, mm, name, type Part, promised, quantity, um } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { wanted } from '../../text/wanted.ts';
import { find } from '../findings.ts';
import type { OverridesAsked, PlanQuestion, ShopAsked, WorkAsked } from '../question.ts';
import { deviationNow, lastPassOf } from './deviation-of-passes.ts';
import { findLadder } from './find-ladder.ts';
import { ladderOf } from './ladder-override.ts';
import { shopPasses } from './shop-passes.ts';

export type Passed =
  | {
      readonly kind: 'passes';
      readonly rows: NonEmpty<LadderRow>;
      /** For one mm of contour, all passes together. */
      readonly minutes: number;
      /** Set where they do not reach what is asked: Ra or deviation against it, the worse, above 1. */
      readonly short?: number | undefined;
      readonly findings: readonly Finding[];
    }
  /** Why the wire drops out, in a few words. */
  | { readonly kind: 'fault'; readonly fault: Text; readonly findings: readonly Finding[] };

/** How many passes the user wants: said outright, or by as many registers. None where it is left to the planner. */
export const passCount = ({ passes, offsets }: Pick<PlanQuestion, 'passes' | 'offsets'>): number | undefined =>
  passes ?? (offsets === undefined || offsets.length === 0 ? undefined : offsets.length);

/** As many registers as passes, or none. */
export const countFindings = ({ passes, offsets }: Pick<PlanQuestion, 'passes' | 'offsets'>): readonly Finding[] => {
  if (passes === undefined || offsets === undefined || offsets.length === passes) return [];
  return [
    find('offsets-not-for-passes', (passes === 1 ? words.onePassAsked : words.passesAsked)(passes, offsets.length), {
      place: atField('offsets'),
      remedy: remedy(say`Set as many registers as passes, or leave one of the two out.`, { field: 'offsets' }),
    }),
  ];
};

export const passesFor = (conditions: CutConditions, question: ShopAsked & WorkAsked & OverridesAsked): Passed => {
  const passes = passCount(question);
  const own = shopPasses(conditions, question.passTables ?? [], question, passes);
  if (own.best !== undefined) return { kind: 'passes', ...own.best, findings: own.findings };
  return passes === undefined ? cheapest(conditions, question, own.findings) : counted(passes, conditions, question, own.findings);
};

const cheapest = (conditions: CutConditions, question: WorkAsked, told: readonly Finding[]): Passed => {
  const ladder = findLadder(conditions, question);
  const { wire } = conditions;
  if (ladder.kind === 'finish out of reach')
    return {
      kind: 'fault',
      fault: words.reaches(ladder.best),
      findings: [finishFinding(wire, ladder.best, question)],
    };
  if (ladder.kind === 'tolerance out of reach')
    return {
      kind: 'fault',
      fault: words.holds(ladder.best),
      findings: [toleranceFinding(wire, ladder.best, question)],
    };
  return { kind: 'passes', rows: ladderRows(conditions, ladder.energies), minutes: ladder.minutesPerMillimetre, findings: told };
};

/** What falls short is said and cut all the same: so many passes are the user's choice. */
const counted = (
  passes: number,
  conditions: CutConditions,
  question: ShopAsked & WorkAsked & OverridesAsked,
  told: readonly Finding[],
): Passed => {
  const ladder = ladderOf(passes, conditions, question);
  if (ladder.kind === 'too many')
    return {
      kind: 'fault',
      fault: words.energies(passes, ladder.most),
      findings: [tooMany(passes, ladder.most)],
    };
  const rows = ladderRows(conditions, ladder.energies);
  const minutes = ladder.minutesPerMillimetre;
  if (ladder.excess <= 1) return { kind: 'passes', rows, minutes, findings: told };
  return { kind: 'passes', rows, minutes, short: ladder.excess, findings: [...told, shortFinding(rows, conditions, question)] };
};

const tooMany = (passes: number, most: number): Finding =>
  find(
    'passes-too-many',
    say`${{ passes: count(passes, 'pass') }} specified; each takes less energy than the one before it, and the machine has ${{ energies: count(most, 'energy') }}.`,
    {
      place: atField('passes'),
      remedy: remedy(say`Specify ${{ most: count(most, 'pass') }} at most, or leave passes out.`, { field: 'passes', value: most }),
    },
  );

const shortFinding = (rows: NonEmpty<LadderRow>, conditions: CutConditions, question: WorkAsked & OverridesAsked): Finding => {
  const last = lastOf(rows);
  const within = deviationNow(conditions, lastPassOf(rows), question);
  const free = findLadder(conditions, question);
  const planned = free.kind === 'found' ? words.wouldReach(free.energies.length) : undefined;
  const comesOut = words.comesOut(rows.length, conditions.wire, { ra: last.ra.value, within }, question);
  return find('passes-fall-short', sentences([comesOut, planned]), {
    place: atField('passes'),
    remedy: remedy(say`Leave passes out, so that the planner chooses how many, or require no more than what comes out.`, {
      field: 'passes',
    }),
  });
};

const finishWanted = (asked: WorkAsked): Text => wanted(asked, 'finish', words.ra(quantity(asked.finish, 'µm')));

const words = phrases('passes', {
  ra: (roughness: Part) => say`Ra ${{ roughness }}`,
  onePassAsked: (_: number, registers: number) =>
    say`1 pass is specified and ${{ registers: count(registers, 'register') }} set by hand: one register per pass.`,
  passesAsked: (passes: number, registers: number) =>
    say`${{ passes: count(passes, 'pass') }} are specified and ${{ registers: count(registers, 'register') }} set by hand: one register per pass.`,
  reaches: (ra: number) => say`it reaches Ra ${{ ra: um(ra, fixed(2)) }} at best`,
  holds: (within: number) => say`it holds ${{ within: promised(within) }} at best`,
  energies: (passes: number, most: number) =>
    say`${{ passes: count(passes, 'pass') }} need as many energy settings, and the machine has ${{ energies: count(most) }}`,
  comesOut: (passes: number, wire: Wire, { ra, within }: { readonly ra: number; readonly within: number }, asked: WorkAsked) =>
    say`With ${{ passes: count(passes, 'pass') }} of ${{ wire: name(wire.name) }} wire, as you specified, Ra ${{ ra: um(ra, fixed(2)) }} and ${{ within: promised(within) }} are expected; ${{ finish: finishWanted(asked) }} and ${{ tolerance: wanted(asked, 'tolerance', limit(asked.tolerance)) }}.`,
  wouldReach: (passes: number) => say`${{ passes: count(passes) }} would reach it.`,
});

const finishFinding = (wire: Wire, best: number, question: WorkAsked): Finding =>
  find(
    'finish-out-of-reach',
    say`${{ asked: finishWanted(question) }}; with ${{ wire: name(wire.name) }} wire this machine reaches Ra ${{ best: um(best, fixed(2)) }} at its lowest energy setting.`,
    {
      place: atField('finish'),
      remedy: remedy(say`Require Ra ${{ finish: quantity(ceiling(best, 2), 'µm') }}, or polish afterwards.`, {
        field: 'finish',
        value: ceiling(best, 2),
      }),
    },
  );

const toleranceFinding = (wire: Wire, best: number, question: WorkAsked): Finding =>
  find(
    'tolerance-out-of-reach',
    say`${{ asked: wanted(question, 'tolerance', limit(question.tolerance)) }}; with ${{ wire: name(wire.name) }} wire at ${{ height: mm(question.height) }} height the best to expect is ${{ best: promised(best) }} (${{ sure: confidenceTold(question.confidence ?? usualConfidence) }}).`,
    {
      place: atField('tolerance'),
      remedy: remedy(say`Require ${{ tolerance: limit(ceiling(best, 3)) }}.`, { field: 'tolerance', value: ceiling(best, 3) }),
    },
  );

/** Rounded up to a number of decimals, so that what is proposed really suffices. */
export const ceiling = (value: number, decimals: number): number => Math.ceil(value * 10 ** decimals - 1e-9) / 10 ** decimals;
