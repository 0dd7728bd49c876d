/** Where a tip relief begins, and what is impossible about one. */
import { atField, type Finding } from '../../text/finding.ts';
import { fixed, mm, quantities } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from './findings.ts';

export interface ReliefAsked {
  readonly reliefAmount: number;
  readonly reliefFrom?: number | undefined;
}

/** Of a round gear; radii in mm. The flank reaches from its root side to its tip side, before chamfer and relief. */
export interface Flanked {
  readonly tip: number;
  readonly rootSide: number;
  readonly tipSide: number;
  readonly base: number;
}

/** A radius; halfway between the ends of the flank when it is not said. */
export const reliefBegin = (
  { reliefFrom }: Pick<ReliefAsked, 'reliefFrom'>,
  { tip, rootSide }: Pick<Flanked, 'tip' | 'rootSide'>,
): number => (reliefFrom === undefined ? (tip + rootSide) / 2 : reliefFrom / 2);

export const reliefFault = (asked: ReliefAsked, flank: Flanked): Finding | undefined => {
  if (asked.reliefAmount === 0) return undefined;
  const begin = reliefBegin(asked, flank);
  const [low, high] = [flank.rootSide, flank.tipSide].toSorted((a, b) => a - b) as [number, number];
  if (!(begin > low && begin < high)) return offFlank(2 * begin, [2 * low, 2 * high]);
  // Along an involute the way is half the square of the string over the base radius.
  return tooMuch(asked.reliefAmount, Math.abs(flank.tip ** 2 - begin ** 2) / 2 / flank.base);
};

/** By diameters. */
const offFlank = (from: number, flank: readonly [number, number]): Finding =>
  find(
    'gear-impossible',
    say(
      'gear-impossible/relief-off-flank',
    )`A tip relief from a diameter of ${{ from: mm(from, fixed(3)) }} does not begin on the flank, which lies between ${{ flank: quantities(flank, 'and', 'mm', fixed(3)) }}.`,
    { place: atField('reliefFrom') },
  );

/** Relief is a matter of hundredths: more than a quarter of its way is another tooth. */
export const tooMuch = (amount: number, way: number): Finding | undefined =>
  amount <= way / 4
    ? undefined
    : find(
        'gear-impossible/relief-too-much',
        say`A tip relief of ${{ relief: mm(amount) }} over ${{ way: mm(way, fixed(3)) }} of flank is no relief any more: it bends the tooth.`,
        {
          place: atField('reliefAmount'),
        },
      );
