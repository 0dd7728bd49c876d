/** Holes that the wire is threaded through, held against the wire, and holes of the job that nothing is begun from. */

import type { Point } from '../../geometry/segment.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, count, mm, name, type Part, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { OpenCutPlan } from '../open-line.ts';
import type { ContourPlan } from '../plan.ts';
import type { GivenHole } from '../question.ts';
import { spot } from '../said.ts';

/** A hole takes at least so many times the wire's diameter: common practice, no source. */
const THREADABLE = 1.3;

/** `given`: holes that the job names itself. */
export const holeFindings = (
  contours: readonly ContourPlan[],
  lines: readonly OpenCutPlan[],
  wire: Wire,
  given: readonly GivenHole[],
): readonly Finding[] => {
  const begun = new Set([...contours.map((c) => c.hole.at), ...lines.flatMap((l) => [l.from.at, l.to.at])].map(spelled));
  return [...tooFine(contours, wire), ...given.filter(({ at }) => !begun.has(spelled(at))).map(notUsed)];
};

/** Contours of one shape are moved copies: their holes may be off by the last digits of a number. */
const spelled = ({ x, y }: Point): string => `${x.toFixed(4)} ${y.toFixed(4)}`;

const tooFine = (contours: readonly ContourPlan[], wire: Wire): readonly Finding[] => {
  const least = Math.ceil(wire.diameter * THREADABLE * 100 - 1e-9) / 100;
  const fine = contours.filter(({ hole }) => hole.origin !== 'block edge' && hole.diameter < least);
  const first = fine[0];
  if (first === undefined) return [];
  const loops = fine.length === 1 ? contour(first.loop) : words.andMore(first.loop, fine.length - 1);
  const { at, diameter } = first.hole;
  return [
    find(
      'hole-too-fine',
      say`The start hole of ${{ loops }} is ${{ hole: bore(diameter) }}; ${{ wire: name(wire.name) }} wire needs at least ${{ least: mm(least, upTo(2)) }} to be threaded.`,
      {
        place: { kind: 'spot', x: at.x, y: at.y, reach: least, loop: first.loop },
        remedy: say`Drill it ${{ least: mm(least, upTo(2)) }} or larger, or use a finer wire.`,
      },
    ),
  ];
};

const bore = (diameter: number): Part => mm(diameter, upTo(3));

const words = phrases('hole', {
  andMore: (loop: string, more: number): Text => say`${{ loop: contour(loop) }} (and ${{ more: count(more) }} more)`,
});

const notUsed = ({ at, diameter }: GivenHole): Finding =>
  find('hole-not-used', say`Nothing starts from the hole of ${{ hole: bore(diameter) }} that the job gives at ${{ at: spot(at) }}.`, {
    place: { kind: 'spot', x: at.x, y: at.y, reach: diameter / 2 },
    remedy: say`Check its position, and that it removes no metal that must stay: the proof does not know it.`,
  });
