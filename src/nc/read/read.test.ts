/** Programs small enough to be read by eye, and what the reader makes of them. */

import { describe, expect, it } from 'vitest';
import { inventedWords } from '../../../test/nc/dialects.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { type Dialect, standardDialect } from '../dialect/dialect.ts';
import type { Action } from './program.ts';
import { programLimits, readProgram } from './read.ts';

const bare: Dialect = { ...standardDialect, percent: false };
const table = new Map([
  [1, 0.2],
  [2, 1],
]);

const read = (text: string, dialect: Dialect = bare) => readProgram(text, dialect, table);
const body = (blocks: string, dialect: Dialect = bare) => read(`G71 G90\nG00 X0. Y0.\n${blocks}\nM02`, dialect);
const codes = (program: ReturnType<typeof read>): readonly string[] => program.findings.map((finding) => finding.code);

const place = (n: number): number => Math.round(n * 1e6) / 1e6 + 0;
const moves = (program: ReturnType<typeof read>) => program.actions.filter((action) => action.kind === 'move');
/** Ends of the wire centre's moves, rounded for reading. */
const ends = (program: ReturnType<typeof read>): readonly (readonly number[])[] =>
  moves(program).map(({ centre }) => [place(centre.to.x), place(centre.to.y)]);
const kinds = (actions: readonly Action[]): readonly string[] => actions.map((action) => action.kind);

describe('reading words', () => {
  it('takes small letters, spaces anywhere and missing zeros', () => {
    expect(ends(read('g21g90 g 0 x 1 . 5 y-.5\n\n  g1X+2.Y0\r\nm2'))).toEqual([
      [1.5, -0.5],
      [2, 0],
    ]);
  });

  it('keeps the motion word, the distance mode and the other coordinate from block to block', () => {
    expect(ends(read('G71 G90 G00 X1. Y1.\nG01 X3.\nY4.\nG91 X-1.\nG90 X0.\nM30'))).toEqual([
      [1, 1],
      [3, 1],
      [3, 4],
      [2, 4],
      [0, 4],
    ]);
  });

  it('reads inch and says when that is not the unit of the dialect', () => {
    const program = read('G70 G90 G00 X1. Y0.5\nM02');
    expect(ends(program)).toEqual([[25.4, 12.7]]);
    expect(codes(program)).toEqual(['units-differ']);
  });

  it('reads a program with the unit words of the other pair as they mean, and asks whether the control has them', () => {
    const millimetres = read('G21 G90 G00 X1. Y0.5\nM02');
    expect([millimetres.state, ends(millimetres), codes(millimetres)]).toEqual(['read', [[1, 0.5]], ['units-of-other-pair']]);
    const inches = read('G20 G90 G00 X1. Y0.5\nM02', { ...bare, units: 'inch' });
    expect([ends(inches), codes(inches)]).toEqual([[[25.4, 12.7]], ['units-of-other-pair']]);
    const older = read('G71 G90 G00 X1. Y0.5\nM02', { ...bare, unitsWord: 'G20/G21' });
    expect([ends(older), codes(older)]).toEqual([[[1, 0.5]], ['units-of-other-pair']]);
    expect(codes(read('G71 G90 G00 X1. Y1.\nM02', { ...bare, unitsWord: 'none' }))).toEqual(['word-unknown']);
  });

  it('keeps the wire where it is when the unit changes', () => {
    expect(ends(read('G71 G90 G00 X25.4 Y0.\nG70 G91 G00 X1. Y0.\nM02'))).toEqual([
      [25.4, 0],
      [50.8, 0],
    ]);
  });

  it('sets the datum by G92 before the first move and not after it', () => {
    expect(ends(read('G71 G91 G92 X0. Y0.\nG00 X1. Y0.\nM02'))).toEqual([[1, 0]]);
    expect(codes(read('G71 G90 G92 X5. Y0.\nG00 X1. Y0.\nM02'))).toEqual(['datum-moved']);
    expect(codes(body('G01 X1. Y0.\nG92 X0. Y0.'))).toEqual(['datum-moved']);
  });

  it('passes over the number of the program at its start, and refuses subprograms by a sentence of their own', () => {
    for (const number of ['O1234', ':17', 'N1 O8']) expect(codes(read(`${number}\nG71 G90\nM02`))).toEqual([]);
    for (const call of ['M98 P1000', 'M99', 'O1000', ':1000']) expect(codes(body(call))).toEqual(['subprogram']);
    expect(sentenceOf(body('M98 P1000').findings[0])).toContain('calls a subprogram');
  });

  it('judges arcs by the digits that the program writes, and by the share of the tolerance that a proof allows', () => {
    const arc = 'G03 X10.002 Y10. I0. J10.';
    const start = 'G71 G90\nG00 X0. Y0.\nG01 X0.001 Y0.\n';
    expect(codes(read(`${start}${arc}\nM02`))).toEqual([]);
    expect(codes(read(`${start}G01 X0.0005 Y0.\n${arc}\nM02`))).toEqual(['arc-does-not-close']);
    expect(codes(read(`${start}G01 X0.001 Y0. (0.20735)\n${arc}\nM02`))).toEqual([]);
    const off = 'G71 G90\nG00 X0. Y0.\nG03 X10.006 Y10. I0. J10.\nM02';
    expect(codes(read(off))).toEqual(['arc-does-not-close']);
    expect(codes(readProgram(off, bare, table, { ...programLimits, arcEnds: 0.01 }))).toEqual(['arc-ends-apart']);
  });

  it('says of a datum that the control keeps that it is not in the program', () => {
    expect(codes(read('G71 G90 G54\nG00 X1. Y0.\nM02'))).toEqual(['zero-of-control']);
    expect(codes(read('G71 G90 G55\nG00 X1. Y0.\nG56\nM02'))).toEqual(['zero-of-control', 'datum-moved']);
  });

  it('gives blocks with line, sequence number and comments', () => {
    const program = read('G71 G90\n\nN7 G00 X1. Y1. (to the hole)\nM02');
    expect(program.blocks.map(({ index, line, sequence, comments }) => [index, line, sequence, comments])).toEqual([
      [0, 1, undefined, []],
      [1, 3, 7, ['to the hole']],
      [2, 4, undefined, []],
    ]);
    expect(moves(program)[0]).toMatchObject({ block: 1, rapid: true });
  });

  it('adds ten thousand incremental steps up without drift', () => {
    const program = read(`G71 G91\n${'G01 X0.1 Y0.3\n'.repeat(10_000)}M02`);
    expect(moves(program).at(-1)?.centre.to).toEqual({ x: 1000, y: 3000 });
  });
});

