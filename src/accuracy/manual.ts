/** What the manual says of the error budget and of corrections. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'budget-over-tolerance': {
    title: 'With heat, stress and repeatability the tolerance is not sure to be held',
    meaning:
      'The passes themselves reach the tolerance, or the job would have been refused. But the last skim is not the only source of error: warm water, a block that moves when it is opened, a gap that is known only so well, one piece that differs from the next. With all of them counted the expected error is larger than the tolerance. Systematic errors are added, random ones combined by the root of the sum of squares with one standard deviation each.',
    matters: 'About one piece in three may still lie beyond the total.',
    remedy:
      'Look at "Where the error comes from": the biggest share comes first with what would lower it. `kerfwright why JOB budget.total` shows every number. Often it is enough to correct the registers after the first piece (`kerfwright correct`), or to state the true temperatures under `temperature` in the job file.',
  },
  'correction-suspicious': {
    title: 'A correction is larger than wire and gap can be off',
    meaning:
      'What was measured asks for a change of the registers of more than 0.02 mm per side. Spark gap, wire diameter and machine together are hardly ever off by so much.',
    matters:
      'A correction of that size usually repairs the wrong thing: a burr under the gauge, a warm part, the wrong contour, a register that was typed with a digit changed, a spool of another diameter, a size of the drawing that was read from the wrong line.',
    remedy:
      'Measure again after cleaning and cooling, compare the registers in the control with the set-up sheet, and look at the label of the spool. Only then set the new values.',
  },
  'correction-arc-too-tight': {
    title: 'With the corrected register an inside arc of the program cannot be gone round',
    meaning:
      'The program has inside arcs that fit the registers it was written for, to half a thousandth of a millimetre. A larger register makes the wire path round such an arc vanish.',
    matters:
      'Many controls stop there with an error, others gouge. That is why a register cannot simply be turned up: corners that the wire rounds itself leave no room.',
    remedy:
      "Leave the registers of this program as they are and have the program written anew for the gap that was found: enter the shop's own passes for this wire and material (`passTables` in the shop file) with the offsets that `kerfwright correct` gives, and run `kerfwright answer` again. Turning a register down is always possible.",
  },
  'register-below-gap': {
    title: 'A corrected register leaves the wire no gap',
    meaning:
      'A register is the radius of the wire, the spark gap and the stock that later passes take. What was measured asks for one so small that less would be left between wire and finished face than the least gap any spark jumps.',
    matters: 'The wire would touch, short and break, or push itself off and cut somewhere else. Such a value is never the true gap.',
    remedy: 'Look for a wire thinner than planned, worn guides, a wrong condition, or a wrong measurement, and correct that instead.',
  },
  'corrections-disagree': {
    title: 'Contours were measured that want different corrections',
    meaning:
      'All contours of a program share the offset registers, one for each pass. The sizes that were measured ask for changes so different that after the common one at least one contour stays off by more than half the tolerance.',
    matters:
      'A wrong gap shows on every contour alike. What shows on one only comes from elsewhere: stress that closed an opening, a corner or burr under the gauge, a part measured warm, wire lag on a small shape.',
    remedy:
      'Measure the odd one again. If it is real, cut it in a program of its own with its own registers; the table states how much each contour wants.',
  },
};
