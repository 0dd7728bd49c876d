/**
 * What the worker makes of an answer for the page: plain data that crosses between threads. Lengths in mm. `Said` is what its words are: texts
 * when they come from the worker, printed for the reader once they are shown.
 */

import type { Dialect } from '../../job/files/dialects.ts';
import type { Basis } from '../../quantity/figure.ts';
import type { Taking } from '../../shapes/shape.ts';
import type { Place, RemedyValue, Severity } from '../../text/finding.ts';
import type { StopPurpose } from '../../text/stop-purpose.ts';
import type { Text } from '../../text/text.ts';
import type { Unit } from '../../text/unit.ts';

export type { Taking } from '../../shapes/shape.ts';

/** The chapters of the sheet in order. */
export const CHAPTERS = ['drawing', 'asked', 'passes', 'way', 'proof', 'hours', 'price', 'papers', 'log'] as const;
export type Chapter = (typeof CHAPTERS)[number];

/** A number on the sheet; `key` asks the worker why. */
export interface Shown<Said = string> {
  readonly key: string;
  readonly name: Said;
  readonly value: number;
  readonly unit: Unit;
  readonly low: number;
  readonly high: number;
}

/** What a stretch of the answer sentence is: an input that is edited in place by its key in the job file, a result that can be asked why, yes or no. */
export type SentenceMark<Said = string> =
  | { readonly kind: 'input'; readonly field: string }
  | { readonly kind: 'result'; readonly shown: Shown<Said> }
  | { readonly kind: 'verdict' };

/** The answer sentence and what its holes are, by their names. */
export interface MarkedSentence {
  readonly text: Text;
  readonly marks: Readonly<Record<string, SentenceMark<Text>>>;
}

/** The answer sentence as printed, in stretches. */
export type SentencePart = { readonly text: string } & ({ readonly kind: 'words' } | SentenceMark);

/** A finding with its words; `change` is the input that helps, and the value where one is known. */
export interface FoundView<Said = string> {
  readonly code: string;
  readonly severity: Severity;
  readonly sentence: Said;
  readonly place?: Place | undefined;
  readonly done?: Said | undefined;
  readonly remedy?: Said | undefined;
  readonly change?: { readonly field: string; readonly value?: RemedyValue | undefined } | undefined;
  readonly stands?: number | undefined;
}

export interface FindingView<Said = string> extends FoundView<Said> {
  /** Unlike every other of this answer. */
  readonly id: string;
  readonly chapter: Chapter;
  /** Where it lies in the picture, mm. */
  readonly at?: { readonly x: number; readonly y: number; readonly reach: number; readonly loop?: string | undefined } | undefined;
}

/** Segments in one array, eight numbers each: x, y of both ends, centre x, y, radius, sweep (rad, counter-clockwise positive); a line has radius 0. */
export interface ChainView {
  /** 'L2', 'O1': the loop or open line it belongs to. */
  readonly owner?: string | undefined;
  readonly closed: boolean;
  readonly segments: Float64Array;
}

/** What is drawn alike. Passes count from 1. */
export interface LayerView {
  readonly role:
    | 'block'
    | 'drawing'
    | 'open line'
    | 'clamp'
    | 'start hole'
    | 'lead'
    | 'tab'
    | 'comes out'
    | 'core'
    | 'slug'
    | 'metal left'
    | 'pass';
  readonly pass?: number;
  readonly chains: readonly ChainView[];
}

export interface PictureView<Said = string> {
  readonly low: { readonly x: number; readonly y: number };
  readonly high: { readonly x: number; readonly y: number };
  /** How far the drawing itself reaches, without the block. */
  readonly drawn?: { readonly width: number; readonly depth: number } | undefined;
  readonly layers: readonly LayerView[];
  readonly contours: readonly ContourView<Said>[];
  /** Each bears the name of its contour. */
  readonly startHoles: readonly { readonly owner: string; readonly x: number; readonly y: number }[];
  readonly datum: { readonly x: number; readonly y: number };
  /** mm in one unit of the drawing, in which the job file gives places. */
  readonly millimetres?: number;
}

