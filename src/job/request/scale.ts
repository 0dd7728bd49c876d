/** The program scaled for temperature: how much, which places of a job it moves, and what is said about it. */

import { programScale } from '../../accuracy/program-scale.ts';
import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import type { Chain } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/segment.ts';
import { type Similarity, scaling, transformChain, transformPoint } from '../../geometry/transform.ts';
import type { Material } from '../../physics/material/material.ts';
import type { PlanQuestion } from '../../plan/question.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { fixed, limit, mm, name, number, type Part, quantity, um, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { wanted } from '../../text/wanted.ts';
import { find } from '../findings.ts';
import type { Job } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { takenOf } from './taken.ts';

/** By how much every place of the drawing is multiplied, and what that follows from: 1e-6/K and °C. */
export interface Scaled {
  readonly factor: number;
  readonly expansion: number;
  readonly temperature: number;
  /** Place that stays where it is, mm: the datum, where it is not the zero of the drawing. */
  readonly about?: Point | undefined;
}

/** Factor 1, as at 20 °C, is no scale: the program is then the same to the last character. */
export const scaledFor = ({ temperature }: Pick<Job, 'temperature'>, material: Material, about?: Point): Scaled | undefined => {
  if (temperature?.scale !== true) return undefined;
  const { value: expansion } = material.expansion;
  const factor = programScale.compute({ expansion, temperature: temperature.cutting });
  return factor === 1 ? undefined : { factor, expansion, temperature: temperature.cutting, about };
};

/**
 * The question about the work piece as warm as it is cut: contours, lines, holes and marks grow about the datum. Offsets do not:
 * half the wire and the spark gap belong to wire and water, and were measured in that water. Nor do clamps and stock, which are
 * given to the millimetre, nor what the customer asks, which is judged at 20 °C.
 */
export const scaledQuestion = (question: PlanQuestion, scaled: Scaled | undefined): PlanQuestion => {
  if (scaled === undefined) return question;
  const grown = scaling(scaled.factor, scaled.about);
  return {
    ...question,
    loops: question.loops.map((l) => ({ ...l, contour: transformChain(grown, l.contour) })),
    open: question.open?.map((l) => ({ ...l, path: transformChain(grown, l.path) })),
    holes: question.holes.map((h) => ({ ...h, at: transformPoint(grown, h.at) })),
    marks: question.marks.map((at) => transformPoint(grown, at)),
    overrides: question.overrides && grownOverrides(question.overrides, grown),
  };
};

const grownOverrides = (overrides: NonNullable<PlanQuestion['overrides']>, grown: Similarity): NonNullable<PlanQuestion['overrides']> =>
  Object.fromEntries(
    Object.entries(overrides).map(([id, { entry, hole, ...tab }]) => [
      id,
      {
        entry: entry && transformPoint(grown, entry),
        hole: hole && { ...hole, at: transformPoint(grown, hole.at) },
        ...tab,
      },
    ]),
  );

/** Growth beyond this share of the tolerance is worth scaling for: the passes need the rest of it. */
const NOTICED = 0.25;

/** `drawn`: what is cut, mm, as drawn. `lastDigit`: of the program, mm; `datum`: its zero in the drawing, mm. */
export const scaleFindings = (
  run: Pick<JobRun, 'job' | 'said'>,
  material: Material,
  drawn: readonly Chain[],
  { lastDigit, datum = { x: 0, y: 0 } }: { readonly lastDigit: number; readonly datum?: Point | undefined },
): readonly Finding[] => {
  const { job } = run;
  const { temperature } = job;
  if (temperature === undefined || drawn.length === 0) return [];
  const { minX, minY, maxX, maxY } = mergedBounds(drawn.map(boundsOfChain));
  const size = Math.max(maxX - minX, maxY - minY);
  const factor = programScale.compute({ expansion: material.expansion.value, temperature: temperature.cutting });
  const grows = Math.abs(factor - 1) * size;
  const farthest = Math.abs(factor - 1) * Math.max(...[minX - datum.x, minY - datum.y, maxX - datum.x, maxY - datum.y].map(Math.abs));
  if (!temperature.scale)
    return grows <= NOTICED * job.tolerance ? [] : [growthFinding(run, material, size, (factor - 1) * size, temperature.cutting)];
  return [farthest < lastDigit / 2 ? belowDigit(farthest, lastDigit, temperature.cutting) : scaledNote(factor, size, temperature.cutting)];
};

const µm = (length: number): Part => um(Math.abs(length) * 1000, fixed(1));
const wide = (length: number): Part => mm(length, upTo(1));
const celsius = (value: number): Part => quantity(value, '°C', { as: 'given' });

const growthFinding = (run: Pick<JobRun, 'job' | 'said'>, material: Material, size: number, growth: number, cutting: number): Finding => {
  const said = growth > 0 ? words.longer : words.shorter;
  const asked = wanted({ assumed: takenOf(run) }, 'tolerance', limit(run.job.tolerance * 1000, 'µm', fixed(1)));
  return find('thermal-growth-large', said(wide(size), material.name, µm(growth), celsius(cutting), asked), {
    place: atField('temperature'),
    remedy: remedy(say`Scale the program for ${{ cutting: celsius(cutting) }} (temperature.scale), or cut at 20 °C.`, {
      field: 'temperature.scale',
      value: true,
    }),
  });
};

const words = phrases('thermal-growth-large', {
  longer: (size: Part, material: string, growth: Part, cutting: Part, asked: Text) =>
    say`Over the ${{ size }} of the part, ${{ material: name(material) }} is ${{ growth }} longer at ${{ cutting }} than at 20 °C; ${{ asked }}. A part cut to the drawing comes out small by that much.`,
  shorter: (size: Part, material: string, growth: Part, cutting: Part, asked: Text) =>
    say`Over the ${{ size }} of the part, ${{ material: name(material) }} is ${{ growth }} shorter at ${{ cutting }} than at 20 °C; ${{ asked }}. A part cut to the drawing comes out large by that much.`,
});

const scaledNote = (factor: number, size: number, cutting: number): Finding => {
  const said = factor > 1 ? scaledBy.more : scaledBy.less;
  return find('program-scaled', said(number(factor, fixed(7)), celsius(cutting), wide(size), µm((factor - 1) * size)), {
    place: atField('temperature'),
    done: say`The offset registers stay as they are: wire and gap do not scale with the workpiece.`,
  });
};

const scaledBy = phrases('program-scaled', {
  more: (factor: Part, cutting: Part, size: Part, growth: Part) =>
    say`The program is scaled by ${{ factor }} about the program zero for a workpiece at ${{ cutting }}: ${{ growth }} more over ${{ size }}. At 20 °C the part has the sizes of the drawing.`,
  less: (factor: Part, cutting: Part, size: Part, growth: Part) =>
    say`The program is scaled by ${{ factor }} about the program zero for a workpiece at ${{ cutting }}: ${{ growth }} less over ${{ size }}. At 20 °C the part has the sizes of the drawing.`,
});

const belowDigit = (farthest: number, lastDigit: number, cutting: number): Finding =>
  find(
    'scale-below-resolution',
    say`Scaling for ${{ cutting: celsius(cutting) }} moves no point of the program by more than ${{ farthest: µm(farthest) }}, less than half its last digit of ${{ digit: µm(lastDigit) }}: not worth doing.`,
    { place: atField('temperature') },
  );

/** The place in the drawing, at 20 °C, of a place in the program. */
export const asDrawn = <C extends Chain>(chain: C, scaled: Scaled | undefined): C =>
  scaled === undefined ? chain : transformChain(scaling(1 / scaled.factor, scaled.about), chain);
