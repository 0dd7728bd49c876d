/** What the planner decides: wire, passes, paths, holes, stops, in the order in which they happen. Lengths in mm. */

import type { Contour } from '../geometry/contour.ts';
import type { Point, Segment } from '../geometry/segment.ts';
import type { LadderRow } from '../physics/cut/pass-rows.ts';
import type { Wire } from '../physics/wire/wire.ts';
import type { Figure } from '../quantity/figure.ts';
import type { NonEmpty } from '../sequence/sequence.ts';
import type { Finding } from '../text/finding.ts';
import type { StopPurpose } from '../text/stop-purpose.ts';
import type { Text } from '../text/text.ts';
import type { OpenCutPlan } from './open-line.ts';
import type { Requirement } from './question.ts';

/** `die`: the block is kept and the piece inside is the slug. `punch`: the piece inside is kept. */
export type Kept = 'die' | 'punch';

/** One pass over every contour that runs it: number 1 is the rough, and so is 11 of the second family of passes, 21 of the third. */
export interface Pass extends Omit<LadderRow, 'energy' | 'taken' | 'recast'> {
  /** The condition (energy setting) the machine is asked for, and the offset register of this pass; both count from 1. */
  readonly condition: number;
  readonly register: number;
  /** Cube root of the pulse energy against the rough: 1 for the rough. */
  readonly energy: Figure;
}

export interface StartHole {
  readonly at: Point;
  readonly diameter: number;
  readonly origin: 'drawing' | 'placed' | 'block edge';
  /** mm by which a drilled hole may drift into what must stay. */
  readonly past?: number | undefined;
}

/** Where a contour begins and ends: a spot on it, by segment and the share of that segment's length (0 to 1). */
export interface Entry {
  readonly at: Point;
  readonly segment: number;
  readonly share: number;
}

/** Metal left standing so that the loose piece stays: from `from` to the entry, `length` mm along the contour. */
export interface Tab {
  readonly from: Point;
  readonly length: number;
  /** '3.2 mm for 1.4 kg: enough for its mass'. */
  readonly reason: Text;
}

/** The piece that comes free. */
export interface LoosePiece {
  readonly role: 'slug' | 'part';
  /** mm²; 0 where the opening is cut without a core. */
  readonly area: number;
  /** kg */
  readonly mass: Figure;
  /** mm along x and y, and its height: the upright box round it. All 0 where the opening is cut without a core. */
  readonly size: { readonly x: number; readonly y: number; readonly height: number };
  /** Where its weight acts, seen from above: the wire stands upright, so it hangs on its tab by the way from here to there. */
  readonly balance: Point;
  readonly handling: Handling;
}

/**
 * `no core`: nothing comes loose. `caught`: a magnet or a plate under it takes it up. `lifted`: a hand takes it out upward. `held`: it
 * must hang or stand on something before its tab is cut. `tackle`: that, and no hand lifts it.
 */
export type Handling = 'no core' | 'caught' | 'lifted' | 'held' | 'tackle';

/** How an opening is cut without a core. Lengths in mm. */
export interface NoCoreCut {
  /** Rings inside the rough cut, and the way of the wire over them. */
  readonly rings: number;
  readonly length: number;
  /** New metal taken across by each ring, from the start hole outward, the rough cut last; the first cuts full width. */
  readonly bites: readonly number[];
  readonly kerf: number;
  /** To follow 'because'. */
  readonly reason: Text;
}

/** The corner or arc of a contour at which wire lag spoils most. */
export interface WorstCorner {
  readonly what: 'inside corner' | 'inside arc' | 'outside arc' | 'outside corner rolled round' | 'outside corner run out to a point';
  readonly at: Point;
  /** mm as drawn, 0 where it is sharp. */
  readonly radius: number;
  /** Rad by which the contour turns there, always positive. */
  readonly turn: number;
  /** µm by which the surface is off there after each pass; same index as passes. */
  readonly errors: readonly number[];
}

/** All that is decided for one loop of the drawing. */
export interface ContourPlan {
  readonly loop: string;
  readonly kept: Kept;
  readonly hole: StartHole;
  readonly entry: Entry;
  readonly tab?: Tab | undefined;
  readonly piece: LoosePiece;
  /** What the wire really leaves after the last pass: the drawing's contour, rounder where the wire cannot enter. Made anew at every asking. */
  readonly comesOut: readonly Contour[];
  /** Per pass, the contour to be programmed (opened by that pass's offset) and the wire-centre path. Same index as passes. Made anew likewise. */
  readonly courses: readonly Course[];
  /** None where there is neither corner nor arc. */
  readonly corner?: WorstCorner | undefined;
  /** Given where the opening is cut without a core: there is no tab then, and no piece to take out. */
  readonly core?: NoCoreCut | undefined;
  /** What the user set of it; left out where the planner chose everything. */
  readonly overrides?: readonly ('entry' | 'hole' | 'tab')[] | undefined;
}