describe('reading arcs', () => {
  const arcOf = (block: string) => moves(body(block)).map(({ programmed }) => programmed);

  it('reads a quarter by centre and by radius alike', () => {
    const byCentre = arcOf('G03 X2. Y2. I0. J2.');
    expect(byCentre).toMatchObject([{ kind: 'arc', centre: { x: 0, y: 2 }, radius: 2, sweep: Math.PI / 2 }]);
    const [byRadius] = arcOf('G03 X2. Y2. R2.');
    expect(byRadius).toMatchObject({ kind: 'arc', radius: 2 });
    if (byRadius?.kind === 'arc') expect([place(byRadius.centre.x), place(byRadius.centre.y)]).toEqual([0, 2]);
  });

  it('goes the long way for a negative radius and the other way round for G02', () => {
    const sweeps = ['G03 X2. Y2. R-2.', 'G02 X2. Y2. R2.', 'G02 X2. Y2. R-2.'].map((block) =>
      arcOf(block).reduce((sum, arc) => sum + (arc.kind === 'arc' ? arc.sweep : 0), 0),
    );
    expect(sweeps.map((sweep) => place(sweep / (Math.PI / 2)))).toEqual([3, -1, -3]);
  });

  it('reads a full circle as one arc', () => {
    expect(arcOf('G02 X0. Y0. I3. J0.')).toMatchObject([{ kind: 'arc', radius: 3, sweep: -2 * Math.PI, centre: { x: 3, y: 0 } }]);
  });

  it('takes ends off by two digits and refuses three', () => {
    expect(body('G03 X2.0002 Y2. I0. J2.').state).toBe('read');
    expect(codes(body('G03 X2.0003 Y2. I0. J2.'))).toEqual(['arc-does-not-close']);
  });
});

