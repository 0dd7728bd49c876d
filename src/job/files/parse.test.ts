/** Faults of a file are told by field and in words that somebody who writes the file understands. */

import { describe, expect, it } from 'vitest';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { jobSchema } from '../job.ts';
import { parseFile } from './parse.ts';

const told = (text: string): readonly string[] => {
  const parsed = parseFile(jobSchema, text, 'a.job.json');
  return parsed.kind === 'bad' ? parsed.findings.map((f) => sentenceOf(f).replace('a.job.json: ', '')) : [];
};

describe('a job file', () => {
  it.each([
    ['{}', 'drawing is not right: a drawing or a shape is required.'],
    ['{"drawing":""}', 'drawing must be at least 1 letter long.'],
    ['{"drawing":"a.dxf","height":"25"}', 'height must be a number.'],
    ['{"drawing":"a.dxf","height":-3}', 'height must be at least 0.01.'],
    ['{"drawing":"a.dxf","height":2000}', 'height must be at most 1000.'],
    ['{"drawing":"a.dxf","quantity":2.5}', 'quantity must be a whole number.'],
    ['{"drawing":"a.dxf","outline":"part"}', "outline must be 'cut' or 'block'."],
    ['{"drawing":"a.dxf","date":"2026-02-30"}', 'date must be a day, as in 2026-11-25.'],
    ['{"drawing":"a.dxf","colour":"red"}', "the file has no field 'colour'."],
    ['{"drawing":"a.dxf","holes":[{"at":{"x":1}}]}', 'holes.0.at.y is missing.'],
    ['[]', 'the file must be a group of fields in curly brackets.'],
  ])('with %s is told what is wrong', (text, sentence) => {
    expect(told(text)).toContain(sentence);
  });
});
