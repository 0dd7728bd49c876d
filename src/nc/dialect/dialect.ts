/**
 * A dialect: how one control wants its program spelled. A file of our own making (JSON), checked against this schema.
 * What no standard defines has no default: a word the dialect does not name is replaced by a stop that says it in plain words.
 */
import { z } from 'zod';

const word = z
  .string()
  .regex(/^[A-Z]\d{1,4}(\.\d)?( [A-Z]\d{1,6})*$/, 'a word is a capital letter with a number, as in M50')
  .describe('A word of the control, as in M50');

export const dialectSchema = z
  .strictObject({
    name: z.string().min(1).max(60),
    note: z.string().max(500).optional(),
    units: z.enum(['mm', 'inch']).describe('Length unit of the coordinates'),
    unitsWord: z.enum(['G20/G21', 'G70/G71', 'none']).describe('Which pair of words states the unit'),
    decimals: z.int().min(2).max(6).describe('Digits behind the decimal point'),
    trailingZeros: z.boolean().describe('Write 1.5000 instead of 1.5'),
    arcs: z
      .enum(['centre', 'radius'])
      .describe('Arcs by their centre (I, J from the arc start) or by R, no longer than a quarter turn each'),
    coordinates: z.enum(['absolute', 'incremental']),
    sequence: z
      .strictObject({ step: z.int().min(1).max(1000), start: z.int().min(0).max(99999) })
      .optional()
      .describe('Sequence numbers N; none when left out. After 99999 they begin again'),
    compensation: z.enum(['control', 'path']).describe('G41/G42 with a register, or the wire centre written out'),
    outsideCorners: z.enum(['arc', 'intersection']).describe('What the control does at an outside corner under compensation'),
    leastMove: z
      .number()
      .min(0)
      .max(0.05)
      .optional()
      .describe('Shortest move under compensation, mm; shorter ones are merged. 0.005 when left out, 0 for none'),
    comments: z.enum(['round brackets', 'semicolon', 'none']),
    optionalStops: z.boolean().describe('Write M01 at stops that only invite a look'),
    percent: z.boolean().describe('A line with % at both ends'),
    end: z.enum(['M02', 'M30']),
    words: z
      .strictObject({
        thread: word.describe('Threads the wire; a stop asks the operator when left out'),
        cutWire: word.describe('Cuts the wire; a stop asks the operator when left out'),
        wireOn: word.describe('Wire runs; leave out when the control does it by itself or the operator at the threading stop'),
        wireOff: word,
        flushOn: word,
        flushOff: word,
        powerOn: word,
        powerOff: word,
        condition: z
          .string()
          .regex(/^[A-Z]\{n\}$/, 'a letter and {n}, as in E{n}')
          .describe('Chooses condition n; a stop asks the operator when left out'),
      })
      .partial()
      .describe('Words that no standard defines. Leave out what the control does not have.'),
  })
  .describe('How one control wants its program spelled');

export type Dialect = z.infer<typeof dialectSchema>;

/** The words that no standard defines, by what they mean. */
export type WordName = keyof Dialect['words'];

/** mm: many controls look ahead so few moves that a corner of shorter ones is not seen as one. Common practice, no source. */
const LEAST_MOVE = 0.005;

export const leastMoveOf = ({ leastMove = LEAST_MOVE }: Pick<Dialect, 'leastMove'>): number => leastMove;

/** Only words that ISO 6983-1 has, the unit words G70 and G71 too; everything else becomes a stop with a plain comment. */
export const standardDialect: Dialect = {
  name: 'standard',
  units: 'mm',
  unitsWord: 'G70/G71',
  decimals: 4,
  trailingZeros: false,
  arcs: 'centre',
  coordinates: 'absolute',
  sequence: { step: 10, start: 10 },
  compensation: 'control',
  outsideCorners: 'arc',
  comments: 'round brackets',
  optionalStops: false,
  percent: true,
  end: 'M02',
  words: {},
};
