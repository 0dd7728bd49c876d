/** Reads the source and says where the house is untidy: walls of length, missing signs on doors, words left behind. */
import { posix } from 'node:path';
import { lineAt, type Node, type SourceFile, treeOf, walk } from './source-files.ts';

export interface Untidy {
  readonly file: string;
  readonly line: number;
  readonly what: string;
}

export const FILE_WALL = 400;
export const FUNCTION_WALL = 60;

/** Files longer than the wall. */
export const longFiles = (files: readonly SourceFile[]): readonly Untidy[] =>
  files
    .map((f) => ({ file: f.path, lines: f.text.trimEnd().split('\n').length }))
    .filter(({ lines }) => lines > FILE_WALL)
    .map(({ file, lines }) => ({ file, line: 1, what: `${lines} lines; the wall is ${FILE_WALL}` }));

/** Functions longer than the wall, except the describe blocks that hold tests. */
export const longFunctions = (files: readonly SourceFile[]): readonly Untidy[] => files.flatMap(longFunctionsOf);

const longFunctionsOf = (file: SourceFile): readonly Untidy[] => {
  const found: Untidy[] = [];
  const spared = new Set<number>();
  walk(treeOf(file), (node) => {
    if (isDescribe(node)) for (const argument of node['arguments'] as Node[]) spared.add(argument.start);
    if (!/Function/.test(node.type) || node.type.startsWith('TS') || spared.has(node.start)) return;
    const line = lineAt(file.text, node.start);
    const lines = lineAt(file.text, node.end) - line + 1;
    if (lines > FUNCTION_WALL) found.push({ file: file.path, line, what: `a function of ${lines} lines; the wall is ${FUNCTION_WALL}` });
  });
  return found;
};

const isDescribe = (node: Node): boolean => {
  if (node.type !== 'CallExpression') return false;
  const callee = node['callee'] as Node;
  return callee['name'] === 'describe' || ((callee['callee'] as Node | undefined)?.['object'] as Node | undefined)?.['name'] === 'describe';
};

/** Every file opens with a sentence that says what it is for. */
export const withoutPurpose = (files: readonly SourceFile[]): readonly Untidy[] =>
  files
    .filter((f) => !/^(#!.*\n)?\s*\/\*\*/.test(f.text))
    .map((f) => ({ file: f.path, line: 1, what: 'does not open with a sentence on its purpose' }));

/** Words that mean unfinished work, and calls that make the core depend on when and where it runs. */
export const leftBehind = (files: readonly SourceFile[]): readonly Untidy[] =>
  files.flatMap((f) =>
    f.text.split('\n').flatMap((text, i) => {
      const word = UNFINISHED.exec(text)?.[0] ?? (isCore(f.path) ? RESTLESS.exec(text)?.[0] : undefined);
      return word === undefined ? [] : [{ file: f.path, line: i + 1, what: `'${word}' does not belong here` }];
    }),
  );

const UNFINISHED = new RegExp(
  ['TO' + 'DO', 'FIX' + 'ME', 'X' + 'XX\\b', 'HA' + 'CK\\b', 'ts-' + 'ignore', 'it\\.sk' + 'ip\\(', 'it\\.on' + 'ly\\('].join('|'),
);
const RESTLESS = /Math\.random\(|Date\.now\(|new Date\(\)|performance\.now\(/;
const isCore = (path: string): boolean =>
  path.startsWith('src/') && !/^src\/(cli|font-files|server|app|store)\//.test(path) && !/\.(test|bench|checks)\.ts$/.test(path);

/** Files and folders in back ticks that a text of ours names and that are not there: seen from its own folder, from `src/` and from the root. */
export const namedInVain = (text: SourceFile, isThere: (path: string) => boolean): readonly Untidy[] =>
  [...text.text.matchAll(NAMED)].flatMap((match) => {
    const name = match[1] as string;
    const places = [posix.join(posix.dirname(text.path), name), posix.join('src', name), name];
    return places.some(isThere) ? [] : [{ file: text.path, line: lineAt(text.text, match.index), what: `'${name}' is not there` }];
  });

const NAMED = /`((?:[\w.-]+\/)*[\w.-]+(?:\/|\.tsx?|\.css|\.md))`/g;

/** Test names that occur twice in one file or across the house. */
export const sameTestNames = (files: readonly SourceFile[]): readonly Untidy[] => {
  const first = new Map<string, string>();
  return files
    .filter((f) => f.path.endsWith('.test.ts'))
    .flatMap((f) => testNames(f))
    .flatMap((t) => {
      const before = first.get(t.name);
      first.set(t.name, before ?? `${t.file}:${t.line}`);
      return before === undefined
        ? []
        : [{ file: t.file, line: t.line, what: `a test of the name '${t.name}' stands already at ${before}` }];
    });
};

const testNames = (file: SourceFile): { readonly file: string; readonly line: number; readonly name: string }[] => {
  const names: { file: string; line: number; name: string }[] = [];
  const prefixes: { readonly end: number; readonly name: string }[] = [];
  walk(treeOf(file), (node) => {
    const name = testName(node);
    if (name === undefined) return;
    while (prefixes.length > 0 && (prefixes.at(-1)?.end as number) < node.start) prefixes.pop();
    if (isDescribe(node)) prefixes.push({ end: node.end, name });
    else names.push({ file: file.path, line: lineAt(file.text, node.start), name: [...prefixes.map((p) => p.name), name].join(' ') });
  });
  return names;
};

const testName = (node: Node): string | undefined => {
  if (node.type !== 'CallExpression') return undefined;
  const callee = node['callee'] as Node;
  if (!['describe', 'it', 'test'].includes(callee['name'] as string)) return undefined;
  const first = (node['arguments'] as Node[])[0];
  return first?.type === 'Literal' ? (first['value'] as string) : undefined;
};
