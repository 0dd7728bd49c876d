/** Whether another process could do the job instead of the wire: flame, plasma, laser and abrasive water jet, each with its reason in numbers. */

import type { Figure } from '../../quantity/figure.ts';
import { rzBand } from '../../quantity/finish.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import type { Finding } from '../../text/finding.ts';
import { printNumber } from '../../text/print/figure.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';
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
  return { kind, verdict, ways, thickness, ...(wire === undefined ? {} : { wire: { ...wire, slope } }) };
};

/** Worth a line of its own only where it is so. */
export const otherFindings = ({ kind, verdict }: OtherWays): readonly Finding[] =>
  kind === 'not for the wire' ? [find('another-process-would-do', verdict)] : [];

const wayOf = (row: ProcessRow, question: OtherQuestion): OtherWay => {
  const { material, thickness } = question;
  const why = row.not[material.family];
  if (why !== undefined)
    return { process: row.name, kind: 'cannot cut it', sentence: `${capital(row.name)} does not cut ${material.name}: ${why}.` };
  const outside = outsideOf(row, thickness);
  if (outside !== undefined) return { process: row.name, kind: 'out of scope', sentence: outside };
  const edge = edgeOf(row, question);
  return { process: row.name, ...judged(row, question, edge), edge };
};

const outsideOf = (row: ProcessRow, thickness: number): string | undefined => {
  if (row.name === 'water jet')
    return thickness > thickestJet
      ? `Water jets are used up to about ${thickestJet} mm; ${printNumber(thickness)} mm is thicker.`
      : undefined;
  const scope = thermalScope(row.name, thickness);
  if (scope.kind === 'covered') return undefined;
  return `ISO 9013 speaks of ${row.name} cuts from ${scope.low} to ${scope.high} mm; for ${printNumber(thickness)} mm nothing can be promised.`;
};

const edgeSlope: Formula<'u' | 'thickness'> = {
  name: say('other-process.edge-slope')`slope of the cut face at most`,
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
  const { roughness, ra } = roughnessOf(row, thickness, key('roughness'));
  return {
    perpendicularity: zone,
    slope: apply(edgeSlope, { u: zone, thickness }, { key: key('slope'), name: cuts.slope(processWords[row.name]) }),
    roughness,
    ra,
    minutes: row.name === 'water jet' ? jetFeedFor(question, thickness, row) : thermalFeedFor(question, thickness, row),
  };
};

const BEST = say('other-process.best')`the best range that a good machine can be expected to hold: common practice, no source`;

const zoneOf = ({ ranges, name }: ProcessRow, thickness: Figure, key: string): Figure =>
  ranges === undefined
    ? apply(jetPerpendicularity, { base: jetEdge.squareBase, slope: jetEdge.squareSlope, thickness }, { key })
    : apply(
        perpendicularity[ranges.perpendicularity],
        { thickness },
        { key, name: cuts.perpendicularity(processWords[name]), warnings: [BEST] },
      );

const roughnessOf = ({ ranges, name }: ProcessRow, thickness: Figure, key: string): Pick<OtherEdge, 'roughness' | 'ra'> => {
  if (ranges === undefined) {
    const roughness = apply(jetRoughness, { base: jetEdge.roughBase, slope: jetEdge.roughSlope, thickness }, { key });
    return { roughness, ra: { low: roughness.low, high: roughness.high } };
  }
  const roughness = apply(
    thermalRoughness[ranges.roughness],
    { thickness },
    { key, name: cuts.roughness(processWords[name]), warnings: [BEST] },
  );
  const band = rzBand(1);
  return { roughness, ra: { low: roughness.value / band.high, high: roughness.value / band.low } };
};

type Judgement = Pick<OtherWay, 'kind' | 'sentence'>;

/** The first thing that is not good enough is the reason; a face fits when its zone is no wider than the tolerance on both sides. */
const judged = (row: ProcessRow, { tolerance, finish, insideRadius, thickness }: OtherQuestion, edge: OtherEdge): Judgement => {
  const name = capital(row.name);
  const u = edge.perpendicularity.value;
  const ra = `Ra ${two(edge.ra.low)} to ${two(edge.ra.high)} µm`;
  if (u > 2 * tolerance)
    return {
      kind: 'out of square',
      sentence: `${name} leaves the face of ${printNumber(thickness)} mm within ${three(u)} mm at best; ±${printNumber(tolerance)} mm allows ${three(2 * tolerance)} mm.`,
    };
  if (row.sizes > tolerance)
    return {
      kind: 'out of size',
      sentence: `${name} holds sizes to about ±${row.sizes} mm; ±${printNumber(tolerance)} mm is asked.`,
    };
  if (row.kerf / 2 > insideRadius)
    return {
      kind: 'corners too round',
      sentence: `${name} cuts a kerf of about ${row.kerf} mm and rounds inside corners to R ${row.kerf / 2} mm; R ${printNumber(insideRadius)} mm is asked.`,
    };
  if (edge.ra.low > finish)
    return {
      kind: 'too rough',
      sentence: `${name} leaves about ${ra} at ${printNumber(thickness)} mm; Ra ${printNumber(finish)} µm is asked.`,
    };
  if (edge.ra.high > finish)
    return {
      kind: 'too rough',
      sentence: `${name} leaves about ${ra} at ${printNumber(thickness)} mm: nobody can promise the Ra ${printNumber(finish)} µm that is asked.`,
    };
  return {
    kind: 'would do',
    sentence: `${name} would do: its face lies within ${three(u)} mm with ${ra}, where ±${printNumber(tolerance)} mm and Ra ${printNumber(finish)} µm are asked.`,
  };
};

const capital = (name: ProcessName): string => (name === 'water jet' ? 'A water jet' : name.charAt(0).toUpperCase() + name.slice(1));
const two = (x: number): string => String(Number(x.toPrecision(2)));
const three = (x: number): string => String(Number(x.toPrecision(3)));
