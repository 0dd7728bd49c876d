/** Spirals against their own equations, and refused or told of where turns, ends or stiffness give out. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf } from '../../geometry/area.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import { distanceIn, lookupOf } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import { soundness } from '../../geometry/soundness.ts';
import { makeShape } from '../list/make.ts';
import { type ShapeInput, shapeSchema } from '../list/questions.ts';
import { codesOf, MEANS, shaped, sizeIn } from '../made.fixture.ts';
import { spiralContour } from './spiral-contour.ts';
import { archimedean } from './spiral-lines.ts';

const PLAIN = { kind: 'spiral', innerRadius: 4, pitch: 3, turns: 4, width: 1 } as const;
const LOGARITHMIC = { kind: 'spiral', form: 'logarithmic', innerRadius: 4, growth: 1.5, turns: 4, width: 1 } as const;

/** The middle line by the plain equation, for each form: from 0 to 1 along the turns. */
const MIDDLES: readonly (readonly [ShapeInput, (t: number) => Point])[] = [
  [PLAIN, (t) => polar(4 + 3 * 4 * t, 2 * Math.PI * 4 * t)],
  [{ ...PLAIN, innerRadius: 0, width: 0.4 }, (t) => polar(3 * 4 * t, 2 * Math.PI * 4 * t)],
  [LOGARITHMIC, (t) => polar(4 * 1.5 ** (4 * t), 2 * Math.PI * 4 * t)],
  [
    { ...PLAIN, form: 'involute' },
    (t) => {
      const base = 3 / (2 * Math.PI);
      const roll = Math.sqrt((4 / base) ** 2 - 1) + 2 * Math.PI * 4 * t;
      return { x: base * (Math.cos(roll) + roll * Math.sin(roll)), y: base * (Math.sin(roll) - roll * Math.cos(roll)) };
    },
  ],
];
const polar = (radius: number, angle: number): Point => ({ x: radius * Math.cos(angle), y: radius * Math.sin(angle) });

const refusal = (input: ShapeInput): readonly string[] => {
  const made = makeShape(shapeSchema.parse(input), MEANS);
  if (made.kind === 'made') return [];
  const [first] = made.findings;
  return [first?.code ?? '', first?.place?.kind === 'field' ? first.place.path : ''];
};

