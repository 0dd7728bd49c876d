/** How a replay goes on by itself. */
/** Playing, pausing and stepping through a run. */
import { describe, expect, it } from 'vitest';
import { goneOn, steppedOn, usualSpeed } from './playing.ts';
import type { Timeline } from './timeline.ts';

const event = (kind: string, from: number, to: number) => ({
  kind,
  from,
  to,
  piece: 1,
  what: kind,
  needsPerson: false,
  atNight: false,
  timeOfDay: '',
});

/** 10 min of cutting, a wait of 600, 10 of cutting. */
const timeline: Timeline = {
  stretches: [
    {
      from: 0,
      to: 10,
      moving: true,
      machineFrom: 0,
      machineTo: 10,
      firstMove: 0,
      endMove: 1,
      piece: 1,
      block: 1,
      event: event('cutting', 0, 10),
    },
    {
      from: 10,
      to: 610,
      moving: false,
      machineFrom: 10,
      machineTo: 10,
      firstMove: 1,
      endMove: 1,
      piece: 1,
      block: 2,
      event: event('waiting for a person', 10, 610),
    },
    {
      from: 610,
      to: 620,
      moving: true,
      machineFrom: 10,
      machineTo: 20,
      firstMove: 1,
      endMove: 2,
      piece: 1,
      block: 3,
      event: event('cutting', 610, 620),
    },
  ],
  moves: {
    block: Uint32Array.from([1, 3]),
    segments: new Float64Array(16),
    cutting: Uint8Array.from([1, 1]),
    begins: Float64Array.from([0, 10]),
    pass: Uint8Array.from([1, 1]),
  },
  minutes: 20,
  length: 620,
};

describe('a replay that plays', () => {
  it('goes on by its speed while the wire moves', () => {
    expect(goneOn(timeline, 1, 2, 3)).toBeCloseTo(7, 9);
  });
  it('passes over a wait quickly, and goes on at its speed behind it', () => {
    const at = goneOn(timeline, 9, 1 / 3 + 0.7 + 1, 3);
    expect(at).toBeCloseTo(613, 4);
  });
  it('ends at the end', () => {
    expect(goneOn(timeline, 600, 1000, 60)).toBe(620);
  });
  it('begins at a speed at which it lasts about a minute', () => {
    expect(usualSpeed({ ...timeline, length: 305 })).toBe(5);
    expect(usualSpeed({ ...timeline, length: 8 })).toBe(0.1);
  });
  it('goes block by block for whoever wants less motion', () => {
    expect(steppedOn(timeline, 0)).toBe(10);
    expect(steppedOn(timeline, 10)).toBe(610);
  });
});
