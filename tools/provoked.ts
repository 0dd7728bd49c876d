/** Which findings no test provokes: their codes stand in no test as what is expected. */
import { type Node, type SourceFile, treeOf } from './source-files.ts';

/** The codes that occur in none of the tests as a text of their own. A text that must not come, or one that a test states itself, does not count. */
export const unprovoked = (codes: readonly string[], tests: readonly SourceFile[]): readonly string[] => {
  const expected = new Set(tests.flatMap((test) => texts(treeOf(test))));
  return codes.filter((code) => !expected.has(code));
};

/** All texts of a tree, but those behind `.not` and those with which a finding is made by hand. */
const texts = (node: Node): readonly string[] => {
  if (node.type === 'Literal' && typeof node['value'] === 'string') return [node['value']];
  if (node.type === 'CallExpression' && (isDenied(node['callee'] as Node) || isFind(node['callee'] as Node))) return [];
  return Object.values(node).flatMap((value) =>
    (Array.isArray(value) ? value : [value]).flatMap((child) => (isNode(child) ? texts(child) : [])),
  );
};

const isDenied = (callee: Node): boolean => {
  if (callee.type !== 'MemberExpression') return false;
  return nameOf(callee['property'] as Node) === 'not' || isDenied(callee['object'] as Node);
};

/** `find('open-chain', …)` of a catalogue; `list.find((f) => …)` is another. */
const isFind = (callee: Node): boolean => callee.type === 'Identifier' && nameOf(callee) === 'find';

const nameOf = (node: Node): unknown => node['name'];

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
