/** The proof as a picture (SVG): the metal that is left, what came loose, where the wire ran, every stop, and the deviation magnified. */

import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { path } from '../../geometry/contour.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { boundsOf as boundsOfSegment } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { roundBelow } from '../../picture/round-length.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { contour, count, mm, type Part, number as plainNumber, um, upTo } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import { HOUSE, type Reader } from '../../text/reader.ts';
import { only, phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { gram } from '../block-name.ts';
import type { Proof, ProofQuestion } from '../proof.ts';
import { deviationMarks, deviationSigns, magnification } from './picture-deviation.ts';
import type { PaperView } from './picture-frame.ts';
import { chainData, frameOf, number, type OnPaper, onPaper, outlineData, text, WIDTH } from './picture-frame.ts';
import { drawnSigns, halfWidth, type Sign } from './picture-signs.ts';

/** An SVG document to scale, y up in the work. */
export const proofPicture = (proof: Proof, question: ProofQuestion, reader: Reader = HOUSE): string => {
  const frame = frameOf(boundsOf(proof, question));
  const factor = magnification(frame, question.tolerance);
  const fine = proof.cuts.length <= MOST_CUTS;
  const settings = fine ? [...new Set(proof.cuts.map((c) => c.setting))].sort((a, b) => a - b) : [];
  const notes = [...notesOf(proof, question, factor), ...(fine ? [] : [words.tooMany])].map((note) => print(note, reader));
  const legend = settings.map((e) => print(e === 0 ? words.path : words.pathOf(e), reader));
  const loose = pieces(proof, frame, reader);
  const lines = notes.length + legend.length + 2;
  const height = frame.height + lines * frame.letter * 1.5;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${number(frame.width)} ${number(height)}" width="${WIDTH}" font-family="sans-serif" font-size="${number(frame.letter)}" fill="none" stroke-linejoin="round">`,
    `<title>${text(print(proof.verdict === 'proven' ? words.proven : words.notProven, reader))}</title>`,
    `<rect width="${number(frame.width)}" height="${number(height)}" fill="#fff"/>`,
    `<clipPath id="paper"><rect width="${number(frame.width)}" height="${number(frame.height)}"/></clipPath><g clip-path="url(#paper)">`,
    metal(proof, question, frame),
    ...loose.map((l) => l.shape),
    wirePaths(proof, settings, frame),
    ...[...question.wanted.map((w) => w.contour), ...(question.wantedOpen ?? []).map((o) => o.path)].map(
      (c) => `<path d="${chainData(frame, c)}" stroke="#111" stroke-width="${number(frame.pen * 0.7)}"/>`,
    ),
    fine ? deviationMarks(proof, question, frame, factor) : '',
    '</g>',
    drawnSigns(
      [
        ...faults(proof, frame),
        ...(fine ? stops(proof, frame) : []),
        ...loose.map((l) => l.sign),
        ...(fine ? deviationSigns(proof, frame, reader) : []),
      ],
      frame,
    ),
    foot(frame, legend, notes, reader),
    '</svg>',
  ].join('\n');
};

/** Beyond so many cuts a picture of all of them would be megabytes of ink in which nothing can be told apart. */
const MOST_CUTS = 20_000;

/** What is worth looking at: the wanted contours and all cuts with some of the block round them. */
const boundsOf = (proof: Proof, question: ProofQuestion): Bounds => {
  const b = mergedBounds([
    ...question.wanted.map((w) => boundsOfChain(w.contour)),
    ...(question.wantedOpen ?? []).map((o) => boundsOfChain(o.path)),
    ...proof.cuts.map((c) => boundsOfSegment(c.segment)),
  ]);
  const block = boundsOfChain(question.block);
  const seen = b.minX <= b.maxX ? b : block;
  const margin = Math.max(seen.maxX - seen.minX, seen.maxY - seen.minY) * 0.06;
  return {
    minX: Math.min(seen.minX, Math.max(seen.minX - margin, block.minX)),
    minY: Math.min(seen.minY, Math.max(seen.minY - margin, block.minY)),
    maxX: Math.max(seen.maxX, Math.min(seen.maxX + margin, block.maxX)),
    maxY: Math.max(seen.maxY, Math.min(seen.maxY + margin, block.maxY)),
  };
};

