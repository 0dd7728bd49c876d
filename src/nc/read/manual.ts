/** What the manual says of the text of a program. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'program-too-long': {
    title: 'The program is longer than the limit',
    meaning: 'The text has more characters or blocks than the reader takes.',
    matters: 'A limit keeps a broken or endless file from holding up everything else.',
    remedy: 'Split the program, for example one contour to a file.',
  },
  'program-end-missing': {
    title: 'The program has no M02 or M30',
    meaning: 'Neither M02 nor M30 stands in the text.',
    matters:
      'A program without its end may have been cut short on the way to the machine; the last contours would be missing, and that would only show when the part is measured.',
    remedy: 'Send the program again, or write the end yourself if you know that it is whole.',
  },
  'program-text-after-end': {
    title: 'Text stands behind the end of the program and is never run',
    meaning: 'There are more blocks after M02 or M30.',
    matters: 'The control never runs them. If they were meant to be cut, the end stands in the wrong place.',
    remedy: 'Move the end word, or delete what is left behind it.',
  },
  'words-behind-percent': {
    title: 'Words stand behind the second % mark',
    meaning:
      'A % mark begins the program and the next one ends it. Behind the second one there are more words; blank lines and comments there are harmless.',
    matters:
      'Some controls stop reading at the mark, others read on and run what they find there. Which of the two happens is not in the text.',
    remedy: 'Delete what stands behind the mark, or keep it in a file of its own.',
  },
  'percent-missing': {
    title: 'The % lines that the dialect asks for are missing',
    meaning: 'The dialect asks for a line with % at both ends of the program.',
    matters: 'Some controls and transmission programs take % as start and end of the text and ignore what is outside.',
    remedy: 'Add them, or switch `percent` off in the dialect.',
  },
  'block-too-long': {
    title: 'A block is longer than the limit',
    meaning: 'One line has more characters than any control would take.',
    matters: 'Usually the line ends were lost on the way, and the whole program arrived as one line.',
    remedy: 'Send the program again with its line ends kept.',
  },
  'block-may-be-skipped': {
    title: 'A block begins with / and runs or not, as a switch says',
    meaning: 'A switch at the control says whether blocks that begin with / run. The block is read as if it runs.',
    matters: 'The program is two programs in one, and only one of them can be proven at a time.',
    remedy: 'Take out the /, or the block, and prove the program that you mean to run.',
  },
  'move-may-be-skipped': {
    title: 'A block that moves or switches begins with /',
    meaning: 'A switch at the control says whether blocks that begin with / run. This one does more than stop or wait.',
    matters:
      'With the switch set one way the wire cuts something else than with it set the other way, and a proof holds for one of them only.',
    remedy: 'Take out the / where the block belongs to the cut, and the block where it does not.',
  },
  'stop-may-not-stop': {
    title: 'M01 stops only when a switch at the control says so',
    meaning:
      'The program has an optional stop. It is read as one that may not stop: it secures no piece, takes none out, threads nothing and sets no condition.',
    matters: 'A slug that only an optional stop secures falls when the switch stands the other way.',
    remedy: 'Write M00 wherever the operator has to do something.',
  },
  'sign-unknown': {
    title: 'A sign that no program may contain',
    meaning: 'Outside comments a program has only letters, digits, signs and points. The finding shows the sign.',
    matters: 'Often a file was saved with typographic signs or in the format of a word processor.',
    remedy: 'Save the program as plain text.',
  },
  'number-bad': {
    title: 'A word whose number cannot be read',
    meaning: 'A letter has no number, or one with too many digits, or one that is not whole where it must be.',
    matters: 'The control would stop, or worse, read something else.',
    remedy: 'Correct the word in the line named.',
  },
  'decimal-point-missing': {
    title: 'A coordinate without a decimal point',
    meaning: 'A coordinate such as X10 has no point. It is read as 10.',
    matters: 'Some controls read X10 as 10 mm and others as ten last digits, 0.01 mm or so.',
    remedy: 'Write X10. to be safe on all of them; programs written here always do.',
  },
  'comment-bad': {
    title: 'A comment that does not close, nests, or is not of the dialect',
    meaning: 'A comment is not closed, has a bracket inside, or is of a kind that the dialect does not have.',
    matters: 'The control would take the rest of the line, or of the program, for a comment, or the comment for words.',
    remedy: 'Write comments as the dialect has them, without brackets inside.',
  },
  'sequence-number-bad': {
    title: 'A sequence number that is not a whole number from 0 to 99999',
    meaning: 'N has to be a whole number from 0 to 99999 (NIST IR 6556).',
    matters: 'Controls refuse larger numbers or cut them off.',
    remedy: 'Number the blocks again, or leave the numbers out.',
  },
  'word-unknown': {
    title: 'A word that neither the standard nor the dialect explains',
    meaning: 'The block has a word that is neither one of the standard words known here nor one of the dialect.',
    matters:
      'An unknown word may thread, tilt the wire or change the condition. Reading on as if it were not there would prove another program than the one that runs.',
    remedy:
      'If the control has this word, enter it in the dialect under its meaning. If it does something that two-axis cutting does not have, the program cannot be proven here.',
  },
  subprogram: {
    title: 'The program calls a subprogram, or has one in it',
    meaning: 'A block with O or a colon begins another program behind the first, or M97, M98 or M99 goes to one and comes back.',
    matters:
      'What a subprogram cuts, and how often, depends on the control that calls it. Only what stands in the program itself is read and proven.',
    remedy: 'Write out what the subprogram cuts, at every place where it is called, and give each program a file of its own.',
  },
  'word-twice': {
    title: 'Two words of one block contradict each other',
    meaning: 'The block has, for example, G01 and G02, or two X words.',
    matters: 'Controls take the first, or the last, or stop.',
    remedy: 'Keep one, or make two blocks of it.',
  },
  'word-beside-a-move': {
    title: 'A word of the dialect in one block with a move',
    meaning: 'A word for threading, cutting the wire, flushing or power stands in one block with X or Y.',
    matters: 'No standard says which comes first, the move or the word.',
    remedy: 'Write the word in a block of its own.',
  },
  'axis-unknown': {
    title: 'A move of an axis that two-axis cutting does not have',
    meaning: 'The block moves U, V, Z or another axis.',
    matters: 'U and V tilt the wire. Their meaning is not standard, and a straight-walled proof would be wrong.',
    remedy: 'Take the word out, or prove this program with a tool that knows the taper words of the control.',
  },
  'units-not-stated': {
    title: 'A move before the program has stated its unit',
    meaning: 'The first move comes before the unit word that the dialect has.',
    matters: 'The control would use the unit that the last program left behind: a factor of 25.4.',
    remedy: 'Write the unit word (see the dialect) at the start.',
  },
  'units-of-other-pair': {
    title: 'A unit word of the pair that the dialect does not use',
    meaning:
      'ISO 6983 has G70 and G71 for inch and mm, RS274NGC has G20 and G21. The program uses the pair that the dialect does not, and is read by it.',
    matters: 'On another control the same word can be a cycle.',
    remedy: 'Use the pair in the manual of the control and set `unitsWord` in the dialect to it.',
  },
  'units-of-both-pairs': {
    title: 'Unit words of both pairs in one program',
    meaning: 'The program states the unit by G20 or G21 in one block and by G70 or G71 in another.',
    matters: 'No control has both pairs for the unit: one of the words is something else to it, a cycle perhaps.',
    remedy: 'Keep to the pair in the manual of the control.',
  },
  'units-differ': {
    title: 'The program is in another unit than the dialect',
    meaning: 'The program states inch where the dialect writes mm, or the other way about. The word of the program is followed.',
    matters: 'It is allowed, but the last digit is another one than the dialect was made for.',
    remedy: 'Check that this is the program you meant.',
  },
  'distance-mode-not-stated': {
    title: 'A move before G90 or G91',
    meaning: 'The first move comes before the program has said whether coordinates are absolute or incremental.',
    matters: 'The control would count coordinates as the last program left it.',
    remedy: 'Write G90 or G91 at the start.',
  },
  'coordinate-too-large': {
    title: 'A coordinate beyond what any machine travels',
    meaning: 'A coordinate is larger than 100 000 units.',
    matters: 'A lost decimal point makes such numbers.',
    remedy: 'Correct the number in the line named.',
  },
  'motion-not-stated': {
    title: 'Coordinates without a word that says how to move',
    meaning: 'The first coordinates come before any of G00, G01, G02, G03.',
    matters: 'The control would travel or cut as the last program left it.',
    remedy: 'Write the motion word.',
  },
  'plane-not-xy': {
    title: 'A plane other than XY',
    meaning: 'The block chooses the plane XZ or YZ (G18 or G19).',
    matters:
      'A wire machine offsets its path and runs its arcs in XY only; in another plane neither means anything. The program comes from another kind of machine, or the word was mistyped.',
    remedy: 'Write G17, or nothing at all, since XY is the plane from the start.',
  },
  'datum-moved': {
    title: 'The datum changes after the wire has moved',
    meaning: 'After the wire has moved the program sets another datum (G92) or chooses another one (G54 to G59).',
    matters:
      'Where the new datum lies is not in the text, so it cannot be known where the cut goes. The same holds for a G92 at the start that puts the datum elsewhere than where the wire stands.',
    remedy: 'Keep one datum for the whole program.',
  },
  'zero-of-control': {
    title: 'The program takes its zero from the control',
    meaning:
      'G54 to G59 choose one of the datums that the control keeps. Where that one lies is entered at the machine and is not in the text.',
    matters: 'Everything is cut from there: an old value moves the whole part.',
    remedy: 'See that the datum of the set-up sheet is entered under that number before the program runs.',
  },
  'feed-zero': {
    title: 'A cut with the feed set to zero',
    meaning: 'The feed is F0 where the program cuts.',
    matters: 'The control stops with an error (NIST IR 6556).',
    remedy: 'Take F out: in wire cutting the condition sets the feed, and programs written here carry none.',
  },
  'arc-by-k': {
    title: 'K in an arc of the XY plane',
    meaning: 'The centre of an arc in XY is given by I and J. K belongs to other planes.',
    matters: 'The word is a mistyped J, or the arc was made for another plane; either way the centre is wrong.',
    remedy: 'Write I and J.',
  },
  'arc-incomplete': {
    title: 'An arc without its end, or without centre and radius, or with both',
    meaning: 'An arc needs its end (X, Y) and either its centre (I, J) or its radius (R), not both.',
    matters: 'The control would refuse it, or use numbers of the block before.',
    remedy: 'Complete the block.',
  },
  'arc-words-idle': {
    title: 'I, J or R in a block that is no arc',
    meaning: 'The block has arc words and moves straight.',
    matters: 'Usually G02 or G03 was lost: what should be an arc would be cut as its chord.',
    remedy: 'Write the arc word, or take I, J and R out.',
  },
  'arc-does-not-close': {
    title: 'Start and end of an arc are not equally far from its centre',
    meaning: 'The two distances differ by more than rounding explains (two and a half last digits).',
    matters: 'The control stops, or jumps by the difference. Some number in the block, or the end of the block before, is wrong.',
    remedy: 'Check X, Y, I and J of this block and the end of the one before.',
  },
  'arc-ends-apart': {
    title: 'The ends of an arc lie a little differently far from its centre',
    meaning:
      'The two distances differ by more than rounding explains, and by less than a quarter of the tolerance. The centre was moved along the chord until they agree, and the path is proven so.',
    matters: 'The cut stays within the tolerance. Some controls refuse such an arc all the same.',
    remedy: 'Write the arc with as many decimals as the control takes.',
  },
  'arc-radius-zero': {
    title: 'An arc of no radius',
    meaning:
      'The centre lies on the start or the end of the arc, or R is 0: there is no such arc. It often comes from an I or J that was dropped or a coordinate that was rounded away.',
    matters: 'A control would stop there or make an unintended move.',
    remedy: 'Correct I, J or R in the block, or write a straight move when the arc is smaller than the last digit.',
  },
  'arc-radius-too-small': {
    title: 'An arc whose radius does not reach its end',
    meaning: 'The ends of the arc are further apart than twice its radius.',
    matters: 'No such circle passes through both ends.',
    remedy: 'Correct R or the end.',
  },
  'arc-full-by-radius': {
    title: 'An arc by R that ends where it starts',
    meaning: 'A full circle is given by its radius.',
    matters: 'Every circle of that radius through the point would fit, so the control refuses it (NIST IR 6556).',
    remedy: 'Give the centre by I and J, or split the circle.',
  },
  'register-not-named': {
    title: 'G41 or G42 without D',
    meaning: 'The block switches compensation on and names no register.',
    matters:
      'The control refuses, or uses the register that the last program left behind: the part comes out by that much too large or too small.',
    remedy: 'Write D with the number of the register.',
  },
  'register-idle': {
    title: 'D in a block without G41 or G42',
    meaning: 'The block names a register and does not switch compensation on.',
    matters: 'It is an error in RS274NGC; on other controls it may or may not change the offset on the way.',
    remedy: 'Write D in the block of G41 or G42.',
  },
  'register-unknown': {
    title: 'A register number that the offset table does not have',
    meaning: 'The program asks for an offset register that is not in the offset table, or whose value is no offset.',
    matters: 'The control would use whatever stands there.',
    remedy: 'Enter the register, or correct the number in the program.',
  },
  'compensation-already-on': {
    title: 'G41 or G42 while compensation is on',
    meaning: 'A second G41 or G42 comes before G40 and a straight move have switched the first one off.',
    matters: 'RS274NGC refuses it; other controls change side or register in the middle of the contour.',
    remedy: 'Write G40 on a straight move away from the contour, then switch on again.',
  },
  'compensation-left-on': {
    title: 'The program ends with compensation on',
    meaning: 'The program ends without G40.',
    matters: 'The next program starts with the offset on, and its first contour is wrong.',
    remedy: 'Write G40 on the lead-out of the last contour.',
  },
  'compensation-without-contour': {
    title: 'Compensation is switched off in the move behind the one that switched it on',
    meaning: 'Between G41 or G42 and G40 no contour is cut.',
    matters:
      'Where the approach ends depends on the move behind it. When that one leaves again, some controls end in the programmed point and others beside it, the offset apart: one of the two gouges.',
    remedy: 'Cut the contour between the two, or take both out.',
  },
  'compensation-on-an-arc': {
    title: 'Compensation begins or ends on an arc',
    meaning: 'The move that switches compensation on or off is an arc.',
    matters:
      'Between no offset and full offset an arc is no arc any more; controls differ in what they do. The common rule is followed here: this move is straight.',
    remedy: 'Lead in and out on straight moves. An arc may follow once the offset is on.',
  },
  'compensation-forbids': {
    title: 'Unit or datum changes while compensation is on',
    meaning: 'The block states the unit or the datum while compensation is on.',
    matters: 'RS274NGC forbids it: the offset would change its meaning in the middle of a contour.',
    remedy: 'Write these words before compensation is switched on.',
  },
  'approach-too-short': {
    title: 'The move that switches compensation on is shorter than the offset',
    meaning: 'Compensation is switched on over a move that is shorter than the offset it brings in.',
    matters: 'At its start the wire already stands in the contour it is about to follow: it gouges on entry.',
    remedy: 'Start the lead-in further away: at least offset and hole clearance from the contour.',
  },
  'arc-tighter-than-offset': {
    title: 'An inside arc that the wire with its offset cannot follow',
    meaning:
      'The programmed radius is smaller than the offset register, so the wire centre would need an arc of negative radius. A radius equal to the offset, to one and a half last digits, is accepted: the wire centre then stands still while it turns.',
    matters: 'Many controls round such an arc without a message, or gouge. It is refused here, as in NIST IR 6556.',
    remedy: 'Use a finer wire or a smaller offset, or let the planner give each pass a contour opened by its own offset.',
  },
  'inside-corner-not-entered': {
    title: 'An inside corner that the wire with its offset cannot enter',
    meaning: 'At an inside corner the offset paths of the two moves do not cross within their length.',
    matters: 'One of the two moves is too short for the offset; the control would gouge the one or miss the other.',
    remedy: 'Lengthen the moves, use a finer wire, or program the contour opened by the offset.',
  },
  'path-turns-back': {
    title: 'The compensated path turns back on itself',
    meaning: 'With compensation on, the next move runs back along the last one.',
    matters: 'The wire would have to go round the end on a half circle, and which way round is not specified.',
    remedy: 'Switch compensation off before turning round, and on again on the other side.',
  },
};
