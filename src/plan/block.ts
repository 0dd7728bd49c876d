/** The block that is clamped: as drawn, or the box around everything with a margin. */
import type { Finding } from '../finding/finding.ts';
import { boundsOfChain, mergedBounds } from '../geometry/area.ts';
import { type Contour, contour } from '../geometry/contour.ts';
import type { Bounds } from '../geometry/measure.ts';
import { line, point } from '../geometry/segment.ts';
import type { Machine } from '../physics/machine.ts';
import { find } from './findings.ts';
import type { Sorted } from './kept.ts';
import type { PlanQuestion } from './question.ts';

export const blockFor = (sorted: Sorted, question: PlanQuestion): Contour => {
  const drawn = sorted.block[0];
  if (drawn !== undefined) return drawn.contour;
  const lines = (question.open ?? []).map((l) => l.path);
  const loops = sorted.cut.length > 0 ? sorted.cut.map((k) => k.loop) : lines.length > 0 ? [] : question.loops;
  const margin = question.blockMargin;
  if (loops.length + lines.length === 0) return box(0, 0, margin, margin);
  const b = mergedBounds([...loops.map((l) => l.contour), ...lines].map(boundsOfChain));
  return box(b.minX - margin, b.minY - margin, b.maxX + margin, b.maxY + margin);
};

const box = (left: number, low: number, right: number, high: number): Contour => {
  const corners = [point(left, low), point(right, low), point(right, high), point(left, high)];
  return contour(corners.map((p, i) => line(p, corners[(i + 1) % 4]!)));
};

/** A block may stand over the table's edge as long as the wire reaches all of its cuts. */
export const travelFindings = (block: Contour, cut: Sorted['cut'], { machine, open = [] }: PlanQuestion): readonly Finding[] => {
  const cuts = [...cut.map((k) => k.loop.contour), ...open.map((l) => l.path)];
  const beyond = cuts.length === 0 ? undefined : beyondTravel(mergedBounds(cuts.map(boundsOfChain)), machine);
  if (beyond !== undefined) return [find('cuts-beyond-travel', `The cuts reach over ${beyond.sizes}.`, { remedy: beyond.remedy })];
  const over = beyondTravel(boundsOfChain(block), machine);
  return over === undefined ? [] : [find('block-beyond-travel', `The block is ${over.sizes}.`, { remedy: over.remedy })];
};

const beyondTravel = (
  { minX, minY, maxX, maxY }: Bounds,
  { travel: { x, y } }: Machine,
): { readonly sizes: string; readonly remedy: string } | undefined => {
  const [width, depth] = [maxX - minX, maxY - minY];
  if (width <= x && depth <= y) return undefined;
  return {
    sizes: `${width.toFixed(1)} by ${depth.toFixed(1)} mm; the machine travels ${x} by ${y} mm`,
    remedy: width <= y && depth <= x ? 'Turn it by a quarter.' : 'Cut it in two clampings, or on a larger machine.',
  };
};
