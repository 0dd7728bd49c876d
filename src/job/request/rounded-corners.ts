/** Rounds inside corners of the wanted contours to a radius agreed with the customer, before anything is planned. */

import { areaOf } from '../../geometry/area.ts';
import { counterClockwise } from '../../geometry/chain.ts';
import { close, open } from '../../geometry/offset/opening.ts';
import type { Kept } from '../../plan/plan.ts';
import type { WantedLoop } from '../../plan/question.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { contour, count, mm } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';

export type Eased =
  | { readonly kind: 'eased'; readonly loops: readonly WantedLoop[]; readonly findings: readonly Finding[] }
  | { readonly kind: 'failed'; readonly findings: readonly Finding[] };

/** `kept` tells for each loop that is cut which side stays: the wire works on the other side, whose inside corners are meant. */
export const easeLoops = (loops: readonly WantedLoop[], kept: ReadonlyMap<string, Kept>, radius: number): Eased => {
  if (radius === 0) return { kind: 'eased', loops, findings: [] };
  const failed: Finding[] = [];
  let changed = 0;
  const eased = loops.map((loop) => {
    const side = kept.get(loop.id);
    if (side === undefined) return loop;
    const result = side === 'die' ? open(loop.contour, radius) : close(loop.contour, radius);
    const only = result.kind === 'offset' && result.regions.length === 1 ? result.regions[0] : undefined;
    if (only === undefined || only.holes.length > 0) {
      failed.push(failure(loop, radius));
      return loop;
    }
    if (Math.abs(Math.abs(areaOf(only.outer)) - Math.abs(areaOf(loop.contour))) > 1e-9) changed += 1;
    return { ...loop, contour: counterClockwise(only.outer) };
  });
  if (failed.length > 0) return { kind: 'failed', findings: failed };
  const note = find(
    'corners-eased',
    say`Inside corners of ${{ contours: count(changed, 'contour') }} sharper than ${{ radius: mm(radius, { as: 'given' }) }} were eased to that radius, as specified in the job.`,
    {
      place: atField('ease'),
      done: say`Plan, program and proof use the eased contours.`,
    },
  );
  return { kind: 'eased', loops: eased, findings: changed === 0 ? [] : [note] };
};

const failure = (loop: WantedLoop, radius: number): Finding => {
  const from = loop.contour.segments[0]?.from ?? { x: 0, y: 0 };
  return find(
    'ease-failed',
    say`Contour ${{ loop: contour(loop.id) }} falls apart when its inside corners are eased to ${{ radius: mm(radius, { as: 'given' }) }}.`,
    {
      place: { kind: 'spot', x: from.x, y: from.y, loop: loop.id },
      remedy: say`Specify less than ${{ radius: mm(radius, { as: 'given' }) }}, or widen the narrowest place of ${{ loop: contour(loop.id) }}.`,
    },
  );
};
