/**
 * The set-up beside a program: what the machine must have been given for the program to be right. Written by `answer`,
 * read by `prove`, so that a program can be proven again, changed or not, without the planner. Lengths in mm.
 */
import { z } from 'zod';
import { boundsOfChain } from '../../geometry/area.ts';
import { type Contour, path, polygon } from '../../geometry/contour.ts';
import { line, point } from '../../geometry/segment.ts';
import { dialectSchema } from '../../nc/dialect/dialect.ts';
import type { WantedLine } from '../../plan/open-line.ts';
import type { ProofQuestion, Wanted, WantedOpen } from '../../proof/proof.ts';

const spot = z.strictObject({ x: z.number(), y: z.number() });
const byNumber = z.record(z.string().regex(/^\d{1,3}$/, 'a register or condition is a number from 0 to 999'), z.number().min(0).max(5));

export const setupSchema = z
  .strictObject({
    $schema: z.string().optional(),
    wireDiameter: z.number().min(0.02).max(0.5).describe('mm'),
    registers: byNumber.describe('Offset registers of the control, mm, by number'),
    gaps: byNumber.describe('Spark gap, mm, by condition; by register where the program chooses no condition'),
    passes: z
      .array(z.int().min(0).max(999))
      .min(1)
      .max(999)
      .optional()
      .describe('Conditions of the passes that were planned, or registers as in gaps; those the program uses when left out'),
    block: z
      .strictObject({ low: spot, high: spot })
      .optional()
      .describe('Corners of a rectangular block; left out when the drawing shows the block'),
    blockLoop: z.string().optional().describe('Loop of the drawing that is the edge of the block'),
    holes: z
      .array(z.strictObject({ at: spot, diameter: z.number().positive().max(50) }))
      .describe('Holes that are in the block before the wire is threaded'),
    kept: z.record(z.string(), z.enum(['die', 'punch'])).describe('Loops that are cut, and the side of each that is kept'),
    open: z
      .record(z.string(), z.enum(['left', 'right', 'slit']))
      .optional()
      .describe('Open lines that are cut: the side of each that is kept, or a slit along it'),
    contours: z
      .record(
        z.string(),
        z.strictObject({
          tolerance: z.number().positive().max(5).optional().describe('Profile tolerance either side, mm; that below when left out'),
          passes: z
            .array(z.int().min(0).max(999))
            .min(1)
            .max(12)
            .optional()
            .describe('Conditions of the passes that run on it, or registers as in gaps; those above when left out'),
          moved: z
            .number()
            .min(-1)
            .max(1)
            .optional()
            .describe('By as much outward, mm a side, the contour that is aimed at lies off the drawn one; inward when negative'),
        }),
      )
      .optional()
      .describe('Loops and open lines of which other things are asked, or which are cut in other passes'),
    leads: z
      .array(z.strictObject({ from: spot, to: spot }))
      .optional()
      .describe('Slits that the ways in to lines and openings leave in metal that is kept'),
    ease: z.number().min(0).max(20).default(0).describe('Inside corners of the drawing were rounded to this radius first, as agreed'),
    scaled: z
      .strictObject({
        factor: z.number().min(0.99).max(1.01).describe('By which every place of the drawing is multiplied about the datum'),
        expansion: z.number().min(-5).max(100).describe('Thermal expansion of the material, 1e-6/K'),
        temperature: z.number().min(0).max(100).describe('Of the work piece while it is cut, °C'),
      })
      .optional()
      .describe(
        'The program was scaled for temperature; block, holes and leads of this file stay told as they are at 20 °C. Not scaled when left out',
      ),
    datum: spot
      .optional()
      .describe(
        'Zero of the program in the drawing; all other places of this file are told as drawn. The zero of the drawing when left out',
      ),
    height: z.number().positive().max(1000),
    density: z.number().positive().max(30).describe('g/cm³'),
    strength: z
      .number()
      .positive()
      .max(5000)
      .optional()
      .describe('MPa at which the material yields or breaks, for the least tab; that of a mild steel, 200, when left out'),
    tolerance: z.number().positive().max(5),
    programShare: z
      .number()
      .min(0.01)
      .max(1)
      .optional()
      .describe('Share of the tolerance that the program itself may use, 1 µm at least; a quarter when left out'),
    insideCorner: z.number().min(0).max(10),
    units: z.enum(['mm', 'inch', 'µm', 'cm', 'm']).optional().describe('Unit the drawing was told to be in, against its header'),
    join: z
      .number()
      .min(0)
      .max(1)
      .optional()
      .describe('Ends of the drawing nearer than this were joined, mm; the usual distance when left out'),
    dialect: dialectSchema,
  })
  .describe('What the machine must have been given for the program to be right');

