/** What stands around the entities of a DXF file of the year 2000 (AC1015): header, tables, blocks, objects. Source: dxf-reference. */

export type Tag = readonly [code: number, value: string | number];

/** Handles are given by hand up to here; entities and layers count on from it. */
export const FIRST_HANDLE = 0x100;

const MODEL = '1F';
const PAPER = '1B';

export interface SheetFrame {
  readonly layers: readonly string[];
  /** 4 for mm, 1 for inch. */
  readonly unitCode: number;
  readonly metric: boolean;
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
  /** First handle that nothing bears. */
  readonly nextHandle: number;
}

/** Signs beyond those of every code page, as release 2000 writes them. */
export const plainText = (text: string): string =>
  text.replace(/[^ -~]/g, (sign) => `\\U+${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`);

export const handleText = (handle: number): string => handle.toString(16).toUpperCase();

/** The whole file as tags, around `entities`. */
export const framed = (frame: SheetFrame, entities: readonly Tag[]): readonly Tag[] => [
  ...section('HEADER', headerOf(frame)),
  ...section('CLASSES', CLASSES),
  ...section('TABLES', tablesOf(frame)),
  ...section('BLOCKS', [...block(MODEL, '20', '21', '*Model_Space'), ...block(PAPER, '1C', '1D', '*Paper_Space')]),
  ...section('ENTITIES', entities),
  ...section('OBJECTS', OBJECTS),
  [0, 'EOF'],
];

const section = (name: string, tags: readonly Tag[]): readonly Tag[] => [[0, 'SECTION'], [2, name], ...tags, [0, 'ENDSEC']];

const headerOf = ({ unitCode, metric, low, high, nextHandle }: SheetFrame): readonly Tag[] => [
  [9, '$ACADVER'],
  [1, 'AC1015'],
  [9, '$DWGCODEPAGE'],
  [3, 'ANSI_1252'],
  [9, '$EXTMIN'],
  [10, low[0]],
  [20, low[1]],
  [30, 0],
  [9, '$EXTMAX'],
  [10, high[0]],
  [20, high[1]],
  [30, 0],
  [9, '$HANDSEED'],
  [5, handleText(nextHandle)],
  [9, '$INSUNITS'],
  [70, unitCode],
  [9, '$MEASUREMENT'],
  [70, metric ? 1 : 0],
];

/** Objects of these classes stand among the objects, and a strict reader wants to know what they are. */
const CLASSES: readonly Tag[] = (
  [
    ['ACDBDICTIONARYWDFLT', 'AcDbDictionaryWithDefault'],
    ['ACDBPLACEHOLDER', 'AcDbPlaceHolder'],
  ] as const
).flatMap(([name, subclass]): readonly Tag[] => [
  [0, 'CLASS'],
  [1, name],
  [2, subclass],
  [3, 'ObjectDBX Classes'],
  [90, 0],
  [280, 0],
  [281, 0],
]);

const tablesOf = ({ layers, low, high }: SheetFrame): readonly Tag[] => [
  ...table('VPORT', '8', [viewOf(low, high)]),
  ...table(
    'LTYPE',
    '5',
    (
      [
        ['14', 'ByBlock', ''],
        ['15', 'ByLayer', ''],
        ['16', 'Continuous', 'Solid line'],
      ] as const
    ).map(([handle, name, words]): readonly Tag[] => [
      ...symbol('LTYPE', handle, '5', 'AcDbLinetypeTableRecord'),
      [2, name],
      [70, 0],
      [3, words],
      [72, 65],
      [73, 0],
      [40, 0],
    ]),
  ),
  ...table(
    'LAYER',
    '2',
    layers.map((name, i): readonly Tag[] => [
      ...symbol('LAYER', handleText(FIRST_HANDLE + i), '2', 'AcDbLayerTableRecord'),
      [2, name],
      [70, 0],
      [62, 7],
      [6, 'Continuous'],
      [370, -3],
      [390, 'F'],
    ]),
  ),
  ...table('STYLE', '3', [STYLE]),
  ...table('VIEW', '6', []),
  ...table('UCS', '7', []),
  ...table('APPID', '9', [[...symbol('APPID', '12', '9', 'AcDbRegAppTableRecord'), [2, 'ACAD'], [70, 0]]]),
  ...table('DIMSTYLE', 'A', [DIMSTYLE], [[100, 'AcDbDimStyleTable']]),
  ...table(
    'BLOCK_RECORD',
    '1',
    (
      [
        [MODEL, '*Model_Space'],
        [PAPER, '*Paper_Space'],
      ] as const
    ).map(([handle, name]): readonly Tag[] => [...symbol('BLOCK_RECORD', handle, '1', 'AcDbBlockTableRecord'), [2, name], [340, '0']]),
  ),
];

