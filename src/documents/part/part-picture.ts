/** The part as the customer drew it, for the quotation: its contours and open lines, none of the wire's, with the names that the words refer to. */
import { besideMiddle, extentOf } from '../../picture/extent.ts';
import { pathData, type Stroke } from '../../picture/strokes.ts';
import { cutOf } from '../../result/facts.ts';
import type { Contour, NumberedContour } from '../../result/shown.ts';
import { contour as contourNamed } from '../../text/part.ts';
import type { WrittenLabel, WrittenPicture } from '../paper.ts';
import { lineLabel, type Pictured, refusedPlaces } from './plan-picture.ts';

/** None where nothing is drawn. `named` are the contours and lines that are spoken of. */
export const partPicture = (facts: Pictured, named: ReadonlySet<string>): WrittenPicture | undefined => {
  const cut = cutOf(facts);
  const holes = cut?.contours ?? [];
  const loops = facts.drawing.loops.filter(
    (l) => !l.hidden && (l.aside === undefined || named.has(l.id)) && !holes.some((h) => isStartHole(l.contour, h)),
  );
  if (loops.length === 0) return undefined;
  const lines = cut?.plan.openCuts ?? [];
  const { minX, minY, maxX, maxY } = extentOf(loops.map((l) => l.contour));
  const size = Math.hypot(maxX - minX, maxY - minY);
  const margin = size * 0.025;
  return {
    low: { x: minX - margin, y: minY - margin },
    high: { x: maxX + margin, y: maxY + margin },
    strokes: [...loops.map((l) => l.contour), ...lines.map((l) => l.path)]
      .map((drawn): Stroke => ({ data: pathData(drawn), width: 0.3, grey: 0.08 }))
      .concat(refusedPlaces(facts, size * 0.03)),
    labels: [
      ...loops.flatMap((l) => (named.has(l.id) ? loopLabel(l.id, l.contour) : [])),
      ...lines.flatMap((l) => (named.has(l.chain) ? [lineLabel(l)] : [])),
    ],
  };
};

/** Drawn only to say where the cut may start: nothing of it is left in the part. */
const isStartHole = (loop: Contour, { hole: { at, diameter } }: NumberedContour): boolean => {
  const { minX, minY, maxX, maxY } = extentOf([loop]);
  const off = Math.hypot((minX + maxX) / 2 - at.x, (minY + maxY) / 2 - at.y);
  return Math.max(off, Math.abs(maxX - minX - diameter), Math.abs(maxY - minY - diameter)) < SAME;
};

/** Two places or diameters nearer than this are one, mm. */
const SAME = 1e-3;

/** Beside the longest stretch, where there is most room. */
const loopLabel = (id: string, { segments }: Contour): readonly WrittenLabel[] => {
  const reach = ({ from, to }: Contour['segments'][number]): number => Math.hypot(to.x - from.x, to.y - from.y);
  const longest = segments.toSorted((a, b) => reach(b) - reach(a))[0];
  return longest === undefined ? [] : [{ ...besideMiddle(longest), text: contourNamed(id), ring: false }];
};