export type SetupFile = z.infer<typeof setupSchema>;

export const numbersOf = (values: Readonly<Record<string, number>>): ReadonlyMap<number, number> =>
  new Map(Object.entries(values).map(([k, v]) => [Number(k), v]));

export const recordOf = (values: ReadonlyMap<number, number>): Record<string, number> =>
  Object.fromEntries([...values].toSorted((a, b) => a[0] - b[0]).map(([k, v]) => [String(k), Number(v.toFixed(6))]));

export const rectangleOf = (low: { readonly x: number; readonly y: number }, high: { readonly x: number; readonly y: number }): Contour => {
  return polygon([point(low.x, low.y), point(high.x, low.y), point(high.x, high.y), point(low.x, high.y)]);
};

/** The question that a program, its set-up, the wanted contours, the block and the open lines put to the proof, all as drawn at 20 °C. */
export const proofQuestion = (
  program: string,
  setup: SetupFile,
  wanted: readonly Wanted[],
  block: Contour,
  lines: readonly WantedLine[] = [],
): ProofQuestion => ({
  ...openOf(setup, lines),
  program,
  dialect: setup.dialect,
  registers: numbersOf(setup.registers),
  wireDiameter: setup.wireDiameter,
  gaps: numbersOf(setup.gaps),
  passes: setup.passes,
  wanted: wanted.map((w) => ({ ...w, ...ownOf(setup, w.loop) })),
  block,
  holes: setup.holes,
  height: setup.height,
  density: setup.density,
  strength: setup.strength,
  tolerance: setup.tolerance,
  programShare: setup.programShare,
  insideCorner: setup.insideCorner,
  datum: setup.datum,
  scaled: setup.scaled,
});

/** What is asked of one contour; nothing of its own in a set-up that has none. */
const ownOf = ({ contours = {} }: SetupFile, id: string): Pick<Wanted, 'tolerance' | 'passes'> => {
  const own = Object.hasOwn(contours, id) ? contours[id] : undefined;
  return own === undefined ? {} : { tolerance: own.tolerance, passes: own.passes };
};

/** Lines as the drawing has them, and the slits of their leads as the set-up has them. */
const openOf = (setup: SetupFile, lines: readonly WantedLine[]): Pick<ProofQuestion, 'wantedOpen'> => {
  const { leads = [] } = setup;
  if (lines.length + leads.length === 0) return {};
  const ways = leads.map(({ from, to }, i): WantedOpen => ({ chain: `lead ${i + 1}`, path: path([line(from, to)]), kept: 'slit' }));
  return {
    wantedOpen: [
      ...lines.map(({ id, path: along, kept, fit }): WantedOpen => ({ chain: id, path: along, kept, fit, ...ownOf(setup, id) })),
      ...ways,
    ],
  };
};

export const cornersOf = (block: Contour): { readonly low: { x: number; y: number }; readonly high: { x: number; y: number } } => {
  const { minX, minY, maxX, maxY } = boundsOfChain(block);
  return { low: { x: minX, y: minY }, high: { x: maxX, y: maxY } };
};
