/** Nests of plates whose answer is known, the named set, and what is refused. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { reverseChain } from '../../geometry/chain.ts';
import type { Contour } from '../../geometry/contour.ts';
import { disc, polygon, rectangle } from '../../geometry/example-shapes.fixture.ts';
import { rotationOfDegrees, transformChain, translation } from '../../geometry/transform.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { LaidNest } from '../nest-outcome.ts';
import type { NestPiece, NestQuestion, Turns } from '../nest-question.ts';
import { MIXED_SIXTEEN, mixedParts } from './mixed-parts.fixture.ts';
import { faultsOf, metalByLibrary } from './nest.fixture.ts';
import { nest } from './nest.ts';

const piece = (id: string, outline: Contour, quantity: number, turns: Turns = 'none', holes: readonly Contour[] = []): NestPiece => ({
  id,
  outline,
  holes,
  quantity,
  turns,
  mirrored: false,
});

const asked = (plate: Contour, pieces: readonly NestPiece[], more: Partial<NestQuestion> = {}): NestQuestion => ({
  plate,
  border: 0,
  forbidden: [],
  pieces,
  web: 0,
  manner: 'rows',
  work: 2e7,
  ...more,
});

const laid = (question: NestQuestion): LaidNest => {
  const answer = nest(question);
  if (answer.kind === 'refused') throw new Error(answer.findings.map((f) => sentenceOf(f)).join(' '));
  expect(faultsOf(question, answer)).toEqual([]);
  expect(answer.yield).toBeLessThanOrEqual(answer.bound * (1 + 1e-9));
  return answer;
};

const codes = (question: NestQuestion): readonly string[] => nest(question).findings.map((f) => f.code);

const triangle = polygon([
  [0, 0],
  [40, 0],
  [0, 40],
]);

describe('rows', () => {
  it('fill a plate that is exactly as large as webs, margins and pieces together', () => {
    const answer = laid(asked(rectangle(108, 47), [piece('a', rectangle(20, 10), 99)], { border: 2, web: 1 }));
    expect(answer.placed).toHaveLength(20);
    expect(answer.left).toEqual([{ piece: 'a', quantity: 79 }]);
    expect(answer.yield).toBeCloseTo(4000 / (108 * 47), 12);
    expect(answer.used).toEqual({ minX: 2, minY: 2, maxX: 106, maxY: 45 });
  });

  it('of discs are offset by half a pitch where that packs more', () => {
    // Four rows at a rise of 10 √3 mm need 71.96 mm, of five and four discs in turn; straight rows would be three of five.
    expect(laid(asked(rectangle(100, 72.1), [piece('disc', disc(0, 0, 10), 99)])).placed).toHaveLength(18);
  });

  it('of half-turned triangles interlock', () => {
    const count = (turns: Turns): number => laid(asked(rectangle(200, 200), [piece('t', triangle, 99, turns)])).placed.length;
    expect(count('half turns')).toBe(50);
    expect(count('none')).toBeLessThan(50);
  });

  it('of both quarter turns share a plate', () => {
    const count = (turns: Turns): number => laid(asked(rectangle(90, 50), [piece('r', rectangle(30, 20), 99, turns)])).placed.length;
    expect(count('none')).toBe(6);
    expect(count('quarter turns')).toBe(7);
  });

  it('keep clear of clamps on a round plate', () => {
    const zones = [transformChain(translation(-60, -10), rectangle(30, 20)), disc(20, 10, 6)];
    const answer = laid(
      asked(disc(0, 0, 60), [piece('r', rectangle(17, 11), 200, 'quarter turns')], { forbidden: zones, border: 3, web: 1 }),
    );
    expect(answer.yield).toBeGreaterThan(0.4);
  });

  it('give each kind its own band', () => {
    const answer = laid(
      asked(rectangle(100, 60), [piece('a', rectangle(20, 20), 5), piece('b', disc(5, 5, 10), 8)], { web: 0.5, border: 0 }),
    );
    expect(answer.placed.filter((p) => p.piece === 'b').length).toBeGreaterThanOrEqual(4);
    expect(answer.manner).toBe('rows');
  });
});

describe('free nesting', () => {
  it("lays the set 'mixed sixteen' with three quarters of the plate in pieces", () => {
    const answer = laid(MIXED_SIXTEEN);
    expect(answer.placed).toHaveLength(60);
    expect(answer.yield).toBeGreaterThanOrEqual(0.75);
    expect(metalByLibrary(MIXED_SIXTEEN, answer)).toBeCloseTo(answer.metalArea, 0);
  });

  it('puts a small piece into the opening of a larger one', () => {
    const pieces = [piece('ring', disc(0, 0, 30), 1, 'none', [disc(0, 0, 20)]), piece('disc', disc(0, 0, 15), 1)];
    const answer = laid(asked(rectangle(64, 64), pieces, { manner: 'free', border: 1, web: 1 }));
    expect(answer.left).toEqual([]);
  });

  it('keeps webs on a plate of any outline with holes and clamps, turned by steps', () => {
    const plate = polygon([
      [0, 0],
      [160, 0],
      [160, 70],
      [90, 70],
      [90, 140],
      [0, 140],
    ]);
    const pieces = mixedParts({ step: 30 }).filter(({ id }) =>
      ['disc', 'small disc', 'feather key', 'drilled plate', 'half disc'].includes(id),
    );
    const question = asked(plate, pieces, { manner: 'free', border: 3, web: 1.5, forbidden: [disc(30, 30, 8), rectangle(25, 12)] });
    const answer = laid(question);
    expect(answer.yield).toBeGreaterThan(0.45);
    expect(nest(question)).toEqual(answer);
  });

  it('is taken where it holds more than rows, and rows where they hold as much', () => {
    const ell = polygon([
      [0, 0],
      [50, 0],
      [50, 12],
      [12, 12],
      [12, 50],
      [0, 50],
    ]);
    const mixed = [piece('ell', ell, 6, 'half turns'), piece('disc', disc(0, 0, 9), 6), piece('bar', rectangle(60, 8), 4, 'quarter turns')];
    expect(laid(asked(rectangle(130, 110), mixed, { manner: 'best', web: 1 })).manner).toBe('free');
    expect(laid(asked(rectangle(100, 50), [piece('a', rectangle(20, 10), 25)], { manner: 'best' })).manner).toBe('rows');
  });

  it('tells how far it is and stops when told to, with a whole layout', () => {
    const shares: number[] = [];
    const question: NestQuestion = {
      ...MIXED_SIXTEEN,
      progress: (share) => {
        shares.push(share);
        return shares.length < 5 ? 'go on' : 'stop';
      },
    };
    const answer = laid(question);
    expect(answer.stopped).toBe(true);
    expect(answer.placed.length).toBeGreaterThan(40);
    expect(answer.findings.map((f) => f.code)).toContain('nest-stopped');
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares).toHaveLength(5);
    const atOnce: NestQuestion = { ...asked(rectangle(100, 50), [piece('a', rectangle(20, 10), 25)]), progress: () => 'stop' };
    expect(laid(atOnce)).toMatchObject({ stopped: true, yield: 1 });
    expect(laid({ ...atOnce, manner: 'free', work: 0, progress: () => 'go on' }).yield).toBeGreaterThan(0.9);
  });
});

describe('the judge', () => {
  it('sees a piece that is moved by a hundredth of a millimetre too near to another', () => {
    const question = asked(rectangle(108, 47), [piece('a', rectangle(20, 10), 20)], { border: 2, web: 1 });
    const answer = laid(question);
    const moved = answer.placed.map((p, i) => (i === 7 ? { ...p, dx: p.dx + 0.01 } : p));
    expect(faultsOf(question, { ...answer, placed: moved })).toHaveLength(1);
  });

  it('sees margins and zones that are not kept', () => {
    const question = asked(rectangle(50, 50), [piece('a', rectangle(20, 10), 1)], { border: 2, web: 1 });
    expect(faultsOf({ ...question, border: 2.01 }, laid(question))).toHaveLength(1);
    expect(faultsOf({ ...question, forbidden: [transformChain(translation(22.99, 0), rectangle(9, 9))] }, laid(question))).toHaveLength(1);
  });
});

describe('findings of a nest', () => {
  const one = [piece('a', rectangle(20, 10), 1)];
  it('name pieces that have no room, with place and size', () => {
    const found = laid(asked(rectangle(30, 30), [...one, piece('long', rectangle(40, 5), 2)], { manner: 'free' })).findings;
    expect(found.map((f) => f.code)).toEqual(['piece-too-large']);
    expect(sentenceOf(found[0])).toContain('40 × 5 mm');
    expect(there(found[0]).place).toEqual({ kind: 'spot', x: 20, y: 2.5 });
    expect(codes(asked(rectangle(30, 12), [piece('a', rectangle(20, 10), 3)]))).toEqual(['pieces-left']);
  });

  it('let a long piece lie aslant where steps are allowed', () => {
    const long = piece('long', rectangle(40, 5), 1, { step: 45 });
    expect(there(laid(asked(rectangle(34, 34), [long], { manner: 'free' })).placed[0]).degrees % 90).toBe(45);
  });

  it('refuse numbers and outlines that cannot be used', () => {
    const plate = rectangle(100, 100);
    expect(codes(asked(plate, one, { border: Number.NaN }))).toContain('nest-value-unusable');
    expect(codes(asked(plate, one, { web: -1 }))).toEqual(['nest-value-unusable']);
    expect(codes(asked(plate, one, { work: Number.NaN }))).toEqual(['nest-value-unusable']);
    expect(codes(asked(plate, []))).toEqual(['nest-value-unusable']);
    expect(codes(asked(plate, [...one, ...one]))).toEqual(['nest-value-unusable']);
    expect(codes(asked(plate, [piece('a', triangle, 1, { step: 0 })]))).toEqual(['nest-value-unusable']);
    expect(codes(asked(plate, [piece('a', triangle, 2001)]))).toEqual(['pieces-too-many']);
    expect(codes(asked(plate, one, { border: 50 }))).toEqual(['plate-too-small']);
    expect(codes(asked(disc(0, 0, 20), one, { border: 20 }))).toEqual(['plate-too-small']);
    const bow = polygon([
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 11],
    ]);
    expect(codes(asked(plate, [piece('bow', bow, 1)], { web: 1 }))).toEqual(['nest-outline-unusable']);
    expect(codes(asked(bow, one))).toEqual(['nest-outline-unusable']);
  });

  it('stay away where a clamp sticks out over the plate, and where the plate is drawn clockwise and turned', () => {
    const turned = transformChain(rotationOfDegrees(30), rectangle(80, 60));
    const clockwise = reverseChain(turned);
    const answer = laid(
      asked(clockwise, [piece('a', rectangle(12, 9), 9, { step: 30 })], { forbidden: [disc(0, 0, 15)], border: 2, web: 1 }),
    );
    expect(answer.findings).toEqual([]);
    expect(answer.placed).toHaveLength(9);
  });
});
