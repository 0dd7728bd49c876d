/** With what energy is cut: faults that change no place of the wire. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { polygon } from '../../geometry/contour.ts';
import { point } from '../../geometry/segment.ts';
import { type Dialect, standardDialect } from '../../nc/dialect/dialect.ts';
import type { Action } from '../../nc/read/program.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Wanted } from '../proof.ts';
import { box, faults, question, script } from './by-hand.fixture.ts';
import { proveActions } from './prove.ts';

const WIRE = 0.125;
const GAPS = new Map([
  [1, 0.035],
  [2, 0.03],
]);
const wanted: Wanted[] = [{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }];

/** The middle of the wire lies so far inside the drawing. */
const inset = { rough: WIRE + 0.035 + 0.004, last: WIRE + 0.03 };

/** A box roughed up to a tab, its tab cut after a stop, then skimmed all round; `use` names the condition of each of the three. */
const roughTabSkim = (use: readonly [rough: number | undefined, tab: number, skim: number], skimTo = 15): readonly Action[] => {
  const s = script();
  const conditions: (number | undefined)[] = [];
  const cut = (condition: number | undefined, x: number, y: number): void => {
    s.cut(x, y);
    conditions.push(condition);
  };
  const [low, high] = [10 + inset.rough, 20 - inset.rough];
  s.go(15, 15);
  s.stop('THREAD THE WIRE');
  for (const [x, y] of [
    [15, low],
    [high, low],
    [high, high],
    [low, high],
    [low, low],
    [13, low],
  ] as const)
    cut(use[0], x, y);
  s.stop('SECURE THE SLUG');
  cut(use[1], 15.2, low);
  s.stop('TAKE THE SLUG OUT');
  const [near, far] = [10 + inset.last, 20 - inset.last];
  for (const [x, y] of [
    [15.2, near],
    [far, near],
    [far, far],
    [near, far],
    [near, near],
    [skimTo, near],
  ] as const)
    cut(use[2], x, y);
  s.end();
  let n = 0;
  return s.actions.map((a) => (a.kind === 'move' && !a.rapid ? { ...a, register: 1, condition: conditions[n++] } : a));
};

const asked = (more = {}) => question(wanted, { gaps: GAPS, tolerance: 0.02, insideCorner: 0.2, ...more });
const proven = (actions: readonly Action[], more = {}) => faults(proveActions(actions, asked(more)));

