/** External gears against the equation of the involute, tooth against tooth, and what is refused or warned of. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { Contour } from '../../geometry/contour.ts';
import { distanceToSegment, pointAt } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { soundness } from '../../geometry/soundness.ts';
import { remedyTextOf } from '../../text/finding.fixture.ts';
import type { ShapeInput } from '../list/questions.ts';
import { codesOf, make, refusal, shaped, sizeIn, sizeOf } from '../made.fixture.ts';
import type { Shape } from '../shape.ts';
import { distanceFromInvolute, inv } from '../teeth/involute.ts';

type GearInput = Omit<Extract<ShapeInput, { kind: 'gear' }>, 'kind'>;

const gear = (input: GearInput): Shape => shaped({ kind: 'gear', ...input });
const refused = (input: GearInput) => refusal({ kind: 'gear', ...input });
const teethOf = ({ outlines }: Shape): Contour => there(outlines[0]).contour;

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
    const [form, tip] = [sizeIn(shape, 'form-diameter') / 2, sizeIn(shape, 'tip-diameter') / 2];
    const top =
      input.reliefAmount === undefined ? tip - (input.tipChamfer ?? 0) : (tip + Math.max(sizeIn(shape, 'root-diameter') / 2, base)) / 2;
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
    expect(refused({ teeth: 20 })).toEqual(['gear-size-twice', 'module']);
    expect(refused({ teeth: 20, module: 2, diametralPitch: 12 })).toEqual(['gear-size-twice', 'module']);
    expect(refused({ teeth: 20, module: 2, helix: 15 })).toEqual(['gear-helical', 'helix']);
    expect(refused({ teeth: 12, module: 2, shift: 1 })).toEqual(['gear-pointed', 'shift']);
    expect(refused({ teeth: 20, module: 2, root: 'radius', rootRadius: 3 })).toEqual(['gear-root-too-round', 'rootRadius']);
    expect(refused({ teeth: 20, module: 2, rackTip: 0.9 })).toEqual(['gear-root-too-round', 'rackTip']);
    expect(refused({ teeth: 20, module: 2, bore: 36 })).toEqual(['keyway-impossible', 'bore']);
    expect(refused({ teeth: 20, module: 2, tipDiameter: 30 })).toEqual(['gear-impossible', 'tipDiameter']);
    expect(refused({ teeth: 20, module: 0.1, clearance: 1, share: 1 })).toEqual(['gear-impossible', 'clearance']);
  });

  it('warns of undercut, thin tips, pins beside the flank and mates that run into the root', () => {
    const codes = (input: GearInput): readonly string[] => codesOf(gear(input));
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

  it('is spanned over as many teeth as one wants, where the anvils touch the flanks', () => {
    const over = (spanTeeth: number): number => sizeIn(gear({ module: 2, teeth: 20, spanTeeth }), 'span');
    expect(over(3) - over(2)).toBeCloseTo(2 * Math.PI * Math.cos((20 * Math.PI) / 180), 9);
    expect(sizeIn(gear({ module: 2, teeth: 20 }), 'span')).toBe(over(3));
    expect(refused({ module: 2, teeth: 40, spanTeeth: 2 })).toEqual(['gear-impossible', 'spanTeeth']);
    expect(refused({ module: 2, teeth: 20, spanTeeth: 5 })).toEqual(['gear-impossible', 'spanTeeth']);
    // Where relief begins there is no involute to span any more.
    expect(refused({ module: 2, teeth: 20, spanTeeth: 3, reliefAmount: 0.02, reliefFrom: 40 })).toEqual(['gear-impossible', 'spanTeeth']);
  });

  it('has bore and keyway as a second contour, and says when the wall above them is thin', () => {
    const whole = gear({ module: 2, teeth: 30, bore: 20, keyway: 'DIN 6885-1', boreZone: 'H7' });
    const [teeth, bore] = whole.outlines;
    expect([teeth?.metal, bore?.metal, bore?.layer]).toEqual(['inside', 'outside', 'bore']);
    expect(whole.outlines.map((o) => soundness(o.contour, 1e-9).kind)).toEqual(['sound', 'sound']);
    const hub = shaped({ kind: 'keyway-hub', shaft: 20 });
    for (const key of ['bore', 'key-width-cut', 'across-cut']) {
      expect(sizeIn(whole, key)).toBe(sizeIn(hub, key));
      expect(sizeOf(whole, key)?.limits).toEqual(sizeOf(hub, key)?.limits);
    }
    const farthest = Math.max(...along(there(bore).contour, 40).map((p) => Math.hypot(p.x, p.y)));
    expect(sizeIn(whole, 'root-diameter') / 2 - farthest).toBeCloseTo(sizeIn(whole, 'keyway-wall'), 4);
    expect(codesOf(whole)).toEqual([]);
    expect(codesOf(gear({ module: 2, teeth: 20, bore: 25, keyway: 'DIN 6885-1' }))).toEqual(['bore-wall-thin']);
    expect(codesOf(gear({ module: 2, teeth: 20, bore: 26 }))).toEqual(['bore-wall-thin']);
    expect(refused({ module: 2, teeth: 20, bore: 28, keyway: 'DIN 6885-1' })).toEqual(['keyway-impossible', 'bore']);
    expect(refused({ module: 2, teeth: 20, keyway: 'DIN 6885-1' })).toEqual(['keyway-impossible', 'bore']);
    expect(refused({ module: 2, teeth: 20, bore: 5, keyway: 'ASME B17.1' })).toEqual(['shaft-not-in-table', 'bore']);
    expect(refused({ module: 2, teeth: 20, bore: 12, keyway: 'DIN 6885-1', keywayRadius: 3 })).toEqual([
      'keyway-impossible',
      'keywayRadius',
    ]);
  });
});

describe('tips of rings and racks', () => {
  it('are chamfered, and relieved from where it is said', () => {
    const asked = { kind: 'internal-gear', module: 2, teeth: 50 } as const;
    const [plain, chamfered, relieved] = [asked, { ...asked, tipChamfer: 0.3 }, { ...asked, reliefAmount: 0.03, reliefFrom: 99 }].map((a) =>
      shaped(a),
    );
    const half = Math.PI / 100 + inv((20 * Math.PI) / 180);
    const base = 50 * Math.cos((20 * Math.PI) / 180);
    const off = (s: Shape, low: number, high: number): readonly number[] =>
      along(there(s.outlines[0]).contour, 24)
        .filter((p) => Math.hypot(p.x, p.y) > low && Math.hypot(p.x, p.y) < high)
        .map((p) => {
          const angle = Math.atan2(p.y, p.x);
          const own = angle - (Math.PI / 25) * Math.round(angle / (Math.PI / 25));
          const radius = Math.hypot(p.x, p.y);
          return distanceFromInvolute(
            { x: radius * Math.cos(own), y: radius * Math.sin(own) },
            base,
            Math.sign(own) * half,
            own > 0 ? -1 : 1,
          );
        });
    for (const s of [plain, chamfered, relieved]) expect(soundness(there(there(s).outlines[0]).contour, 1e-9)).toEqual({ kind: 'sound' });
    expect(Math.max(...off(there(chamfered), 48.301, 51))).toBeLessThan(0.00051);
    // In the chamfer the flank is gone: at the tip by its size, less what the flank itself goes over.
    expect(Math.max(...off(there(chamfered), 48.0001, 48.03))).toBeGreaterThan(0.2);
    expect(Math.max(...off(there(relieved), 49.501, 51))).toBeLessThan(0.00051);
    const most = Math.max(...off(there(relieved), 48.0001, 49.5));
    expect(most).toBeGreaterThan(0.0285);
    expect(most).toBeLessThan(0.0305);
    const rack = shaped({ kind: 'rack', module: 2, teeth: 4, reliefAmount: 0.03, reliefFrom: 0.5 });
    expect(soundness(there(rack.outlines[0]).contour, 1e-9)).toEqual({ kind: 'sound' });
    const bare = shaped({ kind: 'rack', module: 2, teeth: 4 });
    expect(sizeIn(bare, 'tip-thickness') - sizeIn(rack, 'tip-thickness')).toBeCloseTo(0.06 / Math.cos((20 * Math.PI) / 180), 9);
    expect(sizeIn(bare, 'tooth-thickness')).toBe(sizeIn(rack, 'tooth-thickness'));
  });

  it('say what has no room', () => {
    expect(refusal({ kind: 'internal-gear', module: 2, teeth: 50, reliefAmount: 0.02, reliefFrom: 120 })).toEqual([
      'gear-impossible',
      'reliefFrom',
    ]);
    expect(refusal({ kind: 'internal-gear', module: 2, teeth: 50, reliefAmount: 0.9 })).toEqual(['gear-impossible', 'reliefAmount']);
    expect(refusal({ kind: 'internal-gear', module: 2, teeth: 50, tipChamfer: 2 })).toEqual(['gear-impossible', 'tipChamfer']);
    expect(refusal({ kind: 'rack', module: 2, teeth: 4, reliefAmount: 0.02, reliefFrom: 3 })).toEqual(['gear-impossible', 'reliefFrom']);
    expect(refusal({ kind: 'rack', module: 2, teeth: 4, reliefAmount: 0.9 })).toEqual(['gear-impossible', 'reliefAmount']);
  });

  it('cannot be helical, and racks say how they can be cut all the same', () => {
    for (const kind of ['gear', 'internal-gear', 'rack'] as const)
      expect(refusal({ kind, module: 2, teeth: 40, helix: 15 })).toEqual(['gear-helical', 'helix']);
    const rack = make({ kind: 'rack', module: 2, teeth: 40, helix: 15 });
    expect(rack.kind === 'refused' && remedyTextOf(rack.findings[0])).toContain('15°');
  });
});
