/** The names of the inputs, and what is said of a text that could not be read. */

import { name as given, inside } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { ready } from './ready.ts';
import { shapeWords } from './shape.ts';

const LABELS: Readonly<Record<string, Text>> = phrases('page.field', {
  name: say`Name of the job`,
  customer: say`Customer`,
  date: say`Day of the quotation`,
  units: say`Unit of the drawing`,
  join: say`Ends joined when nearer than`,
  outline: say`The outermost contours`,
  ease: say`Inside corners rounded to`,
  layers: say`Only these layers`,
  material: say`Material`,
  height: say`Height`,
  finish: say`Finish`,
  tolerance: say`Tolerance, either side`,
  sizes: say`Sizes with limits of their own`,
  insideCorner: say`Inside corners may come out with`,
  quantity: say`Pieces`,
  quantityBreaks: say`Other quantities to price`,
  wire: say`Wire`,
  passes: say`Passes`,
  offsets: say`Offset of each pass`,
  flush: say`Nozzles`,
  stack: say`Sheets in one stack`,
  stackGap: say`Gap between two sheets`,
  'temperature.cutting': say`Temperature while cutting`,
  'temperature.measuring': say`Temperature while measuring`,
  'temperature.swing': say`Swing of the temperatures`,
  'temperature.scale': say`Program scaled for the temperature`,
  size: say`Size of the block`,
  'block.margin': say`Metal around the contours`,
  startHole: say`Start holes to drill, Ø`,
  outsideCorners: say`Sharp outside corners`,
  datum: say`Zero of the program`,
  run: say`Order of the cuts`,
  startAt: say`Start of the run`,
  spoolLeft: say`Wire on the spool at the start`,
  'stock.price': say`Price of the metal per kg`,
  'stock.suppliedBy': say`Metal supplied by`,
});

const BY_NUMBERS = 'shape.';

/** The name of an input; one without a name of its own is called as the job file calls it. */
export const labelOf = (path: string): Text =>
  LABELS[path] ?? (path.startsWith(BY_NUMBERS) ? shapeWords.key(path.slice(BY_NUMBERS.length)) : only(given(path)));

export const fieldWords = { label: labelOf, within: (path: string) => only(inside(labelOf(path))) };

export const choiceWords: Readonly<Record<string, Readonly<Record<string, Text>>>> = {
  units: phrases('page.choice.units', {
    mm: say`millimetre`,
    inch: say`inch`,
    µm: say`micrometre`,
    cm: say`centimetre`,
    m: say`metre`,
  }),
  outline: phrases('page.choice.outline', { cut: say`are cut`, block: say`edge of the block` }),
  flush: phrases('page.choice.flush', { sealed: say`both seal`, 'one side': say`one side seals`, lifted: say`stand off` }),
  outsideCorners: phrases('page.choice.corners', { control: say`by the control`, loop: say`by a small loop` }),
  run: phrases('page.choice.run', { attended: say`each opening to its end`, 'unattended first': say`all roughs first` }),
  'stock.suppliedBy': phrases('page.choice.supplied', { shop: say`the shop`, customer: say`the customer` }),
  'temperature.scale': phrases('page.choice.scale', { true: say`yes`, false: say`no` }),
};

/** What stands in a field that is left out. */
export const noneWords = phrases('page.left-out', {
  units: say`as the drawing says`,
  layers: say`all`,
  wire: say`the best in stock`,
  passes: say`as many as needed`,
  offsets: say`worked out`,
  scale: say`no`,
  size: say`as drawn`,
  datum: say`zero of the drawing`,
  startAt: say`the next shift`,
  spoolLeft: say`a full spool`,
  quantityBreaks: say`none`,
  price: say`as the shop says`,
  notSaid: say`not said`,
  sizes: say`none`,
  name: say`name of the drawing`,
  date: say`today`,
});

const numbers = phrases('page.typed-number', {
  none: say`There is no number in it.`,
  no: (text: string) => say`'${{ text: given(text) }}' is not a number.`,
  notWhole: (text: string) => say`'${{ text: given(text) }}' is not a whole number.`,
  material: (text: string) => say`There is no material '${{ text: given(text) }}' in the shop or the house.`,
  wire: (text: string) => say`There is no wire '${{ text: given(text) }}' in the shop or the house.`,
});

export const typedWords = phrases('page.typed', {
  notALength: (reason: Text) => say`Not a length: ${{ reason }}.`,
  notAFinish: (reason: string) => say`Not a finish: ${{ reason: ready(reason) }}.`,
  notANumber: (text: string) => (text === '' ? numbers.none : numbers.no(text)),
  notWhole: (text: string) => (text === '' ? numbers.none : numbers.notWhole(text)),
  notASize: say`Write width and depth, like 120 x 80 mm.`,
  notSizes: (text: string) =>
    say`'${{ text: given(text) }}' is no size with its limits: write it like bore: 24 ±0.01; slot: 5 ±0.02 on one side.`,
  oneSide: say` on one side`,
  notASpot: say`Write X and Y in units of the drawing, like 10; 0.`,
  notADay: say`Write the day like 2026-11-25.`,
  notAMoment: say`Write the moment like 2026-11-26T07:00.`,
  unknown: (what: 'material' | 'wire', text: string) => numbers[what](text),
  ambiguousInList: (part: string) => say`'${{ part: given(part) }}' can be read in two ways; write it with its unit and a point.`,
  rzSafe: (ra: string) => say`${{ ra: ready(ra) }}, safe by every chart`,
  rzMight: (ra: string) => say`${{ ra: ready(ra) }}, which might do`,
});
