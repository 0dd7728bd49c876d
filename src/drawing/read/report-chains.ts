/** Turns open chains into findings: where they end, which other end lies near, and what would have to be joined to close them. */

import { nearPoints } from '../../geometry/near/near-points.ts';
import type { Point } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { firstItem, itemAt } from '../../sequence/sequence.ts';
import { type Finding, type Remedy, remedy } from '../../text/finding.ts';
import { contour, fixed, length, list, mm, name } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';
import type { FoundChain } from '../join/join.ts';
import { point, spot } from '../place-in-file.ts';

type NamedChain = FoundChain & { readonly id: string };

/** One finding per open chain, with both its ends and what they lie near to. @param told ids of chains that another finding speaks of. */
export const reportChains = (chains: readonly NamedChain[], units: DrawingUnits, join: number, told: ReadonlySet<string>): Finding[] => {
  const gaps = gapsOf(chains, join);
  return chains.flatMap((chain, i) =>
    told.has(chain.id) ? [] : [reportOpen(chain, itemAt(gaps, i), { units, join }), ...reportOnLoop(chain, units)],
  );
};

/** The end of a chain nearest to one of this chain's ends. */
interface Gap {
  readonly at: Point;
  readonly size: number;
  /** Of the chain that ends there. */
  readonly other: number;
}

/** What keeps a chain from closing. */
interface Apart {
  readonly gaps: readonly Gap[];
  /** mm: joined at this, all gaps of the chains that it hangs together with are closed. */
  readonly closing: number;
  readonly names: readonly string[];
}

/** For each chain its ends that lie near another, or near each other. */
const gapsOf = (chains: readonly NamedChain[], join: number): readonly Apart[] => {
  const ends = chains.flatMap((chain, i) => [chain.from, chain.to].map((at) => ({ at, chain: i })));
  const near = nearPoints(ends.length, NEARBY);
  ends.forEach((end, i) => {
    near.add(i, end.at);
  });
  const gaps = chains.map((): Gap[] => []);
  ends.forEach(({ at, chain }, i) => {
    let best: Gap | undefined;
    near.visit(at, (j, size) => {
      const other = itemAt(ends, j).chain;
      const isOwn = other === chain && size > itemAt(chains, chain).length / 4;
      if (j !== i && size > join && !isOwn && itemAt(chains, other).hidden === itemAt(chains, chain).hidden)
        if (best === undefined || size < best.size) best = { at, size, other };
    });
    if (best !== undefined) itemAt(gaps, chain).push(best);
  });
  return chains.map((_, i) => ({
    gaps: itemAt(gaps, i),
    closing: rounded(Math.max(0, ...together(gaps, i).flatMap((k) => itemAt(gaps, k).map((gap) => gap.size)))),
    names: itemAt(gaps, i).map(({ other }) => itemAt(chains, other).id),
  }));
};

/** A chain and all that it hangs together with over gaps. */
const together = (gaps: readonly (readonly Gap[])[], first: number): readonly number[] => {
  const met = new Set([first]);
  for (const chain of met) for (const { other } of itemAt(gaps, chain)) met.add(other);
  return [...met];
};

/** The next micrometre above. */
const rounded = (gap: number): number => (Math.floor(gap * 1000 + 1e-6) + 1) / 1000;

/** mm: ends this near were perhaps meant to meet, and are looked for. */
const NEARBY = 0.5;

interface Told {
  readonly units: DrawingUnits;
  readonly join: number;
}

const reportOpen = (chain: NamedChain, { gaps, names, closing }: Apart, { units, join }: Told): Finding => {
  const own = distanceBetween(chain.from, chain.to);
  const apart = own > join && own < chain.length / 4;
  const beside = gaps.flatMap((gap, i) => (itemAt(names, i) === chain.id ? [] : [words.gap(gap, itemAt(names, i), units)]));
  const [gap, only] = [
    apart && beside.length === 0 ? words.apart(own, join) : undefined,
    beside.length > 0 ? words.onlySo(join) : undefined,
  ];
  return find('open-chain', sentences([words.open(chain, units), ...beside, gap, only]), {
    place: spot(chain.from, units),
    severity: chain.hidden ? 'note' : 'warning',
    done: chain.hidden ? words.hidden : words.notCut,
    remedy: chain.hidden ? undefined : helpFor(gaps.length > 0, apart, closing),
  });
};

/** A gap that may be closed has the join tolerance that closes it and all that hangs together with it. */
const helpFor = (near: boolean, apart: boolean, closing: number): Text | Remedy => {
  if (near && closing <= MOST_JOINED) return remedy(words.allow(closing), { field: 'join', value: closing });
  return apart ? remedy(words.closeOrAllow, { field: 'join' }) : words.close;
};

/** mm: the job allows no more. */
const MOST_JOINED = 1;

const reportOnLoop = (chain: NamedChain, units: DrawingUnits): Finding[] =>
  chain.onLoop.length === 0
    ? []
    : [
        find(
          'chain-ends-on-loop',
          say`${{ chain: contour(chain.id) }} ends on a closed loop at ${{
            at: list(
              chain.onLoop.map((p) => point(p, units)),
              'and',
            ),
          }}.`,
          {
            place: spot(firstItem(chain.onLoop), units),
            severity: chain.hidden ? 'note' : 'warning',
            done: say`The loop was kept as it is and the chain left open.`,
          },
        ),
      ];

const words = phrases('open-chains', {
  open: (chain: NamedChain, units: DrawingUnits) =>
    say`${{ chain: contour(chain.id) }} on layer ${{ layer: name(chain.layer) }}, ${{ length: length(chain.length) }} long from ${{ from: point(chain.from, units) }} to ${{ to: point(chain.to, units) }}, does not close.`,
  apart: (apart: number, join: number) =>
    say`Its ends are ${{ apart: length(apart) }} apart, and only ${{ join: length(join) }} are closed.`,
  gap: ({ at, size }: Gap, other: string, units: DrawingUnits) =>
    say`Its end at ${{ at: point(at, units) }} is ${{ gap: length(size) }} from an end of ${{ other: contour(other) }}.`,
  onlySo: (join: number) => say`Only ${{ join: length(join) }} are closed.`,
  hidden: say`It is on a hidden layer and is left out.`,
  notCut: say`It is not cut.`,
  allow: (closing: number) => say`Join ends up to ${{ closing: mm(closing, fixed(3)) }} apart, or close the outline.`,
  closeOrAllow: say`Close the outline, or allow a larger gap to be joined.`,
  close: say`Close the outline if it is to be cut.`,
});
