/** What the planner is asked: contours, what is wanted of them, and what the shop has. Lengths in mm, Ra in µm. */
import type { Contour } from '../geometry/contour.ts';
import type { Point } from '../geometry/segment.ts';
import type { Flush, ShopFactors } from '../physics/cut/conditions.ts';
import type { Machine } from '../physics/cut/machine.ts';
import type { PassTable } from '../physics/cut/pass-table.ts';
import type { Material } from '../physics/material/material.ts';
import type { Wire } from '../physics/wire/wire.ts';
import type { FinishRule } from '../quantity/finish-rule.ts';
import type { Taken } from '../text/wanted.ts';
import type { Clamp } from './clamp.ts';
import type { WantedLine } from './open-line.ts';
import type { Sureness } from './sureness.ts';

/** A closed loop of the drawing that is to be considered. */
export interface WantedLoop {
  readonly id: string;
  /** Counter-clockwise. */
  readonly contour: Contour;
  /** 0 for an outermost loop, 1 for an opening in it, 2 for an island in that. */
  readonly depth: number;
  readonly parent?: string | undefined;
}

/** A hole that is in the block already, or is to be drilled where the drawing marks it. */
export interface GivenHole {
  readonly at: Point;
  readonly diameter: number;
  readonly toDrill?: true;
}

export const originOf = ({ toDrill }: GivenHole): 'drawing' | 'placed' => (toDrill === true ? 'placed' : 'drawing');

/** `die` and `punch` say which side is kept; `leave` is not cut. */
export type KeptChoice = 'die' | 'punch' | 'leave';

/** `slug`: the piece inside comes out whole. `no-core`: the wire takes all of it. */
export type CoreChoice = 'slug' | 'no-core';

/** What the user sets of one closed loop in place of what the planner would choose; what is left out the planner chooses. Lengths in mm. */
export interface Override {
  /** Where the contour is begun and closed; the nearest place of the contour is meant. */
  readonly entry?: Point | undefined;
  readonly hole?: { readonly at: Point; readonly diameter?: number | undefined } | undefined;
  /** Along the contour; 0 leaves no tab. */
  readonly tab?: number | undefined;
}

/** Lengths in mm; with no corner it lies below and left of the outermost contours by the margin. */
export interface Stock {
  readonly width: number;
  readonly depth: number;
  readonly corner?: Point | undefined;
}

/** What the drawing holds. */
export interface DrawnWork {
  readonly loops: readonly WantedLoop[];
  /** Open lines that are to be cut. */
  readonly open?: readonly WantedLine[] | undefined;
  readonly holes: readonly GivenHole[];
  /** Spots that the drawing marks: a start hole of the asked diameter is drilled there. */
  readonly marks: readonly Point[];
}

/** The metal: which side of each loop is kept, how far the block reaches, where nothing may be cut. */
export interface BlockAsked {
  /** What the outermost loops are: contours to cut, or the edge of the block. */
  readonly outline: 'cut' | 'block';
  /** By loop id: overrules what the nesting suggests. */
  readonly kept: Readonly<Record<string, KeptChoice>>;
  /** Ids in `kept` of which the shape of the job says so, and not the user. */
  readonly keptByShape?: readonly string[] | undefined;
  /** From the outermost contour to the edge of the block, where the drawing has no block. */
  readonly blockMargin: number;
  /** The piece of metal, where the drawing has no block: its sides along x and y, and where its lower left corner lies. */
  readonly stock?: Stock;
  /** Rectangles over the block that no cut may run into. */
  readonly clamps?: readonly Clamp[] | undefined;
}

/** What the shop cuts with, and what it costs. */
export interface ShopAsked {
  /** The shop's wires. */
  readonly wires: readonly Wire[];
  /** Key of the wire the user insists on. */
  readonly wire?: string | undefined;
  /** Key of the wire that the whole job was found cheapest with, where the user insists on none: no other is tried then. */
  readonly settled?: string;
  readonly machine: Machine;
  readonly factors?: ShopFactors | undefined;
  /** Passes as the shop runs them, for some wires, materials and heights. */
  readonly passTables?: readonly PassTable[];
  /** What one stop for a slug takes, min, and a person's hour, minor money units: to weigh a slug against burning it all. */
  readonly person?: { readonly stopMinutes: number; readonly hour: number };
  /** Minor money units per machine hour, to weigh a slower cheap wire against a faster dear one. */
  readonly machineRate?: number;
}

