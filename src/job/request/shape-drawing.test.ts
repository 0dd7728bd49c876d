/** A job by numbers: which side is kept, that a change of numbers is a change of drawing, and that its program is proven. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { readDrawing } from '../../drawing/read/read-drawing.ts';
import { standardDialect } from '../../nc/dialect/dialect.ts';
import type { ShapeInput } from '../../shapes/list/questions.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { printPlain } from '../../text/print/print.ts';
import { answered, cut, factsOf, program, proven } from '../answered.fixture.ts';
import { builtInShop } from '../built-in-shop.ts';
import { parseValue } from '../files/parse.ts';
import { answerJson } from '../handout/answer-json.ts';
import { jobSchema } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { type Memory, memoryOf } from '../memory.ts';
import { proveAgain } from '../pipeline/prove-again.ts';
import { shapeDxf, shapeFile, withShape } from './shape-drawing.ts';
import { shapeForms } from './shape-keys.ts';

const runOf = (shape: ShapeInput, memory?: Memory): JobRun => {
  const shaped = withShape(
    {
      job: jobSchema.parse({ shape }),
      said: new Set(['shape']),
      drawing: new Uint8Array(),
      drawingName: '',
      shop: builtInShop,
      dialect: standardDialect,
      day: '2026-11-25',
      ...(memory === undefined ? {} : { memory }),
    },
    () => ({}),
  );
  if (shaped.kind === 'bad') throw new Error(sentenceOf(shaped.findings[0]));
  return shaped.run;
};

const spaceOf = (shape: ShapeInput) => there(there(runOf(shape).shape).sizes.find((s) => s.figure.key === 'shape.space-width'));

describe('a job by numbers', () => {
  it('keeps the inside of a piece and the outside of an opening, and proves both', () => {
    const kept = (['inside', 'outside'] as const).map((metal) => {
      const facts = factsOf(runOf({ kind: 'polygon', acrossFlats: 24, metal }));
      expect(facts.outcome.answer).toBe('yes');
      expect(program(facts).proof.verdict).toBe('proven');
      return cut(facts).plan.contours.map((c) => c.kept);
    });
    expect(kept).toEqual([['punch'], ['die']]);
  });

  it('is another drawing with every other number, also where runs share what they remember', () => {
    const memory = memoryOf();
    const across = [24, 30].map((acrossFlats) => there(factsOf(runOf({ kind: 'polygon', acrossFlats }, memory)).drawing.loops[0]).area);
    expect(there(across[1]) / there(across[0])).toBeCloseTo((30 / 24) ** 2, 9);
  });

  it('tells its sizes in the answer, and each says why', () => {
    const run = runOf({ kind: 'polygon', acrossFlats: 24, clearance: 0.02 });
    const answer = answered(run);
    expect(answerJson(answer)).toMatchObject({
      shape: { sizes: expect.arrayContaining([expect.objectContaining({ key: 'shape.across-flats', value: 23.98 })]) },
    });
    expect(answer.figures.has('shape.across-flats')).toBe(true);
  });

  it('is proven again from the drawing that is handed out with its program', () => {
    const run = runOf({ kind: 'polygon', acrossFlats: 24, metal: 'outside' });
    const { setup, question } = proven(answered(run));
    const handed = new TextEncoder().encode(shapeDxf(there(run.shape), 'inch'));
    const again = proveAgain({ program: question.program, drawing: handed, drawingName: 'handed.dxf', setup });
    expect(again).toMatchObject({ kind: 'judged', proof: { verdict: 'proven' } });
  });

  it('is told where its limits are narrower than the cut is expected to be, or than the job asks', () => {
    const codes = (shape: ShapeInput, tolerance = 0.02): readonly string[] => {
      const run = runOf(shape);
      return factsOf({ ...run, job: { ...run.job, tolerance } })
        .findings.filter((f) => f.code.startsWith('shape-limits'))
        .map((f) => f.code);
    };
    const spline = { kind: 'spline', module: 2, teeth: 12, part: 'hub', class: '7' } as const;
    const hub = spaceOf(spline);
    const room = (there(hub.limits).high - there(hub.limits).low) / 2 / there(hub.moves);
    expect(room).toBeGreaterThan(0.015);
    expect(codes(spline, 0.05)).toEqual(['shape-limits-unasked']);
    expect(codes(spline, room - 0.001)).toEqual([]);
    expect(codes({ kind: 'keyway-hub', shaft: 10, boreZone: 'H6' })).toEqual(['shape-limits-narrow']);
    expect(codes({ kind: 'polygon', acrossFlats: 24 })).toEqual([]);
    const [narrow] = factsOf({ ...runOf(spline), job: { ...runOf(spline).job, tolerance: 0.05 } }).findings.filter(
      (f) => f.code === 'shape-limits-unasked',
    );
    // What it offers leaves out no more than the last tenth of a micrometre.
    expect(narrow?.remedy).toMatchObject({ field: 'tolerance', value: expect.closeTo(room - 0.00005, 4) });
    expect(narrow?.remedy?.value).toBeLessThanOrEqual(room);
    // A bore of 10 H6 has 9 µm (ISO 286-2), which two walls share to either side: 2.25 µm, rounded down.
    const bore = runOf({ kind: 'keyway-hub', shaft: 10, boreZone: 'H6' });
    expect(factsOf(bore).findings.find((f) => f.code === 'shape-limits-narrow')?.remedy?.value).toBe(0.0022);
  });

  it('is drawn alike in mm and in inches', () => {
    const { shape } = runOf({ kind: 'polygon', acrossFlats: 24 });
    const areas = (['mm', 'inch'] as const).map((unit) => {
      const { loops, units } = readDrawing(new TextEncoder().encode(shapeDxf(there(shape), unit)), shapeFile({ kind: 'polygon' }), {});
      return there(loops[0]).area * units.millimetres ** 2;
    });
    expect(there(areas[1]) / there(areas[0])).toBeCloseTo(1, 9);
  });

  it('wants a drawing or a shape, and no unit beside a shape', () => {
    const wrong = (value: object): string => {
      const parsed = parseValue(jobSchema, value, 'The job');
      return parsed.kind === 'bad' ? `${sentenceOf(parsed.findings[0])}` : 'right';
    };
    expect(wrong({})).toBe('The job: drawing is not right: a drawing or a shape is required.');
    expect(wrong({ shape: { kind: 'polygon', acrossFlats: 24 }, units: 'inch' })).toBe(
      'The job: units is not right: they belong to a drawing; a shape is given in mm.',
    );
    expect(wrong({ shape: { kind: 'polygon' } })).toBe('The job: shape.acrossFlats is missing.');
    expect(wrong({ shape: { kind: 'banana' } })).toMatch(/^The job: shape\.kind/);
  });
});

/** Options of the whole job that stand beside the numbers of a shape on the command line. */
const JOB_OPTIONS =
  'name material height wire finish tolerance insideCorner ease join quantity units outline dialect shop date json inch out answer'.split(
    ' ',
  );

describe('the numbers of a shape', () => {
  for (const { kind, keys } of shapeForms())
    it(`${kind}: each is described, with its unit, and stands in no option's way`, () => {
      expect(keys.filter((k) => JOB_OPTIONS.includes(k.key)).map((k) => k.key)).toEqual([]);
      expect(keys.filter((k) => printPlain(k.about).length < 8).map((k) => k.key)).toEqual([]);
    });
});
