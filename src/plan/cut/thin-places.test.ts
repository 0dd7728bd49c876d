/** Thin walls, webs, frames and clamps: said with place and number where they are, and not said where there is room. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { doneTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import type { Finding } from '../../text/finding.ts';
import { disc, loop, planned, polygon, questionFor, rectangle } from '../plan.fixture.ts';
import type { CutPlan } from '../plan.ts';
import type { PlanQuestion } from '../question.ts';
import { planCut } from './plan-cut.ts';
import { wallsBetween, wallsWithin } from './thin-walls.ts';

const TOLD = ['wall-too-thin', 'wall-too-long', 'web-thin', 'parts-too-near', 'frame-weak', 'near-block-edge', 'cuts-clamp', 'near-clamp'];

const told = (question: PlanQuestion): readonly Finding[] => planned(question).findings.filter((f) => TOLD.includes(f.code));
const codes = (question: PlanQuestion): readonly string[] => told(question).map((f) => f.code);

/** A part of 30 by 20 with a fin that stands on top of it. */
const finned = (thickness: number, length: number) =>
  questionFor([
    loop(
      'L1',
      polygon([0, 0], [30, 0], [30, 20], [15 + thickness, 20], [15 + thickness, 20 + length], [15, 20 + length], [15, 20], [0, 20]),
    ),
  ]);

/** A block of 100 by 80 with openings in it. */
const block = (openings: readonly ReturnType<typeof rectangle>[], changes: Partial<PlanQuestion> = {}) =>
  questionFor([loop('B', rectangle(0, 0, 100, 80)), ...openings.map((c, i) => loop(`L${i + 1}`, c, 1, 'B'))], {
    outline: 'block',
    ...changes,
  });

describe('thin walls', () => {
  it.each([
    [0.1, 1, ['wall-too-thin']],
    [0.3, 5, ['wall-too-long']],
    [0.3, 1.5, []],
    [0.6, 8, []],
  ] as const)('a fin of %d mm that stands out %d mm is told as it should be', (thickness, length, expected) => {
    expect(codes(finned(thickness, length))).toEqual(expected);
  });

  it('says how thick, how long and where', () => {
    const [fin] = told(finned(0.3, 5));
    expect(sentenceOf(fin)).toContain('a wall 0.300 mm thick stands out 4.9 mm');
    const { place } = there(fin);
    expect(place).toMatchObject({ kind: 'spot', loop: 'L1' });
    if (place?.kind === 'spot') expect([place.x, place.y > 20 && place.y < 25]).toEqual([expect.closeTo(15.15, 6), true]);
  });

  it('are measured from either face to within a step, wherever the contour begins', () => {
    const fin = [
      [0, 0],
      [30, 0],
      [30, 20],
      [15.3, 20],
      [15.3, 24],
      [15, 24],
      [15, 20],
      [0, 20],
    ] as const;
    for (let n = 0; n < fin.length; n += 1) {
      const walls = wallsWithin(polygon(...fin.slice(n), ...fin.slice(0, n)), 'punch', 0.5);
      expect(walls.map((w) => [w.thickness, w.length].map((v) => Number(v.toFixed(6))))).toEqual([
        [0.3, 3.9],
        [0.3, 3.9],
      ]);
    }
  });

  it('are not seen in the point of a wedge, nor across waste', () => {
    expect(wallsWithin(polygon([0, 0], [10, 0], [0, 6]), 'punch', 0.5)).toEqual([]);
    expect(wallsWithin(polygon([0, 0], [30, 0], [30, 20], [15.3, 20], [15.3, 15], [15, 15], [15, 20], [0, 20]), 'punch', 0.5)).toEqual([]);
  });

  it('between two openings are as long as the openings lie beside each other', () => {
    const [wall, ...rest] = wallsBetween(rectangle(0, 0, 10, 10), rectangle(10.4, 4, 10, 20), 0.5);
    expect([there(wall).thickness, rest]).toEqual([expect.closeTo(0.4, 9), []]);
    expect(there(wall).length).toBeGreaterThan(5.9);
    expect(there(wall).length).toBeLessThan(6.6);
  });
});

describe('webs and frames', () => {
  it('tell two openings apart that are closer than a kerf and a web', () => {
    expect(codes(block([rectangle(20, 20, 20, 20), rectangle(41.2, 20, 20, 20)]))).toEqual(['web-thin']);
    expect(codes(block([rectangle(20, 20, 20, 20), rectangle(41.45, 20, 20, 20)]))).toEqual([]);
    expect(codes(block([rectangle(20, 20, 20, 20), rectangle(40.4, 20, 20, 20)]))).toEqual(['wall-too-long', 'web-thin']);
  });

  it('count the pairs that are as near, in one finding', () => {
    const row = Array.from({ length: 4 }, (_, i) => rectangle(12 + 21.2 * i, 20, 20, 20));
    const [web, ...rest] = told(block(row));
    expect([there(web).code, sentenceOf(web).endsWith('2 more pairs are as close.'), rest]).toEqual(['web-thin', true, []]);
  });

  it('tell parts whose kerfs run together or leave a strip', () => {
    const parts = (apart: number) => questionFor([loop('L1', rectangle(0, 0, 20, 20)), loop('L2', rectangle(20 + apart, 0, 20, 20))]);
    const [merged] = told(parts(0.5));
    expect([there(merged).code, sentenceOf(merged)]).toEqual(['parts-too-near', expect.stringContaining('run together')]);
    expect(sentenceOf(told(parts(1.2))[0])).toContain('a strip of');
    expect(codes(parts(3))).toEqual([]);
  });

  it('tell a weak frame with what it has and what it needs, and an edge that is broken', () => {
    const [weak] = told(block([rectangle(2, 20, 80, 40)]));
    expect([there(weak).code, sentenceOf(weak)]).toEqual([
      'frame-weak',
      expect.stringMatching(/only 2\.00 mm thick at .*; 4\.0 mm is the least/),
    ]);
    expect(codes(block([rectangle(5, 20, 80, 40)]))).toEqual([]);
    expect(codes(block([rectangle(0.2, 20, 30, 30)]))).toEqual(['near-block-edge']);
    const part = questionFor([loop('B', rectangle(0, 0, 100, 80)), loop('L1', disc(90, 40, 12), 0)], {
      kept: { B: 'leave' },
      outline: 'cut',
    });
    expect(codes(part)).toEqual([]);
  });
});

