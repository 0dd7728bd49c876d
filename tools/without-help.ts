/** Takes the help texts of schemas out of a bundle: `.describe('Height of the block, mm')` changes nothing that a schema lets through. */

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
}

interface Call extends Node {
  readonly callee: Node & { readonly object?: Node; readonly property?: Node & { readonly name?: string } };
  readonly arguments: readonly (Node & { readonly value?: unknown; readonly expressions?: readonly Node[] })[];
}

/** `tree` is the code as parsed by the bundler. A help text is taken out only where it stands as it is: what has to be worked out stays. */
export const withoutHelp = (code: string, tree: Node): string => {
  const calls = helpCalls(tree).toSorted((a, b) => b.end - a.end);
  return calls.reduce((left, { callee, end }) => left.slice(0, (callee.object as Node).end) + left.slice(end), code);
};

const helpCalls = (node: Node): readonly Call[] => {
  const inside = Object.values(node).flat().filter(isNode).flatMap(helpCalls);
  return node.type === 'CallExpression' && isHelp(node as Call) ? [node as Call, ...inside] : inside;
};

const isNode = (part: unknown): part is Node => typeof part === 'object' && part !== null && 'type' in part;

const isHelp = ({ callee, arguments: given }: Call): boolean => {
  const [text, ...more] = given;
  if (callee.property?.name !== 'describe' || text === undefined || more.length > 0) return false;
  return typeof text.value === 'string' || (text.type === 'TemplateLiteral' && text.expressions?.length === 0);
};
