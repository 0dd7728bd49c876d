/** A job with open lines, clamps and ways in from the edge, from the drawing to the papers, and proven again from its files alone. */

import { describe, expect, it } from 'vitest';
import { jobRun } from '../src/cli/inputs.ts';
import { printedTable, told } from '../src/documents/paper-for-reader.ts';
import { holeTable } from '../src/documents/part/job-tables.ts';
import { openTable } from '../src/documents/part/open-table.ts';
import { planPicture } from '../src/documents/part/plan-picture.ts';
import { setupSheet } from '../src/documents/sheet/setup-sheet.ts';
import { answered, cut, program, proven } from '../src/job/answered.fixture.ts';
import { setupSchema } from '../src/job/files/setup-file.ts';
import { proofText } from '../src/job/handout/proof-report.ts';
import { type JobInput, jobSchema } from '../src/job/job.ts';
import type { JobRun } from '../src/job/job-run.ts';
import type { Answered } from '../src/job/pipeline/answer.ts';
import { proveAgain } from '../src/job/pipeline/prove-again.ts';
import type { JobFacts } from '../src/result/facts.ts';
import { sentenceOf } from '../src/text/finding.fixture.ts';
import { printPlain } from '../src/text/print/print.ts';
import { HOUSE } from '../src/text/reader.ts';
import { asciiDxf, type Tag } from './dxf-writer.ts';
import { there } from './there.ts';

const example: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');

const lineTags = (x1: number, y1: number, x2: number, y2: number): readonly Tag[] => [
  [0, 'LINE'],
  [8, '0'],
  [10, x1],
  [20, y1],
  [11, x2],
  [21, y2],
];

const box = (x: number, y: number, w: number, h: number): readonly Tag[] => [
  ...lineTags(x, y, x + w, y),
  ...lineTags(x + w, y, x + w, y + h),
  ...lineTags(x + w, y + h, x, y + h),
  ...lineTags(x, y + h, x, y),
];

const drawing = (...entities: readonly (readonly Tag[])[]): Uint8Array =>
  asciiDxf([
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$INSUNITS'],
    [70, 4],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...entities.flat(),
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ]);

/** A step across a block of 100 by 60, away from its edge by a hair so that it is no part of it, and an opening. */
const stepped = drawing(
  box(0, 0, 100, 60),
  box(20, 35, 25, 15),
  lineTags(0.01, 20, 40, 20),
  lineTags(40, 20, 40, 15),
  lineTags(40, 15, 99.99, 15),
);

const run = (bytes: Uint8Array, job: Omit<JobInput, 'drawing'>): Answered =>
  answered({ ...example, drawing: bytes, drawingName: 'stepped.dxf', job: jobSchema.parse({ drawing: 'stepped.dxf', ...job }) });

const JOB: Omit<JobInput, 'drawing'> = {
  outline: 'block',
  open: { C1: 'left' },
  start: { L2: 'edge' },
  clamps: [{ low: { x: 80, y: 40 }, high: { x: 100, y: 60 } }],
};

describe('a job with an open line', () => {
  const answer = run(stepped, JOB);
  const { facts } = answer;

  it('is answered with yes, and says of the line how it is cut instead of that it is not', () => {
    expect([facts.outcome.answer, printPlain(facts.sentence)]).toEqual(['yes', expect.stringMatching(/^Yes\. /)]);
    const codes = facts.findings.map((f) => f.code);
    expect([codes.includes('open-line-cut'), codes.includes('open-chain'), codes.includes('chain-ends-on-loop')]).toEqual([
      true,
      false,
      false,
    ]);
    expect(there(program(facts).proof.open).map((o) => [o.chain, o.state])).toEqual([
      ['C1', 'right'],
      ['lead 1', 'right'],
    ]);
  });

  it('is proven again from drawing, program and set-up file, and not with the other side kept', () => {
    const setup = setupSchema.parse(JSON.parse(JSON.stringify(proven(answer).setup)));
    const again = (changed: typeof setup) =>
      proveAgain({ program: program(facts).text, drawing: stepped, drawingName: 'stepped.dxf', setup: changed });
    const good = again(setup);
    expect(good.kind === 'judged' && good.proof.verdict).toBe('proven');
    expect(good.kind === 'judged' && proofText(good.proof)).toContain('C1, its left side kept: in tolerance');
    const other = again({ ...setup, open: { C1: 'right' } });
    expect(other.kind === 'judged' && other.proof.verdict).toBe('not proven');
    const bare = again({ ...setup, leads: [] });
    expect(bare.kind === 'judged' && bare.proof.verdict).toBe('not proven');
    const unknown = again({ ...setup, open: { C9: 'left' } });
    expect(unknown.kind === 'bad input' && sentenceOf(unknown.findings[0])).toContain('C9');
  });

  it('has clamps, line and lead in the picture and the tables of the set-up sheet', () => {
    const without = run(stepped, { ...JOB, clamps: [] }).facts;
    const boxes = (f: JobFacts): number => there(planPicture(f)).strokes.filter((s) => s.fill === 0.75).length;
    expect([boxes(facts), boxes(without)]).toEqual([1, 0]);
    expect(there(planPicture(facts)).labels.map(({ text }) => told(text, HOUSE))).toContain('C1');
    expect(JSON.stringify(setupSheet(facts, { cut: cut(facts), program: program(facts) }))).toContain('Grey crossed box: clamp.');
    expect(printedTable(openTable(there(cut(facts).plan.openCuts)), HOUSE).rows[0]).toEqual(
      expect.arrayContaining(['C1', 'its left side', expect.stringMatching(/^waste, /)]),
    );
    expect(printedTable(holeTable(cut(facts).contours), HOUSE).rows[0]).toEqual(expect.arrayContaining(['L2', 'none', 'from the edge']));
  });

  it('is refused when a clamp stands in the way of the line', () => {
    const barred = run(stepped, { ...JOB, clamps: [{ low: { x: 60, y: 0 }, high: { x: 75, y: 30 } }] }).facts;
    expect([barred.outcome.answer, barred.findings.find((f) => f.code === 'cuts-clamp')?.place]).toEqual([
      'no',
      expect.objectContaining({ loop: 'C1' }),
    ]);
  });

  it('that the drawing does not have is told, and lines without a word in the job are left alone', () => {
    const codes = run(stepped, { outline: 'block', open: { C7: 'slit' } }).facts.findings.map((f) => f.code);
    expect([codes.includes('open-of-unknown-line'), codes.includes('open-chain'), codes.includes('open-line-cut')]).toEqual([
      true,
      true,
      false,
    ]);
  });

  it('may be all there is in the drawing', () => {
    const only = run(drawing(lineTags(0, 0, 40, 0), lineTags(40, 0, 40, 10), lineTags(40, 10, 80, 10)), { open: { C1: 'slit' } }).facts;
    expect([only.outcome.answer, cut(only).contours.length, there(cut(only).plan.openCuts).length]).toEqual(['yes', 0, 1]);
    expect(only.findings.some((f) => f.code === 'no-loop')).toBe(false);
  });
});
