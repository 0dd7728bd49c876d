/** The cutting rate of a material nobody has cut yet, from what it takes to melt it and from how well it leads heat and current away. */

import type { Formula } from '../../quantity/formula.ts';
import { asGiven } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { indexEstimate } from '../starting-model.ts';

const { meltPower, halvingConductivity, halvingResistivity, toolSteel } = indexEstimate;

/** Heat that runs off into the work, and voltage lost in it, each take their share of the spark. */
const reach = (conductivity: number, resistivity: number): number =>
  1 / ((1 + conductivity / halvingConductivity) * (1 + resistivity / halvingResistivity));

export const estimatedIndex: Formula<'melt' | 'conductivity' | 'resistivity' | 'doubt'> = {
  name: say('material.estimated-index')`cutting rate against tool steel, estimated from material constants`,
  text: say(
    'material.estimated-index.by',
  )`index = factor · (h of steel / h)^${{ power: asGiven(meltPower) }} · r / r of steel, r = 1 / ((1 + conductivity / ${{ conductivity: asGiven(halvingConductivity) }}) (1 + resistivity / ${{ resistivity: asGiven(halvingResistivity) }}))`,
  source: 'starting-model',
  unit: '1',
  inputs: {
    melt: { unit: 'J/mm³', name: 'energy to melt', low: 2, high: 13 },
    conductivity: { unit: 'W/mK', name: 'heat conductivity', low: 5, high: 420 },
    resistivity: { unit: 'µΩm', name: 'resistivity', low: 0.01, high: 2 },
    doubt: { unit: '1', name: 'doubt of the estimate' },
  },
  compute: ({ melt, conductivity, resistivity, doubt }) =>
    (doubt * (toolSteel.melt / melt) ** meltPower * reach(conductivity, resistivity)) /
    reach(toolSteel.conductivity, toolSteel.resistivity),
};
