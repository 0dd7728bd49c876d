/** Answers a plate of so many openings (else 10,000) in so many sizes (else the fixture's) in a process of its own and prints the most memory it held, MB. */
import { jobRun } from '../src/cli/inputs.ts';
import { runUpTo } from '../src/job/pipeline/pipeline.ts';
import { onLargeTable, plateOf } from '../src/job/plate.fixture.ts';

const openings = Number(process.argv[2] ?? 10_000);
const sizes = process.argv[3] === undefined ? undefined : Number(process.argv[3]);
const die = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const answer = runUpTo(
  {
    ...die,
    drawing: plateOf(openings, sizes),
    shop: onLargeTable(die.shop),
    job: { ...die.job, quantityBreaks: [] },
  },
  'answer',
);
if (answer.kind !== 'answered' || answer.facts.outcome.answer !== 'yes') throw new Error('the plate was not answered with yes');
process.stdout.write(`${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);
