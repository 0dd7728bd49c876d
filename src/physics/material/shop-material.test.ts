/** A material described by its constants gets a rate that says it is an estimate, or is refused. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { deviationOf } from '../../quantity/figure.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { estimatedIndex } from './estimated-index.ts';
import { materials } from './materials.ts';
import { materialFromConstants, materialSchema } from './shop-material.ts';

/**
 * The metals whose rate the trade knows. Grains of carbide, graphite and diamond come loose instead of melting, so their constants
 * say little about their rate; the rates of refractory metals, magnesium and zirconium in the table are themselves guesses.
 */
const families = ['tool steel', 'steel', 'stainless', 'aluminium', 'titanium', 'nickel alloy', 'copper', 'brass'];
const molten = materials.filter((m) => families.includes(m.family));

const described = (id: string) => {
  const m = there(materials.find((x) => x.id === id));
  return materialSchema.parse({
    id: 'own',
    name: 'our own alloy',
    family: m.family,
    density: m.density.value,
    expansion: m.expansion.value,
    solidus: m.solidus.value,
    conductivity: m.conductivity.value,
    heat: m.heat.value,
    fusion: m.fusion.value,
    resistivity: m.resistivity.value,
  });
};

describe('a material described by its constants', () => {
  it.each(molten.map((m) => [m.id, m.index.value] as const))(
    'estimates the rate of %s within a third of what the table has',
    (id, index) => {
      const answer = materialFromConstants(described(id));
      if (answer.kind !== 'material') throw new Error(answer.kind);
      expect(answer.material.index.value / index).toBeGreaterThan(1 / 1.35);
      expect(answer.material.index.value / index).toBeLessThan(1.35);
    },
  );

  it('cuts half as fast when it conducts 280 W/mK, or has 2.1 µΩm, and by the melt energy to the power of 0.7', () => {
    const at = (melt: number, conductivity: number, resistivity: number) =>
      estimatedIndex.compute({ melt, conductivity, resistivity, doubt: 1 });
    expect(at(7.7, 280, 0) / at(7.7, 0, 0)).toBeCloseTo(0.5, 12);
    expect(at(7.7, 0, 2.1) / at(7.7, 0, 0)).toBeCloseTo(0.5, 12);
    expect(at(7.7, 20.5, 0.65)).toBeCloseTo(1, 12);
    expect(at(15.4, 20.5, 0.65)).toBeCloseTo(2 ** -0.7, 12);
  });

  it('says that the rate was estimated and widens its range', () => {
    const answer = materialFromConstants(described('304'));
    if (answer.kind !== 'material') throw new Error(answer.kind);
    expect(answer.findings.map((f) => f.code)).toEqual(['material-index-estimated']);
    expect(deviationOf(answer.material.index) / answer.material.index.value).toBeCloseTo(0.35, 2);
    expect(answer.material.index.warnings).toHaveLength(1);
  });

  it('takes the shop at its word when it gives the rate', () => {
    const answer = materialFromConstants({ ...described('304'), index: 0.8 });
    if (answer.kind !== 'material') throw new Error(answer.kind);
    expect(answer.findings).toEqual([]);
    expect(answer.material.index.value).toBe(0.8);
  });

  it('refuses what does not conduct, with the reason', () => {
    const answer = materialFromConstants({ ...described('304'), resistivity: 2e6 });
    if (answer.kind !== 'non-conductor') throw new Error(answer.kind);
    expect(sentenceOf(answer.finding)).toContain('about 200 ohm·cm');
    expect(answer.finding.severity).toBe('refusal');
  });
});
