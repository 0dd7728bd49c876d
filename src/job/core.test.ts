/** Openings cut without a core, held against the proof's own sweep: nothing is left in them, and nothing is ever loose. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { areaOf } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import { burning } from '../plan/core/core-shapes.fixture.ts';
import { disc, loop, polygon, questionFor, rectangle, slot, star } from '../plan/plan.fixture.ts';
import type { PlanQuestion } from '../plan/question.ts';
import type { Proof } from '../proof/proof.ts';
import { proved } from './core.fixture.ts';

const cross = polygon(
  [38, 30],
  [42, 30],
  [42, 38],
  [50, 38],
  [50, 42],
  [42, 42],
  [42, 50],
  [38, 50],
  [38, 42],
  [30, 42],
  [30, 38],
  [38, 38],
);
const dumbbell = polygon(
  [30, 30],
  [34, 30],
  [34, 31.6],
  [38, 31.6],
  [38, 30],
  [42, 30],
  [42, 34],
  [38, 34],
  [38, 32.4],
  [34, 32.4],
  [34, 34],
  [30, 34],
);
const horseshoe = polygon([30, 30], [42, 30], [42, 42], [38, 42], [38, 34], [34, 34], [34, 42], [30, 42]);

const shapes: readonly (readonly [string, Contour])[] = [
  ['a circle', disc(40, 40, 2.2)],
  ['a slot', slot(35, 40, 9, 3.2)],
  ['a square', rectangle(35, 35, 4, 4.5)],
  ['a triangle', polygon([30, 30], [38, 30], [31, 36])],
  ['a star', star(40, 40, 5, 8, 3.6)],
  ['a thin cross', cross],
  ['two rooms and a neck', dumbbell],
  ['a horseshoe', horseshoe],
];

const noCore = (contour: Contour, changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor([loop('B', rectangle(0, 0, 80, 80)), loop('A', contour, 1, 'B')], {
    outline: 'block',
    finish: 1.6,
    insideCorner: 0.3,
    core: { A: 'no-core' },
    ...changes,
  });

/** mm² of the openings that the proof sees in the end, without islands in them. */
const openArea = ({ openings }: Proof): number =>
  openings.reduce(
    (sum, { points }) =>
      sum +
      points.reduce(
        (twice, p, i) => twice + p.x * there(points[(i + 1) % points.length]).y - there(points[(i + 1) % points.length]).x * p.y,
        0,
      ) /
        2,
    0,
  );

/** kg up to which the proof calls a piece a crumb, which is flushed away. */
const CRUMB = 5e-5;

describe('an opening cut without a core, as the proof sees it', () => {
  it.each(shapes)('leaves no metal in %s and sets nothing loose, not even between two moves', (_, contour) => {
    for (const run of ['attended', 'unattended first'] as const) {
      const { plan, proof } = proved(noCore(contour, { run }));
      expect(there(plan.contours[0]).core).toBeDefined();
      expect(proof.verdict).toBe('proven');
      expect(proof.loose).toEqual([]);
      expect(proof.openings).toHaveLength(1);
      // The rounds that the wire leaves in sharp corners are all that is missing.
      expect(openArea(proof)).toBeGreaterThan(areaOf(contour) * 0.985);
    }
    for (const piece of proved(noCore(contour)).byMove().loose) expect(piece.mass).toBeLessThan(CRUMB / 10);
  });

  it('does so for openings of any shape', () => {
    fc.assert(
      fc.property(burning, (q) => {
        const question = { ...q, core: { A: 'no-core' as const } };
        let one: ReturnType<typeof proved>;
        try {
          one = proved(question);
        } catch (refusal) {
          expect(String(refusal)).toMatch(/no room|too narrow|too tight|needs/);
          return;
        }
        expect(one.plan.findings.filter((f) => f.code === 'core-needed')).toEqual([]);
        expect(one.proof.loose).toEqual([]);
        expect(one.proof.openings).toHaveLength(1);
        expect(one.proof.verdict).toBe('proven');
        for (const piece of one.byMove().loose) expect(piece.mass).toBeLessThan(CRUMB);
      }),
      { seed: 41, numRuns: 8 },
    );
  });
});

describe('the proof of a no-core opening', () => {
  it('sees the metal that a ring left out leaves standing, and that it falls', () => {
    const { plan, instead } = proved(noCore(disc(40, 40, 6)));
    const radii = plan.steps.flatMap((s) => (s.kind === 'cut' && s.part === 'core' && s.centre?.kind === 'arc' ? [s.centre.radius] : []));
    const rings = [...new Set(radii.map((r) => r.toFixed(3)))];
    expect(rings.length).toBeGreaterThan(10);
    const left = there(rings[8]);
    const proof = instead((actions) =>
      actions.filter((a) => !(a.kind === 'move' && a.centre.kind === 'arc' && a.centre.radius.toFixed(3) === left)),
    );
    expect(proof.verdict).toBe('not proven');
    // The neighbours of the ring take a kerf each from 0.8 of a kerf away on either side: 0.6 of a kerf is left between them.
    const kerf = there(there(plan.contours[0]).core).kerf;
    const fallen = proof.loose.find((l) => !l.held);
    expect(fallen?.area).toBeCloseTo(2 * Math.PI * Number(left) * 0.6 * kerf, 0);
  });
});
