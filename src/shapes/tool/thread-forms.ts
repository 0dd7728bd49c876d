/** Threads as a tool's point has to know them: flanks, depth, the width of the flat or the round at the root. Lengths in mm, angles in rad. */

import type { Formula } from '../../quantity/formula.ts';
import type { Citation } from '../../quantity/source.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

export const FORM_NAMES = ['acme', 'stub-acme', 'trapezoidal', 'square', 'buttress-3-30', 'buttress-7-45', 'v'] as const;
export type FormName = (typeof FORM_NAMES)[number];

interface FormBase {
  readonly title: Text;
  readonly source: Citation;
  /** Flank angles to the thread's normal, degrees; the loaded flank first. */
  readonly flanks: readonly [number, number];
}

/** Basic height in pitches; half of it lies below the pitch line. */
interface FlatForm extends FormBase {
  readonly root: 'flat';
  readonly height: number;
  /** How much deeper the groove is than the basic height, mm. */
  readonly clearance: (pitch: number) => number;
  /** Largest radius at the root that the standard allows, mm. */
  readonly mostNose?: (pitch: number) => number;
}

/** One full round; depth, radius and the pitch line's distance from the crest in pitches. */
interface RoundForm extends FormBase {
  readonly root: 'round';
  readonly depth: number;
  readonly radius: number;
  readonly pitchLine: number;
}

export type ThreadForm = FlatForm | RoundForm;

/** Half of what a screw's minor and a nut's major diameter are freed by: 0.010 in on the radius for 10 threads per inch and coarser, else 0.005 in. */
const acmeClearance = (pitch: number): number => (pitch > 2.54 - 1e-9 ? 0.254 : 0.127);

/** a_c of ISO 2904, by pitch. */
const crestClearance = (pitch: number): number => {
  if (pitch < 2) return 0.15;
  if (pitch < 6) return 0.25;
  return pitch < 14 ? 0.5 : 1;
};

const titles = phrases('thread-form', {
  acme: say`Acme`,
  stubAcme: say`stub Acme`,
  trapezoidal: say`trapezoidal`,
  square: say`square`,
  buttress3: say`buttress 3°/30°`,
  buttress7: say`buttress 7°/45°`,
});

export const THREAD_FORMS: Readonly<Record<Exclude<FormName, 'v'>, ThreadForm>> = {
  acme: { title: titles.acme, source: { file: 'asme-b1-5' }, flanks: [14.5, 14.5], root: 'flat', height: 0.5, clearance: acmeClearance },
  'stub-acme': {
    title: titles.stubAcme,
    source: { file: 'asme-b1-8' },
    flanks: [14.5, 14.5],
    root: 'flat',
    height: 0.3,
    clearance: acmeClearance,
  },
  trapezoidal: {
    title: titles.trapezoidal,
    source: { file: 'iso-2904' },
    flanks: [15, 15],
    root: 'flat',
    height: 0.5,
    clearance: crestClearance,
    mostNose: crestClearance,
  },
  square: { title: titles.square, source: { file: 'square-thread' }, flanks: [0, 0], root: 'flat', height: 0.5, clearance: acmeClearance },
  'buttress-3-30': {
    title: titles.buttress3,
    source: { file: 'din-513' },
    flanks: [3, 30],
    root: 'round',
    depth: 0.86777,
    radius: 0.12427,
    pitchLine: 0.375,
  },
  'buttress-7-45': {
    title: titles.buttress7,
    source: { file: 'asme-b1-9' },
    flanks: [7, 45],
    root: 'round',
    depth: 0.6627,
    radius: 0.0714,
    pitchLine: 0.3,
  },
};

const FLANKS = {
  left: { unit: 'rad', name: 'angle of the one flank' },
  right: { unit: 'rad', name: 'angle of the other flank' },
} as const;

export const grooveDepth: Formula<'height' | 'clearance'> = {
  name: say('tool.groove-depth')`depth of the groove`,
  text: symbols`t = h + c`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs: { height: { unit: 'mm', name: 'basic height' }, clearance: { unit: 'mm', name: 'clearance at the root' } },
  compute: ({ height, clearance }) => height + clearance,
};

/** The groove is half a pitch wide at the pitch line. */
export const pointFlat: Formula<'pitch' | 'height' | 'clearance' | 'left' | 'right'> = {
  name: say('tool.point-flat')`width of the point`,
  text: symbols`F = P/2 - (h/2 + c)(tan α₁ + tan α₂)`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs: {
    pitch: { unit: 'mm', name: 'pitch' },
    height: { unit: 'mm', name: 'basic height' },
    clearance: { unit: 'mm', name: 'clearance at the root' },
    ...FLANKS,
  },
  compute: ({ pitch, height, clearance, left, right }) => pitch / 2 - (height / 2 + clearance) * (Math.tan(left) + Math.tan(right)),
};

/** Between the sharp corners that the round takes the place of. */
export const roundFlat: Formula<'radius' | 'left' | 'right'> = {
  name: say('tool.round-flat')`width of the point between its sharp corners`,
  text: symbols`F = r [(1 - sin α₁)/cos α₁ + (1 - sin α₂)/cos α₂]`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs: { radius: { unit: 'mm', name: 'radius' }, ...FLANKS },
  compute: ({ radius, left, right }) => radius * ((1 - Math.sin(left)) / Math.cos(left) + (1 - Math.sin(right)) / Math.cos(right)),
};
