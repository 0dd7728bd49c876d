/** A nest from its file to a proven program, and what metal and stacks do to a job. */

import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { readDrawing } from '../drawing/read/read-drawing.ts';
import { writeDxf } from '../drawing/write/dxf.ts';
import { type Contour, path } from '../geometry/contour.ts';
import { disc, polygon, rectangle } from '../geometry/example-shapes.fixture.ts';
import { transformChain, translation } from '../geometry/transform.ts';
import { standardDialect } from '../nc/dialect/dialect.ts';
import { wholeMinor } from '../quantity/minor-units.ts';
import { HOUSE } from '../text/reader.ts';
import { cut, factsOf, hours, program } from './answered.fixture.ts';
import { builtInShop } from './built-in-shop.ts';
import { nestSchema } from './files/nest-file.ts';
import { type JobInput, jobSchema } from './job.ts';
import { nestFiles, nestText, runNest } from './nest/nest-answer.ts';

const DAY = '2026-11-25';
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const drawn = (...contours: readonly Contour[]): Uint8Array =>
  bytes(
    writeDxf(
      contours.map((chain) => ({ chain })),
      'mm',
    ),
  );

const DRAWINGS: Readonly<Record<string, Uint8Array>> = {
  'angle.dxf': drawn(
    polygon([
      [0, 0],
      [40, 0],
      [40, 12],
      [12, 12],
      [12, 30],
      [0, 30],
    ]),
    disc(6, 6, 2.5),
  ),
  'bar.dxf': drawn(rectangle(44, 10)),
  'ring.dxf': drawn(disc(0, 0, 12), disc(0, 0, 6), disc(0, 0, 2)),
  'open.dxf': bytes(writeDxf([{ chain: path(rectangle(9, 9).segments.slice(0, 2)) }], 'mm')),
};

const laid = (more: object) => {
  const file = nestSchema.parse({
    thickness: 6,
    plate: { width: 110, depth: 80 },
    effort: 0.02,
    pieces: [
      { drawing: 'angle.dxf', quantity: 2 },
      { drawing: 'bar.dxf', quantity: 2, turns: 'none' },
    ],
    ...more,
  });
  return { file, answer: runNest({ file, name: 'trial', drawingOf: (name) => there(DRAWINGS[name]), shop: builtInShop, day: DAY }) };
};

const answerTo = (drawing: Uint8Array, drawingName: string, input: Omit<JobInput, 'drawing'>) => {
  const job = jobSchema.parse({ drawing: drawingName, ...input });
  return factsOf({ job, said: new Set(), drawing, drawingName, shop: builtInShop, dialect: standardDialect, day: DAY });
};

describe('a nest of one piece', () => {
  it('is told of one', () => {
    const { answer } = laid({ pieces: [{ drawing: 'bar.dxf', quantity: 1, turns: 'none' }] });
    if (answer.kind !== 'laid') throw new Error('nothing was laid');
    expect(nestText(answer, HOUSE)).toMatch(/^The piece fits on the /);
    const { answer: refused } = laid({ plate: { width: 30, depth: 30 }, pieces: [{ drawing: 'bar.dxf', quantity: 1, turns: 'none' }] });
    expect(refused.kind === 'laid' ? nestText(refused, HOUSE) : refused.kind).toMatch(/^The piece does not fit on the /);
  });
});

