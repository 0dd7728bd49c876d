/** Pitch diameters of sprockets as tables of factors print them. */
import type { CheckRow } from '../../quantity/check.ts';
import { overRollers, pitchDiameter } from './sprocket.ts';

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
  {
    id: 'H-16p-17',
    source: 'plane-geometry',
    place: 'greatest distance of two of 17 places on a circle; recomputed',
    how: 'recomputed',
    question: 'chain 08B (12.7, roller 8.51), 17 teeth: size over two pins of the roller, mm',
    value: '77.331',
    ours: () => overRollers.compute({ root: pitchDiameter.compute({ pitch: 12.7, teeth: 17 }) - 8.51, teeth: 17, pin: 8.51 }),
  },
  {
    id: 'H-16p-9',
    source: 'plane-geometry',
    place: 'greatest distance of two of 9 places on a circle; recomputed',
    how: 'recomputed',
    question: 'pitch 1, 9 teeth, pins of 0.6: size over two pins, in pitches',
    value: '3.4794',
    ours: () => overRollers.compute({ root: pitchDiameter.compute({ pitch: 1, teeth: 9 }) - 0.6, teeth: 9, pin: 0.6 }),
  },
  {
    id: 'H-16p-18',
    source: 'plane-geometry',
    place: 'pins right across; recomputed',
    how: 'recomputed',
    question: 'pitch 1, 18 teeth, pins of 0.6: size over two pins, in pitches',
    value: '6.3588',
    ours: () => overRollers.compute({ root: pitchDiameter.compute({ pitch: 1, teeth: 18 }) - 0.6, teeth: 18, pin: 0.6 }),
  },
];
