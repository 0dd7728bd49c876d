/** Which findings answer to a flag of truth.json: each must be there, with its place. */
import type { Drawing } from '../../src/drawing/drawing.ts';

/** A pattern of flag names, the codes that mean the same, and whether the place may be missing. */
interface Meaning {
  readonly flag: RegExp;
  readonly codes: readonly string[];
  readonly placeless?: boolean;
}

const MEANINGS: readonly Meaning[] = [
  { flag: /gap/, codes: ['gap-closed', 'rounding-closed'] },
  // A chain that lies on the edge of a loop all along is told as an edge drawn twice.
  { flag: /open/, codes: ['open-chain', 'doubled-edge-dropped'] },
  { flag: /branch|junction/, codes: ['branched', 'layers-apart', 'chain-ends-on-loop', 'loops-share-edge', 'loops-touch'] },
  { flag: /dup|double/, codes: ['doubled-edge-dropped', 'doubled-loop-dropped', 'loops-share-edge'] },
  { flag: /self/, codes: ['loop-crosses-itself', 'loop-touches-itself', 'branched'] },
  {
    flag: /cross|intersect|overlap/,
    codes: ['loops-cross', 'loops-share-edge', 'loops-touch', 'loop-crosses-itself', 'loop-touches-itself', 'branched'],
  },
  { flag: /touch|share/, codes: ['loops-touch', 'loops-share-edge', 'branched', 'loop-touches-itself', 'loop-crosses-itself'] },
  {
    flag: /degenerate|zero|sliver/,
    codes: ['loop-without-area', 'loop-sliver', 'zero-length-dropped', 'spur-dropped', 'entity-impossible', 'arc-without-turn'],
  },
  { flag: /radius|negative|impossible/, codes: ['entity-impossible'] },
  { flag: /helix|region|mline|trace|body|surface/, codes: ['shapes-not-read'], placeless: true },
  { flag: /3d|height|elevat|tilt|extru/, codes: ['tilted-projected', 'height-dropped'] },
  { flag: /text|hatch|dimension|annotation|passed/, codes: ['entities-passed-over', 'shapes-not-read'], placeless: true },
  { flag: /face|mesh|solid|unsupported|unread|unknown/, codes: ['shapes-not-read', 'entities-passed-over'], placeless: true },
  { flag: /paper|layout/, codes: ['paper-space-left-out'], placeless: true },
  { flag: /spline|ellipse|curve/, codes: ['curves-fitted', 'curve-unfitted', 'spline-knots-made'], placeless: true },
  {
    flag: /block|insert|reference|xref/,
    codes: ['reference-missing', 'reference-to-itself', 'nested-too-deep', 'too-many-entities'],
    placeless: true,
  },
  { flag: /no.?(loop|shape|geometr|entit|outline)|nothing|empty/, codes: ['no-loop'], placeless: true },
  { flag: /tiny|huge|large|small|size/, codes: ['units-implausible', 'loop-sliver', 'units-missing'], placeless: true },
  { flag: /hidden|frozen|off/, codes: ['loops-hidden', 'open-chain', 'loop-partly-hidden'], placeless: true },
  {
    flag: /unit|scale/,
    codes: ['units-missing', 'units-disagree', 'units-implausible', 'pixels-assumed', 'unit-code-unknown'],
    placeless: true,
  },
  {
    flag: /trunc|incomplete|cut|eof|damaged|corrupt/,
    codes: ['file-cut-short', 'not-a-drawing', 'group-code-unreadable', 'entity-unfinished', 'markup-broken'],
    placeless: true,
  },
];

/** What is missing for one flag, in a sentence; nothing when it is answered. */
export const flagged = (drawing: Drawing, flag: string): string[] => {
  const meanings = MEANINGS.filter((m) => m.flag.test(flag.toLowerCase()));
  if (meanings.length === 0) return [`the flag '${flag}' has no finding that is known to mean it`];
  const met = meanings.some(({ codes, placeless }) =>
    drawing.findings.some((f) => codes.includes(f.code) && (placeless === true || f.place !== undefined)),
  );
  return met ? [] : [`the flag '${flag}' is met by no finding with a place`];
};
