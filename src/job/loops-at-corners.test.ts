/** A part of sharp corners that are gone round by loops, proven, drawn and told. */

import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { told } from '../documents/paper-for-reader.ts';
import { planPicture } from '../documents/part/plan-picture.ts';
import { numbered } from '../plan/numbered.ts';
import { disc, loop, planned, questionFor, rectangle } from '../plan/plan.fixture.ts';
import type { CutPlan } from '../plan/plan.ts';
import { sentenceOf } from '../text/finding.fixture.ts';
import { HOUSE } from '../text/reader.ts';
import { proved } from './core.fixture.ts';

const squares = [loop('L1', rectangle(0, 0, 50, 16)), loop('L2', rectangle(0, 22, 50, 16))];

describe('a part with loops at its corners', () => {
  it('is proven: no metal is left along the side after a loop', () => {
    // The rough cut of this size once made the polygon library lose a corner of the outline and leave 0.02 mm along a side.
    for (const height of [20, 40, 60]) {
      const { proof } = proved(questionFor([there(squares[0])], { height, finish: 1, tolerance: 0.01, sharpOutside: 'loop' }));
      expect([height, proof.verdict, proof.findings.filter((f) => f.severity === 'refusal').map((f) => sentenceOf(f))]).toEqual([
        height,
        'proven',
        [],
      ]);
    }
  });

  it('shows its loops, rings of no-core openings, and one label for a hole of two parts', () => {
    const drawing = { loops: [], units: { name: 'mm', millimetres: 1, basis: 'user' } as const };
    const picture = (plan: CutPlan) => {
      const cut = { plan, contours: numbered(plan), within: plan.accuracy.value };
      return there(planPicture({ drawing, findings: [], asked: {}, outcome: { answer: 'no', kind: 'plan', cut } }));
    };
    const plain = picture(planned(questionFor(squares)));
    const looped = picture(planned(questionFor(squares, { sharpOutside: 'loop' })));
    expect(looped.strokes.length - plain.strokes.length).toBe(8);
    expect(plain.labels.map((l) => told(l.text, HOUSE))).toEqual(['L2, L1']);
    const bore = [loop('L1', rectangle(-20, -20, 40, 40)), loop('L2', disc(0, 0, 2), 1, 'L1')];
    const plan = planned(questionFor(bore, { outline: 'block', core: { L2: 'no-core' } }));
    const rings = picture(plan).strokes.filter((s) => s.width === 0.1).length;
    expect(rings).toBeGreaterThan(0);
    expect(rings).toBeGreaterThanOrEqual(there(there(plan.contours[0]).core).rings);
  });
});
