/** Arcs that are almost straight, beside ordinary ones and segments shorter than any atom: read, planned, offset and proven. */
import { describe, expect, it } from 'vitest';
import { readDrawing } from '../src/drawing/read/read-drawing.ts';
import { fromBulge } from '../src/geometry/bulge.ts';
import { type Contour, contour } from '../src/geometry/contour.ts';
import { offsetContour } from '../src/geometry/offset/offset.ts';
import type { Point, Segment } from '../src/geometry/segment.ts';
import { planCut } from '../src/plan/cut/plan-cut.ts';
import { loop, questionFor } from '../src/plan/plan.fixture.ts';
import type { PlanQuestion } from '../src/plan/question.ts';
import { proveProgram } from '../src/proof/prove/prove.ts';
import { asciiDxf, dxfTags, lightPolyline } from './dxf-writer.ts';
import { asked, inControl, inPath } from './planned.ts';
import { seeded } from './seeded.ts';
import { there } from './there.ts';

type Corner = Point & { readonly bulge: number };

const contourOf = (corners: readonly Corner[]): Contour =>
  contour(corners.map((corner, i): Segment => fromBulge(corner, there(corners[(i + 1) % corners.length]), corner.bulge)));

/** Corners on rays about the middle; a third of the bulges between 1e-4 and 1e-9, of either sense; in a third of them a segment of 0.3 nm. */
const randomCorners = (number: number, size: number, least: number): readonly Corner[] => {
  const random = seeded(number);
  const sense = (): number => (random() < 0.5 ? -1 : 1);
  const count = 3 + Math.floor(random() * 8);
  const corners = Array.from({ length: count }, (_, i): Corner => {
    const angle = (2 * Math.PI * (i + 0.7 * random())) / count;
    const radius = size * (least + (1 - least) * random());
    const kind = random();
    const bulge = kind < 0.35 ? sense() * 10 ** (-4 - 5 * random()) : kind < 0.6 ? 0 : 0.6 * (random() - 0.5);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle), bulge };
  });
  if (random() > 1 / 3) return corners;
  const at = Math.floor(random() * count);
  const { x, y } = there(corners[at]);
  return [
    ...corners.slice(0, at + 1),
    { x: x + 2e-7, y: y - 2.2e-7, bulge: sense() * 10 ** (-4 - 4 * random()) },
    ...corners.slice(at + 1),
  ];
};

/** Corners that are no contour: their arcs cross. */
const isTangled = (question: PlanQuestion): boolean => {
  const plan = planCut(question);
  return plan.kind === 'refused' && plan.findings.some((f) => f.code === 'contour-unsound');
};

describe('almost straight arcs', () => {
  it('have parallels that contradict nothing, which one in thirty had not', () => {
    const odd: string[] = [];
    for (let number = 1; number <= 6000; number++) {
      const outcome = offsetContour(
        contourOf(randomCorners(number, 10 ** (2 * seeded(number)()), 0.3)),
        (number % 2 === 0 ? 1 : -1) * 0.17,
      );
      if (outcome.kind === 'unsound') odd.push(`${number}: ${outcome.what}`);
    }
    expect(odd).toEqual([]);
  });

  it('of 100 m radius stay arcs in their parallels, at the distance asked for', () => {
    const corners = [0, 1, 2, 3].map(
      (i): Corner => ({ x: [0, 40, 40, 0][i] ?? 0, y: [0, 0, 30, 30][i] ?? 0, bulge: i % 2 === 0 ? 1e-4 : -1e-4 }),
    );
    const outcome = offsetContour(contourOf(corners), 0.2);
    if (outcome.kind !== 'offset') throw new Error(outcome.kind);
    const [inner] = outcome.contours;
    expect(inner?.segments.map((s) => (s.kind === 'arc' ? Math.round(s.radius) : 0))).toEqual([100_000, 75_000, 100_000, 75_000]);
  });

  it('are planned, written and proven', () => {
    let proven = 0;
    for (let number = 1; proven < 20; number++) {
      const question = questionFor([loop('L1', contourOf(randomCorners(number, 30, 0.6)))], { finish: 1.6, insideCorner: 0.4 });
      if (isTangled(question)) continue;
      proven += 1;
      const proof = proveProgram(asked(question, number % 2 === 0 ? inControl : inPath));
      expect([number, proof.verdict, proof.findings.filter((f) => f.severity === 'refusal').map((f) => f.code)]).toEqual([
        number,
        'proven',
        [],
      ]);
    }
  });
});

describe('almost straight arcs of a drawing', () => {
  const read = (bulge: number) => {
    const drawing = readDrawing(
      asciiDxf(
        dxfTags({
          units: 4,
          entities: [
            lightPolyline([
              [0, 0, bulge],
              [200, 0, 0.1],
              [200, 30, -bulge],
              [0, 30],
            ]),
          ],
        }),
      ),
      'a.dxf',
    );
    return { drawing, loop: there(drawing.loops[0]) };
  };

  it.each([1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9])('become lines within the fit tolerance: bulge %d', (bulge) => {
    const { drawing, loop } = read(bulge);
    const radii = loop.contour.segments.map((s) => (s.kind === 'arc' ? s.radius : 0));
    expect(Math.max(...radii)).toBeLessThan(100);
    expect(loop.fitDeviation).toBeLessThanOrEqual(0.0005);
    expect(drawing.findings.map((f) => f.code)).toEqual(bulge < 1e-8 ? [] : ['curves-fitted']);
    // Both bend the same way: what one adds the other takes, beside the bow of the right side.
    const bow = 0.5 * ((30 * (1 / 0.1 + 0.1)) / 4) ** 2 * (4 * Math.atan(0.1) - Math.sin(4 * Math.atan(0.1)));
    expect(loop.area).toBeCloseTo(6000 + bow, 5);
  });

  it('stay arcs where their centre can be named', () => {
    const { loop } = read(0.002);
    expect(loop.contour.segments.filter((s) => s.kind === 'arc').length).toBe(3);
  });
});
