/**
 * What wire lag does on arcs and where a path turns sharply. At a sharp turn the wire trails behind its guides like the end of a string of the length of the
 * lag that is pulled round the corner: it runs along the curve known as the tractrix and cuts the corner short.
 */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';
import { cornerLag } from '../wire/wire-string.ts';

const lag = { unit: 'µm', name: 'wire lag' } as const;
const turn = { unit: 'rad', name: 'turn of the path' } as const;

export const lagAtSharpTurn: Formula<'lag' | 'turn'> = {
  name: say('cut.lag-at-sharp-turn')`error of a sharp turn by wire lag`,
  text: say('cut.lag-at-sharp-turn.by')`error = lag · least distance, from the turn, of a string of length 1 that is pulled round it`,
  source: 'plane-geometry',
  unit: 'µm',
  inputs: { lag, turn },
  compute: ({ lag, turn }) => lag * shortOf(turn),
  unchecked: 'worked out here from the curve of a pulled string; no printed value of the least distance was found',
};

/** Where the path runs on to a point further out, the wire may fall short of it by as much without touching the corner. */
export const lagAtPointedTurn: Formula<'lag' | 'turn' | 'offset'> = {
  name: say('cut.lag-at-pointed-turn')`error of an outside corner taken to a point`,
  text: say('cut.lag-at-pointed-turn.by')`error = error of the sharp turn - offset · (1 / cos(turn / 2) - 1), at least 0`,
  source: 'plane-geometry',
  unit: 'µm',
  inputs: { lag, turn, offset: { unit: 'mm', name: 'wire centre to the surface' } },
  compute: ({ lag, turn, offset }) => Math.max(0, lag * shortOf(turn) - offset * 1000 * (1 / Math.cos(turn / 2) - 1)),
  bends: true,
  unchecked: 'worked out here from the curve of a pulled string; no printed value of the least distance was found',
};

/**
 * The string of length 1 leans by `lean` against the way of its head; the head has then run ln(tan(turn/2) / tan(lean/2)) beyond
 * the turn. The distance of the tail from the turn has one least value while the lean goes from the turn to nothing.
 */
const shortOf = (turn: number): number => {
  const t = Math.min(Math.abs(turn), Math.PI - 1e-6);
  if (t < 1e-9) return 0;
  const away = (lean: number): number => {
    const head = Math.log(Math.tan(t / 2) / Math.tan(lean / 2));
    return Math.hypot(head - Math.cos(lean), Math.sin(lean));
  };
  let [low, high] = [t * 1e-3, t];
  // Thirds: the distance falls and then rises, once. 60 rounds narrow the lean to below 1e-9 of the turn.
  for (let n = 0; n < 60; n += 1) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (away(a) < away(b)) high = b;
    else low = a;
  }
  // Turned back sharply, the tail is never nearer to the turn than when the head stood in it.
  return Math.min(1, away((low + high) / 2));
};

/** On an arc tighter than its lag the wire has lost the path: no more than the lag itself can be said. */
export const lagOnArc: Formula<'lag' | 'radius'> = {
  name: say('cut.lag-on-arc')`error of the tightest arc by wire lag`,
  text: say('cut.lag-on-arc.by')`error = R - √(R² - lag²), the lag itself on an arc tighter than that`,
  source: 'plane-geometry',
  unit: 'µm',
  inputs: { lag, radius: { unit: 'mm', name: 'radius of the wire path' } },
  compute: ({ lag, radius }) => (lag >= radius * 1000 ? lag : cornerLag.compute({ lag, radius })),
  bends: true,
};

/** Radius that the wire's centre runs round an arc, on its inner or its outer side. */
export const pathInsideArc: Formula<'radius' | 'offset'> = {
  name: say('cut.path-inside-arc')`wire path inside an arc`,
  text: say('cut.path-inside-arc.by')`path = radius - offset`,
  source: 'definition',
  unit: 'mm',
  inputs: { radius: { unit: 'mm', name: 'radius drawn' }, offset: { unit: 'mm', name: 'wire centre to the surface' } },
  compute: ({ radius, offset }) => radius - offset,
};

export const pathOutsideArc: Formula<'radius' | 'offset'> = {
  ...pathInsideArc,
  name: say('cut.path-outside-arc')`wire path outside an arc`,
  text: say('cut.path-outside-arc.by')`path = radius + offset`,
  compute: ({ radius, offset }) => radius + offset,
};