/** One contour as planned; what was set by hand is named in `byHand`. */
export interface ContourView<Said = string> {
  readonly id: string;
  /** In the order of cutting, from 1; 0 when it is not cut. */
  readonly number: number;
  readonly kept: 'die' | 'punch' | 'leave' | 'left' | 'right' | 'slit';
  readonly area: number;
  readonly perimeter: number;
  readonly hole?: { readonly x: number; readonly y: number; readonly diameter: number; readonly origin: string };
  readonly entry?: { readonly x: number; readonly y: number };
  readonly tab?: { readonly length: number; readonly reason: Said } | undefined;
  readonly piece?: Said | undefined;
  readonly state?: Said | undefined;
  readonly leftMost?: number | undefined;
  readonly gougeMost?: number | undefined;
  readonly overrides: readonly string[];
}

export interface TableView<Said = string> {
  readonly columns: readonly { readonly title: Said; readonly align: 'left' | 'right' }[];
  /** Cells are words, or numbers that can be asked why. */
  readonly rows: readonly (readonly (Said | Shown<Said>)[])[];
  /** Row that stands out: the chosen wire, the quantity asked for. */
  readonly marked?: number;
  readonly note?: Said | undefined;
}

/** The program block by block, with where the wire is in each. */
export interface ProgramView {
  readonly text: string;
  readonly units: 'mm' | 'inch';
  readonly dialect: string;
  readonly registers: readonly (readonly [number: number, mm: number])[];
  /** The words of its control, by which a block can be explained. */
  readonly words: Dialect['words'];
  /** The wire's moves in order. */
  readonly moves: {
    readonly block: Uint32Array;
    /** Eight numbers each, as in ChainView: the wire's centre. */
    readonly segments: Float64Array;
    /** 1 where it cuts, 0 where it travels. */
    readonly cutting: Uint8Array;
    /** Minutes from the start of the run at which each begins, without waiting for people. */
    readonly begins: Float64Array;
    readonly pass: Uint8Array;
  };
  /** Machine time of all moves together. */
  readonly minutes: number;
  /** Width that the wire burns, mm. */
  readonly kerf: number;
  /** What comes loose, with the block whose move sets it free. */
  readonly falls: readonly { readonly block: number; readonly role: 'slug' | 'part' | 'scrap'; readonly loop?: string | undefined }[];
}

export interface ScheduleEventView<Said = string> {
  readonly kind: string;
  /** Minutes since the start of the week's epoch as `estimate/schedule/moment` counts them. */
  readonly from: number;
  readonly to: number;
  readonly what: Said;
  /** The comment of the program, else `what` as the house writes it: what is kept under its name must not change with who reads it. */
  readonly plain?: string | undefined;
  /** The pass that cuts. */
  readonly pass?: number | undefined;
  readonly needsPerson: boolean;
  readonly atNight: boolean;
  readonly block?: number | undefined;
  /** What the program stops for, and at which contour. */
  readonly stop?: { readonly purpose: StopPurpose; readonly loop?: string | undefined } | undefined;
  readonly timeOfDay: Said;
  /** Which piece of the quantity it belongs to, from 1. */
  readonly piece: number;
}

export interface ScheduleView<Said = string> {
  readonly start: number;
  readonly finish: number;
  readonly startText: Said;
  readonly finishText: Said;
  readonly events: readonly ScheduleEventView<Said>[];
  readonly nights: readonly { readonly from: number; readonly to: number }[];
  /** When somebody is in the shop, minutes since Monday's midnight: so that another start can be looked at before it is asked. */
  readonly week: readonly { readonly from: number; readonly to: number }[];
}