describe('clamps', () => {
  const clamp = (x: number, y: number, width: number, height: number) => ({ low: { x, y }, high: { x: x + width, y: y + height } });

  it('in the way of a cut refuse the job, and beside it warn', () => {
    const at = (c: ReturnType<typeof clamp>) => planCut(block([rectangle(30, 30, 20, 20)], { clamps: [clamp(90, 0, 10, 10), c] }));
    const refused = at(clamp(45, 45, 10, 10));
    expect([refused.kind, sentenceOf(refused.findings.find((f) => f.code === 'cuts-clamp'))]).toEqual([
      'refused',
      expect.stringContaining('into clamp 2 while it cuts L1'),
    ]);
    const near = at(clamp(52, 35, 10, 10));
    expect([near.kind, sentenceOf(near.findings.find((f) => f.code === 'near-clamp'))]).toEqual([
      'cut',
      expect.stringMatching(/within 1\.9\d mm of clamp 2/),
    ]);
    expect(at(clamp(56, 35, 10, 10)).findings.filter((f) => f.code.endsWith('clamp'))).toEqual([]);
    expect(near.clamps).toHaveLength(2);
  });

  it('are seen by every opening of one shape, wherever it stands', () => {
    const row = Array.from({ length: 3 }, (_, i) => rectangle(10 + 25 * i, 30, 15, 15));
    const plan = planCut(block(row, { clamps: [clamp(70, 40, 5, 20)] }));
    expect(plan.findings.filter((f) => f.code === 'cuts-clamp').map((f) => f.place)).toMatchObject([{ loop: 'L3' }]);
  });

  it('keep the start hole of a part away where there is room elsewhere', () => {
    const free = planned(questionFor([loop('L1', rectangle(0, 0, 40, 30))]));
    const { x, y } = there(free.contours[0]).hole.at;
    const plan = planCut(questionFor([loop('L1', rectangle(0, 0, 40, 30))], { clamps: [clamp(x - 1.5, y - 1.5, 3, 3)] }));
    if (plan.kind === 'cut') expect(there(plan.contours[0]).hole.at).not.toEqual(there(free.contours[0]).hole.at);
    expect(plan.findings.some((f) => f.code === 'cuts-clamp')).toBe(plan.kind === 'refused');
  });
});

describe('a thin web between two openings', () => {
  const question = (changes: Partial<PlanQuestion> = {}): PlanQuestion =>
    questionFor(
      [
        loop('B', rectangle(0, 0, 120, 80)),
        loop('L1', rectangle(20, 20, 20, 20), 1, 'B'),
        loop('L2', rectangle(41.2, 20, 20, 20), 1, 'B'),
        loop('L3', rectangle(80, 20, 20, 22), 1, 'B'),
      ],
      { outline: 'block', ...changes },
    );
  /** The contours in the order in which their passes are cut, each as 'L1 rough' or 'L1 skim'. */
  const turns = (plan: CutPlan): readonly string[] => {
    let loopNow = '';
    const turns: string[] = [];
    for (const step of plan.steps) {
      if (step.kind === 'contour begins') loopNow = step.loop;
      if (step.kind === 'cut' && step.part === 'contour') turns.push(`${loopNow} ${step.pass === 1 ? 'rough' : 'skim'}`);
    }
    return turns.filter((turn, i) => turn !== turns[i - 1]);
  };
  const web = (plan: CutPlan): Finding => there(plan.findings.find((f) => f.code === 'web-thin'));

  it('is roughed on both sides before either is finished, as its finding says; other openings are cut as ever', () => {
    const plan = planned(question());
    const order = turns(plan);
    const last = (what: string): number => order.lastIndexOf(what);
    expect(Math.max(last('L1 rough'), last('L2 rough'))).toBeLessThan(Math.min(order.indexOf('L1 skim'), order.indexOf('L2 skim')));
    expect(last('L3 skim')).toBeLessThan(order.indexOf('L1 rough'));
    expect(doneTextOf(web(plan))).toBe('The openings on both sides are roughed before either is finished.');
  });

  it('promises nothing where an order is set by hand', () => {
    const plan = planned(question({ order: ['L1', 'L2', 'L3'] }));
    expect(doneTextOf(web(plan))).toBe('');
    expect(web(plan).remedy).toMatchObject({ field: 'run', value: 'unattended first' });
  });

  it('to the outside is finished from inside', () => {
    const part = planned(questionFor([loop('L1', rectangle(0, 0, 60, 40)), loop('L2', rectangle(1.2, 10, 20, 20), 1, 'L1')]));
    expect(doneTextOf(web(part))).toBe('The opening is finished before the outside is cut.');
  });
});
