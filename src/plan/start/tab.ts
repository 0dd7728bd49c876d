/** How much metal is left standing until somebody holds the loose piece. */
import type { Family } from '../../physics/material/material.ts';
import { fixed, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { saidMass } from '../loose-piece-mass.ts';

export interface TabSize {
  readonly length: number;
  readonly reason: Text;
}

/**
 * 1 mm and 2 mm more for each root kilogram, a quarter more for slender pieces that sway, and never more than 15 % of the
 * contour. Common practice is 1 to 6 mm and more when heavy; the rule that fills that range is our own.
 *
 * @param mass kg. @param area mm². @param perimeter mm.
 */
export const tabFor = (piece: { readonly mass: number; readonly area: number; readonly perimeter: number }): TabSize => {
  const slenderness = piece.perimeter / (2 * Math.sqrt(Math.PI * Math.max(piece.area, 1e-9)));
  const slender = slenderness > 2;
  const wanted = (1 + 2 * Math.sqrt(piece.mass)) * (slender ? 1.25 : 1);
  const length = Math.round(Math.min(wanted, MOST * piece.perimeter) * 100) / 100;
  const why = length < wanted - 0.01 ? words.short : slender ? words.slender : words.enough;
  return { length, reason: words.forMass(length, piece.mass, why) };
};

/** As long as the user says. */
export const tabFromOverride = (length: number): TabSize => ({ length, reason: words.overrides(length) });

const words = phrases('tab-reason', {
  short: say`as much as so short a contour allows`,
  slender: say`a slender piece sways`,
  enough: say`enough for its mass`,
  forMass: (tab: number, mass: number, why: Text) => say`${{ tab: mm(tab, fixed(1)) }} for ${{ mass: saidMass(mass) }}: ${{ why }}`,
  overrides: (tab: number) => say`${{ tab: mm(tab, fixed(1)) }}: set by hand`,
  bends: (tab: number) => say`${{ tab: mm(tab, fixed(1)) }}: the weight of the piece would bend a shorter one`,
});

/**
 * MPa that a tab may be bent with: a quarter of what the family yields or breaks at when it is soft, since a tab is notched by
 * the sparks and the piece is shaken by the flushing. From memory.
 */
const STRENGTH: Readonly<Record<Family, number>> = {
  'tool steel': 90,
  steel: 60,
  stainless: 50,
  carbide: 100,
  aluminium: 35,
  titanium: 70,
  'nickel alloy': 75,
  copper: 20,
  brass: 30,
  graphite: 10,
  refractory: 100,
  pcd: 100,
  magnesium: 30,
  zirconium: 60,
};

/** MPa at which the family yields or breaks when it is soft. */
export const strengthOf = (family: Family): number => 4 * STRENGTH[family];

const GRAVITY = 9.81;

/**
 * mm of tab that the weight cannot bend: the piece stands out from it like a shelf, so the moment is weight times lever, against
 * the tab's section of length times height (section modulus length · height² / 6).
 *
 * @param mass kg. @param lever mm from the tab to the centre of gravity. @param height mm, along the wire, which stands upright.
 */
export const tabAgainstBending = (piece: {
  readonly mass: number;
  readonly lever: number;
  readonly height: number;
  readonly family: Family;
}): number => (6 * piece.mass * GRAVITY * piece.lever) / (STRENGTH[piece.family] * piece.height * piece.height);

/** A tab that would bend is made longer, as far as the contour allows; where that is not enough, `weak` says so. */
export const strengthened = (tab: TabSize, needed: number, perimeter: number): TabSize & { readonly weak: boolean } => {
  if (needed <= tab.length) return { ...tab, weak: false };
  const length = Math.round(Math.min(needed, MOST * perimeter) * 100) / 100;
  const longer = Math.max(length, tab.length);
  return {
    length: longer,
    reason: words.bends(longer),
    weak: longer < needed - 0.01,
  };
};

/** Of the contour, at most. */
const MOST = 0.15;
