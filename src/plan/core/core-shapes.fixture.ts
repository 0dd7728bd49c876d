/** Random openings to be cut without a core: round, square, long, crossed, crooked and star-shaped, with necks and sharp corners. */
import fc from 'fast-check';
import type { Contour } from '../../geometry/contour.ts';
import { disc, loop, polygon, questionFor, rectangle, slot, star } from '../plan.fixture.ts';
import type { PlanQuestion } from '../question.ts';

export const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Arms of one width crossing at any angles and of any length: thin crosses and stars with many necks. */
const crossed = fc
  .tuple(fc.array(fc.record({ turn: number(0.3, 0.7), reach: number(4, 9) }), { minLength: 3, maxLength: 5 }), number(1, 1.6))
  .map(([arms, half]) => {
    const corners = arms.flatMap(({ turn, reach }, i): (readonly [number, number])[] => {
      const angle = ((i + turn) / arms.length) * 2 * Math.PI;
      const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
      const place = (along: number, aside: number): readonly [number, number] => [
        40 + cosine * along - sine * aside,
        40 + sine * along + cosine * aside,
      ];
      return [
        place(reach, -half),
        place(reach, half),
        [40 + 2.6 * Math.cos(angle + Math.PI / arms.length), 40 + 2.6 * Math.sin(angle + Math.PI / arms.length)],
      ];
    });
    return polygon(...corners);
  });

const crooked = fc.array(fc.record({ turn: number(0.25, 0.75), radius: number(3.5, 8) }), { minLength: 3, maxLength: 9 }).map((corners) =>
  polygon(
    ...corners.map(({ turn, radius }, i): readonly [number, number] => {
      const angle = ((i + turn) / corners.length) * 2 * Math.PI;
      return [40 + radius * Math.cos(angle), 40 + radius * Math.sin(angle)];
    }),
  ),
);

const shape: fc.Arbitrary<Contour> = fc.oneof(
  crossed,
  crooked,
  number(1.7, 7).map((r) => disc(40, 40, r)),
  fc.tuple(number(3.4, 12), number(3.4, 12)).map(([w, h]) => rectangle(35, 35, w, h)),
  fc.tuple(number(1, 14), number(3.4, 6)).map(([l, w]) => slot(35, 40, l, w)),
  fc.tuple(fc.integer({ min: 3, max: 7 }), number(5, 9), number(2.5, 4.5)).map(([n, outer, inner]) => star(40, 40, n, outer, inner)),
);

/** In the middle of a plate B, its id A. */
export const burning: fc.Arbitrary<PlanQuestion> = fc
  .record({
    contour: shape,
    run: fc.constantFrom('attended' as const, 'unattended first' as const),
    outsideCorners: fc.constantFrom('arc' as const, 'intersection' as const),
    finish: fc.constantFrom(3.2, 0.8),
    startHole: fc.constantFrom(1, 2),
  })
  .map(({ contour, ...asked }) =>
    questionFor([loop('B', rectangle(0, 0, 80, 80)), loop('A', contour, 1, 'B')], {
      outline: 'block',
      height: 10,
      insideCorner: 0.3,
      core: { A: 'no-core' },
      ...asked,
    }),
  );
