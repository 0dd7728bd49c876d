/** The passes of a wire: out of the shop's tables or by the model, the cheapest that do what is asked or as many as the user wants. */

import type { CutConditions } from '../../physics/cut/conditions.ts';
import { type LadderRow, ladderRows } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import type { PlanQuestion } from '../question.ts';
import { deviationNow } from './deviation-of-passes.ts';
import { findLadder } from './find-ladder.ts';
import { ladderOf } from './ladder-override.ts';
import { shopPasses } from './shop-passes.ts';

export type Passed =
  | {
      readonly kind: 'passes';
      readonly rows: readonly LadderRow[];
      /** For one mm of contour, all passes together. */
      readonly minutes: number;
      /** Set where they do not reach what is asked: Ra or deviation against it, the worse, above 1. */
      readonly short?: number;
      readonly findings: readonly Finding[];
    }
  /** Why the wire drops out, in a few words. */
  | { readonly kind: 'fault'; readonly fault: string; readonly findings: readonly Finding[] };

/** How many passes the user wants: said outright, or by as many registers. None where it is left to the planner. */
export const passCount = ({ passes, offsets }: Pick<PlanQuestion, 'passes' | 'offsets'>): number | undefined =>
  passes ?? (offsets === undefined || offsets.length === 0 ? undefined : offsets.length);

/** As many registers as passes, or none. */
export const countFindings = ({ passes, offsets }: Pick<PlanQuestion, 'passes' | 'offsets'>): readonly Finding[] => {
  if (passes === undefined || offsets === undefined || offsets.length === passes) return [];
  return [
    find(
      'offsets-not-for-passes',
      `${passes === 1 ? '1 pass is' : `${passes} passes are`} asked for and ${offsets.length === 1 ? '1 register' : `${offsets.length} registers`} set by hand: each pass wants one.`,
      { place: { kind: 'field', path: 'offsets' }, remedy: 'Set as many registers as passes, or leave one of the two out.' },
    ),
  ];
};

export const passesFor = (conditions: CutConditions, question: PlanQuestion): Passed => {
  const count = passCount(question);
  const own = shopPasses(conditions, question.passTables ?? [], question, count);
  if (own.best !== undefined) return { kind: 'passes', ...own.best, findings: own.findings };
  return count === undefined ? cheapest(conditions, question, own.findings) : counted(count, conditions, question, own.findings);
};

const cheapest = (conditions: CutConditions, question: PlanQuestion, told: readonly Finding[]): Passed => {
  const ladder = findLadder(conditions, question);
  const { wire } = conditions;
  if (ladder.kind === 'finish out of reach')
    return {
      kind: 'fault',
      fault: `it reaches Ra ${ladder.best.toFixed(2)} µm at best`,
      findings: [finishFinding(wire, ladder.best, question)],
    };
  if (ladder.kind === 'tolerance out of reach')
    return {
      kind: 'fault',
      fault: `it holds ±${ladder.best.toFixed(4)} mm at best`,
      findings: [toleranceFinding(wire, ladder.best, question)],
    };
  return { kind: 'passes', rows: ladderRows(conditions, ladder.energies), minutes: ladder.minutesPerMillimetre, findings: told };
};

/** What falls short is said and cut all the same: so many passes are the user's choice. */
const counted = (count: number, conditions: CutConditions, question: PlanQuestion, told: readonly Finding[]): Passed => {
  const ladder = ladderOf(count, conditions, question);
  if (ladder.kind === 'too many')
    return {
      kind: 'fault',
      fault: `${count} passes want as many energies, and the machine has ${ladder.most}`,
      findings: [tooMany(count, ladder.most)],
    };
  const rows = ladderRows(conditions, ladder.energies);
  const minutes = ladder.minutesPerMillimetre;
  if (ladder.excess <= 1) return { kind: 'passes', rows, minutes, findings: told };
  return { kind: 'passes', rows, minutes, short: ladder.excess, findings: [...told, shortFinding(rows, conditions, question)] };
};

const tooMany = (count: number, most: number): Finding =>
  find(
    'passes-too-many',
    `${count} passes are asked for; each takes less energy than the one before it, and the machine has ${most} energies.`,
    { place: { kind: 'field', path: 'passes' }, remedy: `Ask for ${most} passes at most, or leave passes out.` },
  );

const shortFinding = (rows: readonly LadderRow[], conditions: CutConditions, question: PlanQuestion): Finding => {
  const last = rows.at(-1)!;
  const within = deviationNow(conditions, last.formError.value, last.gap.value);
  const free = findLadder(conditions, question);
  const most = rows.length === 1 ? '1 pass' : `${rows.length} passes`;
  const planned = free.kind === 'found' ? ` ${free.energies.length} would reach it.` : '';
  return find(
    'passes-fall-short',
    `With ${most} of ${conditions.wire.name} wire, as you asked, Ra ${last.ra.value.toFixed(2)} µm and ±${within.toFixed(4)} mm come out; Ra ${question.finish} µm and ±${question.tolerance} mm are asked for.${planned}`,
    {
      place: { kind: 'field', path: 'passes' },
      remedy: 'Leave passes out, so that as many are planned as it takes, or ask for what comes out.',
    },
  );
};

const finishFinding = (wire: Wire, best: number, question: PlanQuestion): Finding =>
  find(
    'finish-out-of-reach',
    `Ra ${question.finish} µm is asked for; with ${wire.name} wire this machine reaches Ra ${best.toFixed(2)} µm at its lowest energy.`,
    { place: { kind: 'field', path: 'finish' }, remedy: `Ask for Ra ${ceiling(best, 2)} µm, or polish afterwards.` },
  );

const toleranceFinding = (wire: Wire, best: number, question: PlanQuestion): Finding =>
  find(
    'tolerance-out-of-reach',
    `±${question.tolerance} mm is asked for; with ${wire.name} wire at ${question.height} mm height the best that can be expected is ±${best.toFixed(4)} mm.`,
    { place: { kind: 'field', path: 'tolerance' }, remedy: `Ask for ±${ceiling(best, 3)} mm.` },
  );

/** Rounded up to a number of decimals, so that what is proposed really suffices. */
export const ceiling = (value: number, decimals: number): number => Math.ceil(value * 10 ** decimals - 1e-9) / 10 ** decimals;
