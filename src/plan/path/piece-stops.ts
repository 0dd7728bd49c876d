/** What the program's stops say of a loose piece: how heavy and large, how it hangs, and what to hold or catch it with. */
import type { Family } from '../../physics/material/material.ts';
import { fixed, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { saidMass } from '../loose-piece-mass.ts';
import type { LoosePiece } from '../plan.ts';
import { type DesignStep, stop } from './design-step.ts';
import { saidSize } from './loose-piece.ts';

/** A piece as its stops tell of it. */
export interface SpokenPiece extends Pick<LoosePiece, 'role' | 'size' | 'handling'> {
  /** kg */
  readonly mass: number;
  /** mm from its tab to where its weight acts. */
  readonly lever: number;
  readonly magnetic: boolean;
}

/** Hold well on a magnet; stainless steel may or may not, so it is not counted on. */
const MAGNETIC: ReadonlySet<Family> = new Set(['tool steel', 'steel']);

export const spokenPiece = (
  { role, mass, size, handling }: Pick<LoosePiece, 'role' | 'size' | 'handling'> & { readonly mass: number },
  lever: number,
  family: Family,
): SpokenPiece => ({ role, size, handling, mass, lever, magnetic: MAGNETIC.has(family) });

/** Before the tab is cut. */
export const secure = (piece: SpokenPiece, tab: number, skims: boolean): DesignStep => {
  const heavy = isHeavy(piece);
  const bears = heavy ? [details.size(piece), details.steady] : [details.steady];
  if (piece.role === 'slug')
    return stop('secure slug', slugs.held(called(piece), heldBy(piece)), heavy ? [details.tab(tab), ...bears] : [details.tab(tab)]);
  const text = heavy
    ? (skims ? parts.borneSkims : parts.borne)(called(piece), borne(piece))
    : (skims ? parts.heldSkims : parts.held)(called(piece));
  return stop('secure part', text, [details.tab(tab), ...bears]);
};

/** After it. */
export const takeOut = (piece: SpokenPiece, skims: boolean): DesignStep => {
  const out = takes[takenBy(piece)](called(piece));
  return piece.role === 'slug' ? stop('take out slug', (skims ? words.skims : words.next)(out)) : stop('take out part', words.next(out));
};

/** Before a place where a slug comes apart. */
export const secureHalf = (piece: SpokenPiece, tab: number): DesignStep =>
  stop('secure slug', slugs.comesApart(called({ ...piece, role: 'slug' })), [
    (piece.magnetic ? details.splitsMagnet : details.splitsClamp)(tab),
  ]);

/** Behind it. */
export const takeHalf = (piece: SpokenPiece): DesignStep => stop('take out slug', slugs.halfLoose, [details.slug(piece.mass)]);

/** Before a place where waste in a pocket of a part comes loose, and behind it. */
export const secureWaste: DesignStep = stop('secure slug', say('pocket-stop.secure')`waste in pocket comes loose: secure it, cycle start`);
export const takeWaste: DesignStep = stop('take out slug', say('pocket-stop.take')`take out waste from pocket, then cycle start`);

/** 'slug 44 g': below a gram its mass is no news. */
const called = ({ role, mass }: SpokenPiece): Text => (mass < 0.001 ? small : words)[role](mass);

const isHeavy = ({ handling }: SpokenPiece): boolean => handling === 'held' || handling === 'tackle';

const heldBy = (piece: SpokenPiece): Text => {
  const { handling, magnetic } = piece;
  if (handling === 'caught') return magnetic ? holds.catchMagnet : holds.catch;
  if (handling === 'lifted') return magnetic ? holds.magnet : holds.clamp;
  return borne(piece);
};

const borne = ({ handling }: SpokenPiece): Text => (handling === 'tackle' ? holds.tackle : holds.bars);

const takenBy = ({ handling }: SpokenPiece): keyof typeof takes => {
  if (handling === 'tackle') return 'tackle';
  return handling === 'held' ? 'lift' : 'hand';
};

// One short line for each stop, what to do before anything else: the operator may see no more than the block itself.
const slugs = phrases('slug-stop', {
  held: (slug: Text, by: Text) => say`${{ slug }}: ${{ by }}, then cycle start cuts tab`,
  comesApart: (slug: Text) => say`${{ slug }} may split: secure both pieces, cycle start`,
  halfLoose: say`take out piece of slug if loose, keep rest, cycle start`,
});

const parts = phrases('part-stop', {
  held: (part: Text) => say`secure ${{ part }}, then cycle start cuts tab`,
  heldSkims: (part: Text) => say`secure ${{ part }}, cycle start cuts and skims tab`,
  borne: (part: Text, by: Text) => say`${{ part }}: ${{ by }}, then cycle start cuts tab`,
  borneSkims: (part: Text, by: Text) => say`${{ part }}: ${{ by }}, cycle start cuts/skims tab`,
});

const small = phrases('small-piece', { slug: (_: number) => say`small slug`, part: (_: number) => say`small part` });

const words = phrases('piece-stop', {
  slug: (mass: number) => say`slug ${{ mass: saidMass(mass) }}`,
  part: (mass: number) => say`part ${{ mass: saidMass(mass) }}`,
  next: (out: Text) => say`${{ out }}, then cycle start`,
  skims: (out: Text) => say`${{ out }}, then cycle start skims`,
});

const holds = phrases('piece-hold', {
  catchMagnet: say`magnet or plate`,
  catch: say`catch on plate`,
  magnet: say`magnet or clamp`,
  clamp: say`clamp or glue`,
  tackle: say`tackle or bars`,
  bars: say`bars or props`,
});

const takes = phrases('piece-take', {
  tackle: (piece: Text) => say`hoist out ${{ piece }}`,
  lift: (piece: Text) => say`lift out ${{ piece }} upward`,
  hand: (piece: Text) => say`take out ${{ piece }}`,
});

/** Comment lines of their own before the stop. */
const details = phrases('stop-detail', {
  tab: (tab: number) => say`Held by a tab of ${{ tab: mm(tab, fixed(1)) }}`,
  size: ({ size, lever }: SpokenPiece) => say`Piece ${{ size: saidSize(size) }}, weight ${{ lever: mm(lever, fixed(0)) }} from the tab`,
  steady: say`Secure it so it cannot drop or tilt`,
  splitsMagnet: (on: number) => say`It may split ${{ on: mm(on, fixed(1)) }} further on: magnet or clamp on both`,
  splitsClamp: (on: number) => say`It may split ${{ on: mm(on, fixed(1)) }} further on: clamp or glue both`,
  slug: (mass: number) => say`A piece of the ${{ mass: saidMass(mass) }} slug may be loose here`,
});
