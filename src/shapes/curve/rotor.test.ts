/** Rotors turned through a whole cycle among their pins and in their ring; the motion is laid out here, apart from the code that draws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf } from '../../geometry/area.ts';
import { flatten } from '../../geometry/flatten.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import { distanceIn, lookupOf } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import { soundness } from '../../geometry/soundness.ts';
import { fine, outsideOf, overlap, placed } from '../gear/rolling.fixture.ts';
import { makeShape } from '../list/make.ts';
import { type ShapeInput, shapeSchema } from '../list/questions.ts';
import { codesOf, MEANS, shaped, sizeIn } from '../made.fixture.ts';
import type { Shape } from '../shape.ts';
import { leastPathRadius, pathRadius } from './pin-ring.ts';
import { pumpRing } from './pump-ring.ts';

const DRIVE = { kind: 'cycloid-rotor', pins: 12, pinCircle: 80, pinDiameter: 8, eccentricity: 2 } as const;
const PUMP = { kind: 'cycloid-rotor', pins: 7, pinCircle: 50, pinDiameter: 16, eccentricity: 2.5 } as const;

const wallOf = (shape: Shape) => there(shape.outlines[0]).contour;
const turned = ({ x, y }: Point, by: number): Point => ({ x: x * Math.cos(by) - y * Math.sin(by), y: x * Math.sin(by) + y * Math.cos(by) });

/** Where a pin of the ring is, seen from the disc, when its eccentric has turned by an angle. */
const seenFromDisc = (pin: Point, eccentricity: number, lobes: number, orbit: number): Point =>
  turned({ x: pin.x - eccentricity * Math.cos(orbit), y: pin.y - eccentricity * Math.sin(orbit) }, orbit / lobes);

const pinsOf = (count: number, circle: number): readonly Point[] =>
  Array.from({ length: count }, (_, i) => ({
    x: (circle / 2) * Math.cos((2 * Math.PI * i) / count),
    y: (circle / 2) * Math.sin((2 * Math.PI * i) / count),
  }));

/** Nearest and farthest that any pin's middle has from the wall, over a whole cycle of the disc. */
const distances = (shape: Shape, numbers: { pins: number; pinCircle: number; eccentricity: number }, steps: number) => {
  const lobes = numbers.pins - 1;
  const lookup = lookupOf(wallOf(shape));
  const pins = pinsOf(numbers.pins, numbers.pinCircle);
  const all = Array.from({ length: steps }, (_, k) => (2 * Math.PI * lobes * k) / steps).flatMap((orbit) =>
    pins.map((pin) => distanceIn(lookup, seenFromDisc(pin, numbers.eccentricity, lobes, orbit))),
  );
  return { least: Math.min(...all), most: Math.max(...all) };
};

