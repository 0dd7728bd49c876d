/** What the manual says of writing a program. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'operator-not-told': {
    title: 'The dialect has neither a word nor a comment for what the operator must do',
    meaning:
      'The program needs the wire threaded or cut, or a condition chosen; the dialect has no word for it and no comments in which a stop could ask for it.',
    matters: 'A bare stop leaves the operator guessing in front of a running machine.',
    remedy: 'Give the dialect the word from the manual of the control, or allow comments.',
  },
  'stop-unexplained': {
    title: 'The program stops without saying why',
    meaning: 'The dialect has no comments, so a stop stands bare in the program.',
    matters: 'The operator sees only that the machine waits: to secure a slug, to take a part out, to measure.',
    remedy: 'Keep the set-up sheet at the machine; it lists every stop with its purpose.',
  },
  'path-not-joined': {
    title: 'A move does not begin where the one before ended',
    meaning: 'The planned path has a gap.',
    matters: 'The control would cut straight across it.',
    remedy: 'This is a fault of the plan and not of your drawing. Please report it with the job file.',
  },
  'compensation-needs-a-straight-move': {
    title: 'Compensation would be switched on an arc or on no move at all',
    meaning: 'The plan switches the offset on or off on a move that is an arc or has no length, or switches it on twice.',
    matters: 'Controls disagree about such a move and many refuse it; the wire could enter the contour with the wrong offset.',
    remedy: 'Choose another entry, or a dialect that writes the wire-centre path.',
  },
  'coordinate-unusable': {
    title: 'A coordinate or offset that no program can carry',
    meaning:
      'A coordinate or an offset is not a number, is negative where it may not be, or is larger than 99 999 units. A part drawn in the coordinates of a hall or a map lies so far from zero; a program zero near the part (`datum` in the job) cures that.',
    matters: 'It would be printed as nonsense, or cut off by the control.',
    remedy: 'Check the unit of the drawing: a drawing in µm read as mm is a thousand times too large.',
  },
  'register-shared': {
    title: 'Two passes want different offsets in one register',
    meaning: 'Two passes name the same offset register with different values.',
    matters: 'The table holds one value only, so one of the passes would cut to the wrong size.',
    remedy: 'Give each pass a register of its own.',
  },
  'pass-not-planned': {
    title: 'A step asks for a pass or a register that the plan does not have',
    meaning: 'A step of the plan names a pass or a register that is not in the pass table.',
    matters: 'The program would run with whatever condition and offset happen to be set.',
    remedy: 'This is a fault of the plan and not of your drawing. Please report it with the job file.',
  },
  'sequence-starts-again': {
    title: 'The sequence numbers start again',
    meaning:
      'The program has more blocks than the numbers up to N99999 can count in the step of the dialect, so they start again at the first.',
    matters: 'Numbers above 99999 are an error on many controls. A search for a number then finds the first of several blocks.',
    remedy: 'Nothing. A smaller step in the dialect, or no numbers, leaves more room.',
  },
};
