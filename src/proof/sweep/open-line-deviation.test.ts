/** The proof on open lines and slits cut by hand: what it passes, what it refuses, and what it says of the pieces. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { type Contour, path, polygon, polyline } from '../../geometry/contour.ts';
import { line, type Point, point } from '../../geometry/segment.ts';
import { standardDialect } from '../../nc/dialect/dialect.ts';
import type { Action } from '../../nc/read/program.ts';
import type { Proof, ProofQuestion, WantedOpen } from '../proof.ts';
import { faults } from '../prove/by-hand.fixture.ts';
import { proveActions } from '../prove/prove.ts';

const box = (x0: number, y0: number, x1: number, y1: number): Contour =>
  polygon([point(x0, y0), point(x1, y0), point(x1, y1), point(x0, y1)]);

const RADIUS = 0.155;

const question = (wantedOpen: readonly WantedOpen[], more: Partial<ProofQuestion> = {}): ProofQuestion => ({
  program: '',
  dialect: standardDialect,
  registers: new Map([[1, RADIUS]]),
  wireDiameter: 0.25,
  gaps: new Map([[1, 0.03]]),
  wanted: [],
  wantedOpen,
  block: box(0, 0, 60, 40),
  holes: [],
  height: 25,
  density: 7.7,
  tolerance: 0.002,
  insideCorner: 0.16,
  ...more,
});

/** Threads the wire at the first place, and at the one after the wire was cut; cuts to all others. Words in between are stops. */
const cutting = (...way: readonly (Point | string)[]): readonly Action[] => {
  const actions: Action[] = [];
  let at = point(0, 0);
  let rapid = true;
  way.forEach((w, block) => {
    if (typeof w === 'string') {
      actions.push({ kind: 'stop', block, optional: false, comment: w, purpose: 'other' });
      rapid = w === 'CUT THE WIRE';
      return;
    }
    const centre = line(at, w);
    actions.push({ kind: 'move', block, rapid, programmed: centre, centre, register: 1 });
    if (rapid) actions.push({ kind: 'stop', block, optional: false, comment: 'THREAD THE WIRE', purpose: 'thread' });
    rapid = false;
    at = w;
  });
  return [...actions, { kind: 'end', block: way.length }];
};

/** Across the block from left to right at a height of 15; the metal above stays, so the wire runs below. */
const across: WantedOpen = { chain: 'C1', path: polyline([point(0, 15), point(60, 15)]), kept: 'left' };
const y = 15 - RADIUS;
const parting = (...deviation: readonly Point[]) =>
  cutting(point(-1, y), ...deviation, point(58, y), 'SECURE THE WASTE', point(61, y), 'TAKE IT OUT');

