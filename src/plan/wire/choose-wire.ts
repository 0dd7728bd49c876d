/** Which of the shop's wires makes the job cheapest, and why the others drop out. */

import { checkCut } from '../../physics/cut/check-cut.ts';
import type { CutConditions } from '../../physics/cut/conditions.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { cuttingMinuteCost } from '../../physics/wire/wire-use.ts';
import type { Figure } from '../../quantity/figure.ts';
import type { Finding } from '../../text/finding.ts';
import { printPlain } from '../../text/print/print.ts';
import { find } from '../findings.ts';
import type { PlanQuestion } from '../question.ts';
import type { Shape } from '../same-shape.ts';
import { type Fit, fitOf } from './fit-of-shape.ts';
import { type OffsetRows, withOffsets } from './offsets-override.ts';
import { fitOfLine } from './open-fit.ts';
import { passCount, passesFor } from './passes-for.ts';

/** A wire carried through to passes, cost and what it would leave of every shape. */
export interface WireWithPasses {
  readonly kind: 'passes';
  readonly wire: Wire;
  readonly rows: readonly LadderRow[];
  /** Minor money units for one mm of contour: machine and wire. */
  readonly cost: number;
  /** Minutes for one mm of contour. */
  readonly minutes: number;
  /** Why it drops out on the drawing, in a few words; none when it can do the job. */
  readonly fault?: string;
  readonly findings: readonly Finding[];
  readonly fits: readonly Fit[];
  /** With as many passes as the user wants it does not reach what is asked: Ra or deviation against it, the worse, above 1. */
  readonly short?: number;
  /** mm by which a last register set by hand moves the finished face. */
  readonly shift?: Figure;
}

/** A wire that drops out before it has passes, with the reason in a few words. */
export interface WireWithoutPasses {
  readonly kind: 'no passes';
  readonly wire: Wire;
  readonly fault: string;
  readonly findings: readonly Finding[];
}

export type WireTried = WireWithPasses | WireWithoutPasses;

export type WireChoice =
  | { readonly kind: 'chosen'; readonly best: WireWithPasses; readonly findings: readonly Finding[] }
  /** `nearest`: the one with passes that comes nearest; none when none has any, or no wire could be tried at all. */
  | { readonly kind: 'none'; readonly nearest?: WireWithPasses; readonly findings: readonly Finding[] };

/** Where the shop states no rate: an assumption that only weighs wires against each other. */
const ASSUMED_RATE = 6000;

export const chooseWire = (question: PlanQuestion, shapes: readonly Shape[]): WireChoice => {
  const asked = candidatesOf(question);
  if (asked.wires.length === 0) return { kind: 'none', findings: asked.findings };
  const priced = asked.wires.map((wire) => pricedWire(wire, question)).sort(byCost);
  const judged: WireTried[] = [];
  for (const one of priced) {
    const result = fitted(one, question, shapes);
    judged.push(result);
    if (canDo(result)) {
      const said = chosenFinding(result, judged, priced, question);
      return { kind: 'chosen', best: result, findings: [...asked.findings, ...said, ...result.findings] };
    }
  }
  const best = nearestOf(judged);
  const findings = [...asked.findings, ...best.findings, ...otherWires(question, best.wire, shapes)];
  return best.kind === 'passes' ? { kind: 'none', nearest: best, findings } : { kind: 'none', findings };
};

const canDo = (tried: WireTried): tried is WireWithPasses => tried.kind === 'passes' && tried.fault === undefined;

/** What falls least short first, then the cheapest; those without passes last. */
const byCost = (a: WireTried, b: WireTried): number => shortOf(a) - shortOf(b) || costOf(a) - costOf(b);

const shortOf = (tried: WireTried): number => (tried.kind === 'passes' ? (tried.short ?? 1) : 1);
const costOf = (tried: WireTried): number => (tried.kind === 'passes' ? tried.cost : Infinity);

const candidatesOf = (question: PlanQuestion): { readonly wires: readonly Wire[]; readonly findings: readonly Finding[] } => {
  const place = { kind: 'field', path: 'wire' } as const;
  if (question.wire === undefined && question.settled !== undefined)
    return { wires: question.wires.filter((w) => w.id === question.settled), findings: [] };
  if (question.wire === undefined) {
    const wires = question.wires.filter((w) => w.inStock);
    if (wires.length > 0) return { wires, findings: [] };
    return {
      wires: [],
      findings: [find('no-wire-in-stock', 'The shop file has no wire in stock.', { place, remedy: 'Mark a wire as in stock.' })],
    };
  }
  const wire = question.wires.find((w) => w.id === question.wire);
  if (wire === undefined) {
    const names = question.wires.map((w) => w.id).join(', ');
    return { wires: [], findings: [find('wire-unknown', `The shop has no wire called ${question.wire}; it has ${names}.`, { place })] };
  }
  if (wire.inStock) return { wires: [wire], findings: [] };
  return {
    wires: [wire],
    findings: [
      find('wire-not-in-stock', `${wire.name} wire is asked for but not in stock.`, {
        place,
        remedy: 'Order it before the job is promised.',
      }),
    ],
  };
};

/** One wire by itself, carried to passes and held against every shape: with a fault where it cannot do what is asked. */
export const wireTried = (wire: Wire, question: PlanQuestion, shapes: readonly Shape[]): WireTried =>
  fitted(pricedWire(wire, question), question, shapes);

