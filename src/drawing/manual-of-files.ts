/** What the manual says of reading the formats of drawings. */
import type { ManualEntry } from '../text/manual.ts';

export const manualOfFiles = {
  'file-too-large': {
    title: 'The file has more bytes than the limit',
    meaning: 'The file is larger than the reader takes (256 million bytes unless another limit is given). Nothing was read.',
    matters:
      'A drawing of one part has some kilobytes, a crowded plate a few megabytes. A file of this size usually carries a whole assembly, scans or solid models along.',
    remedy: 'Save only the layers and blocks that are to be cut, as R12 or 2000 DXF, and read that. The limit can be raised on purpose.',
  },
  'too-many-entities': {
    title: 'The drawing has more pieces than the limit',
    meaning:
      'Once all blocks are drawn out, the drawing has more lines, arcs and curves than the reader takes (a million). Nothing was read, because half a drawing would be mistaken for a whole one.',
    matters: 'A small file can do this: blocks within blocks, or a block repeated in thousands of rows and columns. That is rarely meant.',
    remedy: 'Save only what is to be cut. If a pattern really has so many openings, read one of them and repeat it in the job.',
  },
  'nested-too-deep': {
    title: 'Blocks or groups lie within each other deeper than the limit',
    meaning: 'Blocks inserted in blocks, or groups in groups, are nested deeper than 64 levels. Nothing was read.',
    matters:
      'Drawings made by people have two or three levels. Deeper nesting comes from programs that wrap everything again at each export, or from a file made to do harm.',
    remedy: 'Explode the blocks or ungroup in the drawing program, and save again.',
  },
  'too-much-work': {
    title: 'Reading the drawing needs more steps than the limit',
    meaning:
      'The steps needed to draw the blocks out, or to join the pieces, were counted and came to more than the limit. Nothing was read. Steps are counted rather than timed, so the same file ends in the same way on every computer.',
    matters: 'Large arrays of blocks do this, and symbols that use each other, and sometimes thousands of pieces on top of each other.',
    remedy: 'Explode or remove large arrays, delete what is not to be cut, and save again. The limit can be raised on purpose.',
  },
  'not-a-drawing': {
    title: 'The file is in no format that is read here',
    meaning: 'The file is neither a DXF file with at least one section nor an SVG file. Nothing was read.',
    matters:
      'Often another format was saved under the wrong ending: DWG, a PDF, a picture, or the web page of a download that asked for a password.',
    remedy: 'Open the file in the program it came from and save it as DXF (R12 to 2018, text or binary) or as SVG.',
  },
  'file-cut-short': {
    title: 'The file ends before its end mark',
    meaning:
      'The file has no end mark, or a section of it has none. What could be read before is shown; the entity in which the file breaks off was left out, because its last number may be half of one.',
    matters: 'Such a file was cut off in a transfer or by a full disk. What is missing cannot be known: openings may be gone.',
    remedy: "Ask for the file again. Do not cut from this one unless the picture has been compared with the customer's print.",
  },
  'group-code-unreadable': {
    title: 'A line that should be a group code is not one',
    meaning:
      'A DXF file is a row of pairs: a group code, then a value. At the place stated something else stands where a code belongs. The entity it stands in was left out, and reading went on where the next entity begins. In a binary file reading ends there.',
    matters: 'A line was lost, added or spoilt, by hand or in a transfer. The entity lost may be a side of the part.',
    remedy: 'Look at the picture for what is missing, and ask for the file again.',
  },
  'number-unreadable': {
    title: 'A number is not written as a number',
    meaning:
      'A coordinate, radius or angle is not a number: a decimal comma, `nan`, a number too large, or letters. The entity was left out. It was not guessed, because `1,5` half read is 1. Exponents written with D, as some programs do, are read.',
    matters: 'A part cut by a guessed number is scrap; without the entity the outline is open.',
    remedy: 'Set the program that wrote the file to a decimal point and save again, or correct the line stated.',
  },
  'entity-unfinished': {
    title: 'An entity lacks values that it cannot do without',
    meaning:
      'An entity has no end point, no radius, fewer vertices or knots than it states, or the file breaks off within it. It was left out. A missing value is never taken for 0.',
    matters: 'What is left out may be a side of the part: the contour will then be listed as open.',
    remedy: 'Look at the entity in the drawing program, draw it again, and save.',
  },
  'count-differs': {
    title: 'An entity has more or fewer points than it states',
    meaning:
      'A polyline or spline states how many vertices, knots or points it has, and another number of them follows. Those that follow were used.',
    matters:
      'Simple export programs often write a wrong count. But if a vertex was lost on the way, a corner of the part is missing, and nothing else shows it.',
    remedy: 'Compare the outline in the picture with the print.',
  },
  'entity-impossible': {
    title: 'An entity has values that no shape can have',
    meaning:
      'A radius of 0 or less, a spline whose knots fall or tear it apart, a weight of 0, a block scaled by 0, a shape pressed flat, or a place further away than a thousand million drawing units. The entity was left out.',
    matters: 'Such entities are invisible in most drawing programs and come from damaged or converted files.',
    remedy: 'If nothing is missing in the picture, nothing. Otherwise draw the shape again.',
  },
  'arc-without-turn': {
    title: 'An arc ends at the angle where it starts',
    meaning:
      'An arc has the same angle for its start and its end. Some programs leave such an arc where a fillet has shrunk to nothing, others mean a full circle by it. Where another line or arc ends at its start it was left out as the remains of a fillet; anywhere else it is a question, and nothing is cut for it.',
    matters: 'Taken for a circle it would be an opening that was never drawn; left out it may be an opening that is missing.',
    remedy: 'If an opening is meant, draw a circle of the radius stated. If not, delete the arc.',
  },
  'entities-passed-over': {
    title: 'Texts, dimensions, hatches and the like were passed over',
    meaning:
      'The drawing has texts, dimensions, leaders, hatches, pictures or construction lines without end. Nothing is cut along them, so they were counted and left out. In R12 files the blocks that draw hatches and dimensions are left out with them.',
    matters: 'This matters only where a text itself is to be cut: its letters are then no outlines.',
    remedy: 'Nothing. To cut a text, turn it into outlines in the drawing program.',
  },
  'shapes-not-read': {
    title: 'The drawing has shapes of a kind that is not read here',
    meaning:
      'The drawing has faces, solids, regions, meshes, multiple lines or other shapes that have no plain outline, or a kind that is not known here. They were counted and left out.',
    matters: 'If they are part of the outline, the part read is not the part drawn.',
    remedy:
      'Compare the picture with the print. Turn these shapes into lines, arcs or polylines (most programs can explode them), save, and read again.',
  },
  'paper-space-left-out': {
    title: 'What lies on layout sheets was left out',
    meaning: 'Some entities lie in paper space: frames, title blocks and views that are there for printing. Only model space was read.',
    matters: 'Parts are drawn in model space at their real size; what lies on a sheet has the scale of the sheet.',
    remedy: 'Nothing, unless the part itself was drawn on the sheet. Then copy it to model space at full size and save.',
  },
  'tilted-projected': {
    title: 'Shapes that do not lie flat were projected from above',
    meaning:
      'A line, circle or block is tilted against the XY plane. Its projection along the z axis was used: a tilted circle becomes an ellipse, a tilted line becomes shorter. What stands upright and would project to a mere line was left out.',
    matters:
      'A wire cuts flat outlines here. A tilted shape in a flat drawing is mostly a slip in three-dimensional drawing, and its size is wrong then.',
    remedy: 'Lay the shapes flat in the drawing program, or turn the part so that its outline faces up, and save again.',
  },
  'height-dropped': {
    title: 'Shapes lie at a height other than zero',
    meaning:
      'A shape lies parallel to the XY plane, but above or below it. It was read as if it lay at height 0; outline and size do not change by that.',
    matters:
      'Drawings exported from solid models often lie at the height of a face. If outlines of several heights lie over each other, they are now all in one plane.',
    remedy: 'Look at the picture for outlines that should not be there, such as the bottom edge of a taper.',
  },
  'width-ignored': {
    title: 'Polylines have a width; their centre line was used',
    meaning: 'Some polylines have a width, which makes them look like bars or wide tracks. The line in their middle was read.',
    matters: 'Widths are mostly there for show. Where a slot was drawn as one wide line, its centre line is no contour.',
    remedy: 'If a slot is meant, draw its outline. Otherwise nothing.',
  },
  'reference-missing': {
    title: 'A block or symbol that is asked for is not in the file',
    meaning:
      'The drawing inserts a block, or an SVG file uses a symbol, that is not in the file. It may lie in another file that was not sent along. Nothing was drawn for it.',
    matters: 'Holes and standard elements are often blocks: they are missing now.',
    remedy: 'Ask for a file with its references bound into it, or explode the block before saving.',
  },
  'reference-to-itself': {
    title: 'A block or symbol contains itself',
    meaning:
      'A block is inserted within itself, directly or by way of another, which would never end. The inner copy was left out, the rest was drawn.',
    matters: 'No drawing program lets this happen; the file was damaged or put together by hand.',
    remedy: 'Look at the picture. If something is missing, ask for the file again.',
  },
  'sequence-end-missing': {
    title: 'A polyline has no end mark',
    meaning:
      'A POLYLINE has vertices and no SEQEND behind them. It was assumed to end with its last vertex, because another entity begins there.',
    matters: 'Simple export programs forget the mark. If vertices were lost with it, the outline is wrong.',
    remedy: 'Compare the outline in the picture with the print.',
  },
  'section-missing': {
    title: 'Entities stand outside any section',
    meaning: 'Lines, arcs or other entities stand in the file where no section is open. They were read as parts of the drawing.',
    matters: 'The head of the section was lost, or the file was put together by a simple program.',
    remedy: 'Look at the picture. Shapes that belong to blocks may appear once more, where they were defined.',
  },
  'unit-code-unknown': {
    title: 'The unit code of the header is none of the known ones',
    meaning:
      'The header has a code for the drawing unit that the format does not define; 0 to 24 are known. It was treated as if no unit were given.',
    matters: 'A wrong unit makes a part 25.4 times too large or too small.',
    remedy: 'Ask the customer for the unit, and give it with the job.',
  },
  'code-page-unknown': {
    title: 'Names were read without knowing their code page',
    meaning:
      'The file names a code page for its texts that is not known here. Names of layers and blocks were read as Western European text.',
    matters: 'Shapes do not change by that, and names stay apart from each other.',
    remedy: 'Nothing, unless layers are chosen by name and their names look odd. Then use the name as it is printed here.',
  },
  'spline-knots-made': {
    title: 'A spline without knots was given even ones',
    meaning:
      'A SPLINE has control points and no knots, so the file leaves open how it runs between them. Evenly spaced knots were used, with the curve beginning and ending on its first and last point.',
    matters: "That is what most programs would mean, but the curve may differ from the customer's by more than the tolerance of the part.",
    remedy: 'Compare with the print, or ask for arcs instead of splines.',
  },
  'spline-through-points': {
    title: 'A spline is given only by points it passes through',
    meaning:
      'A SPLINE gives fit points and nothing else. The smooth cubic through them was used, with the end directions of the file, or free of bend at the ends where it gives none.',
    matters:
      "Programs do not agree on what happens at free ends: between the first two and the last two points the customer's curve may be slightly different. At the points themselves it is the same.",
    remedy: 'Where that matters, ask for control points or arcs.',
  },
  'markup-broken': {
    title: 'The SVG file is not well-formed',
    meaning:
      'The file breaks the rules of its own format at the line stated: a tag that is not closed, an attribute without value, a sign that is not allowed. What stands before was read, the rest was not.',
    matters: 'What is missing cannot be known. Openings may be gone.',
    remedy: 'Ask for the file again, or open it in a drawing program and save it anew.',
  },
  'doctype-refused': {
    title: 'The SVG file defines entities of its own',
    meaning:
      'The document type of the file carries definitions of its own. A few lines of such definitions can grow to any length, so the file was refused as a whole.',
    matters: 'Older drawing programs write them without harm in mind.',
    remedy: 'Open the file in a drawing program and save it as plain SVG.',
  },
  'path-unreadable': {
    title: 'The data of a path break off or make no sense',
    meaning:
      'The path at the line stated has commands that are not whole or not known. The whole path was left out: the piece before the fault is not the outline that was drawn.',
    matters: 'An outline is missing now.',
    remedy: 'Save the file again from the drawing program, or draw the path anew.',
  },
  'length-unreadable': {
    title: 'A length or a number of an SVG shape makes no sense',
    meaning:
      'A place, size or list of points is not written as SVG writes numbers: a decimal comma, an odd count of coordinates, or a unit that depends on a font. The shape was left out; where it is the size of the page itself, the file was refused.',
    matters: 'The shape left out may be an opening or a side of the part.',
    remedy: 'Correct the attribute stated, or save the file again from the drawing program.',
  },
  'transform-unreadable': {
    title: 'A transform makes no sense',
    meaning:
      'A group or shape is moved, turned or scaled by something that is not a list of SVG transforms, or about an origin set by a style. It was left out with all in it, because its place is not known.',
    matters: 'Outlines may be missing now.',
    remedy: 'Apply the transforms in the drawing program (most can do so on saving), and read again.',
  },
  'pixels-assumed': {
    title: 'The SVG file names no real length; 96 pixels were read as one inch',
    meaning:
      'Width and height of the page are given in pixels, in percent, or not at all. The web standard says that 96 pixels are one inch, so 96 units were read as 25.4 mm.',
    matters:
      'Older programs meant 72 or 90 pixels to the inch. The part would then be a quarter or a sixteenth too small, with all its proportions right.',
    remedy: 'Check one length that you know. If it is off, ask for a file with its size in mm, or for DXF.',
  },
  'view-stretched': {
    title: 'The picture is stretched unevenly to fit its page',
    meaning:
      'The file asks that its content fill the page in both directions, and page and content have different shapes. Widths and heights are then scaled unequally: circles became ellipses. It was read so, as the standard demands.',
    matters: 'For a part that is hardly ever meant.',
    remedy: 'Check a circle in the picture. If it is none, have the page set to the shape of the drawing.',
  },
  'style-sheet-ignored': {
    title: 'A style sheet was not applied',
    meaning:
      'The file has a style sheet. It can set colours, but also hide shapes or move them. It was not applied; what is hidden or shown by attributes of the shapes themselves was.',
    matters: 'A shape that the customer never sees on the screen may be cut.',
    remedy: 'Compare the picture with the drawing. If a shape too many appears, have the file saved with its styles written to the shapes.',
  },
  'clip-ignored': {
    title: 'Clipped shapes were drawn whole',
    meaning:
      'A shape is cut off by a clip or a mask. Only a picture can be clipped so; the outline goes on behind the edge, and it was drawn whole.',
    matters: 'The outline to be cut may be that of the clip and not of the shape.',
    remedy: 'Cut the shape along the clip in the drawing program and save again.',
  },
} satisfies Readonly<Record<string, ManualEntry>>;
