/** Inputs of formulas in the units that shapes have: a length, a count or ratio, an angle. */
import type { Input } from '../quantity/formula.ts';

export const inMm = (name: string): Input => ({ unit: 'mm', name });
export const plain = (name: string): Input => ({ unit: '1', name });
export const inRad = (name: string): Input => ({ unit: 'rad', name });
