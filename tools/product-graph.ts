/**
 * What of our code the product runs: the imports followed name by name from where command line, server and page begin. A file that is
 * loaded is not enough: a function in it that nobody in the product names is not of the product.
 */
import { isTest, type Node, resolved, type SourceFile, treeOf } from './source-files.ts';

/** Where the product begins: what the build makes an entry of, and the page. Workers are found by their URL. */
export const BEGINNINGS: readonly string[] = [
  'src/cli/main.ts',
  'src/server/main.ts',
  'src/server/paper/paper-worker.ts',
  'src/app/main.tsx',
];

/** A name that a module declares or hands on: 'src/plan/plan.ts#planOf'; with '*' all that it exports. */
export type Name = string;

/** A module taken apart: what each name at its top level mentions. */
export interface Taken {
  readonly path: string;
  /** Names declared here, and the names of this module that each mentions; '' is what runs when it is loaded. */
  readonly declared: ReadonlyMap<string, ReadonlySet<string>>;
  /** Local name to what it stands for: 'src/b.ts#x'. */
  readonly imported: ReadonlyMap<string, Name>;
  /** Name outside to name inside, or to the name of another module. */
  readonly handedOn: ReadonlyMap<string, Name>;
  readonly stars: readonly string[];
  /** Modules loaded whole at run time, by what mentions them. */
  readonly loaded: ReadonlyMap<string, readonly string[]>;
}

export const nameOf = (path: string, name: string): Name => `${path}#${name}`;
const parted = (name: Name): readonly [path: string, name: string] => {
  const at = name.lastIndexOf('#');
  return [name.slice(0, at), name.slice(at + 1)];
};

/** Every name of src/ that the product reaches from its beginnings. */
export const productNames = (files: readonly SourceFile[], beginnings = BEGINNINGS): ReadonlySet<Name> => {
  const modules = new Map(files.filter((f) => !isTest(f.path)).map((f) => [f.path, takeApart(f)]));
  return reachedFrom(
    modules,
    beginnings.map((path) => nameOf(path, '*')),
  );
};

/** All names that these names lead to, themselves with them; modules that are not among `modules` lead nowhere. */
export const reachedFrom = (modules: ReadonlyMap<string, Taken>, first: readonly Name[]): ReadonlySet<Name> => {
  const reached = new Set<Name>();
  const waiting = [...first];
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    if (reached.has(name)) continue;
    reached.add(name);
    waiting.push(...leadsTo(modules, name));
  }
  return reached;
};

const leadsTo = (modules: ReadonlyMap<string, Taken>, whole: Name): readonly Name[] => {
  const [path, name] = parted(whole);
  const module = modules.get(path);
  if (module === undefined) return [];
  const runs = name === '' ? [] : [nameOf(path, '')];
  if (name === '*')
    return [...runs, ...[...module.declared.keys(), ...module.handedOn.keys()].map((n) => nameOf(path, n)), ...starred(module, '*')];
  const handed = module.handedOn.get(name);
  if (handed !== undefined && handed !== whole) return [...runs, handed];
  const mentions = module.declared.get(name);
  if (mentions === undefined) return name === '' ? [] : [...runs, ...starred(module, name)];
  const there = [...mentions].flatMap((m) => module.imported.get(m) ?? (module.declared.has(m) ? nameOf(path, m) : []));
  return [...runs, ...there, ...(module.loaded.get(name) ?? []).map((p) => nameOf(p, '*'))];
};

const starred = (module: Taken, name: string): readonly Name[] => module.stars.map((path) => nameOf(path, name));

export const takeApart = (file: SourceFile): Taken => {
  const { path } = file;
  const declared = new Map<string, Set<string>>([['', new Set()]]);
  const [imported, handedOn, loaded] = [new Map<string, Name>(), new Map<string, Name>(), new Map<string, string[]>()];
  const stars: string[] = [];
  const spaces = new Map<string, string>();
  const run = (name: string, node: Node): void => {
    const found = mentionsIn(node, path, spaces);
    declared.set(name, new Set([...(declared.get(name) ?? []), ...found.names]));
    loaded.set(name, [...(loaded.get(name) ?? []), ...found.modules]);
    for (const member of found.members)
      imported.set(member, nameOf(spaces.get(member.split('.')[0] ?? '') ?? '', member.split('.')[1] ?? '*'));
  };
  const body = (treeOf(file)['body'] as readonly Node[]).filter((n) => n['importKind'] !== 'type' && n['exportKind'] !== 'type');
  for (const node of body)
    if (node.type === 'ImportDeclaration') takeImport(node, path, imported, spaces, (from) => declared.get('')?.add(from));
  for (const node of body) {
    if (node.type === 'ImportDeclaration') continue;
    if (node.type === 'ExportAllDeclaration') stars.push(resolved(path, textOf(node['source'] as Node)));
    else if (node['source'] !== null && node['source'] !== undefined && node.type === 'ExportNamedDeclaration')
      takeHandedOn(node, path, handedOn);
    else takeDeclared(node, path, handedOn, run);
  }
  return { path, declared, imported, handedOn, stars, loaded };
};

const textOf = (node: Node): string => String(node['value'] ?? node['name']);

