/** What may be asked of a rotor that rolls on round pins or teeth, and what its making hands on. Lengths in mm. */
import { z } from 'zod';
import type { Point } from '../../geometry/segment.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';

export const rotorSchema = z.strictObject({
  kind: z.literal('cycloid-rotor'),
  part: z
    .enum(['disc', 'rotor', 'ring'])
    .default('disc')
    .describe('disc: of a cycloidal drive, on round pins; rotor: inner rotor of a gerotor pump; ring: its outer rotor'),
  pins: z.int().min(3).max(400).describe('Pins of the ring, or teeth of the outer rotor; the rotor has one lobe less'),
  pinCircle: z
    .number()
    .positive()
    .max(5000)
    .meta({ description: 'Diameter of the circle that the middles of pins or teeth lie on, mm', unit: 'mm' }),
  pinDiameter: z
    .number()
    .positive()
    .max(2000)
    .meta({ description: 'Diameter of a pin, or twice the radius of a tooth of the outer rotor, mm', unit: 'mm' }),
  eccentricity: z
    .number()
    .positive()
    .max(500)
    .meta({ description: 'From the middle of the ring to the middle of the rotor, mm', unit: 'mm' }),
  bore: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .meta({ description: 'Diameter of a bore in the middle of disc or rotor, mm', unit: 'mm' }),
  outputPins: z.int().min(0).max(60).default(0).describe('Disc only: how many output pins go through it'),
  outputCircle: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .meta({ description: 'Disc only: diameter of the circle of the output pins, mm', unit: 'mm' }),
  outputPin: z.number().positive().max(1000).optional().meta({
    description: 'Disc only: diameter of an output pin, mm; its hole is larger by twice the eccentricity and the play',
    unit: 'mm',
  }),
  outside: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .meta({ description: 'Ring only: outside diameter, mm, where it is cut as well', unit: 'mm' }),
  rootClearance: z
    .number()
    .min(0)
    .max(20)
    .default(0.1)
    .meta({ description: 'Ring only: from the top of a passing lobe to the root circle, beyond the play, mm', unit: 'mm' }),
  rootRound: z.number().min(0).max(200).optional().meta({
    description:
      'Ring only: radius between tooth and root circle, mm; as much as has room, up to half the radius of a tooth, when left out',
    unit: 'mm',
  }),
  ...commonKeys,
});

export const cycloidRotorQuestion = shapeQuestion({
  ...phrases('cycloid-rotor', {
    title: say`Cycloid rotor`,
    what: say`Disc of a cycloidal drive, or inner or outer rotor of a gerotor pump`,
  }),
  schema: rotorSchema,
  example: { pins: 12, pinCircle: 80, pinDiameter: 8, eccentricity: 2, bore: 26, outputPins: 6, outputCircle: 48, outputPin: 6 },
});

export type RotorRequest = z.output<typeof rotorSchema>;

export interface Holes {
  readonly centres: readonly Point[];
  readonly diameter: number;
}

export interface Wall {
  readonly thickness: number;
  readonly between: Text;
  readonly path: keyof RotorRequest;
}
