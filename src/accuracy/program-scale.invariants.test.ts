/** A program scaled for temperature gives the drawing back at 20 °C. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundsOfChain } from '../geometry/area.ts';
import { contour } from '../geometry/contour.ts';
import { arc, line, point } from '../geometry/segment.ts';
import { scaling, transformChain } from '../geometry/transform.ts';
import { materials } from '../physics/material/materials.ts';
import { programScale, sizeAtReference } from './program-scale.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the scale of a program', () => {
  it('brings every contour back to its drawing at 20 °C, to a billionth of a millimetre', () => {
    const sizes = fc.record({
      width: number(1, 1000),
      height: number(1, 1000),
      temperature: number(0, 60),
      material: fc.constantFrom(...materials),
    });
    fc.assert(
      fc.property(sizes, ({ width, height, temperature, material }) => {
        const drawn = contour([
          line(point(0, 0), point(width, 0)),
          arc(point(width, 0), point(width, height), point(width, height / 2), Math.PI),
          line(point(width, height), point(0, height)),
          line(point(0, height), point(0, 0)),
        ]);
        const scale = programScale.compute({ expansion: material.expansion.value, temperature });
        const cut = boundsOfChain(transformChain(scaling(scale), drawn));
        const wanted = boundsOfChain(drawn);
        const cooled = (size: number) => sizeAtReference.compute({ size, expansion: material.expansion.value, temperature });
        expect(Math.abs(cooled(cut.maxX - cut.minX) - (wanted.maxX - wanted.minX))).toBeLessThan(1e-9);
        expect(Math.abs(cooled(cut.maxY - cut.minY) - (wanted.maxY - wanted.minY))).toBeLessThan(1e-9);
      }),
      { seed: 20, numRuns: 100 },
    );
  });

  it('cuts a warm block larger and a cold one smaller', () => {
    expect(programScale.compute({ expansion: 11, temperature: 25 })).toBeGreaterThan(1);
    expect(programScale.compute({ expansion: 11, temperature: 15 })).toBeLessThan(1);
    expect(programScale.compute({ expansion: 11, temperature: 20 })).toBe(1);
  });
});
