/** Gears rolled: against the rack that makes them, against each other, in a ring, on a rack; with an independent polygon library. */
import { describe, expect, it } from 'vitest';
import type { Point } from '../../geometry/segment.ts';
import { codesOf, shaped, sizeIn } from '../made.fixture.ts';
import { fine, generated, outsideOf, overlap, placed, playOf, sector } from './rolling.fixture.ts';

const RAD = Math.PI / 180;

describe('the root that a rack leaves', () => {
  it.each([
    { teeth: 20, shift: 0, pressureAngle: 20, rackTip: 0.38 },
    { teeth: 8, shift: 0, pressureAngle: 20, rackTip: 0.38 },
    { teeth: 12, shift: 0.5, pressureAngle: 20, rackTip: 0.25 },
    { teeth: 15, shift: 0, pressureAngle: 14.5, rackTip: 0.1 },
  ])('%o is what is left of a blank when the rack has rolled round it', ({ teeth, shift, pressureAngle, rackTip }) => {
    const module = 2;
    const gear = shaped({ kind: 'gear', module, teeth, shift, pressureAngle, rackTip, fit: 0.0002 });
    const reference = (module * teeth) / 2;
    const [tip, root] = [sizeIn(gear, 'tip-diameter') / 2, sizeIn(gear, 'root-diameter') / 2];
    const around = placedBack(fine(gear, 3e-5), Math.PI / teeth);
    const blank = sector(circleOf(tip), Math.PI / teeth, tip + 1, root - 0.5);
    const tools = Array.from({ length: 401 }, (_, i) =>
      rolled(rackTooth({ module, shift, pressureAngle, rackTip }), reference, (i / 200 - 1) * 4 * module),
    );
    const { tooMuch, tooLittle } = generated(blank, tools, around);
    // What the rack would still take off, over some 12 mm of outline; and the scallops between its places.
    expect(tooMuch).toBeLessThan(12 * 0.0002);
    expect(tooLittle).toBeLessThan(12 * 0.0004);
  });
});

const circleOf = (radius: number): readonly Point[] =>
  Array.from({ length: 4000 }, (_, i) => ({ x: radius * Math.cos((i * Math.PI) / 2000), y: radius * Math.sin((i * Math.PI) / 2000) }));
const placedBack = (points: readonly Point[], turn: number): readonly Point[] =>
  points.map(({ x, y }) => ({ x: Math.cos(turn) * x - Math.sin(turn) * y, y: Math.sin(turn) * x + Math.cos(turn) * y }));

/** One tooth of the rack, its tip rounded, about the pitch point: x outwards of the gear, y along the rack. */
const rackTooth = (rack: { module: number; shift: number; pressureAngle: number; rackTip: number }): readonly Point[] => {
  const { module, shift, pressureAngle } = rack;
  const alpha = pressureAngle * RAD;
  const half = (Math.PI * module) / 4 - shift * module * Math.tan(alpha);
  const depth = module * (1.25 - shift);
  const tip = rack.rackTip * module;
  const aside = half - (depth - tip) * Math.tan(alpha) - tip / Math.cos(alpha);
  const round = Array.from({ length: 40 }, (_, i) => {
    const a = (i / 39) * (Math.PI / 2 - alpha);
    return { x: -(depth - tip) - tip * Math.cos(a), y: aside + tip * Math.sin(a) };
  });
  const upper = [...round, { x: 1.6 * module, y: half + 1.6 * module * Math.tan(alpha) }];
  return [...upper.map(({ x, y }) => ({ x, y: -y })).toReversed(), ...upper];
};

/** Moved along its rolling line while the reference circle rolls on it, seen from the gear. */
const rolled = (tooth: readonly Point[], reference: number, way: number): readonly Point[] =>
  placedBack(
    tooth.map(({ x, y }) => ({ x: reference + x, y: y + way })),
    -way / reference,
  );

describe('two gears', () => {
  it.each([0.01, 0.04])('roll through a pitch with a play of %f mm and nothing else', (clearance) => {
    const [z1, z2] = [17, 31];
    const one = shaped({ kind: 'gear', module: 2, teeth: z1, clearance, mate: z2 });
    const other = shaped({ kind: 'gear', module: 2, teeth: z2, clearance, share: 0.5 });
    const distance = sizeIn(one, 'centre-distance');
    expect(distance).toBeCloseTo(48, 9);
    // Spaces of the one and teeth of the other lie on the line of centres.
    const a = sector(placedBack(fine(one), Math.PI / z1), 2.4 * (Math.PI / z1), 30);
    const b = sector(fine(other), 2.4 * (Math.PI / z2), 40);
    const base = z1 * Math.cos(20 * RAD);
    for (let i = 0; i < 5; i += 1) {
      const turn = (i / 5 - 0.5) * ((2 * Math.PI) / z1);
      const mate = placed(b, { turn: Math.PI - turn * (z1 / z2), x: distance });
      expect(playOf((by) => overlap(placed(a, { turn: turn + by / base }), mate), 0.05) - clearance).toBeCloseTo(0, 2.4);
    }
  });

  it('with shifted profiles have the play asked for, and no more, at the centre distance that is told', () => {
    const one = shaped({ kind: 'gear', module: 3, teeth: 12, shift: 0.6, mate: 24, mateShift: 0.36, tipDiameter: 44.84, clearance: 0.01 });
    const other = shaped({ kind: 'gear', module: 3, teeth: 24, shift: 0.36, tipDiameter: 79.4, clearance: 0.01 });
    const a = sector(placedBack(fine(one), Math.PI / 12), 2.4 * (Math.PI / 12), 30);
    const mate = placed(sector(fine(other), 2.4 * (Math.PI / 24), 50), { turn: Math.PI, x: sizeIn(one, 'centre-distance') });
    const base = 18 * Math.cos(20 * RAD);
    expect(playOf((by) => overlap(placed(a, { turn: by / base }), mate), 0.05) - 0.01).toBeCloseTo(0, 2.4);
  });

  it.each([
    [{ root: 'rack' }, false],
    [{ root: 'radius', rootRadius: 0.3 }, true],
    [{ root: 'full' }, true],
  ] as const)('%o: ten teeth and a hundred run into each other: %s', (root, runsIn) => {
    const one = shaped({ kind: 'gear', module: 2, teeth: 10, mate: 100, ...root });
    expect(codesOf(one).includes('gear-mate-interferes')).toBe(runsIn);
    const a = sector(placedBack(fine(one, 1e-4), Math.PI / 10), 2.9 * (Math.PI / 10), 30);
    const b = sector(fine(shaped({ kind: 'gear', module: 2, teeth: 100 }), 1e-4), 4.4 * (Math.PI / 100), 120);
    const worst = Array.from({ length: 16 }, (_, i) => (i / 16 - 0.5) * (Math.PI / 5)).reduce(
      (most, turn) => Math.max(most, overlap(placed(a, { turn }), placed(b, { turn: Math.PI - turn / 10, x: 110 }))),
      0,
    );
    expect(worst > 3e-3).toBe(runsIn);
  });
});

