/** Contacts of segments and chains on a small grid, where ends, tangents and overlaps come all the time. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { fromBulge } from './bulge.ts';
import { reverseChain, startAt } from './chain.ts';
import type { Contour, Path } from './contour.ts';
import { contour, path } from './contour.ts';
import { reverse } from './cut.ts';
import type { Contact } from './intersect.ts';
import { intersect } from './intersect.ts';
import { distanceToSegment, pointAt } from './measure.ts';
import type { ChainContact } from './near/crossings.ts';
import { crossingsBetween, selfCrossings } from './near/crossings.ts';
import { windingOf } from './near/inside.ts';
import type { Point, Segment } from './segment.ts';
import { circle, distanceBetween, point, samePoint } from './segment.ts';
import { mirroring, rotationOfDegrees, transformChain } from './transform.ts';

/** Corners on a small grid and bulges that make circles of it: ends on segments, tangents and overlaps come all the time. */
const bulge = fc.constantFrom(0, 0, 1, -1, Math.SQRT2 - 1, 1 - Math.SQRT2, Math.SQRT2 + 1, 1 / 2, -1 / 3);
const grid: fc.Arbitrary<Point> = fc.tuple(fc.nat(5), fc.nat(5)).map(([x, y]) => point(x, y));
const segment: fc.Arbitrary<Segment> = fc.oneof(
  {
    weight: 9,
    arbitrary: fc
      .tuple(grid, grid, bulge)
      .filter(([a, b]) => !samePoint(a, b))
      .map(([a, b, k]) => fromBulge(a, b, k)),
  },
  { weight: 1, arbitrary: fc.tuple(grid, fc.integer({ min: 1, max: 3 })).map(([c, r]) => circle(c, r)) },
);
const corners = (minLength: number, maxLength: number) =>
  fc
    .array(fc.tuple(grid, bulge), { minLength, maxLength })
    .map((list) => list.filter(([p], i) => i === 0 || !samePoint(p, there(list[i - 1])[0])))
    .filter((list) => list.length >= 3 && !samePoint(there(list[0])[0], there(list.at(-1))[0]));
const closed: fc.Arbitrary<Contour> = corners(3, 6).map((list) =>
  contour(list.map(([p, k], i) => fromBulge(p, there(list[(i + 1) % list.length])[0], k))),
);
const open: fc.Arbitrary<Path> = corners(3, 5).map((list) =>
  path(list.slice(1).map(([p], i) => fromBulge(there(list[i])[0], p, there(list[i])[1]))),
);

const kindsOf = (contacts: readonly { readonly kind: string }[]): string =>
  contacts
    .map((c) => c.kind)
    .sort()
    .join();

describe('contacts of segments on a grid', () => {
  it('are of the same kinds in either order and direction', () => {
    fc.assert(
      fc.property(segment, segment, fc.constantFrom(1e-9, 1e-6), (a, b, within) => {
        const kinds = kindsOf(intersect(a, b, within));
        expect(kindsOf(intersect(b, a, within))).toBe(kinds);
        expect(kindsOf(intersect(reverse(a), b, within))).toBe(kinds);
        expect(kindsOf(intersect(a, reverse(b), within))).toBe(kinds);
      }),
      { seed: 5, numRuns: 4000 },
    );
  });
  it('lie on both segments, overlaps all along, and none is told twice', () => {
    fc.assert(
      fc.property(segment, segment, (a, b) => {
        const found = intersect(a, b, 1e-9);
        for (const c of found) expect(farthestApart(a, b, c)).toBeLessThan(3e-9);
        const places = found.flatMap((c) => (c.kind === 'overlap' ? [] : [c.at]));
        places.forEach((p, i) => {
          for (const q of places.slice(0, i)) expect(distanceBetween(p, q)).toBeGreaterThan(1e-9);
        });
      }),
      { seed: 6, numRuns: 4000 },
    );
  });
  it('are told wherever a sampled place of the one lies on the other', () => {
    fc.assert(
      fc.property(segment, segment, (a, b) => {
        const found = intersect(a, b, 1e-9);
        for (let i = 1; i < 24; i += 1) {
          const p = pointAt(a, i / 24);
          if (distanceToSegment(b, p) < 1e-12) expect(found.some((c) => tells(c, i / 24, p))).toBe(true);
        }
      }),
      { seed: 7, numRuns: 4000 },
    );
  });
});

const farthestApart = (a: Segment, b: Segment, c: Contact): number => {
  if (c.kind !== 'overlap') return Math.max(distanceBetween(c.at, pointAt(a, c.first)), distanceBetween(c.at, pointAt(b, c.second)));
  const along = ([from, to]: readonly [number, number], part: number): number => from + (to - from) * part;
  return Math.max(...[0, 0.3, 0.5, 0.8, 1].map((t) => distanceBetween(pointAt(a, along(c.first, t)), pointAt(b, along(c.second, t)))));
};

const tells = (c: Contact, share: number, p: Point): boolean =>
  c.kind === 'overlap' ? share > c.first[0] - 1e-6 && share < c.first[1] + 1e-6 : distanceBetween(c.at, p) < 2e-3;

describe('contacts of chains on a grid', () => {
  it('are the same for a contour reversed, started elsewhere, turned and mirrored', () => {
    fc.assert(
      fc.property(closed, fc.nat(5), (c, n) => {
        const found = selfCrossings(c, 1e-9);
        if (found.some((f) => f.kind === 'overlap')) return;
        const start = n % c.segments.length;
        const variants = [reverseChain(c), startAt(c, start, 0), startAt(c, start, 0.37)];
        const moved = [rotationOfDegrees(90), mirroring(0.3)].map((t) => transformChain(t, c));
        for (const v of [...variants, ...moved]) expect(kindsOf(selfCrossings(v, 1e-9))).toBe(kindsOf(found));
      }),
      { seed: 8, numRuns: 1500 },
    );
  });
  it('change from inside to outside at crossings and nowhere else', () => {
    fc.assert(
      fc.property(closed, open, (c, p) => {
        if (selfCrossings(c, 1e-9).length > 0) return;
        const found = crossingsBetween(c, p, 1e-9);
        if (!found.some((f) => f.kind === 'overlap')) expectSidesToChange(c, p, found);
      }),
      { seed: 9, numRuns: 3000 },
    );
  });
});

/** Walks along the path; places between contacts are inside or outside by the winding number, which knows no intersections. */
const expectSidesToChange = (c: Contour, p: Path, found: readonly ChainContact[]): void => {
  const stops = found.map((f) => ({ at: f.second + (f.contact as { second: number }).second, kind: f.kind })).sort((a, b) => a.at - b.at);
  const length = p.segments.length;
  const place = (t: number): Point =>
    pointAt(there(p.segments[Math.min(length - 1, Math.floor(t))]), t - Math.min(length - 1, Math.floor(t)));
  const bounds = [0, ...stops.map((s) => s.at), length];
  const isInside = (i: number): boolean => windingOf(c, place(there(bounds[i]) + (there(bounds[i + 1]) - there(bounds[i])) * 0.7)) !== 0;
  stops.forEach((stop, i) => {
    const [before, after] = [stop.at - there(bounds[i]), there(bounds[i + 2]) - stop.at];
    if (before > 1e-9 && after > 1e-9) expect(isInside(i) !== isInside(i + 1)).toBe(stop.kind === 'crossing');
  });
};