describe('compensating', () => {
  const square = 'G01 X4. Y0.\nG01 X4. Y4.\nG01 X0. Y4.\nG01 X0. Y0.\nG01 X2. Y0.';

  it('enters inside corners where the offset paths cross', () => {
    expect(ends(read(`G71 G90 G00 X2. Y2.\nG41 D1 G01 X2. Y0.\n${square}\nG40 G01 X2. Y2.\nM02`))).toEqual([
      [2, 2],
      [2, 0.2],
      [3.8, 0.2],
      [3.8, 3.8],
      [0.2, 3.8],
      [0.2, 0.2],
      [2, 0.2],
      [2, 2],
    ]);
  });

  const outside = (outsideCorners: Dialect['outsideCorners']) =>
    read(`G71 G90 G00 X2. Y-2.\nG42 D1 G01 X2. Y0.\n${square}\nG40 G01 X2. Y-2.\nM02`, { ...bare, outsideCorners });

  it('rounds outside corners about the corner, under the block that ends there', () => {
    const program = outside('arc');
    const corner = moves(program)[3];
    expect(corner).toMatchObject({
      block: 2,
      centre: { kind: 'arc', centre: { x: 4, y: 0 }, radius: 0.2 },
      programmed: { from: { x: 4, y: 0 }, to: { x: 4, y: 0 } },
    });
    expect(ends(program).slice(2, 5)).toEqual([
      [4, -0.2],
      [4.2, 0],
      [4.2, 4],
    ]);
  });

  it('runs on to the crossing of the offset lines where the dialect says so', () => {
    expect(ends(outside('intersection')).slice(2, 5)).toEqual([
      [4.2, -0.2],
      [4.2, 4.2],
      [-0.2, 4.2],
    ]);
  });

  it('rounds a needle also where the dialect runs on', () => {
    const program = body('G41 D1 G01 X5. Y0.\nG01 X5. Y9.\nG01 X5.5 Y0.\nG40 G01 X9. Y0.', { ...bare, outsideCorners: 'intersection' });
    expect(moves(program).filter(({ centre }) => centre.kind === 'arc')).toHaveLength(1);
  });

  it('runs on along the tangent where an arc meets an outside corner', () => {
    const program = body('G42 D1 G01 X5. Y0.\nG01 X7. Y0.\nG03 X9. Y2. I0. J2.\nG01 X4. Y2.\nG40 G01 X0. Y0.', {
      ...bare,
      outsideCorners: 'intersection',
    });
    expect(ends(program)).toEqual([
      [5, -0.2],
      [7, -0.2],
      [9.2, 2],
      [9.2, 2.2],
      [4, 2.2],
      [0, 0],
    ]);
  });

  it('stands still in an inside arc of just the offset, and needs no corner on tangents', () => {
    const program = body('G42 D2 G01 X0. Y-2.\nG01 X-3. Y-2.\nG02 X-3. Y0. I0. J1.\nG01 X0. Y0.\nG40 G01 X0. Y3.');
    expect(ends(program)).toEqual([
      [0, -1],
      [-3, -1],
      [0, -1],
      [0, 3],
    ]);
  });

  it('keeps stops and words in their places between moves that wait for each other', () => {
    const program = body('G41 D1 G01 X2. Y0.\nG01 X4. Y0.\nM00 (CONDITION 3)\nG01 X4. Y4.\nM01 (look)\nG40 G01 X0. Y4.');
    expect(kinds(program.actions)).toEqual(['move', 'move', 'stop', 'condition', 'move', 'stop', 'move', 'end']);
    expect(moves(program).map((move) => move.condition)).toEqual([undefined, undefined, 3, 3]);
  });

  it('gives side and register with every move that has them', () => {
    const program = body('G41 D1 G01 X2. Y0.\nG01 X4. Y0.\nG40 G01 X4. Y4.\nG42 D2 G01 X0. Y4.\nG01 X0. Y9.\nG40\nG01 X0. Y0.');
    expect(moves(program).map(({ side, register }) => [side, register])).toEqual([
      ['left', 1],
      ['left', 1],
      [undefined, undefined],
      ['right', 2],
      ['right', 2],
      [undefined, undefined],
    ]);
  });

  it('meets an arc and a line at an inside corner where their paths cross', () => {
    const program = body('G41 D1 G01 X2. Y0.\nG01 X5. Y0.\nG03 X2. Y3. I-3. J0.\nG40 G01 X0. Y3.');
    // 2.8 from the arc's centre (2, 0), 0.2 above the line.
    expect(ends(program)[1]).toEqual([place(2 + Math.sqrt(2.8 ** 2 - 0.2 ** 2)), 0.2]);
  });
});

