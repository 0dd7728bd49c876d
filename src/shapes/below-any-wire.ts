/** Inside corners that no wire reaches into. */

import { wires } from '../physics/wire/wires.ts';
import type { Finding } from '../text/finding.ts';
import { mm } from '../text/part.ts';
import { say } from '../text/say.ts';
import { find } from './findings.ts';

/** mm; the spark gap of the wire comes on top. */
const FINEST = Math.min(...wires.map((w) => w.diameter));

export const belowAnyWire = (inside: number | undefined, path: string): readonly Finding[] =>
  inside === undefined || inside >= FINEST / 2
    ? []
    : [
        find(
          'corner-below-any-wire',
          say`An inside corner of R ${{ inside: mm(inside) }} is tighter than any wire: the finest, ${{ wire: mm(FINEST) }} thick, leaves R ${{ least: mm(FINEST / 2) }} and its spark gap on top.`,
          { place: { kind: 'field', path } },
        ),
      ];
