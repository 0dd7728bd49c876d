/** The wire is chosen by the whole job: no other costs less, what-ifs agree, bounds never promise more than is true, reasons are told. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { jobRun } from '../../cli/inputs.ts';
import { wireLines } from '../../documents/part/wire-lines.ts';
import { laidBound, wireBound } from '../../plan/cut/least-of-wire.ts';
import { shapesIn } from '../../plan/cut/plan-cut.ts';
import { wireTried } from '../../plan/wire/choose-wire.ts';
import { deviationOf } from '../../quantity/figure.ts';
import type { WireRow, WireTable } from '../../result/wires.ts';
import { remedyTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import { printPlain } from '../../text/print/print.ts';
import { answered, cut, factsOf, hours } from '../answered.fixture.ts';
import { answerJson } from '../handout/answer-json.ts';
import type { JobRun } from '../job-run.ts';
import { onLargeTable, plateOf } from '../plate.fixture.ts';
import type { CutRequest } from '../request/request.ts';
import { runUpTo } from './pipeline.ts';
import { chosenProgram, wireDoubt } from './wire-choice.ts';
import { leastOf } from './wire-least.ts';

const runOf = (path: string): JobRun => jobRun(path, {}, '2026-11-25');
const die = runOf('examples/die-plate/die-plate.job.json');

const wished = (run: JobRun): CutRequest => {
  const asked = runUpTo(run, 'request');
  if (asked.kind !== 'requested') throw new Error('the job wants something');
  return asked.request;
};

const tableOf = (run: JobRun): WireTable => {
  const { wires } = chosenProgram(run, wished(run), 'table');
  if (wires === undefined) throw new Error('rates hold');
  return wires;
};

const row = (table: WireTable, id: string): WireRow => table.rows.find((r) => r.id === id) as WireRow;
const asked = (job: Partial<JobRun['job']>, run = die): JobRun => ({ ...run, job: { ...run.job, ...job } });

/** The shop with other rates, wire prices and shelves. */
const shopOf = (run: JobRun, hour: number, price: (diameter: number) => number, missing: readonly number[]): JobRun => ({
  ...run,
  shop: {
    ...run.shop,
    rates: run.shop.rates.map((r) => ({ ...r, machineHour: r.machineHour * hour })),
    wires: run.shop.wires.map((w, i) => ({ ...w, price: w.price * price(w.diameter), inStock: w.inStock && !missing.includes(i) })),
  },
});

const EXAMPLES = ['die-plate/die-plate', 'punch-set/punch-set'] as const;
const SHOPS = [
  { hour: 1, price: () => 1, missing: [] },
  { hour: 0.05, price: (d: number) => (d > 0.22 ? 60 : 0.1), missing: [] },
  { hour: 3, price: (d: number) => 1 / d, missing: [0] },
] as const;

describe('the wire chosen by the whole job', () => {
  const jobs = EXAMPLES.flatMap((name) =>
    SHOPS.map((shop, i) => ({ name, i, run: shopOf(runOf(`examples/${name}.job.json`), shop.hour, shop.price, shop.missing) })),
  );

  it.each(jobs)('of $name in shop $i never costs more than another that can do it', ({ run }) => {
    const table = tableOf(run);
    const chosen = row(table, table.chosen as string);
    if (chosen.kind !== 'worked out') throw new Error('the chosen wire is worked out');
    let able = 0;
    for (const wire of run.shop.wires.filter((w) => w.inStock)) {
      const alone = runUpTo(asked({ wire: wire.id }, run), 'hours');
      if (alone.kind !== 'timed') expect(row(table, wire.id).kind).toBe('drops out');
      else {
        able += 1;
        expect(alone.estimate.each.value).toBeGreaterThanOrEqual(chosen.outcome.each * (1 - 1e-8));
        const own = row(table, wire.id);
        expect(own.kind === 'worked out' && Math.abs(own.outcome.each - alone.estimate.each.value) < 1e-6).toBe(true);
      }
    }
    expect(able).toBeGreaterThan(0);
    // What-ifs and the answer take the same wire at the same price.
    const asWhatIf = runUpTo(run, 'hours');
    expect(asWhatIf.kind === 'timed' && [asWhatIf.made.plan.wire.id, asWhatIf.estimate.each.value]).toEqual([
      chosen.id,
      chosen.outcome.each,
    ]);
  });

  it('is not the same in every shop', () => {
    expect(new Set(SHOPS.map((s) => tableOf(shopOf(die, s.hour, s.price, s.missing)).chosen)).size).toBeGreaterThan(1);
  });

  it('is the thicker one, and then the first of the file, where all cost the same', () => {
    const [first] = die.shop.wires;
    const twins = ['b', 'a'].map((id) => ({ ...there(first), id, name: id, inStock: true }));
    expect(tableOf({ ...die, shop: { ...die.shop, wires: twins } }).chosen).toBe('b');
  });
});

