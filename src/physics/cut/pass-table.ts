/** A pass table that the shop enters for a wire, a material and a height: where one fits it beats the starting model. */

import { z } from 'zod';
import { type Figure, given } from '../../quantity/figure.ts';
import { apply, type Formula, type Input } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { mapFilled, type NonEmpty, sideBySide } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { count, fixed, type Part, term, um } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Unit } from '../../text/unit.ts';
import { find } from '../findings.ts';
import { damagePerFinish, recastLaw, trialDoubt } from '../starting-model.ts';
import { wireLeaf } from '../wire/wire-leaves.ts';
import { workHeight } from '../work-height.ts';
import { areaRateFromFeed } from './area-rate.ts';
import type { CutConditions } from './conditions.ts';
import { called, type LadderRow, ladderRows } from './pass-rows.ts';
import { kerf } from './spark-gap.ts';
import { damageDepth, recastLayer } from './surface.ts';

const positive = z.number().positive().finite();

const passSchema = z.strictObject({
  offset: positive.max(2).describe('Wire centre to the wanted surface, mm'),
  feed: positive.max(1000).describe('Along the contour, mm/min'),
  ra: positive.max(25).describe('After this pass, µm'),
  gap: positive.max(0.2).optional().describe('Spark gap, mm; by the model when left out, and of the last pass by its offset'),
});

type Pass = z.infer<typeof passSchema>;

export const passTableSchema = z
  .strictObject({
    machine: z.string().optional().describe('Key of the machine; any when left out'),
    wire: z.string().describe('Key of the wire'),
    material: z.string().describe('Key of the material'),
    height: z.strictObject({ low: positive.max(1000), high: positive.max(1000) }).describe('Heights it holds for, mm'),
    flush: z.enum(['sealed', 'one side', 'lifted']).default('sealed'),
    spread: z.number().min(0).max(1).default(0.1).describe('One standard deviation of feed and Ra, as a share'),
    // What `min` asks for, told to the type as well.
    passes: z.array(passSchema).min(1).max(12) as unknown as z.ZodType<NonEmpty<Pass>>,
  })
  .describe('Passes as the shop runs them');

export type PassTable = z.infer<typeof passTableSchema>;

/** All tables that hold for these conditions; a planner takes the quickest that reaches what is asked. */
export const fittingTables = (
  tables: readonly PassTable[],
  { machine, wire, material, height, flush }: CutConditions,
): readonly PassTable[] =>
  tables.filter(
    (t) =>
      (t.machine === undefined || t.machine === machine.id) &&
      t.wire === wire.id &&
      (t.material === material.id || t.material === material.formerly) &&
      t.flush === flush &&
      height >= t.height.low &&
      height <= t.height.high,
  );

export type TableRows =
  | { readonly kind: 'rows'; readonly rows: NonEmpty<LadderRow> }
  /** Its offsets cannot be: a later pass would take nothing or would not reach the metal. */
  | { readonly kind: 'inconsistent'; readonly finding: Finding };

/** The table's passes as Figures, with the same keys as ladderRows gives. What the shop did not enter comes from the model. */
export const tableRows = (conditions: CutConditions, table: PassTable): TableRows => {
  const places = placesOf(conditions, sideBySide(table.passes, ladderRows(conditions, energiesOf(table))));
  const fault = faultOf(places);
  if (fault !== undefined) return { kind: 'inconsistent', finding: inconsistent(table, fault) };
  const height = workHeight(conditions.height);
  const rows = mapFilled(sideBySide(table.passes, places), ([pass, place], i): LadderRow => {
    const ra = entered(called(i, 'ra'), pass.ra, 'µm', table.spread);
    const feed = entered(called(i, 'feed'), pass.feed, 'mm/min', table.spread);
    return {
      ...place,
      feed,
      areaRate: apply(areaRateFromFeed, { feed, height }, called(i, 'area-rate')),
      ra,
      damage: apply(damageDepth, { ra, share: damagePerFinish }, called(i, 'damage')),
      recast: apply(recastLayer, { ra, ...recastLaw }, called(i, 'recast')),
    };
  });
  return { kind: 'rows', rows };
};

/** Ra goes with the cube root of pulse energy; kept within what the model's formulas hold for. */
const energiesOf = ({ passes }: PassTable): NonEmpty<number> => mapFilled(passes, (p) => Math.min(1, Math.max(0.03, p.ra / passes[0].ra)));

