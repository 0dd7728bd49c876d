/** The words that thread and cut the wire: where the dialect has one, no stop stands in for it. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { line, point } from '../../geometry/segment.ts';
import { type Dialect, standardDialect } from '../../nc/dialect/dialect.ts';
import type { Action } from '../../nc/read/program.ts';
import { box, faults, openingOf, question } from './by-hand.fixture.ts';
import { proveActions } from './prove.ts';

const speaking: Dialect = { ...standardDialect, words: { thread: 'M801', cutWire: 'M802' } };
const wanted = [10, 30].map((x) => ({ loop: `at ${x}`, contour: box(x, 10, x + 10, 20), kept: 'die' as const }));

/** Two openings, in a dialect that threads and cuts the wire by words. */
const twoOpenings = (): readonly Action[] => {
  const s = openingOf(30, 10, openingOf(10, 10));
  s.end();
  const actions = s.actions.flatMap((a): readonly Action[] => {
    if (a.kind === 'stop' && a.purpose === 'thread') return [{ kind: 'thread', block: a.block }];
    if (a.kind === 'stop' && a.purpose === 'take out slug') return [a, { kind: 'cut wire', block: a.block }];
    return [a];
  });
  return actions;
};

const proven = (actions: readonly Action[], dialect = speaking) => faults(proveActions(actions, question(wanted, { dialect })));

const bareStop = (block: number): Action => ({ kind: 'stop', block, optional: false, comment: '', purpose: 'other' });

const last = (actions: readonly Action[], kind: Action['kind']): number => actions.findLastIndex((a) => a.kind === kind);

describe('where the dialect has a word for it', () => {
  const good = twoOpenings();

  it('a program that threads and cuts the wire by words is proven', () => {
    expect(proven(good)).toEqual([]);
  });

  it('a missing threading is no less missing behind a bare stop', () => {
    const at = last(good, 'thread');
    const stopped = bareStop(there(good[at]).block);
    expect(proven(good.toSpliced(at, 1))).toEqual(['cut-without-wire']);
    expect(proven(good.toSpliced(at, 1, stopped))).toEqual(['cut-without-wire']);
    expect(proven(good.toSpliced(at, 1, { ...stopped, comment: 'THREAD BY HAND', purpose: 'thread' } as Action))).toEqual([]);
  });

  it('a missing cut of the wire is found on the way to the next opening and at the end', () => {
    const [first, end] = [good.findIndex((a) => a.kind === 'cut wire'), last(good, 'cut wire')];
    for (const instead of [[], [bareStop(0)]]) {
      expect(proven(good.toSpliced(first, 1, ...instead))).toEqual(['wire-drawn-through-metal']);
      expect(proven(good.toSpliced(end, 1, ...instead))).toEqual(['wire-left-threaded']);
    }
  });

  it('the wire is threaded once: not twice in a row, nor in the middle of a cut', () => {
    const thread: Action = { kind: 'thread', block: 0 };
    const at = last(good, 'thread');
    expect(proven(good.toSpliced(at, 0, thread))).toEqual(['threaded-twice']);
    expect(proven(good.toSpliced(at + 3, 0, thread))).toContain('threaded-twice');
    // Cut before it, by word or by a stop that says so, it may be threaded again.
    const cut: Action = { kind: 'cut wire', block: 0 };
    expect(proven(good.toSpliced(at, 0, thread, cut))).toEqual([]);
    expect(proven(good.toSpliced(at, 0, cut))).toEqual([]);
  });

  it('and has none, a bare stop may be for it', () => {
    const mute: Dialect = { ...standardDialect, words: {} };
    const at = last(good, 'thread');
    expect(proven(good.toSpliced(at, 1, bareStop(0)), mute)).toEqual([]);
    expect(proven(good.toSpliced(last(good, 'cut wire'), 1), mute)).toEqual([]);
    const optional = { ...bareStop(0), optional: true } as Action;
    expect(proven(good.toSpliced(at, 1, optional), mute)).toEqual(['cut-without-wire']);
  });

  it('the wire may be led about in an opening that is empty, and cut there, and not out of it or in one whose slug still stands', () => {
    const led = (x: number, y: number, before = 'cut wire'): readonly Action[] => {
      const at = good.findIndex((a) => a.kind === before);
      const from = there(good.slice(0, at).findLast((a) => a.kind === 'move'));
      if (from.kind !== 'move') throw new Error('a program moves');
      const way = line(from.centre.to, point(x, y));
      return good.toSpliced(at, 0, { kind: 'move', block: from.block, rapid: true, programmed: way, centre: way });
    };
    expect(proven(led(15, 15))).toEqual([]);
    expect(proven(led(11, 19.5))).toEqual([]);
    expect(proven(led(15, 22))).toEqual(['wire-drawn-through-metal']);
    expect(proven(led(15, 15, 'stop'))).toContain('wire-drawn-through-metal');
  });

  it('a hole on the way does not hide it', () => {
    const holes = [
      ...wanted.map((w) => ({
        at: point(w.contour.segments[0] === undefined ? 0 : 5 + there(w.contour.segments[0]).from.x, 15),
        diameter: 1,
      })),
    ];
    const at = last(good, 'thread');
    expect(faults(proveActions(good.toSpliced(at, 1, bareStop(0)), question(wanted, { dialect: speaking, holes })))).toEqual([
      'cut-without-wire',
    ]);
  });
});