const takeImport = (
  node: Node,
  path: string,
  imported: Map<string, Name>,
  spaces: Map<string, string>,
  runs: (local: string) => void,
): void => {
  const from = resolved(path, textOf(node['source'] as Node));
  const specifiers = node['specifiers'] as readonly Node[];
  // Loading a module runs it.
  imported.set(`import ${from}`, nameOf(from, ''));
  runs(`import ${from}`);
  for (const s of specifiers) {
    if (s['importKind'] === 'type') continue;
    const local = textOf(s['local'] as Node);
    if (s.type === 'ImportNamespaceSpecifier') spaces.set(local, from);
    imported.set(
      local,
      nameOf(from, s.type === 'ImportSpecifier' ? textOf(s['imported'] as Node) : s.type === 'ImportDefaultSpecifier' ? 'default' : '*'),
    );
  }
};

const takeHandedOn = (node: Node, path: string, handedOn: Map<string, Name>): void => {
  const from = resolved(path, textOf(node['source'] as Node));
  for (const s of node['specifiers'] as readonly Node[])
    if (s['exportKind'] !== 'type') handedOn.set(textOf(s['exported'] as Node), nameOf(from, textOf(s['local'] as Node)));
};

const takeDeclared = (node: Node, path: string, handedOn: Map<string, Name>, run: (name: string, node: Node) => void): void => {
  if (node.type === 'ExportDefaultDeclaration') {
    run('default', node['declaration'] as Node);
    return;
  }
  const declaration = node.type === 'ExportNamedDeclaration' ? (node['declaration'] as Node | null) : node;
  if (declaration === null) {
    for (const s of node['specifiers'] as readonly Node[])
      handedOn.set(textOf(s['exported'] as Node), nameOf(path, textOf(s['local'] as Node)));
  } else if (declaration.type === 'VariableDeclaration') {
    for (const one of declaration['declarations'] as readonly Node[]) for (const name of boundBy(one['id'] as Node)) run(name, one);
  } else if (/^(Function|Class)Declaration$/.test(declaration.type)) {
    run(textOf(declaration['id'] as Node), declaration);
  } else if (!declaration.type.startsWith('TS')) run('', declaration);
};

/** Names that a pattern binds. */
const boundBy = (pattern: Node): readonly string[] => {
  if (pattern.type === 'Identifier') return [textOf(pattern)];
  const inner = (pattern['elements'] ?? (pattern['properties'] as readonly Node[] | undefined)?.map((p) => p['value'] ?? p['argument'])) as
    | readonly (Node | null)[]
    | undefined;
  return (inner ?? [pattern['left'] ?? pattern['argument']]).flatMap((p) => (p === null || p === undefined ? [] : boundBy(p as Node)));
};

interface Mentions {
  readonly names: ReadonlySet<string>;
  /** 'model.rateScale' of a module imported whole. */
  readonly members: ReadonlySet<string>;
  readonly modules: readonly string[];
}

/** A name is taken for mentioned also where an inner one hides it: rather too much than too little counts as the product. */
export const mentionsIn = (node: Node, path: string, spaces: ReadonlyMap<string, string>): Mentions => {
  const [names, members, modules] = [new Set<string>(), new Set<string>(), [] as string[]];
  const visit = (at: Node): void => {
    if (at.type.startsWith('TS') && !/^TS(As|Satisfies|NonNull)Expression$/.test(at.type)) return;
    const whole = wholeModule(at);
    if (whole !== undefined) modules.push(resolved(path, whole));
    if (at.type === 'Identifier' || at.type === 'JSXIdentifier') names.add(textOf(at));
    const member = memberOf(at, spaces);
    if (member !== undefined) {
      names.add(member);
      members.add(member);
      return;
    }
    for (const [key, value] of Object.entries(at)) {
      if (isNameOnly(at, key)) continue;
      for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) visit(child);
    }
  };
  visit(node);
  return { names, members, modules };
};

/** The module in import('./x.ts') or new URL('./x.ts', import.meta.url). */
const wholeModule = (node: Node): string | undefined => {
  const given =
    node.type === 'ImportExpression'
      ? (node['source'] as Node)
      : node.type === 'NewExpression'
        ? (node['arguments'] as readonly Node[])[0]
        : undefined;
  const text = given?.type === 'Literal' ? String(given['value']) : '';
  return /^\.{1,2}\/.*\.tsx?$/.test(text) ? text : undefined;
};

const memberOf = (node: Node, spaces: ReadonlyMap<string, string>): string | undefined => {
  if (node.type !== 'MemberExpression' || node['computed'] === true) return undefined;
  const object = node['object'] as Node;
  return object.type === 'Identifier' && spaces.has(textOf(object)) ? `${textOf(object)}.${textOf(node['property'] as Node)}` : undefined;
};

/** The b of a.b and of { b: 1 } names no variable; that of { b } does, by its value. */
const isNameOnly = (node: Node, key: string): boolean =>
  node['computed'] !== true &&
  ((node.type === 'MemberExpression' && key === 'property') ||
    (/^(Property|PropertyDefinition|MethodDefinition)$/.test(node.type) && key === 'key'));

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
