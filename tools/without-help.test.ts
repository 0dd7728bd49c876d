/** Help texts leave a bundle, and nothing else does. */
import { parseAst } from 'vite';
import { describe, expect, it } from 'vitest';
import { withoutHelp } from './without-help.ts';

const without = (code: string): string => withoutHelp(code, parseAst(code));

describe('help texts in a bundle', () => {
  it('go, and what the schema lets through stays', () => {
    expect(without("const s = z.int().min(1).describe('How many').default(2);")).toBe('const s = z.int().min(1).default(2);');
  });

  it('go inside out, where a schema with help holds others', () => {
    const code = "z.object({ a: z.int().describe('Teeth, of one wheel'), b: z.string().describe(`Its \"name\"`) }).describe('A wheel')";
    expect(without(code)).toBe('z.object({ a: z.int(), b: z.string() })');
  });

  it('go with the unit that stands beside them', () => {
    expect(without("z.number().meta({ description: 'Depth, mm', unit: 'mm' }).default(2)")).toBe('z.number().default(2)');
    const code = "z.number().meta({ description: depth, unit: 'mm' }); z.number().meta({ id: 'depth' }); s.meta();";
    expect(without(code)).toBe(code);
  });

  it('stay where they are worked out, and where something else is described', () => {
    const code = "z.int().describe(words.teeth); z.int().describe(n + ' teeth'); test.describe('teeth', () => count()); describe('teeth');";
    expect(without(code)).toBe(code);
  });
});
