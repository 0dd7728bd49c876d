/** How much of the page has to be fetched: it may shrink, and grows only by a decision. `npm test` builds it first. */
import { readdirSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const ASSETS = 'dist/app/assets';

/** Bytes, as the page of 0.3 had them: what the rebuild of the inside may not exceed. */
const MOST = { worker: 1_043_942, all: 2_276_498 };

const bytesOf = (names: RegExp): number =>
  readdirSync(ASSETS)
    .filter((f) => f.endsWith('.js') && names.test(f))
    .reduce((sum, f) => sum + statSync(`${ASSETS}/${f}`).size, 0);

describe('the bundle of the page', () => {
  it('has a worker no larger than that of 0.3', () => {
    expect(bytesOf(/^worker-/)).toBeGreaterThan(500_000);
    expect(bytesOf(/^worker-/)).toBeLessThanOrEqual(MOST.worker);
  });

  it('is no larger as a whole', () => {
    expect(bytesOf(/./)).toBeLessThanOrEqual(MOST.all);
  });
});
