/** The proof: program text, cut in the computer and held against the drawing. Knows nothing of who wrote the program. */

import { placedProgram } from '../../nc/read/placed-program.ts';
import type { Action, Block, ReadProgram } from '../../nc/read/program.ts';
import { type ProgramLimits, programLimits, readProgram } from '../../nc/read/read.ts';
import type { Finding } from '../../text/finding.ts';
import { name } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import { find } from '../findings.ts';
import type { Proof, ProofQuestion, ToleranceUse } from '../proof.ts';
import { allowedTo, mostOff, tightest } from '../share.ts';
import { measuresOf } from '../sweep/deviation.ts';
import type { GroupWork } from '../sweep/group-alone.ts';
import { memory, workOf } from '../sweep/group-alone.ts';
import { groupsOf } from '../sweep/groups.ts';
import { looseOf } from '../sweep/loose.ts';
import { outlineOf, placedAt } from '../sweep/outline.ts';
import type { GroupOutcome, Proven } from '../sweep/proven-group.ts';
import { releaseOf } from '../sweep/release.ts';
import { RESOLUTION } from '../sweep/sweep.ts';
import { coveredBy } from '../sweep/unfinished.ts';
import type { Trace } from '../sweep/wire-doings.ts';
import { traceOf } from '../sweep/wire-doings.ts';
import { type Judged, judge } from './judge.ts';
import { scaleFault, warmed } from './scaled.ts';
import { startsOf } from './starts.ts';
import { unusable } from './unusable.ts';

/**
 * Reads the program back and proves it. Nothing is proven of a program that its control would refuse: then the contours stay
 * empty and the findings name the block.
 *
 * @returns deviations in mm to `resolution`; the verdict is `proven` only when no finding is a refusal.
 */
export const proveProgram = (question: ProofQuestion): Proof =>
  proveRead(
    placedProgram(readProgram(question.program, question.dialect, question.registers, limitsFor(question)), question.datum),
    question,
  );

/** With what limits a program is read that is held against this question: the ends of an arc may miss each other by what a program may be off. */
export const limitsFor = (question: ProofQuestion): ProgramLimits => ({ ...programLimits, arcEnds: allowedTo(tightest(question)) });

/** The same for a program that the caller has read from this very text, dialect and registers, and placed at the datum, so that it is not read twice. */
export const proveRead = (read: ReadProgram, question: ProofQuestion): Proof => {
  if (read.state === 'read' && !read.findings.some((f) => f.severity === 'refusal')) {
    const proof = proveActions(read.actions, question, read.blocks);
    return { ...proof, findings: [...read.findings, ...proof.findings] };
  }
  const fault = read.findings.find((f) => f.severity === 'refusal');
  const finding = find('program-not-readable', say`The program cannot be read to its end: ${{ fault: fault?.text ?? words.broken }}`, {
    place: fault?.place,
    remedy: say`Correct the block and prove the program again.`,
  });
  return unproven([...read.findings, finding], finding);
};

/** The same for actions that were read, or made, elsewhere. `blocks` gives the text that findings quote. */
export const proveActions = (actions: readonly Action[], asked: ProofQuestion, blocks: readonly Block[] = []): Proof => {
  const trouble = unusable(asked) ?? scaleFault(asked);
  if (trouble !== undefined) return unproven([trouble], trouble);
  const question = warmed(asked);
  const trace = traceOf(actions, question);
  const proven = provenGroups(trace, question);
  const loose = looseOf(proven, trace, question);
  const judged = judge({ trace, proven, loose, question, actions, blocks });
  return {
    verdict: judged.reasons.some((r) => r.finding.severity === 'refusal') ? 'not proven' : 'proven',
    resolution: RESOLUTION,
    use: toleranceUse(question, judged),
    contours: judged.contours,
    open: judged.open.length === 0 ? undefined : judged.open,
    loose: loose.map((l) => l.finding),
    stops: trace.stops.map(({ block, comment, said = only(name(comment)), details, at }) => ({ block, comment, text: said, details, at })),
    findings: judged.reasons.map((r) => r.finding),
    reasons: judged.reasons,
    openings: proven.flatMap((p) => p.outcome.openings.map((outline) => placedAt(outline, p.origin))),
    cuts: trace.cuts,
  };
};

const toleranceUse = (question: ProofQuestion, { contours, open }: Judged): ToleranceUse => ({
  tolerance: question.tolerance,
  allowed: allowedTo(question),
  measured: mostOff(ofTheJob(question, { contours, open })),
  fit: Math.max(0, ...[...question.wanted, ...(question.wantedOpen ?? [])].map((w) => w.fit ?? 0)),
});

/** Contours with a tolerance of their own use that; where all have one, all count. */
const ofTheJob = ({ wanted, wantedOpen = [] }: ProofQuestion, { contours, open }: Pick<Judged, 'contours' | 'open'>) => {
  const own = new Set([
    ...wanted.flatMap((w) => (w.tolerance === undefined ? [] : [w.loop])),
    ...wantedOpen.flatMap((w) => (w.tolerance === undefined ? [] : [w.chain])),
  ]);
  const others = [...contours.filter((c) => !own.has(c.loop)), ...open.filter((o) => !own.has(o.chain))];
  return others.length === 0 ? [...contours, ...open] : others;
};

const unproven = (findings: readonly Finding[], reason: Finding): Proof => ({
  verdict: 'not proven',
  resolution: RESOLUTION,
  contours: [],
  loose: [],
  stops: [],
  findings,
  reasons: [{ finding: reason }],
  openings: [],
  cuts: [],
});

const provenGroups = (trace: Trace, question: ProofQuestion): readonly Proven[] => {
  const groups = groupsOf(trace.cuts, question);
  const ways = { travelsAfter: new Map(trace.travels.map((t, i) => [t.before, i] as const)), starts: startsOf(trace) };
  const remembered = memory<GroupOutcome>();
  return groups.map((group) => {
    const placed = workOf(group, trace, ways, question);
    return { group, origin: placed.origin, outcome: remembered(placed, outcomeOf), travels: placed.work.travels.map((t) => t.after) };
  });
};

const outcomeOf = (work: GroupWork): GroupOutcome => {
  const release = releaseOf(work);
  const { contours, open } = measuresOf(work, release);
  return {
    pieces: release.pieces.map(({ loop, openings, ...piece }) => ({
      ...piece,
      outline: outlineOf(loop),
      openings: openings.map(outlineOf),
    })),
    fresh: release.fresh,
    runs: work.cuts.map((c) => c.run),
    removed: release.removed,
    throughMetal: release.throughMetal,
    starts: release.starts,
    inFull: release.inFull,
    covered: coveredBy(work),
    measures: contours,
    open,
    openings: release.empty.map(outlineOf),
  };
};

const words = phrases('program-not-readable', { broken: say`a rule was broken.` });
