/** What a customer's file turns into: closed loops, open chains and findings. */

import type { Contour, Path } from '../geometry/contour.ts';
import type { Point } from '../geometry/segment.ts';
import type { Finding } from '../text/finding.ts';

/** How a drawing unit was made a length, and who said so. */
export interface DrawingUnits {
  /** 'mm', 'inch', 'µm' ... as written in findings and answers. */
  readonly name: string;
  /** Millimetres in one drawing unit. */
  readonly millimetres: number;
  readonly basis: 'header' | 'user' | 'assumed';
}

/**
 * `edge`: around a part that has openings, so a border or the edge of the block. `layer`: on a layer that cannot be cut together with
 * another. `said`: the job leaves it out.
 */
export type Aside = 'border' | 'edge' | 'table' | 'view' | 'construction' | 'layer' | 'said';

/** A closed loop of the drawing. */
export interface Loop {
  /** 'L1', 'L2', ... by falling area; stable for the same file. */
  readonly id: string;
  /** In mm, counter-clockwise, lines and arcs only. */
  readonly contour: Contour;
  readonly layer: string;
  /** Its layer was off or frozen, or the entity invisible. Hidden loops take no part in nesting. */
  readonly hidden: boolean;
  /** No part of the work as far as can be told, and what it looks like instead. Not cut unless the job says what is kept of it. */
  readonly aside?: Aside | undefined;
  /** The smallest loop around it, or none. */
  readonly parent?: string | undefined;
  /** 0 for an outermost loop, 1 for an opening in it, 2 for an island in that. */
  readonly depth: number;
  /** In drawing units (squared), so that it can be held against the file. */
  readonly area: number;
  readonly perimeter: number;
  /** Greatest distance in mm between the loop and the curves it stands for; 0 where all were lines and arcs. */
  readonly fitDeviation: number;
}

/** Pieces that join up but do not close. */
export interface OpenChain {
  readonly id: string;
  readonly path: Path;
  readonly layer: string;
  readonly hidden: boolean;
  readonly length: number;
  /** As of a loop. */
  readonly fitDeviation: number;
}

/** A POINT of the drawing, in mm; a shop may mark start holes so. */
export interface DrawnMark {
  readonly at: Point;
  readonly layer: string;
}

export interface Layer {
  readonly name: string;
  readonly hidden: boolean;
  readonly entities: number;
}

export interface Drawing {
  /** `incomplete`: the file ended early, what could be read is here. `refused`: nothing was read, a finding says why. */
  readonly state: 'complete' | 'incomplete' | 'refused';
  readonly format: 'dxf' | 'svg' | 'unknown';
  readonly units: DrawingUnits;
  readonly loops: readonly Loop[];
  readonly openChains: readonly OpenChain[];
  readonly marks: readonly DrawnMark[];
  readonly layers: readonly Layer[];
  readonly findings: readonly Finding[];
}

export interface ReadOptions {
  /** Overrules the header: 'mm' or 'inch' and the like. */
  readonly units?: string | undefined;
  /** Ends nearer than this are joined and reported. In mm, or in drawing units when `joinInDrawingUnits`. Default 0.005 mm. */
  readonly join?: number | undefined;
  readonly joinInDrawingUnits?: boolean | undefined;
  /** Largest distance in mm between a fitted arc and the curve it stands for. Default 0.0005 mm. */
  readonly fit?: number | undefined;
  readonly limits?: Partial<ReadLimits> | undefined;
  /** Nothing but the work is drawn: no borders, title blocks and views are looked for. */
  readonly alone?: boolean | undefined;
}

/** Beyond these the file is refused, by name. */
export interface ReadLimits {
  readonly bytes: number;
  readonly entities: number;
  /** Depth of blocks within blocks or of groups within groups. */
  readonly nesting: number;
  /** Steps of work, counted, not timed, so that the same file always ends in the same way. */
  readonly work: number;
}
