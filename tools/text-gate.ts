/** Where the source writes numbers out or reads sentences outside of the one place for it: `src/text` prints, and nobody reads what is said. */
import { lineAt, type Node, type SourceFile, treeOf } from './source-files.ts';
import type { Untidy } from './tidy.ts';

/** A file or folder that may, and why. */
export interface Exempt {
  readonly path: string;
  readonly why: string;
}

/** Who writes numbers out beside the printer. */
export const NUMBERS: readonly Exempt[] = [
  { path: 'src/text/', why: 'it prints for readers' },
  { path: 'src/drawing/write/', why: 'it writes drawing files' },
  { path: 'src/picture/strokes.ts', why: 'it writes the paths of an SVG picture' },
  { path: 'src/proof/picture/picture-frame.ts', why: 'it writes the coordinates of an SVG picture' },
  { path: 'src/app/chart/', why: 'it writes the paths of SVG charts' },
  { path: 'src/nest/lay/rows.ts', why: 'a key of shapes that are alike, never shown' },
  { path: 'src/plan/same-shape.ts', why: 'a key of contours that are alike, never shown' },
  { path: 'src/plan/start/hole-findings.ts', why: 'a key of holes at one place, never shown' },
  { path: 'src/physics/wire/wires.ts', why: 'the keys and names of the wires that are made' },
];

/** Who reads a field of such a name that holds no sentence. */
export const SENTENCES: readonly Exempt[] = [
  { path: 'src/text/', why: 'it is the inside of what is said' },
  { path: 'src/nc/read/', why: 'it reads the comments of programs, by others too' },
  { path: 'src/proof/block-name.ts', why: 'the text of a block is program text' },
  { path: 'src/documents/sheet/setup-sheet.ts', why: 'it counts the lines of the program' },
  { path: 'src/app/handout/program-text.tsx', why: 'it shows the program line by line' },
  { path: 'src/shapes/lettering/lettering-report.ts', why: 'its text are the letters that are cut' },
  { path: 'src/app/fields/use-editor.ts', why: 'its text is what somebody types' },
];

const FORMATS: ReadonlySet<string> = new Set([
  'toFixed',
  'toPrecision',
  'toExponential',
  'toLocaleString',
  'toLocaleDateString',
  'toLocaleTimeString',
]);

/** `Number(x.toFixed(2))` rounds and writes nothing, unless its value is written out where it stands. */
export const writtenNumbers = (files: readonly SourceFile[], exempt: readonly Exempt[] = NUMBERS): readonly Untidy[] =>
  files.filter(notIn(exempt)).flatMap((file) =>
    found(file, (node, around) => {
      if (node.type === 'Identifier' && node['name'] === 'Intl') return isMember(node, around) ? undefined : "'Intl' writes a number out";
      const method = calledOn(node)?.method;
      if (method === undefined || !FORMATS.has(method) || rounds(around)) return undefined;
      return `'${method}' writes a number out`;
    }),
  );

const READS: ReadonlySet<string> = new Set(
  'replace replaceAll match matchAll split slice substring substr search startsWith endsWith includes indexOf lastIndexOf toLowerCase toUpperCase trim charAt'.split(
    ' ',
  ),
);
const SAID: ReadonlySet<string> = new Set(['text', 'sentence', 'comment', 'remedy', 'done']);
/** A variable called `text` may hold anything; these hold what is said. */
const SAID_ALONE: ReadonlySet<string> = new Set(['sentence', 'comment', 'remedy']);

/** String methods and regular expressions on what is said: a field called text, sentence, comment, remedy or done, or what is printed right there. */
export const readSentences = (files: readonly SourceFile[], exempt: readonly Exempt[] = SENTENCES): readonly Untidy[] =>
  files.filter(notIn(exempt)).flatMap((file) =>
    found(file, (node) => {
      const call = calledOn(node);
      if (call === undefined) return undefined;
      if (READS.has(call.method) && isSaid(call.on)) return `'${call.method}' reads a sentence`;
      const [given] = node['arguments'] as Node[];
      const isExpression = ['test', 'exec', 'match', 'replace', 'split'].includes(call.method);
      return isExpression && given !== undefined && isSaid(given) ? `'${call.method}' reads a sentence` : undefined;
    }),
  );

const isSaid = (given: Node): boolean => {
  const node = bare(given);
  if (node.type === 'Identifier') return SAID_ALONE.has(node['name'] as string);
  if (node.type === 'MemberExpression') return SAID.has(nameOf(node['property'] as Node));
  return node.type === 'CallExpression' && PRINTERS.has(nameOf(node['callee'] as Node));
};
const PRINTERS: ReadonlySet<string> = new Set(['print', 'printPlain', 'joined']);

/** `a?.b`, `a!`, `(a as B)` are a as well. */
const bare = (node: Node): Node =>
  ['ParenthesizedExpression', 'TSAsExpression', 'TSNonNullExpression', 'ChainExpression'].includes(node.type)
    ? bare(node['expression'] as Node)
    : node;

const calledOn = (node: Node): { readonly on: Node; readonly method: string } | undefined => {
  if (node.type !== 'CallExpression') return undefined;
  const callee = bare(node['callee'] as Node);
  if (callee.type !== 'MemberExpression') return undefined;
  return { on: callee['object'] as Node, method: nameOf(callee['property'] as Node) };
};

const nameOf = (node: Node): string => (node['name'] ?? node['value'] ?? '') as string;

/** The `Intl` of `x.Intl` is somebody's own. */
const isMember = (node: Node, [parent]: readonly Node[]): boolean =>
  parent?.type === 'MemberExpression' && bare(parent['property'] as Node) === node && parent['computed'] !== true;

const rounds = ([parent, grandparent]: readonly Node[]): boolean =>
  parent?.type === 'CallExpression' && nameOf(parent['callee'] as Node) === 'Number' && grandparent !== undefined && !writes(grandparent);

const writes = (node: Node): boolean =>
  node.type === 'TemplateLiteral' ||
  (node.type === 'CallExpression' && nameOf(node['callee'] as Node) === 'String') ||
  (node.type === 'MemberExpression' && nameOf(node['property'] as Node) === 'toString');

type Visit = (node: Node, around: readonly Node[]) => string | undefined;

/** Each node at which something is wrong; `around` are the nodes it stands in, the nearest first. */
const found = (file: SourceFile, visit: Visit): readonly Untidy[] => {
  const faults: Untidy[] = [];
  const go = (node: Node, around: readonly Node[]): void => {
    const what = visit(node, around);
    if (what !== undefined) faults.push({ file: file.path, line: lineAt(file.text, node.start), what });
    const within = [node, ...around];
    for (const value of Object.values(node))
      for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) go(child, within);
  };
  go(treeOf(file), []);
  return faults;
};

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

const notIn =
  (exempt: readonly Exempt[]) =>
  ({ path }: SourceFile): boolean =>
    !exempt.some((e) => path === e.path || (e.path.endsWith('/') && path.startsWith(e.path)));

/** Exemptions that nothing needs any more. */
export const idle = (
  files: readonly SourceFile[],
  exempt: readonly Exempt[],
  gate: (files: readonly SourceFile[], exempt: readonly Exempt[]) => readonly Untidy[],
): readonly string[] =>
  exempt
    .map((e) => e.path)
    .filter(
      (path) =>
        gate(
          files.filter((f) => !notIn([{ path, why: '' }])(f)),
          [],
        ).length === 0,
    );
