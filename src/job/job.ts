/** The job file: every input of one job, each with its default. `*.job.json`; lengths in mm unless `units` says inch. */
import { z } from 'zod';
import { readMoment } from '../estimate/schedule/moment.ts';
import { shapeSchema } from '../shapes/list/questions.ts';
import { contoursSchema, contradictionIn } from './contour-schema.ts';
import { tellingSchema } from './reader-keys.ts';

const spot = z.strictObject({ x: z.number(), y: z.number() });
const positive = z.number().positive().finite();
/** mm: foils are not cut thinner, and neither the proof nor the models of other ways to cut mean anything below. */
const LEAST_HEIGHT = 0.01;

export const jobSchema = z
  .strictObject({
    $schema: z.string().optional(),
    date: z.iso.date().optional().describe('Quotation date; it decides which rates apply. Today when left out'),
    name: z.string().min(1).max(80).optional().describe('Job name on the papers; the drawing name when left out'),
    customer: z.string().max(80).optional(),
    drawing: z.string().min(1).optional().describe('Drawing file, relative to the job file; not needed where a shape is given'),
    shape: shapeSchema.optional().describe('A standard shape in place of a drawing; it is drawn in mm about 0, 0. See: kerfwright shape'),
    units: z.enum(['mm', 'inch', 'µm', 'cm', 'm']).optional().describe('Unit of the drawing; overrules its header'),
    join: z.number().min(0).max(1).default(0.005).describe('Gaps up to this are joined, mm'),
    material: z.string().default('d2').describe('Key of a material; see kerfwright list'),
    height: z.number().min(LEAST_HEIGHT).max(1000).default(25).describe('Thickness of the block, or of one sheet of a stack, mm'),
    wire: z.string().optional().describe('Key of a wire of the shop; selected when left out'),
    finish: positive.max(25).default(1.6).describe('Required Ra, µm'),
    tolerance: positive.max(5).default(0.02).describe('Profile tolerance either side of the drawing, mm'),
    finishRule: z
      .enum(['16%', 'maximum'])
      .default('16%')
      .describe('What the required Ra limits: 16% lets 16 in 100 values of a face exceed it, maximum none'),
    confidence: z
      .number()
      .min(1)
      .max(4)
      .default(2)
      .describe('k, the standard deviations of random error that a promise holds: 2 is about 95 %, 3 for batches'),
    programShare: z
      .number()
      .min(0.01)
      .max(1)
      .optional()
      .describe(
        'Share of the tolerance that the program itself may use, 1 µm at least; a quarter when left out, the rest is for the machine',
      ),
    insideCorner: z.number().min(0).max(10).default(0.2).describe('Largest radius allowed at inside corners that are drawn sharper, mm'),
    ease: z
      .number()
      .min(0)
      .max(20)
      .default(0)
      .describe(
        'Agreed with the customer: inside corners of the drawing are rounded to this radius first, mm; 0 leaves the drawing as it is',
      ),
    quantity: z.int().min(1).max(100000).default(1),
    quantityBreaks: z.array(z.int().min(1).max(100000)).max(12).default([]).describe('Further quantities to price'),
    outline: z.enum(['cut', 'block']).default('cut').describe('The outermost contours: cut, or block edge'),
    kept: z
      .record(z.string(), z.enum(['die', 'punch', 'leave']))
      .default({})
      .describe('By loop id: the kept side; leave = not cut'),
    start: z
      .record(z.string(), z.enum(['hole', 'edge']))
      .default({})
      .describe('By id of loop or open line: started from a hole, or from the edge of the block, whose frame may then spring open'),
    open: z
      .record(z.string(), z.enum(['left', 'right', 'slit', 'leave']))
      .default({})
      .describe('By id of open line: cut with the metal left or right of the wire path kept, or as a slit along it; not cut when left out'),
    core: z
      .record(z.string(), z.enum(['slug', 'no-core']))
      .default({})
      .describe('By loop id: whether an opening drops out as a slug or is cut away without a core; selected when left out'),
    layers: z.array(z.string()).optional().describe('Only loops on these layers are cut'),
    without: z
      .array(z.string())
      .max(10000)
      .optional()
      .describe('Ids of loops that are no part of the work, as if they were not drawn: border, title block, other views'),
    block: z
      .strictObject({ border: positive.max(500).default(10) })
      .default({ border: 10 })
      .describe('Stock around the outermost contours when the drawing does not show the block'),
    stock: z
      .strictObject({
        width: positive.max(10000).optional().describe('Along X, mm'),
        depth: positive.max(10000).optional().describe('Along Y, mm'),
        corner: spot
          .optional()
          .describe(
            'Where its lower left corner lies in the drawing, drawing units; left of and below the outermost contours by the border when left out',
          ),
        price: z.number().min(0).finite().optional().describe('Minor money units per kg; that of the shop for the material when left out'),
        suppliedBy: z
          .enum(['shop', 'customer'])
          .optional()
          .describe('Who pays for the metal; the shop where a price per kg is known, not specified otherwise'),
      })
      .refine((s) => (s.width === undefined) === (s.depth === undefined), 'width and depth are given together')
      .refine((s) => s.corner === undefined || s.width !== undefined, 'a corner needs width and depth')
      .optional()
      .describe('The piece of metal that is clamped, where the drawing does not show it; its size, place and price'),
    stack: z.int().min(1).max(100).default(1).describe('Sheets of `height` cut at once, one above the other; each gives one piece'),
    stackGap: z.number().min(0).max(10).default(0).describe('Between two sheets of a stack: bow and burr, mm'),
    holes: z
      .array(z.strictObject({ at: spot, diameter: positive.max(50) }))
      .default([])
      .describe('Existing start holes, drawing units'),
    clamps: z
      .array(
        z
          .strictObject({ low: spot, high: spot })
          .refine((c) => c.low.x < c.high.x && c.low.y < c.high.y, 'low must lie below and left of high'),
      )
      .max(50)
      .default([])
      .describe('Rectangles over the block that no cut may run into: clamps and other forbidden zones, by two corners, drawing units'),
    startHole: positive.max(10).default(2).describe('Diameter of the start holes to drill, mm'),
    overrides: z
      .record(
        z.string(),
        z.strictObject({
          entry: spot
            .optional()
            .describe('Entry point where its contour starts and ends, drawing units; the nearest point of the contour within 1 mm is used'),
          hole: z
            .strictObject({ ...spot.shape, diameter: positive.max(50).optional().describe('mm; startHole when left out') })
            .optional()
            .describe('Where its start hole is drilled, drawing units'),
          tab: z.number().min(0).max(500).optional().describe('Length of its tab along the contour, mm; 0 leaves no tab'),
        }),
      )
      .default({})
      .describe('By id of a closed loop: settings that override the planner; what is left out is automatic'),
    contours: contoursSchema
      .optional()
      .describe(
        'What single contours have to come out as, and what is set of them by hand: by id of loop or open line, by layer:NAME, or by like:L3 for all loops of the shape of L3; the more exact key overrules',
      ),
    order: z.array(z.string()).max(10000).default([]).describe('Ids of loops in cutting order; those not listed follow automatically'),
    passes: z.int().min(1).max(12).optional().describe('Number of passes; the cheapest number that meets the requirements when left out'),
    offsets: z
      .array(positive.max(5))
      .max(12)
      .optional()
      .describe('Offset register of each pass, the rough first, mm; calculated when left out'),
    datum: spot.optional().describe('Program zero (datum) in the drawing, drawing units; the drawing origin when left out'),
    outsideCorners: z
      .enum(['control', 'loop'])
      .default('control')
      .describe('Sharp outside corners: left to the control, or by a loop in the waste'),
    flush: z.enum(['sealed', 'one side', 'lifted']).default('sealed').describe('Nozzles: both on the work, one raised, or both raised'),
    temperature: z
      .strictObject({
        cutting: z.number().min(0).max(60).default(20).describe('Of part and water when cutting, °C'),
        measuring: z.number().min(0).max(60).default(20).describe('Of the part when measuring, °C'),
        swing: z.number().min(0).max(20).default(1).describe('Variation of each, one standard deviation, °C'),
        scale: z
          .boolean()
          .optional()
          .describe(
            'Scale the program about the datum, so that the part, cut at that temperature, is to drawing at 20 °C; not scaled when left out',
          ),
      })
      .optional()
      .describe('For the error budget, and to scale the program; 20 ± 1 °C when left out'),
    sizes: z
      .array(
        z.strictObject({
          name: z.string().min(1).max(40),
          length: positive.max(10000).describe('mm'),
          tolerance: positive.max(5).describe('Either side, mm'),
          sides: z
            .union([z.literal(1), z.literal(2)])
            .default(2)
            .describe('Cut faces it spans: 2 across an opening or a part'),
        }),
      )
      .max(50)
      .optional()
      .describe('Toleranced dimensions, each with an error budget of its own'),
    startAt: z
      .string()
      .refine((text) => readMoment(text).kind === 'moment', 'a moment is written like 2026-11-26T07:00')
      .optional()
      .describe('Earliest start of the run, ISO 8601 in shop time; the first shift after the day of the answer when left out'),
    spoolLeft: positive.max(1000).optional().describe('Wire remaining on the spool at the start, kg; a full spool when left out'),
    run: z.enum(['attended', 'unattended first']).default('attended').describe('Finish each opening in turn, or rough all first'),
    papers: tellingSchema.optional().describe('Units and decimal mark on the papers of this job; what is left out is as the shop has it'),
    dialect: z.string().optional().describe('A dialect file, relative to the job file, or standard; the dialect of the shop when left out'),
    shop: z.string().optional().describe('Shop file, relative to the job file'),
  })
  .refine((job) => job.drawing !== undefined || job.shape !== undefined, {
    path: ['drawing'],
    message: 'a drawing or a shape is required',
  })
  .refine((job) => job.shape === undefined || job.units === undefined, {
    path: ['units'],
    message: 'they belong to a drawing; a shape is given in mm',
  })
  .superRefine((job, context) => {
    const clash = contradictionIn(job);
    if (clash !== undefined) context.addIssue({ code: 'custom', path: [...clash.path], message: clash.message });
  })
  .describe('All inputs of one job');

export type Job = z.infer<typeof jobSchema>;
export type JobInput = z.input<typeof jobSchema>;

/** mm that the wire cuts through: one sheet, or all sheets of a stack with the gaps between them. */
export const cutHeight = ({ height, stack, stackGap }: Pick<Job, 'height' | 'stack' | 'stackGap'>): number =>
  stack * height + (stack - 1) * stackGap;
