/** What may be asked of an involute spline. Lengths in mm. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { spanTeethKey } from '../teeth/tooth-keys.ts';

export const splineSchema = z.strictObject({
  kind: z.literal('spline'),
  part: z.enum(['shaft', 'hub']).default('hub').describe('shaft: external teeth, a piece; hub: internal teeth, an opening'),
  standard: z.enum(['ISO 4156', 'ANSI B92.1']).default('ISO 4156').describe('ISO by module, ANSI by diametral pitch'),
  module: z.number().positive().max(20).optional().meta({ description: 'Module, mm, for ISO 4156', unit: 'mm' }),
  pitch: z
    .number()
    .min(1)
    .max(128)
    .optional()
    .describe('Diametral pitch, teeth per inch of the pitch diameter, for ANSI B92.1: 12 of 12/24'),
  teeth: z.int().min(6).max(400).describe('How many teeth'),
  pressureAngle: z.enum(['30', '37.5', '45']).default('30').describe('Pressure angle, °'),
  root: z.enum(['flat', 'fillet']).default('flat').describe('flat: root circle with small radii; fillet: one full round'),
  rootRadius: z
    .number()
    .positive()
    .max(10)
    .optional()
    .meta({ description: 'Radius of a flat root, mm; 0.2 modules when left out', unit: 'mm' }),
  helix: z.number().min(-60).max(60).default(0).describe('Helix angle, °; a straight wall only has 0'),
  class: z
    .enum(['4', '5', '6', '7'])
    .optional()
    .describe(
      'Tolerance class: the teeth are cut at the middle of their limits, and limits are told; left out, they have their basic size',
    ),
  fitClass: z
    .enum(['h', 'f', 'e', 'd', 'js', 'k'])
    .default('h')
    .describe(
      'Fit of a shaft with a class: h without play at its tightest, then f, e and d with more, js and k with less; a hub is always H',
    ),
  engagement: z.number().positive().max(2000).optional().meta({
    description: 'Length on which shaft and hub engage, mm, for the variation of an ISO class; half the pitch diameter when left out',
    unit: 'mm',
  }),
  pin: z
    .number()
    .positive()
    .max(100)
    .optional()
    .meta({ description: 'Diameter of the measuring pins, mm; the best in stock is chosen when left out', unit: 'mm' }),
  spanTeeth: spanTeethKey,
  outside: z
    .number()
    .positive()
    .max(2000)
    .optional()
    .meta({ description: 'Outside diameter of the hub, mm, where it is cut as well', unit: 'mm' }),
  ...commonKeys,
});

export const splineQuestion = shapeQuestion({
  ...phrases('spline', {
    title: say`Involute spline`,
    what: say`Shaft or hub with involute splines by ISO 4156 or ANSI B92.1, side fit, with tolerance classes`,
  }),
  schema: splineSchema,
  example: { module: 2, teeth: 20 },
});

export type SplineRequest = z.output<typeof splineSchema>;
