/** Every finding that reading a drawing can end in; each code has its page in docs/findings. */
import { type Catalogue, finder } from '../finding/finding.ts';

export const catalogue = {
  // Reading the file formats.
  'file-too-large': { severity: 'refusal', title: 'The file has more bytes than the limit' },
  'too-many-entities': { severity: 'refusal', title: 'The drawing has more pieces than the limit' },
  'nested-too-deep': { severity: 'refusal', title: 'Blocks or groups lie within each other deeper than the limit' },
  'too-much-work': { severity: 'refusal', title: 'Reading the drawing needs more steps than the limit' },
  'not-a-drawing': { severity: 'refusal', title: 'The file is in no format that is read here' },
  'file-cut-short': { severity: 'warning', title: 'The file ends before its end mark' },
  'group-code-unreadable': { severity: 'warning', title: 'A line that should be a group code is not one' },
  'number-unreadable': { severity: 'warning', title: 'A number is not written as a number' },
  'entity-unfinished': { severity: 'warning', title: 'An entity lacks values that it cannot do without' },
  'entity-impossible': { severity: 'warning', title: 'An entity has values that no shape can have' },
  'entities-passed-over': { severity: 'note', title: 'Texts, dimensions, hatches and the like were passed over' },
  'shapes-not-read': { severity: 'warning', title: 'The drawing has shapes of a kind that is not read here' },
  'paper-space-left-out': { severity: 'note', title: 'What lies on layout sheets was left out' },
  'tilted-projected': { severity: 'warning', title: 'Shapes that do not lie flat were seen from above' },
  'height-dropped': { severity: 'note', title: 'Shapes lie at a height other than zero' },
  'width-ignored': { severity: 'note', title: 'Polylines have a width; their middle line was taken' },
  'reference-missing': { severity: 'warning', title: 'A block or symbol that is asked for is not in the file' },
  'reference-to-itself': { severity: 'warning', title: 'A block or symbol contains itself' },
  'sequence-end-missing': { severity: 'repair', title: 'A polyline has no end mark' },
  'unit-code-unknown': { severity: 'warning', title: 'The unit code of the header is none of the known ones' },
  'code-page-unknown': { severity: 'note', title: 'Names were read without knowing their code page' },
  'spline-knots-made': { severity: 'repair', title: 'A spline without knots was given even ones' },
  'markup-broken': { severity: 'warning', title: 'The SVG file is not well-formed' },
  'doctype-refused': { severity: 'refusal', title: 'The SVG file defines entities of its own' },
  'path-unreadable': { severity: 'warning', title: 'The data of a path break off or make no sense' },
  'length-unreadable': { severity: 'warning', title: 'A length or a number of an SVG shape makes no sense' },
  'transform-unreadable': { severity: 'warning', title: 'A transform makes no sense' },
  'pixels-assumed': { severity: 'doubt', title: 'The SVG file names no real length; 96 pixels were taken as one inch' },
  'view-stretched': { severity: 'warning', title: 'The picture is stretched unevenly to fit its page' },
  'style-sheet-ignored': { severity: 'note', title: 'A style sheet was not applied' },
  'clip-ignored': { severity: 'note', title: 'Clipped shapes were drawn whole' },
} satisfies Catalogue;

export const find = finder(catalogue);
