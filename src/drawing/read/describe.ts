/** Tells a drawing: as text for a person and as plain data for a program. */

import { grouped, lastOf } from '../../sequence/sequence.ts';
import type { Finding, Severity } from '../../text/finding.ts';
import { upTo } from '../../text/part.ts';
import { digitsOf } from '../../text/print/amount.ts';
import { counted } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import type { Drawing, Loop, OpenChain } from '../drawing.ts';

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
  readonly findings: readonly Finding[];
}

export const drawingJson = (drawing: Drawing, file = ''): DrawingData => ({
  file,
  state: drawing.state,
  format: drawing.format,
  units: drawing.units,
  loops: drawing.loops.map(({ id, layer, hidden, parent, depth, area, perimeter }) => ({
    id,
    layer,
    hidden,
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
  findings: drawing.findings,
});

const endsOf = ({ path }: OpenChain, { units }: Drawing): DrawingData['openChains'][number]['ends'] => {
  const [from, to] = [path.segments[0].from, lastOf(path.segments).to];
  const by = units.millimetres;
  return [
    { x: from.x / by, y: from.y / by },
    { x: to.x / by, y: to.y / by },
  ];
};

const STATES: Readonly<Record<Drawing['state'], string>> = {
  complete: 'read whole',
  incomplete: 'the file is not whole; what could be read is here',
  refused: 'not read',
};

const BASES: Readonly<Record<Drawing['units']['basis'], string>> = { header: 'as the file says', user: 'as asked', assumed: 'assumed' };

/** As a few blocks of lines: the file, its loops, its open chains, its findings, the gravest first. */
export const describeDrawing = (drawing: Drawing, file = ''): string => {
  const head = `${file === '' ? 'The drawing' : file}: ${drawing.format === 'unknown' ? 'unknown format' : drawing.format.toUpperCase()}, ${STATES[drawing.state]}.`;
  if (drawing.state === 'refused') return [head, ...findingLines(drawing.findings)].join('\n');
  const { name, millimetres, basis } = drawing.units;
  const unit = millimetres === 1 ? `${name}` : `${name} (1 ${name} = ${digitsOf(millimetres, upTo(6))} mm)`;
  return [
    head,
    `Unit: ${unit}, ${BASES[basis]}.`,
    ...layerLines(drawing),
    ...loopLines(drawing),
    ...chainLines(drawing),
    ...findingLines(drawing.findings),
  ].join('\n');
};

const layerLines = ({ layers }: Drawing): string[] =>
  layers.length === 0 ? [] : [`Layers: ${layers.map((l) => `${l.name} (${l.entities}${l.hidden ? ', hidden' : ''})`).join(', ')}.`];

/** More loops than this of one size, layer and depth are told in one line. */
const ALIKE = 3;

const loopLines = ({ loops, units }: Drawing): string[] => {
  if (loops.length === 0) return ['No closed loop.'];
  const groups = grouped(loops, (loop) =>
    [loop.area.toPrecision(5), loop.perimeter.toPrecision(5), loop.layer, loop.depth, loop.parent, loop.hidden].join('|'),
  );
  const lines = [...groups.values()].flatMap((alike) =>
    alike.length > ALIKE
      ? [loopLine(`${alike[0].id} … ${lastOf(alike).id}: ${alike.length} alike, each`, alike[0], units.name)]
      : alike.map((l) => loopLine(`${l.id}:`, l, units.name)),
  );
  return [`${counted(loops.length, 'closed loop')}:`, ...lines];
};

const loopLine = (head: string, loop: Loop, unit: string): string => {
  const within = loop.parent === undefined ? 'outermost' : `in ${loop.parent}, ${loop.depth % 2 === 1 ? 'an opening' : 'an island'}`;
  const where = loop.hidden ? 'hidden' : within;
  return `  ${head} area ${Number(loop.area.toPrecision(7))} ${unit}², perimeter ${Number(loop.perimeter.toPrecision(7))} ${unit}, layer ${loop.layer}, ${where}`;
};

const LISTED = 20;

const chainLines = (drawing: Drawing): string[] => {
  const { openChains, units } = drawing;
  if (openChains.length === 0) return [];
  const lines = openChains.slice(0, LISTED).map((chain) => {
    const [from, to] = endsOf(chain, drawing).map((p) => `(${digitsOf(p.x, upTo(4))}, ${digitsOf(p.y, upTo(4))})`);
    return `  ${chain.id}: ${digitsOf(chain.length, upTo(4))} ${units.name} from ${from} to ${to}, layer ${chain.layer}${chain.hidden ? ', hidden' : ''}`;
  });
  const more = openChains.length > LISTED ? [`  and ${openChains.length - LISTED} more`] : [];
  return [`${counted(openChains.length, 'open chain')}:`, ...lines, ...more];
};

const ORDER: readonly Severity[] = ['refusal', 'doubt', 'warning', 'repair', 'note'];

const findingLines = (findings: readonly Finding[]): string[] => {
  if (findings.length === 0) return ['No findings.'];
  const sorted = [...findings].sort((p, q) => ORDER.indexOf(p.severity) - ORDER.indexOf(q.severity));
  const total = findings.reduce((sum, f) => sum + (f.stands ?? 1), 0);
  return [
    `${counted(total, 'finding')}:`,
    ...sorted.map(
      (f) =>
        `  ${f.severity} [${f.code}] ${[f.text, f.done, f.remedy?.text].flatMap((t) => (t === undefined ? [] : [printPlain(t)])).join(' ')}`,
    ),
  ];
};
