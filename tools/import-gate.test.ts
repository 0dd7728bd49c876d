/** The gate must let the house pass, must have read it, and must report every planted trespass. */
import { describe, expect, it } from 'vitest';
import { circles, circlesOfRules, emptyRules, importGate } from './import-gate.ts';
import { RULES } from './import-rules.ts';
import { type SourceFile, sourceFiles } from './source-files.ts';

/** A canary: files that break one rule each. A gate that stays silent on any of them is broken. */
const PLANTED: readonly (readonly [path: string, text: string])[] = [
  ['src/geometry/planted.ts', "import { x } from '../plan/plan.ts';"],
  ['src/geometry/make/planted.ts', "import { x } from '../offset/offset.ts';"],
  ['src/quantity/planted.ts', "import { x } from '../geometry/segment.ts';"],
  ['src/quantity/planted.ts', "import { x } from '../text/print/figure.ts';"],
  ['src/proof/planted.ts', "import type { X } from '../plan/plan.ts';"],
  ['src/proof/sweep/planted.ts', "import { x } from '../../geometry/offset/offset.ts';"],
  ['src/proof/sweep/planted.ts', "import { x } from '../../geometry/near/lookup.ts';"],
  ['src/proof/prove/planted.ts', "import { x } from '../../nc/write/write.ts';"],
  ['src/proof/sweep/planted.ts', "import type { X } from '../prove/judge.ts';"],
  ['src/nc/read/planted.ts', "export { x } from '../write/write.ts';"],
  ['src/nc/read/planted.ts', "const x = await import('../../plan/plan.ts');"],
  ['src/plan/planted.ts', "import { x } from 'clipper2-ts';"],
  ['src/plan/start/planted.ts', "import { x } from '../path/leads.ts';"],
  ['src/plan/lay/planted.ts', "import { x } from '../../physics/other-process/jet-edge.ts';"],
  ['src/physics/planted.ts', "import { readFileSync } from 'node:fs';"],
  ['src/drawing/read/planted.ts', "import fs from 'fs';"],
  ['src/drawing/dxf/planted.ts', "import { x } from '../svg/read-svg.ts';"],
  ['src/drawing/dxf/planted.ts', "import { x } from 'saxes';"],
  ['src/job/planted.ts', "import { x } from '../cli/main.ts';"],
  ['src/cli/planted.ts', "import { x } from '../geometry/area.ts';"],
  ['src/server/keep/planted.ts', "import { x } from '../serve.ts';"],
  ['src/app/chart/planted.ts', "import { x } from '../sheet/answer.tsx';"],
  ['src/unheard-of/planted.ts', "import { x } from '../quantity/figure.ts';"],
  ['src/plan/unheard-of/planted.ts', "import { x } from '../plan.ts';"],
  ['src/plan/planted.ts', "import { x } from './wire/choose-wire.ts';"],
  ['src/plan/cut/planted.ts', "import { x } from '../../physics/cut/model.checks.ts';"],
];

const CIRCLES: readonly (readonly [what: string, files: readonly SourceFile[], members: readonly string[]])[] = [
  [
    'two files, one by its types only',
    [
      { path: 'src/geometry/a.ts', text: "import { x } from './b.ts';" },
      { path: 'src/geometry/b.ts', text: "import type { X } from './a.ts';" },
    ],
    ['circle of files: src/geometry/a.ts', 'circle of files: src/geometry/b.ts'],
  ],
  [
    'three files, beside one that only looks on',
    [
      { path: 'src/geometry/a.ts', text: "import { x } from './b.ts';" },
      { path: 'src/geometry/b.ts', text: "export { x } from './c.ts';" },
      { path: 'src/geometry/c.ts', text: "const x = await import('./a.ts');" },
      { path: 'src/geometry/d.ts', text: "import { x } from './a.ts';" },
    ],
    ['a', 'b', 'c'].map((f) => `circle of files: src/geometry/${f}.ts`),
  ],
  [
    'two folders, whose files make no circle',
    [
      { path: 'src/app/state/a.ts', text: "import { x } from '../work/b.ts';" },
      { path: 'src/app/work/c.ts', text: "import type { X } from '../state/d.ts';" },
    ],
    ['circle of folders: src/app/state', 'circle of folders: src/app/work', 'src/app/work/c.ts -> src/app/state/d.ts'],
  ],
];

const house = sourceFiles('.', ['src']);

describe('the import gate', () => {
  it('lets the house pass, whole', () => {
    const report = importGate(house);
    expect(report.modules).toBeGreaterThan(800);
    expect(report.imports).toBeGreaterThan(3 * report.modules);
    expect(report.trespasses).toEqual([]);
  });

  it.each(PLANTED)('reports what is planted in %s: %s', (path, text) => {
    const report = importGate([{ path, text }]);
    expect(report.trespasses).toHaveLength(1);
    expect(report.trespasses[0]?.why).not.toBe('');
  });

  it.each(CIRCLES)('reports a circle of %s', (_, files, members) => {
    expect(
      importGate(files)
        .trespasses.map((t) => t.fault)
        .sort(),
    ).toEqual([...members].sort());
  });

  it('finds every circle of a graph apart, and none where there is none', () => {
    const arrows = ['ab', 'bc', 'ca', 'cd', 'de', 'ed', 'ef', 'gf', 'gg'].map((a): readonly [string, string] => [a.charAt(0), a.charAt(1)]);
    expect([...circles(arrows)].sort()).toEqual([
      ['a', 'b', 'c'],
      ['d', 'e'],
    ]);
    expect(circles([...'abc'].map((a): readonly [string, string] => [a, 'd']))).toEqual([]);
  });

  it('has a rule for every folder, a folder for every rule, and a reason for each', () => {
    expect(emptyRules(house)).toEqual([]);
    expect(emptyRules(house, [{ folder: 'src/unheard-of', may: [], why: 'planted' }])).toEqual(['src/unheard-of']);
    expect(new Set(RULES.map((r) => r.folder)).size).toBe(RULES.length);
    for (const rule of RULES) expect(rule.why.length, rule.folder).toBeGreaterThan(20);
  });

  it('has rules that allow no circle of folders themselves', () => {
    expect(circlesOfRules()).toEqual([]);
    const planted = [
      { folder: 'src/a', may: ['src/b'], why: 'planted' },
      { folder: 'src/b', may: ['src/a'], why: 'planted' },
    ];
    expect(circlesOfRules(planted)).toEqual([['src/a', 'src/b']]);
  });
});
