/** Inside corners that no wire reaches into. */

import type { Finding } from '../text/finding.ts';
import { mm } from '../text/part.ts';
import { say } from '../text/say.ts';
import { find } from './findings.ts';

/** @param finest diameter of the finest wire, mm; its spark gap comes on top. */
export const belowAnyWire = (inside: number | undefined, finest: number, path: string): readonly Finding[] =>
  inside === undefined || inside >= finest / 2
    ? []
    : [
        find(
          'corner-below-any-wire',
          say`An inside corner of R ${{ inside: mm(inside) }} is tighter than any wire: the finest, ${{ wire: mm(finest) }} thick, leaves R ${{ least: mm(finest / 2) }} and its spark gap on top.`,
          { place: { kind: 'field', path } },
        ),
      ];
