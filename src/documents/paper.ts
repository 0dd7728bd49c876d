/** A paper before it is set: headings, texts, tables and pictures in order. Printed as PDF, shown as text, later on screen. */
import type { Picture } from '../picture/strokes.ts';

export interface Paper {
  readonly title: string;
  /** Small line under the title: job, day, shop. */
  readonly subtitle: string;
  /** Foot of every page. */
  readonly foot: string;
  readonly blocks: readonly PaperBlock[];
}

export type PaperBlock =
  | { readonly kind: 'heading'; readonly text: string }
  /** `control`: what is to be typed into the control as it stands, in the unit of the program. */
  | { readonly kind: 'text'; readonly text: string; readonly large?: boolean; readonly control?: true }
  | { readonly kind: 'pairs'; readonly rows: readonly (readonly [label: string, value: string])[] }
  | {
      readonly kind: 'table';
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
      readonly note?: string | undefined;
      /** The unit of each row's bare amounts, where they have none of their own. */
      readonly units?: readonly ('mm' | 'µm' | undefined)[] | undefined;
    }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly marker: 'dash' | 'warning' }
  | { readonly kind: 'picture'; readonly picture: Picture; readonly caption: string };

export interface Column {
  readonly title: string;
  readonly align: 'left' | 'right';
  /** Share of the width against the other columns. */
  readonly width: number;
  /** What is in it: `control` counts in the unit of the program whatever the reader's; `amount` in the unit of its row. Words when left out. */
  readonly holds?: 'control' | 'amount';
}

/** Job, shop and day, for papers of the shop's own. */
export const subtitleOf = ({ head }: { readonly head: { readonly name: string; readonly shop: string; readonly day: string } }): string =>
  `${head.name} · ${head.shop} · ${head.day}`;

export const column = (title: string, width: number, align: Column['align'] = 'left'): Column => ({ title, width, align });

/** A column in the unit of the program. */
export const controlColumn = (title: string, width: number, align: Column['align'] = 'right'): Column => ({
  title,
  width,
  align,
  holds: 'control',
});
