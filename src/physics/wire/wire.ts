/** A wire the shop can buy or has on the shelf, and its schema for shop files. */
import { z } from 'zod';
import { wireRange } from '../starting-model.ts';

export interface Wire {
  /** Key in job and shop files: 'brass-0.25'. */
  readonly id: string;
  readonly name: string;
  /** mm */
  readonly diameter: number;
  readonly kind: 'brass' | 'coated brass' | 'molybdenum' | 'tungsten' | 'steel-cored';
  /** g/cm3 of the whole wire. */
  readonly density: number;
  /** N while cutting. */
  readonly tension: number;
  /** m/min while roughing. */
  readonly speed: number;
  /** In which the price is, ISO 4217; that of the rates where it names none. */
  readonly currency?: string | undefined;
  /** Minor money units per kg. */
  readonly price: number;
  /** kg on one spool. */
  readonly spool: number;
  readonly inStock: boolean;
}

const positive = z.number().positive().finite();

export const wireSchema = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9][a-z0-9.-]*$/),
    name: z.string().min(1).max(80),
    diameter: z.number().min(wireRange.low).max(wireRange.high).describe('mm'),
    kind: z.enum(['brass', 'coated brass', 'molybdenum', 'tungsten', 'steel-cored']),
    density: positive.max(25).describe('g/cm³'),
    tension: positive.max(60).describe('N while cutting'),
    speed: positive.max(60).describe('m/min while roughing'),
    currency: z.string().length(3).optional().describe('Of the price, ISO 4217 code; that of the rates when left out'),
    price: z.number().min(0).max(1e9).describe('Minor money units per kg'),
    spool: positive.max(100).describe('kg on one spool'),
    inStock: z.boolean(),
  })
  .describe('A wire of the shop');
