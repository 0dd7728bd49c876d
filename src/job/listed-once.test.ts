/** The same thing found by two layers is told once, and nothing else is lost. */

import { describe, expect, it } from 'vitest';
import type { Finding } from '../text/finding.ts';
import { contour, count, term } from '../text/part.ts';
import { say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { listedOnce } from './listed-once.ts';

const refusal = (code: string, text: Text): Finding => ({ code, severity: 'refusal', text });
const codes = (...findings: readonly Finding[]): readonly string[] => listedOnce(findings).map((f) => f.code);

describe('what was found', () => {
  it('is told once where drawing and plan find the same crossing, whichever loop they name first', () => {
    const drawn = refusal('loops-cross', say`${{ a: contour('L4') }} and ${{ b: contour('L5') }} cross.`);
    expect(
      codes(drawn, refusal('contours-touch', say`${{ a: contour('L5') }} and ${{ b: contour('L4') }} touch or cross: nothing stays.`)),
    ).toEqual(['loops-cross']);
    expect(
      codes(drawn, refusal('contours-touch', say`${{ a: contour('L4') }} and ${{ b: contour('L6') }} touch or cross: nothing stays.`)),
    ).toHaveLength(2);
  });

  it('is told once where a finding quotes another whole', () => {
    const fault = refusal('word-unknown', say`The block in line ${{ line: count(67) }} has the word ${{ word: term('M8') }}.`);
    const quoting = refusal('program-not-readable', say`The program cannot be read to its end: ${{ fault: fault.text }}`);
    expect(codes(fault, quoting)).toEqual(['word-unknown']);
    expect(codes(quoting)).toEqual(['program-not-readable']);
  });

  it('keeps a refusal that only a lighter finding has told before', () => {
    const lighter: Finding = { ...refusal('loop-crosses-itself', say`${{ loop: contour('L1') }} crosses itself.`), severity: 'note' };
    expect(
      codes(lighter, refusal('contour-unsound', say`${{ loop: contour('L1') }} cannot be followed by a wire: it crosses itself.`)),
    ).toHaveLength(2);
  });
});
