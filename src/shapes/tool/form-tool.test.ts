/** Points of tools against the grooves they have to cut, set up as they say: tilted, raked, at the height of the axis. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf, boundsOfChain } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { pointAt } from '../../geometry/measure.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import type { Point } from '../../geometry/segment.ts';
import { soundness } from '../../geometry/soundness.ts';
import { makeShape } from '../list/make.ts';
import { type ShapeInput, shapeSchema } from '../list/questions.ts';
import { codesOf, MEANS, shaped, sizeIn } from '../made.fixture.ts';
import { FORM_NAMES } from './thread-forms.ts';

const RAD = Math.PI / 180;
const ACME = { kind: 'form-tool', form: 'acme', threadsPerInch: 5 } as const;
const outline = (input: ShapeInput): Contour => there(shaped(input).outlines[0]).contour;
const refusal = (input: ShapeInput): readonly string[] => {
  const made = makeShape(shapeSchema.parse(input), MEANS);
  if (made.kind === 'made') return [];
  const [first] = made.findings;
  return [first?.code ?? '', first?.place?.kind === 'field' ? first.place.path : ''];
};

/**
 * What a blank cuts into round work: each place of its profile as far along the walls, seen from the tip, as the blank has it. The rake
 * face through the tip and the wall through the place meet where it cuts; the distance from the axis is the radius it leaves.
 */
const cutBy = (tool: Contour, setting: { tilt: number; rake: number; radius: number }) =>
  dense(tool).map(({ x, y }) => {
    const [tilt, rake] = [setting.tilt * RAD, setting.rake * RAD];
    // Across the walls: (cos tilt, sin tilt); along them: (sin tilt, -cos tilt). Face: (cos rake, -sin rake).
    const along = -y / Math.cos(tilt + rake);
    return { x, depth: Math.hypot(setting.radius + along * Math.cos(rake), along * Math.sin(rake)) - setting.radius };
  });

/** Places all along a contour, on lines as well. */
const dense = (tool: Contour): readonly Point[] => tool.segments.flatMap((s) => Array.from({ length: 60 }, (_, i) => pointAt(s, i / 60)));

