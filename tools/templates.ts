/** Lists every sentence of the house with its key and holes, for whoever writes it in another language; says where one has no key. */
import { describedKeys } from './described-keys.ts';
import { lineAt, type Node, type SourceFile, sourceFiles, treeOf } from './source-files.ts';

export interface ListedTemplate {
  /** 'open-chain', 'arc-incomplete/no-centre.remedy', 'joining.twice'. */
  readonly key: string;
  /** '{chain} ends on a closed loop at {at}.' */
  readonly template: string;
  readonly file: string;
  readonly line: number;
}

export interface Listing {
  readonly templates: readonly ListedTemplate[];
  /** Sentences without a key, holes without a name, keys that stand for two sentences. */
  readonly faults: readonly { readonly file: string; readonly line: number; readonly what: string }[];
}

export const templatesIn = (files: readonly SourceFile[]): Listing => {
  const templates: ListedTemplate[] = [];
  const faults: { file: string; line: number; what: string }[] = [];
  for (const file of files) {
    // `say` of another kind, as on a command line, is no tag and is not met here.
    if (!file.text.includes('say')) continue;
    walkWithin(treeOf(file), [], (node, around) => {
      if (!isSay(node)) return;
      const at = { file: file.path, line: lineAt(file.text, node.start) };
      const template = templateOf(node);
      const key = keyOf(node, around);
      if (template === undefined) faults.push({ ...at, what: 'a hole is not written as one object with the name of the hole' });
      else if (key === undefined) faults.push({ ...at, what: `no key: '${template}'` });
      else templates.push({ key, template, ...at });
    });
  }
  return { templates, faults: [...faults, ...clashes(templates)] };
};

const clashes = (templates: readonly ListedTemplate[]): Listing['faults'] => {
  const first = new Map<string, ListedTemplate>();
  return templates.flatMap((t) => {
    const before = first.get(t.key);
    first.set(t.key, before ?? t);
    if (before === undefined || before.template === t.template) return [];
    return [{ file: t.file, line: t.line, what: `the key '${t.key}' stands for another sentence in ${before.file}:${before.line}` }];
  });
};

const walkWithin = (node: Node, around: readonly Node[], visit: (node: Node, around: readonly Node[]) => void): void => {
  visit(node, around);
  const inside = [node, ...around];
  for (const value of Object.values(node))
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) walkWithin(child, inside, visit);
};

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

const isSay = (node: Node): boolean => {
  if (node.type !== 'TaggedTemplateExpression') return false;
  const tag = node['tag'] as Node;
  return tag['name'] === 'say' || (tag.type === 'CallExpression' && (tag['callee'] as Node)['name'] === 'say');
};

/** Undefined where a hole is no object literal of one name. */
const templateOf = (node: Node): string | undefined => {
  const { quasis, expressions } = node['quasi'] as Node & { quasis: Node[]; expressions: Node[] };
  const names = expressions.map((e) => {
    const [only, ...more] = e.type === 'ObjectExpression' ? (e['properties'] as Node[]) : [];
    return only?.type === 'Property' && more.length === 0 ? nameOf(only['key'] as Node) : undefined;
  });
  if (names.some((n) => n === undefined)) return undefined;
  return quasis.map((q, i) => `${(q['value'] as { cooked: string }).cooked}${names[i] === undefined ? '' : `{${names[i]}}`}`).join('');
};

const nameOf = (key: Node): string | undefined => (key['name'] ?? key['value']) as string | undefined;

const textOfLiteral = (node: Node | undefined): string | undefined =>
  node?.type === 'Literal' && typeof node['value'] === 'string' ? node['value'] : undefined;

/** Given at the tag, or by the table of phrases or the finding that it stands in. */
const keyOf = (node: Node, around: readonly Node[]): string | undefined => {
  const tag = node['tag'] as Node;
  if (tag.type === 'CallExpression') return textOfLiteral((tag['arguments'] as Node[])[0]);
  const property = around.filter((n) => n.type === 'Property').map((n) => nameOf(n['key'] as Node) ?? '');
  const call = around.find((n) => n.type === 'CallExpression' && textOfLiteral((n['arguments'] as Node[])[0]) !== undefined);
  if (call === undefined) return undefined;
  const key = textOfLiteral((call['arguments'] as Node[])[0]) as string;
  if ((call['callee'] as Node)['name'] === 'phrases') return `${key}.${entryIn(call, around)}`;
  const [beside] = property;
  return beside === 'done' || beside === 'remedy' ? `${key}.${beside}` : key;
};

/** The outermost property between the table and the sentence. */
const entryIn = (call: Node, around: readonly Node[]): string => {
  const within = around.slice(0, around.indexOf(call)).filter((n) => n.type === 'Property');
  return nameOf((within.at(-1) as Node | undefined)?.['key'] as Node) ?? '';
};

if (process.argv[1]?.endsWith('templates.js') === true) {
  const { templates, faults } = templatesIn(sourceFiles('.', ['src']).filter((f) => !/\.(test|fixture)\.tsx?$/.test(f.path)));
  const all = [...templates, ...describedKeys()];
  process.stdout.write(`${JSON.stringify(Object.fromEntries(all.map((t) => [t.key, t.template])), null, 2)}\n`);
  for (const { file, line, what } of faults) process.stderr.write(`${file}:${line}: ${what}\n`);
  process.exitCode = faults.length === 0 ? 0 : 1;
}
