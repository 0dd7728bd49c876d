/** Hours and price of small hand-made programs, against sums done by hand. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { contour } from '../geometry/contour.ts';
import { line, point } from '../geometry/segment.ts';
import type { Action, ReadProgram } from '../nc/read/program.ts';
import { stopSaid } from '../nc/read/stop-purpose.ts';
import type { Machine } from '../physics/cut/machine.ts';
import type { Wire } from '../physics/wire/wire.ts';
import type { CutPlan, Pass } from '../plan/plan.ts';
import { deviationOf, given } from '../quantity/figure.ts';
import { wholeMinor } from '../quantity/minor-units.ts';
import { saidOf } from '../quantity/source.ts';
import { sentenceOf } from '../text/finding.fixture.ts';
import type { Unit } from '../text/unit.ts';
import { type Estimate, type EstimateQuestion, estimateJob } from './estimate.ts';
import { type Rates, ratesOn } from './rates.ts';

const leaf = (key: string, value: number, unit: Unit, deviation = 0) =>
  given({ key, name: saidOf(key), value, unit, deviation, basis: 'assumed', source: saidOf('test') });

const rates: Rates = {
  from: '2026-01-01',
  currency: 'EUR',
  machineHour: 6000,
  labourHour: 4800,
  drillingHour: 3000,
  drillingFeed: 20,
  drillingHole: 3,
  filtersHour: 100,
  resinHour: 50,
  power: 6,
  powerPrice: 30,
  markup: 0.2,
  minutes: { setUp: 40, programming: 20, programmingContour: 5, load: 10, inspection: 15, stop: 5, handThread: 3, condition: 1 },
  spread: 0,
};
const wire: Wire = {
  id: 'w',
  name: 'test wire',
  diameter: 0.25,
  kind: 'brass',
  density: 8.5,
  tension: 12,
  speed: 10,
  price: 1000,
  spool: 8,
  inStock: true,
};
const machine: Machine = {
  id: 'm',
  name: 'test machine',
  travel: { x: 400, y: 300 },
  height: 300,
  wire: { low: 0.1, high: 0.3 },
  energySettings: [1, 0.5],
  bestFormError: 1.5,
  positioning: 2,
  servoLimit: 12,
  travelFeed: 600,
  threadMinutes: 2,
  autoThreading: true,
};
const pass = (number: number, feed: number, deviation = 0): Pass => {
  const zero = leaf('zero', 0, '1');
  return {
    number,
    condition: number,
    register: number,
    energy: zero,
    gap: zero,
    stock: zero,
    offset: zero,
    feed: leaf(`feed ${number}`, feed, 'mm/min', deviation),
    areaRate: zero,
    ra: zero,
    damage: zero,
    formError: zero,
  };
};
const square = contour([
  line(point(0, 0), point(1, 0)),
  line(point(1, 0), point(1, 1)),
  line(point(1, 1), point(0, 1)),
  line(point(0, 1), point(0, 0)),
]);
const planOf = (passes: CutPlan['passes']): CutPlan => ({
  kind: 'cut',
  wire,
  height: 40,
  passes,
  accuracy: leaf('accuracy', 0.01, 'mm'),
  finish: leaf('finish', 1.6, 'µm'),
  block: square,
  contours: [
    {
      loop: 'L2',
      kept: 'die',
      hole: { at: point(0, 0), diameter: 2, origin: 'placed' },
      entry: { at: point(1, 0), segment: 0, share: 0.5 },
      piece: {
        role: 'slug',
        area: 1,
        mass: leaf('mass', 1, 'kg'),
        size: { x: 1, y: 1, height: 40 },
        balance: point(0.5, 0.5),
        handling: 'lifted',
      },
      comesOut: [square],
      courses: [],
    },
  ],
  order: ['L2'],
  steps: [],
  findings: [],
});
const move = (length: number, condition: number, rapid = false): Action => {
  const centre = line(point(0, 0), point(length, 0));
  return { kind: 'move', block: 0, rapid, programmed: centre, centre, condition };
};
const programOf = (actions: readonly Action[]): ReadProgram => ({
  state: 'read',
  blocks: [{ index: 0, line: 7, text: 'G01 X1', comments: [] }],
  actions,
  findings: [],
});
const stop = (comment: string): Action => ({ kind: 'stop', block: 0, optional: false, comment, ...stopSaid(comment) });

const ACTIONS: readonly Action[] = [
  { kind: 'thread', block: 0 },
  stop('CONDITION 1'),
  move(30, 1),
  stop('SECURE THE SLUG'),
  move(60, 2),
  move(600, 2, true),
  stop('THREAD THE WIRE'),
  { kind: 'end', block: 0 },
];
const steel = { id: 'd2', name: 'tool steel D2', family: 'tool steel' } as const;
const carbide = { id: 'wc-10co', name: 'carbide, 10 % Co', family: 'carbide' } as const;

const question = (more: Partial<EstimateQuestion> = {}): EstimateQuestion => ({
  program: programOf(ACTIONS),
  plan: planOf([pass(1, 3), pass(2, 6)]),
  machine,
  material: steel,
  rates: [rates],
  day: '2026-11-25',
  quantity: 1,
  breaks: [10],
  ...more,
});
const estimated = (q: EstimateQuestion): Estimate => {
  const result = estimateJob(q);
  if (result.kind !== 'estimate') throw new Error(sentenceOf(result.finding));
  return result.estimate;
};

describe('hours', () => {
  const e = estimated(question());

  it('are what length and feed of each pass make', () => {
    expect(e.passes.map((p) => p.minutes.value)).toEqual([10, 10]);
    expect(e.travel.value).toBe(1);
  });

  it('tell stops for pieces, conditions and threading apart', () => {
    expect(e.stops.value).toBe(1 + 5);
    expect(e.threading.value).toBe(2 + 3);
    expect(e.drilling.value).toBe(40 / 20 + 3);
  });

  it('drill carbide three to four times as slowly, or as fast as the shop says', () => {
    const drilled = (more: Partial<EstimateQuestion>): number => estimated(question({ material: carbide, ...more })).drilling.value;
    expect(drilled({})).toBeGreaterThan(40 / (20 * 0.34) + 3);
    expect(drilled({})).toBeLessThan(40 / (20 * 0.25) + 3);
    expect(drilled({ rates: [{ ...rates, drillingFeeds: { 'wc-10co': 8, d2: 1 } }] })).toBe(40 / 8 + 3);
    expect(estimated(question({ material: carbide })).each.value).toBeGreaterThan(estimated(question()).each.value);
  });

  it.each([
    ['stainless', 2],
    ['aluminium', 1],
    ['titanium', 3.33],
    ['nickel alloy', 2.86],
    ['copper', 5],
    ['brass', 2.86],
    ['graphite', 2.5],
    ['refractory', 8],
    ['magnesium', 1],
    ['zirconium', 3.33],
    ['pcd', 6.67],
  ] as const)('drill 40 mm of %s in %s minutes, where tool steel takes two', (family, minutes) => {
    const { drilling } = estimated(question({ material: { id: 'x', name: 'x', family } }));
    expect(drilling.value - 3).toBeCloseTo(minutes, 2);
  });

  it('say that the feed in a material is from memory, and doubt it', () => {
    const feed = there(estimated(question({ material: carbide })).drilling.from.find((f) => f.key === 'drilling.feed'));
    const index = there(feed.from.find((f) => f.key === 'material.wc-10co.drilling'));
    expect([index.basis, index.value < 0.5, (feed.shares.get(index) ?? 0) > 0.2 * feed.value]).toEqual(['assumed', true, true]);
    expect(deviationOf(index) / index.value).toBeCloseTo(0.3, 9);
  });

  it('split into attended and unattended without a rest', () => {
    expect(e.attended.value).toBe(1 + 5 + 3);
    expect(e.unattended.value).toBe(20 + 1 + 2);
    expect(e.total.value).toBeCloseTo(e.attended.value + e.unattended.value, 12);
  });

  it('count threading as attended where the machine cannot do it', () => {
    const byHand = estimated(question({ machine: { ...machine, autoThreading: false } }));
    expect(byHand.attended.value).toBe(1 + 5 + 3 + 2);
    expect(byHand.total.value).toBe(e.total.value);
  });

  it('carry the range of the feed', () => {
    const wide = estimated(question({ plan: planOf([pass(1, 3, 0.6), pass(2, 6)]) }));
    expect(wide.total.high - wide.total.value).toBeCloseTo((30 / 9) * 0.6, 6);
  });

  it('are refused with the line when a move belongs to no pass', () => {
    const result = estimateJob(question({ program: programOf([move(10, 4)]) }));
    expect(result).toMatchObject({ kind: 'refused', finding: { code: 'pass-unknown', place: { kind: 'line', line: 7 } } });
  });
});

describe('price', () => {
  it('is the sum of its lines with the markup, done by hand', () => {
    const e = estimated(question());
    const once = ((20 + 5) / 60) * 4800 + (40 / 60) * 4800;
    const wireMass = (20 * 10 * Math.PI * 0.125 ** 2 * 8.5) / 1000;
    const piece = (32 / 60) * 6000 + ((9 + 25) / 60) * 4800 + (5 / 60) * 3000 + wireMass * 1000 + (32 / 60) * 150 + (32 / 60) * 6 * 30;
    expect(e.each.value).toBe(Math.round((once + piece) * 1.2));
    expect(e.wireMass.value).toBeCloseTo(wireMass, 12);
  });

  it('counts filters and resin by the machine hour, as the shop file does, stops and threading included', () => {
    const e = estimated(question());
    const cost = (key: string): number | undefined => e.lines.find((l) => l.cost.key === `price.${key}`)?.cost.value;
    expect([cost('filters'), cost('resin')]).toEqual([(e.total.value / 60) * 100, (e.total.value / 60) * 50]);
  });

  it('is whole minor units each, and its lines add up to as many times that, whatever the rates, the stack and the quantity', () => {
    const rate = fc.double({ min: 0, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(
        rate,
        rate,
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 1, max: 5 }),
        (machineHour, labourHour, markup, quantity, stack) => {
          const { lines, order, each, breaks } = estimated(
            question({ rates: [{ ...rates, machineHour, labourHour, markup }], quantity, stack }),
          );
          for (const price of breaks)
            expect([Number.isInteger(price.each.value), price.total.value]).toEqual([true, price.quantity * price.each.value]);
          expect([...order.lines, order.markup.amount, order.rounding].every(Number.isInteger)).toBe(true);
          expect(order.total).toBe(quantity * each.value);
          expect(order.lines.reduce((a, b) => a + b, order.markup.amount + order.rounding)).toBe(order.total);
          expect(Math.abs(order.rounding)).toBeLessThanOrEqual(quantity / 2 + (lines.length + 1) / 2);
        },
      ),
      { numRuns: 60 },
    );
  });

  it.each([
    [0.5, 1],
    [-0.5, -1],
    [2.5, 3],
    [1.005 * 100 * 10, 1005],
    [0.285 * 100 * 1e3 * 10 + 0.5, 285_001],
    [-0.2, 0],
  ])('rounds %f half away from zero, whatever binary fractions leave', (minor, whole) => {
    expect(wholeMinor(minor)).toBe(whole);
  });

  it('asks for the price of metal that the shop supplies, and counts what is entered, nothing included', () => {
    const metal = (cost?: number, suppliedBy: 'shop' | 'customer' = 'shop') =>
      estimated(
        question({
          metal: { mass: leaf('m', 2, 'kg'), suppliedBy, cost: cost === undefined ? undefined : leaf('price.metal', cost, 'money') },
        }),
      );
    expect(metal().findings.map((f) => [f.code, f.severity])).toEqual([['metal-without-price', 'doubt']]);
    expect([metal(0), metal(500), metal(undefined, 'customer')].map((e) => e.findings)).toEqual([[], [], []]);
    expect(metal(500).each.value - metal(0).each.value).toBe(600);
    expect(metal(0).lines.at(-1)?.cost.value).toBe(0);
  });

  it('falls with the quantity and the total rises', () => {
    const [one, ten] = estimated(question()).breaks;
    expect(ten?.each.value).toBeLessThan(one?.each.value as number);
    expect(ten?.total.value).toBeGreaterThan(one?.total.value as number);
  });

  it('takes the rates that held on the day', () => {
    const later = { ...rates, from: '2027-01-01', machineHour: 9000 };
    expect(ratesOn([later, rates], '2026-12-31')).toEqual({ kind: 'rates', rates });
    expect(ratesOn([rates, later], '2027-01-01')).toEqual({ kind: 'rates', rates: later });
    expect(ratesOn([rates], '2025-12-31')).toMatchObject({ kind: 'none yet', finding: { code: 'rates-not-yet' } });
  });

  it('warns when one spool is not enough', () => {
    const e = estimated(question({ plan: { ...planOf([pass(1, 0.01), pass(2, 6)]) } }));
    expect(e.findings.map((f) => f.code)).toEqual(['spool-runs-out']);
  });
});
