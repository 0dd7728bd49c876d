/** Whether corrected registers can be set without harm: the wire keeps a gap, inside arcs can still be gone round, the change is believable. */

import { wireOffset } from '../physics/cut/spark-gap.ts';
import { gapLeast } from '../physics/starting-model.ts';
import { insideArcs } from '../plan/inside-arcs.ts';
import type { ContourPlan, CutPlan } from '../plan/plan.ts';
import type { Finding } from '../text/finding.ts';
import { find } from './findings.ts';
import type { NewRegister } from './registers.ts';

/** mm per side: more than wire, gap and machine together can be off. */
export const SUSPICIOUS = 0.02;

/** mm: rounding of a program's last digit, which a control forgives. */
const LAST_DIGIT = 1e-6;

/** Findings on the registers that the next piece would be cut with. */
export const correctionFindings = (plan: CutPlan, registers: readonly NewRegister[]): readonly Finding[] => [
  ...suspicious(registers),
  ...withoutGap(plan, registers),
  ...tooTight(plan.contours, registers),
];

/** Wire centre to the finished face, mm, below which no spark has room to jump. */
export const leastReach = ({ wire }: Pick<CutPlan, 'wire'>): number =>
  wireOffset.compute({ d: wire.diameter, gap: gapLeast.value / 1000, stock: 0 });

const suspicious = (registers: readonly NewRegister[]): readonly Finding[] => {
  const change = registers.reduce((most, r) => Math.max(most, Math.abs(r.after.value - r.before)), 0);
  if (change <= SUSPICIOUS) return [];
  return [
    find(
      'correction-suspicious',
      `The registers would change by ${micrometres(change)} per side; more than ${micrometres(SUSPICIOUS)} is hardly ever gap or wire.`,
      { remedy: 'Measure again, and look whether the right size, the right register and the right wire were meant.' },
    ),
  ];
};

/** Without the stock of later passes a register is wire radius and gap; a gap below the least that any spark jumps cannot be. */
const withoutGap = (plan: CutPlan, registers: readonly NewRegister[]): readonly Finding[] => {
  const least = leastReach(plan);
  const lowest = registers
    .map((r) => ({ ...r, reach: r.after.value - (plan.passes.find((p) => p.register === r.register)?.stock.value ?? 0) }))
    .toSorted((a, b) => a.reach - b.reach)[0];
  if (lowest === undefined || lowest.reach >= least) return [];
  return [
    find(
      'register-below-gap',
      `D${lowest.register} would be ${lowest.after.value.toFixed(4)} mm, which leaves the wire centre ${lowest.reach.toFixed(4)} mm from the finished face; the ${plan.wire.name} wire needs ${least.toFixed(4)} mm with the least gap.`,
      { remedy: 'Do not set it: the wire would touch. Look for a worn guide, a wrong wire or a wrong measurement.' },
    ),
  ];
};

const tooTight = (contours: readonly ContourPlan[], registers: readonly NewRegister[]): readonly Finding[] => {
  for (const r of registers.filter((x) => x.after.value > x.before + LAST_DIGIT)) {
    const tight = contours.flatMap((c) => tightIn(c, r))[0];
    if (tight === undefined) continue;
    const { loop, arc } = tight;
    return [
      find(
        'correction-arc-too-tight',
        `With D${r.register} at ${r.after.value.toFixed(4)} mm the wire cannot go round the inside arc of R ${arc.radius.toFixed(4)} mm that the program has on ${loop}.`,
        {
          place: { kind: 'spot', x: arc.centre.x, y: arc.centre.y, reach: arc.radius * 3, loop },
          remedy:
            "Do not set it in this program: enter the offsets below as the shop's own passes and have the program written anew; its inside arcs then fit.",
        },
      ),
    ];
  }
  return [];
};

const tightIn = ({ loop, kept, courses }: ContourPlan, r: NewRegister) =>
  courses
    .filter((c) => c.pass === r.pass)
    .flatMap((c) => insideArcs(c.programmed, kept))
    .filter((arc) => arc.radius <= r.after.value + LAST_DIGIT)
    .map((arc) => ({ loop, arc }));

const micrometres = (mm: number): string => `${(mm * 1000).toFixed(1)} µm`;
