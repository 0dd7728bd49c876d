/** What nobody said and the house took for granted, as sentences a customer can correct. */
import type { Drawing } from '../drawing/drawing.ts';
import type { Job, JobInput } from './job.ts';

const SENTENCES: readonly (readonly [key: keyof JobInput, sentence: (job: Job) => string])[] = [
  ['material', (j) => `The material is ${j.material}.`],
  ['height', (j) => `The block is ${j.height} mm high.`],
  ['finish', (j) => `A finish of Ra ${j.finish} µm is good enough.`],
  ['tolerance', (j) => `The profile may be off by ±${j.tolerance} mm.`],
  ['insideCorner', (j) => `Inside corners drawn sharper may come out with a radius of up to ${j.insideCorner} mm.`],
  ['quantity', (j) => `${j.quantity === 1 ? 'One piece is' : `${j.quantity} pieces are`} wanted.`],
  [
    'outline',
    (j) => (j.outline === 'cut' ? 'The outermost contours are to be cut as well.' : 'The outermost contour is the edge of the block.'),
  ],
  ['flush', (j) => (j.flush === 'sealed' ? 'Both nozzles seal on flat faces.' : `Nozzles: ${j.flush}.`)],
];

/** `said` are the keys that the user or the job file gave. */
export const assumptions = (job: Job, said: ReadonlySet<string>, drawing: Drawing): readonly string[] => {
  const silent = SENTENCES.filter(([key]) => !said.has(key)).map(([, sentence]) => sentence(job));
  const units = drawing.units.basis === 'assumed' ? [`The drawing is in ${drawing.units.name}; it does not say so itself.`] : [];
  const block = job.outline === 'cut' ? [`The block stands ${job.block.margin} mm beyond the outermost contours.`] : [];
  return [...units, ...silent, ...(said.has('block') ? [] : block)];
};