/** The wall that is left, for drawing it to scale: pass by pass, and as other processes would leave it. */
export interface WallView<Said = string> {
  /** mm */
  readonly thickness: number;
  readonly passes: readonly {
    readonly number: number;
    /** µm */
    readonly ra: Shown<Said>;
    /** Craters and the layer that melted and froze again, together, µm. */
    readonly damage: Shown<Said>;
    /** Still to come off per side, mm. */
    readonly stock: Shown<Said>;
    readonly gap: Shown<Said>;
  }[];
  /** The wire's own first, where there is one. */
  readonly faces: readonly FaceView<Said>[];
  /** Processes without a face, each with its reason. */
  readonly without: readonly Said[];
}

export interface FaceView<Said = string> {
  readonly process: string;
  readonly name: Said;
  /** mm that the face lies off the straight: at half its height where it is a barrel, at its lower edge where it leans. */
  readonly off: number;
  readonly shape: 'barrel' | 'leaning';
  /** Height of the roughness, mm, and Ra from and to, µm. */
  readonly rough: number;
  readonly ra: readonly [low: number, high: number];
  /** Rougher on the way down. */
  readonly tires: boolean;
  readonly sentence: Said;
}

/** What a part by numbers would be measured by. */
export interface ShapeView<Said = string> {
  readonly name: Said;
  readonly sizes: readonly ShapeSizeView<Said>[];
}

export interface ShapeSizeView<Said = string> {
  readonly shown: Shown<Said>;
  readonly limits?: { readonly low: number; readonly high: number } | undefined;
  /** How it is taken, to be drawn in the picture, mm. */
  readonly taking?: Taking | undefined;
}

/** As it comes from the worker. */
export type SheetInTexts = Sheet<Text, MarkedSentence>;

/** The tables of a sheet; each stands where the job came so far. */
export interface SheetTables<Said = string> {
  readonly passes?: TableView<Said> | undefined;
  readonly wires?: TableView<Said> | undefined;
  readonly contours?: TableView<Said> | undefined;
  readonly hours?: TableView<Said> | undefined;
  readonly costs?: TableView<Said> | undefined;
  /** Price by quantity. */
  readonly breaks?: TableView<Said> | undefined;
  readonly budget?: TableView<Said> | undefined;
  /** Sizes with limits of their own. */
  readonly sizes?: TableView<Said> | undefined;
  readonly others?: TableView<Said> | undefined;
}

export interface Sheet<Said = string, Sentence = readonly SentencePart[]> extends SheetTables<Said> {
  readonly answer: 'yes' | 'no' | 'cannot' | 'bad input';
  readonly sentence: Sentence;
  readonly findings: readonly FindingView<Said>[];
  /** What was taken for granted, with the field of the job that says otherwise. */
  readonly assumed: readonly { readonly text: Said; readonly field?: string | undefined }[];
  readonly picture?: PictureView<Said> | undefined;
  /** Where the job is by numbers. */
  readonly shape?: ShapeView<Said> | undefined;
  readonly program?: ProgramView | undefined;
  /** What program and machine may use of the tolerance; none where no program was judged. */
  readonly toleranceUse?: Said | undefined;
  readonly schedule?: ScheduleView<Said> | undefined;
  readonly wall?: WallView<Said> | undefined;
  /** Every figure that can be asked why, by key. */
  readonly figures: readonly Shown<Said>[];
  /** ISO 4217, of every figure of money. */
  readonly currency?: string | undefined;
  /** Milliseconds the core took, and all that came on top in the worker. */
  readonly took: { readonly core: number; readonly view: number };
}

/** A figure with all it was made of. */
export interface WhyTree<Said = string> {
  readonly shown: Shown<Said>;
  readonly basis: Basis;
  readonly source: Said;
  readonly formula?: Said | undefined;
  readonly warnings: readonly Said[];
  readonly from: readonly WhyTree<Said>[];
}

/** Signed mm along a contour, share of its length 0 to 1. */
export interface DeviationView {
  readonly loop: string;
  readonly share: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly deviation: Float64Array;
  /** Inside corners that may come out round, with the mm of metal that this leaves in them: the largest deviation does not count it. */
  readonly rounded?: readonly { readonly x: number; readonly y: number; readonly left: number }[];
}
