/** Fuse laws and heat of one pulse against a printed table and a thesis (CHECKS F and D-19). */
import type { CheckRow } from '../../quantity/check.ts';
import {
  onderdonkCurrent,
  preeceConstants,
  preeceCurrent,
  preeceDiameter,
  pulseHeating,
  thinWireRatio,
  wireResistance,
} from './wire-current.ts';
import { wireMassPerLength } from './wire-string.ts';

const copper = preeceConstants.copper;
const fuse = { source: 'fuse-table', place: 'table' } as const;
const onderdonk = (seconds: number): number => onderdonkCurrent.compute({ d: 0.25, seconds, ambient: 25, melting: 1083 });

const pulseStep = (feeds: number): number =>
  pulseHeating.compute({
    peak: 700,
    duration: 1.4,
    resistance: wireResistance.compute({ resistivity: 0.064, d: 0.3 }),
    massPerLength: wireMassPerLength.compute({ density: 8.5, d: 0.3 }),
    heat: 377,
    feeds,
  });

export const checks: readonly CheckRow[] = [
  {
    id: 'F-06a',
    ...fuse,
    question: 'current that melts 0.25 copper in still air, A',
    printed: '10.003',
    ours: () => preeceCurrent.compute({ d: 0.25, constant: copper }),
  },
  {
    id: 'F-06b',
    ...fuse,
    question: 'copper wire that 50 A melts, inches',
    printed: '0.0288',
    ours: () => preeceDiameter.compute({ current: 50, constant: copper }) / 25.4,
  },
  {
    id: 'F-06c',
    ...fuse,
    question: 'copper wire that 10 A melts, inches',
    printed: '0.0098',
    ours: () => preeceDiameter.compute({ current: 10, constant: copper }) / 25.4,
  },
  {
    id: 'F-06d',
    ...fuse,
    question: 'copper wire that 100 A melts, inches',
    printed: '0.0457',
    ours: () => preeceDiameter.compute({ current: 100, constant: copper }) / 25.4,
  },
  {
    id: 'F-06e',
    ...fuse,
    question: 'aluminium wire that 100 A melts, inches',
    printed: '0.0558',
    ours: () => preeceDiameter.compute({ current: 100, constant: preeceConstants.aluminium }) / 25.4,
  },
  {
    id: 'F-06f',
    ...fuse,
    question: 'iron wire that 10 A melts, inches',
    printed: '0.0216',
    ours: () => preeceDiameter.compute({ current: 10, constant: preeceConstants.iron }) / 25.4,
  },
  { id: 'F-07', ...fuse, question: '0.25 copper, one second from 25 °C, A', printed: '14.17', ours: () => onderdonk(1) },
  { id: 'F-07b', ...fuse, question: '0.25 copper, one microsecond from 25 °C, A', printed: '14172', ours: () => onderdonk(1e-6) },
  {
    id: 'F-09a',
    source: 'schacht-thesis',
    place: 'eq. III.5, inputs of sato-wire-break',
    question: '700 A triangle of 1.4 µs in 0.30 brass fed from one end, K',
    printed: '0.9140',
    ours: () => pulseStep(1),
    wider: { tolerance: 0.0005, reason: 'printed to four digits, worked from rounded resistance and heat' },
  },
  {
    id: 'F-09b',
    source: 'schacht-thesis',
    place: 'eq. III.5',
    question: 'the same fed from both ends, K',
    printed: '0.2285',
    ours: () => pulseStep(2),
  },
  {
    id: 'F-09c',
    source: 'sato-wire-break',
    place: 'wire and pulse; recomputed',
    question: 'resistance of 0.30 brass at 0.064 µΩm, Ω/m',
    printed: '0.90541',
    ours: () => wireResistance.compute({ resistivity: 0.064, d: 0.3 }),
  },
  {
    id: 'D-19a',
    source: 'schacht-thesis',
    place: 'eq. III.6',
    question: 'rate of 0.20 against 0.10 wire when heat in the wire decides',
    printed: '1.414',
    ours: () => thinWireRatio.compute({ d: 0.2, other: 0.1 }),
  },
  {
    id: 'D-19b',
    source: 'schacht-thesis',
    place: 'eq. III.6',
    question: 'rate of 0.15 against 0.10 wire when heat in the wire decides',
    printed: '1.2247',
    ours: () => thinWireRatio.compute({ d: 0.15, other: 0.1 }),
  },
];
