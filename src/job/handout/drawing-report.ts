/** Tells a drawing: as text for a person and as plain data for a program. */

import type { Drawing, Loop, OpenChain } from '../../drawing/drawing.ts';
import { grouped, lastOf } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, count, list, name, number, type Part, place, significant, term, upTo } from '../../text/part.ts';
import { printPlain } from '../../text/print/print.ts';
import { type Stated, stated } from '../../text/print/stated.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import { byGravity, severityLead } from '../../text/severity.ts';
import type { Text } from '../../text/text.ts';

/** What `drawingJson` gives; places, lengths and areas in drawing units. */
export interface DrawingData {
  readonly file: string;
  readonly state: Drawing['state'];
  readonly format: Drawing['format'];
  readonly units: Drawing['units'];
  readonly loops: readonly {
    readonly id: string;
    readonly layer: string;
    readonly hidden: boolean;
    readonly parent?: string | undefined;
    readonly depth: number;
    readonly area: number;
    readonly perimeter: number;
  }[];
  readonly openChains: readonly {
    readonly id: string;
    readonly layer: string;
    readonly hidden: boolean;
    readonly length: number;
    readonly ends: readonly [{ readonly x: number; readonly y: number }, { readonly x: number; readonly y: number }];
  }[];
  readonly layers: Drawing['layers'];
  readonly findings: readonly Stated[];
}

export const drawingJson = (drawing: Drawing, file = ''): DrawingData => ({
  file,
  state: drawing.state,
  format: drawing.format,
  units: drawing.units,
  loops: drawing.loops.map(({ id, layer, hidden, aside, parent, depth, area, perimeter }) => ({
    id,
    layer,
    hidden,
    aside,
    parent,
    depth,
    area,
    perimeter,
  })),
  openChains: drawing.openChains.map((chain) => ({
    id: chain.id,
    layer: chain.layer,
    hidden: chain.hidden,
    length: chain.length,
    ends: endsOf(chain, drawing),
  })),
  layers: drawing.layers,
  findings: drawing.findings.map((f) => stated(f)),
});

const endsOf = ({ path }: OpenChain, { units }: Drawing): DrawingData['openChains'][number]['ends'] => {
  const [from, to] = [path.segments[0].from, lastOf(path.segments).to];
  const by = units.millimetres;
  return [
    { x: from.x / by, y: from.y / by },
    { x: to.x / by, y: to.y / by },
  ];
};

const words = phrases('drawing-report', {
  head: (file: Part | Text, format: Part | Text, state: Text) => say`${{ file }}: ${{ format }}, ${{ state }}.`,
  drawing: say`The drawing`,
  unknown: say`unknown format`,
  complete: say`complete`,
  incomplete: say`incomplete file; what could be read is shown`,
  refused: say`not read`,
  unit: (unit: string, basis: Text) => say`Unit: ${{ unit: term(unit) }}, ${{ basis }}.`,
  otherUnit: (unit: string, millimetres: number, basis: Text) =>
    say`Unit: ${{ unit: term(unit) }} (1 ${{ again: term(unit) }} = ${{ millimetres: number(millimetres, upTo(6)) }} mm), ${{ basis }}.`,
  header: say`from the file`,
  user: say`as specified`,
  assumed: say`assumption`,
  layers: (layers: Part) => say`Layers: ${{ layers }}.`,
  layer: (layer: string, entities: number) => say`${{ layer: name(layer) }} (${{ entities: count(entities) }})`,
  hiddenLayer: (layer: string, entities: number) => say`${{ layer: name(layer) }} (${{ entities: count(entities) }}, hidden)`,
  noLoop: say`No closed loop.`,
  loops: (loops: number) => say`${{ loops: count(loops, 'closed loop') }}:`,
  loop: (head: Text, area: Part, unit: string, perimeter: Part, layer: string, where: Text) =>
    say`${{ head }} area ${{ area }} ${{ unit: term(unit) }}², perimeter ${{ perimeter }} ${{ again: term(unit) }}, layer ${{ layer: name(layer) }}, ${{ where }}`,
  one: (id: string) => say`${{ loop: contour(id) }}:`,
  alike: (first: string, last: string, alike: number) =>
    say`${{ first: contour(first) }} … ${{ last: contour(last) }}: ${{ alike: count(alike) }} alike, each`,
  outermost: say`outermost`,
  opening: (parent: string) => say`in ${{ parent: contour(parent) }}, an opening`,
  island: (parent: string) => say`in ${{ parent: contour(parent) }}, an island`,
  hidden: say`hidden`,
  leftOut: say`left out`,
  chains: (chains: number) => say`${{ chains: count(chains, 'open chain') }}:`,
  chain: (chain: OpenChain, unit: string, from: Part, to: Part) =>
    say`${{ chain: contour(chain.id) }}: ${{ length: number(chain.length, upTo(4)) }} ${{ unit: term(unit) }} from ${{ from }} to ${{ to }}, layer ${{ layer: name(chain.layer) }}`,
  hiddenChain: (chain: Text) => say`${{ chain }}, hidden`,
  more: (more: number) => say`and ${{ more: count(more) }} more`,
  noFindings: say`No findings.`,
  findings: (findings: number) => say`${{ findings: count(findings, 'finding') }}:`,
});

