/** What may be asked of lettering. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';
import type { MadeShape } from '../shape.ts';
import { FACES, USUAL_FACE } from './typefaces.ts';

export const letteringSchema = z.strictObject({
  kind: z.literal('lettering'),
  text: z.string().min(1).max(300).describe('What is to be read; a new line begins at a line break, or where \\n is typed'),
  letterHeight: z
    .number()
    .min(0.5)
    .max(1000)
    .meta({ description: 'Height of the letters, mm: of capitals, or of the em, see heightOf', unit: 'mm' }),
  heightOf: z
    .enum(['capitals', 'em'])
    .default('capitals')
    .describe('What letterHeight measures: a capital as H, or the em, which is about 1.4 times as high'),
  face: z.enum(FACES).default(USUAL_FACE).describe('Cut of the font that comes with the house (DejaVu)'),
  font: z
    .string()
    .min(1)
    .max(1000)
    .optional()
    .describe('A TrueType or OpenType font file of your own in place of face; found beside the job file, on the command line only'),
  spacing: z
    .number()
    .min(-200)
    .max(200)
    .default(0)
    .meta({ description: 'Added between letters beyond what the font gives, mm; below 0 they come closer', unit: 'mm' }),
  kerning: z.boolean().default(true).describe('Move pairs such as AV together as the font says'),
  lineSpacing: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .meta({ description: 'From line to line, mm; as the font means it when left out', unit: 'mm' }),
  align: z.enum(['left', 'middle', 'right']).default('left').describe('Where lines of different length stand against each other'),
  metal: z
    .enum(['outside', 'inside'])
    .default('outside')
    .describe('outside: letters are openings in a plate; inside: every letter is a piece'),
  bridge: z.number().min(0).max(100).default(0).meta({
    description:
      'Width of the bridges that tie the middles of letters to the plate where letters are openings, mm; 0: the middles fall out',
    unit: 'mm',
  }),
  bridgeWay: z
    .enum(['upright', 'level', 'shortest'])
    .default('upright')
    .describe('Bridges run up and down, to both sides, or where they cross less of the letter'),
  ...commonKeys,
});

export const letteringQuestion = shapeQuestion({
  ...phrases('lettering', {
    title: say`Lettering`,
    what: say`Text cut with the wire: letters as openings in a plate, with or without bridges, or as pieces`,
  }),
  schema: letteringSchema,
  example: { text: 'ROAD 8', letterHeight: 30, bridge: 2 },
});

export type LetteringRequest = z.output<typeof letteringSchema>;

/** What lettering needs besides its numbers; read by whoever has a disk or a network. */
export interface LetteringMeans {
  /** Makes lettering, whose fonts and geometry only those load who are asked for a text. */
  readonly letters?: (request: LetteringRequest) => MadeShape;
}