/** What is seen when the drawing is opened: all of it, from above. */
const viewOf = (low: SheetFrame['low'], high: SheetFrame['high']): readonly Tag[] => [
  ...symbol('VPORT', '22', '8', 'AcDbViewportTableRecord'),
  [2, '*Active'],
  [70, 0],
  ...pair(0, 0, 0),
  ...pair(1, 1, 1),
  ...pair(2, (low[0] + high[0]) / 2, (low[1] + high[1]) / 2),
  ...pair(3, 0, 0),
  ...pair(4, 1, 1),
  ...pair(5, 1, 1),
  ...pair(6, 0, 0),
  [36, 1],
  ...pair(7, 0, 0),
  [37, 0],
  [40, Math.max(high[0] - low[0], high[1] - low[1]) || 1],
  [41, 1],
  [42, 50],
  [43, 0],
  [44, 0],
  [50, 0],
  [51, 0],
];

const pair = (nth: number, x: number, y: number): readonly Tag[] => [
  [10 + nth, x],
  [20 + nth, y],
];

const DIMSTYLE: readonly Tag[] = [
  [0, 'DIMSTYLE'],
  [105, '23'],
  [330, 'A'],
  [100, 'AcDbSymbolTableRecord'],
  [100, 'AcDbDimStyleTableRecord'],
  [2, 'Standard'],
  [70, 0],
  [340, '11'],
];

const STYLE: readonly Tag[] = [
  [0, 'STYLE'],
  [5, '11'],
  [330, '3'],
  [100, 'AcDbSymbolTableRecord'],
  [100, 'AcDbTextStyleTableRecord'],
  [2, 'Standard'],
  [70, 0],
  [40, 0],
  [41, 1],
  [50, 0],
  [71, 0],
  [42, 2.5],
  [3, 'txt'],
  [4, ''],
];

const table = (name: string, handle: string, records: readonly (readonly Tag[])[], more: readonly Tag[] = []): readonly Tag[] => [
  [0, 'TABLE'],
  [2, name],
  [5, handle],
  [330, '0'],
  [100, 'AcDbSymbolTable'],
  [70, records.length],
  ...more,
  ...records.flat(),
  [0, 'ENDTAB'],
];

const symbol = (kind: string, handle: string, owner: string, subclass: string): readonly Tag[] => [
  [0, kind],
  [5, handle],
  [330, owner],
  [100, 'AcDbSymbolTableRecord'],
  [100, subclass],
];

const block = (record: string, begin: string, end: string, name: string): readonly Tag[] => [
  [0, 'BLOCK'],
  [5, begin],
  [330, record],
  [100, 'AcDbEntity'],
  ...(record === PAPER ? ([[67, 1]] as const) : []),
  [8, '0'],
  [100, 'AcDbBlockBegin'],
  [2, name],
  [70, 0],
  [10, 0],
  [20, 0],
  [30, 0],
  [3, name],
  [1, ''],
  [0, 'ENDBLK'],
  [5, end],
  [330, record],
  [100, 'AcDbEntity'],
  ...(record === PAPER ? ([[67, 1]] as const) : []),
  [8, '0'],
  [100, 'AcDbBlockEnd'],
];

/** Every entity belongs to the model space. */
export const entityHead = (kind: string, handle: number, layer: string): readonly Tag[] => [
  [0, kind],
  [5, handleText(handle)],
  [330, MODEL],
  [100, 'AcDbEntity'],
  [8, layer],
];

const OBJECTS: readonly Tag[] = [
  [0, 'DICTIONARY'],
  [5, 'C'],
  [330, '0'],
  [100, 'AcDbDictionary'],
  [281, 1],
  [3, 'ACAD_GROUP'],
  [350, 'D'],
  [3, 'ACAD_PLOTSTYLENAME'],
  [350, 'E'],
  [0, 'DICTIONARY'],
  [5, 'D'],
  [330, 'C'],
  [100, 'AcDbDictionary'],
  [281, 1],
  [0, 'ACDBDICTIONARYWDFLT'],
  [5, 'E'],
  [330, 'C'],
  [100, 'AcDbDictionary'],
  [281, 1],
  [3, 'Normal'],
  [350, 'F'],
  [100, 'AcDbDictionaryWithDefault'],
  [340, 'F'],
  [0, 'ACDBPLACEHOLDER'],
  [5, 'F'],
  [330, 'E'],
];