describe('an open line', () => {
  it('has the fit of the arcs that stand for it counted, and must be finished by the last pass', () => {
    const judged = (fit: number, more: Partial<ProofQuestion> = {}) =>
      faults(proveActions(parting(), question([{ ...across, fit }], { tolerance: 0.004, ...more })));
    expect([judged(0.0006), judged(0.0009)]).toEqual([[], ['metal-left', 'contour-gouged']]);
    const gaps = new Map([
      [1, 0.03],
      [2, 0.02],
    ]);
    expect([judged(0, { gaps, passes: [1] }), judged(0, { gaps, passes: [1, 2] })]).toEqual([[], ['finish-on-rough-energy']]);
  });

  it('is right where the side that stays begins on it, and the waste that falls was held', () => {
    const proof = proveActions(parting(), question([across]));
    expect([proof.verdict, faults(proof)]).toEqual(['proven', []]);
    expect(proof.open).toMatchObject([{ chain: 'C1', kept: 'left', state: 'right' }]);
    expect(proof.loose.map(({ role, held, area }) => [role, held, Math.round(area)])).toEqual([
      ['scrap', true, Math.round(60 * (15 - 2 * RADIUS))],
    ]);
  });

  it.each([
    [0.004, 'contour-gouged'],
    [-0.004, 'metal-left'],
  ] as const)('is refused when the wire is off by %d mm', (off, code) => {
    const bent = [point(20, y + off), point(30, y + off)];
    const proof = proveActions(parting(...bent), question([across]));
    expect([proof.verdict, faults(proof)]).toEqual(['not proven', [code]]);
    const [{ leftMost, gougeMost }] = proof.open as [NonNullable<Proof['open']>[number]];
    expect(Math.abs(off > 0 ? gougeMost.amount + off : leftMost.amount + off)).toBeLessThan(proof.resolution);
  });

  it('is gouged by a kerf when the wire runs on its wrong side', () => {
    const wrong = 15 + RADIUS;
    const proof = proveActions(cutting(point(-1, wrong), point(58, wrong), 'HOLD', point(61, wrong), 'OUT'), question([across]));
    expect(faults(proof)).toContain('contour-gouged');
    expect(there(there(proof.open)[0]).gougeMost.amount).toBeCloseTo(-2 * RADIUS, 3);
  });

  it('sees a cut that strays deep into the side that stays and comes back', () => {
    const proof = proveActions(parting(point(20, y), point(20, y + 6), point(20, y)), question([across]));
    expect(faults(proof)).toEqual(['kept-metal-cut']);
    expect(there(there(proof.open)[0]).gougeMost.amount).toBeCloseTo(-6, 2);
  });

  it('sees a cut from the edge into the side that stays, even where it never meets the line', () => {
    const actions = cutting(point(-1, y), point(58, y), 'HOLD', point(61, y), 'OUT', point(61, 30), point(50, 30), point(61, 30));
    expect(faults(proveActions(actions, question([across])))).toContain('kept-metal-cut');
  });

  it('is uncut where nothing comes near, and standing where the cut ends early', () => {
    const none = proveActions(cutting(point(-1, 30), point(-1, 31)), question([across]));
    expect([there(there(none.open)[0]).state, faults(none)]).toEqual(['uncut', ['contour-uncut']]);
    const early = proveActions(cutting(point(-1, y), point(40, y)), question([across]));
    expect(faults(early)).toEqual(['tab-left-standing']);
  });

  it('falls unheld without a stop, whichever side is the smaller', () => {
    expect(faults(proveActions(cutting(point(-1, y), point(61, y)), question([across])))).toEqual(['piece-falls-unheld']);
    const below: WantedOpen = { ...across, kept: 'right' };
    const over = 15 + RADIUS;
    const held = proveActions(cutting(point(-1, over), point(58, over), 'HOLD', point(61, over)), question([below]));
    expect([faults(held), held.loose.map((l) => [l.role, l.loop])]).toEqual([[], [['part', 'C1']]]);
  });

  it('may be round in an inside corner as far as is allowed, and is no excuse elsewhere', () => {
    // The line turns up at x 30; the metal below and right of it stays, so the wire runs above and left, in the hollow.
    const bent: WantedOpen = { chain: 'C1', path: polyline([point(0, 15), point(30, 15), point(30, 40)]), kept: 'right' };
    const corner = cutting(
      point(-1, 15 + RADIUS),
      point(30 - RADIUS, 15 + RADIUS),
      point(30 - RADIUS, 38),
      'HOLD',
      point(30 - RADIUS, 41),
      'OUT',
    );
    expect(faults(proveActions(corner, question([bent])))).toEqual([]);
    expect(faults(proveActions(corner, question([bent], { insideCorner: 0.1 })))).toEqual(['metal-left']);
    const round = 0.1;
    const cut = cutting(
      point(-1, 15 + RADIUS),
      point(30 - RADIUS - round, 15 + RADIUS),
      point(30 - RADIUS, 15 + RADIUS + round),
      point(30 - RADIUS, 38),
      'HOLD',
      point(30 - RADIUS, 41),
      'OUT',
    );
    expect(faults(proveActions(cut, question([bent])))).toEqual(['metal-left']);
  });
});

describe('a slit', () => {
  const slit: WantedOpen = { chain: 'C1', path: polyline([point(0, 15), point(40, 15)]), kept: 'slit' };

  it('is right with the cut along its middle, ending blind', () => {
    const proof = proveActions(cutting(point(-1, 15), point(40, 15)), question([slit]));
    expect([proof.verdict, faults(proof), proof.loose]).toEqual(['proven', [], []]);
  });

  it('is refused off its middle, too short and too long', () => {
    const off = proveActions(cutting(point(-1, 15.004), point(40, 15.004)), question([slit]));
    expect(faults(off)).toEqual(['metal-left', 'contour-gouged']);
    expect(faults(proveActions(cutting(point(-1, 15), point(39.9, 15)), question([slit])))).toEqual(['metal-left']);
    expect(faults(proveActions(cutting(point(-1, 15), point(39, 15)), question([slit])))).toEqual(['tab-left-standing']);
    const long = proveActions(cutting(point(-1, 15), point(42, 15)), question([slit]));
    expect(faults(long)).toEqual(['kept-metal-cut']);
    expect(there(there(long.open)[0]).gougeMost.amount).toBeCloseTo(-2, 2);
  });

  it('parts the block into two pieces that both stay, the smaller one held', () => {
    const parted: WantedOpen = { ...slit, path: polyline([point(0, 15), point(60, 15)]) };
    const proof = proveActions(cutting(point(-1, 15), point(58, 15), 'HOLD', point(61, 15)), question([parted]));
    expect([faults(proof), proof.loose.map((l) => [l.role, l.loop, l.held])]).toEqual([[], [['part', 'C1', true]]]);
    expect(faults(proveActions(cutting(point(-1, 15), point(61, 15)), question([parted])))).toEqual(['piece-falls-unheld']);
  });

  it('excuses the mouth it makes in a contour, and nothing beside it', () => {
    const r = RADIUS;
    const round = [
      point(30, 10 + r),
      point(40 - r, 10 + r),
      point(40 - r, 20 - r),
      point(20 + r, 20 - r),
      point(20 + r, 10 + r),
      point(28, 10 + r),
    ];
    const opening = (x: number) => cutting(point(x, -1), point(x, 13), point(30, 13), ...round, 'HOLD', point(30.2, 10 + r), 'OUT');
    const wanted = [{ loop: 'A', contour: box(20, 10, 40, 20), kept: 'die' as const }];
    const lead: WantedOpen = { chain: 'A lead', path: polyline([point(30, -1), point(30, 10)]), kept: 'slit' };
    expect(faults(proveActions(opening(30), question([lead], { wanted })))).toEqual([]);
    expect(faults(proveActions(opening(30), question([], { wanted })))).not.toEqual([]);
    expect(faults(proveActions(opening(33), question([lead], { wanted })))).not.toEqual([]);
  });
});

