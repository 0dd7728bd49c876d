/** Whether another process could do the job instead of the wire: flame, plasma, laser and abrasive water jet, each with its reason in numbers. */

import type { Figure } from '../../quantity/figure.ts';
import { rzBand } from '../../quantity/finish.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import type { Finding } from '../../text/finding.ts';
import { inside, limit, list, mm, name, type Part, quantities, quantity, significant } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { wanted } from '../../text/wanted.ts';
import { find } from '../findings.ts';
import type { Material } from '../material/material.ts';
import { workHeight } from '../work-height.ts';
import { jetEdge, jetPerpendicularity, jetRoughness } from './jet-edge.ts';
import { jetFeedFor, thermalFeedFor } from './other-feeds.ts';
import type { OtherEdge, OtherQuestion, OtherWay, OtherWays } from './other-question.ts';
import { otherVerdict } from './other-verdict.ts';
import { type ProcessName, type ProcessRow, processRows, thickestJet } from './process-table.ts';
import { cuts, processWords } from './process-words.ts';
import { perpendicularity, thermalRoughness, thermalScope } from './thermal-and-jet-laws.ts';

export const otherProcesses = (question: OtherQuestion): OtherWays => {
  const ways = processRows.map((row) => wayOf(row, question));
  const { kind, verdict } = otherVerdict(ways, question);
  const { wire, thickness } = question;
  const slope = edgeSlope.compute({ u: (wire?.formError ?? 0) / 1000, thickness });
  const own = wire === undefined ? undefined : { ...wire, name: processWords.wire, slope, rz: rzBand(wire.ra).nominal };
  return { kind, verdict, ways, thickness, wire: own };
};

/** Worth a line of its own only where it is so. */
export const otherFindings = ({ kind, verdict }: OtherWays): readonly Finding[] =>
  kind === 'not for the wire' ? [find('another-process-would-do', verdict)] : [];

const wayOf = (row: ProcessRow, question: OtherQuestion): OtherWay => {
  const { material, thickness } = question;
  const own = { process: row.name, name: processWords[row.name] };
  const why = row.not[material.family];
  if (why !== undefined) return { ...own, kind: 'cannot cut it', sentence: words.cannot(heads[row.name], material, why) };
  const outside = outsideOf(row, thickness);
  if (outside !== undefined) return { ...own, kind: 'out of scope', sentence: outside };
  const edge = edgeOf(row, question);
  const { kind, said } = judged(row, question, edge);
  return { ...own, kind, sentence: said(heads[row.name]), within: said(inside(heads[row.name])), edge };
};

const outsideOf = (row: ProcessRow, thickness: number): Text | undefined => {
  if (row.name === 'water jet') return thickness > thickestJet ? words.tooThick(thickness) : undefined;
  const scope = thermalScope(row.name, thickness);
  if (scope.kind === 'covered') return undefined;
  return words.outside(processWords[row.name], scope, thickness);
};

const edgeSlope: Formula<'u' | 'thickness'> = {
  name: say('other-process.edge-slope')`slope of the cut face, at most`,
  text: say('other-process.edge-slope.by')`slope = atan(u / a)`,
  source: 'definition',
  unit: '°',
  inputs: { u: { unit: 'mm', name: 'perpendicularity' }, thickness: { unit: 'mm', name: 'thickness' } },
  compute: ({ u, thickness }) => (Math.atan2(u, thickness) * 180) / Math.PI,
};

const edgeOf = (row: ProcessRow, question: OtherQuestion): OtherEdge => {
  const key = (what: string): string => `other.${row.name.replace(' ', '-')}.${what}`;
  const thickness = workHeight(question.thickness);
  const zone = zoneOf(row, thickness, key('perpendicularity'));
  return {
    perpendicularity: zone,
    slope: apply(edgeSlope, { u: zone, thickness }, { key: key('slope'), name: cuts.slope(processWords[row.name]) }),
    ...roughnessOf(row, thickness, key('roughness')),
    minutes: row.name === 'water jet' ? jetFeedFor(question, thickness, row) : thermalFeedFor(question, thickness, row),
  };
};

const BEST = say('other-process.best')`the best range a good machine holds: common practice, no source`;

const zoneOf = ({ ranges, name }: ProcessRow, thickness: Figure, key: string): Figure =>
  ranges === undefined
    ? apply(jetPerpendicularity, { base: jetEdge.squareBase, slope: jetEdge.squareSlope, thickness }, { key })
    : apply(
        perpendicularity[ranges.perpendicularity],
        { thickness },
        { key, name: cuts.perpendicularity(processWords[name]), warnings: [BEST] },
      );

const roughnessOf = ({ ranges, name }: ProcessRow, thickness: Figure, key: string): Pick<OtherEdge, 'roughness' | 'rz' | 'ra'> => {
  if (ranges === undefined) {
    const roughness = apply(jetRoughness, { base: jetEdge.roughBase, slope: jetEdge.roughSlope, thickness }, { key });
    return { roughness, rz: rzBand(roughness.value).nominal, ra: { low: roughness.low, high: roughness.high } };
  }
  const roughness = apply(
    thermalRoughness[ranges.roughness],
    { thickness },
    { key, name: cuts.roughness(processWords[name]), warnings: [BEST] },
  );
  const band = rzBand(1);
  return { roughness, rz: roughness.value, ra: { low: roughness.value / band.high, high: roughness.value / band.low } };
};

