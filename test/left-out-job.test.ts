/** What is no part of the work is one question of the answer, its remedy answers it, and the part is cut as if it had not been drawn. */
import { describe, expect, it } from 'vitest';
import { answered } from '../src/job/answered.fixture.ts';
import { builtInShop } from '../src/job/built-in-shop.ts';
import { standardDialect } from '../src/job/files/dialects.ts';
import { type JobInput, jobSchema } from '../src/job/job.ts';
import { cutOf } from '../src/result/facts.ts';
import { sentenceOf } from '../src/text/finding.fixture.ts';
import { printPlain } from '../src/text/print/print.ts';
import { asciiDxf, dxfTags, entity, lineTags, type Tag } from './dxf-writer.ts';

const box = (x: number, y: number, wide: number, high: number): readonly (readonly Tag[])[] => [
  lineTags(x, y, x + wide, y),
  lineTags(x + wide, y, x + wide, y + high),
  lineTags(x + wide, y + high, x, y + high),
  lineTags(x, y + high, x, y),
];
const hole = (x: number, y: number): readonly Tag[] => entity('CIRCLE', { 10: x, 20: y, 40: 5 });

const answer = (entities: readonly (readonly Tag[])[], job: Partial<JobInput> = {}) => {
  const drawing = asciiDxf(dxfTags({ units: 4, entities }));
  const run = { said: new Set<string>(), drawing, drawingName: 'a.dxf', shop: builtInShop, dialect: standardDialect, day: '2026-11-25' };
  const { facts } = answered({ ...run, job: jobSchema.parse({ drawing: 'a.dxf', ...job }) });
  const cut = cutOf(facts)
    ?.contours.map((c) => `${c.loop} ${c.kept}`)
    .toSorted();
  return { facts, sentence: printPlain(facts.sentence), cut };
};

describe('a part in the border of a sheet', () => {
  const framed = [...box(0, 0, 420, 297), ...box(100, 100, 60, 40), hole(130, 120)];

  it('is cut by itself, if the border is none of it', () => {
    const { facts, sentence, cut } = answer(framed);
    expect(sentence).toMatch(/^Yes, if 1 question is answered\./);
    expect(cut).toEqual(['L2 punch', 'L3 die']);
    const [asked] = facts.findings.filter((f) => f.code === 'looks-like-border');
    expect(asked?.remedy).toMatchObject({ field: 'without', value: ['L1'] });
    expect(answer(framed, { without: ['L1'] })).toMatchObject({ sentence: expect.stringMatching(/^Yes\. /), cut });
    expect(answer(framed, { kept: { L1: 'punch' } }).cut).toEqual(['L1 punch', 'L2 die', 'L3 punch']);
  });

  it('has no contour of a name that the drawing does not have', () => {
    const { facts } = answer(framed, { without: ['L1', 'L9'] });
    const [told, ...more] = facts.findings.filter((f) => f.code === 'without-of-unknown-loop');
    expect([sentenceOf(told), more]).toEqual(['L9 is to be left out, but the drawing has no contour of that name.', []]);
  });
});
