/** The edge that an abrasive jet leaves at its best: no standard covers it, so that these are what is commonly said. */

import { type Figure, given } from '../../quantity/figure.ts';
import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

const thickness = { unit: 'mm', name: 'thickness', low: 1, high: 200 } as const;

export const jetPerpendicularity: Formula<'base' | 'slope' | 'thickness'> = {
  name: say('other-process.jet-perpendicularity')`perpendicularity of a jet at its best edge`,
  text: say('other-process.jet-perpendicularity.by')`u = base + slope · a`,
  source: 'common-practice',
  unit: 'mm',
  inputs: { base: { unit: 'mm', name: 'at the surface' }, slope: { unit: '1', name: 'for each mm of depth' }, thickness },
  compute: ({ base, slope, thickness }) => base + slope * thickness,
};

/** Where the jet comes out it has lost power and trails: the lower edge is the rough one. */
export const jetRoughness: Formula<'base' | 'slope' | 'thickness'> = {
  name: say('other-process.jet-roughness')`Ra at the lower edge of a jet cut, best edge`,
  text: say('other-process.jet-roughness.by')`Ra = base + slope · a`,
  source: 'common-practice',
  unit: 'µm',
  inputs: { base: { unit: 'µm', name: 'at the surface' }, slope: { unit: '1', name: 'µm for each mm of depth' }, thickness },
  compute: ({ base, slope, thickness }) => base + slope * thickness,
};

const practice = (key: string, name: Text, value: number, unit: Figure['unit'], deviation: number): Figure =>
  given({ key, name, value, unit, deviation, basis: 'common practice', source: { file: 'common-practice' } });

export const jetEdge = {
  squareBase: practice('jet.square-base', say('other-process.jet-square-base')`perpendicularity of a jet in thin plate`, 0.03, 'mm', 0.015),
  squareSlope: practice(
    'jet.square-slope',
    say('other-process.jet-square-slope')`perpendicularity of a jet for each mm of depth`,
    0.0015,
    '1',
    0.0007,
  ),
  roughBase: practice('jet.rough-base', say('other-process.jet-rough-base')`Ra of a jet at the surface`, 2.5, 'µm', 0.8),
  roughSlope: practice('jet.rough-slope', say('other-process.jet-rough-slope')`Ra of a jet for each mm of depth, µm`, 0.06, '1', 0.03),
};
