/** Hours, wire and money of one job, worked out from the program as it was read back. */
import type { Figure } from '../quantity/figure.ts';

export interface PassTime {
  readonly pass: number;
  readonly length: Figure;
  readonly minutes: Figure;
}

export interface PriceLine {
  readonly name: string;
  readonly cost: Figure;
  /** Once for the job, or for each piece. */
  readonly per: 'job' | 'piece';
}

export interface PriceBreak {
  readonly quantity: number;
  readonly each: Figure;
  readonly total: Figure;
}

export interface Estimate {
  readonly passes: readonly PassTime[];
  readonly threading: Figure;
  readonly travel: Figure;
  readonly stops: Figure;
  readonly drilling: Figure;
  readonly setUp: Figure;
  readonly programming: Figure;
  /** Machine time of one piece, minutes; attended + unattended = total. */
  readonly attended: Figure;
  readonly unattended: Figure;
  readonly total: Figure;
  readonly wireLength: Figure;
  readonly wireMass: Figure;
  readonly spools: Figure;
  readonly lines: readonly PriceLine[];
  readonly each: Figure;
  readonly breaks: readonly PriceBreak[];
  readonly currency: string;
  /** Day from which the rates used are valid, ISO 8601. */
  readonly ratesFrom: string;
}
