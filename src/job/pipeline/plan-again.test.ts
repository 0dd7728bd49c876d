/** What happens when our own proof refuses what was planned: other plans are tried, and a failure is told as ours. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, type Tag } from '../../../test/dxf-writer.ts';
import { jobRun } from '../../cli/inputs.ts';
import { cutOf, programOf } from '../../result/facts.ts';
import { printPlain } from '../../text/print/print.ts';
import { papersOf } from '../handout/papers-of.ts';
import { type Job, jobSchema } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { adviseRun } from '../what-if/both-orders.ts';
import { compareJob } from '../what-if/compare.ts';
import type { Answered } from './answer.ts';
import { runUpTo } from './pipeline.ts';

const plate = jobRun('examples/split-jaw/split-jaw.job.json', {}, '2026-11-25');

type Shape = readonly (readonly [x: number, y: number])[] | { readonly x: number; readonly y: number; readonly radius: number };

const tagsOf = (shape: Shape): readonly Tag[] =>
  'radius' in shape
    ? [
        [0, 'CIRCLE'],
        [8, '0'],
        [10, shape.x],
        [20, shape.y],
        [40, shape.radius],
      ]
    : [
        [0, 'LWPOLYLINE'],
        [8, '0'],
        [90, shape.length],
        [70, 1],
        ...shape.flatMap(([x, y]): Tag[] => [
          [10, x],
          [20, y],
        ]),
      ];

/** In mm, each shape a contour of its own. */
const drawn = (shapes: readonly Shape[], job: Partial<Job> = {}): JobRun => {
  const header: readonly Tag[] = [
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$ACADVER'],
    [1, 'AC1015'],
    [9, '$INSUNITS'],
    [70, 4],
    [0, 'ENDSEC'],
  ];
  const drawing = asciiDxf([...header, [0, 'SECTION'], [2, 'ENTITIES'], ...shapes.flatMap(tagsOf), [0, 'ENDSEC'], [0, 'EOF']]);
  const asked = jobSchema.parse({ drawing: 'drawn.dxf', material: 'd2', height: 20 });
  // One wire is enough, and the others take their time.
  const shop = { ...plate.shop, wires: plate.shop.wires.filter((w) => w.kind === 'brass' && w.diameter === 0.3) };
  return { ...plate, shop, job: { ...asked, ...job }, drawing, drawingName: 'drawn.dxf' };
};

const answered = (run: JobRun): Answered => {
  const answer = runUpTo(run, 'answer');
  if (answer.kind !== 'answered') throw new Error('the job can be judged');
  return answer;
};

/** Minutes of the run that is advised on as the job asks for it. */
const advised = (run: JobRun): number | undefined => {
  const advice = adviseRun(run);
  return advice.kind === 'advised' ? advice.options[run.job.run].timed.estimate.total.value : undefined;
};

const codes = ({ facts }: Answered): readonly string[] => facts.findings.filter((f) => f.code.startsWith('plan')).map((f) => f.code);

const box = (x: number, y: number, width: number, depth: number): Shape => [
  [x, y],
  [x + width, y],
  [x + width, y + depth],
  [x, y + depth],
];

/** A part with a pocket behind a neck so wide, mm, that the metal in the pocket hangs by a strip that is narrower still. */
const necked = (width: number, pocket: number): Shape => {
  const [left, right] = [20 - width / 2, 20 + width / 2];
  return [
    [0, 0],
    [40, 0],
    [40, 30],
    [right, 30],
    [right, 20],
    [28, 20],
    [28, 20 - pocket],
    [12, 20 - pocket],
    [12, 20],
    [left, 20],
    [left, 30],
    [0, 30],
  ];
};

/** One half of an opening of two lobes, from neck to neck. */
const LOBE = [
  [25, 20.1],
  [25, 30],
  [10, 30],
  [10, 10],
  [25, 10],
  [25, 19.9],
] as const;

/** An opening with a part in it, and a hole in the waste beside the part from which it would be begun. */
const beside = (x: number, y: number): readonly Shape[] => [
  box(0, 80, 60, 60),
  box(10, 85, 30, 45),
  { x, y, radius: 7.107 },
  { x: x - 5.735, y: y + 10.24, radius: 1.2455 },
];

