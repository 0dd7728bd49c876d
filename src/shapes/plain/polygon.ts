/** Regular polygons across flats: squares, hexagons and the like, as a piece or as an opening. */

import { point } from '../../geometry/segment.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { atField } from '../../text/finding.ts';
import { count, mm } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { standBack } from '../common-keys.ts';
import { asked, found } from '../figures.ts';
import { inMm, plain } from '../inputs.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import { millimetres, refusedWith } from '../refused.ts';
import { rounded } from '../rounded.ts';
import type { Outline } from '../shape.ts';
import { find } from './findings.ts';
import { polygonQuestion } from './polygon-request.ts';

export const acrossCorners: Formula<'acrossFlats' | 'sides'> = {
  name: say('plain.across-corners')`across sharp corners`,
  text: symbols`e = s / cos(π / n)`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs: { acrossFlats: inMm('across flats'), sides: plain('sides') },
  compute: ({ acrossFlats, sides }) => acrossFlats / Math.cos(Math.PI / sides),
};

const words = phrases('polygon', {
  acrossFlats: say`across flats`,
  ofSides: say`sides`,
  acrossCorners: say`across corners`,
  off: say`off the contour`,
  twice: say`twice from the middle to a side`,
  name: (form: Text, acrossFlats: number) => say`${{ form }}, ${{ size: mm(acrossFlats) }} across flats`,
  triangle: say`Triangle`,
  square: say`Square`,
  pentagon: say`Pentagon`,
  hexagon: say`Hexagon`,
  octagon: say`Octagon`,
  twelveSides: say`Twelve sides`,
  others: (sides: number) => say`Polygon of ${{ sides: count(sides, 'side') }}`,
});

const FORMS: Readonly<Record<number, Text>> = {
  3: words.triangle,
  4: words.square,
  5: words.pentagon,
  6: words.hexagon,
  8: words.octagon,
  12: words.twelveSides,
};

/** A polygon with its first side at right angles to X. */
export const polygon = shapeKind({
  ...polygonQuestion,
  make: ({ sides, acrossFlats, cornerRadius, metal, ...common }) => {
    const half = acrossFlats / 2 + (metal === 'inside' ? -1 : 1) * standBack(common);
    if (!(half > 0))
      return refusedWith(find('shape-without-room/polygon', say`The clearance is more than the polygon.`, { place: atField('clearance') }));
    const reach = half / Math.cos(Math.PI / sides);
    const corners = Array.from({ length: sides }, (_, i) => {
      const angle = ((2 * i - 1) * Math.PI) / sides;
      return { x: reach * Math.cos(angle), y: reach * Math.sin(angle), radius: cornerRadius };
    });
    const made = rounded(corners);
    if (made.kind === 'no room')
      return refusedWith(
        find('shape-without-room/sides', say`Corners of R ${{ radius: mm(cornerRadius) }} leave nothing of the sides.`, {
          place: atField('cornerRadius'),
        }),
      );
    const outlines: readonly Outline[] = [{ contour: made.contour, metal }];
    const inside = insideRadiusOf(outlines);
    const flats = millimetres('across-flats', sides % 2 === 0 ? words.acrossFlats : words.twice, 2 * half);
    const number = asked('sides', words.ofSides, sides, '1');
    const even = sides % 2 === 0;
    const tip = reach - cornerRadius * (1 / Math.cos(Math.PI / sides) - 1);
    const turn = Math.PI / sides;
    const corner = (side: 1 | -1) => point(side * tip * Math.cos(turn), side * tip * Math.sin(turn));
    return {
      kind: 'made',
      shape: {
        name: words.name(FORMS[sides] ?? words.others(sides), acrossFlats),
        outlines,
        starts: [],
        sizes: [
          { figure: flats, taking: { kind: 'distance', from: point(even ? -half : 0, 0), to: point(half, 0) } },
          {
            figure: apply(acrossCorners, { acrossFlats: flats, sides: number }, { key: 'across-sharp-corners' }),
          },
          ...(even
            ? [
                {
                  figure: found('across-corners', words.acrossCorners, 2 * tip, words.off),
                  taking: { kind: 'distance', from: corner(-1), to: corner(1) },
                } as const,
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
