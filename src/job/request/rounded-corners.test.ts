/** Inside corners that are rounded as agreed are told as a repair, and a radius that would eat up a contour is refused. */
import { describe, expect, it } from 'vitest';
import { jobRun } from '../../cli/inputs.ts';
import type { Finding } from '../../text/finding.ts';
import { runUpTo } from '../pipeline/pipeline.ts';

const insert = jobRun('examples/form-insert/form-insert-eased.job.json', {}, '2026-11-25');
const easedBy = (ease: number): readonly Finding[] => {
  const answer = runUpTo({ ...insert, job: { ...insert.job, ease } }, 'answer');
  if (answer.kind !== 'answered') throw new Error(answer.kind);
  return answer.facts.findings;
};

describe('easing', () => {
  it('changes sharp corners, and says of how many contours', () => {
    const repair = easedBy(insert.job.ease).find((f) => f.code === 'corners-eased');
    expect(repair).toMatchObject({ severity: 'repair', place: { kind: 'field', path: 'ease' } });
    expect(easedBy(0).map((f) => f.code)).not.toContain('corners-eased');
  });

  it('by a radius wider than a contour is refused, and each such contour is named', () => {
    const failed = easedBy(40).filter((f) => f.code === 'ease-failed');
    expect(failed.length).toBeGreaterThan(0);
    for (const { severity, place } of failed) expect([severity, place?.kind]).toEqual(['refusal', 'spot']);
  });
});
