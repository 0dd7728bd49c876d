/** The graph of names sees what the product runs, and takes nothing for run that is only loaded. */
import { describe, expect, it } from 'vitest';
import { productNames } from './product-graph.ts';
import { codeOfRows } from './row-code.ts';

const files = [
  {
    path: 'src/cli/main.ts',
    text: `import { used, type Kind } from '../a.ts';
      import * as whole from '../b.ts';
      export { handed } from '../c.ts';
      const thread = new Worker(new URL('../work.ts', import.meta.url));
      used({ key: whole.member });`,
  },
  {
    path: 'src/a.ts',
    text: `import { inner } from './d.ts';
      export const used = () => local();
      const local = () => inner.unused;
      export const unused = () => lost();
      const lost = () => 1;`,
  },
  { path: 'src/b.ts', text: 'export const member = 1; export const other = 2;' },
  { path: 'src/c.ts', text: 'export const handed = 1; export const kept = 2;' },
  { path: 'src/d.ts', text: "export const inner = 1; export const key = 2; import('./later.ts');" },
  { path: 'src/later.ts', text: 'export default function late() {}' },
  { path: 'src/work.ts', text: 'const [job] = [1]; run(job);' },
  { path: 'src/loose.ts', text: "import { used } from './a.ts'; export const loose = used;" },
];

const ours = (graph: ReadonlySet<string>): readonly string[] => [...graph].filter((name) => !/#(\*)?$/.test(name)).sort();

describe('the graph of names', () => {
  it('follows imports, whole modules, what is handed on, workers and what is loaded later, and nothing else', () => {
    expect(ours(productNames(files, ['src/cli/main.ts']))).toEqual([
      'src/a.ts#local',
      'src/a.ts#used',
      'src/b.ts#member',
      'src/c.ts#handed',
      'src/cli/main.ts#handed',
      'src/cli/main.ts#thread',
      'src/d.ts#inner',
      'src/later.ts#default',
      'src/work.ts#job',
    ]);
  });

  it('finds what a row runs through the fixtures of its check file', () => {
    const table = {
      path: 'src/a.checks.ts',
      text: `import { asked } from './a.fixture.ts'; import { unused } from './a.ts';
        const two = () => asked(2);
        export const checks = [{ id: 'A', ours: () => two() }, { id: 'B', ours: () => unused() }, { id: 'C', ours: () => 1 }];`,
    };
    const fixture = { path: 'src/a.fixture.ts', text: "import { used } from './a.ts'; export const asked = (n) => used(n);" };
    const row = (id: string, ours: () => number) => ({ id, ours }) as never;
    const [two, unused] = [() => 2, () => 1];
    const rows = [row('A', () => two()), row('B', () => unused()), row('C', () => 1)];
    expect([...codeOfRows([...files, table, fixture], [{ file: table.path, rows }])]).toEqual([
      ['A', ['src/a.ts#used']],
      ['B', ['src/a.ts#unused']],
      ['C', []],
    ]);
  });
});
