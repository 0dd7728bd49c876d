/** What is drawn beside the work: each kind is looked for in turn, marked on its loops, and asked about in one question. */
import type { Finding } from '../../text/finding.ts';
import type { Aside, DrawingUnits, Loop } from '../drawing.ts';
import { bordersOf, reportBorders } from './report-border.ts';

export interface BesideWork {
  readonly loops: readonly Loop[];
  readonly findings: readonly Finding[];
}

export const besideWork = (loops: readonly Loop[], units: DrawingUnits): BesideWork => {
  const borders = bordersOf(loops);
  const aside = new Map<string, Aside>(borders.map(({ loop, kind }) => [loop.id, kind]));
  if (aside.size === 0) return { loops, findings: [] };
  return {
    loops: loops.map((loop) => (aside.has(loop.id) ? { ...loop, aside: aside.get(loop.id) } : loop)),
    findings: reportBorders(borders, units),
  };
};
