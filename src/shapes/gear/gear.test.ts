/** External gears against the equation of the involute, tooth against tooth, and what is refused or warned of. */
import { describe, expect, it } from 'vitest';
import type { Contour } from '../../geometry/contour.ts';
import { distanceToSegment, pointAt } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
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

/** Places all along, `each` on every segment. */
const along = ({ segments }: Contour, each: number): readonly Point[] =>
  segments.flatMap((segment) => Array.from({ length: each }, (_, i) => pointAt(segment, i / each)));

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
    let [seen, most] = [0, 0];
    const pitch = (2 * Math.PI) / z;
    for (const p of along(contour, 24)) {
      const radius = Math.hypot(p.x, p.y);
      if (radius < form + 1e-3 || radius > top - 1e-3) continue;
      const tooth = Math.atan2(p.y, p.x) - pitch * Math.round(Math.atan2(p.y, p.x) / pitch);
      const there = { x: radius * Math.cos(tooth), y: radius * Math.sin(tooth) };
      most = Math.max(most, distanceFromInvolute(there, base, Math.sign(tooth) * half, tooth > 0 ? -1 : 1));
      seen += 1;
    }
    expect(seen).toBeGreaterThan(40 * z);
    expect(most).toBeLessThan(0.0005 + 1e-9);
    // The fitting samples as well, at other places.
    expect(most).toBeLessThan(1.01 * shape.fitDeviation);
    expect(shape.fitDeviation).toBeLessThanOrEqual(0.0005);
  });

  it('has as many equal teeth as it says: turned by one pitch it is the same', () => {
    const contour = teethOf(gear({ module: 2, teeth: 17 }));
    expect(contour.segments.length % 17).toBe(0);
    const [c, n] = [Math.cos((2 * Math.PI) / 17), Math.sin((2 * Math.PI) / 17)];
    const off = along(contour, 3).map(({ x, y }) => {
      const next = { x: c * x - n * y, y: n * x + c * y };
      return Math.min(...contour.segments.map((s) => distanceToSegment(s, next)));
    });
    expect(Math.max(...off)).toBeLessThan(1e-9);
    // And each tooth is its own mirror image.
    expect(
      Math.max(...along(contour, 2).map(({ x, y }) => Math.min(...contour.segments.map((s) => distanceToSegment(s, { x, y: -y }))))),
    ).toBeLessThan(1e-9);
  });

  it('says what it refuses, and which number is to blame', () => {
    expect(refusal({ teeth: 20 })).toEqual(['gear-size-twice', 'module']);
    expect(refusal({ teeth: 20, module: 2, diametralPitch: 12 })).toEqual(['gear-size-twice', 'module']);
    expect(refusal({ teeth: 20, module: 2, helix: 15 })).toEqual(['gear-helical', 'helix']);
    expect(refusal({ teeth: 12, module: 2, shift: 1 })).toEqual(['gear-pointed', 'shift']);
    expect(refusal({ teeth: 20, module: 2, root: 'radius', rootRadius: 3 })).toEqual(['gear-root-too-round', 'rootRadius']);
    expect(refusal({ teeth: 20, module: 2, rackTip: 0.9 })).toEqual(['gear-root-too-round', 'rackTip']);
    expect(refusal({ teeth: 20, module: 2, bore: 36 })).toEqual(['keyway-impossible', 'bore']);
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
