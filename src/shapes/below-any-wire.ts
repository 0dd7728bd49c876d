/** Inside corners that no wire reaches into. */

import { wires } from '../physics/wire/wires.ts';
import type { Finding } from '../text/finding.ts';
import { find } from './findings.ts';

/** mm; the spark gap of the wire comes on top. */
const FINEST = Math.min(...wires.map((w) => w.diameter));

export const belowAnyWire = (inside: number | undefined, path: string): readonly Finding[] =>
  inside === undefined || inside >= FINEST / 2
    ? []
    : [
        find(
          'corner-below-any-wire',
          `An inside corner of R ${Number(inside.toFixed(4))} mm is tighter than any wire: the finest, ${FINEST} mm thick, leaves R ${FINEST / 2} mm and its spark gap on top.`,
          { place: { kind: 'field', path } },
        ),
      ];
