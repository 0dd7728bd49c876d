/** Reads our own source for the gates: every TypeScript file with its text, and what it imports. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseAst } from 'vite';

export interface SourceFile {
  /** From the project root, with forward slashes: 'src/plan/plan.ts'. */
  readonly path: string;
  readonly text: string;
}

/** All TypeScript files below the given folders, sorted by path. */
export const sourceFiles = (root: string, folders: readonly string[]): readonly SourceFile[] =>
  folders
    .flatMap((folder) =>
      readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((f) => posix.join(folder, f.replaceAll('\\', '/'))),
    )
    .filter((path) => /\.tsx?$/.test(path))
    .sort()
    .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));

/** What the modules at these paths export. */
export const modulesAt = async <M>(paths: readonly string[]): Promise<Readonly<Record<string, M>>> =>
  Object.fromEntries(await Promise.all(paths.map(async (path) => [path, (await import(pathToFileURL(resolve(path)).href)) as M] as const)));

export const isTest = (path: string): boolean => /\.(test|checks|bench|fixture)\.tsx?$/.test(path);

export type Node = { readonly type: string; readonly start: number; readonly end: number } & Record<string, unknown>;

/** Gates of one process ask for the same trees: each text is parsed once. */
const trees = new Map<string, Node>();

/** The syntax tree of a file (ESTree, with TypeScript nodes). */
export const treeOf = ({ path, text }: SourceFile): Node => {
  const lang = path.endsWith('x') ? 'tsx' : 'ts';
  const tree = trees.get(lang + text) ?? (parseAst(text, { lang }, path) as unknown as Node);
  trees.set(lang + text, tree);
  return tree;
};

/** Calls `visit` for every node of a tree, parents first. */
export const walk = (node: Node, visit: (node: Node) => void): void => {
  visit(node);
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) walk(child, visit);
  }
};

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** The modules a file names in import, export-from and import() as written: '../plan/plan.ts', 'zod'. */
export const importsOf = (file: SourceFile): readonly string[] => {
  const found: string[] = [];
  walk(treeOf(file), (node) => {
    const source = node['source'] as Node | null | undefined;
    if (source?.type === 'Literal' && typeof source['value'] === 'string') found.push(source['value']);
  });
  return found;
};

/** A relative import as a path from the root, or the package's name. */
export const resolved = (from: string, name: string): string =>
  name.startsWith('.') ? posix.normalize(posix.join(posix.dirname(from), name)) : name;

export const lineAt = (text: string, index: number): number => text.slice(0, index).split('\n').length;
