/** Whether corrected registers can be set without harm: the wire keeps a gap, inside arcs can still be gone round, the change is believable. */

import { wireOffset } from '../physics/cut/spark-gap.ts';
import { gapLeast } from '../physics/starting-model.ts';
import type { CutPlan } from '../plan/plan.ts';
import { programmedArcs } from '../plan/wire/register-room.ts';
import type { Finding } from '../text/finding.ts';
import { contour, fixed, mm, name, type Part, term, um } from '../text/part.ts';
import { say } from '../text/say.ts';
import { find } from './findings.ts';
import type { NewRegister } from './registers.ts';

/** mm per side: more than wire, gap and machine together can be off. */
export const SUSPICIOUS = 0.02;

/** mm: rounding of a program's last digit, which a control forgives. */
const LAST_DIGIT = 1e-6;

/** Findings on the registers that the next piece would be cut with. `slack`: mm by which a written arc may be tighter than the planned one. */
export const correctionFindings = (plan: CutPlan, registers: readonly NewRegister[], slack = LAST_DIGIT): readonly Finding[] => [
  ...suspicious(registers),
  ...withoutGap(plan, registers),
  ...tooTight(plan, registers, slack),
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
      say`The registers would change by ${{ change: micrometres(change) }} per side; more than ${{ usual: micrometres(SUSPICIOUS) }} is rarely due to gap or wire.`,
      { remedy: say`Measure again, and check that it was the right size, register and wire.` },
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
      say`${{ register: term(`D${lowest.register}`) }} would be ${{ value: mm(lowest.after.value, fixed(4)) }}, which leaves the wire centre ${{ reach: mm(lowest.reach, fixed(4)) }} from the finished face; ${{ wire: name(plan.wire.name) }} wire needs ${{ least: mm(least, fixed(4)) }} with the smallest gap.`,
      { remedy: say`Do not set it: the wire would touch. Look for a worn guide, a wrong wire or a wrong measurement.` },
    ),
  ];
};

const tooTight = (plan: CutPlan, registers: readonly NewRegister[], slack: number): readonly Finding[] => {
  for (const r of registers.filter((x) => x.after.value > x.before + LAST_DIGIT)) {
    const tight = programmedArcs(plan, r.pass).find(({ arc }) => arc.radius <= r.after.value + slack);
    if (tight === undefined) continue;
    const { of, arc } = tight;
    return [
      find(
        'correction-arc-too-tight',
        say`With ${{ register: term(`D${r.register}`) }} at ${{ value: mm(r.after.value, fixed(4)) }} the wire cannot follow the programmed inside arc of R ${{ radius: mm(arc.radius, fixed(4)) }} on ${{ loop: contour(of) }}.`,
        {
          place: { kind: 'spot', x: arc.centre.x, y: arc.centre.y, reach: arc.radius * 3, loop: of },
          remedy: say`Do not set it in this program: enter the offsets below as the shop's own passes and have the program written again; its inside arcs then fit.`,
        },
      ),
    ];
  }
  return [];
};

const micrometres = (millimetres: number): Part => um(millimetres * 1000, fixed(1));
