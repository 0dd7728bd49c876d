/** What is a corner that comes out round, and what is a nook that the wire cannot enter. */
import { describe, expect, it } from 'vitest';
import { polyline } from '../../geometry/example-shapes.fixture.ts';
import { openedBy } from './opened-contour.ts';
import { roundedCorners } from './rounded-corners.ts';

const corner = (x: number, y: number, bulge = 0) => ({ x, y, bulge });
const swallowed = (corners: Parameters<typeof polyline>[0]): readonly boolean[] => {
  const wanted = polyline(corners);
  const opened = openedBy(wanted, 'die', 0.2);
  if (opened.kind !== 'whole') throw new Error(opened.kind);
  return roundedCorners(wanted, opened.contour, 0.2, 'die').map((c) => c.nook !== undefined);
};

describe('inside corners that come out round', () => {
  it('are corners also where the wall beside them bends away in short arcs', () => {
    const bent = [
      corner(0, 0),
      corner(0.08, 0, -0.02),
      corner(0.16, -0.006, -0.02),
      corner(0.24, -0.018),
      corner(6, -1),
      corner(6, 5),
      corner(0, 5),
    ];
    const found = swallowed(bent);
    expect(found.length).toBeGreaterThanOrEqual(4);
    expect(found).not.toContain(true);
  });

  it('are nooks where a slit goes in that is narrower than the wire', () => {
    const slit = [corner(0, 0), corner(2, 0), corner(2, -1), corner(2.1, -1), corner(2.1, 0), corner(6, 0), corner(6, 5), corner(0, 5)];
    expect(swallowed(slit).filter((s) => s)).toHaveLength(1);
  });
});