describe('stops and words of the dialect', () => {
  it('joins a comment that goes on to the stop behind it', () => {
    const program = body('(left alone)\n(HOLD THE ...)\n(SLUG AND ...)\nM00 (PRESS START)');
    expect(program.actions).toContainEqual({
      kind: 'stop',
      block: 5,
      optional: false,
      comment: 'HOLD THE SLUG AND PRESS START',
      purpose: 'secure slug',
    });
  });

  it('knows the words of the dialect by all their parts', () => {
    const own = { ...bare, words: inventedWords };
    const program = body('M71 P1\nM72\nE4\nG01 X1. Y0.\nM73\nM71 P2', own);
    expect(program.actions.slice(0, 3)).toEqual([
      { kind: 'thread', block: 2 },
      { kind: 'word', block: 3, meaning: 'wire on' },
      { kind: 'condition', block: 4, condition: 4 },
    ]);
    expect(kinds(program.actions).slice(-2)).toEqual(['cut wire', 'end']);
    expect(codes(body('M71', own))).toEqual(['word-unknown']);
    expect(codes(body('M71 P1', bare))).toEqual(['word-unknown']);
    expect(codes(body('M72 G01 X1. Y0.', own))).toEqual(['word-beside-a-move']);
  });

  it('takes a condition from a comment only where the dialect has no word', () => {
    const own = { ...bare, words: inventedWords };
    expect(kinds(body('M00 (CONDITION 2)').actions)).toContain('condition');
    expect(kinds(body('M00 (CONDITION 2)', own).actions)).not.toContain('condition');
  });
});

describe('what the reader refuses', () => {
  it.each([
    ['sign-unknown', 'G01 X1. Y0. &'],
    ['number-bad', 'G01 X Y0.'],
    ['number-bad', 'G01 X1234567890.1234567 Y0.'],
    ['comment-bad', 'M00 (HOLD'],
    ['comment-bad', 'M00 (A (B)'],
    ['comment-bad', 'M00 ; HOLD'],
    ['sequence-number-bad', 'N1.5 G01 X1. Y0.'],
    ['word-unknown', 'G05.2 X1. Y0.'],
    ['word-unknown', 'P4'],
    ['word-unknown', 'E4'],
    ['word-twice', 'G01 X1. X2.'],
    ['word-twice', 'G01 G02 X1. Y0.'],
    ['word-twice', 'G04 P1. X2.'],
    ['axis-unknown', 'G01 X1. Y0. Z2.'],
    ['plane-not-xy', 'G18'],
    ['arc-words-idle', 'G01 X1. Y0. I2. J0.'],
    ['arc-incomplete', 'G02 I2. J0.'],
    ['arc-incomplete', 'G02 X2. Y0.'],
    ['arc-incomplete', 'G02 X2. Y0. I1. J0. R1.'],
    ['arc-radius-zero', 'G02 X2. Y0. I0. J0.'],
    ['arc-radius-zero', 'G02 X2. Y0. R0.'],
    ['coordinate-too-large', 'G01 X200000. Y0.'],
    ['register-unknown', 'G41 D7 G01 X5. Y0.'],
    ['register-unknown', 'G41 D1.5 G01 X5. Y0.'],
    ['approach-too-short', 'G41 D2 G01 X0.5 Y0.\nG01 X0.5 Y9.\nG40 G01 X0. Y9.'],
    ['compensation-on-an-arc', 'G41 D1 G03 X2. Y2. I0. J2.'],
    ['compensation-on-an-arc', 'G41 D1 G01 X5. Y0.\nG01 X5. Y5.\nG40 G03 X7. Y7. I0. J2.'],
    ['compensation-left-on', 'G41 D1 G01 X5. Y0.\nG01 X5. Y5.'],
    ['compensation-forbids', 'G41 D1 G01 X5. Y0.\nG54'],
    ['compensation-without-contour', 'G42 D1 G01 X5. Y0.\nG40 G01 X0. Y5.'],
    ['inside-corner-not-entered', 'G41 D2 G01 X5. Y0.\nG01 X9. Y0.\nG01 X9. Y0.5\nG01 X5. Y0.5\nG40 G01 X0. Y0.5'],
    ['path-turns-back', 'G41 D1 G01 X5. Y0.\nG01 X9. Y0.\nG01 X6. Y0.\nG40 G01 X0. Y0.5'],
    ['block-too-long', `(${'A'.repeat(1200)})`],
    ['units-of-both-pairs', 'G21'],
    ['feed-zero', 'G01 X1. Y0. F0'],
    ['arc-by-k', 'G02 X2. Y0. I1. K0.5'],
    ['arc-radius-too-small', 'G02 X2. Y0. R0.9'],
    ['arc-full-by-radius', 'G03 X0. Y0. R2.'],
    ['register-idle', 'G01 X1. Y0. D1'],
    ['compensation-already-on', 'G41 D1 G01 X5. Y0.\nG42 D1 G01 X5. Y5.\nG40 G01 X0. Y5.'],
    ['arc-tighter-than-offset', 'G41 D1 G01 X5. Y0.\nG01 X9. Y0.\nG03 X9. Y0.3 I0. J0.15\nG01 X5. Y0.3\nG40 G01 X0. Y5.'],
  ])('says %s for %s', (code, blocks) => {
    const program = body(blocks);
    expect(codes(program)).toEqual([code]);
    expect(program.state).toBe('refused');
    expect(program.findings[0]?.place).toMatchObject({ kind: 'line' });
  });

  it('asks for unit and distance mode before the first move', () => {
    expect(codes(read('G90 G00 X1. Y1.\nM02'))).toEqual(['units-not-stated']);
    expect(codes(read('G71 G00 X1. Y1.\nM02'))).toEqual(['distance-mode-not-stated']);
    expect(codes(read('G90 G00 X1. Y1.\nM02', { ...bare, unitsWord: 'none' }))).toEqual([]);
    expect(codes(read('G71 G90 X1. Y1.\nM02'))).toEqual(['motion-not-stated']);
  });

  it('names the block at fault and ends the actions before it', () => {
    const program = read('G71 G90\nN10 G00 X1. Y1.\nN20 G01 X2. Y1.\nN30 G02 X3. Y1.\nN40 G01 X9. Y9.\nM02');
    expect(sentenceOf(program.findings[0])).toMatch(/^Block N30 \(line 4\) /);
    expect(program.actions.map((action) => action.block)).toEqual([1, 2]);
    expect(program.blocks).toHaveLength(4);
  });

  it('has limits with names', () => {
    const limits = { characters: 1000, blocks: 3, charactersInBlock: 100, charactersInComment: 100 };
    expect(codes(readProgram('G71 G90\n'.repeat(200), bare, table, limits))).toEqual(['program-too-long']);
    expect(codes(readProgram('G71\n'.repeat(5), bare, table, limits))).toEqual(['program-too-long']);
    expect(codes(read(''))).toEqual(['program-end-missing']);
    expect(codes(read('(AND SO ON ...)\n'.repeat(500)))).toEqual(['comment-bad']);
  });
});

