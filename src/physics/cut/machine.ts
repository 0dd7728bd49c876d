/** What the model and the planner must know of a machine, its schema for shop files, and one invented machine to begin with. */

import { z } from 'zod';
import { neighbours } from '../../sequence/sequence.ts';

export interface Machine {
  readonly id: string;
  readonly name: string;
  /** Largest block: table travel in x and y, and height, mm. */
  readonly travel: { readonly x: number; readonly y: number };
  readonly height: number;
  /** Wires it can thread, mm. */
  readonly wire: { readonly low: number; readonly high: number };
  /** Energy settings: cube root of pulse energy against the rough, falling, the first is 1. */
  readonly energySettings: readonly number[];
  /** Form error that skims cannot get below, µm, and positioning error of one size, µm (one standard deviation). */
  readonly bestFormError: number;
  readonly positioning: number;
  /** Fastest feed along the contour while sparking, and travel without the wire cutting, mm/min. */
  readonly servoLimit: number;
  readonly travelFeed: number;
  /** Minutes to thread by itself, or by hand when it cannot. */
  readonly threadMinutes: number;
  readonly autoThreading: boolean;
}

const positive = z.number().positive().finite();

const falling = (settings: readonly number[]): boolean =>
  settings[0] === 1 && neighbours(settings).every(([before, after]) => after < before);

export const machineSchema = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9][a-z0-9.-]*$/),
    name: z.string().min(1).max(80),
    travel: z.strictObject({ x: positive.max(10000), y: positive.max(10000) }).describe('Largest block in x and y, mm'),
    height: positive.max(1000).describe('Largest height, mm'),
    wire: z
      .strictObject({ low: positive, high: positive })
      .refine((w) => w.low <= w.high, { error: 'the finest wire must not be thicker than the thickest' })
      .describe('Wires it can thread, mm'),
    energySettings: z
      .array(z.number().min(0.03).max(1))
      .min(1)
      .max(60)
      .refine(falling, { error: 'energy settings must begin with 1 and fall' })
      .describe('Cube root of pulse energy against the rough'),
    bestFormError: z.number().min(0).max(100).describe('Form error that skims cannot get below, µm'),
    positioning: z.number().min(0).max(100).describe('Positioning error of one size, one standard deviation, µm'),
    servoLimit: positive.max(1000).describe('Fastest feed while sparking, mm/min'),
    travelFeed: positive.max(100000).describe('Travel without cutting, mm/min'),
    threadMinutes: z.number().min(0).max(120).describe('Minutes to thread the wire'),
    autoThreading: z.boolean(),
  })
  .describe('A wire machine of the shop');

/** The preferred numbers of the R20 series, falling from 1: each setting has 0.89 of the crater size of the one above. */
const preferred: readonly number[] = Array.from({ length: 27 }, (_, k) => Number((10 ** (-k / 20)).toFixed(3)));

/** Invented, with plausible figures: a shop enters its own. */
export const standardMachine: Machine = {
  id: 'standard',
  name: 'Standard machine (invented figures)',
  travel: { x: 550, y: 350 },
  height: 300,
  wire: { low: 0.1, high: 0.3 },
  energySettings: preferred,
  bestFormError: 1.5,
  positioning: 1,
  servoLimit: 12,
  travelFeed: 600,
  threadMinutes: 1.5,
  autoThreading: true,
};
