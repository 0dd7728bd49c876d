/** Tabs made too short, against statics done here once more with the sizes of a rectangular slug. */
import { describe, expect, it } from 'vitest';
import { proveProgram } from '../../src/proof/prove/prove.ts';
import { there } from '../there.ts';
import { hangingBy, ROUGH, textOf } from './good-programs.ts';

interface Slug {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly strength?: number | undefined;
}

/** N/mm² of flushing over the height and at most 10 mm, and a mild steel where nobody says what is cut: the rule of tab-too-weak in docs/findings/proof.md. */
const [PUSH, NOZZLE, MILD] = [0.02, 10, 200];

/** mm of metal that a slug needs which is cut free in the middle of its lower side. */
const needed = ({ width, depth, height, strength = MILD }: Slug): number => {
  const narrower = 2 * (there(hangingBy(1, width, depth).question.registers.get(1)) + ROUGH);
  const area = (width - narrower) * (depth - narrower);
  const push = PUSH * height * Math.min(NOZZLE, Math.sqrt(area));
  const weight = area * height * 7.7e-6 * 9.81;
  const lever = depth / 2 - narrower / 2 + ROUGH;
  // A beam as wide as the tab and as high as the plate bears strength * width * height² / 6 downward, strength * height * width² / 6 sideways.
  const down = (6 * (weight + push) * lever) / (strength * height ** 2);
  const sideways = Math.sqrt((6 * push * lever) / (strength * height));
  return Math.max(down, sideways, (Math.sqrt(3) * (weight + push)) / (strength * height));
};

const refusals = (share: number, slug: Slug): readonly string[] => {
  const { width, depth, height, strength } = slug;
  const good = hangingBy(share * needed(slug), width, depth);
  return proveProgram({ ...good.question, height, strength, program: textOf(good.lines) })
    .findings.filter((f) => f.severity === 'refusal')
    .map((f) => f.code);
};

describe('tabs made shorter', () => {
  it.each<Slug>([
    { width: 10, depth: 8, height: 40 },
    { width: 6, depth: 12, height: 15 },
    { width: 12, depth: 6, height: 90 },
    { width: 13, depth: 13, height: 2, strength: 60 },
  ])('are refused from a few hundredths below what holds, and not above: %o', (slug) => {
    expect([refusals(1.08, slug), refusals(0.92, slug), refusals(0.1, slug)]).toEqual([[], ['tab-too-weak'], ['tab-too-weak']]);
  });
});
