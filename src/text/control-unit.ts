/** The unit that a program counts in. */

/** The unit a control counts in: what is typed into it must stand on the paper in the same. */
export interface ControlUnit {
  readonly name: 'mm' | 'inch';
  readonly millimetres: number;
}

export const MILLIMETRES: ControlUnit = { name: 'mm', millimetres: 1 };
export const INCHES: ControlUnit = { name: 'inch', millimetres: 25.4 };
