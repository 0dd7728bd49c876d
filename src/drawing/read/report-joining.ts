/** Turns what was changed and met while joining and judging into findings, each with its place. */

import { midpoint } from '../../geometry/segment.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, length, list, name, type Part, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';
import type { JoinEvents } from '../join/join.ts';
import type { LayersApart } from '../join/layers-apart.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import { firstOf, point, spot } from '../place-in-file.ts';
import type { LayersTaken } from './layers-taken.ts';

/** What was repaired or found wanting while joining, in the order of the stages. */
export const reportJoining = (events: JoinEvents, layers: LayersTaken, units: DrawingUnits): Finding[] => [
  ...aboutPieces(events, units),
  ...aboutEnds(events, layers, units),
  ...aboutLoops(events, units),
];

const aboutPieces = (events: JoinEvents, units: DrawingUnits): Finding[] => [
  ...events.zeroLength.map(({ at, size }) =>
    find(
      'zero-length-dropped',
      say`A piece at ${{ at: point(at, units) }} is ${{ long: size === 0 ? words.withoutLength : words.onlyLong(size) }}.`,
      {
        place: spot(at, units),
        done: say`It was left out.`,
      },
    ),
  ),
  ...events.doubledEdges.map(({ at, size, copies }) =>
    find(
      'doubled-edge-dropped',
      say`A length of ${{ length: length(size) }} around ${{ at: point(at, units) }} is drawn ${{ times: copies === 1 ? words.twice : words.times(copies + 1) }}.`,
      {
        place: spot(at, units, size / 2),
        done: say`It was kept once.`,
      },
    ),
  ),
];

const aboutEnds = (events: JoinEvents, layers: LayersTaken, units: DrawingUnits): Finding[] => [
  ...events.gaps.map(({ a, b, size }) =>
    find('gap-closed', say`Two ends at ${{ at: point(a, units) }} are ${{ gap: length(size) }} apart.`, {
      place: spot(midpoint(a, b), units, size),
      done: say`They were joined.`,
    }),
  ),
  ...reportRounding(events.rounded, units),
  ...events.branches.map(({ at, ends, settled }) =>
    settled
      ? find(
          'branched/through',
          say`${{ ends: count(ends) }} ends meet at ${{ at: point(at, units) }}, of polylines that pass through each other.`,
          {
            place: spot(at, units),
            severity: 'note',
            done: say`Each polyline was followed along its own pieces.`,
          },
        )
      : find(
          'branched',
          say`${{ ends: count(ends) }} ends meet at ${{ at: point(at, units) }}, so it is not certain which of them belong together.`,
          {
            place: spot(at, units),
            done: say`Loose branches were set aside, and the smallest closed loops were taken.`,
            remedy: say`Draw each outline as one closed polyline, or remove the lines that are not to be cut.`,
          },
        ),
  ),
  ...events.apart.map((apart) => reportApart(apart, layers, units)),
  ...events.spurs.map((spur) =>
    find(
      'spur-dropped',
      say`An outline goes ${{ far: length(spur.length) }} out of its way and back from ${{ from: point(spur.from, units) }} to ${{ to: point(spur.to, units) }}.`,
      {
        place: spot(spur.from, units, spur.length),
        done: say`The way out and back was left out.`,
      },
    ),
  ),
];

const reportApart = ({ whole, others, places }: LayersApart, { taken, left }: LayersTaken, units: DrawingUnits): Finding => {
  const where = firstOf(point(places[0], units), places.length);
  const chosen = left.some((layer) => whole.includes(layer));
  return find('layers-apart', words.meet([...whole, ...others], where, whole, whole.length === 1 ? words.makes : words.make), {
    place: spot(places[0], units),
    done: chosen ? words.chosen(left) : whole.length === 1 ? words.byItself : words.byThemselves,
    remedy: remedy(chosen ? words.choose(taken, left) : words.nameLayers, { field: 'layers', value: chosen ? taken : undefined }),
  });
};

const aboutLoops = (events: JoinEvents, units: DrawingUnits): Finding[] => [
  ...events.flat.map((loop) => reportFlat(loop, units)),
  ...events.doubledLoops.map(({ copy, kept }) =>
    find(
      'doubled-loop-dropped',
      copy.layer === kept.layer
        ? words.drawnTwice(point(copy.middle, units))
        : words.onTwoLayers(point(copy.middle, units), kept.layer, copy.layer),
      {
        place: spot(copy.middle, units, reachOf(copy)),
        done: say`It was kept once.`,
      },
    ),
  ),
  ...events.partlyHidden.map((loop) =>
    find('loop-partly-hidden', say`The loop around ${{ at: point(loop.middle, units) }} closes only with pieces of a hidden layer.`, {
      place: spot(loop.middle, units, reachOf(loop)),
      done: say`It was taken as a loop to be cut.`,
      remedy: say`Show the layer, or close the outline with visible pieces.`,
    }),
  ),
];

const reportRounding = (rounded: JoinEvents['rounded'], units: DrawingUnits): Finding[] =>
  rounded.at === undefined
    ? []
    : [
        find(
          'rounding-closed',
          say`At ${{ places: count(rounded.places, 'place') }} ends differ by rounding, at most by ${{ worst: length(rounded.worst) }} at ${{ at: point(rounded.at, units) }}.`,
          { place: spot(rounded.at, units), done: say`They were made one.` },
        ),
      ];

const reportFlat = (loop: FoundLoop, units: DrawingUnits): Finding => {
  const at = loop.contour.segments[0].from;
  return find(
    'loop-without-area',
    say`A loop ${{ round: length(loop.perimeter) }} long at ${{ at: point(at, units) }} runs out and back on itself and encloses nothing.`,
    {
      place: spot(at, units, reachOf(loop)),
      done: say`It was left out.`,
    },
  );
};

/** Half the longer side of the box around a loop. */
const reachOf = (loop: FoundLoop): number => Math.max(loop.bounds.maxX - loop.bounds.minX, loop.bounds.maxY - loop.bounds.minY) / 2;

const words = phrases('joining', {
  withoutLength: say`without any length`,
  onlyLong: (size: number) => say`only ${{ size: length(size) }} long`,
  twice: say`twice`,
  times: (n: number) => say`${{ n: count(n) }} times`,
  drawnTwice: (at: Part) => say`The loop around ${{ at }} is drawn twice.`,
  onTwoLayers: (at: Part, kept: string, copy: string) =>
    say`The loop around ${{ at }} is drawn twice, on the layers ${{ kept: name(kept) }} and ${{ copy: name(copy) }}.`,
  meet: (layers: readonly string[], where: Part | Text, whole: readonly string[], makes: Text) =>
    say`Lines of the layers ${{ layers: list(layers.map(name), 'and') }} meet at ${{ where }}; ${{ whole: list(whole.map(name), 'and') }} ${{ makes }}.`,
  makes: say`makes whole loops by itself`,
  make: say`make whole loops, each by itself`,
  byItself: say`It was joined by itself: what is drawn on other layers does not divide its loops.`,
  nameLayers: say`Name the layers that are to be cut, or draw on one layer what belongs together.`,
  chosen: (left: readonly string[]) =>
    say`They were joined by themselves, and cannot be cut together: nothing is cut along ${{ left: list(left.map(name), 'and') }} unless you say otherwise.`,
  choose: (taken: readonly string[], left: readonly string[]) =>
    say`Confirm that ${{ taken: list(taken.map(name), 'and') }} is cut, or name ${{ left: list(left.map(name), 'and') }} instead (${{ layers: term('layers') }}).`,
  byThemselves: say`They were joined by themselves: what is drawn on other layers does not divide their loops.`,
});