describe('a nest', () => {
  it('ends in a program that cuts every piece out of the plate, proven, sheets stacked and clamps kept clear of', () => {
    const { file, answer } = laid({ sheets: { stack: 2 }, price: 800, forbidden: [{ low: { x: 0, y: 70 }, high: { x: 20, y: 80 } }] });
    if (answer.kind !== 'laid') throw new Error(answer.kind);
    expect(answer.facts.nest.left).toEqual([]);
    const files = nestFiles(answer.facts, file, 'trial', { reader: HOUSE });
    const job = JSON.parse(there(files['trial.plate.job.json'])) as JobInput;
    const facts = answerTo(bytes(there(files['trial.plate.dxf'])), 'trial.plate.dxf', job);
    expect([facts.outcome.answer, program(facts).proof.verdict]).toEqual(['yes', 'proven']);
    const parts = program(facts).proof.loose.filter((l) => l.role === 'part');
    expect(parts.length).toBe(4);
    // By hand: two angles of 40·12 + 12·18 - π·2.5² mm² and two bars of 44·10 mm², and a plate of 110·80 mm² less its parts.
    const metal = 2 * (40 * 12 + 12 * 18 - Math.PI * 2.5 ** 2) + 2 * 44 * 10;
    expect(answer.facts.nest.metalArea).toBeCloseTo(metal, 6);
    const density = answer.facts.plateMass.value / (110 * 80 * 6e-6);
    expect(answer.facts.scrapMass.value).toBeCloseTo((110 * 80 - metal) * 6e-6 * density, 9);
    expect(hours(facts).estimate.metal?.mass.value).toBeCloseTo(answer.facts.plateMass.value, 9);
    expect(hours(facts).estimate.stack).toBe(2);
    expect(cut(facts).plan.height).toBeGreaterThan(12);
    const shares = answer.facts.rows.reduce((sum, r) => sum + r.laid * there(r.share).value, 0);
    expect(shares).toBeCloseTo(there(answer.facts.platePrice).value, 6);
  });

  it('cuts a part that lies in the opening of another', () => {
    const drawings: Readonly<Record<string, Uint8Array>> = {
      'washer.dxf': drawn(disc(0, 0, 30), disc(0, 0, 21)),
      'square.dxf': drawn(rectangle(12, 12)),
    };
    const file = nestSchema.parse({
      thickness: 6,
      plate: { width: 76, depth: 76 },
      effort: 0.02,
      inHoles: true,
      pieces: [{ drawing: 'washer.dxf' }, { drawing: 'square.dxf' }],
    });
    const answer = runNest({ file, name: 'hole', drawingOf: (name) => there(drawings[name]), shop: builtInShop, day: DAY });
    if (answer.kind !== 'laid') throw new Error(answer.kind);
    expect(answer.facts.nest.left).toEqual([]);
    const files = nestFiles(answer.facts, file, 'hole', { reader: HOUSE });
    const facts = answerTo(
      bytes(there(files['hole.plate.dxf'])),
      'hole.plate.dxf',
      JSON.parse(there(files['hole.plate.job.json'])) as JobInput,
    );
    expect(program(facts).proof.verdict).toBe('proven');
  });

  it('draws the plate on its own layer with every piece where it lies', () => {
    const { file, answer } = laid({});
    if (answer.kind !== 'laid') throw new Error(answer.kind);
    const { loops } = readDrawing(bytes(there(nestFiles(answer.facts, file, 'x', { reader: HOUSE })['x.plate.dxf'])), 'x.dxf', {});
    expect(loops.map((l) => l.layer).toSorted()).toEqual(['OPENING', 'OPENING', 'PART', 'PART', 'PART', 'PART', 'PLATE']);
    expect(nestFiles(answer.facts, file, 'x', { reader: HOUSE })['x.plate.svg']).toMatch(/>4<\/text>/);
  });

  it('says which pieces have no room, what has no outline, and what is lost inside an opening', () => {
    const small = laid({ plate: { width: 62, depth: 46 } });
    expect(small.answer.kind === 'laid' && small.answer.facts.nest.left.length).toBeGreaterThan(0);
    const open = laid({ pieces: [{ drawing: 'open.dxf' }] }).answer;
    expect(open.kind === 'bad input' && open.findings.map((f) => f.code)).toEqual(['nest-drawing-unusable']);
    const island = laid({ pieces: [{ drawing: 'ring.dxf' }] }).answer;
    expect(island.kind === 'laid' && island.facts.findings.map((f) => f.code)).toContain('nest-island-left');
    expect(island.kind === 'laid' && nestText(island, HOUSE)).toContain('No metal price is given');
  });
});

describe('the metal of a job', () => {
  const part = drawn(transformChain(translation(100, 50), rectangle(30, 20)));
  const base = { height: 10, material: 'd2', finish: 1.6, tolerance: 0.02 } as const;

  it('is the stock that the job names, where it lies', () => {
    const facts = answerTo(part, 'part.dxf', { ...base, stock: { width: 60, depth: 50, corner: { x: 85, y: 35 }, price: 1000 } });
    expect(facts.outcome.answer).toBe('yes');
    expect(cut(facts).plan.block.segments.map((s) => [s.from.x, s.from.y])).toEqual([
      [85, 35],
      [145, 35],
      [145, 85],
      [85, 85],
    ]);
    const line = there(hours(facts).estimate.lines.find((l) => l.cost.key === 'price.metal'));
    expect(line.cost.value).toBeCloseTo(1000 * 60 * 50 * 10 * 1e-6 * facts.asked.material.density.value, 9);
  });

  it('refuses a contour that the stock has no metal for, with its place', () => {
    const facts = answerTo(part, 'part.dxf', { ...base, stock: { width: 40, depth: 50, corner: { x: 85, y: 35 } } });
    const found = facts.findings.find((f) => f.code === 'outside-stock');
    expect([facts.outcome.answer, found?.severity, found?.place]).toEqual([
      'no',
      'refusal',
      { kind: 'spot', x: 130, y: 60, reach: 5, loop: 'L1' },
    ]);
  });

  it('is the customer’s where the job says so, and then no cost', () => {
    const { estimate } = hours(answerTo(part, 'part.dxf', { ...base, stock: { suppliedBy: 'customer' } }));
    expect(estimate.metal?.suppliedBy).toBe('customer');
    expect(estimate.lines.some((l) => l.cost.key === 'price.metal')).toBe(false);
  });

  it('shares the run of a stack among its pieces, also where the last stack is not full', () => {
    const { estimate } = hours(answerTo(part, 'part.dxf', { ...base, stack: 3, stackGap: 0.1, quantity: 4, quantityBreaks: [6] }));
    const of = (per: string): number => estimate.lines.filter((l) => l.per === per).reduce((sum, l) => sum + l.cost.value, 0);
    const { markup } = there(builtInShop.rates[0]);
    for (const { total, quantity } of estimate.breaks)
      expect(total.value).toBe(quantity * wholeMinor(((of('job') + 2 * of('run')) * (1 + markup)) / quantity));
    expect(estimate.breaks.map((b) => b.quantity)).toEqual([4, 6]);
  });
});
