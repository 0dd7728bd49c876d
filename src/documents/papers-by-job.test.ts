/** Hole table, inspection sheet and annex say what the plan says, and leave room for what is found. */

import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { cut, factsOf, program } from '../job/answered.fixture.ts';
import { builtInShop } from '../job/built-in-shop.ts';
import { standardDialect } from '../job/files/dialects.ts';
import { jobSchema } from '../job/job.ts';
import { plateOf } from '../job/plate.fixture.ts';
import type { JobFacts } from '../result/facts.ts';
import type { MadeFacts } from '../result/outcome-facts.ts';
import { HOUSE } from '../text/reader.ts';
import type { TableBlock, WrittenPaper } from './paper.ts';
import { printedPaper } from './paper-for-reader.ts';
import { annex } from './sheet/calculation-sheet.ts';
import { holeSheet } from './sheet/hole-sheet.ts';
import { inspectionSheet } from './sheet/inspection-sheet.ts';

const factsFor = (more: object): JobFacts => {
  const job = jobSchema.parse({ drawing: 'plate.dxf', outline: 'block', ...more });
  const run = {
    job,
    said: new Set<string>(),
    drawing: plateOf(3),
    drawingName: 'plate.dxf',
    shop: builtInShop,
    dialect: standardDialect,
    day: '2026-11-25',
  };
  return factsOf(run);
};
const tablesOf = (paper: WrittenPaper): readonly TableBlock[] =>
  printedPaper(paper, HOUSE).blocks.flatMap((b) => (b.kind === 'table' ? [b] : []));
const made = (of: JobFacts): MadeFacts => ({ cut: cut(of), program: program(of) });
const facts = factsFor({});

describe('the hole table', () => {
  it('has every hole once, with the contours begun from it, and room to tick it off', () => {
    const [table] = tablesOf(holeSheet(facts, cut(facts)));
    expect(there(table).rows.map((r) => r[0])).toEqual(cut(facts).plan.order);
    expect(there(table).rows.every((r) => r[4] === 'to be drilled' && /^_+$/.test(there(r[5])))).toBe(true);
  });
});

describe('the inspection sheet', () => {
  it('asks for diameter or sizes of each contour as drawn, twice the tolerance of the profile', () => {
    const [table] = tablesOf(inspectionSheet(facts, made(facts)));
    const diameter = there(there(table).rows.find((r) => r[1] === 'diameter'));
    expect(Number(diameter[3])).toBeCloseTo(12, 9);
    expect(diameter[4]).toBe('±0.04');
    expect(there(table).rows.filter((r) => r[1]?.startsWith('size along'))).toHaveLength(4);
    expect(there(table).columns.at(-1)?.title).toBe('Measured');
    expect(there(table).rows.every((r) => r.length === there(table).columns.length && /^_+$/.test(there(r.at(-1))))).toBe(true);
  });

  it('tells what the gauge shows where it is measured warm', () => {
    const warm = factsFor({
      temperature: { cutting: 20, measuring: 30, swing: 1 },
      sizes: [{ name: 'gap', length: 100, tolerance: 0.05 }],
    });
    const { rows, temperature } = program(warm).inspection;
    const named = there(rows.find((r) => r.what === 'named size'));
    expect(temperature).toBe(30);
    // ISO 1: drawn sizes hold at 20 °C; steel of some 11e-6/K is 11 µm longer over 100 mm and 10 K.
    expect(there(named.reading) - 100).toBeCloseTo((100 * 10 * warm.asked.material.expansion.value) / 1e6, 9);
    expect(there(tablesOf(inspectionSheet(warm, made(warm)))[0]).columns.map((c) => c.title)).toContain('At 30 °C');
  });
});

describe('the annex of whys', () => {
  it('tells each figure once, numbered, and points at it after that', () => {
    // The first table is the price as it adds up, which has lines instead of numbers.
    const rows = tablesOf(annex(facts, cut(facts)))
      .slice(1)
      .flatMap((t) => t.rows);
    const numbers = rows.map((r) => there(r[0])).filter((n) => n !== '');
    expect(numbers).toEqual(numbers.map((_, i) => String(i + 1)));
    const pointed = rows.filter((r) => r[0] === '').map((r) => Number(/^see number (\d+)$/.exec(there(r[3]))?.[1]));
    expect(pointed.length).toBeGreaterThan(0);
    expect(pointed.every((n) => n >= 1 && n <= numbers.length)).toBe(true);
    expect(rows.filter((r) => !there(r[1]).startsWith('· ')).map((r) => r[1])).toContain('expected profile deviation');
  });
});