describe('the bounds of a wire', () => {
  it.each([...EXAMPLES.map((name) => runOf(`examples/${name}.job.json`)), asked({ run: 'unattended first', stack: 2, quantity: 3 })])(
    'lie below what is worked out, the close one nearer',
    (run) => {
      const request = wished(run);
      const shapes = shapesIn(request.question);
      const contours = request.wanted.length;
      for (const wire of run.shop.wires) {
        const alone = runUpTo(asked({ wire: wire.id }, run), 'hours');
        const trial = wireTried(wire, request.question, shapes);
        if (alone.kind !== 'timed' || trial.kind === 'no passes' || trial.fault !== undefined) continue;
        const quick = leastOf(wireBound(trial, shapes, request.question), { wire, run, contours, material: request.question.material });
        const laid = laidBound(trial, shapes, request.question);
        const close = laid.kind === 'bound' ? leastOf(laid.bound, { wire, run, contours, material: request.question.material }) : quick;
        expect(quick.each).toBeLessThanOrEqual(close.each * 1.0001);
        expect(close.each).toBeLessThanOrEqual(alone.estimate.each.value);
        expect(close.minutes).toBeLessThanOrEqual(alone.estimate.total.value);
        expect(close.each).toBeGreaterThan(0.9 * alone.estimate.each.value);
      }
    },
  );

  it('stand in the table of a job of many contours, marked as such', () => {
    const run = { ...asked({ quantityBreaks: [] }), drawing: plateOf(64), shop: onLargeTable(die.shop) };
    const table = tableOf(run);
    const bounded = table.rows.filter((r) => r.kind === 'at least');
    expect(bounded.length).toBeGreaterThan(2);
    const chosen = row(table, table.chosen as string);
    for (const r of bounded)
      expect(r.kind === 'at least' && chosen.kind === 'worked out' && r.outcome.each > chosen.outcome.each).toBe(true);
    expect(wireLines(table).join('\n')).toMatch(/from [\d,.]+ EUR[\s\S]*no more was worked out/);
  });
});

