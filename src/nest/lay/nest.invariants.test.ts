/** What holds for every nest: webs and margins, whatever the plate; never more in less room; nothing lost between laid and left. */

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Contour } from '../../geometry/contour.ts';
import { disc, polygon, rectangle, roundedRectangle, star } from '../../geometry/example-shapes.fixture.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { LaidNest } from '../nest-outcome.ts';
import type { Manner, NestQuestion, Turns } from '../nest-question.ts';
import { faultsOf } from './nest.fixture.ts';
import { nest } from './nest.ts';

const RUNS = { seed: 60, numRuns: 8 } as const;

const size = (low: number, high: number): fc.Arbitrary<number> => fc.integer({ min: 10 * low, max: 10 * high }).map((n) => n / 10);

const shape: fc.Arbitrary<Contour> = fc.oneof(
  fc.tuple(size(6, 30), size(6, 30)).map(([w, h]) => rectangle(w, h)),
  size(3, 12).map((r) => disc(r, -r, r)),
  fc.tuple(size(16, 30), size(12, 20)).map(([w, h]) => roundedRectangle(w, h, 4)),
  fc.tuple(size(14, 30), size(14, 30)).map(([w, h]) =>
    polygon([
      [0, 0],
      [w, 0],
      [w, 5],
      [6, 5],
      [6, h],
      [0, h],
    ]),
  ),
  fc.array(size(5, 14), { minLength: 5, maxLength: 8 }).map((radii) => star(radii, [0.2, 0])),
);

const turns: fc.Arbitrary<Turns> = fc.constantFrom<Turns>('none', 'half turns', 'quarter turns', { step: 60 });

const plate: fc.Arbitrary<Contour> = fc.oneof(
  fc.tuple(size(60, 110), size(60, 110)).map(([w, h]) => rectangle(w, h)),
  size(35, 55).map((r) => disc(10, 20, r)),
  fc.array(size(40, 60), { minLength: 5, maxLength: 7 }).map((radii) => star(radii, [0.1])),
);

const question = (manner: Manner): fc.Arbitrary<NestQuestion> =>
  fc
    .record({
      plate,
      border: size(0, 4),
      web: size(0, 3),
      forbidden: fc.array(
        fc.tuple(size(-40, 60), size(-40, 60), size(2, 8)).map(([x, y, r]) => disc(x, y, r)),
        { maxLength: 2 },
      ),
      kinds: fc.array(fc.tuple(shape, turns, fc.integer({ min: 1, max: 8 })), { minLength: 1, maxLength: 3 }),
    })
    .map(({ kinds, ...rest }) => ({
      ...rest,
      manner,
      work: 5e6,
      pieces: kinds.map(([outline, t, quantity], i) => ({ id: `p${i}`, outline, turns: t, quantity, mirrored: false as const })),
    }));

const laid = (q: NestQuestion): LaidNest => {
  const answer = nest(q);
  if (answer.kind === 'refused') throw new Error(answer.findings.map((f) => sentenceOf(f)).join(' '));
  return answer;
};

describe('every nest', () => {
  it.each<Manner>(['rows', 'free'])('keeps webs, border and zones and loses no piece, in manner %s', (manner) => {
    fc.assert(
      fc.property(question(manner), (q) => {
        const answer = laid(q);
        expect(faultsOf(q, answer)).toEqual([]);
        expect(answer.yield).toBeLessThanOrEqual(answer.bound * (1 + 1e-9));
        const count = (id: string): number =>
          answer.placed.filter((p) => p.piece === id).length + (answer.left.find((l) => l.piece === id)?.quantity ?? 0);
        expect(q.pieces.map(({ id }) => count(id))).toEqual(q.pieces.map((p) => p.quantity));
      }),
      RUNS,
    );
  });

  it('in rows never holds more pieces with more border', () => {
    fc.assert(
      fc.property(shape, size(60, 120), size(60, 120), size(0, 3), size(0, 5), size(0, 5), (outline, w, h, web, border, more) => {
        const count = (m: number): number =>
          laid({
            plate: rectangle(w, h),
            border: m,
            web,
            forbidden: [],
            manner: 'rows',
            pieces: [{ id: 'a', outline, quantity: 400, turns: 'none', mirrored: false }],
          }).placed.length;
        expect(count(border + more)).toBeLessThanOrEqual(count(border));
      }),
      RUNS,
    );
  });

  it('in rows holds as many on the plate turned by a quarter, where pieces may be turned so too', () => {
    fc.assert(
      fc.property(size(6, 30), size(6, 30), size(60, 120), size(60, 120), size(0, 3), (a, b, w, h, web) => {
        const count = (wide: number, high: number): number =>
          laid({
            plate: rectangle(wide, high),
            border: 1,
            web,
            forbidden: [],
            manner: 'rows',
            pieces: [{ id: 'a', outline: rectangle(a, b), quantity: 400, turns: 'quarter turns', mirrored: false }],
          }).placed.length;
        expect(count(w, h)).toBe(count(h, w));
      }),
      RUNS,
    );
  });
});
