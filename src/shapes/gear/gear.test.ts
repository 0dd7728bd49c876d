/** Gears against their own equations, against a rack rolled round them, and rolled against each other. */
import { areaPaths, difference, FillRule, intersect, type Path64 } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import type { Contour } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import { distanceToSegment } from '../../geometry/measure.ts';
import { soundness } from '../../geometry/soundness.ts';
import { distanceFromInvolute, inv } from '../involute.ts';
import { makeShape, type ShapeInput, shapeSchema } from '../make.ts';
import type { Shape } from '../shape.ts';

type GearInput = Omit<Extract<ShapeInput, { kind: 'gear' }>, 'kind'>;

const gear = (input: GearInput): Shape => {
  const made = makeShape(shapeSchema.parse({ kind: 'gear', ...input }));
  if (made.kind === 'refused') throw new Error(made.findings[0]?.sentence);
  return made.shape;
};
const refusal = (input: GearInput): readonly [code: string, field: string] => {
  const made = makeShape(shapeSchema.parse({ kind: 'gear', ...input }));
  const place = made.kind === 'refused' ? made.findings[0]?.place : undefined;
  return [made.kind === 'refused' ? (made.findings[0]?.code ?? '') : 'made', place?.kind === 'field' ? place.path : ''];
};
const teethOf = ({ outlines }: Shape): Contour => outlines[0]!.contour;
const sizeOf = ({ sizes }: Shape, key: string): number => sizes.find((s) => s.figure.key === key)?.figure.value ?? Number.NaN;

const NANO = 1e6;
const nano = (points: readonly { readonly x: number; readonly y: number }[]): Path64 =>
  points.map(({ x, y }) => ({ x: Math.round(x * NANO), y: Math.round(y * NANO) }));

/** Finely flattened, turned and moved, in nanometres. */
const placed = (contour: Contour, turn: number, x = 0): Path64 => {
  const [c, n] = [Math.cos(turn), Math.sin(turn)];
  return nano(flatten(contour, 1e-5).map((p) => ({ x: c * p.x - n * p.y + x, y: n * p.x + c * p.y })));
};
/** mm² */
const overlap = (a: Path64, b: Path64): number => Math.abs(areaPaths(intersect([a], [b], FillRule.NonZero))) / NANO ** 2;

const SHAPES: readonly GearInput[] = [
  { module: 2, teeth: 20 },
  { module: 2, teeth: 9 },
  { module: 3, teeth: 24, shift: 0.4 },
  { module: 2, teeth: 13, shift: 0.6 },
  { diametralPitch: 12, teeth: 31, pressureAngle: 14.5 },
  { module: 0.5, teeth: 120, pressureAngle: 25, rackTip: 0.2 },
  { module: 2, teeth: 20, root: 'full' },
  { module: 2, teeth: 60, root: 'radius', rootRadius: 0.3 },
  { module: 2, teeth: 20, tipChamfer: 0.2, bore: 10 },
  { module: 2, teeth: 20, reliefAmount: 0.02 },
];