describe('a cycloid disc', () => {
  it.each([
    DRIVE,
    { ...DRIVE, pins: 3, eccentricity: 6, pinDiameter: 20 },
    { ...DRIVE, pins: 40, eccentricity: 0.75, pinDiameter: 4 },
    { ...DRIVE, eccentricity: 0.2 },
  ])('%o touches every pin all the time through a whole cycle', (numbers) => {
    const shape = shaped(numbers);
    const { least, most } = distances(shape, numbers, 197);
    expect(shape.fitDeviation).toBeLessThanOrEqual(0.0005);
    expect(numbers.pinDiameter / 2 - least).toBeLessThanOrEqual(0.0005);
    expect(most - numbers.pinDiameter / 2).toBeLessThanOrEqual(0.0005);
  });

  it.each([
    [0.04, 0.5, 0.02],
    [0.04, 1, 0.04],
    [-0.02, 0.5, -0.01],
  ])('with a clearance of %f mm and a share of %f stands off by %f mm everywhere', (clearance, share, off) => {
    const { least, most } = distances(shaped({ ...DRIVE, clearance, share }), DRIVE, 61);
    expect(least - 4).toBeGreaterThan(off - 0.0005);
    expect(most - 4).toBeLessThan(off + 0.0005);
  });

  it('lies clear of its pins for an independent polygon library, and no longer when it is four micrometres too large', () => {
    const circle = Array.from({ length: 360 }, (_, i) => ({ x: 4 * Math.cos((i * Math.PI) / 180), y: 4 * Math.sin((i * Math.PI) / 180) }));
    const worst = (clearance: number): number => {
      const disc = fine(shaped({ ...DRIVE, clearance, share: 1 }), 1e-4);
      return Math.max(
        ...[0.4, 2.5].map((orbit) => {
          const at = placed(disc, { turn: -orbit / 11, x: 2 * Math.cos(orbit), y: 2 * Math.sin(orbit) });
          return Math.max(...pinsOf(12, 80).map((pin) => overlap(at, placed(circle, pin))));
        }),
      );
    };
    expect(worst(0.001)).toBe(0);
    expect(worst(-0.004)).toBeGreaterThan(5e-4);
  });

  it('follows the equation that is printed for it everywhere', () => {
    const [R, r, e, n] = [40, 4, 2, 12];
    const lookup = lookupOf(wallOf(shaped(DRIVE)));
    for (let i = 0; i < 300; i += 1) {
      const t = (2 * Math.PI * i) / 300;
      const lean = Math.atan(Math.sin((1 - n) * t) / (R / (e * n) - Math.cos((1 - n) * t)));
      const x = R * Math.cos(t) - r * Math.cos(t + lean) - e * Math.cos(n * t);
      const y = R * Math.sin(t) - r * Math.sin(t + lean) - e * Math.sin(n * t);
      expect(distanceIn(lookup, { x, y })).toBeLessThanOrEqual(0.0005);
    }
  });

  it('has lobes that are alike, and alike to both sides', () => {
    const wall = wallOf(shaped(DRIVE));
    const lookup = lookupOf(wall);
    for (const p of flatten(wall, 1e-2)) {
      expect(distanceIn(lookup, turned(p, (2 * Math.PI * 4) / 11))).toBeLessThan(1e-9);
      expect(distanceIn(lookup, { x: p.x, y: -p.y })).toBeLessThan(1e-9);
    }
  });

  it('is sound, with output holes in which the pins go round', () => {
    const shape = shaped({ ...DRIVE, bore: 26, outputPins: 6, outputCircle: 48, outputPin: 6, clearance: 0.02 });
    expect(shape.outlines.length).toBe(8);
    for (const { contour } of shape.outlines) {
      expect(soundness(contour, 1e-9)).toEqual({ kind: 'sound' });
      expect(areaOf(contour)).toBeGreaterThan(0);
      expect(selfCrossings(contour, 1e-6)).toEqual([]);
    }
    expect(sizeIn(shape, 'output-hole')).toBeCloseTo(6 + 4 + 0.02, 12);
    expect(sizeIn(shape, 'reduction')).toBe(11);
    const hole = lookupOf(there(shape.outlines[2]).contour);
    for (const orbit of [0, 1, 2, 3, 4, 5, 6]) {
      const pin = seenFromDisc({ x: 24 * Math.cos(-orbit / 11), y: 24 * Math.sin(-orbit / 11) }, 2, 11, orbit);
      expect(distanceIn(hole, pin)).toBeCloseTo(3.01, 9);
    }
  });

  it.each([11, 12])(
    'with %i pins has the sizes it tells: pins laid into its valleys touch, tops and valleys lie on their circles',
    (pins) => {
      const shape = shaped({ ...DRIVE, pins, clearance: 0.02 });
      const over = there(shape.sizes.find((s) => s.figure.key === 'over-pins'));
      if (over.taking?.kind !== 'pins') throw new Error('it has pins');
      const lookup = lookupOf(wallOf(shape));
      for (const centre of over.taking.centres) expect(distanceIn(lookup, centre)).toBeCloseTo(4, 3);
      const [a, b] = over.taking.centres as [Point, Point];
      expect(over.figure.value).toBeCloseTo(Math.hypot(a.x - b.x, a.y - b.y) + 8, 9);
      const radii = flatten(wallOf(shape), 1e-5).map((p) => Math.hypot(p.x, p.y));
      expect(2 * Math.max(...radii)).toBeCloseTo(sizeIn(shape, 'lobe-diameter'), 3);
      expect(2 * Math.min(...radii)).toBeCloseTo(sizeIn(shape, 'valley-diameter'), 3);
    },
  );
});

