/** A job that names what is not there is bad input for every command, not an answer of no. */

import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, lightPolyline, lineTags } from '../../../test/dxf-writer.ts';
import { jobRun } from '../../cli/inputs.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { JobRun } from '../job-run.ts';
import { correctJob } from '../pipeline/correct-job.ts';
import { runUpTo } from '../pipeline/pipeline.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const asking = (job: Partial<JobRun['job']>): JobRun => ({ ...die, job: { ...die.job, ...job } });

describe('a job that cannot be judged', () => {
  it.each([
    [
      'a wire that the shop has not',
      asking({ wire: 'gold-0.25' }),
      'wire',
      'file-not-valid',
      /no wire named 'gold-0\.25'; it has brass-0\.30/,
    ],
    [
      'a layer that the drawing has not',
      asking({ layers: ['PLATE', 'plate'] }),
      'layers',
      'layer-unknown',
      /no layer 'plate'; it has '0', 'PLATE'/,
    ],
    ['a material that nobody knows', asking({ material: 'cheese' }), 'material', 'material-unknown', /cheese/],
    ['a file that is no drawing', { ...die, drawing: new Uint8Array([1, 2, 3]) }, undefined, 'not-a-drawing', /./],
  ])('is bad input where it names %s', (_, run, path, code, sentence) => {
    const answers = [runUpTo(run, 'answer'), correctJob(run, { measured: [], change: 0.001 })];
    for (const answer of answers) {
      if (answer.kind !== 'bad input') throw new Error(answer.kind);
      const found = answer.findings.find((f) => f.code === code);
      expect(sentenceOf(found)).toMatch(sentence);
      if (path !== undefined) expect(found?.place).toEqual({ kind: 'field', path });
    }
  });

  it('is answered with no where the material does not conduct', () => {
    const answer = runUpTo(asking({ material: 'glass' }), 'answer');
    expect([answer.kind, answer.kind === 'cannot' && answer.findings.map((f) => f.code)]).toEqual(['cannot', ['material-not-conducting']]);
    expect(correctJob(asking({ material: 'glass' }), { measured: [], change: 0.001 }).kind).toBe('cannot');
  });

  it('is answered with no where the layers asked for hold nothing that closes', () => {
    const outline = lightPolyline([
      [0, 0],
      [40, 0],
      [40, 30],
      [0, 30],
    ]);
    const drawing = asciiDxf(dxfTags({ version: 'AC1015', units: 4, entities: [outline, lineTags(5, 5, 20, 5, 'BEND')] }));
    const refusals = (layers: readonly string[]): unknown => {
      const answer = runUpTo({ ...asking({ layers: [...layers], outline: 'cut' }), drawing }, 'answer');
      if (answer.kind !== 'answered') throw new Error(answer.kind);
      return answer.facts.findings.filter((f) => f.severity === 'refusal').map((f) => f.code);
    };
    expect(refusals(['BEND'])).toEqual(['no-closed-contour']);
    expect(refusals(['0'])).toEqual([]);
  });
});
