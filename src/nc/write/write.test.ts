/** Program texts word by word, and the plans that cannot become one. */

import { describe, expect, it } from 'vitest';
import { inventedWords } from '../../../test/nc/dialects.ts';
import { arc, line, point } from '../../geometry/segment.ts';
import type { Step } from '../../plan/plan.ts';
import type { Figure } from '../../quantity/figure.ts';
import { name } from '../../text/part.ts';
import { only } from '../../text/say.ts';
import { type Dialect, standardDialect } from '../dialect/dialect.ts';
import { type ProgramPlan, writeProgram } from './write.ts';

const length = (value: number): Figure => ({ value, low: value, high: value, unit: 'mm' }) as Figure;
const pass = (number: number, offset: number) => ({
  number,
  condition: 10 + number,
  register: number,
  offset: length(offset),
  gap: length(0.02 * number),
});

const hole = point(2, 2);
const entry = point(2, 0);
const cut = (
  part: 'approach' | 'contour' | 'leave',
  programmed?: ReturnType<typeof line> | ReturnType<typeof arc>,
  centre = programmed,
): Step => ({
  kind: 'cut',
  pass: 1,
  part,
  ...(programmed === undefined ? {} : { programmed }),
  ...(centre === undefined ? {} : { centre }),
});

/** A corner and a quarter circle: enough to see every kind of word. */
const steps: readonly Step[] = [
  { kind: 'contour begins', loop: 'L1', name: only(name('L1 die opening')) },
  { kind: 'travel', to: hole },
  { kind: 'thread', at: hole },
  { kind: 'condition', pass: 1 },
  { kind: 'compensate', side: 'left', register: 1 },
  cut('approach', line(hole, entry), line(hole, point(2, 0.2))),
  cut('contour', line(entry, point(4, 0)), line(point(2, 0.2), point(4, 0.2))),
  { kind: 'stop', purpose: 'check', loop: 'L1', text: only(name('measure (twice).')) },
  cut('contour', arc(point(4, 0), point(6, 2), point(4, 2), Math.PI / 2), arc(point(4, 0.2), point(5.8, 2), point(4, 2), Math.PI / 2)),
  { kind: 'cancel compensation' },
  cut('leave', line(point(6, 2), hole), line(point(5.8, 2), hole)),
  { kind: 'cut wire' },
  { kind: 'end' },
];
const plan: ProgramPlan = { steps, passes: [pass(1, 0.2), pass(2, 0.15)] };
const header = { name: 'Plate 1', date: '2026-03-04', notes: [] };

const written = (dialect: Partial<Dialect> = {}, given: ProgramPlan = plan) =>
  writeProgram(given, { ...standardDialect, ...dialect }, header);
const textOf = (dialect: Partial<Dialect> = {}, given: ProgramPlan = plan): readonly string[] => {
  const program = written(dialect, given);
  return program.kind === 'written' ? program.text.trimEnd().split('\n') : program.findings.map((finding) => finding.code);
};
const withSteps = (more: readonly Step[]): ProgramPlan => ({ ...plan, steps: more });
const refusal = (more: readonly Step[], dialect: Partial<Dialect> = {}): readonly string[] => {
  const program = written(dialect, withSteps(more));
  return program.kind === 'refused' ? program.findings.map((finding) => finding.code) : ['was written'];
};

describe('a program in the standard dialect', () => {
  it('stands word by word', () => {
    expect(textOf()).toEqual([
      '%',
      '(PLATE 1)',
      '(2026-03-04)',
      '(UNITS MM)',
      '(PASS 1, CONDITION 11, OFFSET D1 = 0.2)',
      '(PASS 2, CONDITION 12, OFFSET D2 = 0.15)',
      'N10 G17 G71 G90 G40',
      '(CONTOUR L1 DIE OPENING)',
      'N20 G00 X2. Y2.',
      'N30 M00 (THREAD THE WIRE, ALL ON, FOR L1 DIE OPENING)',
      'N40 M00 (CONDITION 11)',
      'N50 G41 D1 G01 X2. Y0.',
      'N60 G01 X4. Y0.',
      'N70 M00 (L1 MEASURE, TWICE.)',
      'N80 G03 X6. Y2. I0. J2.',
      'N90 G40 G01 X2. Y2.',
      'N100 M00 (CUT THE WIRE)',
      'N110 M02',
      '%',
    ]);
  });

  it('comes with its offset table and the gaps by condition', () => {
    expect(written()).toMatchObject({
      registers: new Map([
        [1, 0.2],
        [2, 0.15],
      ]),
      gaps: new Map([
        [11, 0.02],
        [12, 0.04],
      ]),
      blocks: 11,
    });
  });
});

