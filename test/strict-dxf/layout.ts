/** A DXF file as groups, records, sections and tables, with what is wrong in how it is laid out. Source: dxf-reference. */
import { SECTIONS, type Section } from './reference.ts';

export interface Group {
  readonly code: number;
  readonly value: string;
  readonly line: number;
}

/** What stands between two groups of code 0, the first of which it begins with. */
export interface DxfRecord {
  readonly kind: string;
  readonly groups: readonly Group[];
  readonly line: number;
}

export type Tell = (line: number, what: string) => void;

export const groupsOf = (text: string, tell: Tell): readonly Group[] => {
  const lines = text.split(/\r?\n/);
  if (lines.at(-1) === '') lines.pop();
  if (lines.length % 2 === 1) tell(lines.length, 'a code without a value ends the file');
  const groups: Group[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const [code = '', value = ''] = [lines[i], lines[i + 1]];
    if (!/^ *\d+$/.test(code)) tell(i + 1, `'${code}' is no group code`);
    groups.push({ code: Number(code), value, line: i + 1 });
  }
  return groups;
};

export const within = (code: number, spans: readonly (readonly [number, number])[]): boolean =>
  spans.some(([a, b]) => code >= a && code <= b);

const REALS = [
  [10, 59],
  [110, 149],
  [210, 239],
] as const;
const INTEGERS = [
  [60, 79],
  [90, 99],
  [170, 179],
  [270, 289],
  [370, 389],
] as const;
export const HANDLES = [
  [5, 5],
  [105, 105],
  [320, 369],
  [390, 399],
] as const;

/** Release 2000 writes one byte a sign in the code page of the header, and other signs as `\U+` and four digits. */
export const fits = ({ code, value }: Group): boolean => {
  if (within(code, REALS)) return /^\s*[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?\s*$/i.test(value);
  if (within(code, INTEGERS)) return /^\s*-?\d+\s*$/.test(value);
  if (within(code, HANDLES)) return /^[0-9A-F]{1,16}$/.test(value);
  return /^[ -~]*$/.test(value) && value.length <= (code === 100 ? 255 : 2049);
};

export const recordsOf = (groups: readonly Group[]): readonly DxfRecord[] => {
  const starts = groups.flatMap((g, i) => (g.code === 0 ? [i] : []));
  return starts.map((start, i) => {
    const [first, ...rest] = groups.slice(start, starts[i + 1]) as [Group, ...Group[]];
    return { kind: first.value, groups: rest, line: first.line };
  });
};

export const valueIn = (record: DxfRecord, code: number): string | undefined => record.groups.find((g) => g.code === code)?.value;

type Sections = ReadonlyMap<string, { readonly head: DxfRecord; readonly records: readonly DxfRecord[] }>;

export const sectionsOf = (records: readonly DxfRecord[], tell: Tell): Sections => {
  const sections = new Map<string, { head: DxfRecord; records: DxfRecord[] }>();
  let open: { head: DxfRecord; records: DxfRecord[] } | undefined;
  for (const record of records) {
    if (record.kind === 'SECTION') {
      if (open !== undefined) tell(record.line, 'a section begins within another');
      open = { head: record, records: [] };
      const name = valueIn(record, 2) ?? '';
      if (sections.has(name)) tell(record.line, `a second section ${name}`);
      sections.set(name, open);
    } else if (record.kind === 'ENDSEC') open = undefined;
    else if (record.kind === 'EOF') {
      if (open !== undefined || record !== records.at(-1)) tell(record.line, 'EOF is not the end');
    } else if (open === undefined) tell(record.line, `${record.kind} outside of a section`);
    else open.records.push(record);
  }
  if (records.at(-1)?.kind !== 'EOF') tell(records.at(-1)?.line ?? 1, 'no EOF ends the file');
  const names = [...sections.keys()];
  if (names.join() !== SECTIONS.join()) tell(1, `the sections are ${names.join(', ')} instead of ${SECTIONS.join(', ')}`);
  return sections;
};

export interface Table {
  readonly head: DxfRecord;
  readonly records: readonly DxfRecord[];
}

export interface DxfFile {
  readonly sections: Sections;
  readonly variables: ReadonlyMap<string, Group>;
  readonly tables: ReadonlyMap<string, Table>;
  of(section: Section): readonly DxfRecord[];
  /** Names in a table, in capitals: they are the same however they are written. */
  names(table: string): readonly string[];
}

export const fileOf = (sections: Sections): DxfFile => {
  const of = (section: Section): readonly DxfRecord[] => sections.get(section)?.records ?? [];
  const header = sections.get('HEADER')?.head.groups ?? [];
  const variables = new Map(
    header.flatMap((g, i) => {
      const next = header[i + 1];
      return g.code === 9 && next !== undefined ? [[g.value, next] as const] : [];
    }),
  );
  const tables = new Map<string, { head: DxfRecord; records: DxfRecord[] }>();
  let open: { head: DxfRecord; records: DxfRecord[] } | undefined;
  for (const record of of('TABLES')) {
    if (record.kind === 'TABLE') {
      open = { head: record, records: [] };
      tables.set(valueIn(record, 2) ?? '', open);
    } else if (record.kind === 'ENDTAB') open = undefined;
    else open?.records.push(record);
  }
  const names = (table: string): readonly string[] => (tables.get(table)?.records ?? []).map((r) => (valueIn(r, 2) ?? '').toUpperCase());
  return { sections, variables, tables, of, names };
};
