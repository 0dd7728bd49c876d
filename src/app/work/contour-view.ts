/** The contours of a job as rows: what is cut, in which order, from where, and what the proof says of each. */

import { cutOf, type JobFacts, programOf } from '../../result/facts.ts';
import type { CutFacts } from '../../result/outcome-facts.ts';
import { mass, type Part } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ContourView } from './views.ts';

const states = phrases('page.contour-state', { right: say`in tolerance`, uncut: say`not cut`, 'out of tolerance': say`out of tolerance` });

const pieces = phrases('page.contour-piece', {
  slug: say`slug`,
  part: say`part`,
  loose: (role: Text, weight: Part) => say`${{ role }}, ${{ weight }}`,
  noCore: say`no-core cut, no slug`,
});

/** A drawing alone has contours too; what is known of their cut comes with the facts. */
export const contourViews = (drawing: JobFacts['drawing'], facts: JobFacts | undefined): readonly ContourView<Text>[] => {
  const planned = new Map((facts && cutOf(facts)?.contours)?.map((c) => [c.loop, c]));
  const proven = new Map((facts && programOf(facts)?.proof.contours)?.map((c) => [c.loop, c]));
  const loops = drawing.loops
    .filter((l) => !l.hidden)
    .map((loop): ContourView<Text> => {
      const c = planned.get(loop.id);
      const p = proven.get(loop.id);
      return {
        id: loop.id,
        number: c?.number ?? 0,
        kept: c?.kept ?? 'leave',
        area: loop.area * drawing.units.millimetres ** 2,
        perimeter: loop.perimeter * drawing.units.millimetres,
        ...(c && cutFacts(c)),
        state: p && states[p.state],
        leftMost: p?.leftMost.amount,
        gougeMost: p?.gougeMost.amount,
        overrides: overrideOf(facts, loop.id),
      };
    });
  return [...loops.toSorted((a, b) => (a.number || Infinity) - (b.number || Infinity)), ...openViews(drawing, facts)];
};

const overrideOf = (facts: JobFacts | undefined, id: string): readonly string[] => {
  const overrides = facts?.asked.overrides?.contours;
  return overrides !== undefined && Object.hasOwn(overrides, id) ? (overrides[id] ?? []) : [];
};

const cutFacts = (c: CutFacts['contours'][number]): Partial<ContourView<Text>> => ({
  hole: { x: c.hole.at.x, y: c.hole.at.y, diameter: c.hole.diameter, origin: c.hole.origin },
  entry: c.entry.at,
  tab: c.tab && { length: c.tab.length, reason: c.tab.reason },
  piece: c.core === undefined ? pieces.loose(pieces[c.piece.role], mass(c.piece.mass.value)) : pieces.noCore,
});

const openViews = (drawing: JobFacts['drawing'], facts: JobFacts | undefined): readonly ContourView<Text>[] => {
  const cuts = new Map((facts && cutOf(facts)?.plan.openCuts)?.map((o, i) => [o.chain, { ...o, number: i + 1 }]));
  const proven = new Map((facts && programOf(facts)?.proof.open)?.map((o) => [o.chain, o]));
  return drawing.openChains
    .filter((o) => !o.hidden)
    .map((line): ContourView<Text> => {
      const cut = cuts.get(line.id);
      const p = proven.get(line.id);
      return {
        id: line.id,
        number: cut?.number ?? 0,
        kept: cut?.kept ?? 'leave',
        area: 0,
        perimeter: line.length * drawing.units.millimetres,
        state: p && states[p.state],
        leftMost: p?.leftMost.amount,
        gougeMost: p?.gougeMost.amount,
        overrides: overrideOf(facts, line.id),
      };
    });
};