/** The block in grey with all that was cut out of it in white; loose parts stay where they were. */
const metal = (proof: Proof, question: ProofQuestion, frame: PaperView): string => {
  const holes = question.holes.map(
    (h) =>
      `<circle ${place(frame, h.at)} r="${number((h.diameter / 2) * frame.scale)}" fill="#fff" stroke="#999" stroke-width="${number(frame.pen * 0.5)}"/>`,
  );
  const cut = proof.openings.map((o) => outlineData(frame, o)).join('');
  return [
    `<path d="${chainData(frame, question.block)}" fill="#d8dbde" stroke="#666" stroke-width="${number(frame.pen)}"/>`,
    ...holes,
    `<path d="${cut}" fill="#fff" fill-rule="evenodd"/>`,
  ].join('\n');
};

const pieces = (proof: Proof, frame: PaperView, reader: Reader): readonly { readonly shape: string; readonly sign: Sign }[] =>
  [...proof.loose]
    .sort((a, b) => b.area - a.area)
    .map((l) => {
      const fill = l.role === 'part' ? '#c3cfd9' : '#efece4';
      const stroke = l.held ? '#8a8371' : '#b00020';
      const label = print(looseLabel(l), reader);
      const shape = `<path d="${outlineData(frame, l.outline)}" fill="${fill}" fill-opacity="${l.role === 'part' ? 0.6 : 1}" stroke="${stroke}" stroke-width="${number(frame.pen * 0.7)}" stroke-dasharray="${number(frame.pen * 4)} ${number(frame.pen * 3)}"/>`;
      return { shape, sign: { mark: '', at: onPaper(frame, l.at), words: label, colour: l.held ? '#444' : '#b00020', box: false } };
    });

/** One hue from dark to pale, and a dash of its own, by the setting the wire cuts with: the first is the rough. */
const STYLES = [
  { weight: 1.3, dash: '', colour: '#0b3c5d' },
  { weight: 1, dash: '6 2', colour: '#2f6690' },
  { weight: 0.9, dash: '2 2', colour: '#4f86ad' },
  { weight: 0.8, dash: '8 2 1 2', colour: '#6f9fc2' },
  { weight: 0.8, dash: '1 2', colour: '#8fb3cf' },
];

const styleOf = (index: number, frame: PaperView): string => {
  const s = itemAt(STYLES, index % STYLES.length);
  const dash =
    s.dash === ''
      ? ''
      : ` stroke-dasharray="${s.dash
          .split(' ')
          .map((d) => number(Number(d) * frame.pen))
          .join(' ')}"`;
  return `stroke="${s.colour}" stroke-width="${number(s.weight * frame.pen)}"${dash}`;
};

const wirePaths = (proof: Proof, settings: readonly number[], frame: PaperView): string =>
  settings
    .map((setting, i) => {
      const segments = proof.cuts.filter((c) => c.setting === setting).map((c) => c.segment);
      return `<path d="${chainData(frame, path(segments))}" ${styleOf(i, frame)}/>`;
    })
    .join('\n');

/** A ring and a code for each fault; where one hides another's code, the list below the picture has it. */
const faults = (proof: Proof, frame: PaperView): readonly Sign[] =>
  proof.reasons.flatMap(({ finding, at }) => {
    if (at === undefined || finding.severity !== 'refusal' || proof.loose.some((l) => l.at.x === at.x && l.at.y === at.y)) return [];
    const mark = `<circle ${place(frame, at)} r="${number(frame.letter * 1.1)}" stroke="#b00020" stroke-width="${number(frame.pen * 1.5)}"/>`;
    const { x, y } = onPaper(frame, at);
    return [{ mark, at: { x, y: y - frame.letter * 1.9 }, words: finding.code, colour: '#b00020', box: false }];
  });

/** Numbered in program order; stops at one place share a ring. */
const stops = (proof: Proof, frame: PaperView): readonly Sign[] => {
  const places: { readonly at: OnPaper; readonly numbers: number[] }[] = [];
  proof.stops.forEach((stop, i) => {
    const at = onPaper(frame, stop.at);
    const near = places.find((p) => Math.hypot(p.at.x - at.x, p.at.y - at.y) < frame.letter * 1.2);
    if (near === undefined) places.push({ at, numbers: [i + 1] });
    else near.numbers.push(i + 1);
  });
  return places.map(({ at, numbers }) => {
    const words = runs(numbers);
    const beside = { x: at.x + halfWidth(words, frame) + frame.letter * 0.7, y: at.y - frame.letter * 1.1 };
    const mark = `<circle cx="${number(at.x)}" cy="${number(at.y)}" r="${number(frame.letter * 0.2)}" fill="#111"/>`;
    return { mark, at: beside, from: at, words, colour: '#111', box: true };
  });
};