describe('a spur gear', () => {
  it.each(SHAPES)('%o is sound, alike tooth for tooth, and keeps to the involute within what it says', (input) => {
    const shape = gear(input);
    const contour = teethOf(shape);
    expect(soundness(contour, 1e-9)).toEqual({ kind: 'sound' });
    const z = input.teeth;
    const module = input.module ?? 25.4 / (input.diametralPitch as number);
    const angle = ((input.pressureAngle ?? 20) * Math.PI) / 180;
    const base = ((module * z) / 2) * Math.cos(angle);
    const half = Math.PI / (2 * z) + (2 * (input.shift ?? 0) * Math.tan(angle)) / z + inv(angle);
    const [form, tip] = [sizeOf(shape, 'form-diameter') / 2, sizeOf(shape, 'tip-diameter') / 2];
    const top =
      input.reliefAmount === undefined ? tip - (input.tipChamfer ?? 0) : (tip + Math.max(sizeOf(shape, 'root-diameter') / 2, base)) / 2;
    let seen = 0;
    for (const p of flatten(contour, 1e-6)) {
      const radius = Math.hypot(p.x, p.y);
      if (radius < form + 1e-3 || radius > top - 1e-3) continue;
      const pitch = (2 * Math.PI) / z;
      const tooth = Math.atan2(p.y, p.x) - pitch * Math.round(Math.atan2(p.y, p.x) / pitch);
      const off = distanceFromInvolute(
        { x: radius * Math.cos(tooth), y: radius * Math.sin(tooth) },
        base,
        Math.sign(tooth) * half,
        tooth > 0 ? -1 : 1,
      );
      expect(off).toBeLessThan(0.0005 + 2e-6);
      seen += 1;
    }
    expect(seen).toBeGreaterThan(20 * z);
    expect(shape.fitDeviation).toBeLessThanOrEqual(0.0005);
  });

  it('has as many equal teeth as it says: turned by one pitch it is the same', () => {
    const contour = teethOf(gear({ module: 2, teeth: 17 }));
    expect(contour.segments.length % 17).toBe(0);
    for (const p of placed(contour, (2 * Math.PI) / 17).filter((_, i) => i % 50 === 0))
      expect(Math.min(...contour.segments.map((s) => distanceToSegment(s, { x: p.x / NANO, y: p.y / NANO })))).toBeLessThan(2e-5);
  });

  it.each([
    { module: 2, teeth: 20 },
    { module: 2, teeth: 8 },
    { module: 2, teeth: 12, shift: 0.5 },
  ])('%o has the root that a rack leaves which rolls round it', (input) => {
    const module = input.module;
    const shift = input.shift ?? 0;
    const reference = (module * input.teeth) / 2;
    const contour = teethOf(gear({ ...input, fit: 0.0001 }));
    const tan = Math.tan((20 * Math.PI) / 180);
    const half = (Math.PI * module) / 4 - shift * module * tan;
    const depth = module * (1.25 - shift);
    const tip = 0.38 * module;
    // One tooth of the rack, its tip rounded, about the pitch point: x outwards of the gear, y along the rack.
    const aside = half - (depth - tip) * tan - tip / Math.cos((20 * Math.PI) / 180);
    const round = Array.from({ length: 90 }, (_, i) => {
      const a = (i / 89) * ((70 * Math.PI) / 180);
      return { x: -(depth - tip) - tip * Math.cos(a), y: aside + tip * Math.sin(a) };
    });
    const upper = [...round, { x: 0.8 * module, y: half + 0.8 * module * tan }];
    const rack = [...upper.map(({ x, y }) => ({ x, y: -y })).toReversed(), ...upper];
    let cut: Path64[] = [placed(contour, Math.PI / input.teeth)];
    const whole = areaPaths(cut);
    for (let i = -120; i <= 120; i += 1) {
      const turn = (i / 120) * (Math.PI / 3) * (20 / input.teeth);
      const at = rack.map(({ x, y }) => {
        const [px, py] = [reference + x, y + reference * turn];
        return { x: px * Math.cos(-turn) - py * Math.sin(-turn), y: px * Math.sin(-turn) + py * Math.cos(-turn) };
      });
      cut = difference(cut, [nano(at)], FillRule.NonZero);
    }
    // The rack takes nothing off the finished gear: that would be metal left in the root.
    expect(Math.abs(whole - areaPaths(cut)) / NANO ** 2).toBeLessThan(2e-4);
  });

  it('rolls with its mate through a pitch without overlap, and with the play that was asked for', () => {
    for (const clearance of [0, 0.04]) {
      const one = gear({ module: 2, teeth: 17, clearance, mate: 31 });
      const other = gear({ module: 2, teeth: 31, clearance });
      const distance = sizeOf(one, 'centre-distance');
      expect(distance).toBeCloseTo(48, 9);
      const base = 17 * Math.cos((20 * Math.PI) / 180);
      const apart = (turn: number, play: number): number =>
        overlap(placed(teethOf(one), Math.PI / 17 + turn + play / base), placed(teethOf(other), Math.PI - turn * (17 / 31), distance));
      for (let i = 0; i < 12; i += 1) {
        const turn = ((i / 12) * 2 * Math.PI) / 17;
        // Turned to either side by half of the play the flanks just touch; a little more and they press.
        for (const side of [-1, 1]) {
          expect(apart(turn, (side * clearance) / 2)).toBeLessThan(1e-3);
          expect(apart(turn, side * (clearance / 2 + 0.03))).toBeGreaterThan(5e-3);
        }
      }
    }
  });

  it('says what it refuses, and which number is to blame', () => {
    expect(refusal({ teeth: 20 })).toEqual(['gear-size-twice', 'module']);
    expect(refusal({ teeth: 20, module: 2, diametralPitch: 12 })).toEqual(['gear-size-twice', 'module']);
    expect(refusal({ teeth: 20, module: 2, helix: 15 })).toEqual(['gear-helical', 'helix']);
    expect(refusal({ teeth: 12, module: 2, shift: 1 })).toEqual(['gear-pointed', 'shift']);
    expect(refusal({ teeth: 20, module: 2, root: 'radius', rootRadius: 3 })).toEqual(['gear-root-too-round', 'rootRadius']);
    expect(refusal({ teeth: 20, module: 2, rackTip: 0.9 })).toEqual(['gear-root-too-round', 'rackTip']);
    expect(refusal({ teeth: 20, module: 2, bore: 36 })).toEqual(['gear-impossible', 'bore']);
    expect(refusal({ teeth: 20, module: 2, tipDiameter: 30 })).toEqual(['gear-impossible', 'tipDiameter']);
    expect(refusal({ teeth: 20, module: 0.1, clearance: 1, share: 1 })).toEqual(['gear-impossible', 'clearance']);
  });

  it('warns of undercut, thin tips, pins beside the flank and mates that run into the root', () => {
    const codes = (input: GearInput): readonly string[] => gear(input).findings.map((f) => f.code);
    expect(codes({ module: 2, teeth: 18 })).toEqual([]);
    expect(codes({ module: 2, teeth: 16 })).toEqual(['gear-undercut']);
    expect(codes({ module: 2, teeth: 16, shift: 0.1 })).toEqual([]);
    expect(codes({ module: 2, teeth: 14, shift: 0.75 })).toEqual(['gear-tip-thin']);
    expect(codes({ module: 2, teeth: 20, pin: 2 })).toEqual(['gear-pin-off-flank']);
    // What a rack has cut lets every mate of the same rack through; radial feet with small rounds do not.
    expect(codes({ module: 2, teeth: 10, mate: 100 })).toEqual(['gear-undercut']);
    expect(codes({ module: 2, teeth: 10, mate: 100, root: 'radius', rootRadius: 0.3 })).toEqual(['gear-mate-interferes']);
    expect(codes({ module: 2, teeth: 20, root: 'radius', rootRadius: 0.01 })).toEqual(['gear-root-sharp']);
    expect(codes({ module: 2, teeth: 20, pin: 3 })).toEqual(['gear-pin-off-flank']);
    expect(codes({ module: 2, teeth: 8, mate: 8, addendum: 0.7 })).toContain('gear-contact-short');
  });
});
