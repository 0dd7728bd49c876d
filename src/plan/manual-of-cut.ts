/** What the manual says of the cut itself: start holes, leads, tabs, slugs, walls, and the block with its clamps. */
import type { ManualEntry } from '../text/manual.ts';

export const manualOfCut = {
  'hole-does-not-fit': {
    title: 'There is no room for a start hole',
    meaning:
      'A closed opening needs a hole to thread the wire through. Its edge must keep the rough offset and 0.05 mm from the contour. In this contour even a hole of 1 mm does not fit.',
    matters: 'A hole that cuts into the part leaves a flaw that no skim takes away.',
    remedy:
      'Widen the opening by the amount stated, cut it from a hole that is there already (`holes`), reduce the height, or set the loop to `leave` and make it by another process.',
  },
  'open-line-cut': {
    title: 'How an open line is cut',
    meaning:
      'An open line of the drawing is cut because the job asks for it: with the metal on its left or right kept (left and right as the line runs in the drawing), or as a slit, whose middle runs along the line and which keeps both sides. The finding states the passes, the lead-in and the lead-out. A line that ends at the edge of the block is entered from beside the block; one that ends inside starts from a hole beside its end, on the side of the waste. A slit may end blind. It is cut once, so its faces are those of a rough cut.',
    matters:
      'Where the line leads from edge to edge it parts the block: the smaller piece is held by a tab before the edge, the program stops, the operator secures the piece, and it is cut off. Lines inside a contour are cut before that contour, all others after every contour.',
    remedy: 'Check that left and right are meant so; the proof checks the program against the same side.',
  },
  'kept-side-comes-off': {
    title: 'The kept side of an open line is the piece that comes off',
    meaning:
      'The line parts the block, and the side to be kept is the smaller one. The larger piece is assumed to be the one that is clamped, so the part hangs on its tab, is cut off, and is finished while a clamp or glue holds it.',
    matters: 'A part that gives way by a hundredth while it is finished is spoilt, and one that drops is lost.',
    remedy:
      'Clamp the block on the kept side, so that the waste comes off instead; otherwise secure the part so that nothing can move it, or ask for a finish that needs no skims.',
  },
  'several-parts': {
    title: 'Several parts come out of one block',
    meaning:
      'More than one outermost contour is cut as a part. All are programmed from the same program zero in the same clamping, so that their places to each other are as good as the machine; openings in all of them are cut before the first outside contour. The finding states the order and the distance of the nearest two.',
    matters: 'Each part that comes free leaves a hole in the frame that holds the others.',
    remedy: 'Nothing, if the order suits the clamping. Where the block is known to move, rough all before any is finished.',
  },
  'hole-shared': {
    title: 'Two contours are started from one hole',
    meaning: 'A start hole lies in the waste between two parts, near enough to both and with room round it, so one hole serves them both.',
    matters: 'It saves the drilling and the setting of a hole. The wire is threaded in it once for each part.',
    remedy: 'Nothing. To have separate holes, mark their places in the drawing or give them in the job.',
  },
  'frame-cut-open': {
    title: 'A contour is started from the edge of the block',
    meaning: 'The job asks that the contour is started from beside the block instead of from a hole in it. No hole has to be drilled.',
    matters:
      'A closed frame holds its shape; a frame that is cut open lets go of its stress and springs, by hundredths in a thick hardened block (common practice, no source). Round a part this moves the part while it is cut. At an opening the lead stays in the block as a slit for good.',
    remedy: 'Keep it for work that needs no great accuracy, for stress-relieved blocks, or for shapes without room for a hole.',
  },
  'no-way-in-from-edge': {
    title: 'No straight lead-in reaches the contour from the edge of the block',
    meaning:
      'The contour is to be started from the edge of the block, but from none of its likely entries a straight lead goes out of the block without coming too near to another contour or a clamp; or it would cut the slug in two before it is held.',
    matters: 'No program can be written for this contour.',
    remedy: 'Leave `start` out for this contour, so that it is started from a hole, or lay it nearer to the edge.',
  },
  'hole-made-smaller': {
    title: 'A start hole had to be smaller than asked',
    meaning: 'The opening has no room for a start hole of the diameter asked for with the usual clearance; a smaller one is planned.',
    matters: 'A small hole in a thick block is harder to drill straight and harder to thread.',
    remedy: 'Make sure that the drill for it is there, or give a hole that exists (`holes`).',
  },
  'hole-may-drift': {
    title: 'A start hole may drift into stock that must stay',
    meaning:
      'A drilled hole drifts by about a hundredth of its depth. Its radius and that drift should stay within the room about its centre, less the rough offset and 0.05 mm; in a narrow slot or a tall block even a hole of 1 mm does not. It is planned all the same, because such holes are drilled every week and mostly run true. One finding stands for all of them, with the worst.',
    matters: 'A hole that has drifted into the wall leaves a mark that no skim takes away.',
    remedy:
      'Drill a finer hole (`--start-hole`, `startHole` in the job), measure where it comes out below before cutting, or set the loop to `leave` and make it by another process.',
  },
  'hole-not-drilled': {
    title: 'The material is not drilled',
    meaning: 'A contour would be started from a hole that has to be drilled first, and polycrystalline diamond is not drilled.',
    matters: 'The wire cannot be threaded where there is no hole, so the answer is no.',
    remedy: 'Start from the edge of the block (`start` set to `edge`), or give a hole that the blank came with (`holes`).',
  },
  'hole-too-fine': {
    title: 'A start hole is too fine for the wire to be threaded',
    meaning:
      'The hole, drawn, given or asked for, is hardly wider than the wire or narrower than it. A wire that is pushed through a hole drilled tens of millimetres deep needs some room: 1.3 times its diameter at the very least (common practice, no source).',
    matters: 'Nothing can be cut from a hole that the wire does not go through, so the answer is no.',
    remedy: 'Drill the hole larger, set `startHole` in the job to 1 mm or more, or insist on a finer wire.',
  },
  'hole-not-used': {
    title: 'A hole of the job is not used',
    meaning:
      'The job file gives a hole under `holes`, and no contour is started from it: it may lie outside every opening, or too near a contour.',
    matters:
      'A hole in the wrong place takes metal away. The proof knows only the holes that the wire is threaded through, so it cannot see that.',
    remedy: 'Compare the place of the hole with the picture (places are in drawing units), or take it out of the job.',
  },
  'hole-not-usable': {
    title: 'A hole of the drawing cannot be used to start a contour',
    meaning:
      'A hole was given inside this contour, but its middle is so near the contour that the wire could not start there without cutting into it, or the hole itself cuts the contour.',
    matters: 'Another hole is planned, or the contour is refused if there is no room for one.',
    remedy: 'Check the place and the diameter of the hole in the job or on the drawing.',
  },
  'no-room-for-lead': {
    title: 'The wire has no room to come in and turn round',
    meaning:
      'Coming onto the contour, switching compensation on, and turning round between the skims takes a little smooth contour and a little room beside it. At none of the likely places was there enough without touching metal that stays.',
    matters: 'Very small parts and very crooked openings are the usual cases.',
    remedy: 'Give a start hole in a wider place of the contour, ask for fewer passes (a coarser finish), or take a finer wire.',
  },
  'entry-on-arc': {
    title: 'A contour starts on a curve',
    meaning: 'The contour has no straight stretch long enough for entry and tab, so it starts on an arc.',
    matters: 'The entry mark is harder to stone off on a curve than on a flat.',
    remedy: 'Nothing for a round opening. Otherwise check whether the mark falls on a sealing or sliding face.',
  },
  'entry-near-corner': {
    title: 'A contour starts close to a corner',
    meaning: 'Several kerfs from the entry to the next corner are better. No stretch of this contour is long enough.',
    matters: 'The wire still settles after the entry, and a mark near a corner is harder to stone off.',
    remedy: 'Look at the first piece there, or give a start hole near a longer side. For small openings this cannot be helped.',
  },
  'tab-round-corner': {
    title: 'A tab reaches round a corner',
    meaning: 'The metal left standing to hold the piece does not fit on one straight face; part of it lies beyond a corner.',
    matters: 'The mark of the tab is then on two faces and in the corner, where it is hardest to remove.',
    remedy: 'Hold the piece by other means and program the cut of the tab by hand, or accept the mark.',
  },
  'slug-splits': {
    title: 'The slug comes off in pieces',
    meaning:
      'The hole used is so large against the opening, or lies so, that it or the lead from it runs into the kerf on more than one side. The slug then comes off in two pieces, the first of them before the rough cut is all round. The same happens where an island is cut out of an opening and hardly any waste stands between the two: their kerfs run together there and cut the slug through. The program therefore leaves a tab before each such place as well, stops there, cuts it, and stops again so that what is loose can be taken out. Where an island is in the way, it may turn out at such a stop that nothing is loose yet. Unattended at night the rough cut ends before the first of them.',
    matters: 'A piece that falls unseen can short the wire or jam in the lower nozzle.',
    remedy: 'Secure both pieces at the first stop. A smaller hole, or one at the end of the opening, would leave one slug.',
  },
  'slug-tiny': {
    title: 'A slug is too small to be caught',
    meaning: 'The slug is less than about 5 mm across. The stop before the cut stays in the program.',
    matters: 'When its tab is cut it may tilt, fall through into the lower nozzle, or short the wire.',
    remedy:
      'Put a magnet or a plate under it, flush gently while the tab is cut, and make sure that the piece is out before the wire runs on.',
  },
  'no-core-cut': {
    title: 'An opening gets a no-core cut',
    meaning:
      'The wire takes all of the opening: from the start hole outward it runs ring round ring, each a little less than a kerf from the one before, and last the rough cut and the finishing passes. Nothing is left that could come loose, so there is no tab and no stop, and the opening can be cut unattended at night. The finding says how many rings there are, how much new metal the first and the widest of the others takes across, and what it costs in minutes.',
    matters:
      'It is chosen where the slug would be shorter than about 5 mm or too light to be caught, since such a slug slips into the lower nozzle or shorts the wire; and where the extra cutting costs clearly less than the attended stops for a slug.',
    remedy: 'Nothing. If a slug is wanted, set `core.<loop>` to `slug`; with `no-core` any opening is cut without a core.',
  },
  'core-needed': {
    title: 'An opening could not get the no-core cut asked for',
    meaning:
      'No core was to be left, because you asked for it or because the slug is too small to be caught, but that cannot be done: the piece inside is the part, something else is cut inside the opening, it is started from the edge of the block, or no wire path leads over the rings.',
    matters: 'The opening is cut with a tab and a slug as usual, with its attended stops.',
    remedy: 'Look at the reason. Where a slug is too small to be caught, put a magnet or a plate under it.',
  },
  'core-of-unknown-loop': {
    title: 'A choice was made for the core of a loop that is not cut',
    meaning:
      'The job says whether a loop gives a slug or gets a no-core cut, but no loop that is cut has that name. Most likely the name is misspelt, the loop is left out or is the edge of the block, or the drawing has changed since.',
    matters: 'The choice has no effect; the loop that was meant is planned without it.',
    remedy: 'Look up the names of the loops in the answer and correct `core` in the job.',
  },
  'tab-weak': {
    title: 'A tab would bend under its piece',
    meaning:
      'The wire stands upright, so a loose piece lies flat and stands out from its tab like a shelf. Its weight, times the distance from the tab to its centre of gravity, bends the tab, whose strength grows with its length and with the square of its height. Thin wide pieces are the worst: they weigh enough and have little height to hang by. The tab was made as long as the contour allows (15 % of it), and would still bend.',
    matters: 'The piece then sags while it is being cut, pinches the wire and leaves a mark.',
    remedy: 'Support the piece from below before the rough cut is half round, or stack the sheets and cut them together.',
  },
  'slug-heavy': {
    title: 'A loose piece is too heavy to be lifted by hand',
    meaning: 'The slug or part weighs more than about 23 kg.',
    matters: 'It must neither drop onto the lower nozzle nor be pulled out by hand.',
    remedy: 'Have lifting tackle and a threaded hole or a clamp ready before the tab is cut, and support the piece from below.',
  },
  'cuts-too-close': {
    title: 'Two cuts leave a web thinner than the kerf',
    meaning: 'Between two contours, or two stretches of one, less metal stays than the width of the kerf.',
    matters: 'So thin a web bends under the sparks and the flush, gets hot, and may be off size on both sides or burn through.',
    remedy: 'Ask whether it may be thicker; otherwise cut it early, with low flush, and measure it.',
  },
  'wall-too-thin': {
    title: 'A wall is thinner than any that came out whole',
    meaning:
      'A wall or fin of the finished shape is thinner than 0.12 mm. In published tests on hardened tool steel the thinnest fin that came out whole had 0.117 mm.',
    matters:
      'The sparks push, the metal warms up on both faces at once, and stress that the cut sets free bends what is left. So thin a wall burns through, curls up or breaks off with the slug.',
    remedy:
      'Ask whether the wall may be thicker. If it must be so, cut it with little energy and many light passes, try one piece first, and tell the customer that some may be lost.',
  },
  'wall-too-long': {
    title: 'A thin wall stands out too far to keep its shape',
    meaning:
      'A wall below 0.5 mm is longer than 2 mm. In published tests on hardened tool steel such walls kept their shape up to 1 to 2 mm and bent beyond. The length stated is measured along one face; a wall that is held at both ends is stiffer than that, and the warning errs on the safe side there.',
    matters: 'A bent wall is off size on one face and has stock left on the other, and a skim that follows cannot repair it.',
    remedy:
      'Ask whether it may be thicker or shorter; otherwise rough both sides before either is finished, with low energy, skim both faces alike, and measure the wall at its free end.',
  },
  'web-thin': {
    title: 'Two openings are closer than a kerf and a web',
    meaning:
      'Between two openings more metal stays than a kerf is wide, but less than a kerf and 1 mm (common practice, no source). Only the narrowest pair is stated with its place; the finding says how many more are as near.',
    matters:
      'When the second opening is roughed, the web has lost its support on the other side. It gives way by some thousandths and comes out thinner in the middle of its height or leaning.',
    remedy:
      'Measure the web. Two openings beside it are roughed before either is finished; where an order is set by hand that has to be arranged in it.',
  },
  'parts-too-near': {
    title: 'The waste between two parts comes apart or bends',
    meaning:
      'Two parts are laid into one block so near to each other that between their kerfs less than 1 mm of waste stays, or nothing at all.',
    matters:
      'Where the two kerfs run together the waste round the parts is cut through, and what loses its hold can fall, tilt a part or short the wire. A thin strip between two kerfs bends and does the same.',
    remedy: 'Lay the parts further apart, at least by two kerfs and 1 mm. The finding states the distance.',
  },
  'frame-weak': {
    title: 'The ring of block round a contour is thin',
    meaning:
      'Between a contour and the edge of the block less metal stays than a rule of thumb asks: 3 mm, and a twentieth of the longer side of the contour (common practice, no source).',
    matters:
      'The block has stress in it. A thin ring gives way to it when the contour is roughed, the opening changes its shape by hundredths, and a part that hangs on such a ring moves with it.',
    remedy: 'Take a larger block or set `block.border` higher; otherwise rough first, let the block move, and finish then.',
  },
  'outside-stock': {
    title: 'A contour reaches over the edge of the stock',
    meaning:
      'The job names the piece of metal that is clamped (`stock`) and where its lower left corner lies in the drawing; a contour that is to be cut reaches over its edge. The finding states over which edge, by how much and where.',
    matters: 'The part would come out with a piece missing, or the wire would run in open water where the program expects metal.',
    remedy:
      'Take a larger piece of metal, or move it: `stock.corner` is its lower left corner in the units of the drawing. Without a corner it lies below and left of the outermost contours by `block.border`.',
  },
  'stock-not-as-drawn': {
    title: 'The stock of the job is not the block of the drawing',
    meaning:
      'The drawing shows the edge of the block (`outline: block`), and the job gives a `stock` of another size. The drawn block is used for start holes, margins, mass and price.',
    matters: 'One of the two is wrong, and whoever lays out the metal goes by one of them.',
    remedy: 'Leave `width` and `depth` out of `stock` (its price may stay), or take the block out of the drawing.',
  },
  'near-block-edge': {
    title: 'A contour comes too near the edge of the block',
    meaning: 'The contour reaches over the edge of the block, or so little metal stays beside it that the cut breaks out there.',
    matters: 'A part then lacks metal on that side; an opening becomes a notch, and its ring is cut open so that the block springs.',
    remedy:
      'Take a larger block, move the contour inward, or, if it is meant to be open there, draw it as an open line and cut it as such.',
  },
  'cuts-clamp': {
    title: 'A cut would run into a clamp',
    meaning:
      'With the clamps given, the wire or a start hole would lie on one of them. The finding says which clamp, counted as in the job file, and the place.',
    matters: 'The program is refused, since the wire breaks there at best.',
    remedy: 'Move the clamp, hold the block from another side, or give the start hole of the contour by hand.',
  },
  'near-clamp': {
    title: 'A cut comes near a clamp',
    meaning:
      'Between the cut and a clamp there is less than about 5 mm (common practice, no source). The wire passes, but the nozzles are much wider than the wire and may not.',
    matters:
      'A nozzle that meets a clamp stops the machine or bends the guide; one that cannot come down on the work there loses its flush, and the cut slows down.',
    remedy: 'Check the height of the clamp against the nozzle, move the clamp, or raise the nozzle and count on a slower cut.',
  },
  'contours-touch': {
    title: 'Two contours touch',
    meaning:
      'Two loops that are both to be cut touch, cross, or share an edge, so nothing stays between them. The drawing leaves open what is meant: a shared edge may be one cut for two parts, a slip of the draughtsman, or an opening that runs out of its part.',
    matters: 'Cut as drawn, the wire would cut into what the other contour keeps.',
    remedy: 'Draw the two as one contour, move them apart, or set one of them to `leave`.',
  },
  'cuts-overlap': {
    title: 'Two contours are so close that one cut would spoil the other',
    meaning: 'Two contours with waste between them stand so close that the rough cut along one reaches into the other.',
    matters: 'The second contour comes out with a notch.',
    remedy:
      'Move them apart by at least the distance stated, or cut them from different blocks. A finer wire needs less room between them.',
  },
  'cuts-beyond-travel': {
    title: 'The cuts reach further than the machine travels',
    meaning: 'From the first cut to the last the contours measure more than the travel of the table, as the shop file gives it.',
    matters: 'The machine would run into its limits in the middle of the program, so the answer is no.',
    remedy:
      'Turn the drawing by a quarter where that fits, set contours to `leave` and cut them in a second clamping with a datum that both share, or cut on a larger machine. If the unit of the drawing is wrong, give the right one with `units`.',
  },
  'block-beyond-travel': {
    title: 'The block is larger than the travel of the machine',
    meaning: 'The block, as drawn or as the box around the contours with its margin, is larger than the table travel.',
    matters: 'Contours near its edges may not be reached in one clamping.',
    remedy: 'Turn the block, reduce the margin, or plan two clampings with a datum that both share.',
  },
} satisfies Readonly<Record<string, ManualEntry>>;
