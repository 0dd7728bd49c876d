/** The pieces and the plate of a nest, out of their drawings. */

import type { Drawing, Loop } from '../../drawing/drawing.ts';
import { takenOf } from '../../drawing/left-out.ts';
import { readDrawing } from '../../drawing/read/read-drawing.ts';
import type { Contour } from '../../geometry/contour.ts';
import type { NestPiece } from '../../nest/nest-question.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, list, contour as loopNamed, name, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { NestFile } from '../files/nest-file.ts';
import { rectangleOf } from '../files/setup-file.ts';
import { find } from '../findings.ts';

/** A drawing file by the name that the nest file gives it. */
export type DrawingOf = (name: string) => Uint8Array;

export interface NestPieces {
  readonly pieces: readonly NestPiece[];
  readonly plate: Contour;
  /** Holes of a drawn plate. */
  readonly holes: readonly Contour[];
  readonly findings: readonly Finding[];
}

export type PiecesRead = ({ readonly kind: 'read' } & NestPieces) | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

export const piecesOf = (file: NestFile, drawingOf: DrawingOf): PiecesRead => {
  const found = file.pieces.map((p, i) => piecesIn(p, i, takenOf(readDrawing(drawingOf(p.drawing), p.drawing, { units: p.units }), {})));
  const plate = plateOf(file.plate, drawingOf);
  const bad = [...found.flatMap((f) => (f.kind === 'bad' ? f.findings : [])), ...(plate.kind === 'bad' ? plate.findings : [])];
  if (bad.length > 0 || plate.kind === 'bad') return { kind: 'bad', findings: bad };
  const read = found.flatMap((f) => (f.kind === 'read' ? [f] : []));
  return {
    kind: 'read',
    pieces: unlike(read.flatMap((f) => f.pieces)),
    plate: plate.plate,
    holes: plate.holes,
    findings: read.flatMap((f) => f.findings),
  };
};

type Found =
  | { readonly kind: 'read'; readonly pieces: readonly NestPiece[]; readonly findings: readonly Finding[] }
  | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

const piecesIn = (asked: NestFile['pieces'][number], index: number, drawing: Drawing): Found => {
  const loops = drawing.loops.filter((l) => !l.hidden && l.aside === undefined);
  const outer = loops.filter((l) => l.depth === 0);
  if (drawing.state === 'refused' || outer.length === 0)
    return { kind: 'bad', findings: [unusable(asked.drawing, `pieces.${index}.drawing`, drawing)] };
  const stem = asked.drawing.replace(/^.*[/\\]/, '').replace(/\.[^.]*$/, '');
  const pieces = outer.map(
    (loop): NestPiece => ({
      id: outer.length === 1 ? stem : `${stem} ${loop.id}`,
      outline: loop.contour,
      holes: childrenOf(loop, loops).map((l) => l.contour),
      quantity: asked.quantity,
      turns: asked.turns,
      mirrored: false,
    }),
  );
  const islands = loops.filter((l) => l.depth > 1);
  return { kind: 'read', pieces, findings: islands.length === 0 ? [] : [islandsLeft(asked.drawing, islands)] };
};

const childrenOf = (loop: Loop, loops: readonly Loop[]): readonly Loop[] => loops.filter((l) => l.depth === 1 && l.parent === loop.id);

const unusable = (file: string, path: string, drawing: Drawing): Finding =>
  find('nest-drawing-unusable', say`${{ file: name(file) }} has no closed loop to lay: ${{ why: reasonOf(drawing.findings) }}`, {
    place: { kind: 'field', path },
    remedy: remedy(say`Check it with ${{ command: term('kerfwright read') }}.`, { field: path }),
  });

const islandsLeft = (file: string, islands: readonly Loop[]): Finding =>
  find('nest-island-left', (islands.length === 1 ? words.island : words.islands)(file, islands), {
    remedy: say`Draw what is wanted from the inside as a separate piece.`,
  });

const words = phrases('nest-pieces', {
  island: (file: string, islands: readonly Loop[]) =>
    say`${{ file: name(file) }} has a loop inside an opening (${{ loops: list(islands.map((l) => loopNamed(l.id))) }}): the opening and what is in it are cut away as one piece.`,
  islands: (file: string, islands: readonly Loop[]) =>
    say`${{ file: name(file) }} has ${{ count: count(islands.length, 'loop') }} inside an opening (${{ loops: list(islands.map((l) => loopNamed(l.id))) }}): the opening and what is in it are cut away as one piece.`,
  nothing: say`nothing in it closes.`,
});

/** Two drawings of one name in different folders still give pieces that can be told apart. */
const unlike = (pieces: readonly NestPiece[]): readonly NestPiece[] =>
  pieces.map((p, i) => (pieces.findIndex((q) => q.id === p.id) < i ? { ...p, id: `${p.id} (${i + 1})` } : p));

type PlateFound =
  | { readonly kind: 'read'; readonly plate: Contour; readonly holes: readonly Contour[] }
  | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

const plateOf = (plate: NestFile['plate'], drawingOf: DrawingOf): PlateFound => {
  if ('width' in plate) return { kind: 'read', plate: rectangleOf({ x: 0, y: 0 }, { x: plate.width, y: plate.depth }), holes: [] };
  const drawing = takenOf(readDrawing(drawingOf(plate.drawing), plate.drawing, {}), { outline: 'block' });
  const loops = drawing.loops.filter((l) => !l.hidden && l.aside === undefined);
  // Loops are numbered by falling area: the first is the largest.
  const outer = loops.find((l) => l.depth === 0);
  if (drawing.state === 'refused' || outer === undefined)
    return { kind: 'bad', findings: [unusable(plate.drawing, 'plate.drawing', drawing)] };
  return { kind: 'read', plate: outer.contour, holes: childrenOf(outer, loops).map((l) => l.contour) };
};

const reasonOf = (findings: readonly Finding[]): Text => findings.find((f) => f.severity === 'refusal')?.text ?? words.nothing;
