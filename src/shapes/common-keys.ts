/** Keys that every shape understands, and what they come to. */
import { z } from 'zod';

export const commonKeys = {
  fit: z
    .number()
    .min(0.00001)
    .max(0.1)
    .default(0.0005)
    .meta({ description: 'Largest distance between a true curve, as an involute, and the arcs that stand for it, mm', unit: 'mm' }),
  clearance: z.number().min(-1).max(5).default(0).meta({
    description:
      'Play between this piece and its mate, square to the wall, mm; below 0 they press. For gears the backlash along the line of action',
    unit: 'mm',
  }),
  share: z.number().min(0).max(1).default(0.5).describe('How much of the clearance this piece gives; its mate gives the rest'),
};

export interface CommonRequest {
  readonly fit: number;
  readonly clearance: number;
  readonly share: number;
}

/** How far each wall of this piece stands back into its metal, mm: an outer form comes out smaller by it, an opening larger. */
export const standBack = ({ clearance, share }: Pick<CommonRequest, 'clearance' | 'share'>): number => clearance * share;
