/** Where more is handed over than anybody needs: long lists of parameters, and objects of very many fields. */
import { lineAt, type Node, type SourceFile, treeOf, walk } from './source-files.ts';
import type { Untidy } from './tidy.ts';
import { isMarked } from './tidy-promises.ts';

/** Beyond it nobody knows any more which is which: an object with names, or a value that holds what belongs together. */
export const MOST_PARAMETERS = 5;
/** Of one object's own; what is made of parts names each part, and a leaf takes the part that it needs. */
export const MOST_FIELDS = 20;

/** Functions with a longer list. Inner loops of plain numbers are spared, in the files that say so. */
export const longLists = (files: readonly SourceFile[]): readonly Untidy[] =>
  files
    .filter((file) => !isMarked(file))
    .flatMap((file) =>
      found(file, (node) => {
        const length = /Function/.test(node.type) && !node.type.startsWith('TS') ? parametersOf(node).length : 0;
        return length > MOST_PARAMETERS ? `a list of ${length} parameters; the wall is ${MOST_PARAMETERS}` : undefined;
      }),
    );

const parametersOf = (node: Node): readonly Node[] => {
  const params = node['params'] as readonly Node[] | { readonly items: readonly Node[] } | undefined;
  return params === undefined ? [] : 'items' in params ? params.items : params;
};

/** Interfaces and types of objects with more fields. */
export const wideObjects = (files: readonly SourceFile[]): readonly Untidy[] =>
  files.flatMap((file) =>
    found(file, (node) => {
      const fields = node.type === 'TSInterfaceBody' ? node['body'] : node.type === 'TSTypeLiteral' ? node['members'] : [];
      const { length } = fields as readonly Node[];
      return length > MOST_FIELDS ? `an object of ${length} fields; the wall is ${MOST_FIELDS}` : undefined;
    }),
  );

const found = (file: SourceFile, fault: (node: Node) => string | undefined): readonly Untidy[] => {
  const untidy: Untidy[] = [];
  walk(treeOf(file), (node) => {
    const what = fault(node);
    if (what !== undefined) untidy.push({ file: file.path, line: lineAt(file.text, node.start), what });
  });
  return untidy;
};
