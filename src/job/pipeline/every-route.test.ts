/** All routes through the pipeline stop for the same reason and write the same program: the answer, what-ifs, advice, correction, each stage. */

import { describe, expect, it } from 'vitest';
import { jobRun } from '../../cli/inputs.ts';
import { programOf } from '../../result/facts.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Finding } from '../../text/finding.ts';
import { printPlain } from '../../text/print/print.ts';
import type { Text } from '../../text/text.ts';
import { answered } from '../answered.fixture.ts';
import type { Job } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { memoryOf } from '../memory.ts';
import type { Shop } from '../shop.ts';
import { adviseRun } from '../what-if/both-orders.ts';
import { compareJob, priceCurve } from '../what-if/compare.ts';
import { timeComparison } from '../what-if/compare-time.ts';
import { correctJob } from './correct-job.ts';
import { againstOf, reasonOf, type Stopped } from './outcomes.ts';
import { runUpTo } from './pipeline.ts';

const jaw: JobRun = jobRun('examples/split-jaw/split-jaw.job.json', {}, '2026-11-25');
const without = (text: string): JobRun => ({ ...jaw, drawing: new TextEncoder().encode(text) });
const asked = (job: Partial<Job>): JobRun => ({ ...jaw, job: { ...jaw.job, ...job } });
const at = (shop: Partial<Shop>): JobRun => ({ ...jaw, shop: { ...jaw.shop, ...shop } });

/** Why each route came to nothing, in plain words; `undefined` for one that came to something. They share a memory, as in the page. */
const reasons = (given: JobRun): Readonly<Record<string, string | undefined>> => {
  const run: JobRun = { ...given, memory: memoryOf() };
  const stage = (name: (typeof ORDER)[number]): string | undefined => {
    const outcome = stoppedAt(run, name);
    return outcome === undefined ? undefined : printPlain(reasonOf(outcome));
  };
  const compared = compareJob(run);
  const advised = adviseRun(run);
  const corrected = correctJob(run, { measured: [] });
  return {
    request: stage('request'),
    program: stage('program'),
    hours: stage('hours'),
    schedule: stage('schedule'),
    compare: compared.kind === 'compared' ? undefined : said(compared),
    advise: advised.kind === 'advised' ? undefined : said(advised),
    correct: corrected.kind === 'corrected' ? undefined : said(corrected).replace('There is no program to correct. ', ''),
  };
};

const stoppedAt = (run: JobRun, stage: (typeof ORDER)[number]): Stopped | undefined => {
  const outcome = runUpTo(run, stage);
  const done = outcome.kind === 'requested' || outcome.kind === 'programmed' || outcome.kind === 'timed' || outcome.kind === 'scheduled';
  return done ? undefined : outcome;
};

type Told = { readonly findings: readonly Finding[] } | { readonly reason: Text } | { readonly sentence: Text };

const said = (told: Told): string => {
  if ('findings' in told) return sentenceOf(told.findings.find((f) => f.severity === 'refusal') ?? told.findings[0]);
  return printPlain('reason' in told ? told.reason : told.sentence);
};

/** A job that cannot be, the stage at which every route has to stop, and what it says there. */
const CANNOT: readonly (readonly [what: string, run: JobRun, stage: (typeof ORDER)[number], reason: RegExp])[] = [
  ['a drawing that is none', without('no drawing'), 'request', /./],
  ['a material that nobody knows', asked({ material: 'unobtainium' }), 'request', /unobtainium/],
  ['a wire that the shop has not', asked({ wire: 'gold-0.25' }), 'request', /gold-0\.25/],
  ['a layer that is not there', asked({ layers: ['NOWHERE'] }), 'request', /NOWHERE/],
  ['a material that does not conduct', asked({ material: 'zirconia' }), 'request', /resistivity/],
  ['a drawing of which nothing is cut', asked({ layers: [], open: {}, core: {} }), 'request', /./],
  ['a tolerance that no wire holds', asked({ tolerance: 0.0004 }), 'program', /./],
  ['a block higher than the machine', asked({ height: 5000 }), 'program', /./],
  ['a day without rates', { ...jaw, day: '1990-01-01' }, 'hours', /rates/],
  ['a shop without a shift', at({ shifts: [] }), 'schedule', /shift/],
];