/** What is cut, and how well it has to come out. */
export interface WorkAsked extends Taken, Sureness {
  readonly material: Material;
  readonly height: number;
  readonly flush: Flush;
  /** Ra asked for, µm. */
  readonly finish: number;
  /** What the roughness limits; most values of a face where nothing is said. */
  readonly finishRule?: FinishRule | undefined;
  /** Profile tolerance either side of the drawing. */
  readonly tolerance: number;
  /** Of the tolerance, what the program itself takes: curves that arcs stand for, and last digits. */
  readonly reserve?: number | undefined;
  /** Inside corners drawn sharper than this may come out with up to this radius. */
  readonly insideCorner: number;
}

/** mm: moves shorter than `length` are given to their neighbours, which moves no place by more than `within`. */
export interface LeastMove {
  readonly length: number;
  readonly within: number;
}

/** How contours are begun, run and written. */
export interface WayAsked {
  /** Diameter of the start holes to drill. */
  readonly startHole: number;
  readonly run: 'attended' | 'unattended first';
  /** By loop id: entries at which the proof refused an earlier plan; others are taken. */
  readonly refused?: Readonly<Record<string, readonly Point[]>> | undefined;
  /** What the control does at an outside corner under compensation. */
  readonly outsideCorners: 'arc' | 'intersection';
  /** mm that inside arcs leave for a larger register, where compensation is the control's. */
  readonly registerRoom?: number | undefined;
  /** Where compensation is the control's. */
  readonly leastMove?: LeastMove | undefined;
  /** By id of loop or line: begun from a hole, as loops are when nothing is said, or from the edge of the block. */
  readonly start?: Readonly<Record<string, 'hole' | 'edge'>> | undefined;
  /** Sharp outside corners: left to the control, as when nothing is said, or gone round out and back by a small loop in the waste. */
  readonly sharpOutside?: 'control' | 'loop' | undefined;
  /** How coarsely the program will be written: unit of one coordinate in mm, and digits behind the point. */
  readonly resolution: { readonly unit: number; readonly decimals: number };
  /** By loop id: whether an opening gives a slug or is cut without a core; where nothing is said the planner chooses. */
  readonly core?: Readonly<Record<string, CoreChoice>> | undefined;
}

/** What the user sets in place of what the planner would choose. */
export interface OverridesAsked {
  /** By loop id. */
  readonly overrides?: Readonly<Record<string, Override>> | undefined;
  /** Ids in the order in which they are to be first cut; those not named follow as the planner likes. */
  readonly order?: readonly string[] | undefined;
  /** As many passes, the rough cut counted; the planner's number where nothing is said. */
  readonly passes?: number | undefined;
  /** Registers, one for each pass. */
  readonly offsets?: readonly number[] | undefined;
}

/** What one contour has to come out as, where it is not what the whole job asks. */
export interface Requirement extends Pick<WorkAsked, 'finish' | 'tolerance'>, Pick<OverridesAsked, 'passes' | 'offsets'> {
  /** µm: greatest recast layer that may stay. */
  readonly recast?: number | undefined;
}

/** What single contours and lines are asked, complete, by id; those without an entry are asked what the job asks. */
export interface RequirementsAsked {
  readonly requirements?: Readonly<Record<string, Requirement>> | undefined;
}

/** All of it. A part of the planner takes of it what it needs, by the names above. */
export interface PlanQuestion extends DrawnWork, BlockAsked, ShopAsked, WorkAsked, WayAsked, OverridesAsked, RequirementsAsked {}

/** What is set by hand of a loop; only own keys of the record say something. */
export const overrideOf = ({ overrides = {} }: Pick<OverridesAsked, 'overrides'>, id: string): Override | undefined => {
  const said = Object.hasOwn(overrides, id) ? overrides[id] : undefined;
  return said === undefined || (said.entry === undefined && said.hole === undefined && said.tab === undefined) ? undefined : said;
};

/** Whether a loop is to be begun from the edge of the block; only own keys of the record say something. */
export const isFromEdge = ({ start = {} }: Pick<WayAsked, 'start'>, id: string): boolean =>
  Object.hasOwn(start, id) && start[id] === 'edge';
