/** Contours moved to where the middle of their size's limits lies: plan, proof and papers work from these. */
import { counterClockwise } from '../../geometry/chain.ts';
import type { Contour } from '../../geometry/contour.ts';
import { offsetContour } from '../../geometry/offset/offset.ts';
import type { Finding } from '../../text/finding.ts';
import { contour as named } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';

interface Placed {
  readonly id: string;
  readonly contour: Contour;
}

/** `moved`: mm per side outward, by id. A contour that falls apart on the way stays as drawn, and that is a finding. */
export const aimedLoops = <L extends Placed>(
  loops: readonly L[],
  moved: (id: string) => number | undefined,
): { readonly loops: readonly L[]; readonly findings: readonly Finding[] } => {
  const findings: Finding[] = [];
  const aimed = loops.map((loop) => {
    const by = moved(loop.id) ?? 0;
    if (by === 0) return loop;
    const contour = movedOutward(loop.contour, by);
    if (contour !== undefined) return { ...loop, contour };
    findings.push(
      find('contour-size-unusable/apart', say`${{ loop: named(loop.id) }} falls apart when it is moved to the middle of its limits.`, {
        remedy: say`Widen its narrowest place in the drawing.`,
      }),
    );
    return loop;
  });
  return { loops: aimed, findings };
};

/** A loop runs counter-clockwise, so that outward lies on its right. Sharp corners stay sharp. */
const movedOutward = (contour: Contour, by: number): Contour | undefined => {
  const outcome = offsetContour(contour, -by, { join: 'intersection' });
  const only = outcome.kind === 'offset' && outcome.contours.length === 1 ? outcome.contours[0] : undefined;
  return only === undefined ? undefined : counterClockwise(only);
};