/** Where the wire runs, pass by pass, beside what the model says. The gap of the last pass is what its offset says: nothing is left to take. */
const placesOf = ({ wire }: CutConditions, passes: NonEmpty<readonly [Pass, LadderRow]>): NonEmpty<LadderRow> => {
  const d = wireLeaf(wire, 'diameter');
  let before: Figure | undefined;
  return mapFilled(passes, ([pass, modelled], i) => {
    const offset = ownOffset(called(i, 'offset'), pass.offset);
    const gapAs = called(i, 'gap');
    const asEntered = pass.gap === undefined ? modelled.gap : entered(gapAs, pass.gap, 'mm', 0);
    const gap = i === passes.length - 1 ? apply(lastGap, { offset, d }, gapAs) : asEntered;
    const stock = apply(stockByOffset, { offset, d, gap }, called(i, 'stock'));
    const taken =
      before === undefined
        ? apply(kerf, { d, gap }, { key: 'cut.kerf', name: say('cut.kerf')`kerf of the rough cut` })
        : apply(takenBetween, { before, after: stock }, called(i, 'taken'));
    before = stock;
    return { ...modelled, offset, gap, stock, taken };
  });
};

/** The shop has cut to size with it, and so knows it as well as it measures. */
const ownOffset = (as: ReturnType<typeof called>, value: number): Figure =>
  given({ ...as, value, unit: 'mm', deviation: trialDoubt.value / 1000, basis: 'shop', source: saidBy.passTable });

const entered = (as: ReturnType<typeof called>, value: number, unit: Unit, spread: number): Figure =>
  given({ ...as, value, unit, deviation: value * spread, basis: 'shop', source: saidBy.passTable });

const length = (name: string): Input => ({ unit: 'mm', name });

const lastGap: Formula<'offset' | 'd'> = {
  name: say('cut.last-gap')`spark gap by the offset of the last pass`,
  text: say('cut.last-gap.by')`gap = offset - d / 2`,
  source: 'definition',
  unit: 'mm',
  inputs: { offset: length('offset'), d: length('wire diameter') },
  compute: ({ offset, d }) => offset - d / 2,
};

export const stockByOffset: Formula<'offset' | 'd' | 'gap'> = {
  name: say('cut.stock-by-offset')`stock left for later passes by the offset`,
  text: say('cut.stock-by-offset.by')`stock = offset - d / 2 - gap`,
  source: 'definition',
  unit: 'mm',
  inputs: { offset: length('offset'), d: length('wire diameter'), gap: length('spark gap') },
  compute: ({ offset, d, gap }) => offset - d / 2 - gap,
};

const takenBetween: Formula<'before' | 'after'> = {
  name: say('cut.taken-between')`stock that a skim takes off`,
  text: say('cut.taken-between.by')`taken = stock before - stock after`,
  source: 'definition',
  unit: 'mm',
  inputs: { before: length('stock before'), after: length('stock after') },
  compute: ({ before, after }) => before - after,
};

/** The first pass that cannot be as entered, and why. */
const faultOf = (places: readonly LadderRow[]): PassFault | undefined => {
  for (const [i, { gap, stock, taken }] of places.entries()) {
    const pass = i + 1;
    if (!(gap.value > 0)) return { pass, reason: reasons.noGap };
    if (stock.value < -1e-9) return { pass, reason: reasons.tooNear(um(-stock.value * 1000, fixed(1))) };
    if (!(taken.value > 0)) return { pass, reason: reasons.takesNothing };
  }
  return undefined;
};

interface PassFault {
  readonly pass: number;
  readonly reason: Text;
}

const reasons = phrases('pass-table-fault', {
  noGap: say`its offset leaves no spark gap beside the wire`,
  tooNear: (by: Part) => say`it runs ${{ by }} too near for its spark gap`,
  takesNothing: say`it removes nothing that the pass before left`,
});

const inconsistent = ({ wire, material }: PassTable, { pass, reason }: PassFault): Finding =>
  find(
    'pass-table-inconsistent',
    say`Pass ${{ pass: count(pass) }} of the shop's table for ${{ wire: term(wire) }} in ${{ material: term(material) }} cannot be run: ${{ reason }}.`,
    {
      place: { kind: 'field', path: `passTables.${wire}.${material}.passes.${pass - 1}` },
      remedy: say`Correct the offsets in the shop file, or leave the table out so that the model is used.`,
    },
  );
