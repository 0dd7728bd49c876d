/** What the proof is asked and what it answers. Lengths in mm. */

import type { Contour, Path } from '../geometry/contour.ts';
import type { Point, Segment } from '../geometry/segment.ts';
import type { Dialect } from '../nc/dialect/dialect.ts';
import type { Registers } from '../nc/read/program.ts';
import type { Finding } from '../text/finding.ts';
import type { Text } from '../text/text.ts';

/** A wanted contour of the drawing and which side of it is metal that must stay. */
export interface Wanted {
  readonly loop: string;
  readonly contour: Contour;
  readonly kept: 'die' | 'punch';
  /** mm by which the contour may leave the curve that was drawn, where arcs stand for it; none when left out. */
  readonly fit?: number | undefined;
  /** Profile tolerance either side, where it is not that of the question. */
  readonly tolerance?: number | undefined;
  /** Conditions, or registers, of the passes that run on it, where they are not those of the question. */
  readonly passes?: readonly number[] | undefined;
}

/** An open line: the metal left or right of its way stays, or it is a slit, cut along its middle, and both sides stay. */
export interface WantedOpen {
  readonly chain: string;
  readonly path: Path;
  readonly kept: 'left' | 'right' | 'slit';
  /** As of a wanted contour. */
  readonly fit?: number | undefined;
  /** Profile tolerance either side, where it is not that of the question. */
  readonly tolerance?: number | undefined;
  /** As of a wanted contour. */
  readonly passes?: readonly number[] | undefined;
}

export interface ProofQuestion {
  readonly program: string;
  readonly dialect: Dialect;
  readonly registers: Registers;
  readonly wireDiameter: number;
  /** Spark gap in mm by condition number; where the program chooses none, by register. */
  readonly gaps: ReadonlyMap<number, number>;
  /** Conditions of the passes, or registers as in `gaps`: the rough cut has the widest gap of them, the last pass the narrowest. Those the program uses when left out. */
  readonly passes?: readonly number[] | undefined;
  readonly wanted: readonly Wanted[];
  /** Open lines that are cut; none when left out. */
  readonly wantedOpen?: readonly WantedOpen[] | undefined;
  /** Edge of the block, and the holes already in it. */
  readonly block: Contour;
  readonly holes: readonly { readonly at: Point; readonly diameter: number }[];
  readonly height: number;
  /** g/cm3 */
  readonly density: number;
  /** MPa at which the material yields or breaks; that of a mild steel when left out. */
  readonly strength?: number | undefined;
  /** Profile tolerance either side of the drawing. */
  readonly tolerance: number;
  /** Share of it that the program itself may use, 0 to 1, though always 1 µm; a quarter when left out. The machine's own error has the rest. */
  readonly programShare?: number | undefined;
  /** Inside corners of the drawing sharper than this may come out with this radius. */
  readonly insideCorner: number;
  /** Zero of the program in the frame of all these places: they are told as drawn. The zero of the drawing when left out. */
  readonly datum?: Point | undefined;
  /**
   * The program is scaled for temperature: every place above is told as it is at 20 °C and grown by this factor about the datum
   * before anything is compared. 1e-6/K and °C say what the factor must be.
   */
  readonly scaled?: { readonly factor: number; readonly expansion: number; readonly temperature: number } | undefined;
}

export interface LooseFinding {
  /** Wanted contour, or open line whose kept side it is, where it belongs to one. */
  readonly loop?: string | undefined;
  /** Block whose move sets it free. */
  readonly block: number;
  readonly at: Point;
  /** mm², openings cut before it fell taken off. */
  readonly area: number;
  /** kg */
  readonly mass: number;
  readonly role: 'slug' | 'part' | 'scrap';
  /** A stop stands before the freeing cut, after the last cut that left it standing. */
  readonly held: boolean;
  /** Its edge as it fell, to 2 µm, for drawing. */
  readonly outline: PlacedOutline;
}

/** A closed line measured from an origin. Its points are made anew at every asking. */
export interface PlacedOutline {
  readonly origin: Point;
  readonly points: readonly Point[];
}

export interface ContourProof {
  readonly loop: string;
  /** Signed: positive where metal is left beyond the drawing, negative where it is gouged. Corners that may be round count with what they hold beyond that round. */
  readonly leftMost: Deviation;
  readonly gougeMost: Deviation;
  readonly rounded: readonly { readonly at: Point; readonly wanted: number; readonly radius: number; readonly left: number }[];
  /** Deviation sampled round the contour, for drawing it: share of the perimeter 0..1, and mm. Made anew at every asking. */
  readonly profile: readonly { readonly share: number; readonly at: Point; readonly deviation: number }[];
  readonly state: 'right' | 'uncut' | 'out of tolerance';
}

/** An open line, judged along its length as far as it lies in the block. A slit has no gouge of its own but what is cut beyond it. */
export interface OpenProof {
  readonly chain: string;
  readonly kept: WantedOpen['kept'];
  readonly leftMost: Deviation;
  readonly gougeMost: Deviation;
  readonly state: 'right' | 'uncut' | 'out of tolerance';
}

/** What the tolerance is used for, mm: the program was aimed at the drawn contours. */
export interface ToleranceUse {
  readonly tolerance: number;
  /** Of it the program may use this much. */
  readonly allowed: number;
  /** Most that it is off the aimed contours, rounds that inside corners may have left out. */
  readonly measured: number;
  /** By as much more a curve that was drawn may lie off the arcs that stand for it, in the contour where that is most. */
  readonly fit: number;
}

export interface Deviation {
  readonly at: Point;
  readonly amount: number;
}

/** Why the verdict is what it is: the finding with the block at fault and the place, as far as there are any. */
export interface Reason {
  readonly finding: Finding;
  readonly block?: number | undefined;
  readonly text?: string | undefined;
  readonly at?: Point | undefined;
}

/** Where a program stops. `text` is what the stop says; of a program by others it is the comment. */
export interface ProvenStop {
  readonly block: number;
  readonly comment: string;
  readonly text: Text;
  /** What there is to know of the piece besides; left out where there is nothing, and of a program by others. */
  readonly details?: readonly Text[] | undefined;
  readonly at: Point;
}

export interface Proof {
  readonly verdict: 'proven' | 'not proven';
  /** Greatest error of any deviation stated here, mm. */
  readonly resolution: number;
  /** Left out where nothing could be measured. */
  readonly use?: ToleranceUse | undefined;
  readonly contours: readonly ContourProof[];
  /** Same order as the open lines of the question; left out where it has none. */
  readonly open?: readonly OpenProof[] | undefined;
  readonly loose: readonly LooseFinding[];
  readonly stops: readonly ProvenStop[];
  readonly findings: readonly Finding[];
  /** The findings of this layer again, each with its block and place. */
  readonly reasons: readonly Reason[];
  /** The edge of all metal that is left in place, for drawing: outer edges of the cuts, with loose pieces gone. */
  readonly openings: readonly PlacedOutline[];
  /** Every cutting move of the wire's centre, with the condition, else the register, whose gap it was swept with (0 for none). */
  readonly cuts: readonly { readonly block: number; readonly segment: Segment; readonly radius: number; readonly setting: number }[];
}
