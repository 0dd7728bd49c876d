/** Functions that only make a text, as the bundler of the page is told: whoever does not need what they make may do without the call. */
import { lineAt, type Node, type SourceFile, treeOf, walk } from './source-files.ts';
import type { Untidy } from './tidy.ts';

/** The bundler knows them by name alone, in every file: nothing else may be called so. */
export const MAKE_TEXTS: readonly string[] = ['say', 'symbols', 'phrases', 'sentences'];

/** Where something of another file bears one of their names: its calls would be left out of the page. */
export const namesakes = (files: readonly SourceFile[]): readonly Untidy[] =>
  files
    .filter((file) => file.path !== 'src/text/say.ts')
    .flatMap((file) => {
      const found: Untidy[] = [];
      walk(treeOf(file), (node) => {
        for (const { start, name } of namesOf(node))
          if (MAKE_TEXTS.includes(name)) found.push({ file: file.path, line: lineAt(file.text, start), what: `another '${name}'` });
      });
      return found;
    });

interface Named extends Node {
  readonly name: string;
}

/** The names that a declaration, a list of parameters or a pattern gives. */
const namesOf = (node: Node): readonly Named[] => {
  const params = (node['params'] ?? []) as readonly Node[] | { readonly items: readonly Node[] };
  const given = [
    ...(node.type === 'VariableDeclarator' || node.type === 'FunctionDeclaration' ? [node['id']] : []),
    ...(/Function/.test(node.type) ? ('items' in params ? params.items : params) : []),
    ...(node.type === 'ObjectPattern' ? (node['properties'] as readonly Node[]).map((p) => p['value'] ?? p['argument']) : []),
    ...(node.type === 'ArrayPattern' ? (node['elements'] as readonly unknown[]) : []),
  ] as readonly (Node | null | undefined)[];
  return given
    .map((one) => (one?.type === 'AssignmentPattern' ? (one['left'] as Node) : one))
    .filter((one): one is Named => one?.type === 'Identifier');
};
