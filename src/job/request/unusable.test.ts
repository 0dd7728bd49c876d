/** A job that names what is not there is bad input for every command, not an answer of no. */

import { describe, expect, it } from 'vitest';
import { jobRun } from '../../cli/inputs.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { JobRun } from '../job-run.ts';
import { correctJob } from '../pipeline/correct-job.ts';
import { runJob } from '../pipeline/pipeline.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const asking = (job: Partial<JobRun['job']>): JobRun => ({ ...die, job: { ...die.job, ...job } });

describe('a job that cannot be judged', () => {
  it.each([
    ['a wire that the shop has not', asking({ wire: 'gold-0.25' }), 'wire', /no wire called 'gold-0\.25'; it has brass-0\.30/],
    ['a layer that the drawing has not', asking({ layers: ['PLATE', 'plate'] }), 'layers', /no layer 'plate'; it has 'PLATE'/],
    ['a material that nobody knows', asking({ material: 'cheese' }), undefined, /cheese/],
    ['a file that is no drawing', { ...die, drawing: new Uint8Array([1, 2, 3]) }, undefined, /./],
  ])('is bad input where it names %s', (_, run, path, sentence) => {
    const answers = [runJob(run).answer, correctJob(run, { measured: [], change: 0.001 })];
    for (const answer of answers) {
      if (answer.kind !== 'bad input') throw new Error(answer.kind);
      const told = answer.findings.find((f) => f.place?.kind === 'field' && f.place.path === path) ?? answer.findings[0];
      expect(sentenceOf(told)).toMatch(sentence);
      if (path !== undefined) expect(told?.place).toEqual({ kind: 'field', path });
    }
  });

  it('is answered with no where the material does not conduct', () => {
    expect(runJob(asking({ material: 'glass' })).answer.kind).toBe('cannot');
    expect(correctJob(asking({ material: 'glass' }), { measured: [], change: 0.001 }).kind).toBe('cannot');
  });
});
