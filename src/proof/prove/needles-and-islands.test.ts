/** Contours that are easily judged wrongly though nothing is wrong with them: needle-sharp openings, and islands with a ring of waste round them. */
import { describe, expect, it } from 'vitest';
import { polygon } from '../../geometry/contour.ts';
import { point } from '../../geometry/segment.ts';
import type { Proof, Wanted } from '../proof.ts';
import { box, cutBox, faults, question, RADIUS, START_HOLE, script } from './by-hand.fixture.ts';
import { proveActions } from './prove.ts';

/** An opening like a needle, its tip to the left, cut from a hole near its broad end; `short`, mm, of the tip is left. */
const needle = (degrees: number, short = 0): Proof => {
  const half = (degrees * Math.PI) / 360;
  const [tip, base, y] = [point(4, 20), 4 + 2 / Math.tan(half), 20];
  const contour = polygon([tip, point(base, y - 2), point(base, y + 2)]);
  const inner = 4 + RADIUS / Math.sin(half) + short;
  const right = base - RADIUS;
  const wide = (x: number): number => (x - 4) * Math.tan(half) - RADIUS / Math.cos(half);
  const s = script();
  s.go(right - 1, y);
  s.stop('THREAD THE WIRE');
  s.cut(right, y);
  s.cut(right, y + wide(right));
  s.cut(inner, y + wide(inner));
  s.cut(inner, y - wide(inner));
  s.cut(right, y - wide(right));
  s.cut(right, y - 1.2);
  s.stop('SECURE THE SLUG');
  s.cut(right, y + 0.2);
  s.stop('TAKE THE SLUG OUT');
  s.end();
  const holes = [{ at: point(right - 1, y), diameter: START_HOLE }];
  const block = box(0, 0, base + 10, 40);
  return proveActions(s.actions, question([{ loop: 'A', contour, kept: 'die' }], { holes, block, insideCorner: RADIUS }));
};

describe('a needle-sharp opening', () => {
  it.each([9, 5, 2, 0.8])('of %d° may keep in its tip what the round of the wire leaves, however long that is', (degrees) => {
    expect([faults(needle(degrees)), needle(degrees).verdict]).toEqual([[], 'proven']);
  });

  it.each([9, 5, 2])('of %d° may keep no more', (degrees) => {
    expect(needle(degrees, 0.3).verdict).toBe('not proven');
  });
});

/** An island kept as a part in an opening of the block, with a ring of waste between them; the island is cut first. */
const ringed = (island: readonly [number, number, number, number], opening: readonly [number, number, number, number]): Proof => {
  const [x0, y0, x1, y1] = island;
  const [left, low, right, high] = opening;
  const s = script();
  s.go((x0 + x1) / 2, y0 - 1.5);
  s.stop('THREAD THE WIRE');
  cutBox(s, x0 - RADIUS, y0 - RADIUS, x1 + RADIUS, y1 + RADIUS);
  s.stop('CUT THE WIRE');
  s.go((left + right) / 2, low + 1);
  s.stop('THREAD THE WIRE');
  cutBox(s, left + RADIUS, low + RADIUS, right - RADIUS, high - RADIUS);
  s.end();
  const wanted: Wanted[] = [
    { loop: 'opening', contour: box(left, low, right, high), kept: 'die' },
    { loop: 'island', contour: box(x0, y0, x1, y1), kept: 'punch' },
  ];
  const holes = [point((x0 + x1) / 2, y0 - 1.5), point((left + right) / 2, low + 1)].map((at) => ({ at, diameter: START_HOLE }));
  return proveActions(s.actions, question(wanted, { holes }));
};

const RINGS: readonly (readonly [string, Parameters<typeof ringed>])[] = [
  [
    'in the middle',
    [
      [25, 15, 35, 25],
      [10, 6, 50, 34],
    ],
  ],
  [
    'that fills nearly all of it',
    [
      [13, 10, 47, 30.5],
      [10, 6, 50, 34],
    ],
  ],
  [
    'low and to one side',
    [
      [12, 9.5, 22, 14],
      [10, 6, 50, 34],
    ],
  ],
  [
    'high and narrow',
    [
      [30, 10, 33, 32],
      [10, 6, 50, 34],
    ],
  ],
];

describe('an island with a ring of waste round it', () => {
  it.each(RINGS)('%s comes out once, and so does the ring, each with its own mass', (_, [island, opening]) => {
    const proof = ringed(island, opening);
    expect([faults(proof), proof.loose.map((l) => [l.loop, l.role, l.held])]).toEqual([
      [],
      [
        ['island', 'part', true],
        ['opening', 'slug', true],
      ],
    ]);
    const [x0, y0, x1, y1] = island;
    const [left, low, right, high] = opening;
    const grown = 4 * RADIUS;
    const ring = (right - left - grown) * (high - low - grown) - (x1 - x0 + grown) * (y1 - y0 + grown);
    expect(proof.loose[1]?.area).toBeCloseTo(ring, -0.5);
  });
});
