/** The shop file: the wires on the shelf, the machines, the rates, and how the control wants its programs spelled. */
import { z } from 'zod';
import { ratesSchema } from '../estimate/rates.ts';
import { shiftSchema, usualShifts } from '../estimate/schedule/shifts.ts';
import { machineSchema } from '../physics/cut/machine.ts';
import { passTableSchema } from '../physics/cut/pass-table.ts';
import { materialSchema } from '../physics/material/shop-material.ts';
import { wireSchema } from '../physics/wire/wire.ts';
import { tellingSchema } from './reader-keys.ts';

export const shopSchema = z
  .strictObject({
    $schema: z.string().optional(),
    name: z.string().min(1).max(80).describe('Name of the shop on its papers'),
    dialect: z.string().optional().describe('Dialect file for its control, relative to the shop file; the standard one when left out'),
    machines: z.array(machineSchema).min(1).describe('The first one is used'),
    wires: z.array(wireSchema).min(1),
    materials: z.array(materialSchema).max(200).default([]).describe('Materials of the shop beyond those of the house'),
    passTables: z.array(passTableSchema).max(500).default([]).describe('Passes as the shop runs them: where one fits it beats the model'),
    rates: z.array(ratesSchema).min(1).describe('Each block holds from its day until the next'),
    shifts: z
      .array(shiftSchema)
      .max(50)
      .default([...usualShifts])
      .describe('When somebody is at the machines; Monday to Friday, 07:00 to 16:00 when left out'),
    papers: tellingSchema.optional().describe('How its papers tell numbers; what is typed into a control stays in the unit of its program'),
    quotationDays: z.int().min(1).max(366).default(30).describe('How long a quotation stays valid'),
    terms: z.string().min(1).max(600).optional().describe('Terms of payment and delivery, as they are to stand on a quotation'),
  })
  .describe('What one shop has and charges');

export type Shop = z.infer<typeof shopSchema>;

/** The machine that jobs are planned for: the first of the shop. */
export const machineOf = (shop: Pick<Shop, 'machines'>): Shop['machines'][number] => shop.machines[0] as Shop['machines'][number];
