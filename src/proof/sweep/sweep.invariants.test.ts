/** Any chain of lines and arcs: the sweep against exact distances to the chain. */
/** Swept areas keep their laws: never too small by more than stated, the same turned and mirrored. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { distanceToSegment } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { areaOfLoop, isVoid, united } from './metal.ts';
import { RESOLUTION, sweepOf, UNITS_PER_MM } from './sweep.ts';

/** A chain of lines and arcs of any turn, some of them tighter than the wire; each piece begins where the last one ended. */
const chains = fc
  .array(
    fc.record({
      arc: fc.boolean(),
      heading: fc.double({ min: -3.1, max: 3.1, noNaN: true }),
      size: fc.double({ min: 0.05, max: 3, noNaN: true }),
      sweep: fc.double({ min: 0.1, max: 5, noNaN: true }),
      left: fc.boolean(),
    }),
    { minLength: 1, maxLength: 7 },
  )
  .map((steps) => {
    let at: Point = { x: 0, y: 0 };
    return steps.map(({ arc, heading, left, size, sweep }): Segment => {
      const from = at;
      if (!arc) {
        at = { x: from.x + size * Math.cos(heading), y: from.y + size * Math.sin(heading) };
        return { kind: 'line', from, to: at };
      }
      const centre = { x: from.x + size * Math.cos(heading), y: from.y + size * Math.sin(heading) };
      const turn = left ? sweep : -sweep;
      const end = heading + Math.PI + turn;
      at = { x: centre.x + size * Math.cos(end), y: centre.y + size * Math.sin(end) };
      return { kind: 'arc', from, to: at, centre, radius: size, sweep: turn };
    });
  });

describe('the sweep of a wire', () => {
  it('holds exactly the places that the wire comes near enough to', () => {
    fc.assert(
      fc.property(
        chains,
        fc.double({ min: 0.05, max: 0.3, noNaN: true }),
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (chain, radius, dice) => {
          const swept = united([sweepOf(chain, radius)]);
          for (let n = 0; n < 60; n += 1) {
            const near = there(chain[Math.floor(there(dice.next().value) * chain.length) % chain.length]).to;
            const p = { x: near.x + (there(dice.next().value) - 0.5) * 2, y: near.y + (there(dice.next().value) - 0.5) * 2 };
            const distance = Math.min(...chain.map((s) => distanceToSegment(s, p)));
            if (Math.abs(distance - radius) <= RESOLUTION) continue;
            expect(isVoid(swept, p.x * UNITS_PER_MM, p.y * UNITS_PER_MM)).toBe(distance < radius);
          }
        },
      ),
      { seed: 20, numRuns: 400 },
    );
  });

  it('keeps every vertex of its edge at the wire radius from the path, to the resolution', () => {
    fc.assert(
      fc.property(chains, fc.double({ min: 0.05, max: 0.3, noNaN: true }), (chain, radius) => {
        for (const loop of united([sweepOf(chain, radius)])) {
          if (Math.abs(areaOfLoop(loop)) < 1e-4) continue;
          for (const v of loop) {
            const p = { x: v.x / UNITS_PER_MM, y: v.y / UNITS_PER_MM };
            expect(Math.abs(Math.min(...chain.map((s) => distanceToSegment(s, p))) - radius)).toBeLessThanOrEqual(RESOLUTION);
          }
        }
      }),
      { seed: 21, numRuns: 400 },
    );
  });
});
