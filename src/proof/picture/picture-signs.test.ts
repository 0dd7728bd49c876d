/** Words on the proof's picture hide no others, and marks are never left out. */
import { describe, expect, it } from 'vitest';
import { frameOf } from './picture-frame.ts';
import { drawnSigns, type Sign } from './picture-signs.ts';

const frame = frameOf({ minX: 0, minY: 0, maxX: 0.4, maxY: 0.3 });
const sign = (words: string, x: number, y: number): Sign => ({ mark: '<circle/>', at: { x, y }, words, colour: '#111', box: true });

describe('words on the proof picture', () => {
  it('are left out where they would hide what was written before, while their mark stays', () => {
    const svg = drawnSigns([sign('first', 100, 100), sign('hidden', 110, 104), sign('below', 110, 130)], frame);
    expect(svg.match(/<circle/g)).toHaveLength(3);
    expect([...svg.matchAll(/>([a-z]+)<\/text>/g)].map((m) => m[1])).toEqual(['first', 'below']);
  });

  it('have the same size in pixels however small the work is', () => {
    const large = frameOf({ minX: 0, minY: 0, maxX: 4000, maxY: 3000 });
    expect([frame.letter, frame.width, frame.x(0.4) - frame.x(0)]).toEqual([large.letter, large.width, expect.closeTo(1000, 6)]);
    expect(frame.letter).toBeGreaterThan(10);
  });
});
