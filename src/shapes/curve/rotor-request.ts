/** What may be asked of a rotor that rolls on round pins or teeth, and what its making hands on. Lengths in mm. */
import { z } from 'zod';
import type { Point } from '../../geometry/segment.ts';
import type { Text } from '../../text/text.ts';
import { commonKeys } from '../common-keys.ts';

export const rotorSchema = z.strictObject({
  kind: z.literal('cycloid-rotor'),
  part: z
    .enum(['disc', 'rotor', 'ring'])
    .default('disc')
    .describe('disc: of a cycloidal drive, on round pins; rotor: inner rotor of a gerotor pump; ring: its outer rotor'),
  pins: z.int().min(3).max(400).describe('Pins of the ring, or teeth of the outer rotor; the rotor has one lobe less'),
  pinCircle: z.number().positive().max(5000).describe('Diameter of the circle that the middles of pins or teeth lie on, mm'),
  pinDiameter: z.number().positive().max(2000).describe('Diameter of a pin, or twice the radius of a tooth of the outer rotor, mm'),
  eccentricity: z.number().positive().max(500).describe('From the middle of the ring to the middle of the rotor, mm'),
  bore: z.number().positive().max(5000).optional().describe('Diameter of a bore in the middle of disc or rotor, mm'),
  outputPins: z.int().min(0).max(60).default(0).describe('Disc only: how many output pins go through it'),
  outputCircle: z.number().positive().max(5000).optional().describe('Disc only: diameter of the circle of the output pins, mm'),
  outputPin: z
    .number()
    .positive()
    .max(1000)
    .optional()
    .describe('Disc only: diameter of an output pin, mm; its hole is larger by twice the eccentricity and the play'),
  outside: z.number().positive().max(5000).optional().describe('Ring only: outside diameter, mm, where it is cut as well'),
  rootClearance: z
    .number()
    .min(0)
    .max(20)
    .default(0.1)
    .describe('Ring only: from the top of a passing lobe to the root circle, beyond the play, mm'),
  rootRound: z
    .number()
    .min(0)
    .max(200)
    .optional()
    .describe('Ring only: radius between tooth and root circle, mm; as much as has room, up to half the radius of a tooth, when left out'),
  ...commonKeys,
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
