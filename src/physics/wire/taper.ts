/** How far the guides must stand apart sideways for the wire to lean. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';

export const guideShift: Formula<'height' | 'angle'> = {
  name: say('wire.guide-shift')`sideways shift over a height`,
  text: say('wire.guide-shift.by')`shift = height · tan(angle)`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs: {
    height: { unit: 'mm', name: 'height between the two levels' },
    angle: { unit: '°', name: 'angle from upright', low: -45, high: 45 },
  },
  compute: ({ height, angle }) => height * Math.tan((angle * Math.PI) / 180),
};

export const wallLength: Formula<'height' | 'angle'> = {
  name: say('wire.wall-length')`length of the leaning wall`,
  text: say('wire.wall-length.by')`wall = height / cos(angle)`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs: { height: { unit: 'mm', name: 'height' }, angle: { unit: '°', name: 'angle from upright', low: -45, high: 45 } },
  compute: ({ height, angle }) => height / Math.cos((angle * Math.PI) / 180),
};