describe('what a dialect changes', () => {
  it('writes the words it names', () => {
    const text = textOf({
      words: inventedWords,
      sequence: undefined as never,
      comments: 'none',
      optionalStops: true,
      percent: false,
      end: 'M30',
    });
    expect(text).toEqual([
      'G17 G71 G90 G40',
      'G00 X2. Y2.',
      'M71 P1',
      'M72',
      'M08',
      'M76',
      'E11',
      'G41 D1 G01 X2. Y0.',
      'G01 X4. Y0.',
      'M01',
      'G03 X6. Y2. I0. J2.',
      'G40 G01 X2. Y2.',
      'M77',
      'M09',
      'M73',
      'M71 P2',
      'M30',
    ]);
  });

  it('writes the path of the wire, incremental, in inch with all digits, arcs by radius', () => {
    const text = textOf({
      compensation: 'path',
      coordinates: 'incremental',
      units: 'inch',
      unitsWord: 'G70/G71',
      decimals: 3,
      trailingZeros: true,
      arcs: 'radius',
      comments: 'semicolon',
    });
    expect(text.filter((row) => / G/.test(row))).toEqual([
      'N10 G17 G70 G91',
      'N20 G00 X0.079 Y0.079',
      'N50 G01 X0.000 Y-0.071',
      'N60 G01 X0.078 Y0.000',
      'N80 G03 X0.071 Y0.071 R0.071',
      'N90 G01 X-0.149 Y0.000',
    ]);
    expect(text).toContain('N70 M00 ; L1 MEASURE, TWICE.');
    expect(written({ compensation: 'path' })).toMatchObject({ registers: new Map() });
  });

  it('begins the sequence numbers again after 99999 and says so', () => {
    const program = written({ sequence: { start: 99_900, step: 50 } });
    expect(program).toMatchObject({ kind: 'written', findings: [{ code: 'sequence-starts-again' }] });
    if (program.kind === 'written') expect(program.text.match(/^N\d+/gm)?.slice(0, 4)).toEqual(['N99900', 'N99950', 'N99900', 'N99950']);
  });

  it('splits long arcs: halves by centre, quarters by radius, a full circle whole by centre', () => {
    const turned = (sweep: number, arcs: Dialect['arcs']) => {
      const end = point(2 + 2 * Math.sin(sweep), 2 - 2 * Math.cos(sweep));
      const to = Math.abs(sweep) === 2 * Math.PI ? entry : end;
      return textOf(
        { arcs, compensation: 'path' },
        withSteps([{ kind: 'travel', to: entry }, cut('contour', arc(entry, to, hole, sweep))]),
      ).filter((row) => /G0[23]/.test(row)).length;
    };
    expect([turned(2 * Math.PI, 'centre'), turned(5, 'centre'), turned(3, 'centre')]).toEqual([1, 2, 1]);
    expect([turned(-2 * Math.PI, 'radius'), turned(-5, 'radius'), turned(1.5, 'radius')]).toEqual([4, 4, 1]);
  });

  it('says a stop on its block, and what else there is to know on lines before it', () => {
    const details = [only(name('Held by a tab of 2 mm')), only(name('It may split'))];
    const stop = { kind: 'stop', purpose: 'secure slug', loop: 'L1', text: only(name('slug 9 g: magnet')), details } as const;
    expect(textOf({}, withSteps([stop])).slice(-5, -2)).toEqual([
      '(HELD BY A TAB OF 2 MM)',
      '(IT MAY SPLIT)',
      'N20 M00 (L1 SLUG 9 G, MAGNET)',
    ]);
  });

  it('keeps a stop of the plan from being taken for a condition', () => {
    expect(textOf({}, withSteps([{ kind: 'stop', purpose: 'check', loop: 'L1', text: only(name('condition 5 is rough')) }]))).toContain(
      'N20 M00 (L1 CONDITION 5 IS ROUGH)',
    );
  });
});

