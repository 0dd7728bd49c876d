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

const tabOf = (mass: number): number => tabFor({ mass, area: 10000, perimeter: 400 }).length;

const rough = (): { readonly offset: number; readonly hole: number } => {
  const plan = planned(questionFor(plate()));
  return { offset: there(plan.passes[0]).offset.value, hole: there(plan.contours.find((c) => c.loop === 'L3')).hole.diameter };
};

/** What is left between the hole's edge and the rough cut, mm. */
const metalBeside = (height: number): number => {
  const { offset, hole } = rough();
  return roomFor(hole, { diameter: hole, roughOffset: offset, height }) - hole / 2 - offset;
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
  ...(
    [
      [0.01, '1', 1, 1.5],
      [1, '3', 2.2, 3.8],
      [6, '6', 5, 6],
    ] as const
  ).map(
    ([mass, value, low, high]): CheckRow => ({
      id: `CP-tab-${mass}`,
      source: 'common-practice',
      place: 'tabs, longer under heavier pieces',
      how: 'memory',
      question: `tab of a piece of ${mass} kg, mm`,
      value,
      ours: () => tabOf(mass),
      limits: { low, high, reason: 'from 1 mm for the lightest to 6 mm for the heaviest; in between shops differ by a quarter' },
    }),
  ),
  {
    id: 'CP-hole',
    source: 'common-practice',
    place: 'start holes',
    how: 'memory',
    question: "metal between a start hole's edge and the rough cut, low block, mm",
    value: '0.5',
    ours: () => metalBeside(10),
    limits: { low: 0.5, high: 0.65, reason: 'at least half a millimetre, and a drill that wanders by 1 in 100' },
  },
  {
    id: 'CP-hole-tall',
    source: 'common-practice',
    place: 'start holes',
    how: 'memory',
    question: 'more of it in a block of 200 mm than in one of 10 mm, mm',
    value: '1.9',
    ours: () => metalBeside(200) - metalBeside(10),
    limits: { low: 1.5, high: 2.3, reason: 'drilled holes wander by 1 in 100 of their depth' },
  },
];
