/** What is kept of an entity until its block is placed: curves where it was drawn, not yet moved to where it is seen. */
import type { Text } from '../../text/text.ts';
import type { Curve } from '../curve/curve.ts';
import type { DrawingCode } from '../ledger.ts';
import type { Placement, Point3, SpaceCurve } from './space.ts';
import type { Tally } from './tally.ts';

interface Record {
  readonly type: string;
  readonly layer: string;
  readonly invisible: boolean;
  /** As named in the file; none where it is that of the layer. */
  readonly lineType?: string | undefined;
  /** Line of the file, or byte. */
  readonly place: number;
}

/** An entity that is drawn: `flat` curves at height 0 as nearly all are, or curves in space. */
export interface DrawnEntity extends Record {
  readonly kind: 'shape';
  readonly closes: boolean;
  /** An arc that ends at the angle where it starts: kept as the whole circle that some programs make of it. */
  readonly turnless?: boolean | undefined;
  readonly flat: readonly Curve[];
  readonly space: readonly SpaceCurve[];
}

/** A POINT. */
export interface PointEntity extends Record {
  readonly kind: 'spot';
  readonly at: Point3;
}

/** A block put somewhere, once or in rows and columns. */
export interface Insert extends Record {
  readonly kind: 'insert';
  readonly block: string;
  /** The name without regard to capitals, by which blocks are looked up. */
  readonly key: string;
  /** Where the block's own coordinates go for the first copy, its base point not yet taken off. */
  readonly placement: Placement;
  readonly columns: number;
  readonly rows: number;
  /** Steps from copy to copy, in the world of the insert. */
  readonly columnStep: Point3;
  readonly rowStep: Point3;
}

export type EntityRecord = DrawnEntity | PointEntity | Insert;

/** Why an entity could not be made. */
export interface Trouble {
  readonly kind: 'trouble';
  readonly code: DrawingCode;
  readonly text: Text;
}

export interface Block {
  readonly name: string;
  readonly base: Point3;
  readonly records: readonly EntityRecord[];
  /** What in it is not drawn. */
  readonly aside: Tally;
}

export const trouble = (code: DrawingCode, text: Text): Trouble => ({ kind: 'trouble', code, text });
