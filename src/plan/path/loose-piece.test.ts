/** What is told of a loose piece, and the tab it hangs on. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { findMaterial } from '../../physics/material/find-material.ts';
import type { Material } from '../../physics/material/material.ts';
import { printPlain } from '../../text/print/print.ts';
import { disc, loop, planned, polygon, questionFor, rectangle } from '../plan.fixture.ts';
import type { ContourPlan, CutPlan } from '../plan.ts';
import type { PlanQuestion } from '../question.ts';
import { tabAgainstBending } from '../start/tab.ts';
import { handlingOf } from './loose-piece.ts';

const cutOf = (plan: CutPlan, id: string): ContourPlan => there(plan.contours.find((c) => c.loop === id));

const stopsOf = (plan: CutPlan, id: string): readonly string[] =>
  plan.steps.flatMap((s) => (s.kind === 'stop' && s.loop === id ? [`${s.loop}: ${printPlain(s.text)}`] : []));

const material = (id: string): Material => {
  const found = findMaterial(id);
  if (found.kind !== 'material') throw new Error(id);
  return found.material;
};

describe('a loose piece', () => {
  it('is told with its box and its centre of gravity, wherever it stands', () => {
    const angle = (x: number, y: number) => polygon([x, y], [x + 20, y], [x + 20, y + 10], [x + 10, y + 10], [x + 10, y + 20], [x, y + 20]);
    const loops = [loop('B', rectangle(0, 0, 120, 80)), loop('A', angle(10, 10), 1, 'B'), loop('C', angle(70, 40), 1, 'B')];
    const plan = planned(questionFor(loops, { outline: 'block' }));
    // Of three squares of 10 mm in an angle the centre of gravity lies at 25/3 mm from both outer sides.
    for (const [id, x, y] of [
      ['A', 10, 10],
      ['C', 70, 40],
    ] as const) {
      const { piece } = cutOf(plan, id);
      expect(distanceBetween(piece.balance, { x: x + 25 / 3, y: y + 25 / 3 })).toBeLessThan(1e-9);
      const reach = there(plan.passes[0]).offset.value + plan.wire.diameter / 2 + there(plan.passes[0]).gap.value;
      expect(piece.size.x).toBeCloseTo(20 - 2 * reach, 9);
      expect(piece.size.height).toBe(25);
    }
  });

  it('has its weight where the metal is, when an island was cut out of it', () => {
    const loops = [loop('B', rectangle(0, 0, 80, 80)), loop('A', disc(40, 40, 20), 1, 'B'), loop('C', disc(45, 40, 10), 2, 'A')];
    const { balance } = cutOf(planned(questionFor(loops, { outline: 'block' })), 'A').piece;
    // (400 · 40 - 100 · 45) / 300
    expect(balance.x).toBeCloseTo(38.333333, 5);
    expect(balance.y).toBeCloseTo(40, 9);
  });

  it('is caught, lifted, held or hung on tackle, as heavy as it is', () => {
    const handling = (side: number, height: number, id = 'A') =>
      cutOf(
        planned(
          questionFor([loop('B', rectangle(-20, -20, 340, 340)), loop('A', rectangle(0, 0, side, side), 1, 'B')], {
            outline: 'block',
            height,
          }),
        ),
        id,
      ).piece.handling;
    expect([handling(14, 25), handling(40, 25), handling(120, 25), handling(300, 80)]).toEqual(['caught', 'lifted', 'held', 'tackle']);
    expect(cutOf(planned(questionFor([loop('A', rectangle(0, 0, 14, 14))])), 'A').piece.handling).toBe('lifted');
  });

  it.each([
    ['slug', [0.049, 0.051, 1.99, 2.01, 22.9, 23.1], ['caught', 'lifted', 'lifted', 'held', 'held', 'tackle']],
    ['part', [0.001, 1.99, 2.01, 22.9, 23.1], ['lifted', 'lifted', 'held', 'held', 'tackle']],
  ] as const)('is handled by its mass: a %s of %j kg', (role, masses, handled) => {
    expect(masses.map((mass) => handlingOf(role, mass))).toEqual(handled);
  });

  it('is told to whoever secures it: size and lever of a heavy one, no magnet where none holds', () => {
    const opening = (side: number, changes = {}) =>
      planned(
        questionFor([loop('B', rectangle(-20, -20, 340, 340)), loop('A', rectangle(0, 0, side, side), 1, 'B')], {
          outline: 'block',
          ...changes,
        }),
      );
    const [hold, out] = stopsOf(opening(120), 'A');
    expect(hold).toBe('A: slug 2.7 kg: bars or props, then cycle start cuts tab');
    const heavy = opening(120).steps.find((s) => s.kind === 'stop' && s.purpose === 'secure slug');
    expect(heavy?.kind === 'stop' && heavy.details?.map(printPlain).join('. ')).toMatch(
      /^Held by a tab of \d\.\d mm\. Piece 119 x 119 x 25 mm, weight 6\d mm from the tab\. Secure it so it cannot drop or tilt$/,
    );
    expect(out).toContain('lift out slug 2.7 kg upward');
    expect(stopsOf(opening(40), 'A')[0]).toContain('magnet or clamp');
    expect(stopsOf(opening(40, { material: material('copper') }), 'A')[0]).toContain('clamp or glue');
    expect(stopsOf(opening(14), 'A')[0]).toContain('magnet or plate');
  });
});

describe('a tab', () => {
  it('carries the moment of the weight: twice the lever twice the tab, half the height four times', () => {
    const steel = { mass: 3, lever: 100, height: 10, family: 'tool steel' } as const;
    // 6 · 3 kg · 9.81 m/s² · 100 mm / (90 MPa · 100 mm²)
    expect(tabAgainstBending(steel)).toBeCloseTo(1.962, 9);
    expect(tabAgainstBending({ ...steel, lever: 200 })).toBeCloseTo(2 * 1.962, 9);
    expect(tabAgainstBending({ ...steel, height: 5 })).toBeCloseTo(4 * 1.962, 9);
    expect(tabAgainstBending({ ...steel, family: 'graphite' })).toBeGreaterThan(5 * 1.962);
  });

  it('is longer where the piece is thin and wide, and says where that does not help', () => {
    const sheet = (height: number, changes: Partial<PlanQuestion> = {}): CutPlan =>
      planned(questionFor([loop('A', rectangle(0, 0, 300, 200))], { height, ...changes }));
    const thick = there(cutOf(sheet(25), 'A').tab);
    expect(printPlain(thick.reason)).toContain('kg');
    const thin = there(cutOf(sheet(3), 'A').tab);
    expect(printPlain(thin.reason)).toContain('would bend');
    expect(thin.length).toBeGreaterThan(thick.length / 2);
    const foil = sheet(0.5, { material: material('copper') });
    expect(foil.findings.map((f) => f.code)).toContain('tab-weak');
    expect(there(cutOf(foil, 'A').tab).length).toBeCloseTo(0.15 * 1000, 1);
  });

  it('of a heavy piece is near its weight', () => {
    const plan = planned(questionFor([loop('A', rectangle(0, 0, 300, 60))], { height: 60 }));
    const { entry, piece } = cutOf(plan, 'A');
    expect(distanceBetween(entry.at, piece.balance)).toBeLessThan(60);
  });
});