describe('a form tool', () => {
  it.each(FORM_NAMES)('%s is sound, its tip at nought, its shank below', (form) => {
    const numbers = form === 'v' ? { includedAngle: 60, depth: 2, noseRadius: 0.2 } : { pitch: 4 };
    const tool = outline({ kind: 'form-tool', form, ...numbers });
    expect(soundness(tool, 1e-9)).toEqual({ kind: 'sound' });
    expect(areaOf(tool)).toBeGreaterThan(0);
    expect(selfCrossings(tool, 1e-6)).toEqual([]);
    const box = boundsOfChain(tool);
    expect([box.maxY, box.minY]).toEqual([expect.closeTo(0, 9), -60]);
    expect(box.maxX - box.minX).toBeCloseTo(12, 9);
  });

  it('leaves the clearance above the shoulders and their radius as the only inside corner', () => {
    const tool = shaped(ACME);
    expect(tool.insideRadius).toBeCloseTo(1, 9);
    expect(sizeIn(tool, 'reach')).toBeCloseTo(1.25 * 2.794, 9);
    expect(shaped({ ...ACME, shoulderRadius: 0 }).insideRadius).toBe(0);
    expect(shaped({ ...ACME, shankWidth: 4 }).insideRadius).toBeCloseTo(0.2, 9);
    // The flanks run on into the sides of a narrow shank.
    expect(shaped({ ...ACME, shankWidth: 3.3 }).insideRadius).toBeUndefined();
  });

  it.each([
    [12, 0, 20],
    [8, 6, 12],
    [6, -5, 12],
    [0, 10, 5],
  ])('tilted by %f° with a rake of %f° on work of R %f mm leaves the groove that it says', (tilt, rake, radius) => {
    const tool = outline({ ...ACME, clearanceAngle: tilt, rakeAngle: rake, minorDiameter: 2 * radius });
    const half = sizeIn(shaped(ACME), 'point-width') / 2;
    const cut = cutBy(tool, { tilt, rake, radius }).filter(({ depth }) => depth > 1e-3 && depth < 2.8);
    expect(cut.length).toBeGreaterThan(40);
    for (const { x, depth } of cut) expect(Math.abs(x) - depth * Math.tan(14.5 * RAD) - half).toBeCloseTo(0, 3);
    const straight = cutBy(outline(ACME), { tilt, rake, radius }).filter(({ depth }) => depth > 2 && depth < 4);
    expect(straight.some(({ x, depth }) => Math.abs(Math.abs(x) - depth * Math.tan(14.5 * RAD) - half) > 0.005)).toBe(true);
  });

  it('keeps a round nose round in the work', () => {
    const numbers = { kind: 'form-tool', form: 'v', includedAngle: 60, depth: 3, noseRadius: 0.6 } as const;
    const tool = outline({ ...numbers, clearanceAngle: 15, fit: 0.0001 });
    const nose = cutBy(tool, { tilt: 15, rake: 0, radius: 1 }).filter(({ depth }) => depth < 0.29);
    expect(nose.length).toBeGreaterThan(10);
    for (const { x, depth } of nose) expect(Math.hypot(x, depth - 0.6)).toBeCloseTo(0.6, 3);
  });

  it('has flanks at the angle it tells, and at the right width where it tells it', () => {
    const tool = shaped({ ...ACME, clearanceAngle: 10 });
    expect(sizeIn(tool, 'included-angle')).toBeCloseTo((2 * Math.atan(Math.tan(14.5 * RAD) / Math.cos(10 * RAD))) / RAD, 9);
    for (const key of ['width-at-pitch-line', 'width-at-depth']) {
      const size = there(tool.sizes.find((s) => s.figure.key === key));
      if (size.taking?.kind !== 'distance') throw new Error('it is drawn');
      const { from, to } = size.taking;
      expect(to.x - from.x).toBeCloseTo(size.figure.value, 9);
      expect(from.y).toBeCloseTo(to.y, 12);
    }
    expect(sizeIn(tool, 'width-at-pitch-line')).toBeCloseTo(2.54, 9);
  });

  it('turns the steep flank of a buttress to the side that is asked for', () => {
    const beside = (loadFlank: 'left' | 'right') => {
      const at = shaped({ kind: 'form-tool', form: 'buttress-7-45', pitch: 4, loadFlank }).sizes.find(
        (s) => s.figure.key === 'width-at-depth',
      )?.taking;
      if (at?.kind !== 'distance') throw new Error('it is drawn');
      return [-at.from.x, at.to.x] as const;
    };
    const [a, b] = [beside('left'), beside('right')];
    expect(b[0]).toBeGreaterThan(3 * b[1]);
    expect([a[0] - b[1], a[1] - b[0]]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    const tip = dense(outline({ kind: 'form-tool', form: 'buttress-7-45', pitch: 4 })).filter((p) => p.y > -2 && p.y < -1);
    // Seen with the tip upwards the 7° flank is the right one.
    expect(Math.max(...tip.map((p) => p.x)) - Math.min(...tip.filter((p) => p.x > 0).map((p) => p.x))).toBeCloseTo(Math.tan(7 * RAD), 2);
  });

  it('stands back from its walls by its share of the clearance', () => {
    const [plain, less] = [outline(ACME), outline({ ...ACME, clearance: 0.1, share: 0.5 })];
    const reach = (c: Contour): number =>
      Math.max(...c.segments.filter((s) => s.from.y > -1e-9 && s.to.y > -1e-9).map((s) => Math.abs(s.from.x)));
    // A wall 0.05 mm further in, and a tip as far back: square to the flank.
    expect((reach(plain) - reach(less) + 0.05 * Math.tan(14.5 * RAD)) * Math.cos(14.5 * RAD)).toBeCloseTo(0.05, 9);
  });

  it('says what straight walls, rake and rounds mean', () => {
    expect(codesOf(shaped(ACME))).toEqual(['form-tool-front-clearance']);
    expect(codesOf(shaped({ ...ACME, clearanceAngle: 10 }))).toEqual(['form-tool-front-clearance']);
    expect(codesOf(shaped({ ...ACME, clearanceAngle: 10, minorDiameter: 20 }))).toEqual([
      'form-tool-front-clearance',
      'form-tool-side-rubs',
    ]);
    expect(codesOf(shaped({ kind: 'form-tool', form: 'square', pitch: 4, clearanceAngle: 10 }))).toContain('form-tool-side-rubs');
    expect(codesOf(shaped({ ...ACME, rakeAngle: 8, minorDiameter: 400 }))).toContain('form-tool-rake-skews');
    expect(codesOf(shaped({ kind: 'form-tool', form: 'trapezoidal', pitch: 4, noseRadius: 0.3 }))).toContain('form-tool-nose-round');
  });

  it.each<[Readonly<Record<string, unknown>>, string, string]>([
    [{ threadsPerInch: undefined }, 'form-tool-incomplete', 'pitch'],
    [{ pitch: 5 }, 'form-tool-incomplete', 'threadsPerInch'],
    [{ form: 'v', depth: 2 }, 'form-tool-incomplete', 'includedAngle'],
    [{ form: 'v', includedAngle: 60 }, 'form-tool-incomplete', 'depth'],
    [{ rakeAngle: 5 }, 'form-tool-incomplete', 'minorDiameter'],
    [{ depth: 8 }, 'form-tool-impossible', 'depth'],
    [{ clearance: 4 }, 'form-tool-impossible', 'clearance'],
    [{ noseRadius: 1.2 }, 'form-tool-impossible', 'noseRadius'],
    [{ shankWidth: 3 }, 'form-tool-impossible', 'shankWidth'],
    [{ reach: 2 }, 'form-tool-impossible', 'reach'],
    [{ shoulderRadius: 6 }, 'form-tool-impossible', 'shoulderRadius'],
    [{ length: 4 }, 'form-tool-impossible', 'length'],
    [{ form: 'square', sideRelief: 15, depth: 8 }, 'form-tool-impossible', 'sideRelief'],
  ])('with %o is refused: %s at %s', (more, code, path) => {
    expect(refusal({ ...ACME, ...more } as ShapeInput)).toEqual([code, path]);
  });

  it('never comes out crossing itself or with what is no number', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...FORM_NAMES),
        part,
        part,
        part,
        part,
        fc.double({ min: -20, max: 30, noNaN: true }),
        (form, a, b, c, d, rakeAngle) => {
          const made = makeShape(
            shapeSchema.parse({
              kind: 'form-tool',
              form,
              pitch: 0.2 + 20 * a,
              includedAngle: 160 * b,
              noseRadius: b < 0.5 ? undefined : c,
              depth: form === 'v' || d > 0.8 ? 0.05 + 6 * d : undefined,
              clearanceAngle: 30 * c,
              rakeAngle,
              minorDiameter: 3 + 60 * d,
              shankWidth: 1 + 40 * b,
              clearance: d - 0.8 > 0 ? (d - 0.8) / 4 : 0,
            }),
            MEANS,
          );
          if (made.kind === 'refused') expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
          else {
            expect(soundness(there(made.shape.outlines[0]).contour, 1e-6)).toEqual({ kind: 'sound' });
            expect(selfCrossings(there(made.shape.outlines[0]).contour, 1e-7)).toEqual([]);
            expect(made.shape.sizes.every((s) => Number.isFinite(s.figure.value))).toBe(true);
          }
        },
      ),
      { seed: 6, numRuns: 80 },
    );
  });
});
