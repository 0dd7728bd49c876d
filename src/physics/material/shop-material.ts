/** A material that the shop describes by its constants, with a cutting rate of its own or one estimated from them. */

import { z } from 'zod';
import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import type { Finding } from '../../text/finding.ts';
import { name as asName, fixed, number } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Unit } from '../../text/unit.ts';
import { find } from '../findings.ts';
import { conductorLimit, indexEstimate } from '../starting-model.ts';
import { estimatedIndex } from './estimated-index.ts';
import { notConducting } from './find-material.ts';
import type { Material } from './material.ts';
import { meltEnergy } from './melt-energy.ts';

const positive = z.number().positive().finite();

export const materialSchema = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9][a-z0-9.-]{0,39}$/),
    name: z.string().min(1).max(80),
    family: z.enum([
      'tool steel',
      'steel',
      'stainless',
      'carbide',
      'aluminium',
      'titanium',
      'nickel alloy',
      'copper',
      'brass',
      'graphite',
      'refractory',
      'pcd',
      'magnesium',
      'zirconium',
    ]),
    density: positive.max(25).describe('g/cm³'),
    expansion: z.number().min(-20).max(200).describe('1e-6/K, 20 to 100 °C'),
    solidus: positive.max(4500).min(30).describe('°C where melting begins'),
    conductivity: positive.max(3000).describe('W/mK'),
    heat: positive.max(5000).describe('J/kgK'),
    fusion: positive.max(1e5).describe('Heat of fusion, kJ/kg'),
    resistivity: positive.max(1e30).describe('µΩm'),
    index: positive.max(10).optional().describe('Cutting rate against tool steel; estimated when left out'),
    fineness: positive.max(5).default(1).describe('Ra against tool steel from the same pulse'),
    cautions: z
      .array(
        z.enum([
          'combustible fines',
          'hydrogen',
          'cobalt leaching',
          'cobalt in sludge',
          'nickel in sludge',
          'chromium in sludge',
          'recast layer',
          'conductive dust',
          'water-reactive when burning',
        ]),
      )
      .max(9)
      .default([]),
  })
  .describe('A material of the shop');

export type ShopMaterial = z.infer<typeof materialSchema>;

export type ShopMaterialAnswer =
  | { readonly kind: 'material'; readonly material: Material; readonly findings: readonly Finding[] }
  | { readonly kind: 'non-conductor'; readonly finding: Finding };

/** As the shop has said them. */
const names = phrases('shop-material', {
  density: (material: string) => say`density of ${{ material: asName(material) }}`,
  expansion: (material: string) => say`thermal expansion of ${{ material: asName(material) }}`,
  solidus: (material: string) => say`start of melting, ${{ material: asName(material) }}`,
  conductivity: (material: string) => say`heat conductivity of ${{ material: asName(material) }}`,
  heat: (material: string) => say`specific heat of ${{ material: asName(material) }}`,
  fusion: (material: string) => say`heat of fusion of ${{ material: asName(material) }}`,
  resistivity: (material: string) => say`resistivity of ${{ material: asName(material) }}`,
  fineness: (material: string) => say`Ra against tool steel in ${{ material: asName(material) }}`,
  index: (material: string) => say`cutting rate against tool steel of ${{ material: asName(material) }}`,
});

/** What the shop says, checked by materialSchema, as a material of the house; refused when it does not conduct. */
export const materialFromConstants = (shop: ShopMaterial): ShopMaterialAnswer => {
  const told = (key: keyof typeof names, value: number, unit: Unit): Figure =>
    given({ key: `material.${shop.id}.${key}`, name: names[key](shop.name), value, unit, basis: 'shop', source: saidBy.shopFile });
  const resistivity = told('resistivity', shop.resistivity, 'µΩm');
  if (shop.resistivity / 1e6 > conductorLimit.value) {
    return {
      kind: 'non-conductor',
      finding: notConducting({ name: shop.name, resistivity: told('resistivity', shop.resistivity / 1e6, 'Ωm') }),
    };
  }
  const constants = {
    density: told('density', shop.density, 'g/cm³'),
    expansion: told('expansion', shop.expansion, '1e-6/K'),
    solidus: told('solidus', shop.solidus, '°C'),
    conductivity: told('conductivity', shop.conductivity, 'W/mK'),
    heat: told('heat', shop.heat, 'J/kgK'),
    fusion: told('fusion', shop.fusion, 'kJ/kg'),
    resistivity,
  };
  const { id, name, family, cautions } = shop;
  const fineness = told('fineness', shop.fineness, '1');
  const index = shop.index === undefined ? estimate(id, constants) : told('index', shop.index, '1');
  const material: Material = { id, name, family, ...constants, index, fineness, cautions };
  return { kind: 'material', material, findings: shop.index === undefined ? [estimated(material)] : [] };
};

const estimate = (
  id: string,
  constants: Pick<Material, 'density' | 'heat' | 'solidus' | 'fusion' | 'conductivity' | 'resistivity'>,
): Figure => {
  const { density, heat, solidus, fusion, conductivity, resistivity } = constants;
  const room = given({
    key: 'model.room',
    name: say('material.model-room')`room temperature`,
    value: 20,
    unit: '°C',
    basis: 'assumed',
    source: { file: 'starting-model' },
  });
  const rise = apply(riseToMelting, { solidus, room }, { key: `material.${id}.rise` });
  const melt = apply(meltEnergy, { density, heat, rise, fusion }, { key: `material.${id}.melt-energy` });
  const doubt = given({
    key: `material.${id}.index-doubt`,
    name: say('material.index-doubt')`uncertainty of an estimated cutting rate`,
    value: 1,
    unit: '1',
    deviation: indexEstimate.doubt,
    basis: 'assumed',
    source: { file: 'starting-model' },
  });
  const warnings = [say('material.estimated')`estimated from material constants; confirm by a trial cut`];
  return apply(estimatedIndex, { melt, conductivity, resistivity, doubt }, { key: `material.${id}.index`, warnings });
};

const riseToMelting = {
  name: say('material.rise-to-melting')`from room temperature to melting`,
  text: say('material.rise-to-melting.by')`ΔT = melting temperature - room temperature`,
  source: 'definition',
  unit: 'K',
  inputs: { solidus: { unit: '°C', name: 'melting begins' }, room: { unit: '°C', name: 'room temperature' } },
  compute: ({ solidus, room }: Readonly<Record<'solidus' | 'room', number>>) => solidus - room,
} as const;

const estimated = ({ id, name, index }: Material): Finding =>
  find(
    'material-index-estimated',
    say`The cutting rate of ${{ material: asName(name) }} is not known; from its constants it is estimated at ${{ index: number(index.value, fixed(2)) }} of tool steel, within about a third.`,
    {
      place: { kind: 'field', path: `materials.${id}.index` },
      remedy: say`Make a trial cut and enter the cutting rate against tool steel.`,
    },
  );
