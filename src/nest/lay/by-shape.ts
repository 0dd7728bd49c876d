/** Laying by shape: a greedy layout first, then the pieces are pressed into less and less of the plate, or more of them into it. */

import { firstItem, itemAt, sideBySide } from '../../sequence/sequence.ts';
import { count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { type CountedWork, goesOn } from '../counted-work.ts';
import type { Spans } from '../spans.ts';
import type { PieceKind } from '../turned-kinds.ts';
import { bestInRow, type CellPlace, crowdOf, type Item, putIn } from './crowd.ts';
import { type GreedyLayout, type Laid, layGreedily } from './greedy.ts';
import { type PlateGround, stretched } from './ground.ts';
import { part } from './press-apart.ts';
import { type Chance, chanceFrom } from './seeded-random.ts';

/** What the search is at, for who waits. */
const notes = phrases('nest-search', {
  pressing: say`pressing the pieces together`,
  pressingSo: (pieces: number) => say`pressing ${{ pieces: count(pieces, 'piece') }} together`,
  adding: say`finding room for more pieces`,
});

/** Beyond so many pieces only the greedy layout is made: tables of pairs would grow with the square. */
export const MOST_PRESSED = 300;
/** Share of the length given up in one step, at first and at last. */
const STEP = { first: 0.01, last: 0.0005, after: 0.7, back: 1.3 };
/** Share of the work given to each of the greedy layouts before the best of them gets the rest, and that after which pressing ends. */
const SHARE = { trial: 0.02, pressing: 0.85 };
/** Rounds without progress until a step is given up, and steps given up in a row until there is no more hope. */
const PATIENCE = 100;
const HOPE = 25;
/** Share of the pieces that count as the larger ones. */
const LARGER = 0.3;

export const layFreely = (ground: PlateGround, kinds: readonly PieceKind[], work: CountedWork): GreedyLayout => {
  const plain = bestGreedy(ground, kinds, work);
  if (plain.laid.length > MOST_PRESSED || plain.laid.length + plain.left.length < 2) return plain;
  const chance = chanceFrom(1);
  const pressed = pressedIn(ground, kinds, chance, work);
  const start = pressed === undefined ? plain : bestOf(ground, kinds, [plain, pressed]);
  return start.left.length > 0 ? addMore(ground, kinds, start, chance, work) : start;
};

/** All pieces laid on twice the plate and pressed together; what lies beyond the plate in the end is left. */
const pressedIn = (plate: PlateGround, kinds: readonly PieceKind[], chance: Chance, work: CountedWork): GreedyLayout | undefined => {
  const ground = stretched(plate);
  const starts = greedyLayouts(ground, kinds, work).filter(({ left }) => left.length === 0);
  if (starts[0] === undefined || starts[0].laid.length > MOST_PRESSED) return undefined;
  const tried = starts.map(({ laid }) => ({ laid: shorten(ground, laid, chance, work, work.done + work.most * SHARE.trial), left: [] }));
  const laid = shorten(ground, bestOf(ground, kinds, tried).laid, chance, work, work.most * SHARE.pressing);
  const within = ({ kind, way, x }: Laid): boolean => x + itemAt(itemAt(ground.ways, kind), way).spans.wide <= plate.grid.wide;
  return { laid: laid.filter(within), left: laid.filter((l) => !within(l)).map(({ kind }) => kind) };
};

export const itemsOf = ({ ways }: PlateGround): readonly Item[] => ways.map((turned) => ({ ways: turned.map((t) => t.spans) }));

export const bestGreedy = (ground: PlateGround, kinds: readonly PieceKind[], work: CountedWork): GreedyLayout =>
  bestOf(ground, kinds, greedyLayouts(ground, kinds, work));

/** A few orders, each of which puts what is hardest to place first in its own sense. */
const greedyLayouts = (ground: PlateGround, kinds: readonly PieceKind[], work: CountedWork): readonly GreedyLayout[] => {
  const all = kinds.flatMap((kind, i) => Array.from({ length: kind.quantity }, () => i));
  const box = (i: number): readonly [number, number] => {
    const { bounds } = firstItem(itemAt(ground.ways, i));
    return [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  };
  const senses: readonly ((i: number) => number)[] = [
    (i) => Math.max(...box(i)),
    (i) => itemAt(kinds, i).area,
    (i) => box(i)[0] * box(i)[1],
    (i) => Math.min(...box(i)),
  ];
  return senses.map((hard) =>
    layGreedily(
      ground.floor,
      itemsOf(ground),
      all.toSorted((i, j) => hard(j) - hard(i)),
      work,
    ),
  );
};

const bestOf = (ground: PlateGround, kinds: readonly PieceKind[], layouts: readonly GreedyLayout[]): GreedyLayout =>
  layouts.reduce((best, layout) => (isBetter(ground, kinds, layout, best) ? layout : best));

/** More metal laid is better; of the same metal, less of the plate's length. */
const isBetter = (ground: PlateGround, kinds: readonly PieceKind[], a: GreedyLayout, b: GreedyLayout): boolean => {
  const metal = ({ laid }: GreedyLayout): number => laid.reduce((sum, l) => sum + itemAt(kinds, l.kind).area, 0);
  const more = metal(a) - metal(b);
  return Math.abs(more) > 1e-9 * metal(a) ? more > 0 : reachOf(itemsOf(ground), a.laid) < reachOf(itemsOf(ground), b.laid);
};

const reachOf = (items: readonly Item[], laid: readonly Laid[]): number =>
  laid.reduce((most, piece) => Math.max(most, piece.x + spansOf(items, piece).wide), 0);

/** The cells of a piece the way it lies. */
const spansOf = (items: readonly Item[], { kind, way }: Pick<Laid, 'kind' | 'way'>): Spans => itemAt(itemAt(items, kind).ways, way);

/** Presses the pieces into less and less of the length, each time from the best layout so far; after a failure with two swapped. */
const shorten = (ground: PlateGround, start: readonly Laid[], chance: Chance, work: CountedWork, until: number): readonly Laid[] => {
  const items = itemsOf(ground);
  let best = start;
  let step = STEP.first;
  for (let failures = 0; failures < HOPE && work.done < until && goesOn(work, notes.pressing); ) {
    const reach = reachOf(items, best);
    const limit = reach - Math.max(1, Math.round(reach * step));
    const tried = apart(ground, items, failures > 0 ? swapped(ground, items, best, chance) : best, limit, chance, work);
    if (tried === undefined) {
      failures += 1;
      step = Math.max(STEP.last, step * STEP.after);
    } else {
      best = tried;
      failures = 0;
      step = Math.min(STEP.first, step * STEP.back);
    }
  }
  return best;
};

/** The pieces driven apart below column `limit`, if that can be done. */
const apart = (
  ground: PlateGround,
  items: readonly Item[],
  laid: readonly Laid[],
  limit: number,
  chance: Chance,
  work: CountedWork,
): readonly Laid[] | undefined => {
  const pieces = laid.map(({ kind }) => itemAt(items, kind));
  if (pieces.some(({ ways }) => ways.every(({ wide }) => wide > limit))) return undefined;
  const crowd = crowdOf(ground.grid, pieces, ground.taken);
  const spots = laid.map(
    (piece): CellPlace => ({
      way: piece.way,
      x: Math.max(0, Math.min(piece.x, limit - spansOf(items, piece).wide)),
      y: piece.y,
    }),
  );
  spots.forEach((spot, i) => {
    putIn(crowd, i, spot);
  });
  const note = notes.pressingSo(laid.length);
  if (!part(crowd, spots, { limit, patience: PATIENCE, note }, chance, work)) return undefined;
  return sideBySide(laid, spots).map(([{ kind }, spot]) => ({ kind, ...spot }));
};

/** Two of the larger pieces, of unlike kinds where that is so, change places as far as the plate allows: small ones find their way alone. */
const swapped = (ground: PlateGround, items: readonly Item[], laid: readonly Laid[], chance: Chance): readonly Laid[] => {
  const size = (piece: Laid): number => {
    const { wide, high } = spansOf(items, piece);
    return wide * high;
  };
  const larger = laid
    .map((_, k) => k)
    .toSorted((a, b) => size(itemAt(laid, b)) - size(itemAt(laid, a)))
    .slice(0, Math.ceil(laid.length * LARGER));
  const i = itemAt(larger, Math.floor(chance() * larger.length) % larger.length);
  const others = larger.filter((k) => itemAt(laid, k).kind !== itemAt(laid, i).kind);
  const j = others[Math.floor(chance() * others.length) % Math.max(1, others.length)] ?? i;
  const within = (piece: Laid, at: Laid): Laid => {
    const { wide, high } = spansOf(items, piece);
    return { ...piece, x: Math.max(0, Math.min(at.x, ground.grid.wide - wide)), y: Math.max(0, Math.min(at.y, ground.grid.high - high)) };
  };
  return laid.map((l, k) => (k === i ? within(l, itemAt(laid, j)) : k === j ? within(l, itemAt(laid, i)) : l));
};

/** Tries to press pieces that were left into the plate as well, largest first; a kind that fails twice is left. */
const addMore = (
  ground: PlateGround,
  kinds: readonly PieceKind[],
  start: GreedyLayout,
  chance: Chance,
  work: CountedWork,
): GreedyLayout => {
  const items = itemsOf(ground);
  let laid = start.laid;
  const left = start.left.toSorted((i, j) => itemAt(kinds, j).area - itemAt(kinds, i).area);
  const failures = new Map<number, number>();
  for (let k = 0; k < left.length && goesOn(work, notes.adding); ) {
    const kind = itemAt(left, k);
    const failed = failures.get(kind) ?? 0;
    const fits = itemAt(items, kind).ways.findIndex(({ wide, high }) => wide <= ground.grid.wide && high <= ground.grid.high);
    const tried =
      failed > 1 || fits < 0 || laid.length >= MOST_PRESSED
        ? undefined
        : apart(ground, items, [...laid, leastOverlap(ground, items, laid, kind, fits, work)], ground.grid.wide, chance, work);
    if (tried !== undefined) {
      laid = tried;
      left.splice(k, 1);
    } else if (failed > 1 || fits < 0) k += 1;
    else failures.set(kind, failed + 1);
  }
  return { laid, left };
};

/** Where one more piece overlaps the others least. */
const leastOverlap = (
  ground: PlateGround,
  items: readonly Item[],
  laid: readonly Laid[],
  kind: number,
  way: number,
  work: CountedWork,
): Laid => {
  const crowd = crowdOf(ground.grid, [...laid.map((l) => itemAt(items, l.kind)), itemAt(items, kind)], ground.taken);
  laid.forEach((spot, i) => {
    putIn(crowd, i, spot);
  });
  let best = bestInRow(crowd, laid.length, way, 0, ground.grid.wide, work);
  for (let y = 1; y <= ground.grid.high - spansOf(items, { kind, way }).high; y += 1) {
    const tried = bestInRow(crowd, laid.length, way, y, ground.grid.wide, work);
    if (tried.overlap < best.overlap) best = tried;
  }
  return { kind, way, x: best.x, y: best.y };
};