export interface Course {
  readonly pass: number;
  readonly programmed: Contour;
  readonly centre: Contour;
}

/** A stop of the plan is for a piece, or for a look at the work. */
export type PlannedStop = Exclude<StopPurpose, 'thread' | 'cut the wire' | 'set condition' | 'other'>;

/**
 * The cut as a list of what happens, in order. `cut` carries the programmed segment (on the wanted contour, or on the
 * approach) and the wire-centre segment, so that a writer can do either kind of compensation and never offsets itself.
 */
export type Step =
  | { readonly kind: 'contour begins'; readonly loop: string; readonly name: Text }
  | { readonly kind: 'travel'; readonly to: Point }
  | { readonly kind: 'thread'; readonly at: Point }
  | { readonly kind: 'cut wire' }
  | { readonly kind: 'condition'; readonly pass: number }
  /** Takes effect on the next straight approach and ends on that approach's end, as CHECKS I has it. */
  | { readonly kind: 'compensate'; readonly side: 'left' | 'right'; readonly register: number }
  | { readonly kind: 'cancel compensation' }
  | {
      readonly kind: 'cut';
      readonly programmed?: Segment | undefined;
      readonly centre?: Segment | undefined;
      readonly pass: number;
      /** `core`: inside an opening that is cut without a core, where nothing is wanted of the path but that no metal is left. */
      readonly part: 'approach' | 'contour' | 'tab' | 'overlap' | 'leave' | 'core';
    }
  /** `text` says what to do there and leaves it to the writer to name the contour; `details` stand before it on lines of their own. */
  | {
      readonly kind: 'stop';
      readonly purpose: PlannedStop;
      readonly loop: string;
      readonly text: Text;
      readonly details?: readonly Text[] | undefined;
    }
  | { readonly kind: 'end' };

/** How well passes with one wire would do: what is known of a wire as soon as it has passes, laid out or not. */
export interface WireResult {
  readonly wire: Wire;
  /** There is at least the rough one. Of several families of passes all, one family after the other, each with numbers of its own. */
  readonly passes: NonEmpty<Pass>;
  /** Total one-sided profile deviation expected, mm, and the finish reached, µm. */
  readonly accuracy: Figure;
  readonly finish: Figure;
  /** mm by which registers set by hand move the finished face off the drawing; in `accuracy` already. */
  readonly shift?: Figure | undefined;
  /** Given where contours are asked different things: accuracy, finish and shift above are then those of the first. */
  readonly classes?: NonEmpty<PlannedClass> | undefined;
}

/** Contours of one requirement, the passes that run on them, and what those are expected to leave. */
export interface PlannedClass {
  /** Loops and open lines. */
  readonly loops: readonly string[];
  readonly asked: Requirement;
  /** Some of the plan's: requirements that the same passes meet share them. */
  readonly passes: NonEmpty<Pass>;
  readonly accuracy: Figure;
  readonly finish: Figure;
  readonly shift?: Figure | undefined;
}

/** What is known of a plan whether it can be cut or not. */
interface Planned {
  readonly height: number;
  readonly block: Contour;
  /** Clamps and forbidden zones, as asked; none where nobody gave any. */
  readonly clamps?: readonly { readonly low: Point; readonly high: Point }[] | undefined;
  readonly findings: readonly Finding[];
}

/** It can be made as asked. */
export interface CutPlan extends Planned, WireResult {
  readonly kind: 'cut';
  readonly contours: readonly ContourPlan[];
  /** Open lines; left out where there are none. */
  readonly openCuts?: readonly OpenCutPlan[] | undefined;
  /** Loops and open lines in the order in which they are first cut. */
  readonly order: readonly string[];
  /** Made anew at every asking: ask once and keep it as long as it is needed. */
  readonly steps: readonly Step[];
}

/** The wire that comes nearest to what is asked, and what it would leave of each contour, in pieces where it cannot pass. */
export interface NearestWire extends WireResult {
  readonly comesOut: readonly { readonly loop: string; readonly contours: readonly Contour[] }[];
}

/** It cannot be made as asked; the findings say why and what would help. */
export interface RefusedPlan extends Planned {
  readonly kind: 'refused';
  /** None where no wire of the shop has passes for it. */
  readonly nearest?: NearestWire | undefined;
}

export type Plan = CutPlan | RefusedPlan;