export const conditionsOf = (wire: Wire, question: PlanQuestion): CutConditions => {
  const { material, height, flush, machine, factors } = question;
  return { wire, material, height, flush, machine, ...(factors && { factors }) };
};

/** The cheapest ladder of a wire and what a millimetre of contour costs with it. */
const pricedWire = (wire: Wire, question: PlanQuestion): WireTried => {
  const conditions = conditionsOf(wire, question);
  const none = { kind: 'no passes', wire } as const;
  const checks = checkCut(conditions);
  const refused = checks.find((f) => f.severity === 'refusal');
  if (refused !== undefined) return { ...none, fault: printPlain(refused.text), findings: checks };
  const passed = passesFor(conditions, question);
  if (passed.kind === 'fault') return { ...none, fault: passed.fault, findings: passed.findings };
  const { minutes, short } = passed;
  const set = offsetsFor(passed.rows, question, wire);
  return {
    kind: 'passes',
    wire,
    rows: set.rows,
    minutes,
    cost: minutes * costPerMinute(wire, question),
    findings: [...checks, ...passed.findings, ...set.findings],
    fits: [],
    ...(short === undefined ? {} : { short }),
    ...(set.shift === undefined ? {} : { shift: set.shift }),
  };
};

/** Registers set by hand in place of those of the passes; as many as there are passes, or they were refused before. */
const offsetsFor = (rows: readonly LadderRow[], { offsets = [] }: PlanQuestion, wire: Wire): OffsetRows =>
  offsets.length === rows.length ? withOffsets(rows, offsets, wire) : { rows, findings: [] };

/** Machine and wire, minor money units per minute. */
export const costPerMinute = (wire: Wire, { machineRate = ASSUMED_RATE }: PlanQuestion): number =>
  cuttingMinuteCost.compute({ ...wire, machine: machineRate });

const fitted = (one: WireTried, question: PlanQuestion, shapes: readonly Shape[]): WireTried => {
  if (one.kind === 'no passes') return one;
  const fits = shapes.map((shape) => fitOf(shape, one.rows, one.wire, question));
  const lines = (question.open ?? []).map((line) => fitOfLine(line, one.rows, one.wire, question));
  const findings = [...one.findings, ...fits.flatMap((f) => f.findings), ...lines.flatMap((l) => l.findings)];
  const fault = [...fits, ...lines].find((f) => f.fault !== undefined)?.fault;
  return { ...one, fits, findings, ...(fault === undefined ? {} : { fault }) };
};

/** The one that fails on the drawing rather than on finish or size comes nearer; among those the finest wire. */
const nearestOf = (judged: readonly WireTried[]): WireTried =>
  judged.toSorted((a, b) => Number(b.kind === 'passes') - Number(a.kind === 'passes') || a.wire.diameter - b.wire.diameter)[0]!;

const chosenFinding = (
  chosen: WireWithPasses,
  judged: readonly WireTried[],
  tried: readonly WireTried[],
  question: PlanQuestion,
): Finding[] => {
  const counted = chosen.rows.length === 1 ? '1 pass' : `${chosen.rows.length} passes`;
  const passes = passCount(question) === undefined ? counted : `${counted} as you asked`;
  // Whoever settled on it by the whole job says why.
  if (question.wire === undefined && question.settled !== undefined) return [];
  if (question.wire !== undefined) {
    const both = passCount(question) === undefined ? ` as you asked, in ${counted}` : ` in ${counted}, both as you asked`;
    return [find('wire-chosen', `${chosen.wire.name} wire${both}.`)];
  }
  const out = [...judged, ...tried.filter((t) => t.fault !== undefined && !judged.some((j) => j.wire === t.wire))]
    .filter((t) => t.fault !== undefined)
    .map((t) => `${t.wire.name} drops out: ${lowered(t.fault!)}`);
  const dearer = tried
    .filter(canDo)
    .filter((t) => t.short === chosen.short && t.cost > chosen.cost)
    .map((t) => `${t.wire.name} would cost ${percent(t.cost / chosen.cost)} more to cut`);
  const others = [...out, ...dearer];
  const tail = others.length === 0 ? '' : ` ${sentence(others)}`;
  return [
    find(
      'wire-chosen',
      `${chosen.wire.name} wire in ${passes} is the ${chosen.short === undefined ? 'cheapest of the wires in stock that does the job' : 'wire in stock that comes nearest to what is asked'}.${tail}`,
    ),
  ];
};

const percent = (ratio: number): string => `${((ratio - 1) * 100).toFixed(0)} %`;

const lowered = (text: string): string => text.replace(/\.$/, '');

const sentence = (parts: readonly string[]): string => `${parts.join('; ')}.`;

/** When the user insisted on a wire that fails: which of the stock would do. */
const otherWires = (question: PlanQuestion, asked: Wire, shapes: readonly Shape[]): Finding[] => {
  if (question.wire === undefined) return [];
  const { wire: _, ...free } = question;
  const other = chooseWire(free, shapes);
  if (other.kind === 'none') return [];
  return [
    find(
      'wire-chosen',
      `${asked.name} wire was asked for and cannot do it; ${other.best.wire.name} wire from stock can, in ${other.best.rows.length} passes.`,
      {
        place: { kind: 'field', path: 'wire' },
        remedy: `Ask for wire ${other.best.wire.id}, or leave the choice to the planner.`,
      },
    ),
  ];
};
