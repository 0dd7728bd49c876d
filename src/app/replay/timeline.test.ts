/** Moments, moves and blocks found from each other, on a small run whose numbers are plain. */
/** Clock, machine minutes, moves and blocks, each found from the other. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { ScheduleView } from '../work/views.ts';
import { atMoment } from './at-moment.ts';
import { momentOfBlock, nextStep, standingAt, stepBefore, timelineOf } from './timeline.ts';

const MONDAY = 4 * 1440;

/** Start at 100: travel 1 min (block 2), thread 2 (3), cut 4 (blocks 4, 5, 6), stop 3 (7), cut 2 (8). */
const event = (kind: string, from: number, to: number, block: number, piece = 1): ScheduleView['events'][number] => ({
  kind,
  from: MONDAY + from,
  to: MONDAY + to,
  what: kind,
  needsPerson: kind === 'stop',
  atNight: false,
  timeOfDay: '',
  block,
  piece,
});
const events = [
  event('travel', 0, 1, 2),
  event('threading', 1, 3, 3),
  event('cutting', 3, 7, 4),
  event('stop', 7, 10, 7),
  event('cutting', 10, 12, 8),
];
const scheduleInHours = (all: ScheduleView['events']): ScheduleView => ({
  start: MONDAY,
  finish: there(all.at(-1)).to,
  startText: '',
  finishText: '',
  events: all,
  nights: [],
  week: [],
});
const straight = (x1: number, x2: number): number[] => [x1, 0, x2, 0, 0, 0, 0, 0];
const moves = {
  block: Uint32Array.from([2, 4, 5, 5, 6, 8]),
  segments: Float64Array.from([
    ...straight(0, 1),
    ...straight(1, 2),
    ...straight(2, 3),
    ...straight(3, 4),
    ...straight(4, 5),
    ...straight(5, 7),
  ]),
  cutting: Uint8Array.from([0, 1, 1, 1, 1, 1]),
  begins: Float64Array.from([0, 1, 2, 3, 4, 5]),
  pass: Uint8Array.from([0, 1, 1, 1, 1, 1]),
};
const program = { moves, minutes: 7, kerf: 0.3, falls: [{ block: 8, role: 'slug' as const, loop: 'L1' }] };
const timeline = timelineOf(scheduleInHours(events), program);

describe('the timeline of a run', () => {
  it('finds move, share and block of a moment while the wire moves', () => {
    expect(standingAt(timeline, 0.5)).toMatchObject({ move: 0, share: 0.5, block: 2, moving: true });
    expect(standingAt(timeline, 4.25)).toMatchObject({ move: 2, share: 0.25, block: 5, moving: true });
    expect(standingAt(timeline, 11)).toMatchObject({ move: 5, share: 0.5, block: 8, moving: true });
  });
  it('holds the wire where it is while somebody is waited for, and names the block of the stop', () => {
    for (const moment of [7, 8.5, 9.999]) {
      expect(standingAt(timeline, moment)).toMatchObject({ block: 7, moving: false });
      expect(atMoment(timeline, program, moment)).toMatchObject({ wire: { x: 5, y: 0 }, cutUpTo: 5, block: 7, fallen: [] });
    }
  });
  it('lets the slug fall once the move that frees it is done', () => {
    expect(atMoment(timeline, program, 11.9)?.fallen).toEqual([]);
    expect(atMoment(timeline, program, 12)).toMatchObject({ fallen: ['L1'], cutUpTo: 6, wire: { x: 7, y: 0 } });
  });
  it('finds the moment of a block, and at that moment the block', () => {
    for (const block of [2, 3, 4, 5, 6, 7, 8]) expect(standingAt(timeline, momentOfBlock(timeline, block))?.block).toBe(block);
  });
  it('takes the next block that does something for one that does nothing', () => {
    expect(momentOfBlock(timeline, 0)).toBe(0);
    expect(momentOfBlock(timeline, 99)).toBe(12);
  });
  it('steps through all blocks forwards, and the same way back', () => {
    const there = [0];
    for (let at = 0; at < 12; ) {
      at = nextStep(timeline, at);
      there.push(at);
    }
    const moments = [0, 1, 3, 4, 6, 7, 10, 12];
    expect(there.length).toBe(moments.length);
    for (const [i, moment] of moments.entries()) expect(there[i]).toBeCloseTo(moment, 6);
    const back = [12];
    for (let at = 12; at > 0; ) {
      at = stepBefore(timeline, at);
      back.push(at);
    }
    for (const [i, moment] of moments.toReversed().entries()) expect(back[i]).toBeCloseTo(moment, 6);
  });
  it('goes on within a block where a spool was changed', () => {
    const split = timelineOf(
      scheduleInHours([
        ...events.slice(0, 2),
        event('cutting', 3, 5.5, 4),
        event('spool change', 5.5, 15.5, 4),
        event('cutting', 15.5, 17, 4),
        event('cutting', 17, 19, 8),
      ]),
      program,
    );
    expect(standingAt(split, 5)).toMatchObject({ move: 3, block: 5, moving: true });
    expect(standingAt(split, 10)).toMatchObject({ move: 3, moving: false });
    expect(standingAt(split, 10)?.share).toBeCloseTo(0.5, 6);
    expect(standingAt(split, 16)?.move).toBe(4);
    expect(standingAt(split, 16)?.share).toBeCloseTo(0, 5);
    expect(standingAt(split, 18)).toMatchObject({ move: 5, block: 8 });
  });
  it('begins the program anew with each piece', () => {
    const twice = timelineOf(
      scheduleInHours([
        ...events,
        event('loading', 12, 20, 2, 2),
        ...events.map((e) => ({ ...e, from: e.from + 20, to: e.to + 20, piece: 2 })),
      ]),
      program,
    );
    expect(standingAt(twice, 24.25)).toMatchObject({ piece: 2, block: 5, move: 2 });
    expect(standingAt(twice, 4.25)).toMatchObject({ piece: 1, block: 5, move: 2 });
  });
  it('is nowhere in a run without events', () => {
    expect(standingAt({ ...timeline, stretches: [] }, 1)).toBeUndefined();
  });
});
