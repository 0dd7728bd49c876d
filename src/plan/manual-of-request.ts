/** What the manual says of what is asked of a plan or set by hand: kept sides, wires, corners, passes, registers, order. */
import type { ManualEntry } from '../text/manual.ts';

export const manualOfRequest = {
  'nothing-to-cut': {
    title: 'No contour is left to be cut',
    meaning: 'After the block, start holes and everything set to `leave` were taken out, no loop of the drawing remained.',
    matters:
      'This happens when the only loop of a drawing is the edge of the block (`outline: block`), or when every loop was set to `leave`.',
    remedy:
      'Look at the notes on kept sides above this finding. Set `outline` to `cut`, or `kept.<loop>` to `die` or `punch` for what is to be made.',
  },
  'kept-side': {
    title: 'Which side of a contour is kept',
    meaning:
      'States for each loop whether it is an opening (die type: the block around it is kept, the piece inside is the slug), a part (punch type: the piece inside is kept), the edge of the block, or a start hole that the drawing shows. It follows from which loop lies inside which: outermost loops are parts (or the edge of the block), loops in them are openings, loops in those are parts again; a small circle in an opening is a start hole.',
    matters:
      'The wire runs in the waste: inside the contour for an opening, outside it for a part. The wrong side puts everything out by the width of the kerf, and scraps a good block.',
    remedy: 'If wrong, set `kept.<loop>` to `die`, `punch` or `leave`.',
  },
  'opening-in-slug': {
    title: 'An opening lies in a piece that is waste',
    meaning:
      'Two loops, one inside the other, are both to be cut as openings. The metal between them belongs to the slug of the outer one and falls out with it, so that the inner opening would be cut into scrap.',
    matters:
      'It is time and wire for nothing, and most often a sign that the outer loop is the outside of a part and was set the wrong way round by hand.',
    remedy:
      'Set `kept` of the outer loop to `punch` if the piece inside it is the part. If it really is waste, set `kept` of the inner loop to `leave`. If there is a part within the slug, set the inner loop to `punch`.',
  },
  'kept-of-unknown-loop': {
    title: 'A kept side is given for a loop that is not there',
    meaning: 'The job sets `kept` for a loop name that the drawing does not have, or whose layer is not cut.',
    matters: 'Loops are numbered by falling area, so the name changes when the drawing does. The setting has no effect.',
    remedy: 'Run `kerfwright read` on the drawing, look up the name, and correct or remove the entry.',
  },
  'wire-unknown': {
    title: 'The wire asked for is not one of the shop',
    meaning: 'The job names a wire that is not in the shop file.',
    matters: 'Nothing can be planned without knowing its diameter, tension, speed and price.',
    remedy: 'Correct the name, add the wire to the shop file, or leave the choice to the planner.',
  },
  'wire-not-in-stock': {
    title: 'The wire asked for is not in stock',
    meaning: 'The job insists on a wire that the shop file knows but does not mark as in stock.',
    matters: 'The plan is good, but the promised date may not be: fine wires often have to be ordered.',
    remedy: 'Order it, or leave the choice to the planner, which selects only wires in stock.',
  },
  'no-wire-in-stock': {
    title: 'The shop has no wire that could be used',
    meaning: 'The shop file marks no wire as in stock, and the job does not name one.',
    matters: 'Without a wire there is no kerf, no offset and no time, so nothing can be answered.',
    remedy: 'Mark the wires that are in stock with `inStock`, or name a wire in the job.',
  },
  'wire-chosen': {
    title: 'The wire selected, and why the others are not suitable',
    meaning:
      'Where the job names a wire, this states it, with its number of passes; where that wire cannot do it, it states which wire from stock can. Where no wire is named, the wire is selected by the price of the whole job (see `wire-by-whole-job`). Only where that price cannot be worked out, because no rates are valid on the day or no wire in stock can do it all, the planner goes by what a millimetre of contour costs, machine time and wire together; this finding then names that wire and why others are not suitable.',
    matters: 'The wire decides the sharpest inside corner, the hours and the price.',
    remedy: 'Nothing, or name another wire in the job if there is a reason that is not in the shop file.',
  },
  'contour-unsound': {
    title: 'A contour crosses itself or does not hold together',
    meaning: 'The contour crosses or touches itself, or its pieces do not join. The place named is the first where this happens.',
    matters:
      'Which side of it is metal that stays is then not known, and a wire that keeps its offset from one stretch would cut into another.',
    remedy:
      'Repair the contour in the drawing. The findings of the drawing often say where it comes from: an overlapping piece, a doubled line, a corner that was trimmed too little.',
  },
  'corner-too-tight': {
    title: 'An inside corner is too tight for the wire',
    meaning:
      'A round wire that keeps its gap leaves a radius in every inside corner: half its diameter and the spark gap. A corner drawn sharper comes out with that radius. Here that is more than the job accepts (`insideCorner`), and it leaves more stock than the tolerance allows.',
    matters: 'It cannot be cut away later with the same wire, so the answer is no until something changes.',
    remedy:
      'Accept the radius stated in the finding, ease the corner in the drawing (`ease`), take a finer wire if the shop has one, or relieve the corner with a small hole or undercut where the mating part allows it. A finer wire cuts slower.',
  },
  'corner-rounded': {
    title: 'An inside corner comes out with the radius that the wire leaves',
    meaning:
      'A corner drawn sharper than the wire can make comes out with the radius stated, within what the job accepts. The finding says how many corners there are and how much stock is left in the worst of them, measured from the drawn corner.',
    matters: 'It matters where a mating part has sharp edges: it will not go in without a chamfer or a relief.',
    remedy: 'Tell the customer, or ask for a smaller `insideCorner`, which leads to a finer wire and more hours.',
  },
  'outside-corners': {
    title: 'How the wire goes round sharp outside corners',
    meaning:
      'At a sharp outside corner the control either rolls the wire round on an arc about the corner or runs on to the point where the two sides of the wire path meet; its dialect says which. With `outsideCorners: loop` the job asks for a third way: the wire runs straight on beyond the corner, goes round a small loop in the waste, and comes back on the line of the next side. The loop is so small that no core is left in it, the skims run the same loop, and where another cut or metal that stays is too near the corner is left to the control and named.',
    matters:
      'While the wire rolls round it trails behind its guides and comes a little too near, so the edge loses some thousandths. After a loop the wire hangs straight again before it meets the next side.',
    remedy: "Choose the loop for punches and edges that must be crisp; for all else the control's own way is quicker.",
  },
  'corner-lag': {
    title: 'What wire lag does at the worst corner',
    meaning:
      'The sparks push the wire back, so that it trails behind its guides. On an arc it runs nearer to the centre than programmed; in a sharp turn it cuts the corner short. The finding names the corner or arc of the plan at which that comes out worst, with the error after each pass. The lag is assumed to be the whole form error of the pass as the starting model gives it (lag and bow together), so the number is on the high side.',
    matters:
      'A skim pushes the wire less and takes off what the pass before left: the error after the last pass is the one that stays. In an inside corner it comes on top of the radius that the wire leaves anyway; at an outside corner it is metal lost from the edge.',
    remedy:
      'Below the tolerance, nothing. Beyond it the note becomes a warning: ask for one more skim, for a larger radius in that corner, or for loops at sharp outside corners.',
  },
  'slot-too-narrow': {
    title: 'A place is narrower than the kerf',
    meaning:
      'The rough cut needs twice its offset to pass: the wire, its gap on both sides, and the stock that the skims still take off. At the place named the contour is narrower, so the wire cannot go through.',
    matters: 'The plan shows what would come out: the contour in pieces, or without the nook that the wire cannot enter.',
    remedy:
      'Widen the place to the width stated, take a finer wire if the shop has one, or ask for a coarser finish, which leaves less stock for skims.',
  },
  'passes-too-many': {
    title: 'More passes are asked for than the machine has energy settings',
    meaning: 'Each pass runs at less energy than the one before it, and the machine has only so many settings for that.',
    matters: 'With as many passes as asked for, two of them would do the same.',
    remedy:
      'Ask for at most as many passes as the finding states, or leave `passes` out and as many are planned as finish and tolerance need.',
  },
  'passes-fall-short': {
    title: 'The passes asked for do not reach finish or tolerance',
    meaning:
      'You set the number of passes, and with that number the finish or the tolerance of the job is not reached. The job is planned all the same, since the number of passes is your choice: of all wires in stock, and of all ways to choose the energy settings, the one that comes nearest is selected. The finding states what comes out, and how many passes would do.',
    matters: 'The customer asked for more. The answer states what comes out, not what was asked.',
    remedy: 'Leave `passes` out, or ask for the finish and the tolerance that come out.',
  },
  'offsets-not-for-passes': {
    title: 'There are not as many registers as passes',
    meaning:
      'Each pass runs with a register of its own. The job sets both the number of passes and the registers, and the two do not go together.',
    matters: 'Which register belongs to which pass is then not clear.',
    remedy:
      'Set one register for each pass, the rough cut first, or leave one of the two out: with `passes` left out there are as many passes as registers.',
  },
  'offset-below-wire': {
    title: 'A register set by hand is smaller than half the wire',
    meaning:
      'The register is the distance from the wire centre to the finished face. With less than half the wire diameter the wire would run inside the face it is to finish.',
    matters: 'Every control would spoil the contour without a message.',
    remedy:
      'A register is half the wire, the spark gap, and what later passes still take. Correct it, or leave `offsets` out. If another wire was meant, name it as well.',
  },
  'offset-far': {
    title: 'A register set by hand is far from what is expected',
    meaning:
      'The register differs from the one that the passes were worked out for by more than twice its uncertainty, and by more than 2 µm. The program is written with your register, the proof judges by it, and the expected error grows by the difference.',
    matters:
      'In the last pass the finished face is off by as much; in an earlier one the passes after it find more or less stock than they are set for.',
    remedy: 'Keep it if it comes from a trial cut or a measured piece. Otherwise leave `offsets` out.',
  },
  'pass-takes-nothing': {
    title: 'A pass runs no nearer than the one before it',
    meaning:
      'By the registers set by hand the wire runs as far from the finished face in this pass as in the one before, or further, and the gap is no wider either.',
    matters: 'There is nothing left for the pass to take off, and the face keeps the finish of the earlier pass.',
    remedy: 'Let the registers fall from pass to pass, or ask for one pass fewer.',
  },
  'order-impossible': {
    title: 'Contours cannot be cut in the order that was set',
    meaning:
      'What lies inside a contour must be cut before it: once the outer one is cut through, the metal inside is loose, and a cut in it would be wherever the piece happens to lie. An open line that may part the block comes after all contours for the same reason.',
    matters: 'The order is not changed without your word, since it was set for a reason that only you know. So it is refused.',
    remedy: 'Put the inner contour first, or leave it out of `order`; it is then cut in time by itself.',
  },
  'order-of-unknown': {
    title: 'The order names a contour that is not cut',
    meaning: 'The order holds a name that no contour and no open line of this job has, or one that is not cut.',
    matters: 'The others are cut in the order you set; this entry has no effect.',
    remedy: 'Look for a slip of the pen, or whether the drawing was changed since the order was set.',
  },
  'order-pulled-forward': {
    title: 'A contour is cut earlier than the order that was set would have it',
    meaning:
      'Either a contour that the order does not name lies inside one that it names, and must be cut before it; or the job runs unattended at night, where everything that lies deeper is roughed before what lies around it, so that the order is kept within each depth only.',
    matters: 'The sequence at the machine is not quite the one you set.',
    remedy: 'Nothing, if that is meant. Otherwise name the contour where you want it, or run attended.',
  },
  'set-by-hand': {
    title: 'What of the plan was set by hand',
    meaning: 'Entry, hole, tab, order or registers were set by hand for this job. The planner used them as they are and chose the rest.',
    matters: 'The proof judges the program as it judges any other, whoever made the choice.',
    remedy: 'Nothing. To hand a choice back to the planner leave it out of the job.',
  },
  'by-hand-of-unknown-loop': {
    title: 'Something was set by hand for a loop that is not cut',
    meaning: 'The job sets an entry, a hole or a tab for a loop that the drawing does not have or that is not cut.',
    matters: 'It has no effect. Loops are numbered by size, so that a new one in the drawing can move the names.',
    remedy: 'Look for a slip of the pen, or whether the drawing was changed.',
  },
  'by-hand-idle': {
    title: 'Something set by hand has nothing to act on',
    meaning:
      'A hole was set for a contour that is started from the edge of the block and needs none, or a tab for an opening with a no-core cut, where nothing is left to hold.',
    matters: 'One of the two settings has no effect.',
    remedy: 'Leave the one or the other out of the job, whichever was not meant.',
  },
  'entry-off-contour': {
    title: 'An entry set by hand does not lie on its contour',
    meaning:
      'The entry is where the wire comes onto the contour and closes it. The place that was set is more than 1 mm away from the contour, so that it is not clear which place was meant. The finding names the nearest one.',
    matters: 'The planner does not guess: the entry mark might land on a face that has to stay clean.',
    remedy: 'Set it on the contour. Mind the unit: it is that of the drawing.',
  },
  'hand-hole-unusable': {
    title: 'The wire cannot start from a hole set by hand',
    meaning:
      'The hole lies in metal that must stay, or so near to a contour that the wire, standing in it, would already burn into the face.',
    matters: 'Drilling it would spoil the part before the cut begins.',
    remedy:
      'In an opening the hole belongs into the slug, for a part into the waste around it. Move it to the waste, further from the contour, or take a smaller hole.',
  },
  'hand-hole-near': {
    title: 'A hole set by hand is near a contour',
    meaning:
      'The wire can start from it, but a drill wanders by about a hundredth of its depth (common practice, no source), and on the far side the hole may come out in the contour.',
    matters: 'What is drilled away there no pass brings back.',
    remedy: 'Move the hole, take a smaller one, or have it EDM-drilled.',
  },
  'tab-by-hand': {
    title: 'A tab set by hand is too long for its contour',
    meaning: 'More than half of the contour would be left standing as a tab.',
    matters: 'The rough cut would have hardly anything to do before the stop, and leads and skims would run into each other.',
    remedy: 'Set a shorter tab, or leave it out: the planner takes 1 mm plus 2 mm × √(mass in kg).',
  },
  'no-way-by-hand': {
    title: 'With what was set by hand no wire path leads round a contour',
    meaning:
      'With entry, hole and tab as you set them the wire would touch metal that stays on its lead-in or lead-out, or has no room to turn: the entry lies in a corner or on a tight curve, the hole behind another contour, or the two are too close together.',
    matters: 'No program can be written for this contour.',
    remedy:
      'Move the entry to a straight stretch with a few millimetres on either side, or the hole nearer to it. Leave either out, and the planner finds one that suits the other.',
  },
  'families-too-many': {
    title: 'The contours ask too many different things',
    meaning:
      'Contours that are asked different things have registers and energy settings of their own, ten numbers further on for each family of passes. Registers have three digits at most.',
    matters: 'No program can name more registers than the control has.',
    remedy: 'Ask the same of contours that can have the same, by layer or by shape.',
  },
  'finish-out-of-reach': {
    title: 'The finish asked for cannot be reached',
    meaning:
      'Even at the lowest energy of the machine the surface stays rougher than asked. The finding states the best Ra expected with this wire on this machine.',
    matters: 'More skims would cost hours and not improve the surface.',
    remedy: 'Ask the customer for the value stated, or plan to polish or lap afterwards and leave stock for it.',
  },
  'tolerance-out-of-reach': {
    title: 'The tolerance asked for cannot be held',
    meaning:
      'What remains of wire lag and bow, the positioning of the machine and the uncertainty of the spark gap add up to more than the profile tolerance, however many skims are run. The finding states the best that can be expected.',
    matters: 'Pieces would be out of tolerance however carefully they are cut.',
    remedy: 'Ask for the tolerance stated, cut a test piece and correct the offset by what is measured, or use a better machine.',
  },
} satisfies Readonly<Record<string, ManualEntry>>;
