/** Opening and closing: offset one way and back, which shows what a round tool of that radius really leaves. */
import type { Contour, Region } from '../contour.ts';
import type { OffsetRegionOutcome } from './outcome.ts';

/** What a disc of this radius (mm, more than 0) can sweep inside: narrow places are lost, inside corners get the radius. */
export declare const open: (source: Contour | Region, radius: number) => OffsetRegionOutcome;

/** The same seen from outside: gaps narrower than the disc are filled, outside corners of the rest keep, inward ones get the radius. */
export declare const close: (source: Contour | Region, radius: number) => OffsetRegionOutcome;
