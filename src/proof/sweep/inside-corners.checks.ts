/** Radii that a wire leaves in inside corners, as plane geometry has them, against what the proof measures on swept metal. */
import { there } from '../../../test/there.ts';
import { polygon } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/segment.ts';
import { point } from '../../geometry/segment.ts';
import { standardDialect } from '../../nc/dialect/dialect.ts';
import type { Action } from '../../nc/read/program.ts';
import type { CheckRow } from '../../quantity/check.ts';
import { proveActions } from '../prove/prove.ts';

/** Cuts a square opening of 10 mm with sharp corners in one pass, and gives what the proof says of its first corner. */
const firstCorner = (wireDiameter: number, gap: number): { readonly radius: number; readonly left: number } => {
  const r = wireDiameter / 2 + gap;
  const square = (inward: number): readonly Point[] => [
    point(inward, inward),
    point(10 - inward, inward),
    point(10 - inward, 10 - inward),
    point(inward, 10 - inward),
  ];
  const actions: readonly Action[] = [
    { kind: 'thread', block: 0 },
    ...polygon(square(r)).segments.map((s): Action => ({ kind: 'move', block: 1, rapid: false, programmed: s, centre: s, condition: 1 })),
    { kind: 'end', block: 2 },
  ];
  const proof = proveActions(actions, {
    program: '',
    dialect: standardDialect,
    registers: new Map(),
    wireDiameter,
    gaps: new Map([[1, gap]]),
    wanted: [{ loop: 'square', contour: polygon(square(0)), kept: 'die' }],
    block: polygon([point(-20, -20), point(30, -20), point(30, 30), point(-20, 30)]),
    holes: [],
    height: 20,
    density: 7.7,
    tolerance: 0.01,
    insideCorner: 0.5,
  });
  return there(there(proof.contours[0]).rounded[0]);
};

export const checks: readonly CheckRow[] = [
  {
    id: 'I-12',
    source: 'plane-geometry',
    place: 'smallest inside radius = d/2 + gap',
    how: 'recomputed',
    question: 'Radius in mm that a wire of 0.25 mm with a gap of 0.030 mm leaves in a sharp inside corner',
    value: '0.155',
    ours: () => firstCorner(0.25, 0.03).radius,
  },
  {
    id: 'I-13',
    source: 'plane-geometry',
    place: 'a round of radius r in a right angle stands r (sqrt 2 - 1) off its corner',
    how: 'recomputed',
    question: 'Metal in mm left in that corner',
    value: '0.064',
    ours: () => firstCorner(0.25, 0.03).left,
  },
];