const ORDER = ['request', 'program', 'hours', 'schedule'] as const;

/** How far each route goes. */
const NEEDS: Readonly<Record<string, (typeof ORDER)[number]>> = {
  request: 'request',
  program: 'program',
  hours: 'hours',
  schedule: 'schedule',
  compare: 'hours',
  advise: 'schedule',
  correct: 'program',
};

describe('every route through the pipeline', () => {
  it.each(CANNOT)('stops for the same reason: %s', (_, run, stage, reason) => {
    const stopped = reasons(run);
    const reached = (route: string): boolean => ORDER.indexOf(NEEDS[route] ?? 'request') >= ORDER.indexOf(stage);
    const first = Object.keys(stopped)
      .filter(reached)
      .map((route) => stopped[route]);
    expect(first[0]).toMatch(reason);
    expect(new Set(first)).toEqual(new Set([first[0]]));
    expect(Object.keys(stopped).filter((route) => !reached(route) && stopped[route] !== undefined)).toEqual([]);
    expect(timeComparison(run)).toBeUndefined();
    if (stage !== 'schedule') expect(priceCurve(run)).toEqual([]);
  });

  it('says the reason of the others in the answer too', () => {
    for (const [what, run, stage] of CANNOT.filter(([, , s]) => s !== 'schedule')) {
      const answer = runUpTo(run, 'answer');
      const outcome = stoppedAt(run, stage);
      const findings = answer.kind === 'answered' ? answer.facts.findings : answer.findings;
      const against = (outcome === undefined ? [] : againstOf(outcome)).filter((f) => f.severity === 'refusal').map((f) => f.code);
      expect(against.length, what).toBeGreaterThan(0);
      expect(
        findings.map((f) => f.code),
        what,
      ).toEqual(expect.arrayContaining(against));
    }
  });

  it('counts the program from its datum alike', () => {
    const run = asked({ datum: { x: 12.5, y: -3 } });
    const [made, timed, laid] = [runUpTo(run, 'program'), runUpTo(run, 'hours'), runUpTo(run, 'schedule')];
    const texts = [
      made.kind === 'programmed' && made.written.text,
      timed.kind === 'timed' && timed.made.written.text,
      laid.kind === 'scheduled' && laid.timed.made.written.text,
      programOf(answered(run).facts)?.text,
    ];
    expect(texts[0]).toContain('(PROGRAM ZERO AT X 12.5 Y -3 MM OF DRAWING)');
    expect(new Set(texts).size).toBe(1);
    expect(timed.kind === 'timed' && timed.program.actions.length).toBeGreaterThan(0);
    const plain = runUpTo(jaw, 'hours');
    const total = (outcome: typeof timed): number => (outcome.kind === 'timed' ? outcome.estimate.total.value : Number.NaN);
    // Only the way from the zero to the first start is another.
    expect(total(timed)).toBeCloseTo(total(plain), 1);
  });
});

describe('a tolerance that the wire named cannot hold', () => {
  const die = jobRun('examples/die-plate/die-plate.job.json', { wire: 'brass-0.25', tolerance: '0.001' }, '2026-11-25');

  it('leaves a no that promises nothing: what was asked for is nobody’s accuracy, and the wire is the one that was named', () => {
    const { outcome, sentence } = answered(die).facts;
    if (outcome.kind !== 'refused') throw new Error(outcome.kind);
    const { findings: _, ...plan } = outcome.refused.plan;
    expect(plan.nearest).toBeUndefined();
    expect(JSON.stringify(plan)).not.toMatch(/"(accuracy|passes|wire)":/);
    expect(printPlain(sentence)).toMatch(/^No\. .*0\.25 mm brass wire/);
  });

  it('is told from a corner that no wire in stock goes into, of which the nearest wire is known with what it does reach', () => {
    const { outcome } = answered({ ...die, job: { ...die.job, tolerance: 0.02, insideCorner: 0.05 } }).facts;
    if (outcome.kind !== 'refused') throw new Error(outcome.kind);
    const { nearest } = outcome.refused.plan;
    expect(nearest?.wire.id).toBe('brass-0.25');
    expect(nearest?.accuracy.value).not.toBe(0.02);
    expect(nearest?.accuracy.basis).toBe('computed');
  });
});