describe('a ring', () => {
  it('takes its pinion through a pitch with the play that was asked for', () => {
    const [z1, z2, clearance] = [20, 50, 0.03];
    const ring = shaped({ kind: 'internal-gear', module: 2, teeth: z2, addendum: 0.8, clearance, mate: z1 });
    expect(codesOf(ring)).toEqual([]);
    const distance = sizeIn(ring, 'centre-distance');
    const opening = sector(fine(ring), 5 * (Math.PI / z2), 60);
    const pinion = sector(fine(shaped({ kind: 'gear', module: 2, teeth: z1, clearance })), 2.9 * (Math.PI / z1), 30, 15);
    const base = z1 * Math.cos(20 * RAD);
    for (let i = 0; i < 4; i += 1) {
      const turn = (i / 4 - 0.5) * ((2 * Math.PI) / z1);
      const space = placed(opening, { turn: turn * (z1 / z2) });
      expect(playOf((by) => outsideOf(placed(pinion, { turn: turn + by / base, x: distance }), space), 0.05) - clearance).toBeCloseTo(
        0,
        2.4,
      );
    }
  });

  it.each([
    [20, 1, true],
    [20, 0.8, false],
    [38, 0.8, false],
    [44, 0.8, true],
    [49, 0.8, true],
  ] as const)('of 50 teeth about %i with an addendum of %f: they foul: %s', (z1, addendum, foul) => {
    const ring = shaped({ kind: 'internal-gear', module: 2, teeth: 50, addendum, mate: z1 });
    expect(codesOf(ring).includes('gear-mate-interferes')).toBe(foul);
    const opening = fine(ring, 1e-4);
    const pinion = fine(shaped({ kind: 'gear', module: 2, teeth: z1 }), 1e-4);
    const worst = Array.from({ length: 10 }, (_, i) => (i / 10) * ((2 * Math.PI) / z1)).reduce(
      (most, turn) => Math.max(most, outsideOf(placed(pinion, { turn, x: 50 - z1 }), placed(opening, { turn: turn * (z1 / 50) }))),
      0,
    );
    expect(worst > 4e-3).toBe(foul);
  });
});

describe('a rack', () => {
  it('lets a gear roll with the play that was asked for', () => {
    const [z, clearance] = [22, 0.05];
    const rack = shaped({ kind: 'rack', module: 2, teeth: 6, clearance, mate: z, mateShift: 0.3 });
    expect(codesOf(rack)).toEqual([]);
    const gear = sector(placedBack(fine(shaped({ kind: 'gear', module: 2, teeth: z, shift: 0.3, clearance })), 0), 3 * (Math.PI / z), 30);
    const height = sizeIn(rack, 'centre-distance');
    const bar = fine(rack);
    for (let i = 0; i < 4; i += 1) {
      const turn = (i / 4 - 0.5) * ((2 * Math.PI) / z);
      const wheel = placed(gear, { turn: turn - Math.PI / 2, y: height });
      const play = playOf((by) => overlap(wheel, placed(bar, { x: z * turn + by / Math.cos(20 * RAD) })), 0.06);
      expect(play - clearance).toBeCloseTo(0, 2.4);
    }
  });

  it.each([
    [10, 1, 0.38, false],
    [10, 1.25, 0, true],
    [40, 1, 0.38, false],
    // Beyond its straight flank the rack that cut the gear was rounded.
    [40, 1.2, 0.38, true],
  ] as const)('under %i teeth, addendum %f, roots of %f mm: they run into each other: %s', (z, addendum, rootRadius, runsIn) => {
    const rack = shaped({ kind: 'rack', module: 2, teeth: 6, addendum, rootRadius, mate: z });
    expect(codesOf(rack).includes('gear-mate-interferes')).toBe(runsIn);
    const gear = fine(shaped({ kind: 'gear', module: 2, teeth: z }), 1e-4);
    const bar = fine(rack);
    const worst = Array.from({ length: 16 }, (_, i) => (i / 16 - 0.5) * ((2 * Math.PI) / z)).reduce(
      (most, turn) => Math.max(most, overlap(placed(gear, { turn: turn - Math.PI / 2, y: z }), placed(bar, { x: z * turn }))),
      0,
    );
    expect(worst > 3e-3).toBe(runsIn);
  });
});
