/** Constants of the work materials as bare numbers; materials.ts makes Figures of them. Read the column names with each row. */
import type { Caution, Family } from './material.ts';

export interface MaterialRow {
  readonly id: string;
  /** Its key in files of 0.3, where that was a name that began as a brand. */
  readonly formerly?: string;
  /** By the numbers of a standard; alloys with their UNS number. */
  readonly name: string;
  readonly family: Family;
  /** Density g/cm³, expansion 1e-6/K, solidus °C, conductivity W/mK, heat J/kgK, fusion kJ/kg, resistivity µΩm. */
  readonly constants: readonly [number, number, number, number, number, number, number];
  readonly index: number;
  readonly cautions?: readonly Caution[];
  /** What somebody else printed where we saw the text ourselves; the rest is from memory of the handbooks. */
  readonly seen?: {
    readonly source: string;
    readonly of: readonly ('density' | 'expansion' | 'solidus' | 'conductivity' | 'heat' | 'fusion')[];
  };
  /** Constants known to be weak: their spread is tripled and the figure says so. */
  readonly weak?: readonly ('expansion' | 'solidus' | 'conductivity' | 'heat' | 'fusion' | 'resistivity')[];
}

const steelDust: readonly Caution[] = ['chromium in sludge'];
const carbideDust: readonly Caution[] = ['cobalt leaching', 'cobalt in sludge', 'hydrogen'];
const nickelDust: readonly Caution[] = ['nickel in sludge', 'chromium in sludge', 'recast layer'];
const burning: readonly Caution[] = ['combustible fines', 'hydrogen'];

