/** What was measured on a job, and what becomes of its offset registers. */

import type { Correction } from '../accuracy/correction.ts';
import type { PassTable } from '../physics/cut/pass-table.ts';
import type { ControlUnit } from '../text/control-unit.ts';

export interface CorrectionFacts {
  readonly correction?: Correction | undefined;
  /** What would come of a change of all registers, mm; sizes at 20 °C of what was measured. */
  readonly changed?: { readonly change: number; readonly sizes: readonly { readonly loop: string; readonly size: number }[] } | undefined;
  readonly registers: ReadonlyMap<number, number>;
  readonly inControl: boolean;
  /** In which the program, and so its registers, count. */
  readonly unit: ControlUnit;
  /** The corrected passes as the shop file takes them. */
  readonly passTable?: PassTable | undefined;
}
