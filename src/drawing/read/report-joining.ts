/** Turns what was changed and met while joining and judging into findings, each with its place. */

import { midpoint } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';
import type { FoundChain, JoinEvents } from '../join/join.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import { count, length, point, spot } from '../place-in-file.ts';

/** What was repaired or found wanting while joining, in the order of the stages. */
export const toldJoining = (events: JoinEvents, units: DrawingUnits): Finding[] => [
  ...events.zeroLength.map(({ at, size }) =>
    find('zero-length-dropped', `A piece at ${point(at, units)} is ${size === 0 ? 'without any length' : `only ${length(size)} long`}.`, {
      place: spot(at, units),
      done: 'It was left out.',
    }),
  ),
  ...events.doubledEdges.map(({ at, size, copies }) =>
    find('doubled-edge-dropped', `A stretch of ${length(size)} around ${point(at, units)} is drawn ${times(copies + 1)}.`, {
      place: spot(at, units, size / 2),
      done: 'It was kept once.',
    }),
  ),
  ...events.gaps.map(({ a, b, size }) =>
    find('gap-closed', `Two ends at ${point(a, units)} are ${length(size)} apart.`, {
      place: spot(midpoint(a, b), units, size),
      done: 'They were joined.',
    }),
  ),
  ...toldRounding(events.rounded, units),
  ...events.branches.map(({ at, ends, settled }) =>
    settled
      ? find('branched', `${ends} ends meet at ${point(at, units)}, of polylines that pass through each other.`, {
          place: spot(at, units),
          severity: 'note',
          done: 'Each polyline was followed along its own pieces.',
        })
      : find('branched', `${ends} ends meet at ${point(at, units)}, so it is not certain which of them belong together.`, {
          place: spot(at, units),
          done: 'Loose branches were set aside, and the smallest closed loops were taken.',
          remedy: 'Draw each outline as one closed polyline, or leave out the lines that are not to be cut.',
        }),
  ),
  ...events.spurs.map((spur) =>
    find(
      'spur-dropped',
      `An outline goes ${length(spur.length)} out of its way and back from ${point(spur.from, units)} to ${point(spur.to, units)}.`,
      {
        place: spot(spur.from, units, spur.length),
        done: 'The way out and back was left out.',
      },
    ),
  ),
  ...events.flat.map((loop) => toldFlat(loop, units)),
  ...events.doubledLoops.map(({ copy, kept }) =>
    find('doubled-loop-dropped', `The loop around ${point(copy.middle, units)} is drawn twice${layers(copy, kept)}.`, {
      place: spot(copy.middle, units, reachOf(copy)),
      done: 'It was kept once.',
    }),
  ),
  ...events.partlyHidden.map((loop) =>
    find('loop-partly-hidden', `The loop around ${point(loop.middle, units)} closes only with pieces of a hidden layer.`, {
      place: spot(loop.middle, units, reachOf(loop)),
      done: 'It was taken as a loop to be cut.',
      remedy: 'Show the layer, or close the outline with visible pieces.',
    }),
  ),
];

const times = (n: number): string => (n === 2 ? 'twice' : `${n} times`);

const toldRounding = (rounded: JoinEvents['rounded'], units: DrawingUnits): Finding[] =>
  rounded.at === undefined
    ? []
    : [
        find(
          'rounding-closed',
          `At ${count(rounded.places, 'place')} ends differ by rounding, at most by ${length(rounded.worst)} at ${point(rounded.at, units)}.`,
          { place: spot(rounded.at, units), done: 'They were made one.' },
        ),
      ];

const toldFlat = (loop: FoundLoop, units: DrawingUnits): Finding => {
  const at = loop.contour.segments[0]!.from;
  return find('loop-without-area', `A loop of ${length(loop.perimeter)} at ${point(at, units)} runs there and back and encloses nothing.`, {
    place: spot(at, units, reachOf(loop)),
    done: 'It was left out.',
  });
};

const layers = (copy: FoundLoop, kept: FoundLoop): string =>
  copy.layer === kept.layer ? '' : `, on the layers ${kept.layer} and ${copy.layer}`;

/** Half the longer side of the box around a loop. */
const reachOf = (loop: FoundLoop): number => Math.max(loop.bounds.maxX - loop.bounds.minX, loop.bounds.maxY - loop.bounds.minY) / 2;

/** One finding per open chain, with both its ends and how far apart they are. */
export const toldChains = (chains: readonly NamedChain[], units: DrawingUnits, join: number): Finding[] =>
  chains.flatMap((chain) => [toldOpen(chain, units, join), ...toldOnLoop(chain, units)]);

type NamedChain = FoundChain & { readonly id: string };

const toldOpen = (chain: NamedChain, units: DrawingUnits, join: number): Finding => {
  const apart = Math.hypot(chain.to.x - chain.from.x, chain.to.y - chain.from.y);
  const wide = apart > join && apart < chain.length / 4 ? ` Its ends are ${length(apart)} apart, and only ${length(join)} are closed.` : '';
  return find(
    'open-chain',
    `${chain.id} on layer ${chain.layer}, ${length(chain.length)} long from ${point(chain.from, units)} to ${point(chain.to, units)}, does not close.${wide}`,
    {
      place: spot(chain.from, units),
      severity: chain.hidden ? 'note' : 'warning',
      done: chain.hidden ? 'It lies on a hidden layer and is left out.' : 'It is not cut.',
      ...(chain.hidden
        ? {}
        : { remedy: wide ? 'Close the outline, or allow a larger join distance.' : 'Close the outline if it is to be cut.' }),
    },
  );
};

const toldOnLoop = (chain: NamedChain, units: DrawingUnits): Finding[] =>
  chain.onLoop.length === 0
    ? []
    : [
        find('chain-ends-on-loop', `${chain.id} ends on a closed loop at ${chain.onLoop.map((p) => point(p, units)).join(' and ')}.`, {
          place: spot(chain.onLoop[0]!, units),
          severity: chain.hidden ? 'note' : 'warning',
          done: 'The loop was kept as it is and the chain left open.',
        }),
      ];
