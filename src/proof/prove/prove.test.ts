/** The proof on programs written by hand: what it passes, what it refuses, and with which words. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { point } from '../../geometry/segment.ts';
import { remedyTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import { proofPicture } from '../picture/proof-picture.ts';
import type { Wanted } from '../proof.ts';
import { aroundPart, box, codes, cutBox, openingOf, PART, PART_HOLE, question, RADIUS, ring, script } from './by-hand.fixture.ts';
import { proveActions, proveProgram } from './prove.ts';

describe('the proof', () => {
  it('finds an opening right, its slug with mass and block, and its corners as round as the wire', () => {
    const s = openingOf(10, 10);
    s.end();
    const proof = proveActions(s.actions, question([{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }]));
    expect([proof.verdict, codes(proof)]).toEqual(['proven', ['corner-comes-out-round']]);
    const [slug] = proof.loose;
    expect(proof.loose).toHaveLength(1);
    expect(slug).toMatchObject({ loop: 'A', role: 'slug', held: true, block: 9 });
    const side = 10 - 4 * RADIUS;
    const approach = 2 * RADIUS * (5 - 2 * RADIUS) + (Math.PI * RADIUS ** 2) / 2;
    expect(there(slug).area).toBeCloseTo(side ** 2 - approach, 2);
    expect(there(slug).mass).toBeCloseTo(there(slug).area * 25 * 7.7e-6, 12);
    const [contour] = proof.contours;
    expect(there(contour).rounded).toHaveLength(4);
    for (const r of there(contour).rounded) expect(Math.abs(r.radius - RADIUS)).toBeLessThan(2.42 * proof.resolution);
    expect(there(there(contour).rounded[0]).left).toBeCloseTo(RADIUS * (Math.SQRT2 - 1), 3);
  });

  it('says how far a contour is off to its resolution', () => {
    for (const off of [0.0011, -0.0007, 0.004, -0.02]) {
      const s = script();
      s.go(30, 20);
      s.stop('');
      s.cut(35 - RADIUS - off, 20);
      s.circle(30, 20, 5 - RADIUS - off);
      s.end();
      const proof = proveActions(s.actions, question([{ loop: 'A', contour: ring(30, 20, 5), kept: 'die' }]));
      const { gougeMost, leftMost } = there(proof.contours[0]);
      const found = off > 0 ? leftMost.amount : gougeMost.amount;
      expect(Math.abs(found - off)).toBeLessThanOrEqual(proof.resolution);
    }
  });

  it('takes nothing for held when no stop stands before the last cut', () => {
    const s = script();
    s.go(30, 20);
    s.stop('THREAD THE WIRE');
    s.cut(35 - RADIUS, 20);
    s.circle(30, 20, 5 - RADIUS);
    s.stop('');
    s.end();
    const proof = proveActions(s.actions, question([{ loop: 'A', contour: ring(30, 20, 5), kept: 'die' }]));
    expect([proof.verdict, codes(proof), there(proof.loose[0]).held]).toEqual(['not proven', ['piece-falls-unheld'], false]);
    expect(proof.reasons[0]).toMatchObject({ block: 3 });
  });

  it('names an opening that is not cut and a tab that stands', () => {
    const s = openingOf(10, 10);
    const wanted: Wanted[] = [
      { loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' },
      { loop: 'B', contour: box(30, 10, 40, 20), kept: 'die' },
    ];
    const tab = s.actions.slice(0, 8);
    const proof = proveActions([...tab, { kind: 'end', block: 8 }], question(wanted));
    expect(new Set(codes(proof))).toEqual(new Set(['contour-uncut', 'tab-left-standing']));
    expect(proof.contours.map((c) => c.state)).toEqual(['out of tolerance', 'uncut']);
    for (const c of proof.contours) for (const d of [c.leftMost, c.gougeMost]) expect(Number.isFinite(d.amount)).toBe(true);
  });

  it('sees the wire drawn through metal, and a cut without wire', () => {
    const s = openingOf(10, 10);
    const second = openingOf(30, 10, s);
    second.end();
    const wanted: Wanted[] = [10, 30].map((x) => ({ loop: `at ${x}`, contour: box(x, 10, x + 10, 20), kept: 'die' }));
    expect(proveActions(s.actions, question(wanted)).verdict).toBe('proven');
    const silent = s.actions.filter((a) => a.kind !== 'stop' || !a.comment.startsWith('TAKE'));
    expect(codes(proveActions(silent, question(wanted)))).toContain('wire-drawn-through-metal');
    const unthreaded = s.actions.filter((a) => a.kind !== 'stop' || !a.comment.startsWith('THREAD'));
    expect(codes(proveActions(unthreaded, question(wanted)))).toContain('cut-without-wire');
  });

  it('lets a rapid lead the threaded wire where no metal is, and nowhere else', () => {
    const wanted: Wanted[] = [10, 30].map((x) => ({ loop: `at ${x}`, contour: box(x, 10, x + 10, 20), kept: 'die' }));
    const skimmed = (to: number): readonly string[] => {
      const s = openingOf(30, 10, openingOf(10, 10));
      for (const x of [15, 35]) {
        s.stop('CUT THE WIRE');
        s.go(x, 15);
        s.stop('THREAD THE WIRE');
        s.go(x, to);
        s.cut(x, to - 0.1);
      }
      s.end();
      return codes(proveActions(s.actions, question(wanted))).filter((c) => c !== 'corner-comes-out-round');
    };
    // Both slugs are out: the way within each opening is clear, also where the wire comes from the other one.
    expect(skimmed(11)).toEqual([]);
    expect(skimmed(5)).toEqual(expect.arrayContaining(['wire-drawn-through-metal', 'cut-without-wire']));
  });

  it('refuses to thread in full metal, and names the move and the place', () => {
    const wanted: Wanted[] = [{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }];
    const s = openingOf(10, 10);
    s.end();
    const startedAt = (x: number, holes = question(wanted).holes) => {
      const moved = script();
      moved.go(x, 15);
      moved.stop('THREAD THE WIRE');
      moved.cut(15, 15);
      const actions = [...moved.actions, ...s.actions.slice(2)];
      return proveActions(actions, question(wanted, { holes }));
    };
    // 0.125 mm of wire in a hole of 0.13 mm: 5 micrometres of room, and 20 are too many.
    for (const [x, right] of [
      [15, true],
      [15.004, true],
      [15.02, false],
      [13, false],
    ] as const) {
      const proof = startedAt(x);
      expect([x, codes(proof).includes('threaded-in-metal')]).toEqual([x, !right]);
    }
    const { finding, block, at } = there(startedAt(13).reasons.find((r) => r.finding.code === 'threaded-in-metal'));
    expect([finding.code, finding.severity, block, at]).toEqual(['threaded-in-metal', 'refusal', 0, point(13, 15)]);
    expect(sentenceOf(finding)).toContain('nearest hole (0.26 mm across) is 2 mm away');
    const none = startedAt(15, []).findings.find((f) => f.code === 'threaded-in-metal');
    expect([sentenceOf(none).includes('no hole is known'), remedyTextOf(none).includes('list the holes')]).toEqual([true, true]);
  });

  it('threads in a kerf, in the room of a slug that is out, and outside the block, but not where a slug still stands', () => {
    const wanted: Wanted[] = [{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }];
    const again = (x: number, y: number, early = false) => {
      const s = openingOf(10, 10);
      const cuts = s.actions.splice(early ? 6 : s.actions.length);
      s.stop('CUT THE WIRE');
      s.go(x, y);
      s.stop('THREAD THE WIRE');
      s.cut(x + 0.01, y);
      s.end();
      expect(cuts.length > 0).toBe(early);
      return codes(proveActions(s.actions, question(wanted))).includes('threaded-in-metal');
    };
    expect([again(10 + RADIUS, 15), again(12, 12), again(70, 50), again(12, 12, true), again(5, 5)]).toEqual([
      false,
      false,
      false,
      true,
      true,
    ]);
  });

  it('cuts a block in two from edge to edge and knows which piece stays', () => {
    const s = script();
    s.go(20, -1);
    s.stop('THREAD THE WIRE');
    s.cut(20, 39.5);
    s.stop('HOLD THE PIECE');
    s.cut(20, 41);
    s.end();
    const proof = proveActions(s.actions, question([]));
    expect(proof.loose).toHaveLength(1);
    expect(proof.loose[0]).toMatchObject({ role: 'scrap', held: true, block: 4 });
    expect(there(proof.loose[0]).area).toBeCloseTo((20 - RADIUS) * 40, 3);
  });

  it('takes openings off the area of the part round them, wherever they were cut', () => {
    const s = openingOf(25, 15);
    s.go(30, 2);
    s.stop('THREAD THE WIRE');
    cutBox(s, 20 - RADIUS, 5 - RADIUS, 40 + RADIUS, 35 + RADIUS);
    s.end();
    const wanted: Wanted[] = [
      { loop: 'in', contour: box(25, 15, 35, 25), kept: 'die' },
      { loop: 'out', contour: box(20, 5, 40, 35), kept: 'punch' },
    ];
    const proof = proveActions(s.actions, question(wanted, { holes: [{ at: point(22, 30), diameter: 2 }] }));
    const part = proof.loose.find((l) => l.role === 'part');
    const corners = (4 - Math.PI) * RADIUS ** 2;
    expect(there(part).area).toBeCloseTo(600 - (100 - corners) - Math.PI, 2);
    expect(proof.loose.map((l) => l.loop)).toEqual(['in', 'out']);
  });

  it('says that a cut crosses metal that must stay, and names its block', () => {
    const s = openingOf(10, 10);
    s.cut(5, 15);
    s.end();
    const proof = proveActions(s.actions, question([{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }]));
    const crossing = proof.reasons.find((r) => r.finding.code === 'kept-metal-cut');
    expect(crossing?.block).toBe(11);
    expect(there(proof.contours[0]).gougeMost.amount).toBeCloseTo(-(5 + RADIUS), 3);
  });

  it('refuses corners that come out rounder than is allowed', () => {
    const s = openingOf(10, 10);
    s.end();
    const proof = proveActions(s.actions, question([{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }], { insideCorner: 0.1 }));
    expect([proof.verdict, codes(proof)]).toEqual(['not proven', ['corner-too-round']]);
    expect(sentenceOf(proof.findings[0])).toContain('where 0.1 mm is allowed');
  });

  it('remarks on a cut that serves nothing and lies in waste', () => {
    const s = aroundPart(script());
    s.go(50, -1);
    s.stop('THREAD THE WIRE');
    s.cut(50, 5);
    s.end();
    const proof = proveActions(s.actions, question([PART], PART_HOLE));
    expect([proof.verdict, codes(proof)]).toEqual(['proven', ['stray-cut']]);
    expect(proof.findings[0]?.place).toMatchObject({ x: 50, y: 5 });
  });

  it('proves congruent openings once, with the very numbers that each gives alone', () => {
    const two = openingOf(30, 12, openingOf(10, 10));
    two.end();
    const wanted: Wanted[] = [
      { loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' },
      { loop: 'B', contour: box(30, 12, 40, 22), kept: 'die' },
    ];
    const both = proveActions(two.actions, question(wanted));
    const only = openingOf(30, 12);
    only.end();
    const alone = proveActions(only.actions, question([there(wanted[1])]));
    expect(both.contours[1]).toEqual(alone.contours[0]);
    expect({ ...both.loose[1], block: 0 }).toEqual({ ...alone.loose[0], block: 0 });
  });

  it('refuses settings without a gap and values that no proof can use', () => {
    const s = openingOf(10, 10);
    s.end();
    const wanted: Wanted[] = [{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }];
    const gaps = new Map([
      [2, 0.03],
      [3, 0.02],
    ]);
    expect(codes(proveActions(s.actions, question(wanted, { gaps })))).toContain('gap-unknown');
    for (const bad of [{ tolerance: 0 }, { wireDiameter: Number.NaN }, { height: -1 }, { block: box(0, 0, 0, 0) }, { density: Infinity }]) {
      const proof = proveActions(s.actions, question(wanted, bad));
      expect([proof.verdict, codes(proof)]).toEqual(['not proven', ['proof-question-unusable']]);
    }
  });

  it('reads an arc whose ends miss each other by less than a quarter of the tolerance', () => {
    const arcOff = (off: number) => `%\nG71 G90\nG00 X0. Y0.\nG03 X${(10 + off).toFixed(4)} Y10. I0. J10.\nM02\n%\n`;
    const read = (off: number) => codes(proveProgram(question([], { program: arcOff(off), tolerance: 0.02 })));
    expect(read(0.0045)).toContain('arc-ends-apart');
    expect(read(0.0057)).toContain('arc-does-not-close');
  });

  it('proves nothing of a program that breaks a rule, and names the block', () => {
    const program = '%\nG71\nG90\nG41 G01 X1. Y1.\nM02\n%\n';
    const proof = proveProgram(question([], { program }));
    expect(proof.verdict).toBe('not proven');
    expect(codes(proof)).toEqual(['register-not-named', 'program-not-readable']);
  });
});

describe('the picture of the proof', () => {
  it('shows verdict, stops, slug and scale, and no number that is none', () => {
    const s = openingOf(10, 10);
    s.end();
    const asked = question([{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }]);
    const svg = proofPicture(proveActions(s.actions, asked), asked);
    const missing = ['Proven: every contour', 'slug A, 17 g', '>1<', 'mm</text>', 'wire path, condition or register 1'].filter(
      (words) => !svg.includes(words),
    );
    expect(missing).toEqual([]);
    expect(/NaN|Infinity|undefined/.exec(svg)).toBeNull();
  });

  it('is drawn also of a program that was refused', () => {
    const asked = question([{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }], { program: 'nonsense' });
    expect(proofPicture(proveProgram(asked), asked).includes('Not proven: 2 faults')).toBe(true);
  });
});
