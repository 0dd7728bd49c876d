/** What the program's stops say of a loose piece: how heavy and large, how it hangs, and what to hold or catch it with. */
import type { Family } from '../../physics/material/material.ts';
import { fixed, mm } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
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
  const hangs = hanging[piece.role][isHeavy(piece) ? 'heavy' : 'light'](piece, tab);
  if (piece.role === 'slug') return stop('secure slug', sentences([hangs, words.tabNext(slugHeld(piece))]));
  return stop('secure part', sentences([hangs, (skims ? words.tabFinishedNext : words.tabNext)(partHeld(piece))]));
};

/** After it. */
export const takeOut = (piece: SpokenPiece, skims: boolean): DesignStep =>
  piece.role === 'slug'
    ? stop('take out slug', (skims ? words.slugLooseSkims : words.slugLoose)(piece, lifted(piece)))
    : stop('take out part', words.partFree(piece, lifted(piece)));

/** Before a place where a slug comes apart. */
export const secureHalf = (piece: SpokenPiece, tab: number): DesignStep => stop('secure slug', words.comesApart(piece, tab));

/** Behind it. */
export const takeHalf = (piece: SpokenPiece): DesignStep => stop('take out slug', words.halfLoose(piece));

const isHeavy = ({ handling }: SpokenPiece): boolean => handling === 'held' || handling === 'tackle';

const slugHeld = (piece: SpokenPiece): Text => {
  const { handling, magnetic } = piece;
  if (handling === 'caught') return magnetic ? holds.catchMagnet : holds.catch;
  return handling === 'lifted' ? holds.fix(grip(piece)) : borne(piece);
};

const partHeld = (piece: SpokenPiece): Text => (isHeavy(piece) ? borne(piece) : holds.hold);

const borne = ({ handling }: SpokenPiece): Text => (handling === 'tackle' ? holds.tackle : holds.bars);

const grip = ({ magnetic }: SpokenPiece): Text => (magnetic ? holds.magnet : holds.clamp);

const lifted = ({ handling }: SpokenPiece): Text => {
  if (handling === 'tackle') return holds.liftTackle;
  return handling === 'held' ? holds.lift : holds.take;
};

const hanging = {
  slug: phrases('piece-stop-slug', {
    light: ({ mass }: SpokenPiece, tab: number) =>
      say`the slug of ${{ mass: saidMass(mass) }} hangs on a tab of ${{ tab: mm(tab, fixed(1)) }}.`,
    heavy: ({ mass, size, lever }: SpokenPiece, tab: number) =>
      say`the slug of ${{ mass: saidMass(mass) }}, ${{ size: saidSize(size) }}, hangs on a tab of ${{ tab: mm(tab, fixed(1)) }}, its weight ${{ lever: mm(lever, fixed(0)) }} from there.`,
  }),
  part: phrases('piece-stop-part', {
    light: ({ mass }: SpokenPiece, tab: number) =>
      say`the part of ${{ mass: saidMass(mass) }} hangs on a tab of ${{ tab: mm(tab, fixed(1)) }}.`,
    heavy: ({ mass, size, lever }: SpokenPiece, tab: number) =>
      say`the part of ${{ mass: saidMass(mass) }}, ${{ size: saidSize(size) }}, hangs on a tab of ${{ tab: mm(tab, fixed(1)) }}, its weight ${{ lever: mm(lever, fixed(0)) }} from there.`,
  }),
};

const words = phrases('piece-stop', {
  tabNext: (held: Text) => say`${{ held }}, then run on; the tab is cut next.`,
  tabFinishedNext: (held: Text) => say`${{ held }}, then run on; the tab is cut and finished next.`,
  slugLoose: ({ mass }: SpokenPiece, lift: Text) => say`the slug of ${{ mass: saidMass(mass) }} is loose. ${{ lift }}, then run on.`,
  slugLooseSkims: ({ mass }: SpokenPiece, lift: Text) =>
    say`the slug of ${{ mass: saidMass(mass) }} is loose. ${{ lift }}, then run on with the finishing passes.`,
  partFree: ({ mass }: SpokenPiece, lift: Text) => say`the part of ${{ mass: saidMass(mass) }} is free. ${{ lift }}.`,
  comesApart: (piece: SpokenPiece, tab: number) =>
    say`the slug of ${{ mass: saidMass(piece.mass) }} may come apart ${{ on: mm(tab, fixed(1)) }} further on, one piece of it before the rest. Fix both with ${{ grip: grip(piece) }}, then run on.`,
  halfLoose: ({ mass }: SpokenPiece) =>
    say`a piece of the slug of ${{ mass: saidMass(mass) }} may be loose now. Take it out if it is, leave the rest fixed, then run on.`,
});

const holds = phrases('piece-hold', {
  catchMagnet: say`Have a magnet or a plate under it to catch it`,
  catch: say`Have a plate under it to catch it`,
  fix: (means: Text) => say`Fix it with ${{ means }}`,
  magnet: say`a magnet or a clamp`,
  clamp: say`a clamp or glue, since no magnet is sure to hold it`,
  hold: say`Hold it so that it can neither drop nor tilt`,
  tackle: say`Hang it on tackle or clamp bars across so that it can neither drop nor tilt`,
  bars: say`Clamp bars across or support it from below so that it can neither drop nor tilt`,
  liftTackle: say`Lift it out upward with tackle`,
  lift: say`Lift it out upward`,
  take: say`Take it out`,
});
