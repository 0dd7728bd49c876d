/** What is set by hand is found in the inputs alone, so that it stays in view whatever the answer says. */
import { describe, expect, it } from 'vitest';
import { handSettings } from './override-keys.ts';

describe('settings by hand', () => {
  it('are listed contour by contour with what each gives back, also of a contour that is in no drawing', () => {
    const input = {
      height: 20,
      kept: { L2: 'leave', L10: 'punch' },
      start: { L2: 'edge' },
      core: {},
      overrides: { L2: { tab: 0, entry: { x: 1, y: 2 } }, L99: { hole: { x: 3, y: 4 } } },
      open: { O1: 'slit' },
      order: ['L10', 'L2'],
    };
    expect(handSettings(input).map(({ path, what }) => `${path}: ${what}`)).toEqual([
      'kept.L2: kept',
      'start.L2: start',
      'overrides.L2.tab: tab',
      'overrides.L2.entry: entry',
      'kept.L10: kept',
      'overrides.L99.hole: hole',
      'open.O1: kept',
      'order: order',
    ]);
  });

  it('are none where nothing was set, nor where what stands there is no group', () => {
    expect(handSettings({ height: 20, order: [], overrides: 'x' as never })).toEqual([]);
  });
});
