/** The order that the user sets: what it names comes so, as far as nothing is cut out of metal that is loose by then. */

import { pointAt } from '../../geometry/measure.ts';
import { windingOf } from '../../geometry/near/inside.ts';
import { itemAt, itemOf } from '../../sequence/sequence.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { contour, name, type Part } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import { grouped } from '../grouped.ts';
import type { VisitsOf } from '../path/contour-layout.ts';
import type { DrawnWork, OverridesAsked, WayAsked } from '../question.ts';
import { someLoops } from '../said.ts';

export interface Batches {
  /** One after the other; within each the way is the planner's but for what the order names. */
  readonly batches: readonly (readonly VisitsOf[])[];
  /** Place in the order of the ids it names. */
  readonly rank: ReadonlyMap<string, number>;
}

/** By falling depth; loops of one depth together. */
export const levelsOf = (all: readonly VisitsOf[]): readonly (readonly VisitsOf[])[] =>
  [...grouped(all, depthOf).entries()].sort(([a], [b]) => b - a).map(([, level]) => level);

const depthOf = (v: VisitsOf): number => v.loop.loop.depth;
const nameOf = (v: VisitsOf): string => v.loop.loop.id;

/** Alone at night every rough of a depth comes before its tabs and skims, so the depths stay together and the order holds within each. */
export const batchesOf = (all: readonly VisitsOf[], question: DrawnWork & WayAsked & OverridesAsked): Batches => {
  const rank = rankOf(all, question);
  if (rank.size === 0 || question.run !== 'attended') return { batches: levelsOf(all), rank };
  const rules = rulesOf(all, question);
  const left = new Map(all.map((v) => [nameOf(v), v]));
  const batches: (readonly VisitsOf[])[] = [];
  const take = (which: readonly VisitsOf[]): void => {
    for (const v of which) left.delete(nameOf(v));
    batches.push(...levelsOf(which));
  };
  for (const id of rank.keys()) {
    const own = left.get(id);
    if (own === undefined) continue;
    take(rules.before(id).flatMap((before) => left.get(before) ?? []));
    take([own]);
  }
  take([...left.values()]);
  return { batches, rank };
};

/** What the order asks that cannot be, names that nothing goes by, and what is cut earlier for its sake. */
export const orderFindings = (all: readonly VisitsOf[], question: DrawnWork & WayAsked & OverridesAsked): readonly Finding[] => {
  const { order = [] } = question;
  if (order.length === 0) return [];
  const known = new Map(all.map((v) => [nameOf(v), v]));
  const unknown = order.flatMap((id, i) => (known.has(id) ? [] : [ofUnknown(id, i)]));
  const rules = rulesOf(all, question);
  const rank = rankOf(all, question);
  const impossible = [...rank.keys()].flatMap((id) => impossibleAt(id, rank, rules, order));
  if (impossible.length > 0) return [...unknown, ...impossible];
  const named = [...rank.keys()].map((id) => itemOf(known, id));
  return [...unknown, ...depthsKept(named, question), ...pulled(rank, rules, question)];
};

const impossibleAt = (early: string, rank: ReadonlyMap<string, number>, rules: Rules, order: readonly string[]): readonly Finding[] => {
  const late = rules.before(early).find((id) => (rank.get(id) ?? -1) > itemOf(rank, early));
  return late === undefined ? [] : [impossibleOrder(early, late, rules.why(late, early), order)];
};

/** Each id once, where it is first named. */
const rankOf = (all: readonly VisitsOf[], { order = [] }: OverridesAsked): ReadonlyMap<string, number> => {
  const known = new Set(all.map(nameOf));
  return new Map([...new Set(order)].filter((id) => known.has(id)).map((id, i) => [id, i]));
};

interface Rules {
  /** Ids of all that must be cut before this one. */
  readonly before: (id: string) => readonly string[];
  readonly why: (one: string, other: string) => Text;
}