describe('the path of the pins', () => {
  it('bends outwards nowhere more closely than the formula says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 90 }), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (pins, part) => {
        const ring = { pins, radius: 40, eccentricity: (40 / pins) * part };
        const bends = Array.from({ length: 1001 }, (_, i) => pathRadius(ring, (Math.PI / (pins - 1)) * (i / 1000))).filter((r) => r > 0);
        const least = Math.min(...bends);
        expect(leastPathRadius.compute(ring)).toBeLessThanOrEqual(least * (1 + 1e-12));
        expect(leastPathRadius.compute(ring)).toBeGreaterThan(least * 0.999 - 1e-3);
      }),
      { seed: 5, numRuns: 60 },
    );
  });
});

describe('the rotors of a gerotor pump', () => {
  it.each([
    PUMP,
    { ...PUMP, pins: 5, eccentricity: 4, pinDiameter: 20 },
    { ...PUMP, pins: 10, eccentricity: 1.8, pinDiameter: 12.5 },
    { ...PUMP, clearance: 0.05 },
  ])('%o turn through a whole cycle without running into each other, and seal at every tooth', (numbers) => {
    const [rotor, ring] = [shaped({ ...numbers, part: 'rotor' }), shaped({ ...numbers, part: 'ring' })];
    expect([...codesOf(rotor), ...codesOf(ring)]).toEqual([]);
    const opening = placed(fine(ring, 1e-4));
    const wall = fine(rotor, 1e-4);
    const lobes = numbers.pins - 1;
    for (let k = 0; k < 10; k += 1) {
      const orbit = (2 * Math.PI * lobes * k) / 10 + 0.1;
      const at = placed(wall, {
        turn: -orbit / lobes,
        x: numbers.eccentricity * Math.cos(orbit),
        y: numbers.eccentricity * Math.sin(orbit),
      });
      // Fitted arcs may overlap by half a micrometre over the few millimetres where walls run beside each other.
      expect(outsideOf(at, opening)).toBeLessThan('clearance' in numbers ? 1e-12 : 2e-3);
    }
    const { least, most } = distances(rotor, numbers, 97);
    const play = 'clearance' in numbers ? 0.025 : 0;
    expect(least).toBeGreaterThan(numbers.pinDiameter / 2 + play - 0.0006);
    expect(most).toBeLessThan(numbers.pinDiameter / 2 + play + 0.0006);
  });

  it('have a ring that is sound, alike all round, with the circles it tells', () => {
    const ring = shaped({ ...PUMP, part: 'ring', outside: 62 });
    const [outside, opening] = [there(ring.outlines[0]), there(ring.outlines[1])];
    expect([outside.metal, opening.metal]).toEqual(['inside', 'outside']);
    expect(soundness(opening.contour, 1e-9)).toEqual({ kind: 'sound' });
    expect(selfCrossings(opening.contour, 1e-6)).toEqual([]);
    const radii = flatten(opening.contour, 1e-6).map((p) => Math.hypot(p.x, p.y));
    expect(2 * Math.max(...radii)).toBeCloseTo(sizeIn(ring, 'root-diameter'), 5);
    expect(2 * Math.min(...radii)).toBeCloseTo(50 - 16, 4);
    expect(ring.insideRadius).toBeCloseTo(sizeIn(ring, 'root-round'), 9);
  });

  it.each([
    [0.3, false],
    [0.4, true],
  ])('with rounds of %f of a tooth in the roots run into each other, by the polygons too: %s', (share, runsIn) => {
    const numbers = { ...PUMP, rootClearance: 0, rootRound: share * 8, fit: 0.0001 };
    expect(refusal({ ...numbers, part: 'ring' })).toEqual(runsIn ? ['rotor-ring-fouls', 'rootRound'] : []);
    const made = pumpRing({ pins: 7, radius: 25, eccentricity: 2.5, tooth: 8, root: 25 + 5 - 8, round: share * 8 });
    if (made.kind !== 'ring') throw new Error(made.kind);
    const opening = placed(flatten(made.contour, 1e-5));
    const wall = fine(shaped({ ...numbers, part: 'rotor' }), 1e-5);
    const worst = Math.max(
      ...Array.from({ length: 16 }, (_, k) => (2 * Math.PI * k) / 16).map((orbit) =>
        outsideOf(placed(wall, { turn: -orbit / 6, x: 2.5 * Math.cos(orbit), y: 2.5 * Math.sin(orbit) }), opening),
      ),
    );
    expect(worst > 2e-3).toBe(runsIn);
  });
});

