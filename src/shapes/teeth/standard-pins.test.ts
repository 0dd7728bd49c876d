/** Only pins in stock are proposed: the nearest that fits, those of the diametral pitch first. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { ShapeInput } from '../list/questions.ts';
import { shaped } from '../made.fixture.ts';
import { standardPin } from './standard-pins.ts';

const any = (): boolean => true;

describe('a pin in stock', () => {
  it('is the nearest that fits', () => {
    expect(standardPin(3.99, any)).toBe(4);
    expect(standardPin(3.99, (pin) => pin > 4)).toBe(4.25);
    expect(standardPin(3.99, () => false)).toBeUndefined();
  });

  it('goes with the diametral pitch where one of those fits, and is metric else', () => {
    expect(standardPin(3.65, any, 12)).toBeCloseTo((1.728 * 25.4) / 12, 12);
    expect(standardPin(3.6, (pin) => pin === 3.5, 12)).toBe(3.5);
  });

  const pinOf = (input: ShapeInput): number => {
    const taken = there(
      shaped(input)
        .sizes.map((s) => s.taking)
        .find((t) => t?.kind === 'pins'),
    );
    return taken.kind === 'pins' ? taken.diameter : Number.NaN;
  };

  it('is what every kind of toothed part is measured with', () => {
    expect(pinOf({ kind: 'gear', module: 2, teeth: 20 })).toBe(3.5);
    expect(pinOf({ kind: 'gear', diametralPitch: 12, teeth: 20 })).toBeCloseTo(0.144 * 25.4, 12);
    expect(pinOf({ kind: 'internal-gear', module: 2, teeth: 40 })).toBe(3.25);
    expect(pinOf({ kind: 'spline', module: 2, teeth: 20, part: 'hub' })).toBe(3.5);
    expect(pinOf({ kind: 'spline', module: 2, teeth: 20, part: 'shaft' })).toBe(3.75);
    expect(pinOf({ kind: 'rack', module: 3, teeth: 8 })).toBe(5);
    expect(pinOf({ kind: 'serration', size: '8x10', part: 'shaft' })).toBe(0.6);
  });
});
