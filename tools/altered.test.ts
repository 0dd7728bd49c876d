/** Altering a constant reaches the rows that rest on it, and what the summary says of a few constants is so. All of them: npm run checks -- --mutate. */
import { describe, expect, it } from 'vitest';
import { recastLaw } from '../src/physics/starting-model.ts';
import { alterationOf, fallenRows, importAltered, isPinned, restingOn } from './altered.ts';
import { CONSTANTS } from './constants.ts';
import { sourceFiles } from './source-files.ts';

const files = sourceFiles('.', ['src']);
const textOf = (path: string): string => files.find((f) => f.path === path)?.text ?? '';
const [layer, markup] = ['layer at Ra 1 µm', 'markup on the whole'].map((name) => CONSTANTS.filter((c) => c.name === name));

describe('constants that are altered one by one', () => {
  it('all stand where they are looked for', () => {
    for (const constant of CONSTANTS) {
      const { from, to, text } = alterationOf(constant, textOf(constant.file), 4 / 3);
      expect(textOf(constant.file).slice(from, to)).toBe(constant.value);
      expect(Number(text)).not.toBe(Number(constant.value));
    }
    expect(() => alterationOf({ ...CONSTANTS[0], value: '12345' } as never, textOf('src/physics/starting-model.ts'), 2)).toThrow('12345');
  });

  it('reach whatever imports the file, and leave the house as it is', async () => {
    const [constant] = layer ?? [];
    const alteration = alterationOf(constant as never, textOf('src/physics/starting-model.ts'), 2);
    const model = await importAltered<{ cutModel: { toString(): string } }>('src/physics/cut/model.ts', alteration);
    const altered = await importAltered<{ recastLaw: typeof recastLaw }>('src/physics/starting-model.ts', alteration);
    expect(typeof model.cutModel).toBe('function');
    expect(altered.recastLaw.scale.value).toBe(3.4);
    expect(recastLaw.scale.value).toBe(1.7);
    expect(restingOn('src/physics/starting-model.ts', files)).toContain('src/physics/magnitudes.checks.ts');
  });

  it('let rows fall: two printed ones for the recast layer, none that is printed for the markup', async () => {
    const few = [...(layer ?? []), ...(markup ?? [])];
    const fallen = await fallenRows(few, files);
    expect(fallen.map(({ rows }) => rows.length >= 2)).toEqual([true, true, true, true]);
    expect(few.map((c) => [c.unpinned === true, isPinned(c, fallen)])).toEqual([
      [false, true],
      [true, false],
    ]);
  });
});
