/** The one door: pieces laid into a plate, in rows or by shape, with the yield and what it is held against. */

import { areaOf, boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { rotationOfDegrees, transformChain, translation } from '../../geometry/transform.ts';
import { itemAt, itemOf, sideBySide } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, name, type Part, quantities, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { type CountedWork, workOf } from '../counted-work.ts';
import { find } from '../findings.ts';
import type { LaidNest, Nest, PlacedPiece } from '../nest-outcome.ts';
import { type NestPiece, type NestQuestion, USUAL_WORK } from '../nest-question.ts';
import { type Prepared, prepare } from '../prepared.ts';
import type { PieceKind } from '../turned-kinds.ts';
import { areaBound } from './area-bound.ts';
import { itemsOf, layFreely } from './by-shape.ts';
import { type GreedyLayout, layGreedily } from './greedy.ts';
import { groundOf, moveTo, type PlateGround } from './ground.ts';
import { layInRows } from './rows.ts';

/**
 * Lays the pieces of a question into its plate. The same question always gives the same nest.
 *
 * @returns where each piece lies, what is left over and the yield; or a refusal with findings where the question cannot be used.
 * That pieces are left over is no refusal.
 */
export const nest = (question: NestQuestion): Nest => {
  const preparation = prepare(question);
  if (preparation.kind === 'refused') return preparation;
  const { prepared } = preparation;
  const work = workOf(question.work ?? USUAL_WORK, question.progress);
  const ground = groundOf(prepared);
  const { placed, manner } = chosen(question, prepared, ground, work);
  return nestOf(question, prepared, ground, { placed, manner }, work.stopped);
};

/** The contours of one placed piece, where it lies on the plate: outline and openings as drawn, arcs kept as arcs. */
export const placedContours = (
  piece: NestPiece,
  { degrees, dx, dy }: PlacedPiece,
): { readonly outline: Contour; readonly holes: readonly Contour[] } => {
  const put = (c: Contour): Contour => transformChain(translation(dx, dy), transformChain(rotationOfDegrees(degrees), c));
  return { outline: put(piece.outline), holes: (piece.holes ?? []).map(put) };
};

interface Chosen {
  readonly placed: readonly PlacedPiece[];
  readonly manner: 'rows' | 'free';
}

/** Rows win where they hold as much metal: they are easier to clamp, to count and to lift out. */
const chosen = (question: NestQuestion, prepared: Prepared, ground: PlateGround, work: CountedWork): Chosen => {
  const rows: Chosen | undefined = question.manner === 'free' ? undefined : { placed: layInRows(prepared, work), manner: 'rows' };
  if (rows !== undefined && (question.manner === 'rows' || (isAll(question, rows.placed) && question.pieces.length === 1))) return rows;
  const free: Chosen = { placed: placedOf(ground, prepared.kinds, layFreely(ground, prepared.kinds, work)), manner: 'free' };
  return rows !== undefined && metalOf(prepared, rows.placed) >= metalOf(prepared, free.placed) * (1 - 1e-12) ? rows : free;
};

const isAll = ({ pieces }: NestQuestion, placed: readonly PlacedPiece[]): boolean =>
  placed.length === pieces.reduce((sum, p) => sum + p.quantity, 0);

const placedOf = (ground: PlateGround, kinds: readonly PieceKind[], { laid }: GreedyLayout): readonly PlacedPiece[] =>
  sideBySide(kinds, ground.ways).flatMap(([{ id }, ways], k) =>
    laid
      .filter(({ kind }) => kind === k)
      .map(({ way, x, y }, i) => {
        const turned = itemAt(ways, way);
        const move = moveTo(ground, turned, x, y);
        return { piece: id, copy: i + 1, degrees: turned.degrees, dx: move.x, dy: move.y };
      }),
  );

const metalOf = ({ kinds }: Prepared, placed: readonly PlacedPiece[]): number => {
  const areas = new Map(kinds.map(({ id, area }) => [id, area]));
  return placed.reduce((sum, { piece }) => sum + itemOf(areas, piece), 0);
};

const nestOf = (
  question: NestQuestion,
  prepared: Prepared,
  ground: PlateGround,
  { placed, manner }: Chosen,
  stopped: boolean,
): LaidNest => {
  const plateArea = areaOf(prepared.plate);
  const metalArea = metalOf(prepared, placed);
  const left = question.pieces
    .map(({ id, quantity }) => ({ piece: id, quantity: quantity - placed.filter((p) => p.piece === id).length }))
    .filter(({ quantity }) => quantity > 0);
  const pieces = new Map(question.pieces.map((p) => [p.id, p]));
  const boxes = placed.map((p) => boundsOfChain(placedContours(itemOf(pieces, p.piece), p).outline));
  const { minX, minY } = boundsOfChain(prepared.plate);
  return {
    kind: 'laid',
    placed,
    left,
    manner,
    yield: metalArea / plateArea,
    bound: areaBound(prepared, ground) / plateArea,
    metalArea,
    plateArea,
    used: boxes.length > 0 ? mergedBounds(boxes) : { minX, minY, maxX: minX, maxY: minY },
    stopped,
    findings: [...leftFindings(question, prepared, ground, left), ...(stopped ? [stoppedFinding(placed.length)] : [])],
  };
};

const leftFindings = (question: NestQuestion, prepared: Prepared, ground: PlateGround, left: LaidNest['left']): readonly Finding[] => {
  if (left.length === 0) return [];
  const items = itemsOf(ground);
  return left.map(({ piece, quantity }) => {
    const k = question.pieces.findIndex(({ id }) => id === piece);
    const asked = itemAt(question.pieces, k).quantity;
    const hasRoom = quantity < asked || layGreedily(ground.floor, items, [k], workOf(Infinity)).laid.length > 0;
    return hasRoom ? tooFull(piece, quantity, asked) : tooLarge(piece, prepared, k);
  });
};

const tooFull = (piece: string, quantity: number, asked: number): Finding => {
  const more = { remedy: words.larger };
  return asked === 1
    ? find('pieces-left/one', say`Piece '${{ piece: name(piece) }}' did not fit on the plate.`, more)
    : find(
        'pieces-left',
        say`${{ left: count(quantity) }} of ${{ asked: count(asked) }} pieces '${{ piece: name(piece) }}' did not fit on the plate.`,
        more,
      );
};

const words = phrases('nest-left', { larger: say`Use another plate, or a larger one.` });

const tooLarge = (piece: string, { kinds, plate }: Prepared, k: number): Finding => {
  const b = boundsOfChain(itemAt(kinds, k).drawn.outer);
  const p = boundsOfChain(plate);
  const size = (box: typeof b): Part => quantities([box.maxX - box.minX, box.maxY - box.minY], '×', 'mm', upTo(1));
  return find(
    'piece-too-large',
    say`Piece '${{ piece: name(piece) }}', ${{ size: size(b) }} as drawn, does not fit even on the empty ${{ plate: size(p) }} plate in any permitted rotation.`,
    {
      place: { kind: 'spot', x: (b.minX + b.maxX) / 2, y: (b.minY + b.maxY) / 2 },
      remedy: remedy(say`Use a larger plate, a smaller border, or allow more rotations.`, { field: 'border' }),
    },
  );
};

const stoppedFinding = (pieces: number): Finding =>
  find('nest-stopped', say`The search for a better layout was stopped early.`, {
    done: say`The best layout so far is given, ${{ pieces: count(pieces, 'piece') }}.`,
  });
