/** Nobody is handed more than he needs, and the tool sees who is. */
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';
import { longLists, wideObjects } from './tidy-width.ts';

const house = sourceFiles('.', ['src', 'tools']).filter(({ path }) => !/\.(test|bench|checks|fixture)\.tsx?$/.test(path));

/** Lists that are longer today, by file: each may only go, or become shorter. */
const STANDING: Readonly<Record<string, number>> = {
  'src/accuracy/budget.ts': 1,
  'src/accuracy/inspection-of-plan.ts': 1,
  'src/accuracy/salvage.ts': 2,
  'src/drawing/dxf/place.ts': 2,
  'src/estimate/hours.ts': 1,
  'src/geometry/meeting.ts': 2,
  'src/job/handout/drawing-report.ts': 1,
  'src/nest/lay/by-shape.ts': 2,
  'src/physics/other-process/other-feeds.ts': 1,
  'src/plan/wire/fit-of-shape.ts': 1,
  'src/plan/wire/narrow.ts': 1,
  'src/shapes/figures.ts': 1,
};

describe('what is handed over', () => {
  it('is no object of very many fields', () => {
    expect(wideObjects(house)).toEqual([]);
  });

  it('is no list of very many parameters, but for those that are counted', () => {
    const count: Record<string, number> = {};
    for (const { file } of longLists(house)) count[file] = (count[file] ?? 0) + 1;
    expect(count).toEqual(STANDING);
  });
});

describe('the tool that measures what is handed over', () => {
  const planted = (text: string) => [{ path: 'src/planted.ts', text }];

  it('sees a long list, of arrows, functions and methods', () => {
    expect(longLists(planted('const f = (a, b, c, d, e, g) => 0; function h(a, b, c, d, e, g) {}'))).toHaveLength(2);
    expect(longLists(planted('class A { f(a, b, c, d, e, g) {} }'))).toHaveLength(1);
    expect(longLists(planted('const f = (a, b, c, d, e) => 0;'))).toEqual([]);
  });

  it('spares inner loops of plain numbers that say so', () => {
    expect(longLists(planted('/** Inner loops: `!` stands where an index is known. */ const f = (a, b, c, d, e, g) => x[a]!;'))).toEqual(
      [],
    );
  });

  it('sees an object of very many fields', () => {
    const fields = (many: number): string => Array.from({ length: many }, (_, i) => `f${i}: number;`).join(' ');
    expect(wideObjects(planted(`interface A { ${fields(21)} } type B = { ${fields(21)} };`))).toHaveLength(2);
    expect(wideObjects(planted(`interface A { ${fields(20)} }`))).toEqual([]);
  });
});