describe('a wire that drops out', () => {
  it.each([
    ['corner', asked({ insideCorner: 0.1, tolerance: 0.01 }), 'brass-0.30', /inside corner .* R 0\.\d+ mm at \(/],
    ['finish', asked({ finish: 0.05 }), 'brass-0.30', /Ra 0\.\d+ µm at best/],
    ['tolerance', asked({ tolerance: 0.001 }), 'brass-0.30', /±0\.\d+ mm at best/],
    ['height', asked({ height: 900 }), 'brass-0.30', /height is 900 mm/],
  ] as const)('says that it is the %s, with its number', (why, run, id, reason) => {
    const out = row(tableOf(run), id);
    expect(out.kind === 'drops out' && out.why).toBe(why);
    expect(out.kind === 'drops out' && printPlain(out.reason)).toMatch(reason);
  });

  it('says that the machine cannot thread it, or that a slot is narrower than it needs', () => {
    const machine = { ...there(die.shop.machines[0]), wire: { low: 0.15, high: 0.3 } };
    const unthreaded = row(tableOf({ ...die, shop: { ...die.shop, machines: [machine] } }), 'brass-0.10');
    expect(unthreaded.kind === 'drops out' && [unthreaded.why, printPlain(unthreaded.reason)]).toEqual([
      'machine',
      expect.stringContaining('0.1 mm'),
    ]);
    const slot =
      '<svg xmlns="http://www.w3.org/2000/svg" width="30mm" height="30mm" viewBox="0 0 30 30"><path d="M0 0H30V30H0Z"/><path d="M5 5H15V10H20V10.33H15V15H5Z"/></svg>';
    const narrow = asked(
      { insideCorner: 0.5, startHole: 1, quantityBreaks: [] },
      { ...die, drawing: new TextEncoder().encode(slot), drawingName: 'slot.svg' },
    );
    const out = row(tableOf(narrow), 'brass-0.30');
    expect(out.kind === 'drops out' && [out.why, printPlain(out.reason)]).toEqual(['slot', expect.stringMatching(/needs 0\.\d+ mm at \(/)]);
  });

  it('or is only not in stock, and then is never taken', () => {
    const shop = { ...die.shop, wires: die.shop.wires.map((w) => ({ ...w, inStock: w.diameter < 0.22 })) };
    const table = tableOf({ ...die, shop });
    expect(row(table, table.chosen as string).inStock).toBe(true);
    expect(printPlain(table.sentence)).toMatch(/would save [\d.]+ EUR each, but is not in stock/);
    const none = tableOf({ ...die, shop: { ...die.shop, wires: die.shop.wires.map((w) => ({ ...w, inStock: false })) } });
    expect([none.chosen, printPlain(none.sentence)]).toEqual([
      undefined,
      expect.stringMatching(/^No wire in stock is suitable\. .* would do, but is not in stock/),
    ]);
  });
});

describe('a wire that was named and does not do', () => {
  it('is not told as if no wire did: the cheapest that would is named, and nothing is called suitable and not', () => {
    const job = { ...die.job, wire: 'brass-0.30', insideCorner: 0.1 };
    const facts = factsOf({ ...die, job, said: new Set([...die.said, 'wire']) });
    const told = facts.findings.map((f) => printPlain(f.text)).join(' ');
    expect(facts.outcome.answer).toBe('no');
    expect(told).toMatch(
      /The wire that you specified is not suitable as the job stands; 0\.\d\d mm brass wire would be, at [\d.]+ EUR each/,
    );
    expect(told).not.toMatch(/No wire in stock is suitable|is the cheapest suitable wire/);
  });
});

describe('the wires in an answer', () => {
  const stages: string[] = [];
  const answer = answered({ ...die, progress: (stage) => void stages.push(printPlain(stage)) });
  const { facts } = answer;

  it('stand as a table, a sentence, plain data and figures that can be asked why', () => {
    const { wires, plan } = cut(facts);
    expect([wires?.chosen, wires?.rows.length]).toEqual([plan.wire.id, die.shop.wires.length]);
    expect(sentenceOf(facts.findings.find((f) => f.code === 'wire-by-whole-job'))).toBe(wires && printPlain(wires.sentence));
    expect(JSON.stringify(answerJson(answer))).toContain('"nextCheapest":"brass-0.25"');
    const more = answer.figures.get('wire.choice');
    const other = answer.figures.get('wire.brass-0.25.each');
    expect(more?.value).toBeCloseTo((other?.value ?? 0) - hours(facts).estimate.each.value, 6);
    const [nextCheapest, taken] = more?.from ?? [];
    // What both pay alike moves neither against the other: the shop's minutes and the model are the same leaves in both prices.
    expect(deviationOf(there(more))).toBeLessThan(0.5 * Math.hypot(deviationOf(there(nextCheapest)), deviationOf(there(taken))));
    const stop = [...there(more).shares.keys()].filter((leaf) => leaf.key === 'shop.minutes.stop');
    expect(stop).toHaveLength(1);
    expect(stages.filter((s) => s.startsWith('the whole job with')).length).toBe(die.shop.wires.length);
  });

  it('keep to the wire that was asked for and tell what another would cost', () => {
    const table = tableOf(asked({ wire: 'brass-0.20' }));
    expect([table.chosen, table.nextCheapest]).toEqual(['brass-0.20', 'brass-0.30']);
    expect(printPlain(table.sentence)).toMatch(/as you specified, costs .* next cheapest is 0\.30 mm brass at .* % less/);
    const made = runUpTo(asked({ wire: 'brass-0.20' }), 'program');
    expect(made.kind === 'programmed' && made.plan.wire.id).toBe('brass-0.20');
  });

  it('name the next one where the program of the cheapest is not proven', () => {
    expect(wireDoubt({ verdict: 'proven' }, cut(facts).wires)).toEqual([]);
    const [doubt] = wireDoubt({ verdict: 'not proven' }, cut(facts).wires);
    expect([doubt?.code, remedyTextOf(doubt ?? {})]).toEqual(['wire-not-proven', expect.stringContaining('brass-0.25')]);
  });
});
