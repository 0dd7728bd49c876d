/** A proof as text and as plain data. */

import type { ContourProof, OpenProof, Proof } from '../../proof/proof.ts';
import { toleranceTold } from '../../result/tolerance-told.ts';
import { findingInFull } from '../../text/located.ts';
import { contour, count, fixed, mass, type Part, um } from '../../text/part.ts';
import { printPlain } from '../../text/print/print.ts';
import { stated } from '../../text/print/stated.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import { severityLead } from '../../text/severity.ts';
import type { Text } from '../../text/text.ts';

export { proofPicture } from '../../proof/picture/proof-picture.ts';

/** The deviation profile is left out: it is for pictures, and made anew whenever somebody asks, which a spread of the proof would do. */
export const proofJson = (proof: Proof, files: readonly string[] = []): Readonly<Record<string, unknown>> => ({
  verdict: proof.verdict,
  resolution: proof.resolution,
  use: proof.use,
  contours: proof.contours.map(({ loop, leftMost, gougeMost, rounded, state }) => ({ loop, leftMost, gougeMost, rounded, state })),
  open: proof.open,
  loose: proof.loose,
  stops: proof.stops.map(({ block, comment, at }) => ({ block, comment, at })),
  findings: proof.findings.map((f) => stated(f)),
  files: files.length === 0 ? undefined : files,
});

export const proofText = (proof: Proof): string => proofLines(proof).map(printPlain).join('\n');

export const proofLines = (proof: Proof): readonly Text[] => [
  proof.verdict === 'proven' ? words.proven : words.notProven,
  ...proof.findings.map((f) => symbols`  ${severityLead(f.severity)} ${findingInFull(f)}`),
  ...(proof.use === undefined ? [] : [symbols`  ${toleranceTold(proof.use)}`]),
  words.resolution(micrometres(proof.resolution)),
  ...[
    ...proof.contours.map(contourLine),
    ...(proof.open ?? []).map(openLine),
    ...proof.loose.map(freeLine),
    words.stops(proof.stops.length),
  ].map((line) => symbols`  ${line}`),
];

const contourLine = ({ loop, state, leftMost, gougeMost, rounded }: ContourProof): Text => {
  const line = words.contour(loop, states[state], signed(leftMost.amount), signed(gougeMost.amount));
  if (rounded.length === 0) return line;
  return rounded.length === 1 ? words.rounder(line) : words.rounderOften(line, rounded.length);
};

const openLine = ({ chain, kept, state, leftMost, gougeMost }: OpenProof): Text =>
  words.line(chain, sides[kept], states[state], signed(leftMost.amount), signed(gougeMost.amount));

const freeLine = ({ block, role, loop, mass: kilograms, held }: Proof['loose'][number]): Text =>
  words.free(block + 1, whatIs(role, loop), mass(kilograms, 4), held ? words.secured : words.notSecured);

const whatIs = (role: Proof['loose'][number]['role'], loop: string | undefined): Text => {
  if (role === 'scrap') return words.scrap;
  if (loop === undefined) return role === 'slug' ? words.slug : words.part;
  return role === 'slug' ? words.slugOf(loop) : words.partOf(loop);
};

const micrometres = (millimetres: number): Part => um(millimetres * 1000, fixed(2));
const signed = (millimetres: number): Text => (millimetres >= 0 ? words.plus : words.minus)(micrometres(Math.abs(millimetres)));

const states: Readonly<Record<ContourProof['state'], Text>> = phrases('proof-state', {
  right: say`in tolerance`,
  uncut: say`uncut`,
  'out of tolerance': say`out of tolerance`,
});

const sides: Readonly<Record<OpenProof['kept'], Text>> = phrases('proof-side', {
  slit: say`a slit`,
  left: say`its left side kept`,
  right: say`its right side kept`,
});

const words = phrases('proof-report', {
  proven: say`Proven: the program cuts the part to drawing.`,
  notProven: say`Not proven.`,
  resolution: (read: Part) => say`Resolution ${{ read }}; plus is stock left, minus is overcut.`,
  contour: (loop: string, state: Text, left: Text, gone: Text) => say`${{ loop: contour(loop) }}: ${{ state }}, ${{ left }} to ${{ gone }}`,
  rounder: (line: Text) => say`${{ line }}, 1 corner rounder than drawn`,
  rounderOften: (line: Text, corners: number) => say`${{ line }}, ${{ corners: count(corners, 'corner') }} rounder than drawn`,
  line: (chain: string, kept: Text, state: Text, left: Text, gone: Text) =>
    say`${{ chain: contour(chain) }}, ${{ kept }}: ${{ state }}, ${{ left }} to ${{ gone }}`,
  plus: (amount: Part) => say`+${{ amount }}`,
  minus: (amount: Part) => say`−${{ amount }}`,
  free: (line: number, what: Text, mass: Part, held: Text) =>
    say`Line ${{ line: count(line) }} cuts ${{ what }} free: ${{ mass }}, ${{ held }}.`,
  scrap: say`scrap`,
  slug: say`the slug`,
  part: say`the part`,
  slugOf: (loop: string) => say`the slug of ${{ loop: contour(loop) }}`,
  partOf: (loop: string) => say`the part of ${{ loop: contour(loop) }}`,
  secured: say`secured beforehand`,
  notSecured: say`not secured`,
  stops: (stops: number) => say`${{ stops: count(stops, 'stop') }}.`,
});
