/** Which side of each loop is kept, as the nesting suggests and the user overrules. */

import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { sentenceOf } from '../text/finding.fixture.ts';
import { sortLoops } from './kept-side.ts';
import { disc, loop, plate, questionFor, rectangle } from './plan.fixture.ts';

const nested = [
  loop('L1', rectangle(0, 0, 100, 100)),
  loop('L2', rectangle(10, 10, 60, 60), 1, 'L1'),
  loop('L3', rectangle(20, 20, 20, 20), 2, 'L2'),
  loop('L4', disc(55, 55, 1), 2, 'L2'),
];

const keptOf = (changes: Parameters<typeof questionFor>[1] = {}) => {
  const sorted = sortLoops(questionFor(nested, changes));
  return {
    cut: Object.fromEntries(sorted.cut.map((k) => [k.loop.id, k.kept])),
    block: sorted.block.map((l) => l.id),
    holes: sorted.drawnHoles,
    codes: sorted.findings.map((f) => f.code),
  };
};

describe('kept sides', () => {
  it('come from the nesting: part, opening, island, start hole', () => {
    const { cut, block, holes } = keptOf();
    expect(cut).toEqual({ L1: 'punch', L2: 'die', L3: 'punch' });
    expect(block).toEqual([]);
    expect(holes).toHaveLength(1);
    expect(there(holes[0]).diameter).toBeCloseTo(2, 9);
    expect(there(holes[0]).at.x).toBeCloseTo(55, 9);
  });

  it('move one level out when the outermost loop is the block', () => {
    const { cut, block, holes } = keptOf({ outline: 'block' });
    expect(cut).toEqual({ L2: 'die', L3: 'punch' });
    expect(block).toEqual(['L1']);
    expect(holes).toHaveLength(1);
  });

  it('give way to the user, who is told of names that do not exist', () => {
    const { cut, codes } = keptOf({ kept: { L3: 'die', L2: 'leave', L4: 'punch', L9: 'die' } });
    expect(cut).toEqual({ L1: 'punch', L3: 'die', L4: 'punch' });
    expect(codes.filter((c) => c === 'kept-of-unknown-loop')).toHaveLength(1);
  });

  it('are stated, loops decided alike in one sentence', () => {
    const findings = sortLoops(questionFor(plate())).findings;
    expect(findings.map((f) => f.code)).toEqual(['kept-side', 'kept-side']);
    expect(sentenceOf(findings[1])).toContain('L2, L3, L4 and L5 are openings');
    const many = Array.from({ length: 40 }, (_, i) => loop(`L${i + 2}`, disc(5 * i, 5, 2), 1, 'L1'));
    const told = sortLoops(questionFor([loop('L1', rectangle(-5, 0, 300, 20)), ...many])).findings;
    expect(sentenceOf(told[1])).toContain('L13 and 28 more');
  });

  it('of two openings one in the other are refused: the inner one would be cut into a slug', () => {
    expect(keptOf().codes).not.toContain('opening-in-slug');
    const { findings } = sortLoops(questionFor(nested, { kept: { L1: 'die' } }));
    const refusal = there(findings.find((f) => f.code === 'opening-in-slug'));
    expect(sentenceOf(refusal)).toContain('L2 would be an opening in the slug of L1');
    expect(keptOf({ kept: { L1: 'die', L2: 'punch', L3: 'die' } }).codes).not.toContain('opening-in-slug');
    expect(keptOf({ kept: { L1: 'die', L2: 'leave', L3: 'die' } }).codes).toContain('opening-in-slug');
  });
});
