/** How fast a rough cut goes: area rate from wire, height, material and flushing, and the feed and removal rate that follow. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';
import { heightRange, wireRange } from '../starting-model.ts';

const height = { unit: 'mm', name: 'height', ...heightRange } as const;
const diameter = { unit: 'mm', name: 'wire diameter', low: wireRange.low, high: wireRange.high } as const;

/** 1 for an endlessly thick wire; a finer wire stands less current. */
export const wireShare: Formula<'d' | 'scale' | 'power'> = {
  name: say('cut.wire-share')`share of the rate by wire diameter`,
  text: say('cut.wire-share.by')`f(d) = 1 / (1 + (scale / d)^power)`,
  source: 'starting-model',
  unit: '1',
  inputs: {
    d: diameter,
    scale: { unit: 'mm', name: 'diameter for half the rate' },
    power: { unit: '1', name: 'power' },
  },
  compute: ({ d, scale, power }) => 1 / (1 + (scale / d) ** power),
};

/** Rises with height to a flat top at 50 to 100 mm, and falls again where flushing gets hard. */
export const heightShare: Formula<'height' | 'thin' | 'tall'> = {
  name: say('cut.height-share')`share of the rate by height`,
  text: say('cut.height-share.by')`f(H) = H / (H + thin) / (1 + (H / tall)²)`,
  source: 'starting-model',
  unit: '1',
  inputs: { height, thin: { unit: 'mm', name: 'height of end losses' }, tall: { unit: 'mm', name: 'height of hard flushing' } },
  compute: ({ height, thin, tall }) => height / (height + thin) / (1 + (height / tall) ** 2),
};

export const areaRate: Formula<'scale' | 'wire' | 'height' | 'index' | 'flush' | 'factor'> = {
  name: say('cut.area-rate')`area rate of a rough cut`,
  text: say('cut.area-rate.by')`A = scale · f(d) · f(H) · index · flush · factor`,
  source: 'starting-model',
  unit: 'mm²/min',
  inputs: {
    scale: { unit: 'mm²/min', name: 'rate of a thick wire in tool steel' },
    wire: { unit: '1', name: 'share of the wire' },
    height: { unit: '1', name: 'share of the height' },
    index: { unit: '1', name: 'material index' },
    flush: { unit: '1', name: 'flush factor' },
    factor: { unit: '1', name: 'shop factor on rate' },
  },
  compute: ({ scale, wire, height, index, flush, factor }) => scale * wire * height * index * flush * factor,
};

export const roughFeed: Formula<'rate' | 'height' | 'limit'> = {
  name: say('cut.rough-feed')`feed of a rough cut`,
  text: say('cut.rough-feed.by')`feed = the smaller of area rate / height and the servo limit`,
  source: 'starting-model',
  unit: 'mm/min',
  inputs: { rate: { unit: 'mm²/min', name: 'area rate' }, height, limit: { unit: 'mm/min', name: 'servo limit' } },
  compute: ({ rate, height, limit }) => Math.min(rate / height, limit),
  bends: true,
};

export const areaRateFromFeed: Formula<'feed' | 'height'> = {
  name: say('cut.area-rate-from-feed')`area rate`,
  text: say('cut.area-rate-from-feed.by')`area rate = feed · height`,
  source: 'definition',
  unit: 'mm²/min',
  inputs: { feed: { unit: 'mm/min', name: 'feed' }, height: { unit: 'mm', name: 'height' } },
  compute: ({ feed, height }) => feed * height,
};

export const removalRate: Formula<'rate' | 'kerf'> = {
  name: say('cut.removal-rate')`removal rate`,
  text: say('cut.removal-rate.by')`removal rate = area rate · kerf`,
  source: 'definition',
  unit: 'mm³/min',
  inputs: { rate: { unit: 'mm²/min', name: 'area rate' }, kerf: { unit: 'mm', name: 'kerf' } },
  compute: ({ rate, kerf }) => rate * kerf,
};
