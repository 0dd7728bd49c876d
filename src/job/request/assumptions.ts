/** What nobody said and the house took for granted, as sentences a customer can correct. */
import type { Drawing } from '../../drawing/drawing.ts';
import { ratesOn } from '../../estimate/rates.ts';
import type { Material } from '../../physics/material/material.ts';
import type { Assumption } from '../../result/facts.ts';
import { count, limit, mm, name, term, um } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { builtInShop, ratesInvented } from '../built-in-shop.ts';
import type { Job, JobInput } from '../job.ts';
import type { JobRun } from '../job-run.ts';

/** With every digit that it has. */
const AS_GIVEN = { as: 'given' } as const;

const words = phrases('assumed', {
  material: (material: string) => say`The material is ${{ material: name(material) }}.`,
  height: (height: number) => say`The block is ${{ height: mm(height, AS_GIVEN) }} thick.`,
  finish: (ra: number) => say`A finish of Ra ${{ finish: um(ra, AS_GIVEN) }} is sufficient.`,
  tolerance: (tolerance: number) => say`The profile tolerance is ${{ tolerance: limit(tolerance, 'mm', AS_GIVEN) }}.`,
  insideCorner: (radius: number) =>
    say`Inside corners drawn sharper may come out with a radius of up to ${{ radius: mm(radius, AS_GIVEN) }}.`,
  onePiece: say`Quantity: one piece.`,
  pieces: (pieces: number) => say`Quantity: ${{ pieces: count(pieces, 'piece') }}.`,
  cut: say`The outermost contours are cut as well.`,
  block: say`The outermost contour is the block edge.`,
  startHole: (hole: number) => say`Where the drawing shows no start hole, one of ${{ hole: mm(hole, AS_GIVEN) }} is drilled.`,
  sealed: say`Both nozzles on the work, on flat faces.`,
  oneSide: say`Nozzles: one raised.`,
  lifted: say`Nozzles: both raised.`,
  units: (unit: string) => say`The drawing is in ${{ unit: term(unit) }}; the file does not specify a unit.`,
  margin: (margin: number) => say`The block leaves ${{ margin: mm(margin, AS_GIVEN) }} of stock around the outermost contours.`,
  metal: say`The material is not in the price: who supplies it is not specified.`,
  invented: say`The rates are invented: those of this shop are not set yet.`,
  house: say`Machine, wires and rates are those of an invented shop: name a shop file for your own prices.`,
});

const hasPrice = ({ rates }: JobRun['shop'], day: string, material: string): boolean => {
  const onDay = ratesOn(rates, day);
  return onDay.kind === 'rates' && onDay.rates.materialPrices?.[material] !== undefined;
};

const NOZZLES: Readonly<Record<Job['flush'], Text>> = { sealed: words.sealed, 'one side': words.oneSide, lifted: words.lifted };

const SENTENCES: readonly (readonly [key: keyof JobInput, said: (job: Job, material: Material) => Text])[] = [
  ['material', (_, material) => words.material(material.name)],
  ['height', (j) => words.height(j.height)],
  ['finish', (j) => words.finish(j.finish)],
  ['tolerance', (j) => words.tolerance(j.tolerance)],
  ['insideCorner', (j) => words.insideCorner(j.insideCorner)],
  ['quantity', (j) => (j.quantity === 1 ? words.onePiece : words.pieces(j.quantity))],
  ['outline', (j) => (j.outline === 'cut' ? words.cut : words.block)],
  ['startHole', (j) => words.startHole(j.startHole)],
  ['flush', (j) => NOZZLES[j.flush]],
];

/** What was said by nobody: neither the user, nor the job file, nor the drawing, nor a shop file. */
export const assumptions = (
  { job, said, shop, day }: Pick<JobRun, 'job' | 'said' | 'shop' | 'day'>,
  drawing: Drawing,
  material: Material,
): readonly Assumption[] => {
  const silent = SENTENCES.filter(([key]) => !said.has(key)).map(([field, text]): Assumption => ({ field, text: text(job, material) }));
  const units = drawing.units.basis === 'assumed' ? [{ field: 'units', text: words.units(drawing.units.name) }] : [];
  const block =
    job.outline === 'cut' && job.stock?.width === undefined ? [{ field: 'block.border', text: words.margin(job.block.border) }] : [];
  const rates = shop === builtInShop ? [{ text: words.house }] : ratesInvented(shop, day) ? [{ text: words.invented }] : [];
  const { suppliedBy, price } = job.stock ?? {};
  const metal =
    suppliedBy === undefined && price === undefined && !hasPrice(shop, day, job.material)
      ? [{ field: 'stock.suppliedBy', text: words.metal }]
      : [];
  return [...units, ...silent, ...(said.has('block') ? [] : block), ...metal, ...rates];
};
