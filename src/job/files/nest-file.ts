/** The nest file: pieces that are to be laid into one plate and cut out of it in one program. `*.nest.json`; lengths in mm. */
import { z } from 'zod';

const spot = z.strictObject({ x: z.number(), y: z.number() });
const positive = z.number().positive().finite();

const turns = z
  .union([
    z.enum(['none', 'half turns', 'quarter turns']),
    z.strictObject({ step: positive.max(360).describe('Degrees; a part of the full turn') }),
  ])
  .default('quarter turns')
  .describe('How a piece may be turned from the way it is drawn: none where the grain of the metal counts');

export const nestSchema = z
  .strictObject({
    $schema: z.string().optional(),
    name: z.string().min(1).max(80).optional().describe('What the plate is called on the papers; the name of the file when left out'),
    date: z.iso.date().optional().describe('Day that decides which rates hold. Today when left out'),
    material: z.string().default('d2').describe('Key of a material; see kerfwright list'),
    thickness: positive.max(1000).describe('Of the plate, or of one sheet of a stack, mm'),
    plate: z
      .union([
        z.strictObject({ width: positive.max(10000).describe('Along X, mm'), depth: positive.max(10000).describe('Along Y, mm') }),
        z.strictObject({
          drawing: z
            .string()
            .min(1)
            .describe('Relative to the nest file: its largest loop is the edge of the plate, loops inside it are holes'),
        }),
      ])
      .describe('The plate as a rectangle with its lower left corner at zero, or as drawn'),
    border: z.number().min(0).max(500).default(6).describe('Kept free along the edge of the plate, mm'),
    web: z
      .number()
      .min(0)
      .max(100)
      .default(6)
      .describe('Between two pieces, edge to edge, mm: two kerfs, what stands between them, and room for the start holes'),
    forbidden: z
      .array(
        z
          .strictObject({ low: spot, high: spot })
          .refine((c) => c.low.x < c.high.x && c.low.y < c.high.y, 'low must lie below and left of high'),
      )
      .max(50)
      .default([])
      .describe('Clamps and other forbidden rectangles, by two corners, mm on the plate'),
    pieces: z
      .array(
        z.strictObject({
          drawing: z.string().min(1).describe('Relative to the nest file; each outermost loop is a piece, loops in it are its openings'),
          quantity: z.int().min(1).max(10000).default(1),
          turns,
          units: z.enum(['mm', 'inch', 'µm', 'cm', 'm']).optional().describe('Unit of the drawing; overrules its header'),
        }),
      )
      .min(1)
      .max(200),
    manner: z
      .enum(['rows', 'free', 'best'])
      .default('best')
      .describe('Equal pieces in rows and columns, each where it fits best, or the better of both'),
    effort: positive
      .max(20)
      .default(1)
      .describe('How long to look for better layouts: 1 takes some ten seconds for 60 pieces, 0.1 a tenth of that and finds less'),
    inHoles: z.boolean().default(false).describe('Whether small pieces may be laid into the openings of larger ones'),
    sheets: z
      .strictObject({
        stack: z.int().min(1).max(100).optional().describe('Sheets wanted in one stack; one when left out'),
        flatness: z.number().min(0).max(50).default(0.1).describe('How far a sheet is out of flat, mm'),
        burr: z.number().min(0).max(5).default(0.02).describe('Height of the burr on the worse side of a sheet, mm'),
      })
      .default({ flatness: 0.1, burr: 0.02 })
      .describe('Sheets cut in a stack'),
    price: z.number().min(0).finite().optional().describe('Of the metal, minor money units per kg; that of the shop when left out'),
    suppliedBy: z.enum(['shop', 'customer']).optional().describe('Who pays for the metal'),
    cut: z
      .strictObject({
        wire: z.string().optional(),
        finish: positive.max(25).optional(),
        tolerance: positive.max(5).optional(),
        insideCorner: z.number().min(0).max(10).optional(),
        startHole: positive.max(10).optional(),
        run: z.enum(['attended', 'unattended first']).optional(),
      })
      .default({})
      .describe('What the plate is cut with; each as in a job file'),
    shop: z.string().optional().describe('Shop file, relative to the nest file'),
    dialect: z.string().optional().describe('A dialect file, relative to the nest file, or standard'),
  })
  .describe('Pieces to be laid into a plate and cut out of it');

export type NestFile = z.infer<typeof nestSchema>;
