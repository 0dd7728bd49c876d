/** What the program's stops say of a loose piece: how heavy and large, how it hangs, and what to hold or catch it with. */
import type { Family } from '../../physics/material/material.ts';
import { spokenMass } from '../loose-piece-mass.ts';
import type { LoosePiece } from '../plan.ts';
import { type DesignStep, stop } from './design-step.ts';
import { spokenSize } from './loose-piece.ts';

/** A piece as its stops tell of it. */
export interface SpokenPiece extends Pick<LoosePiece, 'role' | 'size' | 'handling'> {
  /** As said to the operator: '0.13 kg'. */
  readonly mass: string;
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
): SpokenPiece => ({ role, size, handling, mass: spokenMass(mass), lever, magnetic: MAGNETIC.has(family) });

/** Before the tab is cut. */
export const secure = (piece: SpokenPiece, tab: number, skims: boolean): DesignStep =>
  piece.role === 'slug'
    ? stop('secure the slug', (loop) => `${hangs(loop, piece, tab)} ${holdSlug(piece)}, then run on; the tab is cut next.`)
    : stop(
        'secure the part',
        (loop) => `${hangs(loop, piece, tab)} ${holdPart(piece)}, then run on; the tab is cut${skims ? ' and finished' : ''} next.`,
      );

/** After it. */
export const takeOut = (piece: SpokenPiece, skims: boolean): DesignStep => {
  const { mass, role } = piece;
  return role === 'slug'
    ? stop(
        'take the slug out',
        (loop) => `${loop}: the slug of ${mass} is loose. ${lift(piece)}, then run on${skims ? ' with the finishing passes' : ''}.`,
      )
    : stop('take the part out', (loop) => `${loop}: the part of ${mass} is free. ${lift(piece)}.`);
};

/** Before a place where a slug comes apart. */
export const secureHalf = (piece: SpokenPiece, tab: number): DesignStep =>
  stop(
    'secure the slug',
    (loop) =>
      `${loop}: the slug of ${piece.mass} may come apart ${tab.toFixed(1)} mm further on, one piece of it before the rest. Fix both with ${grip(piece)}, then run on.`,
  );

/** Behind it. */
export const takeHalf = ({ mass }: SpokenPiece): DesignStep =>
  stop(
    'take the slug out',
    (loop) => `${loop}: a piece of the slug of ${mass} may be loose now. Take it out if it is, leave the rest fixed, then run on.`,
  );

const hangs = (loop: string, { role, mass, size, handling, lever }: SpokenPiece, tab: number): string => {
  const heavy = isHeavy(handling);
  return `${loop}: the ${role} of ${mass}${heavy ? `, ${spokenSize(size)},` : ''} hangs on a tab of ${tab.toFixed(1)} mm${heavy ? `, its weight ${lever.toFixed(0)} mm from there` : ''}.`;
};

const isHeavy = (handling: LoosePiece['handling']): boolean => handling === 'held' || handling === 'tackle';

const grip = ({ magnetic }: SpokenPiece): string =>
  magnetic ? 'a magnet or a clamp' : 'a clamp or glue, since no magnet is sure to hold it';

const holdSlug = (piece: SpokenPiece): string => {
  if (piece.handling === 'caught') return `Have ${piece.magnetic ? 'a magnet or a plate' : 'a plate'} under it to catch it`;
  if (piece.handling === 'lifted') return `Fix it with ${grip(piece)}`;
  return `${bear(piece)} so that it can neither drop nor tilt`;
};

const holdPart = (piece: SpokenPiece): string =>
  isHeavy(piece.handling) ? `${bear(piece)} so that it can neither drop nor tilt` : 'Hold it so that it can neither drop nor tilt';

const bear = ({ handling }: SpokenPiece): string =>
  handling === 'tackle' ? 'Hang it on tackle or clamp bars across' : 'Clamp bars across or support it from below';

const lift = ({ handling }: SpokenPiece): string => {
  if (handling === 'tackle') return 'Lift it out upward with tackle';
  return handling === 'held' ? 'Lift it out upward' : 'Take it out';
};
