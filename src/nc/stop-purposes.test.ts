/** Stops keep what they are for on their way through a program: planned by purpose, written as words, read back as purpose. */
import { describe, expect, it } from 'vitest';
import { point } from '../geometry/segment.ts';
import { secure, secureHalf, takeHalf, takeOut } from '../plan/path/piece-stops.ts';
import type { LoosePiece, Step } from '../plan/plan.ts';
import { standardDialect } from './dialect/dialect.ts';
import { readProgram } from './read/read.ts';
import { stopSaid } from './read/stop-purpose.ts';
import { LONGEST_LINE } from './write/comment.ts';
import { writeProgram } from './write/write.ts';

const HANDLINGS: readonly LoosePiece['handling'][] = ['caught', 'lifted', 'held', 'tackle'];

/** All that a piece may be and how it may hang. */
const planned = (['slug', 'part'] as const).flatMap((role) =>
  HANDLINGS.flatMap((handling) =>
    [true, false].flatMap((magnetic) => {
      const piece = { role, handling, magnetic, mass: 0.0005, lever: 12, size: { x: 8, y: 30, height: 25 } };
      return [true, false].flatMap((skims) => [secure(piece, 2, skims), takeOut(piece, skims), secureHalf(piece, 3), takeHalf(piece)]);
    }),
  ),
);

const read = (steps: readonly Step[]) => {
  const program = writeProgram({ steps, passes: [] }, standardDialect, { name: 'Stops', date: '2026-03-04', notes: [] });
  if (program.kind === 'refused') throw new Error(program.findings.map((f) => f.code).join());
  return readProgram(program.text, standardDialect, new Map()).actions.flatMap((a) => (a.kind === 'stop' ? [a] : []));
};

describe('the purpose of a stop', () => {
  it('is read back from every comment that the plan has for a piece, and so is the contour', () => {
    const steps = planned.flatMap((step, i): readonly Step[] => (step.kind === 'stop' ? [{ ...step, loop: `L${i + 1}` }] : []));
    expect(steps).toHaveLength(planned.length);
    expect(read(steps).map(({ purpose, loop }) => ({ purpose, loop }))).toEqual(
      steps.map((s) => (s.kind === 'stop' ? { purpose: s.purpose, loop: s.loop } : undefined)),
    );
  });

  it('is said in one line that a control shows whole, whatever its piece weighs', () => {
    const weighing = (mass: number) => ({ role: 'slug', magnetic: true, mass, lever: 120, size: { x: 380, y: 210, height: 90 } }) as const;
    const steps = [0.0005, 0.0444, 0.54, 12.3].flatMap((mass) =>
      (['slug', 'part'] as const).flatMap((role) =>
        HANDLINGS.flatMap((handling) => {
          const piece = { ...weighing(mass), role, handling };
          return [secure(piece, 2.34, true), secure(piece, 2.34, false), takeOut(piece, true), secureHalf(piece, 12.3), takeHalf(piece)];
        }),
      ),
    );
    const program = writeProgram(
      { steps: steps.flatMap((s): readonly Step[] => (s.kind === 'stop' ? [{ ...s, loop: 'L99' }] : [])), passes: [] },
      standardDialect,
      { name: 'Stops', date: '2026-03-04', notes: [] },
    );
    const comments = program.kind === 'written' ? [...program.text.matchAll(/\((.*)\)/g)].map((m) => m[1] ?? '') : [];
    expect(comments.length).toBeGreaterThan(2 * steps.length);
    expect(comments.filter((c) => c.length > LONGEST_LINE)).toEqual([]);
    // No sentence is parted: a line that is a piece of one would begin or end in its midst.
    expect(comments.filter((c) => /^(AND|OR|THEN|THE)\b|\.\.\.$/.test(c))).toEqual([]);
  });

  it('is the wire where a stop stands for a word of it', () => {
    const stops = read([{ kind: 'thread', at: point(0, 0) }, { kind: 'cut wire' }, { kind: 'end' }]);
    expect(stops.map(({ purpose, loop }) => [purpose, loop])).toEqual([
      ['thread', undefined],
      ['cut the wire', undefined],
    ]);
  });

  it.each([
    ['CONDITION 4', 'set condition'],
    ['PLEASE CLAMP THE CORE, THEN THREAD', 'secure slug'],
    ['THREAD AT X5', 'thread'],
    ['LIFT THE FINISHED PIECE OUT', 'take out part'],
    ['REMOVE COVER', 'other'],
    ['', 'other'],
  ])('of %s, as another might write it, is %s', (comment, purpose) => {
    expect(stopSaid(comment)).toEqual({ purpose });
  });
});