export const materialRows: readonly MaterialRow[] = [
  {
    id: 'a2',
    name: 'tool steel A2',
    family: 'tool steel',
    constants: [7.86, 10.7, 1370, 25, 460, 270, 0.6],
    index: 1,
    weak: ['resistivity'],
  },
  {
    id: 'd2',
    name: 'tool steel D2',
    family: 'tool steel',
    constants: [7.7, 10.4, 1385, 20.5, 460, 270, 0.65],
    index: 1,
    cautions: steelDust,
  },
  { id: 'h13', name: 'tool steel H13', family: 'tool steel', constants: [7.78, 10.7, 1427, 26, 460, 270, 0.52], index: 1 },
  {
    id: 's7',
    name: 'tool steel S7',
    family: 'tool steel',
    constants: [7.83, 12.4, 1400, 29.5, 460, 270, 0.4],
    index: 1,
    weak: ['solidus', 'resistivity'],
  },
  {
    id: 'o1',
    name: 'tool steel O1',
    family: 'tool steel',
    constants: [7.85, 11.2, 1400, 31.5, 460, 270, 0.35],
    index: 1,
    weak: ['solidus', 'resistivity'],
  },
  { id: '4140', name: 'steel 4140', family: 'steel', constants: [7.85, 12.3, 1416, 42.6, 473, 270, 0.22], index: 1 },
  {
    id: 's17400',
    formerly: '17-4ph',
    name: 'stainless 630, UNS S17400, aged',
    family: 'stainless',
    constants: [7.8, 10.8, 1404, 18, 460, 270, 0.785],
    index: 0.95,
    cautions: [...steelDust, 'nickel in sludge'],
  },
  {
    id: '304',
    name: 'stainless 304',
    family: 'stainless',
    constants: [8, 17.2, 1400, 16.2, 500, 270, 0.72],
    index: 0.95,
    cautions: [...steelDust, 'nickel in sludge'],
  },
  {
    id: '316',
    name: 'stainless 316',
    family: 'stainless',
    constants: [8, 15.9, 1375, 16.3, 500, 270, 0.74],
    index: 0.95,
    cautions: [...steelDust, 'nickel in sludge'],
  },
  ...(
    [
      ['wc-6co', 'carbide with 6 % cobalt', [14.9, 5, 1320, 90, 205, 300, 0.2]],
      ['wc-10co', 'carbide with 10 % cobalt', [14.5, 5.5, 1320, 85, 210, 300, 0.2]],
      ['wc-15co', 'carbide with 15 % cobalt', [14, 6.1, 1320, 75, 220, 300, 0.2]],
    ] as const
  ).map(
    ([id, name, constants]): MaterialRow => ({
      id,
      name,
      family: 'carbide',
      constants,
      index: 0.45,
      cautions: carbideDust,
      weak: ['conductivity', 'heat', 'fusion', 'resistivity'],
    }),
  ),
  {
    id: '6061',
    name: 'aluminium 6061-T6, UNS A96061',
    family: 'aluminium',
    constants: [2.7, 23.6, 582, 167, 896, 397, 0.04],
    index: 1.9,
    cautions: burning,
  },
  {
    id: '7075',
    name: 'aluminium 7075-T6, UNS A97075',
    family: 'aluminium',
    constants: [2.81, 23.4, 477, 130, 960, 390, 0.052],
    index: 1.9,
    cautions: burning,
  },
  {
    id: 'ti-6al-4v',
    name: 'titanium Ti-6Al-4V, UNS R56400',
    family: 'titanium',
    constants: [4.43, 8.6, 1604, 7.2, 560, 390, 1.7],
    index: 0.75,
    cautions: [...burning, 'recast layer', 'water-reactive when burning'],
    seen: { source: 'ti-6al-4v-pages', of: ['density', 'expansion', 'conductivity', 'heat'] },
  },
  {
    id: 'n07718',
    formerly: '718',
    name: 'nickel alloy UNS N07718',
    family: 'nickel alloy',
    constants: [8.19, 13, 1260, 11.4, 435, 210, 1.23],
    index: 0.85,
    cautions: nickelDust,
  },
  {
    id: 'n06625',
    formerly: '625',
    name: 'nickel alloy UNS N06625',
    family: 'nickel alloy',
    constants: [8.44, 12.8, 1290, 9.8, 410, 227, 1.29],
    index: 0.85,
    cautions: nickelDust,
    seen: { source: 'alloy-625-paper', of: ['density', 'conductivity', 'heat', 'fusion'] },
  },
  {
    id: 'n10276',
    formerly: 'c-276',
    name: 'nickel alloy UNS N10276',
    family: 'nickel alloy',
    constants: [8.89, 11.2, 1323, 10, 427, 220, 1.3],
    index: 0.85,
    cautions: nickelDust,
  },
  { id: 'copper', name: 'copper UNS C11000', family: 'copper', constants: [8.91, 17, 1065, 388, 385, 205, 0.0172], index: 0.75 },
  { id: 'brass', name: 'brass CuZn37, CW508L', family: 'brass', constants: [8.44, 20.5, 902, 118, 380, 168, 0.065], index: 1.2 },
  {
    id: 'graphite',
    name: 'electrode graphite',
    family: 'graphite',
    constants: [1.82, 6, 3650, 110, 710, 59500, 14],
    index: 0.5,
    cautions: ['conductive dust'],
    weak: ['expansion', 'conductivity', 'heat', 'fusion', 'resistivity'],
  },
  {
    id: 'molybdenum',
    name: 'molybdenum',
    family: 'refractory',
    constants: [10.22, 4.95, 2623, 138, 251, 375, 0.053],
    index: 0.7,
    cautions: ['hydrogen'],
  },
  {
    id: 'tungsten',
    name: 'tungsten',
    family: 'refractory',
    constants: [19.3, 4.5, 3422, 173, 132, 192, 0.054],
    index: 0.5,
    cautions: ['hydrogen'],
  },
  {
    id: 'pcd',
    name: 'polycrystalline diamond, cobalt-bonded',
    family: 'pcd',
    constants: [4.05, 4, 700, 500, 645, 300, 10],
    index: 0.12,
    cautions: ['cobalt leaching', 'cobalt in sludge'],
    weak: ['expansion', 'solidus', 'conductivity', 'heat', 'fusion', 'resistivity'],
  },
  {
    id: 'az31b',
    name: 'magnesium AZ31B, UNS M11311',
    family: 'magnesium',
    constants: [1.77, 26, 605, 96, 1025, 349, 0.092],
    index: 2,
    cautions: [...burning, 'water-reactive when burning'],
  },
  {
    id: 'zirconium',
    name: 'zirconium UNS R60702',
    family: 'zirconium',
    constants: [6.5, 5.8, 1852, 22, 285, 230, 0.4],
    index: 0.7,
    cautions: [...burning, 'recast layer', 'water-reactive when burning'],
    weak: ['expansion', 'fusion'],
  },
];

/** Things people ask for that no spark can cut; resistivity in Ωm, order of magnitude. */
export const nonConductorRows: readonly (readonly [id: string, name: string, resistivity: number])[] = [
  ['alumina', 'alumina ceramic', 1e12],
  ['zirconia', 'zirconia ceramic', 1e10],
  ['silicon-nitride', 'silicon nitride ceramic', 1e12],
  ['sapphire', 'sapphire', 1e14],
  ['glass', 'glass', 1e10],
  ['acrylic', 'acrylic plastic', 1e13],
  ['nylon', 'nylon plastic', 1e12],
  ['glass-epoxy', 'glass-fibre epoxy', 1e11],
  ['wood', 'wood', 1e8],
];
