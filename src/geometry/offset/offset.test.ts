/** The named outcomes of offsets, one by one, and the corners that are extended instead of rounded. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf, perimeterOf } from '../area.ts';
import { reverseChain } from '../chain.ts';
import { contour, path } from '../contour.ts';
import { disc, polygon, rectangle, roundedRectangle } from '../example-shapes.fixture.ts';
import { line } from '../segment.ts';
import { faultsOf } from './judge.fixture.ts';
import { offsetContour, offsetPath, offsetRegion } from './offset.ts';
import { open } from './opening.ts';

const corner = (x: number, y: number) => ({ x, y });

describe('what an offset ends in', () => {
  it('names self-crossing input with the place and both segments', () => {
    const bow = polygon([
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ]);
    expect(offsetContour(bow, 0.5)).toEqual({
      kind: 'self-crossing',
      places: [{ kind: 'crossing', at: { x: 2, y: 2 }, first: { contour: 0, segment: 0 }, second: { contour: 0, segment: 2 } }],
    });
  });

  it('names contours of a region that cross each other', () => {
    const outcome = offsetRegion({ outer: rectangle(10, 10), holes: [reverseChain(disc(9, 5, 2))] }, 0.5);
    expect(outcome.kind === 'self-crossing' && outcome.places.map((p) => [p.kind, p.first.contour, p.second.contour])).toEqual([
      ['crossing', 0, 1],
      ['crossing', 0, 1],
    ]);
  });

  it('names a spike without width as an overlap', () => {
    const outcome = offsetContour(
      polygon([
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 10],
        [5, 15],
        [5, 10],
        [0, 10],
      ]),
      1,
    );
    expect(outcome.kind === 'self-crossing' && outcome.places.some((p) => p.kind === 'overlap')).toBe(true);
  });

  it('says what is unsound', () => {
    const what = (outcome: { kind: string }): unknown => ('what' in outcome ? outcome.what : outcome.kind);
    const [a, b, c] = [corner(0, 0), corner(5, 0), corner(0, 5)];
    expect(what(offsetContour(rectangle(1, 1), Number.NaN))).toBe('distance is not a number');
    expect(what(offsetContour(contour([line(a, b), line(b, c)]), 1))).toBe('not joined');
    expect(what(offsetContour(contour([line(a, a), line(a, b), line(b, c), line(c, a)]), 1))).toBe('zero-length segment');
    expect(what(offsetContour(contour([line(a, corner(Number.NaN, 1))]), 1))).toBe('not a number');
    expect(what(offsetRegion({ outer: reverseChain(rectangle(1, 1)), holes: [] }, 0.1))).toBe('wrong winding');
  });

  it('tells the widest place of what vanished', () => {
    const outcome = offsetContour(rectangle(10, 6), 3.5);
    expect(outcome.kind).toBe('vanished');
    if (outcome.kind !== 'vanished') return;
    expect(outcome.widest).toBeCloseTo(3, 6);
    expect(outcome.atMost).toBeLessThanOrEqual(3.5);
    expect(outcome.at.y).toBeCloseTo(3, 6);
  });

  it('tells pockets that growing closes off apart from contours', () => {
    const mouth = polygon([
      [0, 0],
      [10, 0],
      [10, 4.5],
      [8, 4.5],
      [8, 2],
      [2, 2],
      [2, 8],
      [8, 8],
      [8, 5.5],
      [10, 5.5],
      [10, 10],
      [0, 10],
    ]);
    const outcome = offsetContour(mouth, -0.6);
    expect(outcome.kind === 'offset' && [outcome.contours.length, outcome.enclosed.length]).toEqual([1, 1]);
    if (outcome.kind === 'offset')
      expect([areaOf(there(outcome.contours[0])) > 0, areaOf(there(outcome.enclosed[0])) < 0]).toEqual([true, true]);
  });

  it('splits at a neck and keeps a circle one arc', () => {
    const outcome = offsetContour(
      polygon([
        [0, 0],
        [6, 0],
        [6, 2.7],
        [10, 2.7],
        [10, 0],
        [16, 0],
        [16, 6],
        [10, 6],
        [10, 3.3],
        [6, 3.3],
        [6, 6],
        [0, 6],
      ]),
      0.5,
    );
    expect(outcome.kind === 'offset' && outcome.contours.length).toBe(2);
    const round = offsetContour(disc(1, 2, 5), 2);
    expect(round.kind === 'offset' && there(round.contours[0]).segments.map((s) => s.kind === 'arc' && [s.radius, s.sweep])).toEqual([
      [3, 2 * Math.PI],
    ]);
  });
});

describe('corners on the side that opens', () => {
  it('are extended where asked, and rounded and told where they would reach too far', () => {
    const square = offsetContour(rectangle(10, 6), -1, { join: 'intersection' });
    expect(square.kind === 'offset' && areaOf(there(square.contours[0]))).toBeCloseTo(12 * 8, 9);
    const sharp = offsetContour(
      polygon([
        [0, 0],
        [10, 0],
        [10, 2],
      ]),
      -1,
      { join: 'intersection' },
    );
    expect(sharp.kind === 'offset' && sharp.rounded).toEqual([{ x: 0, y: 0 }]);
    const farther = offsetContour(
      polygon([
        [0, 0],
        [10, 0],
        [10, 2],
      ]),
      -1,
      { join: 'intersection', reach: 20 },
    );
    expect(farther.kind === 'offset' && [farther.rounded.length, there(farther.contours[0]).segments.length]).toEqual([0, 3]);
  });
});

describe('offsets of open paths', () => {
  const bend = path([line(corner(0, 0), corner(10, 0)), line(corner(10, 0), corner(10, 10))]);

  it('run on one side only', () => {
    const left = offsetPath(bend, 1);
    const right = offsetPath(bend, -1);
    expect(left.kind === 'offset' && left.paths.map(perimeterOf)).toEqual([18]);
    expect(right.kind === 'offset' && right.paths.map(perimeterOf)[0]).toBeCloseTo(20 + Math.PI / 2, 12);
    if (right.kind !== 'offset') return;
    expect(faultsOf([bend], right.paths, 1)).toEqual([]);
    expect([there(there(right.paths[0]).segments[0]).from, there(there(right.paths[0]).segments.at(-1)).to]).toEqual([
      corner(0, -1),
      corner(11, 10),
    ]);
  });

  it('break where the path comes back near itself, and vanish where it is nowhere far enough', () => {
    const hook = path([line(corner(0, 0), corner(20, 0)), line(corner(20, 0), corner(20, 3)), line(corner(20, 3), corner(10, 3))]);
    const outcome = offsetPath(hook, 2);
    expect(outcome.kind).toBe('offset');
    if (outcome.kind === 'offset') expect(faultsOf([hook], [...outcome.paths, ...outcome.loops], 2)).toEqual([]);
    const narrow = path([line(corner(0, 0), corner(5, 0)), line(corner(5, 0), corner(5, 1)), line(corner(5, 1), corner(0, 1))]);
    expect(offsetPath(narrow, 1).kind).toBe('vanished');
  });
});

describe('openings', () => {
  it('round the inside corners of a rectangle by exactly the radius', () => {
    const opened = open(rectangle(10, 6), 1.5);
    if (opened.kind !== 'offset') throw new Error(opened.kind);
    const arcs = there(opened.regions[0]).outer.segments.filter((s) => s.kind === 'arc');
    expect(arcs.map((s) => s.radius)).toEqual([1.5, 1.5, 1.5, 1.5]);
    expect(areaOf(there(opened.regions[0]).outer)).toBeCloseTo(60 - (4 - Math.PI) * 1.5 ** 2, 9);
  });

  it('leave a shape whose corners have the radius already as it is', () => {
    const shape = roundedRectangle(20, 10, 2);
    const opened = open(shape, 2);
    if (opened.kind !== 'offset') throw new Error(opened.kind);
    expect(there(opened.regions[0]).outer.segments.length).toBe(8);
    expect(areaOf(there(opened.regions[0]).outer)).toBeCloseTo(areaOf(shape), 7);
  });
});
