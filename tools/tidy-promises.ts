/** Where the source promises the compiler what nobody looked at: values said to be there, and spreads that decide whether a key is there. */
import { lineAt, type Node, type SourceFile, treeOf, walk } from './source-files.ts';
import type { Untidy } from './tidy.ts';

/** The opening comment of a file whose inner loops read plain numbers out of long arrays says so in these words; only there `!` may stand. */
const MARK = /^\/\*\*(?:(?!\*\/)[\s\S])*`!`[\s*]+stands[\s*]+where/;

export const isMarked = (file: SourceFile): boolean => MARK.test(file.text);

/** Each `!` of a file that is not marked, and each mark of a file that has none. */
export const unlookedAt = (files: readonly SourceFile[]): readonly Untidy[] =>
  files.flatMap((file) => {
    const found = linesWith(file, ({ type }) => type === 'TSNonNullExpression');
    if (!isMarked(file)) return found.map((line) => ({ file: file.path, line, what: "'!' where nobody looked whether it is there" }));
    return found.length > 0 ? [] : [{ file: file.path, line: 1, what: "says that '!' stands in it, and none does" }];
  });

/** Each spread that decides of single keys whether they are there: a field that may be missing is written as it is. */
export const conditionalSpreads = (files: readonly SourceFile[]): readonly Untidy[] =>
  files.flatMap((file) =>
    linesWith(file, isConditionalSpread).map((line) => ({ file: file.path, line, what: 'a spread decides whether a key is there' })),
  );

const linesWith = (file: SourceFile, is: (node: Node) => boolean): readonly number[] => {
  const lines: number[] = [];
  walk(treeOf(file), (node) => {
    if (is(node)) lines.push(lineAt(file.text, node.start));
  });
  return lines;
};

const isConditionalSpread = (node: Node): boolean => {
  if (node.type !== 'SpreadElement') return false;
  const what = bare(node['argument'] as Node);
  if (what.type === 'LogicalExpression') return what['operator'] === '&&' && bare(what['right'] as Node).type === 'ObjectExpression';
  return what.type === 'ConditionalExpression' && [what['consequent'], what['alternate']].some((one) => isEmptyObject(bare(one as Node)));
};

/** Without brackets and without what is said of its type. */
const bare = (node: Node): Node =>
  node.type === 'ParenthesizedExpression' || node.type === 'TSAsExpression' ? bare(node['expression'] as Node) : node;

const isEmptyObject = (node: Node): boolean => node.type === 'ObjectExpression' && (node['properties'] as Node[]).length === 0;
