/** How much a skim takes off and how fast it runs along the contour. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';

/** At least the damage of the pass before, or the skim only polishes the peaks. */
export const skimStock: Formula<'damage' | 'formError' | 'share'> = {
  name: say('cut.skim-stock')`stock that a skim takes off`,
  text: say('cut.skim-stock.by')`taken = damage of the pass before + share · form error left by it`,
  source: 'starting-model',
  unit: 'mm',
  inputs: {
    damage: { unit: 'µm', name: 'damage of the pass before' },
    formError: { unit: 'µm', name: 'form error left by the pass before' },
    share: { unit: '1', name: 'share of the form error' },
  },
  compute: ({ damage, formError, share }) => (damage + share * formError) / 1000,
};

export const skimFeed: Formula<'removal' | 'energy' | 'power' | 'height' | 'stock' | 'limit'> = {
  name: say('cut.skim-feed')`feed of a skim`,
  text: say('cut.skim-feed.by')`feed = the smaller of removal rate of the rough · e^power / (height · taken) and the servo limit`,
  source: 'starting-model',
  unit: 'mm/min',
  inputs: {
    removal: { unit: 'mm³/min', name: 'removal rate of the rough' },
    energy: { unit: '1', name: 'cube root of pulse energy against the rough', low: 0.03, high: 1 },
    power: { unit: '1', name: 'power' },
    height: { unit: 'mm', name: 'height' },
    stock: { unit: 'mm', name: 'stock taken off' },
    limit: { unit: 'mm/min', name: 'servo limit' },
  },
  compute: ({ removal, energy, power, height, stock, limit }) => Math.min((removal * energy ** power) / (height * stock), limit),
  bends: true,
};

/** Adds up from the last pass back: after it nothing is left to take. */
export const stockLeft: Formula<'next' | 'later'> = {
  name: say('cut.stock-left')`stock left for later passes`,
  text: say('cut.stock-left.by')`stock = taken by the next pass + stock that it leaves`,
  source: 'definition',
  unit: 'mm',
  inputs: { next: { unit: 'mm', name: 'taken by the next pass' }, later: { unit: 'mm', name: 'stock after the next pass' } },
  compute: ({ next, later }) => next + later,
};