describe('moves too small to write', () => {
  it('leaves out what falls within one last digit and runs through moves of a few digits under compensation', () => {
    const tiny = point(4.00002, 0);
    const short = point(4.0002, 0.0001);
    const path = [
      cut('contour', line(entry, point(4, 0))),
      cut('contour', line(point(4, 0), tiny)),
      cut('contour', line(tiny, short)),
      cut('contour', line(short, point(4, 3))),
    ];
    const begun: readonly Step[] = [
      { kind: 'travel', to: hole },
      { kind: 'compensate', side: 'left', register: 1 },
      cut('approach', line(hole, entry)),
    ];
    expect(textOf({}, withSteps([...begun, ...path])).filter((row) => /G01 X4/.test(row))).toEqual(['N40 G01 X4. Y0.', 'N50 G01 X4. Y3.']);
    expect(textOf({}, withSteps([{ kind: 'travel', to: entry }, ...path])).filter((row) => /G01 X4/.test(row))).toHaveLength(3);
  });
});

describe('arcs whose centre no program can name', () => {
  it('become chords that stray by less than a last digit', () => {
    const radius = 2e5;
    const half = Math.asin(50 / radius);
    const flat = arc(point(-50, 0), point(50, 0), point(0, radius * Math.cos(half)), 2 * half);
    const text = textOf({}, withSteps([{ kind: 'travel', to: flat.from }, cut('contour', flat)])).filter((row) => /G0[123]/.test(row));
    expect(text.length).toBeGreaterThan(10);
    for (const row of text) {
      const [, x, y] = /X(\S+) Y(\S+)$/.exec(row) as RegExpExecArray;
      expect(Math.abs(Number(y) - (flat.centre.y - Math.sqrt(radius ** 2 - Number(x) ** 2)))).toBeLessThan(0.0001);
    }
  });
});

describe('what the writer refuses', () => {
  const threaded: readonly Step[] = [{ kind: 'thread', at: hole }];

  it('says what nobody would be told', () => {
    expect(refusal(threaded, { comments: 'none' })).toEqual(['operator-not-told']);
    expect(refusal([{ kind: 'cut wire' }], { comments: 'none', words: { thread: 'M71' } })).toEqual(['operator-not-told']);
    expect(refusal([{ kind: 'condition', pass: 1 }], { comments: 'none' })).toEqual(['operator-not-told']);
  });

  it('remarks on a stop without a comment', () => {
    const program = written({ comments: 'none' }, withSteps([{ kind: 'stop', purpose: 'check', loop: 'L1', text: only(name('look.')) }]));
    expect(program).toMatchObject({ kind: 'written', findings: [{ code: 'stop-unexplained' }] });
  });

  it('finds what the plan got wrong', () => {
    const on: Step = { kind: 'compensate', side: 'left', register: 1 };
    const bend = arc(point(0, 0), point(2, 2), point(0, 2), Math.PI / 2);
    expect(refusal([cut('contour', line(point(1, 1), point(2, 2)))])).toEqual(['path-not-joined']);
    expect(refusal([on, cut('approach', bend)])).toEqual(['compensation-needs-a-straight-move']);
    expect(refusal([on, on])).toEqual(['compensation-needs-a-straight-move']);
    expect(refusal([{ kind: 'compensate', side: 'left', register: 9 }])).toEqual(['pass-not-planned']);
    expect(refusal([{ kind: 'condition', pass: 9 }])).toEqual(['pass-not-planned']);
    expect(refusal([{ kind: 'travel', to: point(Number.NaN, 0) }])).toEqual(['coordinate-unusable']);
    expect(refusal([cut('contour', line(point(0, 0), point(1e9, 0)))])).toEqual(['coordinate-unusable']);
    expect(refusal([{ kind: 'travel', to: point(251_320.9, 412_195) }])).toEqual(['coordinate-unusable']);
  });

  it('refuses two offsets in one register and an offset that is none', () => {
    const shared = written({}, { steps, passes: [pass(1, 0.2), { ...pass(2, 0.1), register: 1 }] });
    expect(shared).toMatchObject({ kind: 'refused', findings: [{ code: 'register-shared' }] });
    expect(written({}, { steps, passes: [pass(1, Number.NaN)] })).toMatchObject({
      kind: 'refused',
      findings: [{ code: 'coordinate-unusable' }],
    });
  });
});
