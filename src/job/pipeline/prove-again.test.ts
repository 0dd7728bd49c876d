/** A program is proven against the drawing as it was read when the program was made. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { jobRun } from '../../cli/inputs.ts';
import { answered, proven } from '../answered.fixture.ts';
import type { JobRun } from '../job-run.ts';
import { proveAgain } from './prove-again.ts';

const insert: JobRun = jobRun('examples/form-insert/form-insert-eased.job.json', {}, '2026-11-25');

/** The same drawing with its header's unit taken away. */
const unitless = (run: JobRun): Uint8Array =>
  new TextEncoder().encode(new TextDecoder().decode(run.drawing).replace(/(\$INSUNITS\s+70\s+)4/, '$10'));

describe('proving again', () => {
  it('reads the drawing in the unit that the job gave it', () => {
    const shop = { ...insert.shop, machines: [{ ...there(insert.shop.machines[0]), travel: { x: 9000, y: 9000 } }] };
    const run: JobRun = {
      ...insert,
      shop,
      drawing: unitless(insert),
      job: { ...insert.job, units: 'cm', ease: 0, insideCorner: 5, tolerance: 0.02 },
    };
    const { setup, question: asked } = proven(answered(run));
    const question = { program: asked.program, drawing: run.drawing, drawingName: run.drawingName };
    const again = proveAgain({ ...question, setup });
    expect(again).toMatchObject({ kind: 'judged', proof: { verdict: 'proven' }, drawing: { units: { name: 'cm' } } });
    expect(proveAgain({ ...question, setup, units: 'mm' })).toMatchObject({ kind: 'judged', proof: { verdict: 'not proven' } });
  });
});
