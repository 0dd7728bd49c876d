/** Which groups each kind of record has in release 2000 (AC1015) of the format, as far as our files hold such records. Source: dxf-reference. */

export interface Subclass {
  readonly marker: string;
  readonly needed: readonly number[];
  readonly allowed: readonly number[];
}

const span = (first: number, last: number): readonly number[] => Array.from({ length: last - first + 1 }, (_, i) => first + i);

const subclass = (marker: string, needed: readonly number[], allowed: readonly number[] = []): Subclass => ({ marker, needed, allowed });

const POINT_10 = [10, 20, 30] as const;
const EXTRUSION = [39, 210, 220, 230] as const;
const ENTITY = subclass('AcDbEntity', [8], [6, 48, 60, 62, 67, 370]);
const CIRCLE = subclass('AcDbCircle', [...POINT_10, 40], EXTRUSION);

export const ENTITIES: Readonly<Record<string, readonly Subclass[]>> = {
  POINT: [ENTITY, subclass('AcDbPoint', POINT_10, [...EXTRUSION, 50])],
  LINE: [ENTITY, subclass('AcDbLine', [...POINT_10, 11, 21, 31], EXTRUSION)],
  CIRCLE: [ENTITY, CIRCLE],
  ARC: [ENTITY, CIRCLE, subclass('AcDbArc', [50, 51], EXTRUSION)],
  ELLIPSE: [ENTITY, subclass('AcDbEllipse', [...POINT_10, 11, 21, 31, 40, 41, 42], [210, 220, 230])],
  LWPOLYLINE: [ENTITY, subclass('AcDbPolyline', [90, 10, 20], [70, 43, 38, 40, 41, 42, ...EXTRUSION])],
};

const symbol = (marker: string, needed: readonly number[], allowed: readonly number[] = []): readonly Subclass[] => [
  subclass('AcDbSymbolTableRecord', []),
  subclass(marker, [2, ...needed], allowed),
];

const VIEW_POINTS = [10, 20, 11, 21, 12, 22, 13, 23, 14, 24, 15, 25, 16, 26, 36, 17, 27, 37] as const;
const DIMENSION_STYLE = [
  3,
  4,
  ...span(40, 48),
  ...span(71, 79),
  ...span(140, 148),
  ...span(170, 179),
  ...span(271, 289),
  ...span(340, 344),
];

/** The tables that a file must have, and in each the entries that must be there. */
export const TABLES: Readonly<Record<string, { readonly record: readonly Subclass[]; readonly entries: readonly string[] }>> = {
  VPORT: {
    record: symbol('AcDbViewportTableRecord', [70, ...VIEW_POINTS, 40, 41, 42, 43, 44], [50, 51, ...span(71, 78)]),
    entries: ['*ACTIVE'],
  },
  LTYPE: { record: symbol('AcDbLinetypeTableRecord', [70, 3, 72, 73, 40], [49, 74]), entries: ['BYBLOCK', 'BYLAYER', 'CONTINUOUS'] },
  LAYER: { record: symbol('AcDbLayerTableRecord', [70, 62, 6, 390], [290, 370]), entries: ['0'] },
  STYLE: { record: symbol('AcDbTextStyleTableRecord', [70, 40, 41, 50, 71, 42, 3, 4]), entries: ['STANDARD'] },
  VIEW: { record: [], entries: [] },
  UCS: { record: [], entries: [] },
  APPID: { record: symbol('AcDbRegAppTableRecord', [70]), entries: ['ACAD'] },
  DIMSTYLE: { record: symbol('AcDbDimStyleTableRecord', [70], DIMENSION_STYLE), entries: ['STANDARD'] },
  BLOCK_RECORD: { record: symbol('AcDbBlockTableRecord', [340]), entries: ['*MODEL_SPACE', '*PAPER_SPACE'] },
};

export const BLOCK_ENDS: Readonly<Record<string, readonly Subclass[]>> = {
  BLOCK: [ENTITY, subclass('AcDbBlockBegin', [2, 70, ...POINT_10, 3, 1], [4])],
  ENDBLK: [ENTITY, subclass('AcDbBlockEnd', [])],
};

const DICTIONARY = subclass('AcDbDictionary', [281], [280, 3, 350]);
export const OBJECTS: Readonly<Record<string, readonly Subclass[]>> = {
  DICTIONARY: [DICTIONARY],
  ACDBDICTIONARYWDFLT: [DICTIONARY, subclass('AcDbDictionaryWithDefault', [340])],
  ACDBPLACEHOLDER: [],
};

/** Objects of a class that the file must declare, with the name that it declares for them. */
export const CLASSES: Readonly<Record<string, string>> = {
  ACDBDICTIONARYWDFLT: 'AcDbDictionaryWithDefault',
  ACDBPLACEHOLDER: 'AcDbPlaceHolder',
};

export const SECTIONS = ['HEADER', 'CLASSES', 'TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS'] as const;
export type Section = (typeof SECTIONS)[number];
