/** Pitch diameters of sprockets as tables of factors print them. */
import type { CheckRow } from '../../quantity/check.ts';
import { pitchDiameter } from './sprocket.ts';

const factors: readonly (readonly [teeth: number, value: string])[] = [
  [9, '2.9238'],
  [17, '5.4422'],
  [25, '7.9787'],
  [38, '12.1096'],
];

export const checks: readonly CheckRow[] = [
  ...factors.map(([teeth, value]) => ({
    id: `H-16-${teeth}`,
    source: 'iso-606',
    place: 'pitch diameters for a pitch of 1',
    how: 'recomputed' as const,
    question: `1 / sin(180° / ${teeth})`,
    value,
    ours: () => pitchDiameter.compute({ pitch: 1, teeth }),
  })),
];
