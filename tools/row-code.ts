/** What of our code each check row runs: the names in the text of its question, followed through check files and fixtures. */
import type { CheckRow } from '../src/quantity/check.ts';
import { type Name, nameOf, reachedFrom, type Taken, takeApart } from './product-graph.ts';
import { isTest, type SourceFile } from './source-files.ts';

interface RowsOfFile {
  readonly file: string;
  readonly rows: readonly CheckRow[];
}

/** By the id of the row. What stands in src/ and is no test itself counts as code. */
export const codeOfRows = (files: readonly SourceFile[], tables: readonly RowsOfFile[]): ReadonlyMap<string, readonly Name[]> => {
  const modules = testModules(
    new Map(files.map((f) => [f.path, f])),
    tables.map((t) => t.file),
  );
  return new Map(tables.flatMap(({ file, rows }) => rows.map((row) => [row.id, codeOf(row, modules, file)] as const)));
};

/** The check files and the fixtures they stand on, taken apart. */
const testModules = (files: ReadonlyMap<string, SourceFile>, first: readonly string[]): ReadonlyMap<string, Taken> => {
  const modules = new Map<string, Taken>();
  const waiting = [...first];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    const file = files.get(path);
    if (file === undefined || modules.has(path) || !(isTest(path) || path.startsWith('test/'))) continue;
    const module = takeApart(file);
    modules.set(path, module);
    waiting.push(...[...module.imported.values()].map((name) => name.split('#')[0] ?? ''));
  }
  return modules;
};

const codeOf = (row: CheckRow, modules: ReadonlyMap<string, Taken>, file: string): readonly Name[] => {
  const words = new Set(String(row.ours).match(/[A-Za-z_$][\w$]*/g) ?? []);
  const named = [...words].flatMap((word) => namedIn(modules.get(file), word));
  return [...reachedFrom(modules, named)].filter(isCode).sort();
};

const namedIn = (module: Taken | undefined, word: string): readonly Name[] => {
  if (module === undefined) return [];
  const imported = module.imported.get(word);
  return imported !== undefined ? [imported] : module.declared.has(word) ? [nameOf(module.path, word)] : [];
};

const isCode = (name: Name): boolean => {
  const [path = '', inner = ''] = name.split('#');
  return path.startsWith('src/') && !isTest(path) && inner !== '';
};
