/** The same thing found by two layers is told once, and nothing else is lost. */
import { describe, expect, it } from 'vitest';
import type { Finding } from '../text/finding.ts';
import { toldOnce } from './listed-once.ts';

const refusal = (code: string, sentence: string): Finding => ({ code, severity: 'refusal', sentence });
const codes = (...findings: readonly Finding[]): readonly string[] => toldOnce(findings).map((f) => f.code);

describe('what was found', () => {
  it('is told once where drawing and plan find the same crossing, whichever loop they name first', () => {
    const drawn = refusal('loops-cross', 'L4 and L5 cross at (-1, 17.088).');
    expect(codes(drawn, refusal('contours-touch', 'L5 and L4 touch or cross at (-1.000, 17.088): nothing stays.'))).toEqual([
      'loops-cross',
    ]);
    expect(codes(drawn, refusal('contours-touch', 'L4 and L6 touch or cross at (3.000, 2.000): nothing stays.'))).toHaveLength(2);
  });

  it('is told once where a finding quotes another whole', () => {
    const fault = refusal('word-unknown', 'The block in line 67 has the word M8.');
    const quoting = refusal('program-not-readable', `The program cannot be read to its end: ${fault.sentence}`);
    expect(codes(fault, quoting)).toEqual(['word-unknown']);
    expect(codes(quoting)).toEqual(['program-not-readable']);
  });

  it('keeps a refusal that only a lighter finding has told before', () => {
    const lighter: Finding = { ...refusal('loop-crosses-itself', 'L1 crosses itself.'), severity: 'note' };
    expect(codes(lighter, refusal('contour-unsound', 'L1 cannot be followed by a wire: it crosses itself.'))).toHaveLength(2);
  });
});
