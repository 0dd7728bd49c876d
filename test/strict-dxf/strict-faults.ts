/**
 * Reads a DXF file as a strict reader of release 2000 (AC1015) does and says what it would refuse: an order of sections, a missing
 * table, a subclass marker, a handle, an owner, a value of the wrong kind, a group where it has no meaning. It knows the few kinds
 * of record that our files hold, and refuses all others. Source: dxf-reference.
 */
import {
  type DxfFile,
  type DxfRecord,
  fileOf,
  fits,
  type Group,
  groupsOf,
  HANDLES,
  recordsOf,
  sectionsOf,
  type Table,
  type Tell,
  valueIn,
  within,
} from './layout.ts';
import { BLOCK_ENDS, CLASSES, ENTITIES, OBJECTS, type Subclass, TABLES } from './reference.ts';

export interface StrictFault {
  readonly line: number;
  readonly what: string;
}

/** What a strict reader would not take, in the order of the file; empty for a file that it opens. */
export const strictFaults = (text: string): readonly StrictFault[] => {
  const faults: StrictFault[] = [];
  const tell: Tell = (line, what) => void faults.push({ line, what });
  const groups = groupsOf(text, tell);
  for (const group of groups) if (!fits(group)) tell(group.line, `group ${group.code} cannot hold '${group.value}'`);
  const sections = sectionsOf(recordsOf(groups), tell);
  const file = fileOf(sections);
  headerFaults(file, tell);
  classFaults(file, tell);
  tableFaults(file, tell);
  blockFaults(file, tell);
  entityFaults(file, tell);
  objectFaults(file, tell);
  handleFaults(file, tell);
  return faults.toSorted((a, b) => a.line - b.line);
};

const headerFaults = ({ variables, of, sections }: DxfFile, tell: Tell): void => {
  const line = sections.get('HEADER')?.head.line ?? 1;
  const version = variables.get('$ACADVER');
  if (version?.code !== 1 || version.value !== 'AC1015') tell(version?.line ?? line, 'the header does not say release AC1015');
  if (variables.get('$HANDSEED')?.code !== 5) tell(line, 'the header does not say the next free handle');
  for (const record of of('HEADER')) tell(record.line, `${record.kind} in the header`);
};

const classFaults = ({ of }: DxfFile, tell: Tell): void => {
  const declared = new Map<string, string | undefined>();
  for (const record of of('CLASSES')) {
    const codes = record.groups.map((g) => g.code);
    if (record.kind !== 'CLASS' || codes.join() !== '1,2,3,90,280,281') tell(record.line, `${record.kind} is no class`);
    declared.set(valueIn(record, 1) ?? '', valueIn(record, 2));
  }
  for (const { kind, line } of of('OBJECTS'))
    if (kind in CLASSES && declared.get(kind) !== CLASSES[kind]) tell(line, `the class of ${kind} is not declared`);
};

const tableFaults = ({ tables, names, sections }: DxfFile, tell: Tell): void => {
  const place = sections.get('TABLES')?.head.line ?? 1;
  const inOrder = [...tables.keys()];
  for (const name of inOrder) if (!(name in TABLES)) tell(place, `an unknown table ${name}`);
  if (inOrder.indexOf('LTYPE') > inOrder.indexOf('LAYER')) tell(place, 'the table LTYPE does not come before LAYER');
  for (const [name, { record, entries }] of Object.entries(TABLES)) {
    const table = tables.get(name);
    if (table === undefined) {
      tell(place, `no table ${name}`);
      continue;
    }
    tableHeadFaults(name, table, tell);
    for (const entry of entries) if (!names(name).includes(entry)) tell(table.head.line, `no ${entry} in the table ${name}`);
    for (const r of table.records) {
      if (r.kind !== name) tell(r.line, `${r.kind} in the table ${name}`);
      else recordFaults(r, record, name === 'DIMSTYLE' ? 105 : 5, tell);
      if (valueIn(r, 330) !== valueIn(table.head, 5)) tell(r.line, `${name} ${valueIn(r, 2)} does not belong to its table`);
      nameFaults(r, tell);
    }
    const twice = names(name).find((n, i, all) => name !== 'VPORT' && all.indexOf(n) < i);
    if (twice !== undefined) tell(table.head.line, `${twice} stands twice in the table ${name}`);
  }
  for (const layer of tables.get('LAYER')?.records ?? [])
    if (!names('LTYPE').includes((valueIn(layer, 6) ?? '').toUpperCase()))
      tell(layer.line, `a layer of the unknown line type ${valueIn(layer, 6)}`);
};