interface Judgement {
  readonly kind: OtherWay['kind'];
  /** The reason, by the name of the process as the sentence begins or goes on with it. */
  readonly said: (process: Part | Text) => Text;
}

/** The first thing that is not good enough is the reason; a face fits when its zone is no wider than the tolerance on both sides. */
const judged = (row: ProcessRow, question: OtherQuestion, edge: OtherEdge): Judgement => {
  const { tolerance, finish, insideRadius, thickness } = question;
  const u = edge.perpendicularity.value;
  const ra = quantities([edge.ra.low, edge.ra.high], 'to', 'µm', significant(2));
  if (u > 2 * tolerance) return { kind: 'out of square', said: (process) => words.square(process, thickness, u, tolerance) };
  if (row.sizes > tolerance) return { kind: 'out of size', said: (process) => words.size(process, row.sizes, toleranceWanted(question)) };
  if (row.kerf / 2 > insideRadius)
    return { kind: 'corners too round', said: (process) => words.round(process, row.kerf, radiusWanted(question)) };
  if (edge.ra.low > finish) return { kind: 'too rough', said: (process) => words.rough(process, ra, thickness, finishWanted(question)) };
  if (edge.ra.high > finish) return { kind: 'too rough', said: (process) => words.roughPerhaps(process, ra, thickness, finish) };
  return {
    kind: 'would do',
    said: (process) => words.would(process, u, ra, list([toleranceWanted(question), finishWanted(question)], 'and')),
  };
};

const plain = (millimetres: number): Part => quantity(millimetres, 'mm');
const exactly = (millimetres: number): Part => mm(millimetres, { as: 'given' });
const three = (millimetres: number): Part => mm(millimetres, significant(3));

const toleranceWanted = (question: OtherQuestion): Text => wanted(question, 'tolerance', limit(question.tolerance));
const finishWanted = (question: OtherQuestion): Text => wanted(question, 'finish', words.ra(quantity(question.finish, 'µm')));
const radiusWanted = (question: OtherQuestion): Text => wanted(question, 'insideCorner', words.radius(question.insideRadius));

const words = phrases('other-process', {
  ra: (roughness: Part) => say`Ra ${{ roughness }}`,
  radius: (radius: number) => say`R ${{ radius: plain(radius) }}`,
  cannot: (process: Text, { name: material }: Material, why: Text) =>
    say`${{ process }} does not cut ${{ material: name(material) }}: ${{ why }}.`,
  tooThick: (thickness: number) =>
    say`Water jets are used up to about ${{ most: exactly(thickestJet) }}; ${{ thickness: plain(thickness) }} is thicker.`,
  outside: (process: Text, { low, high }: { readonly low: number; readonly high: number }, thickness: number) =>
    say`ISO 9013 covers ${{ process }} cuts from ${{ scope: quantities([low, high], 'to', 'mm', { as: 'given' }) }}; for ${{ thickness: plain(thickness) }} nothing can be promised.`,
  square: (process: Part | Text, thickness: number, u: number, tolerance: number) =>
    say`${{ process }}: cut face at best within ${{ zone: three(u) }} at ${{ thickness: plain(thickness) }}; ${{ tolerance: limit(tolerance) }} allows ${{ allowed: three(2 * tolerance) }}.`,
  size: (process: Part | Text, sizes: number, asked: Text) =>
    say`${{ process }} holds sizes to about ${{ sizes: limit(sizes, 'mm', { as: 'given' }) }}; ${{ asked }}.`,
  round: (process: Part | Text, kerf: number, asked: Text) =>
    say`${{ process }} has a kerf of about ${{ kerf: exactly(kerf) }} and rounds inside corners to R ${{ radius: exactly(kerf / 2) }}; ${{ asked }}.`,
  rough: (process: Part | Text, ra: Part, thickness: number, asked: Text) =>
    say`${{ process }} leaves about Ra ${{ ra }} at ${{ thickness: plain(thickness) }}; ${{ asked }}.`,
  roughPerhaps: (process: Part | Text, ra: Part, thickness: number, finish: number) =>
    say`${{ process }} leaves about Ra ${{ ra }} at ${{ thickness: plain(thickness) }}; Ra ${{ finish: quantity(finish, 'µm') }} cannot be promised.`,
  would: (process: Part | Text, u: number, ra: Part, asked: Part) =>
    say`${{ process }} would do: face within ${{ zone: three(u) }} with Ra ${{ ra }}; ${{ asked }}.`,
});

/** At the head of a sentence. */
const heads: Readonly<Record<ProcessName, Text>> = phrases('process-head', {
  oxyfuel: say`Oxyfuel`,
  plasma: say`Plasma`,
  laser: say`Laser`,
  'water jet': say`A water jet`,
});
