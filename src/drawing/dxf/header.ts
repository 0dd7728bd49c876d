/** What the header of a DXF file says: its version, its code page and its unit. */
import type { DrawingUnits } from '../drawing.ts';
import type { Tags } from './tags.ts';

export interface Header {
  version: string;
  codePage: string;
  /** $INSUNITS as written; none where it is not there. */
  unitCode: number | undefined;
  /** $MEASUREMENT: 0 inches, 1 metric; it chooses hatch patterns and is no more than a hint. */
  measurement: number | undefined;
  /** $LUNITS and $DIMLUNIT: 3 and 4 write feet and inches. */
  feet: boolean;
  /** $DIMPOST: what is printed behind a size. */
  behindSizes: string;
}

export const emptyHeader = (): Header => ({
  version: '',
  codePage: '',
  unitCode: undefined,
  measurement: undefined,
  feet: false,
  behindSizes: '',
});

/** Reads variables until the next group 0; false when the file ends before. */
export const readHeader = (tags: Tags, header: Header): boolean => {
  let variable = '';
  while (tags.next()) {
    if (tags.code === 0) return true;
    if (tags.code === 9) variable = tags.text();
    else if (variable === '$ACADVER' && tags.code === 1) header.version = tags.text();
    else if (variable === '$DWGCODEPAGE' && tags.code === 3) header.codePage = tags.text();
    else if (variable === '$INSUNITS' && tags.code === 70) header.unitCode = tags.number();
    else if ((variable === '$LUNITS' || variable === '$DIMLUNIT') && tags.code === 70) header.feet ||= FEET.has(tags.number());
    else if (variable === '$DIMPOST' && tags.code === 1) header.behindSizes = tags.text();
    else if (variable === '$MEASUREMENT' && tags.code === 70) header.measurement = tags.number();
  }
  return false;
};

/** Engineering and architectural: feet and inches. */
const FEET: ReadonlySet<number> = new Set([3, 4]);

export type UnitOfCode =
  | { readonly kind: 'unit'; readonly units: DrawingUnits }
  | { readonly kind: 'unitless' }
  | { readonly kind: 'unknown' };

/** The unit that a code of $INSUNITS stands for. */
export const unitOfCode = (code: number): UnitOfCode => {
  if (code === 0) return { kind: 'unitless' };
  const unit = UNITS[code - 1];
  return unit === undefined ? { kind: 'unknown' } : { kind: 'unit', units: { name: unit[0], millimetres: unit[1], basis: 'header' } };
};

/** Of 39.37 inches in a metre: the foot that land surveys in the United States used. */
const SURVEY_FOOT = 1_200_000 / 3937;

/** Codes 1 to 24 in their order, with millimetres. */
const UNITS: readonly (readonly [string, number])[] = [
  ['inch', 25.4],
  ['foot', 304.8],
  ['mile', 1_609_344],
  ['mm', 1],
  ['cm', 10],
  ['m', 1000],
  ['km', 1e6],
  ['µin', 25.4e-6],
  ['mil', 0.0254],
  ['yard', 914.4],
  ['Å', 1e-7],
  ['nm', 1e-6],
  ['µm', 1e-3],
  ['dm', 100],
  ['dam', 10_000],
  ['hm', 100_000],
  ['Gm', 1e12],
  ['astronomical unit', 149_597_870_700_000],
  ['light year', 9.4607304725808e18],
  ['parsec', 3.085677581491367e19],
  ['US survey foot', SURVEY_FOOT],
  ['US survey inch', SURVEY_FOOT / 12],
  ['US survey yard', SURVEY_FOOT * 3],
  ['US survey mile', SURVEY_FOOT * 5280],
];
