/** Loose pieces as the proof weighs them: the planner's masses, and slugs that come apart on the way. */
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { disc, loop, questionFor, rectangle, slot } from '../plan/plan.fixture.ts';
import type { PlanQuestion, WantedLoop } from '../plan/question.ts';
import { sentenceOf } from '../text/finding.fixture.ts';
import { proved } from './core.fixture.ts';

const block = loop('B', rectangle(0, 0, 80, 80));

const asked = (loops: readonly WantedLoop[], changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor([block, ...loops], { outline: 'block', finish: 1.6, insideCorner: 0.3, core: { A: 'slug' }, ...changes });

const island = (inner: WantedLoop): readonly WantedLoop[] => [loop('A', rectangle(20, 30, 30, 10), 1, 'B'), inner];

/** Slugs that come off in pieces, with how many there are. */
const split: readonly (readonly [string, PlanQuestion, number])[] = [
  [
    'a hole nearly as wide as the slot',
    asked([loop('A', slot(20, 40, 40, 1.2), 1, 'B')], { holes: [{ at: { x: 40, y: 40 }, diameter: 1 }] }),
    2,
  ],
  ['an island near one side', asked(island(loop('C', rectangle(30, 30.6, 10, 5), 2, 'A')), { kept: { C: 'punch' } }), 1],
  ['an island near both sides', asked(island(loop('C', rectangle(30, 30.6, 10, 8.8), 2, 'A')), { kept: { C: 'punch' } }), 2],
];

describe('a slug', () => {
  it.each(split)('that %s takes apart is held piece by piece', (_, question, pieces) => {
    for (const run of ['attended', 'unattended first'] as const) {
      const { plan, proof } = proved({ ...question, run });
      expect(plan.findings.map((f) => f.code)).toContain('slug-splits');
      const slugs = proof.loose.filter((l) => l.role === 'slug');
      expect(slugs).toHaveLength(pieces);
      expect(proof.loose.filter((l) => !l.held)).toEqual([]);
      expect(proof.verdict).toBe('proven');
    }
  });

  describe.each([
    [6, 5],
    [5, 4],
    [10, 9],
  ])('in a slot of %d mm that a hole of %d mm nearly crosses', (width, diameter) => {
    const hole = { at: { x: 40, y: 40 }, diameter };
    const question = asked([loop('A', slot(20, 40, 40, width), 1, 'B')], { holes: [hole] });

    it('is begun from that hole all the same, and held in parts', () => {
      const { plan, proof } = proved(question);
      expect(plan.contours[0]?.hole).toMatchObject({ ...hole, origin: 'drawing' });
      expect(plan.findings.map((f) => f.code)).toContain('slug-splits');
      expect([proof.verdict, proof.loose.every((l) => l.held)]).toEqual(['proven', true]);
    });

    it('is begun from a drilled hole once the proof has refused that, and it is said why', () => {
      const first = there(proved(question).plan.contours[0]);
      const { plan } = proved({ ...question, refused: { A: [first.entry.at] } });
      expect(plan.contours[0]?.hole.origin).toBe('placed');
      const told = there(plan.findings.find((f) => f.code === 'hole-not-usable'));
      expect(sentenceOf(told)).toMatch(/the slug of .* would come apart where it cannot be held/);
    });
  });

  it('is as heavy as the proof finds it, also as a ring round an island', () => {
    const ring = asked([loop('A', disc(40, 40, 15.5), 1, 'B'), loop('C', disc(38, 41, 4), 2, 'A')]);
    for (const question of [asked([loop('A', rectangle(20, 30, 20, 15), 1, 'B')]), asked([loop('A', slot(30, 40, 12, 8), 1, 'B')]), ring]) {
      const { plan, proof } = proved(question);
      for (const { loop: id, piece } of plan.contours) {
        const found = proof.loose.filter((l) => l.loop === id);
        expect(found).toHaveLength(1);
        // The planner leaves start holes and the leads to them out, in a ring also those of its island: 2 mm each, and some mm of kerf.
        expect(piece.mass.value).toBeGreaterThan(there(found[0]).mass * 0.999);
        expect(piece.mass.value - there(found[0]).mass).toBeLessThan(2 * (Math.PI + 6 * 0.38) * 25 * 7.7e-6);
      }
    }
  });
});
