/** Which arcs are laid out as chords before an offset, how many, and which segments are left out as hairs. */
import { describe, expect, it } from 'vitest';
import type { NonEmpty } from '../../sequence/sequence.ts';
import { path } from '../contour.ts';
import { type Arc, arc, line, type Segment } from '../segment.ts';
import { layOut } from './flat-source.ts';

const arcOf = (radius: number, chord: number): Arc => {
  const half = Math.asin(chord / 2 / radius);
  const height = radius * Math.cos(half);
  return arc({ x: 0, y: 0 }, { x: chord, y: 0 }, { x: chord / 2, y: height }, 2 * half);
};
/** How many lines and arcs come of an open path, on one of its sides. */
const laid = (...segments: NonEmpty<Segment>): { readonly curves: number; readonly asChords: boolean } => {
  const layout = layOut([[0, path(segments)]], false);
  if (layout.kind !== 'layout') throw new Error(layout.kind);
  return { curves: layout.sources, asChords: layout.flats.size > 0 };
};
const becomesChords = ([radius, chord]: Two): boolean => laid(arcOf(radius, chord)).asChords;

type Two = readonly [number, number];

describe('an arc laid out for its parallel', () => {
  it.each<readonly [string, Two, Two]>([
    ['its radius is 10 m and more', [9_900, 2], [10_100, 2]],
    ['its centre is 100 m away, however long it is', [99_000, 300], [101_000, 300]],
    ['two hundred chords of 20 picometres rise are enough', [20_000, 11.45], [20_000, 11.2]],
    ['it bends by less than 0.004', [200_000, 808], [200_000, 792]],
  ])('becomes chords where %s', (_, not, yet) => {
    expect([becomesChords(not), becomesChords(yet)]).toEqual([false, true]);
  });
});

describe('a hair', () => {
  it('is left out below half a nanometre', () => {
    const left = (hair: number): number =>
      laid(line({ x: 0, y: 0 }, { x: 9, y: 0 }), line({ x: 9, y: 0 }, { x: 9, y: hair }), line({ x: 9, y: hair }, { x: 0, y: 8 })).curves;
    expect([left(4.8e-7), left(5.2e-7)]).toEqual([2, 3]);
  });
});
