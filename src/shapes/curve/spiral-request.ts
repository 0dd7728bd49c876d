/** What may be asked of a spiral. Lengths in mm. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';

export const spiralSchema = z.strictObject({
  kind: z.literal('spiral'),
  form: z
    .enum(['archimedean', 'logarithmic', 'involute'])
    .default('archimedean')
    .describe(
      'archimedean: the same rise in every turn; logarithmic: the same growth; involute: of a circle, turns a pitch apart everywhere',
    ),
  innerRadius: z.number().min(0).max(2000).meta({ description: 'From the middle to where the middle line begins, mm', unit: 'mm' }),
  pitch: z.number().positive().max(1000).optional().meta({ description: 'From turn to turn, mm; not for a logarithmic one', unit: 'mm' }),
  growth: z.number().gt(1).max(100).optional().describe('Logarithmic only: how many times larger the radius is after each turn'),
  turns: z.number().min(0.05).max(200).describe('How many turns'),
  width: z.number().positive().max(1000).meta({ description: 'Of slot or strip, square to the middle line, mm', unit: 'mm' }),
  ends: z.enum(['round', 'square']).default('round').describe('round: half circles beyond both ends; square: cut off there'),
  eyeDiameter: z.number().positive().max(1000).optional().meta({
    description: 'Slot only: diameter of a round eye where it begins, mm, as for a start hole that the slot is too narrow for',
    unit: 'mm',
  }),
  metal: z.enum(['inside', 'outside']).default('outside').describe('inside: a strip that stands; outside: a slot'),
  turning: z.enum(['counter-clockwise', 'clockwise']).default('counter-clockwise').describe('Which way it winds outwards'),
  ...commonKeys,
});

export const spiralQuestion = shapeQuestion({
  ...phrases('spiral', {
    title: say`Spiral`,
    what: say`Slot or standing strip along a spiral, as a flat spring or a scroll`,
  }),
  schema: spiralSchema,
  example: { innerRadius: 6, pitch: 4, turns: 3, width: 1.2, eyeDiameter: 3 },
});

export type SpiralRequest = z.output<typeof spiralSchema>;
