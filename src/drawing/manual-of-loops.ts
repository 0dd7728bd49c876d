/** What the manual says of units, of joining pieces, and of the loops that come of it. */
import type { ManualEntry } from '../text/manual.ts';

export const manualOfLoops = {
  'units-missing': {
    title: 'The file does not say in which unit it is drawn',
    meaning:
      'The header of the file names no unit, or says "none". Millimetres are assumed; the finding gives the size of the drawing both as millimetres and as inches.',
    matters: 'A part read in the wrong unit is 25.4 times too large or too small: it is quoted, and perhaps cut, for nothing.',
    remedy: 'Compare the two sizes with the part you were asked for and give the unit. With it, the question does not come again.',
  },
  'units-disagree': {
    title: 'Texts or dimension styles speak of another unit than the header',
    meaning:
      'The header of the file gives a unit, and the texts of the drawing or its dimension styles are in the other system: inch marks in a metric file, mm or metric dimension styles in an inch file. The finding quotes some of them. The unit of the header was kept.',
    matters: 'Headers often come from a template that was never changed. A wrong unit makes a part 25.4 times too large or too small.',
    remedy: 'Hold one known size against both sizes stated, and give the unit with the job (`units`).',
  },
  'units-implausible': {
    title: 'The stated unit makes the part an unlikely size',
    meaning:
      'In the unit of the file (or the one given in its place) the whole drawing is larger than any machine is likely to take, or smaller than the cut of a thin wire. The unit is kept all the same, since only the customer knows.',
    matters:
      'Programs that draw often leave a unit in the header that was never chosen. A drawing of 270 by 108 "inches" is mostly one in millimetres.',
    remedy: 'Look at one dimension you know. If it is wrong, give the right unit; it overrules the file.',
  },
  'dimensions-disagree': {
    title: 'Dimensions say another length than is drawn',
    meaning:
      'A dimension prints, or has measured, another length than lies between its own points, beyond what rounding explains. Where all of them are off by the same factor, the drawing has another unit (25.4, 10) or another scale (2, 0.5) than it says; a single one was mostly typed over.',
    matters: 'What is drawn is what is cut. The customer may measure what is written.',
    remedy: 'Specify the unit where that explains it (`units`). Otherwise ask the customer which of both holds, and for a drawing 1:1.',
  },
  'units-unknown': {
    title: 'The unit given is not one known here',
    meaning: 'The word given as the unit is none of those known here, so it was passed over and the file decided.',
    remedy: 'Give one of mm, cm, m, µm, inch, mil, ft.',
  },
  'units-overruled': {
    title: 'The unit given by the user differs from the one in the file',
    meaning:
      'The file names a unit, and another one was given. The one given is used: every number of the drawing is read in it, nothing is converted.',
    matters: 'If the file was right, the part is now too large or too small.',
    remedy: 'Nothing, if that is what you meant. If you wanted the drawing converted instead, leave the unit out.',
  },
  'curves-fitted': {
    title: 'Curves that are neither line nor arc became arcs',
    meaning:
      'Ellipses and splines are followed by arcs that meet without a kink wherever the curve has none. The finding says how many arcs there are and how far the worst of them lies from its curve; half a micrometre is allowed unless another deviation is given. Arcs so nearly straight that their centre lies more than 50 m away become lines within the same deviation.',
    matters:
      'A program can hold only lines and arcs, and many short chords would leave facets that can be felt. The areas in the list of loops are those of the drawn curves, not of the arcs.',
    remedy: 'Nothing. Ask for a smaller deviation only where the tolerance of the part comes near it.',
  },
  'curve-unfitted': {
    title: 'A curve could not be turned into arcs',
    meaning:
      'An ellipse or a spline has numbers that no arcs can follow within the tolerance: points that are no numbers, or a size at which the tolerance is lost in rounding. It is left out.',
    matters: 'What it belonged to is open there.',
    remedy: 'Ask for the drawing with this curve as lines and arcs, or check the unit.',
  },
  'zero-length-dropped': {
    title: 'A piece without length was dropped',
    meaning:
      'A line or arc begins and ends in the same place, up to a hundredth of a micrometre. Closed polylines often repeat their first point in this way. The piece has no shape and is left out.',
    matters: 'Such a piece has no direction, and a wire that should follow it would have nowhere to go.',
    remedy: 'Nothing.',
  },
  'doubled-edge-dropped': {
    title: 'A stretch drawn more than once was kept once',
    meaning:
      'Two or more lines, arcs or curves run along each other within a micrometre, all the way or for a part of it, in the same direction or backwards. The common stretch is kept once; the finding states its place and length.',
    matters: 'A doubled stretch would be cut twice, or the outline could not be followed at its ends.',
    remedy: 'Nothing, unless two parts were meant to lie side by side there: then see `loops-share-edge`.',
  },
  'doubled-loop-dropped': {
    title: 'A loop drawn more than once was kept once',
    meaning:
      'Two closed loops are the same within a micrometre all round, however each is pieced together. One is kept, a visible one before a hidden one. If they lie on two layers, both are named.',
    matters: 'Cutting a loop twice wastes hours, and the second time there is nothing left to hold.',
    remedy: 'Nothing. If the layers stand for two operations, draw the second one apart.',
  },
  'gap-closed': {
    title: 'Two ends that did not quite meet were joined',
    meaning:
      'Two free ends lie nearer to each other than the join gap (5 µm unless another is given). They were moved into one point: two lines to where they would cross, a line to the end of an arc, two arcs halfway. The finding gives place and size.',
    matters: 'The contour is changed by no more than the gap itself. Where the gap is a large part of the tolerance, that matters.',
    remedy:
      'Compare the largest gap with the tolerance of the part. A smaller join gap allows less; what no longer joins is then listed as open.',
  },
  'rounding-closed': {
    title: 'Ends that differ by rounding alone were made one',
    meaning:
      'Files keep four to sixteen digits of a number, so ends that are meant to be one may differ in the last of them. Up to a hundredth of a micrometre that counts as rounding; the finding states at how many places, and the worst.',
    matters: 'No wire can show the difference.',
    remedy: 'Nothing.',
  },
  'spur-dropped': {
    title: 'A spur of an outline, out and back on itself, was dropped',
    meaning:
      'Lines leave a loop, end somewhere, and come back on themselves. They enclose nothing out there, so the loop is kept without them. A line that leads from an outline to an inner opening and back is left out in the same way.',
    matters:
      'Such spurs come from a corner that was drawn too far and then corrected, or from programs that join an opening to its outline by a line.',
    remedy: 'Nothing, unless a slit was meant there; then draw it with its width.',
  },
  'layers-apart': {
    title: 'Lines of several layers meet, and some layers make whole loops by themselves',
    meaning:
      'Three or more ends meet at a place and lie on different layers, and at least one of these layers closes into whole loops without the others. Such layers were joined by themselves: what lies on the others does not divide their loops. A centre line from corner to corner of a part, or one part drawn over another, is met so. Where such layers cannot all be cut, because their loops touch, cross or share an edge, the one with the largest loop is cut and what meets it is left out, until the job names the layers.',
    matters: 'Joined together, all these lines would divide the part into pieces that were never meant, each cut by itself.',
    remedy: 'Name the layers that are to be cut (`layers` in the job), or draw on one layer what belongs together.',
  },
  branched: {
    title: 'Three or more ends meet in one place',
    meaning:
      'More than two ends meet in a point, so which of them belong together cannot be known for certain. Loose branches and lines that only lead from one loop to another are set aside as open chains; of the rest the smallest closed loops are used. Polylines that only pass through each other are followed along their own pieces, and that is just noted.',
    matters: 'A dividing line, a centre line or two parts with a common edge all look like this, and they are cut quite differently.',
    remedy:
      'Check in the picture that the loops are those you want. Otherwise ask for each outline as one closed polyline, without construction lines.',
  },
  'open-chain': {
    title: 'Pieces join up but do not close',
    meaning:
      'Lines and arcs that follow each other end in two free ends. The finding gives both ends, and where they lie close together, how far apart they are. An open chain is not cut.',
    matters: 'It may be a centre line or a bend line. It may also be the outline of the part with a gap that is larger than the join gap.',
    remedy: 'Nothing for construction lines. For an outline, close it in the drawing or allow a larger join gap.',
  },
  'chain-ends-on-loop': {
    title: 'An open chain ends on a closed loop',
    meaning:
      'A line that belongs to no loop starts or stops exactly on the edge of one. The loop is kept as it is, and the chain stays open.',
    matters: 'Centre lines that stop at the edge look like this, and so does a slot whose end was forgotten.',
    remedy: 'Look at the place. If the chain is part of a shape, ask for the rest of it.',
  },
  'loop-without-area': {
    title: 'A loop that encloses nothing was dropped',
    meaning: 'A closed loop runs there and back on the same line, so there is nothing inside it. It is left out.',
    matters: 'Two points joined by a closed polyline, and hatch or text turned into lines, leave such loops.',
    remedy: 'Nothing, unless a thin slot was meant: a wire makes a slot of its own width along an open line, which has to be asked for.',
  },
  'loop-crosses-itself': {
    title: 'A loop crosses itself',
    meaning:
      'A closed loop crosses its own line. What is inside it and what outside changes there, so no wire can be led round it at a steady distance: the loop is refused as it is drawn.',
    matters: 'Loops of a few micrometres at corners come from offsetting in a drawing program; large ones from corners in the wrong order.',
    remedy: 'Have the outline drawn so that it goes round once. The place is marked on the picture.',
  },
  'loop-touches-itself': {
    title: 'A loop touches itself or runs over itself',
    meaning:
      'A closed loop comes back to a place it has passed, or runs along its own line for a while, without crossing it. At that place the part, or the opening, has no width.',
    matters: 'A line to an inner opening and back makes such a loop, and so does a neck that was drawn without thickness.',
    remedy: 'State whether the two sides are to be parted: draw them as two loops, or give the neck a width.',
  },
  'loop-sliver': {
    title: 'A loop is narrower than any wire',
    meaning:
      'A closed loop has next to no inside: twice its area divided by its length, its mean width, is less than 10 µm. It is kept as drawn.',
    matters:
      'No wire fits into an opening so narrow, and no part so thin would hold. Slivers are left behind where two outlines nearly coincide, or where a drawing program cut one shape from another.',
    remedy: 'Look at the place on the picture. Mostly the loop can be left out.',
  },
  'loops-cross': {
    title: 'Two loops cross each other',
    meaning:
      'Two closed loops cross, so neither is an opening in the other and cutting one would cut into the other. Both are kept as drawn, and the job is refused until one is chosen.',
    matters: 'Assembled views, and parts laid over each other on one sheet, look like this.',
    remedy: 'Leave out the loops that are not to be cut, by layer or in the drawing.',
  },
  'loops-touch': {
    title: 'Two loops touch in a point',
    meaning: 'Two closed loops meet in a point without crossing. Between them the part has no material there.',
    matters: 'Whatever stays between an opening and the outline at such a place has no width, and breaks out.',
    remedy: 'Check whether the drawing means it. Mostly one of the loops belongs to another part.',
  },
  'loops-share-edge': {
    title: 'Two loops run along the same line',
    meaning: 'Two closed loops have a stretch of edge in common. The finding gives its length and middle.',
    matters: 'One cut cannot make both edges to size: the wire takes a kerf away, and each part would lack half of it.',
    remedy: 'Lay the parts apart by the kerf and some room, or state that the shared line is only a construction line.',
  },
  'loop-partly-hidden': {
    title: 'A loop closes only with pieces of a hidden layer',
    meaning:
      'Visible lines by themselves stay open, and lines of a layer that is off or frozen complete them to a loop. The loop counts as one to be cut.',
    matters: 'The layer may have been hidden by mistake, or its lines may be left-overs that happen to fit.',
    remedy: 'Check that the loop is the outline you want, and have the layer shown or the outline closed.',
  },
  'looks-like-border': {
    title: 'A contour looks like the border of a drawing sheet',
    meaning:
      'A rectangle around other contours has the size of a sheet (A4 to A0, letter sizes A to E) or of the frame on an A4 to A0 sheet, lies on a layer that is named for a border or a title block, holds a table, has the marks of zones, the lines of a grid or those of a title block, or encloses all in a drawing whose texts are those of a title block. A second rectangle within it counts as well, and so does a rectangle around a part that has openings of its own. All of them are one question. They are left out unless the job says otherwise: what lies in them is taken as if they had not been drawn. Where nothing but circles lies in one, and neither its layer nor a table in it tells, it may as well be a plate with holes: it is asked about too, but cut.',
    matters: 'A border taken for the part is cut, and the part in it is taken for an opening and falls out as waste.',
    remedy:
      'Name them under `without` to confirm. If one is a part, set `kept.<loop>` to `punch`; if it is the edge of the block, set `outline` to `block`.',
  },
  'looks-like-table': {
    title: 'Contours look like a title block, a table or a grid',
    meaning:
      'Three or more rectangles lie edge to edge, and the drawing has other contours beside them. All of them are one question. They are left out unless the job says otherwise.',
    matters: 'A wire cannot cut between pieces that share an edge, and the cells of a title block are no parts.',
    remedy:
      'Name them under `without` to confirm. What is to be cut after all gets a side that is kept (`kept.<loop>`), and room for the wire in the drawing.',
  },
  'looks-like-view': {
    title: 'A contour looks like another view of the part',
    meaning:
      'Beside the largest part lies a contour without openings that reaches exactly as far along x or y, as side views and sections do that are projected from it; several in one band count together. All of them are one question. They are cut as parts unless the job leaves them out.',
    matters: 'A side view that is cut costs metal and hours, and is no part.',
    remedy: 'Name them under `without` to leave them out, or set `kept.<loop>` of each to say that it is a part.',
  },
  'looks-like-construction': {
    title: 'A closed contour is drawn as a centre line, a hidden edge or a note',
    meaning:
      'It has a line type of centre lines, hidden edges, phantoms or folds (dashes in an SVG), or lies on a layer named for such lines or for dimensions. Such lines divide no outline and count neither as parts nor as openings. Those that close are one question; they are left out unless the job says otherwise. Where nothing else closes, line types and layers are passed over.',
    matters: 'A pitch circle taken for an opening turns the holes on it into islands, and falls out with them.',
    remedy: 'Name them under `without` to confirm, or set `kept.<loop>` of what is to be cut.',
  },
  'loops-hidden': {
    title: 'Loops on hidden layers are left out',
    meaning:
      'Some closed loops lie on layers that are off or frozen, or are themselves marked as invisible. They are listed, drawn dotted on the picture, and count neither as openings nor as parts.',
    matters: 'Hidden layers mostly hold construction lines or another state of the part.',
    remedy: 'Nothing, unless one of them is to be cut: show its layer in the drawing.',
  },
  'no-loop': {
    title: 'The drawing holds no closed loop to cut',
    meaning:
      'Nothing in the drawing encloses an area that could be cut: everything is open, hidden, of a kind that bounds no shape, or of a kind that is not read. The finding says which.',
    matters: 'Without a closed loop there is neither a part nor an opening.',
    remedy: 'Ask for a drawing of the outline as closed lines, arcs or polylines. A solid or a mesh has to be sent as a flat view.',
  },
} satisfies Readonly<Record<string, ManualEntry>>;
