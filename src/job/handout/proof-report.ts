/** A proof as text and as plain data. */

import type { ContourProof, OpenProof, Proof } from '../../proof/proof.ts';
import { printMass } from '../../text/print/mass.ts';
import { findingText } from '../../text/print/phrases.ts';
import { stated } from '../../text/print/stated.ts';

export { proofPicture } from '../../proof/picture/proof-picture.ts';

/** The deviation profile is left out: it is for pictures, and made anew whenever somebody asks, which a spread of the proof would do. */
export const proofJson = (proof: Proof, files: readonly string[] = []): Readonly<Record<string, unknown>> => ({
  verdict: proof.verdict,
  resolution: proof.resolution,
  contours: proof.contours.map(({ loop, leftMost, gougeMost, rounded, state }) => ({ loop, leftMost, gougeMost, rounded, state })),
  open: proof.open,
  loose: proof.loose,
  stops: proof.stops,
  findings: proof.findings.map((f) => stated(f)),
  files: files.length === 0 ? undefined : files,
});

export const proofText = (proof: Proof): string =>
  [
    proof.verdict === 'proven' ? 'Proven: the program makes the drawing.' : 'Not proven.',
    ...proof.findings.map((f) => `  ${f.severity}: ${findingText(f)}`),
    `Deviations are read to ${micrometres(proof.resolution)}; plus is metal left, minus is metal gone.`,
    ...proof.contours.map(contourLine),
    ...(proof.open ?? []).map(openLine),
    ...proof.loose.map(
      (l) =>
        `  Line ${l.block + 1} sets ${l.role === 'scrap' ? 'scrap' : `the ${l.role}${l.loop === undefined ? '' : ` of ${l.loop}`}`} free: ${printMass(l.mass)}, ${l.held ? 'secured before' : 'not secured'}.`,
    ),
    `  ${proof.stops.length} ${proof.stops.length === 1 ? 'stop' : 'stops'}.`,
  ].join('\n');

const contourLine = (c: ContourProof): string => {
  const rounder =
    c.rounded.length === 0 ? '' : `, ${c.rounded.length} ${c.rounded.length === 1 ? 'corner comes' : 'corners come'} out rounder`;
  return `  ${c.loop}: ${c.state}, ${signed(c.leftMost.amount)} to ${signed(c.gougeMost.amount)}${rounder}`;
};

const openLine = ({ chain, kept, state, leftMost, gougeMost }: OpenProof): string =>
  `  ${chain}, ${kept === 'slit' ? 'a slit' : `its ${kept} side kept`}: ${state}, ${signed(leftMost.amount)} to ${signed(gougeMost.amount)}`;

const micrometres = (mm: number): string => `${(mm * 1000).toFixed(2)} µm`;
const signed = (mm: number): string => `${mm >= 0 ? '+' : '−'}${(Math.abs(mm) * 1000).toFixed(2)} µm`;
