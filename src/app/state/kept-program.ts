/** A program from elsewhere that is kept with a job: arrived, on its way, or in trouble. */

/** One program as the page shows it. */
export interface OtherProgram {
  /** Stays the same from the moment it is dropped. */
  readonly key: string;
  readonly name: string;
  /** When it came, ISO 8601. */
  readonly at: string;
  /** The number the server keeps it under; none before it does. */
  readonly number?: number;
  /** When it was removed, ISO 8601. */
  readonly removed?: string | undefined;
  /** Why it is not kept. */
  readonly trouble?: Trouble;
}

export type Trouble =
  | { readonly kind: 'on its way' }
  /** It is sent again until the server is back. */
  | { readonly kind: 'server gone' }
  | { readonly kind: 'refused'; readonly sentence: string };

/** What came in on this visit. Its text stays with the page, so that it need not be fetched again. */
export interface Coming extends OtherProgram {
  readonly text: string;
}
