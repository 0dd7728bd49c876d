/** Takes the help texts of schemas out of a bundle: `.describe('Height of the block, mm')` and `.meta({ description, unit })` change nothing that a schema lets through. */

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
}

interface Call extends Node {
  readonly callee: Node & { readonly object?: Node; readonly property?: Node & { readonly name?: string } };
  readonly arguments: readonly (Literal & { readonly properties?: readonly Property[] })[];
}

interface Literal extends Node {
  readonly value?: unknown;
  readonly expressions?: readonly Node[];
}

interface Property extends Node {
  readonly key?: Node & { readonly name?: string };
  readonly value?: unknown;
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
  const [told, ...more] = given;
  if (told === undefined || more.length > 0) return false;
  if (callee.property?.name === 'meta') return told.type === 'ObjectExpression' && told.properties?.every(isTold) === true;
  return callee.property?.name === 'describe' && isPlain(told);
};

/** What a key is and in which unit it is given: nothing that a schema lets through depends on either. */
const isTold = ({ key, value }: Property): boolean =>
  (key?.name === 'description' || key?.name === 'unit') && isNode(value) && isPlain(value);

const isPlain = (text: Literal): boolean =>
  typeof text.value === 'string' || (text.type === 'TemplateLiteral' && text.expressions?.length === 0);
