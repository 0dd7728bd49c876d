/** What nobody said and the house took for granted, as sentences a customer can correct. */
import type { Drawing } from '../../drawing/drawing.ts';
import type { Material } from '../../physics/material/material.ts';
import { houseShop } from '../house-shop.ts';
import type { Job, JobInput } from '../job.ts';
import type { JobRun } from '../job-run.ts';

const SENTENCES: readonly (readonly [key: keyof JobInput, sentence: (job: Job, material: Material) => string])[] = [
  ['material', (_, material) => `The material is ${material.name}.`],
  ['height', (j) => `The block is ${j.height} mm high.`],
  ['finish', (j) => `A finish of Ra ${j.finish} µm is good enough.`],
  ['tolerance', (j) => `The profile may be off by ±${j.tolerance} mm.`],
  ['insideCorner', (j) => `Inside corners drawn sharper may come out with a radius of up to ${j.insideCorner} mm.`],
  ['quantity', (j) => `${j.quantity === 1 ? 'One piece is' : `${j.quantity} pieces are`} wanted.`],
  [
    'outline',
    (j) => (j.outline === 'cut' ? 'The outermost contours are to be cut as well.' : 'The outermost contour is the edge of the block.'),
  ],
  ['startHole', (j) => `Where the drawing shows no start hole, one of ${j.startHole} mm is drilled.`],
  ['flush', (j) => (j.flush === 'sealed' ? 'Both nozzles seal on flat faces.' : `Nozzles: ${j.flush}.`)],
];

/** What was said by nobody: neither the user, nor the job file, nor the drawing, nor a shop file. */
export const assumptions = (
  { job, said, shop }: Pick<JobRun, 'job' | 'said' | 'shop'>,
  drawing: Drawing,
  material: Material,
): readonly string[] => {
  const silent = SENTENCES.filter(([key]) => !said.has(key)).map(([, sentence]) => sentence(job, material));
  const units = drawing.units.basis === 'assumed' ? [`The drawing is in ${drawing.units.name}; it does not say so itself.`] : [];
  const block =
    job.outline === 'cut' && job.stock?.width === undefined
      ? [`The block stands ${job.block.margin} mm beyond the outermost contours.`]
      : [];
  const rates =
    shop === houseShop ? ['Machine, wires and rates are those of an invented shop: name a shop file for prices that hold.'] : [];
  return [...units, ...silent, ...(said.has('block') ? [] : block), ...rates];
};
