/** The gate of imports: holds every module of src/ against the rules, and finds circles of files and of folders, types included. */
import { builtinModules } from 'node:module';
import { posix } from 'node:path';
import { RULES, type Rule } from './import-rules.ts';
import { importsOf, isTest, resolved, type SourceFile } from './source-files.ts';

export interface Trespass {
  /** What was done, the same text for the same fault: 'src/a.ts -> src/b.ts', or 'circle of files: src/a.ts'. */
  readonly fault: string;
  readonly why: string;
}

export interface GateReport {
  /** How many modules the gate read; a gate that read nothing has not passed. */
  readonly modules: number;
  readonly imports: number;
  readonly trespasses: readonly Trespass[];
}

interface Arrow {
  readonly file: string;
  readonly name: string;
  readonly target: string;
}

/** Holds every module of src/ against the rules. Tests, checks and benches may import anything. */
export const importGate = (files: readonly SourceFile[], rules: readonly Rule[] = RULES): GateReport => {
  const modules = files.filter((f) => f.path.startsWith('src/') && !isTest(f.path) && !f.path.endsWith('.d.ts'));
  const arrows = modules.flatMap((f) =>
    [...new Set(importsOf(f))].map((name): Arrow => ({ file: f.path, name, target: resolved(f.path, name) })),
  );
  const inside = arrows.filter((a) => a.target.startsWith('src/'));
  const trespasses = [
    ...arrows.flatMap((arrow) => trespass(arrow, rules)),
    ...circle('files', circles(inside.map((a) => [a.file, a.target]))),
    ...circle('folders', circles(inside.map((a) => [folderOf(a.file), folderOf(a.target)]))),
  ];
  return { modules: modules.length, imports: arrows.length, trespasses };
};

/** Rules whose folder holds no module: they guard nothing. */
export const emptyRules = (files: readonly SourceFile[], rules: readonly Rule[] = RULES): readonly string[] => {
  const folders = new Set(files.filter((f) => !isTest(f.path)).map((f) => folderOf(f.path)));
  return rules.map((r) => r.folder).filter((folder) => !folders.has(folder));
};

/** Folders that the rules themselves would let import each other in a circle. */
export const circlesOfRules = (rules: readonly Rule[] = RULES): readonly (readonly string[])[] =>
  circles(rules.flatMap((r) => (r.entry ? [] : allowed(r, rules).map((target): readonly [string, string] => [r.folder, target]))));

const trespass = ({ file, name, target }: Arrow, rules: readonly Rule[]): readonly Trespass[] => {
  const fault = `${file} -> ${target}`;
  const rule = rules.find((r) => r.folder === folderOf(file));
  if (rule === undefined) return [{ fault, why: 'this folder has no rule yet: write one and its reason in tools/import-rules.ts' }];
  if (!target.startsWith('src/')) return packages(rule, rules).includes(packageOf(name)) ? [] : [{ fault, why: rule.why }];
  if (isTest(target)) return [{ fault, why: 'the product does not import its tests' }];
  const folder = folderOf(target);
  if (folder.startsWith(`${rule.folder}/`))
    return rule.entry ? [] : [{ fault, why: 'a folder never imports from its own parts: its top level is the ground they stand on' }];
  return folder === rule.folder || allowed(rule, rules).includes(folder) ? [] : [{ fault, why: rule.why }];
};

/** What a folder may import beside itself: its own row, the rows of the folders around it, and those folders. */
const allowed = (rule: Rule, rules: readonly Rule[]): readonly string[] => {
  const around = rulesAround(rule, rules);
  const grounds = around.filter((r) => !r.entry).map((r) => r.folder);
  const forAll = rules.filter((r) => r.forAll).map((r) => r.folder);
  return [...forAll, ...rule.may, ...around.flatMap((r) => r.may), ...grounds].filter((folder) => folder !== rule.folder);
};

const packages = (rule: Rule, rules: readonly Rule[]): readonly string[] =>
  [rule, ...rulesAround(rule, rules)].flatMap((r) => r.packages ?? []);

const rulesAround = (rule: Rule, rules: readonly Rule[]): readonly Rule[] => rules.filter((r) => rule.folder.startsWith(`${r.folder}/`));

const folderOf = (path: string): string => posix.dirname(path);

/** 'zod' for 'zod/mini', '@scope/name' for its parts, 'node' for everything that comes with Node. */
const packageOf = (name: string): string => {
  if (name.startsWith('node:') || builtinModules.includes(name)) return 'node';
  const parts = name.split('/');
  return name.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] as string);
};

const circle = (of: 'files' | 'folders', found: readonly (readonly string[])[]): readonly Trespass[] =>
  found.flatMap((members) =>
    members.map((member) => ({
      fault: `circle of ${of}: ${member}`,
      why: `these ${of} import each other in a circle, so that none can be read without the others: ${members.join(', ')}`,
    })),
  );

/**
 * The circles of a graph: its strongly connected parts of more than one node, each sorted. By Tarjan's way: in a walk that goes deeper first,
 * a node that reaches none that was begun before it and is still open closes a part. An arrow to itself is no circle.
 */
export const circles = (arrows: readonly (readonly [from: string, to: string])[]): readonly (readonly string[])[] => {
  const next = new Map<string, string[]>();
  for (const [from, to] of arrows) next.set(from, [...(next.get(from) ?? []), to]);
  const begun = new Map<string, number>();
  const open: string[] = [];
  const found: (readonly string[])[] = [];
  /** Walks from a node; gives the earliest open node that can be reached from it. */
  const walkFrom = (node: string): number => {
    const mine = begun.size;
    begun.set(node, mine);
    open.push(node);
    let earliest = mine;
    for (const to of next.get(node) ?? []) {
      if (!begun.has(to)) earliest = Math.min(earliest, walkFrom(to));
      else if (open.includes(to)) earliest = Math.min(earliest, begun.get(to) as number);
    }
    if (earliest === mine) found.push(open.splice(open.indexOf(node)).sort());
    return earliest;
  };
  for (const node of [...next.keys()].sort()) if (!begun.has(node)) walkFrom(node);
  return found.filter((members) => members.length > 1);
};
