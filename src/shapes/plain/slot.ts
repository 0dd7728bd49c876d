/** Slots with round ends and rectangles with rounded corners, as a piece or as an opening. */

import { point } from '../../geometry/segment.ts';
import { atField } from '../../text/finding.ts';
import { mm, quantities, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { standBack } from '../common-keys.ts';
import { asked, found } from '../figures.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import { millimetres, refusedWith } from '../refused.ts';
import { rounded } from '../rounded.ts';
import type { Outline } from '../shape.ts';
import { find } from './findings.ts';
import { slotQuestion } from './slot-request.ts';

const words = phrases('slot', {
  round: (length: number, breadth: number) => say`Slot ${{ size: quantities([length, breadth], '×', 'mm', upTo(4)) }}`,
  ofEnds: say`radius of the ends`,
  halfBreadth: say`half the breadth`,
  ofCorners: say`radius of the corners`,
  corners: (length: number, breadth: number) => say`Rectangle ${{ size: quantities([length, breadth], '×', 'mm', upTo(4)) }}`,
});

export const slot = shapeKind({
  ...slotQuestion,
  make: ({ length, breadth, ends, cornerRadius, metal, ...common }) => {
    const grown = (metal === 'inside' ? -1 : 1) * standBack(common);
    const [x, y] = [length / 2 + grown, breadth / 2 + grown];
    if (!(Math.min(x, y) > 0))
      return refusedWith(
        find('shape-without-room/slot', say`The clearance is more than the shape is wide.`, {
          place: atField('clearance'),
        }),
      );
    const radius = ends === 'round' ? Math.min(x, y) : cornerRadius;
    const made = rounded([
      { x: -x, y: -y, radius },
      { x, y: -y, radius },
      { x, y, radius },
      { x: -x, y, radius },
    ]);
    if (made.kind === 'no room')
      return refusedWith(
        find('shape-without-room/corners', say`Corners of R ${{ radius: mm(radius) }} have no room.`, {
          place: atField('cornerRadius'),
        }),
      );
    const outlines: readonly Outline[] = [{ contour: made.contour, metal }];
    const inside = insideRadiusOf(outlines);
    return {
      kind: 'made',
      shape: {
        name: words[ends](length, breadth),
        outlines,
        starts: [],
        sizes: [
          {
            figure: millimetres('length', say('plain.length')`length`, 2 * x),
            taking: { kind: 'distance', from: point(-x, 0), to: point(x, 0) },
          },
          {
            figure: millimetres('breadth', say('plain.breadth')`breadth`, 2 * y),
            taking: { kind: 'distance', from: point(0, -y), to: point(0, y) },
          },
          ...(radius > 0
            ? [
                {
                  figure:
                    ends === 'round'
                      ? found('corner-radius', words.ofEnds, radius, words.halfBreadth)
                      : asked('corner-radius', words.ofCorners, radius),
                },
              ]
            : []),
        ],
        fitDeviation: 0,
        insideRadius: inside,
        findings: [],
      },
    };
  },
});
