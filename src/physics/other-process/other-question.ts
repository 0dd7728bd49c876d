/** What is asked of other processes beside the wire, and what they answer. */
import type { Figure } from '../../quantity/figure.ts';
import type { Text } from '../../text/text.ts';
import type { Taken } from '../../text/wanted.ts';
import type { Material } from '../material/material.ts';
import type { ProcessName } from './process-table.ts';

export interface OtherQuestion extends Taken {
  /** mm */
  readonly thickness: number;
  /** Either side of the drawing, mm. */
  readonly tolerance: number;
  /** Ra, µm. */
  readonly finish: number;
  readonly material: Material;
  /** Of all contours together, mm, and how many there are: each is pierced once. */
  readonly length: number;
  readonly contours: number;
  /** Smallest radius that inside corners may come out with, mm; infinite where there are no inside corners. */
  readonly insideRadius: number;
  /** What the wire does; left out where it cannot do the job. */
  readonly wire?: WireOwn | undefined;
}

export interface WireOwn {
  readonly minutes: number;
  /** Expected error either side, mm, and Ra, µm. */
  readonly deviation: number;
  readonly ra: number;
  /** Barrel over the height, µm. */
  readonly formError: number;
}

export interface OtherEdge {
  /** Zone in which the cut face lies, mm. */
  readonly perpendicularity: Figure;
  /** Degrees by which the face leans when it uses up that zone. */
  readonly slope: Figure;
  /** Ra, µm: from Rz only a band is known. */
  readonly ra: { readonly low: number; readonly high: number };
  /** Rz5 of thermal cuts, Ra of the jet, µm. */
  readonly roughness: Figure;
  /** Height of the roughness as a picture shows it, µm: Rz, for the jet that which its Ra gives as a rule. */
  readonly rz: number;
  /** Cutting and piercing, min. */
  readonly minutes: Figure;
}

export interface OtherWay {
  readonly process: ProcessName;
  readonly name: Text;
  readonly kind: 'would do' | 'too rough' | 'out of square' | 'out of size' | 'corners too round' | 'out of scope' | 'cannot cut it';
  readonly sentence: Text;
  /** The same as it stands within another sentence; none where it is out of scope or cannot cut it. */
  readonly within?: Text | undefined;
  /** None where it is out of scope or cannot cut it. */
  readonly edge?: OtherEdge;
}

export interface OtherWays {
  readonly kind: 'not for the wire' | 'only the wire' | 'none of them';
  readonly verdict: Text;
  readonly ways: readonly OtherWay[];
  /** The wire's own, to stand beside the others; its slope in degrees, and the Rz, µm, that its Ra gives as a rule. */
  readonly wire?: (WireOwn & { readonly name: Text; readonly slope: number; readonly rz: number }) | undefined;
  readonly thickness: number;
}
