/** A check row: a value that somebody outside this project printed or measured, held against what our code gives. */

export interface CheckRow {
  /** Short and unique: 'A-02'. Rows of the common trade without a source start with 'CP-'. */
  readonly id: string;
  /** A file in sources/ by its name without ending. */
  readonly source: string;
  /** Where in the source: 'table 3', 'eq. 26.7'. */
  readonly place: string;
  /** What is asked, in words with its numbers. */
  readonly question: string;
  /** The value exactly as printed; its last digit sets the tolerance (half of it). 'yes' for a fact that holds or not. */
  readonly printed: string;
  /** What our code says: a number, or text that must equal `printed`. */
  readonly ours: () => number | string;
  /** A wider absolute tolerance than the printed digits give, with the reason for it. */
  readonly wider?: { readonly tolerance: number; readonly reason: string };
}