/** 1, 2, 3, 7 as '1-3,7'. */
const runs = (numbers: readonly number[]): string => {
  const spans: [number, number][] = [];
  for (const n of numbers) {
    const last = spans.at(-1);
    if (last !== undefined && n === last[1] + 1) last[1] = n;
    else spans.push([n, n]);
  }
  return spans.map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`)).join(',');
};

const looseLabel = ({ role, loop, mass, held }: Proof['loose'][number]): Text => {
  const piece = loop === undefined ? roles[role] : words.of(roles[role], loop);
  return (held ? words.held : words.unheld)(piece, gram(mass));
};

const notesOf = (proof: Proof, question: ProofQuestion, factor: number): readonly Text[] => {
  const worst = (pick: (c: Proof['contours'][number]) => number): Part =>
    mm(proof.contours.reduce((m, c) => Math.max(m, Math.abs(pick(c))), 0));
  const refused = proof.findings.filter((f) => f.severity === 'refusal').length;
  const measured = words.measured(
    worst((c) => c.leftMost.amount),
    worst((c) => c.gougeMost.amount),
    mm(question.tolerance),
    um(proof.resolution * 1000, upTo(2)),
  );
  return [
    sentences([proof.verdict === 'proven' ? words.allWithin : words.faulty(refused), measured]),
    words.drawn(factor),
    words.dashed,
    words.loose,
  ];
};

const roles: Readonly<Record<Proof['loose'][number]['role'], Text>> = phrases('proof-picture-role', {
  slug: say`slug`,
  part: say`part`,
  scrap: say`scrap`,
});

const words = phrases('proof-picture', {
  proven: say`proven`,
  notProven: say`not proven`,
  tooMany: say`Too many cuts to draw the wire path, the stops and the deviation: see the list of the proof.`,
  path: say`wire path`,
  pathOf: (setting: number) => say`wire path, condition or register ${{ setting: count(setting) }}`,
  of: (role: Text, loop: string) => say`${{ role }} ${{ loop: contour(loop) }}`,
  held: (piece: Text, mass: Part) => say`${{ piece }}, ${{ mass }}`,
  unheld: (piece: Text, mass: Part) => say`${{ piece }}, ${{ mass }}, unsecured`,
  allWithin: say`Proven: every contour is in tolerance.`,
  faulty: (faults: number) => say`Not proven: ${{ faults: count(faults, 'fault') }}.`,
  measured: (left: Part, gouge: Part, allowed: Part, resolution: Part) =>
    say`Max. stock left ${{ left }}, max. overcut ${{ gouge }}, allowed ${{ allowed }}; resolution ${{ resolution }}.`,
  drawn: (factor: number) =>
    say`Deviation scale ${{ factor: plainNumber(factor) }} × length scale. Blue, +: stock left; orange, −: overcut.`,
  dashed: say`Dashed grey lines: tolerance, at the same scale; higher peaks are cut off.`,
  loose: say`Dashed shapes came loose; red edge: fell unsecured. Numbers: stops in program order; what would hide another is left out.`,
});

/** The bar is of a round length in the unit of the reader. */
const foot = (frame: PaperView, legend: readonly string[], notes: readonly string[], reader: Reader): string => {
  const line = (n: number): number => frame.height + frame.letter * 1.5 * (n + 0.7);
  const left = frame.letter;
  const unit = reader.length === 'inch' ? 25.4 : 1;
  const length = roundBelow(frame.width / frame.scale / 4 / unit) * unit;
  const bar = length * frame.scale;
  const y = line(0);
  return [
    `<path d="M${number(left)} ${number(y)}h${number(bar)}m0 ${number(-frame.letter * 0.4)}v${number(frame.letter * 0.8)}M${number(left)} ${number(y - frame.letter * 0.4)}v${number(frame.letter * 0.8)}" stroke="#111" stroke-width="${number(frame.pen)}"/>`,
    `<text x="${number(left + bar + frame.letter)}" y="${number(y + frame.letter * 0.35)}" fill="#111">${print(only(mm(length)), reader)}</text>`,
    ...legend.map(
      (path, i) =>
        `<path d="M${number(left)} ${number(line(i + 1))}h${number(frame.letter * 4)}" ${styleOf(i, frame)}/><text x="${number(left + frame.letter * 5)}" y="${number(line(i + 1) + frame.letter * 0.35)}" fill="#111">${text(path)}</text>`,
    ),
    ...notes.map(
      (n, i) => `<text x="${number(left)}" y="${number(line(i + 1 + legend.length) + frame.letter * 0.35)}" fill="#111">${text(n)}</text>`,
    ),
  ].join('\n');
};

const place = (frame: PaperView, at: Point): string => `cx="${number(frame.x(at.x))}" cy="${number(frame.y(at.y))}"`;