const tableHeadFaults = (name: string, { head, records }: Table, tell: Tell): void => {
  const codes = head.groups.map((g) => g.code).join();
  const marker = valueIn(head, 100);
  const known = name === 'DIMSTYLE' ? ['2,5,330,100,70,100', '2,5,330,100,70,100,71'] : ['2,5,330,100,70'];
  if (!known.includes(codes) || marker !== 'AcDbSymbolTable' || valueIn(head, 330) !== '0')
    tell(head.line, `the head of the table ${name}`);
  if (Number(valueIn(head, 70)) < records.length) tell(head.line, `the table ${name} has more entries than it says`);
};

/** Signs that a name of release 2000 may not have. */
const nameFaults = (record: DxfRecord, tell: Tell): void => {
  const name = valueIn(record, 2) ?? '';
  if (name === '' || name.length > 255 || /[<>/\\":;?|=`,]|(?!^)\*/.test(name.replace(/\\U\+[0-9A-F]{4}/g, 'x')))
    tell(record.line, `'${name}' is no name`);
};

/** Groups before the first subclass marker, then each subclass with its groups. */
const recordFaults = (record: DxfRecord, expected: readonly Subclass[], handle: 5 | 105, tell: Tell): void => {
  const { kind, groups, line } = record;
  const parts: Group[][] = [[]];
  for (const group of groups) {
    if (group.code === 100) parts.push([group]);
    else parts.at(-1)?.push(group);
  }
  const [own = [], ...subclasses] = parts;
  if (own.map((g) => g.code).join() !== `${handle},330`) tell(line, `${kind} does not begin with its handle and its owner`);
  const markers = subclasses.map(([marker]) => marker?.value);
  const wanted = expected.map((s) => s.marker);
  if (markers.join() !== wanted.join()) {
    tell(line, `${kind} has the subclass markers ${markers.join(', ') || 'none'} instead of ${wanted.join(', ')}`);
    return;
  }
  subclasses.forEach(([, ...held], i) => {
    const { marker, needed, allowed } = expected[i] as Subclass;
    const codes = held.map((g) => g.code);
    for (const code of needed) if (!codes.includes(code)) tell(line, `${marker} of ${kind} has no group ${code}`);
    for (const g of held)
      if (!needed.includes(g.code) && !allowed.includes(g.code)) tell(g.line, `group ${g.code} has no meaning in ${marker}`);
  });
};

const blockFaults = ({ of, tables }: DxfFile, tell: Tell): void => {
  const records = new Map((tables.get('BLOCK_RECORD')?.records ?? []).map((r) => [valueIn(r, 5), valueIn(r, 2)]));
  const seen: (string | undefined)[] = [];
  const all = of('BLOCKS');
  for (const [i, record] of all.entries()) {
    const expected = BLOCK_ENDS[record.kind];
    if (expected === undefined) tell(record.line, `${record.kind} in a block`);
    else recordFaults(record, expected, 5, tell);
    const owner = valueIn(record, 330);
    if (record.kind !== 'BLOCK') continue;
    seen.push(owner);
    if (records.get(owner) !== valueIn(record, 2)) tell(record.line, `the block ${valueIn(record, 2)} does not belong to its record`);
    const end = all[i + 1];
    if (end?.kind !== 'ENDBLK' || valueIn(end, 330) !== owner) tell(record.line, `the block ${valueIn(record, 2)} is not ended`);
  }
  for (const [handle, name] of records) if (!seen.includes(handle)) tell(1, `no block for the record ${name}`);
};

const entityFaults = ({ of, tables, names }: DxfFile, tell: Tell): void => {
  const model = tables.get('BLOCK_RECORD')?.records.find((r) => valueIn(r, 2)?.toUpperCase() === '*MODEL_SPACE');
  for (const record of [...of('BLOCKS'), ...of('ENTITIES')]) {
    const layer = valueIn(record, 8);
    if (layer !== undefined && !names('LAYER').includes(layer.toUpperCase()))
      tell(record.line, `${record.kind} on the unknown layer '${layer}'`);
  }
  for (const record of of('ENTITIES')) {
    const expected = ENTITIES[record.kind];
    if (expected === undefined) {
      tell(record.line, `an entity ${record.kind}`);
      continue;
    }
    recordFaults(record, expected, 5, tell);
    if (model === undefined || valueIn(record, 330) !== valueIn(model, 5))
      tell(record.line, `${record.kind} does not belong to the model space`);
    if (record.kind === 'LWPOLYLINE') polylineFaults(record, tell);
    else if (Number(valueIn(record, 40) ?? 1) <= 0) tell(record.line, `${record.kind} has the size ${valueIn(record, 40)}`);
  }
};

const polylineFaults = (record: DxfRecord, tell: Tell): void => {
  const codes = record.groups.map((g) => g.code);
  const vertices = codes.filter((c) => c === 10).length;
  if (Number(valueIn(record, 90)) !== vertices) tell(record.line, `a polyline of ${valueIn(record, 90)} vertices has ${vertices}`);
  codes.forEach((code, i) => {
    if ((code === 10) !== (codes[i + 1] === 20)) tell(record.line, 'a vertex is not x followed by y');
  });
};

const objectFaults = ({ of }: DxfFile, tell: Tell): void => {
  const objects = of('OBJECTS');
  const [root] = objects;
  if (root?.kind !== 'DICTIONARY' || valueIn(root, 330) !== '0') tell(root?.line ?? 1, 'the objects do not begin with the root dictionary');
  if (root !== undefined && valueIn(root, 3) !== 'ACAD_GROUP') tell(root.line, 'the root dictionary has no ACAD_GROUP');
  const holders = new Map(objects.flatMap((o) => o.groups.filter((g) => g.code === 350).map((g) => [g.value, valueIn(o, 5)] as const)));
  for (const record of objects) {
    const expected = OBJECTS[record.kind];
    if (expected === undefined) {
      tell(record.line, `an object ${record.kind}`);
      continue;
    }
    recordFaults(record, expected, 5, tell);
    const [names, held] = [3, 350].map((code) => record.groups.filter((g) => g.code === code).length);
    if (names !== held) tell(record.line, 'a dictionary has not as many names as objects');
    if (record !== root && holders.get(valueIn(record, 5) ?? '') !== valueIn(record, 330))
      tell(record.line, `${record.kind} is not in the dictionary that owns it`);
  }
};

/** Each handle is borne once and lies below the next free one; whatever points somewhere points at what is there. */
const handleFaults = ({ variables, of, tables }: DxfFile, tell: Tell): void => {
  const seed = Number.parseInt(variables.get('$HANDSEED')?.value ?? '0', 16);
  const borne = new Set<string>();
  const all = [...tables.values()].flatMap((t) => [t.head, ...t.records]).concat(of('BLOCKS'), of('ENTITIES'), of('OBJECTS'));
  for (const { kind, groups } of all)
    for (const { code, value, line } of groups) {
      if (code !== 105 && (code !== 5 || kind === 'DIMSTYLE')) continue;
      if (borne.has(value)) tell(line, `the handle ${value} is borne twice`);
      if (value === '0' || Number.parseInt(value, 16) >= seed) tell(line, `the handle ${value} is not below the next free one`);
      borne.add(value);
    }
  for (const { groups } of all)
    for (const { code, value, line } of groups)
      if (code !== 5 && code !== 105 && within(code, HANDLES) && value !== '0' && !borne.has(value))
        tell(line, `group ${code} points at ${value}, which nothing bears`);
};
