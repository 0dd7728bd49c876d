/** What is to be measured of a finished piece: worked out elsewhere, laid out by the inspection sheet. Lengths in mm, Ra in µm. */

export interface Inspection {
  /** °C of the piece while it is measured. */
  readonly temperature: number;
  readonly rows: readonly InspectionRow[];
  /** Contours of which only the profile is told, since there are very many. */
  readonly passedOver: number;
}

export interface InspectionRow {
  /** Number of the contour on every paper and picture; 0 for what concerns no single contour. */
  readonly number: number;
  readonly contour: string;
  readonly what:
    | 'profile'
    | 'diameter'
    | 'size along X'
    | 'size along Y'
    | 'smallest inside radius'
    | 'finish'
    | 'straightness over the height'
    | 'named size';
  /** For a named size its name. */
  readonly name?: string;
  /** Where the two ends of a size lie, along its axis, in the drawing; the middle of a circle or of a corner. */
  readonly from?: { readonly x: number; readonly y: number };
  readonly to?: { readonly x: number; readonly y: number };
  /** As drawn, at 20 °C; none for what should be nothing, such as a deviation. */
  readonly drawn?: number | undefined;
  /** What the gauge should show at the temperature of measuring. */
  readonly reading?: number;
  /** Either side; `only up` where less is never wrong. */
  readonly tolerance: number;
  readonly onlyUp?: true;
  /** How far it is to be expected off, either side; the value itself where nothing is drawn. */
  readonly expected: number;
}
