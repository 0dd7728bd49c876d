/** The names of the inputs, and what is said of a text that could not be read. */

import { name as given, inside } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { ready } from './ready.ts';
import { shapeWords } from './shape.ts';

const LABELS: Readonly<Record<string, Text>> = phrases('page.field', {
  name: say`Job name`,
  customer: say`Customer`,
  date: say`Quotation date`,
  units: say`Unit of the drawing`,
  join: say`Join gaps up to`,
  outline: say`Outermost contours`,
  ease: say`Round inside corners to`,
  layers: say`Layers to cut`,
  without: say`Contours left out`,
  material: say`Material`,
  height: say`Thickness`,
  finish: say`Finish`,
  tolerance: say`Tolerance, either side`,
  sizes: say`Toleranced dimensions`,
  insideCorner: say`Largest inside corner radius allowed`,
  quantity: say`Quantity`,
  quantityBreaks: say`Price breaks at`,
  wire: say`Wire`,
  passes: say`Passes`,
  offsets: say`Offset of each pass`,
  flush: say`Nozzles`,
  stack: say`Sheets per stack`,
  stackGap: say`Gap between sheets`,
  'temperature.cutting': say`Temperature when cutting`,
  'temperature.measuring': say`Temperature when measuring`,
  'temperature.swing': say`Temperature variation ±`,
  'temperature.scale': say`Scale program for temperature`,
  size: say`Block size`,
  'block.border': say`Stock around contours`,
  startHole: say`Start holes to drill, Ø`,
  outsideCorners: say`Sharp outside corners`,
  datum: say`Program zero (datum)`,
  run: say`Cutting order`,
  startAt: say`Run starts`,
  spoolLeft: say`Wire remaining on the spool`,
  'stock.price': say`Material price per kg`,
  'stock.suppliedBy': say`Material supplied by`,
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
  outline: phrases('page.choice.outline', { cut: say`cut`, block: say`block edge` }),
  flush: phrases('page.choice.flush', {
    sealed: say`both on the work`,
    'one side': say`one raised`,
    lifted: say`both raised`,
  }),
  outsideCorners: phrases('page.choice.corners', { control: say`left to the control`, loop: say`loop in the waste` }),
  run: phrases('page.choice.run', { attended: say`finish each opening in turn`, 'unattended first': say`rough all first` }),
  'stock.suppliedBy': phrases('page.choice.supplied', { shop: say`the shop`, customer: say`the customer` }),
  'temperature.scale': phrases('page.choice.scale', { true: say`yes`, false: say`no` }),
};

/** What stands in a field that is left out. */
export const noneWords = phrases('page.left-out', {
  units: say`as in the drawing`,
  layers: say`all`,
  without: say`nothing`,
  wire: say`best in stock`,
  passes: say`as many as needed`,
  offsets: say`calculated`,
  scale: say`no`,
  size: say`as drawn`,
  datum: say`drawing origin`,
  startAt: say`next shift`,
  spoolLeft: say`full spool`,
  quantityBreaks: say`none`,
  price: say`shop price`,
  notSaid: say`not specified`,
  sizes: say`none`,
  name: say`drawing name`,
  date: say`today`,
});

const numbers = phrases('page.typed-number', {
  none: say`No number in it.`,
  no: (text: string) => say`'${{ text: given(text) }}' is not a number.`,
  notWhole: (text: string) => say`'${{ text: given(text) }}' is not a whole number.`,
  material: (text: string) => say`No material '${{ text: given(text) }}' in the shop or built in.`,
  wire: (text: string) => say`No wire '${{ text: given(text) }}' in the shop or built in.`,
});

export const typedWords = phrases('page.typed', {
  notALength: (reason: Text) => say`Not a length: ${{ reason }}.`,
  notAFinish: (reason: string) => say`Not a finish: ${{ reason: ready(reason) }}.`,
  notANumber: (text: string) => (text === '' ? numbers.none : numbers.no(text)),
  notWhole: (text: string) => (text === '' ? numbers.none : numbers.notWhole(text)),
  notASize: say`Enter width and depth, as in 120 x 80 mm.`,
  notSizes: (text: string) =>
    say`'${{ text: given(text) }}' is not a toleranced dimension: enter it as in bore: 24 ±0.01; slot: 5 ±0.02 on one side.`,
  oneSide: say` on one side`,
  notASpot: say`Enter X and Y in drawing units, as in 10; 0.`,
  notADay: say`Enter the date as in 2026-11-25.`,
  notAMoment: say`Enter date and time as in 2026-11-26T07:00.`,
  unknown: (what: 'material' | 'wire', text: string) => numbers[what](text),
  ambiguousInList: (part: string) => say`'${{ part: given(part) }}' can be read in two ways; enter it with its unit and a decimal point.`,
  rzSafe: (ra: string) => say`${{ ra: ready(ra) }}, safe by any conversion chart`,
  rzMight: (ra: string) => say`${{ ra: ready(ra) }}, which may be enough`,
});
