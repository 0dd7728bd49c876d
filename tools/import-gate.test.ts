/** The gate must let the house pass, must have read it, and must report every planted trespass. */
import { describe, expect, it } from 'vitest';
import { importGate, ROOMS } from './import-gate.ts';
import { sourceFiles } from './source-files.ts';

/** A canary: files that break one rule each. A gate that stays silent on any of them is broken. */
const PLANTED: readonly (readonly [path: string, text: string])[] = [
  ['src/geometry/planted.ts', "import { x } from '../plan/plan.ts';"],
  ['src/geometry/planted.ts', "import { x } from './offset/offset.ts';"],
  ['src/quantity/planted.ts', "import { x } from '../geometry/segment.ts';"],
  ['src/proof/planted.ts', "import type { X } from '../plan/plan.ts';"],
  ['src/proof/planted.ts', "import { x } from '../geometry/offset/offset.ts';"],
  ['src/proof/planted.ts', "import { x } from '../nc/write/write.ts';"],
  ['src/nc/read/planted.ts', "export { x } from '../write/write.ts';"],
  ['src/nc/read/planted.ts', "const x = await import('../../plan/plan.ts');"],
  ['src/plan/planted.ts', "import { x } from 'clipper2-ts';"],
  ['src/physics/planted.ts', "import { readFileSync } from 'node:fs';"],
  ['src/drawing/planted.ts', "import fs from 'fs';"],
  ['src/job/planted.ts', "import { x } from '../cli/main.ts';"],
  ['src/cli/planted.ts', "import { x } from '../geometry/area.ts';"],
  ['src/unheard-of/planted.ts', "import { x } from '../quantity/figure.ts';"],
  ['src/plan/planted.ts', "import { x } from '../physics/model.checks.ts';"],
];

describe('the import gate', () => {
  it('lets the house pass, having read it', () => {
    const report = importGate(sourceFiles('.', ['src']));
    expect(report.trespasses).toEqual([]);
    expect(report.modules).toBeGreaterThan(100);
    expect(report.imports).toBeGreaterThan(report.modules);
  });

  it.each(PLANTED)('reports what is planted in %s: %s', (path, text) => {
    const report = importGate([{ path, text }]);
    expect(report.trespasses).toHaveLength(1);
    expect(report.trespasses[0]?.why).not.toBe('');
  });

  it('gives a reason for every room', () => {
    for (const room of ROOMS) expect(room.why.length).toBeGreaterThan(20);
  });
});
