/** What a job file says of single contours: what each has to come out as, and what is set of it by hand. */
import { z } from 'zod';

const spot = z.strictObject({ x: z.number(), y: z.number() });
const positive = z.number().positive().finite();

/** '20 H7': a nominal size and a zone of ISO 286. */
export const FIT = /^\s*(\d+(?:[.,]\d+)?)\s*([A-Za-z]{1,2}\d{1,2})\s*$/;

const sizeSchema = z.union([
  z.string().regex(FIT, 'a size and its fit are written like 20 H7'),
  z
    .strictObject({
      length: positive.max(10000).describe('Nominal, mm'),
      upper: z.number().min(-5).max(5).describe('Upper deviation from it, mm'),
      lower: z.number().min(-5).max(5).describe('Lower deviation from it, mm'),
    })
    .refine((s) => s.upper > s.lower, 'upper must be above lower'),
]);

export const contourSchema = z
  .strictObject({
    size: sizeSchema
      .optional()
      .describe('Size across it with its limits, or with a fit of ISO 286 as in "20 H7"; the middle of the limits is aimed at'),
    tolerance: positive.max(5).optional().describe('Profile tolerance either side, mm; not beside a size, whose limits say it'),
    finish: positive.max(25).optional().describe('Required Ra, µm'),
    recast: positive.max(100).optional().describe('Greatest recast layer that may stay, µm'),
    passes: z.int().min(1).max(12).optional().describe('Number of passes on it'),
    offsets: z.array(positive.max(5)).min(1).max(12).optional().describe('Offset register of each of its passes, the rough first, mm'),
    kept: z.enum(['die', 'punch', 'leave']).optional().describe('The kept side; leave = not cut'),
    start: z.enum(['hole', 'edge']).optional().describe('Started from a hole, or from the edge of the block'),
    core: z.enum(['slug', 'no-core']).optional().describe('Whether an opening drops out as a slug or is cut away without a core'),
    entry: spot.optional().describe('Entry point where it starts and ends, drawing units'),
    hole: z
      .strictObject({ ...spot.shape, diameter: positive.max(50).optional().describe('mm; startHole when left out') })
      .optional()
      .describe('Where its start hole is drilled, drawing units'),
    tab: z.number().min(0).max(500).optional().describe('Length of its tab along the contour, mm; 0 leaves no tab'),
    on: z
      .strictObject({
        centre: spot.describe('Middle of its box, mm in the drawing'),
        width: positive.describe('Of its box, mm'),
        height: positive.describe('Of its box, mm'),
        fingerprint: z.string().min(1).max(80).describe('Of its shape, wherever it lies'),
      })
      .optional()
      .describe('The contour that this was put on: where another one has its name now, it is looked for by its shape'),
  })
  .refine((c) => c.size === undefined || c.tolerance === undefined, {
    path: ['tolerance'],
    message: 'size and tolerance contradict each other: the limits of a size say what its faces may be off; leave one of the two out',
  })
  .refine((c) => c.passes === undefined || c.offsets === undefined || c.offsets.length === c.passes, {
    path: ['offsets'],
    message: 'passes and offsets contradict each other: one register per pass; leave one of the two out',
  });

export type ContourInput = z.infer<typeof contourSchema>;

/** By id of a loop or open line, by `layer:NAME`, or by `like:L3` for all loops of the shape of L3. */
export const contoursSchema = z.record(z.string().min(1).max(120), contourSchema);

/** Where both an older field of the job and its contours say something of one loop, they must say the same. */
interface Both {
  readonly contours?: Readonly<Record<string, ContourInput>> | undefined;
  readonly kept: Readonly<Record<string, unknown>>;
  readonly start: Readonly<Record<string, unknown>>;
  readonly core: Readonly<Record<string, unknown>>;
  readonly overrides: Readonly<Record<string, { readonly entry?: unknown; readonly hole?: unknown; readonly tab?: unknown }>>;
}

/** The first contradiction, both fields named; none where there is none. */
export const contradictionIn = (job: Both): { readonly path: readonly string[]; readonly message: string } | undefined => {
  for (const [id, own] of Object.entries(job.contours ?? {})) {
    for (const key of ['kept', 'start', 'core'] as const) {
      const other = Object.hasOwn(job[key], id) ? job[key][id] : undefined;
      if (own[key] !== undefined && other !== undefined && other !== own[key]) return clash(id, key, `${key}.${id}`);
    }
    const set = Object.hasOwn(job.overrides, id) ? job.overrides[id] : undefined;
    for (const key of ['entry', 'hole', 'tab'] as const)
      if (own[key] !== undefined && set?.[key] !== undefined && JSON.stringify(set[key]) !== JSON.stringify(own[key]))
        return clash(id, key, `overrides.${id}.${key}`);
  }
  return undefined;
};

const clash = (id: string, key: string, other: string) => ({
  path: ['contours', id, key],
  message: `contours.${id}.${key} and ${other} say different things; leave one of the two out`,
});
