/** Which of the shop's wires makes the job cheapest, and why the others drop out. */

import { perimeterOf } from '../../geometry/area.ts';
import { lengthOf } from '../../geometry/measure.ts';
import { checkCut } from '../../physics/cut/check-cut.ts';
import type { CutConditions } from '../../physics/cut/conditions.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { cuttingMinuteCost } from '../../physics/wire/wire-use.ts';
import type { Figure } from '../../quantity/figure.ts';
import { firstItem, isFilled, lastItem, mapFilled, type NonEmpty } from '../../sequence/sequence.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { clause, contour, count, fixed, list, name, type Part, quantity, term } from '../../text/part.ts';
import { NOTHING, phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { OverridesAsked, PlanQuestion, ShopAsked, WorkAsked } from '../question.ts';
import type { LikeLoops } from '../same-shape.ts';
import { type AskedClass, askedOf, classesOf, type Family, familiesOf, familyFindings, familyOf } from './families.ts';
import { type Fit, fitOf } from './fit-of-shape.ts';
import { type OffsetRows, withOffsets } from './offsets-override.ts';
import { fitOfLine } from './open-fit.ts';
import { passCount, passesFor } from './passes-for.ts';

/** A wire carried through to passes, cost and what it would leave of every shape. */
export interface WireWithPasses {
  readonly kind: 'passes';
  readonly wire: Wire;
  /** Of the first family. */
  readonly rows: NonEmpty<LadderRow>;
  readonly families: NonEmpty<Family>;
  /** Minor money units for one mm of contour: machine and wire. */
  readonly cost: number;
  /** Minutes for one mm of contour. */
  readonly minutes: number;
  /** Why it drops out on the drawing, in a few words; none when it can do the job. */
  readonly fault?: Text | undefined;
  readonly findings: readonly Finding[];
  readonly fits: readonly Fit[];
  /** With as many passes as the user wants it does not reach what is asked: Ra or deviation against it, the worse, above 1. */
  readonly short?: number | undefined;
  /** mm by which a last register set by hand moves the finished face. */
  readonly shift?: Figure | undefined;
}

/** A wire that drops out before it has passes, with the reason in a few words. */
export interface WireWithoutPasses {
  readonly kind: 'no passes';
  readonly wire: Wire;
  readonly fault: Text;
  readonly findings: readonly Finding[];
}

export type WireTried = WireWithPasses | WireWithoutPasses;

export type WireChoice =
  | { readonly kind: 'chosen'; readonly best: WireWithPasses; readonly findings: readonly Finding[] }
  /** `nearest`: the one with passes that comes nearest; none when none has any, or no wire could be tried at all. */
  | { readonly kind: 'none'; readonly nearest?: WireWithPasses | undefined; readonly findings: readonly Finding[] };

/** Where the shop states no rate: an assumption that only weighs wires against each other. */
const ASSUMED_RATE = 6000;

export const chooseWire = (question: PlanQuestion, shapes: readonly LikeLoops[]): WireChoice => {
  const asked = candidatesOf(question);
  if (asked.wires.length === 0) return { kind: 'none', findings: asked.findings };
  const classes = classesIn(question, shapes);
  const priced = asked.wires.map((wire) => pricedWire(wire, question, classes)).sort(byCost);
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

const candidatesOf = (question: ShopAsked): { readonly wires: readonly Wire[]; readonly findings: readonly Finding[] } => {
  const place = atField('wire');
  if (question.wire === undefined && question.settled !== undefined)
    return { wires: question.wires.filter((w) => w.id === question.settled), findings: [] };
  if (question.wire === undefined) {
    const wires = question.wires.filter((w) => w.inStock);
    if (wires.length > 0) return { wires, findings: [] };
    return {
      wires: [],
      findings: [find('no-wire-in-stock', say`The shop has no wire in stock.`, { place, remedy: say`Mark a wire as in stock.` })],
    };
  }
  const wire = question.wires.find((w) => w.id === question.wire);
  if (wire === undefined) {
    const known = list(question.wires.map((w) => name(w.id)));
    return {
      wires: [],
      findings: [find('wire-unknown', say`The shop has no wire named ${{ wire: name(question.wire) }}; it has ${{ known }}.`, { place })],
    };
  }
  if (wire.inStock) return { wires: [wire], findings: [] };
  return {
    wires: [wire],
    findings: [
      find('wire-not-in-stock', say`${{ wire: name(wire.name) }} wire is specified but not in stock.`, {
        place,
        remedy: say`Order it before promising the job.`,
      }),
    ],
  };
};

/** One wire by itself, carried to passes and held against every shape: with a fault where it cannot do what is asked. */
export const wireTried = (wire: Wire, question: PlanQuestion, shapes: readonly LikeLoops[]): WireTried =>
  fitted(pricedWire(wire, question, classesIn(question, shapes)), question, shapes);

/** What is asked of all that is cut, with the length of contour that is asked each. */
const classesIn = (question: PlanQuestion, shapes: readonly LikeLoops[]): NonEmpty<Measured> => {
  const lengths = new Map<string, number>();
  for (const { members } of shapes) for (const { loop } of members) lengths.set(loop.loop.id, perimeterOf(loop.loop.contour));
  for (const { id, path } of question.open ?? [])
    lengths.set(
      id,
      path.segments.reduce((sum, s) => sum + lengthOf(s), 0),
    );
  return mapFilled(classesOf(question, [...lengths.keys()]), (c) => ({
    ...c,
    length: c.loops.reduce((sum, id) => sum + (lengths.get(id) ?? 0), 0),
  }));
};

type Measured = AskedClass & { readonly length: number };

export const conditionsOf = (wire: Wire, question: ShopAsked & WorkAsked): CutConditions => {
  const { material, height, flush, machine, factors } = question;
  return { wire, material, height, flush, machine, factors };
};

/** The cheapest passes of a wire for all that is asked, and what a millimetre of contour costs with them. */
const pricedWire = (wire: Wire, question: ShopAsked & WorkAsked & OverridesAsked, classes: NonEmpty<Measured>): WireTried => {
  const conditions = conditionsOf(wire, question);
  const none = { kind: 'no passes', wire } as const;
  const checks = checkCut(conditions);
  const refused = checks.find((f) => f.severity === 'refusal');
  if (refused !== undefined) return { ...none, fault: refused.text, findings: checks };
  const passed = classes.map((of) => ({ of, so: passesFor(conditions, { ...question, ...of.asked }) }));
  const told = passed.flatMap(({ of, so }) => so.findings.map((f) => ofClass(f, of)));
  const laddered = passed.flatMap(({ of, so }) => {
    if (so.kind === 'fault') return [];
    const { rows, shift, findings } = offsetsFor(so.rows, of.asked, wire);
    return [{ of, rows, shift, minutes: so.minutes, short: so.short, findings: findings.map((f) => ofClass(f, of)) }];
  });
  const fault = passed.flatMap(({ so }) => (so.kind === 'fault' ? [so.fault] : []))[0];
  if (fault !== undefined || !isFilled(laddered))
    return { ...none, fault: fault ?? NOTHING, findings: told.filter((f) => f.severity === 'refusal') };
  const families = familiesOf(laddered);
  const [first] = families;
  const minutes = families.length === 1 ? first.minutes : meanMinutes(laddered);
  const shorts = laddered.flatMap((l) => l.short ?? []);
  return {
    kind: 'passes',
    wire,
    rows: first.rows,
    families,
    minutes,
    cost: minutes * costPerMinute(wire, question),
    findings: [...checks, ...told, ...laddered.flatMap((l) => l.findings), ...familyFindings(families)],
    fits: [],
    short: shorts.length === 0 ? undefined : Math.max(...shorts),
    shift: first.shift,
  };
};

/** For one mm of contour, each class by its share of all that is cut. */
const meanMinutes = (laddered: readonly { readonly of: Measured; readonly minutes: number }[]): number => {
  const length = laddered.reduce((sum, { of }) => sum + of.length, 0);
  return laddered.reduce((sum, { of, minutes }) => sum + (minutes * of.length) / length, 0);
};

/** What is said of some contours names them, and the field is theirs. */
const ofClass = (finding: Finding, { loops, ofJob }: AskedClass): Finding => {
  const first = loops[0];
  if (ofJob || first === undefined) return finding;
  const inside = (path: string): string => `contours.${first}.${path}`;
  const { place, remedy: way } = finding;
  const more = loops.length - 1;
  return {
    ...finding,
    text: (more === 0 ? words.ofOne : words.ofMore)(first, finding.text, more),
    place: place?.kind === 'field' ? { ...place, path: inside(place.path) } : place,
    remedy: way?.field === undefined ? way : { ...way, field: inside(way.field) },
  };
};

/** Registers set by hand in place of those of the passes; as many as there are passes, or they were refused before. */
const offsetsFor = (rows: NonEmpty<LadderRow>, { offsets = [] }: OverridesAsked, wire: Wire): OffsetRows =>
  offsets.length === rows.length ? withOffsets(rows, offsets, wire) : { rows, findings: [] };

/** Machine and wire, minor money units per minute. */
export const costPerMinute = (wire: Wire, { machineRate = ASSUMED_RATE }: ShopAsked): number =>
  cuttingMinuteCost.compute({ ...wire, machine: machineRate });

const fitted = (one: WireTried, question: PlanQuestion, shapes: readonly LikeLoops[]): WireTried => {
  if (one.kind === 'no passes') return one;
  const fits = shapes.map((shape) => {
    const { id } = shape.first.loop.loop;
    return fitOf(shape, familyOf(one, id).rows, one.wire, askedOf(question, id));
  });
  const lines = (question.open ?? []).map((line) => fitOfLine(line, familyOf(one, line.id).rows, one.wire, askedOf(question, line.id)));
  const findings = [...one.findings, ...fits.flatMap((f) => f.findings), ...lines.flatMap((l) => l.findings)];
  const fault = [...fits, ...lines].find((f) => f.fault !== undefined)?.fault;
  return { ...one, fits, findings, fault };
};

/** The one that fails on the drawing rather than on finish or size comes nearer; among those the finest wire. */
const nearestOf = (judged: readonly WireTried[]): WireTried =>
  firstItem(judged.toSorted((a, b) => Number(b.kind === 'passes') - Number(a.kind === 'passes') || a.wire.diameter - b.wire.diameter));

const chosenFinding = (
  chosen: WireWithPasses,
  judged: readonly WireTried[],
  tried: readonly WireTried[],
  question: ShopAsked & OverridesAsked,
): Finding[] => {
  // Whoever settled on it by the whole job says why.
  if (question.wire === undefined && question.settled !== undefined) return [];
  const passes = passesSaid(chosen);
  const asked = passCount(question) !== undefined;
  if (question.wire !== undefined) return [find('wire-chosen', (asked ? words.bothAsked : words.wireAsked)(chosen.wire, passes))];
  const others = [
    ...[...judged, ...tried.filter((t) => !judged.some((j) => j.wire === t.wire))].flatMap(({ wire, fault }) =>
      fault === undefined ? [] : [words.dropsOut(wire, fault)],
    ),
    ...tried
      .filter(canDo)
      .filter((t) => t.short === chosen.short && t.cost > chosen.cost)
      .map((t) => words.dearer(t.wire, 100 * (t.cost / chosen.cost - 1))),
  ];
  const best = chosen.short === undefined ? words.cheapest : words.nearest;
  const taken = best(chosen.wire, asked ? words.asAsked(passes) : passes);
  return [find('wire-chosen', sentences([taken, others.length === 0 ? undefined : words.others(others)]))];
};

/** 4 passes; of several families 4, 1 and 2 passes. */
const passesSaid = ({ families, rows }: WireWithPasses): Part | Text => {
  if (families.length === 1) return count(rows.length, 'pass');
  const counts = families.map((f) => f.rows.length);
  return words.several(counts.slice(0, -1), lastItem(counts));
};

const words = phrases('wire-choice', {
  several: (before: readonly number[], last: number) =>
    say`${{
      before: list(
        before.map((n) => count(n)),
        'comma',
      ),
    }} and ${{ last: count(last, 'pass') }}`,
  ofOne: (loop: string, text: Text, _: number) => say`For ${{ loop: contour(loop) }}: ${{ text }}`,
  ofMore: (loop: string, text: Text, more: number) => say`For ${{ loop: contour(loop) }} and ${{ more: count(more) }} more: ${{ text }}`,
  wireAsked: (wire: Wire, passes: Part | Text) => say`${{ wire: name(wire.name) }} wire as you specified, in ${{ passes }}.`,
  bothAsked: (wire: Wire, passes: Part | Text) => say`${{ wire: name(wire.name) }} wire in ${{ passes }}, both as you specified.`,
  asAsked: (passes: Part | Text) => say`${{ passes }} as you specified`,
  cheapest: (wire: Wire, passes: Part | Text) =>
    say`${{ wire: name(wire.name) }} wire in ${{ passes }} is the cheapest suitable wire in stock.`,
  nearest: (wire: Wire, passes: Part | Text) =>
    say`${{ wire: name(wire.name) }} wire in ${{ passes }} is the wire in stock that comes closest to the requirements.`,
  others: (others: readonly Text[]) => say`${{ others: list(others, 'semicolon') }}.`,
  dropsOut: (wire: Wire, fault: Text) => say`${{ wire: name(wire.name) }} is not suitable: ${{ why: clause(fault) }}`,
  dearer: (wire: Wire, percent: number) =>
    say`${{ wire: name(wire.name) }} would cost ${{ more: quantity(percent, '%', fixed(0)) }} more to cut`,
});

/** When the user insisted on a wire that fails: which of the stock would do. */
const otherWires = (question: PlanQuestion, asked: Wire, shapes: readonly LikeLoops[]): Finding[] => {
  if (question.wire === undefined) return [];
  const { wire: _, ...free } = question;
  const other = chooseWire(free, shapes);
  if (other.kind === 'none') return [];
  return [
    find(
      'wire-chosen',
      say`${{ asked: name(asked.name) }} wire was specified and cannot do it; ${{ other: name(other.best.wire.name) }} wire from stock can, in ${{ passes: count(other.best.rows.length, 'pass') }}.`,
      {
        place: atField('wire'),
        remedy: remedy(say`Set the wire to ${{ wire: term(other.best.wire.id) }}, or leave the choice to the planner.`, {
          field: 'wire',
          value: other.best.wire.id,
        }),
      },
    ),
  ];
};
