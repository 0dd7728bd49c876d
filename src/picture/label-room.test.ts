/** Numbers and words of a picture never hide each other. */
import { describe, expect, it } from 'vitest';
import { crowdOf, discAt, placed } from './label-room.ts';

const row = (count: number, apart: number) => Array.from({ length: count }, (_, i) => ({ x: i * apart, y: 0 }));
const box = (x: number, y: number) => ({ x, y, across: 10, up: 5 });

describe('room for words', () => {
  it('is given in their order: the next place where the first is covered, none where all are', () => {
    const [first, second, third] = placed([
      { tries: [box(0, 0)] },
      { tries: [box(19, 0), box(20, 0)] },
      { tries: [box(10, 9), box(10, -9)] },
    ]);
    expect([first, second, third]).toEqual([box(0, 0), box(20, 0), undefined]);
  });

  it('is never given on what is taken, but where a word is needed', () => {
    expect(placed([{ tries: [box(3, 3)] }, { tries: [box(4, 4), box(5, 5)], needed: true }], [box(0, 0)])).toEqual([undefined, box(4, 4)]);
  });

  it('is round for numbers in circles: two may stand corner to corner', () => {
    const apart = 2 * 5 * Math.SQRT1_2 + 0.01;
    const boxes = placed([{ tries: [{ x: 0, y: 0, across: 5, up: 5 }] }, { tries: [{ x: apart, y: apart, across: 5, up: 5 }] }]);
    const discs = placed([{ tries: [discAt({ x: 0, y: 0 }, 5)] }, { tries: [discAt({ x: apart, y: apart }, 5)] }]);
    expect([boxes[1] === undefined, discs[1] === undefined]).toEqual([true, false]);
  });
});

describe('numbers of a picture', () => {
  it('keep their size where there is room, get smaller where there is little, and are thinned out where there is none', () => {
    expect(crowdOf(row(9, 20), 5)).toEqual({ share: 1, shown: [0, 1, 2, 3, 4, 5, 6, 7, 8] });
    expect(crowdOf(row(9, 7), 5)).toEqual({ share: 0.6, shown: [0, 1, 2, 3, 4, 5, 6, 7, 8] });
    expect(crowdOf(row(9, 3.5), 5)).toEqual({ share: 0.6, shown: [0, 2, 4, 6, 8] });
  });
});