describe('the energy of a cut', () => {
  it('is right where rough cut and tab have the widest gap and the last pass the narrowest', () => {
    expect(proven(roughTabSkim([1, 1, 2], 15.4))).toEqual([]);
  });

  it('is wrong where a skim runs in full metal or cuts the tab, though every size holds', () => {
    expect(proven(roughTabSkim([2, 1, 2], 15.4))).toEqual(['rough-on-skim-energy', 'pass-left-out']);
    expect(proven(roughTabSkim([1, 2, 2], 15.4))).toContain('tab-on-skim-energy');
  });

  it('is wrong where the last pass does not come round, or was planned finer than it is', () => {
    expect(proven(roughTabSkim([1, 1, 2], 12))).toEqual(['finish-on-rough-energy']);
    const gaps = new Map([...GAPS, [3, 0.025] as const]);
    expect(proven(roughTabSkim([1, 1, 2], 15.4), { gaps, passes: [1, 2, 3] })).toEqual(['finish-on-rough-energy']);
    expect(proven(roughTabSkim([1, 1, 2], 15.4), { gaps })).toEqual([]);
  });

  it('of a skim is told from that of a rough by whether more than half of its kerf is metal', () => {
    const beside = (share: number) => {
      const s = script();
      const width = 2 * (WIRE + there(GAPS.get(2)));
      // As far beyond the rough's wall as the share of the skim's kerf asks for.
      const y = 20 + (WIRE + there(GAPS.get(1))) - width / 2 + share * width;
      for (const at of [20, y]) {
        s.go(-0.3, at);
        s.stop('THREAD THE WIRE');
        s.cut(20, at);
      }
      s.end();
      let n = 0;
      return proveActions(
        s.actions.map((a) => (a.kind === 'move' && !a.rapid ? { ...a, condition: ++n } : a)),
        question([], { gaps: GAPS }),
      ).findings.map((f) => f.code);
    };
    expect(beside(0.44)).not.toContain('rough-on-skim-energy');
    expect(beside(0.6)).toContain('rough-on-skim-energy');
  });

  it('passes over less than an overlap, and no more: 0.05 mm and 0.3 mm of a face that the last pass misses', () => {
    const missed = (length: number) => proven(roughTabSkim([1, 1, 2], 15.2 - inset.last - length));
    expect(missed(0.05)).toEqual([]);
    expect(missed(0.3)).toEqual(['finish-on-rough-energy']);
  });

  it('is told by the place in the list of passes where two of them have one gap', () => {
    const gaps = new Map([...GAPS, [3, there(GAPS.get(2))] as const]);
    const rough = new Map([...GAPS, [3, there(GAPS.get(1))] as const]);
    expect(proven(roughTabSkim([1, 1, 2], 15.4), { gaps, passes: [1, 2] })).toEqual([]);
    expect(proven(roughTabSkim([1, 1, 2], 15.4), { gaps, passes: [1, 2, 3] })).toEqual(['finish-on-rough-energy']);
    expect(proven(roughTabSkim([1, 1, 3], 15.4), { gaps, passes: [1, 2, 3] })).toEqual(['pass-left-out']);
    expect(proven(roughTabSkim([3, 3, 2], 15.4), { gaps: rough, passes: [3, 2] })).toEqual([]);
    expect(proven(roughTabSkim([3, 3, 2], 15.4), { gaps: rough, passes: [1, 3, 2] })).toEqual([
      'rough-on-skim-energy',
      'rough-on-skim-energy',
      'tab-on-skim-energy',
      'pass-left-out',
    ]);
    const same = new Map([1, 2].map((n) => [n, there(GAPS.get(2))] as const));
    expect(proven(roughTabSkim([1, 1, 1], 15.4), { gaps: same, passes: [1, 2], programShare: 1 })).toContain('finish-on-rough-energy');
  });

  describe('of every pass that was planned', () => {
    const gaps = new Map([...GAPS, [3, 0.0325] as const]);
    const planned = { gaps, passes: [1, 3, 2] };
    const [rough, skim] = [WIRE + 0.035, WIRE + 0.0325];
    const [low, high] = [10 + skim, 20 - skim];
    /** With a pass between rough and last, through these places. */
    const through = (places: readonly (readonly [number, number])[]): readonly Action[] => {
      const all = roughTabSkim([1, 1, 2], 15.4);
      const between = script();
      between.go(15.2, 10 + rough + 0.004);
      for (const [x, y] of [...places, [15.4, 10 + rough + 0.004] as const]) between.cut(x, y);
      const at = all.findLastIndex((a) => a.kind === 'stop') + 1;
      const skims = between.actions.flatMap((a) => (a.kind === 'move' && !a.rapid ? [{ ...a, register: 1, condition: 3 }] : []));
      return [...all.slice(0, at), ...skims, ...all.slice(at)];
    };
    const three = (off: number): readonly Action[] => {
      const [near, far] = [low + off, high - off];
      return through([
        [15.2, near],
        [far, near],
        [far, far],
        [near, far],
        [near, near],
        [15.4, near],
      ]);
    };
    /** mm along the face that a cut beside it reaches on, with the stock that a pass may leave. */
    const TURN = Math.sqrt((skim + 0.3) ** 2 - skim ** 2);
    /** All round, but off the face above for so many mm. */
    const without = (length: number): readonly Action[] => {
      const off = high - 0.5;
      // At the two ends of the stretch the pass is near enough until it has gone so far away.
      const [from, to] = [15 + length / 2, 15 - length / 2].map((x, n) => x + (n === 0 ? 1 : -1) * TURN);
      return through([
        [15.2, low],
        [high, low],
        [high, high],
        [there(from), high],
        [there(from), off],
        [there(to), off],
        [there(to), high],
        [low, high],
        [low, low],
        [15.4, low],
      ]);
    };
    it('is missed where one in between is left out, or came by a third of a millimetre off', () => {
      expect(proven(three(0.002), planned)).toEqual([]);
      expect(proven(three(0.25), planned)).toEqual(['pass-left-out']);
      expect(proven(three(0.35), planned)).toEqual(['pass-left-out']);
      expect(proven(roughTabSkim([1, 1, 2], 15.4), planned)).toEqual(['pass-left-out']);
      expect(proven(roughTabSkim([1, 1, 2], 15.4), { gaps })).toEqual([]);
    });

    it('may be missing on half a millimetre beside a corner, and not on more', () => {
      expect(proven(without(0.3), planned)).toEqual([]);
      expect(proven(without(0.7), planned)).toEqual(['pass-left-out']);
    });

    it('is asked of the passes that the program uses where the set-up names none', () => {
      expect(proven(without(0.3), { gaps })).toEqual([]);
      expect(proven(without(0.7), { gaps })).toEqual(['pass-left-out']);
    });

    it('takes something: a pass may leave 5 µm more than the one before it, which was nearer, and no more', () => {
      // The rough leaves 4 µm.
      expect(proven(three(0.004 + 0.004), planned)).toEqual([]);
      const [idle] = proveActions(three(0.004 + 0.006), asked(planned)).findings.filter((f) => f.code === 'pass-left-out');
      expect(sentenceOf(idle)).toMatch(/^Pass 2 of the contour A, with condition 3, takes nothing over [\d.]+ mm/);
    });

    it('is missed by length: short segments where it did run hide nothing', () => {
      const side = Array.from({ length: 61 }, (_, n) => point(10 + n / 6, 10));
      const contour = polygon([...side, point(20, 20), point(10, 20)]);
      const below = through([
        [15.2, low],
        [high, low],
        [low, low],
        [15.4, low],
      ]);
      expect(
        faults(proveActions(below, question([{ loop: 'A', contour, kept: 'die' }], { ...planned, tolerance: 0.02, insideCorner: 0.2 }))),
      ).toEqual(['pass-left-out']);
    });
  });

  it('is not known before a condition is chosen, by word or anywhere else', () => {
    expect(proven(roughTabSkim([undefined, 1, 2], 15.4))).toContain('condition-missing');
    const none = roughTabSkim([1, 1, 2], 15.4).map((a) => (a.kind === 'move' ? { ...a, condition: undefined } : a));
    expect(proven(none, { programShare: 1 })).toEqual([]);
    const dialect: Dialect = { ...standardDialect, words: { condition: 'E{n}' } };
    expect(proven(none, { dialect, programShare: 1 })).toEqual(['condition-missing']);
  });
});
