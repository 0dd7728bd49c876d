/**
 * Where the proof refuses what was planned, the plan is made again with other entries, and so other holes and tabs, for the contours at which it
 * failed. Only after a refusal, and a few times: an ordinary job is proven once.
 */
import { boundsOfChain } from '../../geometry/area.ts';
import { distanceTo } from '../../geometry/near/distance.ts';
import type { Point } from '../../geometry/segment.ts';
import type { Proof } from '../../proof/proof.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, count, list } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { proofQuestion } from '../files/setup-file.ts';
import { find } from '../findings.ts';
import type { Job } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import type { CutRequest } from '../request/request.ts';
import { asDrawn } from '../request/scale.ts';
import type { ProvenProgram } from './answer.ts';
import type { NoHours, Timed } from './outcomes.ts';
import { setupOf } from './setup-of.ts';
import { madeOf, provenOf } from './stages.ts';
import { timed } from './timed.ts';

/** So many other plans are tried. */
const MOST_TRIES = 4;

/** Another entry, hole or tab may mend these; sizes and energies come out the same wherever a contour is begun. */
const BY_START: ReadonlySet<string> = new Set([
  'piece-falls-unheld',
  'tab-too-weak',
  'tab-left-standing',
  'slug-not-taken-out',
  'kept-metal-falls',
  'kept-metal-cut',
  'contour-gouged',
  'cut-in-fallen-piece',
  'threaded-in-metal',
]);

export interface Settled {
  readonly hours: Timed | NoHours;
  readonly proven: ProvenProgram;
  readonly proof: Proof;
  /** What was refused on the way to a plan that is proven; none where the first one is. */
  readonly refused?: Refused | undefined;
  /** That it was planned again, or that no plan was proven. */
  readonly findings: readonly Finding[];
}

/** The plan as it came where the proof agrees, or else the first of a few others that is proven. */
export const settledPlan = (run: JobRun, hours: Timed | NoHours): Settled => {
  const first = judged(run, hours);
  if (first.proof.verdict === 'proven') return { ...first, findings: [] };
  let [last, tries] = [first, 0];
  let refused: Refused = {};
  for (; tries < MOST_TRIES; tries += 1) {
    const again = refusedOf(last, refused);
    if (again === undefined) break;
    refused = again;
    const next = plannedAgain(run, first.hours, refused);
    if (next === undefined) break;
    last = next;
    if (next.proof.verdict === 'proven')
      return { ...next, refused, findings: [find('planned-again', words.again(Object.keys(refused), tries + 1))] };
  }
  return {
    ...first,
    findings: isOurs(run.job, first.proof) ? [find('plan-not-proven', words.ours(tries + 1), { remedy: words.byHand })] : [],
  };
};

type JudgedPlan = Omit<Settled, 'findings' | 'refused'>;
/** By loop id: entries at which the proof failed. */
type Refused = Readonly<Record<string, readonly Point[]>>;

const judged = (run: JobRun, hours: Timed | NoHours): JudgedPlan => {
  const proven = provenProgramOf(run, hours);
  return { hours, proven, proof: provenOf(run, proven) };
};

/** The question that the program puts to the proof, and what else it takes to put it again. */
const provenProgramOf = (run: JobRun, { made, program }: Timed | NoHours): ProvenProgram => {
  const { asked, plan, written } = made;
  const { request, material } = asked;
  const setup = setupOf(run, request, plan, material, written);
  return {
    setup,
    read: program,
    question: proofQuestion(written.text, setup, request.wanted, asDrawn(plan.block, request.scaled), request.lines),
  };
};

/** With the entries of the contours at which the proof failed now; nothing where another entry would not help. */
const refusedOf = ({ hours, proof }: JudgedPlan, before: Refused): Refused | undefined => {
  const { plan, asked } = hours.made;
  const at = new Set(
    proof.findings.flatMap((f) => (f.severity === 'refusal' && BY_START.has(f.code) ? (loopAt(f, asked.request) ?? []) : [])),
  );
  const own = plan.contours.filter((c) => at.has(c.loop));
  if (own.length === 0) return undefined;
  return { ...before, ...Object.fromEntries(own.map((c) => [c.loop, [...(before[c.loop] ?? []), c.entry.at]])) };
};

/** The contour that a finding names, or else the nearest to its place. */
const loopAt = ({ place }: Finding, { wanted }: CutRequest): string | undefined => {
  if (place?.kind !== 'spot') return undefined;
  if (place.loop !== undefined) return place.loop;
  let [loop, least]: [string | undefined, number] = [undefined, Infinity];
  for (const w of wanted) {
    const b = boundsOfChain(w.contour);
    if (Math.max(b.minX - place.x, place.x - b.maxX, b.minY - place.y, place.y - b.maxY) >= least) continue;
    const away = distanceTo(w.contour, place);
    if (away < least) [loop, least] = [w.loop, away];
  }
  return loop;
};

/** With the same wire, so that the price is still that of the table of wires but for other ways in. */
const plannedAgain = (run: JobRun, { made }: Timed | NoHours, refused: Refused): JudgedPlan | undefined => {
  const { asked, plan } = made;
  const request: CutRequest = { ...asked.request, question: { ...asked.request.question, settled: plan.wire.id, refused } };
  const again = madeOf(run, request);
  if (again.kind !== 'made') return undefined;
  return judged(run, timed(run, { kind: 'programmed', asked: { ...asked, request }, plan: again.plan, written: again.written }));
};

/** A plan in which the user set what the proof looks at may fail by that. */
const isOurs = ({ offsets, overrides, order, passes, programShare }: Job, { findings }: Proof): boolean =>
  offsets === undefined &&
  passes === undefined &&
  programShare === undefined &&
  order.length === 0 &&
  Object.keys(overrides).length === 0 &&
  findings.some((f) => f.severity === 'refusal');

const words = phrases('plan-again', {
  again: (loops: readonly string[], tries: number) =>
    say`Our own proof refused the first plan; ${{ loops: list(loops.map(contour)) }} now start elsewhere, and plan ${{ plan: count(tries + 1) }} is proven.`,
  ours: (plans: number) =>
    say`Our own proof refused every plan that was made (${{ plans: count(plans) }}): that is a fault of this software and says nothing against the drawing. No reply to the customer is printed.`,
  byHand: say`Set entry, start hole or tab of the contour named by hand and try again, or program this one yourself; the reasons below are the proof's.`,
});
