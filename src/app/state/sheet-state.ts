/** All that one open sheet holds, outside React; components subscribe to what they show. */

import type { JobRecord } from '../../server/message/job-record.ts';
import type { Text } from '../../text/text.ts';
import type { Chapter, Sheet } from '../work/views.ts';
import type { Coming } from './kept-program.ts';

/** 'put away': the job lies in the bin, and nothing can be saved until it is back. */
export type Saving = 'saved' | 'saving' | 'waiting for the server' | 'changed elsewhere' | 'put away';
export type LengthUnit = 'mm' | 'inch';

export interface SheetState {
  readonly record?: JobRecord;
  readonly saving: Saving;
  /** Last answer; stays while a newer one is being worked out. */
  readonly sheet?: Sheet | undefined;
  /** Given while the worker runs. */
  readonly running?: { readonly stage: Text; readonly share: number } | undefined;
  readonly fault?: string | undefined;
  readonly chapter: Chapter;
  /** Contour chosen by click or list, and the finding or place pointed at. */
  readonly chosen?: string | undefined;
  readonly pointed?: string | undefined;
  /** Block of the program that is current in replay and text. */
  readonly block?: number | undefined;
  /** Moment of the replay, minutes from the start of the run. */
  readonly moment?: number | undefined;
  /** The replay goes on by itself, at so many minutes of the run in a second. */
  readonly playing?: boolean;
  readonly speed?: number;
  /** Figure whose why is open. */
  readonly asking?: string | undefined;
  /** Programs from elsewhere that came on this visit; the one that is to be shown, empty for their place alone; why files were not taken. */
  readonly coming?: readonly Coming[];
  readonly shownProgram?: string | undefined;
  readonly programTroubles?: readonly string[];
  readonly lengthUnit: LengthUnit;
  readonly finishUnit: 'µm' | 'µin';
  readonly theme: 'as the system' | 'light' | 'dark';
}

/** What may be done to a sheet; each edit of inputs is a named step of undo. */
export interface SheetActions {
  /** Sets job-file keys (dotted paths reach into records: 'kept.L1'); undefined takes one out again. */
  edit(name: string, change: Readonly<Record<string, unknown>>): void;
  undo(): void;
  redo(): void;
  cancel(): void;
  choose(owner: string | undefined): void;
  show(
    part: Partial<Pick<SheetState, 'chapter' | 'pointed' | 'block' | 'moment' | 'asking' | 'lengthUnit' | 'finishUnit' | 'theme'>>,
  ): void;
  takeTheirs(): void;
  keepMine(): void;
}
