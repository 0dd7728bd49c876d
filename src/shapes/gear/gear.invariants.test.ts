/** Whatever is asked of gears, rings and racks: a sound contour with finite sizes, or a refusal that names its field. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soundness } from '../../geometry/soundness.ts';
import type { Figure } from '../../quantity/figure.ts';
import { remedyTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import { makeShape } from '../list/make.ts';
import { type ShapeInput, shapeSchema } from '../list/questions.ts';
import { MEANS } from '../made.fixture.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const perhaps = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });
const seldom = <T, U>(arbitrary: fc.Arbitrary<T>, usual: U) =>
  fc.oneof({ weight: 5, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary });

const shared = {
  module: number(0.1, 20),
  teeth: fc.integer({ min: 4, max: 80 }),
  pressureAngle: number(10, 45),
  addendum: number(0.1, 2),
  dedendum: number(0.1, 2.5),
  tipChamfer: fc.oneof(fc.constant(0), number(0, 2)),
  reliefAmount: fc.oneof(fc.constant(0), number(0, 0.2)),
  reliefFrom: perhaps(number(1, 500)),
  pin: perhaps(number(0.1, 40)),
  mate: perhaps(fc.integer({ min: 4, max: 120 })),
  mateShift: number(-1, 1.5),
  clearance: fc.oneof(fc.constant(0), number(-1, 2)),
  share: number(0, 1),
  fit: number(0.0005, 0.05),
};
const tips = { shift: fc.oneof(fc.constant(0), number(-2, 3)), tipDiameter: perhaps(number(1, 500)) };
const gears = fc.record({
  kind: fc.constant('gear' as const),
  ...shared,
  ...tips,
  root: fc.constantFrom('rack', 'full', 'radius'),
  rackTip: number(0, 0.6),
  rootRadius: perhaps(number(0.01, 5)),
  bore: perhaps(number(1, 100)),
  boreZone: fc.constantFrom('none', 'H7'),
  keyway: seldom(fc.constantFrom('DIN 6885-1', 'ASME B17.1'), 'none'),
  spanTeeth: seldom(fc.integer({ min: 2, max: 20 }), undefined),
});
const rings = fc.record({
  kind: fc.constant('internal-gear' as const),
  ...shared,
  ...tips,
  root: fc.constantFrom('full', 'radius'),
  rootRadius: perhaps(number(0, 5)),
  outside: perhaps(number(1, 2000)),
});
const racks = fc.record({
  kind: fc.constant('rack' as const),
  ...shared,
  teeth: fc.integer({ min: 1, max: 40 }),
  rootRadius: perhaps(number(0, 5)),
  back: perhaps(number(0.1, 100)),
});

/** The figure and all it was made of. */
const all = (figure: Figure): readonly Figure[] => [figure, ...figure.from.flatMap(all)];

const holds = (input: unknown): 'made' | 'refused' => {
  const request = shapeSchema.parse(input as ShapeInput);
  const made = makeShape(request, MEANS);
  const findings = made.kind === 'refused' ? made.findings : made.shape.findings;
  expect(findings.every((f) => f.place?.kind === 'field' && f.place.path in shapeKeys(request.kind))).toBe(true);
  expect(findings.map((f) => `${sentenceOf(f)} ${remedyTextOf(f)}`).join(' ')).not.toMatch(/NaN|Infinity|undefined/);
  if (made.kind === 'refused') {
    expect(findings.length).toBeGreaterThan(0);
    return 'refused';
  }
  const { outlines, sizes, fitDeviation, insideRadius = 0 } = made.shape;
  for (const { contour } of outlines) expect(soundness(contour, 1e-7)).toEqual({ kind: 'sound' });
  expect(sizes.flatMap((s) => all(s.figure)).filter((f) => !Number.isFinite(f.value))).toEqual([]);
  expect(new Set(sizes.map((s) => s.figure.key)).size).toBe(sizes.length);
  expect(JSON.stringify(sizes.map((s) => s.taking ?? 0))).not.toContain('null');
  expect(fitDeviation).toBeLessThanOrEqual(request.fit);
  expect(insideRadius).toBeGreaterThanOrEqual(0);
  return 'made';
};

const shapeKeys = (kind: string): object => {
  const option = shapeSchema.options.find((o) => (o.shape.kind as { readonly value: string }).value === kind);
  return option?.shape ?? {};
};

describe('whatever is asked', () => {
  it.each([
    ['gears', gears, 250],
    ['rings', rings, 200],
    ['racks', racks, 250],
  ] as const)('of %s is made soundly or refused with its field', (_name, requests, runs) => {
    const seen = { made: 0, refused: 0 };
    fc.assert(
      fc.property(requests as fc.Arbitrary<unknown>, (input) => {
        seen[holds(input)] += 1;
      }),
      { seed: 5, numRuns: runs },
    );
    expect(seen.made).toBeGreaterThan(runs / 20);
    expect(seen.refused).toBeGreaterThan(runs / 20);
  });

  it('of sensible gears is made', () => {
    const sensible = fc.record({
      kind: fc.constant('gear'),
      module: number(0.2, 10),
      teeth: fc.integer({ min: 17, max: 150 }),
      shift: number(-0.1, 0.5),
      mate: fc.integer({ min: 17, max: 150 }),
      root: fc.constantFrom('rack', 'full'),
    });
    fc.assert(
      fc.property(sensible, (input) => {
        expect(holds(input)).toBe('made');
      }),
      { seed: 6, numRuns: 60 },
    );
  });
});
