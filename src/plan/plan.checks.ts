/** Values of the plan that others printed, or that the trade agrees on. */

import { there } from '../../test/there.ts';
import { contour } from '../geometry/contour.ts';
import { arc, line, point } from '../geometry/segment.ts';
import { findMaterial } from '../physics/material/find-material.ts';
import { massOf } from '../physics/material/piece-mass.ts';
import { workHeight } from '../physics/work-height.ts';
import type { CheckRow } from '../quantity/check.ts';
import { say } from '../text/say.ts';
import { lapOf } from './path/lap.ts';
import { planned, plate, questionFor } from './plan.fixture.ts';
import { roomFor } from './start/holes.ts';
import { tabFor } from './start/tab.ts';

const slugMass = (): number => {
  const found = findMaterial('d2');
  return found.kind === 'material'
    ? massOf({ key: 'slug', what: say('check.slug')`the slug`, area: 100 * 60, height: workHeight(25), density: found.material.density })
        .value
    : 0;
};

/** A square with one inside corner rounded; the wire runs inside it. */
const pathRadius = (radius: number, offset: number): number => {
  const [a, b] = [point(10 - radius, 0), point(10, radius)];
  const eased = contour([
    line(point(0, 0), a),
    arc(a, b, point(10 - radius, radius), Math.PI / 2),
    line(b, point(10, 10)),
    line(point(10, 10), point(0, 10)),
    line(point(0, 10), point(0, 0)),
  ]);
  const centre = there(there(lapOf(eased, { side: 1, offset, outsideCorners: 'arc' }).pieces[1]).centre);
  return centre.kind === 'arc' ? centre.radius : 0;
};

const yes = (holds: boolean): string => (holds ? 'yes' : 'no');

const rough = (): { readonly offset: number; readonly hole: number } => {
  const plan = planned(questionFor(plate()));
  return { offset: there(plan.passes[0]).offset.value, hole: there(plan.contours.find((c) => c.loop === 'L3')).hole.diameter };
};

export const checks: readonly CheckRow[] = [
  {
    id: 'J-03',
    source: 'material-handbooks',
    place: 'density of D2, 7.70 g/cm³',
    how: 'memory',
    question: 'mass of a D2 slug of 100 × 60 × 25 mm, kg',
    value: '1.155',
    ours: slugMass,
  },
  {
    id: 'I-02-path',
    source: 'plane-geometry',
    place: 'parallel of an arc',
    how: 'recomputed',
    question: 'radius of the wire path along an inside arc of 0.200 mm at an offset of 0.155 mm',
    value: '0.045',
    ours: () => pathRadius(0.2, 0.155),
  },
  {
    id: 'CP-tab',
    source: 'common-practice',
    place: 'tabs',
    how: 'memory',
    question: 'tabs of pieces from 10 g to 6 kg are 1 to 6 mm long, and longer when heavier',
    value: 'yes',
    ours: () => {
      const lengths = [0.01, 0.1, 1, 3, 6].map((mass) => tabFor({ mass, area: 10000, perimeter: 400 }).length);
      return yes(lengths.every((l, i) => l >= 1 && l <= 6 && (i === 0 || l > there(lengths[i - 1]))));
    },
  },
  {
    id: 'CP-hole',
    source: 'common-practice',
    place: 'start holes',
    how: 'memory',
    question: "a hole's edge keeps at least 0.5 mm and the rough offset from the contour, more in tall blocks",
    value: 'yes',
    ours: () => {
      const { offset, hole } = rough();
      const low = roomFor(hole, { diameter: hole, roughOffset: offset, height: 10 });
      const tall = roomFor(hole, { diameter: hole, roughOffset: offset, height: 200 });
      return yes(low - hole / 2 >= 0.5 + offset && tall > low);
    },
  },
];