/** As a few blocks of lines: the file, its loops, its open chains, its findings, the gravest first. */
export const describeDrawing = (drawing: Drawing, file = ''): string => {
  const format = drawing.format === 'unknown' ? words.unknown : term(drawing.format.toUpperCase());
  const head = words.head(file === '' ? words.drawing : name(file), format, words[drawing.state]);
  const read = drawing.state === 'refused' ? [] : [unitLine(drawing), ...layerLines(drawing)];
  const lists = drawing.state === 'refused' ? [] : [...loopLines(drawing), ...chainLines(drawing)];
  return [...[head, ...read].map(printPlain), ...lists, ...findingLines(drawing.findings)].join('\n');
};

const unitLine = ({ units: { name: unit, millimetres, basis } }: Drawing): Text =>
  millimetres === 1 ? words.unit(unit, words[basis]) : words.otherUnit(unit, millimetres, words[basis]);

const layerLines = ({ layers }: Drawing): readonly Text[] =>
  layers.length === 0
    ? []
    : [words.layers(list(layers.map((l) => (l.hidden ? words.hiddenLayer(l.name, l.entities) : words.layer(l.name, l.entities)))))];

/** A heading and what is listed under it. */
const listed = (heading: Text, lines: readonly Text[]): readonly string[] => [
  printPlain(heading),
  ...lines.map((l) => `  ${printPlain(l)}`),
];

/** More loops than this of one size, layer and depth are told in one line. */
const ALIKE = 3;

const loopLines = ({ loops, units }: Drawing): readonly string[] => {
  if (loops.length === 0) return [printPlain(words.noLoop)];
  const groups = grouped(loops, (loop) =>
    [rounded(loop.area, 5), rounded(loop.perimeter, 5), loop.layer, loop.depth, loop.parent, loop.hidden, loop.aside].join('|'),
  );
  const lines = [...groups.values()].flatMap((alike) =>
    alike.length > ALIKE
      ? [loopLine(words.alike(alike[0].id, lastOf(alike).id, alike.length), alike[0], units.name)]
      : alike.map((l) => loopLine(words.one(l.id), l, units.name)),
  );
  return listed(words.loops(loops.length), lines);
};

/** To so many digits that count: what was drawn alike is alike, whatever the last bits say. */
const rounded = (value: number, digits: number): number => {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - digits);
  return Math.round(value / step) * step;
};

const loopLine = (head: Text, loop: Loop, unit: string): Text =>
  words.loop(head, number(loop.area, significant(7)), unit, number(loop.perimeter, significant(7)), loop.layer, whereOf(loop));

const whereOf = ({ hidden, aside, parent, depth }: Loop): Text => {
  if (hidden) return words.hidden;
  if (aside !== undefined) return words.leftOut;
  if (parent === undefined) return words.outermost;
  return depth % 2 === 1 ? words.opening(parent) : words.island(parent);
};

const LISTED = 20;

const chainLines = (drawing: Drawing): readonly string[] => {
  const { openChains, units } = drawing;
  if (openChains.length === 0) return [];
  const lines = openChains.slice(0, LISTED).map((chain) => {
    const [from, to] = endsOf(chain, drawing);
    const line = words.chain(chain, units.name, place(from), place(to));
    return chain.hidden ? words.hiddenChain(line) : line;
  });
  return listed(words.chains(openChains.length), openChains.length > LISTED ? [...lines, words.more(openChains.length - LISTED)] : lines);
};

const findingLines = (findings: readonly Finding[]): readonly string[] => {
  if (findings.length === 0) return [printPlain(words.noFindings)];
  const total = findings.reduce((sum, f) => sum + (f.stands ?? 1), 0);
  return listed(words.findings(total), byGravity(findings).map(findingLine));
};

/** Without its code, which is for programs: they read the plain data. */
const findingLine = ({ severity, text, done, remedy }: Finding): Text => sentences([severityLead(severity), text, done, remedy?.text]);