describe('a spiral', () => {
  it.each(MIDDLES)('%o keeps half its width from the middle line of its equation, on both sides, to its ends', (input, middle) => {
    const shape = shaped(input);
    const contour = there(shape.outlines[0]).contour;
    expect(soundness(contour, 1e-9)).toEqual({ kind: 'sound' });
    expect(selfCrossings(contour, 1e-6)).toEqual([]);
    const lookup = lookupOf(contour);
    const half = (input as { width: number }).width / 2;
    for (let i = 0; i <= 150; i += 1) expect(Math.abs(distanceIn(lookup, middle(i / 150)) - half)).toBeLessThanOrEqual(0.0005);
    // What is as wide as that everywhere, with half circles at its ends, has this area.
    expect(areaOf(contour) / (sizeIn(shape, 'length') * 2 * half + Math.PI * half ** 2)).toBeCloseTo(1, 4);
  });

  it('of the involute kind has turns that are a pitch apart everywhere', () => {
    const shape = shaped({ ...PLAIN, form: 'involute', fit: 0.0001 });
    expect(sizeIn(shape, 'between-turns')).toBeCloseTo(2, 3);
    expect(sizeIn(shaped({ ...PLAIN, fit: 0.0001 }), 'between-turns')).toBeLessThan(1.99);
  });

  it.each(['counter-clockwise', 'clockwise'] as const)('winds outwards %s', (turning) => {
    const shape = shaped({ ...PLAIN, turns: 4.25, turning });
    expect(areaOf(there(shape.outlines[0]).contour)).toBeGreaterThan(0);
    const end = shape.sizes.find((s) => s.figure.key === 'outer-radius')?.taking;
    expect(end?.kind === 'distance' ? end.to.y : 0).toBeCloseTo(turning === 'clockwise' ? -16.75 : 16.75, 9);
  });

  it('ends round or square, and stands back by its share of the clearance there as well', () => {
    const slot = shaped({ ...PLAIN, ends: 'square', clearance: 0.2, share: 0.5 });
    expect(sizeIn(slot, 'width')).toBeCloseTo(1.2, 12);
    expect(slot.insideRadius).toBe(0);
    const strip = shaped({ ...PLAIN, metal: 'inside', clearance: 0.2, share: 0.5 });
    expect(sizeIn(strip, 'width')).toBeCloseTo(0.8, 12);
    const ends = [slot, shaped({ ...PLAIN, ends: 'square' })].map((s) => areaOf(there(s.outlines[0]).contour) / sizeIn(s, 'width'));
    expect(there(ends[0]) - there(ends[1])).toBeCloseTo(0.2, 2);
  });

  it('has an eye for a start hole where it begins, and is the same beyond it', () => {
    const [plain, eyed] = [shaped(PLAIN), shaped({ ...PLAIN, eyeDiameter: 3 })];
    const contour = there(eyed.outlines[0]).contour;
    expect(soundness(contour, 1e-9)).toEqual({ kind: 'sound' });
    expect(selfCrossings(contour, 1e-6)).toEqual([]);
    const lookup = lookupOf(contour);
    expect(distanceIn(lookup, { x: 4, y: 0 })).toBeCloseTo(1.5, 6);
    expect(areaOf(contour) - areaOf(there(plain.outlines[0]).contour)).toBeCloseTo(Math.PI * 2.25 - (Math.PI * 0.25) / 2 - 1.5, 0);
    expect(distanceIn(lookup, polar(10, 4 * Math.PI))).toBeCloseTo(0.5, 3);
  });

  it.each<[Readonly<Record<string, unknown>>, string, string]>([
    [{ width: 3 }, 'spiral-turns-touch', 'width'],
    [{ width: 2.9, clearance: 0.2 }, 'spiral-turns-touch', 'width'],
    [{ innerRadius: 0, width: 2.7 }, 'spiral-impossible', 'innerRadius'],
    [{ innerRadius: 1, width: 2.8 }, 'spiral-impossible', 'innerRadius'],
    [{ innerRadius: 1.7, width: 2.98 }, 'spiral-turns-touch', 'width'],
    [{ pitch: undefined }, 'spiral-impossible', 'pitch'],
    [{ form: 'logarithmic' }, 'spiral-impossible', 'growth'],
    [{ form: 'logarithmic', growth: 2, innerRadius: 0 }, 'spiral-impossible', 'innerRadius'],
    [{ form: 'logarithmic', growth: 1.1 }, 'spiral-turns-touch', 'width'],
    [{ form: 'involute', innerRadius: 0.4 }, 'spiral-impossible', 'innerRadius'],
    [{ form: 'involute', innerRadius: 0.5, width: 1 }, 'spiral-impossible', 'innerRadius'],
    [{ eyeDiameter: 1 }, 'spiral-impossible', 'eyeDiameter'],
    [{ eyeDiameter: 40 }, 'spiral-impossible', 'eyeDiameter'],
    [{ eyeDiameter: 7 }, 'spiral-turns-touch', 'width'],
    [{ metal: 'inside', clearance: 2 }, 'spiral-impossible', 'clearance'],
  ])('with %o is refused: %s at %s', (more, code, path) => {
    expect(refusal({ ...PLAIN, ...more } as ShapeInput)).toEqual([code, path]);
  });

  it('stops where it would take more arcs than are allowed', () => {
    expect(spiralContour(archimedean(4, 3, 4), { half: 0.5, ends: 'round' }, 0.0005, 40)).toEqual({ kind: 'too many arcs' });
  });

  it('says where a wall is thin and that a long strip springs', () => {
    expect(codesOf(shaped({ ...PLAIN, width: 2.8 }))).toEqual(['spiral-wall-thin', 'spiral-springs']);
    expect(codesOf(shaped({ ...PLAIN, metal: 'inside' }))).toEqual(['spiral-springs']);
    expect(codesOf(shaped({ ...PLAIN, turns: 0.5, width: 2, metal: 'inside' }))).toEqual([]);
    expect(codesOf(shaped({ ...PLAIN, turns: 0.9 }))).toEqual([]);
  });

  it('never comes out crossing itself or with what is no number', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('archimedean', 'logarithmic', 'involute'),
        fc.constantFrom('round', 'square'),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.05, max: 4, noNaN: true }),
        fc.double({ min: 0.01, max: 1.1, noNaN: true }),
        fc.double({ min: -0.1, max: 0.1, noNaN: true }),
        (form, ends, innerRadius, pitch, turns, part, clearance) => {
          const made = makeShape(
            shapeSchema.parse({
              kind: 'spiral',
              form,
              ends,
              innerRadius,
              pitch,
              growth: 1 + pitch / 8,
              turns,
              width: part * pitch,
              clearance,
              fit: 0.01,
            }),
            MEANS,
          );
          if (made.kind === 'refused') expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
          else {
            expect(soundness(there(made.shape.outlines[0]).contour, 1e-6)).toEqual({ kind: 'sound' });
            expect(areaOf(there(made.shape.outlines[0]).contour)).toBeGreaterThan(0);
            expect(made.shape.sizes.every((s) => Number.isFinite(s.figure.value))).toBe(true);
          }
        },
      ),
      { seed: 4, numRuns: 50 },
    );
  });
});