const rulesOf = (all: readonly VisitsOf[], question: DrawnWork): Rules => {
  const around = aroundOf(question);
  const inside = new Map<string, string[]>();
  for (const { loop } of all)
    for (const outer of around(loop.loop.id)) {
      const known = inside.get(outer);
      if (known === undefined) inside.set(outer, [loop.loop.id]);
      else known.push(loop.loop.id);
    }
  const lines = new Set((question.open ?? []).map((l) => l.id));
  const loops = all.map(nameOf).filter((id) => !lines.has(id));
  const parts = new Set(all.filter((v) => lines.has(nameOf(v)) && depthOf(v) < 0).map(nameOf));
  return {
    before: (id) => (parts.has(id) ? loops : (inside.get(id) ?? [])),
    why: (one, other) => (parts.has(other) ? words.parts(other) : words.inside(one, other)),
  };
};

/** Ids of the loops round a loop or an open line, cut or not. */
const aroundOf = (question: DrawnWork): ((id: string) => readonly string[]) => {
  const parents = new Map(question.loops.map((l) => [l.id, l.parent]));
  const lines = new Map((question.open ?? []).map((l) => [l.id, l.path]));
  const ancestors = (id: string): readonly string[] => {
    const parent = parents.get(id);
    return parent === undefined ? [] : [parent, ...ancestors(parent)];
  };
  return (id) => {
    const path = lines.get(id);
    if (path === undefined) return ancestors(id);
    const middle = pointAt(itemAt(path.segments, path.segments.length >> 1), 0.5);
    return question.loops.filter((l) => windingOf(l.contour, middle) !== 0).map((l) => l.id);
  };
};

const place = (i: number) => ({ kind: 'field', path: `order.${i}` }) as const;

const ofUnknown = (id: string, i: number): Finding =>
  find('order-of-unknown', say`The order names ${{ loop: name(id) }}, but nothing of that name is cut.`, { place: place(i) });

const impossibleOrder = (early: string, late: string, why: Text, order: readonly string[]): Finding =>
  find('order-impossible', say`${{ early: contour(early) }} cannot be cut before ${{ late: contour(late) }}: ${{ why }}.`, {
    place: place(order.indexOf(late)),
    remedy: remedy(say`Put ${{ late: contour(late) }} before ${{ early: contour(early) }}, or leave the order to the planner.`, {
      field: 'order',
    }),
  });

const depthsKept = (named: readonly VisitsOf[], { run }: WayAsked): readonly Finding[] => {
  const at = named.findIndex((v, i) => i > 0 && depthOf(v) > depthOf(itemAt(named, i - 1)));
  if (run === 'attended' || at < 0) return [];
  const [early, late] = [nameOf(itemAt(named, at)), nameOf(itemAt(named, at - 1))];
  return [
    find(
      'order-pulled-forward/depth',
      say`${{ early: contour(early) }} is started before ${{ late: contour(late) }}, against the order: in an unattended run inner contours are roughed first, and the order holds within each depth.`,
      { place: atField('order') },
    ),
  ];
};

const pulled = (rank: ReadonlyMap<string, number>, rules: Rules, { run }: WayAsked): readonly Finding[] => {
  if (run !== 'attended') return [];
  const early = [...new Set([...rank.keys()].flatMap((id) => rules.before(id)))].filter((id) => !rank.has(id));
  if (early.length === 0) return [];
  const said = (early.length === 1 ? words.comes : words.come)(someLoops(early, 'comma'));
  return [find('order-pulled-forward', said, { place: atField('order') })];
};

const words = phrases('order', {
  parts: (line: string) => say`${{ line: contour(line) }} may part the block, so every contour comes before it`,
  inside: (inner: string, outer: string) =>
    say`${{ inner: contour(inner) }} lies inside ${{ outer: contour(outer) }}, and once that is cut through its metal is loose`,
  comes: (loop: Part | Text) => say`${{ loop }}, not named in the order, comes before the contour around it, which is named.`,
  come: (loops: Part | Text) => say`${{ loops }}, not named in the order, come before the contours around them, which are named.`,
});
