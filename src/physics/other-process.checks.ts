/** Thermal cutting, water jet and laser against standards and papers (CHECKS G). */
import type { CheckRow } from '../quantity/check.ts';
import {
  jetMachinability,
  laserTaper,
  perpendicularity,
  thermalRoughness,
  thermalScope,
  waterJetFeed,
  waterJetFeedInch,
} from './other-process.ts';

const iso = { source: 'iso-9013', place: 'tables of ranges' } as const;
const u = (range: number, thickness: number): number => perpendicularity[range - 1].compute({ thickness });
const rz = (range: number, thickness: number): number => thermalRoughness[range - 1].compute({ thickness });

const jet = { abrasive: 1, machinability: jetMachinability['mild steel'], quality: 1 } as const;
const metric = (more: { readonly thickness?: number; readonly quality?: number } = {}): number =>
  waterJetFeed.compute({ ...jet, pressure: 345, orifice: 0.33, abrasiveFlow: 340, thickness: 25.4, tube: 1.02, ...more });
const inch = (): number =>
  waterJetFeedInch.compute({
    ...jet,
    pressure: 345 / 6.894757,
    orifice: 0.33 / 25.4,
    abrasiveFlow: 340 / 453.59237,
    thickness: 1,
    tube: 1.02 / 25.4,
  }) * 25.4;

export const checks: readonly CheckRow[] = [
  ...(['0.080', '0.220', '0.500', '1.000'] as const).map(
    (printed, i): CheckRow => ({
      id: `G-01-${i + 1}`,
      ...iso,
      question: `u of 10 mm, range ${i + 1}, mm`,
      printed,
      ours: () => u(i + 1, 10),
    }),
  ),
  ...(['25', '60', '100', '155'] as const).map(
    (printed, i): CheckRow => ({
      id: `G-02-${i + 1}`,
      ...iso,
      question: `Rz5 of 25 mm, range ${i + 1}, µm`,
      printed,
      ours: () => rz(i + 1, 25),
    }),
  ),
  { id: 'G-03', ...iso, question: 'u of 25 mm, range 5, mm', printed: '2.075', ours: () => u(5, 25) },
  {
    id: 'G-04',
    source: 'iso-9013',
    place: 'scope',
    question: 'laser cut of 40 mm: largest thickness that the standard covers, mm',
    printed: '32',
    ours: () => {
      const answer = thermalScope('laser', 40);
      return answer.kind === 'outside' ? answer.high : answer.kind;
    },
  },
  {
    id: 'G-05a',
    source: 'zeng-kim',
    place: 'feed law, metric constant; recomputed',
    question: 'jet in 25.4 mm mild steel, 345 MPa, 0.33, 340 g/min, 1.02, mm/min',
    printed: '148.26',
    ours: metric,
  },
  {
    id: 'G-05b',
    source: 'zeng-kim',
    place: 'feed law, inch constant; recomputed',
    question: 'the same by the inch form, mm/min',
    printed: '148.61',
    ours: inch,
  },
  {
    id: 'G-06a',
    source: 'zeng-kim',
    place: 'exponents; recomputed',
    question: 'twice the thickness, ratio',
    printed: '0.4506',
    ours: () => metric({ thickness: 50.8 }) / metric(),
  },
  {
    id: 'G-06b',
    source: 'zeng-kim',
    place: 'exponents; recomputed',
    question: 'quality 3 instead of 1, ratio',
    printed: '0.2827',
    ours: () => metric({ quality: 3 }) / metric(),
  },
  {
    id: 'G-07',
    source: 'plane-geometry',
    place: 'recomputed',
    question: 'half angle of a laser kerf 0.30 above, 0.20 below, 10 mm, degrees',
    printed: '0.28648',
    ours: () => laserTaper.compute({ top: 0.3, bottom: 0.2, thickness: 10 }),
  },
];
