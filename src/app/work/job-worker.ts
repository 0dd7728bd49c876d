/** What the page may ask of the worker. Everything crosses by comlink; `run`, `whatIfs` and `curve` may take long. */

import type { Paper } from '../../documents/paper.ts';
import type { AskedJob } from '../../job/request/run-from-data.ts';
import type { Comparison, PricePoint } from '../../result/comparison.ts';
import type { PaperName } from '../../result/paper-names.ts';
import type { Reader } from '../../text/reader.ts';
import type { Text } from '../../text/text.ts';
import type { DeviationView, FoundView, SheetInTexts, WhyTree } from './views.ts';

export interface DrawingFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A job as the page asks it; its drawing was opened before. */
export type Question = Omit<AskedJob, 'drawing' | 'drawingName'>;

export type Tell = (stage: Text, share: number) => void;

export type Judged<Said = string> =
  | {
      readonly kind: 'judged';
      readonly verdict: 'proven' | 'not proven';
      readonly findings: readonly FoundView<Said>[];
      /** The whole report, line by line; none where the program could not be read. */
      readonly report: readonly Said[];
    }
  | { readonly kind: 'cannot'; readonly sentence: Said };

export type Corrected<Said = string> =
  | {
      readonly kind: 'corrected';
      readonly text: string;
      readonly safe: boolean;
      /** Whether it is more than the measuring can tell apart. */
      readonly worth: boolean;
      /** As they are typed into the control, in the unit of the program: '0.1626 mm'. */
      readonly registers: readonly { readonly register: number; readonly before: string; readonly after: string }[];
    }
  | { readonly kind: 'cannot'; readonly sentence: Said }
  | { readonly kind: 'bad'; readonly findings: readonly FoundView<Said>[] };

export interface JobWorker {
  /** The drawing of all runs that follow; what was remembered of another one is forgotten. */
  open(drawing: DrawingFile): void;
  /** Runs the job; stages that did not change since the last run are not run again. A text first waits for its font. */
  run(question: Question, tell: Tell): SheetInTexts | Promise<SheetInTexts>;
  /** All below speak of the last run. */
  why(key: string): WhyTree<Text> | undefined;
  whatIfs(): Comparison;
  curve(): readonly PricePoint[];
  deviation(loop: string): DeviationView | undefined;
  /** As its reader wants numbers told; what is typed into the control stays in the unit of the program. */
  paper(name: PaperName, reader: Reader): Paper | undefined;
  /** The drawing of a part by numbers as a file; nothing where the job has a drawing of its own. */
  shapeFile(format: 'dxf' | 'svg', unit: 'mm' | 'inch'): string | undefined;
  /** A program from elsewhere held against the drawing, with the set-up of the last run. */
  prove(program: string): Judged<Text>;
  /** As `kerfwright correct`: 'L2: 24.006 of 24 at 22'. */
  correct(measured: readonly string[], reader: Reader): Corrected<Text>;
}
