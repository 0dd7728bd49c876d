/** A job run from its inputs: what the shop enters is used, what nobody said is told, and every figure can be found by its key. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { jobRun } from '../../cli/inputs.ts';
import type { PassTable } from '../../physics/cut/pass-table.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { printPlain } from '../../text/print/print.ts';
import { answered, cut, factsOf, program } from '../answered.fixture.ts';
import { builtInShop } from '../built-in-shop.ts';
import type { JobRun } from '../job-run.ts';
import { runUpTo } from './pipeline.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');

describe('a job', () => {
  it('takes the pass table of the shop before the model, and the model where the table does not reach', () => {
    const table: PassTable = {
      wire: 'brass-0.25',
      material: 'd2',
      height: { low: 20, high: 40 },
      flush: 'sealed',
      spread: 0.1,
      passes: [
        { offset: 0.19, feed: 6, ra: 2.6 },
        { offset: 0.147, feed: 9, ra: 1.2 },
        { offset: 0.135, feed: 9, ra: 0.7 },
      ],
    };
    const shop = { ...die.shop, passTables: [table] };
    const withTable = factsOf({ ...die, shop, job: { ...die.job, wire: 'brass-0.25' } });
    expect(withTable.outcome.answer).toBe('yes');
    expect(cut(withTable).plan.passes.map((p) => p.feed.value)).toEqual([6, 9, 9]);
    expect(cut(withTable).plan.passes.at(-1)?.offset.basis).toBe('shop');
    const tooFine = factsOf({ ...die, shop, job: { ...die.job, wire: 'brass-0.25', finish: 0.4 } });
    expect(cut(tooFine).plan.passes.map((p) => p.feed.value)).not.toEqual([6, 9, 9]);
  });

  it('knows the materials of the shop and refuses one that does not conduct', () => {
    const own = {
      id: 'own-steel',
      name: 'own steel',
      family: 'tool steel' as const,
      density: 7.8,
      expansion: 11,
      solidus: 1400,
      conductivity: 25,
      heat: 460,
      fusion: 270,
      resistivity: 0.5,
      fineness: 1,
      cautions: [],
    };
    const shop = { ...die.shop, materials: [own, { ...own, id: 'resin', name: 'resin', resistivity: 1e16 }] };
    expect(factsOf({ ...die, shop, job: { ...die.job, material: 'own-steel' } }).asked.material.name).toBe('own steel');
    expect(runUpTo({ ...die, shop, job: { ...die.job, material: 'resin' } }, 'answer')).toMatchObject({ kind: 'cannot' });
  });

  it('tells what nobody said and nothing that somebody did', () => {
    const own = { ...die.shop, rates: die.shop.rates.map((r) => ({ ...r, machineHour: 7000 })) };
    const job = { ...die.job, stock: { suppliedBy: 'customer' as const } };
    expect(factsOf({ ...die, shop: own, job, said: new Set([...die.said, 'flush', 'startHole']) }).asked.assumed).toEqual([]);
    const bare = factsOf({ ...die, shop: builtInShop, said: new Set(['drawing', 'outline']) });
    for (const word of ['tool steel D2', 'thick', 'Ra', 'profile', 'radius', 'piece', 'nozzles', 'start hole', 'invented shop'])
      expect(bare.asked.assumed.map((a) => printPlain(a.text)).join(' ')).toContain(word);
  });

  it('promises no more than the budget of errors leaves', () => {
    const facts = factsOf(die);
    const { budgets, plan } = cut(facts);
    const expected = Math.ceil(there(budgets).profile.total.value * 10) / 10_000;
    expect(printPlain(facts.sentence)).toContain(`: ±${expected} mm expected (k = 2, about 95 %)`);
    // One expected accuracy: what the passes were chosen by is what the budget adds up.
    expect(plan.accuracy.value * 1000).toBeCloseTo(there(budgets).profile.total.value, 9);
    const tight = factsOf({ ...die, job: { ...die.job, temperature: { cutting: 50, measuring: 20, swing: 20 } } });
    expect(printPlain(tight.sentence)).toMatch(/^No\. ±0\.008 mm required; .* the best to expect is ±0\.0\d+ mm \(k = 2, about 95 %\)/);
  });

  it('keeps every figure under its key, with leaves', () => {
    const answer = answered(die);
    for (const key of ['pass.1.feed', 'hours.total', 'price.1.each', 'wire.mass', 'shop.machine', 'model.rate.scale'])
      expect(answer.figures.has(key), key).toBe(true);
    for (const [key, figure] of answer.figures) expect(Number.isFinite(figure.value), key).toBe(true);
  });

  it('gives the same answer twice, to the byte of its program', () => {
    expect(program(factsOf(die)).text).toBe(program(factsOf(die)).text);
  });

  it('points at the drawing in its own unit', () => {
    const text = new TextDecoder().decode(die.drawing);
    const inch = new TextEncoder().encode(text.replace(/(\$INSUNITS\s+70\s+)4/, (_, before: string) => `${before}1`));
    const run: JobRun = {
      ...die,
      drawing: inch,
      job: { ...die.job, tolerance: 0.2 },
      shop: { ...die.shop, machines: [{ ...there(die.shop.machines[0]), travel: { x: 9000, y: 9000 } }] },
    };
    const place = factsOf(run).findings.find((f) => f.code === 'kept-side' && f.place?.kind === 'spot')?.place;
    expect(place).toMatchObject({ x: 90, y: 60 });
    const facts = factsOf(run);
    const { findings } = facts;
    const rounded = findings.find((f) => f.code === 'corner-rounded');
    expect(rounded?.place).toMatchObject({ x: 25, y: 49 });
    expect(sentenceOf(rounded)).toContain('at (25, 49)');
    expect(program(facts).proof.findings.find((f) => f.place?.kind === 'spot')?.place).toMatchObject({ y: 49 });
  });

  it('sees a ring come loose round an island that was cut out before', () => {
    const circle = (radius: number): readonly (string | number)[] => [0, 'CIRCLE', 8, 0, 10, 25, 20, 25, 40, radius];
    const edge = [0, 'LWPOLYLINE', 8, 0, 90, 4, 70, 1, 10, 0, 20, 0, 10, 200, 20, 0, 10, 200, 20, 150, 10, 0, 20, 150];
    const groups = [
      0,
      'SECTION',
      2,
      'HEADER',
      9,
      '$INSUNITS',
      70,
      4,
      0,
      'ENDSEC',
      0,
      'SECTION',
      2,
      'ENTITIES',
      ...edge,
      ...circle(15.466),
      ...circle(1.9),
      0,
      'ENDSEC',
      0,
      'EOF',
      '',
    ];
    // Said, since a rectangle round a ring may be the border of a sheet.
    const kept = { L1: 'punch' as const };
    const job = { ...die.job, outline: 'cut' as const, kept, height: 25, finish: 1.6, tolerance: 0.02, insideCorner: 0.3 };
    const facts = factsOf({ ...die, job, drawing: new TextEncoder().encode(groups.join('\n')) });
    const ring = program(facts).proof.loose.find((l) => l.role === 'slug');
    expect(facts.outcome.answer).toBe('yes');
    // pi (15.466² - 2.35²) mm² of the ring at 25 mm and 7.7 g/cm³ are 0.141 kg; the two kerfs take some of it.
    expect(ring?.mass).toBeGreaterThan(0.128);
    expect(ring?.mass).toBeLessThan(0.141);
  });
});
