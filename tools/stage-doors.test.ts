/** Only the pipeline opens the doors of the stages, each door is there, and whoever opens one beside it is found however he does it. */
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';
import { bricked, DOORS, strays } from './stage-doors.ts';

const house = sourceFiles('.', ['src']);

describe('the doors of the stages', () => {
  it('are opened by the pipeline alone', () => {
    expect(strays(house)).toEqual([]);
  });

  it('are all there, and each is opened by whoever may', () => {
    expect(bricked(house)).toEqual([]);
    const [door] = DOORS;
    expect(bricked(house.filter((f) => f.path !== door?.file))).toContain(`${door?.file} has no ${door?.name}`);
    expect(bricked(house, [{ name: 'planCut', file: 'src/plan/cut/plan-cut.ts', by: ['src/app/main.tsx'] }])).toEqual([
      'src/app/main.tsx does not open planCut',
    ]);
  });

  it.each(DOORS)('a route that runs $name by itself is found', ({ name, file }) => {
    const path = 'src/app/work/planted.ts';
    const from = posix.relative('src/app/work', file);
    for (const text of [
      `import { ${name} } from '${from}';`,
      `import { ${name} as other } from '${from}';`,
      `export { ${name} } from '${from}';`,
      `export * from '${from}';`,
      `import * as stage from '${from}';`,
      `const stage = await import('${from}');`,
    ])
      expect(strays([{ path, text }]), text).toContain(`${path} opens ${name}`);
    expect(strays([{ path, text: `import { somethingElse } from '${from}';` }])).toEqual([]);
  });
});