describe('a straight cut that nobody wants', () => {
  const opening = (loop: string, x: number, y: number) => ({ loop, contour: box(x, y, x + 10, y + 10), kept: 'die' as const });
  const r = RADIUS;
  /** Round an opening from a place beneath its upper side, to a tab there, the tab, and back to that place. */
  const around = (x: number, y: number, at: number): readonly (Point | string)[] => [
    point(x + at, y + 5),
    point(x + at, y + 10 - r),
    point(x + r, y + 10 - r),
    point(x + r, y + r),
    point(x + 10 - r, y + r),
    point(x + 10 - r, y + 10 - r),
    point(x + at + 2, y + 10 - r),
    'HOLD',
    point(x + at - 0.3, y + 10 - r),
    'OUT',
    point(x + at, y + 5),
  ];

  it('is seen between the edge of the block and an opening, wherever it comes in', () => {
    for (let at = 3; at < 3.4; at += 0.03) {
      const proof = proveActions(cutting(point(20 + at, 41), ...around(20, 10, at)), question([], { wanted: [opening('A', 20, 10)] }));
      expect([at, faults(proof)]).toEqual([at, [expect.stringMatching(/gouged|kept-metal-cut/)]]);
    }
  });

  it('is seen between two openings, and passed where it was asked for', () => {
    const wanted = [opening('A', 10, 10), opening('B', 30, 10)];
    for (let y = 12; y < 12.4; y += 0.06) {
      const way = [...around(10, 10, 3), 'CUT THE WIRE', ...around(30, 10, 3), point(33, y), point(15, y)];
      const slit: WantedOpen = { chain: 'C1', path: polyline([point(20, y), point(30, y)]), kept: 'slit' };
      const holes = [13, 33].map((x) => ({ at: point(x, 15), diameter: 1 }));
      expect([y, faults(proveActions(cutting(...way), question([], { wanted, holes }))).length > 0]).toEqual([y, true]);
      expect([y, faults(proveActions(cutting(...way), question([slit], { wanted, holes })))]).toEqual([y, []]);
    }
  });
});

describe('the edge of the block', () => {
  it('shows the mouth of a slit that was begun aslant', () => {
    const slit: WantedOpen = { chain: 'C1', path: polyline([point(30, 0), point(30, 20)]), kept: 'slit' };
    const begun = (x: number) => faults(proveActions(cutting(point(x, -1.2), point(30, 0), point(30, 20)), question([slit])));
    expect(begun(30)).toEqual([]);
    for (const x of [29.3, 30.7]) expect(begun(x)).toEqual(['contour-gouged']);
  });

  it('may be met aslant by a straight slit', () => {
    const way = polyline([point(30, 0), point(40, 20)]);
    const slit: WantedOpen = { chain: 'C1', path: way, kept: 'slit' };
    expect(faults(proveActions(cutting(point(29, -2), point(30, 0), point(40, 20)), question([slit])))).toEqual([]);
  });

  it('is no cut: a piece parted in one go was not secured on a tab', () => {
    const y = 15 - RADIUS;
    const held = cutting(point(-2, y), point(57, y), 'HOLD', point(62, y), 'OUT');
    const atOnce = cutting(point(-2, y), point(-1, y), 'HOLD', point(62, y), 'OUT');
    expect(faults(proveActions(held, question([across])))).toEqual([]);
    expect(faults(proveActions(atOnce, question([across])))).toEqual(['piece-falls-unheld']);
  });
});

describe('a question about open lines', () => {
  it('is refused where a line has no length', () => {
    const proof = proveActions(parting(), question([{ ...across, path: path([line(point(0, 15), point(0, 15))]) }]));
    expect(faults(proof)).toEqual(['proof-question-unusable']);
  });

  it('leaves the answer without open lines as it was', () => {
    expect(proveActions(parting(), question([])).open).toBe(undefined);
  });
});
