/** What the manual says of the job as a whole. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'file-not-valid': {
    title: 'A value in a job, shop, dialect or set-up file is wrong',
    meaning:
      'The file could be read as JSON, but a value is missing, of the wrong kind, out of its range, or its name is not known. The finding states which one, by its path in the file, and what was expected.',
    matters:
      'A wrong value that is replaced by a default without a word turns up later as a wrong price or a wrong cut, so nothing is worked out.',
    remedy:
      'Correct the value named. `kerfwright schema job` (or `shop`, `dialect`, `setup`) prints every field with its meaning and limits.',
  },
  'old-keys': {
    title: 'The file has words of version 0.3',
    meaning:
      'Some keys of job, shop and nest files, and one value, were renamed after version 0.3. This file has old ones. They were read as what they are called now; no number was changed. The finding lists each old word with its new one.',
    matters: 'The answer is the same under either name. `kerfwright schema` and the documentation list the new names only.',
    remedy:
      'Rename them in the file. A file may have a key under its old name or its new one, not both: then the old one is refused as unknown.',
  },
  'layer-unknown': {
    title: 'A layer was asked for that the drawing does not have',
    meaning:
      'The job says that only loops on certain layers are cut, and one of the layers named is not in the drawing. Upper and lower case count.',
    matters:
      'Nothing is answered then: with a layer misspelt, less would be cut than is wanted, and the customer would be the first to notice.',
    remedy: 'Look at the layers that `kerfwright read` lists, and put the right names under `layers` in the job file.',
  },
  'currencies-mixed': {
    title: 'A wire is priced in another currency than the rates of the day',
    meaning:
      'Each block of rates of the shop is in its own currency, and a wire may name the currency of its price. On the day of the quotation the two differ.',
    matters:
      'Adding the one to the other gives a number that is no price in either. The wire is left out of the choice; where no other wire is left, or the job names this one, nothing is priced.',
    remedy: 'Give the price of the wire in the currency of the rates, or ask for a day on which the rates are in the currency of the wire.',
  },
  'currency-not-named': {
    title: 'A price names no currency in a shop that has several',
    meaning:
      'The rates of the shop are in more than one currency, by the day from which they hold, and the price of a wire or of the material does not say in which it is. It is read as being in that of the rates of the day.',
    matters:
      'A price that was meant in another currency is wrong by the rate of exchange, and by a factor of a hundred where one of the two has no cents.',
    remedy:
      'Put `currency` beside the price of the wire in the shop file; check the price of the material against the currency of the answer.',
  },
  'no-closed-contour': {
    title: 'The drawing has no closed contour to cut',
    meaning:
      'After joining, cleaning and choosing layers no closed loop is left. A closed loop is needed to know which side of the wire is the part.',
    matters:
      'Often the ends of lines miss each other by more than the join gap, the outline is on a hidden layer, or the file holds only text, hatches or 3D faces; the other findings say which.',
    remedy: 'Ask for a drawing whose contours close, raise `join` if the gaps listed are drawing errors, or choose other layers.',
  },
  'open-of-unknown-line': {
    title: 'The job says how to cut an open line that is not there',
    meaning:
      'Under `open` the job names a line that the drawing does not have. Lines that join up but do not close are called C1, C2 and so on, the longest first; reading the drawing lists them.',
    matters: 'Nothing is cut for that name, so a cut that was meant may be missing.',
    remedy: 'Read the drawing, look up the name of the line, and correct it in the job.',
  },
  'without-of-unknown-loop': {
    title: 'A contour is to be left out that is not there',
    meaning:
      'Under `without` the job names a contour that the drawing does not have. Closed contours are called L1, L2 and so on, the largest first; reading the drawing lists them.',
    matters: 'Nothing is left out for that name, so a border or another view may still be taken for a part.',
    remedy: 'Read the drawing, look up the name of the contour, and correct it in the job.',
  },
  'contour-not-found': {
    title: 'A requirement belongs to a contour that is not found',
    meaning:
      'The job requires something of a contour, and the drawing has none of that name, or the one of that name has another shape or place and the shape was found nowhere, or more than once. The finding states which. Nothing is required of any contour in its place.',
    matters:
      'Contours are numbered by falling area: a joined end or a new revision gives a number to a neighbour, and a fit on the wrong hole is scrap.',
    remedy: 'Put the requirement on the contour that it is meant for, or take it out.',
  },
  'contour-found-again': {
    title: 'A requirement was found again by the shape of its contour',
    meaning:
      'What was put on a contour is kept with its shape, size and place. The contour has another number in this drawing; its shape is there just once, and the requirement applies to it.',
    matters: 'The number alone would have pointed at another contour.',
    remedy: 'Nothing, where the contour named is the one that was meant.',
  },
  'contour-size-unusable': {
    title: 'A size cannot be that of its contour',
    meaning:
      'A size was asked of a contour, and no size across the contour comes near it; or its fit is not in the table of ISO 286 zones; or it was asked of an open line. The finding states the size that was found.',
    matters: 'A size of 20 on a circle drawn 22 is a mistake in one of the two, and only the customer knows which.',
    remedy: 'Correct the size in the job, or have the drawing corrected.',
  },
  'contour-aimed': {
    title: 'The middle of the limits of a size is aimed at',
    meaning:
      'Limits of a size are seldom the same on either side: 20 H7 is 20.000 to 20.021 mm. The contour is moved by half the distance from the drawn size to the middle of the limits, on every side, before anything is planned; program, proof and inspection use the moved contour. Each face may be off by a quarter of the zone.',
    matters: 'Aimed at the drawn size, half of all pieces would be too small; the offset registers stay free for what is measured.',
    remedy: 'Nothing. Where wear asks for another aim, give limits of your own round it.',
  },
  'ease-failed': {
    title: 'The corners of a contour cannot be eased by so much',
    meaning:
      'Rounding every inside corner to the radius asked for would make part of the contour vanish or fall into pieces: a slot or a neck is narrower than twice the radius.',
    matters: 'The eased contour would be another part than the one drawn, so it is not cut.',
    remedy: 'Ask for a smaller radius, or change the narrow place on the drawing.',
  },
  'measured-not-readable': {
    title: 'A measurement cannot be read',
    meaning:
      'A measurement names the contour, the measured size, the nominal size, and the temperature of the part: `L2: 24.006 of 24 at 22`. Units may stand behind the sizes (`.9451 in`); without one they are mm. Without a temperature the part is assumed to be at 20 °C. `one side` at the end says that only one of the two faces was cut.',
    matters: 'A number that can be read in two ways (`1,250`) is not guessed at, since a wrong register spoils the next piece.',
    remedy: 'Write it again in that form, in quotes, one after the other: `--measured "L2: 24.006 of 24 at 22" "L3: 11.998 of 12 at 22"`.',
  },
  'measured-loop-unknown': {
    title: 'A contour was measured that the job does not cut',
    meaning:
      'The measurement names a contour that has no cut in this program: it is the edge of the block, a start hole, or not in the drawing at all.',
    matters: 'A correction would be worked out for the wrong side of the metal, so none is given.',
    remedy:
      'Look up the name in the table of contours of `kerfwright answer`, or in the picture of the drawing, where every contour bears its name.',
  },
  'measured-doubted': {
    title: 'A measurement cannot well be meant as it was typed',
    meaning:
      'The nominal size is none that can be measured across the contour (its extents, diameters, distances of parallel faces and corners, sizes of the job or of a part by numbers), or the measurement is more than 0.1 mm per side from it.',
    matters:
      'A 25 typed for 22, a diameter typed for an ellipse or the wrong contour would move every register by the difference, and the next piece would be scrap.',
    remedy:
      'Look at the sizes that the question names and type the right one. What is really meant so is taken with `anyway` behind it: `L2: 25.004 of 25 anyway`; a size that is listed under `sizes` in the job file is never asked about.',
  },
  'thermal-growth-large': {
    title: 'The part grows noticeably while it is cut, and the program is not scaled for it',
    meaning:
      'Sizes of a drawing are valid at 20 °C. A block that is warmer while it is cut is larger by its expansion times the difference; cut to the drawing it shrinks below it as it cools. The growth over the whole part is here more than a quarter of the tolerance either side.',
    matters: 'It goes the same way on every piece, so measuring in the warm shop right after cutting does not show it.',
    remedy:
      "Set `scale` to true under `temperature` in the job file: the program is then made for the block as warm as it is. Or chill the water to 20 °C. Where the machine's own scales grow with the room, give as `cutting` the temperature of the block less theirs, plus 20 °C.",
  },
  'program-scaled': {
    title: 'The program is scaled for the temperature of the work piece',
    meaning:
      'The job sets `temperature.scale`: every contour, line, start hole and lead-in is multiplied by 1 + expansion · (temperature − 20 °C) about the datum. Brought to 20 °C, the part has the sizes of the drawing. The offset registers are not scaled: half the wire and the spark gap are no part of the work piece.',
    matters:
      'Set-up file and set-up sheet state the factor; `kerfwright prove` checks the program against the drawing grown by that factor, and refuses a factor that is not that of the stated temperature.',
    remedy: 'Run it at that temperature only: soak the block before the start.',
  },
  'datum-set': {
    title: 'The program zero is not the drawing origin',
    meaning:
      'The job sets a datum. All X and Y of the program, the set-up sheet, the hole table and the inspection sheet count from there; the picture shows it as a ring with a cross. The set-up file carries it, so that the proof puts the program back where the drawing has it.',
    matters: 'The operator must find this place on the block, and not the drawing origin.',
    remedy: 'Make sure that the datum is a place that can be touched or probed, such as a corner or the middle of a bore.',
  },
  'scale-below-resolution': {
    title: 'Scaling for temperature moves less than the program can write',
    meaning:
      "The job asks for a scaled program, but the part is so small, or so near to 20 °C, that no place moves by half of the program's last digit.",
    matters: 'A coordinate here and there may round to the other side; no size changes that could be measured.',
    remedy: 'Leave `temperature.scale` out, or check that the temperature is the true one.',
  },
  'wire-by-whole-job': {
    title: 'The wire with which the whole job costs least, and what the others would cost',
    meaning:
      'Every wire in the shop file is carried through passes, program, hours and price. Of those in stock that meet the requirements, the one with the lowest price each is selected: machine, labour, start holes, wire, filters, resin, power and markup are all in it. The finding names it, the next cheapest, and why the others in stock are not suitable; the table of the answer has them all. Of wires that cost the same, the one with fewer passes is selected, then the thicker one, then the first of the shop file. In jobs of more than 60 contours a wire is shown only with a lower bound ("from") where that bound is already above the price of the wire selected.',
    matters: 'Where you name a wire, yours is used, and the finding states what the cheapest other one in stock would cost.',
    remedy:
      'Nothing, or name a wire in the job if there is a reason that is not in the shop file. Where a wire that is not in stock would save more than it costs to order, order it.',
  },
  'wire-not-proven': {
    title: 'The program with the cheapest wire was not proven',
    meaning:
      'The wire that makes the whole job cheapest was selected and its program written, but the proof did not agree with the program. The wire is not exchanged behind your back, since the price on a quotation would then change without notice.',
    matters: 'The program must not be run as it is. The other findings say where the proof failed; look there first.',
    remedy:
      'Ask for the next cheapest wire by name (`wire` in the job, or `--wire`) and see whether its program is proven. Compare the prices in the table of wires before you promise anything.',
  },
  'planned-again': {
    title: 'The first plan was refused by our own proof, and another is proven',
    meaning:
      'The proof did not agree with what was planned first. The contours at which it failed were planned again with another entry, and so another start hole and tab, up to four times, and this plan is proven.',
    matters:
      'Nothing is wrong with the program. Start hole and tab lie where they would not have been placed at first, and hours and price are those of this plan.',
    remedy: 'Nothing, or look whether the new start suits the clamping.',
  },
  'plan-not-proven': {
    title: 'No plan that was made is proven',
    meaning:
      'The proof refused the plan, and where another entry might help up to four others as well. The planner made a mistake that its proof found: the drawing need not have any. The program is kept under a name that says it is not proven, for looking into it.',
    matters: 'The program must not be run. It is no reason to refuse the order, so no reply to the customer is printed.',
    remedy:
      'Look at the places that the proof names. Set entry, start hole or tab there by hand (`overrides`), or the start from the edge (`start`), and ask again; or program this job yourself. Please report the drawing.',
  },
  'corners-eased': {
    title: 'Inside corners were rounded before planning, as agreed',
    meaning:
      'The job sets `ease`: every inside corner sharper than that radius, as the wire sees it, is rounded to it before anything is planned. Everything else stays as drawn.',
    matters: 'Plan, program and proof then follow the eased contour, not the drawing as it came. The customer must have agreed.',
    remedy: 'Leave `ease` at 0 to keep the drawing as it is.',
  },
  'shape-limits-narrow': {
    title: 'The limits of the shape are narrower than the cut is expected to hold',
    meaning:
      'A part by numbers has limits of its own: a bore with its zone, a keyway, the teeth of a spline class. Each such size spans two walls, and both may be off, so that each wall has a quarter of the distance between the limits, to either side. The expected error of this cut is larger.',
    matters: 'The part may be cut as planned and still be out of its limits.',
    remedy:
      "Set the job's `tolerance` to the value stated, so that passes and wire are chosen for it; or take a wider zone or a coarser class. Correcting the registers after the first piece helps as well.",
  },
  'shape-limits-unasked': {
    title: 'The job allows more than the limits of the shape',
    meaning:
      "Bore, keyway or teeth have limits by their standard, but the job's `tolerance` lets the profile be off by more than they leave.",
    matters:
      'As planned the cut is expected to keep them; yet passes, wire and price were chosen for the wider tolerance, and another machine or a cheaper wire might not.',
    remedy: 'Set `tolerance` to the value stated.',
  },
  'nest-drawing-unusable': {
    title: 'A drawing of a nest has nothing that could be laid',
    meaning: 'A drawing of the nest, of a piece or of the plate, cannot be read or has no closed loop that is visible.',
    matters: 'A piece is laid by its outline, and open lines have no inside.',
    remedy: 'Look at the drawing with `kerfwright read`; it lists the gaps and the hidden layers. Ask for a drawing whose contours close.',
  },
  'nest-island-left': {
    title: 'A loop inside an opening of a piece is cut away with it',
    meaning:
      'In the drawing of a piece a loop lies inside an opening: an island. In a nest an outermost loop is a piece and the loops directly in it are its openings; what lies deeper comes away with the slug.',
    matters: 'If the island is a part as well, it would be lost.',
    remedy: 'Draw the island in a file of its own and name that as a piece. With `inHoles` it may be laid back into the opening.',
  },
};
