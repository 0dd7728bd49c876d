/** All that is decided for one shape before its steps are written down. */

import type { Point } from '../../geometry/segment.ts';
import type { NonEmpty } from '../../sequence/sequence.ts';
import type { OpenKept } from '../open-line.ts';
import type { Kept } from '../plan.ts';
import type { Measures } from '../start/lead-lengths.ts';
import type { Break } from '../start/slug-breaks.ts';
import type { DesignStep } from './design-step.ts';
import type { PassLap } from './leads.ts';
import type { SpokenPiece } from './piece-stops.ts';

export interface Layout {
  /** Index = pass number - 1; each begins at the entry. */
  readonly laps: NonEmpty<PassLap>;
  readonly hole: Point;
  /** Length of the tab, mm; it ends at the entry. */
  readonly tab: number;
  readonly measures: Measures;
  /** Radius of programmed lead arcs. */
  readonly lead: number;
  /** How the wire turns round: in the room that the slug has left, along the kerf, or in stubs dug into the waste. */
  readonly turning: 'in the open' | 'in the kerf' | 'in stubs';
  readonly piece: SpokenPiece;
  /** Where the slug comes apart, or waste in a pocket of a part comes loose, in order; each before the tab. */
  readonly breaks: readonly Break[];
}

/** One visit to a contour, from threading to cutting the wire. */
export interface Visit {
  readonly kind: 'whole' | 'rough' | 'tab' | 'skims';
  readonly steps: readonly DesignStep[];
}

/** The visit with its passes, registers and settings numbered as those of their family. */
export const visitInFamily = (visit: Visit, base: number): Visit =>
  base === 0 ? visit : { ...visit, steps: visit.steps.map((step) => stepInFamily(step, base)) };

const stepInFamily = (step: DesignStep, base: number): DesignStep => {
  if (step.kind === 'compensate') return { ...step, register: step.register + base };
  return step.kind === 'cut' || step.kind === 'condition' ? { ...step, pass: step.pass + base } : step;
};

/** A loop or an open line, by its name, how deep it lies, and what is kept. */
export interface Visited {
  readonly loop: { readonly id: string; readonly depth: number };
  readonly kept: Kept | OpenKept;
}

/** A loop or line with the visits designed for it or for its shape, and the way from there to here. */
export interface VisitsOf {
  readonly loop: Visited;
  readonly by: Point;
  readonly visits: readonly Visit[];
}
