/** What the manual says of the proof. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'proof-question-unusable': {
    title: 'The proof was asked with a value that it cannot work with',
    meaning:
      'A number that the proof needs is out of range: a wire thicker than 1 mm, a gap of nothing, a tolerance under 0.5 µm (the proof measures to 0.25 µm), a height or density of zero, or a contour that encloses no area. The finding names the value.',
    matters: 'A proof made with it would be about some other job, so nothing is proven.',
    remedy: 'Correct the value in the job or the set-up file and prove again.',
  },
  'scale-not-of-temperature': {
    title: 'The stated scale of the program is not that of the stated temperature',
    meaning:
      'A set-up file of a scaled program states the factor, the expansion of the material and the temperature. The factor must be 1 + expansion · (temperature − 20 °C). Here it is not: one of the three was changed, or the file belongs to another program.',
    matters:
      'A wrong factor makes every size of the part wrong in the same proportion, and over a small part the tolerance would hide it. So it is refused however small it is.',
    remedy: 'Write program and set-up file anew with `kerfwright answer`.',
  },
  'program-not-readable': {
    title: 'The program breaks a rule of its control, so nothing is proven',
    meaning:
      'A block breaks a rule of the control: the finding beside this one names the line and the rule. The machine would stop there, or do something unintended.',
    matters:
      'Nothing is proven of such a program, not even of its part before the fault, since it cannot be known what the machine would do after it.',
    remedy: 'Correct the block, then prove the program again.',
  },
  'gap-unknown': {
    title: 'A cut is made with an energy setting whose spark gap is not given',
    meaning: 'The program cuts with a condition, or where it chooses none with an offset register, for which no gap was given.',
    matters:
      'The gap is half of what decides the size of the part: the edge of the cut stands the radius of the wire and the gap away from the wire centre.',
    remedy:
      "Give the gap of every condition or register that the program uses, from the shop's own pass table if there is one. Where a program neither chooses a condition nor compensates in the control, only one gap can be known for all of it.",
  },
  'contour-uncut': {
    title: 'A required contour is not cut',
    meaning:
      'More than half of the contour stands in metal, or no cut comes near it at all. Perhaps its stretch of the program is missing, or is in the wrong place.',
    matters: 'The part comes out without this contour.',
    remedy: 'Look for the contour in the program; put it in, or take it off the list of contours required.',
  },
  'tab-left-standing': {
    title: 'A stretch of a contour is left standing',
    meaning:
      'The wire goes round the contour except for a stretch where metal stands right through: the piece still hangs on a tab. Either the tab was never cut, or the passes do not meet.',
    matters: 'The piece does not come out, and breaking it off leaves a stub on the face.',
    remedy:
      'Cut the tab after a stop to secure the piece. If the stretch is short, check that the last pass overlaps its own start by 0.2 to 0.5 mm.',
  },
  'metal-left': {
    title: 'Stock is left beyond the tolerance',
    meaning:
      'Measured from the drawing, the metal left stands out further than the program may use of the tolerance: a quarter where nothing else is said (`programShare`), since the error of the machine needs the rest. The finding names the worst place, the block that cuts nearest to it, and how much of the contour is concerned.',
    matters:
      'All round the contour it points at the register, the gap or a missing pass; in one place at a coordinate. Stock left can still be cut away: nothing is lost yet.',
    remedy: 'Look at the block, at its register, and at the passes that run there.',
  },
  'contour-gouged': {
    title: 'The wire overcuts the part beyond the tolerance',
    meaning:
      'The kerf reaches into metal that the drawing keeps, deeper than the program may use of the tolerance: a quarter where nothing else is said (`programShare`), since the error of the machine needs the rest. The finding names the deepest place and the block whose cut reaches there.',
    matters: 'Metal that is cut away does not come back: the part would be scrap.',
    remedy: 'Look at the block: its coordinates, the side of compensation, the value of its register.',
  },
  'kept-metal-cut': {
    title: 'A cut goes through metal that must stay',
    meaning: 'The wire runs deeper into the part than a kerf is wide, or makes a cut in it that serves no contour.',
    matters:
      'Typical causes are a lead-in from the wrong hole, a coordinate with a digit too many, and the wrong side of compensation. The part would be scrap.',
    remedy: 'Follow the block in the picture of the proof and correct it. Do not run the program before that.',
  },
  'rough-on-skim-energy': {
    title: 'A skim runs in full metal',
    meaning: 'A cut takes a full kerf of metal with a narrower gap than that of the rough cut: with the energy of a later pass.',
    matters:
      'Finishing energy in full metal cuts at a fraction of the speed, shorts and breaks the wire, and its gap is not the one in the table.',
    remedy: 'Choose the condition of the rough cut before this block.',
  },
  'tab-on-skim-energy': {
    title: 'A piece is cut free with the energy of a skim',
    meaning: 'The cut that sets a piece free has a narrower gap than the rough cut: the tab is cut by a later pass alone.',
    matters: 'The tab is full metal. A skim stalls there, and the piece may break off and short the wire.',
    remedy: 'Cut the tab with the condition of the rough cut, then skim over it.',
  },
  'finish-on-rough-energy': {
    title: 'Part of a contour is not finished by the last pass',
    meaning: 'Along part of the contour the last cut that reached it was made with a wider gap than that of the last pass.',
    matters: 'The size may be right there and the face is not: it has the finish and the recast layer of an earlier pass.',
    remedy: 'Let the last pass run over the whole contour, with its own condition.',
  },
  'pass-left-out': {
    title: 'A pass is missing on part of a contour',
    meaning:
      'None of the cuts with this condition came by on a stretch of more than 0.5 mm. The passes are those that the set-up file names, in its order; where it names none, those that the program uses anywhere. A pass that runs 5 µm or more further from the face than one before it takes nothing, and counts as missing.',
    matters:
      'Each pass is meant for the stock that the one before leaves. Without it the next one has more than it can take: the size may be missed, or the finish, or the wire breaks.',
    remedy: 'Run every pass that the set-up file names, each with its own condition, or name fewer there.',
  },
  'condition-missing': {
    title: 'The wire cuts before a condition is chosen',
    meaning: 'The dialect has a word for conditions, or the program chooses them at other places, and this cut comes before the first one.',
    matters: 'The machine then cuts with whatever was chosen last, by another program perhaps.',
    remedy: 'Choose the condition before the first cut.',
  },
  'corner-too-round': {
    title: 'An inside corner comes out rounder than allowed',
    meaning:
      'A round wire leaves a radius in every inside corner: half its diameter and the gap, and more when the last pass keeps further away. Here the radius is larger than the drawing and the job allow, and more stock is left than the tolerance.',
    matters: 'A mating part with a sharp edge does not go in.',
    remedy: 'Allow the radius, take a finer wire, come nearer with the last pass, or relieve the corner in the drawing.',
  },
  'corner-comes-out-round': {
    title: 'Inside corners come out rounder than drawn, as allowed',
    meaning:
      'These corners are sharper in the drawing than the wire can cut; the job allows them the radius that they get. The finding counts them and states the largest radius and how much stock is left there.',
    matters:
      'The radius follows from the stock left in the corner: a round of radius r between sides that turn by an angle t stands r (1/cos(t/2) − 1) off the corner.',
    remedy: 'Nothing, unless a sharp edge has to fit in there.',
  },
  'stray-cut': {
    title: 'A cut serves no required contour',
    meaning: 'The wire cuts where no contour is required. The cut lies in waste, so nothing is spoilt.',
    matters: 'It costs time, and it may free a piece of scrap that the operator does not expect.',
    remedy: 'Check whether a contour is missing from the list, or whether the cut is left over from something else.',
  },
  'piece-falls-unheld': {
    title: 'A piece comes loose without a stop to secure it',
    meaning:
      'The block named cuts through the last metal that holds the piece, and no stop stands before it at which the piece could be secured. A stop counts when the wire stands at this contour, after the last cut that left the piece standing on a tab (half of its edge cut at least), and when its comment is about more than the wire or a condition.',
    matters:
      'A slug that drops can short or break the wire, hit the lower nozzle, or hurt a hand; a part that drops tilts against the wire and is scrap.',
    remedy:
      'Leave a tab, stop, secure the piece by magnet, clamp or glue, then cut the tab. For openings too small for that choose a no-core cut.',
  },
  'tab-too-weak': {
    title: 'A piece hangs by less metal than carries it',
    meaning:
      'Before the stop at which the piece is secured it hangs by metal that its own weight and the flushing would bend or break. Looked at is the narrowest place on the whole way from the piece to what is clamped, as a short cantilever: 6 F e / (b h²), where F is the weight, with flushing of 0.02 MPa over as much of the side as lies below a nozzle (common practice, no source), e the way from the tab to the centre of gravity, b the metal along the contour and h the height; sideways in the same manner. Compared with where the material yields or breaks: `strength` of the set-up file, else that of a mild steel, 200 MPa. Several tabs that are cut in one run share the load: their breadths add up, sideways the squares of them.',
    matters: 'The piece sags or breaks off while cutting goes on, shorts the wire or jams it, and is scrap if it is the part.',
    remedy: 'Make the tab longer, place it where more metal stands behind it, or leave a second one.',
  },
  'crumb-falls': {
    title: 'A crumb comes loose unheld',
    meaning:
      'A piece of at most 0.05 g comes loose. It is light enough to be flushed away, so the program stays good; the limit is common practice, without a source.',
    matters: 'A crumb that stays in the cut can short the wire. Long thin needles are worse than grains.',
    remedy: 'Check that it does not lie between wire and work when cutting goes on.',
  },
  'slug-not-taken-out': {
    title: 'Cutting goes on while a loose slug lies in its opening',
    meaning: 'The piece was held when it came loose, but no stop follows at which it could be taken out.',
    matters: 'A loose slug in its opening shorts the wire or jams it as soon as cutting goes on there.',
    remedy: 'Put a stop behind the tab. If the slug is held by a magnet that stays on during the next cuts, this can be left as it is.',
  },
  'kept-metal-falls': {
    title: 'Metal that must stay falls away',
    meaning:
      'A piece of waste, slug or scrap, takes metal of a required contour with it: the block is cut in two, or an opening lies in the slug of another.',
    matters: 'What should be part of the work piece ends up in the tank.',
    remedy:
      'Look for the cut that parts it from the block. If the piece is required after all, say so: its contour is then one whose inside is kept.',
  },
  'cut-in-fallen-piece': {
    title: 'A contour is cut in a piece that has already come loose',
    meaning: 'The cut comes after the block that set the piece round it free.',
    matters: 'Nothing holds the piece in its place by then: the wire would cut it where it lies, or cut air.',
    remedy: 'Cut the inner contours first, the outer one last.',
  },
  'wire-drawn-through-metal': {
    title: 'A rapid move draws the threaded wire through metal',
    meaning:
      'Between the last cut and this rapid move nothing cuts the wire and no stop stands, and the move leads through metal that is still there.',
    matters: 'The wire would break, and a guide may suffer.',
    remedy: "Cut the wire before the move, by the control's own word or at a stop, and thread it again after it.",
  },
  'threaded-in-metal': {
    title: 'The wire would be threaded in solid metal',
    meaning:
      'Before this cut the wire is threaded at a place where the block is still solid, wholly or in part: no hole that the set-up names reaches round the wire there, no kerf has been cut there yet, no fallen piece has left room, and the place is not outside the edge of the block.',
    matters:
      'The threader pushes the wire onto the plate, bends it or gives up, and the machine stands. An operator who then threads in the nearest hole and goes on cuts an unplanned slit from there to the contour.',
    remedy:
      'Compare the rapid move before the cut with the hole drawing. Correct the move, or drill the hole and name it in the set-up with its place and diameter. A set-up that names no holes at all leaves only starts outside the edge of the block; when the block has holes, name them.',
  },
  'wire-left-threaded': {
    title: 'The program ends with the wire still threaded',
    meaning: 'The dialect has a word that cuts the wire, and the program ends without it behind the last cut.',
    matters: 'Whoever lifts the part pulls it over a wire that is still through it: the face that was just finished gets the mark.',
    remedy: 'Write the word that cuts the wire, or a stop that says so, behind the last cut.',
  },
  'cut-without-wire': {
    title: 'A cut begins with no wire threaded',
    meaning:
      'The wire was cut, or taken out for a rapid move through metal, and neither a word that threads it nor a stop stands before the next cut. The same holds for the first cut of a program that is reached by a move over the block.',
    matters: 'The control stops with an error, or moves along the contour without cutting anything.',
    remedy: 'Put the word to thread, or a stop for threading by hand, after the rapid move.',
  },
  'threaded-twice': {
    title: 'The wire is threaded although it is in',
    meaning: 'The word that threads the wire comes where the wire is threaded already: twice in a row, or in the middle of a cut.',
    matters:
      'A control stops there or tries to thread through the wire that is in. A word that stands where it cannot be meant also says that a line is lost or out of its place.',
    remedy: 'Leave the word out, or cut the wire before it.',
  },
};
