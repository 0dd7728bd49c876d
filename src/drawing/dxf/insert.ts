/** INSERT: puts a block somewhere, scaled, turned, mirrored, tilted, once or in rows and columns. */

import { sineCosineOfDegrees } from '../../geometry/angle.ts';
import { asGiven, name } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { REACH } from '../curve/reach.ts';
import { extrusionOf, MOST_DEGREES, pointOf } from './entity-curves.ts';
import type { Fields } from './fields.ts';
import { type Insert, type Trouble, trouble } from './records.ts';
import { type Placement, planeOf, point3, turned, within } from './space.ts';

/**
 * Scale first, then turn, then move to the insertion point, all on the plane of the extrusion. Rows and columns step along
 * the turned axes and are not scaled.
 */
export const insertOf = (f: Fields): Insert | Trouble => {
  if (f.name === '') return trouble('entity-unfinished', say('entity-unfinished/insert')`An INSERT names no block.`);
  const plane = planeOf(extrusionOf(f));
  if (plane === undefined)
    return trouble('entity-impossible', say('entity-impossible/insert-extrusion')`The extrusion direction has no length.`);
  const [sx, sy, sz] = [f.get(41, 1), f.get(42, 1), isScale(f.get(43, 1)) ? f.get(43, 1) : 0];
  const bad = [sx, sy].find((scale) => !isScale(scale));
  if (bad !== undefined)
    return trouble(
      'entity-impossible',
      say('entity-impossible/scale')`The block '${{ block: name(f.name) }}' is scaled by ${{ scale: asGiven(bad) }}.`,
    );
  if (!(Math.abs(f.get(50, 0)) <= MOST_DEGREES))
    return trouble(
      'entity-impossible',
      say(
        'entity-impossible/block-angle',
      )`The block '${{ block: name(f.name) }}' is turned by ${{ angle: asGiven(f.get(50, 0)) }} degrees; so large a number points in no direction.`,
    );
  const [x, y] = [f.get(10, 0), f.get(20, 0)];
  if (!(Math.max(Math.abs(x), Math.abs(y)) <= REACH))
    return trouble(
      'entity-impossible',
      say(
        'entity-impossible/block-place',
      )`The block '${{ block: name(f.name) }}' is inserted at (${{ x: asGiven(x) }}, ${{ y: asGiven(y) }}), further away than a thousand million drawing units.`,
    );
  const turn = turnedBy(f.get(50, 0));
  const scale: Placement = { x: point3(sx, 0, 0), y: point3(0, sy, 0), z: point3(0, 0, sz), origin: point3(0, 0, 0) };
  const onPlane = within(plane, { ...turn, origin: pointOf(f, 10) });
  return {
    kind: 'insert',
    type: f.type,
    layer: f.layer,
    invisible: f.invisible,
    place: f.place,
    block: f.name,
    key: f.name.toLowerCase(),
    placement: within(onPlane, scale),
    columns: copies(f.get(70, 1)),
    rows: copies(f.get(71, 1)),
    columnStep: turned(onPlane, point3(f.get(44, 0), 0, 0)),
    rowStep: turned(onPlane, point3(0, f.get(45, 0), 0)),
  };
};

/** The height is looked at from above, so that a block pressed flat loses nothing; pressed in x or y it would. */
const isScale = (scale: number): boolean => Math.abs(scale) >= 1 / REACH && Math.abs(scale) <= REACH;

const copies = (count: number): number => Math.max(1, Math.trunc(count));

const turnedBy = (degrees: number): Placement => {
  const { sine: s, cosine: c } = sineCosineOfDegrees(degrees);
  return { x: point3(c, s, 0), y: point3(-s, c, 0), z: point3(0, 0, 1), origin: point3(0, 0, 0) };
};
