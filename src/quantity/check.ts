/** A check row: a value that somebody outside this project printed or measured, held against what our code gives. */

/**
 * How the value came here. 'printed and seen': in the source's own text, abstract or file, which was read. 'secondary page': read where
 * somebody else repeats it. 'recomputed': worked out apart from this code from a formula that others print. 'memory': no text was seen.
 */
export const OBTAINED = ['printed and seen', 'secondary page', 'recomputed', 'memory'] as const;

export type Obtained = (typeof OBTAINED)[number];

export interface CheckRow {
  /** Short and unique: 'A-02'. Rows of the common trade without a source start with 'CP-'. */
  readonly id: string;
  /** A file in sources/ by its name without ending. */
  readonly source: string;
  /** Where in the source: 'table 3', 'eq. 26.7'. */
  readonly place: string;
  readonly how: Obtained;
  /** What is asked, in words with its numbers. */
  readonly question: string;
  /** The value with the digits it came with; the last one sets the tolerance (half of it). 'yes' for a fact that is no number. */
  readonly value: string;
  /** What our code says: a number, or text that must equal `value`. */
  readonly ours: () => number | string;
  /** A wider absolute tolerance than the digits give, with the reason for it. */
  readonly wider?: { readonly tolerance: number; readonly reason: string };
  /** Where the source gives a range, or no more than one can be said: ours must lie within, ends included. */
  readonly limits?: { readonly low: number; readonly high: number; readonly reason: string };
}
