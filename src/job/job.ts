/** The job file: every input of one job, each with its default. `*.job.json`; lengths in mm unless `units` says inch. */
import { z } from 'zod';
import { readMoment } from '../estimate/clock/moment.ts';
import { shapeSchema } from '../shapes/list/questions.ts';
import { tellingSchema } from './reader-keys.ts';

const spot = z.strictObject({ x: z.number(), y: z.number() });
const positive = z.number().positive().finite();

export const jobSchema = z
  .strictObject({
    $schema: z.string().optional(),
    date: z.iso.date().optional().describe('Day of the quotation; it decides which rates hold. Today when left out'),
    name: z.string().min(1).max(80).optional().describe('What the job is called on the papers; the name of the drawing when left out'),
    customer: z.string().max(80).optional(),
    drawing: z.string().min(1).optional().describe('Drawing file, relative to the job file; not needed where a shape is given'),
    shape: shapeSchema.optional().describe('A part by numbers in place of a drawing; it is drawn in mm about 0, 0. See: kerfwright shape'),
    units: z.enum(['mm', 'inch', 'µm', 'cm', 'm']).optional().describe('Unit of the drawing; overrules its header'),
    join: z.number().min(0).max(1).default(0.005).describe('Ends nearer than this are joined, mm'),
    material: z.string().default('d2').describe('Key of a material; see kerfwright list'),
    height: positive.max(1000).default(25).describe('Height of the block, or of one sheet of a stack, mm'),
    wire: z.string().optional().describe('Key of a wire of the shop; chosen when left out'),
    finish: positive.max(25).default(1.6).describe('Ra asked for, µm'),
    tolerance: positive.max(5).default(0.02).describe('Profile tolerance either side of the drawing, mm'),
    insideCorner: z.number().min(0).max(10).default(0.2).describe('Inside corners drawn sharper may come out with up to this radius, mm'),
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
    outline: z.enum(['cut', 'block']).default('cut').describe('What the outermost loops are: contours to cut, or the edge of the block'),
    kept: z
      .record(z.string(), z.enum(['die', 'punch', 'leave']))
      .default({})
      .describe('By loop id: overrules which side is kept; leave = not cut'),
    start: z
      .record(z.string(), z.enum(['hole', 'edge']))
      .default({})
      .describe('By id of loop or open line: begun from a hole, or from the edge of the block, whose frame then springs'),
    open: z
      .record(z.string(), z.enum(['left', 'right', 'slit', 'leave']))
      .default({})
      .describe('By id of open line: cut with the metal left or right of its way kept, or as a slit along it; not cut when left out'),
    core: z
      .record(z.string(), z.enum(['slug', 'burn']))
      .default({})
      .describe('By loop id: whether an opening gives a slug or is burnt out without a core; chosen when left out'),
    layers: z.array(z.string()).optional().describe('Only loops on these layers are cut'),
    block: z
      .strictObject({ border: positive.max(500).default(10) })
      .default({ border: 10 })
      .describe('Metal around the outermost contour when the drawing does not show the block'),
    stock: z
      .strictObject({
        width: positive.max(10000).optional().describe('Along X, mm'),
        depth: positive.max(10000).optional().describe('Along Y, mm'),
        corner: spot
          .optional()
          .describe(
            'Where its lower left corner lies in the drawing, drawing units; left and below of the outermost contours by the margin when left out',
          ),
        price: z.number().min(0).finite().optional().describe('Minor money units per kg; that of the shop for the material when left out'),
        suppliedBy: z
          .enum(['shop', 'customer'])
          .optional()
          .describe('Who pays for the metal; the shop where a price per kg is known, else nobody says'),
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
      .describe('Start holes that are already there, drawing units'),
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
            .describe('Where its contour is begun and closed, drawing units; the nearest place of the contour within 1 mm is taken'),
          hole: z
            .strictObject({ ...spot.shape, diameter: positive.max(50).optional().describe('mm; startHole when left out') })
            .optional()
            .describe('Where its start hole is drilled, drawing units'),
          tab: z.number().min(0).max(500).optional().describe('Length of its tab along the contour, mm; 0 leaves no tab'),
        }),
      )
      .default({})
      .describe('By id of a closed loop: set by hand in place of what the planner would choose; what is left out the planner chooses'),
    order: z
      .array(z.string())
      .max(10000)
      .default([])
      .describe('Ids of loops in the order in which they are to be cut; those not named follow as the planner likes'),
    passes: z.int().min(1).max(12).optional().describe('As many passes; the cheapest number that reaches what is asked when left out'),
    offsets: z
      .array(positive.max(5))
      .max(12)
      .optional()
      .describe('Offset register of each pass, the rough first, mm; worked out when left out'),
    datum: spot.optional().describe('Zero of the program in the drawing, drawing units; the zero of the drawing when left out'),
    outsideCorners: z
      .enum(['control', 'loop'])
      .default('control')
      .describe('Sharp outside corners: as the control goes round them, or out and back by a small loop in the waste'),
    flush: z.enum(['sealed', 'one side', 'lifted']).default('sealed').describe('How the nozzles sit on the work'),
    temperature: z
      .strictObject({
        cutting: z.number().min(0).max(60).default(20).describe('Of part and water while it is cut, °C'),
        measuring: z.number().min(0).max(60).default(20).describe('Of the part while it is measured, °C'),
        swing: z.number().min(0).max(20).default(1).describe('How far each swings, one standard deviation, °C'),
        scale: z
          .boolean()
          .optional()
          .describe(
            'Scale the program about the datum, so that the part, cut at that temperature, has the sizes of the drawing at 20 °C; not scaled when left out',
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
            .describe('Cut faces it lies between: 2 across an opening or a part'),
        }),
      )
      .max(50)
      .optional()
      .describe('Sizes whose error is to be told apart'),
    startAt: z
      .string()
      .refine((text) => readMoment(text).kind === 'moment', 'a moment is written like 2026-11-26T07:00')
      .optional()
      .describe('When the run could start, ISO 8601 by the clock of the shop; the first shift after the day of the answer when left out'),
    spoolLeft: positive.max(1000).optional().describe('Wire left on the machine at the start, kg; a full spool when left out'),
    run: z.enum(['attended', 'unattended first']).default('attended').describe('Each opening to the end, or all roughs first'),
    papers: tellingSchema.optional().describe('How the papers of this job tell numbers; what is left out is as the shop has it'),
    dialect: z.string().optional().describe('A dialect file, relative to the job file, or standard; the dialect of the shop when left out'),
    shop: z.string().optional().describe('Shop file, relative to the job file'),
  })
  .refine((job) => job.drawing !== undefined || job.shape !== undefined, {
    path: ['drawing'],
    message: 'a drawing or a shape has to be given',
  })
  .refine((job) => job.shape === undefined || job.units === undefined, {
    path: ['units'],
    message: 'they belong to a drawing; a shape is given in mm',
  })
  .describe('All inputs of one job');

export type Job = z.infer<typeof jobSchema>;
export type JobInput = z.input<typeof jobSchema>;

/** mm that the wire cuts through: one sheet, or all sheets of a stack with the gaps between them. */
export const cutHeight = ({ height, stack, stackGap }: Pick<Job, 'height' | 'stack' | 'stackGap'>): number =>
  stack * height + (stack - 1) * stackGap;
