/** Numbers of a picture never hide each other. */
import { describe, expect, it } from 'vitest';
import { crowdOf } from './label-room.ts';

const row = (count: number, apart: number) => Array.from({ length: count }, (_, i) => ({ x: i * apart, y: 0 }));

describe('numbers of a picture', () => {
  it('keep their size where there is room, get smaller where there is little, and are thinned out where there is none', () => {
    expect(crowdOf(row(9, 20), 5)).toEqual({ share: 1, shown: [0, 1, 2, 3, 4, 5, 6, 7, 8] });
    expect(crowdOf(row(9, 7), 5)).toEqual({ share: 0.6, shown: [0, 1, 2, 3, 4, 5, 6, 7, 8] });
    expect(crowdOf(row(9, 3.5), 5)).toEqual({ share: 0.6, shown: [0, 2, 4, 6, 8] });
  });
});