describe('what the reader remarks', () => {
  it('misses % lines, a decimal point, and finds text behind the end', () => {
    expect(codes(read('G71 G90\nM02', standardDialect))).toEqual(['percent-missing']);
    expect(codes(read('%\nG71 G90\nM02\n%', standardDialect))).toEqual([]);
    expect(codes(body('G01 X10 Y0\nG01 X20 Y0'))).toEqual(['decimal-point-missing']);
    expect(codes(read('G71 G90\nM02\nG00 X1. Y1.'))).toEqual(['program-text-after-end']);
    expect(codes(read('G71 G90\nM02\n\n(THAT IS ALL)\nN7'))).toEqual([]);
  });

  it('refuses words behind the second % mark, before the end of the program or after it, and passes blanks and comments', () => {
    for (const late of ['M50', 'G00 X9. Y9.', 'N9 M30', 'nonsense'])
      expect(codes(read(`%\nG71 G90\nM02\n%\n${late}`))).toContain('words-behind-percent');
    expect(codes(read('%\nG71 G90\n%\nG00 X9. Y9.\nM02'))).toEqual(['words-behind-percent']);
    expect(codes(read('G71 G90\nM02\n%\nM02'))).toEqual(['words-behind-percent']);
    expect(codes(read('%\nG71 G90\nM02\n%\n\n  \n(NEXT TAPE)\n%'))).toEqual([]);
  });

  it('reads a stop that may be skipped as one that may not stop, and refuses a move that may be', () => {
    const stopped = body('/M00 (CONDITION 3)\nG01 X1. Y0.');
    expect(stopped.findings.map((f) => [f.code, f.severity])).toEqual([['block-may-be-skipped', 'doubt']]);
    expect(stopped.actions.find((a) => a.kind === 'stop')).toMatchObject({ optional: true });
    expect(moves(stopped).at(-1)?.condition).toBe(undefined);
    const switched = body('/M50', { ...bare, words: { flushOn: 'M50' } });
    for (const refused of [
      body('/G01 X1. Y0.'),
      body('/G41 D1'),
      body('/G91'),
      body('/G91 M00'),
      body('/G40 M00 (SECURE)'),
      body('/G91 G04 P1.'),
      switched,
    ])
      expect([refused.state, codes(refused)]).toEqual(['refused', ['move-may-be-skipped']]);
    expect(codes(body('/G04 P1.'))).toEqual(['block-may-be-skipped']);
  });

  it('takes M01 for a stop that may not stop', () => {
    const program = body('M01 (CONDITION 3)\nG01 X1. Y0.');
    expect(codes(program)).toEqual(['stop-may-not-stop']);
    expect(moves(program).at(-1)?.condition).toBe(undefined);
    expect(moves(body('M00 (CONDITION 3)\nG01 X1. Y0.')).at(-1)?.condition).toBe(3);
  });
});
