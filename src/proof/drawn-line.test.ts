/** The proof's own answers on a place and a line: against closed forms, against every segment looked at, and against the turning of a sight line. */
import { describe, expect, it } from 'vitest';
import { seeded } from '../../test/seeded.ts';
import { there } from '../../test/there.ts';
import type { Chain } from '../geometry/contour.ts';
import { distanceToSegment, pointAt } from '../geometry/measure.ts';
import { NASTY_SHAPES } from '../geometry/offset/nasty-shapes.fixture.ts';
import { arc, line, type Point } from '../geometry/segment.ts';
import { distanceFrom, drawnLine, nearestPlace, turnsRound } from './drawn-line.ts';

const ring = (radius: number, turns: 1 | -1): Chain => {
  const east = { x: 3 + radius, y: 4 };
  return { closed: true, segments: [arc(east, east, { x: 3, y: 4 }, turns * 2 * Math.PI)] } as Chain;
};

/** How far the line of sight to a place that runs once along the chain turns, in whole turns; coarse, and slow. */
const turnsSeen = (chain: Chain, p: Point): number => {
  let turned = 0;
  for (const s of chain.segments)
    for (let i = 0; i < 400; i += 1) {
      const [a, b] = [pointAt(s, i / 400), pointAt(s, (i + 1) / 400)];
      const [ax, ay, bx, by] = [a.x - p.x, a.y - p.y, b.x - p.x, b.y - p.y];
      turned += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }
  return Math.round(turned / (2 * Math.PI)) + 0;
};

describe('a drawn line', () => {
  it.each([1, -1] as const)('that is one arc all round knows inside from outside and how far the edge is (%i)', (turns) => {
    const circle = drawnLine(ring(5, turns));
    const places: readonly (readonly [number, number, number])[] = [
      [0, 5, turns],
      [4.999, 0.001, turns],
      [5.001, 0.001, 0],
      [9, 4, 0],
      [2.5, 2.5, turns],
    ];
    for (const angle of [0, 0.5, ...[1, 2, 3, 4].flatMap((k) => [(k * Math.PI) / 2 - 1e-4, (k * Math.PI) / 2 + 1e-4])])
      for (const [from, distance, round] of places) {
        const p = { x: 3 + from * Math.cos(angle), y: 4 + from * Math.sin(angle) };
        expect(distanceFrom(circle, p), `${from} at ${angle}`).toBeCloseTo(distance, 12);
        expect(turnsRound(circle, p), `${from} at ${angle}`).toBe(round);
      }
  });

  it('counts each turn of a line that runs round twice, and none of one that runs there and back', () => {
    const square = (side: number): readonly Point[] => [
      { x: -side, y: -side },
      { x: side, y: -side },
      { x: side, y: side },
      { x: -side, y: side },
    ];
    const through = (points: readonly Point[]): Chain =>
      ({ closed: true, segments: points.map((p, i) => line(p, there(points[(i + 1) % points.length]))) }) as unknown as Chain;
    const twice = drawnLine(through([...square(2), ...square(3)]));
    expect(turnsRound(twice, { x: 0, y: 0 })).toBe(2);
    expect(turnsRound(twice, { x: 2.5, y: -1.1 })).toBe(1);
    expect(turnsRound(drawnLine(through([...square(2), ...square(2).toReversed()])), { x: 0.3, y: 0 })).toBe(0);
  });

  it.each(NASTY_SHAPES.filter((s) => s.contour.segments.length < 200).map((s) => [s.name, s.contour] as const))(
    'answers as if every segment were looked at: %s',
    (name, contour) => {
      const random = seeded(name.length * 7919);
      const drawn = drawnLine(contour);
      const ends = contour.segments.map((s) => s.from);
      const low = { x: Math.min(...ends.map((p) => p.x)), y: Math.min(...ends.map((p) => p.y)) };
      const high = { x: Math.max(...ends.map((p) => p.x)), y: Math.max(...ends.map((p) => p.y)) };
      const size = Math.hypot(high.x - low.x, high.y - low.y);
      for (let i = 0; i < 60; i += 1) {
        // Every fifth place is as high as an end of a segment, where a ray is easily counted twice.
        const p = {
          x: low.x - size / 4 + random() * (high.x - low.x + size / 2),
          y: i % 5 === 0 ? there(ends[i % ends.length]).y : low.y - size / 4 + random() * (high.y - low.y + size / 2),
        };
        const each = contour.segments.map((s) => distanceToSegment(s, p));
        const distance = Math.min(...each);
        expect(distanceFrom(drawn, p)).toBe(distance);
        expect(nearestPlace(drawn, p)).toMatchObject({ distance: expect.closeTo(distance, 12), segment: each.indexOf(distance) });
        if (distance > size / 500) expect(turnsRound(drawn, p), `${p.x}, ${p.y}`).toBe(turnsSeen(contour, p));
      }
    },
  );
});
