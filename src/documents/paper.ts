/** A paper before it is set: headings, texts, tables and pictures in order. Printed as PDF, shown as text, later on screen. */
import type { Label, Picture } from '../picture/strokes.ts';
import type { Part } from '../text/part.ts';
import { list, name, term } from '../text/part.ts';
import { only } from '../text/say.ts';
import type { Text } from '../text/text.ts';

/** Words and numbers before they are printed for a reader. */
export type Said = Text | Part;

/** As it is written, of what is said; or as it is printed, of strings. */
export interface Paper<S = string> {
  readonly title: S;
  /** Small line under the title: job, day, shop. */
  readonly subtitle: S;
  /** Foot of every page. */
  readonly foot: S;
  readonly blocks: readonly PaperBlock<S>[];
}

export type PaperBlock<S = string> =
  | { readonly kind: 'heading'; readonly text: S }
  | { readonly kind: 'text'; readonly text: S; readonly large?: boolean }
  | { readonly kind: 'pairs'; readonly rows: readonly (readonly [label: S, value: S])[] }
  | {
      readonly kind: 'table';
      readonly columns: readonly Column<S>[];
      readonly rows: readonly (readonly S[])[];
      readonly note?: S | undefined;
    }
  | { readonly kind: 'list'; readonly items: readonly S[]; readonly marker: 'dash' | 'warning' }
  | { readonly kind: 'picture'; readonly picture: Picture<S>; readonly caption: S };

export type WrittenPaper = Paper<Said>;
export type WrittenBlock = PaperBlock<Said>;
export type WrittenPicture = Picture<Said>;
export type WrittenLabel = Label<Said>;
export type WrittenTable = Extract<WrittenBlock, { kind: 'table' }>;
export type TableBlock = Extract<PaperBlock, { kind: 'table' }>;

export interface Column<S = string> {
  readonly title: S;
  readonly align: 'left' | 'right';
  /** Share of the width against the other columns. */
  readonly width: number;
}

interface Headed {
  readonly head: { readonly name: string; readonly shop: string; readonly day: string };
}

/** Job, shop and day, for papers of the shop's own. */
export const subtitleOf = ({ head }: Headed): Text => only(list([name(head.name), name(head.shop), term(head.day)], 'dot'));

/** Job and paper, on every page. */
export const footOf = ({ head }: Headed, paper: Text): Text => only(list([name(head.name), paper, term('Kerfwright')], 'dot'));

export const column = (title: Said, width: number, align: Column['align'] = 'left'): Column<Said> => ({ title, width, align });