const refusal = (input: ShapeInput): readonly string[] => {
  const made = makeShape(shapeSchema.parse(input), MEANS);
  if (made.kind === 'made') return [];
  const [first] = made.findings;
  return [first?.code ?? '', first?.place?.kind === 'field' ? first.place.path : ''];
};

describe('rotors that cannot be', () => {
  it.each<[Readonly<Record<string, unknown>>, string, string]>([
    [{ eccentricity: 3.4 }, 'rotor-impossible', 'eccentricity'],
    [{ pinDiameter: 20.8 }, 'rotor-pins-meet', 'pinDiameter'],
    [{ eccentricity: 3, pinDiameter: 18 }, 'rotor-undercut', 'pinDiameter'],
    [{ clearance: 16, share: 1 }, '', ''],
    [{ clearance: -1, share: 1, pinDiameter: 2 }, 'rotor-impossible', 'clearance'],
    [{ bore: 68 }, 'rotor-impossible', 'bore'],
    [{ outputPins: 4 }, 'rotor-impossible', 'outputCircle'],
    [{ outputPins: 4, outputCircle: 50 }, 'rotor-impossible', 'outputPin'],
    [{ outputPins: 12, outputCircle: 40, outputPin: 8 }, 'rotor-impossible', 'outputPins'],
    [{ outputPins: 4, outputCircle: 62, outputPin: 8 }, 'rotor-impossible', 'outputCircle'],
    [{ outputPins: 4, outputCircle: 90, outputPin: 2 }, 'rotor-impossible', 'outputCircle'],
    [{ part: 'ring', pinDiameter: 3 }, 'rotor-impossible', 'pinDiameter'],
    [{ part: 'ring', outside: 70 }, 'rotor-impossible', 'outside'],
  ])('%o: %s at %s', (more, code, path) => {
    const input = { ...DRIVE, ...more } as ShapeInput;
    if (code === '') expect(() => shapeSchema.parse(input)).toThrow();
    else expect(refusal(input)).toEqual([code, path]);
  });

  it('are refused from the very pin on at which the lobes lose their radius', () => {
    const ring = { pins: 12, radius: 40, eccentricity: 2.8 };
    const most = 2 * leastPathRadius.compute(ring);
    const numbers = { ...DRIVE, eccentricity: 2.8 };
    expect(refusal({ ...numbers, pinDiameter: most + 1e-6 })[0]).toBe('rotor-undercut');
    const just = shaped({ ...numbers, pinDiameter: most - 0.02 });
    expect(selfCrossings(wallOf(just), 1e-6)).toEqual([]);
    const { least } = distances(just, numbers, 197);
    expect(least).toBeGreaterThan(most / 2 - 0.0106);
  });

  it('are told where a wall gets thin', () => {
    expect(codesOf(shaped({ ...DRIVE, bore: 66.5 }))).toEqual(['rotor-wall-thin']);
  });

  it('never come out with what is no number', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('disc', 'rotor', 'ring'),
        fc.integer({ min: 3, max: 30 }),
        fc.double({ min: 0.5, max: 500, noNaN: true }),
        fc.double({ min: 0.01, max: 1.2, noNaN: true }),
        fc.double({ min: 0.01, max: 1.2, noNaN: true }),
        fc.double({ min: -0.05, max: 0.2, noNaN: true }),
        (part, pins, pinCircle, thick, off, clearance) => {
          const made = makeShape(
            shapeSchema.parse({
              kind: 'cycloid-rotor',
              part,
              pins,
              pinCircle,
              pinDiameter: thick * pinCircle * Math.sin(Math.PI / pins),
              eccentricity: (off * pinCircle) / 2 / pins,
              clearance,
              fit: 0.01,
            }),
            MEANS,
          );
          if (made.kind === 'refused') expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
          else {
            expect(made.shape.outlines.map((o) => soundness(o.contour, 1e-6).kind)).toEqual(['sound']);
            expect(made.shape.sizes.every((s) => Number.isFinite(s.figure.value))).toBe(true);
            expect(made.shape.outlines.every((o) => selfCrossings(o.contour, 1e-7).length === 0)).toBe(true);
          }
        },
      ),
      { seed: 11, numRuns: 50 },
    );
  });
});
