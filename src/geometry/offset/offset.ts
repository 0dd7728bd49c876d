/** Parallel curves at a distance, arcs kept as arcs: of closed contours, of open paths, of regions with holes. */
import type { Contour, Path, Region } from '../contour.ts';
import type { OffsetContourOutcome, OffsetOptions, OffsetPathOutcome, OffsetRegionOutcome } from './outcome.ts';

/**
 * The parallel curve of a closed contour.
 *
 * @param distance mm; positive to the left of travel, so a counter-clockwise contour shrinks by a positive distance and
 * grows by a negative one.
 */
export declare const offsetContour: (source: Contour, distance: number, options?: OffsetOptions) => OffsetContourOutcome;

/** The parallel curve on one side of an open path, left for a positive distance, as far as it stays that far from the whole path. */
export declare const offsetPath: (source: Path, distance: number, options?: OffsetOptions) => OffsetPathOutcome;

/** The region shrunk by a positive distance, grown by a negative one, its holes with it. */
export declare const offsetRegion: (source: Region, distance: number, options?: OffsetOptions) => OffsetRegionOutcome;