describe('a plan that our own proof refuses', () => {
  it.each([
    ['a part begun from a hole whose slit would cut its tab', beside(29.389, 105.472)],
    ['the same elsewhere in its opening', beside(29.2, 105.2)],
  ])('is made again, and the new one is proven: %s', (_, paths) => {
    const answer = answered(drawn(paths));
    expect(answer.facts.outcome.answer).toBe('yes');
    expect(codes(answer)).toEqual(['planned-again']);
    const finding = answer.facts.findings.find((f) => f.code === 'planned-again');
    expect(finding && printPlain(finding.text)).toMatch(
      /Our own proof refused the first plan; L3 now start elsewhere, and plan [2-5] is proven/,
    );
    expect(papersOf(answer.facts, drawn(paths)).map(([name]) => name)).toContain('quotation');
  });

  it.each([
    ['a pocket behind a neck of 0.5 mm', necked(0.5, 6)],
    ['a deep pocket behind a neck of 0.6 mm', necked(0.6, 10)],
    ['a wide and shallow pocket behind a neck of 0.45 mm', necked(0.45, 4)],
  ])('holds the waste in %s before it comes loose, and begins outside', (_, part) => {
    const answer = answered(drawn([part]));
    expect([answer.facts.outcome.answer, codes(answer)]).toEqual(['yes', ['planned-again']]);
    const program = programOf(answer.facts);
    expect(program?.proof.loose.map((l) => [l.role, l.held])).toEqual([
      ['scrap', true],
      ['part', true],
    ]);
    expect(program?.text).toMatch(/WASTE IN POCKET COMES LOOSE.*TAKE OUT WASTE FROM POCKET/s);
  });

  it.each([0.5, 0.6])('holds both lobes of a slug that a neck of %d mm takes apart', (neck) => {
    const lobes: Shape = [
      ...LOBE.map(([x, y]): [number, number] => [x, y]),
      ...LOBE.map(([x, y]): [number, number] => [60 - x, 40 - y]),
    ].map(([x, y]) => [x, Math.abs(y - 20) < 0.5 ? 20 + Math.sign(y - 20) * (neck / 2) : y]);
    const answer = answered(drawn([box(0, 0, 60, 40), lobes], { outline: 'block' }));
    expect([answer.facts.outcome.answer, programOf(answer.facts)?.proof.loose.every((l) => l.held)]).toEqual(['yes', true]);
  });

  it('begins a part outside of its pocket from the first where a neck would hold it by a strip', () => {
    for (const width of [0.9, 1.5]) {
      const answer = answered(drawn([necked(width, 10)]));
      expect([answer.facts.outcome.answer, codes(answer)]).toEqual(['yes', []]);
      expect(cutOf(answer.facts)?.plan.contours.map(({ entry: { at } }) => at.y > 29.9 || at.y < 0.1 || at.x < 0.1 || at.x > 39.9)).toEqual(
        [true],
      );
    }
  });

  it('is the one that the table of wires and the comparison show, with other wires begun elsewhere too', () => {
    const one = drawn(beside(29.389, 105.472));
    const run = { ...one, shop: { ...one.shop, wires: plate.shop.wires.filter((w) => w.kind === 'brass' && w.diameter >= 0.25) } };
    const { outcome } = answered(run).facts;
    const first = runUpTo(run, 'hours');
    if (outcome.kind !== 'program' || outcome.hours === undefined || first.kind !== 'timed') throw new Error('the job has hours');
    const each = outcome.hours.estimate.each.value;
    expect(each).not.toBe(first.estimate.each.value);
    const rows = (outcome.cut.wires?.rows ?? []).flatMap((r) => (r.kind === 'worked out' ? [r] : []));
    expect(rows.length).toBeGreaterThan(1);
    expect(rows.find((r) => r.id === outcome.cut.wires?.chosen)?.outcome.each).toBe(each);
    const compared = compareJob(run);
    if (compared.kind !== 'compared') throw new Error(compared.kind);
    expect(compared.now.each).toBe(each);
    expect(compared.rows.flatMap((r) => (r.what === 'wire' && r.kind === 'can' ? [r.outcome.each] : []))).toEqual(
      rows.filter((r) => r.id !== outcome.cut.wires?.chosen).map((r) => r.outcome.each),
    );
    expect(advised(run)).toBe(outcome.hours.estimate.total.value);
  });

  it('is not made again where the first is proven', () => {
    expect(codes(answered(drawn([box(20, 20, 40, 30)])))).toEqual([]);
  });

  it('is told as our failure and not to the customer where none is proven', () => {
    const run = { ...drawn([box(20, 20, 40, 30)]), dialect: { ...plate.dialect, decimals: 1 } };
    const answer = answered(run);
    expect(codes(answer)).toEqual(['plan-not-proven']);
    expect(printPlain(answer.facts.sentence)).toMatch(
      /^No\. Our own proof refused every plan that was made \(1\): that is a fault of this software/,
    );
    expect(papersOf(answer.facts, run).map(([name]) => name)).not.toContain('quotation');
  });

  it('is given up after four other plans', () => {
    // Its corners lie half a hundredth off what two decimals can name: gouged wherever it is begun.
    const crooked: Shape = [
      [20.005, 20.005],
      [60.005, 25.005],
      [55.005, 50.005],
      [22.005, 48.005],
    ];
    const run = { ...drawn([crooked], { tolerance: 0.008 }), dialect: { ...plate.dialect, decimals: 2 } };
    expect(printPlain(answered(run).facts.sentence)).toMatch(/Our own proof refused every plan that was made \(5\)/);
  });

  it('may be the doing of who set registers by hand: then it is no failure of ours', () => {
    const run = drawn([box(20, 20, 40, 30)], { passes: 2, offsets: [0.3, 0.2] });
    const answer = answered(run);
    expect([answer.facts.outcome.answer, codes(answer)]).toEqual(['no', []]);
    expect(papersOf(answer.facts, run).map(([name]) => name)).toContain('quotation');
  });
});
