/** The sizes a bore with a keyway is measured by, and what has to be known of its corners. mm. */

import { point } from '../../geometry/segment.ts';
import type { Figure } from '../../quantity/figure.ts';
import type { Finding } from '../../text/finding.ts';
import { mm, quantities, upTo } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { askedOrFound, found } from '../figures.ts';
import type { ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import type { Key, Limits } from './key.ts';
import type { KeywayForm } from './keyway-contour.ts';

const MIDDLE = say('keyway.middle')`the middle of its limits`;

/** A bore is cut at the middle of its zone, where it has one. */
export const boreFigure = (diameter: number, { low, high }: Limits): Figure =>
  askedOrFound(low === high ? diameter : undefined, 'bore', say('keyway.bore')`bore`, diameter, MIDDLE, { source: { file: 'iso-286-1' } });

/** Of the bore and its first keyway, which points along X. */
export const keywaySizes = (
  key: Key,
  { bore, across, cornerRadius }: { readonly bore: Limits; readonly across: Limits; readonly cornerRadius: number | undefined },
  { radius, half, top, corner }: KeywayForm,
): readonly ShapeSize[] => [
  {
    figure: boreFigure(2 * radius, bore),
    limits: bore.low === bore.high ? undefined : bore,
    taking: { kind: 'circle', centre: point(0, 0), radius },
  },
  {
    figure: found('key-width-cut', say('keyway.key-width-cut')`width of the keyway`, 2 * half, MIDDLE, { source: key.across.source }),
    limits: key.width,
    taking: { kind: 'distance', from: point(top, -half), to: point(top, half) },
  },
  {
    figure: { ...key.across, key: 'across-cut', value: top + radius, low: top + radius, high: top + radius, from: [key.across] },
    limits: across,
    taking: { kind: 'distance', from: point(-radius, 0), to: point(top, 0) },
  },
  {
    figure: askedOrFound(
      cornerRadius,
      'keyway-radius',
      say('keyway.radius')`radius in the corners of the keyway`,
      corner,
      say('keyway.radius.by')`the largest that the standard has`,
      {
        source: key.across.source,
      },
    ),
  },
];

export const cornerDoubt = (corner: number, { corner: [least, most], words }: Key, path: string): readonly Finding[] =>
  corner >= least - 1e-9 && corner <= most + 1e-9
    ? []
    : [
        find(
          'keyway-corner-beyond-standard',
          say`The corners of the keyway have R ${{ corner: mm(corner) }}; for a ${{ key: words }} the standard has ${{ corners: quantities([least, most], 'to', 'mm', upTo(6)) }}.`,
          { place: { kind: 'field', path } },
        ),
      ];
