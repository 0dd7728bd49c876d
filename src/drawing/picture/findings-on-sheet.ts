/** The findings on the sheet: numbered circles where they are, and what they say below. */

import type { Point } from '../../geometry/segment.ts';
import { placeLabels } from '../../picture/numbered-circles.ts';
import type { View } from '../../picture/svg.ts';
import { INK, PAPER, px, QUIET, RUST, text, wrapped } from '../../picture/svg.ts';
import { type NonEmpty, sideBySide } from '../../sequence/sequence.ts';
import type { Finding, Severity } from '../../text/finding.ts';
import { count } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import type { Reader } from '../../text/reader.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import { GRAVEST_FIRST, severityNames } from '../../text/severity.ts';
import type { Text } from '../../text/text.ts';
import type { Drawing } from '../drawing.ts';
import { catalogue } from '../findings.ts';

/** More circles than this hide the drawing. */
const CIRCLES = 60;
/** Of one kind so many are marked, so that there is room for all kinds. */
const PER_KIND = 16;
/** More findings of one kind than this are told in one line. */
const APART = 3;
const RADIUS = 8.5;
const LINE = 16;

interface NumberedFinding {
  readonly number: number;
  readonly finding: Finding;
  readonly at: readonly [number, number];
}

export const findingsOnSheet = (
  drawing: Drawing,
  view: View,
  top: number,
  { reader, ...sides }: { readonly left: number; readonly right: number; readonly reader: Reader },
): { readonly svg: string; readonly bottom: number } => {
  const sorted = [...drawing.findings].sort(
    (p, q) => GRAVEST_FIRST.indexOf(p.severity) - GRAVEST_FIRST.indexOf(q.severity) || kind(p) - kind(q),
  );
  const numbered: NumberedFinding[] = [];
  for (const finding of sorted) {
    const spot = spotOf(finding, drawing);
    const alike = numbered.filter((n) => n.finding.code === finding.code).length;
    if (spot && !view.empty && numbered.length < CIRCLES && alike < PER_KIND)
      numbered.push({ number: numbered.length + 1, finding, at: view.at(spot) });
  }
  const lines = legend(sorted, numbered);
  const drawn: string[] = [];
  let y = top;
  for (const { sign, said, severity } of lines) {
    const folded = wrapped(print(said, reader), 140);
    drawn.push(text(sides.left + 38, y, sign, { size: 11, colour: severity === 'refusal' ? RUST : INK, anchor: 'end', bold: true }));
    const colour = severity === 'note' ? QUIET : INK;
    drawn.push(...folded.map((part, i) => text(sides.left + 48, y + i * LINE, part, { size: 11, colour })));
    y += folded.length * LINE + 3;
  }
  return { svg: [...circles(numbered), ...drawn].join('\n'), bottom: lines.length > 0 ? y : top - 26 };
};

/** Findings of one kind stay together. */
const kind = (finding: Finding): number => Object.keys(catalogue).indexOf(finding.code);

const spotOf = ({ place }: Finding, { units }: Drawing): Point | undefined =>
  place?.kind === 'spot' ? { x: place.x * units.millimetres, y: place.y * units.millimetres } : undefined;

const circles = (numbered: readonly NumberedFinding[]): string[] => {
  const spots = placeLabels(
    numbered.map((n) => n.at),
    RADIUS,
  );
  return sideBySide(numbered, spots).flatMap(([{ number, finding, at }, [x, y]]) => {
    const grave = finding.severity === 'refusal' || finding.severity === 'doubt';
    const colour = grave ? RUST : INK;
    return [
      `<path d="M${px(at[0])} ${px(at[1])}L${px(x)} ${px(y)}" stroke="${colour}" stroke-width="0.7"/>`,
      `<circle cx="${px(at[0])}" cy="${px(at[1])}" r="1.8" fill="${colour}"/>`,
      `<circle cx="${px(x)}" cy="${px(y)}" r="${RADIUS}" fill="${PAPER}" stroke="${colour}" stroke-width="${grave ? 1.6 : 0.8}"/>`,
      text(x, y + 3.2, String(number), { size: 9, colour, anchor: 'middle', bold: grave }),
    ];
  });
};

interface LegendLine {
  readonly sign: string;
  readonly said: Text;
  readonly severity: Severity;
}

const legend = (sorted: readonly Finding[], numbered: readonly NumberedFinding[]): LegendLine[] => {
  const numbers = new Map(numbered.map((n) => [n.finding, n.number]));
  const lines: LegendLine[] = [];
  for (const alike of neighboursAlike(sorted)) {
    if (alike.length <= APART) lines.push(...alike.map((f) => ({ sign: signOf([f], numbers), said: sentenceOf(f), severity: f.severity })));
    else lines.push({ sign: signOf(alike, numbers), said: together(alike), severity: alike[0].severity });
  }
  return lines;
};

/** Findings of one code and severity that follow each other. */
const neighboursAlike = (sorted: readonly Finding[]): readonly NonEmpty<Finding>[] => {
  const groups: [Finding, ...Finding[]][] = [];
  for (const finding of sorted) {
    const group = groups.at(-1);
    if (group !== undefined && group[0].code === finding.code && group[0].severity === finding.severity) group.push(finding);
    else groups.push([finding]);
  }
  return groups;
};

const signOf = (findings: readonly Finding[], numbers: ReadonlyMap<Finding, number>): string => {
  const known = findings.flatMap((f) => numbers.get(f) ?? []);
  if (known.length === 0) return '·';
  return known.length === 1 ? String(known[0]) : `${known[0]}–${known.at(-1)}`;
};

const sentenceOf = ({ severity, text, done }: Finding): Text => words.one(severityNames[severity], sentences([text, done]));

const together = (alike: NonEmpty<Finding>): Text => {
  const [{ severity, text }] = alike;
  return words.alike(
    severityNames[severity],
    alike.reduce((n, f) => n + (f.stands ?? 1), 0),
    text,
  );
};

const words = phrases('finding-on-sheet', {
  one: (severity: Text, said: Text) => say`${{ severity }}: ${{ said }}`,
  alike: (severity: Text, all: number, first: Text) => say`${{ severity }}: ${{ all: count(all) }} alike. The first: ${{ first }}`,
});
